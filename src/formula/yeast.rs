//! One kind of yeast in place of another, by weight.
//!
//! Fresh 1, active dry 0.40, instant 0.33: as works of general reference have it (eHow, *How to
//! Convert Yeast Measurements*); *Understanding Ingredients for the Canadian Baker* (BC Cook
//! Articulation Committee, 2015), ch. 39, has about three of fresh for one of instant.

use crate::measure::{Exact, Mass, exact};

/// The pantry's kinds of yeast and how much of each does the work of 100 g of fresh.
const YEASTS: [(&str, i64); 3] =
    [("fresh yeast", 100), ("active dry yeast", 40), ("instant yeast", 33)];

/// How much fresh yeast does the work of one part of the yeast `name`; `None` where that is
/// no yeast.
pub fn yeast_as_fresh(name: &str) -> Option<Exact> {
    let (_, own) = YEASTS.iter().find(|(yeast, _)| *yeast == name)?;
    Some(exact(100, *own))
}

/// The other kinds in place of `mass` of the yeast `name`; none where that is no yeast.
pub fn yeast_instead(name: &str, mass: &Mass) -> Vec<(&'static str, Mass)> {
    let Some((own, of_own)) = YEASTS.iter().find(|(yeast, _)| *yeast == name) else {
        return Vec::new();
    };
    let others = YEASTS.iter().filter(|(yeast, _)| yeast != own);
    let share = |of_other: i64| -> Exact { exact(of_other, *of_own) };
    others.map(|(yeast, of_other)| (*yeast, mass * &share(*of_other))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// USDA SR28: compressed yeast is 31.0 % dry, active dry 94.92 % (NDB 18374, 18375):
    /// 0.327, near the 0.33 and 0.40 of the trade, of which the module names the source.
    #[test]
    fn fresh_dry_and_instant() {
        let grams = |n: i64, d: i64| Mass::grams(exact(n, d));
        assert_eq!(
            yeast_instead("instant yeast", &grams(33, 10)),
            [("fresh yeast", grams(10, 1)), ("active dry yeast", grams(4, 1))]
        );
        assert_eq!(
            yeast_instead("fresh yeast", &grams(20, 1)),
            [("active dry yeast", grams(8, 1)), ("instant yeast", grams(66, 10))]
        );
        assert!(yeast_instead("baking powder", &grams(5, 1)).is_empty());
    }
}
