//! The checks: one rule a file, its cases beneath.
//!
//! A rule looks at what was read and worked out, and answers with faults. The list below
//! is the order in which they run; faults are sorted later.

mod acceptance;
mod amounts;
mod classes;
mod cutting;
mod kit;
mod lamination;
mod links;
mod materials;
mod names;
mod prose;
mod safety;
mod steps;

#[cfg(test)]
mod testing;

use crate::fault::Fault;
use crate::formula::{Book, weigh};
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

/// Every rule about one recipe.
const RULES: &[Rule] = &[
    amounts::second_amounts,
    amounts::yields,
    materials::unused,
    materials::unknown_uses,
    prose::braces,
    steps::rings,
    steps::videos,
    steps::makes,
    steps::preferment,
    lamination::fat_block,
    lamination::thickness,
    lamination::fat_layers,
    lamination::parts,
    cutting::layouts,
    cutting::counts,
    kit::mixer,
    kit::bench,
    safety::allergens,
    safety::cold_water,
];

/// Checks one recipe as written; the faults that it accepts with a reason are left out.
pub fn recipe(case: Case) -> Vec<Fault> {
    let mut faults = weigh(case.work.recipe, case.book).1;
    faults.extend(RULES.iter().flat_map(|rule| rule(case)));
    acceptance::accept(case.work.recipe, faults)
}

/// Checks what concerns the folder as a whole.
pub fn content(content: &Content) -> Vec<Fault> {
    let mut faults = names::clashes(content);
    faults.extend(names::lessons(content));
    faults.extend(links::links(content));
    faults.extend(classes::classes(content));
    faults
}
