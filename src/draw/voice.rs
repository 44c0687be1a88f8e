//! How a drawing speaks: the words of the theme in one unit system.

use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Label, Length, exact};
use crate::sheet::Units;
use crate::words::Words;

/// The words and the unit system of one drawing.
#[derive(Clone, Copy, Debug)]
pub(super) struct Voice<'a> {
    pub(super) words: &'a Words,
    pub(super) units: Units,
}

impl<'a> Voice<'a> {
    /// The word for a drawing's `key`.
    pub(super) fn word(&self, key: &str) -> String {
        self.words.get(&format!("drawing-{key}")).to_owned()
    }

    /// The word for a drawing's `key` with its gaps filled.
    pub(super) fn fill(&self, key: &str, values: &[(&str, &str)]) -> String {
        self.words.fill(&format!("drawing-{key}"), values)
    }

    /// The form of a label in this unit system.
    pub(super) fn of<'l>(&self, label: &'l Label) -> &'l str {
        self.units.of(label)
    }

    /// A size as it is read aloud: `60 by 20 cm`.
    pub(super) fn aloud(&self, label: &Label) -> String {
        self.of(label).replace('×', &self.word("by"))
    }

    /// A length with its unit: `15 cm`.
    pub(super) fn length(&self, centimetres: f64) -> String {
        self.words.of(&self.bare_length(centimetres), self.unit())
    }

    /// A length without its unit, for a ruler: `15`.
    pub(super) fn bare_length(&self, centimetres: f64) -> String {
        let length = Length::centimetres(to_exact(centimetres));
        match self.units {
            Units::Metric => show::centimetres(&length, self.words),
            Units::Us => show::inches(&length),
        }
    }

    /// The unit of lengths.
    fn unit(&self) -> Sign {
        match self.units {
            Units::Metric => Sign::Centimetre,
            Units::Us => Sign::Inch,
        }
    }

    /// The unit of lengths alone: `cm`.
    pub(super) fn unit_alone(&self) -> String {
        self.words.of("", self.unit()).trim().to_owned()
    }

    /// What stands alone on paper, as a sentence.
    pub(super) fn sentence(&self, text: &str) -> String {
        self.fill("sentence", &[("text", text)])
    }

    /// Sentences one after another.
    pub(super) fn sentences(&self, said: &[String]) -> String {
        said.join(self.words.get("sentence-space"))
    }

    /// Distances one after another with one unit: `4.5, 9 cm`.
    pub(super) fn distances(&self, centimetres: impl Iterator<Item = f64>) -> String {
        let bare: Vec<String> = centimetres.map(|at| self.bare_length(at)).collect();
        self.words.of(&self.words.list(&bare), self.unit())
    }

    /// A small count in words: `four`.
    pub(super) fn count(&self, count: u64) -> String {
        let key = format!("count-{count}");
        let word = self.words.get(&key);
        if word == key { count.to_string() } else { word.to_owned() }
    }
}

/// The fraction that a float in the sheet stands for, to a hundredth of a micrometre: a
/// third of an inch then rounds as the exact third does.
fn to_exact(value: f64) -> Exact {
    let parts = (value.clamp(0.0, 1e6) * 1e6).round();
    // In range by the clamp; not-a-number becomes nought.
    exact(parts as i64, 1_000_000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_those_of_the_sheet() {
        let theme = crate::theme::Theme::built_in();
        let words = crate::read::words_in(&theme, "en").expect("the words");
        let metric = Voice { words: &words, units: Units::Metric };
        let us = Voice { words: &words, units: Units::Us };
        assert_eq!(metric.length(15.0), "15 cm");
        assert_eq!(us.length(50.8), "20 in");
        assert_eq!(us.bare_length(25.4), "10");
        assert_eq!(us.length(50.8 / 3.0), "6⅝ in");
        assert_eq!(metric.length(f64::NAN), "0 cm");
    }
}
