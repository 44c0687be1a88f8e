//! Exact amounts, one newtype a quantity, and the one place where they are rounded and
//! put into words.
//!
//! Amounts are exact rationals until they are shown; a recipe scaled by ⅔ and then by
//! 1½ comes home. Nothing here knows recipes.

mod area;
mod duration;
mod exact;
mod fraction;
mod label;
mod length;
mod mass;
mod temperature;
mod unit;
mod volume;

pub mod show;

pub use area::{Area, Size};
pub use duration::Duration;
pub use exact::{ceil, exact, float, parse, round_to};
pub use fraction::Exact;
pub use label::Label;
pub use length::Length;
pub use mass::Mass;
pub use temperature::{Temperature, TemperatureStep};
pub use unit::{CupSet, Unit};
pub use volume::Volume;

/// Gives a quantity the operations that physics allows: sums and differences of its own
/// kind, multiplication by a number, and the ratio of two.
macro_rules! quantity {
    ($name:ident, $unit:ident, $doc:literal) => {
        impl $name {
            #[doc = concat!("An amount in ", $doc, ".")]
            pub fn $unit(amount: $crate::measure::Exact) -> Self {
                Self(amount)
            }

            #[doc = concat!("Nothing at all, in ", $doc, ".")]
            pub fn zero() -> Self {
                Self($crate::measure::exact(0, 1))
            }

            #[doc = concat!("The exact number of ", $doc, ".")]
            pub fn amount(&self) -> &$crate::measure::Exact {
                &self.0
            }

            #[doc = concat!("The number of ", $doc, " for showing and drawing.")]
            pub fn float(&self) -> f64 {
                $crate::measure::float(&self.0)
            }

            /// Whether there is more than nothing.
            pub fn is_positive(&self) -> bool {
                self.0.is_positive()
            }
        }

        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl std::ops::Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl std::ops::Mul<&$crate::measure::Exact> for &$name {
            type Output = $name;
            fn mul(self, factor: &$crate::measure::Exact) -> $name {
                $name(&self.0 * factor)
            }
        }

        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::zero(), |sum, item| sum + item)
            }
        }

        impl $name {
            /// How many times `other` goes into this; `None` where `other` is nothing.
            pub fn over(&self, other: &Self) -> Option<$crate::measure::Exact> {
                (!other.0.is_zero()).then(|| &self.0 / &other.0)
            }
        }
    };
}
pub(crate) use quantity;
