//! What was worked out and drawn for the edition before: a preview takes over what an edit
//! did not touch.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Mutex, PoisonError};

use crate::draw::Figure;
use crate::edition::Edition;
use crate::model::Recipe;
use crate::sheet::RecipeSheets;
use crate::words::Words;

use super::key;

/// A recipe worked out at every batch size, and its drawings by batch.
#[derive(Clone)]
pub(super) struct Worked {
    pub(super) sheets: RecipeSheets,
    pub(super) figures: Vec<(String, Vec<Figure>)>,
}

/// The last worked out state of each recipe, with the key of all that it depends on.
#[derive(Default)]
pub struct Memory {
    recipes: Mutex<BTreeMap<String, (String, Worked)>>,
}

impl Memory {
    /// What is known for `key`, else what `make` makes, which is known from then on.
    pub(super) fn recall(
        &self,
        recipe: &str,
        key: String,
        make: impl FnOnce() -> Option<Worked>,
    ) -> Option<Worked> {
        let lock = || self.recipes.lock().unwrap_or_else(PoisonError::into_inner);
        let known = lock().get(recipe).filter(|(known, _)| *known == key).cloned();
        if let Some((_, worked)) = known {
            return Some(worked);
        }
        let worked = make()?;
        lock().insert(recipe.to_owned(), (key, worked.clone()));
        Some(worked)
    }
}

/// Keys of recipes: the same key means the same sheets. A recipe depends on its own text,
/// on every recipe that its text or theirs names, and on all that is no recipe; the words
/// and the names of the faults found in it go into its sheets too.
pub(super) struct Keys<'a> {
    edition: &'a Edition,
    /// Stands for what every recipe depends on.
    common: String,
}

impl<'a> Keys<'a> {
    pub(super) fn new(edition: &'a Edition, words: &Words) -> Self {
        let mut parts: Vec<&[u8]> = Vec::new();
        for (key, word) in &words.entries {
            parts.extend([key.as_bytes(), word.as_bytes()]);
        }
        let recipes = &edition.content.recipes;
        parts.extend(recipes.iter().map(|recipe| recipe.name.as_bytes()));
        let own: BTreeSet<&str> =
            recipes.iter().map(|recipe| &*recipe.place.file).collect();
        for (file, text) in edition.texts.all().filter(|(file, _)| !own.contains(file)) {
            parts.extend([file.as_bytes(), text.as_bytes()]);
        }
        Self { edition, common: key(&parts) }
    }

    /// The key of one recipe.
    pub(super) fn of(&self, recipe: &Recipe) -> String {
        let names = self.edition.fault_names(recipe).join(" ");
        let mut parts = vec![self.common.as_bytes(), names.as_bytes()];
        for named in self.named(recipe) {
            let text = self.edition.texts.text(&named.place.file);
            parts.extend([named.name.as_bytes(), text.as_bytes()]);
        }
        key(&parts)
    }

    /// The recipe and every recipe that its text names, and so on.
    fn named(&self, recipe: &'a Recipe) -> Vec<&'a Recipe> {
        let mut found = vec![recipe];
        let mut at = 0;
        while let Some(here) = found.get(at) {
            let text = self.edition.texts.text(&here.place.file);
            let named = self.edition.content.recipes.iter().filter(|other| {
                found.iter().all(|known| known.name != other.name)
                    && text.contains(other.name.as_str())
            });
            let named: Vec<&Recipe> = named.collect();
            found.extend(named);
            at += 1;
        }
        found
    }
}
