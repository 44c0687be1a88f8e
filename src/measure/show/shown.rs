//! An amount rounded, ready to be said in any language.

use crate::measure::{Exact, Mass, Unit, exact};

use super::number::{decimal, marked};
use super::{Notation, Sign};

/// One number with its unit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Term {
    value: Exact,
    /// The number: decimals with a point, or vulgar fractions.
    number: String,
    sign: Sign,
}

impl Term {
    /// A number as it is written with its unit.
    pub fn new(value: &Exact, number: String, unit: Unit) -> Self {
        Self { value: value.clone(), number, sign: Sign::Amount(unit) }
    }

    /// The number in digits, by which a unit chooses its form: 1 for all up to one.
    fn count(&self) -> String {
        let one = self.value <= exact(1, 1);
        if one { "1".to_owned() } else { decimal(&self.value, 2) }
    }

    fn is_decimal_ounces(&self) -> bool {
        self.sign == Sign::Amount(Unit::Ounce) && self.number.contains('.')
    }

    fn words(&self, notation: &dyn Notation) -> String {
        notation.with(&marked(&self.number, notation), &self.count(), self.sign)
    }

    fn is_weight(&self) -> bool {
        matches!(self.sign, Sign::Amount(unit) if unit.grams().is_some())
    }
}

/// An amount as shown: what is said of it, and what that is worth.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// What the words are worth, exactly.
    pub worth: Mass,
    /// The word that hedges it: `about`.
    pub hedge: Option<String>,
    terms: Vec<Term>,
    /// The other end of a range.
    high: Option<Vec<Term>>,
    /// It is less than what is said.
    under: bool,
}

impl Shown {
    /// The sum of some terms, the largest unit first.
    pub fn new(terms: Vec<Term>, worth: Mass) -> Self {
        Self { worth, hedge: None, terms, high: None, under: false }
    }

    /// Less than a term.
    pub(super) fn under(term: Term, worth: Mass) -> Self {
        Self { under: true, ..Self::new(vec![term], worth) }
    }

    /// From the words of one to the words of another; worth what this is.
    #[must_use]
    pub fn between(self, low: &Self, high: &Self) -> Self {
        let high = (low.terms != high.terms).then(|| high.terms.clone());
        Self { terms: low.terms.clone(), high, under: low.under, ..self }
    }

    /// Whether ounces of it are said in decimals, as those under one mostly are.
    pub fn is_decimal_ounces(&self) -> bool {
        self.terms.iter().chain(self.high.iter().flatten()).any(Term::is_decimal_ounces)
    }

    /// The same with ounces in decimals, to a hundredth, for a column in which others need
    /// them: `1 lb 5.5 oz`, not `1 lb 5½ oz`.
    #[must_use]
    pub fn in_decimal_ounces(&self) -> Self {
        let mut shown = self.clone();
        for term in shown.terms.iter_mut().chain(shown.high.iter_mut().flatten()) {
            if term.sign == Sign::Amount(Unit::Ounce) {
                term.number = decimal(&term.value, 2);
            }
        }
        shown
    }

    /// How far the words are off `mass`, as a share of it: 0.01 is 1 %.
    pub fn error(&self, mass: &Mass) -> Exact {
        off(self.worth.amount(), mass.amount())
    }

    /// `1 lb 1¾ oz`, `3–5 g`, `about ½ cup`.
    pub fn words(&self, notation: &dyn Notation) -> String {
        let words = match &self.high {
            None => sum(&self.terms, notation),
            Some(high) => range(&self.terms, high, notation),
        };
        let words = if self.under { notation.under(&words) } else { words };
        match &self.hedge {
            Some(hedge) => format!("{hedge} {words}"),
            None => words,
        }
    }
}

/// How far `shown` is off `amount`, as a share of it; nought for nought.
pub(super) fn off(shown: &Exact, amount: &Exact) -> Exact {
    if amount.is_zero() { exact(0, 1) } else { ((shown - amount) / amount).abs() }
}

/// `1 lb 4 oz`, `¼ cup + 2 tsp`.
fn sum(terms: &[Term], notation: &dyn Notation) -> String {
    let join = |sum: String, term: &Term| {
        let term = (term.words(notation), term.is_weight());
        if term.1 {
            notation.together(&sum, &term.0)
        } else {
            notation.plus(&sum, &term.0)
        }
    };
    match terms {
        [] => String::new(),
        [first, more @ ..] => more.iter().fold(first.words(notation), join),
    }
}

/// `3–5 g` in one unit, else `12 oz – 1 lb 2 oz`.
fn range(low: &[Term], high: &[Term], notation: &dyn Notation) -> String {
    match (low, high) {
        ([low], [high]) if low.sign == high.sign => {
            let ends = [low, high].map(|end| marked(&end.number, notation));
            notation.with(&notation.between(&ends[0], &ends[1]), &high.count(), high.sign)
        }
        _ => notation.apart(&sum(low, notation), &sum(high, notation)),
    }
}

#[cfg(test)]
mod tests {
    use super::super::International;
    use super::*;

    fn shown(terms: &[(i64, i64, &str, Unit)]) -> Shown {
        let term = |(over, under, number, unit): &(i64, i64, &str, Unit)| {
            Term::new(&exact(*over, *under), (*number).to_owned(), *unit)
        };
        Shown::new(terms.iter().map(term).collect(), Mass::zero())
    }

    #[test]
    fn both_ends_in_one_unit_where_they_have_one() {
        let between = |low: &Shown, high: &Shown| {
            low.clone().between(low, high).words(&International)
        };
        let ounces =
            |number: i64| shown(&[(number, 1, &number.to_string(), Unit::Ounce)]);
        assert_eq!(between(&ounces(3), &ounces(5)), "3–5 oz");
        assert_eq!(between(&ounces(3), &ounces(3)), "3 oz");
        let more = shown(&[(1, 1, "1", Unit::Pound), (2, 1, "2", Unit::Ounce)]);
        assert_eq!(between(&ounces(12), &more), "12 oz – 1 lb 2 oz");
    }

    #[test]
    fn ounces_of_a_column_are_all_in_decimals() {
        let all = [(1, 1, "1", Unit::Pound), (11, 2, "5½", Unit::Ounce)];
        let all = shown(&all).in_decimal_ounces();
        assert_eq!(all.words(&International), "1 lb 5.5 oz");
        assert!(all.is_decimal_ounces());
        let eighth = shown(&[(17, 8, "2⅛", Unit::Ounce)]);
        assert!(!eighth.is_decimal_ounces());
        assert_eq!(eighth.in_decimal_ounces().words(&International), "2.13 oz");
        let grams = shown(&[(11, 2, "5.5", Unit::Gram)]);
        assert!(!grams.is_decimal_ounces());
        assert_eq!(grams.in_decimal_ounces(), grams);
    }

    #[test]
    fn terms_are_joined_as_they_are_said() {
        let two = [(1, 4, "¼", Unit::Cup), (2, 1, "2", Unit::Teaspoon)];
        assert_eq!(shown(&two).words(&International), "¼ cup + 2 tsp");
        let hedged = Shown { hedge: Some("about".into()), ..shown(&two[..1]) };
        assert_eq!(hedged.words(&International), "about ¼ cup");
    }
}
