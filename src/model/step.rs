//! A step and the ticket under its heading.

use std::borrow::Cow;

use schemars::JsonSchema;
use serde::Serialize;

use crate::fault::{Place, Placed};
use crate::measure::{
    Duration, Exact, Length, Size, Temperature, TemperatureStep, exact,
};

use super::{
    Block, Brace, Divide, Goal, Inline, KitUse, Location, MixPhase, Shaping, Share,
    StepPicture,
};

/// One step of the method.
#[derive(Clone, Debug)]
pub struct Step {
    /// The heading made into a name: `first-turn`.
    pub name: String,
    /// The heading.
    pub title: Placed<String>,
    /// The day on which it is done, from 1, where a recipe takes more than one.
    pub day: Option<Placed<u64>>,
    /// The steps it waits for; `None` for the step above.
    pub after: Option<Vec<Placed<String>>>,
    /// Sections or ingredients that go in here.
    pub uses: Vec<Placed<Use>>,
    /// Kit it occupies.
    pub kit: Vec<KitUse>,
    /// Attended time.
    pub hands: Option<Placed<Span>>,
    /// The speeds of the mixer one after the other.
    pub mixing: Option<Box<Placed<Vec<MixPhase>>>>,
    /// What it is to reach, in the order written.
    pub goals: Vec<Placed<Goal>>,
    /// Unattended time.
    pub wait: Option<Placed<Wait>>,
    /// Where it waits.
    pub at_place: Option<Box<Placed<Location>>>,
    /// The temperature it waits at.
    pub at: Option<Placed<Temperature>>,
    /// The temperatures of a proof one after the other; none where it has one at most. `wait` is
    /// then all of it, and `at` is not said.
    pub proof: Vec<ProofPhase>,
    /// How long it may stay longer, and where.
    pub hold: Option<Box<Placed<Hold>>>,
    /// The rolled size: first the side that is stretched, and folded.
    pub sheet: Option<Box<Placed<Size>>>,
    /// Which way it is rolled.
    pub roll: Option<Placed<Rolling>>,
    /// How the fat is enclosed.
    pub lock_in: Option<Placed<LockIn>>,
    /// Whether the fat is outside and the dough within.
    pub inverted: bool,
    /// How the sheet is folded.
    pub turn: Option<Placed<Turn>>,
    /// How the sheet is cut.
    pub cut: Option<Box<Placed<CutPlan>>>,
    /// How the dough is divided.
    pub divide: Option<Box<Placed<Divide>>>,
    /// The part of a divided dough that it works on, where it is said.
    pub part: Option<Box<Placed<String>>>,
    /// How each piece is shaped.
    pub shape: Option<Box<Placed<Shaping>>>,
    /// Oven temperature and time.
    pub bake: Option<Box<Placed<Bake>>>,
    /// Oven temperature with a fan.
    pub fan: Option<Placed<Temperature>>,
    /// Pieces on one tray.
    pub per_tray: Option<Placed<u64>>,
    /// How many of them lie in each row along the tray; none where it is not said.
    pub tray_rows: Vec<u64>,
    /// Core temperature to reach.
    pub core: Option<Placed<Temperature>>,
    /// How it must be cooled, as written.
    pub cool: Option<Box<Placed<String>>>,
    /// How to tell that it is done: text, temperatures, lengths and sizes.
    pub until: Option<Vec<Inline<Brace>>>,
    /// The video to watch, by its name in the head.
    pub watch: Option<Box<Placed<String>>>,
    /// Pictures to look at.
    pub pictures: Vec<StepPicture>,
    /// Whether those pictures are printed too.
    pub printed: bool,
    /// Whether it may be left out.
    pub optional: bool,
    /// What mixing adds to the dough's temperature here, where it is not what the room's mixer
    /// adds.
    pub friction: Option<Placed<TemperatureStep>>,
    /// Where it says that the sheet is rolled in a sheeter.
    pub sheeter: Option<Place>,
    /// Other ways to do it, with other kit.
    pub others: Vec<Alternative>,
    /// The other kit whose own words these are, in a recipe as it is done with that.
    pub done_with: Option<String>,
    /// What is said to the student.
    pub prose: Vec<Block<Brace>>,
    /// The ticket.
    pub place: Place,
}

/// Another way to do a step: `by hand`.
#[derive(Clone, Debug)]
pub struct Alternative {
    /// Its name, as written.
    pub name: Placed<String>,
    /// The step done so.
    pub step: Box<Step>,
}

/// What a step uses.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Use {
    /// A section's or an ingredient's name, as written.
    pub name: String,
    /// How much of it.
    pub share: Share,
}

/// A time that may grow with the batch: `10 min + 20 s per piece`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Span {
    /// The time that is always needed; the lower end of a range.
    pub least: Duration,
    /// The upper end of a range; `least` where there is none.
    pub most: Duration,
    /// What is added for each piece or tray.
    pub pace: Option<Pace>,
}

/// Time that grows with the batch.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pace {
    /// For each piece.
    Piece(Duration),
    /// For each tray.
    Tray(Duration),
}

/// Unattended time and the range it may lie in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wait {
    /// As planned.
    pub usual: Duration,
    /// The shortest allowed.
    pub least: Duration,
    /// The longest allowed.
    pub most: Duration,
}

/// A part of a proof at one temperature.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProofPhase {
    /// The temperature around the dough.
    pub at: Temperature,
    /// How long.
    pub time: Wait,
    /// Where; the place before it where it is not said.
    pub place: Option<Location>,
}

/// How long something stands in one place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stand {
    /// Where, if it is said.
    pub place: Option<Location>,
    /// How long.
    pub time: Wait,
    /// Its temperatures in order; none where none is said.
    pub heats: Vec<Temperature>,
}

/// How long something may stay longer than its wait.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hold {
    /// At most so long.
    pub up_to: Duration,
    /// Where; the step's own place if not said.
    pub at_place: Option<Location>,
    /// How what was frozen thaws.
    pub thaw: Option<Thaw>,
}

/// How what was frozen thaws.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Thaw {
    /// How long.
    pub time: Wait,
    /// Where.
    pub place: Location,
}

/// How the fat is enclosed in the dough.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum LockIn {
    /// A block set diagonally on a square, four flaps over it: one fat layer.
    Envelope,
    /// Fat on two thirds, folded in three: two fat layers.
    Letter,
    /// Fat on the middle half, both ends folded over it to meet: one fat layer.
    Book,
}

/// How a sheet is folded: into how many parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn {
    /// Parts lying on one another after the turn: 2 to 12.
    pub parts: u32,
    /// Where the two ends of a book meet.
    pub meet: Meet,
}

/// A turn by what it is called: its number of parts has a name where bakers gave it one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(into = "String")]
#[schemars(with = "String")]
pub enum Folding {
    /// In two.
    Half,
    /// In three.
    Letter,
    /// In four: both ends to where they meet, then closed.
    Book,
    /// In another number of parts, over and over.
    Parts(u32),
}

/// Where the two ends of a book turn meet, from the sheet's left end: `over` parts of
/// `under`, of its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Meet {
    /// Parts from the left end.
    pub over: u32,
    /// Parts in the whole length; more than `over`.
    pub under: u32,
}

/// Which way a block is rolled, where its ticket says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rolling {
    /// A quarter turn from the rolling before: what is taken as done anyway.
    QuarterTurn,
    /// The same way as before the fold.
    SameWay,
}

/// How a sheet is cut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CutPlan {
    /// Pieces of one shape, laid out by the program.
    Shape(Shape),
    /// The author's own grid: strips along the long side, each cut across.
    Grid {
        /// Strips.
        strips: u32,
        /// Pieces in each strip.
        across: u32,
        /// Whether each piece is then cut from corner to corner.
        diagonal: bool,
    },
    /// Strips of a width, along the long side.
    Strips(Length),
}

/// A piece's shape.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Isosceles triangles, nested head to tail.
    Triangles {
        /// The side opposite the point.
        base: Length,
        /// From base to point.
        height: Length,
    },
    /// Rectangles.
    Rectangles(Size),
    /// Squares.
    Squares(Length),
    /// Rounds by their diameter.
    Rounds(Length),
}

/// Oven temperature and time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bake {
    /// The oven as the bake begins.
    pub oven: Temperature,
    /// How long in all, for one tray.
    pub time: Wait,
    /// Its phases in order, at least one.
    pub phases: Vec<BakePhase>,
}

/// A part of a bake at one heat.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BakePhase {
    /// The oven.
    pub oven: Temperature,
    /// The oven with a fan, where it is written so.
    pub fan: Option<Temperature>,
    /// How long.
    pub time: Wait,
    /// What is done in it, in the order written.
    pub does: Vec<BakeDoes>,
    /// So much longer by its looks: `5 min more if the creases are pale`.
    pub more: Option<(Duration, String)>,
}

/// What is done with an oven while something bakes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BakeDoes {
    /// Steam is let in.
    Steam,
    /// The door stands ajar, so that steam gets out.
    Door,
    /// The tray is turned round.
    Turn,
}

impl Bake {
    /// Whether the oven has to become hotter or cooler in it.
    pub fn changes_heat(&self) -> bool {
        self.phases.iter().any(|phase| phase.oven != self.oven)
    }
}

impl LockIn {
    /// Fat layers that the lock-in itself makes.
    pub fn fat_layers(self) -> u64 {
        match self {
            Self::Envelope | Self::Book => 1,
            Self::Letter => 2,
        }
    }

    /// The word for it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Envelope => "envelope",
            Self::Letter => "letter",
            Self::Book => "book",
        }
    }
}

impl Meet {
    /// In the middle: both ends are folded in alike.
    pub const MIDDLE: Self = Self { over: 1, under: 2 };

    /// The share of the sheet's length to the left of where they meet, 0 to 1.
    pub fn share(self) -> Exact {
        Exact::new(self.over.into(), self.under.max(1).into())
    }
}

impl Turn {
    /// A turn in so many parts, as usual: the ends of a book meet in the middle.
    pub const fn in_parts(parts: u32) -> Self {
        Self { parts, meet: Meet::MIDDLE }
    }

    /// What it is called.
    pub const fn folding(self) -> Folding {
        match self.parts {
            2 => Folding::Half,
            3 => Folding::Letter,
            4 => Folding::Book,
            parts => Folding::Parts(parts),
        }
    }
}

impl Folding {
    /// The word for it: `book`, `letter`, `half`, or the number of parts.
    pub fn word(self) -> String {
        match self {
            Self::Half => "half".into(),
            Self::Letter => "letter".into(),
            Self::Book => "book".into(),
            Self::Parts(parts) => format!("{parts}-part"),
        }
    }
}

impl From<Folding> for String {
    fn from(folding: Folding) -> Self {
        folding.word()
    }
}

/// A dough that stands no warmer than this, °C, is retarded: it may be left over night. Common
/// practice, no source.
const RETARDED: i64 = 10;

impl Wait {
    /// One after the other.
    pub fn sum<'a>(times: impl Iterator<Item = &'a Self>) -> Self {
        let none = Self {
            usual: Duration::zero(),
            least: Duration::zero(),
            most: Duration::zero(),
        };
        times.fold(none, |sum, time| Self {
            usual: sum.usual + time.usual.clone(),
            least: sum.least + time.least.clone(),
            most: sum.most + time.most.clone(),
        })
    }
}

impl Stand {
    /// Whether it is too cold there for the dough to go on by itself.
    fn is_retarded(&self) -> bool {
        let most = Temperature::celsius(exact(RETARDED, 1));
        !self.heats.is_empty() && self.heats.iter().all(|heat| *heat <= most)
    }
}

impl Step {
    /// Where it stands, one place after the other: what is next to itself in one place, at
    /// whatever temperatures, is one stand. None where it does not wait.
    pub fn stands(&self) -> Vec<Stand> {
        let place = self.at_place.as_ref().map(|place| place.value.clone());
        let Some(wait) = &self.wait else { return Vec::new() };
        if self.proof.is_empty() {
            let heats = self.at.iter().map(|at| at.value.clone()).collect();
            return vec![Stand { place, time: wait.value.clone(), heats }];
        }
        let mut stands: Vec<Stand> = Vec::new();
        for phase in &self.proof {
            let before = stands.last().map_or(&place, |stand| &stand.place).clone();
            let place = phase.place.clone().or(before);
            match stands.last_mut().filter(|stand| stand.place == place) {
                Some(stand) => {
                    stand.time = Wait::sum([&stand.time, &phase.time].into_iter());
                    stand.heats.push(phase.at.clone());
                }
                None => stands.push(Stand {
                    place,
                    time: phase.time.clone(),
                    heats: vec![phase.at.clone()],
                }),
            }
        }
        stands
    }

    /// The temperatures it waits at, in order.
    pub fn heats(&self) -> Vec<&Temperature> {
        let phases = self.proof.iter().map(|phase| &phase.at);
        self.at.iter().map(|at| &at.value).chain(phases).collect()
    }

    /// The step as it is in one of the places where it stands: worked at before the first, held
    /// after the last. What is retarded on the way may be left there over night.
    pub fn in_stand(&self, at: usize) -> Cow<'_, Self> {
        let mut stands = self.stands();
        if stands.len() < 2 || at >= stands.len() {
            return Cow::Borrowed(self);
        }
        let (last, stand) = (at + 1 == stands.len(), stands.swap_remove(at));
        let mut step = self.clone();
        if !last {
            let over_night = Hold { up_to: Duration::zero(), at_place: None, thaw: None };
            step.hold = step
                .wait
                .as_ref()
                .filter(|_| stand.is_retarded())
                .map(|wait| Box::new(Placed::new(over_night, wait.place.clone())));
        }
        if at > 0 {
            step.hands = None;
            step.kit.clear();
        }
        step.proof.clear();
        if let Some(wait) = &mut step.wait {
            step.at_place =
                stand.place.map(|place| Box::new(Placed::new(place, wait.place.clone())));
            wait.value = stand.time;
        }
        Cow::Owned(step)
    }

    /// Whether its kit is a mixer, by whatever name.
    pub fn needs_mixer(&self) -> bool {
        self.kit.iter().any(|kit| kit.kind.mixes())
    }

    /// Whether it has to do with the lamination.
    pub fn laminates(&self) -> bool {
        self.lock_in.is_some() || self.turn.is_some()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Half, letter (single) and book (double) turns fold in 2, 3 and 4; an envelope or a
    /// book encloses one layer of fat, a letter two: common practice, no source.
    #[test]
    fn turns_and_lock_ins_have_their_numbers() {
        let words = [2, 3, 4, 5].map(|parts| Turn::in_parts(parts).folding().word());
        assert_eq!(words, ["half", "letter", "book", "5-part"]);
        let kinds = [LockIn::Envelope, LockIn::Letter, LockIn::Book];
        assert_eq!(kinds.map(LockIn::fat_layers), [1, 2, 1]);
    }
}
