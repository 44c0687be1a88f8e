//! What was noted of a recipe at the bench, for its next edition.

use jiff::civil::Date;

use crate::fault::{Place, Placed};

/// The notes on one recipe: a plain text beside it.
#[derive(Clone, Debug)]
pub struct BenchNotes {
    /// The recipe's file name.
    pub recipe: String,
    /// The notes, in the order of the text.
    pub notes: Vec<Note>,
    /// The text.
    pub place: Place,
}

/// One note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// The day it was made.
    pub on: Date,
    /// What it says.
    pub text: Placed<String>,
    /// The day it was said to be taken up into the recipe.
    pub taken_up: Option<Date>,
}
