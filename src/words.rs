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
}
