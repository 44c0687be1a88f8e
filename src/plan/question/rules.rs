//! Whether a layout keeps to every rule of its question.

use super::problem::{Baking, Claim, Layout, Link, Problem, Store};

impl Problem {
    /// Everything that a layout breaks, by name and number; empty where it is sound.
    pub fn broken(&self, layout: &Layout) -> Vec<String> {
        let starts = &layout.starts;
        let mut broken = Vec::new();
        for (task, start) in starts.iter().enumerate() {
            if !self.tasks[task].may_start(*start) {
                broken.push(format!("task {task} may not start at {start}"));
            }
        }
        broken.extend(self.broken_links(starts));
        for (at, pool) in self.pools.iter().enumerate() {
            let loads: Vec<Load> =
                pool.uses.iter().map(|of| self.load(of, starts)).collect();
            if peak(&loads) > pool.capacity {
                broken.push(format!("pool {at} is over its capacity"));
            }
        }
        broken.extend(self.broken_stores(starts));
        broken.extend(self.broken_ovens(layout));
        broken
    }

    fn broken_links(&self, starts: &[i32]) -> Vec<String> {
        let sound = |link: &Link| {
            let gap = self.gap(link, starts);
            let together = link.crosses
                || self.session(starts[link.from]) == self.session(starts[link.to]);
            gap >= link.least && link.most.is_none_or(|most| gap <= most) && together
        };
        let name = |(at, _): (usize, &Link)| format!("link {at} is broken");
        self.links.iter().enumerate().filter(|(_, link)| !sound(link)).map(name).collect()
    }

    fn broken_stores(&self, starts: &[i32]) -> Vec<String> {
        let over = |store: &Store| {
            let loads: Vec<Load> = store
                .stays
                .iter()
                .map(|(link, amount)| self.stay(*link, *amount, starts))
                .collect();
            peak(&loads) > store.capacity
        };
        let name = |(at, _): (usize, &Store)| format!("store {at} is over its capacity");
        self.stores
            .iter()
            .enumerate()
            .filter(|(_, store)| over(store))
            .map(name)
            .collect()
    }

    fn broken_ovens(&self, layout: &Layout) -> Vec<String> {
        let mut broken = Vec::new();
        for oven in 0..self.ovens.count {
            let inside: Vec<&Baking> = self
                .ovens
                .bakes
                .iter()
                .zip(&layout.ovens)
                .filter(|(_, chosen)| **chosen == oven)
                .map(|(bake, _)| bake)
                .collect();
            let loads: Vec<Load> =
                inside.iter().map(|bake| self.baked(bake, &layout.starts)).collect();
            if peak(&loads) > self.ovens.trays {
                broken.push(format!("oven {oven} is over its trays"));
            }
            let bakes: Vec<(&&Baking, &Load)> = inside.iter().zip(&loads).collect();
            let clash = |(at, (bake, load)): (usize, &(&&Baking, &Load))| {
                bakes[..at].iter().any(|(other, with)| {
                    let apart = self.ovens.apart(bake.heat, other.heat);
                    let shares = bake.shares(other, [load.from, with.from]);
                    !shares && load.wider(apart).meets(with)
                })
            };
            if bakes.iter().enumerate().any(clash) {
                broken.push(format!("oven {oven} has two heats at once"));
            }
        }
        if layout.ovens.iter().any(|oven| *oven >= self.ovens.count) {
            broken.push("a bake has no oven".into());
        }
        let mut placed = self.ovens.bakes.iter().zip(&layout.ovens);
        if placed.any(|(bake, oven)| bake.oven.is_some_and(|own| own != *oven)) {
            broken.push("a bake is not in the oven that it is in already".into());
        }
        broken
    }

    /// A use as a stretch of time.
    pub(in crate::plan) fn load(&self, of: &Claim, starts: &[i32]) -> Load {
        let end = self.end_of(of.task, starts) + of.after;
        Load { from: starts[of.task], to: end, amount: of.amount }
    }

    fn stay(&self, link: usize, amount: i32, starts: &[i32]) -> Load {
        let link = &self.links[link];
        Load { from: self.end_of(link.from, starts), to: starts[link.to], amount }
    }

    pub(in crate::plan) fn baked(&self, bake: &Baking, starts: &[i32]) -> Load {
        let of = Claim { task: bake.task, amount: bake.trays, after: self.ovens.after };
        self.load(&of, starts)
    }
}

/// A stretch of time and how much of something it takes.
#[derive(Clone, Copy, Debug)]
pub(in crate::plan) struct Load {
    pub(in crate::plan) from: i32,
    pub(in crate::plan) to: i32,
    pub(in crate::plan) amount: i32,
}

impl Load {
    /// The same with so many minutes more on either side.
    pub(in crate::plan) fn wider(&self, by: i32) -> Self {
        Self { from: self.from - by, to: self.to + by, ..*self }
    }

    /// Whether two stretches have a minute in common.
    pub(in crate::plan) fn meets(&self, other: &Self) -> bool {
        self.from < other.to && other.from < self.to
    }
}

/// The most that is taken at any one time.
pub(in crate::plan) fn peak(loads: &[Load]) -> i32 {
    let at = |time: i32| {
        let there = loads.iter().filter(|load| load.from <= time && time < load.to);
        there.map(|load| load.amount).sum::<i32>()
    };
    loads.iter().map(|load| at(load.from)).max().unwrap_or(0)
}
