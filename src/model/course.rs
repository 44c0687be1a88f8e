//! The course and its own ingredients.

use crate::fault::{Place, Placed};
use crate::measure::{CupSet, Exact, Length, Mass, Size, Temperature, TemperatureStep};

use super::{Block, Brace};

/// `course.yaml`.
#[derive(Clone, Debug)]
pub struct Course {
    /// The course's title.
    pub title: String,
    /// Who gives it.
    pub school: Option<String>,
    /// Who teaches it.
    pub instructor: Option<String>,
    /// What it is about, in a sentence or two.
    pub summary: String,
    /// Language tag (BCP 47) of all text.
    pub language: String,
    /// Where it is said.
    pub language_place: Option<Place>,
    /// The edition's name: `Spring 2027`.
    pub edition: Option<String>,
    /// The edition's date, ISO 8601.
    pub date: Option<String>,
    /// Where the site will stand, ending in a slash.
    pub address: Option<String>,
    /// The folder of the edition before, below the content folder.
    pub since: Option<Placed<String>>,
    /// Whether metric comes first.
    pub metric_first: bool,
    /// Whether lists on paper show the other units beside the first.
    pub both_units: bool,
    /// Whether A4 comes first (else US Letter).
    pub a4_first: bool,
    /// ISO 4217 code for prices.
    pub currency: String,
    /// Whether there is a scale that shows 0.1 g.
    pub fine_scale: bool,
    /// Which cups and spoons are used.
    pub cups: CupSet,
    /// Which sizes `small`, `medium` and `large` eggs have.
    pub eggs: EggClasses,
    /// What bare names mean: `flour` by `all-purpose flour`.
    pub means: Vec<(Placed<String>, Placed<String>)>,
    /// How high the classroom lies above the sea.
    pub altitude: Option<Length>,
    /// The laws by which allergens are declared, by key; none where the course does not say.
    pub laws: Vec<Placed<String>>,
    /// Whether hydration counts the water in milk, eggs and butter.
    pub true_hydration: bool,
    /// What the classroom has.
    pub kit: Kit,
    /// The room's temperatures.
    pub room: Room,
    /// Further languages that it is to be had in.
    pub also_in: Vec<AlsoIn>,
    /// The language that it is written in, where this is an edition in another one.
    pub first_language: Option<String>,
    /// The time zone by its name in the IANA database; `None` where times are only local.
    pub time_zone: Option<String>,
    /// When bakers at home are up: minutes of the day, from and to.
    pub awake: (i32, i32),
    /// Density of dough without its roll-in fat, g/ml.
    pub dough_density: Exact,
    /// Lessons in order.
    pub lessons: Vec<Lesson>,
    /// House cautions, shown on every page and sheet.
    pub cautions: Vec<String>,
    /// How its handouts look.
    pub look: Look,
    /// What is new, newest first.
    pub news: Vec<News>,
    /// Whether the site can be kept on a phone and read with no connection.
    pub offline: bool,
    /// Whether run sheets, orders and prices of classes stand on the site.
    pub papers_on_site: bool,
    /// The file.
    pub place: Place,
}

/// The course's own look, laid over its theme.
#[derive(Clone, Debug, Default)]
pub struct Look {
    /// The colour of rules, badges and links: red, green, blue.
    pub accent: Option<Placed<[u8; 3]>>,
    /// A drawing below the content folder: `media/house.svg`.
    pub logo: Option<Placed<String>>,
    /// The typeface family of running text on paper.
    pub text: Option<Placed<String>>,
    /// The typeface family of labels and tables on paper.
    pub labels: Option<Placed<String>>,
}

/// Whose sizes of egg are meant by their words.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum EggClasses {
    /// US: small, medium, large, extra large, jumbo.
    #[default]
    Us,
    /// EU: small, medium, large, extra large, in shells of other weights.
    Eu,
}

/// What the classroom has.
#[derive(Clone, Debug, Default)]
pub struct Kit {
    /// The dough that one mixer holds.
    pub mixer: Option<Mass>,
    /// The bench for one sheet, long side first.
    pub bench: Option<Size>,
    /// One oven tray, long side first.
    pub tray: Option<Size>,
    /// Trays that one oven takes.
    pub trays_per_oven: Option<u32>,
}

/// The room's temperatures, for the water calculation.
#[derive(Clone, Debug, Default)]
pub struct Room {
    /// The air.
    pub air: Option<Temperature>,
    /// The flour; the air's where not said.
    pub flour: Option<Temperature>,
    /// Cold water from the tap.
    pub tap: Option<Temperature>,
    /// What mixing adds: a difference.
    pub friction: Option<TemperatureStep>,
}

/// A further language of a course.
#[derive(Clone, Debug)]
pub struct AlsoIn {
    /// Its tag.
    pub language: Placed<String>,
    /// The recipes and techniques that are to be had in it; all where none is named.
    pub only: Vec<Placed<String>>,
}

/// One thing that is new.
#[derive(Clone, Debug)]
pub struct News {
    /// Since when, ISO 8601.
    pub date: String,
    /// What, as written.
    pub text: String,
    /// What.
    pub content: Vec<Block<Brace>>,
    /// Where the links in it lead, as written.
    pub links: Vec<Placed<String>>,
}

/// One lesson of the course.
#[derive(Clone, Debug)]
pub struct Lesson {
    /// Its title.
    pub title: String,
    /// What it is about.
    pub summary: String,
    /// Recipes by file name.
    pub recipes: Vec<Placed<String>>,
    /// Techniques by file name.
    pub techniques: Vec<Placed<String>>,
}

/// One ingredient of `pantry.yaml`. What is not said is taken from `like`.
#[derive(Clone, Debug)]
pub struct PantryEntry {
    /// Its name.
    pub name: Placed<String>,
    /// The ingredient it resembles.
    pub like: Option<Placed<String>>,
    /// Other names.
    pub also: Vec<String>,
    /// The kind of ingredient, as the built-in pantry names kinds.
    pub kind: Option<Placed<String>>,
    /// Grams a millilitre, or a measured portion: `0.46 g/ml`, `1 tbsp = 6.8 g`.
    pub portions: Vec<Placed<String>>,
    /// Its allergens, an empty list for `none`; `None` where nothing was said.
    pub allergens: Option<Vec<Placed<String>>>,
    /// Whether they were read on the pack, whatever its name says.
    pub read_on_pack: bool,
    /// Weight of one pack.
    pub pack: Option<Mass>,
    /// Price of one pack, in the currency's smallest unit.
    pub price_minor: Option<i64>,
}
