//! The words of amount lines, by language: numbers in words, what joins amounts, what
//! stands for no weight, and the states in which an ingredient is used. Each language is a
//! file of its own in `lexicon/`.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use crate::measure::{Exact, parse};

const ENGLISH: &[u8] = include_bytes!("lexicon/en.csv");

/// Names that leave open which of several ingredients is meant, and what they mean where
/// the course does not say.
pub(crate) const BARE: [(&str, &str); 5] = [
    ("flour", "all-purpose flour"),
    ("yeast", "instant yeast"),
    ("sugar", "granulated sugar"),
    ("cream", "heavy cream"),
    ("baking powder", "baking powder"),
];

/// The words of one language, each in lower case.
#[derive(Debug, Default)]
pub(crate) struct Lexicon {
    /// Numbers in words and what they are worth, longest first.
    pub(super) numbers: Vec<(String, Exact)>,
    /// Words that multiply: `dozen`.
    pub(super) dozens: Vec<(String, Exact)>,
    /// Between the ends of a range: `to`.
    pub(super) range: Vec<String>,
    /// Between amounts that are added: `and`.
    pub(super) sum: Vec<String>,
    /// In front of an amount that is not to be taken too exactly: `about`.
    pub(super) hedge: Vec<String>,
    /// Spoons of no known size: `heaping`.
    pub(super) heaped: Vec<String>,
    /// Vessels of no known size: `breakfast-cup`.
    pub(super) vessels: Vec<String>,
    /// Between a number and its unit: `half a pound`.
    pub(super) articles: Vec<String>,
    /// Behind a name, joining it to the next line: `with`.
    pub(super) joints: Vec<String>,
    /// Between two of which one is taken: `or`.
    pub(super) either: Vec<String>,
    /// In front of a name, and no amount: `a piece of`.
    pub(super) piece: Vec<String>,
    /// Amounts without a weight, in front: `a pinch`.
    pub(super) vague: Vec<String>,
    /// Amounts without a weight, behind: `to taste`.
    pub(super) free: Vec<String>,
    /// What a counted size comes in: `package`.
    pub(super) containers: Vec<String>,
    /// Between an amount and its ingredient: `of`.
    pub(super) of: Vec<String>,
    /// Parts of a counted thing and how the pantry calls them: `juice of`, `{} juice`.
    pub(super) parts: Vec<(String, String)>,
    /// States and manners: `cold`, `sifted`.
    states: BTreeSet<String>,
    /// What begins a manner behind a name: `cut into`.
    behind: Vec<String>,
    /// In front of what is only compared with or left out: `the size of`, `without`.
    compared: Vec<String>,
    /// Behind what only names a tool, a size or an absence: `cake tin`, `nut free`.
    tools: Vec<String>,
    /// Endings of one and of several, the first that fits counts: `af`, `aves`.
    plurals: Vec<(String, String)>,
    /// The same the other way round: `aves`, `af`.
    singulars: Vec<(String, String)>,
}

impl Lexicon {
    /// The English words.
    pub(crate) fn english() -> &'static Self {
        static ENGLISH_WORDS: OnceLock<Lexicon> = OnceLock::new();
        ENGLISH_WORDS.get_or_init(|| Self::read(ENGLISH))
    }

    /// The words of a language, by its tag; the English ones where it has none of its own.
    pub(crate) fn of(language: &str) -> &'static Self {
        let _ = language;
        Self::english()
    }

    fn read(data: &[u8]) -> Self {
        let mut words = Self::default();
        for row in csv::Reader::from_reader(data).records().flatten() {
            let field = |at: usize| row.get(at).unwrap_or("");
            // An ending may be empty.
            for word in field(2).split(';') {
                words.learn(field(0), field(1), word);
            }
        }
        words.numbers.sort_by_key(|(word, _)| std::cmp::Reverse(word.len()));
        let lists = [
            &mut words.vague,
            &mut words.of,
            &mut words.hedge,
            &mut words.range,
            &mut words.articles,
            &mut words.vessels,
            &mut words.piece,
        ];
        for list in lists {
            list.sort_by_key(|word| std::cmp::Reverse(word.len()));
        }
        words.parts.sort_by_key(|(word, _)| std::cmp::Reverse(word.len()));
        words
    }

    fn learn(&mut self, kind: &str, worth: &str, word: &str) {
        let word = word.to_owned();
        match kind {
            "number" => {
                self.numbers.extend(parse(worth, false).map(|worth| (word, worth)));
            }
            "dozen" => {
                self.dozens.extend(parse(worth, false).map(|worth| (word, worth)));
            }
            "range" => self.range.push(word),
            "sum" => self.sum.push(word),
            "hedge" => self.hedge.push(word),
            "heaped" => self.heaped.push(word),
            "vessel" => self.vessels.push(word),
            "article" => self.articles.push(word),
            "joint" => self.joints.push(word),
            "either" => self.either.push(word),
            "piece" => self.piece.push(word),
            "vague" => self.vague.push(word),
            "free" => self.free.push(word),
            "container" => self.containers.push(word),
            "of" => self.of.push(word),
            "part" => self.parts.push((word, worth.to_owned())),
            "state" => {
                self.states.insert(word);
            }
            "behind" => self.behind.push(word),
            "compared" => self.compared.push(word),
            "tool" => self.tools.push(word),
            "plural" => self.plurals.push((worth.to_owned(), word)),
            "singular" => self.singulars.push((worth.to_owned(), word)),
            _ => {}
        }
    }

    /// Whether a word is a state or manner, or joins such: `cold`, `well-beaten`, `and`.
    pub(crate) fn is_state(&self, word: &str) -> bool {
        let word = word.trim_matches(|sign: char| !sign.is_alphanumeric());
        self.states.contains(word)
            || self.sum.iter().any(|joint| joint == word)
            || (word.contains('-')
                && word.split('-').all(|part| self.states.contains(part)))
    }

    /// A name without the states around it, and those behind it: `eggs beaten stiff`.
    pub(super) fn thing<'a>(&self, text: &'a str) -> (&'a str, &'a str) {
        let mut name = text;
        while let Some((before, last)) = name.rsplit_once(' ') {
            if !self.is_state(&last.to_lowercase()) {
                break;
            }
            name = before.trim_end();
        }
        let states = text[name.len()..].trim();
        while let Some((first, after)) = name.split_once(' ') {
            if !self.is_state(&first.to_lowercase()) {
                break;
            }
            name = after.trim_start();
        }
        (name, states)
    }

    /// Whether words in front of a name say that it is only compared with or left out.
    pub(crate) fn is_compared(&self, before: &str) -> bool {
        let ends = |word: &String| {
            let rest = before.strip_suffix(word.as_str());
            rest.is_some_and(|rest| !rest.ends_with(char::is_alphanumeric))
        };
        self.compared.iter().any(ends)
    }

    /// Whether words behind a name make it a tool, a size or an absence. Eggs that are `free
    /// range` are eggs.
    pub(crate) fn is_tool(&self, behind: &[&str]) -> bool {
        match behind {
            ["free", "range", ..] | [] => false,
            [first, ..] => self.tools.iter().any(|word| word == first),
        }
    }

    /// An author's word for what is made, as it is for one or for several; as it stands where
    /// the language does not tell by the ending.
    pub(crate) fn inflect(
        &self,
        word: &str,
        written_one: bool,
        wanted_one: bool,
    ) -> String {
        let endings = match (written_one, wanted_one) {
            (true, false) => &self.plurals,
            (false, true) => &self.singulars,
            (true, true) | (false, false) => return word.to_owned(),
        };
        let ended = |(from, to): &(String, String)| {
            Some(format!("{}{to}", word.strip_suffix(from.as_str())?))
        };
        endings.iter().find_map(ended).unwrap_or_else(|| word.to_owned())
    }

    /// Whether words behind a name begin a manner: `cut into small cubes`.
    pub(crate) fn is_manner(&self, words: &str) -> bool {
        self.behind.iter().any(|start| starts_with_word(words, start))
    }
}

/// Whether `text` begins with `word`, which ends there.
pub(super) fn starts_with_word(text: &str, word: &str) -> bool {
    strip_word(text, word).is_some()
}

/// What follows `word` at the start of `text`, in any case, where the word ends there.
pub(super) fn strip_word<'a>(text: &'a str, word: &str) -> Option<&'a str> {
    let head = text.get(..word.len())?;
    let rest = &text[word.len()..];
    let goes_on = word.ends_with(char::is_alphanumeric)
        && rest.starts_with(|sign: char| sign.is_alphanumeric() || sign == '-');
    (head.to_lowercase() == word && !goes_on).then(|| rest.trim_start())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_follow_their_number() {
        let words = Lexicon::english();
        assert_eq!(words.inflect("loaf", true, false), "loaves");
        assert_eq!(words.inflect("loaves", false, true), "loaf");
        assert_eq!(words.inflect("crescents", false, true), "crescent");
        assert_eq!(words.inflect("brioches", false, true), "brioche");
        assert_eq!(words.inflect("tart", true, false), "tarts");
        assert_eq!(words.inflect("buns", false, false), "buns");
    }

    #[test]
    fn states_hide_no_ingredient() {
        let words = Lexicon::english();
        for state in ["cold", "well-beaten", "sifted", "(sifted)", "and"] {
            assert!(words.is_state(state), "{state}");
        }
        for other in ["sour", "dried", "dry", "sweet", "soy", "brown"] {
            assert!(!words.is_state(other), "{other} makes another ingredient");
        }
        assert!(words.is_manner("cut into cubes"));
    }
}
