//! What stays as its author wrote it: at the written size the author's own measure, at every
//! size both ends of a range and the words that hedge an amount.

use crate::formula::{Weighed, weigh_unit};
use crate::measure::show::{self, Shown};
use crate::measure::{Exact, Mass, Unit, exact};
use crate::model::{Amount, Quantity};

use super::Context;
use super::lines::Amounts;

/// An author's second amount may be this far off the first and is still shown.
const NEAR: (i64, i64) = (1, 10);

/// Puts the author's own amounts in place of what was rounded from the weight.
pub(super) fn own(amounts: &mut Amounts, weighed: &Weighed, context: Context) {
    let first = match &weighed.line.amount {
        Amount::Of(quantity) => Some(&quantity.value),
        Amount::Free(_) => None,
    };
    let also = weighed.line.also.as_ref().map(|also| &also.value);
    for quantity in [also, first].into_iter().flatten() {
        put(amounts, quantity, weighed, context);
    }
}

fn put(amounts: &mut Amounts, quantity: &Quantity, weighed: &Weighed, context: Context) {
    let Some((unit, shown)) = shown(quantity, weighed, context) else { return };
    match unit {
        Unit::Gram | Unit::Milligram => amounts.metric = shown,
        Unit::Ounce | Unit::Pound => amounts.us = shown,
        Unit::Teaspoon
        | Unit::Tablespoon
        | Unit::Dessertspoon
        | Unit::FluidOunce
        | Unit::Cup
        | Unit::Gill
        | Unit::Pint
        | Unit::Quart
        | Unit::Gallon => amounts.measure = Some(shown),
        // Kilograms and litres are shown as grams, shares by their weight.
        Unit::Kilogram
        | Unit::Millilitre
        | Unit::Centilitre
        | Unit::Decilitre
        | Unit::Litre
        | Unit::Percent => {}
    }
}

/// An amount in its own words, and its largest unit. None where its number has no words, or
/// where it is further off than a second amount may be.
fn shown(
    quantity: &Quantity,
    weighed: &Weighed,
    context: Context,
) -> Option<(Unit, Shown)> {
    let terms: &[(Exact, Unit)] = match quantity {
        Quantity::Unit(value, unit) => &[(value.clone(), *unit)],
        Quantity::Sum(terms) => terms,
        Quantity::Pieces(..) | Quantity::Batches(_) => return None,
    };
    let weigh = |(value, unit): &(Exact, Unit)| {
        weigh_unit(value, *unit, weighed.source, context.book)
    };
    let worth = terms.iter().map(weigh).sum::<Option<Mass>>()?;
    let shown = Shown { words: in_words(terms)?, worth };
    let near = shown.error(weighed.mass.as_ref()?) <= exact(NEAR.0, NEAR.1);
    near.then(|| terms.first().map(|(_, unit)| (*unit, shown)))?
}

fn in_words(terms: &[(Exact, Unit)]) -> Option<String> {
    let one = |(value, unit): &(Exact, Unit)| {
        let decimal = show::decimal(value, 2);
        let same = crate::measure::parse(&decimal, false).as_ref() == Some(value);
        let decimal = same.then_some(decimal);
        // A scale for grams shows no vulgar fractions.
        let number = if matches!(unit, Unit::Gram | Unit::Milligram) {
            decimal.or_else(|| show::vulgar(value))
        } else {
            show::vulgar(value).or(decimal)
        }?;
        let plural = *value > exact(1, 1)
            && matches!(
                unit,
                Unit::Cup
                    | Unit::Gill
                    | Unit::Pint
                    | Unit::Quart
                    | Unit::Gallon
                    | Unit::Dessertspoon
            );
        Some(format!("{number} {}{}", unit.word(), if plural { "s" } else { "" }))
    };
    let words: Option<Vec<String>> = terms.iter().map(one).collect();
    let are_weights = terms.iter().any(|(_, unit)| unit.grams().is_some());
    words.map(|words| words.join(if are_weights { " " } else { " + " }))
}

/// The words of both ends of a range: `3–5 g`, `1 lb 2 oz – 1 lb 4 oz`.
pub(super) fn between(low: &str, high: &str) -> String {
    match (low.split_once(' '), high.split_once(' ')) {
        _ if low == high => low.to_owned(),
        (Some((number, unit)), Some((_, other)))
            if unit.trim_end_matches('s') == other.trim_end_matches('s')
                && !unit.contains(' ') =>
        {
            format!("{number}–{high}")
        }
        (None, None) => format!("{low}–{high}"),
        _ => format!("{low} – {high}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_ends_in_one_unit_where_they_have_one() {
        assert_eq!(between("3 g", "5 g"), "3–5 g");
        assert_eq!(between("1 cup", "1½ cups"), "1–1½ cups");
        assert_eq!(between("2", "3"), "2–3");
        assert_eq!(between("12 oz", "1 lb 2 oz"), "12 oz – 1 lb 2 oz");
    }

    #[test]
    fn terms_are_joined_as_they_are_said() {
        let terms = [(exact(1, 1), Unit::Pound), (exact(4, 1), Unit::Ounce)];
        assert_eq!(in_words(&terms).as_deref(), Some("1 lb 4 oz"));
        let terms = [(exact(20, 3), Unit::Cup)];
        assert_eq!(in_words(&terms).as_deref(), Some("6⅔ cups"));
        let terms = [(exact(1, 4), Unit::Cup), (exact(2, 1), Unit::Teaspoon)];
        assert_eq!(in_words(&terms).as_deref(), Some("¼ cup + 2 tsp"));
        assert_eq!(in_words(&[(exact(1, 7), Unit::Cup)]), None);
        assert_eq!(in_words(&[(exact(1, 2), Unit::Gram)]).as_deref(), Some("0.5 g"));
    }
}
