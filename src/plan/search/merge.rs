//! Batches that are made alike, done together: at each of its tasks a making is divided into
//! goes, and all batches of one go begin it at the same minute. That leaves a question with a
//! task for each go, a fraction of the whole.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::question::problem::{Claim, Layout, Link, Pool, Problem, Store};

/// For each making and each of its tasks: in how many goes its batches do it.
pub(in crate::plan) type Goes = Vec<Vec<usize>>;

/// A question with its batches drawn together.
pub(in crate::plan) struct Merged {
    pub(in crate::plan) problem: Problem,
    /// For each task of the whole question, the task that stands for it.
    of: Vec<usize>,
}

/// The go of one of `count` batches.
fn go(batch: usize, count: usize, goes: usize) -> usize {
    batch * goes / count.max(1)
}

/// The fewest goes in which what is shared lets each task be done.
pub(in crate::plan) fn fewest(problem: &Problem) -> Goes {
    let fits = Fits::new(problem);
    let mut goes: Goes = problem
        .families
        .iter()
        .map(|batches| {
            let tasks = batches.first().map_or(0, Vec::len);
            let at = |place: usize| {
                (1..batches.len()).find(|goes| fits.holds(batches, place, *goes))
            };
            (0..tasks).map(|place| at(place).unwrap_or(batches.len()).max(1)).collect()
        })
        .collect();
    settle(problem, &mut goes);
    goes
}

/// Gives moments the goes of what is before them, and what follows at once the same goes as
/// what it follows.
pub(in crate::plan) fn settle(problem: &Problem, goes: &mut Goes) {
    for (family, batches) in problem.families.iter().enumerate() {
        let Some(tasks) = batches.first() else { continue };
        let place: BTreeMap<usize, usize> =
            tasks.iter().enumerate().map(|(at, task)| (*task, at)).collect();
        let pairs: Vec<(usize, usize, bool)> = problem
            .links
            .iter()
            .filter_map(|link| {
                let (from, to) = (place.get(&link.from)?, place.get(&link.to)?);
                let tied = link.most.is_some_and(|most| most - link.least < 5);
                Some((*from, *to, tied))
            })
            .collect();
        let own = &mut goes[family];
        for _ in 0..tasks.len() {
            let before = own.clone();
            for (from, to, tied) in &pairs {
                let idle = problem.tasks[tasks[*to]].minutes == 0;
                if *tied || idle {
                    own[*to] = own[*to].max(own[*from]);
                }
                if *tied {
                    own[*from] = own[*from].max(own[*to]);
                }
            }
            if *own == before {
                break;
            }
        }
    }
}

/// What each task takes of what is shared.
struct Fits<'a> {
    problem: &'a Problem,
    pools: BTreeMap<usize, Vec<(usize, i32)>>,
    stays: BTreeMap<usize, Vec<(usize, i32)>>,
    trays: BTreeMap<usize, i32>,
}

impl<'a> Fits<'a> {
    fn new(problem: &'a Problem) -> Self {
        let mut pools: BTreeMap<usize, Vec<(usize, i32)>> = BTreeMap::new();
        for (pool, of) in problem.pools.iter().enumerate() {
            for used in &of.uses {
                pools.entry(used.task).or_default().push((pool, used.amount));
            }
        }
        let mut stays: BTreeMap<usize, Vec<(usize, i32)>> = BTreeMap::new();
        for (store, of) in problem.stores.iter().enumerate() {
            for (link, amount) in &of.stays {
                let link = &problem.links[*link];
                for task in [link.from, link.to] {
                    stays.entry(task).or_default().push((store, *amount));
                }
            }
        }
        let trays = problem.ovens.bakes.iter().map(|bake| (bake.task, bake.trays));
        Self { problem, pools, stays, trays: trays.collect() }
    }

    fn holds(&self, batches: &[Vec<usize>], place: usize, goes: usize) -> bool {
        let mut pools: BTreeMap<(usize, usize), i32> = BTreeMap::new();
        let mut stores: BTreeMap<(usize, usize), i32> = BTreeMap::new();
        let mut bakes: BTreeMap<usize, (i32, i32)> = BTreeMap::new();
        for (at, batch) in batches.iter().enumerate() {
            let go = go(at, batches.len(), goes);
            let task = batch[place];
            for (pool, amount) in self.pools.get(&task).into_iter().flatten() {
                *pools.entry((go, *pool)).or_default() += amount;
            }
            for (store, amount) in self.stays.get(&task).into_iter().flatten() {
                *stores.entry((go, *store)).or_default() += amount;
            }
            if let Some(trays) = self.trays.get(&task) {
                let (most, count) = bakes.entry(go).or_default();
                (*most, *count) = ((*most).max(*trays), *count + 1);
            }
        }
        let ovens = &self.problem.ovens;
        let count = i32::try_from(ovens.count).unwrap_or(i32::MAX);
        pools
            .iter()
            .all(|((_, pool), amount)| *amount <= self.problem.pools[*pool].capacity)
            && stores
                .iter()
                .all(|((_, at), amount)| *amount <= self.problem.stores[*at].capacity)
            && bakes
                .values()
                .all(|(most, bakes)| *bakes <= count * (ovens.trays / (*most).max(1)))
    }
}

/// Draws the batches of each go together. `None` where those of one go may never begin at
/// the same minute.
pub(in crate::plan) fn merge(problem: &Problem, goes: &Goes) -> Option<Merged> {
    let mut of = vec![usize::MAX; problem.tasks.len()];
    let mut names: BTreeMap<(usize, usize, usize), usize> = BTreeMap::new();
    let mut merged = Problem {
        sessions: problem.sessions.clone(),
        goal: problem.goal,
        grid: problem.grid,
        ..Problem::default()
    };
    for (family, batches) in problem.families.iter().enumerate() {
        for (at, batch) in batches.iter().enumerate() {
            for (place, task) in batch.iter().enumerate() {
                let go = go(at, batches.len(), goes[family][place]);
                let own = &problem.tasks[*task];
                let known = names.entry((family, place, go)).or_insert_with(|| {
                    merged.tasks.push(own.clone());
                    merged.tasks.len() - 1
                });
                of[*task] = *known;
                let task = &mut merged.tasks[*known];
                task.starts = common(&task.starts, &own.starts);
                if task.starts.is_empty() || task.minutes != own.minutes {
                    return None;
                }
            }
        }
    }
    for (task, own) in problem.tasks.iter().enumerate() {
        if of[task] == usize::MAX {
            merged.tasks.push(own.clone());
            of[task] = merged.tasks.len() - 1;
        }
    }
    merged.gathered = problem.gathered.iter().map(|task| of[*task]).collect();
    merged.outages = problem.outages.iter().map(|task| of[*task]).collect();
    let link_of = links(problem, &of, &mut merged)?;
    pools(problem, &of, &mut merged);
    merged.ovens = problem.ovens.clone();
    merged.announced =
        vec![0; if problem.announced.is_empty() { 0 } else { merged.tasks.len() }];
    for (start, task) in problem.announced.iter().zip(&of) {
        merged.announced[*task] = *start;
    }
    for bake in &mut merged.ovens.bakes {
        bake.task = of[bake.task];
    }
    for store in &problem.stores {
        let mut stays: BTreeMap<usize, i32> = BTreeMap::new();
        for (link, amount) in &store.stays {
            *stays.entry(link_of[*link]).or_default() += amount;
        }
        let stays = stays.into_iter().collect();
        merged.stores.push(Store { capacity: store.capacity, stays });
    }
    Some(Merged { problem: merged, of })
}

/// The stretches that two lists have in common.
fn common(one: &[(i32, i32)], other: &[(i32, i32)]) -> Vec<(i32, i32)> {
    if one == other {
        return one.to_vec();
    }
    let pairs = one.iter().flat_map(|one| other.iter().map(move |other| (one, other)));
    pairs
        .map(|(one, other)| (one.0.max(other.0), one.1.min(other.1)))
        .filter(|(from, to)| from <= to)
        .collect()
}

/// The links between goes, and for each link of the whole question the one that holds it.
fn links(problem: &Problem, of: &[usize], merged: &mut Problem) -> Option<Vec<usize>> {
    let mut known: BTreeMap<(usize, usize), usize> = BTreeMap::new();
    let mut link_of = Vec::with_capacity(problem.links.len());
    for link in &problem.links {
        let (from, to) = (of[link.from], of[link.to]);
        if from == to {
            return None;
        }
        let at = *known.entry((from, to)).or_insert_with(|| {
            merged.links.push(Link { from, to, ..link.clone() });
            merged.links.len() - 1
        });
        let own = &mut merged.links[at];
        own.least = own.least.max(link.least);
        own.usual = own.usual.max(link.usual);
        own.most = match (own.most, link.most) {
            (Some(one), Some(other)) => Some(one.min(other)),
            (one, other) => one.or(other),
        };
        own.crosses &= link.crosses;
        link_of.push(at);
    }
    Some(link_of)
}

/// The pools; those that say the same, such as the hands of two groups that do everything
/// together, are one.
fn pools(problem: &Problem, of: &[usize], merged: &mut Problem) {
    let mut seen = BTreeSet::new();
    for pool in &problem.pools {
        let mut uses: BTreeMap<usize, (i32, i32)> = BTreeMap::new();
        for used in &pool.uses {
            let (amount, after) = uses.entry(of[used.task]).or_default();
            *amount += used.amount;
            *after = (*after).max(used.after);
        }
        let whole = uses.values().all(|(amount, _)| *amount == pool.capacity);
        if uses.values().map(|(amount, _)| amount).sum::<i32>() <= pool.capacity {
            continue;
        }
        let capacity = if whole { 1 } else { pool.capacity };
        let uses: Vec<Claim> = uses
            .into_iter()
            .map(|(task, (amount, after))| {
                let amount = if whole { 1 } else { amount };
                Claim { task, amount, after }
            })
            .collect();
        let key: Vec<(usize, i32, i32)> =
            uses.iter().map(|of| (of.task, of.amount, of.after)).collect();
        if seen.insert((capacity, key)) {
            merged.pools.push(Pool { capacity, uses });
        }
    }
}

impl Merged {
    /// The whole plan.
    pub(in crate::plan) fn whole(&self, layout: &Layout) -> Layout {
        let starts = self.of.iter().map(|task| layout.starts[*task]).collect();
        Layout { starts, ovens: layout.ovens.clone() }
    }

    /// How many tasks of the whole question each task stands for.
    pub(in crate::plan) fn weights(&self) -> Vec<i32> {
        let mut weights = vec![0; self.problem.tasks.len()];
        self.of.iter().for_each(|task| weights[*task] += 1);
        weights
    }
}
