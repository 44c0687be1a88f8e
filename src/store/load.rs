//! Loads the content folder: only the files the format names, within bounds, and never
//! through a link that leads outside.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::io::Read;
use std::path::{Path, PathBuf};

use walkdir::{DirEntry, WalkDir};

use crate::fault::{Fault, Place};
use crate::media::{Medium, is_name};
use crate::read::{BENCH, Source, is_bench, language_of};
use crate::said;
use crate::statement::Statement;
use crate::theme::Theme;

use super::unread::unread;
use super::{Doing, StoreError, doing};

/// A text file larger than this is refused.
pub(super) const LARGEST: u64 = 1 << 20;
/// A picture larger than this is refused.
pub(super) const LARGEST_PICTURE: u64 = 30 << 20;
/// A file of a theme larger than this is refused.
const LARGEST_OF_THEME: u64 = 16 << 20;
/// More files than this are refused.
const MOST_FILES: usize = 20_000;
/// All texts together may have so many bytes, and so may the files of a theme.
const MOST_TEXT: usize = 64 << 20;
/// All pictures together may have so many bytes.
const MOST_PICTURES: usize = 512 << 20;
/// The folders that the format names.
const FOLDERS: [&str; 5] = ["recipes", "techniques", "classes", "media", "in"];
/// What is wrong with a link, whatever it leads to.
const LINK: Statement = said!("unread-link");

/// The texts below `folder`, in order of their paths, and the faults of files that cannot
/// be taken as they are.
///
/// # Errors
/// Where the folder or a file cannot be read.
pub fn load(folder: &Path) -> Result<(Vec<Source>, Vec<Fault>), StoreError> {
    doing(std::fs::metadata(folder), Doing::OpenContent, folder)?;
    let (mut sources, mut faults, mut bytes) = (Vec::new(), Vec::new(), 0);
    for (count, entry) in entries(folder, 4).enumerate() {
        let entry = entry.map_err(|error| StoreError::walking(folder, error))?;
        let path = relative(folder, &entry);
        if count == MOST_FILES || bytes > MOST_TEXT {
            faults.push(too_much(&path));
            break;
        }
        if entry.path_is_symlink() && (belongs(&path) || FOLDERS.contains(&&*path)) {
            faults.push(refused(&path, LINK, said!("unread-link-help")));
        } else if belongs(&path) {
            match text(&entry, &path)? {
                Ok(text) => {
                    bytes += text.len();
                    sources.push(Source { path, text });
                }
                Err(fault) => faults.push(fault),
            }
        } else if entry.file_type().is_file() {
            faults.extend(unread(&path));
        }
    }
    Ok((sources, faults))
}

/// Lays texts that are being written over those that were read: in place of what stands on
/// disk, or beside it where the format names such a file. What was wrong with the file itself
/// is over then.
pub fn lay_over(
    sources: &mut Vec<Source>,
    faults: &mut Vec<Fault>,
    laid: &BTreeMap<String, String>,
) {
    for (path, text) in laid.iter().filter(|(path, _)| super::desk::may_be(path)) {
        faults.retain(|fault| *fault.place.file != **path);
        match sources.iter_mut().find(|source| source.path == *path) {
            Some(source) => source.text.clone_from(text),
            None => sources.push(Source { path: path.clone(), text: text.clone() }),
        }
    }
    sources.sort_by(|one, other| one.path.cmp(&other.path));
}

/// The language that a course says it is in, as far as its `course.yaml` can be read.
pub fn language(folder: &Path) -> Option<String> {
    let file = std::fs::File::open(folder.join("course.yaml")).ok()?;
    let mut text = String::new();
    file.take(LARGEST).read_to_string(&mut text).ok()?;
    language_of(&text)
}

/// What lies in a folder and so many levels below, in order, hidden files left out.
fn entries(
    folder: &Path,
    depth: usize,
) -> impl Iterator<Item = walkdir::Result<DirEntry>> {
    let walk = WalkDir::new(folder).sort_by_file_name().min_depth(1).max_depth(depth);
    walk.into_iter().filter_entry(|entry| !is_hidden(entry))
}

fn too_much(path: &str) -> Fault {
    let (files, text, pictures) = (MOST_FILES, MOST_TEXT >> 20, MOST_PICTURES >> 20);
    let why = said!("unread-too-much", files, text, pictures);
    refused(path, why, said!("unread-too-much-help"))
}

/// The pictures in the media folder, in order of their names, and the faults of files that
/// are none. Nothing is read that the page cannot name: only plain files directly there.
///
/// # Errors
/// Where the folder or a file cannot be read.
pub fn media(folder: &Path) -> Result<(Vec<Medium>, Vec<Fault>), StoreError> {
    let folder = folder.join("media");
    let (mut pictures, mut faults, mut bytes) = (Vec::new(), Vec::new(), 0);
    // A link in place of the folder is named where the texts are loaded.
    if !std::fs::symlink_metadata(&folder).is_ok_and(|folder| folder.is_dir()) {
        return Ok((pictures, faults));
    }
    for entry in entries(&folder, 1) {
        let entry = entry.map_err(|error| StoreError::walking(&folder, error))?;
        let name = relative(&folder, &entry);
        if !is_name(&name) {
            continue;
        }
        if bytes > MOST_PICTURES {
            faults.push(too_much(&format!("media/{name}")));
            break;
        }
        match medium(&entry, &name)? {
            Ok(medium) => {
                bytes += medium.bytes.len();
                pictures.push(medium);
            }
            Err(fault) => faults.push(fault),
        }
    }
    Ok((pictures, faults))
}

/// One picture, or the fault in it as a file.
fn medium(entry: &DirEntry, name: &str) -> Result<Result<Medium, Fault>, StoreError> {
    let path = format!("media/{name}");
    if !entry.file_type().is_file() {
        let why = if entry.path_is_symlink() { LINK } else { said!("unread-not-plain") };
        return Ok(Err(refused(&path, why, said!("unread-picture-link-help"))));
    }
    let bytes = read(entry, LARGEST_PICTURE)?;
    if bytes.len() as u64 > LARGEST_PICTURE {
        let help = said!("picture-smaller-help");
        return Ok(Err(refused(&path, said!("unread-picture-large"), help)));
    }
    Ok(Medium::read(name, bytes))
}

/// A file's bytes, one more than `most` at the most.
pub(super) fn read(entry: &DirEntry, most: u64) -> Result<Vec<u8>, StoreError> {
    let file = doing(std::fs::File::open(entry.path()), Doing::Read, entry.path())?;
    let mut bytes = Vec::new();
    doing(file.take(most + 1).read_to_end(&mut bytes), Doing::Read, entry.path())?;
    Ok(bytes)
}

/// The theme in a folder, laid over the default one; the default one where there is none.
///
/// # Errors
/// Where a file of the theme cannot be read, or is none that a theme may have.
pub fn theme(folder: Option<&Path>) -> Result<Theme, StoreError> {
    let mut theme = Theme::built_in();
    let Some(folder) = folder else { return Ok(theme) };
    doing(std::fs::metadata(folder), Doing::OpenTheme, folder)?;
    let mut all = 0;
    for (count, entry) in entries(folder, 4).enumerate() {
        let entry = entry.map_err(|error| StoreError::walking(folder, error))?;
        if entry.file_type().is_dir() {
            continue;
        }
        if !entry.file_type().is_file() {
            let why = said!("theme-link");
            return Err(StoreError::refused(entry.path(), Doing::Use, why));
        }
        let bytes = read(&entry, LARGEST_OF_THEME)?;
        all += bytes.len();
        if let Some(why) = unfit(&entry, &bytes) {
            return Err(StoreError::refused(entry.path(), Doing::Use, why));
        }
        if count == MOST_FILES || all > MOST_TEXT {
            return Err(StoreError::refused(
                folder,
                Doing::Use,
                said!("theme-too-large"),
            ));
        }
        theme.files.insert(relative(folder, &entry), Cow::Owned(bytes));
    }
    Ok(theme)
}

/// Why a file cannot be part of a theme.
fn unfit(entry: &DirEntry, bytes: &[u8]) -> Option<Statement> {
    let ending = entry.path().extension().unwrap_or_default().to_string_lossy();
    let is_text =
        ["html", "css", "js", "svg", "typ", "yaml"].contains(&&*ending.to_lowercase());
    if bytes.len() as u64 > LARGEST_OF_THEME {
        Some(said!("theme-file-too-large"))
    } else if is_text && std::str::from_utf8(bytes).is_err() {
        Some(said!("theme-not-utf8"))
    } else {
        None
    }
}

/// The folder at `path` below `folder`; `None` where there is none, or where a link leads to
/// it: what lies elsewhere is not read.
pub fn below(folder: &Path, path: &str) -> Option<PathBuf> {
    path.split('/').try_fold(folder.to_owned(), |folder, name| {
        let inner = folder.join(name);
        let is_folder = std::fs::symlink_metadata(&inner).is_ok_and(|it| it.is_dir());
        let plain = !name.is_empty() && !matches!(name, "." | "..");
        (is_folder && plain).then_some(inner)
    })
}

/// Whether a file or folder is hidden.
pub(super) fn is_hidden(entry: &DirEntry) -> bool {
    entry.file_name().to_string_lossy().starts_with('.')
}

fn relative(folder: &Path, entry: &DirEntry) -> String {
    let path = entry.path().strip_prefix(folder).unwrap_or(entry.path());
    let parts: Vec<_> =
        path.components().map(|part| part.as_os_str().to_string_lossy()).collect();
    parts.join("/")
}

/// Whether the format names such a file below `in/`: `fr/recipes/crescents.md`.
fn translates(path: &str) -> bool {
    match path.split('/').collect::<Vec<_>>().as_slice() {
        [_, file] => matches!(*file, "words.yaml" | "glossary.yaml"),
        [_, "recipes" | "techniques", file] => file.ends_with(".md"),
        _ => false,
    }
}

/// Whether the format names such a file.
pub(super) fn belongs(path: &str) -> bool {
    match path.split_once('/') {
        None => matches!(path, "course.yaml" | "pantry.yaml" | "glossary.yaml"),
        Some(("in", path)) => translates(path),
        Some((_, file)) if file.contains('/') => false,
        Some(("recipes" | "techniques", file)) => file.ends_with(".md") || is_bench(path),
        Some(("classes", file)) => file.ends_with(".yaml"),
        Some(("media", file)) => file.ends_with(".svg"),
        Some(_) => false,
    }
}

/// A file's text, or the fault in it as a file.
fn text(entry: &DirEntry, path: &str) -> Result<Result<String, Fault>, StoreError> {
    if !entry.file_type().is_file() {
        return Ok(Err(refused(
            path,
            said!("unread-not-plain"),
            said!("unread-not-plain-help"),
        )));
    }
    if let Some(better) = misnamed(path) {
        let why = said!("unread-name");
        let help = said!("unread-name-help", better);
        return Ok(Err(refused(path, why, help)));
    }
    let bytes = read(entry, LARGEST)?;
    if bytes.len() as u64 > LARGEST {
        return Ok(Err(refused(path, said!("unread-large"), said!("unread-large-help"))));
    }
    let Ok(text) = String::from_utf8(bytes) else {
        return Ok(Err(refused(
            path,
            said!("unread-not-text"),
            said!("unread-not-text-help"),
        )));
    };
    if text.contains('\0') {
        return Ok(Err(refused(
            path,
            said!("unread-zero-byte"),
            said!("unread-not-text-help"),
        )));
    }
    Ok(Ok(text))
}

/// A better name for a file whose own one cannot be part of a web address, nor of a file
/// name on every system; `None` where it can.
pub(super) fn misnamed(path: &str) -> Option<String> {
    let file = path.rsplit('/').next().unwrap_or(path);
    let (stem, ending) = match file.strip_suffix(BENCH) {
        Some(stem) => (stem, &BENCH[1..]),
        None => file.rsplit_once('.')?,
    };
    let is_plain = |sign: char| sign.is_ascii_alphanumeric() || "-_".contains(sign);
    if !stem.is_empty() && stem.chars().all(is_plain) {
        return None;
    }
    let mut better = String::new();
    for sign in stem.chars() {
        if is_plain(sign) {
            better.push(sign.to_ascii_lowercase());
        } else if !better.is_empty() && !better.ends_with('-') {
            better.push('-');
        }
    }
    let better = better.trim_end_matches('-');
    Some(format!("{}.{ending}", if better.is_empty() { "recipe" } else { better }))
}

pub(super) fn refused(path: &str, why: Statement, help: Statement) -> Fault {
    Fault::error("unreadable-file", &Place::file(path), said!("unreadable-file", why))
        .help(help)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_that_cannot_stand_in_an_address_get_a_better_one() {
        for (path, better) in [
            ("recipes/layered-dough_2.md", None),
            ("recipes/Crème brûlée #2.md", Some("cr-me-br-l-e-2.md")),
            ("recipes/...md", Some("recipe.md")),
            ("classes/a<b.yaml", Some("a-b.yaml")),
            ("recipes/crescents.bench.txt", None),
            ("recipes/a b.bench.txt", Some("a-b.bench.txt")),
        ] {
            assert_eq!(misnamed(path).as_deref(), better, "{path}");
        }
    }

    #[test]
    fn a_file_that_vanishes_is_named() {
        let folder = std::env::temp_dir().join("tourier-vanish-test");
        std::fs::create_dir_all(&folder).expect("the folder can be made");
        std::fs::write(folder.join("course.yaml"), "title: a").expect("written");
        let entry = entries(&folder, 1).next().expect("one").expect("readable");
        std::fs::remove_dir_all(&folder).expect("the folder can be cleared");
        let error = text(&entry, "course.yaml").expect_err("it is gone");
        assert!(error.path.ends_with("course.yaml"), "{error:?}");
        assert_eq!(error.kind(), Some(std::io::ErrorKind::NotFound));
    }
}
