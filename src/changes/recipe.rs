//! What differs in one recipe, allergens first.

use std::collections::BTreeSet;

use crate::measure::{Exact, Label, exact, show};
use crate::sheet::{Allergen, AllergenList, Allergens, Part, Sheet};
use crate::words::Words;

use super::words::{bare, fill, was};
use super::{Change, Pair, formula, steps};

/// Everything that differs in a recipe, in the order of its page.
pub(super) fn changes(pair: &Pair) -> Vec<Change> {
    let mut changes = allergens(pair);
    changes.extend(head(pair));
    changes.extend(formula::changes(pair));
    changes.extend(steps::changes(pair));
    changes.extend(times(pair));
    changes.extend(prose(pair));
    changes
}

/// Allergens that came in or went out, by either list, and ingredients whose allergens are
/// not known.
fn allergens(pair: &Pair) -> Vec<Change> {
    let (old, new) = (&pair.old.sheet.allergens, &pair.new.sheet.allergens);
    let lists = [
        ("allergen-added", "change-contains", names(new), names(old)),
        ("allergen-removed", "change-contains-not", names(old), names(new)),
        ("allergen-unknown", "change-unknown", new.unknown.clone(), old.unknown.clone()),
    ];
    let say = |about, key: &str, name: String| {
        let name = Label::same(name);
        Change::new(about, fill(pair.words, key, &[("name", &name)]))
    };
    lists
        .into_iter()
        .flat_map(|(about, key, here, there)| {
            let only = here.into_iter().filter(move |name| !there.contains(name));
            only.map(move |name| say(about, key, name))
        })
        .collect()
}

/// The allergens of the EU list, each of their kinds for itself, then those that only another
/// list knows by such a name.
fn names(allergens: &Allergens) -> Vec<String> {
    let kinds = |one: &Allergen| match one.kinds.as_slice() {
        [] => vec![one.name.clone()],
        kinds => kinds.iter().map(|kind| format!("{} ({kind})", one.name)).collect(),
    };
    let one = |name: &str| name.trim_end_matches('s').to_owned();
    let (first, others): (Vec<&AllergenList>, Vec<&AllergenList>) =
        allergens.lists.iter().partition(|list| list.law == "eu");
    let first = || first.iter().flat_map(|list| &list.found);
    let mut names: Vec<String> = first().flat_map(kinds).collect();
    let known: BTreeSet<String> = first()
        .flat_map(|it| std::iter::once(&it.name).chain(&it.kinds))
        .map(|name| one(name))
        .collect();
    for found in others.iter().flat_map(|list| &list.found) {
        if !known.contains(&one(&found.name)) && !names.contains(&found.name) {
            names.push(found.name.clone());
        }
    }
    names
}

/// What the recipe's head says.
fn head(pair: &Pair) -> Vec<Change> {
    let (old, new) = (&pair.old.work.recipe, &pair.new.work.recipe);
    let title = (Label::same(&*old.title.value), Label::same(&*new.title.value));
    let makes = (pair.old.sheet.scale.makes.clone(), pair.new.sheet.scale.makes.clone());
    let loss = (percent(&old.loss, pair.words), percent(&new.loss, pair.words));
    let temperature = old.dough_temperature.as_ref().zip(new.dough_temperature.as_ref());
    let temperature = temperature.map(|(old, new)| {
        (
            show::temperature(&old.value, pair.words),
            show::temperature(&new.value, pair.words),
        )
    });
    let tin = |tin: &crate::model::Recipe| tin.tin.as_ref().map(|tin| tin.value.clone());
    let tins = (tin(old) != tin(new))
        .then(|| Change::new("tin", Label::same(pair.words.get("change-tin"))));
    [
        ("title", "change-title", Some(title)),
        ("makes", "change-makes", Some(makes)),
        ("temperature", "change-dough", temperature),
        ("loss", "change-loss", Some(loss)),
    ]
    .into_iter()
    .filter_map(|(about, key, values)| {
        let (old, new) = values?;
        Some(Change::new(about, was(pair.words, key, (&old, &new), &[])?))
    })
    .chain(tins)
    .collect()
}

fn percent(share: &Exact, words: &Words) -> Label {
    Label::same(show::percent(&(share * exact(100, 1)), 2, words))
}

/// The times in all.
fn times(pair: &Pair) -> Vec<Change> {
    let (old, new) = (&pair.old.sheet.time, &pair.new.sheet.time);
    let values = [
        ("change-hands", &old.hands, &new.hands),
        ("change-elapsed", &old.elapsed, &new.elapsed),
    ];
    let texts = values.into_iter().filter_map(|(key, old, new)| {
        let (old, new) = (Label::same(&**old), Label::same(&**new));
        was(pair.words, key, (&old, &new), &[])
    });
    texts.map(|text| Change::new("time", text)).collect()
}

/// Chapters outside the steps that are new, left out or worded anew.
fn prose(pair: &Pair) -> Vec<Change> {
    let (old, new) = (chapters(&pair.old.sheet), chapters(&pair.new.sheet));
    let say = |about, key: &str, title: &str| {
        let name = Label::same(title);
        Change::new(about, fill(pair.words, key, &[("name", &name)]))
    };
    let find = |chapters: &[(String, serde_json::Value)], title: &str| {
        chapters.iter().find(|(name, _)| name == title).map(|(_, text)| text.clone())
    };
    let now = new.iter().filter_map(|(title, text)| match find(&old, title) {
        None => Some(say("words", "change-text-added", title)),
        Some(before) if before != *text => Some(say("words", "change-reworded", title)),
        Some(_) => None,
    });
    let gone = old.iter().filter(|(title, _)| find(&new, title).is_none());
    now.chain(gone.map(|(title, _)| say("words", "change-text-removed", title))).collect()
}

fn chapters(sheet: &Sheet) -> Vec<(String, serde_json::Value)> {
    let chapters = sheet.parts.iter().filter_map(|part| match part {
        Part::Prose { title, content } => Some((title.clone(), bare(content))),
        Part::Step(_) => None,
    });
    chapters.collect()
}
