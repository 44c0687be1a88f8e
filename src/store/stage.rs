//! The folder in which the new edition is put together beside the old one, and the swap.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs;
use std::path::{Path, PathBuf};

use walkdir::{DirEntry, WalkDir};

use super::{StoreError, doing};

/// A new edition beside the old one; cleared away again where it is not swapped in.
pub(super) struct Stage {
    /// The output folder.
    output: PathBuf,
    /// The folder beside it.
    folder: PathBuf,
}

/// A hidden place of ours beside the output folder.
pub(super) fn beside(output: &Path, what: &str) -> PathBuf {
    let name = output.file_name().unwrap_or_default().to_string_lossy();
    output.with_file_name(format!(".{name}.tourier-{what}"))
}

/// Puts things right after a publish that was cut short: where the old edition had been
/// moved aside, it stands in its place again. True where there was anything to clear.
///
/// # Errors
/// Where the machine refuses.
pub(super) fn recover(output: &Path) -> Result<bool, StoreError> {
    let (next, old) = (beside(output, "next"), beside(output, "old"));
    if old.exists() && !output.exists() {
        doing(fs::rename(&old, output), "move", &old)?;
    }
    let mut any = false;
    for folder in [next, old].iter().filter(|folder| folder.exists()) {
        doing(fs::remove_dir_all(folder), "clear", folder)?;
        any = true;
    }
    Ok(any)
}

impl Stage {
    /// An empty stage beside `output`, with the folders in it that hold nothing: who made
    /// them may want them.
    pub(super) fn open(output: &Path) -> Result<Self, StoreError> {
        recover(output)?;
        writable(output)?;
        let folder = beside(output, "next");
        doing(fs::create_dir_all(&folder), "make", &folder)?;
        let stage = Self { output: output.to_owned(), folder };
        for hollow in hollows(output) {
            let hollow = stage.folder.join(hollow);
            doing(fs::create_dir_all(&hollow), "make", &hollow)?;
        }
        Ok(stage)
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

    /// The bytes that stand at `path` in the old edition, where it is a file.
    pub(super) fn old(&self, path: &str) -> Option<Vec<u8>> {
        fs::read(self.output.join(path)).ok()
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
        if let Ok(known) = fs::metadata(&self.output) {
            let rights = fs::set_permissions(&self.folder, known.permissions());
            doing(rights, "make", &self.folder)?;
        }
        doing(settle(&self.folder), "write", &self.folder)?;
        if !self.output.exists() {
            doing(fs::rename(&self.folder, &self.output), "move", &self.folder)?;
        } else if !exchange(&self.folder, &self.output) {
            let old = beside(&self.output, "old");
            doing(fs::rename(&self.output, &old), "move", &self.output)?;
            doing(fs::rename(&self.folder, &self.output), "move", &self.folder)?;
            // The new edition stands: what cannot be cleared now is cleared next time.
            let _ = fs::remove_dir_all(&old);
        }
        Ok(())
    }
}

impl Drop for Stage {
    /// What is left over: the old edition after a swap, else one that will not be.
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.folder);
    }
}

/// A folder that nobody may write to is left as it is, though it could be swapped.
fn writable(output: &Path) -> Result<(), StoreError> {
    let read_only = fs::metadata(output).is_ok_and(|of| of.permissions().readonly());
    let refused = if read_only {
        Err(std::io::ErrorKind::ReadOnlyFilesystem.into())
    } else {
        Ok(())
    };
    doing(refused, "write to", output)
}

/// Exchanges two folders in one step. False where the system cannot.
#[cfg(any(target_os = "linux", target_vendor = "apple"))]
fn exchange(a: &Path, b: &Path) -> bool {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    renameat_with(CWD, a, CWD, b, RenameFlags::EXCHANGE).is_ok()
}

/// Exchanges two folders in one step. False where the system cannot.
#[cfg(not(any(target_os = "linux", target_vendor = "apple")))]
fn exchange(_: &Path, _: &Path) -> bool {
    false
}

/// Waits until everything written lies on the disk: a power cut after the swap must not
/// find empty files in the new edition.
#[cfg(target_os = "linux")]
fn settle(folder: &Path) -> std::io::Result<()> {
    Ok(rustix::fs::syncfs(fs::File::open(folder)?)?)
}

/// Waits until everything written lies on the disk: a power cut after the swap must not
/// find empty files in the new edition.
#[cfg(not(target_os = "linux"))]
fn settle(folder: &Path) -> std::io::Result<()> {
    let found = files(folder).map_err(|error| error.source)?;
    found.iter().filter(|found| found.plain).try_for_each(|found| {
        fs::File::options().append(true).open(folder.join(&found.path))?.sync_all()
    })
}

/// Something in a folder that is no folder itself.
pub(super) struct Found {
    /// Its path below the folder, with forward slashes.
    pub(super) path: String,
    /// Whether it is a file; else a link or the like.
    pub(super) plain: bool,
}

/// Everything below a folder that is no folder itself, in order; nothing where there is no
/// such folder.
///
/// # Errors
/// Where a part of it cannot be looked at: what lies there would be lost.
pub(super) fn files(folder: &Path) -> Result<Vec<Found>, StoreError> {
    if !folder.exists() {
        return Ok(Vec::new());
    }
    let mut found = Vec::new();
    for entry in WalkDir::new(folder).sort_by_file_name() {
        let entry = entry.map_err(|error| StoreError::walking(folder, error))?;
        if let Some(path) = below(folder, &entry).filter(|_| !entry.file_type().is_dir())
        {
            found.push(Found { path, plain: entry.file_type().is_file() });
        }
    }
    Ok(found)
}

/// The folders below a folder that hold nothing.
fn hollows(folder: &Path) -> Vec<String> {
    let walk = WalkDir::new(folder).min_depth(1).into_iter().filter_map(Result::ok);
    walk.filter(|entry| entry.file_type().is_dir())
        .filter(|entry| {
            fs::read_dir(entry.path()).is_ok_and(|mut inside| inside.next().is_none())
        })
        .filter_map(|entry| below(folder, &entry))
        .collect()
}

fn below(folder: &Path, entry: &DirEntry) -> Option<String> {
    let path = entry.path().strip_prefix(folder).ok()?;
    let parts: Vec<_> =
        path.components().map(|part| part.as_os_str().to_string_lossy()).collect();
    Some(parts.join("/"))
}
