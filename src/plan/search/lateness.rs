//! How much waiting no plan can do without.
//!
//! A task begins, on the clock that stands still between sessions, no later than the usual
//! times along the longest way from a fixed moment to it let it, plus all lateness on that way.
//! So the lateness of a batch is at least its start of any one of its tasks less that way; and
//! of tasks that share something only so many can begin before others have ended. Batches have
//! no task in common: what each of them must wait adds up.

use crate::plan::question::problem::{Baking, Claim, Problem};

/// The least waiting, in minutes of work time, all tasks together. Ranges must be narrowed.
pub(in crate::plan) fn least(problem: &Problem) -> i32 {
    let ways = ways(problem);
    let families = problem.families.iter();
    families.map(|batches| family(problem, &ways, batches)).sum()
}

/// Batches that are made alike: the place in them at which they must wait most.
fn family(problem: &Problem, ways: &[Option<i32>], batches: &[Vec<usize>]) -> i32 {
    let places = batches.first().map_or(0, Vec::len);
    let at = |place: usize| {
        let tasks: Vec<usize> =
            batches.iter().filter_map(|batch| batch.get(place).copied()).collect();
        together(problem, ways, &tasks)
    };
    (0..places).map(at).max().unwrap_or(0)
}

/// The least lateness of these tasks of different batches, and of what is before them.
fn together(problem: &Problem, ways: &[Option<i32>], tasks: &[usize]) -> i32 {
    // The longest way counts for all: that is less waiting, never more.
    let Some(way) = tasks.iter().map(|task| ways[*task]).collect::<Option<Vec<i32>>>()
    else {
        return 0;
    };
    let way = way.into_iter().max().unwrap_or(0);
    let heads = tasks.iter().map(|task| problem.tasks[*task].span().map(|span| span.0));
    let Some(head) = heads.min().flatten() else { return 0 };
    let pools = problem.pools.iter().filter_map(|pool| {
        let uses = tasks.iter().map(|task| pool.uses.iter().find(|of| of.task == *task));
        let uses: Vec<&Claim> = uses.collect::<Option<_>>()?;
        let least = uses.iter().map(|of| of.amount).min()?.max(1);
        let minutes = uses.iter().map(|of| problem.tasks[of.task].minutes + of.after);
        Some((pool.capacity / least, minutes.min()?))
    });
    let ovens = &problem.ovens;
    let bakes = tasks.iter().map(|task| ovens.bakes.iter().find(|of| of.task == *task));
    let bakes: Option<Vec<&Baking>> = bakes.collect();
    let baked = bakes.and_then(|bakes| {
        let least = bakes.iter().map(|of| of.trays).min()?.max(1);
        let minutes = bakes.iter().map(|of| problem.tasks[of.task].minutes);
        let count = i32::try_from(ovens.count).ok()?;
        Some((count * (ovens.trays / least), minutes.min()? + ovens.after))
    });
    // Of what is shared by nobody all may begin at once.
    let shared = pools.chain(baked).chain([(i32::MAX, 0)]);
    let each = shared.map(|(at_once, minutes)| {
        let starts = in_turn(problem, head, at_once, minutes, tasks.len());
        starts.map(|start| (start - way).max(0)).sum::<i32>()
    });
    each.max().unwrap_or(0)
}

/// The earliest starts of so many tasks of which so many go on at once, on the clock that
/// stands still between sessions. What is free again only after a session has closed is free
/// when the next one opens.
fn in_turn(
    problem: &Problem,
    head: i32,
    at_once: i32,
    minutes: i32,
    count: usize,
) -> impl Iterator<Item = i32> {
    let at_once = usize::try_from(at_once).unwrap_or(1).max(1);
    let turns = count.div_ceil(at_once);
    let mut minute = head;
    let mut starts = Vec::with_capacity(turns);
    for _ in 0..turns {
        starts.push(problem.class_clock(minute));
        minute += minutes;
        // In a pause nothing begins: the next session's opening is the same on that clock.
        let open = problem.sessions.get(problem.session(minute));
        if open.is_some_and(|(_, closes)| minute > *closes) {
            let next = problem.sessions.get(problem.session(minute) + 1);
            minute = next.map_or(minute, |next| next.0.max(minute));
        }
    }
    (0..count).map(move |at| starts[at / at_once])
}

/// For each task the longest way to it from fixed moments, by the usual times, on the clock
/// that stands still; `None` where it does not hang on such moments alone.
fn ways(problem: &Problem) -> Vec<Option<i32>> {
    let counted = problem.counted();
    let mut ways = vec![None; problem.tasks.len()];
    for task in super::first::ordered(problem, |_| 0) {
        let links = &counted[task];
        ways[task] = if links.is_empty() {
            match problem.tasks[task].starts.as_slice() {
                [(from, to)] if from == to => Some(problem.class_clock(*from)),
                _ => None,
            }
        } else {
            let way = links.iter().map(|at| {
                let link = &problem.links[*at];
                let before: Option<i32> = ways[link.from];
                let minutes = problem.tasks[link.from].minutes;
                before.map(|before| before + minutes + link.usual.unwrap_or(0))
            });
            way.collect::<Option<Vec<i32>>>().and_then(|all| all.into_iter().max())
        };
    }
    ways
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::question::problem::{Link, Pool, Task};

    /// Seven batches whose first step takes 10 minutes at one of `mixers`, opening at 0.
    fn question(mixers: i32) -> Problem {
        let mut problem =
            Problem { sessions: vec![(0, 200), (1000, 1200)], ..Problem::default() };
        let starts = vec![(0, 0)];
        problem.tasks.push(Task { minutes: 0, starts, grid: 1 });
        let mut pool = Pool { capacity: mixers, uses: Vec::new() };
        let mut batches = Vec::new();
        for _ in 0..7 {
            let task = problem.task(10);
            pool.uses.push(Claim { task, amount: 1, after: 5 });
            let usual = Some(0);
            let (from, to) = (0, task);
            let link = Link { from, to, least: 0, usual, most: None, crosses: true };
            problem.links.push(link);
            batches.push(vec![task]);
        }
        problem.pools = vec![pool];
        problem.families = vec![batches];
        problem
    }

    #[test]
    fn who_comes_second_to_a_mixer_waits() {
        assert_eq!(least(&question(7)), 0);
        assert_eq!(least(&question(4)), 3 * 15);
        assert_eq!(least(&question(1)), (1..7).map(|turn| turn * 15).sum::<i32>());
        // No plan has less: one after the other is such a plan.
        let starts: Vec<i32> =
            std::iter::once(0).chain((0..7).map(|turn| turn * 15)).collect();
        assert_eq!(question(1).waiting(&starts), least(&question(1)));
    }

    #[test]
    fn a_night_is_no_waiting() {
        let mut late = question(1);
        // 19 and more do not go into 200 minutes; the clock stands still in between.
        late.sessions = vec![(0, 40), (1000, 1200)];
        let starts = [0, 0, 15, 30, 1000, 1015, 1030, 1045];
        assert!(least(&late) <= late.waiting(&starts), "{}", least(&late));
    }
}
