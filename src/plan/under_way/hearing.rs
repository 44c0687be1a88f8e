//! What is said of a day, made facts: which tasks are over, run, or are not begun.

use std::collections::BTreeMap;

use crate::model::{Of, Said, What};
use crate::plan::question::class::{ClassDraft, PoolName};

use super::spot::{Spot, Unheard};
use super::today::{Held, State};

/// Minutes in which what should be over by now will be.
const SOON: i32 = 5;

/// What became of every task, as far as it was said so far.
pub(in crate::plan) struct Day<'a> {
    draft: &'a ClassDraft,
    held: &'a Held,
    now: i32,
    pub(in crate::plan) states: Vec<State>,
    /// Who is late begins what should have begun no earlier than that.
    pub(in crate::plan) floors: BTreeMap<usize, i32>,
    pub(in crate::plan) skipped: Vec<Spot>,
    /// What everybody does together, and is left out.
    pub(in crate::plan) skipped_together: Vec<usize>,
    /// What everybody does together, and oven loads, that were spoken of.
    pub(super) told: Vec<usize>,
}

impl<'a> Day<'a> {
    /// What the plan makes of it.
    pub(in crate::plan) fn new(draft: &'a ClassDraft, held: &'a Held, now: i32) -> Self {
        let mut day = Self {
            draft,
            held,
            now,
            states: Vec::new(),
            floors: BTreeMap::new(),
            skipped: Vec::new(),
            skipped_together: Vec::new(),
            told: Vec::new(),
        };
        day.as_planned();
        day
    }
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

    /// Takes in one thing that is said.
    ///
    /// # Errors
    /// What cannot be taken in.
    pub(in crate::plan) fn hear(&mut self, said: &Said) -> Result<(), Unheard> {
        match &said.what {
            What::Done(step, at) => {
                let at_minute = self.minute(*at);
                for spot in self.steps(said, step, State::Over(at_minute))? {
                    if at.is_some() || !self.expected(spot) {
                        self.done(spot, at_minute);
                    }
                }
            }
            What::Begun(step, at) => {
                let at = self.minute(*at);
                for spot in self.steps(said, step, State::Runs(at))? {
                    // What stands in several places one after the other begins in the first.
                    if self.draft.units[spot.0].batch.steps[spot.1].stand > 0 {
                        continue;
                    }
                    self.begun(spot, at);
                }
            }
            What::Skipped(step) => {
                match (self.together(said, step, self.now), self.draft.spots(said, step))
                {
                    (Some(task), Err(_)) => self.skipped_together.push(task),
                    (_, spots) => self.skipped.extend(spots?),
                }
            }
            What::Late(late) => {
                self.tasks_of(said)?.for_each(|task| self.late(task, *late));
                if said.of == Of::All {
                    let all = self.draft.gatherings.iter().map(|of| of.task);
                    all.for_each(|task| self.late(task, *late));
                }
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
        let units = self.draft.units.iter().filter(|unit| unit.is_of(&said.of));
        let mut tasks: Vec<usize> =
            units.flat_map(|unit| unit.batch.tasks.clone()).collect();
        if said.of == Of::Instructor {
            tasks.extend(self.draft.shows.iter().map(|show| show.task));
        }
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
        step: &str,
        state: State,
    ) -> Result<Vec<Spot>, Unheard> {
        let found = self.draft.spots(said, step);
        let (State::Over(minute) | State::Runs(minute)) = state else { return found };
        if let (Some(task), Err(_)) = (self.together(said, step, minute), &found) {
            self.states[task] = state;
            self.told.push(task);
            return Ok(Vec::new());
        }
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

    /// What everybody does together, by its name: of what every session has that of the session
    /// of the minute that is spoken of; of several in a session the first that is not over.
    fn together(&self, said: &Said, name: &str, minute: i32) -> Option<usize> {
        match said.of {
            Of::All | Of::Instructor => {}
            Of::Groups(_) | Of::Baker(..) | Of::Kit(..) => return None,
        }
        let own = self.draft.gatherings.iter();
        let mut own: Vec<usize> =
            own.filter(|of| of.is_named(name)).map(|of| of.task).collect();
        own.sort_by_key(|task| self.held.starts[*task]);
        let session = |minute: i32| self.draft.problem.session(minute);
        let here = |task: &usize| session(self.held.starts[*task]) == session(minute);
        if own.iter().any(here) {
            own.retain(here);
        }
        let open = own.iter().find(|task| !matches!(self.states[**task], State::Over(_)));
        open.or(own.last()).copied()
    }

    /// The steps of a batch that were done before one of them was.
    fn before(&self, (unit, at): Spot) -> Vec<usize> {
        let steps = &self.draft.units[unit].batch.steps;
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
        self.draft.units[unit].batch.steps[step].tasks()
    }

    /// Whether the plan says the same of now: the step is over, and no work after it is.
    fn expected(&self, spot: Spot) -> bool {
        let (unit, at) = spot;
        let over = |task: &usize| matches!(self.by_plan(*task, 0), State::Over(_));
        let steps = &self.draft.units[unit].batch.steps;
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
        let loads = self.loads(spot);
        self.open_after(spot);
        for task in own {
            // Of several oven loads the last one is meant: those known to be out are.
            let before = loads.iter().rev().skip(1).any(|load| *load == task);
            let known = matches!(self.states[task], State::Over(end) if end <= at);
            if !(before && known) {
                self.states[task] = State::Over(at);
            }
        }
        self.over_before(spot, at);
    }

    fn begun(&mut self, spot: Spot, at: i32) {
        let (unit, step) = spot;
        self.open_after(spot);
        let loads = self.loads(spot);
        let next = self.next_loads(&loads, at);
        for task in self.tasks(unit, step) {
            if loads.contains(&task) && !next.contains(&task) {
                // One that nobody spoke of, and that is not out, waits for its turn.
                if self.waits(task, at) {
                    self.states[task] = State::Open;
                }
                continue;
            }
            // What should be over by now and is not, is soon.
            let over = at + self.minutes(task) <= self.now;
            self.states[task] =
                if over { State::Over(self.now + SOON) } else { State::Runs(at) };
        }
        self.over_before(spot, at);
    }

    /// The oven loads of a step in the order of the plan, where there are several.
    fn loads(&self, (unit, step): Spot) -> Vec<usize> {
        let bakes = &self.draft.units[unit].batch.steps[step].bakes;
        let mut loads: Vec<usize> = bakes.iter().map(|(task, _)| *task).collect();
        loads.sort_by_key(|task| (self.held.starts[*task], *task));
        if loads.len() > 1 { loads } else { Vec::new() }
    }

    /// Those oven loads that are meant by what begins at a minute: the next one, and what was
    /// to go in with it.
    fn next_loads(&mut self, loads: &[usize], at: i32) -> Vec<usize> {
        let open: Vec<usize> =
            loads.iter().filter(|task| self.waits(**task, at)).copied().collect();
        let start = open.first().map(|task| self.held.starts[*task]);
        let with = |task: &usize| Some(self.held.starts[*task]) == start;
        let next: Vec<usize> = open.into_iter().filter(with).collect();
        self.told.extend(&next);
        next
    }

    /// Whether an oven load may be one that goes in at a minute: not one that is out by then,
    /// that was spoken of, or that was in the oven already when something was last said.
    fn waits(&self, task: usize, at: i32) -> bool {
        let start = self.held.starts[task];
        let was_in =
            start < at && (start < self.held.known || self.held.told.contains(&task));
        let out = matches!(self.states[task], State::Over(end) if end <= at);
        !was_in && !out && !self.told.contains(&task)
    }

    /// Nothing that follows on a step has begun, as far as was said so far.
    fn open_after(&mut self, spot: Spot) {
        let (unit, at) = spot;
        let steps = self.draft.units[unit].batch.steps.len();
        let after = (0..steps).filter(|step| self.before((unit, *step)).contains(&at));
        let open: Vec<usize> = after.flat_map(|step| self.tasks(unit, step)).collect();
        open.into_iter().for_each(|task| self.states[task] = State::Open);
        let batch = &self.draft.units[unit].batch;
        let own = &batch.steps[at].recipe;
        let shared = !batch.recipes.contains(own);
        for (recipe, end) in batch.recipes.iter().zip(&batch.ends) {
            if shared || recipe == own {
                self.states[*end] = State::Open;
            }
        }
    }

    /// What was done before a step was over as late as that lets it have been.
    fn over_before(&mut self, spot: Spot, at: i32) {
        let (unit, _) = spot;
        let draft = self.draft;
        let order = draft.units[unit].batch.tasks.clone();
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

    /// What everybody does together, and nobody spoke of, has not begun while somebody who
    /// takes part was still at work, or what it comes after was not over.
    pub(in crate::plan) fn gathered(&mut self) {
        for of in &self.draft.gatherings {
            let Some((from, to)) = self.span(of.task) else { continue };
            if !self.told.contains(&of.task) && self.kept_from(of.task, from, to) {
                self.states[of.task] = State::Open;
            }
        }
    }

    /// When a task began and ended, or will have; `None` for what is not begun.
    fn span(&self, task: usize) -> Option<(i32, i32)> {
        match self.states[task] {
            State::Over(end) => Some((end - self.minutes(task), end)),
            State::Runs(start) => Some((start, start + self.minutes(task))),
            State::Open => None,
        }
    }

    fn kept_from(&self, task: usize, from: i32, to: i32) -> bool {
        let problem = &self.draft.problem;
        let stays = |other: usize| !self.held.left.contains(&other);
        let mut into = problem.links.iter().filter(|link| link.to == task);
        let open = into.any(|link| {
            stays(link.from) && self.span(link.from).is_none_or(|span| span.1 > from)
        });
        let groups = self.draft.pools.iter().zip(&problem.pools);
        let mut groups = groups.filter(|(name, pool)| {
            matches!(name, PoolName::Group(_))
                && pool.uses.iter().any(|of| of.task == task)
        });
        let at_work = |other: usize| {
            let span = self.span(other).filter(|_| other != task && stays(other));
            span.is_some_and(|span| span.0 < to.min(self.now) && span.1 > from)
        };
        open || groups.any(|(_, pool)| pool.uses.iter().any(|of| at_work(of.task)))
    }

    /// What a group has done was shown before.
    pub(in crate::plan) fn shown(&mut self) {
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
