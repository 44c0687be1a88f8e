//! What a preview takes over from the edition before is what it would have made anew: no
//! source but the promise.
#![allow(clippy::disallowed_methods, reason = "the course is read")]

use std::path::Path;
use std::sync::Arc;

use tourier::edition::Edition;
use tourier::model::Recipe;
use tourier::product::{Inputs, Memory, Products, Worked};
use tourier::read::Source;
use tourier::store;
use tourier::theme::Theme;
use tourier::words::Words;

fn words() -> Words {
    let theme = Theme::built_in();
    tourier::read::words_in(&theme, "en").expect("words")
}

/// Every recipe's key, and its sheets and drawings with what `work` makes of it.
fn all(
    edition: &Edition,
    (words, theme): (&Words, &Theme),
    work: &dyn Fn(&Products, &Recipe) -> Option<Arc<Worked>>,
) -> Option<Vec<(String, String)>> {
    let inputs = Inputs::new(edition, words, theme)?;
    let products = Products::new(&inputs).expect("the templates are sound");
    let recipes = inputs.recipes().iter();
    let worked = recipes.filter_map(|recipe| {
        Some((products.key(recipe).to_owned(), work(&products, recipe)?))
    });
    let plain = worked.map(|(key, worked)| {
        let sheets = serde_json::to_string(&worked.sheets).expect("plain data");
        let page = products.recipe_page(&worked).expect("the templates are sound");
        let keys: Vec<String> = page.into_iter().map(|file| file.key).collect();
        (key, format!("{sheets} {:?} {keys:?}", worked.figures))
    });
    Some(plain.collect())
}

/// Edits of a text: another amount, another word, another time, nothing at its end.
fn edits(text: &str) -> Vec<String> {
    let changes =
        [("500 g", "510 g"), ("10 g", "12 g"), ("10 min", "11 min"), ("the ", "that ")];
    let mut edited: Vec<String> = changes
        .into_iter()
        .filter(|(old, _)| text.contains(old))
        .map(|(old, new)| text.replacen(old, new, 1))
        .collect();
    edited.push(format!("{text}\n"));
    edited
}

#[test]
fn what_is_remembered_is_what_would_be_made() {
    let (files, _) = store::load(Path::new("content")).expect("the demonstration course");
    let (words, theme, memory) = (words(), Theme::built_in(), Memory::default());
    let house = (&words, &theme);
    let (mut compared, mut differed) = (0, 0);
    let first = Edition::new(&files, Vec::new(), Vec::new());
    let recall = |products: &Products, recipe: &Recipe| memory.worked(products, recipe);
    let before = all(&first, house, &recall).expect("a course");
    for at in 0..files.len() {
        for text in edits(&files[at].text) {
            let mut changed: Vec<Source> = files.clone();
            changed[at].text = text;
            let edition = Edition::new(&changed, Vec::new(), Vec::new());
            let remembered = all(&edition, house, &recall);
            let fresh = |products: &Products, recipe: &Recipe| {
                products.inputs().worked(recipe).map(Arc::new)
            };
            let anew = all(&edition, house, &fresh);
            assert_eq!(remembered, anew, "{}", files[at].path);
            let Some(anew) = anew else { continue };
            compared += 1;
            differed += usize::from(anew != before);
            // The same key means the same files.
            let same = before.iter().zip(&anew).filter(|(old, new)| old.0 == new.0);
            same.for_each(|(old, new)| assert_eq!(old.1, new.1, "{}", files[at].path));
        }
    }
    assert!(compared > 50 && differed > 25, "{compared} compared, {differed} differed");
}
