//! Steps and prose as they are painted.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;
use crate::model::Block;

/// What stands under one heading.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
#[expect(clippy::large_enum_variant, reason = "nearly all parts are steps")]
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

/// What of a recipe stands in the course's first language, in an edition in another one.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct UntoldFact {
    /// The first language's tag.
    pub language: String,
    /// Whether the title and the summary do.
    pub head: bool,
    /// The parts whose headings do, by their places from 0.
    pub parts: Vec<usize>,
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
    /// Pictures to look at.
    pub pictures: Vec<Picture>,
    /// What is said to the student.
    pub prose: Vec<Block<Label>>,
    /// Other ways to do it, with other kit; not there where there are none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub others: Vec<OtherSheet>,
}

/// Another way to do a step.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OtherSheet {
    /// What it is called: `by hand`.
    pub name: String,
    /// The rows of its ticket that differ from the step's.
    pub ticket: Vec<TicketRow>,
    /// How to tell that it is done, where that differs.
    pub until: Option<Box<Label>>,
    /// What is said to the student, where that differs.
    pub prose: Vec<Block<Label>>,
}

/// Which row of a ticket.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Ticked {
    /// The day that it begins.
    Day,
    /// Attended time.
    Hands,
    /// The speeds of the mixer.
    Mix,
    /// The water's temperature, where another way to do the step wants another.
    Water,
    /// Unattended time.
    Wait,
    /// Where it waits.
    Where,
    /// The temperature it waits at.
    At,
    /// How much longer it may stay.
    Hold,
    /// What it occupies.
    Kit,
    /// The part of a divided dough.
    Part,
    /// The rolled size.
    Sheet,
    /// How thick it is then.
    Thickness,
    /// The openings of a sheeter, pass by pass.
    Sheeter,
    /// Which way it is rolled.
    Roll,
    /// How the fat is enclosed.
    LockIn,
    /// How it is folded.
    Turn,
    /// Layers of fat.
    Layers,
    /// Plies of a dough that is turned with its fat mixed in.
    Plies,
    /// What it is cut into.
    Cut,
    /// What it is divided into.
    Divide,
    /// The oven.
    Oven,
    /// The oven with a fan.
    Fan,
    /// The time in it.
    Bake,
    /// How many trays.
    Trays,
    /// The core temperature to reach.
    Core,
    /// How sour it is to become.
    Ph,
    /// The temperature that the dough is to have.
    DoughTemperature,
    /// The weight that it is to lose.
    WeightLoss,
    /// How much it is to grow.
    Growth,
    /// How it must be cooled.
    Cool,
}

impl Ticked {
    /// Its word: the key of its term, as the data has it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Day => "day",
            Self::Hands => "hands",
            Self::Mix => "mix",
            Self::Water => "water-at",
            Self::Wait => "wait",
            Self::Where => "where",
            Self::At => "at",
            Self::Hold => "hold",
            Self::Kit => "kit",
            Self::Part => "part",
            Self::Sheet => "sheet",
            Self::Thickness => "thickness",
            Self::Sheeter => "sheeter",
            Self::Roll => "roll",
            Self::LockIn => "lock-in",
            Self::Turn => "turn",
            Self::Layers => "layers",
            Self::Plies => "plies",
            Self::Cut => "cut",
            Self::Divide => "divide",
            Self::Oven => "oven",
            Self::Fan => "fan",
            Self::Bake => "bake",
            Self::Trays => "trays",
            Self::Core => "core",
            Self::Ph => "ph",
            Self::DoughTemperature => "dough-temperature",
            Self::WeightLoss => "weight-loss",
            Self::Growth => "growth",
            Self::Cool => "cool",
        }
    }
}

/// One row of a ticket: a term and its value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct TicketRow {
    /// Which row.
    pub key: Ticked,
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
    /// Its address, with the second at which to begin.
    pub address: String,
    /// Where in it to begin, in words.
    pub from: Option<String>,
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
    /// Whether it shows what is wrong, or beside such a one what is right.
    pub sight: Option<Sight>,
}

/// What a picture shows where one beside it shows the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Sight {
    /// As it should be.
    Right,
    /// As it should not be.
    Wrong,
}

impl Sight {
    /// Its word in keys.
    pub fn word(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Wrong => "wrong",
        }
    }
}
