//! The fraction itself: what arithmetic needs of it, over a library that keeps small ones
//! without asking for memory.

use std::iter::Sum;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

use dashu_int::IBig;
use dashu_int::ops::Abs;
use dashu_ratio::RBig;
use num_traits::ToPrimitive;

/// An exact fraction of whole numbers of any size, in its lowest terms.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Exact(RBig);

impl Exact {
    /// The fraction `over / under`. `under` must not be nought.
    pub fn new(over: IBig, under: IBig) -> Self {
        Self(RBig::from_parts_signed(over, under))
    }

    /// Nought.
    pub fn zero() -> Self {
        Self(RBig::ZERO)
    }

    /// A whole number.
    pub fn from_integer(whole: IBig) -> Self {
        Self(whole.into())
    }

    /// Its whole part, towards nought.
    pub fn to_integer(&self) -> IBig {
        self.0.trunc()
    }

    /// What stands over the line, with the sign.
    pub fn numer(&self) -> &IBig {
        self.0.numerator()
    }

    /// What stands under the line, above nought.
    pub fn denom(&self) -> IBig {
        self.0.denominator().clone().into()
    }

    /// Whether it is a whole number.
    pub fn is_integer(&self) -> bool {
        self.0.is_int()
    }

    /// Whether it is nought.
    pub fn is_zero(&self) -> bool {
        self.0.is_zero()
    }

    /// Whether it is below nought.
    pub fn is_negative(&self) -> bool {
        *self.numer() < IBig::ZERO
    }

    /// Whether it is above nought.
    pub fn is_positive(&self) -> bool {
        *self.numer() > IBig::ZERO
    }

    /// The same without its sign.
    #[must_use]
    pub fn abs(&self) -> Self {
        Self(self.0.clone().abs())
    }

    /// The largest whole number not above it.
    #[must_use]
    pub fn floor(&self) -> Self {
        Self(self.0.floor().into())
    }

    /// The smallest whole number not below it.
    #[must_use]
    pub fn ceil(&self) -> Self {
        Self(self.0.ceil().into())
    }

    /// Its whole part, towards nought.
    #[must_use]
    pub fn trunc(&self) -> Self {
        Self(self.0.trunc().into())
    }

    /// The nearest whole number, halves away from nought.
    #[must_use]
    pub fn round(&self) -> Self {
        Self(self.0.round().into())
    }

    /// The nearest float.
    pub fn to_f64(&self) -> f64 {
        self.0.to_f64().value()
    }

    /// Its whole part where that is no larger than an `i64`.
    pub fn to_i64(&self) -> Option<i64> {
        self.to_integer().to_i64()
    }
}

impl std::fmt::Display for Exact {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.fmt(to)
    }
}

/// An operation between fractions, lent or given away.
macro_rules! operation {
    ($trait:ident, $name:ident) => {
        impl $trait for Exact {
            type Output = Self;
            fn $name(self, other: Self) -> Self {
                Self(self.0.$name(other.0))
            }
        }

        impl $trait<&Exact> for Exact {
            type Output = Self;
            fn $name(self, other: &Self) -> Self {
                Self(self.0.$name(&other.0))
            }
        }

        impl $trait<Exact> for &Exact {
            type Output = Exact;
            fn $name(self, other: Exact) -> Exact {
                Exact((&self.0).$name(other.0))
            }
        }

        impl $trait for &Exact {
            type Output = Exact;
            fn $name(self, other: Self) -> Exact {
                Exact((&self.0).$name(&other.0))
            }
        }
    };
}

operation!(Add, add);
operation!(Sub, sub);
operation!(Mul, mul);
operation!(Div, div);

impl Neg for Exact {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl AddAssign for Exact {
    fn add_assign(&mut self, other: Self) {
        self.0 += other.0;
    }
}

impl AddAssign<&Exact> for Exact {
    fn add_assign(&mut self, other: &Self) {
        self.0 += &other.0;
    }
}

impl Sum for Exact {
    fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
        items.fold(Self::zero(), |sum, item| sum + item)
    }
}

impl<'a> Sum<&'a Exact> for Exact {
    fn sum<I: Iterator<Item = &'a Self>>(items: I) -> Self {
        items.fold(Self::zero(), |sum, item| sum + item)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::exact;

    #[test]
    fn it_is_kept_in_lowest_terms_with_the_sign_above() {
        let half = exact(3, -6);
        assert_eq!(half, exact(-1, 2));
        assert_eq!((half.numer().to_i64(), half.denom().to_i64()), (Some(-1), Some(2)));
        assert!(half.is_negative() && !half.is_positive() && !half.is_integer());
    }

    #[test]
    fn halves_are_rounded_away_from_nought() {
        for (over, rounded) in
            [(5, 3), (4, 2), (3, 2), (1, 1), (0, 0), (-1, -1), (-3, -2)]
        {
            assert_eq!(exact(over, 2).round(), exact(rounded, 1), "{over}/2");
        }
        assert_eq!(exact(-7, 3).floor(), exact(-3, 1));
        assert_eq!(exact(-7, 3).ceil(), exact(-2, 1));
        assert_eq!(exact(-7, 3).trunc(), exact(-2, 1));
    }

    #[test]
    fn nothing_is_lost_beyond_the_size_of_a_machine_word() {
        let huge = exact(i64::MAX, 1) * exact(i64::MAX, 1);
        assert_eq!((&huge / exact(i64::MAX, 3)) / exact(3, 1), exact(i64::MAX, 1));
        assert_eq!(huge.to_i64(), None);
        assert_eq!(&huge - &huge, Exact::zero());
    }
}
