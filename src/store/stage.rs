//! The folders in which a new edition is put together beside the old one, and the swap.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, Metadata};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use rayon::prelude::*;

use crate::product::Product;

use super::folders::{Folders, Side};
use super::manifest::NAME;
use super::merge::Clearing;
use super::rename::{Inode, exchange, inode, rename_new};
use super::shared::Shared;
use super::stream::alike;
use super::{Doing, StoreError, doing};

/// One side of a new edition beside the old one; taken away again where it is not swapped
/// in.
pub(super) struct Stage {
    /// The folder of the edition that stands.
    output: PathBuf,
    /// The folder beside it.
    folder: PathBuf,
}

/// A new edition: the site, and what is the instructor's alone.
pub(super) struct Stages {
    pub(super) site: Stage,
    pub(super) instructor: Stage,
    /// What others may have made already.
    shared: Option<Shared>,
}

/// A hidden place of ours beside the output folder.
pub(super) fn beside(output: &Path, what: &str) -> PathBuf {
    let name = output.file_name().unwrap_or_default().to_string_lossy();
    output.with_file_name(format!(".{name}.tourier-{what}"))
}

/// Puts things right after a publish that was cut short: where the old edition had been
/// moved aside, it stands in its place again; where only the site had its new edition, the
/// instructor's comes to stand too; and what others put into an edition that is not the one
/// that stands moves into that. What was found.
///
/// # Errors
/// Where the machine refuses.
pub(super) fn recover(folders: &Folders) -> Result<Recovered, StoreError> {
    let mut recovered = put_right(folders, Side::Site)?;
    finish(folders)?;
    let more = put_right(folders, Side::Instructor)?;
    recovered.any |= more.any;
    recovered.kept.extend(more.kept);
    Ok(recovered)
}

/// Puts one side right.
fn put_right(folders: &Folders, side: Side) -> Result<Recovered, StoreError> {
    let output = folders.get(side);
    let (next, old) = (beside(output, "next"), beside(output, "old"));
    let mut recovered = Recovered::default();
    if old.exists() && !output.exists() {
        doing(fs::rename(&old, output), Doing::Move, &old)?;
    }
    if old.exists() {
        let places = [old.clone(), output.to_owned(), beside(output, "kept")];
        let clearing = Clearing::of(places, side);
        recovered =
            Recovered { any: true, kept: doing(clearing.run(), Doing::Clear, &old)? };
    }
    if next.exists() {
        doing(fs::remove_dir_all(&next), Doing::Clear, &next)?;
        recovered.any = true;
    }
    Ok(recovered)
}

/// Brings the instructor's new edition to stand where a publish was cut short between the
/// two exchanges: it is the one that has the manifest of the site that stands.
fn finish(folders: &Folders) -> Result<(), StoreError> {
    let manifest = |folder: &Path| fs::read(folder.join(NAME)).ok();
    let output = folders.get(Side::Instructor);
    let Some(standing) = manifest(folders.get(Side::Site)) else { return Ok(()) };
    let is_new = |folder: &Path| manifest(folder).as_ref() == Some(&standing);
    let (next, old) = (beside(output, "next"), beside(output, "old"));
    if is_new(output) {
        Ok(())
    } else if is_new(&old) {
        trade(output)
    } else if is_new(&next) {
        Stage::new(output).swap().map(|_| ())
    } else {
        Ok(())
    }
}

/// Exchanges a folder with what lies aside of it, where both are there.
fn trade(output: &Path) -> Result<(), StoreError> {
    let (next, old) = (beside(output, "next"), beside(output, "old"));
    if !old.exists() || !output.exists() || exchange(&old, output).is_ok() {
        return Ok(());
    }
    doing(fs::rename(output, &next), Doing::Move, output)?;
    doing(fs::rename(&old, output), Doing::Move, &old)?;
    doing(fs::rename(&next, &old), Doing::Move, &next)
}

/// What was put right.
#[derive(Default)]
pub(super) struct Recovered {
    /// Whether there was anything.
    pub(super) any: bool,
    /// Where files of others were put that had no place.
    pub(super) kept: Vec<PathBuf>,
}

impl Stages {
    /// Empty stages beside the folders of an edition, where nothing lies of an earlier one.
    /// What is the instructor's has none before something is put on it.
    pub(super) fn open(folders: &Folders) -> Result<Self, StoreError> {
        let [site, instructor] = Side::BOTH.map(|side| Stage::new(folders.get(side)));
        doing(fs::create_dir_all(&site.folder), Doing::Make, &site.folder)?;
        Ok(Self { site, instructor, shared: folders.shared.clone() })
    }

    /// Writes one file of the edition.
    pub(super) fn write(&self, path: &str, bytes: &[u8]) -> Result<(), StoreError> {
        let (stage, path) = self.at(path);
        stage.write(path, bytes)
    }

    /// The bytes of a file, where they are shared and another has made it.
    pub(super) fn made_by_others(&self, product: &Product) -> Option<Vec<u8>> {
        self.shared.as_ref()?.get(product)
    }

    /// Gives a file that was made now to others too, where files are shared.
    pub(super) fn given(&self, product: &Product, bytes: Vec<u8>) -> Vec<u8> {
        if let Some(shared) = &self.shared {
            shared.put(product, &bytes);
        }
        bytes
    }

    /// Where a file of the new edition is written to, part by part.
    pub(super) fn room(&self, path: &str) -> Result<PathBuf, StoreError> {
        let (stage, path) = self.at(path);
        stage.place(path)
    }

    /// The bytes of a file of the new edition, where it is there.
    pub(super) fn staged(&self, path: &str) -> Option<Vec<u8>> {
        let (stage, path) = self.at(path);
        fs::read(stage.folder.join(path)).ok()
    }

    /// Where a file of the old edition stands, if it does.
    pub(super) fn old(&self, path: &str) -> PathBuf {
        let (stage, path) = self.at(path);
        stage.output.join(path)
    }

    /// Whether a file stands in the old edition that is not the same in the new one.
    pub(super) fn differs(&self, path: &str) -> bool {
        let (stage, path) = self.at(path);
        stage.output.join(path).is_file() && !stage.is_same(path)
    }

    fn at<'p>(&self, path: &'p str) -> (&Stage, &'p str) {
        let (side, path) = Side::of(path);
        let stage = match side {
            Side::Site => &self.site,
            Side::Instructor => &self.instructor,
        };
        (stage, path)
    }
}

impl Stage {
    /// A stage beside a folder.
    fn new(output: &Path) -> Self {
        Self { output: output.to_owned(), folder: beside(output, "next") }
    }

    /// Writes one file.
    pub(super) fn write(&self, path: &str, bytes: &[u8]) -> Result<(), StoreError> {
        let to = self.place(path)?;
        doing(fs::write(&to, bytes), Doing::Write, &to)
    }

    /// Takes files of ours over from the old edition as they are.
    pub(super) fn keep(&self, files: &[&str]) -> Result<(), StoreError> {
        let above = files.iter().filter_map(|path| path.rsplit_once('/'));
        let folders: BTreeSet<&str> = above.map(|(folder, _)| folder).collect();
        for folder in folders {
            let folder = self.folder.join(folder);
            doing(fs::create_dir_all(&folder), Doing::Make, &folder)?;
        }
        files.par_iter().try_for_each(|path| {
            let (from, to) = (self.output.join(path), self.folder.join(path));
            if fs::hard_link(&from, &to).is_ok() {
                return Ok(());
            }
            doing(fs::copy(&from, &to).map(|_| ()), Doing::Copy, &from)
        })
    }

    /// Lets files of others stand in both editions, so that they are there at any moment.
    /// Those that cannot are moved when the old edition is cleared.
    pub(super) fn share(&self, files: &[PathBuf]) -> BTreeMap<PathBuf, Inode> {
        let linked = files.par_iter().filter_map(|path| {
            let (from, to) = (self.output.join(path), self.folder.join(path));
            fs::hard_link(&from, &to).ok()?;
            inode(&to).map(|inode| (path.clone(), inode))
        });
        linked.collect()
    }

    /// Gives the new edition's folders the rights, the owner and the group of the old one's.
    pub(super) fn entitle(
        &self,
        folders: &[(PathBuf, Metadata)],
    ) -> Result<(), StoreError> {
        // The innermost first: a folder may become one that nothing can be written to.
        for (path, known) in folders.iter().rev() {
            let folder = self.folder.join(path);
            if folder.is_dir() {
                doing(entitle(&folder, known), Doing::Entitle, &folder)?;
            }
        }
        Ok(())
    }

    /// Whether the same file stands at `path` in the old edition and in the new one.
    pub(super) fn is_same(&self, path: &str) -> bool {
        alike(&self.output.join(path), &self.folder.join(path))
    }

    /// Where one file is written to.
    pub(super) fn place(&self, path: &str) -> Result<PathBuf, StoreError> {
        let to = self.folder.join(path);
        if let Some(parent) = to.parent() {
            doing(fs::create_dir_all(parent), Doing::Make, parent)?;
        }
        Ok(to)
    }

    /// Waits until the new edition lies on the disk.
    pub(super) fn settle(&self) -> Result<(), StoreError> {
        doing(settle(&self.folder), Doing::Write, &self.folder)
    }

    /// Puts the new edition in the old one's place, in one step where the system can. The
    /// old one then lies aside, where there was one.
    pub(super) fn swap(self) -> Result<Option<PathBuf>, StoreError> {
        let old = beside(&self.output, "old");
        match rename_new(&self.folder, &self.output) {
            Ok(()) => return Ok(None),
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
            Err(error) => return doing(Err(error), Doing::Move, &self.folder),
        }
        doing(fs::rename(&self.folder, &old), Doing::Move, &self.folder)?;
        if exchange(&old, &self.output).is_err() {
            doing(fs::rename(&old, &self.folder), Doing::Move, &old)?;
            doing(fs::rename(&self.output, &old), Doing::Move, &self.output)?;
            doing(fs::rename(&self.folder, &self.output), Doing::Move, &self.folder)?;
        }
        Ok(Some(old))
    }
}

impl Drop for Stage {
    /// An edition that will not stand.
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.folder);
    }
}

/// A folder that nobody may write to is left as it is, though it could be swapped.
///
/// # Errors
/// Where it is one.
pub(super) fn writable(folder: &Path, known: &Metadata) -> Result<(), StoreError> {
    let refused = if known.permissions().readonly() {
        Err(ErrorKind::ReadOnlyFilesystem.into())
    } else {
        Ok(())
    };
    doing(refused, Doing::WriteTo, folder)
}

/// Puts the old edition back where it stood, after a swap that cannot be brought to its
/// end; what was moved across by then comes back too.
///
/// # Errors
/// Where the machine refuses.
pub(super) fn swap_back(folders: &Folders) -> Result<(), StoreError> {
    for side in Side::BOTH {
        trade(folders.get(side))?;
    }
    recover(folders).map(|_| ())
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
    for entry in walkdir::WalkDir::new(folder) {
        let entry = entry?;
        if entry.file_type().is_file() {
            fs::File::options().append(true).open(entry.path())?.sync_all()?;
        }
    }
    Ok(())
}

/// Gives a folder the rights, the owner and the group of another. Where the owner cannot
/// be given, who publishes has the folder, as always when a folder is made.
#[cfg(unix)]
fn entitle(folder: &Path, like: &Metadata) -> std::io::Result<()> {
    use std::os::unix::fs::{MetadataExt, chown};
    let own = fs::metadata(folder)?;
    let differs = |own: u32, other: u32| (own != other).then_some(other);
    let (user, group) = (differs(own.uid(), like.uid()), differs(own.gid(), like.gid()));
    if group.is_some() {
        let _ = chown(folder, None, group);
    }
    if user.is_some() {
        let _ = chown(folder, user, None);
    }
    if own.mode() != like.mode() || user.is_some() || group.is_some() {
        fs::set_permissions(folder, like.permissions())?;
    }
    Ok(())
}

/// Gives a folder the rights of another.
#[cfg(not(unix))]
fn entitle(folder: &Path, like: &Metadata) -> std::io::Result<()> {
    fs::set_permissions(folder, like.permissions())
}
