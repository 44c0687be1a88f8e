//! Kit and places: what the program knows of them, and the author's own words.

use std::cmp::Ordering;

/// Where something stands, by what it is and as it is written.
#[derive(Clone, Debug)]
pub struct Location {
    /// What place it is; two that are the same place are equal, however they are written.
    pub standing: Standing,
    /// The author's word for it, for print; nothing where it is the format's own, which is
    /// said in the language of what is printed.
    pub written: Option<String>,
}

/// A place that the program knows, or the author's own.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Standing {
    /// A proving basket.
    Basket,
    /// The bench.
    Bench,
    /// A room that is kept cold.
    ColdRoom,
    /// The counter.
    Counter,
    /// Where things freeze.
    Freezer,
    /// Where things keep cold.
    Fridge,
    /// An oven that is off.
    Oven,
    /// Where dough proofs, warm and damp.
    Proofer,
    /// A rack in the room.
    Rack,
    /// A place of the author's, in lower case, and how it keeps by its words.
    Own(String, Keeps),
}

/// How a place keeps what stands in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeps {
    /// As warm as the room, or warmer.
    Open,
    /// Cold: at 5 °C or so.
    Cold,
    /// Frozen.
    Frozen,
}

/// Kit that a ticket occupies and a class counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KitKind {
    /// Someone who teaches.
    Instructor,
    /// Room to roll out.
    BenchPlace,
    /// A mixer.
    Mixer,
    /// An oven.
    Oven,
    /// Trays that one oven takes.
    TrayPerOven,
    /// Trays that stand in a place.
    Trays(Location),
    /// Kit of the author's own, in the singular and in lower case, and whether it mixes.
    Own(String, bool),
}

/// Kit on a ticket.
#[derive(Clone, Debug)]
pub struct KitUse {
    /// How many.
    pub count: u32,
    /// Of what.
    pub kind: KitKind,
    /// The author's word for it, for print; nothing where it is the format's own, which is
    /// said in the language of what is printed.
    pub written: Option<String>,
}

/// Words in the singular, as English has it, and in lower case: `mixers` and `trays per
/// oven` are `mixer` and `tray per oven`.
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

impl Standing {
    /// The places that the program knows.
    pub const KNOWN: [Self; 9] = [
        Self::Basket,
        Self::Bench,
        Self::ColdRoom,
        Self::Counter,
        Self::Freezer,
        Self::Fridge,
        Self::Oven,
        Self::Proofer,
        Self::Rack,
    ];

    /// The word for it in the format, or the author's own.
    pub fn name(&self) -> &str {
        match self {
            Self::Basket => "basket",
            Self::Bench => "bench",
            Self::ColdRoom => "cold room",
            Self::Counter => "counter",
            Self::Freezer => "freezer",
            Self::Fridge => "fridge",
            Self::Oven => "oven",
            Self::Proofer => "proofer",
            Self::Rack => "rack",
            Self::Own(name, _) => name,
        }
    }

    /// How it keeps what stands in it.
    pub fn keeps(&self) -> Keeps {
        match self {
            Self::Basket | Self::Bench | Self::Counter => Keeps::Open,
            Self::Oven | Self::Proofer | Self::Rack => Keeps::Open,
            Self::ColdRoom | Self::Fridge => Keeps::Cold,
            Self::Freezer => Keeps::Frozen,
            Self::Own(_, keeps) => *keeps,
        }
    }
}

impl Location {
    /// The word for it in the recipe's text.
    pub fn word(&self) -> &str {
        self.written.as_deref().unwrap_or(self.standing.name())
    }

    /// Whether what stands there keeps cold, or is frozen.
    pub fn is_cold(&self) -> bool {
        match self.standing.keeps() {
            Keeps::Open => false,
            Keeps::Cold | Keeps::Frozen => true,
        }
    }

    /// Whether what stands there freezes.
    pub fn is_frozen(&self) -> bool {
        match self.standing.keeps() {
            Keeps::Open | Keeps::Cold => false,
            Keeps::Frozen => true,
        }
    }
}

impl KitUse {
    /// The word for it in the recipe's text, in the singular where it is the format's own.
    pub fn word(&self) -> String {
        self.written.clone().unwrap_or_else(|| self.kind.name())
    }
}

impl KitKind {
    /// What every class may count, whatever its recipes say.
    pub const COUNTED: [Self; 4] =
        [Self::Instructor, Self::Oven, Self::TrayPerOven, Self::BenchPlace];

    /// Its name in the format, or the author's own.
    pub fn name(&self) -> String {
        match self {
            Self::Instructor => "instructor".to_owned(),
            Self::BenchPlace => "bench place".to_owned(),
            Self::Mixer => "mixer".to_owned(),
            Self::Oven => "oven".to_owned(),
            Self::TrayPerOven => "tray per oven".to_owned(),
            Self::Trays(place) => format!("{} tray", place.standing.name()),
            Self::Own(name, _) => name.clone(),
        }
    }

    /// Whether dough is mixed in it.
    pub fn mixes(&self) -> bool {
        match self {
            Self::Mixer => true,
            Self::Own(_, mixes) => *mixes,
            Self::Instructor
            | Self::BenchPlace
            | Self::Oven
            | Self::TrayPerOven
            | Self::Trays(_) => false,
        }
    }

    /// The place that it is trays in.
    pub fn place(&self) -> Option<&Location> {
        match self {
            Self::Trays(place) => Some(place),
            Self::Instructor
            | Self::BenchPlace
            | Self::Mixer
            | Self::Oven
            | Self::TrayPerOven
            | Self::Own(..) => None,
        }
    }
}

impl PartialEq for Location {
    fn eq(&self, other: &Self) -> bool {
        self.standing == other.standing
    }
}

impl Eq for Location {}

impl PartialOrd for Location {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Location {
    fn cmp(&self, other: &Self) -> Ordering {
        self.standing.name().cmp(other.standing.name())
    }
}

impl PartialOrd for KitKind {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

/// By name, as lists print them.
impl Ord for KitKind {
    fn cmp(&self, other: &Self) -> Ordering {
        self.name().cmp(&other.name())
    }
}
