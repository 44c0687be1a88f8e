//! The days of a recipe: what is made the day before stands before.
//!
//! `day: 2` in a ticket begins a day; the steps below are of that day too, until another begins.
//! The steps are put in the order of their days, so that page, sheet, card and plan have them so.

use crate::fault::{Fault, Placed};
use crate::model::{Part, Recipe, Step};
use crate::said;

/// Gives every step its day and puts the steps in order. Without a second day there are none.
pub(super) fn settle(recipe: &mut Recipe, faults: &mut Vec<Fault>) {
    let days = carried(recipe);
    if days.windows(2).all(|two| two[0] == two[1]) {
        steps(recipe).for_each(|step| step.day = None);
        return;
    }
    let names: Vec<String> = recipe.steps().map(|step| step.name.clone()).collect();
    for (at, step) in steps(recipe).enumerate() {
        let day = Placed::new(days[at], step.title.place.clone());
        step.day.get_or_insert(day);
        let place = step.place.clone();
        let above = || followed(&days, at).into_iter();
        let after = || above().map(|at| Placed::new(names[at].clone(), place.clone()));
        step.after.get_or_insert_with(|| after().collect());
    }
    faults.extend(recipe.steps().filter_map(|step| too_early(step, &names, &days)));
    sort(recipe, &days);
}

fn steps(recipe: &mut Recipe) -> impl Iterator<Item = &mut Step> {
    recipe.parts.iter_mut().filter_map(|part| match part {
        Part::Step(step) => Some(step.as_mut()),
        Part::Prose { .. } => None,
    })
}

/// The day of each step: that of the step above where it says none, and the first at the top.
fn carried(recipe: &Recipe) -> Vec<u64> {
    let mut day = 1;
    let days = recipe.steps().map(|step| {
        day = step.day.as_ref().map_or(day, |own| own.value);
        day
    });
    days.collect()
}

/// What a step follows that does not say: the nearest step above that is of its day or an
/// earlier one; and where that is of an earlier one, the nearest of its own day too.
fn followed(days: &[u64], at: usize) -> Vec<usize> {
    let above = |fits: &dyn Fn(u64) -> bool| (0..at).rev().find(|up| fits(days[*up]));
    let nearest = above(&|day| day <= days[at]);
    let own = above(&|day| day == days[at]);
    let mut both: Vec<usize> = nearest.into_iter().chain(own).collect();
    both.dedup();
    both
}

/// A step that waits for one of a later day.
fn too_early(step: &Step, names: &[String], days: &[u64]) -> Option<Fault> {
    let day = step.day.as_ref()?;
    let of = |name: &String| names.iter().position(|own| own == name).map(|at| days[at]);
    let mut waits = step.after.iter().flatten();
    let late = waits.find(|after| of(&after.value) > Some(day.value))?;
    let message = said!("day-too-early", day = day.value, step = late.value);
    let fault = Fault::error("day-too-early", &day.place, message);
    Some(fault.help(said!("day-too-early-help", step = late.value)))
}

/// The steps by their days; prose stays behind the step that it stands behind, and what is
/// behind them all stays last.
fn sort(recipe: &mut Recipe, days: &[u64]) {
    let is_step = |part: &Part| matches!(part, Part::Step(_));
    let last = recipe.parts.iter().rposition(is_step).unwrap_or(0);
    let mut next = days.iter().copied();
    let mut day = 0;
    let parts = std::mem::take(&mut recipe.parts).into_iter().enumerate();
    let mut parts: Vec<(u64, Part)> = parts
        .map(|(at, part)| {
            if is_step(&part) {
                day = next.next().unwrap_or(day);
            }
            (if at > last { u64::MAX } else { day }, part)
        })
        .collect();
    parts.sort_by_key(|(day, _)| *day);
    recipe.parts = parts.into_iter().map(|(_, part)| part).collect();
}
