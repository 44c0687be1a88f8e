//! What each station of a class makes: every recipe with the recipes it is made from, at
//! the size of that station.

use crate::formula::{Book, Scaling};
use crate::measure::Mass;
use crate::model::{Class, Each, Making, Much};
use crate::work::{Work, visit, work};

use super::class::{Unclear, Who};

/// One recipe at one size.
#[derive(Clone, Debug, PartialEq)]
pub struct SizedRecipe {
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
    pub portions: Vec<SizedRecipe>,
}

/// The stations of a class: the groups in order, then the instructor who demonstrates.
///
/// # Errors
/// The reason, where a recipe is missing or cannot be scaled so.
pub fn stations(class: &Class, book: Book) -> Result<Vec<Station>, Unclear> {
    let groups = (0..class.groups()).map(Who::Group);
    let mut stations = Vec::new();
    for of in groups.chain([Who::Instructor]) {
        let mut portions: Vec<SizedRecipe> = Vec::new();
        for making in class.makes.iter().filter(|making| makes(making, of)) {
            let each = match making.each {
                Each::Baker => members(class, of),
                Each::Group | Each::Demonstration => 1,
            };
            add(&scaled(making, book)?, scaling(making), each, book, &mut portions);
        }
        if !portions.is_empty() {
            stations.push(Station { who: of, portions });
        }
    }
    Ok(stations)
}

/// What is made where recipes are made together at these sizes: what goes into them first, a
/// dough that several take once, at what all take of it.
pub fn together(works: &[(Work, Scaling)], book: Book) -> Vec<SizedRecipe> {
    let mut portions = Vec::new();
    for (work, scaling) in works {
        add(work, scaling.clone(), 1, book, &mut portions);
    }
    portions
}

/// A dough that goes into several bakes and is made once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SharedDough {
    /// Its recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// What the bakes take of it together.
    pub taken: Mass,
    /// What is mixed for it: with what is lost.
    pub mixed: Mass,
    /// What each bake takes of it, by its title.
    pub parts: Vec<(String, Mass)>,
}

/// The doughs that several works share, each once, in the order in which they are made.
pub fn shared(works: &[&Work], book: Book) -> Vec<SharedDough> {
    let mut doughs: Vec<SharedDough> = Vec::new();
    for of in works {
        visit(of, book, &mut |inner, mass| {
            let title = of.recipe.title.value.clone();
            let recipe = &inner.recipe.name;
            match doughs.iter_mut().find(|known| known.recipe == *recipe) {
                Some(known) => known.add(title, mass),
                None => doughs.push(SharedDough {
                    recipe: recipe.clone(),
                    title: inner.recipe.title.value.clone(),
                    taken: mass.clone(),
                    mixed: Mass::zero(),
                    parts: vec![(title, mass)],
                }),
            }
        });
    }
    doughs.retain(|dough| dough.parts.len() > 1);
    for dough in &mut doughs {
        let recipe = book.content.recipe(&dough.recipe);
        let all = Scaling::Total(dough.taken.clone());
        let made = recipe.and_then(|recipe| work(recipe, &all, book).ok());
        dough.mixed = made.map_or_else(
            || dough.taken.clone(),
            |made| &made.formula.total() * &made.factor,
        );
    }
    doughs
}

impl SharedDough {
    /// Takes in what one more bake takes of it, or the same bake once more.
    fn add(&mut self, title: String, mass: Mass) {
        self.taken = self.taken.clone() + mass.clone();
        match self.parts.iter_mut().find(|part| part.0 == title) {
            Some((_, own)) => *own = own.clone() + mass,
            None => self.parts.push((title, mass)),
        }
    }
}

/// How many bakers there are at a station.
fn members(class: &Class, of: Who) -> u32 {
    match of {
        Who::Group(group) => class.members(group),
        Who::Instructor | Who::Helper | Who::Baker(..) | Who::Home => 1,
    }
}

fn makes(making: &Making, of: Who) -> bool {
    (making.each == Each::Demonstration) == (of == Who::Instructor)
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
fn add(
    work: &Work,
    scaling: Scaling,
    each: u32,
    book: Book,
    portions: &mut Vec<SizedRecipe>,
) {
    visit(work, book, &mut |inner, mass| {
        let recipe = &inner.recipe.name;
        // A dough that goes into several recipes is made once.
        let made = portions.iter_mut().find_map(|known| {
            let same = known.recipe == *recipe && known.each == each;
            let Scaling::Total(sum) = &mut known.scaling else { return None };
            same.then_some(sum)
        });
        match made {
            Some(sum) => *sum = sum.clone() + mass,
            None => {
                let (recipe, scaling) = (recipe.clone(), Scaling::Total(mass));
                portions.push(SizedRecipe { recipe, scaling, each });
            }
        }
    });
    let portion = SizedRecipe { recipe: work.recipe.name.clone(), scaling, each };
    if !portions.contains(&portion) {
        portions.push(portion);
    }
}
