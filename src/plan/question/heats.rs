//! The heats that ovens are set to, and the bakes that may share an oven.

use crate::measure::Temperature;
use crate::model::BakePhase;

use super::batch_tasks::StepPlan;
use super::problem::Baking;

/// What was numbered so far.
#[derive(Clone, Debug, Default)]
pub struct Heats {
    /// The heats at which ovens are set, in the order of their numbers.
    dials: Vec<Temperature>,
    /// The phases of bakes whose heat changes, likewise.
    changing: Vec<Vec<BakePhase>>,
}

impl Heats {
    /// The oven loads of a step.
    pub(in crate::plan) fn bakes(&mut self, step: &StepPlan) -> Vec<Baking> {
        let Some(oven) = &step.oven else { return Vec::new() };
        let heat = number(&mut self.dials, oven.dial());
        let changes = !step.phases.is_empty();
        let phases = changes.then(|| number(&mut self.changing, step.phases.clone()));
        let one = |(task, trays): &(usize, i32)| Baking {
            task: *task,
            trays: *trays,
            heat,
            phases,
            oven: None,
        };
        step.bakes.iter().map(one).collect()
    }
}

/// The number of a thing among those that are known.
fn number<T: PartialEq>(known: &mut Vec<T>, thing: T) -> i32 {
    let at = known.iter().position(|one| *one == thing).unwrap_or_else(|| {
        known.push(thing);
        known.len() - 1
    });
    i32::try_from(at).unwrap_or(0)
}
