//! Shelves as rules for the solver.

use pumpkin_core::variables::{Literal, TransformableVariable};

use crate::plan::question::problem::Store;

use super::{Model, View};

/// Stays on one shelf that are held against each other two by two. Where there are more, only
/// the shortest that each can be is.
const MOST_STAYS: usize = 90;

impl Model<'_> {
    /// At the beginning of each stay, what is there then and it fit on the shelf.
    pub(super) fn shelves(&mut self) {
        for store in &self.problem.stores {
            if store.stays.iter().map(|(_, amount)| amount).sum::<i32>() <= store.capacity
            {
                continue;
            }
            self.shortest_stays(store);
            if store.stays.len() > MOST_STAYS {
                continue;
            }
            for (at, (link, amount)) in store.stays.iter().enumerate() {
                let others = store.stays.iter().enumerate();
                let others =
                    others.filter(|(other, _)| *other != at).map(|(_, stay)| *stay);
                let there: Vec<View> = others
                    .filter_map(|(other, amount)| {
                        let there = self.there(other, *link)?;
                        Some(there.get_integer_variable().scaled(amount))
                    })
                    .collect();
                self.at_most(there, store.capacity - amount);
            }
        }
    }

    /// What the shortest stays take, whatever the plan: a rule that is seen through at once.
    fn shortest_stays(&mut self, store: &Store) {
        let uses: Vec<(View, i32, i32)> = store
            .stays
            .iter()
            .map(|(link, amount)| (&self.problem.links[*link], *amount))
            .filter(|(link, _)| link.least > 0)
            .map(|(link, amount)| {
                let minutes = self.problem.tasks[link.from].minutes;
                (self.starts[link.from].offset(minutes), link.least, amount)
            })
            .collect();
        self.share(&uses, store.capacity);
    }

    /// Whether one stay lasts when another begins; `None` where it never can.
    fn there(&mut self, stay: usize, other: usize) -> Option<Literal> {
        let (stay, other) = (&self.problem.links[stay], &self.problem.links[other]);
        let minutes = |task: usize| self.problem.tasks[task].minutes;
        let span = |task: usize| self.problem.tasks[task].span();
        let (begin, end) = (span(stay.from)?, span(stay.to)?);
        let at = span(other.from)?;
        let (ends, at_ends) = (minutes(stay.from), minutes(other.from));
        if begin.0 + ends > at.1 + at_ends || end.1 <= at.0 + at_ends {
            return None;
        }
        let from =
            vec![self.starts[stay.from].scaled(1), self.starts[other.from].scaled(-1)];
        let begun = self.whether(from, at_ends - ends);
        let to = vec![self.starts[other.from].scaled(1), self.starts[stay.to].scaled(-1)];
        let lasts = self.whether(to, -at_ends - 1);
        let there = self.literal();
        self.any_of(vec![!begun, !lasts, there]);
        Some(there)
    }
}
