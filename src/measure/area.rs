//! Area, and the size of a rolled sheet.

use super::{Exact, Length, Volume};

/// An area, kept in square centimetres.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Area(Exact);

super::quantity!(Area, square_centimetres, "square centimetres");

/// The size of a rectangle of dough, as written: usually the long side first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Size {
    /// First side.
    pub length: Length,
    /// Second side.
    pub width: Length,
}

impl Size {
    /// A rectangle from its sides.
    pub fn new(length: Length, width: Length) -> Self {
        Self { length, width }
    }

    /// Its area.
    pub fn area(&self) -> Area {
        Area(self.length.amount() * self.width.amount())
    }

    /// How thick `volume` lies on this rectangle; `None` if the rectangle has no area.
    pub fn thickness(&self, volume: &Volume) -> Option<Length> {
        let area = self.area();
        area.is_positive().then(|| Length::centimetres(volume.amount() / area.amount()))
    }
}
