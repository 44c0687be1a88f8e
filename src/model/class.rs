//! One taught class as written.

use jiff::civil::DateTime;

use crate::fault::{Place, Placed};
use crate::measure::{Exact, Mass};

use super::besides::{Besides, Changeover};
use super::kit::KitKind;
use super::prose::Level;

/// One file of `classes/`.
#[derive(Clone, Debug)]
pub struct Class {
    /// The file's name without ending.
    pub name: String,
    /// Its title.
    pub title: Placed<String>,
    /// When the class is held, as written.
    pub sessions: Vec<Placed<Session>>,
    /// How many bakers come.
    pub bakers: Placed<u32>,
    /// How many bakers work together: 2 for pairs.
    pub together: u32,
    /// What is made.
    pub makes: Vec<Making>,
    /// What the room has.
    pub kit: Vec<(Placed<KitKind>, u32)>,
    /// Steps that are shown to everyone before they do them.
    pub demonstrate: Vec<Placed<String>>,
    /// From one use of a mixer or an oven to the next.
    pub changeover: Changeover,
    /// What the class has beside its recipes.
    pub besides: Besides,
    /// What is begun begins at a multiple of so many minutes where it can be.
    pub grid: Placed<u32>,
    /// What is bought and weighed more than needed: 0.05 for 5 %.
    pub spare: Exact,
    /// What each baker brings along.
    pub bring: Vec<String>,
    /// To whom its sheets say more than to all.
    pub levels: Vec<Level>,
    /// What need not be bought.
    pub shelf: Vec<(Placed<String>, Mass)>,
    /// Whether a line of it could not be read: a fault says so, and nothing that would only
    /// follow from it is said.
    pub unread: bool,
    /// The file.
    pub place: Place,
}

/// One session: local times.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Session {
    /// When it opens.
    pub from: DateTime,
    /// When it closes, later than `from`.
    pub to: DateTime,
}

/// One recipe that is made in class.
#[derive(Clone, Debug)]
pub struct Making {
    /// The recipe's file name.
    pub recipe: Placed<String>,
    /// The ways in which it is made.
    pub with: Vec<Placed<String>>,
    /// Who makes it.
    pub each: Each,
    /// How much.
    pub much: Much,
    /// The place of the whole entry.
    pub place: Place,
}

/// Who makes a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Each {
    /// Every group.
    Group,
    /// Every baker for themselves, at the group's bench.
    Baker,
    /// The instructor, for all to see.
    Demonstration,
}

/// How much of a recipe is made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Much {
    /// So many pieces.
    Pieces(u64),
    /// So many batches.
    Batches(Exact),
}

impl Class {
    /// How many there are of a kind of kit; `None` where the class does not say.
    pub fn count(&self, kit: &KitKind) -> Option<u32> {
        self.kit.iter().find(|(known, _)| known.value == *kit).map(|(_, count)| *count)
    }

    /// How many groups there are.
    pub fn groups(&self) -> u32 {
        self.bakers.value.div_ceil(self.together.max(1))
    }

    /// By how many minutes a group, counted from 0, comes later than the class opens.
    pub fn late(&self, group: u32) -> u64 {
        let own = self.besides.late.iter();
        let own = own.filter(|late| (late.groups.0..=late.groups.1).contains(&group));
        own.map(|late| late.by.whole_minutes()).max().unwrap_or(0)
    }

    /// Bakers in one group, counted from 0: the last ones may be fewer.
    pub fn members(&self, group: u32) -> u32 {
        let before = group.saturating_mul(self.together);
        self.bakers.value.saturating_sub(before).min(self.together)
    }
}
