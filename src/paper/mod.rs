//! Handouts: from the computed sheet to PDF, through Typst.
//!
//! [`Press::data`] writes down, as JSON, everything that one handout depends on besides
//! the theme and the program; [`Press::print`] sets that data in type with the theme's
//! templates and makes a tagged PDF/UA-1 of it, which is a PDF/A-2a too. What an instructor wrote reaches the
//! templates as values, never as markup. Nothing here computes an amount.

mod chapter;
mod class;
mod code;
mod data;
mod desk;
mod fault;
mod formula;
mod glyphs;
mod labels;
mod layers;
mod page;
mod press;
mod room;
mod setting;
mod spread;

#[cfg(test)]
mod fixture;
#[cfg(test)]
mod room_tests;
#[cfg(test)]
mod tests;

pub use class::ClassPaper;
pub use desk::Files;
pub use fault::PaperFault;
pub use glyphs::{Glyphs, missing_faces, missing_glyphs};
pub use labels::{Grid, Tubs};
pub use press::Press;
pub use room::{Part, SetCover};
pub use spread::spread;

use crate::draw::Figure;
use crate::sheet::{CourseSheet, HandoutKind, Paper, Sheet, Units};
use crate::words::Words;

/// One handout to make.
#[derive(Clone, Copy)]
pub struct Job<'a> {
    /// The recipe at the batch size to print.
    pub sheet: &'a Sheet,
    /// The course it belongs to.
    pub course: &'a CourseSheet,
    /// The recipe's drawings at this batch size.
    pub figures: &'a [Figure],
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
    /// Whose it is, where it is made for one station of a class: `pair 3`.
    pub whose: Option<&'a str>,
    /// How many bakers of that station make so much each.
    pub makers: u32,
}
