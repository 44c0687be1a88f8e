//! A step and the ticket under its heading.

use crate::fault::{Place, Placed};
use crate::measure::{Duration, Exact, Length, Size, Temperature};

use super::{Block, Brace, Divide, Inline, Shaping, Share, Shown};

/// One step of the method.
#[derive(Clone, Debug)]
pub struct Step {
    /// The heading made into a name: `first-turn`.
    pub name: String,
    /// The heading.
    pub title: Placed<String>,
    /// The steps it waits for; `None` for the step above.
    pub after: Option<Vec<Placed<String>>>,
    /// Sections or ingredients that go in here.
    pub uses: Vec<Placed<Use>>,
    /// Kit it occupies: how many of what.
    pub kit: Vec<(u32, String)>,
    /// Attended time.
    pub hands: Option<Placed<Span>>,
    /// Unattended time.
    pub wait: Option<Placed<Wait>>,
    /// Where it waits: `fridge`, `proofer`.
    pub at_place: Option<Placed<String>>,
    /// The temperature it waits at.
    pub at: Option<Placed<Temperature>>,
    /// How long it may stay longer, and where.
    pub hold: Option<Placed<Hold>>,
    /// The rolled size: first the side that is stretched, and folded.
    pub sheet: Option<Placed<Size>>,
    /// Which way it is rolled.
    pub roll: Option<Placed<Rolling>>,
    /// How the fat is enclosed.
    pub lock_in: Option<Placed<LockIn>>,
    /// Whether the fat is outside and the dough within.
    pub inverted: bool,
    /// How the sheet is folded.
    pub turn: Option<Placed<Turn>>,
    /// How the sheet is cut.
    pub cut: Option<Placed<CutPlan>>,
    /// How the dough is divided.
    pub divide: Option<Placed<Divide>>,
    /// The part of a divided dough that it works on, where it is said.
    pub part: Option<Placed<String>>,
    /// How each piece is shaped.
    pub shape: Option<Placed<Shaping>>,
    /// Oven temperature and time.
    pub bake: Option<Placed<Bake>>,
    /// Oven temperature with a fan.
    pub fan: Option<Placed<Temperature>>,
    /// Pieces on one tray.
    pub per_tray: Option<Placed<u64>>,
    /// Core temperature to reach.
    pub core: Option<Placed<Temperature>>,
    /// How it must be cooled, as written.
    pub cool: Option<Placed<String>>,
    /// How to tell that it is done: text, temperatures, lengths and sizes.
    pub until: Option<Vec<Inline<Brace>>>,
    /// The video to watch, by its name in the head.
    pub watch: Option<Placed<String>>,
    /// A picture to look at.
    pub picture: Option<Shown>,
    /// Whether that picture is printed too.
    pub printed: bool,
    /// What is said to the student.
    pub prose: Vec<Block<Brace>>,
    /// The ticket.
    pub place: Place,
}

/// What a step uses.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Use {
    /// A section's or an ingredient's name, as written.
    pub name: String,
    /// How much of it.
    pub share: UseShare,
}

/// How much of a section or ingredient a step uses.
pub type UseShare = Share;

/// A time that may grow with the batch: `10 min + 20 s per piece`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Span {
    /// The time that is always needed; the lower end of a range.
    pub least: Duration,
    /// The upper end of a range; `least` where there is none.
    pub most: Duration,
    /// What is added for each piece or tray.
    pub pace: Option<Pace>,
}

/// Time that grows with the batch.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pace {
    /// For each piece.
    Piece(Duration),
    /// For each tray.
    Tray(Duration),
}

/// Unattended time and the range it may lie in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wait {
    /// As planned.
    pub usual: Duration,
    /// The shortest allowed.
    pub least: Duration,
    /// The longest allowed.
    pub most: Duration,
}

/// How long something may stay longer than its wait.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hold {
    /// At most so long.
    pub up_to: Duration,
    /// Where; the step's own place if not said.
    pub at_place: Option<String>,
}

/// How the fat is enclosed in the dough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LockIn {
    /// A block set diagonally on a square, four flaps over it: one fat layer.
    Envelope,
    /// Fat on two thirds, folded in three: two fat layers.
    Letter,
    /// Fat on the middle half, both ends folded over it to meet: one fat layer.
    Book,
}

/// How a sheet is folded: into how many parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn {
    /// Parts lying on one another after the turn: 2 to 12.
    pub parts: u32,
    /// Where the two ends of a book meet.
    pub meet: Meet,
}

/// Where the two ends of a book turn meet, from the sheet's left end: `over` parts of
/// `under`, of its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Meet {
    /// Parts from the left end.
    pub over: u32,
    /// Parts in the whole length; more than `over`.
    pub under: u32,
}

/// Which way a block is rolled, where its ticket says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rolling {
    /// A quarter turn from the rolling before: what is taken as done anyway.
    QuarterTurn,
    /// The same way as before the fold.
    SameWay,
}

/// How a sheet is cut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CutPlan {
    /// Pieces of one shape, laid out by the program.
    Shape(Shape),
    /// The author's own grid: strips along the long side, each cut across.
    Grid {
        /// Strips.
        strips: u32,
        /// Pieces in each strip.
        across: u32,
        /// Whether each piece is then cut from corner to corner.
        diagonal: bool,
    },
    /// Strips of a width, along the long side.
    Strips(Length),
}

/// A piece's shape.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Isosceles triangles, nested head to tail.
    Triangles {
        /// The side opposite the point.
        base: Length,
        /// From base to point.
        height: Length,
    },
    /// Rectangles.
    Rectangles(Size),
    /// Squares.
    Squares(Length),
    /// Rounds by their diameter.
    Rounds(Length),
}

/// Oven temperature and time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bake {
    /// The oven.
    pub oven: Temperature,
    /// How long, for one tray.
    pub time: Wait,
}

impl LockIn {
    /// Fat layers that the lock-in itself makes.
    pub fn fat_layers(self) -> u64 {
        match self {
            Self::Envelope | Self::Book => 1,
            Self::Letter => 2,
        }
    }

    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Envelope => "envelope",
            Self::Letter => "letter",
            Self::Book => "book",
        }
    }
}

impl Meet {
    /// In the middle: both ends are folded in alike.
    pub const MIDDLE: Self = Self { over: 1, under: 2 };

    /// The share of the sheet's length to the left of where they meet, 0 to 1.
    pub fn share(self) -> Exact {
        Exact::new(self.over.into(), self.under.max(1).into())
    }
}

impl Turn {
    /// A turn in so many parts, as usual: the ends of a book meet in the middle.
    pub const fn in_parts(parts: u32) -> Self {
        Self { parts, meet: Meet::MIDDLE }
    }

    /// The word for it: `book`, `letter`, `half`, or the number of parts.
    pub fn word(self) -> String {
        match self.parts {
            2 => "half".into(),
            3 => "letter".into(),
            4 => "book".into(),
            parts => format!("{parts}-part"),
        }
    }
}

impl Step {
    /// Whether it has to do with the lamination.
    pub fn laminates(&self) -> bool {
        self.lock_in.is_some() || self.turn.is_some()
    }

    /// A ticket-less share of all of something.
    pub fn whole() -> UseShare {
        Share { part: Exact::from_integer(1.into()), words: String::new() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Half, letter (single) and book (double) turns fold in 2, 3 and 4; an envelope or a
    /// book encloses one layer of fat, a letter two: common practice, no source.
    #[test]
    fn turns_and_lock_ins_have_their_numbers() {
        let words = [2, 3, 4, 5].map(|parts| Turn::in_parts(parts).word());
        assert_eq!(words, ["half", "letter", "book", "5-part"]);
        let kinds = [LockIn::Envelope, LockIn::Letter, LockIn::Book];
        assert_eq!(kinds.map(LockIn::fat_layers), [1, 2, 1]);
        assert_eq!(Step::whole().part, Exact::from_integer(1.into()));
    }
}
