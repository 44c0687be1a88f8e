//! Techniques that are new, left out, worded anew or drawn from other numbers.

use crate::edition::Edition;
use crate::measure::Label;
use crate::sheet::TechniqueSheet;
use crate::words::Words;

use super::words::{bare, was};
use super::{Became, Change, ChangedItem};

/// The techniques that differ, in the order of the new edition, then those left out.
pub(super) fn entries(old: &Edition, new: &Edition, words: &Words) -> Vec<ChangedItem> {
    let (old, new) = (old.techniques(words), new.techniques(words));
    let now = new.iter().filter_map(|technique| {
        let Some(before) = find(&old, technique) else {
            return Some(whole(technique, Became::Added));
        };
        let changes = changes(before, technique, words);
        (!changes.is_empty())
            .then(|| ChangedItem { changes, ..whole(technique, Became::Changed) })
    });
    let gone = old.iter().filter(|technique| find(&new, technique).is_none());
    now.chain(gone.map(|technique| whole(technique, Became::Removed))).collect()
}

fn find<'a>(
    all: &'a [TechniqueSheet],
    wanted: &TechniqueSheet,
) -> Option<&'a TechniqueSheet> {
    all.iter().find(|technique| technique.technique == wanted.technique)
}

fn changes(old: &TechniqueSheet, new: &TechniqueSheet, words: &Words) -> Vec<Change> {
    let titles = (&Label::same(&*old.title), &Label::same(&*new.title));
    let title = was(words, "change-title", titles, &[]);
    let drawn = json(&old.demonstrations) != json(&new.demonstrations);
    let worded = bare(&old.content) != bare(&new.content);
    let say = |key: &str| Label::same(words.get(key));
    [
        title.map(|text| Change::new("title", text)),
        drawn.then(|| Change::new("drawing", say("change-drawn"))),
        worded.then(|| Change::new("words", say("change-worded"))),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn json(drawn: &impl serde::Serialize) -> serde_json::Value {
    // Plain data with text for keys: serialising it cannot fail.
    serde_json::to_value(drawn).unwrap_or_default()
}

fn whole(technique: &TechniqueSheet, became: Became) -> ChangedItem {
    let (name, title) = (technique.technique.clone(), technique.title.clone());
    ChangedItem { name, title, became, changes: Vec::new() }
}
