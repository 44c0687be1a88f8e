//! The first plan: unit by unit, every task as early as what is laid out already lets it
//! be; where a lag would grow too long, what came before is moved later and the unit is
//! laid out anew.

use super::problem::{Bake, Layout, Load, Problem, peak};

/// How often one unit is laid out anew before it is given up.
const MOST_TRIES: usize = 400;

/// How a first plan is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Way {
    /// With the recipe's usual waits rather than the least.
    pub(super) usual: bool,
    /// Units from the last to the first.
    pub(super) backwards: bool,
}

/// The best of a few first plans; `None` where none of them works out.
pub(super) fn first(problem: &Problem) -> Option<Layout> {
    let ways = [(true, false), (false, false), (true, true), (false, true)];
    let plans = ways.iter().filter_map(|(usual, backwards)| {
        lay_out(problem, Way { usual: *usual, backwards: *backwards })
    });
    let sound = plans.filter(|plan| problem.broken(plan).is_empty());
    sound.min_by_key(|plan| (problem.waiting(&plan.starts), problem.second(&plan.starts)))
}

fn lay_out(problem: &Problem, way: Way) -> Option<Layout> {
    let mut board = Board::new(problem, way);
    let mut units: Vec<Vec<usize>> = problem.units.clone();
    if units.is_empty() {
        units = board.in_order().into_iter().map(|task| vec![task]).collect();
    }
    if way.backwards {
        // The first unit is the one that the others watch.
        units[1..].reverse();
    }
    units.iter().all(|unit| board.unit(unit)).then(|| board.layout())
}

/// What is laid out so far.
struct Board<'a> {
    problem: &'a Problem,
    way: Way,
    starts: Vec<Option<i32>>,
    into: Vec<Vec<usize>>,
    pools_of: Vec<Vec<(usize, usize)>>,
    bake_of: Vec<Option<usize>>,
    loads: Vec<Vec<(usize, Load)>>,
    baked: Vec<Vec<(usize, i32, Load)>>,
    ovens: Vec<usize>,
}

impl<'a> Board<'a> {
    fn new(problem: &'a Problem, way: Way) -> Self {
        let count = problem.tasks.len();
        let mut into = vec![Vec::new(); count];
        for (at, link) in problem.links.iter().enumerate() {
            into[link.to].push(at);
        }
        let mut pools_of = vec![Vec::new(); count];
        for (pool, of) in problem.pools.iter().enumerate() {
            for (at, used) in of.uses.iter().enumerate() {
                pools_of[used.task].push((pool, at));
            }
        }
        let mut bake_of = vec![None; count];
        for (at, bake) in problem.ovens.bakes.iter().enumerate() {
            bake_of[bake.task] = Some(at);
        }
        Self {
            problem,
            way,
            starts: vec![None; count],
            into,
            pools_of,
            bake_of,
            loads: vec![Vec::new(); problem.pools.len()],
            baked: vec![Vec::new(); problem.ovens.count],
            ovens: vec![0; problem.ovens.bakes.len()],
        }
    }

    /// Every task after those it waits for, those with the longest way to go first.
    fn in_order(&self) -> Vec<usize> {
        let tails = super::bounds::tails(self.problem);
        let mut order = Vec::new();
        let mut done = vec![false; self.starts.len()];
        loop {
            let ready = (0..done.len()).filter(|task| {
                let from = |link: &usize| done[self.problem.links[*link].from];
                !done[*task] && self.into[*task].iter().all(from)
            });
            let Some(next) = ready.max_by_key(|task| (tails[*task], usize::MAX - task))
            else {
                return order;
            };
            done[next] = true;
            order.push(next);
        }
    }

    fn layout(self) -> Layout {
        let starts = self.starts.iter().map(|start| start.unwrap_or(0)).collect();
        Layout { starts, ovens: self.ovens }
    }

    /// Lays out one unit; `false` where it cannot be done.
    fn unit(&mut self, unit: &[usize]) -> bool {
        let mut floors = vec![i32::MIN; self.starts.len()];
        for _ in 0..MOST_TRIES {
            match self.pass(unit, &floors) {
                Pass::Done => return true,
                Pass::Later(task, from)
                    if from > floors[task] && unit.contains(&task) =>
                {
                    floors[task] = from;
                    unit.iter().for_each(|task| self.take_off(*task));
                }
                Pass::Later(..) | Pass::Never => return false,
            }
        }
        false
    }

    fn pass(&mut self, unit: &[usize], floors: &[i32]) -> Pass {
        for task in unit {
            let Some((start, oven)) = self.earliest(*task, floors[*task]) else {
                return self.stuck(*task);
            };
            if let Some(later) = self.too_long(*task, start) {
                return later;
            }
            self.put(*task, start, oven);
        }
        Pass::Done
    }

    /// Where a task finds no place in time, what it waits for cannot help it.
    fn stuck(&self, _task: usize) -> Pass {
        Pass::Never
    }

    fn ready(&self, task: usize) -> i32 {
        let from = self.into[task].iter().filter_map(|at| {
            let link = &self.problem.links[*at];
            let end = self.starts[link.from]? + self.problem.tasks[link.from].minutes;
            let usual = link.usual.filter(|_| self.way.usual).unwrap_or(link.least);
            let usual = link.most.map_or(usual, |most| usual.min(most));
            Some(end + usual.max(link.least))
        });
        from.max().unwrap_or(i32::MIN)
    }

    fn earliest(&self, task: usize, floor: i32) -> Option<(i32, usize)> {
        let mut at = self.ready(task).max(floor);
        loop {
            at = self.problem.tasks[task].next(at)?;
            match self.clash(task, at) {
                Ok(oven) => return Some((at, oven)),
                Err(later) => at = later,
            }
        }
    }

    /// The oven where it can start then, or the next minute to try.
    fn clash(&self, task: usize, at: i32) -> Result<usize, i32> {
        let minutes = self.problem.tasks[task].minutes;
        for (pool, used) in &self.pools_of[task] {
            let of = &self.problem.pools[*pool];
            let used = &of.uses[*used];
            let own =
                Load { from: at, to: at + minutes + used.after, amount: used.amount };
            let there: Vec<Load> =
                self.loads[*pool].iter().map(|(_, load)| *load).collect();
            if let Some(later) = over(&own, &there, of.capacity) {
                return Err(later);
            }
        }
        let Some(bake) = self.bake_of[task] else { return Ok(0) };
        self.oven(&self.problem.ovens.bakes[bake], at)
    }

    fn oven(&self, bake: &Bake, at: i32) -> Result<usize, i32> {
        let ovens = &self.problem.ovens;
        let to = at + self.problem.tasks[bake.task].minutes + ovens.after;
        let own = Load { from: at, to, amount: bake.trays };
        let mut later = i32::MAX;
        for (oven, inside) in self.baked.iter().enumerate() {
            // Another heat fills the oven.
            let there: Vec<Load> = inside
                .iter()
                .map(|(_, heat, load)| {
                    let amount =
                        if *heat == bake.heat { load.amount } else { ovens.trays };
                    Load { amount, ..*load }
                })
                .collect();
            match over(&own, &there, ovens.trays) {
                None => return Ok(oven),
                Some(next) => later = later.min(next),
            }
        }
        Err(later)
    }

    /// The task before that must move, where a lag to it would be too long.
    fn too_long(&self, task: usize, start: i32) -> Option<Pass> {
        self.into[task].iter().find_map(|at| {
            let link = &self.problem.links[*at];
            let from = self.starts[link.from]?;
            let end = from + self.problem.tasks[link.from].minutes;
            let late = link
                .most
                .filter(|most| start - end > *most)
                .map(|most| start - most - (end - from));
            let apart = || {
                let session = self.problem.session(start);
                let open = self.problem.sessions.get(session)?.0;
                (!link.crosses && self.problem.session(from) != session).then_some(open)
            };
            late.or_else(apart).map(|later| Pass::Later(link.from, later))
        })
    }

    fn put(&mut self, task: usize, start: i32, oven: usize) {
        self.starts[task] = Some(start);
        let minutes = self.problem.tasks[task].minutes;
        for (pool, used) in &self.pools_of[task] {
            let used = &self.problem.pools[*pool].uses[*used];
            let load = Load {
                from: start,
                to: start + minutes + used.after,
                amount: used.amount,
            };
            self.loads[*pool].push((task, load));
        }
        if let Some(at) = self.bake_of[task] {
            let bake = &self.problem.ovens.bakes[at];
            let to = start + minutes + self.problem.ovens.after;
            self.ovens[at] = oven;
            self.baked[oven].push((
                task,
                bake.heat,
                Load { from: start, to, amount: bake.trays },
            ));
        }
    }

    fn take_off(&mut self, task: usize) {
        self.starts[task] = None;
        self.loads.iter_mut().for_each(|pool| pool.retain(|(of, _)| *of != task));
        self.baked.iter_mut().for_each(|oven| oven.retain(|(of, ..)| *of != task));
    }
}

/// How laying out a unit went.
enum Pass {
    Done,
    /// This task must not start before that minute.
    Later(usize, i32),
    Never,
}

/// The next minute to try where `own` does not go with what is there.
fn over(own: &Load, there: &[Load], capacity: i32) -> Option<i32> {
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
        Some(next.unwrap_or(i32::MAX - 1).max(own.from + 1))
    }
}
