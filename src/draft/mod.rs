//! A draft in our format from a recipe that exists: text pasted from anywhere, a page with
//! schema.org data, or that data alone. Pure: nothing is fetched, no file is opened.
//!
//! Whoever wrote the text is a stranger: sizes are bounded, marks of Markdown and HTML stay
//! text. Nothing is guessed silently: what is not sure is a [`Draft::doubts`], which stands in
//! the draft under `to settle` and is a caution until the author takes it out.

mod label;
mod lines;
mod linked;
mod page;
mod paste;
mod phrase;
mod sentence;
mod steps;
mod times;
mod uses;
mod write;
mod written;

use crate::read::Source;
use crate::said;
use crate::statement::Statement;

/// A draft, not yet saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The name that its title gives its file, without ending.
    pub name: String,
    /// The text of the file.
    pub text: String,
    /// What its author has to settle, in the order of the text; also in it, under `to settle`.
    pub doubts: Vec<String>,
}

/// Why no draft can be made of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NothingFound {
    /// No list of ingredients.
    NoIngredients,
    /// It is data, and none of it is a recipe.
    NotInData,
    /// It is a page that holds no data of a recipe.
    NotInPage,
}

impl NothingFound {
    /// It as it is said.
    pub fn said(self) -> Statement {
        match self {
            Self::NoIngredients => said!("draft-no-ingredients"),
            Self::NotInData => said!("draft-not-in-data"),
            Self::NotInPage => said!("draft-not-in-page"),
        }
    }
}

/// Makes a draft of `text`. `course` are the course's own files, of which `course.yaml` and
/// `pantry.yaml` say how amounts and names are read; without them the built-in pantry does.
///
/// # Errors
/// Where no recipe or no list of ingredients is found.
pub fn draft(text: &str, course: &[Source]) -> Result<Draft, NothingFound> {
    let mut written = read(text)?;
    written.bound();
    if written.groups.iter().all(|group| group.lines.is_empty()) {
        return Err(NothingFound::NoIngredients);
    }
    let trial = lines::Trial::new(course);
    let formula = lines::formula(&written, &trial);
    let plan = steps::plan(&written, &formula);
    Ok(write::draft(&written, formula, plan, &trial))
}

/// What kind of text it is, by its first signs, read as such.
fn read(text: &str) -> Result<written::Written, NothingFound> {
    let text = text.trim_start_matches('\u{feff}').trim();
    if text.starts_with(['{', '[']) {
        return linked::recipe(&[text.to_owned()]).ok_or(NothingFound::NotInData);
    }
    if page::is_page(text) {
        let data = page::linked_data(text);
        return linked::recipe(&data).ok_or(NothingFound::NotInPage);
    }
    Ok(paste::recipe(text))
}
