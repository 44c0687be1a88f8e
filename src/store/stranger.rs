//! One text from outside the content folder.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::io::Read;
use std::path::Path;

use crate::said;

use super::{Doing, StoreError, doing};

/// A text from outside may have so many bytes.
const MOST: u64 = 8 * 1024 * 1024;

/// The text of a file, or what comes in by standard input where the file is called `-`.
///
/// # Errors
/// Where the machine refuses, and where it is no UTF-8 text or more than 8 MiB.
pub fn text_of(path: &Path) -> Result<String, StoreError> {
    let mut bytes = Vec::new();
    let read = if path.as_os_str() == "-" {
        std::io::stdin().lock().take(MOST + 1).read_to_end(&mut bytes)
    } else {
        let file = doing(std::fs::File::open(path), Doing::Read, path)?;
        file.take(MOST + 1).read_to_end(&mut bytes)
    };
    doing(read, Doing::Read, path)?;
    let unfit = |why| Err(StoreError::refused(path, Doing::Read, why));
    if bytes.len() as u64 > MOST {
        return unfit(said!("text-too-long"));
    }
    match String::from_utf8(bytes) {
        Ok(text) => Ok(text),
        Err(_) => unfit(said!("text-not-utf8")),
    }
}
