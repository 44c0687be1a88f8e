//! The pantry: what an ingredient weighs by the spoon, cup or piece, whether it is flour,
//! what it holds of allergens and nutrients.
//!
//! The built-in pantry is one data file with its source on each row; a course adds its
//! own ingredients or changes what the built-in one says.

mod doubtful;
mod eggs;
mod guard;
mod item;
mod law;
mod mention;
mod names;
mod suggest;
mod table;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

use crate::fault::{Fault, Placed};
use crate::model::{Content, EggClasses, PantryEntry};
use crate::read::{BARE, Lexicon};

pub use suggest::key as yaml_key;

pub use item::{Item, Kind, NUTRIENTS, Nutrients, Portion, Role};
pub use law::{Allergen, Law, WORDS as ALLERGENS, law, laws};

/// Every known ingredient, found by name, plural or alias.
#[derive(Clone, Debug, Default)]
pub struct Pantry {
    items: Vec<Item>,
    names: BTreeMap<String, usize>,
    /// Names of which the course itself says what they mean.
    said: BTreeSet<String>,
    /// What stands for a word that names an allergen and no ingredient.
    allergenic: Vec<Item>,
    /// The language that names are written in.
    language: String,
}

impl Pantry {
    /// The built-in pantry. The table is read once: with every letter that is typed at the desk
    /// and in an editor the course is read anew.
    pub fn built_in() -> Self {
        static TABLE: OnceLock<Pantry> = OnceLock::new();
        TABLE.get_or_init(Self::from_table).clone()
    }

    fn from_table() -> Self {
        let mut pantry = Self { allergenic: guard::items(), ..Self::default() };
        table::items().into_iter().for_each(|(item, also)| pantry.insert(item, &also));
        for (word, name) in BARE {
            if let Some(at) = pantry.names.get(name).copied() {
                pantry.names.insert(word.to_owned(), at);
            }
        }
        pantry
    }

    /// The built-in pantry with a course's own ingredients, the sizes of egg and the bare
    /// names that it means; and the faults in them.
    pub fn of(content: &Content) -> (Self, Vec<Fault>) {
        let mut pantry = Self::built_in();
        let course = content.course.as_ref();
        if course.is_some_and(|course| course.eggs == EggClasses::Eu) {
            eggs::eu(&mut pantry.items);
        }
        if let Some(course) = course {
            // Lines are written in the first language; what they name is read in another.
            let first = course.first_language.as_ref().unwrap_or(&course.language);
            pantry.speak(first);
            if course.first_language.is_some() {
                pantry.name_in(&course.language);
            }
        }
        let mut faults = Vec::new();
        for entry in &content.pantry {
            let item = pantry.own(entry, &mut faults);
            pantry.said.insert(item.name.clone());
            pantry.insert(item, &entry.also);
        }
        for (word, name) in course.iter().flat_map(|course| &course.means) {
            faults.extend(pantry.mean(&word.value, name));
        }
        (pantry, faults)
    }

    /// The words of amount lines in the language that names are written in.
    pub(crate) fn lexicon(&self) -> &'static Lexicon {
        Lexicon::of(&self.language)
    }

    /// Every ingredient.
    pub fn items(&self) -> impl Iterator<Item = &Item> {
        self.items.iter()
    }

    /// Every name that an ingredient is known by, in lower case.
    pub fn names(&self) -> impl Iterator<Item = (&str, &Item)> {
        self.names.iter().map(|(name, at)| (name.as_str(), &self.items[*at]))
    }

    /// Knows and shows the commonest ingredients by their names in a language.
    fn speak(&mut self, language: &str) {
        language.clone_into(&mut self.language);
        self.name_in(language);
    }

    /// Knows and shows the commonest ingredients by their names in a language that lines are
    /// not written in.
    fn name_in(&mut self, language: &str) {
        let language = language.split('-').next().unwrap_or(language);
        if self.language.split('-').next() != Some(language) {
            self.items.iter_mut().for_each(|item| item.shown = None);
        }
        for named in table::names().filter(|named| named.language == language) {
            let Some(at) = self.names.get(&named.item).copied() else { continue };
            for name in std::iter::once(&named.name).chain(&named.also) {
                let name = name.to_lowercase().replace('’', "'");
                self.names.insert(name, at);
            }
            self.items[at].shown = Some(named.name.clone());
        }
    }

    /// Takes a bare name to mean an ingredient.
    fn mean(&mut self, word: &str, name: &Placed<String>) -> Option<Fault> {
        let Some(item) = self.find(&name.value) else { return Some(self.unknown(name)) };
        if let Some(fault) = guard::meaning(word, item, name) {
            return Some(fault);
        }
        let at = self.names.get(&item.name).copied()?;
        self.names.insert(word.to_owned(), at);
        self.said.insert(word.to_owned());
        None
    }

    fn insert(&mut self, item: Item, also: &[String]) {
        let at = match self.names.get(&item.name) {
            Some(at) if self.items[*at].name == item.name => {
                self.items[*at] = item;
                *at
            }
            _ => {
                self.names.insert(item.name.clone(), self.items.len());
                self.items.push(item);
                self.items.len() - 1
            }
        };
        for name in also {
            self.names.entry(name.to_lowercase()).or_insert(at);
        }
    }

    /// What a course says of one ingredient, over what is known of it or of its like.
    fn own(&self, entry: &PantryEntry, faults: &mut Vec<Fault>) -> Item {
        let name = entry.name.value.to_lowercase();
        let so_far = faults.len();
        let base = match &entry.like {
            Some(like) => {
                let found = self.find(&like.value);
                if found.is_none() {
                    faults.push(self.unknown(like));
                }
                found
            }
            None => self.exact(&name),
        };
        let base = base.cloned().unwrap_or_default();
        let mut item = base.clone();
        // What only adds to a known ingredient keeps its name in the language.
        item.shown = base.shown.clone().filter(|_| base.name == name);
        item.name = name;
        item.learn(entry, faults);
        // That an egg is safe to eat raw is never taken from its like.
        let of_like = item.role.filter(|role| *role != Role::SafeEgg);
        item.role = Role::of(&item.name, item.kind).or(of_like);
        // What could not be read may have been what the guard would miss.
        if faults.len() == so_far {
            faults.extend(guard::check(&item, entry, &base));
        }
        item
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The names of each language stand for one ingredient each, which the table has.
    #[test]
    fn names_of_a_language_stand_for_one_each() {
        for language in ["fr", "de", "es", "ja"] {
            let own = || table::names().filter(|named| named.language == language);
            let mut pantry = Pantry::built_in();
            let missing: Vec<String> = own()
                .map(|it| it.item.clone())
                .filter(|it| pantry.exact(it).is_none())
                .collect();
            assert!(missing.is_empty(), "{language}: {missing:?}");
            pantry.speak(language);
            for named in own() {
                let all = std::iter::once(&named.name).chain(&named.also);
                for name in all {
                    let found = pantry.exact(name).map(|item| item.name.as_str());
                    assert_eq!(found, Some(&*named.item), "{language}: {name}");
                }
            }
            assert!(own().count() >= 150, "{language}");
            let butter = pantry.find("butter").expect("English names stay known");
            assert_eq!(butter.name, "butter");
        }
    }

    #[test]
    fn no_name_stands_for_two() {
        let mut seen = std::collections::BTreeSet::new();
        for (item, also) in table::items() {
            assert!(seen.insert(item.name.clone()), "{}", item.name);
            also.into_iter()
                .for_each(|name| assert!(seen.insert(name.clone()), "{name}"));
        }
        assert!(seen.len() >= 2000);
    }
}
