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
}

/// When one step happens.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StepTime {
    /// The step.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// The recipe it belongs to: another one's file name for included steps.
    pub recipe: String,
    /// Earliest start.
    pub start_min: u64,
    /// Attended minutes.
    pub hands_min: u64,
    /// Unattended minutes: usual, least, most.
    pub wait_min: [u64; 3],
    /// How much longer it may stay.
    pub hold_min: u64,
    /// The steps it waits for.
    pub after: Vec<String>,
    /// Whether it is a bake.
    pub bake: bool,
    /// Where it waits.
    pub place: Option<String>,
    /// Whether a delay here delays the end.
    pub critical: bool,
}
