//! The words of one language: every fixed word that a student reads, by its key.
//!
//! They are read once from message files (`read::words`) and kept taken apart, so that
//! putting a number into a sentence reads no file and no syntax.

use std::collections::BTreeMap;

use fixed_decimal::Decimal;
use icu_locale_core::Locale;
use icu_plurals::{PluralCategory, PluralRules};
use jiff::civil::Date;

use crate::measure::show::{Notation, Sign};
use crate::statement::{Statement, Value};

/// Words by key, kebab-case.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Words {
    /// The tag of the language: `en-GB`.
    pub language: String,
    /// Short texts of the author's as they are said in a second language, by what was
    /// written; `None` in the language that the course is written in.
    pub phrases: Option<BTreeMap<String, String>>,
    messages: BTreeMap<String, Message>,
}

/// One word or sentence, taken apart.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// Each `{name}` where a value goes; of a choice, the form for any other number.
    plain: String,
    pieces: Vec<Piece>,
}

/// A part of a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Piece {
    /// Words.
    Text(String),
    /// Where the value of this name goes.
    Gap(String),
    /// One of several forms, as the value of a name wants it.
    Choice {
        /// The name.
        of: String,
        /// A number, a plural category of CLDR or a value itself, and its form.
        forms: Vec<(String, Vec<Piece>)>,
        /// The form for everything else.
        other: Vec<Piece>,
    },
}

/// A part of what is said.
#[derive(Clone, Copy, Debug)]
pub enum Said<'a> {
    /// Words of the language.
    Words(&'a str),
    /// A name and its value.
    Value(&'a str, &'a str),
    /// A name that has no value.
    Gap(&'a str),
}

impl Message {
    /// A message of these pieces.
    pub fn new(pieces: Vec<Piece>) -> Self {
        let mut plain = String::new();
        say_plain(&pieces, &mut plain);
        Self { plain, pieces }
    }
}

fn say_plain(pieces: &[Piece], out: &mut String) {
    for piece in pieces {
        match piece {
            Piece::Text(text) => out.push_str(text),
            Piece::Gap(name) => out.push_str(&format!("{{{name}}}")),
            Piece::Choice { other, .. } => say_plain(other, out),
        }
    }
}

impl Words {
    /// No words yet of this language.
    pub fn new(language: &str) -> Self {
        Self { language: language.to_owned(), ..Self::default() }
    }

    /// A short text of the author's in a second language; `None` where it is not said there.
    pub fn phrase(&self, written: &str) -> Option<&str> {
        let phrases = self.phrases.as_ref()?;
        phrases.get(written.trim()).map(String::as_str)
    }

    /// A short text of the author's as it is read: in a second language where it is said
    /// there, else as it was written. A list of states is looked up state by state too.
    pub fn author(&self, written: &str) -> String {
        if let Some(phrase) = self.phrase(written) {
            return phrase.to_owned();
        }
        if self.phrases.is_none() || !written.contains(", ") {
            return written.to_owned();
        }
        let parts: Vec<&str> =
            written.split(", ").map(|part| self.phrase(part).unwrap_or(part)).collect();
        parts.join(self.get("list-comma"))
    }

    /// Adds a message, in place of one with the same key.
    pub fn insert(&mut self, key: String, message: Message) {
        self.messages.insert(key, message);
    }

    /// The word for `key`, with `{name}` where a value goes; `None` where there is none.
    pub fn find(&self, key: &str) -> Option<&str> {
        self.messages.get(key).map(|message| message.plain.as_str())
    }

    /// The same; the key itself where there is none, so that a gap is seen and nothing
    /// breaks.
    pub fn get<'a>(&'a self, key: &'a str) -> &'a str {
        self.find(key).unwrap_or(key)
    }

    /// Every key with its word, as [`Self::get`] gives it.
    pub fn all(&self) -> impl Iterator<Item = (&str, &str)> {
        self.messages.iter().map(|(key, message)| (key.as_str(), &*message.plain))
    }

    /// The word for `key` with its values put in; a name without a value stays as it is.
    /// Where the word has several forms, a value that is a number chooses by the plural
    /// rules of the language.
    pub fn fill(&self, key: &str, values: &[(&str, &str)]) -> String {
        let mut out = String::with_capacity(2 * self.get(key).len());
        self.say(key, values, &mut |said| match said {
            Said::Words(text) | Said::Value(_, text) => out.push_str(text),
            Said::Gap(name) => out.push_str(&format!("{{{name}}}")),
        });
        out
    }

    /// What a statement says in this language.
    pub fn tell(&self, statement: &Statement) -> String {
        let tell = |(name, value): &(&'static str, Value)| (*name, self.value(value));
        let values: Vec<(&str, String)> = statement.values.iter().map(tell).collect();
        let values: Vec<(&str, &str)> =
            values.iter().map(|(name, value)| (*name, value.as_str())).collect();
        self.fill(statement.key, &values)
    }

    fn value(&self, value: &Value) -> String {
        match value {
            Value::Text(text) | Value::Lines(text) | Value::Number(text) => text.clone(),
            Value::Amount(amount) => amount.words(self),
            Value::Said(statement) => self.tell(statement),
            Value::List(values) => {
                let parts: Vec<String> =
                    values.iter().map(|value| self.value(value)).collect();
                self.list(&parts)
            }
        }
    }

    /// The same as [`Self::fill`] part by part, for those who put words and values down in different ways.
    pub fn say<'a>(
        &'a self,
        key: &'a str,
        values: &'a [(&'a str, &'a str)],
        put: &mut impl FnMut(Said<'a>),
    ) {
        match self.messages.get(key) {
            Some(message) => self.pieces(&message.pieces, values, put),
            None => put(Said::Words(key)),
        }
    }

    fn pieces<'a>(
        &'a self,
        pieces: &'a [Piece],
        values: &'a [(&'a str, &'a str)],
        put: &mut impl FnMut(Said<'a>),
    ) {
        let value = |name: &str| {
            values.iter().find(|(known, _)| *known == name).map(|(_, value)| *value)
        };
        for piece in pieces {
            match piece {
                Piece::Text(text) => put(Said::Words(text)),
                Piece::Gap(name) => put(match value(name) {
                    Some(value) => Said::Value(name, value),
                    None => Said::Gap(name),
                }),
                Piece::Choice { of, forms, other } => {
                    let chosen = value(of).and_then(|value| self.choose(value, forms));
                    self.pieces(chosen.unwrap_or(other), values, put);
                }
            }
        }
    }

    /// The form for a value: its own, else that of its plural category.
    fn choose<'f>(
        &self,
        value: &str,
        forms: &'f [(String, Vec<Piece>)],
    ) -> Option<&'f [Piece]> {
        let of = |key: &str| forms.iter().find(|(known, _)| known == key);
        let form = of(value).or_else(|| of(self.plural(value)?));
        form.map(|(_, form)| form.as_slice())
    }

    /// The plural category of a number (CLDR, cardinal); `None` where it is none.
    pub fn plural(&self, number: &str) -> Option<&'static str> {
        let number: Decimal = number.replace(self.point(), ".").parse().ok()?;
        let locale: Locale = self.language.parse().unwrap_or(Locale::UNKNOWN);
        let rules = PluralRules::try_new_cardinal((&locale).into()).ok()?;
        Some(match rules.category_for(&number) {
            PluralCategory::Zero => "zero",
            PluralCategory::One => "one",
            PluralCategory::Two => "two",
            PluralCategory::Few => "few",
            PluralCategory::Many => "many",
            PluralCategory::Other => "other",
        })
    }

    /// Things one after another: `butter, milk`.
    pub fn list(&self, parts: &[String]) -> String {
        parts.join(self.get("list-comma"))
    }

    /// The same of borrowed names.
    pub fn names(&self, names: &[&str]) -> String {
        names.join(self.get("list-comma"))
    }

    /// From one number or time to another: `18:00–21:00`.
    pub fn range(&self, from: &str, to: &str) -> String {
        self.fill("range", &[("from", from), ("to", to)])
    }

    /// A time of day: `18:05`.
    pub fn clock(&self, hour: i8, minute: i8) -> String {
        let half = if hour < 12 { "am" } else { "pm" };
        let twelfth = (hour + 11).rem_euclid(12) + 1;
        let two = |number: i8| format!("{number:02}");
        let values = [
            ("hour", &*two(hour)),
            ("plain-hour", &*hour.to_string()),
            ("hour-12", &*twelfth.to_string()),
            ("half", half),
            ("minute", &*two(minute)),
        ];
        self.fill("clock", &values)
    }

    /// A day with its weekday: `Tuesday 2 March 2027`.
    pub fn day(&self, date: Date) -> String {
        let weekday = format!("weekday-{}", date.weekday().to_monday_one_offset());
        self.dated("date-weekday", date, self.get(&weekday))
    }

    /// A day without its weekday: `2 March 2027`.
    pub fn date(&self, date: Date) -> String {
        self.dated("date", date, "")
    }

    fn dated(&self, key: &str, date: Date, weekday: &str) -> String {
        let (day, year) = (date.day().to_string(), date.year().to_string());
        let month = format!("month-{}", date.month());
        let month = self.get(&month);
        let values =
            [("weekday", weekday), ("day", &*day), ("month", month), ("year", &*year)];
        self.fill(key, &values)
    }
}

impl Notation for Words {
    fn point(&self) -> &str {
        self.get("decimal-mark")
    }

    fn with(&self, number: &str, count: &str, sign: Sign) -> String {
        self.fill(sign.key(), &[("number", number), ("count", count)])
    }

    fn under(&self, amount: &str) -> String {
        self.fill("under", &[("amount", amount)])
    }

    fn together(&self, larger: &str, smaller: &str) -> String {
        self.fill("units-together", &[("larger", larger), ("smaller", smaller)])
    }

    fn plus(&self, one: &str, other: &str) -> String {
        self.fill("units-plus", &[("one", one), ("other", other)])
    }

    fn between(&self, low: &str, high: &str) -> String {
        self.range(low, high)
    }

    fn apart(&self, low: &str, high: &str) -> String {
        self.fill("units-apart", &[("low", low), ("high", high)])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counted(language: &str, forms: &[&str]) -> Words {
        let piece = |text: &str| vec![Piece::Text(text.to_owned())];
        let forms = forms.iter().map(|form| ((*form).to_owned(), piece(form))).collect();
        let of = "count".to_owned();
        let choice = Piece::Choice { of, forms, other: piece("other") };
        let mut words = Words::new(language);
        words.insert("n".into(), Message::new(vec![choice]));
        words
    }

    /// Unicode CLDR, *Language Plural Rules*: one in English is 1, in French 0 and 1; Japanese
    /// has one form; Polish has few for 2 to 4.
    #[test]
    fn numbers_choose_by_the_rules_of_the_language() {
        let said = |words: &Words, count: &str| words.fill("n", &[("count", count)]);
        let english = counted("en", &["one", "0"]);
        assert_eq!(["0", "1", "2"].map(|n| said(&english, n)), ["0", "one", "other"]);
        let french = counted("fr-CA", &["one"]);
        assert_eq!(["0", "1", "2"].map(|n| said(&french, n)), ["one", "one", "other"]);
        let polish = counted("pl", &["one", "few", "many"]);
        assert_eq!(["1", "3", "5"].map(|n| said(&polish, n)), ["one", "few", "many"]);
        assert_eq!(said(&counted("ja", &["one"]), "1"), "other");
        assert_eq!(said(&english, "some"), "other");
    }

    #[test]
    fn what_has_no_value_stays() {
        let mut words = Words::new("en");
        let pieces = ["a", "b"].map(|name| Piece::Gap(name.to_owned()));
        words.insert("two".into(), Message::new(pieces.into()));
        assert_eq!(words.fill("two", &[("b", "{a}")]), "{a}{a}");
        assert_eq!(words.get("two"), "{a}{b}");
        assert_eq!(words.fill("none", &[]), "none");
    }
}
