//! A plan as it is announced: demonstrations late, groups that are alike numbered by when they
//! begin.

use std::collections::BTreeMap;

use crate::plan::question::class::ClassDraft;
use crate::plan::question::kind::Kind;
use crate::plan::question::problem::Layout;

impl ClassDraft {
    /// A plan as it is announced: demonstrations late, groups numbered by when they begin. What
    /// was announced before stays.
    pub(in crate::plan) fn tidied(&self, layout: &Layout) -> Layout {
        if self.problem.announced.is_empty() {
            self.settle(&self.renumber(layout))
        } else {
            layout.clone()
        }
    }

    /// Moves demonstrations that are no part of a batch, and what is told before a step, as
    /// late as nothing forbids: what is shown should be fresh when it is done. No value of the plan changes.
    fn settle(&self, layout: &Layout) -> Layout {
        let mut layout = layout.clone();
        let told = self.gatherings.iter().filter(|of| of.kind == Kind::Talk);
        let shown = self.shows.iter().rev().map(|show| show.task);
        for task in shown.chain(told.map(|of| of.task)) {
            let problem = &self.problem;
            let minutes = problem.tasks[task].minutes;
            let after = problem.links.iter().filter(|link| link.from == task);
            let latest = after.map(|link| layout.starts[link.to] - minutes).min();
            let now = layout.starts[task];
            let moments = problem.moments(&layout.starts);
            let fits = |start: &i32| {
                let mut moved = layout.clone();
                moved.starts[task] = *start;
                problem.moments(&moved.starts) <= moments
                    && problem.broken(&moved).is_empty()
            };
            let grid = problem.grid.max(1);
            let on_grid = |start: &i32| (start % grid == 0) == (now % grid == 0);
            let mut later = latest.into_iter().flat_map(|latest| (now..=latest).rev());
            let found = later.find(|start| on_grid(start) && fits(start));
            layout.starts[task] = found.unwrap_or(now);
        }
        layout
    }
}

impl ClassDraft {
    /// Numbers groups that are alike by when they begin: the first to begin is the first.
    /// Only names change places.
    fn renumber(&self, layout: &Layout) -> Layout {
        let alike = self.alike.iter();
        let tasks: Vec<Vec<usize>> = alike
            .map(|group| {
                let own = self.units.iter().filter(|unit| unit.who.is_in(*group));
                own.flat_map(|unit| unit.batch.tasks.clone()).collect()
            })
            .collect();
        if tasks.iter().any(|own| own.len() != tasks[0].len()) {
            return layout.clone();
        }
        let starts = |own: &Vec<usize>| -> Vec<i32> {
            own.iter().map(|task| layout.starts[*task]).collect()
        };
        let mut order: Vec<&Vec<usize>> = tasks.iter().collect();
        order.sort_by_key(|own| starts(own));
        let mut bakes = BTreeMap::new();
        for (at, bake) in self.problem.ovens.bakes.iter().enumerate() {
            bakes.insert(bake.task, at);
        }
        let mut renumbered = layout.clone();
        for (to, from) in tasks.iter().zip(order) {
            for (to, from) in to.iter().zip(from) {
                renumbered.starts[*to] = layout.starts[*from];
                if let (Some(to), Some(from)) = (bakes.get(to), bakes.get(from)) {
                    renumbered.ovens[*to] = layout.ovens[*from];
                }
            }
        }
        if self.problem.broken(&renumbered).is_empty() {
            renumbered
        } else {
            layout.clone()
        }
    }
}
