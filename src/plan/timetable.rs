//! A plan put into words and numbers: what programs and painters take.
//!
//! Every minute counts from `start`. The question stands beside the answer (windows, lags,
//! pools, ovens, shelves), so that anyone can check the plan without this program.

use std::collections::BTreeMap;

use serde::Serialize;

use super::clock::Clock;
use super::problem::{Layout, Link, Problem};
use super::solve::Answer;

/// A plan in words and numbers.
#[derive(Clone, Debug, Serialize)]
pub struct Timetable {
    /// Version of this form.
    pub timetable: u32,
    /// The class's or the recipe's file name.
    pub name: String,
    /// Its title.
    pub title: String,
    /// Whether it is one bake at home rather than a class.
    pub home: bool,
    /// The time zone by its IANA name; `null` where times are only local.
    pub zone: Option<String>,
    /// The local time of minute 0.
    pub start: String,
    /// `fits`, `never` (proven) or `unknown`.
    pub verdict: &'static str,
    /// Whether it is proven that no plan is better.
    pub best: bool,
    /// What is made small, in order, with what no plan can beat.
    pub objective: Vec<Objective>,
    /// The plan's goodness in words.
    pub standing: String,
    /// When work is done.
    pub sessions: Vec<Span>,
    /// Everything that has a start, by its number.
    pub activities: Vec<Activity>,
    /// The waits between activities.
    pub waits: Vec<Wait>,
    /// What must follow what.
    pub links: Vec<LinkOut>,
    /// What several activities share.
    pub pools: Vec<PoolOut>,
    /// The ovens.
    pub ovens: OvensOut,
    /// The shelves.
    pub stores: Vec<StoreOut>,
    /// Why there is no plan.
    pub reasons: Vec<String>,
    /// What would make it fit, each tried.
    pub remedies: Vec<String>,
    /// What else must be known.
    pub notes: Vec<String>,
}

/// One thing that is made small.
#[derive(Clone, Debug, Serialize)]
pub struct Objective {
    /// `waiting` and `end`; at home `away` from the recipe's own times, and `lead`, from the
    /// first start until it is ready.
    pub name: &'static str,
    /// The plan's value in minutes.
    pub minutes: i32,
    /// No plan has less.
    pub bound: i32,
}

/// A stretch of time.
#[derive(Clone, Debug, Serialize)]
pub struct Span {
    /// First minute.
    pub from_min: i32,
    /// The minute after the last.
    pub to_min: i32,
    /// The same as local times.
    pub from: String,
    /// The same as local times.
    pub to: String,
}

/// One activity.
#[derive(Clone, Debug, Serialize)]
pub struct Activity {
    /// Its number.
    pub id: usize,
    /// Who does it: `pair 1`, `instructor`.
    pub group: String,
    /// Who must watch.
    pub watching: Vec<String>,
    /// `hands`, `bake`, `moment`, `demonstration` or `finish`; at home `into` and `out` of
    /// a hold, and `move` where a wait begins behind another.
    pub kind: &'static str,
    /// Where something is moved to, or from.
    pub place: Option<String>,
    /// The recipe.
    pub recipe: String,
    /// The step; empty for the finish.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// How long.
    pub minutes: i32,
    /// When it may start: first and last minute of each stretch.
    pub windows: Vec<(i32, i32)>,
    /// When it starts; `null` where there is no plan.
    pub start_min: Option<i32>,
    /// When it ends.
    pub end_min: Option<i32>,
    /// The start as a local time.
    pub start: Option<String>,
    /// The end as a local time.
    pub end: Option<String>,
    /// What it uses and how much.
    pub uses: BTreeMap<String, i32>,
    /// The oven, from 1.
    pub oven: Option<usize>,
    /// Its heat in words.
    pub heat: Option<String>,
}

/// One wait between two activities.
#[derive(Clone, Debug, Serialize)]
pub struct Wait {
    /// Whose it is.
    pub group: String,
    /// The recipe.
    pub recipe: String,
    /// The step.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// Where.
    pub place: Option<String>,
    /// Trays it takes there.
    pub trays: i32,
    /// At least, as written, at most with the hold.
    pub range_min: (i32, i32, Option<i32>),
    /// From.
    pub start_min: Option<i32>,
    /// To.
    pub end_min: Option<i32>,
    /// From, as a local time.
    pub start: Option<String>,
    /// To, as a local time.
    pub end: Option<String>,
    /// Whether it is longer than its own longest time, so that the hold is used.
    pub held: bool,
}

/// A lag.
#[derive(Clone, Debug, Serialize)]
pub struct LinkOut {
    /// The earlier activity.
    pub from: usize,
    /// The later one.
    pub to: usize,
    /// At least so many minutes from the end of one to the start of the other.
    pub least_min: i32,
    /// What is longer counts as waiting; `null` where it does not.
    pub usual_min: Option<i32>,
    /// At most.
    pub most_min: Option<i32>,
    /// Whether the two may lie in different sessions.
    pub crosses: bool,
}

/// Something shared.
#[derive(Clone, Debug, Serialize)]
pub struct PoolOut {
    /// What.
    pub name: String,
    /// How much there is.
    pub capacity: i32,
    /// Activity, amount, and minutes after its end until it is free.
    pub uses: Vec<(usize, i32, i32)>,
}

/// The ovens.
#[derive(Clone, Debug, Default, Serialize)]
pub struct OvensOut {
    /// How many.
    pub count: usize,
    /// Trays that one takes.
    pub trays: i32,
    /// Minutes after a bake until its place is free.
    pub after_min: i32,
    /// The bakes: activity, trays, number of the heat.
    pub bakes: Vec<(usize, i32, i32)>,
}

/// A shelf.
#[derive(Clone, Debug, Serialize)]
pub struct StoreOut {
    /// Where.
    pub place: String,
    /// Trays it holds.
    pub capacity: i32,
    /// The place of a lag in the list, and trays: from the end of its first activity to the
    /// start of its second.
    pub stays: Vec<(usize, i32)>,
}

/// One task's name.
#[derive(Clone, Debug, Default)]
pub(super) struct TaskName {
    pub(super) group: String,
    pub(super) watching: Vec<String>,
    pub(super) kind: &'static str,
    pub(super) recipe: String,
    pub(super) step: String,
    pub(super) title: String,
    pub(super) heat: Option<String>,
    pub(super) place: Option<String>,
}

/// A wait by what it stands between.
#[derive(Clone, Debug)]
pub(super) struct WaitName {
    pub(super) group: String,
    pub(super) recipe: String,
    pub(super) step: String,
    pub(super) title: String,
    pub(super) place: Option<String>,
    pub(super) trays: i32,
    pub(super) lag: super::strand::Lag,
    pub(super) stays: Vec<usize>,
}

/// What a plan is about, and the names of its parts.
pub(super) struct Naming<'a> {
    pub(super) name: &'a str,
    pub(super) title: &'a str,
    pub(super) clock: &'a Clock,
    pub(super) tasks: Vec<TaskName>,
    pub(super) waits: Vec<WaitName>,
    pub(super) pools: Vec<String>,
    pub(super) stores: Vec<String>,
    /// Whether it is a bake at home.
    pub(super) home: bool,
}

/// Puts question and answer together.
pub(super) fn timetable(problem: &Problem, answer: &Answer, naming: Naming) -> Timetable {
    let layout = answer.plan().map(|plan| &plan.layout);
    let clock = naming.clock;
    Timetable {
        timetable: 1,
        name: naming.name.to_owned(),
        title: naming.title.to_owned(),
        home: naming.home,
        zone: clock.zone().map(str::to_owned),
        start: clock.stamp(0),
        verdict: match answer {
            Answer::Fits(_) => "fits",
            Answer::Never => "never",
            Answer::Unknown => "unknown",
        },
        best: answer.plan().is_some_and(super::Plan::is_best),
        objective: objective(answer, naming.home),
        standing: standing(answer, naming.home),
        sessions: problem.sessions.iter().map(|span| stretch(*span, clock)).collect(),
        activities: activities(problem, layout, &naming),
        waits: naming
            .waits
            .iter()
            .map(|wait| waited(wait, problem, layout, clock))
            .collect(),
        links: problem.links.iter().map(link_out).collect(),
        pools: pools(problem, &naming),
        ovens: OvensOut {
            count: problem.ovens.count,
            trays: problem.ovens.trays,
            after_min: problem.ovens.after,
            bakes: problem
                .ovens
                .bakes
                .iter()
                .map(|of| (of.task, of.trays, of.heat))
                .collect(),
        },
        stores: naming
            .stores
            .iter()
            .zip(&problem.stores)
            .map(|(place, store)| StoreOut {
                place: place.clone(),
                capacity: store.capacity,
                stays: store.stays.clone(),
            })
            .collect(),
        reasons: Vec::new(),
        remedies: Vec::new(),
        notes: Vec::new(),
    }
}

fn link_out(link: &Link) -> LinkOut {
    LinkOut {
        from: link.from,
        to: link.to,
        least_min: link.least,
        usual_min: link.usual,
        most_min: link.most,
        crosses: link.crosses,
    }
}

fn objective(answer: &Answer, home: bool) -> Vec<Objective> {
    let Some(plan) = answer.plan() else { return Vec::new() };
    let (minutes, bound) = (plan.second, plan.second_bound);
    if home {
        let away =
            Objective { name: "away", minutes: plan.waiting, bound: plan.waiting_bound };
        return vec![away, Objective { name: "lead", minutes, bound }];
    }
    vec![
        Objective { name: "waiting", minutes: plan.waiting, bound: plan.waiting_bound },
        Objective { name: "end", minutes, bound },
    ]
}

/// How good the plan is known to be.
fn standing(answer: &Answer, home: bool) -> String {
    match answer {
        Answer::Fits(plan) if home && plan.waiting > plan.waiting_bound => format!(
            "a sound plan; another could be up to {} min nearer to the recipe's own times",
            plan.waiting - plan.waiting_bound
        ),
        Answer::Fits(_) if home => {
            "proven: no plan is nearer to the recipe's own times".into()
        }
        Answer::Fits(plan) if plan.is_best() => "proven: no plan is better".into(),
        Answer::Fits(plan) if plan.waiting > plan.waiting_bound => format!(
            "a sound plan; another could have up to {} min less waiting",
            plan.waiting - plan.waiting_bound
        ),
        Answer::Fits(plan) => format!(
            "no plan has less waiting; another could be up to {} min shorter",
            plan.second - plan.second_bound
        ),
        Answer::Never => "proven: no plan fits".into(),
        Answer::Unknown => "no plan was found; it is not proven that none exists".into(),
    }
}

fn stretch((from, to): (i32, i32), clock: &Clock) -> Span {
    Span { from_min: from, to_min: to, from: clock.stamp(from), to: clock.stamp(to) }
}

fn pools(problem: &Problem, naming: &Naming) -> Vec<PoolOut> {
    let named = naming.pools.iter().zip(&problem.pools);
    named
        .map(|(name, pool)| PoolOut {
            name: name.clone(),
            capacity: pool.capacity,
            uses: pool.uses.iter().map(|of| (of.task, of.amount, of.after)).collect(),
        })
        .collect()
}

fn activities(
    problem: &Problem,
    layout: Option<&Layout>,
    naming: &Naming,
) -> Vec<Activity> {
    let mut uses: Vec<BTreeMap<String, i32>> = vec![BTreeMap::new(); problem.tasks.len()];
    for (name, pool) in naming.pools.iter().zip(&problem.pools) {
        for of in &pool.uses {
            uses[of.task].insert(name.clone(), of.amount);
        }
    }
    let mut oven = vec![None; problem.tasks.len()];
    for (at, bake) in problem.ovens.bakes.iter().enumerate() {
        uses[bake.task].insert("oven tray".into(), bake.trays);
        oven[bake.task] =
            layout.and_then(|layout| layout.ovens.get(at)).map(|oven| oven + 1);
    }
    let tasks = problem.tasks.iter().zip(&naming.tasks).enumerate();
    tasks
        .map(|(id, (task, name))| {
            let start = layout.map(|layout| layout.starts[id]);
            let end = start.map(|start| start + task.minutes);
            Activity {
                id,
                group: name.group.clone(),
                watching: name.watching.clone(),
                kind: name.kind,
                recipe: name.recipe.clone(),
                step: name.step.clone(),
                title: name.title.clone(),
                minutes: task.minutes,
                windows: task.starts.clone(),
                start_min: start,
                end_min: end,
                start: start.map(|at| naming.clock.stamp(at)),
                end: end.map(|at| naming.clock.stamp(at)),
                uses: std::mem::take(&mut uses[id]),
                oven: oven[id],
                heat: name.heat.clone(),
                place: name.place.clone(),
            }
        })
        .collect()
}

fn waited(
    wait: &WaitName,
    problem: &Problem,
    layout: Option<&Layout>,
    clock: &Clock,
) -> Wait {
    let span = layout.and_then(|layout| {
        let links = wait.stays.iter().map(|link| &problem.links[*link]);
        let from =
            links.clone().map(|link| problem.end_of(link.from, &layout.starts)).max()?;
        let to = links.map(|link| layout.starts[link.to]).min()?;
        Some((from, to))
    });
    let held =
        |(from, to): (i32, i32)| wait.lag.own_most.is_some_and(|most| to - from > most);
    Wait {
        group: wait.group.clone(),
        recipe: wait.recipe.clone(),
        step: wait.step.clone(),
        title: wait.title.clone(),
        place: wait.place.clone(),
        trays: wait.trays,
        range_min: (wait.lag.least, wait.lag.usual, wait.lag.most),
        start_min: span.map(|span| span.0),
        end_min: span.map(|span| span.1),
        start: span.map(|span| clock.stamp(span.0)),
        end: span.map(|span| clock.stamp(span.1)),
        held: span.is_some_and(held),
    }
}
