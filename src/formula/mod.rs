//! Formula arithmetic: weights, baker's percentages, scaling, water, allergens, nutrients
//! and cost. Pure and exact.

mod allergens;
mod altitude;
mod beside;
mod body;
mod cost;
pub mod declare;
mod expand;
mod filling;
mod flow;
mod hydration;
mod nutrients;
pub mod parts;
mod percent;
mod scaling;
#[cfg(test)]
mod testing;
mod water;
mod ways;
mod weigh;
mod yeast;

pub use allergens::{AllergenSum, Declared, Listed, allergens, brings_allergens};
pub use altitude::boiling;
pub use body::Body;
pub use cost::cost;
pub use expand::{Contents, batch, cycles, expand, flour, of_kind};
pub use filling::{Filling, filling};
pub use flow::{Flow, is_roll_in, lines_of, sections};
pub use hydration::{Counting, dry_unknown, hydration};
pub use nutrients::nutrients;
pub use percent::{Percentages, percentages};
pub use scaling::{Scaling, Unscalable, Yield, depth_assumed, doughs, factor, pieces};
pub use water::{WaterPlan, ice, rest_of_water, water};
pub use ways::{Unoffered, Way, Without, in_ways, kits, still_told, ways, without};
pub use weigh::{Formula, LineRef, MadeOf, Weighed, weigh, weigh_unit};
pub use yeast::{yeast_as_fresh, yeast_instead};

use crate::measure::CupSet;
use crate::model::Content;
use crate::pantry::Pantry;

/// The edition of the program's arithmetic. Whoever changes how a number is worked out or
/// rounded, so that a text that nobody touched shows another one, counts it up: the next
/// publish then says once that it was the program.
pub const EDITION: u32 = 4;

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
