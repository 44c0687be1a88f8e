//! Faults on the terminal, and as JSON.

use annotate_snippets::{AnnotationKind, Level, Renderer, Snippet};
use serde::Serialize;

use crate::edition::Edition;
use crate::fault::{Fault, Severity, Texts};

/// Prints every fault to standard error, and their number.
pub(super) fn faults(edition: &Edition) {
    let renderer = Renderer::styled();
    for fault in &edition.faults {
        anstream::eprintln!("{}\n", render(fault, &edition.texts, &renderer));
    }
    if !edition.faults.is_empty() {
        anstream::eprintln!("{}", count(&edition.faults));
    }
}

/// `2 errors, 1 caution`.
pub(super) fn count(faults: &[Fault]) -> String {
    let errors = faults.iter().filter(|fault| fault.severity == Severity::Error).count();
    let words = [(errors, "error"), (faults.len() - errors, "caution")]
        .iter()
        .filter(|(number, _)| *number > 0)
        .map(|(number, word)| {
            format!("{number} {word}{}", if *number == 1 { "" } else { "s" })
        })
        .collect::<Vec<_>>();
    if words.is_empty() { "no faults".to_owned() } else { words.join(", ") }
}

/// One fault: what, where with the words underlined, and what would be right.
pub(crate) fn render(fault: &Fault, texts: &Texts, renderer: &Renderer) -> String {
    let level = match fault.severity {
        Severity::Error => Level::ERROR.with_name("error"),
        Severity::Caution => Level::WARNING.with_name("caution"),
    };
    let text = texts.text(&fault.place.file);
    let title = level.primary_title(fault.message.as_str()).id(fault.name);
    let end = text.floor_char_boundary(fault.place.end);
    let start = text.floor_char_boundary(fault.place.start.min(end));
    let help = fault.help.as_deref().map(|help| Level::HELP.message(help));
    let report = if text.is_empty() {
        title.element(annotate_snippets::Origin::path(&*fault.place.file)).elements(help)
    } else {
        let (lines, from, number) = lines(text, start, end);
        let span = AnnotationKind::Primary.span(start - from..end - from);
        let snippet = Snippet::source(lines).line_start(number);
        title.element(snippet.path(&*fault.place.file).annotation(span)).elements(help)
    };
    renderer.render(&[report])
}

/// The whole lines that hold a stretch of the text, where they begin, and the number of
/// the first: the renderer looks at all that it is given, for each fault.
fn lines(text: &str, start: usize, end: usize) -> (&str, usize, usize) {
    let before = text.get(..start).unwrap_or_default();
    let mut from = before.rfind('\n').map_or(0, |at| at + 1);
    let after = text.get(end..).unwrap_or_default();
    let to = end + after.find('\n').unwrap_or(after.len());
    // An empty last line shows the line above it.
    if from == to && from == text.len() {
        from = text[..from].trim_end_matches('\n').rfind('\n').map_or(0, |at| at + 1);
    }
    let number = 1 + text[..from].matches('\n').count();
    (&text[from..to], from, number)
}

/// A fault for programs.
#[derive(Serialize)]
struct Flat<'a> {
    name: &'a str,
    severity: &'a str,
    file: &'a str,
    line: usize,
    column: usize,
    length: usize,
    message: &'a str,
    help: Option<&'a str>,
}

/// Every fault as a JSON array.
pub(super) fn json(edition: &Edition) -> String {
    let flat: Vec<Flat> = edition
        .faults
        .iter()
        .map(|fault| {
            let at = edition.texts.position(&fault.place);
            Flat {
                name: fault.name,
                severity: fault.severity.word(),
                file: &fault.place.file,
                line: at.line,
                column: at.column,
                length: at.length,
                message: &fault.message,
                help: fault.help.as_deref(),
            }
        })
        .collect();
    serde_json::to_string_pretty(&flat).unwrap_or_default()
}
