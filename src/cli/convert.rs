//! `tourier convert`: one quick answer, with the density it used.

use crate::measure::{CupSet, Exact, Mass, Temperature, Unit, exact};
use crate::model::Quantity;
use crate::pantry::{Item, Pantry};
use crate::read::{amount_of, temperature};
use crate::said;
use crate::statement::{Amount, Statement};

use super::args::ConvertArgs;
use super::{Call, Done, Stop, open};

/// Prints the amount in the unit wanted. The course's pantry is used where there is one.
pub(super) fn run(call: &Call, options: &ConvertArgs) -> Done {
    let edition =
        call.content.join("course.yaml").exists().then(|| open(call)).transpose()?;
    let built_in = Pantry::built_in();
    let (pantry, cups) = match &edition {
        Some((edition, _)) => (&edition.pantry, edition.book().cups()),
        None => (&built_in, CupSet::Us),
    };
    let answer =
        convert(&options.amount, options.unit.as_deref().unwrap_or(""), pantry, cups);
    call.say(&answer.map_err(|why| Stop::Use(why.said()))?)
}

/// Why there is no answer.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Unconverted {
    /// Nothing is said that it should become.
    IntoWhat(String),
    /// No unit has this word.
    NoUnit(String),
    /// No amount begins the text.
    Unreadable(String),
    /// The pantry has no such ingredient; perhaps the nearest is meant.
    Unknown { name: String, near: Option<String> },
    /// The way leads from weight to volume or back, and nothing is known of its density.
    NoDensity(Unit, String),
    /// No scale of temperatures has this word.
    NoScale(String),
}

impl Unconverted {
    fn said(&self) -> Statement {
        match self {
            Self::IntoWhat(text) => said!("convert-into-what", text),
            Self::NoUnit(unit) => said!("convert-no-unit", unit),
            Self::Unreadable(text) => said!("convert-unreadable", text),
            Self::Unknown { name, near: Some(near) } => {
                said!("convert-unknown", name, near)
            }
            Self::Unknown { name, near: None } => said!("unknown-ingredient", name),
            Self::NoDensity(unit, title) => {
                said!("no-density", unit = unit.word(), title)
            }
            Self::NoScale(wanted) => said!("convert-no-scale", wanted),
        }
    }
}

/// The answer in one line.
fn convert(
    text: &str,
    unit: &str,
    pantry: &Pantry,
    cups: CupSet,
) -> Result<Statement, Unconverted> {
    if let Some(degrees) = text.trim().strip_prefix("fan ").and_then(temperature) {
        let heat = plain_oven(&degrees, text, unit);
        return Ok(said!("convert-without-fan", text, heat));
    }
    if let Some(degrees) = temperature(text) {
        return between_ovens(text, &degrees, unit);
    }
    if unit.is_empty() {
        return Err(Unconverted::IntoWhat(text.to_owned()));
    }
    let wanted = Unit::parse(unit).ok_or_else(|| Unconverted::NoUnit(unit.to_owned()))?;
    let (quantity, name) = amount_of(text, text.contains(','))
        .ok_or_else(|| Unconverted::Unreadable(text.to_owned()))?;
    let name = name.trim();
    let found = match quantity {
        Quantity::Pieces(..) => pantry.find_pieces(name),
        Quantity::Unit(..) | Quantity::Sum(_) | Quantity::Batches(_) => {
            pantry.find(name).map(|item| (item, None))
        }
    };
    let item = found.as_ref().map(|(item, _)| *item);
    if item.is_none() && !name.is_empty() {
        let near = pantry.suggestions(name).into_iter().next().map(Into::into);
        return Err(Unconverted::Unknown { name: name.to_owned(), near });
    }
    let grams = weight(&quantity, found.as_ref(), cups);
    let millilitres = volume(&quantity, item, cups);
    let in_volume =
        matches!(&quantity, Quantity::Unit(_, unit) if unit.millilitres(cups).is_some());
    let found = (item, in_volume);
    let amount = answer(wanted, grams.as_ref(), millilitres.as_ref(), found, cups)
        .ok_or_else(|| Unconverted::NoDensity(wanted, name.to_owned()))?;
    let density =
        item.and_then(Item::grams_a_millilitre).filter(|_| crosses(&quantity, wanted));
    let density = density.map(|density| Amount::Number(density, 3));
    let places = if amount < exact(10, 1) { 2 } else { 1 };
    let (amount, unit) = (Amount::Number(amount, places), wanted.word());
    Ok(match density {
        Some(density) => said!("convert-answer-density", text, amount, unit, density),
        None => said!("convert-answer", text, amount, unit),
    })
}

/// An oven without the fan it was written with, in its own scale or the one wanted.
fn plain_oven(degrees: &Temperature, text: &str, wanted: &str) -> Amount {
    let scale = if wanted.is_empty() { text } else { wanted };
    in_scale(degrees.without_fan(), !scale.contains('F'))
}

fn in_scale(degrees: Temperature, celsius: bool) -> Amount {
    if celsius { Amount::Celsius(degrees) } else { Amount::Fahrenheit(degrees) }
}

/// An oven in the other scale, or with and without its fan.
fn between_ovens(
    text: &str,
    degrees: &Temperature,
    wanted: &str,
) -> Result<Statement, Unconverted> {
    let celsius = text.contains('C');
    match wanted.trim().trim_start_matches('°') {
        "C" | "F" => {
            let shown = in_scale(degrees.clone(), wanted.contains('C'));
            Ok(said!("convert-heat", heat = text, shown))
        }
        "fan" => {
            let heat = in_scale(degrees.with_fan(), celsius);
            Ok(said!("convert-with-fan", text, heat))
        }
        "no fan" => {
            let heat = in_scale(degrees.without_fan(), celsius);
            Ok(said!("convert-from-fan", text, heat))
        }
        _ => Err(Unconverted::NoScale(wanted.to_owned())),
    }
}

/// Whether the way leads from weight to volume or back.
fn crosses(quantity: &Quantity, wanted: Unit) -> bool {
    match quantity {
        Quantity::Unit(_, unit) => unit.grams().is_some() != wanted.grams().is_some(),
        Quantity::Sum(terms) => terms
            .iter()
            .any(|(_, unit)| unit.grams().is_some() != wanted.grams().is_some()),
        Quantity::Pieces(..) | Quantity::Batches(_) => false,
    }
}

fn weight(
    quantity: &Quantity,
    found: Option<&(&Item, Option<String>)>,
    cups: CupSet,
) -> Option<Mass> {
    let in_unit = |(count, unit): &(Exact, Unit)| {
        let grams = unit.grams().or_else(|| found?.0.volume(*unit, cups))?;
        Some(Mass::grams(count * grams))
    };
    match quantity {
        Quantity::Unit(count, unit) => in_unit(&(count.clone(), *unit)),
        Quantity::Sum(terms) => terms.iter().map(in_unit).sum(),
        Quantity::Pieces(count, _) => {
            let (item, piece) = found?;
            let grams = item.piece(piece.as_deref().unwrap_or("each"))?;
            Some(Mass::grams(count * grams))
        }
        Quantity::Batches(_) => None,
    }
}

fn volume(quantity: &Quantity, item: Option<&Item>, cups: CupSet) -> Option<Exact> {
    let in_unit = |(count, unit): &(Exact, Unit)| match unit.millilitres(cups) {
        Some(millilitres) => Some(count * millilitres),
        None => {
            let density =
                item?.grams_a_millilitre().filter(|density| !density.is_zero())?;
            Some(count * unit.grams()? / density)
        }
    };
    match quantity {
        Quantity::Unit(count, unit) => in_unit(&(count.clone(), *unit)),
        Quantity::Sum(terms) => terms.iter().map(in_unit).sum(),
        Quantity::Pieces(..) | Quantity::Batches(_) => None,
    }
}

fn answer(
    wanted: Unit,
    grams: Option<&Mass>,
    millilitres: Option<&Exact>,
    (item, in_volume): (Option<&Item>, bool),
    cups: CupSet,
) -> Option<Exact> {
    if let Some(unit) = wanted.grams() {
        return Some(grams?.amount() / unit);
    }
    let unit = wanted.millilitres(cups)?;
    // From one volume to another nothing is weighed.
    if let (true, Some(millilitres)) = (in_volume, millilitres) {
        return Some(millilitres / unit);
    }
    if let (Some(grams), Some(each)) =
        (grams, item.and_then(|item| item.volume(wanted, cups)))
    {
        return Some(grams.amount() / each);
    }
    Some(millilitres? / unit)
}

#[cfg(test)]
mod tests {
    use super::super::english;
    use super::*;

    fn told(answer: Result<Statement, Unconverted>) -> Result<String, String> {
        let words = english();
        answer.map(|said| words.tell(&said)).map_err(|why| words.tell(&why.said()))
    }

    /// USDA SR28 NDB 20083: 1 cup of bread flour = 137 g; NDB 01123: 1 large egg = 50 g.
    #[test]
    fn answers_name_the_density() {
        let pantry = Pantry::built_in();
        let say = |text: &str, unit: &str| told(convert(text, unit, &pantry, CupSet::Us));
        assert_eq!(
            say("2 cups bread flour", "g").as_deref(),
            Ok("2 cups bread flour = 274 g (0.579 g/ml)")
        );
        assert_eq!(say("2 large eggs", "g").as_deref(), Ok("2 large eggs = 100 g"));
        assert_eq!(say("1 lb", "g").as_deref(), Ok("1 lb = 453.6 g"));
        assert_eq!(say("1 l", "cup").as_deref(), Ok("1 l = 4.23 cup"));
        assert!(
            say("1 cup bread flower", "g").is_err_and(|why| why.contains("bread flour"))
        );
        assert!(say("1 cup baker's dust", "g").is_err());
    }

    /// NIST Handbook 44, Appendix C: 1 cup = 16 tbsp = 236.588 ml, whatever is in it.
    #[test]
    fn from_volume_to_volume_is_exact() {
        let pantry = Pantry::built_in();
        let say = |text: &str, unit: &str| told(convert(text, unit, &pantry, CupSet::Us));
        assert_eq!(say("1 cup milk", "tbsp").as_deref(), Ok("1 cup milk = 16 tbsp"));
        let water = say("1.5 cups water", "ml");
        assert_eq!(water.as_deref(), Ok("1.5 cups water = 354.9 ml"));
        assert_eq!(say("3 tsp honey", "tbsp").as_deref(), Ok("3 tsp honey = 1 tbsp"));
    }

    /// NIST SP 811 B.8: 375 °F are 190.6 °C; a fan oven is about 20 °C cooler: New South
    /// Wales Government conversion chart.
    #[test]
    fn ovens_both_ways() {
        let pantry = Pantry::built_in();
        let say = |text: &str, unit: &str| told(convert(text, unit, &pantry, CupSet::Us));
        assert_eq!(say("375 °F", "°C").as_deref(), Ok("375 °F = 191 °C"));
        assert_eq!(say("190 °C", "F").as_deref(), Ok("190 °C = 374 °F"));
        assert_eq!(say("190 °C", "fan").as_deref(), Ok("190 °C = 170 °C with a fan"));
        assert_eq!(say("375 °F", "fan").as_deref(), Ok("375 °F = 339 °F with a fan"));
        assert_eq!(say("170 °C", "no fan").as_deref(), Ok("170 °C with a fan = 190 °C"));
        assert_eq!(
            say("fan 170 °C", "").as_deref(),
            Ok("fan 170 °C = 190 °C without a fan")
        );
        assert_eq!(
            say("fan 170 °C", "F").as_deref(),
            Ok("fan 170 °C = 374 °F without a fan")
        );
        assert!(say("190 °C", "g").is_err());
        assert!(say("2 cups bread flour", "").is_err());
    }
}
