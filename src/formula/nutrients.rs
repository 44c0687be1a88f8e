//! Nutrients of everything that goes in. V × W / 100 with V per 100 g: USDA SR28
//! documentation, "Weights and Measures".

use crate::measure::{Exact, exact};
use crate::pantry::NUTRIENTS;

use super::expand::Contents;

/// The sum of each nutrient over `contents`, in the units of the pantry; `None` where an
/// ingredient that weighs something lacks one: an estimate with a hole is no estimate.
pub fn nutrients(contents: &Contents) -> Option<[Exact; NUTRIENTS]> {
    let mut sums: [Exact; NUTRIENTS] = std::array::from_fn(|_| exact(0, 1));
    for (item, mass) in contents.values().filter(|(_, mass)| mass.is_positive()) {
        for (sum, in_100_g) in sums.iter_mut().zip(&item.nutrients) {
            *sum += in_100_g.as_ref()? * mass.amount() / exact(100, 1);
        }
    }
    Some(sums)
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    /// USDA SR28 NDB 20081: 125 g of all-purpose flour hold 364 × 1.25 = 455 kcal; NDB
    /// 01145: 113 g of butter hold 57.05 g of saturated fat.
    #[test]
    fn portions_of_the_table() {
        testing::with_contents("formula:\n  - 125 g all-purpose flour\n", |contents| {
            assert_eq!(
                nutrients(contents).map(|sums| sums[0].clone()),
                Some(exact(455, 1))
            );
        });
        testing::with_contents("formula:\n  - 1 stick butter\n", |contents| {
            let saturated = nutrients(contents).map(|sums| sums[3].clone());
            assert_eq!(saturated, Some(exact(50_489 * 113, 100_000)));
        });
        // NDB 02047: 1 tsp of salt is 6 g with 2325.5 mg of sodium (2325.48); NDB 01123: a
        // large egg is 50 g with 71.5 kcal.
        testing::with_contents("formula:\n  - 1 tsp fine salt\n", |contents| {
            let sodium = nutrients(contents).map(|sums| sums[7].clone());
            assert_eq!(sodium, Some(exact(232_548, 100)));
        });
        testing::with_contents("formula:\n  - 1 large egg\n", |contents| {
            let energy = nutrients(contents).map(|sums| sums[0].clone());
            assert_eq!(energy, Some(exact(715, 10)));
        });
    }
}
