//! What a step is to reach, as values that can be measured, and how a mixer runs.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Exact;

use super::Wait;

/// A value that a step is to reach, and the range that is right: °C, pH, or a part of what
/// there was.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Goal {
    /// What is measured.
    pub kind: GoalKind,
    /// What is aimed at.
    pub usual: Exact,
    /// The least that is right.
    pub least: Exact,
    /// The most that is right.
    pub most: Exact,
}

/// What is measured at the end of a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GoalKind {
    /// How sour it is.
    Ph,
    /// The temperature of the dough.
    Dough,
    /// The part of its weight that is gone: 0.12 of it.
    WeightLoss,
    /// How much it has grown: 0.5 is by half, 1 is to double.
    Growth,
}

impl GoalKind {
    /// Its key in a ticket.
    pub fn key(self) -> &'static str {
        match self {
            Self::Ph => "pH",
            Self::Dough => "dough temperature",
            Self::WeightLoss => "weight loss",
            Self::Growth => "growth",
        }
    }
}

impl Goal {
    /// Whether a value is right.
    pub fn holds(&self, value: &Exact) -> bool {
        self.least <= *value && *value <= self.most
    }
}

/// A part of the mixing at one speed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MixPhase {
    /// How fast.
    pub speed: Speed,
    /// How long.
    pub time: Wait,
}

/// How fast a mixer runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Speed {
    /// The slowest, of a mixer whose speeds are counted.
    First,
    /// The next.
    Second,
    /// The one after that.
    Third,
    /// Slow, of a mixer whose speeds are not counted.
    Low,
    /// In the middle.
    Medium,
    /// Fast.
    High,
}
