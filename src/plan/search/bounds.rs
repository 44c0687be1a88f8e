//! What no plan can beat: the way a task has behind it and before it, and the work that a
//! shared thing has to do in between.

use std::collections::BTreeSet;

use crate::plan::question::problem::{Claim, Problem, Task};

/// Rounds of tightening; each goes once through every link.
const MOST_ROUNDS: usize = 200;

/// From a task's start to the end of everything that follows it, by the least lags.
pub(in crate::plan) fn tails(problem: &Problem) -> Vec<i32> {
    let own = |task: &Task| task.minutes;
    let mut tails: Vec<i32> = problem.tasks.iter().map(own).collect();
    for _ in 0..problem.tasks.len() {
        let mut changed = false;
        for link in &problem.links {
            let way = problem.tasks[link.from].minutes + link.least + tails[link.to];
            if way > tails[link.from] {
                tails[link.from] = way;
                changed = true;
            }
        }
        if !changed {
            break;
        }
    }
    tails
}

/// The fewest different moments at which something begins: the tasks of one chain that take
/// time follow one another.
pub(in crate::plan) fn moments(problem: &Problem) -> i32 {
    let mut least: Vec<i32> =
        problem.tasks.iter().map(|task| i32::from(task.minutes > 0)).collect();
    let own = least.clone();
    for task in super::first::ordered(problem, |_| 0).into_iter().rev() {
        let after = problem.links.iter().filter(|link| link.from == task);
        // What may begin before the other ends can begin with it.
        let after = after.filter(|link| link.least >= 0).map(|link| least[link.to]);
        least[task] = own[task] + after.max().unwrap_or(0);
    }
    least.into_iter().max().unwrap_or(0)
}

/// Narrows the stretches in which tasks may start to what the links leave of them.
/// `false` where a task is left with none: no plan exists.
pub(in crate::plan) fn narrow(problem: &mut Problem) -> bool {
    for _ in 0..MOST_ROUNDS {
        let mut changed = false;
        for at in 0..problem.links.len() {
            match narrow_link(problem, at) {
                Some(more) => changed |= more,
                None => return false,
            }
        }
        if !changed {
            break;
        }
    }
    problem.tasks.iter().all(|task| !task.starts.is_empty())
}

/// Whether it changed anything; `None` where nothing is left.
fn narrow_link(problem: &mut Problem, at: usize) -> Option<bool> {
    let link = problem.links[at].clone();
    let minutes = problem.tasks[link.from].minutes;
    let (first, last) = problem.tasks[link.from].span()?;
    let (to_first, to_last) = problem.tasks[link.to].span()?;
    let most = link.most.unwrap_or(i32::MAX / 4);
    let mut low = to_first.max(first + minutes + link.least);
    let mut high = to_last.min(last.saturating_add(minutes).saturating_add(most));
    let mut changed = clip(&mut problem.tasks[link.to], low, high);
    low = first.max(to_first.saturating_sub(most).saturating_sub(minutes));
    high = last.min(to_last - link.least - minutes);
    changed |= clip(&mut problem.tasks[link.from], low, high);
    if !link.crosses {
        let sessions = |of: usize| -> Vec<usize> {
            problem.tasks[of]
                .starts
                .iter()
                .map(|range| problem.session(range.0))
                .collect()
        };
        let (from, to) = (sessions(link.from), sessions(link.to));
        changed |= keep(problem, link.from, &to) | keep(problem, link.to, &from);
    }
    let left = |task: usize| !problem.tasks[task].starts.is_empty();
    (left(link.from) && left(link.to)).then_some(changed)
}

/// Cuts the allowed starts to `low..=high`.
fn clip(task: &mut Task, low: i32, high: i32) -> bool {
    let before = task.starts.clone();
    let grid = task.grid;
    task.starts = before
        .iter()
        .map(|(first, last)| {
            let last = (*last).min(high).div_euclid(grid) * grid;
            (task.round_up((*first).max(low)), last)
        })
        .filter(|(first, last)| first <= last)
        .collect();
    task.starts != before
}

/// Keeps the starts that lie in one of these sessions.
fn keep(problem: &mut Problem, task: usize, sessions: &[usize]) -> bool {
    let kept: Vec<(i32, i32)> = problem.tasks[task]
        .starts
        .iter()
        .filter(|range| sessions.contains(&problem.session(range.0)))
        .copied()
        .collect();
    let changed = kept != problem.tasks[task].starts;
    problem.tasks[task].starts = kept;
    changed
}

/// The earliest end that the links and the work of each pool allow.
///
/// For tasks of one pool that cannot start before minute `h` and have at least `q` minutes
/// of other work behind their own, all their work lies between `h` and the end less `q`:
/// end ≥ h + ⌈work / capacity⌉ + q, for every `h` and `q` (the energy bound of cumulative
/// scheduling: Baptiste, Le Pape, Nuijten, *Constraint-Based Scheduling*, 2001).
pub(in crate::plan) fn earliest_end(problem: &Problem) -> i32 {
    let tails = tails(problem);
    let heads: Vec<i32> =
        problem.tasks.iter().map(|task| task.span().map_or(0, |span| span.0)).collect();
    let chain = problem.worked().map(|task| heads[task] + tails[task]).max().unwrap_or(0);
    let job = |task: usize, amount: i32| {
        let minutes = problem.tasks[task].minutes;
        Job { head: heads[task], tail: tails[task] - minutes, work: minutes * amount }
    };
    let works = |task: usize| !problem.outages.contains(&task);
    let pools = problem.pools.iter().map(|pool| {
        let uses = pool.uses.iter().filter(|of| works(of.task));
        let jobs: Vec<Job> = uses.map(|of| job(of.task, of.amount)).collect();
        energy(&jobs, pool.capacity)
    });
    let trays = problem.ovens.trays * i32::try_from(problem.ovens.count).unwrap_or(1);
    let bakes = problem.ovens.bakes.iter().filter(|bake| works(bake.task));
    let bakes: Vec<Job> = bakes.map(|bake| job(bake.task, bake.trays)).collect();
    pools.chain([energy(&bakes, trays)]).fold(chain, i32::max)
}

/// What is shared, where it has more work than time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) enum Shared {
    /// A pool by its number.
    Pool(usize),
    /// The ovens.
    Ovens,
    /// A shelf by its number.
    Store(usize),
}

/// Something that is needed more than there is of it, whatever the plan: a use that is larger
/// than the whole, or more work between two moments than that time has. Ranges must be
/// narrowed.
pub(in crate::plan) fn overload(problem: &Problem) -> Option<Shared> {
    let load = |of: &Claim| Work {
        task: of.task,
        amount: of.amount,
        minutes: problem.tasks[of.task].minutes + of.after,
    };
    let pools = problem.pools.iter().enumerate().find_map(|(at, pool)| {
        let uses: Vec<Work> = pool.uses.iter().map(load).collect();
        let after = pool.uses.iter().map(|of| of.after).max().unwrap_or(0);
        too_much(problem, &uses, pool.capacity, after).then_some(Shared::Pool(at))
    });
    let stores = || {
        problem.stores.iter().enumerate().find_map(|(at, store)| {
            let large = store.stays.iter().any(|(link, amount)| {
                let link = &problem.links[*link];
                *amount > store.capacity && link.least > 0
            });
            large.then_some(Shared::Store(at))
        })
    };
    pools.or_else(|| ovens_overload(problem)).or_else(stores)
}

fn ovens_overload(problem: &Problem) -> Option<Shared> {
    let ovens = &problem.ovens;
    if ovens.bakes.iter().any(|bake| bake.trays > ovens.trays || ovens.count == 0) {
        return Some(Shared::Ovens);
    }
    let trays = ovens.trays * i32::try_from(ovens.count).unwrap_or(1);
    let bakes: Vec<Work> = ovens
        .bakes
        .iter()
        .map(|bake| Work {
            task: bake.task,
            amount: bake.trays,
            minutes: problem.tasks[bake.task].minutes + ovens.after,
        })
        .collect();
    too_much(problem, &bakes, trays, ovens.after).then_some(Shared::Ovens)
}

/// A use with the minutes until its place is free.
struct Work {
    task: usize,
    amount: i32,
    minutes: i32,
}

/// Whether between two moments there is more to do than time to do it.
fn too_much(problem: &Problem, uses: &[Work], capacity: i32, after: i32) -> bool {
    if uses.iter().any(|of| of.minutes > 0 && of.amount > capacity) {
        return true;
    }
    let window = |of: &Work| {
        let (first, last) = problem.tasks[of.task].span()?;
        Some((first, last + problem.tasks[of.task].minutes, of.amount * of.minutes))
    };
    let mut windows: Vec<(i32, i32, i32)> = uses.iter().filter_map(window).collect();
    windows.sort_unstable_by_key(|(_, to, _)| *to);
    let heads: BTreeSet<i32> = windows.iter().map(|(from, ..)| *from).collect();
    heads.into_iter().any(|head| {
        let mut work: i64 = 0;
        windows.iter().filter(|(from, ..)| *from >= head).any(|(_, to, own)| {
            work += i64::from(*own);
            work > i64::from(capacity) * open(problem, head, *to, after)
        })
    })
}

/// Minutes of work time between two moments; what was begun in a session may keep its place
/// for `after` minutes more.
fn open(problem: &Problem, from: i32, to: i32, after: i32) -> i64 {
    if problem.sessions.is_empty() {
        return i64::from(to - from + after);
    }
    let inside = problem.sessions.iter().map(|(opens, closes)| {
        let minutes = to.min(*closes) - from.max(*opens);
        if minutes > 0 { i64::from(minutes + after) } else { 0 }
    });
    inside.sum()
}

/// A task as one pool sees it.
struct Job {
    head: i32,
    tail: i32,
    work: i32,
}

fn energy(jobs: &[Job], capacity: i32) -> i32 {
    if capacity <= 0 {
        return 0;
    }
    let mut best = 0;
    for head in jobs.iter().map(|job| job.head) {
        let mut behind: Vec<&Job> = jobs.iter().filter(|job| job.head >= head).collect();
        behind.sort_by_key(|job| std::cmp::Reverse(job.tail));
        let mut work = 0;
        for job in behind {
            work += job.work;
            best = best.max(head + (work + capacity - 1) / capacity + job.tail);
        }
    }
    best
}
