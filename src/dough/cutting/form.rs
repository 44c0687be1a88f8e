//! The forms of pieces.

use schemars::JsonSchema;
use serde::Serialize;

/// What a piece looks like before it is shaped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum Form {
    /// A triangle with two equal sides.
    Triangle,
    /// A triangle with a right angle.
    #[serde(rename = "right triangle")]
    RightTriangle,
    /// A rectangle.
    Rectangle,
    /// A square.
    Square,
    /// A round.
    Round,
    /// A strip as long as the sheet.
    Strip,
    /// No cut piece: a lump that was weighed.
    Lump,
}

impl Form {
    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Triangle => "triangle",
            Self::RightTriangle => "right triangle",
            Self::Rectangle => "rectangle",
            Self::Square => "square",
            Self::Round => "round",
            Self::Strip => "strip",
            Self::Lump => "lump",
        }
    }
}
