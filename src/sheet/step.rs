//! Steps and prose as they are painted.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;
use crate::model::Block;

/// What stands under one heading.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Part {
    /// A step.
    Step(StepSheet),
    /// Prose.
    Prose {
        /// The heading.
        title: String,
        /// The text.
        content: Vec<Block<Label>>,
    },
}

/// One step, ready to paint.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StepSheet {
    /// The step's name: `first-turn`.
    pub step: String,
    /// Its number among the steps, from 1.
    pub number: usize,
    /// Its heading.
    pub title: String,
    /// The ticket's rows in the order to show them.
    pub ticket: Vec<TicketRow>,
    /// What goes in here.
    pub ingredients: Vec<Ingredients>,
    /// The video.
    pub watch: Option<Watch>,
    /// How to tell that it is done.
    pub until: Option<Box<Label>>,
    /// A picture to look at.
    pub picture: Option<Box<Picture>>,
    /// What is said to the student.
    pub prose: Vec<Block<Label>>,
}

/// One row of a ticket: a term and its value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct TicketRow {
    /// Which row: `hands`, `wait`, `where`, `at`, `hold`, `kit`, `sheet`, `thickness`,
    /// `lock-in`, `turn`, `layers`, `cut`, `divide`, `part`, `oven`, `fan`, `bake`, `trays`, `core`, `cool`.
    pub key: String,
    /// The term in the course's language: `Hands on`.
    pub term: String,
    /// The value.
    pub value: Label,
}

/// An ingredient used in a step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Ingredients {
    /// How much in words: the pieces of what is counted, else the weight or the measure.
    pub amount: Label,
    /// What.
    pub ingredient: String,
    /// What that weighs, where the amount is a count.
    pub weight: Option<Label>,
    /// How much goes on or into each piece, where pieces are in hand.
    pub each: Option<Label>,
}

/// A video to watch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Watch {
    /// Its name.
    pub name: String,
    /// Its address.
    pub address: String,
    /// How long it lasts, in words.
    pub length: Option<String>,
    /// A picture from it.
    pub still: Option<Box<Picture>>,
}

/// A picture of the media folder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Picture {
    /// The file's name below the media folder.
    pub file: String,
    /// What it shows, in words.
    pub alt: String,
    /// Whether it is printed too.
    pub printed: bool,
}
