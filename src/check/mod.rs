//! The checks: one rule a file, its cases beneath.
//!
//! A rule looks at what was read and worked out, and answers with faults. The list below
//! is the order in which they run; faults are sorted later.

mod acceptance;
mod amounts;
mod besides;
mod classes;
mod cutting;
mod days;
mod divide;
mod goals;
mod kit;
mod lamination;
mod laws;
mod layers;
mod links;
mod look;
mod materials;
mod names;
mod notes;
mod ovens;
mod perishable;
mod pictures;
mod pieces;
mod places;
mod plausible;
mod prose;
mod safety;
mod settle;
mod shapes;
mod steps;
mod trays;

#[cfg(test)]
mod testing;

pub use acceptance::ACCEPTABLE;
pub use look::unspoken;
pub use notes::open_notes;

use crate::fault::{self, Fault, Severity};
use crate::formula::Book;
use crate::model::Content;
use crate::work::Work;

/// What a rule about one recipe looks at.
#[derive(Clone, Copy)]
pub struct Case<'a> {
    /// The recipe worked out as written.
    pub work: &'a Work<'a>,
    /// Recipes and pantry.
    pub book: Book<'a>,
}

/// A rule about one recipe.
type Rule = fn(Case) -> Vec<Fault>;

/// Rules that hold for every recipe.
const RULES: &[Rule] = &[
    materials::unknown_uses,
    days::nights,
    divide::unknown,
    shapes::unknown,
    prose::braces,
    steps::rings,
    steps::videos,
    steps::makes,
    steps::preferment,
    settle::unsettled,
    places::misspelt,
    plausible::slips,
    kit::sheeters,
    kit::friction,
    goals::ranges,
    goals::out_of_place,
    goals::at_odds,
];

/// Rules that need the whole formula in grams: where a line of it could not be weighed they
/// would only repeat that.
const FORMULA_RULES: &[Rule] = &[
    amounts::second_amounts,
    layers::fat_share,
    safety::allergens,
    safety::named_beside,
    safety::unknown_water,
    plausible::shares,
    pieces::sizes,
];

/// Rules about eating safely, which need all tickets too: where a line of one could not be
/// read they would only repeat that.
const SAFETY_RULES: &[Rule] = &[
    ovens::fans,
    perishable::cooling,
    perishable::cooling_times,
    perishable::held_warm,
    perishable::raw_egg,
    perishable::cores,
    days::thawed_warm,
];

/// Rules about the dough on the bench: likewise, and an error elsewhere in the recipe may be
/// all that makes a sheet too thin.
const DOUGH_RULES: &[Rule] = &[
    amounts::yields,
    lamination::fat_block,
    lamination::fat_beside_dough,
    lamination::thickness,
    lamination::fat_layers,
    lamination::parts,
    layers::seams,
    layers::narrower,
    divide::sums,
    shapes::misfits,
    cutting::layouts,
    cutting::counts,
    kit::mixer,
    kit::bench,
    trays::full,
    pieces::open_weights,
    pieces::piece_weights,
    safety::cold_water,
];

/// Checks one recipe as written; the faults that it accepts with a reason are left out.
pub fn recipe(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let mut faults = case.work.formula.faults.clone();
    faults.extend(RULES.iter().flat_map(|rule| rule(case)));
    let mut dough = Vec::new();
    if case.work.formula.is_whole(recipe) {
        faults.extend(FORMULA_RULES.iter().flat_map(|rule| rule(case)));
        if !recipe.unread.method {
            faults.extend(materials::unused(case));
        }
        if !recipe.unread.method && materials::unknown_uses(case).is_empty() {
            faults.extend(SAFETY_RULES.iter().flat_map(|rule| rule(case)));
            dough.extend(DOUGH_RULES.iter().flat_map(|rule| rule(case)));
        }
    }
    faults = acceptance::accept(recipe, faults);
    faults.extend(acceptance::unacceptable(recipe));
    dough = acceptance::accept(recipe, dough);
    let stops = fault::stops(&faults) || fault::stops(&dough);
    dough.retain(|fault| !stops || fault.severity == Severity::Error);
    faults.extend(dough);
    faults
}

/// Says once for the whole folder what a bare name is taken to mean where the course leaves
/// it open.
pub fn bare_names(book: Book) -> Vec<Fault> {
    names::bare(book)
}

/// Names what stands on a class's shelf and in no pantry.
pub fn shelves(book: Book) -> Vec<Fault> {
    classes::shelves(book)
}

/// Checks what concerns the folder as a whole.
pub fn content(content: &Content) -> Vec<Fault> {
    let mut faults = names::clashes(content);
    faults.extend(names::taken(content));
    faults.extend(names::lessons(content));
    faults.extend(links::links(content));
    faults.extend(classes::classes(content));
    faults.extend(laws::unknown(content));
    faults.extend(look::accent(content));
    faults.extend(look::logo(content));
    faults.extend(pictures::missing(content));
    faults.extend(notes::of_nothing(content));
    faults.extend(names::words(content));
    faults
}
