//! The water of a recipe in the course's room.

use crate::formula::{WaterPlan, Weighed, water};
use crate::measure::{Mass, Temperature};
use crate::model::Room;
use crate::pantry::Kind;

use super::Work;

/// The temperature that the water needs, where the recipe names its dough temperature and
/// the course its room and friction.
pub fn wanted_water(work: &Work, room: &Room) -> Option<Temperature> {
    plan(work, room).map(|plan| water(&plan))
}

fn plan(work: &Work, room: &Room) -> Option<WaterPlan> {
    let desired = &work.recipe.dough_temperature.as_ref()?.value;
    let air = room.air.clone()?;
    let preferment = work.recipe.preferment.as_ref().map(|section| {
        let own = work
            .formula
            .lines
            .iter()
            .filter(|line| line.section == section.value)
            .find_map(|line| line.line.at.clone());
        own.unwrap_or_else(|| air.clone())
    });
    let flour = work.formula.lines.iter().filter(|line| line.is(Kind::Flour));
    let flour = flour.filter_map(|line| line.line.at.clone()).next();
    Some(WaterPlan {
        desired: desired.clone(),
        flour: flour.or_else(|| room.flour.clone()).unwrap_or_else(|| air.clone()),
        room: air,
        preferment,
        friction: room.friction.clone()?,
    })
}

/// The water that is mixed into the final dough.
pub fn mixed_water(work: &Work) -> Mass {
    let preferment =
        work.recipe.preferment.as_ref().map(|section| section.value.as_str());
    let water = work
        .formula
        .lines
        .iter()
        .filter(|line| line.title() == "water" && Some(line.section) != preferment);
    &water.map(Weighed::mass).sum::<Mass>() * &work.factor
}
