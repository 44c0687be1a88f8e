//! The days that a recipe names, in a plan: what is of a day begins on that day.

use super::batch_tasks::BatchTasks;
use super::problem::Problem;

/// The days that the steps of a batch name, in order, each once.
pub(in crate::plan) fn named(batch: &BatchTasks) -> Vec<u64> {
    let mut days: Vec<u64> = batch.steps.iter().filter_map(|step| step.day).collect();
    days.sort_unstable();
    days.dedup();
    days
}

/// Lets what is of a day begin only within its minutes, from and to. What brings something into
/// a hold and out of it may be done on the days between.
pub(in crate::plan) fn keep(
    batch: &BatchTasks,
    problem: &mut Problem,
    minutes: impl Fn(u64) -> Option<(i32, i32)>,
) {
    for step in &batch.steps {
        let Some((from, to)) = step.day.and_then(&minutes) else { continue };
        let bakes = step.bakes.iter().map(|(task, _)| *task);
        for task in step.moment.into_iter().chain(step.hands).chain(bakes) {
            let starts = problem.tasks[task].starts.iter();
            let within =
                starts.map(|(first, last)| (*first.max(&from), *last.min(&(to - 1))));
            problem.tasks[task].starts =
                within.filter(|(first, last)| first <= last).collect();
        }
    }
}
