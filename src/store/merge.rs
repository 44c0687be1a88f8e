//! Clearing an edition that stands no longer, with care for what is not ours: whatever
//! others put into it, up to the last moment, moves into the edition that stands.
//!
//! Nothing is taken away but what the program made. A folder goes only when it is empty,
//! which the system itself makes sure of: what arrives in the meantime is found and moved.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]
#![allow(clippy::wildcard_enum_match_arm, reason = "the machine's errors are not ours")]

use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;
use std::fs::{self, DirEntry};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};
use std::time::SystemTime;

use rayon::prelude::*;

use super::folders::Side;
use super::manifest::{Made, Manifest, NAME};
use super::rename::{Inode, exchange, inode, rename_new};
use super::stream::alike;
use super::tree::{any_below, plain};
use super::{Doing, StoreError, doing};

/// How often a folder that fills up again is looked through before it is left for later.
const ROUNDS: usize = 1000;

/// An edition to be cleared.
pub(super) struct Clearing {
    /// The folder to be cleared.
    pub(super) old: PathBuf,
    /// The folder of the edition that stands.
    pub(super) new: PathBuf,
    /// Where that goes which has no place in it.
    pub(super) kept: PathBuf,
    /// What the program made in the old edition.
    pub(super) made: BTreeMap<String, Made>,
    /// What it made in the new one.
    pub(super) standing: BTreeMap<String, Made>,
    /// When the old edition was sealed.
    pub(super) sealed: SystemTime,
    /// Files of ours that are known not to be as they were made.
    pub(super) damaged: BTreeSet<String>,
    /// Files of others that stand in both, as they were when they were linked.
    pub(super) linked: BTreeMap<PathBuf, Inode>,
    /// What was met of them in the old edition, and what had to be kept elsewhere.
    pub(super) found: Mutex<Found>,
}

/// What was found while an edition was cleared.
#[derive(Debug, Default)]
pub(super) struct Found {
    met: BTreeSet<PathBuf>,
    kept: Vec<PathBuf>,
}

impl Clearing {
    /// The clearing of one side of an edition of which nothing is known but what lies in it.
    pub(super) fn of([old, new, kept]: [PathBuf; 3], side: Side) -> Self {
        let (made, sealed) = Manifest::read(&old);
        let (made, standing) = (made.part(side), Manifest::read(&new).0.part(side));
        let (damaged, linked) = (BTreeSet::new(), BTreeMap::new());
        let found = Mutex::default();
        Self { old, new, kept, made, standing, sealed, damaged, linked, found }
    }

    /// Moves these folders across, and files that were replaced just before the new edition
    /// came to stand, as soon as can be.
    ///
    /// # Errors
    /// The folder that the machine refuses to move, and why.
    pub(super) fn hurry(&self, folders: &[PathBuf]) -> Result<(), StoreError> {
        for (path, was) in &self.linked {
            let (from, to) = (self.old.join(path), self.new.join(path));
            let replaced = inode(&from).is_some_and(|now| now != *was);
            if replaced && inode(&to) == Some(*was) {
                // What does not succeed is done when this file comes to its turn.
                let _ = exchange(&from, &to);
            }
        }
        for folder in folders {
            let (from, to) = (self.old.join(folder), self.new.join(folder));
            let moved = rename_new(&from, &to).or_else(|error| match error.kind() {
                // It is gone, or something came in between: it comes to its turn.
                ErrorKind::NotFound | ErrorKind::AlreadyExists => Ok(()),
                _ => Err(error),
            });
            doing(moved, Doing::Move, &to)?;
        }
        Ok(())
    }

    /// Clears the edition; the places of what could not be put where it stood.
    ///
    /// # Errors
    /// Where the machine refuses: what is not moved stays in the old edition's folder.
    pub(super) fn run(self) -> io::Result<Vec<PathBuf>> {
        self.folder(Path::new(""))?;
        let found = self.found.into_inner().unwrap_or_else(PoisonError::into_inner);
        for (path, was) in &self.linked {
            let now = self.new.join(path);
            // It was taken away while the new edition was made.
            if !found.met.contains(path) && inode(&now) == Some(*was) {
                fs::remove_file(now)?;
            }
        }
        Ok(found.kept)
    }

    /// Clears a folder that stands in both editions, again where something arrived in
    /// between.
    fn folder(&self, path: &Path) -> io::Result<()> {
        let each = |entry: &DirEntry| self.entry(&path.join(entry.file_name()), entry);
        let (folder, at_root) = (self.old.join(path), path == Path::new(""));
        for _ in 0..ROUNDS {
            let entries: Vec<DirEntry> = match fs::read_dir(&folder) {
                Ok(entries) => entries.collect::<io::Result<_>>()?,
                Err(error) => return gone(error),
            };
            let (folders, files): (Vec<_>, Vec<_>) = entries
                .iter()
                .partition(|entry| entry.file_type().is_ok_and(|kind| kind.is_dir()));
            folders.into_par_iter().try_for_each(each)?;
            // The manifest says what is ours: it goes last.
            let manifest = |it: &&&DirEntry| at_root && it.file_name() == NAME;
            files.iter().filter(|it| !manifest(it)).try_for_each(|it| each(it))?;
            for entry in files.iter().filter(manifest) {
                fs::remove_file(entry.path()).or_else(gone)?;
            }
            match fs::remove_dir(&folder) {
                Err(error) if is_filled(&error) => {}
                Err(error) => return gone(error),
                Ok(()) => return Ok(()),
            }
        }
        Err(io::Error::other("others keep writing to it"))
    }

    fn entry(&self, path: &Path, entry: &DirEntry) -> io::Result<()> {
        let (name, is_folder) = (plain(path), entry.file_type()?.is_dir());
        if !is_folder {
            return if self.is_ours(&name, &entry.path()) {
                fs::remove_file(entry.path()).or_else(gone)
            } else {
                self.file(path)
            };
        }
        let ours = any_below(&self.made, &name);
        match fs::symlink_metadata(self.new.join(path)) {
            Ok(there) if there.is_dir() => self.folder(path),
            _ => {
                if ours {
                    self.purge(path)?;
                }
                self.whole(path)
            }
        }
    }

    /// Takes away what is ours in a folder that the new edition does not have; folders in
    /// which nothing is left go too.
    fn purge(&self, path: &Path) -> io::Result<()> {
        for entry in fs::read_dir(self.old.join(path))? {
            let entry = entry?;
            let (inner, file) = (path.join(entry.file_name()), entry.path());
            let name = plain(&inner);
            if !entry.file_type()?.is_dir() {
                if self.is_ours(&name, &file) {
                    fs::remove_file(file).or_else(gone)?;
                }
            } else if any_below(&self.made, &name) {
                self.purge(&inner)?;
            }
        }
        match fs::remove_dir(self.old.join(path)) {
            Err(error) if is_filled(&error) => Ok(()),
            done => done.or_else(gone),
        }
    }

    /// Moves a folder of others as it is.
    fn whole(&self, path: &Path) -> io::Result<()> {
        let (from, to) = (self.old.join(path), self.new.join(path));
        match rename_new(&from, &to) {
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {
                // Never through a link.
                let there = fs::symlink_metadata(&to).is_ok_and(|there| there.is_dir());
                if there { self.folder(path) } else { self.keep(path) }
            }
            done => done.or_else(gone),
        }
    }

    /// Whether a file is one that the program made, as it was made.
    fn is_ours(&self, name: &str, file: &Path) -> bool {
        let Some(made) = self.made.get(name) else { return false };
        let Ok(known) = fs::symlink_metadata(file) else { return false };
        let older = || known.modified().is_ok_and(|time| time < self.sealed);
        self.damaged.contains(name) && known.is_file()
            || made.has_size(&known) && (older() || made.is_at(file))
    }

    /// Moves a file of others to its place in the new edition, where it does not stand
    /// there yet.
    fn file(&self, path: &Path) -> io::Result<()> {
        self.found().met.insert(path.to_owned());
        let (from, to) = (self.old.join(path), self.new.join(path));
        let was = self.linked.get(path);
        let now = inode(&to);
        if now.is_none() && was.is_some() && inode(&from).as_ref() == was {
            // It was taken away since the new edition stands.
            return fs::remove_file(from).or_else(gone);
        }
        if now.is_none()
            && let Some(was) = was
            && let Some(moved) = self.renamed(*was)
        {
            // It was replaced before the new edition stood, and renamed since: the name has
            // gone to what was there before.
            exchange(&from, &moved)?;
            return fs::remove_file(from).or_else(gone);
        }
        match rename_new(&from, &to) {
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
            done => return done.or_else(gone),
        }
        if now.is_some() && now == inode(&from) || alike(&from, &to) {
            return fs::remove_file(from).or_else(gone);
        }
        if was.is_some() && inode(&from).as_ref() == was {
            // Its owner has put another in its place since.
            return fs::remove_file(from).or_else(gone);
        }
        let stale = was.is_some() && now.as_ref() == was;
        if !self.standing.contains_key(&plain(path)) && (stale || later(&from, &to)) {
            exchange(&from, &to)?;
            if stale && inode(&from).as_ref() == was {
                return fs::remove_file(from).or_else(gone);
            }
        }
        self.keep(path)
    }

    /// Where in the new edition a file lies that has a name there which it did not have when
    /// it was linked.
    fn renamed(&self, which: Inode) -> Option<PathBuf> {
        let files = walkdir::WalkDir::new(&self.new).into_iter().flatten();
        let mut paths =
            files.filter(|it| !it.file_type().is_dir()).map(walkdir::DirEntry::into_path);
        paths.find(|path| {
            let own = path.strip_prefix(&self.new).unwrap_or(path);
            inode(path) == Some(which) && !self.linked.contains_key(own)
        })
    }

    /// Moves something that has no place in the new edition to where it can be found.
    fn keep(&self, path: &Path) -> io::Result<()> {
        let (from, place) = (self.old.join(path), self.kept.join(path));
        if let Some(folder) = place.parent() {
            fs::create_dir_all(folder)?;
        }
        let name = place.file_name().unwrap_or(OsStr::new("file")).to_owned();
        for number in 1.. {
            let mut name = name.clone();
            if number > 1 {
                name.push(format!(".{number}"));
            }
            let to = place.with_file_name(name);
            match rename_new(&from, &to) {
                Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
                Err(error) => return gone(error),
                Ok(()) => {
                    self.found().kept.push(to);
                    return Ok(());
                }
            }
        }
        Ok(())
    }

    fn found(&self) -> std::sync::MutexGuard<'_, Found> {
        self.found.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// What is gone by itself needs no more care.
fn gone(error: io::Error) -> io::Result<()> {
    if error.kind() == ErrorKind::NotFound { Ok(()) } else { Err(error) }
}

/// Whether a folder could not be taken away because something lies in it.
fn is_filled(error: &io::Error) -> bool {
    matches!(error.kind(), ErrorKind::DirectoryNotEmpty | ErrorKind::AlreadyExists)
}

/// Whether a file was written later than another.
fn later(one: &Path, other: &Path) -> bool {
    let time = |path: &Path| fs::symlink_metadata(path).ok()?.modified().ok();
    time(one) > time(other)
}

#[cfg(all(test, unix))]
mod tests {
    use super::*;

    /// A folder for one test, with two editions in it.
    fn editions(name: &str) -> (PathBuf, PathBuf, PathBuf) {
        let folder = std::env::temp_dir().join(format!("tourier-merge-{name}"));
        let _ = fs::remove_dir_all(&folder);
        let (old, new) = (folder.join("old"), folder.join("new"));
        fs::create_dir_all(&old).expect("a folder");
        fs::create_dir_all(&new).expect("a folder");
        (folder, old, new)
    }

    /// A file is replaced between its linking and the swap: the new edition has it as it was
    /// before. `then` is what happens to it there.
    fn replaced(name: &str, then: impl FnOnce(&Path, &Clearing)) -> (PathBuf, PathBuf) {
        let (folder, old, new) = editions(name);
        fs::write(old.join("note.txt"), "before").expect("written");
        fs::hard_link(old.join("note.txt"), new.join("note.txt")).expect("linked");
        let was = inode(&new.join("note.txt")).expect("a file");
        fs::write(old.join("part"), "after").expect("written");
        fs::rename(old.join("part"), old.join("note.txt")).expect("renamed");
        let folders = [old, new.clone(), folder.join("kept")];
        let mut clearing = Clearing::of(folders, Side::Site);
        clearing.linked.insert("note.txt".into(), was);
        then(&new, &clearing);
        clearing.run().expect("cleared");
        (folder, new)
    }

    fn text(path: PathBuf) -> Option<String> {
        fs::read_to_string(path).ok()
    }

    #[test]
    fn a_file_replaced_just_before_the_swap_is_there_at_once() {
        let (folder, new) = replaced("at-once", |new, clearing| {
            clearing.hurry(&[]).expect("moved");
            assert_eq!(text(new.join("note.txt")).as_deref(), Some("after"));
        });
        assert_eq!(text(new.join("note.txt")).as_deref(), Some("after"));
        assert!(!folder.join("kept").exists() && !folder.join("old").exists());
    }

    #[test]
    fn what_replaced_a_file_follows_it_to_its_new_name() {
        let (folder, new) = replaced("renamed", |new, _| {
            fs::rename(new.join("note.txt"), new.join("letter.txt")).expect("renamed");
        });
        assert_eq!(text(new.join("letter.txt")).as_deref(), Some("after"));
        assert!(!new.join("note.txt").exists() && !folder.join("kept").exists());
    }
}
