//! `tourier today`: an evening under way. What is said is kept in the day file, and the rest
//! is planned anew.

use jiff::civil::DateTime;

use crate::edition::Edition;
use crate::model::{Class, Session};
use crate::plan::{
    self, Clock, Effort, Evening, Said, TAKEN_BACK, Timetable, Unheard, Unready,
};
use crate::read;
use crate::store::{DayFile, day_path, day_text};

use super::args::{Args, TodayArgs};
use super::waiting::Waiting;
use super::{Done, Stop, nowhere, sound, stem, timetable};

/// Hours around a session in which something may be said of it.
const AROUND: i64 = 3;

/// Takes in what is said, keeps it, and prints the plan from now on.
pub(super) fn run(args: &Args, options: &TodayArgs) -> Done {
    let (edition, words) = sound(args)?;
    let class = timetable::class(&edition, &options.class).ok_or_else(|| {
        let known = edition.content.classes.iter().map(|class| class.name.as_str());
        nowhere("class", stem(&options.class), &known.collect::<Vec<_>>())
    })?;
    let said = options.said.trim();
    let new = plan::read_day(if said == "take back" { "" } else { said });
    let new = new.map_err(|part| Stop::Use(unread(&part)))?;
    beyond(class, &new)?;
    let path = day_path(&args.content, &class.name);
    let keeps = !said.is_empty() && !options.only_try;
    let mut file = if keeps { Some(DayFile::open(&path)?) } else { None };
    let mut text =
        file.as_ref().map_or_else(|| day_text(&path), |file| Ok(file.text.clone()))?;
    let now = now(class, options.now.as_deref(), zone(&edition))?;
    let mut line = plan::day_line(now, said);
    if said == "take back" {
        line = plan::day_line(now, TAKEN_BACK);
        text += &format!("\n{line}\n");
    }
    let shown = path.display();
    let heard = plan::read_day_file(&text).map_err(|(line, text)| {
        Stop::Use(format!("{shown}:{line}: `{text}` does not read; {EXAMPLE}"))
    })?;
    let waiting = Waiting::new()?;
    let effort = Effort::USUAL.watched(&waiting);
    let mut evening = begin(&edition, class, effort)?;
    for one in &heard {
        let minute = minute(evening.clock(), one.at)?;
        evening.hear(minute, &one.said).map_err(|unheard| {
            let at = stamp(one.at);
            Stop::Use(format!("{shown} at {at}: {}", unheard_so(&unheard)))
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
    timetable::show(&edition, &plan, (options.form, &words))
}

const EXAMPLE: &str = "write \"pairs 1-3: second turn; pair 4 late 10\"";

fn unread(part: &str) -> String {
    format!("`{part}` does not read; {EXAMPLE}")
}

fn begin<'a>(
    edition: &'a Edition,
    class: &'a Class,
    effort: Effort<'a>,
) -> Result<Evening<'a>, Stop> {
    Evening::new(class, edition.book(), effort).map_err(|why| {
        Stop::Use(match why {
            Unready::Unclear(reason) => {
                format!("`{}` cannot be planned: {reason}", class.name)
            }
            Unready::NoPlan => format!(
                "the class has no plan to begin with; `tourier timetable {}` says why",
                class.name
            ),
        })
    })
}

fn beyond(class: &Class, said: &[Said]) -> Done {
    let groups = class.groups();
    let highest = said.iter().filter_map(Said::highest).max();
    match highest.filter(|group| *group >= groups) {
        Some(beyond) => {
            let (number, name) = (beyond + 1, &class.name);
            Err(Stop::Use(format!(
                "there is no group {number}: `{name}` has {groups} groups"
            )))
        }
        None => Ok(()),
    }
}

/// What is said and cannot be taken in.
fn unheard_so(unheard: &Unheard) -> String {
    match unheard {
        Unheard::NoStep(step, known) => {
            format!("those have no step `{step}`; they have {}", known.join(", "))
        }
        Unheard::Several(step, which) => {
            format!("`{step}` may be several; say which: {}", which.join(", "))
        }
        Unheard::NoGroup => "there are no such groups in this class".into(),
        Unheard::NoKit(kit) => format!("the class does not count so much of `{kit}`"),
        Unheard::Early => {
            "something later is kept already; put an earlier line into the day file itself"
                .into()
        }
    }
}

fn minute(clock: &Clock, at: DateTime) -> Result<i32, Stop> {
    let none = || Stop::Use(format!("{} is no real time", stamp(at)));
    clock.minute(at).ok_or_else(none)
}

fn zone(edition: &Edition) -> Option<&str> {
    edition.content.course.as_ref()?.time_zone.as_deref()
}

/// The time that is said, else that of this machine's clock, in the course's zone.
fn now(class: &Class, said: Option<&str>, zone: Option<&str>) -> Result<DateTime, Stop> {
    let here = zone.and_then(here);
    let Some(said) = said else { return by_the_clock(class, here) };
    if let Some(moment) = read::moment(said) {
        return Ok(moment);
    }
    let wrong = |why: &str| Stop::Use(format!("--now {said} {why}"));
    let (hour, minute) =
        read::clock(said).ok_or_else(|| wrong("does not read; write --now 18:55"))?;
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
        (None, []) => Err(wrong("is near no session; write a time such as --now 18:55")),
        (None, [first, ..]) => Err(wrong(&format!(
            "may be on several days; say which: --now \"{}\"",
            stamp(*first)
        ))),
    }
}

/// The local time of a zone by this machine's clock, to the minute.
fn here(zone: &str) -> Option<DateTime> {
    let zone = jiff::tz::TimeZoneDatabase::bundled().get(zone).ok()?;
    let here = jiff::Timestamp::now().to_zoned_datetime(zone).datetime();
    here.with().second(0).subsec_nanosecond(0).build().ok()
}

/// This machine's time, where a session is near.
fn by_the_clock(class: &Class, here: Option<DateTime>) -> Result<DateTime, Stop> {
    let first = class.sessions.first().map(|first| first.value.from);
    let example = first.map_or_else(String::new, stamp);
    let Some(here) = here else {
        let why = "the course names no `time zone`";
        return Err(Stop::Use(format!(
            "{why}; say what time it is: --now \"{example}\""
        )));
    };
    if class.sessions.iter().any(|session| near(session.value, here)) {
        return Ok(here);
    }
    let it_is = format!("it is {}, and no session is near", stamp(here));
    Err(Stop::Use(format!("{it_is}; say when: --now \"{example}\"")))
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
