//! The sheet for another weight of the same dough, at the same thickness.

use crate::measure::{Area, Exact, Length, Size, exact};

use super::root;

/// The sheet for `factor` times the dough, as thick as `size` was.
///
/// At one thickness the area grows with the mass. A sheet that must stay `square` has the
/// root of the new area as its side, to the nearest 0.1 mm. Otherwise the width stays, so
/// that the pieces cut across it keep their length, and the long side follows exactly;
/// where that would leave less length than width, both sides shrink alike (to 0.1 mm), so
/// that the long side stays the long side. A factor of nought or less changes nothing.
#[must_use]
pub fn grow(size: &Size, factor: &Exact, square: bool) -> Size {
    if factor <= &exact(0, 1) {
        return size.clone();
    }
    let length = &size.length * factor;
    if square {
        let side = root::side_near(&scaled(size.area().amount(), factor));
        return Size::new(side.clone(), side);
    }
    if length < size.width && size.length >= size.width {
        return Size::new(shrink(&size.length, factor), shrink(&size.width, factor));
    }
    Size::new(length, size.width.clone())
}

/// A side times the root of `factor`.
fn shrink(side: &Length, factor: &Exact) -> Length {
    root::side_near(&scaled(&(side.amount() * side.amount()), factor))
}

fn scaled(area: &Exact, factor: &Exact) -> Area {
    Area::square_centimetres(area * factor)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn size(length: i64, width: i64) -> Size {
        let side = |tenths| Length::centimetres(exact(tenths, 10));
        Size::new(side(length), side(width))
    }

    #[test]
    fn keeps_the_thickness() {
        // 28 × √2 = 39.597 98…, to 0.1 mm 39.60.
        assert_eq!(grow(&size(280, 280), &exact(2, 1), true), size(396, 396));
        assert_eq!(grow(&size(600, 200), &exact(3, 2), false), size(900, 200));
        assert_eq!(grow(&size(600, 200), &exact(1, 2), false), size(300, 200));
        assert_eq!(grow(&size(600, 200), &exact(1, 4), false), size(300, 100));
        assert_eq!(grow(&size(600, 200), &exact(0, 1), false), size(600, 200));
    }

    #[test]
    fn a_longer_sheet_comes_home() {
        let sheet = size(508, 305);
        let back = grow(&grow(&sheet, &exact(3, 2), false), &exact(2, 3), false);
        assert_eq!(back, sheet);
    }
}
