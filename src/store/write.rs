//! One file on its own.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{self, File};
use std::io::{self, BufWriter, ErrorKind, Write};
use std::path::{Path, PathBuf};

use super::folders::site_of;
use super::halt::Busy;
use super::lock::{Lock, While};
use super::manifest::NAME;
use super::rename::{exchange, rename_new};
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

/// Whether a file of this name is one that a save began beside its place.
pub(super) fn is_begun(name: &str) -> bool {
    let tail = name.rsplit_once(BEGUN).map(|(_, number)| number);
    let is_number = |it: &str| !it.is_empty() && it.bytes().all(|it| it.is_ascii_digit());
    name.starts_with('.') && tail.is_some_and(is_number)
}

/// Takes away saves of this file that were begun and cut off.
pub(super) fn clear_beside(file: &Path) {
    let (folder, name) = (file.parent(), file.file_name().unwrap_or_default());
    let ours = format!(".{}{BEGUN}", name.to_string_lossy());
    let entries = folder.and_then(|it| fs::read_dir(it).ok()).into_iter().flatten();
    for entry in entries.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if name.starts_with(&ours) && is_begun(&name) {
            // What cannot be taken away does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// What stands before the number in the name of a save that was begun.
const BEGUN: &str = ".tourier-save-";

/// A new state of a file beside its place, safe on the disk. It goes away where it is not
/// moved there.
struct Begun(PathBuf);

impl Begun {
    /// Writes it. It has the rights of the file that stands; one that may only be read stays
    /// as it is.
    fn new(place: &Path, bytes: &[u8]) -> Result<Self, StoreError> {
        let before = fs::metadata(place).ok().map(|about| about.permissions());
        if before.as_ref().is_some_and(fs::Permissions::readonly) {
            return doing(Err(ErrorKind::PermissionDenied.into()), Doing::Write, place);
        }
        let name = place.file_name().unwrap_or_default().to_string_lossy();
        let name = format!(".{name}{BEGUN}{}", std::process::id());
        let begun = Self(place.with_file_name(name));
        // One that a stop left behind is in nobody's way.
        let _ = fs::remove_file(&begun.0);
        let written = File::create_new(&begun.0).and_then(|mut file| {
            file.write_all(bytes)?;
            before.map_or(Ok(()), |rights| file.set_permissions(rights))?;
            file.sync_all()
        });
        doing(written.map(|()| begun), Doing::Write, place)
    }

    /// Moves it to its place, whatever stands there.
    fn take(&self, place: &Path) -> io::Result<Put> {
        fs::rename(&self.0, place).map(|()| Put::Stands)
    }

    /// Moves it to its place if nothing stands there.
    fn take_free(&self, place: &Path) -> io::Result<Put> {
        match rename_new(&self.0, place) {
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {
                Ok(Put::Other(None))
            }
            moved => moved.map(|()| Put::Stands),
        }
    }

    /// Moves it to its place if `stands` does there. It is looked at when both have been
    /// exchanged, so that nobody can write between the look and the move.
    fn take_over(&self, place: &Path, bytes: &[u8], stands: &[u8]) -> io::Result<Put> {
        let holds = |path: &Path, what: &[u8]| fs::read(path).is_ok_and(|it| it == what);
        match exchange(&self.0, place) {
            Ok(()) if holds(&self.0, stands) => Ok(Put::Stands),
            Ok(()) => {
                exchange(&self.0, place)?;
                let between = fs::read(&self.0)?;
                Ok(Put::Other((between != bytes).then_some(between)))
            }
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(Put::Other(None)),
            // Where the system cannot exchange, the look comes right before.
            Err(_) if holds(place, stands) => self.take(place),
            Err(_) => Ok(Put::Other(None)),
        }
    }
}

impl Drop for Begun {
    fn drop(&mut self) {
        let _ = fs::remove_file(&self.0);
    }
}

/// What became of a file that was to be put over another one.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Put {
    /// It stands.
    Stands,
    /// Nothing is changed, since something else stands there. What somebody wrote into the
    /// new file while it stood there for a moment.
    Other(Option<Vec<u8>>),
}

/// Likewise a file that must be safe on the disk before this is over. It keeps the rights
/// of the one before; one that may only be read stays as it is.
pub(super) fn put_safely(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let begun = Begun::new(path, bytes)?;
    doing(begun.take(path), Doing::Write, path)?;
    sync_folder(path);
    Ok(())
}

/// Likewise over a file that holds `stands`, or where that is none as a new one, and only
/// then: what others write at the same moment stays.
pub(super) fn put_over(
    path: &Path,
    bytes: &[u8],
    stands: Option<&[u8]>,
) -> Result<Put, StoreError> {
    let begun = Begun::new(path, bytes)?;
    let put = match stands {
        Some(stands) => begun.take_over(path, bytes, stands),
        None => begun.take_free(path),
    };
    let put = doing(put, Doing::Write, path)?;
    sync_folder(path);
    Ok(put)
}

/// Where a folder cannot be synced, the file is there all the same.
fn sync_folder(path: &Path) {
    let _ = path.parent().map(|folder| File::open(folder).and_then(|it| it.sync_all()));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn folder(name: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("tourier-write-{name}"));
        let _ = fs::remove_dir_all(&folder);
        fs::create_dir_all(&folder).expect("a folder");
        folder
    }

    #[test]
    fn only_what_was_read_is_written_over() {
        let file = folder("over").join("a.md");
        let put =
            |bytes: &[u8], stands| put_over(&file, bytes, stands).expect("answered");
        let stands = || fs::read(&file).expect("it is there");
        assert_eq!(put(b"one", Some(b"")), Put::Other(None));
        assert_eq!(put(b"one", None), Put::Stands);
        assert_eq!(put(b"two", None), Put::Other(None));
        assert_eq!(put(b"two", Some(b"theirs")), Put::Other(None));
        assert_eq!(stands(), b"one");
        assert_eq!(put(b"two", Some(b"one")), Put::Stands);
        assert_eq!(stands(), b"two");
        let all = fs::read_dir(file.with_file_name("")).expect("a folder");
        assert_eq!(all.count(), 1, "nothing is left beside it");
    }

    #[test]
    fn a_save_that_was_begun_is_known_by_its_name() {
        let file = folder("begun").join("a.md");
        let begun = Begun::new(&file, b"x").expect("written");
        let name = |path: &Path| path.file_name().map(|it| it.to_string_lossy().into());
        let name: Option<String> = name(&begun.0);
        assert!(name.as_deref().is_some_and(is_begun), "{name:?}");
        for other in
            ["a.md", ".a.md", ".a.md.tourier-save-", ".x.tourier-12", "x.tourier-save-1"]
        {
            assert!(!is_begun(other), "{other}");
        }
    }
}
