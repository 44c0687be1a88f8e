//! The day itself: what has happened is fixed as it happened, the rest is planned anew, and
//! as little as can be of what was announced is changed.

use std::collections::BTreeMap;

use crate::model::{Said, What};
use crate::plan::answer::timetable::Caveat;
use crate::plan::question::class::ClassDraft;
use crate::plan::question::kind::Kind;
use crate::plan::question::problem::Layout;

use super::fixing::{fix, loosen, make_room};
use super::hearing::Day;
use super::lost::{Out, leave, out, skip};
use super::spot::{Spot, Unheard};

/// What became of a task by now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) enum State {
    /// It is over, and ended no later than this minute.
    Over(i32),
    /// It runs since this minute.
    Runs(i32),
    /// It is not begun.
    Open,
}

/// What holds from one replanning to the next.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Held {
    /// When each task began, or is announced to begin.
    pub(in crate::plan) starts: Vec<i32>,
    /// The oven of each bake, by its task.
    pub(in crate::plan) ovens: BTreeMap<usize, usize>,
    /// By how many minutes each task may have ended earlier than it is known to.
    pub(in crate::plan) unsure: Vec<i32>,
    /// Until when it is known what happened.
    pub(in crate::plan) known: i32,
    /// Oven loads, and what everybody does together, that were spoken of when something was
    /// last said.
    pub(in crate::plan) told: Vec<usize>,
    /// Tasks of those who went home.
    pub(in crate::plan) left: Vec<usize>,
    /// Steps that are left out.
    pub(in crate::plan) skipped: Vec<Spot>,
    /// Kit that is out of order, or was.
    pub(in crate::plan) outs: Vec<Out>,
}

impl Held {
    /// What holds before anything is said: the plan.
    pub(in crate::plan) fn new(draft: &ClassDraft, planned: &Layout) -> Self {
        let tasks = draft.problem.tasks.len();
        let mut held = Self {
            starts: Vec::new(),
            ovens: BTreeMap::new(),
            unsure: vec![0; tasks],
            known: i32::MIN,
            told: Vec::new(),
            left: Vec::new(),
            skipped: Vec::new(),
            outs: Vec::new(),
        };
        held.announce(draft, planned);
        held
    }

    /// Takes a plan as announced. Ovens that are only stood for by their loss have no task of
    /// the class.
    pub(in crate::plan) fn announce(&mut self, draft: &ClassDraft, planned: &Layout) {
        let tasks = self.unsure.len();
        self.starts = planned.starts[..tasks].to_vec();
        let bakes = draft.problem.ovens.bakes.iter().zip(&planned.ovens);
        let own = bakes.filter(|(bake, _)| bake.task < tasks);
        self.ovens.extend(own.map(|(bake, oven)| (bake.task, *oven)));
    }
}

/// A question from now on.
pub(in crate::plan) struct Adjusted {
    /// The question.
    pub(in crate::plan) draft: ClassDraft,
    /// What holds after what was said.
    pub(in crate::plan) held: Held,
    /// Tasks that are not begun.
    pub(in crate::plan) open: Vec<usize>,
    /// What must be known.
    pub(in crate::plan) notes: Vec<Caveat>,
}

/// Fixes what has happened by minute `now`. Who is not spoken of has kept to what was
/// announced, and so has everybody of whom is said what the plan says.
///
/// Where shelves are `crowded`, what is begun may stand on them beyond their room.
///
/// A step that is said to be done, later than planned, ended now where no time is given: so
/// no rest that follows is cut short.
///
/// # Errors
/// What cannot be taken in.
pub(in crate::plan) fn adjust(
    draft: &ClassDraft,
    held: &Held,
    now: i32,
    crowded: bool,
    said: &[Said],
) -> Result<Adjusted, Unheard> {
    if now < held.known {
        return Err(Unheard::Early);
    }
    let (mut draft, mut held) = (draft.clone(), held.clone());
    held.skipped.iter().for_each(|spot| skip(&mut draft, *spot));
    let mut day = Day::new(&draft, &held, now);
    for one in said {
        day.hear(one)?;
    }
    day.shown();
    day.gathered();
    let Day { states, floors, skipped, skipped_together, told, .. } = day;
    for spot in skipped {
        let own = draft.units[spot.0].batch.steps[spot.1].tasks();
        if own.iter().all(|task| states[*task] == State::Open) {
            skip(&mut draft, spot);
            held.skipped.push(spot);
        }
    }
    let open = skipped_together.into_iter().filter(|task| states[*task] == State::Open);
    held.left.extend(open);
    loosen_gatherings(&mut draft, &states, &held.starts, &floors, now);
    let problem = &mut draft.problem;
    let promised = problem.links.iter().map(|link| problem.gap(link, &held.starts));
    problem.promised = promised.collect();
    fix(&mut draft, &mut held, (now, &states, &floors));
    let notes = loosen(&mut draft, &held.left, now, &states);
    for one in said.iter().filter(|one| one.what == What::Gone) {
        let own = draft.units.iter().filter(|unit| unit.is_of(&one.of));
        let tasks = own.flat_map(|unit| unit.batch.tasks.clone());
        held.left.extend(tasks.filter(|task| states[*task] == State::Open));
    }
    make_room(&mut draft, &states, &held.left, now, crowded);
    for one in said {
        out(&draft, &mut held, one, now)?;
    }
    leave(&mut draft, &held.left, now);
    super::lost::stop(&mut draft, &held.outs, now);
    draft.problem.alike = Vec::new();
    super::fixing::alike_again(&mut draft);
    draft.problem.announced = held.starts.clone();
    draft.problem.announced.resize(draft.problem.tasks.len(), now);
    (held.known, held.told) = (now, told);
    let open = (0..states.len())
        .filter(|task| states[*task] == State::Open && !held.left.contains(task));
    Ok(Adjusted { open: open.collect(), draft, held, notes })
}

/// What is done together in the session under way and not begun may begin at any time until
/// that closes.
fn loosen_gatherings(
    draft: &mut ClassDraft,
    states: &[State],
    starts: &[i32],
    floors: &BTreeMap<usize, i32>,
    now: i32,
) {
    let problem = &mut draft.problem;
    for of in &draft.gatherings {
        let Some((first, _)) = problem.tasks[of.task].span() else { continue };
        let session = problem.sessions.get(problem.session(first)).copied();
        let (Some((opens, closes)), State::Open) = (session, states[of.task]) else {
            continue;
        };
        if opens > now {
            continue;
        }
        let task = &mut problem.tasks[of.task];
        if let [(from, to)] = task.starts.as_mut_slice() {
            *from = (*from).min(starts[of.task]);
            // Who arrives late arrives as soon as is said, and no later.
            let latest = if of.kind == Kind::Arrival {
                floors.get(&of.task).copied().unwrap_or(*to)
            } else {
                closes - task.minutes
            };
            *to = (*to).max(latest).max(*from);
        }
    }
}
