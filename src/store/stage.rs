//! The folder in which the new edition is put together beside the old one, and the swap.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs;
use std::path::{Path, PathBuf};

use walkdir::WalkDir;

use super::{StoreError, doing};

/// A new edition beside the old one.
pub(super) struct Stage {
    /// The output folder.
    output: PathBuf,
    /// The folder beside it.
    folder: PathBuf,
}

impl Stage {
    /// An empty stage beside `output`; one left over from a broken run is cleared.
    pub(super) fn open(output: &Path) -> Result<Self, StoreError> {
        let mut name = output.file_name().unwrap_or_default().to_owned();
        name.push(".next");
        let folder = output.with_file_name(name);
        if folder.exists() {
            doing(fs::remove_dir_all(&folder), "clear", &folder)?;
        }
        doing(fs::create_dir_all(&folder), "make", &folder)?;
        Ok(Self { output: output.to_owned(), folder })
    }

    /// Writes one file.
    pub(super) fn write(&self, path: &str, bytes: &[u8]) -> Result<(), StoreError> {
        let to = self.place(path)?;
        doing(fs::write(&to, bytes), "write", &to)
    }

    /// Takes one file over from the old edition as it is.
    pub(super) fn keep(&self, path: &str) -> Result<(), StoreError> {
        let (from, to) = (self.output.join(path), self.place(path)?);
        if fs::hard_link(&from, &to).is_ok() {
            return Ok(());
        }
        doing(fs::copy(&from, &to).map(|_| ()), "copy", &from)
    }

    fn place(&self, path: &str) -> Result<PathBuf, StoreError> {
        let to = self.folder.join(path);
        if let Some(parent) = to.parent() {
            doing(fs::create_dir_all(parent), "make", parent)?;
        }
        Ok(to)
    }

    /// Puts the new edition in the old one's place, in one step where the system can, and
    /// clears the old one away.
    pub(super) fn swap(self) -> Result<(), StoreError> {
        if self.output.exists() {
            if !exchange(&self.folder, &self.output) {
                let old = self.folder.with_extension("old");
                doing(fs::rename(&self.output, &old), "move", &self.output)?;
                doing(fs::rename(&self.folder, &self.output), "move", &self.folder)?;
                doing(fs::rename(&old, &self.folder), "move", &old)?;
            }
            return doing(fs::remove_dir_all(&self.folder), "clear", &self.folder);
        }
        doing(fs::rename(&self.folder, &self.output), "move", &self.folder)
    }
}

/// Exchanges two folders in one step. False where the system cannot.
#[cfg(target_os = "linux")]
fn exchange(a: &Path, b: &Path) -> bool {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    renameat_with(CWD, a, CWD, b, RenameFlags::EXCHANGE).is_ok()
}

/// Exchanges two folders in one step. False where the system cannot.
#[cfg(not(target_os = "linux"))]
fn exchange(_: &Path, _: &Path) -> bool {
    false
}

/// Every file below a folder, by path with forward slashes, in order.
pub(super) fn files(folder: &Path) -> Vec<String> {
    let walk =
        WalkDir::new(folder).sort_by_file_name().into_iter().filter_map(Result::ok);
    walk.filter(|entry| !entry.file_type().is_dir())
        .filter_map(|entry| {
            let path = entry.path().strip_prefix(folder).ok()?;
            let parts: Vec<_> = path
                .components()
                .map(|part| part.as_os_str().to_string_lossy())
                .collect();
            Some(parts.join("/"))
        })
        .collect()
}
