//! Times as they are painted.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;

/// When what happens, counted from the first step.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Time {
    /// Attended minutes.
    pub hands_min: u64,
    /// Unattended minutes on the critical path.
    pub wait_min: u64,
    /// From first to last.
    pub elapsed_min: u64,
    /// Attended time in words: `1 h 25 min`.
    pub hands: String,
    /// Unattended time in words.
    pub wait: String,
    /// All of it in words.
    pub elapsed: String,
    /// The steps that decide how long it takes.
    pub critical_path: Vec<String>,
    /// Every step.
    pub steps: Vec<StepTime>,
    /// When to begin each step to be ready at some times of the day, where nobody has to
    /// work at night for it.
    pub ready: Vec<Ready>,
}

/// One time of the day at which all is ready.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Ready {
    /// The hour of the day.
    #[serde(skip)]
    pub hour: u64,
    /// The time: `18:00`.
    pub at: String,
    /// When each step begins, in the order of the steps: `15:05`, `21:30 the day before`.
    pub starts: Vec<String>,
}

/// One bake at its scale.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BakeFact {
    /// The step.
    pub step: String,
    /// The oven without a fan, °C.
    pub oven_c: f64,
    /// The oven with a fan, °C: as written, else 20 °C cooler.
    pub fan_c: f64,
    /// The oven without a fan in words.
    pub oven: Label,
    /// The oven with a fan in words.
    pub fan: Label,
    /// Pieces on one tray; `null` where not said.
    pub per_tray: Option<u64>,
    /// Trays in all.
    pub trays: u64,
    /// Oven loads that the trays take in one oven.
    pub loads: u64,
    /// Its phases; not there where it has one alone in which nothing is done.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub phases: Vec<BakePhaseFact>,
}

/// A part of a bake at one heat.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BakePhaseFact {
    /// The oven without a fan, °C.
    pub oven_c: f64,
    /// The oven with a fan, °C.
    pub fan_c: f64,
    /// How long, in minutes: usual, least and most; by its looks it may be longer.
    pub minutes: [u64; 3],
    /// What is done in it.
    pub does: Vec<BakeAct>,
    /// How many minutes longer it may be by its looks.
    pub more_min: Option<u64>,
}

/// What is done with an oven while something bakes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum BakeAct {
    /// Steam is let in.
    Steam,
    /// The door stands ajar.
    DoorAjar,
    /// The tray is turned round.
    TurnTray,
}

/// A proof by several temperatures.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ProofFact {
    /// The step.
    pub step: String,
    /// Its phases in order.
    pub phases: Vec<ProofPhaseFact>,
}

/// A part of a proof at one temperature.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ProofPhaseFact {
    /// The temperature around the dough, °C.
    pub at_c: f64,
    /// How long, in minutes: usual, least and most.
    pub minutes: [u64; 3],
    /// Where; `null` where it is not said.
    pub place: Option<String>,
}

/// When one step happens; one that stands in several places one after the other is there once
/// for each.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StepTime {
    /// The step.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// The recipe it belongs to: another one's file name for included steps.
    pub recipe: String,
    /// The day on which the recipe has it, from 1; not there where it takes one alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub day: Option<u64>,
    /// Earliest start.
    pub start_min: u64,
    /// Attended minutes.
    pub hands_min: u64,
    /// Unattended minutes: usual, least, most.
    pub wait_min: [u64; 3],
    /// How much longer it may stay.
    pub hold_min: u64,
    /// How long what was frozen in that hold thaws: usual, least, most.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub thaw_min: Option<[u64; 3]>,
    /// The steps it waits for.
    pub after: Vec<String>,
    /// Whether it is a bake.
    pub bake: bool,
    /// Where it waits.
    pub place: Option<String>,
    /// Whether a delay here delays the end.
    pub critical: bool,
}
