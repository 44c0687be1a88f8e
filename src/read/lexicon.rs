//! The words of amount lines, by language: numbers in words, what joins amounts, what
//! stands for no weight, and the states in which an ingredient is used. Each language is a
//! file of its own in `lexicon/`.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use crate::measure::{Exact, Unit, parse};
use crate::model::{Keeps, KitKind, Level, Purpose, Standing};

/// The files of words by language; what a language's own does not say is said in English.
const FILES: [(&str, &[u8]); 5] = [
    ("en", include_bytes!("lexicon/en.csv")),
    ("fr", include_bytes!("lexicon/fr.csv")),
    ("de", include_bytes!("lexicon/de.csv")),
    ("es", include_bytes!("lexicon/es.csv")),
    ("ja", include_bytes!("lexicon/ja.csv")),
];

/// Languages that write a decimal comma.
const COMMA_LANGUAGES: [&str; 12] =
    ["de", "fr", "es", "it", "nl", "pt", "da", "sv", "nb", "fi", "pl", "cs"];

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
    /// Of what may be left out: `if you like`.
    optional: Vec<String>,
    /// What a counted size comes in: `package`.
    pub(super) containers: Vec<String>,
    /// Between an amount and its ingredient: `of`.
    pub(super) of: Vec<String>,
    /// Parts of a counted thing and how the pantry calls them: `juice of`, `{} juice`.
    pub(super) parts: Vec<(String, String)>,
    /// Units that the language has words for, and what each is worth: `Pfund`, 500 g.
    pub(super) units: Vec<(String, (Exact, Unit))>,
    /// The same in front of their number: `大さじ2`.
    pub(super) leading: Vec<(String, (Exact, Unit))>,
    /// What only counts, behind a number: `個`.
    pub(super) counters: Vec<String>,
    /// A half behind what is counted: `五杯半`.
    pub(super) halves: Vec<String>,
    /// Measures that were others at other times and places: `Lot`.
    pub(super) old: Vec<String>,
    /// Behind a unit that is not to be taken too exactly: `rase`.
    pub(super) hedge_behind: Vec<String>,
    /// Behind a spoon of no known size: `bombée`.
    heaped_behind: Vec<String>,
    /// Shares in words, in front of what they are of: `la moitié`.
    shares: Vec<(String, Exact)>,
    /// The same behind it: `の半量`.
    shares_behind: Vec<(String, Exact)>,
    /// Between a share and what it is of: `de la`.
    share_of: Vec<String>,
    /// Sizes and packs of pieces, and how the pantry calls them: `gros`, `large`.
    sizes: Vec<(String, String)>,
    /// What begins a purpose: `for`.
    purpose: Vec<String>,
    /// What of those is put on, whatever it is for: `for the bench`.
    put_on: Vec<String>,
    /// What ends one: `用`.
    pub(super) purpose_behind: Vec<String>,
    /// What things are put on for: `glaze`.
    purposes: Vec<(String, Purpose)>,
    /// Names of sections that say it alone: `roll-in`.
    sections: Vec<(String, Purpose)>,
    /// Places by their names: `frigo`.
    places: Vec<(String, Standing)>,
    /// Kit by its names: `pétrin`.
    kit: Vec<(String, KitKind)>,
    /// Parts of names of places that keep cold: `retarder`.
    cold: Vec<String>,
    /// The same of places where things freeze: `freezer`.
    frozen: Vec<String>,
    /// Parts of names of what mixes dough: `mixer`.
    mixing: Vec<String>,
    /// Words that say who a line is for: `beginners`.
    levels: Vec<(String, Level)>,
    /// What is left out: `sans {}`; none where that is said as the format says it.
    without: Option<String>,
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
        Self::of("en")
    }

    /// The words of a language, by its tag, and behind them the English ones; those alone
    /// where it has none of its own.
    pub(crate) fn of(language: &str) -> &'static Self {
        static ALL: [OnceLock<Lexicon>; FILES.len()] =
            [const { OnceLock::new() }; FILES.len()];
        let primary = language.split('-').next().unwrap_or(language);
        let at = FILES.iter().position(|(tag, _)| *tag == primary).unwrap_or(0);
        ALL[at].get_or_init(|| {
            let own = std::iter::once(FILES[at].1);
            Self::read(own.chain((at > 0).then_some(FILES[0].1)))
        })
    }

    /// The words of every language.
    pub(super) fn all() -> impl Iterator<Item = &'static Self> {
        FILES.iter().map(|(tag, _)| Self::of(tag))
    }

    fn read<'a>(files: impl Iterator<Item = &'a [u8]>) -> Self {
        let mut words = Self::default();
        for file in files {
            for row in csv::Reader::from_reader(file).records().flatten() {
                let field = |at: usize| row.get(at).unwrap_or("");
                // An ending may be empty.
                for word in field(2).split(';') {
                    words.learn(field(0), field(1), word);
                }
            }
        }
        let lists = [
            &mut words.vague,
            &mut words.free,
            &mut words.of,
            &mut words.hedge,
            &mut words.hedge_behind,
            &mut words.range,
            &mut words.articles,
            &mut words.vessels,
            &mut words.old,
            &mut words.piece,
        ];
        for list in lists {
            list.sort_by_key(|word| std::cmp::Reverse(word.len()));
        }
        longest_first(&mut words.numbers);
        longest_first(&mut words.parts);
        longest_first(&mut words.units);
        longest_first(&mut words.leading);
        longest_first(&mut words.shares);
        longest_first(&mut words.levels);
        words
    }

    fn learn(&mut self, kind: &str, worth: &str, word: &str) {
        let word = word.to_owned();
        // `500 g`, `tbsp`: what a unit is worth in one that all languages share.
        let measure = || {
            let (count, unit) = worth.split_once(' ').unwrap_or(("1", worth));
            Some((parse(count, false)?, Unit::parse(unit)?))
        };
        match kind {
            "unit" => self.units.extend(measure().map(|worth| (word, worth))),
            "leading" => self.leading.extend(measure().map(|worth| (word, worth))),
            "counter" => self.counters.push(word),
            "half" => self.halves.push(word),
            "old" => self.old.push(word),
            "hedge-behind" => self.hedge_behind.push(word),
            "heaped-behind" => self.heaped_behind.push(word),
            "share" => self.shares.extend(parse(worth, false).map(|part| (word, part))),
            "share-behind" => {
                self.shares_behind.extend(parse(worth, false).map(|part| (word, part)));
            }
            "share-of" => self.share_of.push(word),
            "size" => self.sizes.push((word, worth.to_owned())),
            "purpose" => self.purpose.push(word),
            "put-on" => self.put_on.push(word),
            "purpose-behind" => self.purpose_behind.push(word),
            "wash" => self.purposes.push((word, Purpose::Wash)),
            "dusting" => self.purposes.push((word, Purpose::Dusting)),
            "filling" => self.purposes.push((word, Purpose::Filling)),
            "topping" => self.purposes.push((word, Purpose::Topping)),
            "section-roll-in" => self.sections.push((word, Purpose::RollIn)),
            "section-dusting" => self.sections.push((word, Purpose::Dusting)),
            "section-filling" => self.sections.push((word, Purpose::Filling)),
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
            "optional" => self.optional.push(word),
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
            _ => self.learn_kit(kind, worth, word),
        }
    }

    /// A word for kit or for a place.
    fn learn_kit(&mut self, kind: &str, worth: &str, word: String) {
        match kind {
            "place" => {
                let known = Standing::KNOWN.into_iter().find(|of| of.name() == worth);
                self.places.extend(known.map(|known| (word, known)));
            }
            "kit" => self.kit.extend(known_kit(worth).map(|known| (word, known))),
            "cold" => self.cold.push(word),
            "frozen" => self.frozen.push(word),
            "mixing" => self.mixing.push(word),
            "without" => self.without = Some(word),
            "level" => {
                let known = Level::ALL.into_iter().find(|level| level.name() == worth);
                self.levels.extend(known.map(|level| (word, level)));
            }
            _ => {}
        }
    }

    /// Whether an amount stands behind the name, as in a script without spaces.
    pub(super) fn says_the_name_first(&self) -> bool {
        !self.leading.is_empty()
    }

    /// Whether what follows a number makes it one: nothing, a unit, or what is counted.
    pub(super) fn is_counted(&self, rest: &str) -> bool {
        let rest = rest.trim_start();
        let begins = |word: &String| strip_word(rest, word).is_some();
        rest.is_empty()
            || self.counters.iter().chain(&self.halves).chain(&self.range).any(begins)
            || self.units.iter().any(|(word, _)| begins(word))
    }

    /// Whether words behind a unit heap it up.
    pub(super) fn heaped_behind(&self, rest: &str) -> bool {
        let rest = rest.trim_start();
        self.heaped_behind.iter().any(|word| strip_word(rest, word).is_some())
    }

    /// A share in words at one end of a text: its worth, its words and what it is of.
    pub(super) fn share<'a>(&self, text: &'a str) -> Option<(Exact, &'a str, &'a str)> {
        let front = self.shares.iter().find_map(|(word, part)| {
            let of = strip_word(text, word)?;
            let mut joints = self.share_of.iter();
            let rest = joints.find_map(|joint| strip_word(of, joint))?;
            let words = text[..text.len() - rest.len()].trim();
            (!rest.is_empty()).then_some((part.clone(), words, rest))
        });
        front.or_else(|| {
            self.shares_behind.iter().find_map(|(word, part)| {
                let rest = text.strip_suffix(word.as_str())?;
                let words = &text[rest.len()..];
                (!rest.is_empty()).then_some((part.clone(), words, rest.trim_end()))
            })
        })
    }

    /// What follows the word that joins a pack to what is in it: `sticks of butter`.
    pub(crate) fn after_joint<'a>(&self, text: &'a str) -> &'a str {
        self.of.iter().find_map(|word| strip_word(text, word)).unwrap_or(text)
    }

    /// The pantry's word for a size or pack; the word itself where the language has none.
    pub(crate) fn size<'a>(&'a self, word: &'a str) -> &'a str {
        self.sizes.iter().find(|(own, _)| own == word).map_or(word, |(_, size)| size)
    }

    /// What the last words that say one are for: what a thing is comes last (`filling for
    /// the glaze`).
    pub(super) fn purpose_in(&self, text: &str) -> Option<Purpose> {
        let ends_at = |word: &str| {
            let found = text.rmatch_indices(word).find(|(at, _)| {
                let goes_on = |sign: char| sign.is_alphanumeric() && !is_unspaced(sign);
                !text[..*at].ends_with(goes_on)
                    && !text[at + word.len()..].starts_with(goes_on)
            });
            found.map(|(at, _)| at + word.len())
        };
        let found = self.purposes.iter();
        let found = found.filter_map(|(word, it)| Some((ends_at(word)?, *it)));
        found.rev().max_by_key(|(end, _)| *end).map(|(_, purpose)| purpose)
    }

    /// Whether a text is nothing but what something is put on for: `打ち粉用`.
    pub(super) fn is_purpose(&self, text: &str) -> bool {
        self.purposes.iter().any(|(word, _)| word == text)
    }

    /// What a section's name says alone.
    pub(super) fn purpose_of_section(&self, name: &str) -> Option<Purpose> {
        let named = self.sections.iter().find(|(word, _)| word == name);
        named.map(|(_, purpose)| *purpose)
    }

    /// Whether words begin or end as those do that say what something is for.
    pub(super) fn says_what_for(&self, text: &str) -> bool {
        self.purpose.iter().any(|word| starts_with_word(text, word))
            || self.purpose_behind.iter().any(|word| text.ends_with(word.as_str()))
    }

    /// Whether words say that something is put on: `for the bench`, not `to taste`.
    pub(super) fn is_put_on(&self, text: &str) -> bool {
        self.put_on.iter().any(|word| starts_with_word(text, word))
            || self.purpose_behind.iter().any(|word| text.ends_with(word.as_str()))
    }

    /// What follows a state at the start of a name in a script without spaces.
    pub(crate) fn without_state<'a>(&self, name: &'a str) -> Option<&'a str> {
        let states = self.states.iter().filter(|word| word.ends_with(is_unspaced));
        let longest = states
            .filter(|word| name.starts_with(word.as_str()))
            .max_by_key(|word| word.len())?;
        let rest = &name[longest.len()..];
        Some(rest.strip_prefix('の').unwrap_or(rest)).filter(|rest| !rest.is_empty())
    }

    /// What a name may be the plural of, by the language's endings.
    pub(crate) fn singulars<'a>(
        &'a self,
        name: &'a str,
    ) -> impl Iterator<Item = String> + 'a {
        self.singulars.iter().filter_map(move |(from, to)| {
            Some(format!("{}{to}", name.strip_suffix(from.as_str())?))
        })
    }

    /// Whether a line says that it may be left out: in brackets, or behind a comma.
    pub(super) fn is_optional(&self, line: &str) -> bool {
        let line = line.to_lowercase();
        let mut parts = line.split([',', ';', '(', ')']).map(str::trim);
        parts.any(|part| self.optional.iter().any(|word| word == part))
            || self.optional.iter().any(|word| line.ends_with(&format!(" {word}")))
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

    /// The place of this name, in lower case.
    pub(super) fn place(&self, name: &str) -> Option<Standing> {
        let mut known = Standing::KNOWN.into_iter();
        let own = || self.places.iter().find(|(word, _)| word == name);
        known.find(|known| known.name() == name).or_else(|| own().map(|it| it.1.clone()))
    }

    /// The names that the language has for places.
    pub(crate) fn place_names(&self) -> impl Iterator<Item = &str> {
        self.places.iter().map(|(word, _)| word.as_str())
    }

    /// The names that the language has for kit.
    pub(crate) fn kit_names(&self) -> impl Iterator<Item = &str> {
        self.kit.iter().map(|(word, _)| word.as_str())
    }

    /// The shortest word that the language has for just one of a unit.
    pub(crate) fn unit_name(&self, unit: Unit) -> Option<&str> {
        let one = |worth: &Exact| *worth == crate::measure::exact(1, 1);
        let own = self.units.iter().filter(|(_, (worth, of))| *of == unit && one(worth));
        own.map(|(word, _)| word.as_str()).min_by_key(|word| word.len())
    }

    /// How a place of the author's own keeps what stands there, by what its name holds.
    pub(super) fn keeps(&self, name: &str) -> Keeps {
        let holds = |words: &[String]| words.iter().any(|word| name.contains(&**word));
        match (holds(&self.frozen), holds(&self.cold)) {
            (true, _) => Keeps::Frozen,
            (false, true) => Keeps::Cold,
            (false, false) => Keeps::Open,
        }
    }

    /// The kit of this name, in lower case.
    pub(super) fn kit(&self, name: &str) -> Option<KitKind> {
        let own = || self.kit.iter().find(|(word, _)| word == name);
        known_kit(name).or_else(|| own().map(|it| it.1.clone()))
    }

    /// How much of a text is left behind the words that say it is for this level.
    pub(super) fn behind_level(&self, text: &str, level: Level) -> Option<usize> {
        let plain = text.trim_start().to_lowercase().replace('’', "'");
        let mut own = self.levels.iter().filter(|(_, it)| *it == level);
        own.find_map(|(word, _)| {
            plain.strip_prefix(word.as_str())?;
            let rest = text.trim_start().chars().skip(word.chars().count());
            Some(rest.map(char::len_utf8).sum())
        })
    }

    /// Whether kit of the author's own mixes dough, by what its name holds.
    pub(super) fn mixes(&self, name: &str) -> bool {
        self.mixing.iter().any(|word| name.contains(&**word))
    }

    /// What a recipe is called that is made without something: `sans noix`; `None` where the
    /// language says it as the format does.
    pub(crate) fn without(&self, title: &str) -> Option<String> {
        self.without.as_ref().map(|form| form.replace("{}", title))
    }

    /// Whether words behind a name begin a manner: `cut into small cubes`.
    pub(crate) fn is_manner(&self, words: &str) -> bool {
        self.behind.iter().any(|start| starts_with_word(words, start))
    }
}

/// Kit by its name in the format.
fn known_kit(name: &str) -> Option<KitKind> {
    let known = KitKind::COUNTED.into_iter().chain([KitKind::Mixer]);
    known.into_iter().find(|kit| kit.name() == name)
}

fn longest_first<T>(words: &mut [(String, T)]) {
    words.sort_by_key(|(word, _)| std::cmp::Reverse(word.len()));
}

/// How a course writes amounts: by the language that it is in.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Locale {
    /// Whether `1,5` is one and a half.
    pub(super) comma: bool,
    /// The language's words.
    pub(super) words: &'static Lexicon,
}

impl Locale {
    /// The way of a language, by its tag.
    pub(crate) fn of(language: &str) -> Self {
        let primary = language.split('-').next().unwrap_or("");
        Self { comma: COMMA_LANGUAGES.contains(&primary), words: Lexicon::of(language) }
    }

    /// The English way.
    pub(crate) fn english() -> Self {
        Self { comma: false, words: Lexicon::english() }
    }
}

/// Whether a letter is of a script that sets no spaces between words.
pub(super) fn is_unspaced(sign: char) -> bool {
    matches!(sign, '\u{3005}'..='\u{30ff}' | '\u{3400}'..='\u{9fff}' | '\u{ff66}'..='\u{ff9f}')
}

/// Whether `text` begins with `word`, which ends there.
pub(super) fn starts_with_word(text: &str, word: &str) -> bool {
    strip_word(text, word).is_some()
}

/// What follows `word` at the start of `text`, in any case, where the word ends there. One
/// of a script without spaces ends wherever it does.
pub(super) fn strip_word<'a>(text: &'a str, word: &str) -> Option<&'a str> {
    let head = text.get(..word.len())?;
    let rest = &text[word.len()..];
    let last = word.chars().next_back()?;
    let goes_on = last.is_alphanumeric()
        && !is_unspaced(last)
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
