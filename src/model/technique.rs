//! A technique page: prose with live drawings.

use crate::fault::{Place, Placed};
use crate::measure::Size;

use super::{Block, Brace, CutPlan, LockIn, Turn};

/// One technique file.
#[derive(Clone, Debug)]
pub struct Technique {
    /// The file's name without ending.
    pub name: String,
    /// Its title.
    pub title: Placed<String>,
    /// What it is, in a sentence.
    pub summary: String,
    /// What to draw.
    pub drawings: Vec<Demonstration>,
    /// The text; headings stay in it.
    pub content: Vec<Block<Brace>>,
    /// The pictures that stand in it.
    pub pictures: Vec<Placed<String>>,
    /// The file.
    pub place: Place,
}

/// One drawing asked for by a technique.
#[derive(Clone, Debug)]
pub struct Demonstration {
    /// The sheet it is done on.
    pub sheet: Placed<Size>,
    /// A lock-in, and the fat block.
    pub lock_in: Option<(LockIn, Size)>,
    /// A turn.
    pub turn: Option<Turn>,
    /// A cut.
    pub cut: Option<CutPlan>,
    /// The line.
    pub place: Place,
}
