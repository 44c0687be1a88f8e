//! A dough divided: into parts that go their own ways, or into equal pieces.

use crate::fault::Placed;
use crate::measure::{Exact, Mass};

/// How a dough is divided.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Divide {
    /// Into parts by name.
    Parts(Vec<Portioned>),
    /// Into so many equal pieces.
    Count(u64),
    /// Into as many pieces of this weight as there is dough for.
    Pieces(Mass),
}

/// One part of a divided dough.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Portioned {
    /// Its name, by which steps say `part: crescents`.
    pub name: Placed<String>,
    /// How much of the dough.
    pub portion: Portion,
}

/// How much of a dough a part is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Portion {
    /// A part of it, above 0 and up to 1.
    Share(Exact),
    /// A weight, for one batch.
    Weight(Mass),
    /// So many pieces, each of this weight, for one batch.
    Pieces(u64, Mass),
    /// What the other parts leave.
    Rest,
}

impl Portion {
    /// The weight that it asks for in one batch, where it is one.
    pub fn mass(&self) -> Option<Mass> {
        match self {
            Self::Weight(mass) => Some(mass.clone()),
            Self::Pieces(count, each) => {
                Some(each * &Exact::from_integer((*count).into()))
            }
            Self::Share(_) | Self::Rest => None,
        }
    }
}
