//! Times in words.

use crate::measure::show::minutes;
use crate::work::{Timing, Work};

use super::super::{StepTime, Time};

/// The times; nothing where the steps go round in a ring.
pub(super) fn time(work: &Work) -> Time {
    work.timing.as_ref().map_or_else(|_| none(), timing)
}

fn none() -> Time {
    Time {
        hands_min: 0,
        wait_min: 0,
        elapsed_min: 0,
        hands: minutes(0),
        wait: minutes(0),
        elapsed: minutes(0),
        critical_path: Vec::new(),
        steps: Vec::new(),
    }
}

fn timing(timing: &Timing) -> Time {
    let schedule = &timing.schedule;
    let name = |at: usize| timing.jobs[at].step.clone();
    let steps = timing.jobs.iter().zip(&schedule.jobs).map(|(work, timed)| StepTime {
        step: work.step.clone(),
        title: work.title.clone(),
        recipe: work.recipe.clone(),
        start_min: timed.start,
        hands_min: work.job.hands.whole_minutes(),
        wait_min: [0, 1, 2].map(|at: usize| work.job.wait[at].whole_minutes()),
        hold_min: work.job.hold.whole_minutes(),
        after: work.job.after.iter().map(|at| name(*at)).collect(),
        bake: work.bake,
        place: work.place.clone(),
        critical: timed.critical,
    });
    Time {
        hands_min: schedule.hands,
        wait_min: schedule.wait,
        elapsed_min: schedule.elapsed,
        hands: minutes(schedule.hands),
        wait: minutes(schedule.wait),
        elapsed: minutes(schedule.elapsed),
        critical_path: schedule.critical_path.iter().map(|at| name(*at)).collect(),
        steps: steps.collect(),
    }
}
