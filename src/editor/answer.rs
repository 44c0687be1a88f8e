//! Answers as the protocol has them.

use serde_json::{Value, json};

use crate::fault::{Fault, Mending, Severity};
use crate::here::{self, Offer, OfferKind, Spot};
use crate::said;
use crate::words::Words;

use super::position::{byte, range};
use super::texts::Folder;
use super::worked::Worked;

/// What may be written at a place.
pub(super) fn completion(worked: &Worked, spot: Spot) -> Value {
    let offers = here::offers(spot, &worked.edition);
    let items = offers.iter().enumerate();
    let items: Vec<Value> =
        items.map(|(at, offer)| item((at, offer), spot, &worked.words)).collect();
    // Whoever types on asks again: only what fits so far is sent.
    json!({ "isIncomplete": true, "items": items })
}

fn item((number, offer): (usize, &Offer), spot: Spot, words: &Words) -> Value {
    let end = spot.text[spot.at..offer.place.end].find('\n');
    let end = end.map_or(offer.place.end, |found| spot.at + found);
    let place = offer.place.start..end;
    let typed = &spot.text[place.start..spot.at];
    json!({
        "label": offer.label,
        "kind": kind(offer.kind),
        "detail": offer.about.as_ref().map(|about| words.tell(about)),
        "sortText": format!("{number:04}"),
        "filterText": typed,
        "textEdit": { "range": range(spot.text, &place), "newText": offer.text },
    })
}

/// The protocol's kind for what is offered, by which editors choose a sign.
fn kind(kind: OfferKind) -> u32 {
    match kind {
        OfferKind::Key | OfferKind::Row => 10,
        OfferKind::Value | OfferKind::Language | OfferKind::Mark | OfferKind::Fault => 12,
        OfferKind::Unit => 11,
        OfferKind::Ingredient | OfferKind::Allergen | OfferKind::Live => 6,
        OfferKind::Section | OfferKind::Step | OfferKind::Part | OfferKind::Way => 18,
        OfferKind::Recipe | OfferKind::Technique => 9,
        OfferKind::Picture | OfferKind::Video => 17,
        OfferKind::Shape | OfferKind::Place | OfferKind::Kit => 13,
        OfferKind::Word => 1,
    }
}

/// What the word at a place is; nothing where there is nothing to say.
pub(super) fn hover(worked: &Worked, spot: Spot) -> Value {
    let Some(told) = here::told(spot, &worked.edition, &worked.words) else {
        return Value::Null;
    };
    let lines: Vec<String> =
        told.lines.iter().map(|line| worked.words.tell(line)).collect();
    json!({
        "contents": { "kind": "plaintext", "value": lines.join("\n") },
        "range": range(spot.text, &told.place),
    })
}

/// Where what the word at a place names is defined.
pub(super) fn definition(worked: &Worked, spot: Spot, folder: &Folder) -> Value {
    let place = here::defined(spot, &worked.edition);
    let found = place.and_then(|place| {
        let text = worked.edition.texts.text(&place.file);
        let uri = folder.address(&place.file)?;
        Some(json!({ "uri": uri, "range": range(text, &(place.start()..place.end())) }))
    });
    found.unwrap_or(Value::Null)
}

/// The changes that mend the faults in a stretch of a file.
pub(super) fn actions(
    worked: &Worked,
    file: &str,
    asked: &Value,
    folder: &Folder,
) -> Value {
    let text = worked.edition.texts.text(file);
    let end = |key: &str| byte(text, asked.get(key).unwrap_or(&Value::Null));
    let (start, end) = (end("start"), end("end"));
    let here = |fault: &&Fault| {
        *fault.place.file == *file
            && fault.place.start() <= end
            && start <= fault.place.end()
    };
    let faults = worked.edition.faults.iter().filter(here);
    let actions = faults.flat_map(|fault| {
        fault
            .mendings
            .iter()
            .filter_map(move |mending| action(worked, fault, mending, folder))
    });
    actions.collect()
}

fn action(
    worked: &Worked,
    fault: &Fault,
    mending: &Mending,
    folder: &Folder,
) -> Option<Value> {
    let text = worked.edition.texts.text(&mending.place.file);
    let uri = folder.address(&mending.place.file)?;
    let stretch = mending.place.start()..mending.place.end();
    let edit = json!({ "range": range(text, &stretch), "newText": mending.text });
    let shown = mending.text.trim();
    let title = if shown.is_empty() && mending.text.is_empty() {
        worked.words.tell(&said!("here-take-out"))
    } else {
        worked.words.tell(&said!("here-write", text = shown))
    };
    let title = if shown.is_empty() && !mending.text.is_empty() {
        fault.told(&worked.words).help.unwrap_or(title)
    } else {
        title
    };
    Some(json!({
        "title": title,
        "kind": "quickfix",
        "diagnostics": [diagnostic(worked, fault)],
        "isPreferred": fault.mendings.len() == 1,
        "edit": { "changes": { uri: [edit] } },
    }))
}

/// A fault.
pub(super) fn diagnostic(worked: &Worked, fault: &Fault) -> Value {
    let text = worked.edition.texts.text(&fault.place.file);
    let told = fault.told(&worked.words);
    let message = [Some(told.message), told.help];
    let message: Vec<String> = message.into_iter().flatten().collect();
    json!({
        "range": range(text, &(fault.place.start()..fault.place.end())),
        "severity": match fault.severity { Severity::Error => 1, Severity::Caution => 2 },
        "code": fault.name,
        "source": "tourier",
        "message": message.join("\n"),
    })
}
