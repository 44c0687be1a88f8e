//! The lamination as it is printed: facts, sheets, turns at a glance.

use serde::Serialize;

use crate::measure::Label;
use crate::sheet::{Fold, Lamination, SheetFact};

use super::Job;
use super::chapter::steps;
use super::setting::bind;

/// The lamination at a glance.
#[derive(Serialize)]
pub(super) struct Layers {
    facts: Vec<[String; 2]>,
    /// Step, size, thickness, fat layers of each rolled sheet.
    sheets: Vec<[String; 4]>,
    /// Step, turn, sheet, fat layers afterwards.
    turns: Vec<[String; 4]>,
}

/// The lamination; `None` for a dough without layers.
pub(super) fn layers(job: &Job) -> Option<Layers> {
    let it = job.sheet.lamination.as_ref()?;
    let sheet = |fact: &SheetFact| {
        let chosen = |label: &Label| bind(job.units.of(label));
        let layers = fact.fat_layers.to_string();
        [fact.title.clone(), chosen(&fact.size), chosen(&fact.thickness), layers]
    };
    let sheets = it.sheets.iter().map(sheet).collect();
    Some(Layers { facts: layer_facts(job, it), sheets, turns: turns(job, it) })
}

fn layer_facts(job: &Job, it: &Lamination) -> Vec<[String; 2]> {
    let fact = |key: &str, value: String| [job.words.get(key).to_owned(), value];
    let turns: Vec<String> = it.turns.iter().map(|turn| turn_word(job, turn)).collect();
    let lock_in = it.lock_in.as_ref();
    lock_in
        .map(|fold| fact("handout-lock-in", turn_word(job, &fold.kind)))
        .into_iter()
        .chain([
            fact("handout-turns", turns.join(", ")),
            fact("handout-fat-layers", it.fat_layers.to_string()),
            fact("handout-merged", it.layers_merged.to_string()),
            fact("handout-plies", it.layers_unmerged.to_string()),
            fact("handout-fat-share", bind(&format!("{:.0} %", it.fat_percent_of_dough))),
        ])
        .collect()
}

/// The course's word for a turn or lock-in: `book`, `5-part`.
fn turn_word(job: &Job, turn: &str) -> String {
    let key = format!("handout-fold-{turn}");
    job.words.entries.get(&key).cloned().unwrap_or_else(|| turn.to_owned())
}

fn turns(job: &Job, it: &Lamination) -> Vec<[String; 4]> {
    let chosen = |label: &Label| bind(job.units.of(label));
    let title = |step: &str| {
        steps(job.sheet).find(|it| it.step == step).map(|it| it.title.clone())
    };
    let first_layers = it.folds.first().map_or(it.fat_layers, |f| f.fat_layers_before);
    let lock_in = it.lock_in.as_ref().map(|fact| {
        let name = title(&fact.step).unwrap_or_default();
        let word = turn_word(job, &fact.kind);
        [name, word, chosen(&fact.size), first_layers.to_string()]
    });
    let fold = |fold: &Fold| {
        let layers = format!("{} → {}", fold.fat_layers_before, fold.fat_layers_after);
        [fold.title.clone(), turn_word(job, &fold.turn), chosen(&fold.size), layers]
    };
    lock_in.into_iter().chain(it.folds.iter().map(fold)).collect()
}
