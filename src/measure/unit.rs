//! The units an instructor may write, and what each is worth.

use super::{Exact, exact};

/// A unit of weight, volume, count or share.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Unit {
    /// 0.001 g.
    Milligram,
    /// The unit that weights are kept in.
    Gram,
    /// 1000 g.
    Kilogram,
    /// 28.349 523 125 g.
    Ounce,
    /// 453.592 37 g.
    Pound,
    /// The unit that volumes are kept in.
    Millilitre,
    /// 10 ml.
    Centilitre,
    /// 100 ml.
    Decilitre,
    /// 1000 ml.
    Litre,
    /// A teaspoon of the course's set.
    Teaspoon,
    /// A tablespoon of the course's set.
    Tablespoon,
    /// A US fluid ounce, 29.573 529 562 5 ml; an imperial one, 28.413 062 5 ml, where the
    /// course says so.
    FluidOunce,
    /// Two teaspoons.
    Dessertspoon,
    /// A cup of the course's set.
    Cup,
    /// A quarter of a pint of the course's set.
    Gill,
    /// A US liquid pint, 473.176 473 ml; an imperial one, 568.261 25 ml, where the course
    /// says so.
    Pint,
    /// Two pints.
    Quart,
    /// Eight pints: the US gallon of 231 cubic inches, 3785.411 784 ml, or the imperial one
    /// of 4546.09 ml.
    Gallon,
    /// A share of the flour, in percent.
    Percent,
}

/// Which cup and spoons a course measures with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum CupSet {
    /// US customary: cup 236.588 236 5 ml, and its parts.
    #[default]
    Us,
    /// Metric cup of 250 ml with spoons of 15 and 5 ml.
    Metric,
    /// Australian metric: cup 250 ml, tablespoon 20 ml, teaspoon 5 ml.
    Australian,
    /// British: cup 250 ml, spoons of 15 and 5 ml as in the metric set, with the imperial
    /// gallon of 4.546 09 l and its parts.
    Imperial,
    /// Japanese: cup 200 ml, tablespoon 15 ml, teaspoon 5 ml.
    Japanese,
}

/// Millilitres in the measures of a set.
impl CupSet {
    fn gallon(self) -> Exact {
        match self {
            Self::Us | Self::Metric | Self::Australian | Self::Japanese => {
                exact(3_785_411_784, 1_000_000)
            }
            Self::Imperial => exact(454_609, 100),
        }
    }

    fn ounces_in_a_gallon(self) -> i64 {
        match self {
            Self::Us | Self::Metric | Self::Australian | Self::Japanese => 128,
            Self::Imperial => 160,
        }
    }

    fn cup(self) -> Exact {
        match self {
            Self::Us => self.gallon() / exact(16, 1),
            Self::Metric | Self::Australian | Self::Imperial => exact(250, 1),
            Self::Japanese => exact(200, 1),
        }
    }

    fn tablespoon(self) -> Exact {
        match self {
            Self::Us => self.gallon() / exact(256, 1),
            Self::Metric | Self::Imperial | Self::Japanese => exact(15, 1),
            Self::Australian => exact(20, 1),
        }
    }

    fn teaspoon(self) -> Exact {
        match self {
            Self::Us => self.gallon() / exact(768, 1),
            Self::Metric | Self::Australian | Self::Imperial | Self::Japanese => {
                exact(5, 1)
            }
        }
    }
}

/// Every way of writing a unit; the first of each unit is how it is shown.
const SPELLINGS: [(Unit, &[&str]); 19] = [
    (Unit::Milligram, &["mg", "milligram", "milligrams"]),
    (Unit::Gram, &["g", "gram", "grams", "gr"]),
    (Unit::Kilogram, &["kg", "kilo", "kilos", "kilogram", "kilograms"]),
    (Unit::Ounce, &["oz", "ounce", "ounces", "ozs"]),
    (Unit::Pound, &["lb", "lbs", "pound", "pounds"]),
    (Unit::Millilitre, &["ml", "millilitre", "millilitres", "milliliter", "milliliters"]),
    (Unit::Centilitre, &["cl", "centilitre", "centilitres", "centiliter", "centiliters"]),
    (Unit::Decilitre, &["dl", "decilitre", "decilitres", "deciliter", "deciliters"]),
    (Unit::Litre, &["l", "litre", "litres", "liter", "liters"]),
    (
        Unit::Teaspoon,
        &[
            "tsp",
            "teaspoon",
            "teaspoons",
            "tsps",
            "teaspoonful",
            "teaspoonfuls",
            "teaspoonsful",
            "tea spoon",
            "tea spoons",
            "teasp",
        ],
    ),
    (
        Unit::Tablespoon,
        &[
            "tbsp",
            "tablespoon",
            "tablespoons",
            "tbsps",
            "tablespoonful",
            "tablespoonfuls",
            "tablespoonsful",
            "table spoon",
            "table spoons",
            "tbs",
            "tbl",
            "tb",
            "tbls",
            "tablesp",
        ],
    ),
    (Unit::FluidOunce, &["fl oz", "fluid ounce", "fluid ounces", "fl. oz", "fl. oz."]),
    (
        Unit::Dessertspoon,
        &["dessertspoon", "dessertspoons", "dessertspoonful", "dessertspoonfuls", "dsp"],
    ),
    (Unit::Cup, &["cup", "cups", "cupful", "cupfuls", "cupsful", "c"]),
    (Unit::Gill, &["gill", "gills"]),
    (Unit::Pint, &["pint", "pints", "pt", "pts"]),
    (Unit::Quart, &["quart", "quarts", "qt", "qts", "qrt", "qrts"]),
    (Unit::Gallon, &["gallon", "gallons", "gal", "gals"]),
    (Unit::Percent, &["%"]),
];

impl Unit {
    /// The unit that `word` spells, in any case, with or without a trailing full stop; but
    /// `T` is a tablespoon and `t` a teaspoon.
    pub fn parse(word: &str) -> Option<Self> {
        match word.trim().trim_end_matches('.') {
            "T" => return Some(Self::Tablespoon),
            "t" => return Some(Self::Teaspoon),
            _ => {}
        }
        let word = word.trim().to_lowercase();
        let word = if word == "%" { "%" } else { word.trim_end_matches('.') };
        SPELLINGS.iter().find(|(_, all)| all.contains(&word)).map(|(unit, _)| *unit)
    }

    /// How the unit is shown.
    pub fn word(self) -> &'static str {
        SPELLINGS.iter().find(|(unit, _)| *unit == self).map_or("", |(_, all)| all[0])
    }

    /// Grams in one of this unit, for a unit of weight. Pound and ounce: NIST Handbook
    /// 44 Appendix C.
    pub fn grams(self) -> Option<Exact> {
        Some(match self {
            Self::Milligram => exact(1, 1000),
            Self::Gram => exact(1, 1),
            Self::Kilogram => exact(1000, 1),
            Self::Ounce => exact(45_359_237, 1_600_000),
            Self::Pound => exact(45_359_237, 100_000),
            Self::Millilitre
            | Self::Centilitre
            | Self::Decilitre
            | Self::Litre
            | Self::Teaspoon
            | Self::Tablespoon
            | Self::FluidOunce
            | Self::Dessertspoon
            | Self::Cup
            | Self::Gill
            | Self::Pint
            | Self::Quart
            | Self::Gallon
            | Self::Percent => return None,
        })
    }

    /// Millilitres in one of this unit, for a unit of volume. The US units are parts of
    /// the gallon of 231 cubic inches (NIST Handbook 44 Appendix C), the imperial ones of
    /// the gallon of 4.546 09 l (Weights and Measures Act 1985, Schedule 1).
    pub fn millilitres(self, set: CupSet) -> Option<Exact> {
        let of_gallon = |parts: i64| set.gallon() / exact(parts, 1);
        Some(match self {
            Self::Millilitre => exact(1, 1),
            Self::Centilitre => exact(10, 1),
            Self::Decilitre => exact(100, 1),
            Self::Litre => exact(1000, 1),
            Self::Gallon => of_gallon(1),
            Self::Quart => of_gallon(4),
            Self::Pint => of_gallon(8),
            Self::Gill => of_gallon(32),
            Self::FluidOunce => of_gallon(set.ounces_in_a_gallon()),
            Self::Cup => set.cup(),
            Self::Tablespoon => set.tablespoon(),
            Self::Dessertspoon => set.teaspoon() * exact(2, 1),
            Self::Teaspoon => set.teaspoon(),
            Self::Milligram
            | Self::Gram
            | Self::Kilogram
            | Self::Ounce
            | Self::Pound
            | Self::Percent => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn millilitres(unit: Unit) -> Exact {
        unit.millilitres(CupSet::Us).unwrap_or_else(|| exact(0, 1))
    }

    fn grams(unit: Unit) -> Exact {
        unit.grams().unwrap_or_else(|| exact(0, 1))
    }

    /// Weights and Measures Act 1985 (UK), Schedule 1: 1 gal = 4.546 09 l; a pint is its
    /// eighth part, a gill a quarter of that, a fluid ounce a twentieth of a pint.
    #[test]
    fn imperial_measures_are_parts_of_their_gallon() {
        let imperial = |unit: Unit| unit.millilitres(CupSet::Imperial);
        assert_eq!(imperial(Unit::Pint), Some(exact(56_826_125, 100_000)));
        assert_eq!(imperial(Unit::Gill), Some(exact(1_420_653_125, 10_000_000)));
        assert_eq!(imperial(Unit::FluidOunce), Some(exact(284_130_625, 10_000_000)));
        assert_eq!(Unit::parse("T"), Some(Unit::Tablespoon));
        assert_eq!(Unit::parse("t."), Some(Unit::Teaspoon));
    }

    /// NIST Handbook 44 Appendix C: 1 lb = 453.592 37 g, 1 gal = 231 in³, 1 in = 2.54 cm.
    #[test]
    fn weights_and_volumes_are_exact() {
        assert_eq!(grams(Unit::Pound), exact(45_359_237, 100_000));
        assert_eq!(grams(Unit::Ounce), exact(28_349_523_125, 1_000_000_000));
        assert_eq!(grams(Unit::Kilogram) * grams(Unit::Milligram), exact(1, 1));
        assert_eq!(grams(Unit::Gram), exact(1, 1));
        let inch = exact(254, 100);
        let gallon = exact(231, 1) * &inch * &inch * &inch;
        assert_eq!(millilitres(Unit::Gallon), gallon);
        for (unit, parts) in [
            (Unit::Quart, 4),
            (Unit::Pint, 8),
            (Unit::Cup, 16),
            (Unit::FluidOunce, 128),
            (Unit::Tablespoon, 256),
            (Unit::Teaspoon, 768),
        ] {
            assert_eq!(millilitres(unit) * exact(parts, 1), gallon, "{unit:?}");
        }
        assert_eq!(millilitres(Unit::Millilitre), exact(1, 1));
        assert_eq!(millilitres(Unit::Centilitre), exact(10, 1));
        assert_eq!(millilitres(Unit::Decilitre), exact(100, 1));
        assert_eq!(millilitres(Unit::Litre), exact(1000, 1));
    }

    #[test]
    fn the_first_spelling_is_shown() {
        for (unit, all) in SPELLINGS {
            assert_eq!(unit.word(), all[0]);
            assert!(all.iter().all(|word| Unit::parse(word) == Some(unit)), "{all:?}");
        }
        assert_eq!(
            [Unit::Gram.word(), Unit::Cup.word(), Unit::Percent.word()],
            ["g", "cup", "%"]
        );
    }

    /// Cup 250, tablespoon 20, teaspoon 5 ml: New South Wales Government conversion chart.
    /// A tablespoon of 15 ml elsewhere, and Japan's cup of 200 ml: from memory.
    #[test]
    fn metric_cups_and_spoons() {
        let of = |unit: Unit, set| unit.millilitres(set);
        for set in [CupSet::Metric, CupSet::Australian] {
            assert_eq!(of(Unit::Cup, set), Some(exact(250, 1)));
            assert_eq!(of(Unit::Teaspoon, set), Some(exact(5, 1)));
        }
        assert_eq!(of(Unit::Tablespoon, CupSet::Australian), Some(exact(20, 1)));
        assert_eq!(of(Unit::Tablespoon, CupSet::Metric), Some(exact(15, 1)));
        let japanese = [Unit::Cup, Unit::Tablespoon, Unit::Teaspoon];
        assert_eq!(
            japanese.map(|unit| of(unit, CupSet::Japanese)),
            [200, 15, 5].map(|ml| Some(exact(ml, 1)))
        );
    }

    /// US Armed Forces Recipe Service, TM 10-412 A-1(3): 6 gal for 100 portions are
    /// 19 gal 3 qt 1 pt 1 c 10 tbsp 2¾ tsp for 333. That 6 gal is the amount it starts
    /// from is derived by arithmetic.
    #[test]
    fn a_gallon_comes_apart() {
        let mut rest = millilitres(Unit::Gallon) * exact(6 * 333, 100);
        let mut counts = Vec::new();
        for unit in [Unit::Gallon, Unit::Quart, Unit::Pint, Unit::Cup, Unit::Tablespoon] {
            let whole = (&rest / millilitres(unit)).floor();
            rest = rest - &whole * millilitres(unit);
            counts.push(whole);
        }
        let spoons =
            super::super::round_to(&(rest / millilitres(Unit::Teaspoon)), &exact(1, 4));
        assert_eq!(counts, [19, 3, 1, 1, 10].map(|count| exact(count, 1)));
        assert_eq!(spoons, exact(11, 4));
    }
}
