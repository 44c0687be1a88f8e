//! What steps are to reach, and how the mixer runs, as they are painted.

use schemars::JsonSchema;
use serde::Serialize;

use crate::model::Speed;

/// A value that a step is to reach.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct GoalFact {
    /// The step.
    pub step: String,
    /// What is measured.
    pub what: Measured,
    /// What is aimed at: pH, °C, or percent of what there was before.
    pub usual: f64,
    /// The least that is right.
    pub least: f64,
    /// The most that is right.
    pub most: f64,
    /// What one piece weighs then, in grams; not there but for a bake of pieces that loses
    /// weight.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub piece_g: Option<f64>,
}

/// What is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Measured {
    /// How sour it is: pH.
    Ph,
    /// The dough's temperature: °C.
    DoughTemperature,
    /// The weight that is gone: percent.
    WeightLoss,
    /// How much it has grown: percent; 100 is to double.
    Growth,
}

/// How a mixer runs at one step.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MixFact {
    /// The step.
    pub step: String,
    /// Its speeds one after the other.
    pub phases: Vec<MixPhaseFact>,
}

/// A part of the mixing at one speed.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MixPhaseFact {
    /// How fast.
    pub speed: Speed,
    /// How long, in minutes: usual, least and most.
    pub minutes: [u64; 3],
}
