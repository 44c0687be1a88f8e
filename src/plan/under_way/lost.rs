//! What an evening loses: kit that is out of order, a group that goes home, a step that is
//! left out.

use crate::model::{KitKind, Of, Said, What, Which};
use crate::plan::question::class::{ClassDraft, PoolName};
use crate::plan::question::problem::{Baking, Claim, Problem, Task};

use super::spot::{Spot, Unheard};
use super::today::Held;

/// A heat that no bake has.
const NO_HEAT: i32 = -1;

/// Kit that is out of order, or was.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Out {
    kit: KitKind,
    amount: i32,
    /// Which oven it is.
    oven: Option<usize>,
    from: i32,
    /// When it is in order again.
    until: Option<i32>,
}

/// Takes in what is said of kit.
///
/// # Errors
/// Where the class does not count so much of it.
pub(in crate::plan) fn out(
    draft: &ClassDraft,
    held: &mut Held,
    said: &Said,
    now: i32,
) -> Result<(), Unheard> {
    let Of::Kit(kit, which) = &said.of else { return Ok(()) };
    let (kit, capacity) = known(draft, kit)?;
    let unknown = || Unheard::NoKit(kit.name());
    let gone = |of: &&mut Out| of.kit == kit && of.until.is_none_or(|until| until > now);
    if said.what == What::Back {
        let mut back: Vec<&mut Out> = held.outs.iter_mut().filter(gone).collect();
        if let Which::Number(number) = which {
            back.retain(|of| of.oven.is_none_or(|oven| oven == *number as usize));
        }
        let count = if let Which::Some(count) = which { *count as usize } else { 1 };
        if back.len() < count {
            return Err(unknown());
        }
        back.into_iter().take(count).for_each(|of| of.until = Some(now));
        return Ok(());
    }
    let lost: i32 = held.outs.iter_mut().filter(gone).map(|of| of.amount).sum();
    let more = if let Which::Some(count) = which { *count } else { 1 };
    let more = i32::try_from(more).unwrap_or(i32::MAX);
    if more.saturating_add(lost) > capacity {
        return Err(unknown());
    }
    if let Which::Number(number) = which
        && i64::from(*number) >= i64::from(capacity)
    {
        return Err(unknown());
    }
    for _ in 0..more {
        let oven = (kit == KitKind::Oven).then(|| match which {
            Which::Number(number) => *number as usize,
            Which::Some(_) => free_oven(&draft.problem, held, now),
        });
        let from = oven.map_or(now, |oven| free(&draft.problem, oven, now));
        held.outs.push(Out { kit: kit.clone(), amount: 1, oven, from, until: None });
    }
    Ok(())
}

/// A kind of kit by its name or the beginning of it, and how much the class has.
fn known(draft: &ClassDraft, said: &str) -> Result<(KitKind, i32), Unheard> {
    let mut all: Vec<(KitKind, i32)> = Vec::new();
    let count = i32::try_from(draft.problem.ovens.count).unwrap_or(i32::MAX);
    all.extend((count > 0).then_some((KitKind::Oven, count)));
    for (name, pool) in draft.pools.iter().zip(&draft.problem.pools) {
        if let PoolName::Kit(kit) = name {
            all.push((kit.clone(), pool.capacity));
        }
    }
    let exact = all.iter().filter(|(kit, _)| kit.name() == said);
    let found: Vec<_> = match exact.clone().count() {
        0 => all.iter().filter(|(kit, _)| kit.name().starts_with(said)).collect(),
        _ => exact.collect(),
    };
    match found.as_slice() {
        [(kit, capacity)] => Ok((kit.clone(), *capacity)),
        _ => Err(Unheard::NoKit(said.to_owned())),
    }
}

/// When what is in an oven now is done, and the oven free again.
fn free(problem: &Problem, oven: usize, now: i32) -> i32 {
    let inside = problem.ovens.bakes.iter().filter(|bake| bake.oven == Some(oven));
    let ends = inside.filter_map(|bake| {
        let task = &problem.tasks[bake.task];
        Some(task.starts.first()?.0 + task.minutes + problem.ovens.after)
    });
    ends.max().unwrap_or(now).max(now)
}

/// The oven that is free first, of those that are not out already.
fn free_oven(problem: &Problem, held: &Held, now: i32) -> usize {
    let out = |oven: &usize| {
        held.outs.iter().any(|of| of.oven == Some(*oven) && of.until.is_none())
    };
    let ovens = (0..problem.ovens.count).filter(|oven| !out(oven));
    // Of those that are free the last: the first ones are used first.
    let order = |oven: &usize| (free(problem, *oven, now), std::cmp::Reverse(*oven));
    ovens.min_by_key(order).unwrap_or(0)
}

/// Kit that is out of order is taken from when what is in it is done until it is in order
/// again, or the end, in each session anew: between them nobody works.
pub(in crate::plan) fn stop(draft: &mut ClassDraft, outs: &[Out], now: i32) {
    let last = draft.problem.sessions.last().map_or(now, |session| session.1);
    for of in outs {
        let to = of.until.unwrap_or(last);
        // What is said later may have something run in it still.
        let from = match of.oven {
            Some(oven) => free(&draft.problem, oven, now.max(of.from)),
            None => of.from,
        };
        let spans: Vec<(i32, i32)> = draft.problem.sessions.clone();
        for (opens, closes) in spans {
            let (from, to) = (from.max(opens), to.min(closes));
            if to > now.max(from) {
                take(draft, of, (from, to));
            }
        }
    }
}

/// How much of each kind of kit is out of order now.
pub(super) fn lacking(outs: &[Out], now: i32) -> Vec<(KitKind, u32)> {
    let mut found: Vec<(KitKind, u32)> = Vec::new();
    for of in outs.iter().filter(|of| of.until.is_none_or(|until| until > now)) {
        let amount = u32::try_from(of.amount).unwrap_or(0);
        match found.iter_mut().find(|(kit, _)| *kit == of.kit) {
            Some((_, count)) => *count += amount,
            None => found.push((of.kit.clone(), amount)),
        }
    }
    found
}

/// Takes kit for a span of time.
fn take(draft: &mut ClassDraft, of: &Out, (from, to): (i32, i32)) {
    let problem = &mut draft.problem;
    problem.tasks.push(Task { minutes: to - from, starts: vec![(from, from)], grid: 1 });
    let task = problem.tasks.len() - 1;
    problem.outages.push(task);
    if of.oven.is_some() {
        let trays = problem.ovens.trays;
        problem.ovens.bakes.push(Baking {
            task,
            trays,
            heat: NO_HEAT,
            phases: None,
            oven: of.oven,
        });
        return;
    }
    let name = PoolName::Kit(of.kit.clone());
    if let Some(at) = draft.pools.iter().position(|known| *known == name) {
        problem.pools[at].uses.push(Claim { task, amount: of.amount, after: 0 });
    }
}

/// Who has gone home does nothing more, and needs nothing.
pub(in crate::plan) fn leave(draft: &mut ClassDraft, leave: &[usize], now: i32) {
    let problem = &mut draft.problem;
    for task in leave {
        problem.tasks[*task] = Task { minutes: 0, starts: vec![(now, now)], grid: 1 };
    }
    let left = |task: usize| leave.contains(&task);
    let mut stays = vec![true; problem.links.len()];
    for (at, link) in problem.links.iter_mut().enumerate() {
        if left(link.to) || left(link.from) {
            stays[at] = false;
            (link.least, link.usual, link.most, link.crosses) =
                (i32::MIN / 4, None, None, true);
        }
    }
    problem.pools.iter_mut().for_each(|pool| pool.uses.retain(|of| !left(of.task)));
    problem.ovens.bakes.retain(|bake| !left(bake.task));
    for store in &mut problem.stores {
        store.stays.retain(|(link, _)| stays[*link]);
    }
    draft.left.extend(leave);
}

/// A step that is left out takes no time and no kit, and nothing waits for its rest.
pub(in crate::plan) fn skip(draft: &mut ClassDraft, (unit, at): Spot) {
    let steps = &draft.units[unit].batch.steps;
    let step = &steps[at];
    let own = step.tasks();
    let next = steps.iter().filter(|other| other.after.contains(&at));
    let next: Vec<usize> = next.flat_map(|other| other.entries()).collect();
    let problem = &mut draft.problem;
    own.iter().for_each(|task| problem.tasks[*task].minutes = 0);
    problem
        .pools
        .iter_mut()
        .for_each(|pool| pool.uses.retain(|of| !own.contains(&of.task)));
    problem.ovens.bakes.retain(|bake| !own.contains(&bake.task));
    for (link, it) in problem.links.iter_mut().enumerate() {
        let behind = step.exits.contains(&it.from) && next.contains(&it.to);
        if step.waits && (behind || step.stays.contains(&link)) {
            (it.least, it.usual) = (0, it.usual.map(|_| 0));
        }
    }
    draft.left.extend(own);
}
