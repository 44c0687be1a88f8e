//! The prose of a course in a second language. Numbers, sizes and times are none of it: they
//! come from the texts that it translates.

use std::collections::BTreeSet;

use crate::fault::{Place, Placed};

use super::{Block, Brace, Inline};

/// Everything below `in/LANGUAGE/`.
#[derive(Clone, Debug, Default)]
pub struct Translation {
    /// The language's tag.
    pub language: String,
    /// Short texts as they are written in the first language, and what they are in this one.
    pub words: Vec<[Placed<String>; 2]>,
    /// Recipes, by the names of their files.
    pub recipes: Vec<TranslatedText>,
    /// Techniques, by the names of their files.
    pub techniques: Vec<TranslatedText>,
    /// The words of the trade.
    pub glossary: Vec<TranslatedEntry>,
}

/// One recipe or technique in a second language.
#[derive(Clone, Debug)]
pub struct TranslatedText {
    /// The name of its file, which is that of the original.
    pub name: String,
    /// Its title.
    pub title: Placed<String>,
    /// What it is, in a sentence.
    pub summary: String,
    /// The mark of the original's title, summary and opening that this one was made from.
    pub mark: Option<Placed<String>>,
    /// What stands before the first heading; all of a technique.
    pub opening: Vec<Block<Brace>>,
    /// What stands under the headings of a recipe.
    pub parts: Vec<TranslatedPart>,
    /// Where the links in it lead, as written.
    pub links: Vec<Placed<String>>,
    /// The file.
    pub place: Place,
}

/// What stands under one heading.
#[derive(Clone, Debug)]
pub struct TranslatedPart {
    /// The heading.
    pub title: Placed<String>,
    /// The name of the step or the heading that it translates.
    pub of: Placed<String>,
    /// The mark of the original that it was made from.
    pub mark: Option<Placed<String>>,
    /// How to tell that the step is done.
    pub until: Option<Vec<Inline<Brace>>>,
    /// What is said to the student.
    pub prose: Vec<Block<Brace>>,
    /// The other ways to do the step.
    pub others: Vec<TranslatedOther>,
}

/// Another way to do a step, with other kit.
#[derive(Clone, Debug)]
pub struct TranslatedOther {
    /// What it is called in the original.
    pub of: Placed<String>,
    /// The mark of the original that it was made from.
    pub mark: Option<Placed<String>>,
    /// How to tell that the step is done.
    pub until: Option<Vec<Inline<Brace>>>,
    /// What is said to the student.
    pub prose: Vec<Block<Brace>>,
}

/// One word of the trade in a second language.
#[derive(Clone, Debug)]
pub struct TranslatedEntry {
    /// The word of the first language.
    pub of: Placed<String>,
    /// The word.
    pub word: Placed<String>,
    /// The mark of the original that it was made from.
    pub mark: Option<Placed<String>>,
    /// Other forms of it that a text may use.
    pub also: Vec<Placed<String>>,
    /// What it means.
    pub meaning: Vec<Block<Brace>>,
    /// Where the links in it lead, as written.
    pub links: Vec<Placed<String>>,
}

/// What of a recipe stands in its first language in an edition in another one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Untold {
    /// The first language's tag.
    pub language: String,
    /// Whether its title and its summary do.
    pub head: bool,
    /// The names of its steps and headings that do.
    pub parts: BTreeSet<String>,
}
