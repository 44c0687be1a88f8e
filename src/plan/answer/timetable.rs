//! A plan as it stands: the question and its answer side by side, every part by its kind,
//! its number and its minutes. `sheet` puts it into words.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::measure::Temperature;
use crate::model::{KitKind, Location};
use crate::plan::question::batch_tasks::Lag;
use crate::plan::question::class::{PoolName, Who};
use crate::plan::question::clock::Clock;
use crate::plan::question::kind::Kind;
use crate::plan::question::problem::{Layout, Problem};
use crate::plan::question::stations::SharedDough;
use crate::plan::search::solve::Answer;
use crate::plan::under_way::shift::Shift;

use super::reason::{Reason, Remedy, Short};

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
    /// How ovens are made hot.
    pub heating: Heating,
    /// What the question's pools are.
    pub pools: Vec<PoolName>,
    /// The places of the question's shelves.
    pub stores: Vec<Location>,
    /// Whether there is a plan.
    pub verdict: Verdict,
    /// Whether it is proven that no plan is better.
    pub best: bool,
    /// How good it is known to be.
    pub standing: Optimality,
    /// What is made small, in order.
    pub objective: Vec<Objective>,
    /// Everything that has a start, in the order of the question's tasks.
    pub activities: Vec<Activity>,
    /// The waits between activities.
    pub waits: Vec<Pause>,
    /// Why there is no plan.
    pub reasons: Vec<Reason>,
    /// What would make it fit, each tried.
    pub remedies: Vec<Remedy>,
    /// What else must be known.
    pub notes: Vec<Caveat>,
    /// Where it is the rest of a day: from when on, and what is new.
    pub now: Option<Now>,
}

/// How long ovens take to be hot, in minutes, and who sets them; nothing where the class does
/// not say.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Heating {
    /// From cold.
    pub on: Option<i32>,
    /// From one heat to another.
    pub turn: Option<i32>,
    /// Whether somebody helps the instructor.
    pub helped: bool,
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
pub enum Optimality {
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
        /// Minutes of waiting, and no plan has less.
        waiting: (i32, i32),
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
    pub place: Option<Location>,
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
pub struct Pause {
    /// Whose it is.
    pub deed: Deed,
    /// Where.
    pub place: Option<Location>,
    /// Trays it takes there.
    pub trays: i32,
    /// How long it may last.
    pub lag: Lag,
    /// From and to; `None` where there is no plan.
    pub span: Option<(i32, i32)>,
}

impl Timetable {
    /// How many groups take part.
    pub fn groups(&self) -> u32 {
        let group = |of: &Activity| match of.deed.who {
            Who::Group(group) | Who::Baker(group, _) => Some(group + 1),
            Who::Instructor | Who::Helper | Who::Home => None,
        };
        self.activities.iter().filter_map(group).max().unwrap_or(0)
    }
}

impl Pause {
    /// Whether it is longer than its own longest time, so that the hold is used.
    pub fn is_held(&self) -> bool {
        let lasts = self.span.map(|(from, to)| to - from);
        lasts.zip(self.lag.own_most).is_some_and(|(lasts, most)| lasts > most)
    }
}

/// What else must be known of a plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Caveat {
    /// A wait is shorter than its usual time, within its range.
    Shortened {
        /// The step's heading.
        title: String,
        /// Minutes.
        lasts: i32,
        /// Minutes.
        usual: i32,
    },
    /// At home: a dough that goes into several bakes is made once.
    Shared(SharedDough),
    /// At home: on the days that the recipe names no plan fits, so it is on others.
    OtherDays,
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
    /// Something comes out of the oven while nobody works: at this minute.
    OvenInBreak(i32),
    /// The class does not count this kit: the plan takes it that there is enough.
    Uncounted(KitKind),
    /// The class counts this kit, and no step needs it.
    Unused(KitKind),
    /// The search was stopped before its time.
    Stopped,
}

/// One task's name.
#[derive(Clone, Debug)]
pub(in crate::plan) struct TaskName {
    pub(in crate::plan) kind: Kind,
    pub(in crate::plan) deed: Deed,
    pub(in crate::plan) watching: Vec<Who>,
    pub(in crate::plan) heat: Option<Temperature>,
    pub(in crate::plan) place: Option<Location>,
}

impl TaskName {
    /// So many tasks without a name yet.
    pub(in crate::plan) fn unnamed(who: Who, count: usize) -> Vec<Self> {
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
pub(in crate::plan) struct WaitName {
    pub(in crate::plan) deed: Deed,
    pub(in crate::plan) place: Option<Location>,
    pub(in crate::plan) trays: i32,
    pub(in crate::plan) lag: Lag,
    pub(in crate::plan) stays: Vec<usize>,
}

/// What a plan is about, and the names of its parts.
pub(in crate::plan) struct Naming<'a> {
    pub(in crate::plan) name: &'a str,
    pub(in crate::plan) title: &'a str,
    pub(in crate::plan) clock: &'a Clock,
    /// A name for each task of the question.
    pub(in crate::plan) tasks: Vec<TaskName>,
    pub(in crate::plan) waits: Vec<WaitName>,
    pub(in crate::plan) pools: Vec<PoolName>,
    pub(in crate::plan) stores: Vec<Location>,
    /// How many work together; `None` for a bake at home.
    pub(in crate::plan) together: Option<u32>,
}

/// Puts question and answer together.
pub(in crate::plan) fn timetable(
    problem: &Problem,
    answer: &Answer,
    naming: Naming,
) -> Timetable {
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
        heating: Heating::default(),
        pools: naming.pools,
        stores: naming.stores,
        verdict: match answer {
            Answer::Fits(_) => Verdict::Fits,
            Answer::Never => Verdict::Never,
            Answer::Unknown => Verdict::Unknown,
        },
        best: answer.plan().is_some_and(crate::plan::Plan::is_best),
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

fn standing(answer: &Answer, home: bool) -> Optimality {
    match answer {
        Answer::Never => Optimality::Never,
        Answer::Unknown => Optimality::Unknown,
        Answer::Fits(plan) if home && plan.waiting > plan.waiting_bound => {
            Optimality::Nearer(plan.waiting - plan.waiting_bound)
        }
        Answer::Fits(_) if home => Optimality::Nearest,
        Answer::Fits(plan) if plan.is_best() => Optimality::Best,
        Answer::Fits(plan) => Optimality::Sound {
            short: plan.short,
            off_grid: plan.off_grid,
            moments: (plan.moments, plan.moments_bound),
            waiting: (plan.waiting, plan.waiting_bound),
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

fn waited(wait: WaitName, problem: &Problem, layout: Option<&Layout>) -> Pause {
    let span = layout.and_then(|layout| {
        let links = wait.stays.iter().map(|link| &problem.links[*link]);
        let from =
            links.clone().map(|link| problem.end_of(link.from, &layout.starts)).max()?;
        let to = links.map(|link| layout.starts[link.to]).min()?;
        Some((from, to))
    });
    let WaitName { deed, place, trays, lag, .. } = wait;
    Pause { deed, place, trays, lag, span }
}
