//! A class's text as fields of a form, and the text with what is said in them.

use hyper::StatusCode;
use serde::Deserialize;
use serde_json::json;

use crate::form::{self, Fields, Unwritten};
use crate::said;

use super::call::{Done, Undone};

/// The text of a class, as it stands at the desk.
#[derive(Deserialize)]
pub(super) struct Asked {
    text: String,
}

/// Likewise, and what is said in the form.
#[derive(Deserialize)]
pub(super) struct Said {
    text: String,
    fields: Fields,
}

/// What stands in it, field by field.
pub(super) fn read(asked: &Asked) -> Done {
    let form = form::read(&asked.text).ok_or_else(|| undone(&Unwritten::Unread))?;
    Ok((StatusCode::OK, json!(form)))
}

/// The text with what is said.
pub(super) fn write(said: &Said) -> Done {
    let text = form::write(&said.text, &said.fields).map_err(|why| undone(&why))?;
    Ok((StatusCode::OK, json!({ "text": text })))
}

fn undone(why: &Unwritten) -> Undone {
    Undone::Told(match why {
        Unwritten::Unread => said!("desk-form-unread"),
        Unwritten::NoPair(line) => said!("desk-form-no-pair", line = line.clone()),
        Unwritten::Layout => said!("desk-form-layout"),
    })
}
