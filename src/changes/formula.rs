//! What differs in a formula: its lines by section and ingredient, in exact amounts.

use crate::formula::{Formula, Weighed};
use crate::measure::{Label, Mass, exact, show};
use crate::model::Amount;

use super::words::{fill, was};
use super::{Change, Pair};

/// How far a difference may be rounded: a difference of 2 g is never shown as 3.
const NEAR: (i64, i64) = (1, 100);

/// The lines that differ, in the order of the new formula, then those left out.
pub(super) fn changes(pair: &Pair) -> Vec<Change> {
    let (old, new) = (&pair.old.work.formula, &pair.new.work.formula);
    let now =
        new.lines.iter().enumerate().flat_map(|(at, line)| match partner(at, new, old) {
            Some(before) => at_line(at, both(pair, before, line)),
            None => at_line(at, vec![appears(pair, line, "added")]),
        });
    let gone = old.lines.iter().enumerate();
    let gone = gone.filter(|(at, _)| partner(*at, old, new).is_none());
    now.chain(gone.map(|(_, line)| appears(pair, line, "removed"))).collect()
}

/// The same differences, with the line of the new formula that they are about.
fn at_line(at: usize, changes: Vec<Change>) -> Vec<Change> {
    changes.into_iter().map(|change| Change { line: Some(at), ..change }).collect()
}

/// The line of the other formula that stands for line `at` of this one: the same
/// ingredient in the same section, the second for the second where one stands twice.
fn partner<'a, 'b>(
    at: usize,
    here: &Formula,
    there: &'b Formula<'a>,
) -> Option<&'b Weighed<'a>> {
    let line = &here.lines[at];
    let same =
        |other: &&Weighed| other.section == line.section && other.title() == line.title();
    let nth = here.lines[..at].iter().filter(same).count();
    there.lines.iter().filter(same).nth(nth)
}

/// What differs in one line: its amount, and its note.
fn both(pair: &Pair, old: &Weighed, new: &Weighed) -> Vec<Change> {
    [amount(pair, old, new), note(pair, old, new)].into_iter().flatten().collect()
}

fn amount(pair: &Pair, old: &Weighed, new: &Weighed) -> Option<Change> {
    let text = match (&old.mass, &new.mass) {
        _ if counted(old, new) => is(pair, new, (&words(pair, old), &words(pair, new)))?,
        (Some(before), Some(now)) if before < now => {
            difference(pair, new, "change-more", &(now.clone() - before.clone()))
        }
        (Some(before), Some(now)) if now < before => {
            difference(pair, new, "change-less", &(before.clone() - now.clone()))
        }
        (Some(_), Some(_)) => return None,
        _ => is(pair, new, (&words(pair, old), &words(pair, new)))?,
    };
    Some(Change::new("amount", text))
}

/// Whether both are counted in the same pieces.
fn counted(old: &Weighed, new: &Weighed) -> bool {
    old.piece.is_some() && old.piece == new.piece
}

fn difference(pair: &Pair, line: &Weighed, key: &str, by: &Mass) -> Label {
    let (amount, name) = (weight(pair, by), Label::same(line.title()));
    placed(pair, line, fill(pair.words, key, &[("amount", &amount), ("name", &name)]))
}

/// `egg: 3, was 2`; `None` where both read the same.
fn is(pair: &Pair, line: &Weighed, values: (&Label, &Label)) -> Option<Label> {
    let name = Label::same(line.title());
    let text = was(pair.words, "change-is", values, &[("name", &name)])?;
    Some(placed(pair, line, text))
}

fn note(pair: &Pair, old: &Weighed, new: &Weighed) -> Option<Change> {
    let (key, note) = match (&old.line.note, &new.line.note) {
        (before, Some(now)) if before.as_ref() != Some(now) => ("change-note", now),
        (Some(before), None) => ("change-note-gone", before),
        _ => return None,
    };
    let (name, note) = (Label::same(new.title()), Label::same(note));
    let text = fill(pair.words, key, &[("name", &name), ("note", &note)]);
    Some(Change::new("note", placed(pair, new, text)))
}

/// A line that is new or left out.
fn appears(pair: &Pair, line: &Weighed, how: &str) -> Change {
    let (about, key) = match how {
        "added" => ("ingredient-added", "change-added"),
        _ => ("ingredient-removed", "change-removed"),
    };
    let (amount, name) = (words(pair, line), Label::same(line.title()));
    let text = fill(pair.words, key, &[("amount", &amount), ("name", &name)]);
    Change::new(about, placed(pair, line, text))
}

/// Names the section where the ingredient stands in more than one.
fn placed(pair: &Pair, line: &Weighed, text: Label) -> Label {
    let lines = pair.old.work.formula.lines.iter().chain(&pair.new.work.formula.lines);
    let elsewhere = lines
        .filter(|other| other.title() == line.title())
        .any(|other| other.section != line.section);
    let section = Label::same(line.section);
    let values = [("change", &text), ("section", &section)];
    if elsewhere { fill(pair.words, "change-in", &values) } else { text }
}

/// A line's amount in words: a number of pieces, a weight, or as written.
fn words(pair: &Pair, line: &Weighed) -> Label {
    match (&line.mass, &line.piece, &line.line.amount) {
        (Some(mass), Some((_, each)), _) if !each.is_zero() => {
            Label::same(show::number(&(mass.amount() / each), 2, pair.words))
        }
        (Some(mass), ..) => weight(pair, mass),
        (None, _, Amount::Free(words)) => Label::same(words),
        (None, _, Amount::Of(_)) => Label::default(),
    }
}

fn weight(pair: &Pair, mass: &Mass) -> Label {
    let near = exact(NEAR.0, NEAR.1);
    let metric = show::metric(mass, &near, pair.new.fine).words(pair.words);
    Label::new(metric, show::us_weight(mass, &near).words(pair.words))
}
