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

/// Makes a draft of `text`. `course` are the course's own files, of which `course.yaml` and
/// `pantry.yaml` say how amounts and names are read; without them the built-in pantry does.
///
/// # Errors
/// In plain words, where no recipe or no list of ingredients is found.
pub fn draft(text: &str, course: &[Source]) -> Result<Draft, String> {
    let mut written = read(text)?;
    written.bound();
    if written.groups.iter().all(|group| group.lines.is_empty()) {
        return Err(
            "no list of ingredients is found in it; write each ingredient on a line \
                    of its own, above the method"
                .into(),
        );
    }
    let trial = lines::Trial::new(course);
    let formula = lines::formula(&written, &trial);
    let plan = steps::plan(&written, &formula);
    Ok(write::draft(&written, formula, plan, &trial))
}

/// What kind of text it is, by its first signs, read as such.
fn read(text: &str) -> Result<written::Written, String> {
    let text = text.trim_start_matches('\u{feff}').trim();
    if text.starts_with(['{', '[']) {
        return linked::recipe(&[text.to_owned()]).ok_or_else(|| {
            "it looks like JSON, but there is no schema.org Recipe in it".to_owned()
        });
    }
    if page::is_page(text) {
        return linked::recipe(&page::linked_data(text)).ok_or_else(|| {
            "this page holds no schema.org Recipe data; copy the recipe's own words into a \
             text file and draft from that"
                .to_owned()
        });
    }
    Ok(paste::recipe(text))
}
