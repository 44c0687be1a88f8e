//! The pantry: what an ingredient weighs by the spoon, cup or piece, whether it is flour,
//! what it holds of allergens and nutrients.
//!
//! The built-in pantry is one data file with its source on each row; a course adds its
//! own ingredients or changes what the built-in one says.

mod eggs;
mod item;
mod table;

use std::collections::BTreeMap;

use crate::fault::{Fault, clip, nearest};
use crate::model::{EggClasses, PantryEntry};

pub use item::{Allergen, Item, Kind, NUTRIENTS, Nutrients, Portion};

/// Every known ingredient, found by name, plural or alias.
#[derive(Clone, Debug, Default)]
pub struct Pantry {
    items: Vec<Item>,
    names: BTreeMap<String, usize>,
}

impl Pantry {
    /// The built-in pantry.
    pub fn built_in() -> Self {
        let mut pantry = Self::default();
        table::items().into_iter().for_each(|(item, also)| pantry.insert(item, &also));
        pantry
    }

    /// The built-in pantry with a course's own ingredients, and the faults in them.
    pub fn with(entries: &[PantryEntry]) -> (Self, Vec<Fault>) {
        Self::sized(entries, EggClasses::Us)
    }

    /// As [`Pantry::with`], with the sizes of egg that the course means.
    pub fn sized(entries: &[PantryEntry], eggs: EggClasses) -> (Self, Vec<Fault>) {
        let mut pantry = Self::built_in();
        if eggs == EggClasses::Eu {
            eggs::eu(&mut pantry.items);
        }
        let mut faults = Vec::new();
        for entry in entries {
            let item = pantry.own(entry, &mut faults);
            pantry.insert(item, &entry.also);
        }
        (pantry, faults)
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

    /// The ingredient of this name, singular or plural, in any case.
    pub fn find(&self, name: &str) -> Option<&Item> {
        let name = name.trim().to_lowercase();
        singulars(&name)
            .iter()
            .find_map(|name| self.names.get(name.as_str()))
            .map(|at| &self.items[*at])
    }

    /// The ingredient that a counted line names, with the word for its piece if there is
    /// one: `large eggs` is the ingredient `egg` in pieces called `large`.
    pub fn find_pieces(&self, text: &str) -> Option<(&Item, Option<String>)> {
        if let Some(item) = self.find(text) {
            return Some((item, None));
        }
        let text = text.trim().to_lowercase();
        text.match_indices(' ').find_map(|(at, _)| {
            let item = self.find(&text[at..])?;
            let piece =
                singulars(&text[..at]).into_iter().find(|p| item.piece(p).is_some())?;
            Some((item, Some(piece)))
        })
    }

    /// The known name nearest to one that is not known.
    pub fn nearest(&self, name: &str) -> Option<&str> {
        nearest(name, self.names.keys().map(String::as_str))
    }

    fn own(&self, entry: &PantryEntry, faults: &mut Vec<Fault>) -> Item {
        let name = entry.name.value.to_lowercase();
        let base = match &entry.like {
            Some(like) => {
                let found = self.find(&like.value);
                if found.is_none() {
                    faults.push(self.unknown(like));
                }
                found
            }
            None => self.find(&name).filter(|item| item.name == name),
        };
        let mut item = base.cloned().unwrap_or_default();
        item.name = name;
        item.learn(entry, faults);
        item
    }

    /// The fault of naming an ingredient that is not there.
    pub fn unknown(&self, name: &crate::fault::Placed<String>) -> Fault {
        let message = format!("`{}` is not in the pantry", clip(&name.value));
        let lines = format!(
            "add to `pantry.yaml`:\n{}:\n  density: 0.5 g/ml\n  allergens: none",
            name.value
        );
        let help = self.nearest(&name.value).map_or_else(
            || format!("If the name is right, {lines}"),
            |near| format!("Did you mean `{near}`? If not, {lines}"),
        );
        Fault::error("unknown-ingredient", &name.place, message).help(help)
    }
}

/// The name itself and what it may be the plural of.
fn singulars(name: &str) -> Vec<String> {
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
        assert_eq!(pantry.nearest("bread flower"), Some("bread flour"));
        let (item, piece) = pantry.find_pieces("large eggs").expect("eggs");
        assert_eq!((item.name.as_str(), piece.as_deref()), ("egg", Some("large")));
        assert!(pantry.find_pieces("stick butter").is_some());
        assert!(pantry.find_pieces("gigantic eggs").is_none());
    }

    #[test]
    fn no_name_stands_for_two() {
        let mut seen = std::collections::BTreeSet::new();
        for (item, also) in table::items() {
            assert!(seen.insert(item.name.clone()), "{}", item.name);
            also.into_iter()
                .for_each(|name| assert!(seen.insert(name.clone()), "{name}"));
        }
        assert!(seen.len() >= 120);
    }
}
