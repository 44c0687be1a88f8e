//! What names a value holds, as its schema says (`x-holds`, and `x-keys` for keys).

use std::ops::Range;

use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde::de::value::{Error, StrDeserializer};

use super::offer::Offer;
use super::{Here, amount, names};

/// What a value or a key names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub(super) enum Holds {
    /// A line of the formula.
    AmountLine,
    /// An ingredient of the pantry.
    Ingredient,
    /// An allergen by its plain word.
    Allergen,
    /// A recipe by its file's name.
    Recipe,
    /// A technique by its file's name.
    Technique,
    /// Either.
    RecipeOrTechnique,
    /// A section of the formula.
    Section,
    /// A section, or an ingredient of a line.
    SectionOrIngredient,
    /// A step of the recipe.
    Step,
    /// A step of what a class makes.
    ClassStep,
    /// A swap of the recipe.
    Swap,
    /// A swap of the recipe that a class makes.
    Way,
    /// A part of a divided dough.
    Part,
    /// A shaping.
    Shape,
    /// A place where things stand.
    Place,
    /// Kit.
    Kit,
    /// A picture of the media folder.
    Picture,
    /// A video that the head names.
    Video,
    /// A fault that may be accepted.
    Fault,
    /// A family of dough.
    Family,
    /// A language that the program has words for.
    Language,
    /// The step or heading that a part of a translation stands for.
    Original,
    /// The mark of what is translated.
    Mark,
}

impl Holds {
    /// By its word in a schema.
    pub(super) fn of(word: &str) -> Option<Self> {
        let word: StrDeserializer<Error> = word.into_deserializer();
        Self::deserialize(word).ok()
    }

    /// Whether several may stand there, with commas between them.
    fn several(self) -> bool {
        match self {
            Self::Allergen | Self::Recipe | Self::Technique | Self::RecipeOrTechnique => {
                true
            }
            Self::Section | Self::SectionOrIngredient | Self::Step | Self::ClassStep => {
                true
            }
            Self::Swap | Self::Way | Self::Kit | Self::Language => true,
            Self::AmountLine
            | Self::Ingredient
            | Self::Part
            | Self::Shape
            | Self::Place => false,
            Self::Picture | Self::Video | Self::Fault | Self::Family => false,
            Self::Original | Self::Mark => false,
        }
    }
}

/// The names that a value may hold; `range` is all of the value.
pub(super) fn offers(here: Here, holds: Holds, range: &Range<usize>) -> Vec<Offer> {
    let one = own_range(here, holds, range);
    match holds {
        Holds::AmountLine => amount::offers(here, range),
        Holds::Picture if one.end < here.spot.at => Vec::new(),
        Holds::Ingredient
        | Holds::ClassStep
        | Holds::Kit
        | Holds::Picture
        | Holds::Allergen
        | Holds::Recipe
        | Holds::Technique
        | Holds::RecipeOrTechnique
        | Holds::Section
        | Holds::SectionOrIngredient
        | Holds::Step
        | Holds::Swap
        | Holds::Way
        | Holds::Part
        | Holds::Shape
        | Holds::Place
        | Holds::Video
        | Holds::Fault
        | Holds::Family
        | Holds::Language
        | Holds::Original
        | Holds::Mark => names::offers(here, holds, one),
    }
}

/// What of a value the name takes that the spot is in.
pub(super) fn own_range(here: Here, holds: Holds, range: &Range<usize>) -> Range<usize> {
    let one = if holds.several() { piece(here, range) } else { range.clone() };
    match holds {
        Holds::ClassStep => last_word(here, one),
        Holds::Kit => behind_count(here, one),
        Holds::Picture => before_comma(here, one),
        Holds::AmountLine | Holds::Ingredient | Holds::Allergen | Holds::Recipe => one,
        Holds::Technique | Holds::RecipeOrTechnique | Holds::Section => one,
        Holds::SectionOrIngredient | Holds::Step | Holds::Swap | Holds::Way => one,
        Holds::Part | Holds::Shape | Holds::Place | Holds::Video | Holds::Fault => one,
        Holds::Family | Holds::Language | Holds::Original | Holds::Mark => one,
    }
}

/// The one of several values between commas that the spot is in.
fn piece(here: Here, range: &Range<usize>) -> Range<usize> {
    let (text, at) = (here.spot.text, here.spot.at.clamp(range.start, range.end));
    let start = text[range.start..at]
        .rfind([',', '[', '+'])
        .map_or(range.start, |n| range.start + n + 1);
    let end = text[at..range.end].find([',', ']', '+']).map_or(range.end, |n| at + n);
    here.trimmed(start..end)
}

/// The last word up to the spot: `15 min before first-turn`.
fn last_word(here: Here, range: Range<usize>) -> Range<usize> {
    let start =
        here.typed(&range).rfind(' ').map_or(range.start, |n| range.start + n + 1);
    start..range.end.max(start)
}

/// What stands behind a number: `2 trays`.
fn behind_count(here: Here, range: Range<usize>) -> Range<usize> {
    let words = here.typed(&range);
    let rest = words.trim_start_matches(|sign: char| sign.is_ascii_digit());
    let blank = rest.len() < words.len() && rest.starts_with(' ');
    let lead = if blank { words.len() - rest.trim_start().len() } else { 0 };
    range.start + lead..range.end
}

/// What stands before the first comma: `crescents.jpg, eight crescents`. Behind it nothing is
/// named.
fn before_comma(here: Here, range: Range<usize>) -> Range<usize> {
    let end = here.words(&range).find(',').map_or(range.end, |n| range.start + n);
    range.start..end
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read::{Shape, schema};

    /// Every word of the schemas is known here.
    #[test]
    fn schemas_hold_known_names() {
        let mut seen = 0;
        for shape in Shape::ALL {
            let words = schema(shape).split("\"x-").skip(1);
            for rest in words {
                let word = rest.split('"').nth(2).expect("a word");
                assert!(Holds::of(word).is_some(), "{shape:?}: {word}");
                seen += 1;
            }
        }
        assert!(seen > 20, "the schemas were read: {seen}");
    }
}
