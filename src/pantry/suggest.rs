//! What may have been meant by a name that the pantry does not know: by meaning before
//! spelling, and never with a value that nobody has read on a pack.

use crate::fault::{Fault, Placed, clip};
use crate::read::Lexicon;
use crate::said;
use crate::statement::{Lines, Statement};

use super::names::singulars;
use super::{Item, Pantry, doubtful, guard};

/// So many names are offered at the most.
const MOST: usize = 3;
/// Words up to this length are no slip of one another: `AP` is not `00`.
const SHORT: usize = 3;
/// A name longer than this is no slip of the fingers.
const LONGEST: usize = 80;

impl Pantry {
    /// The known names nearest to one that is not known: the one it is a slip of, else
    /// those of the same thing (`double cream`: the creams).
    pub fn suggestions(&self, name: &str) -> Vec<&str> {
        if name.len() > LONGEST {
            return Vec::new();
        }
        let whole = name.trim().to_lowercase();
        let name = core(&whole);
        let senses = doubtful::senses(&name);
        if !senses.is_empty() {
            return senses.to_vec();
        }
        match self.slip(&whole).or_else(|| self.slip(&name)) {
            Some(known) => vec![known],
            None => self.of_the_same_kind(&name),
        }
    }

    /// The known name of which this one is a slip of the fingers: word by word, so that a
    /// short word in front does not vanish in a long one behind.
    fn slip(&self, name: &str) -> Option<&str> {
        let joined = |name: &str| name.replace([' ', '-'], "");
        let named = guard::named(name);
        let holds = |at: usize| guard::holds_all(&self.items[at], &named);
        let all = self.names.iter().filter(|(_, at)| holds(**at));
        let all = all.filter_map(|(known, _)| {
            let far = if joined(known) == joined(name) { 0 } else { apart(name, known)? };
            Some((far, known.as_str()))
        });
        all.min_by_key(|(far, _)| *far).map(|(_, known)| known)
    }

    /// Ingredients whose name ends in the same word, those first that share most words.
    fn of_the_same_kind(&self, name: &str) -> Vec<&str> {
        let words: Vec<&str> = name.split_whitespace().collect();
        let Some(last) = words.last() else { return Vec::new() };
        let heads = singulars(last);
        let is_head = |item: &&Item| {
            let head = item.name.rsplit(' ').next().unwrap_or_default();
            heads.iter().any(|word| word == head)
        };
        // What lacks an allergen of the name is not what was meant.
        let named = guard::named(name);
        let holds = |item: &&Item| guard::holds_all(item, &named);
        let alike = self.items.iter().filter(is_head).filter(holds);
        let mut found: Vec<&str> = alike.map(|item| item.name.as_str()).collect();
        let shared =
            |known: &str| known.split(' ').filter(|word| words.contains(word)).count();
        let plain = heads.iter().find_map(|head| self.exact(head));
        let is_plain = |known: &str| plain.is_some_and(|item| item.name == known);
        found.sort_by_key(|known| {
            (std::cmp::Reverse(shared(known)), !is_plain(known), known.len())
        });
        found.truncate(MOST);
        found
    }

    /// The fault of naming an ingredient that is not there.
    pub fn unknown(&self, name: &Placed<String>) -> Fault {
        let message = said!("unknown-ingredient", name = clip(&name.value));
        let near = self.suggestions(&name.value);
        let like = near.iter().find(|known| ends_with(&name.value, known));
        let key = key(&name.value);
        let entry = match like {
            Some(known) => [&key, ":\n  like: ", known, "\n  allergens:"].concat(),
            None => [&key, ":\n  allergens:"].concat(),
        };
        let fault = Fault::error("unknown-ingredient", &name.place, message)
            .help(meant(&near, Lines(&entry)));
        let whole = name.place.end() - name.place.start() == name.value.len();
        let write = |fault: Fault, known: &&str| fault.mended(name.place.clone(), *known);
        if whole { near.iter().fold(fault, write) } else { fault }
    }
}

/// Which known names may have been meant, and what is written of a new ingredient.
fn meant(near: &[&str], entry: Lines<'_>) -> Statement {
    let names: Vec<Statement> =
        near.iter().map(|name| said!("known-name", name)).collect();
    match names.split_last() {
        None => said!("unknown-ingredient-help", entry),
        Some((only, [])) => said!("unknown-ingredient-one", only, entry),
        Some((last, rest)) => said!("unknown-ingredient-several", rest, last, entry),
    }
}

fn ends_with(name: &str, known: &str) -> bool {
    let name = core(name);
    singulars(&name).iter().any(|name| name.ends_with(&format!(" {known}")))
}

/// A name without the states in front of it.
fn core(name: &str) -> String {
    let name = name.trim().to_lowercase();
    let words = name.split_whitespace();
    let words: Vec<&str> =
        words.skip_while(|word| Lexicon::english().is_state(word)).collect();
    words.join(" ")
}

/// How far two names of as many words are apart, if no further than slips of the fingers.
fn apart(name: &str, known: &str) -> Option<usize> {
    let (words, others) = (name.split(' '), known.split(' '));
    if words.clone().count() != others.clone().count() {
        return None;
    }
    words.zip(others).map(|(word, other)| slips(word, other)).sum()
}

/// How many slips lead from one word to another; none where it is another word.
fn slips(word: &str, other: &str) -> Option<usize> {
    let length = word.chars().count().min(other.chars().count());
    let far = strsim::damerau_levenshtein(word, other);
    let near = if length <= SHORT { 0 } else { (1 + length / 4).min(3) };
    let same_start = word.chars().next() == other.chars().next();
    (far <= near && (same_start || far <= 1)).then_some(far)
}

/// A name as a key of a YAML file: in quotes where it would read as something else.
pub fn key(name: &str) -> String {
    let plain = |sign: char| sign.is_alphanumeric() || " -'’%.".contains(sign);
    let starts = name.starts_with(|sign: char| sign.is_alphabetic());
    if starts && name.chars().all(plain) {
        return name.to_owned();
    }
    format!("\"{}\"", name.replace('\\', "\\\\").replace('"', "\\\""))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn meaning_comes_before_spelling() {
        let pantry = Pantry::built_in();
        assert_eq!(pantry.suggestions("bread flower"), ["bread flour"]);
        assert_eq!(pantry.suggestions("butter milk"), ["buttermilk"]);
        for (written, never) in [
            ("xx milk", "soy milk"),
            ("AP flour", "00 flour"),
            ("double cream", "soured cream"),
            ("double cream", "sour cream"),
        ] {
            let offered = pantry.suggestions(written);
            let first = offered.first().copied();
            assert_ne!(first, Some(never), "{written}: {offered:?}");
        }
        assert!(pantry.suggestions("baker's dust").is_empty());
    }

    #[test]
    fn keys_read_back() {
        assert_eq!(key("smoked paprika"), "smoked paprika");
        assert_eq!(key("7-grain mix"), "\"7-grain mix\"");
        assert_eq!(key("a: b"), "\"a: b\"");
    }
}
