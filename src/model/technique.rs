//! A technique page: prose with live drawings.

use crate::fault::{Place, Placed};
use crate::measure::{Length, Size};

use super::{Block, Brace, CutPlan, LockIn, Shaping, Shown, Turn};

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
    /// Shapings of the author's own, by which steps may say `shape: my-name`.
    pub shapes: Vec<OwnShape>,
    /// The text; headings stay in it.
    pub content: Vec<Block<Brace>>,
    /// The pictures that stand in it.
    pub pictures: Vec<Placed<String>>,
    /// Where the links in it lead, as written.
    pub links: Vec<Placed<String>>,
    /// The language of its title and summary, where it is not the edition's.
    pub title_in: Option<String>,
    /// The mark of its text, by which a translation knows that it has changed.
    pub mark: String,
    /// The file.
    pub place: Place,
}

impl Demonstration {
    /// The tray, and the pieces on it: the sheet is the tray where no piece is shaped.
    pub fn tray(&self) -> Option<(&Size, u64)> {
        Some((self.on.as_ref().unwrap_or(&self.sheet.value), self.per_tray?))
    }
}

/// A shaping of the author's own.
#[derive(Clone, Debug)]
pub struct OwnShape {
    /// Its name.
    pub name: Placed<String>,
    /// The piece that its points are of.
    pub piece: Size,
    /// Two to six stages.
    pub frames: Vec<OwnFrame>,
}

/// One stage of an author's shaping.
#[derive(Clone, Debug)]
pub struct OwnFrame {
    /// What is done, in the author's words.
    pub does: String,
    /// What is seen, in painting order; nothing where a picture shows it.
    pub lines: Vec<(OwnLine, Vec<[Length; 2]>)>,
    /// A picture of it.
    pub picture: Option<Shown>,
}

/// What a line of points in an author's stage is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OwnLine {
    /// The outline of dough.
    Dough,
    /// The outline of a part that lies over.
    Flap,
    /// A fold to be made.
    Fold,
    /// A cut to be made.
    Cut,
    /// Edges pressed shut.
    Seam,
    /// The outline of a filling.
    Filling,
    /// A movement, from the first point to the second.
    Arrow,
}

impl OwnLine {
    /// Every kind, in painting order.
    pub const ALL: [Self; 7] = [
        Self::Dough,
        Self::Flap,
        Self::Filling,
        Self::Fold,
        Self::Cut,
        Self::Seam,
        Self::Arrow,
    ];

    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Dough => "dough",
            Self::Flap => "flap",
            Self::Fold => "fold",
            Self::Cut => "cut",
            Self::Seam => "seam",
            Self::Filling => "filling",
            Self::Arrow => "arrow",
        }
    }
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
    /// The tray, where the sheet is the piece that is shaped.
    pub on: Option<Size>,
    /// The line.
    pub place: Place,
}
