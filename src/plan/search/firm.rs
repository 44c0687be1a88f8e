//! Where the usual rests do not all fit: those that can be usual are, step by step, and the
//! others give way by as little as will do.

use std::collections::BTreeMap;

use crate::plan::question::problem::{Layout, Problem};

use super::polish::worth;
use super::solve::{Effort, stopped};
use super::waves::{self, Strictness};

/// Minutes from one tried rest to the next.
const STEP: i32 = 5;
/// Tasks of all trials: the same question always has as many.
const TRIALS: usize = 8_000;

/// By single minutes, and on the grid: rests come before the grid.
const FREE: Strictness = Strictness { usual: false, grid: false };
const ON_GRID: Strictness = Strictness { usual: false, grid: true };

/// The same wait of all batches that are made alike.
type Rest = Vec<usize>;

/// A plan whose rests are nearer to the usual, where one is found.
pub(in crate::plan) fn firm(problem: &Problem, layout: Layout, effort: Effort) -> Layout {
    let mut asked = problem.clone();
    let mut trials = TRIALS / problem.tasks.len().max(1);
    for rest in &rests(problem, &layout) {
        if stopped(effort.watch) {
            return layout;
        }
        if let Some(firmer) = firmer(&asked, rest, &mut trials) {
            asked = firmer;
        }
    }
    let found = [ON_GRID, FREE];
    let found = found.iter().filter_map(|strict| {
        let found = waves::best(&asked, *strict, effort)?;
        problem.broken(&found).is_empty().then_some(found)
    });
    let best = found.min_by_key(|found| problem.short(&found.starts));
    match best {
        Some(found) if worth(problem, &found.starts) < worth(problem, &layout.starts) => {
            found
        }
        Some(_) | None => layout,
    }
}

/// The waits that are shorter than usual, those that lose most first.
fn rests(problem: &Problem, layout: &Layout) -> Vec<Rest> {
    let mut place = BTreeMap::new();
    for (family, batches) in problem.families.iter().enumerate() {
        for task in batches.iter().flat_map(|batch| batch.iter().enumerate()) {
            place.insert(*task.1, (family, task.0));
        }
    }
    let mut groups: BTreeMap<_, (i32, Rest)> = BTreeMap::new();
    for (at, link) in problem.links.iter().enumerate() {
        let Some(usual) = link.usual else { continue };
        // What is in no family stands alone.
        let of = |task: usize| place.get(&task).copied().ok_or(task);
        let (sum, rest) = groups.entry((of(link.from), of(link.to))).or_default();
        *sum += (usual - problem.gap(link, &layout.starts)).max(0);
        rest.push(at);
    }
    let mut rests: Vec<(i32, Rest)> =
        groups.into_values().filter(|(short, _)| *short > 0).collect();
    rests.sort_by_key(|(short, rest)| (-short, rest.first().copied()));
    rests.into_iter().map(|(_, rest)| rest).collect()
}

/// The question with one wait as near to usual as fits; `None` where it cannot be longer.
fn firmer(asked: &Problem, rest: &Rest, trials: &mut usize) -> Option<Problem> {
    let first = &asked.links[*rest.first()?];
    let most = first.most.unwrap_or(i32::MAX);
    let (least, usual) = (first.least, first.usual?.min(most));
    let mut at_least = |minutes: i32| {
        *trials = trials.checked_sub(1)?;
        let mut firmer = asked.clone();
        for at in rest {
            let link = &mut firmer.links[*at];
            link.least = link.least.max(minutes.min(link.most.unwrap_or(minutes)));
        }
        waves::any(&firmer, FREE).map(|_| firmer)
    };
    if let Some(firmer) = at_least(usual) {
        return Some(firmer);
    }
    let (mut low, mut high) = (0, (usual - least) / STEP);
    let mut found = None;
    while high - low > 1 {
        let middle = i32::midpoint(low, high);
        match at_least(least + middle * STEP) {
            Some(firmer) => (low, found) = (middle, Some(firmer)),
            None => high = middle,
        }
    }
    found
}
