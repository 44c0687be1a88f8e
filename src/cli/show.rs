//! Faults on the terminal, and as JSON.

mod layout;

use serde::Serialize;

use crate::edition::Edition;
use crate::fault::{Fault, Severity, Told};
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
            }
        })
        .collect();
    serde_json::to_string_pretty(&flat).unwrap_or_default()
}
