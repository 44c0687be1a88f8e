//! One file on its own.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{self, File};
use std::io::{self, BufWriter, ErrorKind, Write};
use std::path::{Path, PathBuf};

use super::folders::site_of;
use super::halt::Busy;
use super::lock::{Lock, While};
use super::manifest::NAME;
use super::stage::beside;
use super::{Doing, StoreError, doing};

/// Saves one file, so that it is there whole or not at all. Where it lies in an output
/// folder, a publish to that is waited for; `waiting` is told so.
///
/// # Errors
/// Where the machine refuses.
pub fn save(path: &Path, bytes: &[u8], waiting: &dyn Fn()) -> Result<(), StoreError> {
    if let Some(parent) = path.parent() {
        doing(fs::create_dir_all(parent), Doing::Make, parent)?;
    }
    let output = published(path);
    let _lock =
        output.map(|output| Lock::take(&output, While::Wait(waiting))).transpose()?;
    let _busy = Busy::begin();
    put(path, &|file| file.write_all(bytes))
}

/// The output folder that a file lies in, or beside whose site it does: one lock is for both.
fn published(path: &Path) -> Option<PathBuf> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    let folder = folder.unwrap_or(Path::new(".")).canonicalize().ok()?;
    let is_one = |folder: &&Path| {
        folder.file_name().is_some()
            && (folder.join(NAME).exists() || beside(&site_of(folder), "lock").exists())
    };
    folder.ancestors().find(is_one).map(site_of)
}

/// Writes a file beside its place and moves it there.
pub(super) fn put(
    path: &Path,
    write: &dyn Fn(&mut dyn Write) -> io::Result<()>,
) -> Result<(), StoreError> {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let part = path.with_file_name(format!(".{name}.tourier-{}", std::process::id()));
    let written = File::create_new(&part).and_then(|file| {
        let mut file = BufWriter::new(file);
        write(&mut file)?;
        file.flush()
    });
    let saved = written.and_then(|()| fs::rename(&part, path));
    if saved.is_err() {
        let _ = fs::remove_file(&part);
    }
    doing(saved, Doing::Write, path)
}

/// Likewise a file that must be safe on the disk before this is over. It keeps the rights
/// of the one before; one that may only be read stays as it is.
pub(super) fn put_safely(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let before = fs::metadata(path).ok().map(|about| about.permissions());
    if before.as_ref().is_some_and(fs::Permissions::readonly) {
        return doing(Err(ErrorKind::PermissionDenied.into()), Doing::Write, path);
    }
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let part = path.with_file_name(format!(".{name}.tourier-{}", std::process::id()));
    // One that a stop left behind is in nobody's way.
    let _ = fs::remove_file(&part);
    let written = File::create_new(&part).and_then(|mut file| {
        file.write_all(bytes)?;
        before.map_or(Ok(()), |rights| file.set_permissions(rights))?;
        file.sync_all()
    });
    let saved = written.and_then(|()| fs::rename(&part, path));
    if saved.is_err() {
        let _ = fs::remove_file(&part);
    }
    doing(saved, Doing::Write, path)?;
    // Where a folder cannot be synced, the file is there all the same.
    let _ = path.parent().map(|folder| File::open(folder).and_then(|it| it.sync_all()));
    Ok(())
}
