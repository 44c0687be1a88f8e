//! An evening under way: what is said of it is kept in the day file of its class, and the rest
//! is planned anew. The terminal and the phones in the room say it in the same way.

use std::path::Path;

use jiff::civil::DateTime;

use crate::edition::Edition;
use crate::model::{Class, Heard, Said, Session};
use crate::plan::{self, Clock, Effort, Evening, Progress, Timetable, Unheard, Unready};
use crate::read::{self, TAKEN_BACK, Unreadable};
use crate::said;
use crate::statement::Statement;
use crate::store::{LineFile, StoreError, day_path, line_text};

/// What was said so many minutes ago is not of late.
const LATELY: i64 = 30;

/// Hours around a session in which something may be said of it.
const AROUND: i64 = 3;

/// What takes back the line before.
pub const TAKE_BACK: &str = "take back";

/// What is said of an evening.
#[derive(Clone, Copy, Debug)]
pub struct Spoken<'a> {
    /// The words; none where only the plan is asked for.
    pub words: &'a str,
    /// When: local time.
    pub at: DateTime,
    /// Whether it is kept; else it is only tried.
    pub keeps: bool,
}

/// Why something said is not taken in.
#[derive(Debug)]
pub enum Untaken {
    /// This part of the words does not read.
    Unreadable(String),
    /// There is no group of this number; the class's name and how many it has.
    NoGroup(u32, String, u32),
    /// The day file, a line of it and what does not read there.
    File(String, usize, String),
    /// The day file, the time of a line, and why that cannot be taken in.
    Line(String, DateTime, Unheard),
    /// The class is not clear: its name, and why.
    Unclear(String, plan::Unclear),
    /// The class of this name has no plan to begin with.
    NoPlan(String),
    /// There is no such time.
    NoTime(DateTime),
    /// It cannot be taken in.
    Unheard(Unheard),
    /// The machine.
    Store(StoreError),
}

impl From<StoreError> for Untaken {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
}

impl Untaken {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::Unreadable(part) => said!("today-unreadable", part),
            Self::NoGroup(number, name, groups) => {
                said!("today-group", number, name, groups)
            }
            Self::File(file, line, text) => {
                said!("today-file-unreadable", file, line, text)
            }
            Self::Line(file, at, why) => {
                let why = unheard(why);
                said!("today-file-unheard", file, at = stamp(*at), why)
            }
            Self::Unclear(name, why) => said!("plan-cannot", name, reason = why.said()),
            Self::NoPlan(name) => said!("today-none-to-begin", name),
            Self::NoTime(at) => said!("today-no-time", time = stamp(*at)),
            Self::Unheard(why) => unheard(why),
            Self::Store(error) => error.said(),
        }
    }
}

/// What is said and cannot be taken in.
fn unheard(why: &Unheard) -> Statement {
    match why {
        Unheard::NoStep(step, known) => said!("plan-done-no-step", step, known),
        Unheard::Several(step, which) => said!("plan-done-several", step, which),
        Unheard::NoGroup => said!("plan-done-no-group"),
        Unheard::NoKit(kit) => said!("plan-done-no-kit", kit),
        Unheard::Early => said!("today-later-kept"),
    }
}

/// A class carried through everything that was said of it, up to now.
pub struct UnderWay<'a> {
    evening: Evening<'a>,
    minute: i32,
    new: Vec<Said>,
    /// The plans that followed from what was said lately, in its order.
    pub before: Vec<Timetable>,
}

/// What a class was carried to by the lines of its day file, for whoever asks again: while
/// the file begins with the same lines, only those that follow are planned.
#[derive(Clone, Debug)]
pub struct Carried {
    progress: Progress,
    heard: Vec<Heard>,
    /// The plans that followed from what was said lately, and when it was said.
    plans: Vec<(DateTime, Timetable)>,
}

/// Carries a class through its day file and takes in what is new; where that shall be kept,
/// it is, before anything else can go wrong. It goes on from what it was `carried` to before,
/// which must be of the same class in the same edition.
///
/// # Errors
/// What does not read or cannot be taken in; then nothing is kept.
pub fn take_in<'a>(
    content: &Path,
    (edition, class): (&'a Edition, &'a Class),
    spoken: Spoken,
    effort: Effort<'a>,
    carried: &mut Option<Carried>,
) -> Result<UnderWay<'a>, Untaken> {
    let said = spoken.words.trim();
    let takes_back = said == TAKE_BACK;
    let new = read::spoken(if takes_back { "" } else { said });
    let new = new.map_err(|wrong| Untaken::Unreadable(wrong.part))?;
    beyond(class, &new)?;
    let path = day_path(content, &class.name);
    let keeps = spoken.keeps && !said.is_empty();
    let mut file = if keeps { Some(LineFile::open(&path)?) } else { None };
    let mut text =
        file.as_ref().map_or_else(|| line_text(&path), |file| Ok(file.text.clone()))?;
    let line = read::day_line(spoken.at, if takes_back { TAKEN_BACK } else { said });
    if takes_back {
        text += &format!("\n{line}\n");
    }
    let shown = path.display().to_string();
    let heard = read::day_file(&text)
        .map_err(|Unreadable { line, part }| Untaken::File(shown.clone(), line, part))?;
    let known = carried.take().filter(|known| heard.starts_with(&known.heard));
    let (mut evening, through, mut plans) = match known {
        Some(Carried { progress, heard, plans }) => {
            (Evening::resumed(progress, edition.book(), effort), heard.len(), plans)
        }
        None => (begin(edition, class, effort)?, 0, Vec::new()),
    };
    plans.extend(carry(&mut evening, &heard[through..], &shown)?);
    let lately = jiff::Span::new().minutes(LATELY);
    let since = spoken.at.checked_sub(lately).unwrap_or(spoken.at);
    plans.retain(|(at, _)| *at >= since);
    let before = plans.iter().map(|(_, plan)| plan.clone()).collect();
    // What was planned in haste is planned again.
    *carried = (!effort.is_stopped()).then(|| {
        let progress = evening.progress();
        Carried { progress, heard, plans }
    });
    let minute = minute(evening.clock(), spoken.at)?;
    evening.hears(minute, &new).map_err(Untaken::Unheard)?;
    if let Some(file) = &mut file {
        file.keep(&line)?;
    }
    Ok(UnderWay { evening, minute, new, before })
}

impl UnderWay<'_> {
    /// The plan from now on.
    ///
    /// # Errors
    /// Where what was said cannot be taken in after all.
    pub fn plan(mut self) -> Result<Timetable, Untaken> {
        self.evening.hear(self.minute, &self.new).map_err(Untaken::Unheard)
    }
}

/// Takes in lines of a day file: the plan after each, and when it was said.
fn carry(
    evening: &mut Evening,
    heard: &[Heard],
    file: &str,
) -> Result<Vec<(DateTime, Timetable)>, Untaken> {
    let plan = |one: &Heard| {
        let minute = minute(evening.clock(), one.at)?;
        let plan = evening
            .hear(minute, &one.said)
            .map_err(|why| Untaken::Line(file.to_owned(), one.at, why))?;
        Ok((one.at, plan))
    };
    heard.iter().map(plan).collect()
}

fn begin<'a>(
    edition: &'a Edition,
    class: &'a Class,
    effort: Effort<'a>,
) -> Result<Evening<'a>, Untaken> {
    let name = || class.name.clone();
    Evening::new(class, edition.book(), effort).map_err(|why| match why {
        Unready::Unclear(why) => Untaken::Unclear(name(), why),
        Unready::NoPlan => Untaken::NoPlan(name()),
    })
}

fn beyond(class: &Class, said: &[Said]) -> Result<(), Untaken> {
    let groups = class.groups();
    let highest = said.iter().filter_map(Said::highest).max();
    match highest.filter(|group| *group >= groups) {
        Some(beyond) => Err(Untaken::NoGroup(beyond + 1, class.name.clone(), groups)),
        None => Ok(()),
    }
}

fn minute(clock: &Clock, at: DateTime) -> Result<i32, Untaken> {
    clock.minute(at).ok_or(Untaken::NoTime(at))
}

/// The zone of the course.
pub fn zone(edition: &Edition) -> Option<&str> {
    edition.content.course.as_ref()?.time_zone.as_deref()
}

/// The local time of a zone by this machine's clock, to the minute.
pub fn here(zone: &str) -> Option<DateTime> {
    let zone = jiff::tz::TimeZoneDatabase::bundled().get(zone).ok()?;
    let here = jiff::Timestamp::now().to_zoned_datetime(zone).datetime();
    here.with().second(0).subsec_nanosecond(0).build().ok()
}

/// Whether a time is in a session, or not long before or after it.
pub fn near(session: Session, at: DateTime) -> bool {
    let around = jiff::Span::new().hours(AROUND);
    let open = session.from.checked_sub(around).unwrap_or(session.from);
    let close = session.to.checked_add(around).unwrap_or(session.to);
    (open..=close).contains(&at)
}

/// A moment as it is written: `2027-03-02 18:55`.
pub fn stamp(at: DateTime) -> String {
    at.strftime("%Y-%m-%d %H:%M").to_string()
}
