//! Length.

use super::{Exact, exact};

/// A length, kept in centimetres.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Length(Exact);

super::quantity!(Length, centimetres, "centimetres");

impl Length {
    /// A length in inches: 2.54 cm each, exactly (NIST SP 811 B.8).
    pub fn inches(amount: &Exact) -> Self {
        Self(amount * exact(254, 100))
    }

    /// The length in inches.
    pub fn in_inches(&self) -> Exact {
        &self.0 / exact(254, 100)
    }

    /// The length in millimetres.
    pub fn in_millimetres(&self) -> Exact {
        &self.0 * exact(10, 1)
    }
}
