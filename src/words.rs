//! The words of one language: every fixed word that a student reads, by its key.

use std::collections::BTreeMap;

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

    /// The word for `key` with each `{name}` in it replaced.
    pub fn fill(&self, key: &str, values: &[(&str, &str)]) -> String {
        values.iter().fold(self.get(key).to_owned(), |text, (name, value)| {
            text.replace(&format!("{{{name}}}"), value)
        })
    }
}
