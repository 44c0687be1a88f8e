//! Weight.

use super::{Exact, exact};

/// A weight, kept in grams.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Mass(Exact);

super::quantity!(Mass, grams, "grams");

impl Mass {
    /// A weight in avoirdupois ounces: 28.349 523 125 g each (NIST Handbook 44 App. C).
    pub fn ounces(amount: &Exact) -> Self {
        Self(amount * exact(45_359_237, 1_600_000))
    }

    /// The weight in avoirdupois ounces.
    pub fn in_ounces(&self) -> Exact {
        &self.0 / exact(45_359_237, 1_600_000)
    }
}
