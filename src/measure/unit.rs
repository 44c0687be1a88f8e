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
    /// 100 ml.
    Decilitre,
    /// 1000 ml.
    Litre,
    /// A teaspoon of the course's set.
    Teaspoon,
    /// A tablespoon of the course's set.
    Tablespoon,
    /// A US fluid ounce, 29.573 529 562 5 ml.
    FluidOunce,
    /// A cup of the course's set.
    Cup,
    /// A US liquid pint, 473.176 473 ml.
    Pint,
    /// A US liquid quart, 946.352 946 ml.
    Quart,
    /// A US gallon of 231 cubic inches, 3785.411 784 ml.
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
}

/// Every way of writing a unit; the first of each unit is how it is shown.
const SPELLINGS: [(Unit, &[&str]); 16] = [
    (Unit::Milligram, &["mg", "milligram", "milligrams"]),
    (Unit::Gram, &["g", "gram", "grams", "gr"]),
    (Unit::Kilogram, &["kg", "kilo", "kilos", "kilogram", "kilograms"]),
    (Unit::Ounce, &["oz", "ounce", "ounces"]),
    (Unit::Pound, &["lb", "lbs", "pound", "pounds"]),
    (Unit::Millilitre, &["ml", "millilitre", "millilitres", "milliliter", "milliliters"]),
    (Unit::Decilitre, &["dl", "decilitre", "decilitres", "deciliter", "deciliters"]),
    (Unit::Litre, &["l", "litre", "litres", "liter", "liters"]),
    (Unit::Teaspoon, &["tsp", "teaspoon", "teaspoons", "tsps"]),
    (Unit::Tablespoon, &["tbsp", "tablespoon", "tablespoons", "tbsps"]),
    (Unit::FluidOunce, &["fl oz", "fluid ounce", "fluid ounces", "fl. oz", "fl. oz."]),
    (Unit::Cup, &["cup", "cups"]),
    (Unit::Pint, &["pint", "pints", "pt"]),
    (Unit::Quart, &["quart", "quarts", "qt"]),
    (Unit::Gallon, &["gallon", "gallons", "gal"]),
    (Unit::Percent, &["%"]),
];

impl Unit {
    /// The unit that `word` spells, in any case but for a trailing full stop.
    pub fn parse(word: &str) -> Option<Self> {
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
            _ => return None,
        })
    }

    /// Millilitres in one of this unit, for a unit of volume. The US units are parts of
    /// the gallon of 231 cubic inches (NIST Handbook 44 Appendix C).
    pub fn millilitres(self, set: CupSet) -> Option<Exact> {
        let us = |parts: i64| exact(3_785_411_784, 1_000_000 * parts);
        Some(match (self, set) {
            (Self::Millilitre, _) => exact(1, 1),
            (Self::Decilitre, _) => exact(100, 1),
            (Self::Litre, _) => exact(1000, 1),
            (Self::Gallon, _) => us(1),
            (Self::Quart, _) => us(4),
            (Self::Pint, _) => us(8),
            (Self::FluidOunce, _) => us(128),
            (Self::Cup, CupSet::Us) => us(16),
            (Self::Tablespoon, CupSet::Us) => us(256),
            (Self::Teaspoon, CupSet::Us) => us(768),
            (Self::Cup, _) => exact(250, 1),
            (Self::Tablespoon, CupSet::Metric) => exact(15, 1),
            (Self::Tablespoon, CupSet::Australian) => exact(20, 1),
            (Self::Teaspoon, _) => exact(5, 1),
            _ => return None,
        })
    }
}
