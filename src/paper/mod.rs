//! Handouts: from the computed sheet to PDF, through Typst.
//!
//! [`Press::data`] writes down, as JSON, everything that one handout depends on besides
//! the theme and the program; [`Press::print`] sets that data in type with the theme's
//! templates and makes a tagged PDF/UA-1 of it, which is a PDF/A-2a too. What an instructor wrote reaches the
//! templates as values, never as markup. Nothing here computes an amount.

mod book;
mod bundle;
mod chapter;
mod class;
mod code;
mod data;
mod epub;
mod fault;
mod formula;
mod glyphs;
mod labels;
mod layers;
mod page;
mod photograph;
mod press;
mod setting;
mod workers;
mod world;

#[cfg(test)]
mod bundle_tests;
#[cfg(test)]
mod fixture;
#[cfg(test)]
mod sheet_tests;
#[cfg(test)]
mod tests;

pub use book::Book;
pub use bundle::{Printing, SetCover};
pub use class::ClassPaper;
pub use fault::{PaperFault, Unfound, Unset};
pub use glyphs::{Glyphs, missing_faces, missing_glyphs};
pub use labels::{Grid, Tubs};
pub use press::Press;
pub use workers::spread;
pub use world::Files;

use crate::draw::{Figure, figures};
use crate::media::Medium;
use crate::sheet::{CourseSheet, HandoutKind, Level, Paper, Sheet, Units};
use crate::words::Words;

/// A recipe that goes into another one, at the size that is taken of it.
pub struct Inner {
    /// Its sheet.
    pub sheet: Sheet,
    /// Its drawings.
    pub figures: Vec<Figure>,
}

impl Inner {
    /// The recipes that go into one, with their drawings.
    pub fn all(sheets: Vec<Sheet>, words: &Words) -> Vec<Self> {
        let drawn = |sheet: Sheet| Self { figures: figures(&sheet, words), sheet };
        sheets.into_iter().map(drawn).collect()
    }
}

/// One handout to make.
#[derive(Clone, Copy)]
pub struct Job<'a> {
    /// The recipe at the batch size to print.
    pub sheet: &'a Sheet,
    /// The course it belongs to.
    pub course: &'a CourseSheet,
    /// The recipe's drawings at this batch size.
    pub figures: &'a [Figure],
    /// The recipes that go into it and stand on the same sheet, in the order of work.
    pub included: &'a [Inner],
    /// The course's pictures.
    pub media: &'a [Medium],
    /// The words of the course's language.
    pub words: &'a Words,
    /// The kind of handout.
    pub kind: HandoutKind,
    /// Which unit system comes first.
    pub units: Units,
    /// The paper to set it for.
    pub paper: Paper,
    /// The batch's short name, for the address in the scan code: `x1`, `half`.
    pub batch_key: &'a str,
    /// To whom it says more than to all.
    pub levels: &'a [Level],
    /// Whose it is, where it is made for one station of a class: `pair 3`.
    pub whose: Option<&'a str>,
    /// How many bakers of that station make so much each.
    pub makers: u32,
}
