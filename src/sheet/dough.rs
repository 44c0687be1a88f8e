//! Lamination and cutting as they are painted: sizes in centimetres for drawing, labels
//! for reading.

use schemars::JsonSchema;
use serde::Serialize;

use crate::dough::Direction;
use crate::dough::cutting::{Form, Stroke};
use crate::measure::Label;
use crate::model::{Folding, LockIn};

/// The lamination, or the turns of a dough whose fat is mixed in.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Lamination {
    /// The lock-in; `null` where an included dough had it, or none has.
    pub lock_in: Option<LockInFact>,
    /// Whether the fat is outside.
    pub inverted: bool,
    /// The turns in order, by word: `book`, `letter`.
    pub turns: Vec<Folding>,
    /// The folds in order.
    pub folds: Vec<Fold>,
    /// Fat layers at the end; `null` for a dough that is turned with its fat mixed in.
    pub fat_layers: Option<u64>,
    /// All layers where dough that touches dough has merged: 2 × fat + 1; `null` likewise.
    pub layers_merged: Option<u64>,
    /// Every ply counted.
    pub layers_unmerged: u64,
    /// Roll-in fat over dough without it, in percent; `null` likewise.
    pub fat_percent_of_dough: Option<f64>,
    /// Every rolled sheet in order.
    pub sheets: Vec<SheetFact>,
}

/// The lock-in.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LockInFact {
    /// The step.
    pub step: String,
    /// `envelope`, `letter` or `book`.
    pub kind: LockIn,
    /// Whether the fat is outside: then the sheet is of fat and the block of dough.
    pub inverted: bool,
    /// The sheet of dough, the side that is folded, cm.
    pub length_cm: f64,
    /// The sheet of dough, the other side, cm.
    pub width_cm: f64,
    /// The block of fat, along the sheet's first side, cm.
    pub block_length_cm: f64,
    /// The block of fat, cm.
    pub block_width_cm: f64,
    /// The closed parcel, cm.
    pub closed_length_cm: f64,
    /// The closed parcel, cm.
    pub closed_width_cm: f64,
    /// The dough sheet's thickness, mm.
    pub thickness_mm: f64,
    /// The fat block's thickness, mm.
    pub block_thickness_mm: f64,
    /// The dough sheet in words.
    pub size: Label,
    /// The fat block in words.
    pub block: Label,
    /// The closed parcel in words.
    pub closed: Label,
    /// The dough sheet's thickness in words.
    pub thickness: Label,
    /// The fat block's thickness in words.
    pub block_thickness: Label,
    /// The parcel's sides; `null` for an envelope, which is closed on all four.
    pub edges: Option<EdgesFact>,
    /// Which way the parcel is rolled next.
    pub next: Direction,
}

/// The sides of a folded block whose spine, a closed fold round everything within, lies to
/// the left. On the near and the far side its layers lie open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct EdgesFact {
    /// Closed folds on the right, opposite the spine.
    pub opposite_folds: u32,
    /// Ends of the sheet that lie loose on the right.
    pub opposite_ends: u32,
}

/// One turn.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Fold {
    /// The step.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// `book`, `letter`, `half`, or `N-part`.
    pub turn: Folding,
    /// Parts lying on one another.
    pub parts: u32,
    /// The sheet before folding, the side that is folded, cm.
    pub length_cm: f64,
    /// The sheet before folding, the other side, cm.
    pub width_cm: f64,
    /// The sheet before folding, mm.
    pub thickness_mm: f64,
    /// The folded block, along the folded side, cm.
    pub folded_length_cm: f64,
    /// The folded block, along the other side, cm.
    pub folded_width_cm: f64,
    /// The folded block, mm.
    pub folded_thickness_mm: f64,
    /// Fat layers before.
    pub fat_layers_before: u64,
    /// Fat layers after.
    pub fat_layers_after: u64,
    /// Plies before, every one counted.
    pub plies_before: u64,
    /// Plies after.
    pub plies_after: u64,
    /// Where it is folded, from the left end, in order.
    pub folds: Vec<Mark>,
    /// Where the two ends of a book meet, from the left end; `null` for other turns.
    pub meet: Option<Mark>,
    /// The block's sides.
    pub edges: EdgesFact,
    /// Which way the block is rolled next.
    pub next: Direction,
    /// The sheet before folding in words.
    pub size: Label,
    /// The folded block in words.
    pub folded: Label,
    /// One part's length in words.
    pub part: Label,
}

/// What of a fold is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GrowthOf {
    /// Layers of fat.
    Fat,
    /// Plies of dough, where the fat is mixed in.
    Plies,
}

impl Fold {
    /// What is counted, before and after.
    pub fn growth(&self) -> (GrowthOf, [u64; 2]) {
        match self.fat_layers_after {
            0 => (GrowthOf::Plies, [self.plies_before, self.plies_after]),
            after => (GrowthOf::Fat, [self.fat_layers_before, after]),
        }
    }
}

/// One rolled sheet.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SheetFact {
    /// The step.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// The side that is stretched, cm.
    pub length_cm: f64,
    /// The other side, cm.
    pub width_cm: f64,
    /// Which way it is rolled, seen from what was done with the dough before.
    pub way: Direction,
    /// What lies beneath the pin, cm: the side that is stretched, the other; `null` where it
    /// is not known.
    pub block_cm: Option<[f64; 2]>,
    /// Thickness, mm.
    pub thickness_mm: f64,
    /// Mean thickness of one fat layer, mm; 0 before the lock-in.
    pub fat_layer_mm: f64,
    /// Mean thickness of one dough layer, mm.
    pub dough_layer_mm: f64,
    /// Fat layers in it.
    pub fat_layers: u64,
    /// Its size in words.
    pub size: Label,
    /// Its thickness in words.
    pub thickness: Label,
}

/// One cutting plan.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Cut {
    /// The step.
    pub step: String,
    /// `triangle`, `right triangle`, `rectangle`, `square`, `round` or `strip`.
    pub shape: Form,
    /// How many pieces from all doughs together.
    pub pieces: u64,
    /// How many pieces from one sheet.
    pub pieces_per_sheet: u64,
    /// The sheet, long side first, cm.
    pub sheet_length_cm: f64,
    /// The sheet, cm.
    pub sheet_width_cm: f64,
    /// A triangle's base, or a piece's first side or diameter, cm.
    pub base_cm: f64,
    /// A triangle's height, or a piece's second side, cm.
    pub height_cm: f64,
    /// Weight of one piece, g.
    pub piece_g: f64,
    /// Part of the sheet that is no whole piece, in percent.
    pub scrap_percent: f64,
    /// Every piece's corners, cm, from the sheet's near left corner, long side along x.
    pub polygons_cm: Vec<Vec<[f64; 2]>>,
    /// The half pieces at the ends of rows of triangles, likewise; two make one.
    pub halves_cm: Vec<Vec<[f64; 2]>>,
    /// Further pieces from all doughs when the scrap is rolled out once more; 0 for layered
    /// dough, whose scrap is not.
    pub reroll_pieces: u64,
    /// The sheet that the scrap of one dough is rolled to, in words; `null` where it is not.
    pub reroll: Option<Label>,
    /// Every cut in the order to make it, from point to point, cm.
    pub lines_cm: Vec<[[f64; 2]; 2]>,
    /// Marks along the near long side, from the left corner.
    pub marks_near: Vec<Mark>,
    /// Marks along the far long side, from the left corner.
    pub marks_far: Vec<Mark>,
    /// Marks along the left short side, from the near corner.
    pub marks_left: Vec<Mark>,
    /// Marks along the right short side, from the near corner.
    pub marks_right: Vec<Mark>,
    /// The order of the knife: cuts that follow one another the same way.
    pub strokes: Vec<Stroke>,
    /// The sheet in words.
    pub size: Label,
    /// One piece in words: `9 × 24 cm`.
    pub piece: Label,
    /// One piece's weight in words.
    pub piece_weight: Label,
}

/// A mark to make along an edge.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Mark {
    /// Distance from the corner, cm.
    pub at_cm: f64,
    /// The distance in words.
    pub at: Label,
}
