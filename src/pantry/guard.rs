//! What an ingredient's name and its like say of allergens, against what its author says:
//! a `hazelnut praline` without hazelnut is asked about before it reaches a sheet.

use std::sync::OnceLock;

use crate::fault::{Fault, Place, Placed, clip};
use crate::model::PantryEntry;
use crate::said;
use crate::statement::Lines;

use super::Pantry;
use super::item::Item;
use super::law::{self, WORDS as ALLERGENS};

/// Words that mean an allergen, by language: whole words where a language keeps them apart,
/// parts of words where it compounds, and the phrases in which they mean none, with why. The
/// allergens are those of Regulation (EU) 1169/2011 Annex II and 21 USC 321(qq); coconut is
/// in neither list (FDA, Q&A on Food Allergens, Edition 5). The words are ordinary
/// dictionary words, from memory; `tests/allergens.rs` holds them against published lists.
const WORDS: &[u8] = include_bytes!("allergen_words.csv");

/// The row for names that say nut and not which.
const ANY_NUT: &str = "any nut";
/// What stands for nuts of which the kind is not said.
const NUTS_UNSAID: &str = "nuts";

/// How a row's words stand in a name.
#[derive(Clone, Copy, PartialEq, Eq)]
enum How {
    /// As whole words, singular or plural.
    Word,
    /// Also as parts of longer words.
    Part,
    /// As whole words in an ingredient's own name; in a note they say what it is for (`for the
    /// cake tin`).
    Name,
    /// The same, also as parts of longer words.
    Inside,
    /// As phrases in which the allergen's word does not mean it.
    Not,
}

struct Row {
    how: How,
    allergen: String,
    words: Vec<String>,
}

fn rows() -> &'static [Row] {
    static ROWS: OnceLock<Vec<Row>> = OnceLock::new();
    ROWS.get_or_init(|| {
        csv::Reader::from_reader(WORDS)
            .records()
            .flatten()
            .map(|row| read(&row))
            .collect()
    })
}

fn read(row: &csv::StringRecord) -> Row {
    let field = |at: usize| row.get(at).unwrap_or("").trim();
    let how = match field(1) {
        "part" => How::Part,
        "name" => How::Name,
        "inside" => How::Inside,
        "not" => How::Not,
        _ => How::Word,
    };
    let words = field(3).split(';').map(|word| word.trim().to_lowercase()).collect();
    Row { how, allergen: field(2).to_owned(), words }
}

/// The allergens whose words stand in a name, in plain words.
pub(super) fn named(name: &str) -> Vec<&'static str> {
    let mut found: Vec<&str> = Vec::new();
    for (allergen, _) in found_in(&name.to_lowercase(), true) {
        if !found.contains(&allergen) {
            found.push(allergen);
        }
    }
    found
}

/// The allergens whose words stand in a text in lower case, and where each word begins.
pub(super) fn spans(text: &str) -> Vec<(&'static str, usize)> {
    found_in(text, false)
}

fn found_in(text: &str, is_name: bool) -> Vec<(&'static str, usize)> {
    let mut found = Vec::new();
    for row in rows() {
        let whole = match row.how {
            How::Word => true,
            How::Part => false,
            How::Name if is_name => true,
            How::Inside if is_name => false,
            How::Name | How::Inside | How::Not => continue,
        };
        for word in &row.words {
            let means = |at: &Span| !is_excepted(text, *at, &row.allergen);
            let at = places(text, word, whole).filter(means);
            found.extend(at.map(|(start, _)| (row.allergen.as_str(), start)));
        }
    }
    found
}

/// An ingredient for each word of an allergen, that stands for whatever has it.
pub(super) fn items() -> Vec<Item> {
    let of = |word: &'static str| Item {
        name: word.into(),
        allergens: Some(vec![word]),
        ..Item::default()
    };
    let mut items: Vec<Item> = ALLERGENS.map(of).into();
    // Which nut is not said, so its allergens are not known.
    items.push(Item { name: NUTS_UNSAID.into(), ..Item::default() });
    items
}

impl Pantry {
    /// The ingredient of an allergen's own name, else what stands for it.
    pub(super) fn allergenic(&self, allergen: &str) -> Option<&Item> {
        let name = if allergen == ANY_NUT { NUTS_UNSAID } else { allergen };
        let known = self.exact(name).filter(|item| holds(item, name));
        known.or_else(|| self.allergenic.iter().find(|item| item.name == name))
    }
}

type Span = (usize, usize);

/// Where `word` stands in `name`.
fn places<'a>(
    name: &'a str,
    word: &'a str,
    whole: bool,
) -> impl Iterator<Item = Span> + 'a {
    let is_letter = |sign: Option<char>| sign.is_some_and(char::is_alphabetic);
    name.match_indices(word).filter_map(move |(start, _)| {
        let end = start + word.len();
        let rest = &name[end..];
        let free = rest.strip_prefix("es").or_else(|| rest.strip_prefix('s'));
        let ends = [Some(rest), free].into_iter().flatten();
        let ends = ends.map(|rest| rest.chars().next());
        let is_whole = !is_letter(name[..start].chars().next_back())
            && ends.into_iter().any(|next| !is_letter(next))
            && !rest.starts_with("-free");
        (!whole || is_whole).then_some((start, end))
    })
}

/// Whether a phrase stands around the word in which it means no such allergen: whole words,
/// or one word as a part of a longer one.
fn is_excepted(name: &str, (start, end): Span, allergen: &str) -> bool {
    let rows = rows().iter();
    let phrases = rows.filter(|row| row.how == How::Not && row.allergen == allergen);
    phrases
        .flat_map(|row| &row.words)
        .flat_map(|phrase| places(name, phrase, phrase.contains(' ')))
        .any(|(from, to)| from <= start && end <= to)
}

/// The allergens, in plain words, that the item's names or its like hold and that are not
/// among those its author gives. None where the author read the pack, or said nothing.
pub(super) fn check(item: &Item, entry: &PantryEntry, base: &Item) -> Option<Fault> {
    let held = item.allergens.as_ref()?;
    if item.read_on_pack {
        return None;
    }
    let names = std::iter::once(&entry.name.value).chain(&entry.also);
    let mut missing: Vec<&str> = names.flat_map(|name| named(name)).collect();
    missing.extend(base.allergens.iter().flatten());
    missing.sort_unstable();
    missing.dedup();
    missing.retain(|word| !is_among(word, held));
    let place = entry.allergens.as_ref().and_then(|said| said.first());
    let place = place.map_or(&entry.name.place, |said| &said.place);
    (!missing.is_empty()).then(|| left_out(place, entry, &missing, item))
}

/// A bare name may mean nothing that leaves out an allergen that is in the name: who bakes
/// with rice flour writes `rice flour`.
pub(super) fn meaning(word: &str, item: &Item, name: &Placed<String>) -> Option<Fault> {
    let held = item.allergens.as_ref()?;
    let missing = named(word).into_iter().find(|allergen| !is_among(allergen, held))?;
    let message = said!("allergen-taken-out", word, missing);
    Some(Fault::error("allergen-left-out", &name.place, message).help(said!(
        "allergen-taken-out-help",
        name = item.name,
        word
    )))
}

/// Whether an ingredient has every allergen whose word stands in a name, or its allergens
/// are not known.
pub(super) fn holds(item: &Item, name: &str) -> bool {
    holds_all(item, &named(name))
}

/// The same of the allergens that stand in it.
pub(super) fn holds_all(item: &Item, allergens: &[&str]) -> bool {
    let Some(held) = &item.allergens else { return true };
    allergens.iter().all(|word| is_among(word, held))
}

fn is_among(word: &str, held: &[&str]) -> bool {
    if word == ANY_NUT {
        return held.iter().any(|held| law::is_nut(held));
    }
    held.contains(&word)
}

fn left_out(place: &Place, entry: &PantryEntry, missing: &[&str], item: &Item) -> Fault {
    let name = &entry.name.value;
    let message = said!("allergen-left-out", name = clip(name), missing);
    let mut all = item.allergens.clone().unwrap_or_default();
    all.extend(missing.iter().map(|word| if *word == ANY_NUT { "" } else { word }));
    all.retain(|word| !word.is_empty());
    all.sort_unstable();
    all.dedup();
    let entry =
        [&super::suggest::key(name), ":\n  allergens: ", &all.join(", ")].concat();
    let entry = Lines(&entry);
    let help = if missing.contains(&ANY_NUT) {
        said!("allergen-left-out-nut", entry)
    } else {
        said!("allergen-left-out-help", entry)
    };
    Fault::error("allergen-left-out", place, message).help(help)
}

#[cfg(test)]
mod tests {
    use super::super::table;
    use super::*;

    #[test]
    fn names_give_their_allergens_away() {
        for (name, allergens) in [
            ("hazelnut praline", &["hazelnut", "any nut"][..]),
            ("1 lb 4 oz butter", &["milk"]),
            ("cultured butter", &["milk"]),
            ("dairy-free spread", &[]),
            ("egg replacer", &["egg"]),
            ("toasted almonds", &["almond"]),
            ("Haselnussmus", &["hazelnut"]),
            ("Vollmilch", &["milk"]),
            ("noisettes grillées", &["hazelnut"]),
            ("anchovies", &["fish"]),
            ("flour mix", &["wheat"]),
            ("oat cakes", &["oat", "wheat"]),
            ("cheesecake", &["milk"]),
            ("liquorice cake", &["wheat"]),
            ("crispbread", &["wheat"]),
        ] {
            assert_eq!(named(name), allergens, "{name}");
        }
    }

    /// Coconut is in neither law's list, buckwheat is no wheat, nutmeg, butternut and
    /// eggplant are what their names are not: Regulation (EU) 1169/2011 Annex II; FDA, Q&A on
    /// Food Allergens, Edition 5, Table 1.
    #[test]
    fn names_that_only_sound_like_it() {
        for name in [
            "nutmeg",
            "coconut",
            "coconut milk",
            "butternut squash",
            "buckwheat",
            "buckwheat flour",
            "eggplant",
            "cocoa butter",
            "cream of tartar",
            "rice flour",
            "oyster mushroom",
            "crab apple",
            "Muskatnuss",
            "Kokosmilch",
            "Buchweizenmehl",
            "noix de coco",
            "lait de coco",
            "burro di cacao",
            "bovete",
            "gluten-free starch",
            "doughnut",
            "ginger beer",
            "tiger nut",
            "bread spice",
            "potato flour",
            "veggie mince",
            "minute tapioca",
            "maltodextrin",
        ] {
            assert_eq!(named(name), [""; 0], "{name}");
        }
        assert_eq!(named("peanut butter"), ["peanut"]);
        assert_eq!(named("almond milk"), ["almond"]);
    }

    /// The built-in pantry is held against the same words: a row whose name holds an
    /// allergen's word lists it, or does not know its allergens. Highly refined oils are
    /// exempt by both laws: 21 USC 321(qq)(2)(A), Regulation (EU) 1169/2011 Annex II 6(a).
    #[test]
    fn the_pantry_itself_leaves_none_out() {
        let mut wrong = Vec::new();
        let items = table::items().into_iter();
        for (item, also) in items.filter(|(item, _)| !item.name.ends_with(" oil")) {
            let Some(held) = &item.allergens else { continue };
            for name in also.iter().chain([&item.name]) {
                for word in named(name) {
                    if !is_among(word, held) {
                        wrong.push(format!("{}: `{name}` holds {word}", item.name));
                    }
                }
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }

    /// An exception stands around a word that would otherwise mean its allergen, and says why.
    #[test]
    fn every_exception_excepts() {
        let mut idle = Vec::new();
        for row in rows().iter().filter(|row| row.how == How::Not) {
            let same = rows()
                .iter()
                .filter(|other| other.how != How::Not && other.allergen == row.allergen);
            let words: Vec<&String> = same.flat_map(|other| &other.words).collect();
            let stands = |phrase: &&String| !words.iter().any(|it| phrase.contains(*it));
            idle.extend(row.words.iter().filter(stands));
        }
        assert!(idle.is_empty(), "{idle:?}");
        let mut reader = csv::Reader::from_reader(WORDS);
        for row in reader.records().flatten().filter(|row| &row[1] == "not") {
            assert!(!row[4].is_empty(), "no reason: {row:?}");
        }
    }

    #[test]
    fn every_word_leads_to_the_laws() {
        for row in rows() {
            let known = row.allergen == ANY_NUT || law::allergen(&row.allergen).is_some();
            assert!(known, "{}", row.allergen);
        }
    }
}
