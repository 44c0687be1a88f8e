//! One thing that may be written.

use std::ops::Range;

use crate::said;
use crate::statement::Statement;

/// One thing that may be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offer {
    /// What it is.
    pub kind: OfferKind,
    /// By what it is told from the others.
    pub label: String,
    /// What is written.
    pub text: String,
    /// The bytes of the text in whose place that goes.
    pub place: Range<usize>,
    /// What it stands for.
    pub about: Option<Statement>,
}

/// What is offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum OfferKind {
    /// A key of a file or of its head.
    Key,
    /// A line of a ticket.
    Row,
    /// A value of a key.
    Value,
    /// A unit of measure.
    Unit,
    /// An ingredient.
    Ingredient,
    /// A section of the formula.
    Section,
    /// A recipe.
    Recipe,
    /// A technique.
    Technique,
    /// A step.
    Step,
    /// A way of a recipe: a swap by its name.
    Way,
    /// A part of a divided dough.
    Part,
    /// A shaping.
    Shape,
    /// A place where things stand.
    Place,
    /// Kit.
    Kit,
    /// A picture.
    Picture,
    /// A video.
    Video,
    /// A word of the trade.
    Word,
    /// A value in braces, which follows units and scale.
    Live,
    /// A fault, by its name.
    Fault,
    /// An allergen.
    Allergen,
    /// A language.
    Language,
    /// The mark of what a translation was made from.
    Mark,
}

impl Offer {
    /// The same for a caret at this byte, which its place then holds: before a word that
    /// begins further on (the caret stands in the space before it) it is put in.
    #[must_use]
    pub(super) fn at(mut self, caret: usize) -> Self {
        let Range { start, end } = self.place;
        self.place = if start > caret { caret..caret } else { start..end.max(caret) };
        self
    }

    /// One that is written as it is called.
    pub(super) fn whole(kind: OfferKind, label: &str, place: Range<usize>) -> Self {
        let (label, text) = (label.to_owned(), label.to_owned());
        Self { kind, label, text, place, about: None }
    }

    /// The same, with words on what it stands for.
    #[must_use]
    pub(super) fn about(mut self, text: &str) -> Self {
        self.about = (!text.is_empty()).then(|| said!("here-says", text));
        self
    }

    /// The same, written as `text`.
    #[must_use]
    pub(super) fn written(mut self, text: impl Into<String>) -> Self {
        self.text = text.into();
        self
    }
}

/// Whether a name may be meant by what is typed of it: each word typed begins one of the
/// name's words, in whatever order.
pub(super) fn fits(typed: &str, name: &str) -> bool {
    let (typed, name) = (typed.to_lowercase(), name.to_lowercase());
    let begins = |word: &str| {
        let mut starts = name.match_indices(word).map(|(at, _)| &name[..at]);
        starts.any(|before| !before.ends_with(joins) || !word.starts_with(joins))
    };
    typed.split_whitespace().all(begins)
}

/// Whether a letter goes on a word; one of a script without spaces begins a new one.
fn joins(sign: char) -> bool {
    sign.is_alphanumeric() && sign < '\u{3000}'
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_begun_in_any_order() {
        for (typed, name, does) in [
            ("", "butter", true),
            ("fl br", "bread flour", true),
            ("our", "bread flour", false),
            ("Crè", "crème fraîche", true),
            ("小麦", "全粒小麦粉", true),
            ("bread flour", "flour", false),
        ] {
            assert_eq!(fits(typed, name), does, "{typed} {name}");
        }
    }
}
