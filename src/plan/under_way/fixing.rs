//! What has happened as part of a question: fixed where it was, loosened where it no longer
//! matters, and never in the way of a plan.

use std::collections::BTreeMap;

use crate::plan::answer::timetable::Caveat;
use crate::plan::question::class::ClassDraft;
use crate::plan::question::problem::{Baking, Problem};
use crate::plan::question::rules::{Load, peak};

use super::today::{Held, State};

/// Now, what became of each task, and what may not begin before when.
type Facts<'a> = (i32, &'a [State], &'a BTreeMap<usize, i32>);

/// Nothing that is open begins in the past; the rest stays where it was.
pub(in crate::plan) fn fix(
    draft: &mut ClassDraft,
    held: &mut Held,
    (now, states, floors): Facts,
) {
    for (task, state) in states.iter().enumerate() {
        let own = &mut draft.problem.tasks[task];
        let start = match state {
            State::Over(end) => end - own.minutes,
            State::Runs(start) => *start,
            State::Open => {
                let from = floors.get(&task).map_or(now, |floor| now.max(*floor));
                own.starts.retain(|(_, last)| *last >= from);
                own.starts.iter_mut().for_each(|(first, _)| *first = (*first).max(from));
                continue;
            }
        };
        // Where a rest began is not known to the minute: it has its shortest time from the
        // latest, and its longest from what was planned.
        if matches!(state, State::Over(_)) {
            held.unsure[task] = held.unsure[task].max(start - held.starts[task]).max(0);
        }
        let unsure = held.unsure[task];
        for link in draft.problem.links.iter_mut().filter(|link| link.from == task) {
            link.most = link.most.map(|most| (most - unsure).max(link.least));
        }
        own.starts = vec![(start, start)];
        held.starts[task] = start;
    }
    for bake in &mut draft.problem.ovens.bakes {
        if states[bake.task] != State::Open {
            bake.oven = held.ovens.get(&bake.task).copied();
        }
    }
}

/// Takes out of the question what is over, and lets go on what has stood too long.
pub(in crate::plan) fn loosen(
    draft: &mut ClassDraft,
    left: &[usize],
    now: i32,
    states: &[State],
) -> Vec<Caveat> {
    let mut overdue = Vec::new();
    let problem = &mut draft.problem;
    let tasks = &problem.tasks;
    let end = |task: usize| {
        tasks[task].starts.first().map_or(0, |at| at.0) + tasks[task].minutes
    };
    for (at, link) in problem.links.iter_mut().enumerate() {
        if states[link.to] != State::Open || left.contains(&link.to) {
            (link.least, link.usual, link.most, link.crosses) =
                (i32::MIN / 4, None, None, true);
            continue;
        }
        if let State::Over(_) = states[link.from]
            && link.most.is_some_and(|most| now - end(link.from) > most)
        {
            link.most = None;
            overdue.extend(draft.units.iter().find_map(|unit| {
                let steps = unit.batch.steps.iter();
                let step = steps.rev().find(|step| step.stays.contains(&at))?;
                step.waits
                    .then(|| Caveat::TooLong { who: unit.who, title: step.title.clone() })
            }));
        }
    }
    let over = |task: usize, after: i32| {
        matches!(states[task], State::Over(_)) && end(task) + after <= now
    };
    for pool in &mut problem.pools {
        pool.uses.retain(|of| !over(of.task, of.after));
    }
    let after = problem.ovens.after;
    problem.ovens.bakes.retain(|bake| !over(bake.task, after));
    let links = &problem.links;
    for store in &mut problem.stores {
        store.stays.retain(|(link, _)| states[links[*link].to] == State::Open);
    }
    overdue.dedup();
    overdue
}

/// What is said may hold more than there is: two at one mixer. It is so, then, and must not
/// forbid every plan: what is too much is taken not to use it.
///
/// What will stand on a shelf when it is done may find room by then; where that leaves no
/// plan (`crowded`), it stands there all the same.
pub(in crate::plan) fn make_room(
    draft: &mut ClassDraft,
    states: &[State],
    left: &[usize],
    now: i32,
    crowded: bool,
) {
    let problem = &mut draft.problem;
    let starts: Vec<i32> = problem
        .tasks
        .iter()
        .map(|task| task.starts.first().map_or(0, |at| at.0))
        .collect();
    let known = |task: usize| states[task] != State::Open;
    for at in 0..problem.pools.len() {
        let uses = std::mem::take(&mut problem.pools[at].uses);
        let loads = uses.iter().map(|of| (known(of.task), problem.load(of, &starts)));
        let kept = kept(loads.collect(), problem.pools[at].capacity);
        let uses = uses.into_iter().zip(kept).filter(|(_, kept)| *kept);
        problem.pools[at].uses = uses.map(|(of, _)| of).collect();
    }
    for store in &mut problem.stores {
        let stands = |(link, amount): &(usize, i32)| {
            let own = &problem.links[*link];
            let there = matches!(states[own.from], State::Over(end) if end <= now);
            let there = there || (crowded && known(own.from));
            // What was taken out again, or by those who went home, is in nobody's way.
            let there = there && !known(own.to) && !left.contains(&own.to);
            (there, Load { from: 0, to: 1, amount: *amount })
        };
        let kept = kept(store.stays.iter().map(stands).collect(), store.capacity);
        let mut kept = kept.into_iter();
        store.stays.retain(|_| kept.next().unwrap_or(true));
    }
    ovens(problem, &starts, &known);
}

/// Of what is known those that go together, the first ones first; and all that is not known.
fn kept(loads: Vec<(bool, Load)>, capacity: i32) -> Vec<bool> {
    let mut order: Vec<usize> = (0..loads.len()).filter(|at| loads[*at].0).collect();
    order.sort_by_key(|at| (loads[*at].1.from, *at));
    let mut keeps: Vec<bool> = loads.iter().map(|(known, _)| !known).collect();
    let mut there: Vec<Load> = Vec::new();
    for at in order {
        there.push(loads[at].1);
        keeps[at] = peak(&there) <= capacity;
        if !keeps[at] {
            there.pop();
        }
    }
    keeps
}

/// Bakes that run are where they were announced, or where there is room for them.
fn ovens(problem: &mut Problem, starts: &[i32], known: &impl Fn(usize) -> bool) {
    let bakes = std::mem::take(&mut problem.ovens.bakes);
    let (runs, open): (Vec<_>, Vec<_>) =
        bakes.into_iter().partition(|bake| known(bake.task));
    let mut inside: Vec<Vec<(Baking, Load)>> = vec![Vec::new(); problem.ovens.count];
    let trays = problem.ovens.trays;
    for mut bake in runs {
        let load = problem.baked(&bake, starts);
        let room = |oven: &usize| {
            let apart = |other: &Baking| problem.ovens.apart(other.heat, bake.heat);
            let meets =
                |(other, with): &&(Baking, Load)| with.wider(apart(other)).meets(&load);
            let there = inside[*oven].iter().filter(meets);
            let sum: i32 = there.clone().map(|(_, other)| other.amount).sum();
            sum + load.amount <= trays
                && there
                    .clone()
                    .all(|(it, with)| it.shares(&bake, [with.from, load.from]))
        };
        let own = bake.oven.filter(|oven| *oven < inside.len());
        let Some(oven) = own.into_iter().chain(0..inside.len()).find(room) else {
            continue;
        };
        inside[oven].push((bake, load));
        bake.oven = Some(oven);
        problem.ovens.bakes.push(bake);
    }
    problem.ovens.bakes.extend(open);
}

/// Batches that are still made alike: those that stand where others of their making do.
pub(in crate::plan) fn alike_again(draft: &mut ClassDraft) {
    let tasks = &draft.problem.tasks;
    let state = |batch: &Vec<usize>| -> Vec<(i32, Vec<(i32, i32)>)> {
        batch
            .iter()
            .map(|task| (tasks[*task].minutes, tasks[*task].starts.clone()))
            .collect()
    };
    let mut families: Vec<Vec<Vec<usize>>> = Vec::new();
    for batches in &draft.problem.families {
        let from = families.len();
        for batch in batches {
            let same =
                families[from..].iter().position(|own| state(&own[0]) == state(batch));
            match same {
                Some(at) => families[from + at].push(batch.clone()),
                None => families.push(vec![batch.clone()]),
            }
        }
    }
    draft.problem.families = families;
}
