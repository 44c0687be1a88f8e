//! A fault as data: its name, how serious it is, where in the text it stands, what is
//! wrong and what would be right. Showing faults is the terminal's business, not this
//! module's.

mod mending;
mod place;
mod text;

use std::collections::BTreeMap;

use crate::said;
use crate::statement::Statement;
use crate::words::Words;

pub use mending::Mending;
pub use place::{FileName, Place, Placed};
pub use text::{Position, Texts};

/// How serious a fault is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Stops publishing.
    Error,
    /// Worth a look; does not stop publishing.
    Caution,
}

impl Severity {
    /// The word for this severity in messages and JSON.
    pub fn word(self) -> &'static str {
        match self {
            Self::Error => "error",
            Self::Caution => "caution",
        }
    }
}

/// One thing wrong with the text an instructor wrote.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Short stable name (`unused-ingredient`), which a recipe may accept with a reason.
    pub name: &'static str,
    /// Whether it stops publishing.
    pub severity: Severity,
    /// The words at fault.
    pub place: Place,
    /// What is wrong, in an instructor's words, without a full stop.
    pub message: Statement,
    /// What would be right.
    pub help: Option<Box<Statement>>,
    /// Changes of the text of which each mends it, where the remedy is just that.
    pub mendings: Box<[Mending]>,
}

/// A fault in the words of a language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// What is wrong.
    pub message: String,
    /// What would be right.
    pub help: Option<String>,
}

impl Fault {
    /// A fault of a severity.
    pub fn new(
        name: &'static str,
        severity: Severity,
        place: &Place,
        message: Statement,
    ) -> Self {
        Self {
            name,
            severity,
            place: place.clone(),
            message,
            help: None,
            mendings: Box::default(),
        }
    }

    /// A fault that stops publishing.
    pub fn error(name: &'static str, place: &Place, message: Statement) -> Self {
        Self::new(name, Severity::Error, place, message)
    }

    /// A fault that is worth a look.
    pub fn caution(name: &'static str, place: &Place, message: Statement) -> Self {
        Self::new(name, Severity::Caution, place, message)
    }

    /// Adds what would be right.
    #[must_use]
    pub fn help(mut self, help: Statement) -> Self {
        self.help = Some(Box::new(help));
        self
    }

    /// The fault in words.
    pub fn told(&self, words: &Words) -> Told {
        let help = self.help.as_ref().map(|help| words.tell(help));
        Told { message: words.tell(&self.message), help }
    }
}

/// Puts faults in the order they are shown: errors first, then by file and place.
pub fn sort(faults: &mut Vec<Fault>) {
    faults.sort_by(|a, b| {
        let key = |f: &Fault| (f.severity, f.place.file.clone(), f.place.start(), f.name);
        key(a).cmp(&key(b))
    });
    faults.dedup();
}

/// So many faults of one file are shown; what is mended first often mends the rest.
const MOST: usize = 200;

/// Leaves out what more faults a file has than anyone reads, and says how many those are.
/// The faults are sorted, most serious first, and stay so.
pub fn limit(faults: &mut Vec<Fault>) {
    let mut seen: BTreeMap<FileName, usize> = BTreeMap::new();
    let mut most_serious: BTreeMap<FileName, Severity> = BTreeMap::new();
    faults.retain(|fault| {
        let number = seen.entry(fault.place.file.clone()).or_default();
        *number += 1;
        if *number > MOST {
            most_serious.entry(fault.place.file.clone()).or_insert(fault.severity);
        }
        *number <= MOST
    });
    for (file, severity) in most_serious {
        let number = seen.get(&file).map_or(0, |number| number - MOST);
        let message = said!("more-faults", count = number);
        let fault = Fault::new("more-faults", severity, &Place::file(&file), message);
        faults.push(fault.help(said!("more-faults-help")));
    }
    sort(faults);
}

/// Whether any of the faults stops publishing.
pub fn stops(faults: &[Fault]) -> bool {
    faults.iter().any(|fault| fault.severity == Severity::Error)
}

/// The first forty characters of what someone wrote, for a message.
pub fn clip(written: &str) -> String {
    match written.char_indices().nth(40) {
        Some((at, _)) => format!("{}…", &written[..at]),
        None => written.to_owned(),
    }
}

/// What to write in place of `word`: the nearest of the names that are known, else all of
/// them behind what they are.
pub fn instead(word: &str, known: &[&str], they: Statement) -> Statement {
    match nearest(word, known.iter().copied()) {
        Some(near) => said!("did-you-mean", near),
        None => all_of(known, they),
    }
}

/// All of the names that are known, behind what they are.
fn all_of(known: &[&str], they: Statement) -> Statement {
    let names: Vec<&str> = known.iter().take(MOST_NAMES).copied().collect();
    match known.len().saturating_sub(MOST_NAMES) {
        _ if known.is_empty() => said!("names-none", they),
        0 => said!("names-known", they, names),
        more => said!("names-more", they, names, more),
    }
}

/// More names than this are not listed.
const MOST_NAMES: usize = 40;

/// A word of more bytes than this is no slip of the fingers.
const LONGEST: usize = 80;

/// The name among `known` that comes nearest to `word`, if one is near enough to be a
/// slip of the fingers.
pub fn nearest<'a>(
    word: &str,
    known: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    if word.len() > LONGEST {
        return None;
    }
    let word = word.to_lowercase();
    known
        .into_iter()
        .map(|name| (strsim::damerau_levenshtein(&word, &name.to_lowercase()), name))
        .filter(|(far, name)| *far <= 1 + name.chars().count().min(word.len()) / 4)
        .min_by_key(|(far, _)| *far)
        .map(|(_, name)| name)
}
