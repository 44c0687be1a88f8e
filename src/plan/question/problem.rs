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
    /// Tasks in which everybody takes part: they find their places first.
    pub gathered: Vec<usize>,
    /// Starts that were announced and are kept where they can be; none where nothing was.
    pub announced: Vec<i32>,
    /// Tasks that stand for kit that is out of order: nobody works in them, and no plan ends
    /// with one.
    pub outages: Vec<usize>,
    /// For each link, how long it was to last when that was announced; none where nothing was.
    pub promised: Vec<i32>,
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
    pub uses: Vec<Claim>,
}

/// One task's use of a pool.
#[derive(Clone, Copy, Debug)]
pub struct Claim {
    /// The task.
    pub task: usize,
    /// How much of the pool it takes.
    pub amount: i32,
    /// Minutes after its end until it is free again.
    pub after: i32,
}

/// The ovens: each holds one heat at a time, and a bake goes whole into one of them. What
/// bakes while the heat changes must have begun together.
#[derive(Clone, Debug, Default)]
pub struct Ovens {
    /// How many.
    pub count: usize,
    /// Trays that one takes.
    pub trays: i32,
    /// Minutes from a bake's end until its place is free again.
    pub after: i32,
    /// Minutes from a bake's end until the oven has another heat, where that is longer.
    pub turn: i32,
    /// The bakes.
    pub bakes: Vec<Baking>,
}

/// One bake.
#[derive(Clone, Copy, Debug)]
pub struct Baking {
    /// The task.
    pub task: usize,
    /// Its trays, at most what one oven takes.
    pub trays: i32,
    /// The number of the heat that its oven is set to: bakes of one may share an oven.
    pub heat: i32,
    /// The number of its phases, where its heat changes: such bakes share an oven only with
    /// those of the same phases that begin with them.
    pub phases: Option<i32>,
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

    /// Every minute at which it may start.
    pub fn minutes_to_start(&self) -> impl Iterator<Item = i32> + '_ {
        let step = usize::try_from(self.grid).unwrap_or(1);
        let all = self.starts.iter();
        all.flat_map(move |(first, last)| (self.round_up(*first)..=*last).step_by(step))
    }

    /// Whether it may start at a minute.
    pub fn may_start(&self, at: i32) -> bool {
        at.rem_euclid(self.grid) == 0
            && self.starts.iter().any(|(first, last)| (*first..=*last).contains(&at))
    }
}

impl Baking {
    /// Whether it may be in an oven together with another, where they begin at these minutes.
    pub fn shares(&self, other: &Self, [own, its]: [i32; 2]) -> bool {
        let alike = self.heat == other.heat && self.phases == other.phases;
        alike && (self.phases.is_none() || own == its)
    }
}

impl Ovens {
    /// By how many minutes two bakes of different heats are further apart than others. What
    /// is out of order has no heat.
    pub fn apart(&self, one: i32, other: i32) -> i32 {
        let heats = one != other && one >= 0 && other >= 0;
        if heats { (self.turn - self.after).max(0) } else { 0 }
    }
}

impl Problem {
    /// Adds a task that may start in any session.
    pub fn task(&mut self, minutes: i32) -> usize {
        let open = |(from, to): &(i32, i32)| (*from, to - minutes);
        let starts = self.sessions.iter().map(open).filter(|(from, to)| from <= to);
        self.tasks.push(Task { minutes, starts: starts.collect(), grid: 1 });
        self.tasks.len() - 1
    }

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

    /// The tasks in which something is done.
    pub fn worked(&self) -> impl Iterator<Item = usize> + '_ {
        (0..self.tasks.len()).filter(|task| !self.outages.contains(task))
    }

    /// What the goal counts: the end of the last task, or the time from the first start.
    pub fn second(&self, starts: &[i32]) -> i32 {
        match self.goal {
            Goal::EarliestEnd => {
                self.worked().map(|task| self.end_of(task, starts)).max().unwrap_or(0)
            }
            Goal::LatestStart(ready) => ready - starts.iter().min().unwrap_or(&ready),
        }
    }
}
