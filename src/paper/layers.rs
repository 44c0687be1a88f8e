//! The lamination as it is printed: facts, sheets, turns at a glance.

use serde::Serialize;

use crate::measure::{Label, show};
use crate::sheet::{Fold, Folding, Lamination, LockInFact, SheetFact};

use super::Job;
use super::chapter::steps;
use super::setting::bind;

/// The lamination at a glance.
#[derive(Serialize)]
pub(super) struct Layers {
    facts: Vec<[String; 2]>,
    /// Step, size, thickness of each rolled sheet, and its fat layers where any are counted.
    sheets: Vec<Vec<String>>,
    /// The key of what is counted of each turn: layers of fat, or plies.
    counted: &'static str,
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
    /// Fat layers, or plies, before and after: `4 → 12`.
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
        let layers = it.fat_layers.map(|_| fact.fat_layers.to_string());
        [fact.title.clone(), chosen(&fact.size), chosen(&fact.thickness)]
            .into_iter()
            .chain(layers)
            .collect()
    };
    let sheets = it.sheets.iter().map(sheet).collect();
    let counted = if it.fat_layers.is_some() { "fat-layers" } else { "dough-layers" };
    let (facts, turns) = (layer_facts(job, it), turns(job, it));
    Some(Layers { facts, sheets, counted, turns })
}

fn layer_facts(job: &Job, it: &Lamination) -> Vec<[String; 2]> {
    let fact = |key: &str, value: String| [job.words.get(key).to_owned(), value];
    let count =
        |key: &str, count: Option<u64>| count.map(|count| fact(key, count.to_string()));
    let turns: Vec<String> = it.turns.iter().map(|turn| turn_word(job, *turn)).collect();
    let lock_in = it.lock_in.as_ref();
    lock_in
        .map(|fold| fact("handout-lock-in", lock_in_word(job, fold)))
        .into_iter()
        .chain([fact("handout-turns", in_turn(job, &turns))])
        .chain(count("handout-fat-layers", it.fat_layers))
        .chain(count("handout-merged", it.layers_merged))
        .chain(count("handout-plies", Some(it.layers_unmerged)))
        .chain(it.fat_percent_of_dough.map(|percent| {
            fact("handout-fat-share", bind(&show::whole_percent(percent, job.words)))
        }))
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
    let word = fold_word(job, fold.kind.word());
    if fold.inverted {
        job.words.fill("handout-inverted", &[("name", &word)])
    } else {
        word
    }
}

/// The course's word for a turn: `book`, `in 5 parts`.
fn turn_word(job: &Job, turn: Folding) -> String {
    match turn {
        Folding::Half | Folding::Letter | Folding::Book => fold_word(job, &turn.word()),
        Folding::Parts(parts) => {
            job.words.fill("page-turn-parts", &[("number", &parts.to_string())])
        }
    }
}

fn fold_word(job: &Job, word: &str) -> String {
    job.words.get(&format!("handout-fold-{word}")).to_owned()
}

fn turns(job: &Job, it: &Lamination) -> Vec<Turn> {
    let lock_in = it.lock_in.as_ref().map(|fact| locked(job, it, fact));
    lock_in.into_iter().chain(it.folds.iter().map(|fold| turned(job, fold))).collect()
}

fn locked(job: &Job, it: &Lamination, fact: &LockInFact) -> Turn {
    let step = steps(job.sheet).find(|step| step.step == fact.step);
    let first = it.folds.first().map(|fold| fold.fat_layers_before);
    let layers = first.or(it.fat_layers);
    let block = bind(job.units.of(&fact.block));
    Turn {
        title: step.map_or_else(String::new, |step| step.title.clone()),
        turn: lock_in_word(job, fact),
        sheet: bind(job.units.of(&fact.size)),
        layers: layers.map_or_else(String::new, |layers| layers.to_string()),
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
        turn: turn_word(job, fold.turn),
        sheet: bind(job.units.of(&fold.size)),
        layers: grown(job, fold),
        parts: fold.parts,
        part: bind(job.units.of(&fold.part)),
    }
}

/// `1 → 3`.
fn grown(job: &Job, fold: &Fold) -> String {
    let ends = fold.growth().1.map(|count| count.to_string());
    job.words.fill("drawing-growth", &[("before", &ends[0]), ("after", &ends[1])])
}
