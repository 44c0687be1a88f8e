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
