//! The water of a recipe in the course's room.

use crate::formula::{WaterPlan, Weighed, rest_of_water, water};
use crate::measure::{Exact, Mass, Temperature, TemperatureStep};
use crate::model::Room;
use crate::pantry::{Kind, Role};

use super::Work;

/// The temperature of the water that is to be found, where the recipe names its dough
/// temperature and the course its room and friction. Water with a temperature of its own is
/// taken into account; `None` where all of it has one.
pub fn wanted_water(work: &Work, room: &Room) -> Option<Temperature> {
    let wanted = water(&plan(work, room)?);
    let given: Vec<(Mass, Temperature)> = waters(work)
        .filter_map(|line| Some((&line.mass() * &work.factor, line.line.at.clone()?)))
        .collect();
    if given.is_empty() {
        return Some(wanted);
    }
    rest_of_water(&mixed_water(work), &given, &wanted)
}

fn plan(work: &Work, room: &Room) -> Option<WaterPlan> {
    let desired = &work.recipe.dough_temperature.as_ref()?.value;
    let air = room.air.clone()?;
    let flour = work.formula.lines.iter().filter(|line| line.is(Kind::Flour));
    let flour = flour.filter_map(|line| line.line.at.clone()).next();
    Some(WaterPlan {
        desired: desired.clone(),
        flour: flour.or_else(|| room.flour.clone()).unwrap_or_else(|| air.clone()),
        preferment: preferment(work, &air),
        room: air,
        friction: friction(work, room)?,
    })
}

/// What mixing adds: what the step says in which the dough is mixed, else what the room's mixer
/// does.
fn friction(work: &Work, room: &Room) -> Option<TemperatureStep> {
    let step = mixing_step(work).and_then(|at| work.steps().get(at).copied());
    let own = step.and_then(|step| step.friction.as_ref());
    own.map(|own| own.value.clone()).or_else(|| room.friction.clone())
}

/// The step in which flour goes into the final dough first.
pub fn mixing_step(work: &Work) -> Option<usize> {
    let floury = |step: &usize| {
        work.flow.uses[*step].iter().any(|(line, _)| {
            let line = &work.formula.lines[*line];
            let mixed = line.is(Kind::Flour) && !line.purpose.is_put_on();
            mixed && !is_preferment(line.section, work)
        })
    };
    (0..work.flow.uses.len()).find(floury)
}

fn is_preferment(section: &str, work: &Work) -> bool {
    work.recipe.preferments.iter().any(|it| it.section.value == section)
}

/// The temperature of the preferments: of several their mean, each by its weight; the room's
/// where a preferment has none of its own.
fn preferment(work: &Work, air: &Temperature) -> Option<Temperature> {
    let parts = work.recipe.preferments.iter().map(|preferment| {
        let name = &preferment.section.value;
        let own = || work.formula.lines.iter().filter(|line| line.section == name);
        let at = own().find_map(|line| line.line.at.clone());
        let mass = own().map(Weighed::mass).sum::<Mass>();
        (mass, at.unwrap_or_else(|| air.clone()))
    });
    let parts: Vec<(Mass, Temperature)> = parts.collect();
    let all = parts.iter().map(|(mass, _)| mass.clone()).sum::<Mass>();
    if parts.is_empty() {
        return None;
    }
    let heat: Exact =
        parts.iter().map(|(mass, at)| mass.amount() * at.in_celsius()).sum();
    let mean = all.is_positive().then(|| Temperature::celsius(heat / all.amount()));
    Some(mean.unwrap_or_else(|| air.clone()))
}

/// The lines of water that are mixed into the final dough.
fn waters<'w, 'a>(work: &'w Work<'a>) -> impl Iterator<Item = &'w Weighed<'a>> {
    let lines = work.formula.lines.iter().filter(|line| line.plays(Role::Water));
    lines.filter(move |line| {
        !line.purpose.is_put_on() && !is_preferment(line.section, work)
    })
}

/// The water that is mixed into the final dough at a temperature that is to be found.
pub fn mixed_water(work: &Work) -> Mass {
    let water = waters(work).filter(|line| line.line.at.is_none());
    &water.map(Weighed::mass).sum::<Mass>() * &work.factor
}
