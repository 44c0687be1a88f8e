//! The home plan: backwards from the moment at which it shall be ready, within the hours
//! in which the baker is up.

use jiff::ToSpan;
use jiff::civil::DateTime;

use crate::formula::Book;
use crate::work::Work;

use super::clock::Clock;
use super::name::{name_strand, unnamed};
use super::problem::{Bake, Goal, Ovens, Pool, Problem, Use};
use super::solve::{Answer, Effort, solve};
use super::strand::{Room, Strand, strand};
use super::timetable::{Naming, Timetable, timetable};

/// Steps of the search for each thing that is tried where nothing fits.
const TRIAL: Effort = Effort::TRIAL;
/// Other times are tried in steps of so many minutes, so many times.
const STEP: i32 = 15;
const TRIALS: i32 = 32;
/// How many days a plan may reach back: few are tried first.
const DAYS: [i32; 4] = [1, 2, 3, 6];
/// Trays in a home oven where the course says nothing.
const TRAYS: i32 = 1;

/// Plans one batch at home so that it is ready at `ready`.
///
/// # Errors
/// The reason, where the time is none or the steps wait for each other in a ring.
pub fn home(
    work: &Work,
    ready: DateTime,
    book: Book,
    effort: Effort,
) -> Result<Timetable, &'static str> {
    let course = book.content.course.as_ref();
    let awake = course.map_or((7 * 60, 22 * 60 + 30), |course| course.awake);
    let mut plan = within(work, ready, (book, awake), effort)?;
    if plan.verdict != "fits" {
        explain(&mut plan, work, ready, (book, awake));
    }
    Ok(plan)
}

/// Says why there is no plan, and what would be possible, each tried.
fn explain(
    plan: &mut Timetable,
    work: &Work,
    ready: DateTime,
    (book, awake): (Book, (i32, i32)),
) {
    let fits = |ready: DateTime, awake: (i32, i32)| {
        within(work, ready, (book, awake), TRIAL).is_ok_and(|plan| plan.verdict == "fits")
    };
    let clock = |minute: i32| format!("{:02}:{:02}", minute / 60, minute % 60);
    plan.reasons.push(format!(
        "getting up at {} leaves too little time until {} for the steps that cannot be done \
         the day before: what comes in the evening may not wait that long",
        clock(awake.0),
        ready.strftime("%H:%M"),
    ));
    let later = (1..=TRIALS).find_map(|step| {
        let later = ready.checked_add((step * STEP).minutes()).ok()?;
        fits(later, awake).then_some(later)
    });
    if let Some(later) = later {
        plan.remedies.push(format!("ready at {} it fits", later.strftime("%H:%M")));
    }
    let earlier = (1..=TRIALS)
        .map(|step| awake.0 - step * STEP)
        .take_while(|from| *from >= 0)
        .find(|from| fits(ready, (*from, awake.1)));
    if let Some(from) = earlier {
        plan.remedies.push(format!("getting up at {} it fits", clock(from)));
    }
}

/// The plan that reaches back no further than it must: a longer way back can only save
/// waiting, and is tried as long as there is any.
fn within(
    work: &Work,
    ready: DateTime,
    (book, awake): (Book, (i32, i32)),
    effort: Effort,
) -> Result<Timetable, &'static str> {
    let mut best: Option<Timetable> = None;
    for days in DAYS {
        let plan = reaching(days, work, ready, (book, awake, effort))?;
        let waiting = |plan: &Timetable| {
            plan.objective.first().map_or(i32::MAX, |waiting| waiting.minutes)
        };
        let none = waiting(&plan) == 0;
        if best.as_ref().is_none_or(|best| waiting(&plan) < waiting(best)) {
            best = Some(plan);
        }
        if none {
            break;
        }
    }
    best.ok_or(NO_TIME)
}

/// The best plan that begins at most so many days before.
fn reaching(
    back: i32,
    work: &Work,
    ready: DateTime,
    (book, awake, effort): (Book, (i32, i32), Effort),
) -> Result<Timetable, &'static str> {
    let course = book.content.course.as_ref();
    let zone = course.and_then(|course| course.time_zone.as_deref());
    let first = ready.date().checked_sub(back.days()).map_err(|_| NO_TIME)?;
    let clock = Clock::new(first.at(0, 0, 0, 0), zone).ok_or(NO_TIME)?;
    let end = clock.minute(ready).ok_or(NO_TIME)?;
    let mut problem = Problem {
        sessions: days((back, ready), awake, &clock).ok_or(NO_TIME)?,
        goal: Goal::LatestStart(end),
        ..Problem::default()
    };
    let trays = course.and_then(|course| course.kit.trays_per_oven);
    let trays = trays.map_or(TRAYS, |trays| i32::try_from(trays).unwrap_or(TRAYS)).max(1);
    let room = Room { trays_per_oven: trays, nights: true };
    let strand = strand(work, room, &mut problem, book)
        .ok_or("its steps wait for each other in a ring")?;
    problem.tasks[strand.finish].starts = vec![(end, end)];
    share(&mut problem, &strand, trays);
    let answer = solve(&problem, effort);
    Ok(name(work, &problem, &answer, (&strand, &clock)))
}

const NO_TIME: &str = "that is no time on a clock";

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
            let (hour, minute) =
                (i8::try_from(minute / 60).ok()?, i8::try_from(minute % 60).ok()?);
            clock.minute(day.at(hour, minute, 0, 0))
        };
        let (from, to) = (at(awake.0)?, at(awake.1)?.min(end));
        if from < to {
            days.push((from, to));
        }
    }
    // Ready before the day begins or after it ends: that moment counts as the day's.
    match days.last_mut() {
        Some(last) if last.1 < end => {
            if clock.local(last.0).date() == ready.date() {
                last.1 = end;
            } else {
                days.push((end, end));
            }
        }
        _ => {}
    }
    Some(days)
}

/// One pair of hands, one oven.
fn share(problem: &mut Problem, strand: &Strand, trays: i32) {
    let one = |task: usize| Use { task, amount: 1, after: 0 };
    let hands = strand.steps.iter().filter_map(|step| step.hands);
    problem.pools = vec![Pool { capacity: 1, uses: hands.map(one).collect() }];
    let mut heats: Vec<&str> = Vec::new();
    let mut bakes = Vec::new();
    for step in &strand.steps {
        let heat = step.oven.as_deref().unwrap_or_default();
        let at = heats.iter().position(|known| *known == heat).unwrap_or_else(|| {
            heats.push(heat);
            heats.len() - 1
        });
        let heat = i32::try_from(at).unwrap_or(0);
        bakes.extend(step.bakes.iter().map(|(task, trays)| Bake {
            task: *task,
            trays: *trays,
            heat,
        }));
    }
    problem.ovens = Ovens { count: 1, trays, after: 0, bakes };
    problem.units = vec![strand.tasks.clone()];
}

fn name(
    work: &Work,
    problem: &Problem,
    answer: &Answer,
    (strand, clock): (&Strand, &Clock),
) -> Timetable {
    let (mut tasks, mut waits) = (unnamed(problem), Vec::new());
    name_strand(strand, "you", &mut tasks, &mut waits);
    let naming = Naming {
        name: &work.recipe.name,
        title: &work.recipe.title.value,
        clock,
        tasks,
        waits,
        pools: vec!["your hands".into()],
        stores: Vec::new(),
        second: "lead",
    };
    timetable(problem, answer, naming)
}
