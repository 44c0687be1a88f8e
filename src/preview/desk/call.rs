//! What the desk's page asks for, each as a call with data, answered with data.

use std::time::{SystemTime, UNIX_EPOCH};

use hyper::StatusCode;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};

use crate::said;
use crate::statement::Statement;
use crate::store::{self, Saved, StoreError, Written};

use super::super::answer::Answer;
use super::super::{Preview, Typed};
use super::{Desk, differing, form, here, picture, typed};

/// Why a call is not done.
pub(super) enum Undone {
    /// It does not read.
    Unclear,
    /// There is no such call.
    Unknown,
    /// The machine, or the rules of what may be written where.
    Store(StoreError),
    /// Another reason, told.
    Told(Statement),
}

impl From<StoreError> for Undone {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
}

/// What a call is answered with.
pub(super) type Done = Result<(StatusCode, Value), Undone>;

/// Does what is asked for.
pub(in super::super) fn call(preview: &Preview, name: &str, bytes: &[u8]) -> Answer {
    let Some(desk) = &preview.desk else {
        return undone(preview, &Undone::Unknown);
    };
    let done = match name {
        "texts" => texts(desk),
        "open" => asked(bytes).and_then(|one| open(desk, &one)),
        "save" => asked(bytes).and_then(|one| save(desk, &one)),
        "type" => asked(bytes).and_then(|typed| typed::take(preview, desk, &typed)),
        "offers" => asked(bytes).and_then(|spot| here::offers(preview, desk, &spot)),
        "explains" => asked(bytes).and_then(|spot| here::explains(preview, desk, &spot)),
        "earlier" => asked(bytes).and_then(|one| earlier(desk, &one)),
        "back" => asked(bytes).and_then(|one| back(desk, &one)),
        "differs" => asked(bytes).and_then(|two| differing::told(preview, &two)),
        "uncommitted" => uncommitted(preview, desk),
        "would-change" => differing::since(&desk.since),
        "form" => asked(bytes).and_then(|text| form::read(&text)),
        "fill" => asked(bytes).and_then(|said| form::write(&said)),
        "publish" => desk.press.begin(),
        "progress" => desk.press.look(),
        _ => match name.strip_prefix(picture::CALL) {
            Some(name) => picture::take(desk, name, bytes),
            None => Err(Undone::Unknown),
        },
    };
    match done {
        Ok((status, value)) => Answer::data(status, &value),
        Err(why) => undone(preview, &why),
    }
}

/// Why it is not done, in words.
fn undone(preview: &Preview, why: &Undone) -> Answer {
    let words = preview.show().words.clone();
    let (status, said) = match why {
        Undone::Unclear => (StatusCode::BAD_REQUEST, said!("preview-unclear")),
        Undone::Unknown => (StatusCode::NOT_FOUND, said!("preview-no-file")),
        Undone::Store(error) => (status(error), error.said()),
        Undone::Told(said) => (StatusCode::UNPROCESSABLE_ENTITY, said.clone()),
    };
    Answer::data(status, &json!({ "said": words.tell(&said) }))
}

fn status(error: &StoreError) -> StatusCode {
    match &error.why {
        store::Why::Refused(_) => StatusCode::FORBIDDEN,
        store::Why::Machine(_) => StatusCode::INTERNAL_SERVER_ERROR,
    }
}

fn asked<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, Undone> {
    serde_json::from_slice(bytes).map_err(|_| Undone::Unclear)
}

/// A text that is asked for.
#[derive(Deserialize)]
struct Asked {
    path: String,
}

/// Every text of the course.
fn texts(desk: &Desk) -> Done {
    let (sources, _) = store::load(&desk.content)?;
    let paths: Vec<String> = sources.into_iter().map(|source| source.path).collect();
    Ok((StatusCode::OK, json!({ "texts": paths })))
}

fn open(desk: &Desk, asked: &Asked) -> Done {
    let stands = store::written(&desk.content, &asked.path)?;
    Ok((StatusCode::OK, stood(stands.as_ref())))
}

fn stood(stands: Option<&Written>) -> Value {
    let (text, mark) = stands.map(|it| (&it.text, &it.mark)).unzip();
    json!({ "text": text, "mark": mark })
}

/// A text to save, with the mark of what it was made from; none for a new one.
#[derive(Deserialize)]
struct Saving {
    path: String,
    text: String,
    mark: Option<String>,
}

fn save(desk: &Desk, one: &Saving) -> Done {
    let Saving { path, text, mark } = one;
    match store::write(&desk.content, path, text, mark.as_deref())? {
        Saved::Stands(mark) => Ok((StatusCode::OK, json!({ "mark": mark }))),
        Saved::Other(stands) => Ok((StatusCode::CONFLICT, stood(stands.as_ref()))),
    }
}

/// The saves of a text that are kept, the newest first.
fn earlier(desk: &Desk, asked: &Asked) -> Done {
    let kept = store::earlier(&desk.content, &asked.path)?;
    let one = |it: &store::Earlier| json!({ "name": it.name, "time": millis(it.time) });
    let kept: Vec<Value> = kept.iter().map(one).collect();
    Ok((StatusCode::OK, json!({ "earlier": kept })))
}

fn millis(time: SystemTime) -> u64 {
    let since = time.duration_since(UNIX_EPOCH).unwrap_or_default();
    u64::try_from(since.as_millis()).unwrap_or(u64::MAX)
}

/// What is not yet committed, where the course lies in a repository.
fn uncommitted(preview: &Preview, desk: &Desk) -> Done {
    let words = preview.show().words.clone();
    let said = |one: &store::Uncommitted| {
        let stands = words.get(match one.stands {
            store::Stands::New => "desk-new",
            store::Stands::Changed => "desk-changed",
            store::Stands::Gone => "desk-gone",
        });
        json!({ "path": one.path, "stands": stands })
    };
    let files = store::uncommitted(&desk.content);
    let files = files.map(|files| files.iter().map(said).collect::<Vec<_>>());
    Ok((StatusCode::OK, json!({ "files": files })))
}

/// An earlier save that is asked for.
#[derive(Deserialize)]
struct Back {
    path: String,
    name: String,
}

fn back(desk: &Desk, one: &Back) -> Done {
    let text = store::earlier_text(&desk.content, &one.path, &one.name)?;
    Ok((StatusCode::OK, json!({ "text": text })))
}

/// What is typed, as it is sent.
#[derive(Deserialize)]
pub(super) struct Sent {
    /// The text that is looked at.
    pub(super) path: String,
    /// The texts, by their paths.
    pub(super) texts: Typed,
}
