//! One taught class as written.

use jiff::civil::DateTime;

use crate::fault::{Place, Placed};
use crate::measure::{Duration, Exact, Mass};

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
    /// What the room has, in the singular: `mixer`, `oven`, `tray per oven`, `fridge tray` …
    pub kit: Vec<(Placed<String>, u32)>,
    /// Steps that are shown to everyone before they do them.
    pub demonstrate: Vec<Placed<String>>,
    /// From one use of a mixer or an oven to the next.
    pub changeover: Duration,
    /// What is begun begins at a multiple of so many minutes where it can be.
    pub grid: Placed<u32>,
    /// What is bought and weighed more than needed: 0.05 for 5 %.
    pub spare: Exact,
    /// What each baker brings along.
    pub bring: Vec<String>,
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

/// A kind of kit by one name, whether a ticket or a class writes of one or of several:
/// `mixers` and `trays per oven` are `mixer` and `tray per oven`.
pub fn one_of(kit: &str) -> String {
    let word = |word: &str| {
        let several = word.len() > 3 && word.ends_with('s') && !word.ends_with("ss");
        let es = ["ches", "shes", "xes", "sses"].iter().any(|end| word.ends_with(end));
        let less = if es { 2 } else { usize::from(several) };
        word[..word.len() - less].to_owned()
    };
    let words = kit.split_whitespace().map(|part| word(&part.to_lowercase()));
    words.collect::<Vec<_>>().join(" ")
}

impl Class {
    /// How many there are of a kind of kit; `None` where the class does not say.
    pub fn count(&self, kit: &str) -> Option<u32> {
        let kit = one_of(kit);
        self.kit.iter().find(|(name, _)| name.value == kit).map(|(_, count)| *count)
    }

    /// How many groups there are.
    pub fn groups(&self) -> u32 {
        self.bakers.value.div_ceil(self.together.max(1))
    }

    /// Bakers in one group, counted from 0: the last ones may be fewer.
    pub fn members(&self, group: u32) -> u32 {
        let before = group.saturating_mul(self.together);
        self.bakers.value.saturating_sub(before).min(self.together)
    }
}
