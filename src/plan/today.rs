//! The day itself: what has happened is fixed as it happened, the rest is planned anew, and
//! as little as can be of what was announced is changed.

use std::collections::BTreeMap;

use super::class::ClassDraft;
use super::day::{Of, Said, What};
use super::fixing::{fix, loosen, make_room};
use super::lost::{Out, leave, out, skip};
use super::problem::Layout;
use super::spot::{Spot, Unheard};
use super::timetable::Note;

/// Minutes in which what should be over by now will be.
const SOON: i32 = 5;

/// What became of a task by now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum State {
    /// It is over, and ended no later than this minute.
    Over(i32),
    /// It runs since this minute.
    Runs(i32),
    /// It is not begun.
    Open,
}

/// What holds from one replanning to the next.
#[derive(Clone, Debug)]
pub(super) struct Held {
    /// When each task began, or is announced to begin.
    pub(super) starts: Vec<i32>,
    /// The oven of each bake, by its task.
    pub(super) ovens: BTreeMap<usize, usize>,
    /// By how many minutes each task may have ended earlier than it is known to.
    pub(super) unsure: Vec<i32>,
    /// Until when it is known what happened.
    pub(super) known: i32,
    /// Tasks of those who went home.
    pub(super) left: Vec<usize>,
    /// Steps that are left out.
    pub(super) skipped: Vec<Spot>,
    /// Kit that is out of order, or was.
    pub(super) outs: Vec<Out>,
}

impl Held {
    /// What holds before anything is said: the plan.
    pub(super) fn new(draft: &ClassDraft, planned: &Layout) -> Self {
        let tasks = draft.problem.tasks.len();
        let mut held = Self {
            starts: Vec::new(),
            ovens: BTreeMap::new(),
            unsure: vec![0; tasks],
            known: i32::MIN,
            left: Vec::new(),
            skipped: Vec::new(),
            outs: Vec::new(),
        };
        held.announce(draft, planned);
        held
    }

    /// Takes a plan as announced. Ovens that are only stood for by their loss have no task of
    /// the class.
    pub(super) fn announce(&mut self, draft: &ClassDraft, planned: &Layout) {
        let tasks = self.unsure.len();
        self.starts = planned.starts[..tasks].to_vec();
        let bakes = draft.problem.ovens.bakes.iter().zip(&planned.ovens);
        let own = bakes.filter(|(bake, _)| bake.task < tasks);
        self.ovens.extend(own.map(|(bake, oven)| (bake.task, *oven)));
    }
}

/// A question from now on.
pub(super) struct Adjusted {
    /// The question.
    pub(super) draft: ClassDraft,
    /// What holds after what was said.
    pub(super) held: Held,
    /// Tasks that are not begun.
    pub(super) open: Vec<usize>,
    /// What must be known.
    pub(super) notes: Vec<Note>,
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
pub(super) fn adjust(
    draft: &ClassDraft,
    held: &Held,
    (now, crowded): (i32, bool),
    said: &[Said],
) -> Result<Adjusted, Unheard> {
    if now < held.known {
        return Err(Unheard::Early);
    }
    let (mut draft, mut held) = (draft.clone(), held.clone());
    held.skipped.iter().for_each(|spot| skip(&mut draft, *spot));
    let mut day = Day {
        draft: &draft,
        held: &held,
        now,
        states: Vec::new(),
        floors: BTreeMap::new(),
        skipped: Vec::new(),
    };
    day.as_planned();
    for one in said {
        day.hear(one)?;
    }
    day.shown();
    let Day { states, floors, skipped, .. } = day;
    for spot in skipped {
        let own = draft.units[spot.0].strand.steps[spot.1].tasks();
        if own.iter().all(|task| states[*task] == State::Open) {
            skip(&mut draft, spot);
            held.skipped.push(spot);
        }
    }
    fix(&mut draft, &mut held, (now, &states, &floors));
    let notes = loosen(&mut draft, &held.left, (now, &states));
    make_room(&mut draft, &states, (now, crowded));
    for one in said {
        out(&draft, &mut held, one, now)?;
        if one.what == What::Gone {
            let own = draft.units.iter().filter(|unit| one.is_of(unit));
            let tasks = own.flat_map(|unit| unit.strand.tasks.clone());
            held.left.extend(tasks.filter(|task| states[*task] == State::Open));
        }
    }
    leave(&mut draft, &held.left, now);
    super::lost::stop(&mut draft, &held.outs, now);
    draft.problem.alike = Vec::new();
    super::fixing::alike_again(&mut draft);
    draft.problem.announced = held.starts.clone();
    draft.problem.announced.resize(draft.problem.tasks.len(), now);
    held.known = now;
    let open = (0..states.len())
        .filter(|task| states[*task] == State::Open && !held.left.contains(task));
    Ok(Adjusted { open: open.collect(), draft, held, notes })
}

struct Day<'a> {
    draft: &'a ClassDraft,
    held: &'a Held,
    now: i32,
    states: Vec<State>,
    /// Who is late begins what should have begun no earlier than that.
    floors: BTreeMap<usize, i32>,
    skipped: Vec<Spot>,
}

impl Day<'_> {
    fn minutes(&self, task: usize) -> i32 {
        self.draft.problem.tasks[task].minutes
    }

    /// What the plan makes of a task by now, `late` minutes behind it.
    fn by_plan(&self, task: usize, late: i32) -> State {
        let start = self.held.starts[task] + late;
        let end = start + self.minutes(task);
        if end <= self.now && start < self.now {
            State::Over(end)
        } else if start < self.now {
            State::Runs(start)
        } else {
            State::Open
        }
    }

    fn as_planned(&mut self) {
        self.states = (0..self.draft.problem.tasks.len())
            .map(|task| self.by_plan(task, 0))
            .collect();
        self.held.left.iter().for_each(|task| self.states[*task] = State::Open);
    }

    /// The minute of a time of day: the last one that is not after now.
    fn minute(&self, time: Option<i32>) -> i32 {
        let Some(time) = time else { return self.now };
        let local = self.draft.clock.local(self.now);
        let today = i32::from(local.hour()) * 60 + i32::from(local.minute());
        self.now - (today - time).rem_euclid(24 * 60)
    }

    fn hear(&mut self, said: &Said) -> Result<(), Unheard> {
        match &said.what {
            What::Done(step, at) => {
                let at_minute = self.minute(*at);
                for spot in self.steps(said, (step, State::Over(at_minute)))? {
                    if at.is_some() || !self.expected(spot) {
                        self.done(spot, at_minute);
                    }
                }
            }
            What::Begun(step, at) => {
                let at = self.minute(*at);
                for spot in self.steps(said, (step, State::Runs(at)))? {
                    self.begun(spot, at);
                }
            }
            What::Skipped(step) => {
                let spots = self.draft.spots(said, step)?;
                self.skipped.extend(spots);
            }
            What::Late(late) => {
                self.tasks_of(said)?.for_each(|task| self.late(task, *late));
            }
            What::Nothing => {
                self.tasks_of(said)?.for_each(|task| self.states[task] = State::Open);
            }
            What::Gone => drop(self.tasks_of(said)?),
            What::Out | What::Back => {}
        }
        Ok(())
    }

    /// The tasks of those of whom something is said.
    fn tasks_of(&self, said: &Said) -> Result<std::vec::IntoIter<usize>, Unheard> {
        let units = self.draft.units.iter().filter(|unit| said.is_of(unit));
        let tasks: Vec<usize> =
            units.flat_map(|unit| unit.strand.tasks.clone()).collect();
        if tasks.is_empty() { Err(Unheard::NoGroup) } else { Ok(tasks.into_iter()) }
    }

    /// What is known to be over stays; the rest is so much behind its plan.
    fn late(&mut self, task: usize, late: i32) {
        let start = self.held.starts[task];
        if start + self.minutes(task) <= self.held.known {
            return;
        }
        self.states[task] = self.by_plan(task, late);
        if self.states[task] == State::Open && start < self.now {
            self.floors.insert(task, start + late);
        }
    }

    /// The batches with a step. A demonstration that is no batch is known by its name too:
    /// those after it are not begun.
    fn steps(
        &mut self,
        said: &Said,
        (step, state): (&str, State),
    ) -> Result<Vec<Spot>, Unheard> {
        let found = self.draft.spots(said, step);
        let (Of::Instructor, Err(_)) = (&said.of, &found) else { return found };
        let Some(last) = self.draft.show(step) else { return found };
        let until = self.held.starts[last];
        let shows = self.draft.shows.iter().map(|show| show.task);
        for show in shows.filter(|show| self.held.starts[*show] > until) {
            self.states[show] = State::Open;
        }
        self.states[last] = state;
        Ok(Vec::new())
    }

    /// The steps of a batch that were done before one of them was.
    fn before(&self, (unit, at): Spot) -> Vec<usize> {
        let steps = &self.draft.units[unit].strand.steps;
        let mut open = steps[at].after.clone();
        let mut found = Vec::new();
        while let Some(at) = open.pop() {
            if !found.contains(&at) {
                found.push(at);
                open.extend(&steps[at].after);
            }
        }
        found
    }

    fn tasks(&self, unit: usize, step: usize) -> Vec<usize> {
        self.draft.units[unit].strand.steps[step].tasks()
    }

    /// Whether the plan says the same of now: the step is over, and no work after it is.
    fn expected(&self, spot: Spot) -> bool {
        let (unit, at) = spot;
        let over = |task: &usize| matches!(self.by_plan(*task, 0), State::Over(_));
        let steps = &self.draft.units[unit].strand.steps;
        let later =
            (0..steps.len()).filter(|step| self.before((unit, *step)).contains(&at));
        let mut later = later.flat_map(|step| self.tasks(unit, step));
        self.tasks(unit, at).iter().all(over)
            && !later.any(|task| self.minutes(task) > 0 && over(&task))
    }

    /// A step ended at that minute, and what is before it in time for that; nothing that
    /// follows has begun.
    fn done(&mut self, spot: Spot, at: i32) {
        let (unit, step) = spot;
        let own = self.tasks(unit, step);
        self.open_after(spot);
        for task in own {
            self.states[task] = State::Over(at);
        }
        self.over_before(spot, at);
    }

    fn begun(&mut self, spot: Spot, at: i32) {
        let (unit, step) = spot;
        self.open_after(spot);
        for task in self.tasks(unit, step) {
            // What should be over by now and is not, is soon.
            let over = at + self.minutes(task) <= self.now;
            self.states[task] =
                if over { State::Over(self.now + SOON) } else { State::Runs(at) };
        }
        self.over_before(spot, at);
    }

    /// Nothing that follows on a step has begun, as far as was said so far.
    fn open_after(&mut self, spot: Spot) {
        let (unit, at) = spot;
        let steps = self.draft.units[unit].strand.steps.len();
        let after = (0..steps).filter(|step| self.before((unit, *step)).contains(&at));
        let open: Vec<usize> = after.flat_map(|step| self.tasks(unit, step)).collect();
        open.into_iter().for_each(|task| self.states[task] = State::Open);
        let strand = &self.draft.units[unit].strand;
        let own = &strand.steps[at].recipe;
        let shared = !strand.recipes.contains(own);
        for (recipe, end) in strand.recipes.iter().zip(&strand.ends) {
            if shared || recipe == own {
                self.states[*end] = State::Open;
            }
        }
    }

    /// What was done before a step was over as late as that lets it have been.
    fn over_before(&mut self, spot: Spot, at: i32) {
        let (unit, _) = spot;
        let draft = self.draft;
        let order = draft.units[unit].strand.tasks.clone();
        let before = self.before(spot);
        let done: Vec<usize> =
            before.iter().flat_map(|step| self.tasks(unit, *step)).collect();
        for task in order.iter().rev().filter(|task| done.contains(task)) {
            let links = draft.problem.links.iter();
            let after =
                links.filter(|link| link.from == *task && order.contains(&link.to));
            let latest: Option<i32> = after
                .filter_map(|link| {
                    let end = match self.states[link.to] {
                        State::Over(end) => end,
                        State::Runs(start) => start + self.minutes(link.to),
                        State::Open => return None,
                    };
                    Some(end - self.minutes(link.to) - link.least)
                })
                .min();
            let latest = latest.unwrap_or(at).min(self.now);
            let known = match self.states[*task] {
                State::Over(end) if end <= latest => end,
                State::Over(_) | State::Runs(_) | State::Open => latest,
            };
            self.states[*task] = State::Over(known);
        }
    }

    /// What a group has done was shown before.
    fn shown(&mut self) {
        let draft = self.draft;
        let links = draft.problem.links.iter();
        let shows: Vec<(usize, usize)> = links
            .filter(|link| draft.shows.iter().any(|show| show.task == link.from))
            .map(|link| (link.from, link.to))
            .collect();
        for (show, task) in shows {
            if self.states[show] == State::Open && self.states[task] != State::Open {
                self.states[show] = State::Over(self.now);
            }
        }
    }
}
