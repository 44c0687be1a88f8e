//! What differs between a text and another state of it, in a reader's words.

use hyper::StatusCode;
use serde::Deserialize;
use serde_json::{Value, json};

use crate::changes::{Became, ChangedItem, between};
use crate::said;
use crate::sheet::Units;
use crate::words::Words;

use super::super::{Opened, Preview, Since, Typed, Unopened};
use super::call::{Done, Undone};

/// Two states of one text.
#[derive(Deserialize)]
pub(super) struct Two {
    path: String,
    old: String,
    new: String,
}

/// What differs, recipe by recipe: a title, and under it a line for each difference. With
/// an error in one of them nothing can be said, and that is the answer.
pub(super) fn told(preview: &Preview, two: &Two) -> Done {
    let old = sound(preview, &two.path, &two.old)?;
    let new = sound(preview, &two.path, &two.new)?;
    let (Some(old), Some(new)) = (old, new) else { return Ok(unsound()) };
    Ok(all(&old, &new))
}

/// What would change for students, were the course published now. Where it was not published
/// from here yet nothing can be said of it.
pub(super) fn since(since: &Since) -> Done {
    let Some([old, new]) = since().map_err(unopened)? else {
        return Ok((StatusCode::OK, json!({ "known": false })));
    };
    if old.edition.stops() || new.edition.stops() {
        return Ok(unsound());
    }
    Ok(all(&old, &new))
}

fn unsound() -> (StatusCode, Value) {
    (StatusCode::OK, json!({ "known": true, "sound": false, "changes": [] }))
}

fn unopened(why: Unopened) -> Undone {
    Undone::Told(said!("desk-why", why = why.0))
}

fn all(old: &Opened, new: &Opened) -> (StatusCode, Value) {
    let changes = between(&old.edition, &new.edition, &new.words);
    let units = new.edition.first_units();
    let all = changes.recipes.iter().chain(&changes.techniques);
    let all: Vec<Value> = all.map(|entry| told_of(entry, units, &new.words)).collect();
    (StatusCode::OK, json!({ "known": true, "sound": true, "changes": all }))
}

fn told_of(entry: &ChangedItem, units: Units, words: &Words) -> Value {
    let became = match entry.became {
        Became::Added => words.tell(&said!("desk-new")),
        Became::Removed => words.tell(&said!("desk-gone")),
        Became::Changed => String::new(),
    };
    let lines: Vec<&str> = entry.changes.iter().map(|it| units.of(&it.text)).collect();
    json!({ "title": entry.title, "became": became, "lines": lines })
}

/// The course with one text in this state; `None` where it has an error.
fn sound(preview: &Preview, path: &str, text: &str) -> Result<Option<Opened>, Undone> {
    let typed = Typed::from([(path.to_owned(), text.to_owned())]);
    let opened = (preview.open)(&typed);
    let opened = opened.map_err(unopened)?;
    Ok((!opened.edition.stops()).then_some(opened))
}
