//! Recipes in their ways: those that have pages of their own, those that a class makes, and
//! every swap looked at as the recipe that comes of it.

use crate::check::{self, Case};
use crate::fault::{Fault, Place};
use crate::formula::{Book, Scaling, Unoffered, in_ways, kits, still_told, ways};
use crate::measure::exact;
use crate::model::{Content, Recipe};
use crate::pantry::Pantry;
use crate::said;
use crate::work::work;

/// Puts the recipes in the ways that their authors and classes ask for beside those as written,
/// and lets each class make what it asks for.
pub(super) fn take(content: &mut Content, pantry: &Pantry) -> Vec<Fault> {
    let mut faults = Vec::new();
    let book = Book { content, pantry };
    let pages: Vec<Recipe> = content
        .recipes
        .iter()
        .flat_map(|recipe| recipe.own_pages.iter().map(move |page| (recipe, page)))
        .filter_map(|(recipe, page)| {
            let names: Vec<&str> = page.value.split(" + ").map(str::trim).collect();
            let made = in_ways(recipe, &names, book);
            made.map_err(|why| faults.extend(refused(&why, recipe, &page.place, book)))
                .ok()
        })
        .collect();
    let (mut asked, mut renamed): (Vec<Recipe>, Vec<(usize, usize, String)>) =
        (Vec::new(), Vec::new());
    for (at, class) in content.classes.iter().enumerate() {
        for (of, making) in class.makes.iter().enumerate() {
            let Some(recipe) = content.recipe(&making.recipe.value) else { continue };
            let Some(first) = making.with.first() else { continue };
            let names: Vec<&str> =
                making.with.iter().map(|way| way.value.as_str()).collect();
            match in_ways(recipe, &names, book) {
                Ok(made) => {
                    renamed.push((at, of, made.name.clone()));
                    asked.push(made);
                }
                Err(why) => faults.extend(refused(&why, recipe, &first.place, book)),
            }
        }
    }
    for made in pages {
        if content.recipe(&made.name).is_none_or(|known| known.way.is_none()) {
            content.recipes.push(made);
        }
    }
    for made in asked {
        if content.recipe(&made.name).is_none() {
            content.ways.push(made);
        }
    }
    for (class, making, name) in renamed {
        content.classes[class].makes[making].recipe.value = name;
    }
    faults
}

/// What is wrong with the swaps of a recipe, each looked at as the recipe that comes of it.
/// What is wrong with the recipe as written is not said again.
pub(super) fn judged(recipe: &Recipe, book: Book, written: &[Fault]) -> Vec<Fault> {
    let mut faults = Vec::new();
    let swaps =
        recipe.swaps.iter().map(|swap| (swap.name.value.as_str(), &swap.name.place));
    let place = |kit: &str| {
        let mut others = recipe.steps().flat_map(|step| &step.others);
        others.find(|other| other.name.says(kit)).map(|other| &other.name.place)
    };
    let others = kits(recipe).into_iter().filter_map(|kit| Some((kit, place(kit)?)));
    for (way, place) in swaps.chain(others) {
        match in_ways(recipe, &[way], book) {
            Err(why) => faults.extend(refused(&why, recipe, place, book)),
            Ok(made) => {
                faults.extend(still_told(&made, book).into_iter().map(
                    |(place, name)| {
                        let message = said!("way-still-told", name, way);
                        Fault::caution("way-still-told", place, message)
                            .help(said!("way-still-told-help"))
                    },
                ));
                let Ok(work) = work(&made, &Scaling::Batches(exact(1, 1)), book) else {
                    continue;
                };
                let found = check::recipe(Case { work: &work, book });
                let new = found.into_iter().filter(|fault| !written.contains(fault));
                faults.extend(new.map(|fault| Fault {
                    message: said!("in-this-way", way, message = fault.message),
                    ..fault
                }));
            }
        }
    }
    faults
}

/// The faults of a recipe that cannot be had in a way; `place` is where that is asked for.
fn refused(why: &Unoffered, recipe: &Recipe, place: &Place, book: Book) -> Vec<Fault> {
    let one = |fault: Fault| vec![fault];
    let message = why.said(&recipe.name);
    match why {
        Unoffered::Unknown(name) => {
            let known: Vec<String> =
                ways(recipe, book).into_iter().map(|way| way.called).collect();
            let known: Vec<&str> = known.iter().map(String::as_str).collect();
            let fault = Fault::error("unknown-way", place, message);
            one(fault.one_of(name, &known, said!("names-ways")))
        }
        Unoffered::Twice(_) => {
            one(Fault::error("ways-at-odds", place, message)
                .help(said!("ways-at-odds-help")))
        }
        Unoffered::Nothing(name, place) => {
            let known: Vec<&str> = recipe
                .formula
                .iter()
                .flat_map(|section| &section.lines)
                .map(|line| line.ingredient.value.title())
                .collect();
            let fault = Fault::error("swap-of-nothing", place, message);
            one(fault.one_of(name, &known, said!("names-lines")))
        }
        Unoffered::Several(name, place, sections) => {
            let first = sections.first().cloned().unwrap_or_default();
            let help = said!("swap-of-several-help", name, section = first);
            one(Fault::error("swap-of-several", place, message).help(help))
        }
        Unoffered::Empty(_) => {
            let help = said!("swap-leaves-nothing-help");
            one(Fault::error("swap-leaves-nothing", place, message).help(help))
        }
        Unoffered::Faulty(faults) => faults.clone(),
    }
}
