//! Which recipes take in which, and those that never end: they need themselves through
//! others, or others through more levels than anybody bakes.

use std::collections::BTreeMap;

use crate::fault::Place;

use super::{AmountLine, Ingredient, Recipe, Swap};

/// Levels of included recipes; a longer chain is refused with the rings.
const DEEPEST: usize = 16;

/// Recipes that never end, by name, each with a way that shows it: from the recipe itself to
/// itself again, or to the first one that lies too deep.
pub type Endless = BTreeMap<String, Vec<String>>;

/// The recipes a recipe takes in, and where it says so.
pub fn included(recipe: &Recipe) -> impl Iterator<Item = (&str, &Place)> {
    recipe.formula.iter().flat_map(|section| &section.lines).filter_map(named)
}

/// The same with what its swaps bring in.
pub fn may_include(recipe: &Recipe) -> impl Iterator<Item = (&str, &Place)> {
    let swapped = recipe.swaps.iter().flat_map(Swap::lines).filter_map(named);
    included(recipe).chain(swapped)
}

fn named(line: &AmountLine) -> Option<(&str, &Place)> {
    match &line.ingredient.value {
        Ingredient::Recipe { recipe, .. } => Some((recipe, &line.ingredient.place)),
        Ingredient::Pantry(_) => None,
    }
}

/// The recipes that never end.
pub(crate) fn endless(recipes: &[Recipe]) -> Endless {
    let by_name: BTreeMap<&str, &Recipe> =
        recipes.iter().map(|recipe| (recipe.name.as_str(), recipe)).collect();
    let of = |recipe: &&Recipe| {
        let mut way = vec![recipe.name.as_str()];
        let endless = follow(recipe, &by_name, &mut way);
        endless
            .then(|| (recipe.name.clone(), way.into_iter().map(str::to_owned).collect()))
    };
    recipes.iter().filter_map(|recipe| of(&recipe)).collect()
}

/// Follows included recipes until the first one of the way comes again.
fn follow<'a>(
    recipe: &'a Recipe,
    by_name: &BTreeMap<&str, &'a Recipe>,
    way: &mut Vec<&'a str>,
) -> bool {
    for (name, _) in may_include(recipe) {
        let Some(next) = by_name.get(name) else { continue };
        let home = way.first() == Some(&name);
        if home || way.len() > DEEPEST {
            way.push(name);
            return true;
        }
        if way.contains(&name) {
            continue;
        }
        way.push(name);
        if follow(next, by_name, way) {
            return true;
        }
        way.pop();
    }
    false
}
