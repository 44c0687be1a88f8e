//! Weights: grams and kilograms, pounds and ounces, each to the roundest figure that stays
//! within the tolerance.

use crate::measure::{Exact, Mass, Unit, exact, round_to};

use super::number::{decimal, vulgar};
use super::shown::{Shown, Term, off};

/// The steps for a size of weight, the usual one first.
type Steps = fn(&Exact) -> Vec<Exact>;

/// What a scale shows.
#[derive(Clone, Copy)]
struct Scale<'a> {
    steps: Steps,
    /// Whether a figure is said in this unit.
    fits: &'a dyn Fn(&Exact) -> bool,
    /// Whether the figure beside the nearest may be taken where that one does not stay as it
    /// is: 0.512 g as 0.52 g.
    beside: bool,
}

/// Metric weight. Steps by size: 0.1 g (with a fine scale) or 0.5 g below 10 g, 1 g to
/// 1 kg, 5 g above, in kg from 10 kg to 10 g and from 100 kg to 100 g; a finer step where
/// that one would be off by more than `tolerance`, down to 0.01 g below 10 g.
pub fn metric(mass: &Mass, tolerance: &Exact, fine: bool) -> Shown {
    let steps = if fine { fine_grams } else { coarse_grams };
    let shown = round_grams(mass.amount(), tolerance, steps, &|_| true);
    grams(shown)
}

fn fine_grams(grams: &Exact) -> Vec<Exact> {
    let steps: &[(i64, i64)] = if *grams >= exact(100_000, 1) {
        &[(100, 1)]
    } else if *grams >= exact(10_000, 1) {
        &[(10, 1), (1, 1)]
    } else if *grams >= exact(1000, 1) {
        &[(5, 1), (1, 1)]
    } else if *grams >= exact(10, 1) {
        &[(1, 1), (1, 10)]
    } else {
        &[(1, 10), (1, 100)]
    };
    steps.iter().map(|(over, under)| exact(*over, *under)).collect()
}

fn coarse_grams(grams: &Exact) -> Vec<Exact> {
    let half = (*grams < exact(10, 1)).then(|| exact(1, 2));
    half.into_iter().chain(fine_grams(grams)).collect()
}

/// `217.7 kg`, `12.35 kg`, `0.72 g`: no finer than a scale for such weights shows.
fn grams(shown: Exact) -> Shown {
    let thousand = exact(1000, 1);
    let (value, places, unit) = if shown >= exact(100_000, 1) {
        (&shown / &thousand, 1, Unit::Kilogram)
    } else if shown >= exact(10_000, 1) {
        (&shown / &thousand, 3, Unit::Kilogram)
    } else {
        (shown.clone(), if shown >= exact(10, 1) { 1 } else { 2 }, Unit::Gram)
    };
    let number = decimal(&value, places);
    let worth = Mass::grams(shown);
    if number == "0" {
        let least = exact(1, 100);
        return Shown::under(Term::new(&least, decimal(&least, 2), unit), worth);
    }
    Shown::new(vec![Term::new(&value, number, unit)], worth)
}

/// Below this, in ounces, a hundredth of an ounce is more than 2 % off: US weights stand in
/// grams, which scales for small weights show.
const LEAST_OUNCES: (i64, i64) = (1, 4);

/// US weight. Steps: ¼ oz from 4 oz, ⅛ oz below, decimal 0.05 oz below 1 oz; a finer
/// decimal step where that one would be off by more than `tolerance`; what is not ¼ oz within
/// the tolerance in grams as on a fine scale.
pub fn us_weight(mass: &Mass, tolerance: &Exact) -> Shown {
    let least = exact(LEAST_OUNCES.0, LEAST_OUNCES.1);
    let least = &least / (exact(1, 1) + tolerance);
    if mass.in_ounces() < least {
        let small = |shown: &Exact| *shown < *Mass::ounces(&least).amount();
        let shown = round_grams(mass.amount(), tolerance, fine_grams, &small);
        return grams(shown);
    }
    let exact = mass.in_ounces();
    // Where two steps nearly meet, no hundredth stays as it is within the tolerance.
    let scale = Scale { steps: ounces, fits: &|_| true, beside: false };
    let shown = roundest(&exact, tolerance, scale).unwrap_or(exact);
    Shown::new(pounds(&shown), Mass::ounces(&shown))
}

fn ounces(ounces: &Exact) -> Vec<Exact> {
    let first = if *ounces >= exact(4, 1) {
        exact(1, 4)
    } else if *ounces >= exact(1, 1) {
        exact(1, 8)
    } else {
        exact(1, 20)
    };
    // The last are said to a hundredth, and are needed where two steps nearly meet: between
    // 0.65 and 0.7 oz no hundredth stays as it is within 3 %.
    [first]
        .into_iter()
        .chain([20, 100, 200, 1000, 10_000].map(|part| exact(1, part)))
        .collect()
}

/// `1 lb 1¾ oz`, `12 oz`, `0.35 oz`.
fn pounds(ounces: &Exact) -> Vec<Term> {
    let pounds = (ounces / exact(16, 1)).trunc();
    let rest = ounces - &pounds * exact(16, 1);
    let number = vulgar(&rest)
        .filter(|_| rest >= exact(1, 1) || !pounds.is_zero() || rest.is_zero())
        .unwrap_or_else(|| decimal(&rest, 2));
    let ounces = Term::new(&rest, number, Unit::Ounce);
    let whole = Term::new(&pounds, pounds.to_integer().to_string(), Unit::Pound);
    match (pounds.is_zero(), rest.is_zero()) {
        (true, _) => vec![ounces],
        (false, true) => vec![whole],
        (false, false) => vec![whole, ounces],
    }
}

/// `amount` to the first of its steps that stays within `tolerance` and that, shown again,
/// stays as it is: 6.79 g must not be shown as 6.8 g where 6.8 g itself is shown as 7 g.
fn roundest(amount: &Exact, tolerance: &Exact, scale: Scale) -> Option<Exact> {
    let stays = |shown: &Exact| {
        shown == amount || roundest(shown, tolerance, scale).as_ref() == Some(shown)
    };
    let Scale { steps, fits, beside } = scale;
    let steps = steps(amount);
    let nearest = |step: &Exact| {
        let nearest = round_to(amount, step);
        if fits(&nearest) { nearest } else { nearest - step }
    };
    let mut tried = steps.iter().flat_map(|step| {
        let nearest = nearest(step);
        let sides = if *amount < nearest { [-1, 1] } else { [1, -1] };
        let sides = sides.map(|side| &nearest + step * exact(side, 1));
        [nearest].into_iter().chain(sides.into_iter().filter(|_| beside))
    });
    let near = |shown: &Exact| {
        shown.is_positive() && fits(shown) && off(shown, amount) <= *tolerance
    };
    tried.find(|shown| near(shown) && stays(shown))
}

/// Grams to the roundest figure; to 0.01 g where none is within the tolerance, for no scale
/// shows more. Less than half of that stays itself.
fn round_grams(
    amount: &Exact,
    tolerance: &Exact,
    steps: Steps,
    fits: &dyn Fn(&Exact) -> bool,
) -> Exact {
    let scale = Scale { steps, fits, beside: true };
    roundest(amount, tolerance, scale).unwrap_or_else(|| {
        let nearest = round_to(amount, &exact(1, 100));
        let sound = nearest.is_positive() && fits(&nearest);
        if sound { nearest } else { amount.clone() }
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::super::International;
    use super::*;

    fn grams(over: i64, under: i64) -> Mass {
        Mass::grams(exact(over, under))
    }

    #[test]
    fn weights_read_as_a_baker_says_them() {
        let three = exact(3, 100);
        let shown = |mass: &Mass| metric(mass, &three, true).words(&International);
        assert_eq!(shown(&grams(500, 1)), "500 g");
        assert_eq!(shown(&grams(8, 1)), "8 g");
        assert_eq!(shown(&grams(1233, 1)), "1235 g");
        assert_eq!(shown(&grams(12_345, 1)), "12.35 kg");
        assert_eq!(shown(&grams(217_725, 1)), "217.7 kg");
        assert_eq!(shown(&grams(21, 2)), "10.5 g");
        assert_eq!(us_weight(&grams(500, 1), &three).words(&International), "1 lb 1¾ oz");
        assert_eq!(us_weight(&grams(250, 1), &three).words(&International), "8¾ oz");
        assert_eq!(
            us_weight(&Mass::ounces(&exact(16, 1)), &three).words(&International),
            "1 lb"
        );
        assert_eq!(
            us_weight(&grams(10, 1), &exact(2, 100)).words(&International),
            "0.35 oz"
        );
        // US Armed Forces Recipe Service, TM 10-412 A-1(2): 1.25 lb × 3.48 = 4.35 lb, which
        // is 4 lb and 5.60 oz, rounded to 4 lb 5½ oz.
        let scaled = Mass::ounces(&(exact(125, 100) * exact(348, 100) * exact(16, 1)));
        assert_eq!(us_weight(&scaled, &three).words(&International), "4 lb 5½ oz");
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
            assert_eq!(us_weight(&mass, &exact(4, 100)).words(&International), printed);
        }
    }

    /// A hundredth of a gram, and grams below a quarter of an ounce: common practice, no source.
    #[test]
    fn weights_are_ones_that_a_scale_shows() {
        let two = exact(2, 100);
        for (milligrams, metric_words, us) in [
            (3, "< 0.01 g", "< 0.01 g"),
            (117, "0.12 g", "0.12 g"),
            (500, "0.5 g", "0.5 g"),
            (10_000, "10 g", "0.35 oz"),
            (217_724_976, "217.7 kg", "480 lb"),
            // A hundredth of an ounce would be 5 % off.
            (3_500, "3.5 g", "3.5 g"),
            (6_940, "6.9 g", "6.9 g"),
            (7_000, "7 g", "0.25 oz"),
        ] {
            let mass = grams(milligrams, 1000);
            assert_eq!(metric(&mass, &two, true).words(&International), metric_words);
            assert_eq!(us_weight(&mass, &two).words(&International), us);
        }
    }

    /// What the words say, in grams.
    fn said(words: &str) -> Option<f64> {
        let (number, unit) = words.rsplit_once(' ')?;
        let worth = match unit {
            "g" => 1.0,
            "kg" => 1000.0,
            "oz" => 28.349_523_125,
            _ => return None,
        };
        Some(number.parse::<f64>().ok()? * worth)
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
                // A scale shows no less than 0.01 g.
                let half = (shown.worth.amount() - mass.amount()).abs() <= exact(1, 200);
                prop_assert!(half || shown.error(&mass) <= tolerance, "{}", shown.words(&International));
                let worth = crate::measure::float(shown.worth.amount());
                let said = said(&shown.words(&International));
                let most = if shown.words(&International).ends_with("oz") { 0.15 } else { 1e-6 * worth };
                prop_assert!(said.is_none_or(|said| (said - worth).abs() <= most), "{} is not {worth}", shown.words(&International));
                prop_assert_eq!(&show(&shown.worth), &shown);
                prop_assert!(show(&heavier).worth >= shown.worth);
            }
        }
    }
}
