//! The fraction itself: what arithmetic needs of it. Nearly all have parts of a machine word
//! and are kept in two; larger ones are left to a library.

use std::cmp::Ordering;
use std::fmt;
use std::iter::Sum;
use std::num::{NonZeroI64, NonZeroU8};
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

use dashu_int::IBig;
use dashu_int::ops::{Abs, Gcd};
use dashu_ratio::RBig;
use num_traits::ToPrimitive;

/// An exact fraction of whole numbers of any size, in its lowest terms.
#[derive(Clone, PartialEq, Eq, Hash)]
pub struct Exact(Form);

/// How a fraction is kept: in small parts wherever they fit, so that equal ones are kept
/// alike.
#[derive(Clone, PartialEq, Eq, Hash)]
enum Form {
    /// What stands over the line, and under it, above nought.
    Small(i64, NonZeroI64),
    Large(Box<RBig>),
}

/// Floats hold every whole number up to this one.
const FLOAT: u64 = 1 << f64::MANTISSA_DIGITS;

impl Exact {
    /// The fraction `over / under`. `under` must not be nought.
    pub fn new(over: IBig, under: IBig) -> Self {
        match (over.to_i64(), under.to_i64()) {
            (Some(over), Some(under)) if under != 0 => {
                Self::reduced(over.into(), under.into())
            }
            _ => RBig::from_parts_signed(over, under).into(),
        }
    }

    /// The fraction `over / under` of parts that fit into two words. `under` must not be
    /// nought.
    pub(super) fn reduced(over: i128, under: i128) -> Self {
        // Single words are divided much sooner.
        if let (Ok(over), Ok(under @ 1..)) = (i64::try_from(over), i64::try_from(under)) {
            let common = over.unsigned_abs().gcd(under.unsigned_abs());
            let common = i64::try_from(common).unwrap_or(1);
            let under = NonZeroI64::new(under / common).unwrap_or(one());
            return Self(Form::Small(over / common, under));
        }
        let common = over.unsigned_abs().gcd(under.unsigned_abs());
        let common = i128::try_from(common).unwrap_or(1) * under.signum();
        let (over, under) = (over / common, under / common);
        match i64::try_from(over).ok().zip(word(under)) {
            Some((over, under)) => Self(Form::Small(over, under)),
            None => RBig::from_parts_signed(over.into(), under.into()).into(),
        }
    }

    /// What stands over the line and under it, where both are small.
    pub(super) fn small(&self) -> Option<(i128, i128)> {
        match &self.0 {
            Form::Small(over, under) => {
                Some((i128::from(*over), i128::from(under.get())))
            }
            Form::Large(_) => None,
        }
    }

    fn large(&self) -> RBig {
        match &self.0 {
            Form::Small(over, under) => {
                RBig::from_parts_signed((*over).into(), under.get().into())
            }
            Form::Large(large) => (**large).clone(),
        }
    }

    /// Nought.
    pub fn zero() -> Self {
        Self(Form::Small(0, one()))
    }

    /// A whole number.
    pub fn from_integer(whole: IBig) -> Self {
        Self::new(whole, IBig::ONE)
    }

    /// Its whole part, towards nought.
    pub fn to_integer(&self) -> IBig {
        match &self.0 {
            Form::Small(over, under) => (over / under.get()).into(),
            Form::Large(large) => large.trunc(),
        }
    }

    /// What stands over the line, with the sign.
    pub fn numer(&self) -> IBig {
        match &self.0 {
            Form::Small(over, _) => (*over).into(),
            Form::Large(large) => large.numerator().clone(),
        }
    }

    /// What stands under the line, above nought.
    pub fn denom(&self) -> IBig {
        match &self.0 {
            Form::Small(_, under) => under.get().into(),
            Form::Large(large) => large.denominator().clone().into(),
        }
    }

    /// Whether it is a whole number.
    pub fn is_integer(&self) -> bool {
        match &self.0 {
            Form::Small(_, under) => *under == one(),
            Form::Large(large) => large.is_int(),
        }
    }

    /// Whether it is nought.
    pub fn is_zero(&self) -> bool {
        self.sign() == Ordering::Equal
    }

    /// Whether it is below nought.
    pub fn is_negative(&self) -> bool {
        self.sign() == Ordering::Less
    }

    /// Whether it is above nought.
    pub fn is_positive(&self) -> bool {
        self.sign() == Ordering::Greater
    }

    /// How it stands to nought.
    fn sign(&self) -> Ordering {
        match &self.0 {
            Form::Small(over, _) => over.cmp(&0),
            Form::Large(large) => large.numerator().cmp(&IBig::ZERO),
        }
    }

    /// The same without its sign.
    #[must_use]
    pub fn abs(&self) -> Self {
        match self.small() {
            Some((over, under)) => Self::reduced(over.abs(), under),
            None => self.large().abs().into(),
        }
    }

    /// The largest whole number not above it.
    #[must_use]
    pub fn floor(&self) -> Self {
        match self.small() {
            Some((over, under)) => Self::reduced(over.div_euclid(under), 1),
            None => Self::from_integer(self.large().floor()),
        }
    }

    /// The smallest whole number not below it.
    #[must_use]
    pub fn ceil(&self) -> Self {
        match self.small() {
            Some((over, under)) => Self::reduced(-(-over).div_euclid(under), 1),
            None => Self::from_integer(self.large().ceil()),
        }
    }

    /// Its whole part, towards nought.
    #[must_use]
    pub fn trunc(&self) -> Self {
        Self::from_integer(self.to_integer())
    }

    /// The nearest whole number, halves away from nought.
    #[must_use]
    pub fn round(&self) -> Self {
        match self.small() {
            Some((over, under)) => Self::reduced(nearest(over, under), 1),
            None => Self::from_integer(self.large().round()),
        }
    }

    /// The nearest multiple of `step`, which must be above nought, halves away from nought;
    /// `None` where that takes parts that are not small.
    pub(super) fn to_step(&self, step: &Self) -> Option<Self> {
        let (over, under) = self.small()?;
        let (by, part) = step.small().filter(|(by, _)| *by > 0)?;
        // One division of whole numbers: bringing every fraction on the way to its lowest
        // terms would take most of the time.
        let steps = nearest(over * part, under * by);
        Some(Self::reduced(steps.checked_mul(by)?, part))
    }

    /// The nearest float.
    pub fn to_f64(&self) -> f64 {
        match &self.0 {
            Form::Small(over, under)
                if over.unsigned_abs().max(under.get().unsigned_abs()) <= FLOAT =>
            {
                *over as f64 / under.get() as f64
            }
            Form::Small(..) | Form::Large(_) => self.large().to_f64().value(),
        }
    }

    /// Its whole part where that is no larger than an `i64`.
    pub fn to_i64(&self) -> Option<i64> {
        match &self.0 {
            Form::Small(over, under) => Some(over / under.get()),
            Form::Large(large) => large.trunc().to_i64(),
        }
    }
}

/// What is no more than a word, and not nought.
fn word(part: i128) -> Option<NonZeroI64> {
    i64::try_from(part).ok().and_then(NonZeroI64::new)
}

/// One.
fn one() -> NonZeroI64 {
    NonZeroU8::MIN.into()
}

/// The whole number nearest to `over / under`, halves away from nought. `under` is above it.
fn nearest(over: i128, under: i128) -> i128 {
    let (whole, rest) = (over / under, over % under);
    let up = rest.unsigned_abs() >= under.unsigned_abs() - rest.unsigned_abs();
    if up { whole + over.signum() } else { whole }
}

impl From<RBig> for Exact {
    fn from(large: RBig) -> Self {
        let under: IBig = large.denominator().clone().into();
        let under = under.to_i64().and_then(NonZeroI64::new);
        match large.numerator().to_i64().zip(under) {
            Some((over, under)) => Self(Form::Small(over, under)),
            None => Self(Form::Large(Box::new(large))),
        }
    }
}

impl fmt::Display for Exact {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.large().fmt(to)
    }
}

impl fmt::Debug for Exact {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{}/{}", self.numer(), self.denom())
    }
}

impl Ord for Exact {
    fn cmp(&self, other: &Self) -> Ordering {
        match (self.small(), other.small()) {
            (Some((a, b)), Some((c, d))) => (a * d).cmp(&(c * b)),
            _ => self.large().cmp(&other.large()),
        }
    }
}

impl PartialOrd for Exact {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

/// An operation between fractions, lent or given away.
macro_rules! operation {
    ($trait:ident, $name:ident, |$a:ident, $b:ident, $c:ident, $d:ident| $small:expr) => {
        impl $trait for &Exact {
            type Output = Exact;
            fn $name(self, other: Self) -> Exact {
                match (self.small(), other.small()) {
                    (Some(($a, $b)), Some(($c, $d))) => $small,
                    _ => self.large().$name(other.large()).into(),
                }
            }
        }

        impl $trait for Exact {
            type Output = Self;
            fn $name(self, other: Self) -> Self {
                (&self).$name(&other)
            }
        }

        impl $trait<&Exact> for Exact {
            type Output = Self;
            fn $name(self, other: &Self) -> Self {
                (&self).$name(other)
            }
        }

        impl $trait<Exact> for &Exact {
            type Output = Exact;
            fn $name(self, other: Exact) -> Exact {
                self.$name(&other)
            }
        }
    };
}

// Products of two words and the sum of two of them fit into a double word.
operation!(Add, add, |a, b, c, d| Exact::reduced(a * d + c * b, b * d));
operation!(Sub, sub, |a, b, c, d| Exact::reduced(a * d - c * b, b * d));
operation!(Mul, mul, |a, b, c, d| Exact::reduced(a * c, b * d));
operation!(Div, div, |a, b, c, d| Exact::reduced(a * d, b * c));

impl Neg for Exact {
    type Output = Self;
    fn neg(self) -> Self {
        Self::zero() - self
    }
}

impl AddAssign for Exact {
    fn add_assign(&mut self, other: Self) {
        *self = &*self + &other;
    }
}

impl AddAssign<&Exact> for Exact {
    fn add_assign(&mut self, other: &Self) {
        *self = &*self + other;
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

    /// Held against the library, with parts around the size of a machine word and of half a
    /// one, where ways part.
    #[test]
    fn small_and_large_parts_give_the_same() {
        let tops =
            [0, 1, -1, 7, -95, 45_359_237, 1 << 53, i64::MAX, i64::MIN, i64::MIN + 1];
        let bottoms = [1, 3, 8, 1_600_000, (1 << 32) + 1, i64::MAX, i64::MAX - 1];
        let all: Vec<(Exact, RBig)> = tops
            .iter()
            .flat_map(|over| bottoms.iter().map(move |under| (*over, *under)))
            .flat_map(|(over, under)| {
                let large = RBig::from_parts_signed(over.into(), under.into());
                // Their squares are beyond a word.
                let square = &large * &large;
                [(exact(over, under), large), (Exact::from(square.clone()), square)]
            })
            .collect();
        for (one, large) in &all {
            let same =
                |it: Exact, other: IBig| assert_eq!(it, Exact::from_integer(other));
            same(one.floor(), large.floor());
            same(one.ceil(), large.ceil());
            same(one.trunc(), large.trunc());
            same(one.round(), large.round());
            assert_eq!(one.abs(), Exact::from(large.clone().abs()));
            assert_eq!(-one.clone(), Exact::from(-large.clone()));
            assert_eq!(one.to_f64().to_bits(), large.to_f64().value().to_bits(), "{one}");
            assert_eq!(one.to_i64(), large.trunc().to_i64());
            assert_eq!(one.to_string(), large.to_string());
            for (other, too) in &all {
                assert_eq!(one + other, Exact::from(large + too));
                assert_eq!(one - other, Exact::from(large - too));
                assert_eq!(one * other, Exact::from(large * too));
                assert_eq!(one.cmp(other), large.cmp(too), "{one} {other}");
                if !other.is_zero() {
                    assert_eq!(one / other, Exact::from(large / too));
                }
            }
        }
    }

    #[test]
    fn two_words_hold_one() {
        assert_eq!(size_of::<Exact>(), 2 * size_of::<u64>());
    }

    #[test]
    #[should_panic]
    fn nothing_is_divided_by_nought() {
        let _ = exact(1, 2) / Exact::zero();
    }
}
