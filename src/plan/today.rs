//! The day itself: what has happened is fixed as it happened, the rest is planned anew, and
//! as little as can be of what was announced is changed.

use super::class::ClassDraft;
use super::day::{Of, Said, Spot, Unheard, What};
use super::problem::{Bake, Layout, Task, Use};
use super::timetable::Note;

/// What became of a task by now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum State {
    /// It is over, and ended no later than this minute.
    Over(i32),
    /// It runs since this minute.
    Runs(i32),
    /// It is not begun.
    Open,
}

/// Fixes what has happened by minute `now`. Who is not spoken of has kept to `planned`, and
/// so has everybody of whom is said what the plan says.
///
/// A step that is said to be done, later than planned, ended now where no time is given: so
/// no rest that follows is cut short.
///
/// # Errors
/// What cannot be taken in.
pub fn adjust(
    draft: &mut ClassDraft,
    planned: &Layout,
    now: i32,
    said: &[Said],
) -> Result<Vec<Note>, Unheard> {
    let mut day = Day { draft, planned, now, states: Vec::new() };
    day.as_planned();
    for one in said {
        day.hear(one)?;
    }
    day.shown();
    let Day { states, .. } = day;
    fix(draft, planned, now, &states);
    let overdue = loosen(draft, now, &states);
    for one in said {
        match (&one.of, &one.what) {
            (Of::Kit(kit, count), What::Out) => out(draft, kit, *count, now)?,
            (_, What::Gone) => gone(draft, one, &states, now),
            _ => {}
        }
    }
    draft.problem.alike = Vec::new();
    alike_again(draft);
    draft.problem.announced = planned.starts.clone();
    draft.problem.announced.resize(draft.problem.tasks.len(), now);
    Ok(overdue)
}

struct Day<'a> {
    draft: &'a ClassDraft,
    planned: &'a Layout,
    now: i32,
    states: Vec<State>,
}

impl Day<'_> {
    fn minutes(&self, task: usize) -> i32 {
        self.draft.problem.tasks[task].minutes
    }

    /// What the plan makes of a task by now, `late` minutes behind it.
    fn by_plan(&self, task: usize, late: i32) -> State {
        let start = self.planned.starts[task] + late;
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
                for spot in self.steps(said, step)? {
                    if at.is_some() || !self.expected(spot) {
                        self.done(spot, at_minute);
                    }
                }
            }
            What::Begun(step, at) => {
                let at = self.minute(*at);
                for spot in self.steps(said, step)? {
                    self.begun(spot, at);
                }
            }
            What::Late(_) | What::Nothing | What::Gone => {
                let units: Vec<usize> = (0..self.draft.units.len())
                    .filter(|at| said.is_of(&self.draft.units[*at]))
                    .collect();
                if units.is_empty() {
                    return Err(Unheard::NoGroup);
                }
                for unit in units {
                    for task in self.draft.units[unit].strand.tasks.clone() {
                        match said.what {
                            What::Late(late) => {
                                self.states[task] = self.by_plan(task, late);
                            }
                            What::Nothing => self.states[task] = State::Open,
                            _ => {}
                        }
                    }
                }
            }
            What::Out => {}
        }
        Ok(())
    }

    /// The batches with a step. A demonstration that is no batch is known by its name too.
    fn steps(&mut self, said: &Said, step: &str) -> Result<Vec<Spot>, Unheard> {
        let found = self.draft.spots(said, step);
        let (Of::Instructor, Err(_)) = (&said.of, &found) else { return found };
        let draft = self.draft;
        let shows = draft.shows.iter();
        let Some(last) = shows.clone().find(|show| show.step.starts_with(step)) else {
            return found;
        };
        let until = self.planned.starts[last.task];
        for show in shows {
            let over = self.planned.starts[show.task] <= until;
            let minutes = self.minutes(show.task);
            let end = (self.planned.starts[show.task] + minutes).min(self.now);
            self.states[show.task] = if over { State::Over(end) } else { State::Open };
        }
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
            let over = at + self.minutes(task) <= self.now;
            self.states[task] =
                if over { State::Over(self.now) } else { State::Runs(at) };
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
        let finish = self.draft.units[unit].strand.finish;
        self.states[finish] = State::Open;
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

/// Nothing that is open begins in the past; the rest stays where it was.
fn fix(draft: &mut ClassDraft, planned: &Layout, now: i32, states: &[State]) {
    for (task, state) in states.iter().enumerate() {
        let own = &mut draft.problem.tasks[task];
        let minutes = own.minutes;
        match state {
            State::Over(end) => own.starts = vec![(end - minutes, end - minutes)],
            State::Runs(start) => own.starts = vec![(*start, *start)],
            State::Open => {
                own.starts.retain(|(_, last)| *last >= now);
                for (first, _) in &mut own.starts {
                    *first = (*first).max(now);
                }
            }
        }
        // Where a rest began is not known to the minute: it has its shortest time from the
        // latest, and its longest from what was planned.
        if let State::Over(end) = state {
            let unsure = (end - minutes - planned.starts[task]).max(0);
            for link in draft.problem.links.iter_mut().filter(|link| link.from == task) {
                link.most = link.most.map(|most| (most - unsure).max(link.least));
            }
        }
    }
}

/// Takes out of the question what is over, and lets go on what has stood too long.
fn loosen(draft: &mut ClassDraft, now: i32, states: &[State]) -> Vec<Note> {
    let mut overdue = Vec::new();
    let problem = &mut draft.problem;
    let tasks = &problem.tasks;
    let end = |task: usize| {
        tasks[task].starts.first().map_or(0, |at| at.0) + tasks[task].minutes
    };
    for (at, link) in problem.links.iter_mut().enumerate() {
        if states[link.to] != State::Open {
            (link.least, link.usual, link.most, link.crosses) =
                (i32::MIN / 4, None, None, true);
            continue;
        }
        if let State::Over(_) = states[link.from]
            && link.most.is_some_and(|most| now - end(link.from) > most)
        {
            link.most = None;
            overdue.extend(draft.units.iter().find_map(|unit| {
                let steps = unit.strand.steps.iter();
                let step = steps.rev().find(|step| step.stays.contains(&at))?;
                step.waits
                    .then(|| Note::TooLong { who: unit.who, title: step.title.clone() })
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

/// Kit that is out of order is taken from when what is in it is done until the end.
fn out(draft: &mut ClassDraft, kit: &str, count: u32, now: i32) -> Result<(), Unheard> {
    let unknown = || Unheard::NoKit(kit.to_owned());
    let last = draft.problem.sessions.last().map_or(now, |session| session.1);
    let runs = |draft: &ClassDraft, tasks: &mut dyn Iterator<Item = usize>| {
        let ends = tasks.filter_map(|task| {
            let own = &draft.problem.tasks[task];
            let start = own.starts.first()?.0;
            (own.starts.len() == 1 && start < now && own.starts[0].1 == start)
                .then_some(start + own.minutes)
        });
        ends.max().unwrap_or(now).max(now)
    };
    let stop = |draft: &mut ClassDraft, from: i32| {
        let task =
            Task { minutes: (last - from).max(0), starts: vec![(from, from)], grid: 1 };
        draft.problem.tasks.push(task);
        draft.problem.tasks.len() - 1
    };
    if kit == "oven" {
        if count as usize > draft.problem.ovens.count {
            return Err(unknown());
        }
        for _ in 0..count {
            let bakes: Vec<usize> =
                draft.problem.ovens.bakes.iter().map(|bake| bake.task).collect();
            let from = runs(draft, &mut bakes.into_iter());
            let task = stop(draft, from);
            let trays = draft.problem.ovens.trays;
            draft.problem.ovens.bakes.push(Bake { task, trays, heat: -1 });
        }
        return Ok(());
    }
    let name = super::PoolName::Kit(kit.to_owned());
    let at = draft.pools.iter().position(|known| *known == name).ok_or_else(unknown)?;
    let amount = i32::try_from(count).unwrap_or(i32::MAX);
    if amount > draft.problem.pools[at].capacity {
        return Err(unknown());
    }
    let uses: Vec<usize> =
        draft.problem.pools[at].uses.iter().map(|of| of.task).collect();
    let from = runs(draft, &mut uses.into_iter());
    let task = stop(draft, from);
    draft.problem.pools[at].uses.push(Use { task, amount, after: 0 });
    Ok(())
}

/// Who has gone home does nothing more, and needs nothing.
fn gone(draft: &mut ClassDraft, said: &Said, states: &[State], now: i32) {
    let leave: Vec<usize> = draft
        .units
        .iter()
        .filter(|unit| said.is_of(unit))
        .flat_map(|unit| unit.strand.tasks.clone())
        .filter(|task| states.get(*task) == Some(&State::Open))
        .collect();
    let problem = &mut draft.problem;
    for task in &leave {
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

/// Batches that are still made alike: those that stand where others of their making do.
fn alike_again(draft: &mut ClassDraft) {
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
