//! Amount lines: `225 g (1 cup) butter, cold`.

use crate::fault::{Place, Placed};
use crate::measure::{Exact, Temperature, Unit};

/// One line of a formula.
#[derive(Clone, Debug)]
pub struct AmountLine {
    /// How much; the truth where two amounts are given, the middle of a range.
    pub amount: Amount,
    /// The ends of a range, as multiples of its middle: `3 to 5 g`.
    pub range: Option<(Exact, Exact)>,
    /// Words that say not to take it too exactly: `about`, `scant`.
    pub hedge: Option<String>,
    /// The second amount, in brackets, that must agree with the first.
    pub also: Option<Placed<Quantity>>,
    /// What.
    pub ingredient: Placed<Ingredient>,
    /// What follows the comma: `cold`, `soft`.
    pub note: Option<String>,
    /// The ingredient's own temperature (`water at 27 °C`).
    pub at: Option<Temperature>,
    /// What it is for.
    pub purpose: Purpose,
    /// Whether it may be left out: `50 g walnuts, if you like`.
    pub optional: bool,
    /// The names of what it stands in place of, in one of a recipe's ways.
    pub stands_for: Vec<String>,
    /// The whole line.
    pub place: Place,
}

/// What a line of a formula is for, as far as the author's words say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Purpose {
    /// To be mixed: what is said of no other purpose.
    #[default]
    Mixed,
    /// Fat to be rolled into the dough.
    RollIn,
    /// Brushed on.
    Wash,
    /// For the bench, the tin, or to be strewn on.
    Dusting,
    /// Put into or onto the pieces.
    Filling,
    /// Put on top.
    Topping,
}

impl Purpose {
    /// Whether it is put on what has been mixed or shaped, and no part of it.
    pub fn is_put_on(self) -> bool {
        match self {
            Self::Mixed | Self::RollIn => false,
            Self::Wash | Self::Dusting | Self::Filling | Self::Topping => true,
        }
    }
}

/// How much of an ingredient.
#[derive(Clone, Debug)]
pub enum Amount {
    /// A number of something.
    Of(Placed<Quantity>),
    /// No weight: `to taste`, `a pinch`, `for dusting`. Kept as written.
    Free(String),
}

/// A number and what it counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// A number of units.
    Unit(Exact, Unit),
    /// Several of them, all of weight or all of volume: `1 lb 4 oz`.
    Sum(Vec<(Exact, Unit)>),
    /// A number of pieces that the pantry knows by name (`1 stick`, `2 large`); the name
    /// is empty where none was written (`2 eggs`).
    Pieces(Exact, String),
    /// So many batches of another recipe.
    Batches(Exact),
}

/// What a line names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ingredient {
    /// An ingredient of the pantry, as written.
    Pantry(String),
    /// Another recipe: its shown name and its file name.
    Recipe {
        /// What the student reads.
        title: String,
        /// The file name without ending.
        recipe: String,
    },
}

impl Quantity {
    /// The number of hundredths; `None` where it is another amount.
    pub fn percent(&self) -> Option<&Exact> {
        match self {
            Self::Unit(percent, Unit::Percent) => Some(percent),
            Self::Unit(..) | Self::Sum(_) | Self::Pieces(..) | Self::Batches(_) => None,
        }
    }
}

impl Ingredient {
    /// What the student reads.
    pub fn title(&self) -> &str {
        match self {
            Self::Pantry(name) => name,
            Self::Recipe { title, .. } => title,
        }
    }
}

/// A part of an ingredient or section: `half of the butter`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Share {
    /// The part of the whole, above 0 and up to 1.
    pub part: Exact,
    /// As written, for showing: `half of the`; empty for all of it.
    pub words: String,
}
