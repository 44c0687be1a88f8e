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

#[cfg(test)]
mod tests {
    use super::*;

    /// A pound is 453.592 37 g and 16 oz: NIST Handbook 44 Appendix C.
    #[test]
    fn a_pound_is_exact() {
        let pound = Mass::ounces(&exact(16, 1));
        assert_eq!(*pound.amount(), exact(45_359_237, 100_000));
        assert_eq!(pound.in_ounces(), exact(16, 1));
    }
}
