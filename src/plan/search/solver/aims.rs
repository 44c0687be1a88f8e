//! What the solver makes small.

use std::collections::BTreeMap;

use pumpkin_constraints::{equals, maximum};
use pumpkin_core::predicate;
use pumpkin_core::variables::{DomainId, Literal, TransformableVariable};

use crate::plan::at_home::latest::SHORT;
use crate::plan::question::problem::{Goal, Layout};

use super::{Aim, Model, Search, View};

/// More minutes than any plan has.
const MOST_WAITING: i32 = 1_000_000;

impl Model<'_> {
    /// What is made small.
    pub(super) fn aim(&mut self, search: &Search) -> View {
        match search.aim {
            Aim::Waiting => {
                let late = self.lateness();
                self.sum(late, search, |from| self.problem.waiting(&from.starts))
            }
            Aim::Moments => self.moments(search),
            Aim::Nearest => self.nearest(search),
            Aim::Short => {
                let short = self.shortness();
                self.sum(short, search, |from| self.problem.short(&from.starts))
            }
            Aim::Any => self.zero.scaled(1),
            Aim::Second(waiting) => {
                let late = self.lateness();
                if !late.is_empty() {
                    self.at_most(late, waiting);
                }
                self.second(search)
            }
        }
    }

    /// At how many minutes something begins: each minute at which a task may begin is taken or not.
    fn moments(&mut self, search: &Search) -> View {
        let mut taken: BTreeMap<i32, Literal> = BTreeMap::new();
        for (at, task) in self.problem.tasks.iter().enumerate() {
            if task.minutes == 0 {
                continue;
            }
            let start = self.starts[at];
            for minute in task.minutes_to_start() {
                let there = self.literal_for(predicate![start == minute]);
                let taken = *taken.entry(minute).or_insert_with(|| self.literal());
                self.any_of(vec![!there, taken]);
            }
        }
        let terms = taken.values().map(|it| it.get_integer_variable().scaled(1));
        self.sum(terms.collect(), search, |from| self.problem.moments(&from.starts))
    }

    /// The time from the first start, and the minutes by which waits are shorter.
    fn nearest(&mut self, search: &Search) -> View {
        let worth = |from: &Layout| {
            self.problem.second(&from.starts) + SHORT * self.problem.short(&from.starts)
        };
        let lead = self.second(&Search { bound: 0, from: None, ..*search });
        let mut terms = vec![lead];
        terms.extend(self.shortness().into_iter().map(|short| short.scaled(SHORT)));
        self.sum(terms, search, worth)
    }

    /// What is at least the sum of the terms, at least the bound, and no more than the plan to
    /// begin from is `worth`.
    fn sum(
        &mut self,
        mut terms: Vec<View>,
        search: &Search,
        worth: impl Fn(&Layout) -> i32,
    ) -> View {
        let most = search.from.map_or(MOST_WAITING, worth);
        let all = self.integer(search.bound.min(most), most);
        terms.push(all.scaled(-1));
        self.at_most(terms, 0);
        all.scaled(1)
    }

    /// For each wait that can be shorter than usual: by how much.
    fn shortness(&mut self) -> Vec<View> {
        let mut terms = Vec::new();
        for link in &self.problem.links {
            let Some(usual) = link.usual.filter(|usual| *usual > link.least) else {
                continue;
            };
            let minutes = self.problem.tasks[link.from].minutes;
            let (from, to) = (self.starts[link.from], self.starts[link.to]);
            let short = self.integer(0, usual - link.least);
            let gap = vec![from.scaled(1), to.scaled(-1), short.scaled(-1)];
            self.at_most(gap, -minutes - usual);
            terms.push(short.scaled(1));
        }
        terms
    }

    fn second(&mut self, search: &Search) -> View {
        let most =
            search.from.map_or(MOST_WAITING, |from| self.problem.second(&from.starts));
        let aim = self.integer(search.bound.min(most), most);
        for task in self.problem.worked() {
            let start = self.starts[task];
            match self.problem.goal {
                Goal::EarliestEnd => {
                    let minutes = self.problem.tasks[task].minutes;
                    self.at_most(vec![start.scaled(1), aim.scaled(-1)], -minutes);
                }
                Goal::LatestStart(ready) => {
                    self.at_most(vec![start.scaled(-1), aim.scaled(-1)], -ready);
                }
            }
        }
        aim.scaled(1)
    }

    /// For each task that can be late: by how much.
    fn lateness(&mut self) -> Vec<View> {
        let counted = self.problem.counted();
        let late = counted.iter().enumerate().filter(|(_, links)| !links.is_empty());
        late.map(|(task, links)| {
            let late = self.integer(0, MOST_WAITING);
            let ready: Vec<(Vec<View>, i32)> =
                links.iter().map(|link| self.ready(*link)).collect();
            let (mut terms, plus) = match ready.as_slice() {
                [(terms, plus)] => {
                    (terms.iter().map(|term| term.scaled(-1)).collect(), *plus)
                }
                several => (vec![self.latest(several).scaled(-1)], 0),
            };
            terms.extend(self.clock(task));
            terms.push(late.scaled(-1));
            self.at_most(terms, plus);
            late.scaled(1)
        })
        .collect()
    }

    /// A task's start on the clock that stands still between sessions.
    fn clock(&mut self, task: usize) -> Vec<View> {
        let mut terms = vec![self.start(task)];
        for session in 1..self.problem.sessions.len() {
            let pause = self.problem.pause_before(session)
                - self.problem.pause_before(session - 1);
            let opened = self.opened(task, session);
            terms.push(opened.get_integer_variable().scaled(-pause));
        }
        terms
    }

    /// When a link's own time is over: terms, and a number to add.
    fn ready(&mut self, link: usize) -> (Vec<View>, i32) {
        let link = &self.problem.links[link];
        let minutes = self.problem.tasks[link.from].minutes;
        (self.clock(link.from), minutes + link.usual.unwrap_or(0))
    }

    fn latest(&mut self, ready: &[(Vec<View>, i32)]) -> DomainId {
        let span = MOST_WAITING;
        let each: Vec<DomainId> = ready
            .iter()
            .map(|(terms, plus)| {
                let one = self.integer(-span, span);
                let terms: Vec<View> =
                    terms.iter().copied().chain([one.scaled(-1)]).collect();
                let plus = *plus;
                self.post(|_, tag| {
                    Box::new(move |solver| {
                        solver.add_constraint(equals(terms, -plus, tag)).post();
                    })
                });
                one
            })
            .collect();
        let last = self.integer(-span, span);
        self.post(|_, tag| {
            Box::new(move |solver| solver.add_constraint(maximum(each, last, tag)).post())
        });
        last
    }
}
