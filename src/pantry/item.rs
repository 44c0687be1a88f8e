//! One ingredient, and what a number of it weighs.

use crate::fault::{Fault, Placed};
use crate::measure::{CupSet, Exact, Mass, Unit, exact};
use crate::model::{PantryEntry, Quantity};
use crate::read::amount_of;
use crate::said;
use crate::statement::Statement;

use super::law::{Allergen, Law};

/// How many nutrients are kept.
pub const NUTRIENTS: usize = 8;

/// Nutrients in 100 g: energy (kcal), protein, fat, saturated fat, carbohydrate, sugars,
/// fibre (g), sodium (mg). `None` where one is not known.
pub type Nutrients = [Option<Exact>; NUTRIENTS];

/// What kind of ingredient it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// Counts as flour in baker's percentages.
    Flour,
    /// A plain liquid, counted in hydration.
    Liquid,
    /// Solid dairy.
    Dairy,
    /// A fat.
    Fat,
    /// Egg or a part of it.
    Egg,
    /// Sugar or syrup.
    Sugar,
    /// Salt: measured within 2 %.
    Salt,
    /// Yeast and other leaveners: measured within 2 %.
    Leavener,
    /// Anything else.
    #[default]
    Other,
}

/// An ingredient that calculations and checks tell from others of its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// Water.
    Water,
    /// Yeast of any sort.
    Yeast,
    /// Egg that was made safe to eat raw.
    SafeEgg,
}

impl Role {
    /// The role of an ingredient of this name and kind.
    pub(super) fn of(name: &str, kind: Kind) -> Option<Self> {
        match kind {
            Kind::Liquid => (name == "water").then_some(Self::Water),
            Kind::Leavener => name.contains("yeast").then_some(Self::Yeast),
            Kind::Egg => name.contains("pasteurised").then_some(Self::SafeEgg),
            Kind::Flour
            | Kind::Dairy
            | Kind::Fat
            | Kind::Sugar
            | Kind::Salt
            | Kind::Other => None,
        }
    }
}

/// One ingredient.
#[derive(Clone, Debug, Default)]
pub struct Item {
    /// Its name, singular and in lower case.
    pub name: String,
    /// What it is called in the course's language; none where that is its name.
    pub shown: Option<String>,
    /// Its kind.
    pub kind: Kind,
    /// What it is by itself, where that matters; an ingredient of the course's own has it
    /// from its name, else from its like.
    pub role: Option<Role>,
    /// Measured portions.
    pub portions: Vec<Portion>,
    /// Grams a millilitre, where no portion gives it.
    pub density: Option<Exact>,
    /// Water in 100 g, in grams.
    pub water: Option<Exact>,
    /// Its allergens by their plain words, those of every law together; `None` where they are
    /// not known.
    pub allergens: Option<Vec<&'static str>>,
    /// Nutrients in 100 g.
    pub nutrients: Nutrients,
    /// Weight of one pack.
    pub pack: Option<Mass>,
    /// Price of one pack in the smallest unit of money.
    pub price_minor: Option<i64>,
    /// Whether its allergens stand on the instructor's word, who read them on the pack.
    pub read_on_pack: bool,
}

/// A measured portion: how many grams one cup, spoon or piece holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Portion {
    /// Grams in one US unit of volume.
    Volume(Unit, Exact),
    /// Grams in one piece of this name.
    Piece(String, Exact),
}

impl Item {
    /// What it is called in the course's language.
    pub fn title(&self) -> &str {
        self.shown.as_deref().unwrap_or(&self.name)
    }
}

impl Portion {
    /// Reads `1 cup = 125 g`.
    pub fn parse(text: &str) -> Option<Self> {
        let (portion, weight) = text.split_once('=')?;
        let (Quantity::Unit(weight, unit), "") = amount_of(weight.trim(), false)? else {
            return None;
        };
        let grams = weight * unit.grams()?;
        let (quantity, rest) = amount_of(portion.trim(), false)?;
        match quantity {
            Quantity::Unit(count, unit) if rest.is_empty() && count > exact(0, 1) => {
                unit.millilitres(CupSet::Us)?;
                Some(Self::Volume(unit, grams / count))
            }
            Quantity::Pieces(count, _) if count > exact(0, 1) && !rest.is_empty() => {
                Some(Self::Piece(rest.to_lowercase(), grams / count))
            }
            Quantity::Unit(..)
            | Quantity::Pieces(..)
            | Quantity::Sum(_)
            | Quantity::Batches(_) => None,
        }
    }
}

impl Item {
    /// Grams in one piece of this name.
    pub fn piece(&self, name: &str) -> Option<&Exact> {
        self.portions.iter().find_map(|portion| match portion {
            Portion::Piece(piece, grams) => (piece == name).then_some(grams),
            Portion::Volume(..) => None,
        })
    }

    /// Whether it is known to hold nothing of any law's list.
    pub fn is_free_of_allergens(&self) -> bool {
        self.allergens.as_ref().is_some_and(Vec::is_empty)
    }

    /// Whether it holds an allergen, by its plain word.
    pub fn holds(&self, word: &str) -> bool {
        self.allergens.iter().flatten().any(|held| *held == word)
    }

    /// What a law calls its allergens; `None` where they are not known.
    pub fn listed<'a>(&'a self, law: &'a Law) -> Option<Vec<&'a Allergen>> {
        self.allergens.as_ref().map(|words| law.allergens(words).collect())
    }

    /// Whether it is egg that was made safe to eat raw.
    pub fn is_pasteurised(&self) -> bool {
        self.role == Some(Role::SafeEgg)
    }

    /// Grams in one `unit` of volume of the set `cups`: the measured portion of that very
    /// unit if there is one (portions are measured in US units), else by density.
    /// `None` where nothing is known: a density is never guessed.
    pub fn volume(&self, unit: Unit, cups: CupSet) -> Option<Exact> {
        let measured = self.portions.iter().find_map(|portion| match portion {
            Portion::Volume(of, grams) => (*of == unit).then_some(grams),
            Portion::Piece(..) => None,
        });
        let same = unit.millilitres(cups)? == unit.millilitres(CupSet::Us)?;
        match measured {
            Some(grams) if same => Some(grams.clone()),
            _ => Some(unit.millilitres(cups)? * self.grams_a_millilitre()?),
        }
    }

    /// The density in g/ml: as stated, else from the largest measured volume.
    pub fn grams_a_millilitre(&self) -> Option<Exact> {
        if self.density.is_some() {
            return self.density.clone();
        }
        let volumes = self.portions.iter().filter_map(|portion| match portion {
            Portion::Volume(unit, grams) => Some((unit.millilitres(CupSet::Us)?, grams)),
            Portion::Piece(..) => None,
        });
        volumes
            .max_by(|a, b| a.0.cmp(&b.0))
            .map(|(millilitres, grams)| grams / millilitres)
    }

    /// How far a shown amount may be off: 2 % for salt and leaveners, else 3 %.
    pub fn tolerance(&self) -> Exact {
        match self.kind {
            Kind::Salt | Kind::Leavener => exact(2, 100),
            Kind::Flour
            | Kind::Liquid
            | Kind::Dairy
            | Kind::Fat
            | Kind::Egg
            | Kind::Sugar
            | Kind::Other => exact(3, 100),
        }
    }

    /// Takes over what a course says of the ingredient.
    pub(super) fn learn(&mut self, entry: &PantryEntry, faults: &mut Vec<Fault>) {
        for text in &entry.portions {
            self.learn_portion(text, faults);
        }
        if let Some(kind) = &entry.kind {
            match Kind::parse(&kind.value) {
                Some(kind) => self.kind = kind,
                None => faults.push(bad(kind, said!("example-kind"))),
            }
        }
        if let Some(allergens) = &entry.allergens {
            self.learn_allergens(allergens, faults);
            self.read_on_pack = entry.read_on_pack;
        }
        self.pack = entry.pack.clone().or(self.pack.take());
        self.price_minor = entry.price_minor.or(self.price_minor);
    }

    fn learn_portion(&mut self, text: &Placed<String>, faults: &mut Vec<Fault>) {
        if let Some(portion) = Portion::parse(&text.value) {
            self.portions.retain(|old| !old.same_unit(&portion));
            self.portions.push(portion);
        } else if let Some(density) = crate::read::density(&text.value) {
            self.portions.retain(|old| matches!(old, Portion::Piece(..)));
            self.density = Some(density);
        } else if !text.value.ends_with('=') {
            // What waits for its weight was said to be not filled in.
            faults.push(bad(text, said!("example-density")));
        }
    }

    fn learn_allergens(&mut self, said: &[Placed<String>], faults: &mut Vec<Fault>) {
        let mut allergens = Vec::new();
        for name in said {
            match super::law::allergen(&name.value) {
                Some(word) => allergens.push(word),
                None => {
                    let words = super::law::WORDS;
                    faults.push(bad(name, said!("example-allergens", words)));
                }
            }
        }
        self.allergens = Some(allergens);
    }
}

impl Portion {
    fn same_unit(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Volume(a, _), Self::Volume(b, _)) => a == b,
            (Self::Piece(a, _), Self::Piece(b, _)) => a == b,
            (Self::Volume(..), Self::Piece(..)) | (Self::Piece(..), Self::Volume(..)) => {
                false
            }
        }
    }
}

impl Kind {
    /// The kind that a word names.
    pub fn parse(word: &str) -> Option<Self> {
        Some(match word {
            "flour" => Self::Flour,
            "liquid" => Self::Liquid,
            "dairy" => Self::Dairy,
            "fat" => Self::Fat,
            "egg" => Self::Egg,
            "sugar" => Self::Sugar,
            "salt" => Self::Salt,
            "leavener" => Self::Leavener,
            "fruit" | "nut" | "seed" | "chocolate" | "spice" | "starch" | "other" => {
                Self::Other
            }
            _ => return None,
        })
    }
}

fn bad(text: &Placed<String>, example: Statement) -> Fault {
    let message = said!("pantry-unreadable", value = text.value);
    Fault::error("bad-value", &text.place, message)
        .help(said!("pantry-unreadable-help", example))
}

#[cfg(test)]
mod tests {
    use super::super::Pantry;
    use super::*;

    /// USDA SR28 WEIGHT.txt, NDB 20083, 01145, 02047: bread flour 1 cup = 137 g, butter
    /// 1 stick = 113 g, table salt 1 tsp = 6.0 g.
    #[test]
    fn portions_come_before_density() {
        let pantry = Pantry::built_in();
        let grams = |name: &str, unit| pantry.find(name)?.volume(unit, CupSet::Us);
        assert_eq!(grams("bread flour", Unit::Cup), Some(exact(137, 1)));
        assert_eq!(grams("fine salt", Unit::Teaspoon), Some(exact(6, 1)));
        let butter = pantry.find("butter").expect("butter");
        assert_eq!(butter.piece("stick"), Some(&exact(113, 1)));
        let metric = butter.volume(Unit::Cup, CupSet::Metric).expect("a weight");
        assert_eq!(
            metric,
            exact(250, 1) * exact(227, 1)
                / Unit::Cup.millilitres(CupSet::Us).expect("ml")
        );
    }

    #[test]
    fn nothing_is_guessed() {
        assert_eq!(Item::default().volume(Unit::Cup, CupSet::Us), None);
    }
}
