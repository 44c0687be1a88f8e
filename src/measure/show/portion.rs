//! The weight of one of many, so that what is shown, times their number, is there.

use crate::measure::{Exact, Mass, exact};

use super::{Shown, metric, us_weight};

/// A portion in metric weight: `mass` to the roundest figure within `tolerance` that is no
/// more than it, so that `pieces` of what is shown never need more than there is. One alone
/// is rounded to the nearest.
pub fn metric_portion(mass: &Mass, pieces: u64, tolerance: &Exact, fine: bool) -> Shown {
    down(mass, pieces, tolerance, &|mass, within| metric(mass, within, fine))
}

/// The same in US weight.
pub fn us_portion(mass: &Mass, pieces: u64, tolerance: &Exact) -> Shown {
    down(mass, pieces, tolerance, &us_weight)
}

/// Steps in which a portion is made smaller until what is shown is no more than it.
const STEPS: i64 = 30;

/// Parts of the tolerance that are tried, the roundest figures first.
const FINER: [i64; 4] = [1, 2, 4, 16];

fn down(
    mass: &Mass,
    pieces: u64,
    tolerance: &Exact,
    show: &dyn Fn(&Mass, &Exact) -> Shown,
) -> Shown {
    let nearest = show(mass, tolerance);
    if pieces < 2 {
        return nearest;
    }
    let lower = FINER.iter().flat_map(|part| {
        let within = tolerance / exact(*part, 1);
        (0..=STEPS).map(move |step| {
            let smaller = mass * &(exact(1, 1) - &within * exact(step, STEPS));
            show(&smaller, &within)
        })
    });
    let fits = |shown: &Shown| shown.worth <= *mass && shown.error(mass) <= *tolerance;
    lower.into_iter().find(fits).unwrap_or(nearest)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::super::International;
    use super::*;

    /// 1.944 oz would be shown as 2 oz, and 50 of those are 100 oz of a dough of 97.2: by
    /// arithmetic.
    #[test]
    fn fifty_pieces_are_there() {
        let three = exact(3, 100);
        let mass = Mass::ounces(&exact(1944, 1000));
        let one = us_portion(&mass, 1, &three);
        assert_eq!(one.words(&International), "2 oz");
        let each = us_portion(&mass, 50, &three);
        assert!(each.worth <= mass, "{}", each.words(&International));
        let grams = Mass::grams(exact(5717, 100));
        assert_eq!(
            metric_portion(&grams, 12, &three, true).words(&International),
            "57 g"
        );
        let grams = Mass::grams(exact(4776, 100));
        assert_eq!(
            metric_portion(&grams, 20, &three, true).words(&International),
            "47 g"
        );
        let two = Mass::ounces(&exact(2, 1));
        assert_eq!(us_portion(&two, 50, &three).words(&International), "2 oz");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(1000))]
        #[test]
        fn never_more_than_there_is(milligrams in 1000_i64..5_000_000, pieces in 2_u64..500) {
            let (mass, three) = (Mass::grams(exact(milligrams, 1000)), exact(3, 100));
            for shown in [
                metric_portion(&mass, pieces, &three, true),
                us_portion(&mass, pieces, &three),
            ] {
                prop_assert!(shown.worth <= mass, "{}", shown.words(&International));
                prop_assert!(shown.error(&mass) <= three, "{}", shown.words(&International));
            }
        }
    }
}
