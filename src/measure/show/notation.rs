//! How numbers and units are written: the decimal mark, the sign and its place, as a language
//! has them.

use crate::measure::Unit;

/// What stands behind a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// A unit of amounts.
    Amount(Unit),
    /// 1 mm.
    Millimetre,
    /// 1 cm.
    Centimetre,
    /// 1 m.
    Metre,
    /// 2.54 cm.
    Inch,
    /// 30.48 cm.
    Foot,
    /// 1 °C.
    Celsius,
    /// 1 °F.
    Fahrenheit,
    /// 60 s.
    Minute,
    /// 60 min.
    Hour,
    /// 1 kcal.
    Kilocalorie,
}

impl Sign {
    /// 1 g.
    pub const GRAM: Self = Self::Amount(Unit::Gram);
    /// 1000 g.
    pub const KILOGRAM: Self = Self::Amount(Unit::Kilogram);
    /// A hundredth.
    pub const PERCENT: Self = Self::Amount(Unit::Percent);

    /// The sign as the SI and the US customary system write it.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Amount(unit) => unit.word(),
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
            Self::Minute => "min",
            Self::Hour => "h",
            Self::Kilocalorie => "kcal",
        }
    }

    /// The key of its message.
    pub fn key(self) -> &'static str {
        match self {
            Self::Amount(unit) => amount_key(unit),
            Self::Millimetre => "unit-millimetre",
            Self::Centimetre => "unit-centimetre",
            Self::Metre => "unit-metre",
            Self::Inch => "unit-inch",
            Self::Foot => "unit-foot",
            Self::Celsius => "unit-celsius",
            Self::Fahrenheit => "unit-fahrenheit",
            Self::Minute => "unit-minute",
            Self::Hour => "unit-hour",
            Self::Kilocalorie => "unit-kilocalorie",
        }
    }
}

fn amount_key(unit: Unit) -> &'static str {
    match unit {
        Unit::Milligram => "unit-milligram",
        Unit::Gram => "unit-gram",
        Unit::Kilogram => "unit-kilogram",
        Unit::Ounce => "unit-ounce",
        Unit::Pound => "unit-pound",
        Unit::Millilitre => "unit-millilitre",
        Unit::Centilitre => "unit-centilitre",
        Unit::Decilitre => "unit-decilitre",
        Unit::Litre => "unit-litre",
        Unit::Teaspoon => "unit-teaspoon",
        Unit::Tablespoon => "unit-tablespoon",
        Unit::FluidOunce => "unit-fluid-ounce",
        Unit::Dessertspoon => "unit-dessertspoon",
        Unit::Cup => "unit-cup",
        Unit::Gill => "unit-gill",
        Unit::Pint => "unit-pint",
        Unit::Quart => "unit-quart",
        Unit::Gallon => "unit-gallon",
        Unit::Percent => "unit-percent",
    }
}

/// A way to write numbers and units.
pub trait Notation {
    /// What parts the whole from its decimals: `.`, `,`.
    fn point(&self) -> &str;

    /// A number with its unit. `count` is the number in digits, by which a unit that is a
    /// word chooses its form.
    fn with(&self, number: &str, count: &str, sign: Sign) -> String;

    /// Less than an amount: `under 0.01 g`.
    fn under(&self, amount: &str) -> String;

    /// An amount in two units, the larger first: `1 h 25 min`.
    fn together(&self, larger: &str, smaller: &str) -> String;

    /// One measure and another: `1 cup + 2 tsp`.
    fn plus(&self, one: &str, other: &str) -> String;

    /// From one to another: `3–5`.
    fn between(&self, low: &str, high: &str) -> String;

    /// From one amount with its unit to another: `12 oz – 1 lb`.
    fn apart(&self, low: &str, high: &str) -> String;

    /// A number with a unit that is a sign.
    fn of(&self, number: &str, sign: Sign) -> String {
        self.with(number, number, sign)
    }
}

/// Numbers with a point and units by their symbols.
#[derive(Clone, Copy, Debug)]
pub struct International;

impl Notation for International {
    fn point(&self) -> &'static str {
        "."
    }

    fn with(&self, number: &str, _: &str, sign: Sign) -> String {
        format!("{number} {}", sign.symbol())
    }

    fn under(&self, amount: &str) -> String {
        format!("< {amount}")
    }

    fn together(&self, larger: &str, smaller: &str) -> String {
        format!("{larger} {smaller}")
    }

    fn plus(&self, one: &str, other: &str) -> String {
        format!("{one} + {other}")
    }

    fn between(&self, low: &str, high: &str) -> String {
        format!("{low}–{high}")
    }

    fn apart(&self, low: &str, high: &str) -> String {
        format!("{low} – {high}")
    }
}
