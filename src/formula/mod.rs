//! Formula arithmetic: weights, baker's percentages, scaling, water, allergens, nutrients
//! and cost. Pure and exact.

mod allergens;
mod cost;
mod expand;
mod flow;
mod nutrients;
mod percent;
mod scaling;
#[cfg(test)]
mod testing;
mod water;
mod weigh;

pub use allergens::{AllergenSum, Found, allergens};
pub use cost::cost;
pub use expand::{Contents, batch, cycles, expand, flour, included, of_kind};
pub use flow::{Flow, is_dough, is_roll_in, lines_of};
pub use nutrients::nutrients;
pub use percent::{Percentages, percentages};
pub use scaling::{Goal, Scaling, doughs, factor};
pub use water::{WaterPlan, ice, water};
pub use weigh::{Formula, LineRef, Source, Weighed, weigh, weigh_unit};

use crate::measure::CupSet;
use crate::model::Content;
use crate::pantry::Pantry;

/// What the arithmetic looks things up in.
#[derive(Clone, Copy)]
pub struct Book<'a> {
    /// Every recipe.
    pub content: &'a Content,
    /// Every ingredient.
    pub pantry: &'a Pantry,
}

impl Book<'_> {
    /// The cups and spoons that the course measures with.
    pub fn cups(&self) -> CupSet {
        self.content.course.as_ref().map_or(CupSet::Us, |course| course.cups)
    }
}
