//! Whether a folder may be filled.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::io::ErrorKind;
use std::path::Path;

use super::{Doing, StoreError, doing};

/// Whether `folder` is not there yet, or is there with nothing in it.
///
/// # Errors
/// Where the machine does not say, or a file stands in the folder's place.
pub fn is_vacant(folder: &Path) -> Result<bool, StoreError> {
    match std::fs::read_dir(folder) {
        Ok(mut entries) => Ok(entries.next().is_none()),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(true),
        Err(error) => doing(Err(error), Doing::Open, folder),
    }
}
