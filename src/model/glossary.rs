//! The words of the trade that the course explains.

use crate::fault::Placed;

use super::{Block, Brace};

/// One word of `glossary.yaml`.
#[derive(Clone, Debug)]
pub struct Entry {
    /// The word.
    pub word: Placed<String>,
    /// Other forms of it that a text may use.
    pub also: Vec<Placed<String>>,
    /// Whether the word is an everyday one too: a text means the trade's only by the other
    /// forms.
    pub everyday: bool,
    /// What it means.
    pub meaning: Vec<Block<Brace>>,
    /// Where the links in it lead, as written.
    pub links: Vec<Placed<String>>,
    /// The mark of what it means, by which a translation knows that it has changed.
    pub mark: String,
}

impl Entry {
    /// The word made into a name for addresses: `lock-in`.
    pub fn name(&self) -> String {
        let word = self.word.value.to_lowercase();
        let parts = word.split(|sign: char| !sign.is_alphanumeric());
        parts.filter(|part| !part.is_empty()).collect::<Vec<_>>().join("-")
    }
}
