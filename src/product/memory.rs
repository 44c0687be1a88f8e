//! What was worked out and drawn for the edition before: a preview takes over what an edit
//! did not touch.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, PoisonError};

use crate::edition::Edition;
use crate::model::Recipe;
use crate::read::is_bench;
use crate::theme::Theme;
use crate::words::Words;

use super::{Key, Products, Worked, files_key, key};

/// The last worked out state of each recipe, with the key of all that it depends on.
#[derive(Default)]
pub struct Memory {
    recipes: Mutex<BTreeMap<String, (String, Arc<Worked>)>>,
}

impl Memory {
    /// A recipe worked out, as it is known, or anew; it is known from then on. `None`
    /// where it cannot be worked out.
    pub fn worked(&self, products: &Products, recipe: &Recipe) -> Option<Arc<Worked>> {
        let lock = || self.recipes.lock().unwrap_or_else(PoisonError::into_inner);
        let key = products.key(recipe);
        let name = products.name(recipe);
        let known = lock().get(&name).filter(|(known, _)| known == key).cloned();
        if let Some((_, worked)) = known {
            return Some(worked);
        }
        let worked = Arc::new(products.inputs().worked(recipe)?);
        lock().insert(name, (key.to_owned(), worked.clone()));
        Some(worked)
    }
}

/// Keys of recipes: the same key means the same files. A recipe depends on its own text,
/// on every recipe that its text or theirs names, and on all that is no recipe: the other
/// texts, the pictures, the theme, the words, the edition before. The names of the faults
/// found in it go into its sheets too.
pub(super) struct Keys<'a> {
    edition: &'a Edition,
    /// The recipes by name.
    recipes: BTreeMap<&'a str, &'a Recipe>,
    /// Their keys.
    keys: BTreeMap<&'a str, String>,
    /// Stands for what every recipe depends on.
    pub(super) common: String,
}

/// Where the texts of an edition in a further language lie.
fn translated(edition: &Edition) -> Option<String> {
    let course = edition.content.course.as_ref()?;
    course.first_language.as_ref()?;
    Some(format!("in/{}/", course.language))
}

impl<'a> Keys<'a> {
    pub(super) fn new(edition: &'a Edition, words: &Words, theme: &Theme) -> Self {
        let mut common = Key::default();
        for (key, word) in words.all() {
            common.add(key.as_bytes());
            common.add(word.as_bytes());
        }
        common.add(files_key(theme, theme.files.keys().map(String::as_str)).as_bytes());
        for medium in &edition.content.media {
            common.add(medium.name.as_bytes());
            common.add(medium.hash.as_bytes());
        }
        let recipes: BTreeMap<&str, &Recipe> =
            edition.content.recipes.iter().map(|one| (one.name.as_str(), one)).collect();
        recipes.keys().for_each(|name| common.add(name.as_bytes()));
        let own: BTreeSet<&str> =
            recipes.values().map(|recipe| &*recipe.place.file).collect();
        let past = edition.past.iter().flat_map(|past| past.texts.all());
        // What is translated is no part of another language's edition.
        let (folder, texts) = (translated(edition), "in/");
        let is_own = |file: &str| {
            let below = folder.as_ref().and_then(|folder| file.strip_prefix(&**folder));
            // Nor is what its author noted part of what students have.
            !is_bench(file) && !file.starts_with(texts)
                || below.is_some_and(|it| !it.starts_with("recipes/"))
        };
        let others =
            edition.texts.all().filter(|(file, _)| !own.contains(file) && is_own(file));
        for (file, text) in others.chain(past) {
            common.add(file.as_bytes());
            common.add(text.as_bytes());
        }
        let (common, keys) = (common.end(), BTreeMap::new());
        let all = Self { edition, recipes, keys, common };
        let own =
            |(name, recipe): (&&'a str, &&Recipe)| (*name, all.made(recipe, &all.common));
        let keys = all.recipes.iter().map(own).collect();
        Self { keys, ..all }
    }

    /// The key of one recipe; empty where there is no such recipe.
    pub(super) fn of(&self, recipe: &Recipe) -> &str {
        self.keys.get(recipe.name.as_str()).map_or("", String::as_str)
    }

    /// The key of one recipe; `common` stands for what every recipe depends on.
    fn made(&self, recipe: &Recipe, common: &str) -> String {
        let names = self.edition.fault_names(recipe).join(" ");
        let mut parts = vec![common.as_bytes(), names.as_bytes()];
        for named in self.named(&recipe.name) {
            let text = self.edition.texts.text(&named.place.file);
            parts.extend([named.name.as_bytes(), text.as_bytes()]);
            if let Some(folder) = translated(self.edition) {
                let file = format!("{folder}recipes/{}.md", named.name);
                parts.push(self.edition.texts.text(&file).as_bytes());
            }
        }
        key(&parts)
    }

    /// The recipe and every recipe that its text names, and so on.
    pub(super) fn named(&self, recipe: &str) -> Vec<&'a Recipe> {
        // A way without a page is not among the recipes; its text is that of the one as written.
        let own = self.edition.content.recipe(recipe);
        let mut found: Vec<&Recipe> = own.into_iter().collect();
        let mut seen: BTreeSet<&str> = [recipe].into();
        let mut at = 0;
        while let Some(here) = found.get(at) {
            let text = self.edition.texts.text(&here.place.file);
            // Names of files have no other signs in them.
            let outside =
                |sign: char| !sign.is_ascii_alphanumeric() && !"-_".contains(sign);
            for word in text.split(outside) {
                if let Some((name, named)) = self.recipes.get_key_value(word)
                    && seen.insert(name)
                {
                    found.push(named);
                }
            }
            at += 1;
        }
        found
    }
}
