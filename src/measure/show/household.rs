//! Household measures: cups, tablespoons and teaspoons, at most two terms, the simplest
//! form that stays within the tolerance.

use num_traits::ToPrimitive;

use crate::measure::{Exact, Mass, Unit, exact};

use super::number::vulgar;
use super::shown::{Shown, Term};

/// What one cup, tablespoon and teaspoon of an ingredient weigh.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spoons {
    /// Grams in a cup.
    pub cup: Exact,
    /// Grams in a tablespoon.
    pub tablespoon: Exact,
    /// Grams in a teaspoon.
    pub teaspoon: Exact,
}

/// Above so many cups nobody measures: the weight is shown.
const MOST_CUPS: i128 = 32;

/// A form such as `1 cup + 2 tbsp`: 48ths of a cup, of a tablespoon and of a teaspoon, and
/// how little simple it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Form {
    cost: u8,
    cup: i128,
    tablespoon: i128,
    teaspoon: i128,
}

/// The weights of a 48th of each in grains, so that the search is in whole numbers.
struct Scoop {
    cup: i128,
    tablespoon: i128,
    teaspoon: i128,
    /// Allowed error in thousandths.
    tolerance: i128,
}

/// The household measure of `mass`; `None` where no form of at most two terms is within
/// `tolerance`. A form is only used if showing its own worth gives it again: the simplest
/// form within reach of the worth must be the form itself.
pub fn household(mass: &Mass, spoons: &Spoons, tolerance: &Exact) -> Option<Shown> {
    let scoop = Scoop::new(spoons, tolerance)?;
    let amount = grains(mass.amount(), GRAINS)?;
    let form = scoop.simplest(amount, &|form| scoop.is_stable(form))?;
    let worth = Exact::new(scoop.worth(&form).into(), GRAINS.into());
    Some(Shown::new(form.terms(), Mass::grams(worth)))
}

/// Grains in a gram: 48ths of a nanogram, so that every form is worth a whole number.
const GRAINS: i64 = 48_000_000_000;

/// `grams` as whole numbers of `in_a_gram` parts.
fn grains(grams: &Exact, in_a_gram: i64) -> Option<i128> {
    (grams * exact(in_a_gram, 1)).round().to_integer().to_i128()
}

impl Scoop {
    fn new(spoons: &Spoons, tolerance: &Exact) -> Option<Self> {
        let scoop = Self {
            cup: grains(&spoons.cup, GRAINS / 48)?,
            tablespoon: grains(&spoons.tablespoon, GRAINS / 48)?,
            teaspoon: grains(&spoons.teaspoon, GRAINS / 48)?,
            tolerance: (tolerance * exact(1000, 1)).to_integer().to_i128()?,
        };
        (scoop.cup > 0 && scoop.tablespoon > 0 && scoop.teaspoon > 0).then_some(scoop)
    }

    fn worth(&self, form: &Form) -> i128 {
        form.cup * self.cup
            + form.tablespoon * self.tablespoon
            + form.teaspoon * self.teaspoon
    }

    /// The form of least cost within the tolerance of `amount` that `admits` lets pass;
    /// of equal ones the nearest, then the first in order.
    fn simplest(&self, amount: i128, admits: &dyn Fn(&Form) -> bool) -> Option<Form> {
        let reach = amount * self.tolerance / 1000;
        let mut forms = self.forms(amount - reach, amount + reach);
        forms.sort_by_key(|form| (form.cost, (self.worth(form) - amount).abs(), *form));
        forms.into_iter().find(|form| admits(form))
    }

    /// Whether no simpler form lies within the tolerance of this one.
    fn is_stable(&self, form: &Form) -> bool {
        self.simplest(self.worth(form), &|_| true).is_some_and(|best| {
            best.cost == form.cost && self.worth(&best) == self.worth(form)
        })
    }

    /// Every form worth between `low` and `high`.
    fn forms(&self, low: i128, high: i128) -> Vec<Form> {
        let mut forms = Vec::new();
        self.spoon_forms(low, high, &mut forms);
        let cups =
            (low / self.cup / 48 - 1).max(0)..=(high / self.cup / 48).min(MOST_CUPS);
        for cup in cups {
            for (part, cost) in CUP_PARTS {
                self.cup_forms(cup * 48 + part, cost, low..=high, &mut forms);
            }
        }
        forms
    }

    /// Teaspoons, tablespoons, and both together, below a quarter cup.
    fn spoon_forms(&self, low: i128, high: i128, forms: &mut Vec<Form>) {
        if low > self.tablespoon * 48 * 5 {
            return;
        }
        for tablespoon in [0, 48, 72, 96, 120, 144, 168] {
            let half = u8::from(tablespoon % 48 > 0);
            for (teaspoon, cost) in TEASPOONS {
                let two = tablespoon > 0 && teaspoon > 0;
                let cost = half + if two { 3 + cost } else { cost };
                let form = Form { cost, cup: 0, tablespoon, teaspoon };
                let worth = self.worth(&form);
                if worth > 0
                    && (half == 0 || teaspoon == 0)
                    && (low..=high).contains(&worth)
                {
                    forms.push(form);
                }
            }
        }
    }

    /// Cups alone, cups with one or two teaspoons, and with up to three and a half
    /// tablespoons.
    fn cup_forms(
        &self,
        cup: i128,
        cost: u8,
        reach: std::ops::RangeInclusive<i128>,
        forms: &mut Vec<Form>,
    ) {
        for teaspoon in [48, 96] {
            let form = Form { cost: cost + 4, cup, tablespoon: 0, teaspoon };
            if cup >= 12 && form.cost < 6 && reach.contains(&self.worth(&form)) {
                forms.push(form);
            }
        }
        for tablespoon in [0, 24, 48, 72, 96, 120, 144, 168] {
            let two = tablespoon > 0;
            let half = u8::from(tablespoon % 48 > 0);
            let cost = half + if two { 3 + cost } else { cost };
            let form = Form { cost, cup, tablespoon, teaspoon: 0 };
            if cup >= 12 && (!two || cost < 6) && reach.contains(&self.worth(&form)) {
                forms.push(form);
            }
        }
    }
}

/// Parts of a cup in 48ths and how little simple they are.
const CUP_PARTS: [(i128, u8); 10] = [
    (0, 0),
    (24, 0),
    (12, 1),
    (36, 1),
    (16, 1),
    (32, 1),
    (6, 2),
    (18, 2),
    (30, 2),
    (42, 2),
];

/// Teaspoons below a tablespoon in 48ths and how little simple they are.
const TEASPOONS: [(i128, u8); 21] = [
    (0, 0),
    (48, 0),
    (96, 0),
    (24, 0),
    (72, 0),
    (120, 0),
    (12, 1),
    (36, 1),
    (60, 1),
    (84, 1),
    (108, 1),
    (132, 1),
    (16, 1),
    (32, 1),
    (64, 1),
    (80, 1),
    (112, 1),
    (128, 1),
    (6, 2),
    (54, 2),
    (102, 2),
];

impl Form {
    fn terms(&self) -> Vec<Term> {
        [
            (self.cup, Unit::Cup),
            (self.tablespoon, Unit::Tablespoon),
            (self.teaspoon, Unit::Teaspoon),
        ]
        .into_iter()
        .filter(|(amount, _)| *amount > 0)
        .map(|(amount, unit)| {
            let value = Exact::new(amount.into(), 48.into());
            let number = vulgar(&value).unwrap_or_default();
            Term::new(&value, number, unit)
        })
        .collect()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::super::International;
    use super::*;

    fn flour() -> Spoons {
        // USDA SR28 NDB 20083, bread flour: 1 cup = 137 g; spoons by density.
        Spoons {
            cup: exact(137, 1),
            tablespoon: exact(137, 16),
            teaspoon: exact(137, 48),
        }
    }

    fn shown(grams: i64, spoons: &Spoons) -> Option<String> {
        household(&Mass::grams(exact(grams, 1)), spoons, &exact(3, 100))
            .map(|s| s.words(&International))
    }

    #[test]
    fn the_simplest_form_wins() {
        assert_eq!(shown(137, &flour()).as_deref(), Some("1 cup"));
        assert_eq!(shown(500, &flour()).as_deref(), Some("3⅔ cup"));
        assert_eq!(shown(17, &flour()).as_deref(), Some("2 tbsp"));
        assert_eq!(shown(9, &flour()).as_deref(), Some("1 tbsp + ⅛ tsp"));
        assert_eq!(shown(500_000, &flour()), None);
        // Four tablespoons are a quarter cup, three teaspoons a tablespoon: US Armed
        // Forces Recipe Service, TM 10-412 A-1(3).
        assert_eq!(shown(34, &flour()).as_deref(), Some("¼ cup"));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]
        #[test]
        fn shown_is_near_stays_and_never_falls(
            milligrams in 100_i64..5_000_000, more in 0_i64..100_000,
            cup in 40_i64..350, strict: bool,
        ) {
            let spoons = Spoons {
                cup: exact(cup, 1), tablespoon: exact(cup, 16), teaspoon: exact(cup, 48),
            };
            let tolerance = exact(if strict { 2 } else { 3 }, 100);
            let mass = Mass::grams(exact(milligrams, 1000));
            let heavier = Mass::grams(exact(milligrams + more, 1000));
            if let Some(shown) = household(&mass, &spoons, &tolerance) {
                prop_assert!(shown.error(&mass) <= &tolerance + exact(1, 1_000_000), "{}", shown.words(&International));
                prop_assert!(!shown.words(&International).contains("0 tsp"));
                let again = household(&shown.worth, &spoons, &tolerance);
                prop_assert_eq!(again.as_ref(), Some(&shown));
                if let Some(next) = household(&heavier, &spoons, &tolerance) {
                    prop_assert!(next.worth >= shown.worth, "{} then {}", shown.words(&International), next.words(&International));
                }
            }
        }
    }
}
