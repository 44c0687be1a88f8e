//! How a piece is shaped, where the shape is geometry.

/// How a piece of dough is shaped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shaping {
    /// A triangle rolled from its base to its tip.
    Rolled,
    /// A square folded from corner to corner.
    Folded,
    /// A square cut in from its corners, every other tip folded to the middle.
    Pinwheel,
    /// A rectangle rolled round a filling.
    Baton,
    /// A loaf rolled up and set in its tin.
    Tin,
}

impl Shaping {
    /// Every shaping.
    pub const ALL: [Self; 5] =
        [Self::Rolled, Self::Folded, Self::Pinwheel, Self::Baton, Self::Tin];

    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Rolled => "rolled",
            Self::Folded => "folded",
            Self::Pinwheel => "pinwheel",
            Self::Baton => "baton",
            Self::Tin => "tin",
        }
    }
}
