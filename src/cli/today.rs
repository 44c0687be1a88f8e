//! `tourier today`: an evening under way. What is said is kept in the day file, and the rest
//! is planned anew.

use jiff::civil::DateTime;

use crate::edition::Edition;
use crate::model::{Class, Said, Session};
use crate::plan::{Clock, Effort, Evening, Timetable, Unheard, Unready};
use crate::read::{self, TAKEN_BACK, Unreadable};
use crate::said;
use crate::statement::Statement;
use crate::store::{LineFile, day_path, line_text};

use super::args::TodayArgs;
use super::waiting::Waiting;
use super::{Call, Done, Stop, nowhere, sound, stem, timetable};

/// Hours around a session in which something may be said of it.
const AROUND: i64 = 3;

/// Takes in what is said, keeps it, and prints the plan from now on.
pub(super) fn run(call: &Call, options: &TodayArgs) -> Done {
    let (edition, words) = sound(call)?;
    let class = timetable::class(&edition, &options.class).ok_or_else(|| {
        let known = edition.content.classes.iter().map(|class| class.name.as_str());
        nowhere(said!("kind-class"), stem(&options.class), &known.collect::<Vec<_>>())
    })?;
    let said = options.said.trim();
    let new = read::spoken(if said == "take back" { "" } else { said });
    let new =
        new.map_err(|wrong| Stop::Use(said!("today-unreadable", part = wrong.part)))?;
    beyond(class, &new)?;
    let path = day_path(&call.content, &class.name);
    let keeps = !said.is_empty() && !options.only_try;
    let mut file = if keeps { Some(LineFile::open(&path)?) } else { None };
    let mut text =
        file.as_ref().map_or_else(|| line_text(&path), |file| Ok(file.text.clone()))?;
    let now = now(class, options.now.as_deref(), zone(&edition))?;
    let mut line = read::day_line(now, said);
    if said == "take back" {
        line = read::day_line(now, TAKEN_BACK);
        text += &format!("\n{line}\n");
    }
    let file_shown = path.display().to_string();
    let heard = read::day_file(&text).map_err(|Unreadable { line, part }| {
        Stop::Use(said!("today-file-unreadable", file = file_shown, line, text = part))
    })?;
    let waiting = Waiting::new(call)?;
    let effort = Effort::USUAL.watched(&waiting);
    let mut evening = begin(&edition, class, effort)?;
    for one in &heard {
        let minute = minute(evening.clock(), one.at)?;
        evening.hear(minute, &one.said).map_err(|unheard| {
            let at = stamp(one.at);
            let why = unheard_so(&unheard);
            Stop::Use(said!("today-file-unheard", file = file_shown, at, why))
        })?;
    }
    let minute = minute(evening.clock(), now)?;
    let wrong = |unheard: Unheard| Stop::Use(unheard_so(&unheard));
    evening.hears(minute, &new).map_err(wrong)?;
    // What was said is kept before anything else can go wrong.
    if let Some(file) = &mut file {
        file.keep(&line)?;
    }
    drop(file);
    let mut plan: Timetable = evening.hear(minute, &new).map_err(wrong)?;
    waiting.over(&mut plan);
    timetable::show(&edition, &plan, (options.form, None, &words))
}

fn begin<'a>(
    edition: &'a Edition,
    class: &'a Class,
    effort: Effort<'a>,
) -> Result<Evening<'a>, Stop> {
    Evening::new(class, edition.book(), effort).map_err(|why| {
        Stop::Use(match why {
            Unready::Unclear(reason) => {
                said!("plan-cannot", name = class.name, reason = reason.said())
            }
            Unready::NoPlan => said!("today-none-to-begin", name = class.name),
        })
    })
}

fn beyond(class: &Class, said: &[Said]) -> Done {
    let groups = class.groups();
    let highest = said.iter().filter_map(Said::highest).max();
    match highest.filter(|group| *group >= groups) {
        Some(beyond) => {
            let (number, name) = (beyond + 1, &class.name);
            Err(Stop::Use(said!("today-group", number, name, groups)))
        }
        None => Ok(()),
    }
}

/// What is said and cannot be taken in.
fn unheard_so(unheard: &Unheard) -> Statement {
    match unheard {
        Unheard::NoStep(step, known) => {
            said!("plan-done-no-step", step, known)
        }
        Unheard::Several(step, which) => {
            said!("plan-done-several", step, which)
        }
        Unheard::NoGroup => said!("plan-done-no-group"),
        Unheard::NoKit(kit) => said!("plan-done-no-kit", kit),
        Unheard::Early => {
            said!("today-later-kept")
        }
    }
}

fn minute(clock: &Clock, at: DateTime) -> Result<i32, Stop> {
    let none = || Stop::Use(said!("today-no-time", time = stamp(at)));
    clock.minute(at).ok_or_else(none)
}

/// The zone of the course.
pub(super) fn zone(edition: &Edition) -> Option<&str> {
    edition.content.course.as_ref()?.time_zone.as_deref()
}

/// The time that is said, else that of this machine's clock, in the course's zone.
fn now(class: &Class, said: Option<&str>, zone: Option<&str>) -> Result<DateTime, Stop> {
    let here = zone.and_then(here);
    let Some(said) = said else { return by_the_clock(class, here) };
    if let Some(moment) = read::moment(said) {
        return Ok(moment);
    }
    let (hour, minute) = read::clock(said)
        .ok_or_else(|| Stop::Use(said!("plan-now-unreadable", now = said)))?;
    let mut found: Vec<DateTime> = Vec::new();
    for session in class.sessions.iter().map(|session| session.value) {
        for day in [session.from.date(), session.to.date()] {
            let at = day.at(hour, minute, 0, 0);
            if near(session, at) && !found.contains(&at) {
                found.push(at);
            }
        }
    }
    let date = here.map(DateTime::date);
    let today = found.iter().find(|at| Some(at.date()) == date);
    match (today, found.as_slice()) {
        (Some(at), _) | (None, [at]) => Ok(*at),
        (None, []) => Err(Stop::Use(said!("today-no-session", now = said))),
        (None, [first, ..]) => {
            let day = stamp(*first);
            Err(Stop::Use(said!("today-several", now = said, day)))
        }
    }
}

/// The local time of a zone by this machine's clock, to the minute.
pub(super) fn here(zone: &str) -> Option<DateTime> {
    let zone = jiff::tz::TimeZoneDatabase::bundled().get(zone).ok()?;
    let here = jiff::Timestamp::now().to_zoned_datetime(zone).datetime();
    here.with().second(0).subsec_nanosecond(0).build().ok()
}

/// This machine's time, where a session is near.
fn by_the_clock(class: &Class, here: Option<DateTime>) -> Result<DateTime, Stop> {
    let first = class.sessions.first().map(|first| first.value.from);
    let example = first.map_or_else(String::new, stamp);
    let Some(here) = here else {
        return Err(Stop::Use(said!("today-no-zone", example)));
    };
    if class.sessions.iter().any(|session| near(session.value, here)) {
        return Ok(here);
    }
    let time = stamp(here);
    Err(Stop::Use(said!("today-by-the-clock", time, example)))
}

fn stamp(at: DateTime) -> String {
    at.strftime("%Y-%m-%d %H:%M").to_string()
}

/// Whether a time is in a session, or not long before or after it.
fn near(session: Session, at: DateTime) -> bool {
    let around = jiff::Span::new().hours(AROUND);
    let open = session.from.checked_sub(around).unwrap_or(session.from);
    let close = session.to.checked_add(around).unwrap_or(session.to);
    (open..=close).contains(&at)
}
