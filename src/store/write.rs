//! One file on its own.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::path::Path;

use super::{StoreError, doing};

/// Saves one file, written beside and renamed, so that it is there whole or not at all.
///
/// # Errors
/// Where the machine refuses.
pub fn save(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    if let Some(parent) = path.parent() {
        doing(std::fs::create_dir_all(parent), "make", parent)?;
    }
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(".part");
    let beside = path.with_file_name(name);
    let written = std::fs::write(&beside, bytes);
    let saved = written.and_then(|()| std::fs::rename(&beside, path));
    if saved.is_err() {
        let _ = std::fs::remove_file(&beside);
    }
    doing(saved, "write", path)
}
