//! One hash for everything that an edition is read from.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::path::Path;

use walkdir::WalkDir;

use super::load::{LARGEST_PICTURE, read};
use crate::product::Key;

/// Stands for every file below `folders` and for the program: the same fingerprint means
/// the same edition. `None` where that cannot be said: a file cannot be read, is larger
/// than any that is taken, or is a link.
pub fn fingerprint(folders: &[&Path]) -> Option<String> {
    let mut key = Key::default();
    for folder in folders {
        // Where the folder stands is no matter, which of the two it is.
        key.add(b"folder");
        for entry in WalkDir::new(folder).min_depth(1).sort_by_file_name() {
            let entry = entry.ok()?;
            let name = entry.path().strip_prefix(folder).ok()?.to_string_lossy();
            // What happened on an evening is no part of an edition.
            if entry.file_type().is_dir() || super::day::is_day(&name.replace('\\', "/"))
            {
                continue;
            }
            let plain = entry.file_type().is_file();
            if !plain || entry.metadata().ok()?.len() > LARGEST_PICTURE {
                return None;
            }
            let path = entry.path().strip_prefix(folder).ok()?;
            key.add(path.as_os_str().as_encoded_bytes());
            key.add(&read(&entry, LARGEST_PICTURE).ok()?);
        }
    }
    Some(key.end())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_files_have_the_same_fingerprint() {
        let content = Path::new("tests/golden/course");
        let one = fingerprint(&[content]);
        assert!(one.is_some());
        assert_eq!(one, fingerprint(&[content]));
        assert_ne!(one, fingerprint(&[content, content]));
        assert_ne!(one, fingerprint(&[Path::new("tests/golden/course/recipes")]));
        assert_eq!(None, fingerprint(&[Path::new("tests/golden/no such folder")]));
    }
}
