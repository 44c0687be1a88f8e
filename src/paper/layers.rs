//! The lamination as it is printed: facts, sheets, turns at a glance.

use serde::Serialize;

use crate::measure::{Label, show};
use crate::sheet::{Fold, Lamination, LockInFact, SheetFact};

use super::Job;
use super::chapter::steps;
use super::setting::bind;

/// The lamination at a glance.
#[derive(Serialize)]
pub(super) struct Layers {
    facts: Vec<[String; 2]>,
    /// Step, size, thickness, fat layers of each rolled sheet.
    sheets: Vec<[String; 4]>,
    /// The lock-in and every turn.
    turns: Vec<Turn>,
}

/// A lock-in or a turn at a glance.
#[derive(Serialize)]
struct Turn {
    title: String,
    /// The word for it: `book`.
    turn: String,
    sheet: String,
    /// Fat layers before and after: `4 → 12`.
    layers: String,
    /// Parts that the sheet is folded in; 1 for a lock-in.
    parts: u32,
    /// The length of one part; the fat block's size for a lock-in.
    part: String,
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
        .map(|fold| fact("handout-lock-in", lock_in_word(job, fold)))
        .into_iter()
        .chain([
            fact("handout-turns", in_turn(job, &turns)),
            fact("handout-fat-layers", it.fat_layers.to_string()),
            fact("handout-merged", it.layers_merged.to_string()),
            fact("handout-plies", it.layers_unmerged.to_string()),
            fact(
                "handout-fat-share",
                bind(&show::whole_percent(it.fat_percent_of_dough, job.words)),
            ),
        ])
        .collect()
}

/// Equal turns after one another are counted: `2 × book, letter`.
fn in_turn(job: &Job, turns: &[String]) -> String {
    let runs = turns.chunk_by(|one, next| one == next).map(|run| match run {
        [one] => one.clone(),
        many => bind(&format!("{} × {}", many.len(), many[0])),
    });
    job.words.list(&runs.collect::<Vec<_>>())
}

/// The course's word for a lock-in, and that the fat is outside where it is.
fn lock_in_word(job: &Job, fold: &LockInFact) -> String {
    let word = turn_word(job, &fold.kind);
    if fold.inverted {
        job.words.fill("handout-inverted", &[("name", &word)])
    } else {
        word
    }
}

/// The course's word for a turn or lock-in: `book`, `5-part`.
fn turn_word(job: &Job, turn: &str) -> String {
    let key = format!("handout-fold-{turn}");
    match turn.strip_suffix("-part") {
        Some(parts) => job.words.fill("page-turn-parts", &[("number", parts)]),
        None => job.words.find(&key).unwrap_or(turn).to_owned(),
    }
}

fn turns(job: &Job, it: &Lamination) -> Vec<Turn> {
    let lock_in = it.lock_in.as_ref().map(|fact| locked(job, it, fact));
    lock_in.into_iter().chain(it.folds.iter().map(|fold| turned(job, fold))).collect()
}

fn locked(job: &Job, it: &Lamination, fact: &LockInFact) -> Turn {
    let step = steps(job.sheet).find(|step| step.step == fact.step);
    let layers = it.folds.first().map_or(it.fat_layers, |fold| fold.fat_layers_before);
    let block = bind(job.units.of(&fact.block));
    Turn {
        title: step.map_or_else(String::new, |step| step.title.clone()),
        turn: lock_in_word(job, fact),
        sheet: bind(job.units.of(&fact.size)),
        layers: layers.to_string(),
        parts: 1,
        part: job.words.fill(
            if fact.inverted { "handout-block-of-dough" } else { "handout-block" },
            &[("size", &block)],
        ),
    }
}

fn turned(job: &Job, fold: &Fold) -> Turn {
    Turn {
        title: fold.title.clone(),
        turn: turn_word(job, &fold.turn),
        sheet: bind(job.units.of(&fold.size)),
        layers: grown(job, fold),
        parts: fold.parts,
        part: bind(job.units.of(&fold.part)),
    }
}

/// `1 → 3`.
fn grown(job: &Job, fold: &Fold) -> String {
    let ends = [fold.fat_layers_before, fold.fat_layers_after].map(|it| it.to_string());
    job.words.fill("drawing-growth", &[("before", &ends[0]), ("after", &ends[1])])
}
