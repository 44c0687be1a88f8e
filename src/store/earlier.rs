//! Saves that are kept for a while, in a hidden folder beside the content.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{self, File};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use walkdir::{DirEntry, WalkDir};

use crate::said;

use super::desk::place;
use super::load::is_hidden;
use super::stage::beside;
use super::write::{is_begun, put_safely};
use super::{Doing, StoreError, doing};

/// So many saves of one text are kept.
const MOST: usize = 50;
/// All that are kept may have so many bytes.
const MOST_BYTES: u64 = 64 << 20;

/// The folder of saves, which nobody else changes meanwhile.
pub(super) struct Shelf {
    folder: PathBuf,
    _held: File,
}

/// A save that was just kept, to be let go again where it did not come to stand.
pub(super) struct Kept(Option<PathBuf>);

impl Kept {
    /// Lets it go.
    pub(super) fn let_go(self) {
        // What cannot be let go does no harm.
        let _ = self.0.map(fs::remove_file);
    }
}

impl Shelf {
    /// Opens it, made where there is none; another who saves is waited for.
    pub(super) fn open(content: &Path) -> Result<Self, StoreError> {
        let folder = folder(content)?;
        doing(fs::create_dir_all(&folder), Doing::Make, &folder)?;
        let lock = folder.join(".lock");
        let held = File::options().create(true).append(true).open(&lock);
        let held = doing(held, Doing::Lock, &lock)?;
        match held.lock() {
            Ok(()) => {
                clear(content);
                clear(&folder);
            }
            // Some network folders know no locks: there only care helps.
            Err(error) if error.kind() == ErrorKind::Unsupported => {}
            Err(error) => return doing(Err(error), Doing::Lock, &lock),
        }
        Ok(Self { folder, _held: held })
    }
}

/// Takes away saves that were begun and cut off. Whoever saves has the shelf, so nobody is
/// at them any more.
fn clear(folder: &Path) {
    let files = WalkDir::new(folder).into_iter();
    let looked = |entry: &DirEntry| {
        let is_folder = entry.file_type().is_dir();
        entry.depth() == 0 || !is_folder || !is_hidden(entry)
    };
    let is_cut_off = |entry: &DirEntry| {
        entry.file_type().is_file() && entry.file_name().to_str().is_some_and(is_begun)
    };
    for entry in files.filter_entry(looked).flatten().filter(is_cut_off) {
        // What cannot be taken away does no harm.
        let _ = fs::remove_file(entry.path());
    }
}

/// The folder of saves; a link in its place is refused.
fn folder(content: &Path) -> Result<PathBuf, StoreError> {
    let whole = doing(content.canonicalize(), Doing::OpenContent, content)?;
    let folder = beside(&whole, "saves");
    if folder.is_symlink() {
        return Err(StoreError::refused(&folder, Doing::Use, said!("unread-link")));
    }
    Ok(folder)
}

/// A save that is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Earlier {
    /// Its name among those of its text.
    pub name: String,
    /// When it was saved.
    pub time: SystemTime,
}

/// The saves of a text, the newest first.
///
/// # Errors
/// Where no text of a course has such a path, or the machine refuses.
pub fn earlier(content: &Path, path: &str) -> Result<Vec<Earlier>, StoreError> {
    place(content, path)?;
    all(&folder(content)?.join(path))
}

fn all(folder: &Path) -> Result<Vec<Earlier>, StoreError> {
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        entries => doing(entries, Doing::Read, folder)?,
    };
    let one = |entry: fs::DirEntry| {
        let name = entry.file_name().into_string().ok()?;
        let time =
            entry.metadata().ok().filter(fs::Metadata::is_file)?.modified().ok()?;
        is_name(&name).then_some(Earlier { name, time })
    };
    let mut all: Vec<Earlier> = entries.flatten().filter_map(one).collect();
    all.sort_by(|one, other| other.name.cmp(&one.name));
    Ok(all)
}

/// Whether a name is one of ours: its number, and the beginning of its mark.
fn is_name(name: &str) -> bool {
    let is_number = |part: &str| part.bytes().all(|it| it.is_ascii_digit());
    let is_mark = |part: &str| part.bytes().all(|it| it.is_ascii_hexdigit());
    name.split_once('-').is_some_and(|(number, mark)| {
        number.len() == 8 && is_number(number) && mark.len() == 32 && is_mark(mark)
    })
}

/// The text of a save.
///
/// # Errors
/// Where there is none of that name.
pub fn earlier_text(
    content: &Path,
    path: &str,
    name: &str,
) -> Result<String, StoreError> {
    place(content, path)?;
    let file = folder(content)?.join(path).join(name);
    if !is_name(name) {
        return Err(StoreError::refused(&file, Doing::Read, said!("machine-not-there")));
    }
    doing(fs::read_to_string(&file), Doing::Read, &file)
}

/// Keeps bytes and their mark, unless they were kept last, and lets the oldest go.
pub(super) fn keep(
    shelf: &Shelf,
    path: &str,
    (bytes, mark): (&[u8], &str),
) -> Result<Kept, StoreError> {
    let folder = shelf.folder.join(path);
    doing(fs::create_dir_all(&folder), Doing::Make, &folder)?;
    let kept = all(&folder)?;
    let newest = kept.first().and_then(|one| one.name.split_once('-'));
    if newest.is_some_and(|(_, known)| known == mark) {
        return Ok(Kept(None));
    }
    let number = newest.and_then(|(number, _)| number.parse().ok()).unwrap_or(0_u32) + 1;
    let file = folder.join(format!("{number:08}-{mark}"));
    put_safely(&file, bytes)?;
    for old in kept.iter().skip(MOST - 1) {
        // What cannot be let go does no harm.
        let _ = fs::remove_file(folder.join(&old.name));
    }
    let_go(&shelf.folder);
    Ok(Kept(Some(file)))
}

/// Lets the oldest saves of all texts go until they are few enough.
fn let_go(folder: &Path) {
    let files = WalkDir::new(folder).into_iter().flatten();
    let mut files: Vec<(SystemTime, u64, PathBuf)> = files
        .filter(|entry| entry.file_name().to_str().is_some_and(is_name))
        .filter_map(|entry| {
            let about = entry.metadata().ok()?;
            Some((about.modified().ok()?, about.len(), entry.into_path()))
        })
        .collect();
    let mut bytes: u64 = files.iter().map(|(_, bytes, _)| bytes).sum();
    files.sort();
    for (_, size, path) in files {
        if bytes <= MOST_BYTES {
            return;
        }
        bytes -= size;
        let _ = fs::remove_file(path);
    }
}
