//! Looking an ingredient up by the name that a baker writes: in singular or plural, with
//! states and manners in front or behind, or turned round behind a comma.

use crate::read::BARE;

use super::{Item, Pantry};

/// Names of more words than this are looked up as they stand.
const MOST_WORDS: usize = 12;

/// An ingredient within the words of a name.
struct Within<'a> {
    item: &'a Item,
    front: String,
    behind: String,
}

impl Pantry {
    /// The ingredient of this name, singular or plural, in any case. States and manners do
    /// not hide it: `cold milk`, `butter cut into cubes`.
    pub fn find(&self, name: &str) -> Option<&Item> {
        self.find_stated(name).map(|(item, _)| item)
    }

    /// The ingredient of exactly this name, singular or plural, in any case, joined by
    /// hyphens or not: `baking-powder`.
    pub(super) fn exact(&self, name: &str) -> Option<&Item> {
        let name = name.trim().to_lowercase().replace('’', "'");
        let known = |name: &str| {
            singulars(name).iter().find_map(|name| self.names.get(name.as_str()))
        };
        let found = known(&name).or_else(|| known(&name.replace('-', " ")));
        let found = found.or_else(|| {
            let mut forms = self.lexicon().singulars(&name);
            forms.find_map(|name| self.names.get(name.as_str()))
        });
        // `Essence of lemon` is lemon essence.
        let turned = || {
            let (part, whole) = name.split_once(" of ")?;
            singulars(whole).iter().find_map(|whole| known(&format!("{whole} {part}")))
        };
        found.or_else(turned).map(|at| &self.items[*at])
    }

    /// The ingredient, and the states that stand in front of its name and behind it.
    fn find_stated(&self, name: &str) -> Option<(&Item, String)> {
        if let Some(item) = self.exact(name) {
            return Some((item, String::new()));
        }
        let name = name.trim().to_lowercase();
        // Of a script without spaces: `溶かしバター`.
        if let Some(rest) = self.lexicon().without_state(&name) {
            return self.find_stated(rest);
        }
        let words: Vec<&str> = name.split_whitespace().collect();
        if words.len() > MOST_WORDS {
            return None;
        }
        let within = (1..words.len()).find_map(|less| self.find_within(&words, less))?;
        Some((within.item, format!("{} {}", within.front, within.behind)))
    }

    /// The ingredient without `less` words in front and behind, all of them states.
    fn find_within(&self, words: &[&str], less: usize) -> Option<Within<'_>> {
        let states = self.lexicon();
        let is_state = |words: &[&str]| words.iter().all(|word| states.is_state(word));
        (0..=less).rev().find_map(|front| {
            let end = words.len() - (less - front);
            let behind = &words[end..];
            let free = is_state(&words[..front])
                && (is_state(behind) || states.is_manner(&behind.join(" ")));
            let core = words[front..end].join(" ");
            let item = free.then(|| self.exact(core.trim_end_matches([',', ';'])))??;
            let front = words[..front].join(" ");
            Some(Within { item, front, behind: behind.join(" ") })
        })
    }

    /// The words in front of an ingredient's name and behind it: `butter mixed with walnuts`.
    pub fn around(&self, name: &str) -> Vec<String> {
        if self.exact(name).is_some() {
            return Vec::new();
        }
        let name = name.trim().to_lowercase();
        let words: Vec<&str> = name.split_whitespace().collect();
        if words.len() > MOST_WORDS {
            return vec![name];
        }
        (1..words.len())
            .find_map(|less| self.find_within(&words, less))
            .map_or_else(Vec::new, |within| vec![within.front, within.behind])
    }

    /// The bare name behind a written one, and the ingredient that it is taken to mean where
    /// the course does not say: `sifted flour`.
    pub fn by_default(&self, name: &str) -> Option<(&'static str, &Item)> {
        let open = BARE.iter().filter(|(word, meant)| word != meant);
        let mut open = open.filter(|(word, _)| !self.said.contains(*word));
        let item = self.find(name)?;
        let name = name.to_lowercase();
        let mut words = name.split_whitespace();
        let is_open = |word: &str| {
            words.clone().all(|one| one == word || self.lexicon().is_state(one))
        };
        let (word, _) = open.find(|(word, _)| is_open(word))?;
        words.any(|one| one == *word).then_some((*word, item))
    }

    /// The ingredient that a counted line names, with the word for its piece if there is
    /// one: `large eggs` is the ingredient `egg` in pieces called `large`.
    pub fn find_pieces(&self, text: &str) -> Option<(&Item, Option<String>)> {
        if let Some((item, states)) = self.find_stated(text) {
            return Some((item, self.piece_in(item, &states)));
        }
        let text = text.trim().to_lowercase();
        text.match_indices(' ').find_map(|(at, _)| {
            let rest = text[at..].trim_start();
            let joint = self.lexicon().after_joint(rest);
            let item = self.find(joint)?;
            Some((item, Some(self.piece_in(item, &text[..at])?)))
        })
    }

    /// The ingredient that a name makes together with the note behind it: `sugar, powdered`,
    /// `milk, nonfat, dry`, `eggs, whites only`. None where that is what the name means
    /// alone.
    pub fn find_noted(&self, name: &str, note: &str) -> Option<&Item> {
        let note = note.to_lowercase();
        let parts: Vec<&str> = note.split([',', ';', '(', ')']).map(core_of).collect();
        let parts: Vec<&str> =
            parts.into_iter().filter(|part| !part.is_empty()).collect();
        let alone = self.find(name).map(|item| item.name.as_str());
        let name = name.trim().to_lowercase();
        let turned: Vec<&str> = parts.iter().rev().copied().collect();
        let mut tries = vec![format!("{} {name}", parts.join(" "))];
        tries.push(format!("{} {name}", turned.join(" ")));
        tries.extend(parts.iter().map(|part| format!("{part} {name}")));
        for one in singulars(&name) {
            tries.extend(parts.iter().map(|part| format!("{one} {part}")));
        }
        let found = tries.iter().find_map(|name| self.exact(name))?;
        (Some(found.name.as_str()) != alone).then_some(found)
    }

    /// The word for the item's piece among those beside its name.
    fn piece_in(&self, item: &Item, words: &str) -> Option<String> {
        let lexicon = self.lexicon();
        let words: Vec<&str> = words.split_whitespace().collect();
        let runs = (0..words.len())
            .flat_map(|from| (from + 1..=words.len()).rev().map(move |to| (from, to)));
        runs.flat_map(|(from, to)| {
            let words = words[from..to].join(" ").replace('-', " ");
            singulars(lexicon.size(&words))
        })
        .find(|word| item.piece(word).is_some())
    }
}

/// A part of a note without the word that only stresses it.
fn core_of(part: &str) -> &str {
    let part = part.trim();
    part.strip_suffix(" only").unwrap_or(part).trim()
}

/// The name itself and what it may be the plural of.
pub(super) fn singulars(name: &str) -> Vec<String> {
    let mut forms = vec![name.to_owned()];
    let endings = [("ies", "y"), ("ves", "f"), ("oes", "o"), ("es", ""), ("s", "")];
    for (plural, singular) in endings {
        if let Some(stem) = name.strip_suffix(plural) {
            forms.push(format!("{stem}{singular}"));
        }
    }
    forms
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_plurals_and_aliases_are_found() {
        let pantry = Pantry::built_in();
        for name in ["egg", "eggs", "Raisins", "unsalted butter", "almonds", "egg yolks"]
        {
            assert!(pantry.find(name).is_some(), "{name}");
        }
        assert!(pantry.find("bread flower").is_none());
        let (item, piece) = pantry.find_pieces("large eggs").expect("eggs");
        assert_eq!((item.name.as_str(), piece.as_deref()), ("egg", Some("large")));
        let (item, piece) = pantry.find_pieces("extra-large eggs").expect("eggs");
        assert_eq!((item.name.as_str(), piece.as_deref()), ("egg", Some("extra large")));
        assert!(pantry.find_pieces("stick butter").is_some());
        assert!(pantry.find_pieces("sticks of butter").is_some());
        assert!(pantry.find_pieces("gigantic eggs").is_none());
    }

    #[test]
    fn states_and_manners_hide_nothing() {
        let pantry = Pantry::built_in();
        for (written, item) in [
            ("cold milk", "whole milk"),
            ("sifted enriched bread flour", "bread flour"),
            ("finely chopped walnuts", "walnut"),
            ("softened butter cut into small cubes", "butter"),
            ("butter at room temperature", "butter"),
            ("eggs, well beaten", "egg"),
            ("stiffly beaten egg whites", "egg white"),
            ("warm water", "water"),
            ("ground almonds", "ground almond"),
            ("salted butter", "salted butter"),
            ("essence of lemon", "lemon extract"),
            ("grated rind of lemons", "lemon zest"),
            ("cream of tartar", "cream of tartar"),
        ] {
            let found = pantry.find(written).map(|item| item.name.as_str());
            assert_eq!(found, Some(item), "{written}");
        }
        for written in ["soy nuts milk", "cold", "dried bananas", "cold cold"] {
            assert!(pantry.find(written).is_none(), "{written}");
        }
    }

    #[test]
    fn a_note_may_turn_a_name_round() {
        let pantry = Pantry::built_in();
        for (name, note, item) in [
            ("sugar", "powdered", Some("icing sugar")),
            ("eggs", "whites only", Some("egg white")),
            ("milk", "nonfat, dry", Some("skimmed milk powder")),
            ("milk", "dry, nonfat", Some("skimmed milk powder")),
            ("sugar", "brown, packed", Some("brown sugar")),
            ("oil", "vegetable", Some("vegetable oil")),
            ("butter", "cold", None),
            ("eggs", "beaten", None),
            ("butter", "unsalted", None),
        ] {
            let found = pantry.find_noted(name, note).map(|item| item.name.as_str());
            assert_eq!(found, item, "{name}, {note}");
        }
    }
}
