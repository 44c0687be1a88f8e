//! A sound plan made better by small moves: a task to a minute at which something begins
//! anyway, all that follows earlier, all that comes before later.

use std::collections::BTreeSet;

use crate::plan::question::problem::{Layout, Problem};

/// How good a plan is, the smaller the better, in the order in which it matters: minutes by
/// which waits are shorter than usual, what is not as announced, different moments, minutes of
/// waiting, the goal.
pub(in crate::plan) type Worth = (i32, i32, i32, i32, i32);

/// What a plan of the whole question is worth.
pub(in crate::plan) fn worth(problem: &Problem, starts: &[i32]) -> Worth {
    (
        problem.short(starts),
        problem.changed(starts),
        problem.moments(starts),
        problem.waiting(starts),
        problem.second(starts),
    )
}

/// Passes through all moves.
const MOST_PASSES: usize = 6;
/// By how many steps of the grid many tasks are moved at once.
const STEPS: [i32; 8] = [-12, -6, -3, -1, 1, 3, 6, 12];

pub(in crate::plan) struct Polish<'a> {
    problem: &'a Problem,
    /// How many tasks of the whole question each task stands for.
    weights: &'a [i32],
    counted: Vec<Vec<usize>>,
    /// The tasks that move with each task.
    tied: Vec<Vec<usize>>,
    into: Vec<Vec<usize>>,
    out: Vec<Vec<usize>>,
}

impl<'a> Polish<'a> {
    pub(in crate::plan) fn new(problem: &'a Problem, weights: &'a [i32]) -> Self {
        let count = problem.tasks.len();
        let (mut into, mut out) = (vec![Vec::new(); count], vec![Vec::new(); count]);
        for (at, link) in problem.links.iter().enumerate() {
            into[link.to].push(at);
            out[link.from].push(at);
        }
        let mut own = Self {
            problem,
            weights,
            counted: problem.counted(),
            tied: Vec::new(),
            into,
            out,
        };
        own.tied = (0..count).map(|task| own.tied_to(task)).collect();
        own
    }

    /// Tasks that follow one another without any room between.
    fn tied_to(&self, task: usize) -> Vec<usize> {
        let mut found = vec![task];
        let mut at = 0;
        while at < found.len() {
            let task = found[at];
            let links = self.into[task].iter().chain(&self.out[task]);
            for link in links.map(|link| &self.problem.links[*link]) {
                let tight = link.most.is_some_and(|most| most - link.least < 2);
                let other = if link.from == task { link.to } else { link.from };
                if tight && !found.contains(&other) {
                    found.push(other);
                }
            }
            at += 1;
        }
        found
    }

    pub(in crate::plan) fn worth(&self, starts: &[i32]) -> Worth {
        let problem = self.problem;
        let clock = |task: usize, minute: i32| {
            minute - problem.pause_before(problem.session(starts[task]))
        };
        let late = |(task, links): (usize, &Vec<usize>)| {
            let ready = links.iter().map(|at| {
                let link = &problem.links[*at];
                clock(link.from, problem.end_of(link.from, starts))
                    + link.usual.unwrap_or(0)
            });
            let late = (clock(task, starts[task]) - ready.max()?).max(0);
            Some(late * self.weights[task])
        };
        let waiting = self.counted.iter().enumerate().filter_map(late).sum();
        (
            problem.short(starts),
            problem.changed(starts),
            problem.moments(starts),
            waiting,
            problem.second(starts),
        )
    }

    /// The plan after all moves that help; the same plan always becomes the same.
    pub(in crate::plan) fn polish(&self, layout: Layout) -> Layout {
        let mut best = (self.worth(&layout.starts), layout);
        for _ in 0..MOST_PASSES {
            let before = best.0;
            for task in 0..self.problem.tasks.len() {
                self.one(task, &mut best);
            }
            self.many(&mut best);
            if best.0 == before {
                break;
            }
        }
        best.1
    }

    /// Tries a plan with these tasks moved; whether it is taken.
    fn take(&self, moved: &[usize], by: i32, best: &mut (Worth, Layout)) -> bool {
        if by == 0 || moved.is_empty() {
            return false;
        }
        let mut starts = best.1.starts.clone();
        for task in moved {
            starts[*task] += by;
            if !self.problem.tasks[*task].may_start(starts[*task]) {
                return false;
            }
        }
        let worth = self.worth(&starts);
        if worth >= best.0 {
            return false;
        }
        let layout = Layout { starts, ovens: best.1.ovens.clone() };
        let layout = match self.problem.broken(&layout).is_empty() {
            true => layout,
            false => {
                let Some(ovens) = super::ovens::again(self.problem, &layout.starts)
                else {
                    return false;
                };
                let layout = Layout { ovens, ..layout };
                if !self.problem.broken(&layout).is_empty() {
                    return false;
                }
                layout
            }
        };
        *best = (worth, layout);
        true
    }

    /// One task to each moment that there is anyway, or as near as can be to its neighbours.
    fn one(&self, task: usize, best: &mut (Worth, Layout)) {
        let starts = &best.1.starts;
        let (mut low, mut high) = (i32::MIN, i32::MAX);
        for link in self.into[task].iter().map(|at| &self.problem.links[*at]) {
            let end = self.problem.end_of(link.from, starts);
            low = low.max(end + link.least);
        }
        let minutes = self.problem.tasks[task].minutes;
        for link in self.out[task].iter().map(|at| &self.problem.links[*at]) {
            high = high.min(starts[link.to] - link.least - minutes);
        }
        let own = &self.problem.tasks[task];
        let mut to: BTreeSet<i32> = starts
            .iter()
            .copied()
            .filter(|minute| (low..=high).contains(minute))
            .collect();
        to.extend(own.next(low).filter(|at| *at <= high));
        to.extend(own.last(high).filter(|at| *at >= low));
        for minute in to {
            let by = minute - best.1.starts[task];
            self.take(&self.tied[task], by, best);
        }
    }

    /// All that begins from a moment on, what a task waits for, or what waits for it.
    fn many(&self, best: &mut (Worth, Layout)) {
        let grid = self.problem.tasks.iter().map(|task| task.grid).max().unwrap_or(1);
        let moments: BTreeSet<i32> = best.1.starts.iter().copied().collect();
        for moment in moments {
            for step in STEPS {
                let session = self.problem.session(moment);
                let late = |task: &usize| {
                    let start = best.1.starts[*task];
                    start >= moment && self.problem.session(start) == session
                };
                let moved: Vec<usize> =
                    (0..self.problem.tasks.len()).filter(late).collect();
                self.take(&moved, step * grid, best);
            }
        }
        for task in 0..self.problem.tasks.len() {
            for step in STEPS {
                let forward = step < 0;
                let moved = self.reach(task, forward, &best.1.starts);
                self.take(&moved, step * grid, best);
            }
        }
    }

    /// A task with all that follows it, or all that comes before it, in its session.
    fn reach(&self, task: usize, forward: bool, starts: &[i32]) -> Vec<usize> {
        let session = self.problem.session(starts[task]);
        let mut found = self.tied[task].clone();
        let mut seen = vec![false; starts.len()];
        found.iter().for_each(|task| seen[*task] = true);
        let mut at = 0;
        while at < found.len() {
            let links =
                if forward { &self.out[found[at]] } else { &self.into[found[at]] };
            for link in links {
                let link = &self.problem.links[*link];
                let next = if forward { link.to } else { link.from };
                for other in &self.tied[next] {
                    if !seen[*other] && self.problem.session(starts[*other]) == session {
                        seen[*other] = true;
                        found.push(*other);
                    }
                }
            }
            at += 1;
        }
        found
    }
}
