//! The ways in which one recipe is taught: swaps that its author names.

use crate::fault::{Place, Placed};

use super::AmountLine;

/// A swap by its name, with what it changes: `oat drink`.
#[derive(Clone, Debug)]
pub struct Swap {
    /// Its name, as written.
    pub name: Placed<String>,
    /// What it changes, in order.
    pub changes: Vec<Change>,
}

impl Swap {
    /// The lines that it brings in.
    pub fn lines(&self) -> impl Iterator<Item = &AmountLine> {
        self.changes.iter().filter_map(|change| match change {
            Change::Instead { line, .. } | Change::Beside { line, .. } => {
                Some(line.as_ref())
            }
            Change::Without(_) => None,
        })
    }
}

/// One thing that a swap changes.
#[derive(Clone, Debug)]
pub enum Change {
    /// `140 g oat drink for whole milk`: a line in place of another. Several may stand in
    /// place of one.
    Instead {
        /// The new line.
        line: Box<AmountLine>,
        /// What it stands in place of.
        of: Target,
    },
    /// `30 g water in dough`: a line more.
    Beside {
        /// The new line.
        line: Box<AmountLine>,
        /// The section that it goes into.
        section: Placed<String>,
    },
    /// `without walnuts`: an ingredient, or a step by its heading, that is left out.
    Without(Target),
}

/// What a change is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Target {
    /// An ingredient, one in a section (`butter in dough`), a section, or a step's heading, as
    /// written.
    pub name: String,
    /// Where it is said.
    pub place: Place,
}

/// What a recipe is a way of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InWay {
    /// The file name of the recipe as written.
    pub of: String,
    /// The names of its ways, in the order asked for.
    pub names: Vec<String>,
}
