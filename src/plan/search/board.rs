//! What is laid out so far of a plan that grows task by task: who has which thing when, and
//! where the next task finds a place.

use crate::plan::question::problem::{Baking, Layout, Problem};
use crate::plan::question::rules::{Load, peak};

/// A start, and an oven for each of the task's bakes.
pub(in crate::plan) struct Place {
    pub(in crate::plan) start: i32,
    ovens: Vec<usize>,
}

/// One task's part in a pool or on a shelf.
#[derive(Clone, Copy)]
struct Part {
    of: usize,
    at: usize,
}

pub(in crate::plan) struct Board<'a> {
    problem: &'a Problem,
    usual: bool,
    starts: Vec<Option<i32>>,
    into: Vec<Vec<usize>>,
    pools: Vec<Vec<Part>>,
    bakes: Vec<Vec<usize>>,
    /// The stays that begin, and those that end, with each task.
    begins: Vec<Vec<Part>>,
    ends: Vec<Vec<Part>>,
    loads: Vec<Vec<(usize, Load)>>,
    shelves: Vec<Vec<(usize, Load)>>,
    baked: Vec<Vec<(usize, Baking, Load)>>,
    ovens: Vec<usize>,
}

/// A task that must start no earlier than that minute.
pub(in crate::plan) type Later = (usize, i32);

impl<'a> Board<'a> {
    pub(in crate::plan) fn new(problem: &'a Problem, usual: bool) -> Self {
        let count = problem.tasks.len();
        let empty = || vec![Vec::new(); count];
        let (mut into, mut pools, mut bakes) =
            (vec![Vec::new(); count], empty(), vec![Vec::new(); count]);
        for (at, link) in problem.links.iter().enumerate() {
            into[link.to].push(at);
        }
        for (of, pool) in problem.pools.iter().enumerate() {
            for (at, used) in pool.uses.iter().enumerate() {
                pools[used.task].push(Part { of, at });
            }
        }
        for (at, bake) in problem.ovens.bakes.iter().enumerate() {
            bakes[bake.task].push(at);
        }
        // The largest first: they fit in fewest places.
        for own in &mut bakes {
            own.sort_by_key(|at| std::cmp::Reverse(problem.ovens.bakes[*at].trays));
        }
        let (mut begins, mut ends) = (empty(), empty());
        for (of, store) in problem.stores.iter().enumerate() {
            for (at, (link, _)) in store.stays.iter().enumerate() {
                begins[problem.links[*link].from].push(Part { of, at });
                ends[problem.links[*link].to].push(Part { of, at });
            }
        }
        Self {
            problem,
            usual,
            starts: vec![None; count],
            into,
            pools,
            bakes,
            begins,
            ends,
            loads: vec![Vec::new(); problem.pools.len()],
            shelves: vec![Vec::new(); problem.stores.len()],
            baked: vec![Vec::new(); problem.ovens.count],
            ovens: vec![0; problem.ovens.bakes.len()],
        }
    }

    pub(in crate::plan) fn tasks(&self) -> usize {
        self.starts.len()
    }

    pub(in crate::plan) fn layout(self) -> Layout {
        let starts = self.starts.iter().map(|start| start.unwrap_or(0)).collect();
        Layout { starts, ovens: self.ovens }
    }

    fn end(&self, task: usize, start: i32) -> i32 {
        start + self.problem.tasks[task].minutes
    }

    /// How long after its first task the second of a link is wanted.
    fn wanted(&self, link: usize) -> i32 {
        let link = &self.problem.links[link];
        let usual = link.usual.filter(|_| self.usual).unwrap_or(link.least);
        let usual = link.most.map_or(usual, |most| usual.min(most));
        usual.max(link.least)
    }

    fn ready(&self, task: usize) -> i32 {
        let from = self.into[task].iter().filter_map(|at| {
            let from = self.problem.links[*at].from;
            Some(self.end(from, self.starts[from]?) + self.wanted(*at))
        });
        from.max().unwrap_or(i32::MIN)
    }

    /// Where a task can start from `floor` on; else what would have to be later, if that
    /// could help.
    pub(in crate::plan) fn earliest(
        &self,
        task: usize,
        floor: i32,
    ) -> Result<Place, Option<Later>> {
        let mut at = self.ready(task).max(floor);
        loop {
            at = self.problem.tasks[task].next(at).ok_or(None)?;
            if let Some(later) = self.overfull(task, at) {
                return Err(Some(later));
            }
            match self.clash(task, at) {
                Ok(ovens) => return Ok(Place { start: at, ovens }),
                Err(later) => at = later,
            }
        }
    }

    /// What stands on a shelf until this task stands there too long: its own beginning must
    /// wait until there is room.
    fn overfull(&self, task: usize, at: i32) -> Option<Later> {
        self.ends[task].iter().find_map(|part| {
            let store = &self.problem.stores[part.of];
            let (link, amount) = store.stays[part.at];
            let from = self.problem.links[link].from;
            let end = self.end(from, self.starts[from]?);
            let own = Load { from: end, to: at.max(end), amount };
            let there: Vec<Load> = self.shelves[part.of]
                .iter()
                .filter(|(stay, _)| *stay != part.at)
                .map(|(_, load)| *load)
                .collect();
            let later = over(&own, &there, store.capacity)?;
            Some((from, later - self.problem.tasks[from].minutes))
        })
    }

    /// The ovens where it can start then, or the next minute to try.
    fn clash(&self, task: usize, at: i32) -> Result<Vec<usize>, i32> {
        let end = self.end(task, at);
        for part in &self.pools[task] {
            let pool = &self.problem.pools[part.of];
            let used = &pool.uses[part.at];
            let own = Load { from: at, to: end + used.after, amount: used.amount };
            let there: Vec<Load> =
                self.loads[part.of].iter().map(|(_, load)| *load).collect();
            if let Some(later) = over(&own, &there, pool.capacity) {
                return Err(later);
            }
        }
        for part in &self.begins[task] {
            let store = &self.problem.stores[part.of];
            let (link, amount) = store.stays[part.at];
            let own = Load { from: end, to: end + self.wanted(link), amount };
            let there: Vec<Load> =
                self.shelves[part.of].iter().map(|(_, load)| *load).collect();
            if let Some(later) = over(&own, &there, store.capacity) {
                return Err((later - (end - at)).max(at + 1));
            }
        }
        let mut inside = Vec::new();
        for bake in &self.bakes[task] {
            let oven = self.oven(&self.problem.ovens.bakes[*bake], at, &inside)?;
            inside.push((*bake, oven));
        }
        inside.sort_unstable();
        Ok(inside.into_iter().map(|(_, oven)| oven).collect())
    }

    /// An oven with room, beside what of the same task is put in already.
    fn oven(&self, bake: &Baking, at: i32, own: &[(usize, usize)]) -> Result<usize, i32> {
        let ovens = &self.problem.ovens;
        let to = self.end(bake.task, at) + ovens.after;
        let mut later = i32::MAX;
        for (oven, inside) in self.baked.iter().enumerate() {
            if bake.oven.is_some_and(|own| own != oven) {
                continue;
            }
            // What it cannot share the oven with fills it.
            let mut there: Vec<Load> = inside
                .iter()
                .map(|(_, other, load)| {
                    let apart = ovens.apart(other.heat, bake.heat);
                    let shares = other.shares(bake, [load.from, at]);
                    let amount = if shares { load.amount } else { ovens.trays };
                    Load { amount, ..load.wider(apart) }
                })
                .collect();
            let beside = own.iter().filter(|(_, other)| *other == oven);
            there.extend(beside.map(|(other, _)| Load {
                from: at,
                to,
                amount: ovens.bakes[*other].trays,
            }));
            match over(&Load { from: at, to, amount: bake.trays }, &there, ovens.trays) {
                None => return Ok(oven),
                Some(next) => later = later.min(next),
            }
        }
        Err(later.max(at + 1))
    }

    /// The task before that must move, where a lag to it would be too long.
    pub(in crate::plan) fn too_long(&self, task: usize, start: i32) -> Option<Later> {
        self.into[task].iter().find_map(|at| {
            let link = &self.problem.links[*at];
            let from = self.starts[link.from]?;
            let end = self.end(link.from, from);
            let late = link
                .most
                .filter(|most| start - end > *most)
                .map(|most| start - most - (end - from));
            let apart = || {
                let session = self.problem.session(start);
                let open = self.problem.sessions.get(session)?.0;
                (!link.crosses && self.problem.session(from) != session).then_some(open)
            };
            late.or_else(apart).map(|later| (link.from, later))
        })
    }

    pub(in crate::plan) fn put(&mut self, task: usize, place: Place) {
        let start = place.start;
        let end = self.end(task, start);
        self.starts[task] = Some(start);
        for part in &self.pools[task] {
            let used = &self.problem.pools[part.of].uses[part.at];
            let load = Load { from: start, to: end + used.after, amount: used.amount };
            self.loads[part.of].push((task, load));
        }
        for part in &self.begins[task] {
            let (link, amount) = self.problem.stores[part.of].stays[part.at];
            let to = end + self.wanted(link);
            self.shelves[part.of].push((part.at, Load { from: end, to, amount }));
        }
        for part in &self.ends[task] {
            for (stay, load) in &mut self.shelves[part.of] {
                if *stay == part.at {
                    load.to = start.max(load.from);
                }
            }
        }
        let mut own = self.bakes[task].clone();
        own.sort_unstable();
        for (at, oven) in own.into_iter().zip(place.ovens) {
            let bake = &self.problem.ovens.bakes[at];
            let to = end + self.problem.ovens.after;
            self.ovens[at] = oven;
            let load = Load { from: start, to, amount: bake.trays };
            self.baked[oven].push((task, *bake, load));
        }
    }

    pub(in crate::plan) fn take_off(&mut self, task: usize) {
        if self.starts[task].take().is_none() {
            return;
        }
        for part in &self.pools[task] {
            self.loads[part.of].retain(|(of, _)| *of != task);
        }
        for part in &self.begins[task] {
            self.shelves[part.of].retain(|(stay, _)| *stay != part.at);
        }
        for part in &self.ends[task] {
            // The stay goes on as long as is wanted, until it is known again.
            let wanted = self.wanted(self.problem.stores[part.of].stays[part.at].0);
            for (stay, load) in &mut self.shelves[part.of] {
                if *stay == part.at {
                    load.to = load.from + wanted;
                }
            }
        }
        if !self.bakes[task].is_empty() {
            self.baked.iter_mut().for_each(|oven| oven.retain(|(of, ..)| *of != task));
        }
    }
}

/// The next minute to try where `own` does not go with what is there.
fn over(own: &Load, there: &[Load], capacity: i32) -> Option<i32> {
    if own.to <= own.from {
        return None;
    }
    let mut with: Vec<Load> =
        there.iter().filter(|load| load.meets(own)).copied().collect();
    let next = with.iter().map(|load| load.to).min();
    // Only what lies within the task's own time counts.
    with.iter_mut().for_each(|load| {
        load.from = load.from.max(own.from);
        load.to = load.to.min(own.to);
    });
    with.push(*own);
    if peak(&with) <= capacity {
        None
    } else {
        Some(next.unwrap_or(i32::MAX / 2).max(own.from + 1))
    }
}
