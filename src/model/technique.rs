//! A technique page: prose with live drawings.

use crate::fault::{Place, Placed};
use crate::measure::{Length, Size};

use super::{Block, Brace, CutPlan, LockIn, Shaping, Turn};

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
    /// The file.
    pub place: Place,
}

/// One drawing asked for by a technique.
#[derive(Clone, Debug)]
pub struct Demonstration {
    /// The sheet it is done on; the piece, the tray or the tin where it is about those.
    pub sheet: Placed<Size>,
    /// A lock-in, and the fat block.
    pub lock_in: Option<(LockIn, Size)>,
    /// Whether the fat is outside: the sheet is of fat, the block of dough.
    pub inverted: bool,
    /// A turn.
    pub turn: Option<Turn>,
    /// A cut.
    pub cut: Option<CutPlan>,
    /// Several turns after one another, to show how the layers grow.
    pub turns: Vec<Turn>,
    /// The block that is rolled to the sheet.
    pub roll: Option<Size>,
    /// How the piece is shaped.
    pub shape: Option<Shaping>,
    /// A tin's depth.
    pub depth: Option<Length>,
    /// Pieces on the tray.
    pub per_tray: Option<u64>,
    /// The line.
    pub place: Place,
}
