//! Ovens, trays and loads in words.

use crate::measure::{Temperature, show};
use crate::model::Step;
use crate::work::{Work, loads};

use super::super::BakeFact;
use super::{Context, round};

/// Every bake at its scale.
pub(super) fn bakes(work: &Work, context: Context) -> Vec<BakeFact> {
    work.recipe.steps().filter_map(|step| bake(step, work, context)).collect()
}

fn bake(step: &Step, work: &Work, context: Context) -> Option<BakeFact> {
    let oven = &step.bake.as_ref()?.value.oven;
    let (fan, trays) = (fan(step)?, work.trays_at(step));
    Some(BakeFact {
        step: step.name.clone(),
        oven_c: round(oven.in_celsius(), 2),
        fan_c: round(fan.in_celsius(), 2),
        oven: show::oven(oven, context.words),
        fan: show::oven(&fan, context.words),
        per_tray: step.per_tray.as_ref().map(|per_tray| per_tray.value),
        trays,
        loads: loads(trays, context.book),
    })
}

/// The oven with a fan: as written, else as much cooler as is usual.
pub(super) fn fan(step: &Step) -> Option<Temperature> {
    let written = step.fan.as_ref().map(|fan| fan.value.clone());
    written.or_else(|| step.bake.as_ref().map(|bake| bake.value.oven.with_fan()))
}
