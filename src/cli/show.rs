//! Faults on the terminal, and as JSON.

mod layout;

use serde::Serialize;

use crate::edition::Edition;
use crate::fault::{Fault, Mending, Place, Severity, Told};
use crate::said;
use crate::words::Words;

pub(super) use layout::Layout;

/// Prints every fault to standard error, and their number.
pub(super) fn faults(edition: &Edition, words: &Words) {
    let layout = Layout::of_terminal();
    for fault in &edition.faults {
        anstream::eprintln!("{}\n", layout.render(fault, &edition.texts, words));
    }
    if !edition.faults.is_empty() {
        anstream::eprintln!("{}", count(&edition.faults, words));
    }
}

/// `2 errors, 1 caution`.
pub(super) fn count(faults: &[Fault], words: &Words) -> String {
    let errors = faults.iter().filter(|fault| fault.severity == Severity::Error).count();
    let cautions = faults.len() - errors;
    let mut parts = Vec::new();
    parts.extend((errors > 0).then(|| said!("fault-errors", count = errors)));
    parts.extend((cautions > 0).then(|| said!("fault-cautions", count = cautions)));
    let none = parts.is_empty();
    words.tell(&if none { said!("fault-none") } else { said!("fault-all", parts) })
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
    message: String,
    help: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    mendings: Vec<Change<'a>>,
}

/// A change of text that mends a fault: from one place up to the other, in lines and columns
/// counted from 1.
#[derive(Serialize)]
struct Change<'a> {
    file: &'a str,
    from: [usize; 2],
    to: [usize; 2],
    text: &'a str,
}

/// Every fault as a JSON array.
pub(super) fn json(edition: &Edition, words: &Words) -> String {
    let flat: Vec<Flat> = edition
        .faults
        .iter()
        .map(|fault| {
            let at = edition.texts.position(&fault.place);
            let Told { message, help } = fault.told(words);
            Flat {
                name: fault.name,
                severity: fault.severity.word(),
                file: &fault.place.file,
                line: at.line,
                column: at.column,
                length: at.length,
                message,
                help,
                mendings: fault.mendings.iter().map(|it| change(it, edition)).collect(),
            }
        })
        .collect();
    serde_json::to_string_pretty(&flat).unwrap_or_default()
}

fn change<'a>(mending: &'a Mending, edition: &Edition) -> Change<'a> {
    let place = &mending.place;
    let at = |byte: usize| {
        let position = edition.texts.position(&Place::new(&place.file, byte, byte));
        [position.line, position.column]
    };
    let (from, to) = (at(place.start()), at(place.end()));
    Change { file: &place.file, from, to, text: &mending.text }
}
