//! What else the words of an amount line name: `butter, with chopped walnuts`. A note is read
//! by nobody who looks at the allergens, so what it names counts among them.

use crate::read::Lexicon;

use super::names::singulars;
use super::{Item, Pantry, guard};

/// Names of more words than this are not looked for within a note.
const LONGEST: usize = 4;

/// Words between a comparison and what is compared with.
const LOOSE: [&str; 11] = [
    "a", "an", "the", "any", "added", "thick", "thin", "heavy", "rich", "double",
    "single",
];

/// A word of a text and where it stands.
#[derive(Clone, Copy)]
struct Word<'a> {
    text: &'a str,
    start: usize,
    end: usize,
}

impl Pantry {
    /// The ingredients with allergens, or with allergens that are not known, that a text
    /// names; for a word that names an allergen and no ingredient, one that stands for it.
    /// What is only compared with (`the size of a walnut`), left out (`without nuts`) or a
    /// tool (`cake tin`) is none. `here` says of a name behind `the` whether another line of
    /// the recipe has it.
    pub fn mentioned(&self, text: &str, here: &dyn Fn(&str) -> bool) -> Vec<&Item> {
        let text = text.to_lowercase();
        let words = words(&text);
        let mut found: Vec<&Item> = Vec::new();
        let mut taken = vec![false; words.len()];
        for length in (1..=LONGEST).rev() {
            for from in 0..(words.len() + 1).saturating_sub(length) {
                let within = from..from + length;
                let free = !taken[within.clone()].iter().any(|taken| *taken);
                let item = free.then(|| self.named_by(&text, &words[within.clone()]));
                let Some(item) = item.flatten() else { continue };
                taken[within.clone()].fill(true);
                if item.is_free_of_allergens()
                    || is_apart(&text, &words, &within, (here, self.lexicon()))
                {
                    continue;
                }
                found.push(item);
            }
        }
        let covered = |at: usize| {
            words
                .iter()
                .zip(&taken)
                .any(|(word, taken)| *taken && word.start <= at && at < word.end)
        };
        for (allergen, start) in guard::spans(&text) {
            let from = words.iter().position(|word| start < word.end);
            let Some(from) = from.filter(|_| !covered(start)) else { continue };
            if !is_apart(&text, &words, &(from..from + 1), (here, self.lexicon())) {
                found.extend(self.allergenic(allergen));
            }
        }
        found.sort_by(|one, two| one.name.cmp(&two.name));
        found.dedup_by(|one, two| one.name == two.name);
        found
    }

    /// The ingredient that words beside one another name.
    fn named_by(&self, text: &str, words: &[Word]) -> Option<&Item> {
        let (first, last) = (words.first()?, words.last()?);
        let name = text.get(first.start..last.end)?;
        let parted = name.contains([',', ';', '(', ')', '.', ':', '/']);
        // A state is no ingredient: `plain`, `salted`.
        let state = words.iter().all(|word| self.lexicon().is_state(word.text));
        if parted || state { None } else { self.exact(name) }
    }
}

/// The words of a text: letters and digits with their apostrophes.
fn words(text: &str) -> Vec<Word<'_>> {
    let is_part = |sign: char| sign.is_alphanumeric() || sign == '\'' || sign == '’';
    let mut words = Vec::new();
    let mut start = None;
    for (at, sign) in text.char_indices().chain([(text.len(), ' ')]) {
        match (start, is_part(sign)) {
            (None, true) => start = Some(at),
            (Some(from), false) => {
                words.push(Word { text: &text[from..at], start: from, end: at });
                start = None;
            }
            (None, false) | (Some(_), true) => {}
        }
    }
    words
}

/// Whether what stands `within` is named and does not go in: compared with, left out, a tool,
/// or what another line of the recipe has.
fn is_apart(
    text: &str,
    words: &[Word],
    within: &std::ops::Range<usize>,
    (here, lexicon): (&dyn Fn(&str) -> bool, &Lexicon),
) -> bool {
    let behind: Vec<&str> = words[within.end..].iter().map(|word| word.text).collect();
    let joined = words.get(within.end).is_none_or(|next| {
        let between = &text[words[within.end - 1].end..next.start];
        between.chars().all(|sign| sign == ' ' || sign == '-')
    });
    if joined && lexicon.is_tool(&behind) {
        return true;
    }
    let mut from = within.start;
    let is_loose = |word: &str| LOOSE.contains(&word) || lexicon.is_state(word);
    let mut is_the = false;
    while from > 0 && is_loose(words[from - 1].text) {
        is_the |= words[from - 1].text == "the";
        from -= 1;
    }
    let head = words[within.end - 1].text;
    let here = is_the && singulars(head).iter().any(|head| here(head));
    here || lexicon.is_compared(text[..words[from].start].trim_end())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mentioned(text: &str) -> Vec<String> {
        let pantry = Pantry::built_in();
        let here = |name: &str| name == "milk";
        pantry.mentioned(text, &here).into_iter().map(|item| item.name.clone()).collect()
    }

    #[test]
    fn what_a_note_names_is_found() {
        for (note, names) in [
            ("with chopped walnuts", &["walnut"][..]),
            ("mixed to a few pine-seeds", &["pine nut"]),
            ("softened, or margarine", &["margarine"]),
            ("soaked in beer", &["beer"]),
            ("with some nuts", &["nuts"]),
            ("rolled in marzipan, and egg", &["egg", "marzipan"]),
            ("mit Haselnüssen", &["hazelnut"]),
            ("no more than 2 walnuts", &["walnut"]),
        ] {
            assert_eq!(mentioned(note), names, "{note}");
        }
    }

    /// The size of a walnut is no walnut: the usual comparisons of cookbooks (common
    /// practice, no source).
    #[test]
    fn what_is_compared_left_out_or_a_tool_is_not() {
        for note in [
            "the size of a walnut",
            "the size of an egg",
            "to the consistency of thick cream",
            "without any nuts",
            "nut free",
            "for the cake tin",
            "mixed with the milk",
            "cold, cut into cubes",
            "coconut and nutmeg",
            "at room temperature",
            "instead of butter",
        ] {
            assert_eq!(mentioned(note), [""; 0], "{note}");
        }
        assert_eq!(mentioned("with milk"), ["whole milk"]);
        assert_eq!(mentioned("eggs, free range"), ["egg"]);
    }
}
