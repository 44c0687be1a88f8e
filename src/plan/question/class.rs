//! A class as a planning question: every group's batches, what they share, and what is
//! shown to whom.

use std::collections::BTreeMap;

use crate::formula::{Book, Unscalable};
use crate::model::{Class, KitKind, Location};
use crate::said;
use crate::statement::Statement;

use super::batch_tasks::BatchTasks;
use super::clock::Clock;
use super::drafting::Drafting;
use super::gather::Gathering;
use super::heats::Heats;
use super::problem::Problem;

/// A class laid out as a question.
#[derive(Clone, Debug)]
pub struct ClassDraft {
    /// The question.
    pub problem: Problem,
    /// Whose batches they are.
    pub units: Vec<ClassBatch>,
    /// Demonstrations that are no batch of their own.
    pub shows: Vec<Show>,
    /// What everybody does together.
    pub gatherings: Vec<Gathering>,
    /// What tells pools apart, in the order of the problem's.
    pub pools: Vec<PoolName>,
    /// The stores' places, in the order of the problem's.
    pub stores: Vec<Location>,
    /// The heats of its ovens.
    pub heats: Heats,
    /// Groups of the same number of bakers who do the same from the same time on.
    pub alike: Vec<u32>,
    /// Tasks of those who went home.
    pub left: Vec<usize>,
    /// The titles of recipes by their names.
    pub titles: BTreeMap<String, String>,
    /// Kit that steps need and the class does not count: the plan has it without end.
    pub uncounted: Vec<KitKind>,
    /// Minutes and local times.
    pub clock: Clock,
}

/// One batch in class.
#[derive(Clone, Debug)]
pub struct ClassBatch {
    /// Which entry of the class's list it is; of several that share a dough the first.
    pub making: usize,
    /// Who makes it.
    pub who: Who,
    /// Its steps.
    pub batch: BatchTasks,
}

/// Who does something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Who {
    /// The instructor, for all to see.
    Instructor,
    /// A group by its number from 0.
    Group(u32),
    /// One baker of a group, both from 0.
    Baker(u32, u32),
    /// Who helps the instructor.
    Helper,
    /// The one who bakes at home.
    Home,
}

impl Who {
    /// Whether it is this group, or one of its bakers.
    pub fn is_in(self, group: u32) -> bool {
        match self {
            Self::Instructor | Self::Helper | Self::Home => false,
            Self::Group(own) | Self::Baker(own, _) => own == group,
        }
    }
}

/// A demonstration that is not part of a batch.
#[derive(Clone, Debug)]
pub struct Show {
    /// The recipe.
    pub recipe: String,
    /// The step.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// The task.
    pub task: usize,
}

/// What a pool is.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PoolName {
    /// The instructor or instructors.
    Instructor,
    /// The instructors and those who help them: what a ticket wants an instructor for.
    Staff,
    /// The hands of a group: it does one attended thing at a time, and watches.
    Group(u32),
    /// Kit that the class counts.
    Kit(KitKind),
    /// The hands of the one who bakes at home.
    Home,
}

/// Why a class or a bake cannot even be laid out as a question; checks name the fault.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unclear {
    /// A class without sessions.
    NoSessions,
    /// Its first session is at a time that clocks leave out.
    FirstSession,
    /// A session is at a time that clocks leave out.
    Session,
    /// Two sessions overlap.
    Overlap,
    /// A recipe is missing.
    NoRecipe,
    /// Steps of what a class makes wait for each other in a ring.
    Ring,
    /// Steps of the one recipe do.
    OwnRing,
    /// The time at which it shall be ready is none.
    NoTime,
    /// It cannot be made in that size.
    Size(Unscalable),
}

impl From<Unscalable> for Unclear {
    fn from(why: Unscalable) -> Self {
        Self::Size(why)
    }
}

impl Unclear {
    /// It as a statement.
    pub fn said(self) -> Statement {
        match self {
            Self::NoSessions => said!("unclear-no-sessions"),
            Self::FirstSession => said!("unclear-first-session"),
            Self::Session => said!("unclear-session"),
            Self::Overlap => said!("unclear-overlap"),
            Self::NoRecipe => said!("unclear-no-recipe"),
            Self::Ring => said!("unclear-ring"),
            Self::OwnRing => said!("unclear-own-ring"),
            Self::NoTime => said!("unclear-no-time"),
            Self::Size(why) => why.said(),
        }
    }
}

/// Lays out a class.
///
/// # Errors
/// The reason, where sessions, recipes or steps are not clear.
pub fn draft(class: &Class, book: Book) -> Result<ClassDraft, Unclear> {
    let first = class.sessions.first().ok_or(Unclear::NoSessions)?;
    let zone =
        book.content.course.as_ref().and_then(|course| course.time_zone.as_deref());
    // Minutes count from a full hour, so that every moment of the grid is one of the clock.
    let hour = first.value.from.date().at(first.value.from.hour(), 0, 0, 0);
    let clock = Clock::new(hour, zone).ok_or(Unclear::FirstSession)?;
    let problem = Problem {
        sessions: sessions(class, &clock)?,
        grid: i32::try_from(class.grid.value).unwrap_or(1),
        ..Problem::default()
    };
    let draft = ClassDraft {
        problem,
        units: Vec::new(),
        shows: Vec::new(),
        gatherings: Vec::new(),
        pools: Vec::new(),
        stores: Vec::new(),
        heats: Heats::default(),
        alike: Vec::new(),
        left: Vec::new(),
        titles: BTreeMap::new(),
        uncounted: Vec::new(),
        clock,
    };
    Drafting::new(class, book, draft).finished()
}

/// The sessions in minutes; two that touch are one.
fn sessions(class: &Class, clock: &Clock) -> Result<Vec<(i32, i32)>, Unclear> {
    let mut sessions: Vec<(i32, i32)> = Vec::new();
    for session in &class.sessions {
        let minute = |at| clock.minute(at).ok_or(Unclear::Session);
        let (from, to) = (minute(session.value.from)?, minute(session.value.to)?);
        match sessions.last_mut() {
            Some(last) if from < last.1 => return Err(Unclear::Overlap),
            Some(last) if from == last.1 => last.1 = to,
            _ => sessions.push((from, to)),
        }
    }
    Ok(sessions)
}
