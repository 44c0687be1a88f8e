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

    /// The length that a figure of the sheet stands for, which is rounded to the micrometre.
    /// It reads as the exact length does: `show` holds both together.
    pub fn drawn(centimetres: f64) -> Self {
        let parts = (centimetres.clamp(0.0, 1e6) * 1e6).round();
        // In range by the clamp; not-a-number becomes nought.
        Self(exact(parts as i64, 1_000_000))
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

#[cfg(test)]
mod tests {
    use super::*;

    /// An inch is 25.4 mm exactly: NIST SP 811 B.8.
    #[test]
    fn an_inch_is_exact() {
        let foot = Length::inches(&exact(12, 1));
        assert_eq!(foot.in_millimetres(), exact(3048, 10));
        assert_eq!(foot.in_inches(), exact(12, 1));
    }
}
