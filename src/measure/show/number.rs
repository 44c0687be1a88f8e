//! Numbers in words.

use dashu_int::ops::Abs;
use num_traits::ToPrimitive;

use crate::measure::{Exact, exact, round_to};

use super::{Notation, Sign};

/// A number rounded to `places` decimals with a point, as data has it, without trailing noughts: `47.5`, `22`.
pub fn decimal(value: &Exact, places: u32) -> String {
    let places = places.min(6);
    let scale = 10_i64.pow(places);
    let rounded = round_to(value, &exact(1, scale));
    let whole = rounded.to_integer();
    let part = (rounded.numer() % rounded.denom()).abs() * scale / rounded.denom();
    let sign = if rounded.is_negative() && whole.is_zero() { "-" } else { "" };
    if part.is_zero() {
        return format!("{sign}{whole}");
    }
    let digits = format!("{part:0>width$}", width = places as usize);
    format!("{sign}{whole}.{}", digits.trim_end_matches('0'))
}

/// The same as a language writes it.
pub fn number(value: &Exact, places: u32, notation: &dyn Notation) -> String {
    marked(&decimal(value, places), notation)
}

/// Digits with a point, with the decimal mark of a language in its place.
pub fn marked(digits: &str, notation: &dyn Notation) -> String {
    match notation.point() {
        "." => digits.to_owned(),
        point => digits.replace('.', point),
    }
}

/// Hundredths, as `number` is rounded: `12.5 %`.
pub fn percent(value: &Exact, places: u32, notation: &dyn Notation) -> String {
    notation.of(&number(value, places, notation), Sign::PERCENT)
}

/// Hundredths to the whole: `75 %`.
pub fn whole_percent(percent: f64, notation: &dyn Notation) -> String {
    notation.of(&format!("{percent:.0}"), Sign::PERCENT)
}

/// A whole number, or a number with up to two decimals.
pub fn plain(value: &Exact) -> String {
    decimal(value, 2)
}

/// A number to a tenth, without one that is nought.
pub fn tenths(value: f64) -> String {
    // No "-0".
    format!("{}", (value * 10.0).round() / 10.0 + 0.0)
}

/// Money with two places and a point, given in the currency's smallest unit.
pub fn money(minor: i64) -> String {
    let sign = if minor < 0 { "-" } else { "" };
    format!("{sign}{}.{:02}", minor.unsigned_abs() / 100, minor.unsigned_abs() % 100)
}

/// A number as a baker writes it, with a vulgar fraction: `1¾`, `½`, `3`. `None` where
/// the fraction is none of ½ ⅓ ⅔ ¼ ¾ and eighths.
pub fn vulgar(value: &Exact) -> Option<String> {
    let (whole, part) = (value.to_integer(), value.numer() % value.denom());
    if part.is_zero() {
        return Some(whole.to_string());
    }
    let sign = match (part.to_i64()?, value.denom().to_i64()?) {
        (1, 2) => '½',
        (1, 3) => '⅓',
        (2, 3) => '⅔',
        (1, 4) => '¼',
        (3, 4) => '¾',
        (1, 8) => '⅛',
        (3, 8) => '⅜',
        (5, 8) => '⅝',
        (7, 8) => '⅞',
        _ => return None,
    };
    let whole = if whole.is_zero() { String::new() } else { whole.to_string() };
    Some(format!("{whole}{sign}"))
}

/// `value` to the nearest `1/parts`, with a vulgar fraction where one exists.
pub(super) fn nearest_part(value: &Exact, parts: i64) -> String {
    let rounded = round_to(value, &exact(1, parts));
    vulgar(&rounded).unwrap_or_else(|| {
        let whole = rounded.trunc();
        let part = &rounded - &whole;
        let lead = if whole.is_zero() { String::new() } else { format!("{whole} ") };
        format!("{lead}{}/{}", part.numer(), part.denom())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_carry_no_empty_places() {
        assert_eq!(decimal(&exact(95, 2), 1), "47.5");
        assert_eq!(decimal(&exact(22, 1), 1), "22");
        assert_eq!(decimal(&exact(1, 20), 2), "0.05");
        assert_eq!(decimal(&exact(-1, 2), 1), "-0.5");
        assert_eq!(decimal(&exact(199, 100), 1), "2");
    }

    #[test]
    fn fractions_are_the_ones_bakers_write() {
        assert_eq!(vulgar(&exact(7, 4)).as_deref(), Some("1¾"));
        assert_eq!(vulgar(&exact(1, 2)).as_deref(), Some("½"));
        assert_eq!(vulgar(&exact(1, 5)), None);
        assert_eq!(nearest_part(&exact(5, 32), 16), "3/16");
        assert_eq!(nearest_part(&exact(21, 16), 16), "1 5/16");
    }
}
