//! The folder in which the new edition is put together beside the old one, and the swap.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use rayon::prelude::*;
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
        doing(clear(folder), "clear", folder)?;
        any = true;
    }
    Ok(any)
}

impl Stage {
    /// An empty stage beside `output`.
    pub(super) fn open(output: &Path) -> Result<Self, StoreError> {
        recover(output)?;
        writable(output)?;
        let folder = beside(output, "next");
        doing(fs::create_dir_all(&folder), "make", &folder)?;
        Ok(Self { output: output.to_owned(), folder })
    }

    /// Writes one file.
    pub(super) fn write(&self, path: &str, bytes: &[u8]) -> Result<(), StoreError> {
        let to = self.place(path)?;
        doing(fs::write(&to, bytes), "write", &to)
    }

    /// Takes files over from the old edition as they are, and makes folders that hold
    /// nothing: who made them may want them.
    pub(super) fn keep(
        &self,
        files: &[&str],
        hollows: &[String],
    ) -> Result<(), StoreError> {
        let above = files.iter().filter_map(|path| path.rsplit_once('/'));
        let folders: BTreeSet<&str> = above.map(|(folder, _)| folder).collect();
        for folder in folders.into_iter().chain(hollows.iter().map(String::as_str)) {
            let folder = self.folder.join(folder);
            doing(fs::create_dir_all(&folder), "make", &folder)?;
        }
        files.par_iter().try_for_each(|path| {
            let (from, to) = (self.output.join(path), self.folder.join(path));
            if fs::hard_link(&from, &to).is_ok() {
                return Ok(());
            }
            doing(fs::copy(&from, &to).map(|_| ()), "copy", &from)
        })
    }

    /// The bytes that stand at `path` in the new edition, where it is a file.
    pub(super) fn staged(&self, path: &str) -> Option<Vec<u8>> {
        fs::read(self.folder.join(path)).ok()
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
            let _ = clear(&old);
        }
        Ok(())
    }
}

impl Drop for Stage {
    /// What is left over: the old edition after a swap, else one that will not be.
    fn drop(&mut self) {
        let _ = clear(&self.folder);
    }
}

/// Takes a folder away, what lies in its folders side by side.
fn clear(folder: &Path) -> std::io::Result<()> {
    let inner = WalkDir::new(folder).min_depth(2).max_depth(2).into_iter();
    let inner: Vec<PathBuf> = inner
        .filter_map(Result::ok)
        .filter(|entry| entry.file_type().is_dir())
        .map(DirEntry::into_path)
        .collect();
    inner.par_iter().try_for_each(fs::remove_dir_all)?;
    fs::remove_dir_all(folder)
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
    let found = Tree::below(folder).map_err(|error| error.source)?.files;
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

/// What lies below a folder.
#[derive(Default)]
pub(super) struct Tree {
    /// Everything that is no folder itself, in order.
    pub(super) files: Vec<Found>,
    /// The folders that hold nothing.
    pub(super) hollows: Vec<String>,
}

impl Tree {
    /// Looks at a folder; nothing lies below it where it is not there.
    ///
    /// # Errors
    /// Where a part of it cannot be looked at: what lies there would be lost.
    pub(super) fn below(folder: &Path) -> Result<Self, StoreError> {
        let mut tree = Self::default();
        if !folder.exists() {
            return Ok(tree);
        }
        // The last folder met; it holds nothing where what comes next is not in it.
        let mut last: Option<(String, usize)> = None;
        for entry in WalkDir::new(folder).min_depth(1).sort_by_file_name() {
            let entry = entry.map_err(|error| StoreError::walking(folder, error))?;
            let hollow = last.take().filter(|(_, depth)| entry.depth() <= *depth);
            tree.hollows.extend(hollow.map(|(path, _)| path));
            let Some(path) = below(folder, &entry) else { continue };
            if entry.file_type().is_dir() {
                last = Some((path, entry.depth()));
            } else {
                tree.files.push(Found { path, plain: entry.file_type().is_file() });
            }
        }
        tree.hollows.extend(last.map(|(path, _)| path));
        Ok(tree)
    }

    /// Whether a file stands at `path`.
    pub(super) fn has(&self, path: &str) -> bool {
        // In order folder by folder, which is not quite the order of the paths.
        let order = |found: &Found| found.path.split('/').cmp(path.split('/'));
        let at = self.files.binary_search_by(order);
        at.is_ok_and(|at| self.files[at].plain)
    }
}

fn below(folder: &Path, entry: &DirEntry) -> Option<String> {
    let path = entry.path().strip_prefix(folder).ok()?;
    let parts: Vec<_> =
        path.components().map(|part| part.as_os_str().to_string_lossy()).collect();
    Some(parts.join("/"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tree_knows_its_files_and_its_hollow_folders() {
        let folder = std::env::temp_dir().join("tourier-tree-test");
        let _ = fs::remove_dir_all(&folder);
        for inner in ["a/none", "a-b", "b/deep/none", "c"] {
            fs::create_dir_all(folder.join(inner)).expect("a folder can be made");
        }
        for file in ["a/x", "a.txt", "a-b/y", "b/deep/z", "d"] {
            fs::write(folder.join(file), "text").expect("a file can be written");
        }
        let tree = Tree::below(&folder).expect("it can be looked at");
        assert_eq!(tree.hollows, ["a/none", "b/deep/none", "c"]);
        for file in ["a/x", "a.txt", "a-b/y", "b/deep/z", "d"] {
            assert!(tree.has(file), "{file}");
        }
        for none in ["a", "a/none", "x", "", "d/x"] {
            assert!(!tree.has(none), "{none}");
        }
        assert!(clear(&folder).is_ok() && !folder.exists());
        assert!(Tree::below(&folder).is_ok_and(|tree| tree.files.is_empty()));
    }
}
