//! What the program worked out: layers and sheets, times, water, nutrients.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::draw::FigureKind;
use crate::measure::Unit;
use crate::measure::show::{self, Notation, Sign};
use crate::sheet::{self, Folding, NutrientWords, Nutrients, Sheet};
use crate::words::Words;

use crate::site::Input;
use crate::site::figure::Drawing;
use crate::site::html::Html;
use crate::site::vary::Batches;

use super::formula::percent;

/// The lamination.
#[derive(Serialize)]
pub(super) struct LaminationView<'a> {
    /// Whether layers of fat are counted; where the fat is mixed in there are none.
    layered: bool,
    fat_layers: Html,
    merged: Html,
    every_ply: Html,
    /// Roll-in fat over dough.
    fat: Html,
    /// The turns in words, in order.
    turns: Vec<String>,
    sheets: Vec<Rolled<'a>>,
}

/// One rolled sheet.
#[derive(Serialize)]
struct Rolled<'a> {
    step: &'a str,
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
    size: Html,
    thickness: Html,
    fat_layers: u64,
}

/// The water for the dough.
#[derive(Serialize)]
pub(super) struct Water {
    desired: Html,
    water: Html,
    ice: Html,
}

/// The times.
#[derive(Serialize)]
pub(super) struct Timeline<'a> {
    drawings: Vec<Drawing>,
    steps: Vec<Moment<'a>>,
    /// The times of day to have it ready at.
    ready: Vec<Choice>,
    /// The classes of what shows at any of them.
    clocks: String,
}

/// One time of day to have it ready at.
#[derive(Serialize)]
struct Choice {
    /// Its hour of the day.
    #[serde(skip)]
    hour: u64,
    /// What it is chosen by: `ready-18`.
    key: String,
    /// The time.
    at: String,
    /// Whether there are sizes at which somebody would have to work at night.
    nights: bool,
    /// The classes that show something at those sizes; empty for all.
    classes: String,
}

/// One step in time.
#[derive(Serialize)]
struct Moment<'a> {
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
    /// The title of the recipe it belongs to, where it is another one.
    recipe: Option<&'a str>,
    start: Html,
    hands: Html,
    wait: Html,
    place: Option<&'a str>,
}

/// One nutrient.
#[derive(Serialize)]
pub(super) struct Nutrient {
    /// Its word's key.
    key: &'static str,
    /// In one piece; empty for a base dough.
    piece: Html,
    /// In 100 g.
    per_100_g: Html,
}

/// The lamination at every size.
pub(super) fn lamination<'a>(
    words: &Words,
    sheet: &'a Sheet,
    batches: &Batches,
) -> Option<LaminationView<'a>> {
    let own = sheet.lamination.as_ref()?;
    let count = |read: fn(&sheet::Lamination) -> Option<u64>| {
        batches.text(|at| read(at.lamination.as_ref()?).map(|count| count.to_string()))
    };
    Some(LaminationView {
        layered: own.fat_layers.is_some(),
        fat_layers: count(|at| at.fat_layers),
        merged: count(|at| at.layers_merged),
        every_ply: count(|at| Some(at.layers_unmerged)),
        fat: batches.text(|at| {
            Some(percent(at.lamination.as_ref()?.fat_percent_of_dough?, words))
        }),
        turns: own.turns.iter().map(|turn| turn_word(words, *turn)).collect(),
        sheets: rolled(sheet, own, batches),
    })
}

/// A turn's name in the course's language.
fn turn_word(words: &Words, turn: Folding) -> String {
    match turn {
        Folding::Half | Folding::Letter | Folding::Book => {
            words.get(&format!("turn-{}", turn.word())).to_owned()
        }
        Folding::Parts(parts) => {
            words.fill("page-turn-parts", &[("number", &parts.to_string())])
        }
    }
}

fn rolled<'a>(
    all: &'a Sheet,
    own: &'a sheet::Lamination,
    batches: &Batches,
) -> Vec<Rolled<'a>> {
    fn at(sheet: &Sheet, index: usize) -> Option<&sheet::SheetFact> {
        sheet.lamination.as_ref()?.sheets.get(index)
    }
    let sheets = own.sheets.iter().enumerate();
    sheets
        .map(|(index, sheet)| Rolled {
            step: &sheet.step,
            title: &sheet.title,
            title_in: all.step_in(&sheet.step),
            size: batches.label(|one| at(one, index).map(|sheet| &sheet.size)),
            thickness: batches.label(|one| at(one, index).map(|sheet| &sheet.thickness)),
            fat_layers: sheet.fat_layers,
        })
        .collect()
}

/// The water for the dough, where the recipe says how warm it should be.
pub(super) fn water(batches: &Batches) -> Option<Water> {
    batches.sheets.iter().any(|sheet| sheet.water.is_some()).then(|| Water {
        desired: batches.label(|sheet| Some(&sheet.water.as_ref()?.desired)),
        water: batches.label(|sheet| Some(&sheet.water.as_ref()?.water)),
        ice: batches.label(|sheet| sheet.water.as_ref()?.ice.as_ref()),
    })
}

/// When what happens, at every size.
pub(super) fn timeline<'a>(
    input: &Input<'a>,
    sheet: &'a Sheet,
    batches: &Batches,
    drawings: &[Drawing],
) -> Timeline<'a> {
    let steps = sheet.time.steps.iter().enumerate();
    let minutes = |index: usize, read: fn(&sheet::StepTime) -> u64| {
        batches.text(|at| {
            at.time.steps.get(index).map(|step| show::minutes(read(step), input.words))
        })
    };
    let ready = choices(batches);
    let moment = |(index, step): (usize, &'a sheet::StepTime)| Moment {
        title: &step.title,
        title_in: Some(step)
            .filter(|step| step.recipe == sheet.recipe)
            .and_then(|step| sheet.step_in(&step.step)),
        recipe: (step.recipe != sheet.recipe)
            .then(|| other(input, &step.recipe))
            .flatten(),
        start: starts(&minutes(index, |step| step.start_min), index, &ready, batches),
        hands: shown(step.hands_min, minutes(index, |step| step.hands_min)),
        wait: shown(step.wait_min[0], minutes(index, |step| step.wait_min[0])),
        place: step.place.as_deref(),
    };
    Timeline {
        drawings: drawings
            .iter()
            .filter(|one| one.kind == FigureKind::Timeline)
            .cloned()
            .collect(),
        steps: steps.map(moment).collect(),
        clocks: ready
            .iter()
            .map(|one| time_class(one.hour))
            .collect::<Vec<_>>()
            .join(" "),
        ready,
    }
}

/// The times at which any size can be ready, earliest first.
fn choices(batches: &Batches) -> Vec<Choice> {
    let offered = batches.sheets.iter().flat_map(|sheet| &sheet.time.ready);
    let times: BTreeMap<u64, &str> =
        offered.map(|ready| (ready.hour, ready.at.as_str())).collect();
    let lacks =
        |sheet: &Sheet, hour: u64| sheet.time.ready.iter().all(|one| one.hour != hour);
    let choice = |(hour, at): (u64, &str)| Choice {
        hour,
        key: format!("ready-{hour:02}"),
        at: at.to_owned(),
        nights: batches.sheets.iter().any(|sheet| lacks(sheet, hour)),
        classes: batches.classes(|sheet| lacks(sheet, hour)),
    };
    times.into_iter().map(choice).collect()
}

/// When a step begins: counted from the first one, and by the clock for each time at which
/// all can be ready.
fn starts(counted: &Html, index: usize, ready: &[Choice], batches: &Batches) -> Html {
    if ready.is_empty() {
        return counted.clone();
    }
    let start = |sheet: &Sheet, hour: u64| {
        let ready = sheet.time.ready.iter().find(|one| one.hour == hour)?;
        ready.starts.get(index).cloned()
    };
    let by_clock = ready.iter().map(|one| {
        let times = batches.text(|sheet| start(sheet, one.hour));
        format!("<span class=\"t {}\">{}</span>", time_class(one.hour), times.0)
    });
    let counted = format!("<span class=\"t t-first\">{}</span>", counted.0);
    Html(std::iter::once(counted).chain(by_clock).collect())
}

/// The class of what shows when all shall be ready at a time.
fn time_class(hour: u64) -> String {
    format!("t-{hour:02}")
}

fn other<'a>(input: &Input<'a>, recipe: &str) -> Option<&'a str> {
    Some(&input.outlines.get(recipe)?.title)
}

fn shown(minutes: u64, text: Html) -> Html {
    if minutes == 0 { Html::default() } else { text }
}

/// The nutrients, where every ingredient's are known.
pub(super) fn nutrition(batches: &Batches, words: &Words) -> Vec<Nutrient> {
    if batches.sheets.iter().any(|sheet| sheet.nutrition.is_none()) {
        return Vec::new();
    }
    NUTRIENTS.iter().map(|kind| nutrient(batches, *kind, words)).collect()
}

/// What the figures for 100 g are taken from, in words.
pub(super) fn basis(sheet: &Sheet, words: &Words) -> String {
    let loss = sheet.nutrition.as_ref().and_then(|all| all.bake_loss_percent);
    match loss {
        Some(loss) => words.fill("page-as-baked", &[("name", &percent(loss, words))]),
        None => words.get("page-before-baking").to_owned(),
    }
}

/// A nutrient's word, its unit, how to read it, and how to read it in words.
type Kind = (&'static str, Sign, fn(&Nutrients) -> f64, fn(&NutrientWords) -> &str);

const NUTRIENTS: [Kind; 9] = [
    ("page-energy", Sign::Kilocalorie, |all| all.energy_kcal, |all| &all.energy),
    ("page-fat", Sign::GRAM, |all| all.fat_g, |all| &all.fat),
    ("page-saturated", Sign::GRAM, |all| all.saturated_g, |all| &all.saturated),
    ("page-carbohydrate", Sign::GRAM, |all| all.carbohydrate_g, |all| &all.carbohydrate),
    ("page-sugars", Sign::GRAM, |all| all.sugars_g, |all| &all.sugars),
    ("page-fibre", Sign::GRAM, |all| all.fibre_g, |all| &all.fibre),
    ("page-protein", Sign::GRAM, |all| all.protein_g, |all| &all.protein),
    (
        "page-sodium",
        Sign::Amount(Unit::Milligram),
        |all| all.sodium_mg,
        |all| &all.sodium,
    ),
    ("page-salt", Sign::GRAM, |all| all.salt_g, |_| ""),
];

fn nutrient(batches: &Batches, (key, sign, read, said): Kind, words: &Words) -> Nutrient {
    // What stands in grams has one decimal.
    let places = usize::from(sign == Sign::GRAM);
    let amount = |all: &Nutrients| {
        let digits = show::marked(&format!("{:.places$}", read(all)), words);
        words.of(&digits, sign).replace(' ', "\u{a0}")
    };
    // A piece is rounded as a label would be; what labels do not round has one decimal.
    let piece = |nutrition: &sheet::Nutrition| {
        let rounded = nutrition.per_piece_rounded.as_ref().map(said);
        let rounded = rounded.filter(|rounded| !rounded.is_empty());
        rounded
            .map(|rounded| rounded.replace(' ', "\u{a0}"))
            .or_else(|| nutrition.per_piece.as_ref().map(amount))
    };
    Nutrient {
        key,
        piece: batches.text(|sheet| piece(sheet.nutrition.as_ref()?)),
        per_100_g: batches
            .text(|sheet| Some(amount(&sheet.nutrition.as_ref()?.per_100_g))),
    }
}
