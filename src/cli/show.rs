//! Faults on the terminal, and as JSON.

mod layout;

use serde::Serialize;

use crate::edition::Edition;
use crate::fault::{Fault, Severity};

pub(super) use layout::Layout;

/// Prints every fault to standard error, and their number.
pub(super) fn faults(edition: &Edition) {
    let layout = Layout::of_terminal();
    for fault in &edition.faults {
        anstream::eprintln!("{}\n", layout.render(fault, &edition.texts));
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
        .map(|(number, word)| super::counted(*number, word))
        .collect::<Vec<_>>();
    if words.is_empty() { "no faults".to_owned() } else { words.join(", ") }
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
