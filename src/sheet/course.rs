//! The course, its lessons and techniques as they are painted.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;
use crate::model::Block;

use super::{Cut, Fold, GrowthFact, LockInFact, RollFact, ShapeFact, Sheet, TrayFact};

/// The course.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CourseSheet {
    /// Its title.
    pub title: String,
    /// Who gives it.
    pub school: Option<String>,
    /// Who teaches it.
    pub instructor: Option<String>,
    /// What it is about.
    pub summary: String,
    /// Language tag.
    pub language: String,
    /// The edition's name.
    pub edition: Option<String>,
    /// The edition's date, ISO 8601.
    pub date: Option<String>,
    /// Where the site stands, ending in a slash.
    pub address: Option<String>,
    /// Whether metric comes first.
    pub metric_first: bool,
    /// Whether lists on paper show the other units beside the first.
    pub both_units: bool,
    /// Whether A4 comes first.
    pub a4_first: bool,
    /// ISO 4217 code.
    pub currency: String,
    /// Lessons in order; recipes and techniques in none of them stand in a last one
    /// without a title.
    pub lessons: Vec<LessonSheet>,
    /// The classes in the order of their first sessions.
    pub classes: Vec<ClassLink>,
    /// The laws by which allergens are declared, by key, in the order asked for; none where
    /// the course does not say.
    pub laws: Vec<String>,
    /// House cautions.
    pub cautions: Vec<String>,
    /// The look of its handouts.
    pub look: Look,
    /// What is new, newest first.
    pub news: Vec<NewsSheet>,
    /// The words of the trade that the course explains, in order of the alphabet.
    pub glossary: Vec<TradeWord>,
    /// Whether the site can be read with no connection.
    pub offline: bool,
    /// Whether run sheets, orders and prices of classes stand on the site.
    pub papers_on_site: bool,
    /// The editions in other languages.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub others: Vec<OtherEdition>,
}

/// The edition of a course in another language.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct OtherEdition {
    /// Its language's tag.
    pub language: String,
    /// What the language calls itself.
    pub name: String,
    /// The way from this site's root to that one's: `fr/`, `../`.
    pub way: String,
    /// Where that site stands, ending in a slash.
    pub address: Option<String>,
}

/// The course's own look, laid over its theme.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Look {
    /// The colour of rules, badges and links, as `#2f6b62`; the theme's where not said.
    pub accent: Option<String>,
    /// A drawing for the head of every sheet, as SVG.
    pub logo: Option<String>,
    /// The typeface family of running text; the theme's where not said.
    pub text: Option<String>,
    /// The typeface family of labels and tables; the theme's where not said.
    pub labels: Option<String>,
}

/// One thing that is new.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NewsSheet {
    /// Since when, ISO 8601.
    pub date: String,
    /// What.
    pub content: Vec<Block<Label>>,
}

/// One word of the trade.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TradeWord {
    /// Its name in addresses: `lock-in`.
    pub name: String,
    /// The word.
    pub word: String,
    /// Other forms of it that a text may use.
    pub also: Vec<String>,
    /// Whether only the other forms are surely meant as the trade does.
    pub everyday: bool,
    /// What it means.
    pub meaning: Vec<Block<Label>>,
}

/// A class and where its page is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct ClassLink {
    /// Its file name.
    pub class: String,
    /// Its title.
    pub title: String,
    /// When it is held, in words.
    pub when: String,
}

/// One lesson.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LessonSheet {
    /// Its title; empty for what stands in no lesson.
    pub title: String,
    /// What it is about.
    pub summary: String,
    /// Recipes by file name.
    pub recipes: Vec<String>,
    /// Techniques by file name.
    pub techniques: Vec<String>,
}

/// One recipe at every batch size that its page offers.
#[derive(Clone, Debug, Serialize)]
pub struct RecipeSheets {
    /// The recipe as written.
    pub base: Sheet,
    /// The same at other sizes, smallest first, the one as written among them. Each has
    /// the same lines and steps in the same order.
    pub batches: Vec<BatchSheet>,
}

/// One batch size.
#[derive(Clone, Debug, Serialize)]
pub struct BatchSheet {
    /// A short name for addresses and classes: `half`, `x1`, `x2`, `x3`.
    pub key: String,
    /// In words: `½ batch`.
    pub title: String,
    /// Everything at this size.
    pub sheet: Sheet,
}

/// One technique.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TechniqueSheet {
    /// The file's name.
    pub technique: String,
    /// Its title.
    pub title: String,
    /// What it is, in a sentence.
    pub summary: String,
    /// The language of both, where it is not the edition's.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title_in: Option<String>,
    /// What to draw, in order.
    pub demonstrations: Vec<Demo>,
    /// The text.
    pub content: Vec<Block<Label>>,
    /// Recipes that link to it.
    pub used_in: Vec<UsedIn>,
}

/// A recipe that links to a technique.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct UsedIn {
    /// The recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// The title's language, where it is not the edition's.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title_in: Option<String>,
}

/// One thing to draw.
#[derive(Clone, Debug, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Demo {
    /// A lock-in.
    LockIn(Box<LockInFact>),
    /// A turn.
    Fold(Box<Fold>),
    /// A cut.
    Cut(Box<Cut>),
    /// A rolling.
    Roll(Box<RollFact>),
    /// A shaping.
    Shape(Box<ShapeFact>),
    /// A tray.
    Tray(Box<TrayFact>),
    /// How layers grow.
    Growth(Box<GrowthFact>),
}

/// A recipe by its name and its steps alone: what other recipes say of one that has to be
/// made first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Outline {
    /// The recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// Each step's name in addresses and its title, in order.
    pub steps: Vec<[String; 2]>,
}

/// One handout of a recipe that is made, for linking to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HandoutLink {
    /// The kind of handout.
    pub kind: HandoutKind,
    /// Which unit system comes first on it.
    pub units: Units,
    /// The paper it is set for.
    pub paper: Paper,
}

impl HandoutLink {
    /// Where it stands in the site, from its root, by the recipe's file name.
    pub fn path(self, recipe: &str) -> String {
        let words = [self.kind.word(), self.units.word(), self.paper.word()].join("-");
        format!("recipes/{recipe}/{recipe}-{words}.pdf")
    }
}

/// The kinds of handout.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum HandoutKind {
    /// To take home.
    Student,
    /// To stand at the station.
    Bench,
    /// The student sheet in 18 pt.
    LargePrint,
}

/// A unit system.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Metric.
    Metric,
    /// US customary.
    Us,
}

/// A size of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Paper {
    /// ISO 216 A4, 210 × 297 mm.
    A4,
    /// US Letter, 8.5 × 11 in.
    Letter,
}

impl HandoutKind {
    /// Every kind.
    pub const ALL: [Self; 3] = [Self::Student, Self::Bench, Self::LargePrint];

    /// The kind's word in file names and on the command line.
    pub fn word(self) -> &'static str {
        match self {
            Self::Student => "student",
            Self::Bench => "bench",
            Self::LargePrint => "large-print",
        }
    }
}

impl Units {
    /// The system's word in file names and on the command line.
    pub fn word(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Us => "us",
        }
    }

    /// The form of a label in this system.
    pub fn of(self, label: &Label) -> &str {
        match self {
            Self::Metric => &label.metric,
            Self::Us => &label.us,
        }
    }
}

impl Paper {
    /// Width and height, mm.
    pub fn millimetres(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }

    /// The paper's word in file names and on the command line.
    pub fn word(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "letter",
        }
    }
}

/// What was noted of a recipe at the bench; for its author alone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct NotesSheet {
    /// The recipe's file name.
    pub recipe: String,
    /// Its title; the file name where there is none.
    pub title: String,
    /// What is not yet taken up: the day and the words.
    pub open: Vec<[String; 2]>,
    /// What is taken up.
    pub taken_up: Vec<[String; 2]>,
}
