//! The one computed result: every number scaled, every label in both unit systems,
//! nothing left to decide. Printed as JSON it is the program's `facts`.
//!
//! Nothing to the left of this type knows an output; nothing to the right of it computes
//! a number.

mod class;
mod course;
mod dough;
mod goal;
mod handwork;
mod line;
pub mod making;
#[cfg(test)]
pub(crate) mod sample;
mod step;
mod time;
mod way;

pub use class::{
    ActivityFact, BarKind, Card, ChartBar, ChartLane, ChartMark, ChartSession,
    ChartSheet, ClassSheet, ForWhom, LineSheet, LinkFact, MakingSheet, NowFact,
    ObjectiveFact, Order, OrderLine, OrderSheet, OvensFact, PlanSheet, PoolFact,
    SessionSheet, SharedFact, ShiftFact, Span, StoreFact, Tub, TubLine, UsWeights,
    WaitFact,
};
pub use course::{
    BatchSheet, ClassLink, CourseSheet, Demo, HandoutKind, HandoutLink, LessonSheet,
    Look, NewsSheet, NotesSheet, OtherEdition, Outline, Paper, RecipeSheets,
    TechniqueSheet, TradeWord, Units, UsedIn,
};
pub use dough::{
    Cut, EdgesFact, Fold, GrowthOf, Lamination, LockInFact, Mark, SheetFact,
};

pub use goal::{GoalFact, Measured, MixFact, MixPhaseFact};
pub use handwork::{GrowthFact, Handwork, RollFact, ShapeFact, Slab, TrayFact};
pub use line::{
    Allergen, AllergenList, Allergens, Cost, EachDough, Line, NutrientWords, Nutrients,
    Nutrition, OverallLine, Preferment, SectionTotal, Totals, Water,
};
pub use step::{
    Ingredients, OtherSheet, Part, Picture, Sight, StepSheet, Ticked, TicketRow,
    UntoldFact, Watch,
};
pub use time::{
    BakeAct, BakeFact, BakePhaseFact, ProofFact, ProofPhaseFact, Ready, StepTime, Time,
};
pub use way::{WayOf, WaySheet, WithoutFact};

use schemars::JsonSchema;
use serde::Serialize;

pub use crate::dough::cutting::Form;
use crate::measure::Label;
pub use crate::model::{Block, Folding, Inline, Level, LockIn, Speed};
pub use crate::plan::{Clock, Counted, Kind, Verdict, Who};

/// Everything the program worked out about one recipe at one scale.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Sheet {
    /// Version of this form of facts.
    pub facts: u32,
    /// The recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// What it is, in a sentence.
    pub summary: String,
    /// What of it stands in the course's first language, in an edition in another one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub untold: Option<Box<UntoldFact>>,
    /// The family of dough.
    pub family: Option<String>,
    /// The finished piece.
    pub picture: Option<Box<Picture>>,
    /// Whether the pictures in its prose are printed too.
    pub printed: bool,
    /// How it is scaled, and what it gives.
    pub scale: Scale,
    /// Every line of the formula, section by section, in order.
    pub formula: Vec<Line>,
    /// The formula's sums.
    pub totals: Totals,
    /// Each preferment as its own formula and inside the overall one, in order.
    pub preferments: Vec<Preferment>,
    /// The lamination, for layered dough.
    pub lamination: Option<Lamination>,
    /// The cutting plans.
    pub cuts: Vec<Cut>,
    /// Rolling, shaping and traying.
    pub handwork: Handwork,
    /// The times.
    pub time: Time,
    /// Oven, trays and loads of every bake.
    pub bakes: Vec<BakeFact>,
    /// Every proof by several temperatures; not there where there is none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub proofs: Vec<ProofFact>,
    /// How the mixer runs, of every step that says it; not there where none does.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub mixing: Vec<MixFact>,
    /// What steps are to reach, as values that can be measured; not there where none does.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub goals: Vec<GoalFact>,
    /// The water that brings the dough to its temperature.
    pub water: Option<Water>,
    /// The allergens.
    pub allergens: Allergens,
    /// The nutrients, as an estimate; `null` where an ingredient's are not known.
    pub nutrition: Option<Nutrition>,
    /// What the ingredients cost; `null` where a price is not known.
    pub cost: Option<Cost>,
    /// What else is worth saying of the numbers: yeast in place of another, the boiling
    /// point at the classroom's height, tins whose depth is not known.
    pub notes: Vec<Note>,
    /// The cautions that apply, by name.
    pub cautions: Vec<String>,
    /// The same cautions in full, with the house cautions.
    pub caution_texts: Vec<String>,
    /// The faults of this recipe, by name.
    pub faults: Vec<String>,
    /// What stands before the first heading.
    pub opening: Vec<Block<Label>>,
    /// Steps and prose in reading order.
    pub parts: Vec<Part>,
    /// Every video.
    pub videos: Vec<Watch>,
    /// What it is a way of; not there for a recipe as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub way: Option<Box<WayOf>>,
    /// The swaps that it is offered with; not there where there are none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub ways: Vec<WaySheet>,
    /// What differs from the edition before, where the course names one and something does.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub since: Option<Since>,
}

/// Everything the program worked out about recipes that are made together.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TogetherSheet {
    /// Version of this form of facts.
    pub together: u32,
    /// The doughs that several take, each made once.
    pub doughs: Vec<SharedFact>,
    /// Every recipe at its size, what goes into others before them.
    pub recipes: Vec<Sheet>,
}

impl Sheet {
    /// The language of its title and summary, where it is not the edition's.
    pub fn title_in(&self) -> Option<&str> {
        let untold = self.untold.as_deref().filter(|untold| untold.head)?;
        Some(&untold.language)
    }

    /// The language of a step's heading, where it is not the edition's.
    pub fn step_in(&self, name: &str) -> Option<&str> {
        let is_it = |part: &Part| matches!(part, Part::Step(step) if step.step == name);
        self.part_in(self.parts.iter().position(is_it)?)
    }

    /// The language of a part's heading, by its place from 0, where it is not the edition's.
    pub fn part_in(&self, at: usize) -> Option<&str> {
        let untold = self.untold.as_deref().filter(|it| it.parts.contains(&at))?;
        Some(&untold.language)
    }
}

/// What differs from the edition before, as written: for one batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Since {
    /// The name of the edition before.
    pub edition: String,
    /// The differences, in order.
    pub changes: Vec<Label>,
    /// Where they show on the sheet.
    pub marks: Vec<SinceMark>,
}

/// A place on the sheet where something differs from the edition before.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum SinceMark {
    /// A line of the formula.
    Line {
        /// Which, counted from 0.
        line: usize,
    },
    /// A step.
    Step {
        /// Its name.
        step: String,
        /// The row of its ticket, `until` for its cue; `null` where all of it is meant.
        row: Option<String>,
    },
}

/// A remark on the numbers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Note {
    /// What it is about: `yeast`, `open-weight`, `boiling`, `tin-depth`, `whole-rows`,
    /// `half-pieces`, `reroll`, `left-over`, `way`, `made-without`.
    pub name: String,
    /// The remark.
    pub text: Label,
}

/// How a recipe is scaled, and what it gives.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Scale {
    /// How many times the recipe as written.
    pub factor: f64,
    /// How many pieces; `null` for a base dough.
    pub pieces: Option<u64>,
    /// Weight of one piece before baking, in grams; `null` for a base dough.
    pub piece_g: Option<f64>,
    /// The same, in words.
    pub piece: Option<Label>,
    /// How many equal doughs it is mixed in.
    pub doughs: u64,
    /// What it gives, in words: `22 crescents`.
    pub makes: Label,
    /// The batch in words: `1 batch`, `½ batch`, `24 pieces`.
    pub batch: String,
}
