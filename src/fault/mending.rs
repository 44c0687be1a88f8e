//! The change of text that mends a fault, where what would be right can be written for its
//! author.

use crate::said;
use crate::statement::Statement;

use super::{Fault, Place, all_of, nearest};

/// A change of text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mending {
    /// What is taken out; where it is empty, only something is put in.
    pub place: Place,
    /// What is put in.
    pub text: String,
}

impl Fault {
    /// Adds a change of text that mends it.
    #[must_use]
    pub fn mended(mut self, place: Place, text: impl Into<String>) -> Self {
        let mut all = self.mendings.into_vec();
        all.push(Mending { place, text: text.into() });
        self.mendings = all.into();
        self
    }

    /// Adds the name that was meant by `word`, which stands at the end of the words at fault,
    /// if one is near; else what `other` says.
    #[must_use]
    pub fn meant(
        self,
        word: &str,
        near: Option<&str>,
        other: impl FnOnce() -> Statement,
    ) -> Self {
        let Some(near) = near else { return self.help(other()) };
        let fault = self.help(said!("did-you-mean", near));
        let (start, end) = (fault.place.start(), fault.place.end());
        // Elsewhere the words at fault are more than the name, or stand in quotes.
        if end - start != word.len() {
            return fault;
        }
        let place = fault.place.clone();
        fault.mended(place, near)
    }

    /// Adds the nearest of the names that are known, else all of them behind what they are.
    #[must_use]
    pub fn one_of(self, word: &str, known: &[&str], they: Statement) -> Self {
        let near = nearest(word, known.iter().copied());
        self.meant(word, near, || all_of(known, they))
    }
}
