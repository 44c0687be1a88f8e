//! How the plan of a bake at home is found: the one nearest to the recipe's own times.
//!
//! Seen backwards in time, the latest start is the earliest end. So the first plan is laid
//! out backwards from the moment at which all is ready, and the bound of the earliest end,
//! read backwards, says which start none can beat. What is left between the two is searched.
//! A hold elsewhere is used or not, and each choice is a question of its own: a [`Way`].

use crate::plan::question::problem::{Goal, Layout, Link, Problem, Task};
use crate::plan::search::solve::{Answer, Effort, Plan, stopped};
use crate::plan::search::solver::{Aim, Found, Search, search};
use crate::plan::search::{bounds, first};

/// A minute by which a wait is shorter than usual makes the plan a minute shorter; counted
/// twice, what is wanted is that all waits together are as near to their usual times as can
/// be, and a wait is shortened only where that spares more waiting elsewhere.
pub(in crate::plan) const SHORT: i32 = 2;

/// One choice of the holds that are used, and what is known of it.
pub(in crate::plan) struct Way {
    problem: Problem,
    /// No plan takes fewer minutes from its first start until all is ready.
    bound: i32,
    best: Option<Layout>,
    /// Whether it is proven that it has no plan.
    never: bool,
}

impl Way {
    /// The way with its first plan, if one is found: first with the recipe's own times, then
    /// with the shortest.
    pub(in crate::plan) fn new(mut problem: Problem) -> Self {
        let Goal::LatestStart(ready) = problem.goal else {
            return Self { problem, bound: 0, best: None, never: false };
        };
        let usual = as_usual(&problem);
        let chain = chain(&usual);
        if !bounds::narrow(&mut problem) {
            return Self { problem, bound: i32::MAX, best: None, never: true };
        }
        let bound = chain.max(bounds::earliest_end(&mirror(&problem, ready)));
        let firsts = [&usual, &problem].map(|problem| firsts(problem, ready));
        let sound = firsts.into_iter().flatten();
        let sound = sound.filter(|layout| problem.broken(layout).is_empty());
        let best = sound.min_by_key(|layout| value(&problem, layout));
        Self { problem, bound, best, never: false }
    }

    /// What its best plan is worth.
    fn value(&self) -> Option<i32> {
        self.best.as_ref().map(|best| value(&self.problem, best))
    }

    /// Searches for a better plan, or for any.
    fn improve(&mut self, effort: Effort) {
        if self.never || self.value().is_some_and(|value| value <= self.bound) {
            return;
        }
        let ask = Search {
            aim: Aim::Nearest,
            bound: self.bound,
            from: self.best.as_ref(),
            effort,
        };
        match search(&self.problem, &ask) {
            Found::Best(found) => {
                self.bound = value(&self.problem, &found);
                self.take(found);
            }
            Found::Some(found, bound) => {
                self.bound = self.bound.max(bound);
                self.take(found);
            }
            Found::Never => self.never = self.best.is_none(),
            Found::Unknown => {}
        }
    }

    /// What the solver says is believed only where it keeps to every rule.
    fn take(&mut self, found: Layout) {
        let better = self.value().is_none_or(|best| value(&self.problem, &found) < best);
        if better && self.problem.broken(&found).is_empty() {
            self.best = Some(found);
        }
    }
}

fn firsts(problem: &Problem, ready: i32) -> Vec<Layout> {
    let mut narrowed = problem.clone();
    if !bounds::narrow(&mut narrowed) {
        return Vec::new();
    }
    let back = first::first(&mirror(&narrowed, ready));
    let back = back.map(|layout| mirror_back(&narrowed, layout, ready));
    back.into_iter().chain(first::first(&narrowed)).collect()
}

/// The longest way through the steps by the recipe's own times.
pub(in crate::plan) fn chain(usual: &Problem) -> i32 {
    bounds::tails(usual).into_iter().max().unwrap_or(0)
}

/// The best plan of several ways, and which way it goes. Each is searched as long as it
/// could still win; `base` is what the recipe's own times take.
pub(in crate::plan) fn choose(
    ways: &mut [Way],
    base: i32,
    effort: Effort,
) -> (usize, Answer) {
    let leader = |ways: &[Way]| {
        let values = ways.iter().enumerate();
        values.filter_map(|(at, way)| Some((way.value()?, at))).min()
    };
    for at in 0..ways.len() {
        let wins = leader(ways).is_none_or(|(best, _)| ways[at].bound < best);
        if effort.work > 0 && wins && !stopped(effort.watch) {
            ways[at].improve(effort);
        }
    }
    let Some((least, at)) = leader(ways) else {
        let never = ways.iter().all(|way| way.never);
        return (0, if never { Answer::Never } else { Answer::Unknown });
    };
    let bound = ways.iter().filter(|way| !way.never).map(|way| way.bound).min();
    let way = &ways[at];
    let Some(best) = way.best.clone() else { return (0, Answer::Unknown) };
    let layout = settle(&way.problem, best);
    let second = way.problem.second(&layout.starts);
    let (short, moments) =
        (way.problem.short(&layout.starts), way.problem.moments(&layout.starts));
    let plan = Plan {
        short,
        moments,
        moments_bound: moments,
        off_grid: false,
        layout,
        waiting: least - base,
        waiting_bound: bound.unwrap_or(least).min(least) - base,
        second,
        second_bound: second,
    };
    (at, Answer::Fits(Box::new(plan)))
}

/// Whether any way has a plan.
pub(in crate::plan) fn any(ways: &[Way]) -> bool {
    ways.iter().any(|way| way.best.is_some())
}

/// Whether any way could have one.
pub(in crate::plan) fn open(ways: &[Way]) -> bool {
    ways.iter().any(|way| !way.never)
}

/// How far a plan is from the recipe's own times: for steps in one row, minutes by which
/// waits are longer, and by which they are shorter, over what the row takes at least.
fn value(problem: &Problem, layout: &Layout) -> i32 {
    problem.second(&layout.starts) + SHORT * problem.short(&layout.starts)
}

/// The same question where no wait is shorter than its recipe has it.
pub(in crate::plan) fn as_usual(problem: &Problem) -> Problem {
    let mut problem = problem.clone();
    for link in &mut problem.links {
        let usual = link.usual.unwrap_or(0);
        let usual = link.most.map_or(usual, |most| usual.min(most));
        link.least = link.least.max(usual);
    }
    problem
}

/// The same question with time running backwards from `ready`.
fn mirror(problem: &Problem, ready: i32) -> Problem {
    let span = |minutes: i32| {
        move |(first, last): &(i32, i32)| {
            (ready - last - minutes, ready - first - minutes)
        }
    };
    let task = |task: &Task| Task {
        minutes: task.minutes,
        starts: task.starts.iter().rev().map(span(task.minutes)).collect(),
        grid: 1,
    };
    let link = |link: &Link| Link { from: link.to, to: link.from, ..link.clone() };
    Problem {
        sessions: problem.sessions.iter().rev().map(span(0)).collect(),
        tasks: problem.tasks.iter().map(task).collect(),
        links: problem.links.iter().map(link).collect(),
        units: problem
            .units
            .iter()
            .rev()
            .map(|unit| unit.iter().rev().copied().collect())
            .collect(),
        goal: Goal::EarliestEnd,
        ..problem.clone()
    }
}

fn mirror_back(problem: &Problem, layout: Layout, ready: i32) -> Layout {
    let starts = layout.starts.iter().zip(&problem.tasks);
    let starts = starts.map(|(start, task)| ready - start - task.minutes).collect();
    Layout { starts, ..layout }
}

/// Moves every task as late as nothing forbids, the last first: what is made beside the
/// dough is made when it is wanted. Neither the first start nor the waits get worse.
fn settle(problem: &Problem, mut layout: Layout) -> Layout {
    let first = layout.starts.iter().min().copied().unwrap_or(0);
    let before = value(problem, &layout);
    for task in problem.units.iter().flatten().rev() {
        let now = layout.starts[*task];
        let after = problem.links.iter().filter(|link| link.from == *task);
        let latest =
            after.map(|link| layout.starts[link.to] - problem.tasks[*task].minutes);
        let Some(latest) = latest.min().filter(|_| now > first) else { continue };
        let fits = |start: &i32| {
            let mut moved = layout.clone();
            moved.starts[*task] = *start;
            value(problem, &moved) <= before && problem.broken(&moved).is_empty()
        };
        let found = (now + 1..=latest).rev().find(fits);
        layout.starts[*task] = found.unwrap_or(now);
    }
    layout
}
