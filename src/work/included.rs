//! The recipes that a recipe includes, each at the size that it takes of it.

use crate::formula::{Book, MadeOf, Scaling};
use crate::measure::Mass;
use crate::model::Recipe;

use super::{Work, work};

/// The recipes that `work` includes through any depth, worked out for what is taken of
/// them; each once, and before those that it goes into.
pub fn included<'a>(work: &Work<'a>, book: Book<'a>) -> Vec<Work<'a>> {
    let mut found = Vec::new();
    visit(work, book, &mut |inner, mass| add(&mut found, inner.recipe, mass));
    let worked = |(recipe, mass): (&'a Recipe, Mass)| {
        super::work(recipe, &Scaling::Total(mass), book).ok()
    };
    found.into_iter().filter_map(worked).collect()
}

/// Shows every recipe that `of` includes, worked out for the weight that is taken of it at
/// that place, before what it goes into. What cannot be scaled so is passed over.
pub fn visit<'a>(of: &Work<'a>, book: Book<'a>, see: &mut dyn FnMut(&Work<'a>, Mass)) {
    for (inner, mass) in taken(of) {
        if let Ok(inner) = work(inner, &Scaling::Total(mass.clone()), book) {
            visit(&inner, book, see);
            see(&inner, mass);
        }
    }
}

/// The recipes that a recipe itself takes in, each once, with what it takes of them.
pub fn taken<'a>(work: &Work<'a>) -> Vec<(&'a Recipe, Mass)> {
    let mut found = Vec::new();
    for line in &work.formula.lines {
        if let MadeOf::Recipe(inner) = line.source {
            add(&mut found, inner, &line.mass() * &work.factor);
        }
    }
    found
}

fn add<'a>(found: &mut Vec<(&'a Recipe, Mass)>, recipe: &'a Recipe, mass: Mass) {
    match found.iter_mut().find(|(known, _)| known.name == recipe.name) {
        Some((_, sum)) => *sum = sum.clone() + mass,
        None => found.push((recipe, mass)),
    }
}
