//! How a piece is shaped by hand.

use crate::measure::{Exact, Length};

/// How a piece of dough is shaped.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shaping {
    /// A triangle rolled from its base to its tip.
    Crescent(Crescent),
    /// A rectangle rolled round a filling.
    Baton,
    /// A strand wound flat round its end.
    Spiral,
    /// A strip turned about itself.
    Twist,
    /// A strand knotted once.
    Knot,
    /// Strands plaited flat: three or four.
    Plait(Strands),
    /// A square cut in from its corners, every other tip folded to the middle.
    Pinwheel,
    /// A square with all four corners folded to the middle.
    Envelope,
    /// A square or rectangle folded in half, its three open edges shut.
    Pocket,
    /// A square folded from corner to corner, or a round in half.
    Turnover,
    /// A square with two opposite corners folded over the middle.
    FoldedSquare,
    /// A strand joined at its ends.
    Ring,
    /// A ball.
    Round,
    /// A ball drawn out to twice its width.
    Oval,
    /// A loaf rolled up and set in its tin.
    Tin,
    /// A ball closed round a filling.
    FilledBall,
    /// The author's own, by the name that a technique gives it.
    Own(String),
}

/// Where the stages of a shaping come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShapedBy<'a> {
    /// The tin that the piece is set in.
    Tin,
    /// A technique of the author's, by its name.
    Author(&'a str),
    /// The piece, which is shaped by geometry.
    Geometry,
}

/// How a crescent is rolled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Crescent {
    /// How deep the base is cut in at its middle.
    pub notch: Option<Length>,
    /// By which part of its height the piece is stretched before it is rolled: 0 to 2.
    pub stretch: Exact,
    /// How its ends lie.
    pub bend: Bend,
}

/// How the ends of a crescent lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bend {
    /// In one line.
    Straight,
    /// Bent toward the baker.
    Curved,
    /// Bent until they meet, and pressed together.
    Joined,
}

/// Strands in a plait.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Strands {
    /// Three.
    Three,
    /// Four.
    Four,
}

impl Crescent {
    /// As cut, not stretched, straight.
    pub fn plain() -> Self {
        Self { notch: None, stretch: Exact::from_integer(0.into()), bend: Bend::Straight }
    }
}

impl Strands {
    /// How many.
    pub fn count(self) -> u32 {
        match self {
            Self::Three => 3,
            Self::Four => 4,
        }
    }
}

impl Shaping {
    /// Every shaping that has a geometry of its own, in its plainest form.
    pub fn all() -> Vec<Self> {
        vec![
            Self::Crescent(Crescent::plain()),
            Self::Baton,
            Self::Spiral,
            Self::Twist,
            Self::Knot,
            Self::Plait(Strands::Three),
            Self::Plait(Strands::Four),
            Self::Pinwheel,
            Self::Envelope,
            Self::Pocket,
            Self::Turnover,
            Self::FoldedSquare,
            Self::Ring,
            Self::Round,
            Self::Oval,
            Self::Tin,
            Self::FilledBall,
        ]
    }

    /// Where its stages come from.
    pub fn shaped_by(&self) -> ShapedBy<'_> {
        match self {
            Self::Tin => ShapedBy::Tin,
            Self::Own(name) => ShapedBy::Author(name),
            Self::Crescent(_)
            | Self::Baton
            | Self::Spiral
            | Self::Twist
            | Self::Knot
            | Self::Plait(_)
            | Self::Pinwheel
            | Self::Envelope
            | Self::Pocket
            | Self::Turnover
            | Self::FoldedSquare
            | Self::Ring
            | Self::Round
            | Self::Oval
            | Self::FilledBall => ShapedBy::Geometry,
        }
    }

    /// The word for it.
    pub fn word(&self) -> &str {
        match self {
            Self::Crescent(_) => "crescent",
            Self::Baton => "baton",
            Self::Spiral => "spiral",
            Self::Twist => "twist",
            Self::Knot => "knot",
            Self::Plait(Strands::Three) => "plait of 3",
            Self::Plait(Strands::Four) => "plait of 4",
            Self::Pinwheel => "pinwheel",
            Self::Envelope => "envelope",
            Self::Pocket => "pocket",
            Self::Turnover => "turnover",
            Self::FoldedSquare => "folded square",
            Self::Ring => "ring",
            Self::Round => "round",
            Self::Oval => "oval",
            Self::Tin => "tin",
            Self::FilledBall => "filled ball",
            Self::Own(name) => name,
        }
    }
}
