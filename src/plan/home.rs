//! The home plan: backwards from the moment at which it shall be ready, within the hours
//! in which the baker is up.

use jiff::ToSpan;
use jiff::civil::DateTime;

use crate::formula::Book;
use crate::measure::Temperature;
use crate::work::Work;

use super::class::{PoolName, Unclear, Who};
use super::clock::Clock;
use super::latest::{self, Way};
use super::name::name_strand;
use super::problem::{Bake, Goal, Ovens, Pool, Problem, Use};
use super::reason::{Change, Reason, Remedy};
use super::solve::{Answer, Effort};
use super::strand::{Holds, Room, StepPlan, Strand, elsewhere, strand};
use super::timetable::{Naming, Note, TaskName, Timetable, Verdict, Wait, timetable};

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
    work: &'a Work<'a>,
    ready: DateTime,
    book: Book<'a>,
    awake: (i32, i32),
}

/// A question and how its minutes and tasks are to be read.
struct Draft {
    problem: Problem,
    strand: Strand,
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

/// Plans one batch at home so that it is ready at `ready`, as near to the recipe's own times
/// as can be.
///
/// Every wait is within its range, and within its hold where that is used; whatever has to
/// be done, moving things into a hold and out of it too, is done while the baker is up.
/// A wait is shorter than its usual time only where that spares more waiting elsewhere,
/// which is said.
///
/// # Errors
/// The reason, where the time is none or the steps wait for each other in a ring.
pub fn home(
    work: &Work,
    ready: DateTime,
    book: Book,
    effort: Effort,
) -> Result<Timetable, Unclear> {
    let course = book.content.course.as_ref();
    let awake = course.map_or((7 * 60, 22 * 60 + 30), |course| course.awake);
    let home = Home { work, ready, book, awake };
    let mut plan = home.plan(Some(effort))?;
    if plan.verdict == Verdict::Fits {
        plan.notes.extend(plan.waits.iter().filter_map(shortened));
    } else if !effort.watch.is_some_and(|watch| watch.stop()) {
        home.explain(&mut plan);
    }
    Ok(plan)
}

impl Home<'_> {
    /// Whether a plan is found at once.
    fn fits(&self) -> bool {
        self.plan(None).is_ok_and(|plan| plan.verdict == Verdict::Fits)
    }

    /// Says why there is no plan, and what would be possible, each tried.
    fn explain(&self, plan: &mut Timetable) {
        let night = Self { awake: (0, 24 * 60), ..*self }.fits();
        plan.reasons.push(if night {
            Reason::Hours { awake: self.awake, ready: self.ready }
        } else {
            Reason::Waits
        });
        let mut helps = |change| plan.remedies.push(Remedy { change, end: None });
        let later = (1..=TRIALS).find_map(|step| {
            let ready = self.ready.checked_add((step * STEP).minutes()).ok()?;
            Self { ready, ..*self }.fits().then_some(ready)
        });
        if let Some(later) = later {
            helps(Change::Ready(later));
        }
        let earlier = (1..=TRIALS)
            .map(|step| self.awake.0 - step * STEP)
            .take_while(|from| *from >= 0)
            .find(|from| Self { awake: (*from, self.awake.1), ..*self }.fits());
        if let Some(from) = earlier {
            helps(Change::Up(from));
        }
        let longer = (1..=TRIALS)
            .map(|step| self.awake.1 + step * STEP)
            .take_while(|to| *to <= 24 * 60)
            .find(|to| Self { awake: (self.awake.0, *to), ..*self }.fits());
        if let Some(to) = longer {
            helps(Change::StayUp(to));
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
        Ok(name(self.work, draft, &best.answer))
    }

    /// A question for each choice of the holds elsewhere, those with few of them first.
    fn drafts(&self, back: i32) -> Result<Vec<Draft>, Unclear> {
        let holds = elsewhere(self.work, self.book).min(u32::BITS - 1);
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
            sessions: days((back, self.ready), self.awake, &clock)
                .ok_or(Unclear::NoTime)?,
            goal: Goal::LatestStart(end),
            ..Problem::default()
        };
        let trays = course.and_then(|course| course.kit.trays_per_oven);
        let trays =
            trays.map_or(TRAYS, |trays| i32::try_from(trays).unwrap_or(TRAYS)).max(1);
        let room = Room { trays_per_oven: trays, home: Some(holds) };
        let strand = strand(&[self.work], room, &mut problem, self.book)
            .ok_or(Unclear::OwnRing)?;
        strand
            .ends
            .iter()
            .for_each(|done| problem.tasks[*done].starts = vec![(end, end)]);
        share(&mut problem, &strand, trays);
        Ok(Draft { problem, strand, clock })
    }
}

/// A wait that is shorter than its usual time.
fn shortened(wait: &Wait) -> Option<Note> {
    let lasts = wait.span.map(|(from, to)| to - from)?;
    let usual = wait.lag.usual;
    let title = wait.deed.step.as_ref()?.title.clone();
    (lasts < usual).then_some(Note::Shortened { title, lasts, usual })
}

/// The hours of each day in which work is done, the last one until it is ready.
fn days(
    (back, ready): (i32, DateTime),
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
fn share(problem: &mut Problem, strand: &Strand, trays: i32) {
    let one = |task: usize| Use { task, amount: 1, after: 0 };
    let busy = strand.steps.iter().flat_map(StepPlan::busy);
    problem.pools = vec![Pool { capacity: 1, uses: busy.map(one).collect() }];
    let mut heats: Vec<Temperature> = Vec::new();
    let mut bakes = Vec::new();
    for step in &strand.steps {
        let Some(heat) = step.oven.as_ref().map(Temperature::dial) else { continue };
        let at = heats.iter().position(|known| *known == heat).unwrap_or_else(|| {
            heats.push(heat);
            heats.len() - 1
        });
        let heat = i32::try_from(at).unwrap_or(0);
        bakes.extend(step.bakes.iter().map(|(task, trays)| Bake {
            task: *task,
            trays: *trays,
            heat,
            oven: None,
        }));
    }
    problem.ovens = Ovens { count: 1, trays, after: 0, bakes };
    problem.units = vec![strand.tasks.clone()];
}

fn name(work: &Work, draft: &Draft, answer: &Answer) -> Timetable {
    let mut tasks = TaskName::unnamed(Who::Home, draft.problem.tasks.len());
    let mut waits = Vec::new();
    name_strand(&draft.strand, Who::Home, &mut tasks, &mut waits);
    let naming = Naming {
        name: &work.recipe.name,
        title: &work.recipe.title.value,
        clock: &draft.clock,
        tasks,
        waits,
        pools: vec![PoolName::Home],
        stores: Vec::new(),
        together: None,
    };
    timetable(&draft.problem, answer, naming)
}
