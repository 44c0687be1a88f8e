//! What kind of thing is done in a plan.

use serde::Serialize;

/// What kind of thing is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// Attended work.
    Hands,
    /// An oven load.
    Bake,
    /// In class: the moment with which a wait begins.
    Moment,
    /// The instructor's work, which others watch.
    Demonstration,
    /// The moment at which a batch is done.
    Finish,
    /// At home: into a hold.
    Into,
    /// At home: out of a hold.
    Out,
    /// At home: to where a wait behind another begins.
    Move,
    /// Nobody's work: it rests or proofs. No activity is of this kind, a row by the clock is.
    Rest,
    /// In class: people arrive.
    Arrival,
    /// In class: something is told to everybody.
    Talk,
    /// In class: nobody works.
    Break,
    /// In class: what was made is tasted.
    Tasting,
    /// In class: everybody washes up.
    Washing,
    /// In class: a cold oven is switched on. Only rows are of this kind, and of the next.
    OvenOn,
    /// In class: an oven is set to another heat.
    OvenTo,
}

/// What a kind is to whoever reads a plan.
enum Sort {
    /// A step of the recipe that is worked at, shown or baked.
    Work,
    /// A moment, a move or a rest.
    Passing,
    /// Something that everybody does.
    Together(Together),
    /// An oven is set.
    Heating,
}

impl Kind {
    fn sort(self) -> Sort {
        match self {
            Self::Hands | Self::Bake | Self::Demonstration => Sort::Work,
            Self::Moment
            | Self::Finish
            | Self::Into
            | Self::Out
            | Self::Move
            | Self::Rest => Sort::Passing,
            Self::Arrival => Sort::Together(Together::Arrival),
            Self::Talk => Sort::Together(Together::Talk),
            Self::Break => Sort::Together(Together::Break),
            Self::Tasting => Sort::Together(Together::Tasting),
            Self::Washing => Sort::Together(Together::Washing),
            Self::OvenOn | Self::OvenTo => Sort::Heating,
        }
    }

    /// Whether a step of the recipe is worked at, shown or baked: no moment, move or rest.
    pub fn is_work(self) -> bool {
        matches!(self.sort(), Sort::Work)
    }

    /// What everybody does together beside the recipes, if it is that.
    pub fn together(self) -> Option<Together> {
        match self.sort() {
            Sort::Together(what) => Some(what),
            Sort::Work | Sort::Passing | Sort::Heating => None,
        }
    }

    /// Whether an oven is set: it may be, before a session opens.
    pub fn is_heating(self) -> bool {
        matches!(self.sort(), Sort::Heating)
    }

    /// Whether everybody does it together, beside the recipes.
    pub fn is_gathering(self) -> bool {
        self.together().is_some()
    }
}

/// What everybody does together beside the recipes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Together {
    /// People arrive.
    Arrival,
    /// Something is told to everybody.
    Talk,
    /// Nobody works.
    Break,
    /// What was made is tasted.
    Tasting,
    /// Everybody washes up.
    Washing,
}

impl Together {
    /// Whether it is not held up for who comes late.
    pub fn is_fixed(self) -> bool {
        match self {
            Self::Arrival | Self::Talk => true,
            Self::Break | Self::Tasting | Self::Washing => false,
        }
    }
}
