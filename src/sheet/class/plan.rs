//! A plan put into words and numbers: what programs and painters take.
//!
//! Every minute counts from `start`. The question stands beside the answer (windows, lags,
//! pools, ovens, shelves), so that anyone can check the plan without this program.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;

use crate::plan::{Clock, Counted, Kind, Verdict};

use super::LineSheet;

/// A plan in words and numbers.
#[derive(Clone, Debug, Serialize)]
pub struct PlanSheet {
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
    pub verdict: Verdict,
    /// Whether it is proven that no plan is better.
    pub best: bool,
    /// What is made small, in order, with what no plan can beat.
    pub objective: Vec<ObjectiveFact>,
    /// The plan's goodness in words.
    pub standing: String,
    /// In a class, minutes from one possible start to the next; 0 for any minute.
    pub grid_min: i32,
    /// When work is done.
    pub sessions: Vec<Span>,
    /// Everything that has a start, by its number.
    pub activities: Vec<ActivityFact>,
    /// The waits between activities.
    pub waits: Vec<WaitFact>,
    /// What must follow what.
    pub links: Vec<LinkFact>,
    /// What several activities share.
    pub pools: Vec<PoolFact>,
    /// The ovens.
    pub ovens: OvensFact,
    /// The shelves.
    pub stores: Vec<StoreFact>,
    /// Why there is no plan.
    pub reasons: Vec<String>,
    /// What would make it fit, each tried.
    pub remedies: Vec<String>,
    /// What else must be known.
    pub notes: Vec<String>,
    /// At home: the doughs that several bakes share; not there where they share none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub doughs: Vec<SharedFact>,
    /// The rest of a day under way; `null` for a whole plan.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub now: Option<NowFact>,
    /// Minutes and local times.
    #[serde(skip)]
    pub clock: Clock,
    /// Everything that someone does, by the clock.
    #[serde(skip)]
    pub rows: Vec<LineSheet>,
    /// What rests or proofs, from when to when.
    #[serde(skip)]
    pub rests: Vec<LineSheet>,
    /// For each session what stands where when it closes: place, who, what and trays.
    #[serde(skip)]
    pub left: Vec<Vec<[String; 4]>>,
    /// The plan as a chart; nothing where there is no plan.
    #[serde(skip)]
    pub chart: Option<ChartSheet>,
}

/// The rest of a day under way.
#[derive(Clone, Debug, Serialize)]
pub struct NowFact {
    /// This minute.
    pub now_min: i32,
    /// The same as a local time.
    pub now: String,
    /// The minute up to which things are soon.
    pub next_min: i32,
    /// The day: `Tuesday 2 March 2027`.
    #[serde(skip)]
    pub day: String,
    /// The time: `18:55`.
    #[serde(skip)]
    pub time: String,
    /// What begins at another minute than was announced.
    pub changed: Vec<ShiftFact>,
}

/// Something that begins at another minute than was announced.
#[derive(Clone, Debug, Serialize)]
pub struct ShiftFact {
    /// Who does it.
    pub who: String,
    /// The recipe.
    pub recipe: String,
    /// The step's heading.
    pub what: String,
    /// The minute that was announced.
    pub from_min: i32,
    /// The minute at which it begins now.
    pub to_min: i32,
    /// The time that was announced.
    pub from: String,
    /// The time at which it begins now.
    pub to: String,
    /// Why, in words.
    pub why: String,
}

/// One thing that is made small.
#[derive(Clone, Debug, Serialize)]
pub struct ObjectiveFact {
    /// In a class `short`, minutes by which waits are shorter than usual; `moments`, how many
    /// different minutes there are at which somebody begins something; `waiting` and `end`. At
    /// home `away` from the recipe's own times, and `lead`, from the first start until it is
    /// ready.
    pub name: Counted,
    /// The plan's value, in minutes where it is a time.
    pub value: i32,
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
pub struct ActivityFact {
    /// Its number.
    pub id: usize,
    /// Who does it: `pair 1`, `instructor`.
    pub group: String,
    /// Who must watch.
    pub watching: Vec<String>,
    /// `hands`, `bake`, `moment`, `demonstration` or `finish`; at home `into` and `out` of
    /// a hold, and `move` where a wait begins behind another.
    pub kind: Kind,
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
pub struct WaitFact {
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
pub struct LinkFact {
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
pub struct PoolFact {
    /// What.
    pub name: String,
    /// How much there is.
    pub capacity: i32,
    /// Activity, amount, and minutes after its end until it is free.
    pub uses: Vec<(usize, i32, i32)>,
}

/// The ovens.
#[derive(Clone, Debug, Default, Serialize)]
pub struct OvensFact {
    /// How many.
    pub count: usize,
    /// Trays that one takes.
    pub trays: i32,
    /// Minutes after a bake until its place is free.
    pub after_min: i32,
    /// Minutes from a bake's end until the oven has another heat, where that is longer.
    pub turn_min: i32,
    /// The bakes: activity, trays, number of the heat, and of the phases where it changes.
    pub bakes: Vec<(usize, i32, i32, Option<i32>)>,
}

/// A shelf.
#[derive(Clone, Debug, Serialize)]
pub struct StoreFact {
    /// Where.
    pub place: String,
    /// Trays it holds.
    pub capacity: i32,
    /// The place of a lag in the list, and trays: from the end of its first activity to the
    /// start of its second.
    pub stays: Vec<(usize, i32)>,
}

/// A plan as a chart shows it.
#[derive(Clone, Debug)]
pub struct ChartSheet {
    /// Its title.
    pub title: String,
    /// What bars mean: attended work, the oven, waiting, what everybody does together.
    pub key: Vec<(BarKind, String)>,
    /// The titles of the recipes, where there are several: each has a colour and a pattern.
    pub recipes: Vec<String>,
    /// Session by session; those in which nothing happens are left out.
    pub sessions: Vec<ChartSession>,
    /// The steps' headings in the order of their numbers, from 1.
    pub steps: Vec<String>,
    /// The whole chart in words.
    pub said: String,
}

/// One session of a chart: from its first task to its last.
#[derive(Clone, Debug)]
pub struct ChartSession {
    /// The day: `Tuesday 2 March 2027`.
    pub day: String,
    /// First minute.
    pub from: i32,
    /// The minute after the last.
    pub to: i32,
    /// The marks on its axis.
    pub marks: Vec<ChartMark>,
    /// A row for each who does something.
    pub lanes: Vec<ChartLane>,
    /// The session in words.
    pub said: String,
}

/// A mark on a chart's axis.
#[derive(Clone, Debug)]
pub struct ChartMark {
    /// Its minute.
    pub minute: i32,
    /// Its time: `18:30`.
    pub time: String,
}

/// What one group does.
#[derive(Clone, Debug)]
pub struct ChartLane {
    /// Whose it is.
    pub who: String,
    /// The bars in painting order; those that wait may reach beyond the session.
    pub bars: Vec<ChartBar>,
}

/// What a bar stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BarKind {
    /// Attended work.
    Hands,
    /// Time in the oven.
    Bake,
    /// What only waits.
    Rest,
    /// What everybody does together.
    Together,
}

/// One bar.
#[derive(Clone, Debug)]
pub struct ChartBar {
    /// What it stands for.
    pub kind: BarKind,
    /// First minute.
    pub from: i32,
    /// The minute after the last.
    pub to: i32,
    /// Its step's number, from 1.
    pub step: Option<usize>,
    /// Its recipe's place among them; 0 where there is one.
    pub recipe: usize,
}

/// A dough that goes into several bakes at home, and is made once.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SharedFact {
    /// Its recipe.
    pub recipe: String,
    /// What all take of it, in grams.
    pub taken_g: f64,
    /// What is mixed for that, in grams: with what is lost.
    pub mixed_g: f64,
    /// What each bake takes of it, by its title, in grams.
    pub parts: Vec<(String, f64)>,
}
