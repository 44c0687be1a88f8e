//! `tourier today`: an evening under way. What is said is kept in the day file, and the rest
//! is planned anew.

use jiff::civil::DateTime;

use crate::evening::{Spoken, Untaken, here, near, stamp, take_in, zone};
use crate::model::Class;
use crate::plan::Effort;
use crate::read;
use crate::said;

use super::args::TodayArgs;
use super::waiting::Waiting;
use super::{Call, Done, Stop, nowhere, sound, stem, timetable};

impl From<Untaken> for Stop {
    fn from(why: Untaken) -> Self {
        match why {
            Untaken::Store(error) => error.into(),
            Untaken::Unreadable(_)
            | Untaken::NoGroup(..)
            | Untaken::File(..)
            | Untaken::Line(..)
            | Untaken::Unclear(..)
            | Untaken::NoPlan(_)
            | Untaken::NoTime(_)
            | Untaken::Unheard(_) => Self::Use(why.said()),
        }
    }
}

/// Takes in what is said, keeps it, and prints the plan from now on.
pub(super) fn run(call: &Call, options: &TodayArgs) -> Done {
    let (edition, words) = sound(call)?;
    let name = stem(&options.class);
    let class = edition.content.class(name).ok_or_else(|| {
        let known = edition.content.classes.iter().map(|class| class.name.as_str());
        nowhere(said!("kind-class"), name, &known.collect::<Vec<_>>())
    })?;
    let at = now(class, options.now.as_deref(), zone(&edition))?;
    let spoken = Spoken { words: &options.said, at, keeps: !options.only_try };
    let waiting = Waiting::new(call)?;
    let effort = Effort::USUAL.watched(&waiting);
    let under_way = take_in(&call.content, (&edition, class), spoken, effort, &mut None)?;
    let mut plan = under_way.plan()?;
    waiting.over(&mut plan);
    timetable::show(&edition, &plan, (options.form, None, &words))
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
