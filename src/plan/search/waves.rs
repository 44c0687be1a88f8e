//! A class in waves: what several groups do alike they do together, as far as what is shared
//! lets them. In how many goes each task is done is tried out, the fewest first.

use std::collections::BTreeSet;

use crate::plan::at_home::latest::as_usual;
use crate::plan::question::problem::{Layout, Link, Problem};

use super::bounds;
use super::first::{in_order, lay, ordered};
use super::merge::{Goes, Merged, fewest, merge, settle};
use super::polish::{Polish, Worth, worth};
use super::solve::{Effort, stopped};
use super::solver::{Aim, Found, Search, search};

/// So many ways of dividing a class into goes are looked at.
const MOST_WAYS: usize = 160;
/// Of a class with so many batches more, each plan is a look at fewer ways.
const FEW: usize = 8;
/// Orders of a first plan that are drawn by lot.
const DRAWN: u32 = 4;
/// The best so many are polished.
const POLISHED: usize = 5;
/// The search on the question of one way may take so much of the whole effort.
const SHARE: u64 = 16;

/// Counts something of a plan by its starts.
type Count = fn(&Problem, &[i32]) -> i32;
/// What is made less once the moments are few, and what counts it.
const AFTER_MOMENTS: [(Aim, Count); 2] =
    [(Aim::Short, Problem::short), (Aim::Waiting, Problem::waiting)];

/// How far a plan goes to fit, what is wanted first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) struct Strictness {
    /// No wait is shorter than usual.
    pub(in crate::plan) usual: bool,
    /// What is begun begins on the grid.
    pub(in crate::plan) grid: bool,
}

/// In this order: rests rather than the grid.
pub(in crate::plan) const ORDER: [Strictness; 4] = [
    Strictness { usual: true, grid: true },
    Strictness { usual: true, grid: false },
    Strictness { usual: false, grid: true },
    Strictness { usual: false, grid: false },
];

/// One way of dividing, with its best plan so far.
struct Tried {
    worth: Worth,
    merged: Merged,
    layout: Layout,
}

/// The first sound plan of a class in goes.
pub(in crate::plan) fn any(problem: &Problem, strict: Strictness) -> Option<Layout> {
    let asked = asked(problem, strict);
    let batches: usize = problem.families.iter().map(Vec::len).sum();
    let most = (MOST_WAYS / (1 + batches / FEW)).max(FEW);
    let found = ways(problem).into_iter().take(most).find_map(|goes| {
        let merged = question(&asked, &goes, strict)?;
        Some((first_of(&merged.problem, true)?, merged))
    });
    let (layout, merged) = found?;
    sound(problem, merged.whole(&layout))
}

/// The best plan of a class in goes that is found.
pub(in crate::plan) fn best(
    problem: &Problem,
    strict: Strictness,
    effort: Effort,
) -> Option<Layout> {
    let asked = asked(problem, strict);
    let mut tried: Vec<Tried> = Vec::new();
    for goes in ways(problem) {
        if stopped(effort.watch) && !tried.is_empty() {
            break;
        }
        let Some(merged) = question(&asked, &goes, strict) else { continue };
        let Some(layout) = first_of(&merged.problem, false) else { continue };
        let Some(whole) = sound(problem, merged.whole(&layout)) else { continue };
        tried.push(Tried { worth: worth(problem, &whole.starts), merged, layout });
    }
    tried.sort_by_key(|tried| tried.worth);
    tried.truncate(POLISHED);
    for own in &mut tried {
        if !stopped(effort.watch) {
            own.polish(problem);
        }
    }
    tried.sort_by_key(|tried| tried.worth);
    let own = tried.first_mut()?;
    own.search(problem, effort);
    sound(problem, own.merged.whole(&own.layout))
}

impl Tried {
    /// Takes a plan of the same question where it is better.
    fn take(&mut self, problem: &Problem, layout: Layout) -> bool {
        let Some(whole) = sound(problem, self.merged.whole(&layout)) else {
            return false;
        };
        let worth = worth(problem, &whole.starts);
        let better = worth < self.worth;
        if better {
            (self.worth, self.layout) = (worth, layout);
        }
        better
    }

    fn polish(&mut self, problem: &Problem) {
        let weights = self.merged.weights();
        let polish = Polish::new(&self.merged.problem, &weights);
        let layout = polish.polish(self.layout.clone());
        self.take(problem, layout);
    }

    /// Searches for fewer moments; then for less waiting at no more of them: with what begins
    /// together beginning together, and with the moments where they are.
    fn search(&mut self, problem: &Problem, effort: Effort) {
        let effort = Effort { work: effort.work / SHARE, ..effort };
        let own = self.merged.problem.clone();
        let bound = bounds::moments(&own);
        if own.moments(&self.layout.starts) > bound {
            self.seek(problem, &own, (Aim::Moments, bound), effort);
        }
        for hold in [together, at_moments, together] {
            for (aim, value) in AFTER_MOMENTS {
                if stopped(effort.watch) {
                    return;
                }
                let mut held = own.clone();
                hold(&mut held, &self.layout);
                if value(&held, &self.layout.starts) > 0 && bounds::narrow(&mut held) {
                    self.seek(problem, &held, (aim, 0), effort);
                }
            }
        }
    }

    /// Takes what a search finds of the question as it is held, and polishes it.
    fn seek(
        &mut self,
        problem: &Problem,
        held: &Problem,
        (aim, bound): (Aim, i32),
        effort: Effort,
    ) {
        let ask = Search { aim, bound, from: Some(&self.layout), effort };
        if let Found::Best(layout) | Found::Some(layout, _) = search(held, &ask)
            && self.take(problem, layout)
        {
            self.polish(problem);
        }
    }
}

/// A plan that keeps to every rule.
pub(in crate::plan) fn sound(problem: &Problem, layout: Layout) -> Option<Layout> {
    problem.broken(&layout).is_empty().then_some(layout)
}

/// What begins at the same minute goes on doing so.
fn together(problem: &mut Problem, layout: &Layout) {
    let mut first: std::collections::BTreeMap<i32, usize> = Default::default();
    for (task, start) in layout.starts.iter().enumerate() {
        let minutes = problem.tasks[task].minutes;
        if minutes == 0 {
            continue;
        }
        if let Some(from) = first.get(start) {
            let apart = -problem.tasks[*from].minutes;
            problem.links.push(Link {
                from: *from,
                to: task,
                least: apart,
                usual: None,
                most: Some(apart),
                crosses: true,
            });
        } else {
            first.insert(*start, task);
        }
    }
}

/// What takes time begins at one of the plan's moments.
fn at_moments(problem: &mut Problem, layout: &Layout) {
    let begun: BTreeSet<i32> = problem
        .tasks
        .iter()
        .zip(&layout.starts)
        .filter(|(task, _)| task.minutes > 0)
        .map(|(_, start)| *start)
        .collect();
    for task in problem.tasks.iter_mut().filter(|task| task.minutes > 0) {
        let kept = begun.iter().filter(|minute| task.may_start(**minute));
        task.starts = kept.map(|minute| (*minute, *minute)).collect();
    }
}

/// The question as strictly as it is asked.
fn asked(problem: &Problem, strict: Strictness) -> Problem {
    if strict.usual { as_usual(problem) } else { problem.clone() }
}

/// The question of one way, on its grid, with its ranges narrowed; `None` where nothing is
/// left.
fn question(asked: &Problem, goes: &Goes, strict: Strictness) -> Option<Merged> {
    let mut merged = merge(asked, goes)?;
    if strict.grid {
        on_grid(&mut merged.problem);
    }
    (bounds::narrow(&mut merged.problem) && bounds::overload(&merged.problem).is_none())
        .then_some(merged)
}

/// Lets every task that has some room begin on the grid.
pub(in crate::plan) fn on_grid(problem: &mut Problem) {
    let grid = problem.grid.max(1);
    let mut tight = vec![false; problem.tasks.len()];
    for link in &problem.links {
        if link.most.is_some_and(|most| most - link.least < grid) {
            tight[link.to] = true;
        }
    }
    for (task, tight) in problem.tasks.iter_mut().zip(tight) {
        if task.minutes > 0 && !tight && task.starts.iter().any(|(from, to)| from < to) {
            task.grid = grid;
        }
    }
}

/// Whether something that has room, when every rest is as usual, begins off the grid.
pub(in crate::plan) fn leaves_grid(problem: &Problem, layout: &Layout) -> bool {
    let grid = problem.grid.max(1);
    let mut usual = problem.clone();
    for link in &mut usual.links {
        let most = link.most.unwrap_or(i32::MAX);
        link.least = link.least.max(link.usual.unwrap_or(link.least).min(most));
    }
    on_grid(&mut usual);
    let mut placed = usual.tasks.iter().zip(&layout.starts);
    placed.any(|(task, start)| task.grid == grid && start.rem_euclid(grid) != 0)
}

/// A first plan: tasks in several orders, with the usual waits and with the shortest. Whether
/// the first sound one will do.
fn first_of(problem: &Problem, any: bool) -> Option<Layout> {
    let mut orders = vec![in_order(problem)];
    let heads: Vec<i32> =
        problem.tasks.iter().map(|task| task.span().map_or(0, |span| span.0)).collect();
    orders.push(ordered(problem, |task| -heads[task]));
    orders.push(ordered(problem, |_| 0));
    orders.extend((1..=DRAWN).map(|lot| drawn(problem, lot)));
    let mut best: Option<((i32, i32, i32), Layout)> = None;
    for (at, order) in orders.into_iter().enumerate() {
        // What is drawn by lot is a help where there is nothing yet.
        if at > 2 && best.is_some() {
            break;
        }
        for usual in [true, false] {
            let Some(layout) = lay(problem, std::slice::from_ref(&order), usual) else {
                continue;
            };
            if !problem.broken(&layout).is_empty() {
                continue;
            }
            let starts = &layout.starts;
            let worth =
                (problem.short(starts), problem.moments(starts), problem.waiting(starts));
            if best.as_ref().is_none_or(|(best, _)| worth < *best) {
                best = Some((worth, layout));
            }
            if any {
                return best.map(|(_, layout)| layout);
            }
            break;
        }
    }
    best.map(|(_, layout)| layout)
}

/// An order by the ways that tasks have before them, shaken: always the same for one lot.
fn drawn(problem: &Problem, lot: u32) -> Vec<usize> {
    let tails = bounds::tails(problem);
    let shake = |task: usize| {
        let seed = u32::try_from(task).unwrap_or(0).wrapping_mul(2_654_435_761) ^ lot;
        let mixed = (seed ^ (seed >> 15)).wrapping_mul(0x2c1b_3c6d);
        i32::try_from((mixed ^ (mixed >> 12)) % 60).unwrap_or(0)
    };
    ordered(problem, |task| tails[task] + shake(task))
}

/// Ways of dividing a class into goes, those with the fewest first.
fn ways(problem: &Problem) -> Vec<Goes> {
    let base = fewest(problem);
    let mut seen = BTreeSet::new();
    let mut found: Vec<Goes> = Vec::new();
    let mut add = |mut goes: Goes| {
        settle(problem, &mut goes);
        if seen.insert(goes.clone()) {
            found.push(goes);
        }
    };
    let most = problem.families.iter().map(Vec::len).max().unwrap_or(1);
    add(base.clone());
    add(sticky(&base, false));
    add(sticky(&base, true));
    let steps: Vec<(usize, usize)> = problem
        .families
        .iter()
        .enumerate()
        .filter_map(|(family, batches)| Some((family, batches.first()?)))
        .flat_map(|(family, batch)| {
            let busy = batch.iter().enumerate();
            busy.filter(|(_, task)| problem.tasks[**task].minutes > 0)
                .map(move |(place, _)| (family, place))
        })
        .collect();
    let least = |goes: &Goes, step: (usize, usize), count: usize| {
        let mut goes = goes.clone();
        let most = problem.families[step.0].len();
        let own = &mut goes[step.0][step.1];
        *own = (*own).max(count.min(most));
        goes
    };
    for count in 2..=most.min(4) {
        let all = |range: &mut dyn Iterator<Item = &(usize, usize)>| {
            range.fold(base.clone(), |goes, step| least(&goes, *step, count))
        };
        add(all(&mut steps.iter()));
        for cut in 0..steps.len() {
            add(all(&mut steps[..cut].iter()));
            add(all(&mut steps[cut..].iter()));
            add(least(&base, steps[cut], count));
        }
    }
    for count in 5..=most {
        add(steps.iter().fold(base.clone(), |goes, step| least(&goes, *step, count)));
    }
    let size = |goes: &Goes| -> usize { goes.iter().flatten().sum() };
    found.sort_by_key(size);
    found.truncate(MOST_WAYS);
    found
}

/// Once divided, divided to the end; or from the beginning.
fn sticky(goes: &Goes, from_end: bool) -> Goes {
    let spread = |own: &Vec<usize>| {
        let mut most = 1;
        let mut own = own.clone();
        let each: Box<dyn Iterator<Item = &mut usize>> = if from_end {
            Box::new(own.iter_mut().rev())
        } else {
            Box::new(own.iter_mut())
        };
        for goes in each {
            most = most.max(*goes);
            *goes = most;
        }
        own
    };
    goes.iter().map(spread).collect()
}
