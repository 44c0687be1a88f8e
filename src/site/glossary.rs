//! Links from the words of the trade to what they mean: sparing, so that a page stays one
//! to read. Each word is linked where it first stands, no more than one in a paragraph.

use std::cell::RefCell;
use std::collections::BTreeSet;

use crate::sheet::TradeWord;

/// Where the words are explained, from the site's root.
pub(super) const PAGE: &str = "words/index.html";
/// No page has more such links than this.
const MOST: usize = 12;

/// The words of one page that are not linked yet.
pub(super) struct GlossaryLinks<'a> {
    /// Every form of every word with the word's name, the longest forms first.
    forms: Vec<(String, &'a str)>,
    linked: RefCell<BTreeSet<&'a str>>,
}

/// A word found in a text.
pub(super) struct Found<'a> {
    /// Its bytes in the text.
    pub(super) start: usize,
    /// The first byte after it.
    pub(super) end: usize,
    /// Its name.
    pub(super) name: &'a str,
}

impl<'a> GlossaryLinks<'a> {
    /// The words for a new page.
    pub(super) fn new(words: &'a [TradeWord]) -> Self {
        let forms = words.iter().flat_map(|word| {
            let own = Some(&word.word).filter(|_| !word.everyday);
            let all = own.into_iter().chain(&word.also);
            all.map(|form| (form.to_lowercase(), word.name.as_str()))
        });
        let mut forms: Vec<_> = forms.filter(|(form, _)| !form.is_empty()).collect();
        forms.sort_by(|one, other| {
            other.0.len().cmp(&one.0.len()).then_with(|| one.cmp(other))
        });
        Self { forms, linked: RefCell::new(BTreeSet::new()) }
    }

    /// The first word of `text` that this page has not linked; it counts as linked then.
    pub(super) fn find(&self, text: &str) -> Option<Found<'a>> {
        let mut linked = self.linked.borrow_mut();
        if linked.len() >= MOST {
            return None;
        }
        let text = plain(text);
        let new = self.forms.iter().filter(|(_, name)| !linked.contains(name));
        // `min_by_key` keeps the first of equals: the longest form.
        let found = new
            .filter_map(|(form, name)| {
                let start = whole(&text, form)?;
                Some(Found { start, end: start + form.len(), name })
            })
            .min_by_key(|found| found.start)?;
        linked.insert(found.name);
        Some(found)
    }
}

/// Small letters, every byte where it was: a letter whose small form has another length
/// stays as it is.
fn plain(text: &str) -> String {
    text.chars()
        .map(|sign| {
            let small = sign.to_lowercase().next().unwrap_or(sign);
            if small.len_utf8() == sign.len_utf8() { small } else { sign }
        })
        .collect()
}

/// Where `form` first stands in `text` as a word of its own.
fn whole(text: &str, form: &str) -> Option<usize> {
    let letter = |sign: char| sign.is_alphanumeric() || sign == '-';
    text.match_indices(form).map(|(start, _)| start).find(|start| {
        let (before, after) = (&text[..*start], &text[start + form.len()..]);
        !before.ends_with(letter) && !after.starts_with(letter)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words() -> Vec<TradeWord> {
        let word = |word: &str, also: &[&str]| TradeWord {
            name: word.replace(' ', "-"),
            word: word.into(),
            also: also.iter().map(|form| (*form).to_owned()).collect(),
            everyday: false,
            meaning: Vec::new(),
        };
        vec![word("rest", &["rests"]), word("book turn", &[]), word("turn", &["turns"])]
    }

    #[test]
    fn an_everyday_word_is_found_by_its_other_forms() {
        let mut words = words();
        words[0].everyday = true;
        words[0].also = vec!["bench rest".into()];
        let glossary = GlossaryLinks::new(&words);
        assert!(glossary.find("Put the rest back").is_none());
        assert!(
            glossary.find("After a bench rest").is_some_and(|found| found.name == "rest")
        );
    }

    #[test]
    fn a_word_is_found_once_and_whole() {
        let words = words();
        let glossary = GlossaryLinks::new(&words);
        let found = |text: &str| {
            glossary
                .find(text)
                .map(|found| (text[found.start..found.end].to_owned(), found.name))
        };
        assert_eq!(found("The restless one"), None);
        assert_eq!(
            found("Give it a Book turn."),
            Some(("Book turn".into(), "book-turn"))
        );
        assert_eq!(found("Another book turn"), Some(("turn".into(), "turn")));
        assert_eq!(found("İ, it rests"), Some(("rests".into(), "rest")));
        assert_eq!(found("rest and turn"), None);
    }
}
