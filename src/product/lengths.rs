//! Handouts that take more paper than their kind should.

use std::sync::OnceLock;

use crate::fault::{Fault, Place};
use crate::model::included;
use crate::model::{Included, Recipe};
use crate::paper::Press;
use crate::said;
use crate::sheet::{HandoutKind, Paper, Part, Sheet, Units};

use super::{Inputs, Worked};

/// Lines of a card below which nobody need set it in type: two columns of a side take about
/// a hundred at the smallest size.
const SURELY_FITS: usize = 60;

/// Letters in a line of a card.
const LINE: usize = 40;

/// Bytes of recipes below which nobody need set a student sheet in type: two sides take about
/// so many, three times over.
const SURELY_TWO_SIDES: usize = 2_500;

/// A caution for each recipe whose bench card, on some paper and in some units, goes on to
/// its other side, and for each whose student sheet takes more than a leaf.
pub fn long_handouts(inputs: &Inputs) -> Vec<Fault> {
    let press = OnceLock::new();
    let press = || {
        press.get_or_init(|| {
            Press::new(inputs.theme).showing(&inputs.edition.content.media)
        })
    };
    let mut faults = Vec::new();
    for recipe in inputs.recipes() {
        let (card, sheet) =
            (may_be_long(recipe), bytes(recipe, inputs) > SURELY_TWO_SIDES);
        let worked = if card || sheet { inputs.worked(recipe) } else { None };
        let Some(worked) = worked else { continue };
        if card && sides(HandoutKind::Bench, &worked, inputs, press()) > 1 {
            faults.push(long_card(recipe));
        }
        let most = most_sides(&worked, inputs);
        if sheet && sides(HandoutKind::Student, &worked, inputs, press()) > most {
            faults.push(long_sheet(recipe, most));
        }
    }
    faults
}

fn long_card(recipe: &Recipe) -> Fault {
    let message = said!("card-two-sides");
    Fault::caution("card-two-sides", &recipe.title.place, message)
        .help(said!("card-two-sides-help"))
}

fn long_sheet(recipe: &Recipe, most: usize) -> Fault {
    let message = said!("long-sheet", most);
    let fault = Fault::caution("long-sheet", &recipe.title.place, message);
    fault.help(said!("long-sheet-help"))
}

/// The sides that a student sheet may take: one leaf; a side more for its own turns, which
/// have large drawings, and one for those of a dough that comes along.
fn most_sides(worked: &Worked, inputs: &Inputs) -> usize {
    let folded = |sheet: &Sheet| {
        let folds = sheet.lamination.iter().flat_map(|layers| &layers.folds);
        let own = |step: &str| {
            sheet.parts.iter().any(|part| match part {
                Part::Step(own) => own.step == step,
                Part::Prose { .. } => false,
            })
        };
        folds.into_iter().any(|fold| own(&fold.step))
    };
    let along = inputs.printed(worked).included.iter().any(|inner| folded(&inner.sheet));
    2 + usize::from(folded(&worked.sheets.base)) + usize::from(along)
}

/// How much is written of a recipe and of all that its sheet brings along, in bytes.
fn bytes(recipe: &Recipe, inputs: &Inputs) -> usize {
    let mut all = vec![recipe];
    let mut at = 0;
    while let Some(here) =
        all.get(at).filter(|it| it.included == Included::Whole || at > 0)
    {
        for (name, _) in included(here) {
            let inner = inputs.edition.content.recipe(name);
            all.extend(inner.filter(|inner| all.iter().all(|it| it.name != inner.name)));
        }
        at += 1;
    }
    all.iter().map(|recipe| recipe.place.end()).sum()
}

fn may_be_long(recipe: &Recipe) -> bool {
    let amounts: usize =
        recipe.formula.iter().map(|section| 2 + section.lines.len()).sum();
    // All rows of a ticket together, as long as they are written.
    let ticket = |place: &Place| place.end().saturating_sub(place.start()) / LINE;
    let steps: usize = recipe
        .steps()
        .map(|step| 3 + step.title.value.len() / LINE + ticket(&step.place))
        .sum();
    amounts + steps > SURELY_FITS
}

/// The most sides that it takes on any paper in any units.
fn sides(kind: HandoutKind, worked: &Worked, inputs: &Inputs, press: &Press) -> usize {
    let ways = [Paper::A4, Paper::Letter]
        .into_iter()
        .flat_map(|paper| [Units::Metric, Units::Us].map(|units| (units, paper)));
    let sides = ways.filter_map(|(units, paper)| {
        press.sides(&press.data(&inputs.job(worked, (kind, units, paper)))).ok()
    });
    sides.max().unwrap_or(0)
}
