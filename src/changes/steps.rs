//! What differs in the steps: which there are, what they are called, what their tickets
//! say, and which are worded anew.

use crate::measure::Label;
use crate::model::Step;
use crate::sheet::{Part, Sheet, StepSheet, Ticked};

use super::words::{bare, fill, was};
use super::{Change, Pair};

/// Rows of a ticket that are only worked out from others: those say what changed.
const DERIVED: [Ticked; 4] =
    [Ticked::Thickness, Ticked::Layers, Ticked::Plies, Ticked::Trays];

/// The steps that differ, in the order of the new method, then those left out.
pub(super) fn changes(pair: &Pair) -> Vec<Change> {
    let (old, new) = (pair.old.work.steps(), pair.new.work.steps());
    let (before, now) = (sheets(&pair.old.sheet), sheets(&pair.new.sheet));
    let partners = partners(&old, &new);
    let mut changes: Vec<Change> = partners
        .iter()
        .enumerate()
        .flat_map(|(at, partner)| match partner {
            Some(from) => {
                let written = old[*from].fan.is_some() || new[at].fan.is_some();
                step(pair, before[*from], now[at], written)
            }
            None => vec![named(pair, "step-added", "change-step-added", now[at])],
        })
        .collect();
    let gone = (0..old.len()).filter(|at| !partners.contains(&Some(*at)));
    changes.extend(
        gone.map(|at| named(pair, "step-removed", "change-step-removed", before[at])),
    );
    let kept: Vec<usize> = partners.iter().flatten().copied().collect();
    if !kept.is_sorted() {
        let text = Label::same(pair.words.get("change-order"));
        changes.push(Change::new("order", text));
    }
    changes
}

fn sheets(sheet: &Sheet) -> Vec<&StepSheet> {
    let steps = sheet.parts.iter().filter_map(|part| match part {
        Part::Step(step) => Some(step),
        Part::Prose { .. } => None,
    });
    steps.collect()
}

/// For each new step the old one it was: the one of its name; else, as a new name for it,
/// the first step of the same kind that has no other partner and follows the same step.
fn partners(old: &[&Step], new: &[&Step]) -> Vec<Option<usize>> {
    let named = |step: &&Step| old.iter().position(|other| other.name == step.name);
    let mut partners: Vec<Option<usize>> = new.iter().map(named).collect();
    for at in 0..new.len() {
        if partners[at].is_some() {
            continue;
        }
        let above = partners[..at].iter().rev().find_map(|partner| *partner);
        let from = above.map_or(0, |above| above + 1);
        let free = (from..old.len()).take_while(|at| !partners.contains(&Some(*at)));
        let renamed = free.into_iter().find(|from| kind(old[*from]) == kind(new[at]));
        partners[at] = renamed;
    }
    partners
}

/// What kind of step it is: what its ticket has.
fn kind(step: &Step) -> [bool; 7] {
    [
        step.hands.is_some(),
        step.wait.is_some(),
        step.bake.is_some(),
        step.turn.is_some(),
        step.lock_in.is_some(),
        step.cut.is_some(),
        step.sheet.is_some(),
    ]
}

fn named(pair: &Pair, about: &'static str, key: &str, step: &StepSheet) -> Change {
    let text = fill(pair.words, key, &[("name", &Label::same(&*step.title))]);
    Change { step: Some(step.step.clone()), ..Change::new(about, text) }
}

/// What differs in one step. `fan` says whether its fan setting is written, not derived.
fn step(pair: &Pair, old: &StepSheet, new: &StepSheet, fan: bool) -> Vec<Change> {
    let (before, now) = (Label::same(&*old.title), Label::same(&*new.title));
    let name = was(pair.words, "change-step-name", (&before, &now), &[]);
    let name = name.map(|text| ("step-renamed", None, text));
    let rows = keys(old, new)
        .into_iter()
        .filter(|key| !DERIVED.contains(key) && (fan || *key != Ticked::Fan))
        .filter_map(|key| {
            let text = row(pair, key, old, new)?;
            Some((about(key), Some(key.word().to_owned()), text))
        });
    let texts = [name].into_iter().flatten().chain(rows).chain(reworded(pair, old, new));
    let place = |(about, row, text)| Change {
        step: Some(new.step.clone()),
        row,
        ..Change::new(about, text)
    };
    texts.map(place).collect()
}

/// The keys of both tickets, each once, in the order of the new one.
fn keys(old: &StepSheet, new: &StepSheet) -> Vec<Ticked> {
    let mut keys = Vec::new();
    for row in new.ticket.iter().chain(&old.ticket) {
        if !keys.contains(&row.key) {
            keys.push(row.key);
        }
    }
    keys
}

/// What a row of a ticket is about, for programs.
fn about(key: Ticked) -> &'static str {
    match key {
        Ticked::Day | Ticked::Hands | Ticked::Mix | Ticked::Wait | Ticked::Hold => "time",
        Ticked::At
        | Ticked::Water
        | Ticked::Core
        | Ticked::DoughTemperature
        | Ticked::Cool => "temperature",
        Ticked::Oven | Ticked::Fan => "oven",
        Ticked::Bake => "bake",
        Ticked::Sheet | Ticked::Roll | Ticked::LockIn | Ticked::Turn => "lamination",
        Ticked::Cut => "cut",
        Ticked::Where
        | Ticked::Kit
        | Ticked::Part
        | Ticked::Thickness
        | Ticked::Layers
        | Ticked::Plies
        | Ticked::Divide
        | Ticked::Sheeter
        | Ticked::Ph
        | Ticked::WeightLoss
        | Ticked::Growth
        | Ticked::Trays => "ticket",
    }
}

/// The difference in one row of the two tickets.
fn row(pair: &Pair, key: Ticked, old: &StepSheet, new: &StepSheet) -> Option<Label> {
    let step = Label::same(&*new.title);
    let term = Label::same(pair.words.get(key.word()));
    let lower = term.map(str::to_lowercase);
    let more = [("step", &step), ("term", &term), ("lower", &lower)];
    match (value(key, old), value(key, new)) {
        (Some(old), Some(new)) => {
            was(pair.words, word(key, &pair.new.sheet), (old, new), &more)
        }
        (None, Some(new)) => Some(fill(
            pair.words,
            "change-row-added",
            &[("new", new), more[0], more[1], more[2]],
        )),
        (Some(old), None) => {
            let values = [("old", old), more[0], more[1], more[2]];
            Some(fill(pair.words, "change-row-removed", &values))
        }
        (None, None) => None,
    }
}

fn value(key: Ticked, step: &StepSheet) -> Option<&Label> {
    step.ticket.iter().find(|row| row.key == key).map(|row| &row.value)
}

/// The key of the word for a row that changed. Where there is one bake, nobody needs to be
/// told which.
fn word(key: Ticked, sheet: &Sheet) -> &'static str {
    let bakes =
        sheets(sheet).iter().filter(|step| value(Ticked::Oven, step).is_some()).count();
    if bakes == 1 && key == Ticked::Oven {
        "change-oven"
    } else if bakes == 1 && key == Ticked::Bake {
        "change-bake"
    } else {
        "change-row"
    }
}

/// What a difference is about, the row of the ticket, and its words.
type Told = (&'static str, Option<String>, Label);

/// Another cue, or another text.
fn reworded(pair: &Pair, old: &StepSheet, new: &StepSheet) -> Vec<Told> {
    let step = Label::same(&*new.title);
    let mut texts = Vec::new();
    if old.until != new.until
        && let Some(until) = &new.until
    {
        let values = [("step", &step), ("new", until)];
        texts.push((
            "cue",
            Some("until".to_owned()),
            fill(pair.words, "change-until", &values),
        ));
    }
    if bare(&old.prose) != bare(&new.prose) {
        let text = fill(pair.words, "change-reworded", &[("name", &step)]);
        texts.push(("words", None, text));
    }
    texts
}
