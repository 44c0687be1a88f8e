//! Weights: grams and kilograms, pounds and ounces, each to the roundest figure that stays
//! within the tolerance.

use crate::measure::{Exact, Mass, exact, round_to};

use super::number::{decimal, vulgar};

/// An amount as shown: its words, and what the words are worth.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The words: `1 lb 1¾ oz`.
    pub words: String,
    /// What the words are worth, exactly.
    pub worth: Mass,
}

impl Shown {
    /// How far the words are off `mass`, as a share of it: 0.01 is 1 %.
    pub fn error(&self, mass: &Mass) -> Exact {
        off(self.worth.amount(), mass.amount())
    }
}

/// How far `shown` is off `amount`, as a share of it; nought for nought.
fn off(shown: &Exact, amount: &Exact) -> Exact {
    if amount.is_zero() { exact(0, 1) } else { ((shown - amount) / amount).abs() }
}

/// Metric weight. Steps by size: 0.1 g (with a fine scale) or 0.5 g below 10 g, 1 g to
/// 1 kg, 5 g above, in kg from 10 kg to 10 g and from 100 kg to 100 g; a finer step where that one would be off by more
/// than `tolerance`.
pub fn metric(mass: &Mass, tolerance: &Exact, fine: bool) -> Shown {
    let steps = |grams: &Exact| {
        let first = if *grams >= exact(100_000, 1) {
            exact(100, 1)
        } else if *grams >= exact(10_000, 1) {
            exact(10, 1)
        } else if *grams >= exact(1000, 1) {
            exact(5, 1)
        } else if *grams >= exact(10, 1) {
            exact(1, 1)
        } else if fine {
            exact(1, 10)
        } else {
            exact(1, 2)
        };
        let finer =
            [exact(1, 2), exact(1, 10), exact(1, 20), exact(1, 100), exact(1, 1000)];
        std::iter::once(first).chain(finer).collect()
    };
    let shown = roundest(mass.amount(), tolerance, &steps);
    Shown { words: grams(&shown), worth: Mass::grams(shown) }
}

/// `217.7 kg`, `12.35 kg`, `0.72 g`: no finer than a scale for such weights shows.
fn grams(shown: &Exact) -> String {
    if *shown >= exact(100_000, 1) {
        return format!("{} kg", decimal(&(shown / exact(1000, 1)), 1));
    }
    if *shown >= exact(10_000, 1) {
        return format!("{} kg", decimal(&(shown / exact(1000, 1)), 3));
    }
    match decimal(shown, if *shown >= exact(10, 1) { 1 } else { 2 }) {
        nothing if nothing == "0" => "under 0.01 g".into(),
        number => format!("{number} g"),
    }
}

/// US weight. Steps: ¼ oz from 4 oz, ⅛ oz below, decimal 0.05 oz below 1 oz; a finer
/// decimal step where that one would be off by more than `tolerance`.
pub fn us_weight(mass: &Mass, tolerance: &Exact) -> Shown {
    let steps = |ounces: &Exact| {
        let first = if *ounces >= exact(4, 1) {
            exact(1, 4)
        } else if *ounces >= exact(1, 1) {
            exact(1, 8)
        } else {
            exact(1, 20)
        };
        let finer = [
            exact(1, 20),
            exact(1, 100),
            exact(1, 200),
            exact(1, 1000),
            exact(1, 10_000),
        ];
        std::iter::once(first).chain(finer).collect()
    };
    let shown = roundest(&mass.in_ounces(), tolerance, &steps);
    Shown { words: pounds(&shown), worth: Mass::ounces(&shown) }
}

/// `1 lb 1¾ oz`, `12 oz`, `0.35 oz`; below a tenth of an ounce in grams, for no scale that
/// shows ounces shows so little.
fn pounds(ounces: &Exact) -> String {
    if *ounces < exact(1, 10) {
        let mass = Mass::ounces(ounces);
        return grams(&round_to(mass.amount(), &exact(1, 100)));
    }
    let pounds = (ounces / exact(16, 1)).trunc();
    let rest = ounces - &pounds * exact(16, 1);
    let ounces = vulgar(&rest)
        .filter(|_| rest >= exact(1, 1) || !pounds.is_zero() || rest.is_zero())
        .unwrap_or_else(|| decimal(&rest, 2));
    match (pounds.is_zero(), rest.is_zero()) {
        (true, _) => format!("{ounces} oz"),
        (false, true) => format!("{} lb", pounds.to_integer()),
        (false, false) => format!("{} lb {ounces} oz", pounds.to_integer()),
    }
}

/// `amount` to the first of its steps that stays within `tolerance` and that, shown again,
/// stays as it is: 6.79 g must not be shown as 6.8 g where 6.8 g itself is shown as 7 g.
/// The amount itself where no step does.
fn roundest(
    amount: &Exact,
    tolerance: &Exact,
    steps: &dyn Fn(&Exact) -> Vec<Exact>,
) -> Exact {
    let stays =
        |shown: &Exact| shown == amount || roundest(shown, tolerance, steps) == *shown;
    steps(amount)
        .iter()
        .map(|step| round_to(amount, step))
        .find(|shown| off(shown, amount) <= *tolerance && stays(shown))
        .unwrap_or_else(|| amount.clone())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn grams(over: i64, under: i64) -> Mass {
        Mass::grams(exact(over, under))
    }

    #[test]
    fn weights_read_as_a_baker_says_them() {
        let three = exact(3, 100);
        let shown = |mass: &Mass| metric(mass, &three, true).words;
        assert_eq!(shown(&grams(500, 1)), "500 g");
        assert_eq!(shown(&grams(8, 1)), "8 g");
        assert_eq!(shown(&grams(1233, 1)), "1235 g");
        assert_eq!(shown(&grams(12_345, 1)), "12.35 kg");
        assert_eq!(shown(&grams(217_725, 1)), "217.7 kg");
        assert_eq!(shown(&grams(21, 2)), "10.5 g");
        assert_eq!(us_weight(&grams(500, 1), &three).words, "1 lb 1¾ oz");
        assert_eq!(us_weight(&grams(250, 1), &three).words, "8¾ oz");
        assert_eq!(us_weight(&Mass::ounces(&exact(16, 1)), &three).words, "1 lb");
        assert_eq!(us_weight(&grams(10, 1), &exact(2, 100)).words, "0.35 oz");
        // US Armed Forces Recipe Service, TM 10-412 A-1(2): 1.25 lb × 3.48 = 4.35 lb, which
        // is 4 lb and 5.60 oz, rounded to 4 lb 5½ oz.
        let scaled = Mass::ounces(&(exact(125, 100) * exact(348, 100) * exact(16, 1)));
        assert_eq!(us_weight(&scaled, &three).words, "4 lb 5½ oz");
    }

    /// US Armed Forces Recipe Service, TM 10-412 A-1(2): fractions of an ounce to quarters,
    /// with its printed bounds.
    #[test]
    fn ounces_round_to_quarters_as_printed() {
        let bounds = [
            (412, "4 oz"),
            (413, "4¼ oz"),
            (437, "4¼ oz"),
            (438, "4½ oz"),
            (462, "4½ oz"),
            (463, "4¾ oz"),
            (487, "4¾ oz"),
            (488, "5 oz"),
            (560, "5½ oz"),
        ];
        for (hundredths, printed) in bounds {
            let mass = Mass::ounces(&exact(hundredths, 100));
            assert_eq!(us_weight(&mass, &exact(4, 100)).words, printed);
        }
    }

    /// A hundredth of a gram, and grams below a tenth of an ounce: common practice, no source.
    #[test]
    fn weights_are_ones_that_a_scale_shows() {
        let two = exact(2, 100);
        for (milligrams, metric_words, us) in [
            (3, "under 0.01 g", "under 0.01 g"),
            (117, "0.12 g", "0.12 g"),
            (500, "0.5 g", "0.5 g"),
            (10_000, "10 g", "0.35 oz"),
            (217_724_976, "217.7 kg", "480 lb"),
        ] {
            let mass = grams(milligrams, 1000);
            assert_eq!(metric(&mass, &two, true).words, metric_words);
            assert_eq!(us_weight(&mass, &two).words, us);
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]
        /// The promise of the rounding rule, for amounts from 0.1 g to 500 kg.
        #[test]
        fn shown_is_near_and_stays(milligrams in 100_i64..500_000_000, more in 0_i64..100_000, strict: bool, fine: bool) {
            let tolerance = exact(if strict { 2 } else { 3 }, 100);
            let mass = grams(milligrams, 1000);
            let heavier = grams(milligrams + more, 1000);
            for show in [
                &|mass: &Mass| metric(mass, &tolerance, fine) as Shown,
                &|mass: &Mass| us_weight(mass, &tolerance) as Shown,
            ] as [&dyn Fn(&Mass) -> Shown; 2] {
                let shown = show(&mass);
                prop_assert!(shown.error(&mass) <= tolerance, "{}", shown.words);
                prop_assert_eq!(&show(&shown.worth), &shown);
                prop_assert!(show(&heavier).worth >= shown.worth);
            }
        }
    }
}
