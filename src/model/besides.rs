//! What a class has beside its recipes: who comes late, what everybody does together, how
//! fast hands are, and how long things take to be handed on.

use crate::fault::{Place, Placed};
use crate::measure::{Duration, Exact, exact};

use super::kit::KitKind;

/// What a class has beside its recipes.
#[derive(Clone, Debug, Default)]
pub struct Besides {
    /// For so long nobody works when a day opens: people arrive.
    pub arrival: Option<Duration>,
    /// Groups that come later on each day.
    pub late: Vec<Late>,
    /// When something is told to everybody.
    pub talks: Vec<Talk>,
    /// When nobody works.
    pub breaks: Vec<Break>,
    /// How long what was made is tasted, when all of it is done.
    pub tasting: Option<Duration>,
    /// How long everybody washes up, after the last work of each session.
    pub washing: Option<Duration>,
    /// How long a cold oven takes until it is hot.
    pub preheat: Option<Duration>,
    /// How long an oven takes from one heat to another.
    pub reheat: Option<Duration>,
    /// How fast hands are.
    pub pace: HandsPace,
    /// How many help the instructor.
    pub helpers: u32,
    /// What stays free at the end of each session.
    pub slack: Option<Placed<Duration>>,
}

/// Groups that come later than the others.
#[derive(Clone, Debug)]
pub struct Late {
    /// Their numbers, from 0: first and last.
    pub groups: (u32, u32),
    /// By how much.
    pub by: Duration,
    /// Where it is written.
    pub place: Place,
}

/// Something that is told to everybody.
#[derive(Clone, Debug)]
pub struct Talk {
    /// How long.
    pub lasts: Duration,
    /// Before which step; when the class opens where it does not say.
    pub before: Option<Placed<String>>,
    /// Where it is written.
    pub place: Place,
}

/// A break.
#[derive(Clone, Debug)]
pub struct Break {
    /// How long.
    pub lasts: Duration,
    /// When.
    pub when: When,
    /// Where it is written.
    pub place: Place,
}

/// When a break is held: hours and minutes of each day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// It begins then.
    At(i8, i8),
    /// It lies between two times.
    Between((i8, i8), (i8, i8)),
    /// In the middle half of each session.
    Middle,
}

/// How fast hands are: 1 for the recipe's own time, 1.5 for half as long again.
#[derive(Clone, Debug)]
pub struct HandsPace {
    /// At every step that is not named.
    pub usual: Exact,
    /// At these.
    pub steps: Vec<(Placed<String>, Exact)>,
}

impl Default for HandsPace {
    fn default() -> Self {
        Self { usual: exact(1, 1), steps: Vec::new() }
    }
}

impl HandsPace {
    /// How long work takes that the recipe gives so much time.
    pub fn of(&self, step: &str, hands: &Duration) -> Duration {
        let own = self.steps.iter().find(|(name, _)| name.value == step);
        let times = own.map_or(&self.usual, |(_, times)| times);
        hands * times
    }
}

/// How long it takes to hand things on to those who use them next.
#[derive(Clone, Debug)]
pub struct Changeover {
    /// A thing that is not named.
    pub usual: Duration,
    /// These kinds of kit.
    pub kit: Vec<(Placed<KitKind>, Duration)>,
}

impl Changeover {
    /// How long it takes with a kind of kit.
    pub fn of(&self, kit: &KitKind) -> &Duration {
        self.named(kit).unwrap_or(&self.usual)
    }

    /// How long it takes with a kind of kit that is named.
    pub fn named(&self, kit: &KitKind) -> Option<&Duration> {
        self.kit.iter().find(|(known, _)| known.value == *kit).map(|(_, time)| time)
    }
}
