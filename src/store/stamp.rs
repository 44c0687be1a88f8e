//! The state of folders, to see that something in them was saved.
#![allow(clippy::disallowed_methods, reason = "this room looks at files")]

use std::path::Path;
use std::time::SystemTime;

use sha2::{Digest, Sha256};
use walkdir::{DirEntry, WalkDir};

use crate::encode::hex;

use super::day::is_day;
use super::load::is_hidden;

/// How deep files are looked at: a theme's or an older edition's lie deepest.
const DEEPEST: usize = 5;

/// Stands for the names, sizes and times of all files in `folders` that are not hidden, but for
/// day files: no edition is made from what happens on an evening.
/// It only says that something may have changed; what is made anew goes by content.
pub fn stamp<P: AsRef<Path>>(folders: &[P]) -> String {
    let mut hash = Sha256::new();
    for folder in folders {
        let files = WalkDir::new(folder).sort_by_file_name().max_depth(DEEPEST);
        let day = |entry: &DirEntry| {
            let path = entry.path().strip_prefix(folder);
            path.is_ok_and(|path| is_day(&path.to_string_lossy().replace('\\', "/")))
        };
        let files = files.into_iter().filter_entry(|entry| {
            entry.depth() == 0 || !(is_hidden(entry) || day(entry))
        });
        for entry in files.flatten() {
            hash.update(entry.path().as_os_str().as_encoded_bytes());
            hash.update(state(&entry).unwrap_or_default());
        }
    }
    hex(&hash.finalize()[..8])
}

/// A file's size and time. A folder's own time says nothing: its files are looked at.
fn state(entry: &DirEntry) -> Option<[u8; 24]> {
    let metadata = entry.metadata().ok().filter(std::fs::Metadata::is_file)?;
    let time = metadata.modified().ok()?;
    let time = time.duration_since(SystemTime::UNIX_EPOCH).ok()?.as_nanos();
    let mut state = [0; 24];
    state[..8].copy_from_slice(&metadata.len().to_le_bytes());
    state[8..].copy_from_slice(&time.to_le_bytes());
    Some(state)
}
