//! Points and polygons on the sheet.

use crate::measure::{Area, Exact, Length, exact};

/// A point on the sheet, from its near left corner.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// Along the long side.
    pub x: Length,
    /// Across it.
    pub y: Length,
}

/// A piece by its corners, anticlockwise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Polygon {
    /// The corners.
    pub corners: Vec<Point>,
}

impl Point {
    /// A point from centimetres.
    pub(super) fn new(x: Exact, y: Exact) -> Self {
        Self { x: Length::centimetres(x), y: Length::centimetres(y) }
    }

    /// The same point on a sheet whose sides have changed places.
    pub(super) fn flipped(self) -> Self {
        Self { x: self.y, y: self.x }
    }
}

impl Polygon {
    /// A piece from its corners, which must run anticlockwise.
    pub(super) fn new(corners: Vec<Point>) -> Self {
        Self { corners }
    }

    /// The same polygon on a sheet whose sides have changed places, again anticlockwise.
    pub(super) fn flipped(self) -> Self {
        Self { corners: self.corners.into_iter().rev().map(Point::flipped).collect() }
    }

    /// Its area, by the sum of cross products over its corners (Gauss).
    pub fn area(&self) -> Area {
        let next = self.corners.iter().cycle().skip(1);
        let crosses = self.corners.iter().zip(next).map(|(here, next)| {
            here.x.amount() * next.y.amount() - next.x.amount() * here.y.amount()
        });
        Area::square_centimetres(crosses.sum::<Exact>() * exact(1, 2))
    }
}
