//! A fault as data: its name, how serious it is, where in the text it stands, what is
//! wrong and what would be right. Showing faults is the terminal's business, not this
//! module's.

mod place;
mod text;

pub use place::{Place, Placed};
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
    pub message: String,
    /// What would be right.
    pub help: Option<String>,
}

impl Fault {
    /// A fault that stops publishing.
    pub fn error(name: &'static str, place: &Place, message: impl Into<String>) -> Self {
        let (place, message) = (place.clone(), message.into());
        Self { name, severity: Severity::Error, place, message, help: None }
    }

    /// A fault that is worth a look.
    pub fn caution(
        name: &'static str,
        place: &Place,
        message: impl Into<String>,
    ) -> Self {
        Self { severity: Severity::Caution, ..Self::error(name, place, message) }
    }

    /// Adds what would be right.
    #[must_use]
    pub fn help(mut self, help: impl Into<String>) -> Self {
        self.help = Some(help.into());
        self
    }
}

/// Puts faults in the order they are shown: errors first, then by file and place.
pub fn sort(faults: &mut Vec<Fault>) {
    faults.sort_by(|a, b| {
        let key = |f: &Fault| (f.severity, f.place.file.clone(), f.place.start, f.name);
        key(a).cmp(&key(b))
    });
    faults.dedup();
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

/// The name among `known` that comes nearest to `word`, if one is near enough to be a
/// slip of the fingers.
pub fn nearest<'a>(
    word: &str,
    known: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    let word = word.to_lowercase();
    known
        .into_iter()
        .map(|name| (strsim::damerau_levenshtein(&word, &name.to_lowercase()), name))
        .filter(|(far, name)| *far <= 1 + name.chars().count().min(word.len()) / 4)
        .min_by_key(|(far, _)| *far)
        .map(|(_, name)| name)
}
