//! The promise of the rounding rule over random amounts: every ingredient of the pantry, every
//! unit system, 0.1 g to 500 kg. Shown amounts stay within their tolerance; showing what was
//! shown changes nothing; more never shows as less; no form that no baker writes.
//!
//! Five thousand amounts run with the other tests. The campaign of a million:
//!
//! ```text
//! cargo test --release --test display -- --ignored --nocapture
//! ```

use std::collections::BTreeMap;

use tourier::measure::show::{
    International, Shown, Spoons, household, metric, us_weight,
};
use tourier::measure::{CupSet, Exact, Mass, Unit, exact};
use tourier::pantry::{Item, Pantry};

/// Numbers that look random and are the same every time (SplitMix64).
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    fn below(&mut self, most: u64) -> u64 {
        self.next() % most
    }

    /// Milligrams from 0.1 g to 500 kg, as many small amounts as large ones.
    fn milligrams(&mut self) -> u64 {
        let scale = 100_u64 << self.below(23);
        (scale + self.below(scale)).min(500_000_000)
    }
}

/// Every ingredient with its cup and spoons in each set.
struct Case {
    item: Item,
    spoons: Vec<Spoons>,
}

fn cases() -> Vec<Case> {
    let pantry = Pantry::built_in();
    let names = include_str!("../src/pantry/pantry.csv").lines().skip(1);
    let names = names.filter_map(|line| line.split(',').next());
    let cases: Vec<Case> = names
        .filter_map(|name| pantry.find(name))
        .map(|item| Case { item: item.clone(), spoons: spoons(item) })
        .collect();
    assert!(cases.len() >= 120);
    cases
}

fn spoons(item: &Item) -> Vec<Spoons> {
    let set = |cups| {
        Some(Spoons {
            cup: item.volume(Unit::Cup, cups)?,
            tablespoon: item.volume(Unit::Tablespoon, cups)?,
            teaspoon: item.volume(Unit::Teaspoon, cups)?,
        })
    };
    [CupSet::Us, CupSet::Metric, CupSet::Australian].into_iter().filter_map(set).collect()
}

/// A way of showing an amount; `None` where it has no form for it.
type Show<'a> = Box<dyn Fn(&Mass) -> Option<Shown> + 'a>;

fn shows<'a>(case: &'a Case, tolerance: &'a Exact) -> Vec<(&'static str, Show<'a>)> {
    let mut shows: Vec<(&'static str, Show)> = vec![
        ("fine scale", Box::new(|mass| Some(metric(mass, tolerance, true)))),
        ("scale", Box::new(|mass| Some(metric(mass, tolerance, false)))),
        ("US weight", Box::new(|mass| Some(us_weight(mass, tolerance)))),
    ];
    for spoons in &case.spoons {
        shows.push(("measure", Box::new(|mass| household(mass, spoons, tolerance))));
    }
    shows
}

/// What no baker writes: nothing at all, 16 sixteenths, decimals of a cup, a thousand grams
/// as kilograms, ten thousand as grams.
fn is_forbidden(kind: &str, words: &str) -> bool {
    let tokens: Vec<&str> = words.split([' ', '+']).collect();
    let number = |unit: &str| -> Option<f64> { words.strip_suffix(unit)?.parse().ok() };
    words.is_empty()
        || tokens.iter().any(|token| *token == "0" || token.contains('/'))
        || (kind == "measure" && words.contains('.'))
        || words.starts_with("0 ")
        || words.contains(" 16 oz")
        || number(" kg").is_some_and(|kilograms| kilograms < 10.0)
        || number(" g").is_some_and(|grams| grams >= 10_000.0)
}

fn hold(case: &Case, mass: &Mass, more: &Mass, counts: &mut BTreeMap<&str, u64>) {
    let tolerance = case.item.tolerance();
    for (kind, show) in shows(case, &tolerance) {
        let name = &case.item.name;
        let Some(shown) = show(mass) else { continue };
        *counts.entry(kind).or_default() += 1;
        let off = shown.error(mass);
        // Measures are compared in whole 48ths of a nanogram.
        // No scale shows less than a hundredth of a gram, so half of one is let go.
        let half = (shown.worth.amount() - mass.amount()).abs() <= exact(1, 200);
        assert!(
            half || off <= &tolerance + exact(1, 1_000_000),
            "{name}, {kind}: {} for {} g",
            shown.words(&International),
            mass.amount()
        );
        assert!(
            !is_forbidden(kind, &shown.words(&International)),
            "{name}, {kind}: {}",
            shown.words(&International)
        );
        let again = show(&shown.worth).map(|again| again.words(&International));
        assert_eq!(again.as_ref(), Some(&shown.words(&International)), "{name}, {kind}");
        if let Some(next) = show(more) {
            assert!(
                next.worth >= shown.worth,
                "{name}, {kind}: {} then {}",
                shown.words(&International),
                next.words(&International)
            );
        }
    }
}

fn campaign(amounts: u64, seed: u64) -> BTreeMap<&'static str, u64> {
    let (cases, mut numbers) = (cases(), Numbers(seed));
    let mut counts = BTreeMap::new();
    for _ in 0..amounts {
        let case = &cases[numbers.below(cases.len() as u64) as usize];
        let milligrams = numbers.milligrams();
        let more = milligrams + numbers.below(1 + milligrams / 20);
        let mass =
            |milligrams: u64| Mass::grams(Exact::new(milligrams.into(), 1000.into()));
        hold(case, &mass(milligrams), &mass(more), &mut counts);
    }
    counts
}

#[test]
fn shown_amounts_keep_the_promise() {
    campaign(5_000, 1);
}

#[test]
#[ignore = "a million amounts take minutes; see the head of this file"]
fn a_million_amounts_keep_the_promise() {
    let started = 2_u64;
    let parts = [started, started + 1]
        .map(|seed| std::thread::spawn(move || campaign(500_000, seed)));
    for part in parts {
        println!("{:?}", part.join().expect("every amount keeps the promise"));
    }
}
