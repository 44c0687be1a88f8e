//! A class as it is painted: the plan by the clock, what stands where in between, a card
//! for each group, the order and the weigh-out. Nothing is left to decide.

mod order;
mod plan;

pub use order::{ForWhom, Order, OrderLine, OrderSheet, Tub, TubLine, UsWeights};
pub use plan::{
    ActivityFact, BarKind, ChartBar, ChartLane, ChartMark, ChartSession, ChartSheet,
    LinkFact, NowFact, ObjectiveFact, OvensFact, PlanSheet, PoolFact, SharedFact,
    ShiftFact, Span, StoreFact, WaitFact,
};

use serde::Serialize;

use crate::measure::Label;
use crate::plan::{Kind, Who};

use super::Units;

/// Everything that a class's page and its papers show.
#[derive(Clone, Debug, Serialize)]
pub struct ClassSheet {
    /// The class's file name.
    pub class: String,
    /// Its title.
    pub title: String,
    /// How good the plan is known to be.
    pub standing: String,
    /// Whether there is a plan.
    pub fits: bool,
    /// Why there is none.
    pub reasons: Vec<String>,
    /// What would make it fit.
    pub remedies: Vec<String>,
    /// How many bakers come.
    pub bakers: u32,
    /// The groups in words: `7 pairs`.
    pub groups: String,
    /// One of them: `pair`.
    pub group: String,
    /// Each of them by name: `pair 1`.
    pub crews: Vec<String>,
    /// The units of every amount and heat.
    pub units: Units,
    /// What is made.
    pub makes: Vec<MakingSheet>,
    /// What each baker brings along.
    pub bring: Vec<String>,
    /// Session by session.
    pub sessions: Vec<SessionSheet>,
    /// Group by group.
    pub cards: Vec<Card>,
    /// The order; `null` where it cannot be worked out.
    pub order: Option<OrderSheet>,
    /// The weigh-out.
    pub tubs: Vec<Tub>,
    /// The plan as programs and other painters take it.
    #[serde(skip)]
    pub plan: PlanSheet,
    /// The order likewise.
    #[serde(skip)]
    pub bought: Option<Order>,
}

/// One recipe that is made in class.
#[derive(Clone, Debug, Serialize)]
pub struct MakingSheet {
    /// The recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// Who makes it.
    pub each: ForWhom,
    /// How much: `10 crescents`.
    pub makes: Label,
}

/// One session by the clock.
#[derive(Clone, Debug, Serialize)]
pub struct SessionSheet {
    /// The day: `Tuesday 2 March 2027`.
    pub day: String,
    /// From: `18:00`.
    pub from: String,
    /// To: `21:00`.
    pub to: String,
    /// What happens.
    pub rows: Vec<LineSheet>,
    /// What stands where when it closes: place, who, what and trays, those of the same
    /// place and step together.
    pub left: Vec<[String; 4]>,
}

/// One line of a plan by the clock.
#[derive(Clone, Debug, Serialize)]
pub struct LineSheet {
    /// The day in full: `Tuesday 2 March 2027`.
    #[serde(skip)]
    pub day: String,
    /// The day as ISO 8601 has it.
    #[serde(skip)]
    pub date: String,
    /// First minute of the plan.
    #[serde(skip)]
    pub from_min: i32,
    /// The minute after the last.
    #[serde(skip)]
    pub to_min: i32,
    /// From: `18:00`.
    pub from: String,
    /// To.
    pub to: String,
    /// Who.
    pub who: String,
    /// What.
    pub what: String,
    /// Heat and ovens: `190 °C: oven 1 with 4 trays`.
    pub oven: Option<String>,
    /// Where it rests.
    pub place: Option<String>,
    /// What of it.
    pub kind: Kind,
    /// Who does it or watches, for what is made for each of them.
    #[serde(skip)]
    pub people: Vec<Who>,
    /// Who watches.
    pub watching: Option<String>,
    /// What to look for, on the first line of a step.
    pub check: Option<String>,
}

/// What one group does when.
#[derive(Clone, Debug, Serialize)]
pub struct Card {
    /// Whose it is.
    pub who: String,
    /// Day, from, to, what: a wait has its place behind it.
    pub lines: Vec<[String; 4]>,
}
