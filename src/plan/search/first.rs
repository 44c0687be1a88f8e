//! The first plan: unit by unit, every task as early as what is laid out already lets it
//! be; where a lag would grow too long, or a shelf too full, what came before is moved later
//! and the unit is laid out anew.

use crate::plan::question::problem::{Layout, Problem};

use super::board::Board;

/// How often one unit is laid out anew before it is given up.
const MOST_TRIES: usize = 400;

/// How a first plan is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) struct Tactic {
    /// With the recipe's usual waits rather than the least.
    pub(in crate::plan) usual: bool,
    /// Units from the last to the first.
    pub(in crate::plan) backwards: bool,
}

/// The best of a few first plans; `None` where none of them works out.
pub(in crate::plan) fn first(problem: &Problem) -> Option<Layout> {
    let ways = [(true, false), (false, false), (true, true), (false, true)];
    let plans = ways.iter().filter_map(|(usual, backwards)| {
        lay_out(problem, Tactic { usual: *usual, backwards: *backwards })
    });
    let sound = plans.filter(|plan| problem.broken(plan).is_empty());
    sound.min_by_key(|plan| (problem.waiting(&plan.starts), problem.second(&plan.starts)))
}

fn lay_out(problem: &Problem, way: Tactic) -> Option<Layout> {
    let mut units: Vec<Vec<usize>> = problem.units.clone();
    if units.is_empty() {
        units = in_order(problem).into_iter().map(|task| vec![task]).collect();
    }
    if way.backwards && !units.is_empty() {
        // The first unit is the one that the others watch.
        units[1..].reverse();
    }
    lay(problem, &units, way.usual)
}

/// Lays out the units one after the other; `None` where one of them finds no place.
pub(in crate::plan) fn lay(
    problem: &Problem,
    units: &[Vec<usize>],
    usual: bool,
) -> Option<Layout> {
    lay_from(problem, units, usual, &[])
}

/// Likewise, no task earlier than its floor, if there are any.
pub(in crate::plan) fn lay_from(
    problem: &Problem,
    units: &[Vec<usize>],
    usual: bool,
    floors: &[i32],
) -> Option<Layout> {
    let mut board = Board::new(problem, usual);
    let lay = |unit: &Vec<usize>| lay_unit(&mut board, unit, floors);
    units.iter().all(lay).then(|| board.layout())
}

/// Every task after those it waits for, those with the longest way to go first.
pub(in crate::plan) fn in_order(problem: &Problem) -> Vec<usize> {
    let tails = super::bounds::tails(problem);
    ordered(problem, |task| tails[task])
}

/// Every task after those it waits for, those of the greatest worth first; before them what
/// everybody takes part in.
pub(in crate::plan) fn ordered(
    problem: &Problem,
    worth: impl Fn(usize) -> i32,
) -> Vec<usize> {
    let count = problem.tasks.len();
    let mut open = vec![0; count];
    let mut next = vec![Vec::new(); count];
    for link in &problem.links {
        open[link.to] += 1;
        next[link.from].push(link.to);
    }
    let mut gathered = vec![false; count];
    problem.gathered.iter().for_each(|task| gathered[*task] = true);
    let key = |task: usize| (gathered[task], worth(task), std::cmp::Reverse(task));
    let mut ready: std::collections::BinaryHeap<_> =
        (0..count).filter(|task| open[*task] == 0).map(key).collect();
    let mut order = Vec::with_capacity(count);
    while let Some((_, _, std::cmp::Reverse(task))) = ready.pop() {
        order.push(task);
        for to in &next[task] {
            open[*to] -= 1;
            if open[*to] == 0 {
                ready.push(key(*to));
            }
        }
    }
    order
}

/// Lays out one unit; `false` where it cannot be done.
fn lay_unit(board: &mut Board, unit: &[usize], floors: &[i32]) -> bool {
    let mut floors = floors.to_vec();
    floors.resize(board.tasks(), i32::MIN);
    for _ in 0..MOST_TRIES {
        match pass(board, unit, &floors) {
            Pass::Done => return true,
            Pass::Later(task, from) if from > floors[task] && unit.contains(&task) => {
                floors[task] = from;
                unit.iter().for_each(|task| board.take_off(*task));
            }
            Pass::Later(..) | Pass::Never => return false,
        }
    }
    false
}

/// How laying out a unit went.
enum Pass {
    Done,
    /// This task must not start before that minute.
    Later(usize, i32),
    Never,
}

fn pass(board: &mut Board, unit: &[usize], floors: &[i32]) -> Pass {
    for task in unit {
        let place = match board.earliest(*task, floors[*task]) {
            Ok(place) => place,
            Err(Some((task, later))) => return Pass::Later(task, later),
            Err(None) => return Pass::Never,
        };
        if let Some((task, later)) = board.too_long(*task, place.start) {
            return Pass::Later(task, later);
        }
        board.put(*task, place);
    }
    Pass::Done
}
