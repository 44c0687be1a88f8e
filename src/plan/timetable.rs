//! A plan as it stands: the question and its answer side by side, every part by its kind,
//! its number and its minutes. `sheet` puts it into words.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::measure::Temperature;

use super::class::{PoolName, Who};
use super::clock::Clock;
use super::problem::{Layout, Problem};
use super::reason::{Reason, Remedy, Short};
use super::shift::Shift;
use super::solve::Answer;
use super::strand::Lag;

/// A plan. Minutes count from the clock's first moment.
#[derive(Clone, Debug)]
pub struct Timetable {
    /// The class's or the recipe's file name.
    pub name: String,
    /// Its title.
    pub title: String,
    /// Whether it is one bake at home rather than a class.
    pub home: bool,
    /// The titles of the recipes by their names, where more than one is made.
    pub titles: BTreeMap<String, String>,
    /// How many bakers work together: 2 for pairs.
    pub together: u32,
    /// Minutes and local times.
    pub clock: Clock,
    /// The question: sessions, links, pools, ovens and shelves.
    pub problem: Problem,
    /// What the question's pools are.
    pub pools: Vec<PoolName>,
    /// The places of the question's shelves.
    pub stores: Vec<String>,
    /// Whether there is a plan.
    pub verdict: Verdict,
    /// Whether it is proven that no plan is better.
    pub best: bool,
    /// How good it is known to be.
    pub standing: Standing,
    /// What is made small, in order.
    pub objective: Vec<Objective>,
    /// Everything that has a start, in the order of the question's tasks.
    pub activities: Vec<Activity>,
    /// The waits between activities.
    pub waits: Vec<Wait>,
    /// Why there is no plan.
    pub reasons: Vec<Reason>,
    /// What would make it fit, each tried.
    pub remedies: Vec<Remedy>,
    /// What else must be known.
    pub notes: Vec<Note>,
    /// Where it is the rest of a day: from when on, and what is new.
    pub now: Option<Now>,
}

/// The rest of a day that is under way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Now {
    /// This minute.
    pub minute: i32,
    /// What begins at another minute than was announced.
    pub shifts: Vec<Shift>,
    /// By how many minutes a session is longer than the class has it, since the rest does not
    /// fit: its number from 0, and the minutes.
    pub over: Option<(usize, i32)>,
}

/// Whether there is a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// There is one.
    Fits,
    /// It is proven that there is none.
    Never,
    /// None was found, and it is not proven that none exists.
    Unknown,
}

/// How good a plan is known to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// No plan is better.
    Best,
    /// At home: no plan is nearer to the recipe's own times.
    Nearest,
    /// At home: another could be so many minutes nearer to them.
    Nearer(i32),
    /// Another could be better; how good this one is.
    Sound {
        /// Minutes by which waits are shorter than usual.
        short: i32,
        /// Whether starts had to leave the grid for it to fit.
        off_grid: bool,
        /// How many different starts there are, and no plan has fewer than.
        moments: (i32, i32),
        /// Minutes of waiting.
        waiting: i32,
        /// The minute before which no plan ends.
        end: i32,
    },
    /// It is proven that no plan fits.
    Never,
    /// No plan was found.
    Unknown,
}

/// What a plan makes small.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Counted {
    /// Minutes by which waits are shorter than usual.
    Short,
    /// How many different minutes there are at which somebody begins something.
    Moments,
    /// Waiting beyond the recipes' own times, all batches together.
    Waiting,
    /// From the first opening to the end.
    End,
    /// At home: how far all waits together are from the recipe's own times.
    Away,
    /// At home: from the first step until it is ready.
    Lead,
}

/// One thing that is made small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Objective {
    /// What.
    pub counted: Counted,
    /// The plan's value, in minutes where it is a time.
    pub value: i32,
    /// No plan has less.
    pub bound: i32,
}

/// What kind of thing is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// Attended work.
    Hands,
    /// An oven load.
    Bake,
    /// In class: the moment with which a wait begins.
    Moment,
    /// The instructor's work, which others watch.
    Demonstration,
    /// The moment at which a batch is done.
    Finish,
    /// At home: into a hold.
    Into,
    /// At home: out of a hold.
    Out,
    /// At home: to where a wait behind another begins.
    Move,
    /// Nobody's work: it rests or proofs. No activity is of this kind, a row by the clock is.
    Rest,
}

impl Kind {
    /// Whether a step of the recipe is worked at, shown or baked: no moment, move or rest.
    pub fn is_work(self) -> bool {
        match self {
            Self::Hands | Self::Bake | Self::Demonstration => true,
            Self::Moment
            | Self::Finish
            | Self::Into
            | Self::Out
            | Self::Move
            | Self::Rest => false,
        }
    }
}

/// Who does something, of which recipe and step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Deed {
    /// Who does it.
    pub who: Who,
    /// The recipe.
    pub recipe: String,
    /// The step; `None` for the finish.
    pub step: Option<StepName>,
}

/// A step by its name and heading.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepName {
    /// Its name, which no other step of its recipe has.
    pub name: String,
    /// Its heading.
    pub title: String,
}

/// One activity.
#[derive(Clone, Debug)]
pub struct Activity {
    /// What of it.
    pub kind: Kind,
    /// Whose it is.
    pub deed: Deed,
    /// Who must watch.
    pub watching: Vec<Who>,
    /// Where something is moved to, or from.
    pub place: Option<String>,
    /// First and last-but-one minute; `None` where there is no plan.
    pub span: Option<(i32, i32)>,
    /// The oven, from 1.
    pub oven: Option<usize>,
    /// Its trays in the oven.
    pub trays: i32,
    /// The oven's heat.
    pub heat: Option<Temperature>,
}

/// One wait between two activities.
#[derive(Clone, Debug)]
pub struct Wait {
    /// Whose it is.
    pub deed: Deed,
    /// Where.
    pub place: Option<String>,
    /// Trays it takes there.
    pub trays: i32,
    /// How long it may last.
    pub lag: Lag,
    /// From and to; `None` where there is no plan.
    pub span: Option<(i32, i32)>,
}

impl Wait {
    /// Whether it is longer than its own longest time, so that the hold is used.
    pub fn is_held(&self) -> bool {
        let lasts = self.span.map(|(from, to)| to - from);
        lasts.zip(self.lag.own_most).is_some_and(|(lasts, most)| lasts > most)
    }
}

/// What else must be known of a plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Note {
    /// A wait is shorter than its usual time, within its range.
    Shortened {
        /// The step's heading.
        title: String,
        /// Minutes.
        lasts: i32,
        /// Minutes.
        usual: i32,
    },
    /// A wait has already lasted longer than its longest time.
    TooLong {
        /// Whose it is.
        who: Who,
        /// The step's heading.
        title: String,
    },
    /// What is begun will stand somewhere beyond the trays that there are.
    Crowded,
    /// With a session longer by so much every rest is as usual: that was tried.
    Usual(Short),
    /// The class does not count this kit: the plan takes it that there is enough.
    Uncounted(String),
    /// The class counts this kit, and no step needs it.
    Unused(String),
    /// The search was stopped before its time.
    Stopped,
}

/// One task's name.
#[derive(Clone, Debug)]
pub(super) struct TaskName {
    pub(super) kind: Kind,
    pub(super) deed: Deed,
    pub(super) watching: Vec<Who>,
    pub(super) heat: Option<Temperature>,
    pub(super) place: Option<String>,
}

impl TaskName {
    /// So many tasks without a name yet.
    pub(super) fn unnamed(who: Who, count: usize) -> Vec<Self> {
        let deed = Deed { who, recipe: String::new(), step: None };
        let task = Self {
            kind: Kind::Moment,
            deed,
            watching: Vec::new(),
            heat: None,
            place: None,
        };
        vec![task; count]
    }
}

/// A wait by what it stands between.
#[derive(Clone, Debug)]
pub(super) struct WaitName {
    pub(super) deed: Deed,
    pub(super) place: Option<String>,
    pub(super) trays: i32,
    pub(super) lag: Lag,
    pub(super) stays: Vec<usize>,
}

/// What a plan is about, and the names of its parts.
pub(super) struct Naming<'a> {
    pub(super) name: &'a str,
    pub(super) title: &'a str,
    pub(super) clock: &'a Clock,
    /// A name for each task of the question.
    pub(super) tasks: Vec<TaskName>,
    pub(super) waits: Vec<WaitName>,
    pub(super) pools: Vec<PoolName>,
    pub(super) stores: Vec<String>,
    /// How many work together; `None` for a bake at home.
    pub(super) together: Option<u32>,
}

/// Puts question and answer together.
pub(super) fn timetable(problem: &Problem, answer: &Answer, naming: Naming) -> Timetable {
    let layout = answer.plan().map(|plan| &plan.layout);
    let home = naming.together.is_none();
    let activities = activities(problem, layout, naming.tasks);
    let waits = naming.waits.into_iter().map(|wait| waited(wait, problem, layout));
    Timetable {
        name: naming.name.to_owned(),
        title: naming.title.to_owned(),
        home,
        titles: BTreeMap::new(),
        together: naming.together.unwrap_or(1),
        clock: naming.clock.clone(),
        problem: problem.clone(),
        pools: naming.pools,
        stores: naming.stores,
        verdict: match answer {
            Answer::Fits(_) => Verdict::Fits,
            Answer::Never => Verdict::Never,
            Answer::Unknown => Verdict::Unknown,
        },
        best: answer.plan().is_some_and(super::Plan::is_best),
        standing: standing(answer, home),
        objective: objective(answer, home),
        activities,
        waits: waits.collect(),
        reasons: Vec::new(),
        remedies: Vec::new(),
        notes: Vec::new(),
        now: None,
    }
}

fn objective(answer: &Answer, home: bool) -> Vec<Objective> {
    let Some(plan) = answer.plan() else { return Vec::new() };
    let of = |counted, value, bound| Objective { counted, value, bound };
    let waiting = (plan.waiting, plan.waiting_bound);
    let second = (plan.second, plan.second_bound);
    if home {
        return vec![
            of(Counted::Away, waiting.0, waiting.1),
            of(Counted::Lead, second.0, second.1),
        ];
    }
    vec![
        of(Counted::Short, plan.short, 0),
        of(Counted::Moments, plan.moments, plan.moments_bound),
        of(Counted::Waiting, waiting.0, waiting.1),
        of(Counted::End, second.0, second.1),
    ]
}

fn standing(answer: &Answer, home: bool) -> Standing {
    match answer {
        Answer::Never => Standing::Never,
        Answer::Unknown => Standing::Unknown,
        Answer::Fits(plan) if home => match plan.waiting - plan.waiting_bound {
            1.. => Standing::Nearer(plan.waiting - plan.waiting_bound),
            _ => Standing::Nearest,
        },
        Answer::Fits(plan) if plan.is_best() => Standing::Best,
        Answer::Fits(plan) => Standing::Sound {
            short: plan.short,
            off_grid: plan.off_grid,
            moments: (plan.moments, plan.moments_bound),
            waiting: plan.waiting,
            end: plan.second_bound,
        },
    }
}

fn activities(
    problem: &Problem,
    layout: Option<&Layout>,
    names: Vec<TaskName>,
) -> Vec<Activity> {
    let mut loads = vec![(None, 0); problem.tasks.len()];
    for (at, bake) in problem.ovens.bakes.iter().enumerate() {
        let oven = layout.and_then(|layout| layout.ovens.get(at));
        loads[bake.task] = (oven.map(|oven| oven + 1), bake.trays);
    }
    let tasks = names.into_iter().zip(&problem.tasks).enumerate();
    tasks
        .map(|(id, (name, task))| {
            let start = layout.map(|layout| layout.starts[id]);
            Activity {
                kind: name.kind,
                deed: name.deed,
                watching: name.watching,
                place: name.place,
                span: start.map(|start| (start, start + task.minutes)),
                oven: loads[id].0,
                trays: loads[id].1,
                heat: name.heat,
            }
        })
        .collect()
}

fn waited(wait: WaitName, problem: &Problem, layout: Option<&Layout>) -> Wait {
    let span = layout.and_then(|layout| {
        let links = wait.stays.iter().map(|link| &problem.links[*link]);
        let from =
            links.clone().map(|link| problem.end_of(link.from, &layout.starts)).max()?;
        let to = links.map(|link| layout.starts[link.to]).min()?;
        Some((from, to))
    });
    let WaitName { deed, place, trays, lag, .. } = wait;
    Wait { deed, place, trays, lag, span }
}
