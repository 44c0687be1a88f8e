//! The order of the knife: which cuts follow one another the same way.

use schemars::JsonSchema;
use serde::Serialize;

use super::{Layout, Point};

/// The way that the knife goes, for someone who stands at the near long side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// Along the long side.
    Along,
    /// Across it.
    Across,
    /// From the near left to the far right.
    Rising,
    /// From the far left to the near right.
    Falling,
}

/// Cuts that follow one another the same way, by their numbers from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Stroke {
    /// The way of the knife.
    pub way: Way,
    /// The first cut.
    pub first: usize,
    /// The last cut.
    pub last: usize,
}

impl Way {
    fn of([from, to]: &[Point; 2]) -> Self {
        if from.y == to.y {
            Self::Along
        } else if from.x == to.x {
            Self::Across
        } else if (from.x < to.x) == (from.y < to.y) {
            Self::Rising
        } else {
            Self::Falling
        }
    }
}

impl Layout {
    /// The cuts in the order of the knife, those of one way together.
    pub fn strokes(&self) -> Vec<Stroke> {
        let mut strokes: Vec<Stroke> = Vec::new();
        for (index, line) in self.lines.iter().enumerate() {
            let (way, number) = (Way::of(line), index + 1);
            match strokes.last_mut() {
                Some(last) if last.way == way => last.last = number,
                _ => strokes.push(Stroke { way, first: number, last: number }),
            }
        }
        strokes
    }
}
