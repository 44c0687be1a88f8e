//! The home plan: backwards from the moment at which it shall be ready, within the hours
//! in which the baker is up.

use jiff::ToSpan;
use jiff::civil::{Date, DateTime};

use crate::formula::Book;
use crate::plan::answer::name::name_strand;
use crate::plan::answer::reason::{Amendment, Reason, Remedy};
use crate::plan::answer::timetable::{
    Caveat, Naming, Pause, TaskName, Timetable, Verdict, timetable,
};
use crate::plan::question::batch_tasks::{
    BatchTasks, Holds, StepPlan, Venue, batch_tasks, elsewhere,
};
use crate::plan::question::class::{PoolName, Unclear, Who};
use crate::plan::question::clock::Clock;
use crate::plan::question::days;
use crate::plan::question::heats::Heats;
use crate::plan::question::problem::{Claim, Goal, Ovens, Pool, Problem};
use crate::plan::question::stations::shared;
use crate::plan::search::solve::{Answer, Effort, Watch, stopped};
use crate::work::Work;

use super::latest::{self, Way};

/// Other times are tried in steps of so many minutes, so many times.
const STEP: i32 = 15;
const TRIALS: i32 = 32;
/// How many days a plan may reach back: few are tried first.
const DAYS: [i32; 5] = [1, 2, 3, 6, 13];
/// A recipe may hold what it makes at so many places elsewhere, each used or not; with more
/// of them at most one is used.
const MOST_HOLDS: u32 = 4;
/// Where no first plan is found, the search looks at so many lengths of the way back.
const MOST_SEARCHED: i32 = 2;
/// Trays in a home oven where the course says nothing.
const TRAYS: i32 = 1;

/// One bake at home.
#[derive(Clone, Copy)]
struct Home<'a> {
    /// What is made, the first of them the one that names the plan.
    works: &'a [&'a Work<'a>],
    ready: DateTime,
    book: Book<'a>,
    awake: (i32, i32),
    /// Whether it keeps to the days that the recipe names.
    by_days: bool,
}

/// A question and how its minutes and tasks are to be read.
struct Draft {
    problem: Problem,
    batch: BatchTasks,
    clock: Clock,
}

/// The questions of one way back, the one that was answered best, and the answer.
struct Asked {
    drafts: Vec<Draft>,
    base: i32,
    at: usize,
    answer: Answer,
}

impl Draft {
    fn ready(&self) -> i32 {
        match self.problem.goal {
            Goal::LatestStart(ready) => ready,
            Goal::EarliestEnd => 0,
        }
    }
}

impl Asked {
    /// Asks. Where no first plan is found only a few questions are searched.
    fn new(drafts: Vec<Draft>, effort: Option<Effort>, searched: &mut i32) -> Self {
        let ways = drafts.iter().map(|draft| Way::new(draft.problem.clone()));
        let mut ways: Vec<Way> = ways.collect();
        let base = drafts.first().map(|draft| latest::as_usual(&draft.problem));
        let base = base.as_ref().map_or(0, latest::chain);
        let found = latest::any(&ways);
        if !found && latest::open(&ways) {
            *searched += 1;
        }
        let idle = Effort { work: 0, watch: None };
        let search = found || *searched <= MOST_SEARCHED;
        let effort = effort.filter(|_| search).unwrap_or(idle);
        let (at, answer) = latest::choose(&mut ways, base, effort);
        Self { drafts, base, at, answer }
    }

    /// What its plan is worth: the least is best.
    fn value(&self) -> i32 {
        self.answer.plan().map_or(i32::MAX, |plan| plan.waiting.saturating_add(self.base))
    }
}

/// Plans bakes at home so that all are ready at `ready`, as near to the recipes' own times as can
/// be. A dough that goes into several of them is made once.
///
/// Every wait is within its range, and within its hold where that is used; whatever has to
/// be done, moving things into a hold and out of it too, is done while the baker is up.
/// A wait is shorter than its usual time only where that spares more waiting elsewhere,
/// which is said.
///
/// # Errors
/// The reason, where the time is none or the steps wait for each other in a ring.
pub fn home(
    works: &[&Work],
    ready: DateTime,
    book: Book,
    effort: Effort,
) -> Result<Timetable, Unclear> {
    let course = book.content.course.as_ref();
    let awake = course.map_or((7 * 60, 22 * 60 + 30), |course| course.awake);
    let home = Home { works, ready, book, awake, by_days: true };
    let mut plan = home.plan(Some(effort))?;
    let steps = works.iter().flat_map(|work| work.recipe.steps());
    let days = steps.into_iter().any(|step| step.day.is_some());
    if plan.verdict != Verdict::Fits && days && !stopped(effort.watch) {
        let other = Home { by_days: false, ..home }.plan(Some(effort))?;
        if other.verdict == Verdict::Fits {
            plan = other;
            plan.notes.push(Caveat::OtherDays);
        }
    }
    if plan.verdict == Verdict::Fits {
        plan.notes.extend(plan.waits.iter().filter_map(shortened));
    } else if !stopped(effort.watch) {
        effort.watch.iter().for_each(|watch| watch.explains());
        home.explain(&mut plan, effort.watch);
    }
    plan.notes.extend(shared(works, book).into_iter().map(Caveat::Shared));
    Ok(plan)
}

impl Home<'_> {
    /// Whether a plan is found at once.
    fn fits(&self) -> bool {
        self.plan(None).is_ok_and(|plan| plan.verdict == Verdict::Fits)
    }

    /// Says why there is no plan, and what would be possible, each tried until `watch` ends it.
    fn explain(&self, plan: &mut Timetable, watch: Option<&dyn Watch>) {
        let fits = |home: Self| !stopped(watch) && home.fits();
        let night = fits(Self { awake: (0, 24 * 60), ..*self });
        if night {
            plan.reasons.push(Reason::Hours { awake: self.awake, ready: self.ready });
        } else if !stopped(watch) {
            plan.reasons.push(Reason::Waits);
        }
        let mut helps = |change| plan.remedies.push(Remedy { change, end: None });
        let later = (1..=TRIALS).find_map(|step| {
            let ready = self.ready.checked_add((step * STEP).minutes()).ok()?;
            fits(Self { ready, ..*self }).then_some(ready)
        });
        if let Some(later) = later {
            helps(Amendment::Ready(later));
        }
        let earlier = (1..=TRIALS)
            .map(|step| self.awake.0 - step * STEP)
            .take_while(|from| *from >= 0)
            .find(|from| fits(Self { awake: (*from, self.awake.1), ..*self }));
        if let Some(from) = earlier {
            helps(Amendment::Up(from));
        }
        let longer = (1..=TRIALS)
            .map(|step| self.awake.1 + step * STEP)
            .take_while(|to| *to <= 24 * 60)
            .find(|to| fits(Self { awake: (self.awake.0, *to), ..*self }));
        if let Some(to) = longer {
            helps(Amendment::StayUp(to));
        }
    }

    /// The plan nearest to the recipe's own times. Without an effort only first plans are
    /// looked at.
    fn plan(&self, effort: Option<Effort>) -> Result<Timetable, Unclear> {
        let mut best: Option<Asked> = None;
        let mut searched = 0;
        for back in DAYS {
            let drafts = self.drafts(back)?;
            let ready = drafts.first().map_or(0, Draft::ready);
            let asked = Asked::new(drafts, effort, &mut searched);
            if best.as_ref().is_none_or(|best| asked.value() <= best.value()) {
                best = Some(asked);
            }
            // A plan that needs a longer way back takes more than all of this one.
            if best.as_ref().is_some_and(|best| best.value() <= ready) {
                break;
            }
        }
        let best = best.ok_or(Unclear::NoTime)?;
        let draft = best.drafts.get(best.at).ok_or(Unclear::NoTime)?;
        Ok(name(self.works, draft, &best.answer, self.book))
    }

    /// A question for each choice of the holds elsewhere, those with few of them first.
    fn drafts(&self, back: i32) -> Result<Vec<Draft>, Unclear> {
        let room = Venue { trays_per_oven: 1, home: Some(Holds::default()), pace: None };
        let holds = elsewhere(self.works, room, self.book).min(u32::BITS - 1);
        let most = if holds > MOST_HOLDS { 1 } else { holds };
        let all = if holds > MOST_HOLDS {
            std::iter::once(0).chain((0..holds).map(|at| 1 << at)).collect()
        } else {
            (0..1_u32 << holds).collect::<Vec<_>>()
        };
        let mut choices: Vec<u32> =
            all.into_iter().filter(|choice: &u32| choice.count_ones() <= most).collect();
        choices.sort_by_key(|choice| (choice.count_ones(), *choice));
        choices.into_iter().map(|choice| self.draft(back, Holds(choice))).collect()
    }

    /// The question whose plan begins at most so many days before.
    fn draft(&self, back: i32, holds: Holds) -> Result<Draft, Unclear> {
        let course = self.book.content.course.as_ref();
        let zone = course.and_then(|course| course.time_zone.as_deref());
        let first =
            self.ready.date().checked_sub(back.days()).map_err(|_| Unclear::NoTime)?;
        let clock = Clock::new(first.at(0, 0, 0, 0), zone).ok_or(Unclear::NoTime)?;
        let end = clock.minute(self.ready).ok_or(Unclear::NoTime)?;
        let mut problem = Problem {
            sessions: waking(back, self.ready, self.awake, &clock)
                .ok_or(Unclear::NoTime)?,
            goal: Goal::LatestStart(end),
            ..Problem::default()
        };
        let trays = course.and_then(|course| course.kit.trays_per_oven);
        let trays =
            trays.map_or(TRAYS, |trays| i32::try_from(trays).unwrap_or(TRAYS)).max(1);
        let room = Venue { trays_per_oven: trays, home: Some(holds), pace: None };
        let batch = batch_tasks(self.works, room, &mut problem, self.book)
            .ok_or(Unclear::OwnRing)?;
        if self.by_days {
            let last = days::named(&batch).last().copied().unwrap_or(0);
            let day = |day: u64| {
                let back = i64::try_from(last.checked_sub(day)?).ok()?;
                let date = self.ready.date().checked_sub(back.days()).ok()?;
                let next = date.tomorrow().ok()?;
                let midnight = |date: Date| clock.minute_after(date.at(0, 0, 0, 0));
                Some((midnight(date)?, midnight(next)?))
            };
            days::keep(&batch, &mut problem, day);
        }
        batch.ends.iter().for_each(|done| problem.tasks[*done].starts = vec![(end, end)]);
        share(&mut problem, &batch, trays);
        Ok(Draft { problem, batch, clock })
    }
}

/// A wait that is shorter than its usual time.
fn shortened(wait: &Pause) -> Option<Caveat> {
    let lasts = wait.span.map(|(from, to)| to - from)?;
    let usual = wait.lag.usual;
    let title = wait.deed.step.as_ref()?.title.clone();
    (lasts < usual).then_some(Caveat::Shortened { title, lasts, usual })
}

/// The hours of each day in which work is done, the last one until it is ready.
fn waking(
    back: i32,
    ready: DateTime,
    awake: (i32, i32),
    clock: &Clock,
) -> Option<Vec<(i32, i32)>> {
    let end = clock.minute(ready)?;
    let mut days: Vec<(i32, i32)> = Vec::new();
    for back in (0..=back).rev() {
        let day = ready.date().checked_sub(back.days()).ok()?;
        let at = |minute: i32| {
            let midnight = day.at(0, 0, 0, 0);
            clock.minute_after(midnight.checked_add(minute.minutes()).ok()?)
        };
        let (from, to) = (at(awake.0)?, at(awake.1)?.min(end));
        if from < to {
            days.push((from, to));
        }
    }
    // Ready before the day begins or after it ends: nothing is done then, but that moment
    // counts.
    if days.last().is_none_or(|last| last.1 < end) {
        days.push((end, end));
    }
    Some(days)
}

/// One pair of hands, one oven.
fn share(problem: &mut Problem, batch: &BatchTasks, trays: i32) {
    let one = |task: usize| Claim { task, amount: 1, after: 0 };
    let busy = batch.steps.iter().flat_map(StepPlan::busy);
    problem.pools = vec![Pool { capacity: 1, uses: busy.map(one).collect() }];
    let mut heats = Heats::default();
    let bakes = batch.steps.iter().flat_map(|step| heats.bakes(step)).collect();
    problem.ovens = Ovens { count: 1, trays, after: 0, turn: 0, bakes };
    problem.units = vec![batch.tasks.clone()];
}

fn name(works: &[&Work], draft: &Draft, answer: &Answer, book: Book) -> Timetable {
    let all = |of: &dyn Fn(&Work) -> String, between: &str| {
        works.iter().map(|work| of(work)).collect::<Vec<_>>().join(between)
    };
    let named = all(&|work| work.recipe.name.clone(), ",");
    let title = all(&|work| work.recipe.title.value.clone(), " · ");
    let mut tasks = TaskName::unnamed(Who::Home, draft.problem.tasks.len());
    let mut waits = Vec::new();
    name_strand(&draft.batch, Who::Home, &mut tasks, &mut waits);
    let naming = Naming {
        name: &named,
        title: &title,
        clock: &draft.clock,
        tasks,
        waits,
        pools: vec![PoolName::Home],
        stores: Vec::new(),
        together: None,
    };
    let mut plan = timetable(&draft.problem, answer, naming);
    if works.len() > 1 {
        let steps = draft.batch.steps.iter().map(|step| step.recipe.clone());
        let title = |name: String| {
            let recipe = book.content.recipe(&name)?;
            Some((name, recipe.title.value.clone()))
        };
        plan.titles = steps.filter_map(title).collect();
    }
    plan
}
