//! One batch's way through its steps: from steps to tasks and lags.
//!
//! A step's attended time is a task, each oven load of a bake is a task, and the batch's
//! end is a moment. A step that only waits becomes the lag between its neighbours; where
//! that cannot be said with one lag it begins with a moment of its own.
//!
//! At home nobody but the baker moves what is to be held elsewhere: a hold that is used has
//! a task at either end, and so has a wait that begins where another ends.

use crate::formula::Book;
use crate::measure::{Duration, Temperature};
use crate::model::{BakePhase, HandsPace, Hold, KitUse, Location, Makes, Step};
use crate::work::{Work, WorkJob};

use super::problem::{Link, Problem};

/// One batch, step by step; or several of different recipes that share a dough.
#[derive(Clone, Debug)]
pub struct BatchTasks {
    /// The recipes' file names.
    pub recipes: Vec<String>,
    /// Their steps, those of included recipes first.
    pub steps: Vec<StepPlan>,
    /// For each recipe the moment at which all of it is done.
    pub ends: Vec<usize>,
    /// Its tasks, each after those it waits for.
    pub tasks: Vec<usize>,
    /// Whether it is made at home.
    pub home: bool,
}

/// One step and its tasks.
#[derive(Clone, Debug)]
pub struct StepPlan {
    /// The recipe it belongs to.
    pub recipe: String,
    /// The step's name.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// Which of the places it is where the step stands one after the other, from 0.
    pub stand: usize,
    /// The day on which the recipe has it, where it takes more than one.
    pub day: Option<u64>,
    /// The steps of the batch that it waits for.
    pub after: Vec<usize>,
    /// The attended part.
    pub hands: Option<usize>,
    /// Minutes of it at the recipe's own pace.
    pub taught: i32,
    /// The oven loads, each with its trays.
    pub bakes: Vec<(usize, i32)>,
    /// The moment with which a step begins that only waits.
    pub moment: Option<usize>,
    /// The tasks whose end lets the next step, or the wait, begin.
    pub exits: Vec<usize>,
    /// The tasks that bring it into a hold elsewhere and out of it, where that is used.
    pub moves: Option<Moves>,
    /// What it does after a hold in which it was frozen.
    pub thaws: Option<Thawing>,
    /// Its wait.
    pub lag: Lag,
    /// Whether it has a wait.
    pub waits: bool,
    /// Where it waits.
    pub place: Option<Location>,
    /// Where it is held, if elsewhere.
    pub hold_place: Option<Location>,
    /// Whether its hold is at another place than its wait.
    pub elsewhere: bool,
    /// Trays it takes there.
    pub trays: i32,
    /// The links that are its wait.
    pub stays: Vec<usize>,
    /// Kit it occupies.
    pub kit: Vec<KitUse>,
    /// Whether dough is rolled out.
    pub rolls: bool,
    /// The oven.
    pub oven: Option<Temperature>,
    /// The phases of its bake where its heat changes; none where it does not.
    pub phases: Vec<BakePhase>,
}

/// Minutes from a step's work to the next.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Lag {
    /// At least.
    pub least: i32,
    /// As written.
    pub usual: i32,
    /// At most, with the hold; `None` where it is not said.
    pub most: Option<i32>,
    /// At most without the hold.
    pub own_most: Option<i32>,
    /// Whether it may last from one session to another.
    pub crosses: bool,
}

/// A hold elsewhere that is used.
#[derive(Clone, Copy, Debug)]
pub struct Moves {
    /// The task that brings it there.
    pub into: usize,
    /// The task that brings it back.
    pub out: usize,
    /// The link between the two: the hold.
    pub stay: usize,
    /// Its most minutes.
    pub up_to: i32,
}

/// What was frozen thaws after its hold.
#[derive(Clone, Debug)]
pub struct Thawing {
    /// How long.
    pub lag: Lag,
    /// Where.
    pub place: Location,
    /// The links that are it.
    pub stays: Vec<usize>,
}

/// What a batch is laid into.
#[derive(Clone, Copy, Debug)]
pub struct Venue<'a> {
    /// Trays that one oven takes.
    pub trays_per_oven: i32,
    /// At home: waits go on over night without a hold, and somebody moves what is held
    /// elsewhere.
    pub home: Option<Holds>,
    /// How fast hands are, where they have another pace than the recipe's.
    pub pace: Option<&'a HandsPace>,
}

/// Which of a batch's holds elsewhere are used: a bit for each of its steps that has one,
/// in the order of the steps.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Holds(pub u32);

/// Minutes that it takes to cover something and bring it into a hold, or back: common
/// practice, no source.
const MOVE: i32 = 2;

/// How many steps of a batch have a hold at another place than that of their wait.
pub fn elsewhere(works: &[&Work], room: Venue, book: Book) -> u32 {
    let jobs = jobs(works, room).unwrap_or_default();
    let steps = jobs.into_iter().filter_map(|job| {
        let recipe = book.content.recipe(&job.recipe)?;
        let step = recipe.steps().find(|step| step.name == job.step)?;
        Some(step.in_stand(job.stand))
    });
    steps.filter(|step| held_elsewhere(step).is_some()).count().try_into().unwrap_or(0)
}

/// The place of a hold that is not the place of the wait.
fn held_elsewhere(step: &Step) -> Option<&Location> {
    let place = step.hold.as_ref()?.value.at_place.as_ref()?;
    let same = step.at_place.as_ref().is_some_and(|own| own.value == *place);
    (!same).then_some(place)
}

/// Adds a batch to the problem: its tasks, and the lags between them. Of several works that
/// include the same dough it is made once. `None` where steps wait for each other in a ring.
pub fn batch_tasks<'a>(
    works: &[&Work],
    room: Venue<'a>,
    problem: &'a mut Problem,
    book: Book,
) -> Option<BatchTasks> {
    let jobs = jobs(works, room)?;
    let mut laying = Laying { room, problem, steps: Vec::new(), moved: Vec::new() };
    for job in &jobs {
        let recipe = book.content.recipe(&job.recipe)?;
        let step = recipe.steps().find(|step| step.name == job.step)?;
        laying.step(job, &step.in_stand(job.stand));
    }
    let order = order(&laying.steps)?;
    laying.lags(&order);
    let recipes: Vec<String> = works.iter().map(|it| it.recipe.name.clone()).collect();
    // Days are those of what is made, not of the doughs in it.
    for step in laying.steps.iter_mut().filter(|step| !recipes.contains(&step.recipe)) {
        step.day = None;
    }
    let mut ends = Vec::new();
    for (at, work) in works.iter().enumerate() {
        let dough = matches!(
            work.recipe.makes.as_ref().map(|made| &made.value),
            Some(Makes::Weight(_))
        );
        // What nobody's own step follows on is the first recipe's.
        let other = |recipe: &String| recipes[at + 1..].contains(recipe);
        let first = |recipe: &String| at == 0 && !other(recipe);
        let own = |recipe: &String| *recipe == recipes[at] || first(recipe);
        ends.push(laying.finish(&own, dough && room.home.is_none()));
    }
    laying.proofs();
    let tasks = order.iter().flat_map(|at| laying.steps[*at].tasks());
    let tasks = tasks.chain(ends.iter().copied()).collect();
    Some(BatchTasks {
        recipes,
        tasks,
        steps: laying.steps,
        ends,
        home: room.home.is_some(),
    })
}

/// The jobs of several works, those of a dough that they share once. At home what one of them
/// takes in twice is made twice, as its sheet has it.
fn jobs(works: &[&Work], room: Venue) -> Option<Vec<WorkJob>> {
    let mut jobs: Vec<WorkJob> = Vec::new();
    for work in works {
        let timing = work.timing.as_ref().ok()?;
        let mut place = Vec::new();
        let before = jobs.len();
        for job in &timing.jobs {
            let shared = job.recipe != work.recipe.name;
            let there = if room.home.is_some() { &jobs[..before] } else { &jobs[..] };
            let same = |known: &WorkJob| {
                (&known.recipe, &known.step, known.stand)
                    == (&job.recipe, &job.step, job.stand)
            };
            let known = there.iter().position(same).filter(|_| shared);
            place.push(known.unwrap_or(jobs.len()));
            if known.is_none() {
                jobs.push(job.clone());
            }
        }
        for job in &mut jobs[before..] {
            job.job.after.iter_mut().for_each(|after| *after = place[*after]);
        }
    }
    Some(jobs)
}

impl BatchTasks {
    /// What it is called by.
    pub fn recipe(&self) -> &str {
        self.recipes.first().map_or("", |recipe| recipe)
    }
}

impl StepPlan {
    /// Its tasks in order.
    pub fn tasks(&self) -> Vec<usize> {
        let bakes = self.bakes.iter().map(|(task, _)| *task);
        let moves = self.moves.into_iter().flat_map(|moves| [moves.into, moves.out]);
        self.moment.into_iter().chain(self.hands).chain(bakes).chain(moves).collect()
    }

    /// The tasks in which somebody is busy: its work, and what it moves.
    pub fn busy(&self) -> Vec<usize> {
        let moves = self.moves.into_iter().flat_map(|moves| [moves.into, moves.out]);
        self.moment.into_iter().chain(self.hands).chain(moves).collect()
    }

    /// The tasks with which it begins; none where it is only the wait after another.
    pub fn entries(&self) -> Vec<usize> {
        match self.moment.or(self.hands) {
            Some(first) => vec![first],
            None => self.bakes.iter().map(|(task, _)| *task).collect(),
        }
    }

    /// Minutes of attended work.
    fn hands_minutes(&self, problem: &Problem) -> i32 {
        self.hands.map_or(0, |task| problem.tasks[task].minutes)
    }
}

/// Places of the steps, each after those it waits for; `None` in a ring.
fn order(steps: &[StepPlan]) -> Option<Vec<usize>> {
    let mut order: Vec<usize> = Vec::new();
    while order.len() < steps.len() {
        let ready = |at: &usize| {
            !order.contains(at)
                && steps[*at].after.iter().all(|other| order.contains(other))
        };
        let next = (0..steps.len()).find(ready)?;
        order.push(next);
    }
    Some(order)
}

fn minutes(duration: &Duration) -> i32 {
    i32::try_from(duration.whole_minutes()).unwrap_or(i32::MAX / 64).min(i32::MAX / 64)
}

/// How what was frozen thaws.
fn thawing(hold: &Hold) -> Option<Thawing> {
    let thaw = hold.thaw.as_ref()?;
    let most = Some(minutes(&thaw.time.most));
    let (least, usual) = (minutes(&thaw.time.least), minutes(&thaw.time.usual));
    let lag = Lag { least, usual, most, own_most: most, crosses: true };
    Some(Thawing { lag, place: thaw.place.clone(), stays: Vec::new() })
}

struct Laying<'a> {
    room: Venue<'a>,
    problem: &'a mut Problem,
    steps: Vec<StepPlan>,
    /// For each step, the longest hold elsewhere that is used.
    moved: Vec<Option<i32>>,
}

impl Laying<'_> {
    fn task(&mut self, minutes: i32) -> usize {
        self.problem.task(minutes)
    }

    fn step(&mut self, job: &WorkJob, step: &Step) {
        let taught = minutes(&job.job.hands);
        let own = self.room.pace.map(|pace| pace.of(&job.step, &job.job.hands));
        let hands = own.map_or(taught, |own| minutes(&own));
        let hands = (hands > 0).then(|| self.task(hands));
        let trays = i32::try_from(job.trays).unwrap_or(1).max(1);
        let mut bakes = Vec::new();
        if let Some(bake) = &step.bake {
            let time = minutes(&bake.value.time.usual);
            let mut left = trays;
            while left > 0 {
                let whole = self.room.trays_per_oven.max(1);
                let load = left.min(whole);
                bakes.push((self.task(time), load));
                left -= load;
            }
        }
        let exits = match (bakes.is_empty(), hands) {
            (false, _) => bakes.iter().map(|(task, _)| *task).collect(),
            (true, hands) => hands.into_iter().collect(),
        };
        let oven = step.bake.as_ref().map(|bake| bake.value.oven.clone());
        let changing = step.bake.as_ref().filter(|bake| bake.value.changes_heat());
        let phases = changing.map(|bake| bake.value.phases.clone()).unwrap_or_default();
        let lag = self.lag(step);
        let thaws = step.hold.as_ref().and_then(|hold| thawing(&hold.value));
        self.steps.push(StepPlan {
            recipe: job.recipe.clone(),
            step: job.step.clone(),
            title: job.title.clone(),
            stand: job.stand,
            day: step.day.as_ref().map(|day| day.value),
            after: job.job.after.clone(),
            hands,
            taught,
            bakes,
            moment: None,
            exits,
            moves: None,
            thaws,
            lag,
            waits: step.wait.is_some(),
            place: job.place.clone(),
            hold_place: self.hold(step).and_then(|hold| hold.at_place.clone()),
            elsewhere: held_elsewhere(step).is_some(),
            trays,
            stays: Vec::new(),
            kit: step.kit.clone(),
            rolls: step.sheet.is_some(),
            oven,
            phases,
        });
    }

    /// A hold as it can be used: nobody takes anything out of a freezer between two sessions of
    /// a class.
    fn hold<'s>(&self, step: &'s Step) -> Option<&'s Hold> {
        let hold = step.hold.as_ref().map(|hold| &hold.value);
        hold.filter(|hold| self.room.home.is_some() || hold.thaw.is_none())
    }

    fn lag(&mut self, step: &Step) -> Lag {
        let hold = self.hold(step).map(|hold| minutes(&hold.up_to));
        let hold = match self.room.home {
            Some(holds) if held_elsewhere(step).is_some() => {
                return self.lag_elsewhere(step, holds);
            }
            _ => hold,
        };
        self.moved.push(None);
        let Some(wait) = step.wait.as_ref().map(|wait| &wait.value) else {
            return Lag {
                most: hold,
                own_most: Some(0),
                crosses: hold.is_some(),
                ..Lag::default()
            };
        };
        let most = minutes(&wait.most);
        Lag {
            least: minutes(&wait.least),
            usual: minutes(&wait.usual),
            most: Some(most + hold.unwrap_or(0)),
            own_most: Some(most),
            crosses: hold.is_some() || self.room.home.is_some(),
        }
    }

    /// At home: the wait alone, and behind it the hold if it is one of those used.
    fn lag_elsewhere(&mut self, step: &Step, holds: Holds) -> Lag {
        let known = self.steps.iter().filter(|step| step.elsewhere).count();
        let used = holds.0.checked_shr(known.try_into().unwrap_or(32)).unwrap_or(0) & 1;
        let up_to = step.hold.as_ref().map(|hold| minutes(&hold.value.up_to));
        self.moved.push(up_to.filter(|_| used == 1));
        let Some(wait) = step.wait.as_ref().map(|wait| &wait.value) else {
            return Lag { most: Some(0), own_most: Some(0), ..Lag::default() };
        };
        let most = Some(minutes(&wait.most));
        Lag {
            least: minutes(&wait.least),
            usual: minutes(&wait.usual),
            most,
            own_most: most,
            crosses: true,
        }
    }

    /// Joins the steps by links.
    fn lags(&mut self, order: &[usize]) {
        for at in order {
            if self.steps[*at].entries().is_empty() {
                self.fold(*at);
            }
            self.moves(*at);
            for before in self.steps[*at].after.clone() {
                self.join(before, *at);
            }
        }
    }

    /// A step that only waits: the lag behind the one step before it, or a moment.
    fn fold(&mut self, at: usize) {
        let own = &self.steps[at];
        if let [before] = own.after.as_slice() {
            let before = &self.steps[*before];
            if !before.waits
                && before.moves.is_none()
                && before.lag == (Lag { own_most: Some(0), ..Lag::default() })
            {
                self.steps[at].exits = before.exits.clone();
                return;
            }
        }
        let moment = self.task(if self.room.home.is_some() { MOVE } else { 0 });
        self.steps[at].moment = Some(moment);
        self.steps[at].exits = vec![moment];
    }

    /// A hold elsewhere that is used: in when the wait is over, out when the next begins.
    fn moves(&mut self, at: usize) {
        let Some(up_to) = self.moved[at] else { return };
        let (into, out) = (self.task(MOVE), self.task(MOVE));
        for from in self.steps[at].exits.clone() {
            let link = self.link(from, into, self.steps[at].lag, true);
            self.steps[at].stays.push(link);
        }
        let hold = Lag { most: Some(up_to), crosses: true, ..Lag::default() };
        let stay = self.link(into, out, hold, true);
        self.steps[at].moves = Some(Moves { into, out, stay, up_to });
    }

    /// The first written of the steps that come after takes the material; its lag has an
    /// upper end too. Of a dough that several recipes share each of them takes its part.
    fn takes(&self, before: usize, at: usize) -> bool {
        let recipe = &self.steps[at].recipe;
        let mut steps = self.steps.iter();
        let first =
            steps.position(|step| step.recipe == *recipe && step.after.contains(&before));
        first == Some(at)
    }

    fn join(&mut self, before: usize, at: usize) {
        let takes = self.takes(before, at);
        if let (true, Some(moves)) = (takes, self.steps[before].moves) {
            for to in self.steps[at].entries() {
                let thaw = self.steps[before].thaws.as_ref().map(|thaws| thaws.lag);
                let link = self.link(
                    moves.out,
                    to,
                    thaw.unwrap_or_else(|| self.turn(at, to)),
                    true,
                );
                self.thaws_until(before, link);
            }
            return self.inside(at);
        }
        let lag = self.steps[before].lag;
        for from in self.steps[before].exits.clone() {
            for to in self.steps[at].entries() {
                let link = self.link(from, to, lag, takes);
                if takes {
                    self.steps[before].stays.push(link);
                }
            }
        }
        self.inside(at);
    }

    /// What a step has frozen thaws along a link.
    fn thaws_until(&mut self, step: usize, link: usize) {
        if let Some(thaws) = &mut self.steps[step].thaws {
            thaws.stays.push(link);
        }
    }

    /// What comes out of a hold goes on at once; several oven loads wait their turn.
    fn turn(&self, at: usize, to: usize) -> Lag {
        let entries = self.steps[at].entries();
        let others = entries.iter().filter(|other| **other != to);
        let most = if entries.len() > 1 {
            others.map(|of| self.problem.tasks[*of].minutes).sum()
        } else {
            0
        };
        Lag { most: Some(most), crosses: most > 0, ..Lag::default() }
    }

    fn link(&mut self, from: usize, to: usize, lag: Lag, takes: bool) -> usize {
        self.problem.links.push(Link {
            from,
            to,
            least: lag.least,
            usual: Some(lag.usual),
            most: lag.most.filter(|_| takes),
            crosses: lag.crosses || !takes,
        });
        self.problem.links.len() - 1
    }

    /// The oven follows at once on the work of its own step.
    fn inside(&mut self, at: usize) {
        let step = &self.steps[at];
        let Some(hands) = step.hands else { return };
        let known = |task: usize, links: &[Link]| {
            links.iter().any(|link| link.from == hands && link.to == task)
        };
        for (bake, _) in step.bakes.clone() {
            if !known(bake, &self.problem.links) {
                let lag = Lag { most: Some(0), ..Lag::default() };
                self.link(hands, bake, lag, true);
            }
        }
    }

    /// The moment at which the last step is over; a dough for another day may go on
    /// resting when the class is over.
    fn finish(&mut self, own: &dyn Fn(&String) -> bool, dough: bool) -> usize {
        let finish = self.task(0);
        let last: Vec<usize> = (0..self.steps.len())
            .filter(|at| own(&self.steps[*at].recipe))
            .filter(|at| !self.steps.iter().any(|step| step.after.contains(at)))
            .collect();
        for at in last {
            let own = if dough { Lag::default() } else { self.steps[at].lag };
            let lag = Lag { crosses: true, ..own };
            if let Some(moves) = self.steps[at].moves {
                let at_once = Lag { most: Some(0), crosses: true, ..Lag::default() };
                let thaw = self.steps[at].thaws.as_ref().map(|thaws| thaws.lag);
                let link = self.link(moves.out, finish, thaw.unwrap_or(at_once), true);
                self.thaws_until(at, link);
                continue;
            }
            for from in self.steps[at].exits.clone() {
                let link = self.link(from, finish, lag, true);
                self.steps[at].stays.push(link);
            }
        }
        finish
    }

    /// What waits without a hold must not wait on beyond its longest time for a wait or an
    /// oven further on: a proof goes on while the pieces are brushed.
    fn proofs(&mut self) {
        for at in 0..self.steps.len() {
            let lag = self.steps[at].lag;
            let Some(most) = lag.most.filter(|_| self.steps[at].waits && !self.held(at))
            else {
                continue;
            };
            let Some((next, between)) = self.next_bake(at) else { continue };
            for from in self.steps[at].exits.clone() {
                for (to, _) in self.steps[next].bakes.clone() {
                    let most = Some(most + between);
                    self.problem.links.push(Link {
                        from,
                        to,
                        least: 0,
                        usual: None,
                        most,
                        crosses: true,
                    });
                }
            }
        }
    }

    fn held(&self, at: usize) -> bool {
        let step = &self.steps[at];
        step.moves.is_some() || step.lag.most != step.lag.own_most
    }

    /// The bake behind a wait with nothing but attended steps between, and their minutes.
    fn next_bake(&self, at: usize) -> Option<(usize, i32)> {
        let (mut here, mut between) = (at, 0);
        for _ in 0..self.steps.len() {
            here = (0..self.steps.len())
                .find(|step| self.steps[*step].after.contains(&here))?;
            let step = &self.steps[here];
            between += step.hands_minutes(self.problem);
            if !step.bakes.is_empty() {
                return Some((here, between));
            }
            if step.waits || self.held(here) {
                return None;
            }
        }
        None
    }
}
