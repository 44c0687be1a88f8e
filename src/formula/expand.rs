//! A formula expanded to ingredients: included recipes opened up, through any number of
//! levels.

use std::collections::BTreeMap;

use crate::fault::Fault;
use crate::measure::{Exact, Mass, exact};
use crate::model::{Content, Ingredient, Makes, Recipe};
use crate::pantry::{Item, Kind};
use crate::said;

use super::Book;
use super::weigh::{Formula, Source, Weighed, weigh};

/// Levels of included recipes beyond this are refused with the cycles.
const DEEPEST: usize = 16;

/// Ingredients by name, with their weights (nought for what carries none).
pub type Contents<'a> = BTreeMap<&'a str, (&'a Item, Mass)>;

/// Every ingredient in `formula`, `factor` times.
pub fn expand<'a>(formula: &Formula<'a>, factor: &Exact, book: Book<'a>) -> Contents<'a> {
    let mut contents = Contents::new();
    add(&mut formula.lines.iter(), factor, book, &mut contents, 0);
    contents
}

/// Every ingredient in some lines of a formula.
pub(super) fn expand_lines<'l, 'a: 'l>(
    mut lines: impl Iterator<Item = &'l Weighed<'a>>,
    book: Book<'a>,
) -> Contents<'a> {
    let mut contents = Contents::new();
    add(&mut lines, &exact(1, 1), book, &mut contents, 0);
    contents
}

fn add<'l, 'a: 'l>(
    lines: &mut dyn Iterator<Item = &'l Weighed<'a>>,
    factor: &Exact,
    book: Book<'a>,
    contents: &mut Contents<'a>,
    depth: usize,
) {
    for line in lines {
        let mass = &line.mass() * factor;
        match line.source {
            Source::Item(item) => {
                let entry =
                    contents.entry(item.name.as_str()).or_insert((item, Mass::zero()));
                entry.1 = entry.1.clone() + mass;
            }
            Source::Recipe(recipe) if depth < DEEPEST => {
                let inner = weigh(recipe, book).0;
                let share = mass.over(&batch(&inner, recipe)).unwrap_or_else(Exact::zero);
                add(&mut inner.lines.iter(), &share, book, contents, depth + 1);
            }
            Source::Recipe(_) => {}
        }
        for item in line.instead.iter().chain(&line.named) {
            contents.entry(item.name.as_str()).or_insert((item, Mass::zero()));
        }
    }
}

/// What one batch of a recipe weighs when it is taken into another: the weight it says it
/// makes, else its formula less the loss.
pub fn batch(formula: &Formula, recipe: &Recipe) -> Mass {
    match recipe.makes.as_ref().map(|makes| &makes.value) {
        Some(Makes::Weight(mass)) => mass.clone(),
        _ => &formula.total() * &(exact(1, 1) - &recipe.loss),
    }
}

/// The flour in a formula, with the flour in included recipes.
pub fn flour(contents: &Contents) -> Mass {
    of_kind(contents, Kind::Flour)
}

/// Everything of one kind.
pub fn of_kind(contents: &Contents, kind: Kind) -> Mass {
    let of_kind = contents.values().filter(|(item, _)| item.kind == kind);
    of_kind.map(|(_, mass)| mass.clone()).sum()
}

/// Recipes that, through others, need themselves; and chains of more than sixteen.
pub fn cycles(content: &Content) -> Vec<Fault> {
    content.recipes.iter().filter_map(|recipe| cycle(recipe, content)).collect()
}

fn cycle(recipe: &Recipe, content: &Content) -> Option<Fault> {
    let mut way = vec![recipe];
    follow(recipe, content, &mut way).then(|| {
        let names: Vec<&str> = way.iter().map(|recipe| recipe.name.as_str()).collect();
        let place = included(recipe)
            .find(|(name, _)| Some(*name) == names.get(1).copied())
            .map_or(&recipe.title.place, |(_, place)| place);
        let way = names.join(" → ");
        let message = said!("recipe-cycle", way);
        Fault::error("recipe-cycle", place, message).help(said!("recipe-cycle-help"))
    })
}

/// Follows included recipes until the first one of the way comes again.
fn follow<'a>(
    recipe: &'a Recipe,
    content: &'a Content,
    way: &mut Vec<&'a Recipe>,
) -> bool {
    for (name, _) in included(recipe) {
        let Some(next) = content.recipe(name) else { continue };
        let home = way.first().is_some_and(|first| first.name == next.name);
        if home || way.len() > DEEPEST {
            way.push(next);
            return true;
        }
        if way.iter().any(|seen| seen.name == next.name) {
            continue;
        }
        way.push(next);
        if follow(next, content, way) {
            return true;
        }
        way.pop();
    }
    false
}

/// The recipes a recipe takes in, and where it says so.
pub fn included(recipe: &Recipe) -> impl Iterator<Item = (&str, &crate::fault::Place)> {
    recipe.formula.iter().flat_map(|section| &section.lines).filter_map(
        |line| match &line.ingredient.value {
            Ingredient::Recipe { recipe, .. } => {
                Some((recipe.as_str(), &line.ingredient.place))
            }
            Ingredient::Pantry(_) => None,
        },
    )
}
