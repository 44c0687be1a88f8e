//! Times in words.

use crate::measure::Duration;
use crate::measure::show::minutes;
use crate::model::Wait;
use crate::time::{self, Worked};
use crate::words::Words;
use crate::work::{Timing, Work};

use super::super::{Ready, StepTime, Time};
use super::kit::place_words;

/// The full hours at which a recipe's page offers to have it ready.
const READY: [u64; 7] = [8, 10, 12, 14, 16, 18, 20];
/// Nobody works outside these minutes of a day: from seven to half past ten at night.
const AWAKE: [u64; 2] = [7 * 60, 22 * 60 + 30];
/// Minutes of a day.
const DAY: i64 = 24 * 60;

/// The times; nothing where the steps go round in a ring.
pub(super) fn time(work: &Work, words: &Words) -> Time {
    let time = work
        .timing
        .as_ref()
        .map_or_else(|_| none(words), |timing| self::timing(timing, words));
    let ready = READY.iter().filter_map(|hour| ready(&time, *hour, words)).collect();
    Time { ready, ..time }
}

/// When each step begins, to be ready at a full hour.
fn ready(time: &Time, hour: u64, words: &Words) -> Option<Ready> {
    let worked =
        |step: &StepTime| Worked { start: step.start_min, hands: step.hands_min };
    let steps: Vec<Worked> = time.steps.iter().map(worked).collect();
    let starts = time::ready(&steps, time.elapsed_min, hour * 60, AWAKE)?;
    (!starts.is_empty()).then(|| Ready {
        hour,
        at: of_day(hour * 60, words),
        starts: starts.into_iter().map(|start| moment(start, words)).collect(),
    })
}

/// A minute of a day, counted from the midnight that begins it, by the clock.
fn moment(minute: i64, words: &Words) -> String {
    let (day, of_day) = (minute.div_euclid(DAY), minute.rem_euclid(DAY));
    let time = self::of_day(of_day.unsigned_abs(), words);
    match day {
        0 => time,
        -1 => words.fill("day-before", &[("time", &time)]),
        day => {
            let count = day.unsigned_abs().to_string();
            words.fill("days-before", &[("time", &time), ("count", &count)])
        }
    }
}

/// A minute of the day.
fn of_day(minute: u64, words: &Words) -> String {
    let part = |part: u64| i8::try_from(part).unwrap_or(0);
    words.clock(part(minute / 60 % 24), part(minute % 60))
}

fn none(words: &Words) -> Time {
    Time {
        hands_min: 0,
        wait_min: 0,
        elapsed_min: 0,
        hands: minutes(0, words),
        wait: minutes(0, words),
        elapsed: minutes(0, words),
        critical_path: Vec::new(),
        steps: Vec::new(),
        ready: Vec::new(),
    }
}

fn timing(timing: &Timing, words: &Words) -> Time {
    let schedule = &timing.schedule;
    let name = |at: usize| timing.jobs[at].step.clone();
    // Days are those of the recipe itself, whose steps are the last.
    let own = |recipe: &str| timing.jobs.last().is_some_and(|last| last.recipe == recipe);
    let minutes_of =
        |wait: &Wait| [&wait.usual, &wait.least, &wait.most].map(Duration::whole_minutes);
    let steps = timing.jobs.iter().zip(&schedule.jobs).map(|(work, timed)| StepTime {
        step: work.step.clone(),
        title: work.title.clone(),
        recipe: work.recipe.clone(),
        day: work.day.filter(|_| own(&work.recipe)),
        start_min: timed.start,
        hands_min: work.job.hands.whole_minutes(),
        wait_min: [0, 1, 2].map(|at: usize| work.job.wait[at].whole_minutes()),
        hold_min: work.job.hold.whole_minutes(),
        thaw_min: work.thaw.as_ref().map(minutes_of),
        after: work.job.after.iter().map(|at| name(*at)).collect(),
        bake: work.bake,
        place: work.place.as_ref().map(|place| place_words(place, words)),
        critical: timed.critical,
    });
    Time {
        hands_min: schedule.hands,
        wait_min: schedule.wait,
        elapsed_min: schedule.elapsed,
        hands: minutes(schedule.hands, words),
        wait: minutes(schedule.wait, words),
        elapsed: minutes(schedule.elapsed, words),
        critical_path: schedule.critical_path.iter().map(|at| name(*at)).collect(),
        steps: steps.collect(),
        ready: Vec::new(),
    }
}
