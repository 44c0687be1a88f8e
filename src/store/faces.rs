//! The course's own typefaces: plain font files directly in its media folder.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::path::Path;

use walkdir::WalkDir;

use crate::fault::Fault;
use crate::said;

use super::StoreError;
use super::load::{read, refused};

/// A font file larger than this is refused.
const LARGEST: u64 = 20 << 20;

/// The names of font files with their bytes, and the faults of others.
type Found = (Vec<(String, Vec<u8>)>, Vec<Fault>);

/// The typefaces in the media folder, in order of their names, and the faults of files
/// that cannot be taken.
///
/// # Errors
/// Where the folder or a file cannot be read.
pub fn faces(folder: &Path) -> Result<Found, StoreError> {
    let folder = folder.join("media");
    let (mut faces, mut faults) = (Vec::new(), Vec::new());
    // A link in place of the folder is named where the texts are loaded.
    if !std::fs::symlink_metadata(&folder).is_ok_and(|folder| folder.is_dir()) {
        return Ok((faces, faults));
    }
    for entry in WalkDir::new(&folder).sort_by_file_name().min_depth(1).max_depth(1) {
        let entry = entry.map_err(|error| StoreError::walking(&folder, error))?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if !(name.ends_with(".ttf") || name.ends_with(".otf")) {
            continue;
        }
        let path = format!("media/{name}");
        if entry.path_is_symlink() || !entry.file_type().is_file() {
            let why = said!("unread-typeface-link");
            faults.push(refused(&path, why, said!("unread-typeface-link-help")));
            continue;
        }
        let bytes = read(&entry, LARGEST)?;
        if bytes.len() as u64 > LARGEST {
            let help = said!("unread-typeface-large-help");
            faults.push(refused(&path, said!("unread-typeface-large"), help));
        } else {
            faces.push((name, bytes));
        }
    }
    Ok((faces, faults))
}
