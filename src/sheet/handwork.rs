//! What hands do that is geometry: rolling out, shaping a piece, setting pieces on a tray.

use schemars::JsonSchema;
use serde::Serialize;

use crate::dough::Direction;
use crate::dough::shaping::Frame;
use crate::measure::Label;

use super::Picture;

/// The handwork of a recipe.
#[derive(Clone, Debug, Default, Serialize, JsonSchema)]
pub struct Handwork {
    /// Sheets that are only rolled, in order: what is folded or cut has its own facts.
    pub rolls: Vec<RollFact>,
    /// Pieces that are shaped, in order.
    pub shapes: Vec<ShapeFact>,
    /// The trays of each bake.
    pub trays: Vec<TrayFact>,
    /// How the fat layers grow; `null` where the recipe has no lock-in with turns.
    pub growth: Option<GrowthFact>,
}

/// How the fat layers grow from the lock-in through the turns.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct GrowthFact {
    /// The last step of them.
    pub step: String,
    /// Whether the fat is outside.
    pub inverted: bool,
    /// Fat layers after the lock-in, and after each turn.
    pub fat_layers: Vec<u64>,
    /// Into how many parts each turn folds: one fewer than `fat_layers`.
    pub parts: Vec<u32>,
}

/// A slab of dough.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Slab {
    /// The side that is stretched, cm.
    pub length_cm: f64,
    /// The other side, cm.
    pub width_cm: f64,
    /// Thickness, mm.
    pub thickness_mm: f64,
    /// Its size in words.
    pub size: Label,
    /// Its thickness in words.
    pub thickness: Label,
}

/// One rolling.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RollFact {
    /// The step.
    pub step: String,
    /// Which way it is rolled, seen from what was done with the dough before.
    pub way: Direction,
    /// What is rolled; `null` where its shape is not known.
    pub from: Option<Slab>,
    /// What it is rolled to.
    pub to: Slab,
    /// The bench's long side, cm; `null` where the course does not say.
    pub bench_cm: Option<f64>,
    /// The same in words.
    pub bench: Option<Label>,
}

/// One shaping.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ShapeFact {
    /// The step.
    pub step: String,
    /// What it becomes: `crescent`, `baton`, `pinwheel` and so on, or the author's name.
    pub shape: String,
    /// Whether it is set in a tin: then the sides are the tin's.
    pub in_tin: bool,
    /// The stages, of which the last is the piece as it is set down.
    pub frames: Vec<Frame>,
    /// What is done in each stage of an author's own shaping, in the author's words; empty
    /// for others.
    pub own_words: Vec<String>,
    /// A picture of each stage of an author's own shaping, where its stages are pictures: then
    /// there are no `frames`.
    pub pictures: Vec<Picture>,
    /// A triangle's base, or the piece's first side, cm; for `tin` the tin's length.
    pub base_cm: f64,
    /// A triangle's height, or the piece's second side, cm; for `tin` the tin's width.
    pub height_cm: f64,
    /// The tin's depth, cm; `null` for other shapes, and where it is not said.
    pub depth_cm: Option<f64>,
    /// The piece's thickness, mm; `null` where it is not known.
    pub thickness_mm: Option<f64>,
    /// Times that the piece goes round when it is rolled up; `null` for other shapes.
    pub wraps: Option<f64>,
    /// How thick the finished roll is, cm; `null` for other shapes.
    pub roll_cm: Option<f64>,
    /// How deep a triangle's base is cut in, in words; `null` where it is not.
    pub notch: Option<Label>,
    /// How long the piece is after stretching, in words; `null` where it is not stretched.
    pub stretched: Option<Label>,
    /// How thick the roll or strand is, or how wide the ball, in words.
    pub roll: Option<Label>,
    /// How long the strand is, in words; `null` for other shapes.
    pub strand: Option<Label>,
    /// The piece, or the tin, in words; empty for a piece that was weighed.
    pub piece: Label,
    /// The first side in words.
    pub base: Label,
    /// The second side in words.
    pub height: Label,
    /// The depth in words.
    pub depth: Option<Label>,
    /// The thickness in words.
    pub thickness: Option<Label>,
}

/// The trays of one bake.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TrayFact {
    /// The step.
    pub step: String,
    /// The part of a divided dough whose pieces they are, where several are baked in one step.
    pub part: Option<String>,
    /// Whether the dough is leavened, so that its pieces double on the tray.
    pub leavened: bool,
    /// The tray, long side first, cm.
    pub length_cm: f64,
    /// The tray, cm.
    pub width_cm: f64,
    /// Pieces on one tray.
    pub per_tray: u64,
    /// Trays in all.
    pub trays: u64,
    /// Trays that one oven takes; `null` where the course does not say.
    pub trays_per_oven: Option<u64>,
    /// Loads that one oven needs; 1 where several parts are baked in one step, whose loads
    /// stand at the step.
    pub loads: u64,
    /// The middle of every piece on one tray, cm, from its near left corner.
    pub places_cm: Vec<[f64; 2]>,
    /// Whether they lie in pairs, long side to long side: then every other one is turned round.
    pub in_pairs: bool,
    /// From the middle of one piece to the middle of the next along the tray, cm.
    pub along_cm: f64,
    /// From the middle of one piece to the middle of the next across the tray, cm.
    pub across_cm: f64,
    /// A piece as it is set down, cm: along and across; `null` where it is not known.
    pub piece_cm: Option<[f64; 2]>,
    /// How it looks; `null` where it is not known.
    pub shape: Option<Frame>,
    /// How many fit on a tray with the gap that they need; `null` where the piece is not
    /// known.
    pub fits: Option<u64>,
    /// The gap between pieces that they need, along and across, in words.
    pub gap: Option<[Label; 2]>,
    /// The tray in words.
    pub tray: Label,
    /// The distance along the tray in words.
    pub along: Label,
    /// The distance across the tray in words.
    pub across: Label,
}
