//! Bench cards that are longer than one side.

use std::sync::OnceLock;

use crate::fault::{Fault, Place};
use crate::model::Recipe;
use crate::paper::{Job, Press};
use crate::sheet::{HandoutKind, Paper, Units};

use super::{AS_WRITTEN, Stock, Worked};

/// Lines of a card below which nobody need set it in type: two columns of a side take about
/// a hundred at the smallest size.
const SURELY_FITS: usize = 60;

/// Letters in a line of a card.
const LINE: usize = 40;

/// A caution for each recipe whose bench card, on some paper and in some units, goes on to
/// its other side.
pub fn long_cards(stock: &Stock) -> Vec<Fault> {
    let press = OnceLock::new();
    let press = || press.get_or_init(|| Press::new(stock.theme));
    let long =
        |recipe: &&Recipe| is_suspect(recipe) && takes_more(recipe, stock, press());
    stock.recipes().iter().filter(long).map(fault).collect()
}

fn fault(recipe: &Recipe) -> Fault {
    let message = "the bench card of this recipe does not fit on one side";
    Fault::caution("card-two-sides", &recipe.title.place, message)
        .help("It goes on to its other side. Shorter cues (`until`), or two recipes of which one is an ingredient of the other, make one side of it.")
}

fn is_suspect(recipe: &Recipe) -> bool {
    let amounts: usize =
        recipe.formula.iter().map(|section| 2 + section.lines.len()).sum();
    // All rows of a ticket together, as long as they are written.
    let ticket = |place: &Place| place.end.saturating_sub(place.start) / LINE;
    let steps: usize = recipe
        .steps()
        .map(|step| 3 + step.title.value.len() / LINE + ticket(&step.place))
        .sum();
    amounts + steps > SURELY_FITS
}

fn takes_more(recipe: &Recipe, stock: &Stock, press: &Press) -> bool {
    let Some(worked) = stock.worked(recipe) else { return false };
    let job = |units: Units, paper: Paper| Job {
        sheet: &worked.sheets.base,
        course: &stock.course,
        figures: Worked::as_written(&worked),
        words: stock.words,
        kind: HandoutKind::Bench,
        units,
        paper,
        batch_key: AS_WRITTEN,
        whose: None,
        makers: 1,
    };
    let sizes = [Paper::A4, Paper::Letter].into_iter();
    let mut jobs =
        sizes.flat_map(|paper| [Units::Metric, Units::Us].map(|units| job(units, paper)));
    jobs.any(|job| press.sides(&press.data(&job)).is_ok_and(|sides| sides > 1))
}
