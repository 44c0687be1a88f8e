//! Square and cube roots to a tenth of a millimetre, by whole numbers.

use dashu_int::ops::{CubicRoot, SquareRoot};

use crate::measure::{Area, Exact, Length, Volume, exact};

/// Tenths of a millimetre in a centimetre: finer than any rolling pin.
const STEPS: i64 = 100;

/// The side of a square of `area`, rounded down to 0.1 mm; nought for no area.
pub(super) fn side_down(area: &Area) -> Length {
    if !area.is_positive() {
        return Length::zero();
    }
    let whole = squared_steps(area.amount()).to_integer();
    length(Exact::from_integer(whole.sqrt().into()))
}

/// The side of a square of `area`, to the nearest 0.1 mm; nought for no area.
///
/// The nearest whole number to √n is ⌊(⌊√(4n)⌋ + 1) / 2⌋.
pub(super) fn side_near(area: &Area) -> Length {
    if !area.is_positive() {
        return Length::zero();
    }
    let twice = (squared_steps(area.amount()) * exact(4, 1)).to_integer().sqrt();
    length(((Exact::from_integer(twice.into()) + exact(1, 1)) / exact(2, 1)).floor())
}

/// The root of a plain number, to the nearest ten-thousandth; nought for none.
pub fn root_near(number: &Exact) -> Exact {
    let metre = Exact::from_integer(100.into());
    let square = Area::square_centimetres(number * &metre * &metre);
    side_near(&square).amount() / metre
}

/// The edge of a cube of `volume`, to the nearest 0.1 mm; nought for no volume.
///
/// The nearest whole number to ³√n is ⌊(⌊³√(8n)⌋ + 1) / 2⌋.
pub(super) fn edge_near(volume: &Volume) -> Length {
    if !volume.is_positive() {
        return Length::zero();
    }
    let steps = volume.amount() * exact(STEPS * STEPS * STEPS, 1) * exact(8, 1);
    let twice = Exact::from_integer(steps.to_integer().cbrt());
    length(((twice + exact(1, 1)) / exact(2, 1)).floor())
}

fn squared_steps(area: &Exact) -> Exact {
    area * exact(STEPS * STEPS, 1)
}

fn length(steps: Exact) -> Length {
    Length::centimetres(steps / exact(STEPS, 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn area(square_centimetres: i64) -> Area {
        Area::square_centimetres(exact(square_centimetres, 1))
    }

    #[test]
    fn takes_roots_down_and_to_the_nearest() {
        // √392 = 19.798 99…
        assert_eq!(side_down(&area(392)), Length::centimetres(exact(1979, 100)));
        assert_eq!(side_near(&area(392)), Length::centimetres(exact(198, 10)));
        assert_eq!(side_near(&area(400)), Length::centimetres(exact(20, 1)));
        assert_eq!(side_down(&area(-1)), Length::zero());
        assert_eq!(side_near(&area(0)), Length::zero());
        // ³√100 = 4.641 58…
        let cube = |millilitres| Volume::millilitres(exact(millilitres, 1));
        assert_eq!(edge_near(&cube(100)), Length::centimetres(exact(464, 100)));
        assert_eq!(edge_near(&cube(27)), Length::centimetres(exact(3, 1)));
        assert_eq!(edge_near(&cube(0)), Length::zero());
    }
}
