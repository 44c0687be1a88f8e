//! Ovens as rules for the solver.

use pumpkin_constraints::{equals, less_than_or_equals};
use pumpkin_core::predicate;
use pumpkin_core::variables::{DomainId, Literal, TransformableVariable};

use super::{Model, View};

impl Model<'_> {
    pub(super) fn ovens(&mut self) {
        let ovens = &self.problem.ovens;
        let Some(first) = ovens.bakes.first() else { return };
        let each: i32 = first.trays;
        let minutes = |task: usize| self.problem.tasks[task].minutes + ovens.after;
        let all: Vec<_> = ovens
            .bakes
            .iter()
            .map(|bake| (self.starts[bake.task], minutes(bake.task), bake.trays))
            .collect();
        let count = i32::try_from(ovens.count).unwrap_or(1);
        let like = ovens.bakes.iter().all(|bake| {
            bake.trays == each && bake.heat == first.heat && bake.phases.is_none()
        });
        if like {
            // Like bakes fill like places: which oven a place is in does not matter.
            let places = count * (ovens.trays / each.max(1));
            let uses: Vec<_> =
                all.into_iter().map(|(start, minutes, _)| (start, minutes, 1)).collect();
            self.share(&uses, places);
            return;
        }
        self.share(&all, count * ovens.trays);
        self.choose_ovens();
    }

    /// A copy of each bake's start for each oven. In the ovens it is not in, a copy stands
    /// on a parking place of its own behind the horizon.
    fn choose_ovens(&mut self) {
        let ovens = &self.problem.ovens;
        let free = ovens.bakes.iter().all(|bake| bake.oven.is_none());
        let mut parking = self.horizon + 1;
        for (at, bake) in ovens.bakes.iter().enumerate() {
            let minutes = self.problem.tasks[bake.task].minutes + ovens.after;
            // Ovens are alike, where nothing is in them: the first bake goes into the first.
            let own: Vec<(DomainId, Literal)> =
                (0..ovens.count).map(|_| self.copy(bake.task, parking)).collect();
            let inside: Vec<View> =
                own.iter().map(|(_, there)| there.get_integer_variable()).collect();
            self.at_most(inside.iter().map(|there| there.scaled(-1)).collect(), -1);
            self.at_most(inside, 1);
            let first = (at == 0 && free).then_some(0);
            if let Some(oven) = bake.oven.or(first) {
                self.any_of(own.get(oven).map(|(_, there)| *there).into_iter().collect());
            }
            self.copies.push(own);
            self.parked.push(parking);
            parking += minutes.max(1);
        }
        for oven in 0..ovens.count {
            let uses: Vec<_> = ovens
                .bakes
                .iter()
                .enumerate()
                .map(|(at, bake)| {
                    let minutes = self.problem.tasks[bake.task].minutes + ovens.after;
                    (self.copies[at][oven].0.scaled(1), minutes, bake.trays)
                })
                .collect();
            self.share(&uses, ovens.trays);
            self.heats(&uses);
        }
    }

    fn copy(&mut self, task: usize, parking: i32) -> (DomainId, Literal) {
        let ranges = self.problem.tasks[task].starts.iter();
        let mut values: Vec<i32> =
            ranges.flat_map(|(first, last)| *first..=*last).collect();
        let grid = self.problem.tasks[task].grid;
        values.retain(|value| value.rem_euclid(grid) == 0);
        values.push(parking);
        let copy = self.one_of(values);
        let there = self.literal_for(predicate![copy <= parking - 1]);
        let start = self.starts[task];
        self.post(|_, tag| {
            Box::new(move |solver| {
                let same = equals(vec![copy.scaled(1), start.scaled(-1)], 0, tag);
                solver.add_constraint(same).implied_by(there);
            })
        });
        (copy, there)
    }

    /// Bakes that may not share an oven are never in one at once; those that may where they
    /// begin together do that, or are not either.
    fn heats(&mut self, uses: &[(View, i32, i32)]) {
        let problem = self.problem;
        let bake = |at: usize| &problem.ovens.bakes[at];
        let pairs = (0..uses.len())
            .flat_map(|one| (one + 1..uses.len()).map(move |other| (one, other)))
            .filter(|(one, other)| !bake(*one).shares(bake(*other), [0, 1]));
        for (one, other) in pairs {
            let apart = problem.ovens.apart(bake(one).heat, bake(other).heat);
            let longer = |of: (View, i32, i32)| (of.0, of.1 + apart, of.2);
            let first = self.literal();
            self.before(longer(uses[one]), uses[other].0, first);
            let mut second = !first;
            if bake(one).shares(bake(other), [0, 0]) {
                let together = self.literal();
                second = self.literal();
                self.any_of(vec![first, second, together]);
                let same = |of: (View, i32, i32)| (of.0, 0, of.2);
                self.before(same(uses[one]), uses[other].0, together);
                self.before(same(uses[other]), uses[one].0, together);
            }
            self.before(longer(uses[other]), uses[one].0, second);
        }
    }

    /// One use is over when the other starts, where the literal holds.
    fn before(&mut self, one: (View, i32, i32), other: View, holds: Literal) {
        let (start, minutes, _) = one;
        self.post(|_, tag| {
            Box::new(move |solver| {
                let terms = vec![start.scaled(1), other.scaled(-1)];
                let constraint = less_than_or_equals(terms, -minutes, tag);
                solver.add_constraint(constraint).implied_by(holds);
            })
        });
    }
}
