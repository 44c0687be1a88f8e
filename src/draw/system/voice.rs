//! How a drawing speaks: the words of the theme in one unit system.

use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Label, Length};
use crate::sheet::Units;
use crate::words::Words;

/// The words and the unit system of one drawing.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Voice<'a> {
    pub(in crate::draw) words: &'a Words,
    pub(in crate::draw) units: Units,
}

impl<'a> Voice<'a> {
    /// The word for a drawing's `key`.
    pub(in crate::draw) fn word(&self, key: &str) -> String {
        self.words.get(&format!("drawing-{key}")).to_owned()
    }

    /// The word for a drawing's `key` with its gaps filled.
    pub(in crate::draw) fn fill(&self, key: &str, values: &[(&str, &str)]) -> String {
        self.words.fill(&format!("drawing-{key}"), values)
    }

    /// The form of a label in this unit system.
    pub(in crate::draw) fn of<'l>(&self, label: &'l Label) -> &'l str {
        self.units.of(label)
    }

    /// A size as it is read aloud: `60 by 20 cm`.
    pub(in crate::draw) fn aloud(&self, label: &Label) -> String {
        self.of(label).replace('×', &self.word("by"))
    }

    /// A length with its unit: `15 cm`.
    pub(in crate::draw) fn length(&self, centimetres: f64) -> String {
        self.words.of(&self.bare_length(centimetres), self.unit())
    }

    /// A length without its unit, for a ruler: `15`.
    pub(in crate::draw) fn bare_length(&self, centimetres: f64) -> String {
        let length = Length::drawn(centimetres);
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
    pub(in crate::draw) fn unit_alone(&self) -> String {
        self.words.of("", self.unit()).trim().to_owned()
    }

    /// What stands alone on paper, as a sentence.
    pub(in crate::draw) fn sentence(&self, text: &str) -> String {
        self.fill("sentence", &[("text", text)])
    }

    /// Sentences one after another.
    pub(in crate::draw) fn sentences(&self, said: &[String]) -> String {
        said.join(self.words.get("sentence-space"))
    }

    /// Distances one after another with one unit: `4.5, 9 cm`.
    pub(in crate::draw) fn distances(
        &self,
        centimetres: impl Iterator<Item = f64>,
    ) -> String {
        let bare: Vec<String> = centimetres.map(|at| self.bare_length(at)).collect();
        self.words.of(&self.words.list(&bare), self.unit())
    }

    /// A small count in words: `four`.
    pub(in crate::draw) fn count(&self, count: u64) -> String {
        let key = format!("count-{count}");
        let word = self.words.get(&key);
        if word == key { count.to_string() } else { word.to_owned() }
    }
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
