//! Pictures that would not come out well on paper.

use std::collections::BTreeSet;

use crate::fault::{Fault, Placed};
use crate::media::{Medium, spread};
use crate::model::Recipe;
use crate::said;

use super::Inputs;

/// Greys that lie closer together than so many steps of lightness run into one another on a
/// copier. Common practice, no source.
const LEAST_SPREAD: f64 = 30.0;
/// Dots an inch below which a picture looks coarse in the hand. Common practice, no source.
const COARSE: f64 = 150.0;
/// A column of the student sheet, mm; a picture is at most three quarters as tall as wide.
const COLUMN: f64 = 84.0;

/// A caution for each picture of a recipe that is printed and would come out faint or coarse.
pub fn poor_prints(inputs: &Inputs) -> Vec<Fault> {
    let (mut seen, mut faults) = (BTreeSet::new(), Vec::new());
    let recipes = inputs.recipes().iter();
    for file in recipes.flat_map(printed).filter(|file| seen.insert(&file.value)) {
        let media = inputs.edition.content.media.iter();
        let found = media.filter(|medium| medium.name == file.value);
        faults.extend(found.filter_map(|medium| poor(file, medium)));
    }
    faults
}

/// The pictures of a recipe that are printed.
fn printed(recipe: &Recipe) -> impl Iterator<Item = &Placed<String>> {
    let steps = recipe.steps().filter(|step| step.printed);
    let shown = recipe
        .picture
        .iter()
        .chain(steps.flat_map(|step| &step.pictures).map(|it| &it.shown));
    let all = recipe.pictures.iter().chain(shown.map(|shown| &shown.file));
    all.filter(|_| recipe.printed)
}

fn poor(file: &Placed<String>, medium: &Medium) -> Option<Fault> {
    let (wide, tall) = (f64::from(medium.width), f64::from(medium.height.max(1)));
    let across = COLUMN.min(0.75 * COLUMN * wide / tall) / 25.4;
    if wide / across < COARSE {
        let message = said!("coarse-picture", picture = file.value, dots = medium.width);
        return Some(
            Fault::caution("coarse-picture", &file.place, message)
                .help(said!("coarse-picture-help")),
        );
    }
    let faint = spread(medium).is_ok_and(|spread| spread < LEAST_SPREAD);
    faint.then(|| {
        let message = said!("faint-picture", picture = file.value);
        Fault::caution("faint-picture", &file.place, message)
            .help(said!("faint-picture-help"))
    })
}
