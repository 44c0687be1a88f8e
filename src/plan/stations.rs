//! What each station of a class makes: every recipe with the recipes it is made from, at
//! the size of that station.

use crate::formula::{Book, Scaling};
use crate::model::{Class, Each, Making, Much};
use crate::work::{Work, taken};

use super::class::{Unclear, Who};

/// Levels of included recipes that are followed.
const DEEPEST: usize = 16;

/// One recipe at one size.
#[derive(Clone, Debug, PartialEq)]
pub struct Portion {
    /// The recipe's file name.
    pub recipe: String,
    /// How much of it.
    pub scaling: Scaling,
    /// How many bakers make so much each; 1 where the station makes it once.
    pub each: u32,
}

/// A group of the class, or the instructor.
#[derive(Clone, Debug)]
pub struct Station {
    /// Whose it is.
    pub who: Who,
    /// What it makes, included recipes before those that they go into.
    pub portions: Vec<Portion>,
}

/// The stations of a class: the groups in order, then the instructor who demonstrates.
///
/// # Errors
/// The reason, where a recipe is missing or cannot be scaled so.
pub fn stations(class: &Class, book: Book) -> Result<Vec<Station>, Unclear> {
    let groups = (0..class.groups()).map(Who::Group);
    let mut stations = Vec::new();
    for of in groups.chain([Who::Instructor]) {
        let mut portions: Vec<Portion> = Vec::new();
        for making in class.makes.iter().filter(|making| makes(making, of)) {
            let each = match making.each {
                Each::Baker => members(class, of),
                Each::Group | Each::Demonstration => 1,
            };
            let walk = Walk { book, each, depth: 0 };
            add(&scaled(making, book)?, scaling(making), walk, &mut portions);
        }
        if !portions.is_empty() {
            stations.push(Station { who: of, portions });
        }
    }
    Ok(stations)
}

/// How many bakers there are at a station.
fn members(class: &Class, of: Who) -> u32 {
    match of {
        Who::Group(group) => class.members(group),
        Who::Instructor | Who::Baker(..) | Who::Home => 1,
    }
}

fn makes(making: &Making, of: Who) -> bool {
    (making.each == Each::Demonstration) == (of == Who::Instructor)
}

/// Who makes a portion, and how deep it lies in another one.
#[derive(Clone, Copy)]
struct Walk<'a> {
    book: Book<'a>,
    each: u32,
    depth: usize,
}

/// A recipe at the size that each of its makers makes.
///
/// # Errors
/// The reason, where the recipe is missing or cannot be scaled so.
pub fn scaled<'a>(making: &Making, book: Book<'a>) -> Result<Work<'a>, Unclear> {
    let recipe = book.content.recipe(&making.recipe.value).ok_or(Unclear::NoRecipe)?;
    Ok(crate::work::work(recipe, &scaling(making), book)?)
}

/// How much of its recipe each maker makes.
pub fn scaling(making: &Making) -> Scaling {
    match &making.much {
        Much::Pieces(pieces) => Scaling::Pieces(*pieces),
        Much::Batches(batches) => Scaling::Batches(batches.clone()),
    }
}

/// Adds a recipe at its size, what it includes before it.
fn add(work: &Work, scaling: Scaling, walk: Walk, portions: &mut Vec<Portion>) {
    let deeper = Walk { depth: walk.depth + 1, ..walk };
    for (inner, mass) in taken(work).into_iter().filter(|_| walk.depth < DEEPEST) {
        let scaling = Scaling::Total(mass);
        if let Ok(inner) = crate::work::work(inner, &scaling, walk.book) {
            add(&inner, scaling, deeper, portions);
        }
    }
    let recipe = work.recipe.name.clone();
    // A dough that goes into several recipes is made once.
    if let Scaling::Total(mass) = &scaling
        && walk.depth > 0
        && let Some(Portion { scaling: Scaling::Total(sum), .. }) = portions
            .iter_mut()
            .find(|known| known.recipe == recipe && known.each == walk.each)
    {
        *sum = sum.clone() + mass.clone();
        return;
    }
    let portion = Portion { recipe, scaling, each: walk.each };
    if !portions.contains(&portion) {
        portions.push(portion);
    }
}
