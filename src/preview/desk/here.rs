//! What may be written at a place in a text that stands at the desk, and what the word there is.

use std::sync::Arc;

use hyper::StatusCode;
use serde::Deserialize;
use serde_json::{Value, json};

use crate::encode::{byte, letters};
use crate::here::{self, Offer, Spot};
use crate::words::Words;

use super::super::Preview;
use super::super::served::Served;
use super::Desk;
use super::call::Done;

/// A place in a text as it is this moment.
#[derive(Clone, Deserialize)]
pub(super) struct Asked {
    path: String,
    text: String,
    /// Counted as browsers count letters.
    at: usize,
}

/// The last edition without an error, of what is typed or of what is saved.
fn sound(preview: &Preview, desk: &Desk) -> Option<Arc<Served>> {
    desk.desktop.newest().or_else(|| preview.show().served.clone())
}

/// What may be written there, as the last edition without an error knows it.
pub(super) fn offers(preview: &Preview, desk: &Desk, asked: &Asked) -> Done {
    let Some(served) = sound(preview, desk) else {
        return Ok((StatusCode::OK, json!({ "offers": [] })));
    };
    let spot = asked.clone();
    let found = served.look(move |edition| {
        let at = byte(&spot.text, spot.at);
        here::offers(Spot { file: &spot.path, text: &spot.text, at }, edition)
    });
    let tell = |offer: &Offer| told(offer, &asked.text, &served.words);
    let found: Vec<Value> = found.unwrap_or_default().iter().map(tell).collect();
    Ok((StatusCode::OK, json!({ "offers": found })))
}

/// What the word there is, where the last edition without an error was made of this text.
pub(super) fn explains(preview: &Preview, desk: &Desk, asked: &Asked) -> Done {
    let none = || Ok((StatusCode::OK, json!({ "lines": [] })));
    let Some(served) = sound(preview, desk) else { return none() };
    let (spot, words) = (asked.clone(), served.words.clone());
    let found = served.look(move |edition| {
        let is_it = edition.texts.text(&spot.path) == spot.text;
        let at = byte(&spot.text, spot.at);
        let spot = Spot { file: &spot.path, text: &spot.text, at };
        is_it.then(|| here::told(spot, edition, &words)).flatten()
    });
    let Some(found) = found.flatten() else { return none() };
    let lines: Vec<String> = found.lines.iter().map(|it| served.words.tell(it)).collect();
    let place =
        (letters(&asked.text, found.place.start), letters(&asked.text, found.place.end));
    Ok((StatusCode::OK, json!({ "lines": lines, "from": place.0, "to": place.1 })))
}

fn told(offer: &Offer, text: &str, words: &Words) -> Value {
    let about = offer.about.as_ref().map(|about| words.tell(about));
    json!({
        "label": offer.label, "text": offer.text, "about": about,
        "from": letters(text, offer.place.start), "to": letters(text, offer.place.end),
    })
}
