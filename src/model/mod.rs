//! What an instructor wrote, as plain data in which every value knows its place.
//!
//! Nothing here has been judged yet: a recipe may still be wrong in a hundred ways. The
//! readers fill these types, the checks and calculations take them.

use std::collections::BTreeMap;

mod amount;
mod class;
mod course;
mod divide;
mod glossary;
mod picture;
mod prose;
mod recipe;
mod shaping;
mod step;
mod technique;

use crate::fault::Placed;
use crate::media::Medium;

pub use amount::{Amount, AmountLine, Ingredient, Purpose, Quantity, Share};
pub use class::{Class, Each, Making, Much, Session, one_of};
pub use course::{Course, EggClasses, Kit, Lesson, Look, News, PantryEntry, Room};
pub use divide::{Divide, Portion, Portioned};
pub use glossary::Entry;
pub use picture::Shown;
pub use prose::{Block, Brace, Inline, Live};
pub use recipe::{
    Accept, Included, Makes, Part, Preferment, Recipe, Section, Tin, Unread, Video,
};
pub use shaping::{Bend, Crescent, Shaping, Strands};
pub use step::{
    Bake, CutPlan, Hold, LockIn, Meet, Pace, Rolling, Shape, Span, Step, Turn, Use,
    UseShare, Wait,
};
pub use technique::{Demonstration, Line, OwnFrame, OwnShape, Technique};

/// The whole content folder, read.
#[derive(Clone, Debug, Default)]
pub struct Content {
    /// `course.yaml`; `None` where it could not be read.
    pub course: Option<Course>,
    /// The course's own ingredients, from `pantry.yaml`.
    pub pantry: Vec<PantryEntry>,
    /// Every recipe, by file name.
    pub recipes: Vec<Recipe>,
    /// Every technique, by file name.
    pub techniques: Vec<Technique>,
    /// Every class, by file name.
    pub classes: Vec<Class>,
    /// Every drawing below `media/`, as SVG text by its path.
    pub drawings: BTreeMap<String, String>,
    /// The words of the trade, from `glossary.yaml`, in order.
    pub glossary: Vec<Entry>,
    /// Every picture in the media folder, by file name.
    pub media: Vec<Medium>,
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

    /// The recipe in the file of this name.
    pub fn recipe(&self, name: &str) -> Option<&Recipe> {
        self.recipes.iter().find(|recipe| recipe.name == name)
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
