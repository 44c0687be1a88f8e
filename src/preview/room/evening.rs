//! A class's evening, worked out for phones from the edition that is on show.

use std::path::Path;
use std::sync::PoisonError;

use hyper::StatusCode;
use jiff::civil::DateTime;

use crate::edition::Edition;
use crate::evening::{
    self, Carried, Spoken, UnderWay, Untaken, here, near, take_in, zone,
};
use crate::model::Class;
use crate::plan::{Activity, Caveat, Effort, Timetable, Watch, Who};
use crate::said;
use crate::sheet::{NowFact, PlanSheet, making};
use crate::statement::Statement;
use crate::store::{day_path, line_text};
use crate::words::Words;

use super::super::answer::Answer;
use super::super::served::{Served, Unserved};
use super::pace::Waiting;
use super::{Room, evening_path, page};

/// Minutes before and after now in which a step is offered to be marked.
const AROUND: (i32, i32) = (15, 30);

/// The last page as it was made, with what it was made from; and what the day of which class,
/// in which edition, had come to.
#[derive(Default)]
pub(super) struct Kept {
    page: Option<(From, String)>,
    carried: Option<([String; 2], Carried)>,
}

/// What an evening's page is made from.
#[derive(Clone, PartialEq, Eq)]
struct From {
    edition: String,
    class: String,
    /// The day file.
    day: String,
    at: DateTime,
}

/// Why there is no evening to look at.
enum Closed {
    /// There is no such class.
    Nowhere,
    /// The course names no time zone, so that nobody knows how late it is.
    NoZone,
    /// No session of it is near; when the next begins.
    Far(Option<DateTime>),
    /// What was said cannot be taken in.
    Untaken(Untaken),
    /// Whoever works it out broke.
    Broke,
}

impl<T: Into<Untaken>> std::convert::From<T> for Closed {
    fn from(why: T) -> Self {
        Self::Untaken(why.into())
    }
}

impl Closed {
    fn said(&self, words: &Words) -> Statement {
        match self {
            Self::Nowhere => said!("preview-no-page"),
            Self::NoZone => said!("room-no-zone"),
            Self::Far(None) => said!("room-over"),
            Self::Far(Some(next)) => {
                let day = words.day(next.date());
                let time = words.clock(next.hour(), next.minute());
                said!("room-far", day, time)
            }
            Self::Untaken(why) => why.said(),
            Self::Broke => Unserved::Broke.said(),
        }
    }

    fn status(&self) -> StatusCode {
        match self {
            Self::Nowhere => StatusCode::NOT_FOUND,
            Self::NoZone | Self::Far(_) => StatusCode::OK,
            Self::Untaken(Untaken::Store(_)) | Self::Broke => {
                StatusCode::INTERNAL_SERVER_ERROR
            }
            Self::Untaken(_) => StatusCode::UNPROCESSABLE_ENTITY,
        }
    }

    /// A page that says so, with the way back to where `back` leads.
    fn page(&self, served: &Served, back: &str) -> Answer {
        let text = served.words.tell(&self.said(&served.words));
        Answer::page(self.status(), page::remark(&text, back, &served.words))
    }
}

/// Everything that a phone is shown of an evening.
pub(super) struct Told {
    /// The plan from now on.
    pub(super) plan: PlanSheet,
    /// What followed from what was said lately.
    pub(super) before: Vec<NowFact>,
    /// What was said so far, as it stands in the day file.
    pub(super) said: Vec<String>,
    /// Who may be spoken of: as said, and in words.
    pub(super) who: Vec<[String; 2]>,
    /// What may be marked now.
    pub(super) steps: Vec<Step>,
}

/// A step that is done about now.
pub(super) struct Step {
    /// Who does it, as said.
    pub(super) who: String,
    /// The same in words.
    pub(super) named: String,
    /// The step, as said.
    pub(super) step: String,
    /// Its heading.
    pub(super) title: String,
    /// When it begins.
    pub(super) time: String,
}

/// Every class of the course: its name and title, and whether it is held about now.
pub(super) fn list(served: &Served) -> Answer {
    let found = served.look(|edition| {
        let now = zone(edition).and_then(here);
        let held = |class: &Class| now.is_some_and(|now| is_near(class, now));
        let one =
            |class: &Class| (class.name.clone(), class.title.value.clone(), held(class));
        edition.content.classes.iter().map(one).collect::<Vec<_>>()
    });
    match found {
        None => Closed::Broke.page(served, ""),
        Some(classes) => {
            Answer::page(StatusCode::OK, page::list(&classes, &served.words))
        }
    }
}

/// The evening of a class as it is now.
pub(super) fn look(room: &Room, (served, mark): (&Served, &str), class: &str) -> Answer {
    // One plan at a time: whoever asks meanwhile has the same.
    let mut kept = room.kept.lock().unwrap_or_else(PoisonError::into_inner);
    let (content, words) = (room.content.clone(), served.words.clone());
    let last = kept.page.as_ref().map(|(from, _)| from.clone());
    let edition = mark.to_owned();
    let found =
        under_way(&mut kept, (served, mark), class, move |it, class, at, carried| {
            let day = line_text(&day_path(&content, &class.name))?;
            let from = From { edition, class: class.name.clone(), day, at };
            if last.as_ref() == Some(&from) {
                return Ok((from, None));
            }
            let spoken = Spoken { words: "", at, keeps: false };
            let told =
                heard(&content, (it, class), spoken, carried, |evening, waiting| {
                    let before = evening.before.clone();
                    let mut plan = evening.plan()?;
                    if waiting.stop() {
                        plan.notes.push(Caveat::Stopped);
                    }
                    Ok(told((it, class), (&plan, &before), &from.day, &words))
                })?;
            Ok((from, Some(told)))
        });
    let (from, told) = match found {
        Err(why) => return why.page(served, super::EVENINGS),
        Ok(found) => found,
    };
    let page = match (told, kept.page.take()) {
        (Some(told), _) => page::evening(&told, class, &served.words),
        (None, Some((_, page))) => page,
        (None, None) => return Closed::Broke.page(served, super::EVENINGS),
    };
    kept.page = Some((from, page.clone()));
    Answer::page(StatusCode::OK, page)
}

/// Takes in what happened, and shows the evening again.
pub(super) fn mark(
    room: &Room,
    (served, mark): (&Served, &str),
    class: &str,
    words: &str,
) -> Answer {
    let mut kept = room.kept.lock().unwrap_or_else(PoisonError::into_inner);
    let (content, words) = (room.content.clone(), words.to_owned());
    let taken =
        under_way(&mut kept, (served, mark), class, move |it, class, at, carried| {
            let spoken = Spoken { words: &words, at, keeps: true };
            heard(&content, (it, class), spoken, carried, |_, _| Ok(()))
        });
    let back = evening_path(class);
    match taken {
        Ok(()) => Answer::other(&back, None),
        Err(why) => why.page(served, &back),
    }
}

/// Does something with a class that is held about now, from what its day had come to before.
fn under_way<T: Send + 'static>(
    kept: &mut Kept,
    (served, mark): (&Served, &str),
    class: &str,
    work: impl FnOnce(&Edition, &Class, DateTime, &mut Option<Carried>) -> Result<T, Closed>
    + Send
    + 'static,
) -> Result<T, Closed> {
    let of = [mark.to_owned(), class.to_owned()];
    let known = kept.carried.take().filter(|(known, _)| *known == of);
    let mut carried = known.map(|(_, carried)| carried);
    let name = class.to_owned();
    let found = served.look(move |edition| {
        let done = open(edition, &name)
            .and_then(|(class, at)| work(edition, class, at, &mut carried));
        (done, carried)
    });
    let (done, carried) = found.unwrap_or((Err(Closed::Broke), None));
    kept.carried = carried.map(|carried| (of, carried));
    done
}

/// Takes in what is said of a class, for someone who waits.
fn heard<T>(
    content: &Path,
    of: (&Edition, &Class),
    spoken: Spoken,
    carried: &mut Option<Carried>,
    then: impl FnOnce(UnderWay, &Waiting) -> Result<T, Closed>,
) -> Result<T, Closed> {
    let waiting = Waiting::new();
    let effort = Effort::USUAL.watched(&waiting);
    then(take_in(content, of, spoken, effort, carried)?, &waiting)
}

/// A class that is held about now, and what time it is there.
fn open<'a>(edition: &'a Edition, name: &str) -> Result<(&'a Class, DateTime), Closed> {
    let class = edition.content.class(name).ok_or(Closed::Nowhere)?;
    let now = zone(edition).and_then(here).ok_or(Closed::NoZone)?;
    if is_near(class, now) {
        return Ok((class, now));
    }
    let opens = class.sessions.iter().map(|session| session.value.from);
    Err(Closed::Far(opens.filter(|opens| *opens > now).min()))
}

fn is_near(class: &Class, now: DateTime) -> bool {
    class.sessions.iter().any(|session| near(session.value, now))
}

fn told(
    (edition, class): (&Edition, &Class),
    (plan, before): (&Timetable, &[Timetable]),
    day: &str,
    words: &Words,
) -> Told {
    let units = edition.first_units();
    let before = before.iter().filter_map(|it| making::plan_sheet(it, words, units).now);
    let everybody = ["all".to_owned(), words.get("room-all").to_owned()];
    let groups = (0..class.groups()).map(|group| {
        [group_said(&[group]), making::who(class, Who::Group(group), words)]
    });
    let teacher = ["instructor".to_owned(), making::who(class, Who::Instructor, words)];
    Told {
        plan: making::plan_sheet(plan, words, units),
        before: before.collect(),
        said: day.lines().map(str::to_owned).filter(|line| !line.is_empty()).collect(),
        who: std::iter::once(everybody).chain(groups).chain([teacher]).collect(),
        steps: steps(class, plan, words),
    }
}

/// What is done about now, in the order in which it begins.
fn steps(class: &Class, plan: &Timetable, words: &Words) -> Vec<Step> {
    let now = plan.now.as_ref().map_or(0, |now| now.minute);
    let about = |(from, to): (i32, i32)| to > now - AROUND.0 && from < now + AROUND.1;
    let mut found: Vec<(i32, &Activity, Makers)> = Vec::new();
    for activity in &plan.activities {
        let Some(span) = activity.span.filter(|span| about(*span)) else { continue };
        let Some(makers) = Makers::of(activity) else { continue };
        let same = found.iter_mut().find(|(_, other, known)| {
            let same = (&other.deed.recipe, &other.deed.step)
                == (&activity.deed.recipe, &activity.deed.step);
            same && known.is_alike(&makers)
        });
        match same {
            Some((from, _, known)) => {
                *from = (*from).min(span.0);
                known.join(makers);
            }
            None => found.push((span.0, activity, makers)),
        }
    }
    found.sort_by_key(|(from, activity, _)| (*from, activity.deed.recipe.clone()));
    let one = |(from, activity, makers): (i32, &Activity, Makers)| {
        let step = activity.deed.step.as_ref()?;
        let at = plan.clock.local(from);
        let title = match plan.titles.get(&activity.deed.recipe) {
            Some(recipe) => {
                words.fill("room-of", &[("recipe", recipe), ("step", &step.title)])
            }
            None => step.title.clone(),
        };
        Some(Step {
            who: makers.said(class),
            named: makers.named(class, words),
            step: format!("{}/{}", activity.deed.recipe, step.name),
            title,
            time: words.clock(at.hour(), at.minute()),
        })
    };
    found.into_iter().filter_map(one).collect()
}

/// Who does a step about now.
enum Makers {
    /// Who teaches.
    Instructor,
    /// Groups, by their numbers from 0.
    Groups(Vec<u32>),
}

impl Makers {
    fn of(activity: &Activity) -> Option<Self> {
        activity.deed.step.as_ref()?;
        match activity.deed.who {
            Who::Instructor => Some(Self::Instructor),
            Who::Group(group) | Who::Baker(group, _) => Some(Self::Groups(vec![group])),
            Who::Helper | Who::Home => None,
        }
    }

    fn is_alike(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Instructor, Self::Instructor) | (Self::Groups(_), Self::Groups(_)) => {
                true
            }
            (Self::Instructor, Self::Groups(_)) | (Self::Groups(_), Self::Instructor) => {
                false
            }
        }
    }

    fn join(&mut self, other: Self) {
        if let (Self::Groups(own), Self::Groups(more)) = (self, other) {
            own.extend(more);
            own.sort_unstable();
            own.dedup();
        }
    }

    /// As it is said.
    fn said(&self, class: &Class) -> String {
        match self {
            Self::Instructor => "instructor".to_owned(),
            Self::Groups(groups) if is_all(groups, class) => "all".to_owned(),
            Self::Groups(groups) => group_said(groups),
        }
    }

    fn named(&self, class: &Class, words: &Words) -> String {
        match self {
            Self::Instructor => making::who(class, Who::Instructor, words),
            Self::Groups(groups) if is_all(groups, class) => {
                words.get("room-all").to_owned()
            }
            Self::Groups(groups) => {
                let one = |group: &u32| making::who(class, Who::Group(*group), words);
                words.list(&groups.iter().map(one).collect::<Vec<_>>())
            }
        }
    }
}

fn is_all(groups: &[u32], class: &Class) -> bool {
    u32::try_from(groups.len()).is_ok_and(|count| count == class.groups())
}

/// Groups as they are said, whatever the class calls them.
fn group_said(groups: &[u32]) -> String {
    let numbers: Vec<String> = groups.iter().map(|it| (it + 1).to_string()).collect();
    format!("groups {}", numbers.join(", "))
}

/// The line that takes back the one before it.
pub(super) const TAKE_BACK: &str = evening::TAKE_BACK;
