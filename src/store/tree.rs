//! What lies in an output folder besides what the program made.
#![allow(clippy::disallowed_methods, reason = "this room looks at files")]

use std::collections::BTreeMap;
use std::fs::Metadata;
use std::path::{Path, PathBuf};

use walkdir::WalkDir;

use super::StoreError;
use super::manifest::{Made, NAME};

/// What the program makes, by path.
pub(super) type Ours<'a> = &'a BTreeMap<String, Made>;

/// Whether the program makes anything in this folder, at any depth.
pub(super) fn any_below(ours: Ours, folder: &str) -> bool {
    let inside = format!("{folder}/");
    ours.range(inside.clone()..).next().is_some_and(|(path, _)| path.starts_with(&inside))
}

/// What others put into an output folder, and our own folders.
#[derive(Default)]
pub(super) struct Guests {
    /// Files, links and the like in folders that are ours too.
    pub(super) files: Vec<PathBuf>,
    /// Folders in which nothing is ours; what lies in them is not looked at.
    pub(super) folders: Vec<PathBuf>,
    /// Folders in which something is ours, the output folder itself as the empty path.
    pub(super) shared: Vec<(PathBuf, Metadata)>,
}

impl Guests {
    /// Looks at an output folder in which the program made or makes all of `ours`.
    ///
    /// # Errors
    /// Where a part of it cannot be looked at: what lies there would be lost.
    pub(super) fn of(output: &Path, ours: &[Ours; 2]) -> Result<Self, StoreError> {
        let mut guests = Self::default();
        let ours_in = |path: &str| ours.iter().any(|it| any_below(it, path));
        let is_ours = |path: &str| ours.iter().any(|it| it.contains_key(path));
        let mut walk = WalkDir::new(output).into_iter();
        while let Some(entry) = walk.next() {
            let entry = entry.map_err(|error| StoreError::walking(output, error))?;
            let place = entry.path().strip_prefix(output).unwrap_or(entry.path());
            let path = plain(place);
            if !entry.file_type().is_dir() {
                if path != NAME && !is_ours(&path) {
                    guests.files.push(place.to_owned());
                }
            } else if path.is_empty() || ours_in(&path) {
                let known = entry.metadata();
                let known = known.map_err(|error| StoreError::walking(output, error))?;
                guests.shared.push((place.to_owned(), known));
            } else {
                guests.folders.push(place.to_owned());
                walk.skip_current_dir();
            }
        }
        Ok(guests)
    }
}

/// A path below a folder as the manifest has it: text with forward slashes.
pub(super) fn plain(path: &Path) -> String {
    let parts: Vec<_> =
        path.components().map(|part| part.as_os_str().to_string_lossy()).collect();
    parts.join("/")
}
