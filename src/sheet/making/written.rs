//! What stays as its author wrote it: at the written size the author's own measure, at every
//! size both ends of a range and the words that hedge an amount.

use crate::formula::{Weighed, weigh_unit};
use crate::measure::show::{self, Shown, Term};
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
    let shown = Shown::new(terms.iter().map(term).collect::<Option<_>>()?, worth);
    let near = shown.error(weighed.mass.as_ref()?) <= exact(NEAR.0, NEAR.1);
    near.then(|| terms.first().map(|(_, unit)| (*unit, shown)))?
}

/// An amount as its author wrote it; `None` where its number has no words.
fn term((value, unit): &(Exact, Unit)) -> Option<Term> {
    let decimal = show::decimal(value, 2);
    let same = crate::measure::parse(&decimal, false).as_ref() == Some(value);
    let decimal = same.then_some(decimal);
    // A scale for grams shows no vulgar fractions.
    let number = if matches!(unit, Unit::Gram | Unit::Milligram) {
        decimal.or_else(|| show::vulgar(value))
    } else {
        show::vulgar(value).or(decimal)
    }?;
    Some(Term::new(value, number, *unit))
}

#[cfg(test)]
mod tests {
    use crate::measure::show::International;

    use super::*;

    #[test]
    fn an_author_s_own_measure_stays() {
        let words = |over, under, unit| {
            let term = term(&(exact(over, under), unit))?;
            Some(Shown::new(vec![term], Mass::zero()).words(&International))
        };
        assert_eq!(words(20, 3, Unit::Cup).as_deref(), Some("6⅔ cup"));
        assert_eq!(words(1, 7, Unit::Cup), None);
        assert_eq!(words(1, 2, Unit::Gram).as_deref(), Some("0.5 g"));
    }
}
