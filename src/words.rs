//! The words of one language: every fixed word that a student reads, by its key.

use std::collections::BTreeMap;

use jiff::civil::Date;

/// Words by key. A theme's words file fills it; keys are kebab-case.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Words {
    /// Key to word.
    pub entries: BTreeMap<String, String>,
}

impl Words {
    /// The word for `key`; the key itself where the file has none, so that a gap is seen
    /// and nothing breaks.
    pub fn get<'a>(&'a self, key: &'a str) -> &'a str {
        self.entries.get(key).map_or(key, |word| word)
    }

    /// The word for `key` with each `{name}` in it replaced; a name without a value stays
    /// as it is, and so do braces within a value.
    pub fn fill(&self, key: &str, values: &[(&str, &str)]) -> String {
        let mut rest = self.get(key);
        let mut text = String::with_capacity(2 * rest.len());
        while let Some((before, after)) = rest.split_once('{') {
            text.push_str(before);
            let gap = after.split_once('}').and_then(|(name, after)| {
                let (_, value) = values.iter().find(|(known, _)| *known == name)?;
                Some((*value, after))
            });
            let (filled, after) = gap.unwrap_or(("{", after));
            text.push_str(filled);
            rest = after;
        }
        text + rest
    }

    /// The word for so many of a thing, with each `{name}` in it replaced.
    pub fn count(&self, key: &str, count: u64, values: &[(&str, &str)]) -> String {
        let form = if count == 1 { "one" } else { "other" };
        self.fill(&format!("{key}-{form}"), values)
    }

    /// Things one after another: `butter, milk`.
    pub fn list(&self, parts: &[String]) -> String {
        parts.join(self.get("list-comma"))
    }

    /// From one number or time to another: `18:00–21:00`.
    pub fn range(&self, from: &str, to: &str) -> String {
        self.fill("range", &[("from", from), ("to", to)])
    }

    /// A time of day: `18:05`.
    pub fn clock(&self, hour: i8, minute: i8) -> String {
        let (hour, minute) = (format!("{hour:02}"), format!("{minute:02}"));
        self.fill("clock", &[("hour", &hour), ("minute", &minute)])
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
