//! Baker's percentages: every ingredient over all flour.
//!
//! The flour inside a preferment or an included dough counts as flour. Common practice, no source; the preferment's layout follows the trade's
//! overall formula / preferment / final dough.

use crate::measure::{Exact, Mass, exact};

use super::body::Body;
use super::expand::{expand, flour};
use super::weigh::Formula;

/// The percentages of a formula.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Percentages {
    /// The flour of the dough, with the flour in its roll-in fat.
    pub flour: Mass,
    /// Each line over that flour, in percent; `None` for lines without weight, for what is
    /// put on the dough later, and for all where there is no flour or some of it has no
    /// weight.
    pub lines: Vec<Option<Exact>>,
}

/// Works out the percentages of `formula`, of which `body` is dough.
pub fn percentages(formula: &Formula, body: &Body) -> Percentages {
    let lines = body.lines(formula).map(|(line, share)| {
        let mass = line.mass.as_ref().map(|mass| mass * share);
        super::Weighed { mass, ..line.clone() }
    });
    let dough = Formula::of(lines.collect());
    let flour = flour(&expand(&dough, &exact(1, 1)));
    let open = body.flour_is_open(formula);
    let percent = |mass: &Mass| mass.over(&flour).map(|share| share * exact(100, 1));
    let line = |at: usize| {
        let mass = formula.lines[at].mass.as_ref()?;
        (body.holds(at) && !open).then(|| percent(mass))?
    };
    Percentages { lines: (0..formula.lines.len()).map(line).collect(), flour }
}

#[cfg(test)]
mod tests {
    use super::super::{Book, testing};
    use super::*;

    /// All of a formula without steps is dough.
    fn whole(formula: &Formula, book: Book) -> Body {
        testing::body(formula, book)
    }

    /// Flour, salt, sugar, instant yeast, water at 100 / 1.75 / 2 / 0.375 / 58 %: 40 lb of
    /// flour take 0.7 lb (11.2 oz) of salt, and all percentages add up to 162.125.
    /// Common practice, no source.
    #[test]
    fn percent_lines_stand_on_one_weight() {
        let formula = "formula:\n  - 40 lb bread flour\n  - 1.75 % fine salt\n  - 2 % sugar\n  - 0.375 % instant yeast\n  - 58 % water\n";
        testing::with_recipe(formula, |formula, book| {
            let percentages = percentages(formula, &whole(formula, book));
            let sum: Exact = percentages.lines.iter().flatten().sum();
            assert_eq!(sum, exact(162_125, 1000));
            assert_eq!(formula.lines[1].mass().in_ounces(), exact(112, 10));
            assert_eq!(percentages.lines[4], Some(exact(58, 1)));
        });
    }

    /// 5000 g of flour and 20 % sugar are 1000 g; 10 lb of flour and 5 lb of water are
    /// 100 % and 50 %; 23 lb of water on 40 lb of flour are 57.5 %. Common practice, no
    /// source.
    #[test]
    fn weights_and_percentages_agree() {
        testing::with_recipe(
            "formula:\n  - 5000 g bread flour\n  - 20 % sugar\n",
            |formula, _| {
                assert_eq!(formula.lines[1].mass(), Mass::grams(exact(1000, 1)));
            },
        );
        for (flour, water, percent) in [(10, 5, exact(50, 1)), (40, 23, exact(115, 2))] {
            let text =
                format!("formula:\n  - {flour} lb bread flour\n  - {water} lb water\n");
            testing::with_recipe(&text, |formula, book| {
                assert_eq!(
                    percentages(formula, &whole(formula, book)).lines[1],
                    Some(percent)
                );
            });
        }
    }

    /// Overall 1000 g flour, water 68, salt 2, yeast 0.5 %, of which a preferment takes
    /// 300 g flour, 300 g water and 0.3 g yeast: derived by arithmetic from the rule that
    /// the overall formula is preferment plus final dough.
    #[test]
    fn a_preferment_reconciles_to_the_gram() {
        let text = "formula:\n  poolish:\n    - 300 g bread flour\n    - 300 g water\n    - 0.3 g instant yeast\n  dough:\n    - 700 g bread flour\n    - 380 g water\n    - 20 g fine salt\n    - 4.7 g instant yeast\n";
        testing::with_recipe(text, |formula, book| {
            let percentages = percentages(formula, &whole(formula, book));
            assert_eq!(formula.total(), Mass::grams(exact(1705, 1)));
            assert_eq!(percentages.flour, Mass::grams(exact(1000, 1)));
            let water = [1, 4].map(|at: usize| percentages.lines[at].clone());
            assert_eq!(water.iter().flatten().sum::<Exact>(), exact(68, 1));
        });
    }
}
