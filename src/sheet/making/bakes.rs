//! Ovens, trays and loads in words.

use crate::measure::{Label, Temperature, show};
use crate::model::{Bake, BakeDoes, BakePhase, Step};
use crate::words::Words;
use crate::work::{Work, loads};

use super::super::{BakeAct, BakeFact, BakePhaseFact};
use super::{Context, round, steps};

/// Every bake at its scale.
pub(super) fn bakes(work: &Work, context: Context) -> Vec<BakeFact> {
    work.recipe.steps().filter_map(|step| bake(step, work, context)).collect()
}

fn bake(step: &Step, work: &Work, context: Context) -> Option<BakeFact> {
    let bake = &step.bake.as_ref()?.value;
    let oven = &bake.oven;
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
        phases: if is_plain(bake) {
            Vec::new()
        } else {
            bake.phases
                .iter()
                .enumerate()
                .map(|(at, phase)| fact(phase, at, step))
                .collect()
        },
    })
}

/// The oven with a fan: as written, else as much cooler as is usual.
pub(super) fn fan(step: &Step) -> Option<Temperature> {
    let written = step.fan.as_ref().map(|fan| fan.value.clone());
    written.or_else(|| step.bake.as_ref().map(|bake| bake.value.oven.with_fan()))
}

/// Whether a bake is of one phase in which nothing is done.
fn is_plain(bake: &Bake) -> bool {
    let [only] = bake.phases.as_slice() else { return false };
    only.does.is_empty() && only.more.is_none()
}

fn fact(phase: &BakePhase, at: usize, step: &Step) -> BakePhaseFact {
    let minutes = [&phase.time.usual, &phase.time.least, &phase.time.most];
    let act = |does: &BakeDoes| match does {
        BakeDoes::Steam => BakeAct::Steam,
        BakeDoes::Door => BakeAct::DoorAjar,
        BakeDoes::Turn => BakeAct::TurnTray,
    };
    BakePhaseFact {
        oven_c: round(phase.oven.in_celsius(), 2),
        fan_c: round(fan_of(phase, at, step).in_celsius(), 2),
        minutes: minutes.map(crate::measure::Duration::whole_minutes),
        does: phase.does.iter().map(act).collect(),
        more_min: phase.more.as_ref().map(|(time, _)| time.whole_minutes()),
    }
}

/// A phase's oven with a fan: as written, else as much cooler as is usual. What the ticket says
/// in a line of its own is the first phase's, and those of the same heat.
fn fan_of(phase: &BakePhase, at: usize, step: &Step) -> Temperature {
    let first = step.bake.as_ref().is_some_and(|bake| bake.value.oven == phase.oven);
    let written = fan(step).filter(|_| at == 0 || first);
    written.or_else(|| phase.fan.clone()).unwrap_or_else(|| phase.oven.with_fan())
}

/// `240 °C, then 210 °C`: each heat once where it changes.
pub(super) fn heats(step: &Step, with_fan: bool, words: &Words) -> Option<Label> {
    let bake = &step.bake.as_ref()?.value;
    let mut heats: Vec<Temperature> = Vec::new();
    for (at, phase) in bake.phases.iter().enumerate() {
        let heat = if with_fan { fan_of(phase, at, step) } else { phase.oven.clone() };
        if heats.last() != Some(&heat) {
            heats.push(heat);
        }
    }
    then(heats.iter().map(|heat| show::oven(heat, words)).collect(), words)
}

/// `10 min with steam, then 25 min, turn the tray`.
pub(super) fn times(step: &Step, words: &Words) -> Option<Label> {
    let bake = &step.bake.as_ref()?.value;
    let phase = |phase: &BakePhase| {
        let mut told = vec![steps::wait_words(&phase.time, words)];
        told.extend(phase.does.iter().map(|does| {
            let key = match does {
                BakeDoes::Steam => "bake-steam",
                BakeDoes::Door => "bake-door",
                BakeDoes::Turn => "bake-turn",
            };
            words.get(key).to_owned()
        }));
        told.extend(phase.more.as_ref().map(|(time, looks)| {
            let time = show::minutes(time.whole_minutes(), words);
            words.fill("bake-more", &[("time", &time), ("looks", looks)])
        }));
        Label::same(words.list(&told))
    };
    then(bake.phases.iter().map(phase).collect(), words)
}

/// One after the other.
pub(super) fn then(labels: Vec<Label>, words: &Words) -> Option<Label> {
    let after =
        |one: &str, two: &str| words.fill("bake-then", &[("one", one), ("two", two)]);
    labels.into_iter().reduce(|one, two| {
        Label::new(after(&one.metric, &two.metric), after(&one.us, &two.us))
    })
}
