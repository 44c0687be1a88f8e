//! What an instructor wrote, as plain data in which every value knows its place.
//!
//! Nothing here has been judged yet: a recipe may still be wrong in a hundred ways. The
//! readers fill these types, the checks and calculations take them.

use std::collections::BTreeMap;

mod amount;
mod besides;
mod class;
mod course;
mod divide;
mod evening;
mod glossary;
mod goal;
mod included;
mod kit;
mod note;
mod picture;
mod prose;
mod recipe;
mod shaping;
mod step;
mod technique;
mod translation;
mod way;

use crate::fault::Placed;
use crate::media::Medium;

pub use amount::{Amount, AmountLine, Ingredient, Purpose, Quantity, Share};
pub use besides::{Besides, Break, Changeover, HandsPace, Late, Talk, When};
pub use class::{Class, Each, Making, Much, Session};
pub use course::{
    AlsoIn, Course, EggClasses, Kit, Lesson, Look, News, PantryEntry, Room,
};
pub use divide::{Divide, Portion, Portioned};
pub use evening::{Heard, Of, Said, What, Which};
pub use glossary::Entry;
pub use goal::{Goal, GoalKind, MixPhase, Speed};
pub use included::{Endless, included, may_include};
pub use kit::{Keeps, KitKind, KitUse, Location, Standing, one_of};
pub use note::{BenchNotes, Note};
pub use picture::{Shown, StepPicture};
pub use prose::{Block, Brace, Inline, Level, Live};
pub use recipe::{
    Accept, Included, MOST_SIZES, Makes, Part, Preferment, Recipe, Section, Tin, Unread,
    Video,
};
pub use shaping::{Bend, Crescent, ShapedBy, Shaping, Strands};
pub use step::{
    Alternative, Bake, BakeDoes, BakePhase, CutPlan, Folding, Hold, LockIn, Meet, Pace,
    ProofPhase, Rolling, Shape, Span, Stand, Step, Thaw, Turn, Use, Wait,
};
pub use technique::{Demonstration, OwnFrame, OwnLine, OwnShape, Technique};
pub use translation::{
    TranslatedEntry, TranslatedOther, TranslatedPart, TranslatedText, Translation, Untold,
};
pub use way::{Change, InWay, Swap, Target};

/// The whole content folder, read.
#[derive(Clone, Debug, Default)]
pub struct Content {
    /// `course.yaml`; `None` where it could not be read.
    pub course: Option<Course>,
    /// The course's own ingredients, from `pantry.yaml`.
    pub pantry: Vec<PantryEntry>,
    /// Every recipe, by file name.
    pub recipes: Vec<Recipe>,
    /// Recipes that take themselves in: a line that names one of them names nothing, so
    /// that whoever follows what a recipe includes comes to an end.
    pub endless: Endless,
    /// Recipes in one of their ways that a class or a command asks for, and that have no page
    /// of their own.
    pub ways: Vec<Recipe>,
    /// Every technique, by file name.
    pub techniques: Vec<Technique>,
    /// Every class, by file name.
    pub classes: Vec<Class>,
    /// Every drawing below `media/`, as SVG text by its path.
    pub drawings: BTreeMap<String, String>,
    /// The words of the trade, from `glossary.yaml`, in order.
    pub glossary: Vec<Entry>,
    /// Its prose in further languages, in the order that the course names them.
    pub translations: Vec<Translation>,
    /// Every picture in the media folder, by file name.
    pub media: Vec<Medium>,
    /// What was noted at the bench, by recipe.
    pub notes: Vec<BenchNotes>,
    /// Files that are there and could not be read, by name without ending: a fault says
    /// why, and nothing else should say that they are missing.
    pub unread: Vec<String>,
}

impl Content {
    /// The families of type that the course asks for.
    pub fn families(&self) -> impl Iterator<Item = &Placed<String>> {
        let looks = self.course.iter().map(|course| &course.look);
        looks.flat_map(|look| look.text.iter().chain(&look.labels))
    }

    /// Finds the recipes that never end, once all are there.
    pub(crate) fn find_endless(&mut self) {
        self.endless = included::endless(&self.recipes);
    }

    /// The recipe in the file of this name, or in one of its ways.
    pub fn recipe(&self, name: &str) -> Option<&Recipe> {
        self.recipes.iter().chain(&self.ways).find(|recipe| recipe.name == name)
    }

    /// The class in the file of this name.
    pub fn class(&self, name: &str) -> Option<&Class> {
        self.classes.iter().find(|class| class.name == name)
    }

    /// Whether there is a file of this name that could not be read.
    pub fn is_unread(&self, name: &str) -> bool {
        self.unread.iter().any(|unread| unread == name)
    }
}
