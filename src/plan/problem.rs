//! A planning question in bare numbers: tasks, the lags between them, and what they share.
//!
//! Minutes count from any moment; nothing here knows recipes, rooms or clocks.

use std::collections::BTreeSet;

/// What is to be planned.
#[derive(Clone, Debug, Default)]
pub struct Problem {
    /// The stretches in which work is done: from, to, in order, not touching. One long
    /// stretch where there are none.
    pub sessions: Vec<(i32, i32)>,
    /// Everything that has a start.
    pub tasks: Vec<Task>,
    /// What must follow what.
    pub links: Vec<Link>,
    /// What several tasks share.
    pub pools: Vec<Pool>,
    /// The ovens.
    pub ovens: Ovens,
    /// Shelves on which things stand between tasks.
    pub stores: Vec<Store>,
    /// Tasks that change places without changing the plan: each list is put in order.
    pub alike: Vec<Vec<usize>>,
    /// Batches that are made alike: for each making its batches, and of each its tasks, in
    /// the same order.
    pub families: Vec<Vec<Vec<usize>>>,
    /// Tasks that belong together, in an order in which each comes after those it waits
    /// for: how the first plan is laid out.
    pub units: Vec<Vec<usize>>,
    /// What is wanted once the waiting is least.
    pub goal: Goal,
    /// In a class, what is begun begins at a multiple of so many minutes where it can be; 0
    /// and 1 for any minute.
    pub grid: i32,
    /// Starts that were announced and are kept where they can be; none where nothing was.
    pub announced: Vec<i32>,
}

/// One task.
#[derive(Clone, Debug)]
pub struct Task {
    /// How long it takes; 0 for a mere moment.
    pub minutes: i32,
    /// When it may start: first and last minute of each stretch, in order.
    pub starts: Vec<(i32, i32)>,
    /// It starts at a multiple of so many minutes, at least 1.
    pub grid: i32,
}

/// `to` starts so many minutes after `from` ends.
#[derive(Clone, Debug)]
pub struct Link {
    /// The earlier task.
    pub from: usize,
    /// The later task.
    pub to: usize,
    /// At least so many minutes.
    pub least: i32,
    /// As the recipe has it; what is longer counts as waiting. `None` where nobody waits.
    pub usual: Option<i32>,
    /// At most so many minutes.
    pub most: Option<i32>,
    /// Whether the two may lie in different sessions.
    pub crosses: bool,
}

/// Something that several tasks share.
#[derive(Clone, Debug)]
pub struct Pool {
    /// How much of it there is.
    pub capacity: i32,
    /// Who uses it.
    pub uses: Vec<Use>,
}

/// One task's use of a pool.
#[derive(Clone, Copy, Debug)]
pub struct Use {
    /// The task.
    pub task: usize,
    /// How much of the pool it takes.
    pub amount: i32,
    /// Minutes after its end until it is free again.
    pub after: i32,
}

/// The ovens: each holds one heat at a time, and a bake goes whole into one of them.
#[derive(Clone, Debug, Default)]
pub struct Ovens {
    /// How many.
    pub count: usize,
    /// Trays that one takes.
    pub trays: i32,
    /// Minutes from a bake's end until its place is free again.
    pub after: i32,
    /// The bakes.
    pub bakes: Vec<Bake>,
}

/// One bake.
#[derive(Clone, Copy, Debug)]
pub struct Bake {
    /// The task.
    pub task: usize,
    /// Its trays, at most what one oven takes.
    pub trays: i32,
    /// Bakes of the same number share an oven.
    pub heat: i32,
    /// The oven, from 0, that it is in already.
    pub oven: Option<usize>,
}

/// A shelf: things stand there from the end of a link's first task to the start of its
/// second.
#[derive(Clone, Debug)]
pub struct Store {
    /// How much it holds.
    pub capacity: i32,
    /// Link, and how much it takes.
    pub stays: Vec<(usize, i32)>,
}

/// What is wanted: in a class once the waiting is least, at home once no wait can be nearer to
/// its recipe.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Goal {
    /// The last task ends as early as can be.
    #[default]
    EarliestEnd,
    /// The first task starts as late as can be before this minute.
    LatestStart(i32),
}

/// When everything starts, and which oven each bake goes into.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layout {
    /// A start for each task.
    pub starts: Vec<i32>,
    /// An oven for each bake, from 0.
    pub ovens: Vec<usize>,
}

impl Task {
    /// The earliest allowed start not before `from`.
    pub fn next(&self, from: i32) -> Option<i32> {
        self.starts.iter().find_map(|(first, last)| {
            let at = self.round_up(from.max(*first));
            (at <= *last).then_some(at)
        })
    }

    /// The latest allowed start not after `to`.
    pub fn last(&self, to: i32) -> Option<i32> {
        self.starts.iter().rev().find_map(|(first, last)| {
            let at = to.min(*last).div_euclid(self.grid) * self.grid;
            (at >= *first).then_some(at)
        })
    }

    /// The first moment of the grid that is not before `minute`.
    pub fn round_up(&self, minute: i32) -> i32 {
        minute.saturating_add(self.grid - 1).div_euclid(self.grid) * self.grid
    }

    /// Earliest and latest start.
    pub fn span(&self) -> Option<(i32, i32)> {
        Some((self.starts.first()?.0, self.starts.last()?.1))
    }

    /// Whether it may start then.
    pub fn may_start(&self, at: i32) -> bool {
        at.rem_euclid(self.grid) == 0
            && self.starts.iter().any(|(first, last)| (*first..=*last).contains(&at))
    }
}

impl Problem {
    /// The number of the session that a minute lies in, or that came last before it.
    pub fn session(&self, minute: i32) -> usize {
        self.sessions.iter().rposition(|(from, _)| *from <= minute).unwrap_or(0)
    }

    /// Minutes of work time before `minute`: the clock stands still between sessions.
    pub fn class_clock(&self, minute: i32) -> i32 {
        minute - self.pause_before(self.session(minute))
    }

    /// All time between sessions before this one.
    pub fn pause_before(&self, session: usize) -> i32 {
        let pairs = self.sessions.iter().zip(self.sessions.iter().skip(1));
        pairs.take(session).map(|(one, next)| next.0 - one.1).sum()
    }

    /// The minute at which a task ends.
    pub fn end_of(&self, task: usize, starts: &[i32]) -> i32 {
        starts[task] + self.tasks[task].minutes
    }

    /// The links into each task that count as its recipe's own times.
    pub fn counted(&self) -> Vec<Vec<usize>> {
        let mut into = vec![Vec::new(); self.tasks.len()];
        for (at, link) in self.links.iter().enumerate() {
            if link.usual.is_some() {
                into[link.to].push(at);
            }
        }
        into
    }

    /// How much later each task starts than the recipe's own times would let it, in
    /// minutes of work time, all together.
    pub fn waiting(&self, starts: &[i32]) -> i32 {
        let late = |(task, links): (usize, &Vec<usize>)| {
            let ready = links.iter().map(|at| {
                let link = &self.links[*at];
                let end = self.end_of(link.from, starts);
                end - self.pause_before(self.session(starts[link.from]))
                    + link.usual.unwrap_or(0)
            });
            let ready = ready.max()?;
            Some((self.class_clock(starts[task]) - ready).max(0))
        };
        self.counted().iter().enumerate().filter_map(late).sum()
    }

    /// By how many minutes all waits together are shorter than their recipes have them.
    pub fn short(&self, starts: &[i32]) -> i32 {
        let gap = |link: &Link| self.gap(link, starts);
        self.links
            .iter()
            .map(|link| link.usual.map_or(0, |usual| (usual - gap(link)).max(0)))
            .sum()
    }

    /// At how many different minutes somebody begins something.
    pub fn moments(&self, starts: &[i32]) -> i32 {
        let tasks = starts.iter().zip(&self.tasks);
        let begun: BTreeSet<i32> =
            tasks.filter(|(_, task)| task.minutes > 0).map(|(start, _)| *start).collect();
        i32::try_from(begun.len()).unwrap_or(i32::MAX)
    }

    /// How many tasks begin at another minute than was announced.
    pub fn changed(&self, starts: &[i32]) -> i32 {
        let tasks = starts.iter().zip(&self.announced).zip(&self.tasks);
        let moved = tasks
            .filter(|((start, announced), task)| task.minutes > 0 && start != announced);
        i32::try_from(moved.count()).unwrap_or(i32::MAX)
    }

    /// The time from the end of a link's first task to the start of its second.
    pub fn gap(&self, link: &Link, starts: &[i32]) -> i32 {
        starts[link.to] - self.end_of(link.from, starts)
    }

    /// What the goal counts: the end of the last task, or the time from the first start.
    pub fn second(&self, starts: &[i32]) -> i32 {
        match self.goal {
            Goal::EarliestEnd => {
                (0..starts.len()).map(|task| self.end_of(task, starts)).max().unwrap_or(0)
            }
            Goal::LatestStart(ready) => ready - starts.iter().min().unwrap_or(&ready),
        }
    }

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
            let inside: Vec<&Bake> = self
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
            let heats = inside.iter().zip(&loads);
            if heats.clone().any(|(bake, load)| {
                heats
                    .clone()
                    .any(|(other, with)| other.heat != bake.heat && load.meets(with))
            }) {
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
    pub(super) fn load(&self, of: &Use, starts: &[i32]) -> Load {
        let end = self.end_of(of.task, starts) + of.after;
        Load { from: starts[of.task], to: end, amount: of.amount }
    }

    fn stay(&self, link: usize, amount: i32, starts: &[i32]) -> Load {
        let link = &self.links[link];
        Load { from: self.end_of(link.from, starts), to: starts[link.to], amount }
    }

    pub(super) fn baked(&self, bake: &Bake, starts: &[i32]) -> Load {
        let of = Use { task: bake.task, amount: bake.trays, after: self.ovens.after };
        self.load(&of, starts)
    }
}

/// A stretch of time and how much of something it takes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Load {
    pub(super) from: i32,
    pub(super) to: i32,
    pub(super) amount: i32,
}

impl Load {
    /// Whether two stretches have a minute in common.
    pub(super) fn meets(&self, other: &Self) -> bool {
        self.from < other.to && other.from < self.to
    }
}

/// The most that is taken at any one time.
pub(super) fn peak(loads: &[Load]) -> i32 {
    let at = |time: i32| {
        let there = loads.iter().filter(|load| load.from <= time && time < load.to);
        there.map(|load| load.amount).sum::<i32>()
    };
    loads.iter().map(|load| at(load.from)).max().unwrap_or(0)
}
