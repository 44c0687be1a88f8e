//! A formula expanded to ingredients: included recipes opened up, through any number of
//! levels.

use std::collections::BTreeMap;

use crate::fault::Fault;
use crate::measure::{Exact, Mass, exact};
use crate::model::{Content, Makes, Recipe, may_include};
use crate::pantry::{Item, Kind};
use crate::said;

use super::weigh::{Formula, MadeOf, Weighed};

/// Ingredients by name, with their weights (nought for what carries none).
pub type Contents<'a> = BTreeMap<&'a str, (&'a Item, Mass)>;

/// Every ingredient in `formula`, `factor` times.
pub fn expand<'a>(formula: &Formula<'a>, factor: &Exact) -> Contents<'a> {
    let mut contents = Contents::new();
    add(&mut formula.lines.iter(), factor, &mut contents);
    contents
}

/// Every ingredient in some lines of a formula.
pub(super) fn expand_lines<'l, 'a: 'l>(
    mut lines: impl Iterator<Item = &'l Weighed<'a>>,
) -> Contents<'a> {
    let mut contents = Contents::new();
    add(&mut lines, &exact(1, 1), &mut contents);
    contents
}

fn add<'l, 'a: 'l>(
    lines: &mut dyn Iterator<Item = &'l Weighed<'a>>,
    factor: &Exact,
    contents: &mut Contents<'a>,
) {
    for line in lines {
        let mass = &line.mass() * factor;
        if let MadeOf::Item(item) = line.source {
            let entry =
                contents.entry(item.name.as_str()).or_insert((item, Mass::zero()));
            entry.1 = entry.1.clone() + mass;
        } else if let Some((recipe, inner)) = line.included() {
            let share = mass.over(&batch(inner, recipe)).unwrap_or_else(Exact::zero);
            add(&mut inner.lines.iter(), &share, contents);
        }
        for item in line.instead.iter().chain(&line.named) {
            contents.entry(item.name.as_str()).or_insert((item, Mass::zero()));
        }
    }
}

/// What one batch of a recipe weighs when it is taken into another: the weight it says it
/// makes, else its formula less the loss.
pub fn batch(formula: &Formula, recipe: &Recipe) -> Mass {
    let made = || &formula.total() * &(exact(1, 1) - &recipe.loss);
    match recipe.makes.as_ref().map(|makes| &makes.value) {
        Some(Makes::Weight(mass)) => mass.clone(),
        Some(Makes::Pieces { .. } | Makes::Tins { .. }) | None => made(),
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
    let endless = content.recipes.iter();
    let endless = endless.filter_map(|it| Some((it, content.endless.get(&it.name)?)));
    endless.map(|(recipe, way)| cycle(recipe, way)).collect()
}

fn cycle(recipe: &Recipe, way: &[String]) -> Fault {
    let place = may_include(recipe)
        .find(|(name, _)| way.get(1).is_some_and(|next| next == name))
        .map_or(&recipe.title.place, |(_, place)| place);
    let way = way.join(" → ");
    let message = said!("recipe-cycle", way);
    Fault::error("recipe-cycle", place, message).help(said!("recipe-cycle-help"))
}
