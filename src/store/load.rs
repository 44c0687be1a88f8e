//! Loads the content folder: only the files the format names, within bounds, and never
//! through a link that leads outside.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::borrow::Cow;
use std::io::Read;
use std::path::{Path, PathBuf};

use walkdir::{DirEntry, WalkDir};

use crate::fault::{Fault, Place};
use crate::media::{Medium, is_name};
use crate::read::Source;
use crate::theme::Theme;

use super::{StoreError, doing};

/// A text file larger than this is refused.
const LARGEST: u64 = 1 << 20;
/// A picture larger than this is refused.
const LARGEST_PICTURE: u64 = 30 << 20;
/// More files than this are refused.
const MOST_FILES: usize = 20_000;

/// The texts below `folder`, in order of their paths, and the faults of files that cannot
/// be taken as they are.
///
/// # Errors
/// Where the folder or a file cannot be read.
pub fn load(folder: &Path) -> Result<(Vec<Source>, Vec<Fault>), StoreError> {
    doing(std::fs::metadata(folder), "open the content folder", folder)?;
    let (mut sources, mut faults) = (Vec::new(), Vec::new());
    let files = WalkDir::new(folder).sort_by_file_name().min_depth(1).max_depth(2);
    for entry in
        files.into_iter().filter_entry(|entry| !is_hidden(entry)).take(MOST_FILES)
    {
        let entry = entry.map_err(|error| StoreError {
            path: error.path().unwrap_or(folder).to_owned(),
            doing: "read",
            source: error.into(),
        })?;
        let path = relative(folder, &entry);
        if !belongs(&path) {
            continue;
        }
        if entry.path_is_symlink() {
            faults.push(refused(
                &path,
                "it is a link to another place",
                "Put the file itself here.",
            ));
        } else if entry.file_type().is_file() {
            match text(&entry, &path)? {
                Ok(text) => sources.push(Source { path, text }),
                Err(fault) => faults.push(fault),
            }
        }
    }
    Ok((sources, faults))
}

/// The pictures in the media folder, in order of their names, and the faults of files that
/// are none. Nothing is read that the page cannot name: only plain files directly there.
///
/// # Errors
/// Where the folder or a file cannot be read.
pub fn media(folder: &Path) -> Result<(Vec<Medium>, Vec<Fault>), StoreError> {
    let folder = folder.join("media");
    let (mut pictures, mut faults) = (Vec::new(), Vec::new());
    if !folder.is_dir() {
        return Ok((pictures, faults));
    }
    for entry in WalkDir::new(&folder).sort_by_file_name().min_depth(1).max_depth(1) {
        let entry = entry.map_err(|error| StoreError {
            path: folder.clone(),
            doing: "read",
            source: error.into(),
        })?;
        let name = relative(&folder, &entry);
        if !is_name(&name) {
            continue;
        }
        match medium(&entry, &name)? {
            Ok(medium) => pictures.push(medium),
            Err(fault) => faults.push(fault),
        }
    }
    Ok((pictures, faults))
}

/// One picture, or the fault in it as a file.
fn medium(entry: &DirEntry, name: &str) -> Result<Result<Medium, Fault>, StoreError> {
    let path = format!("media/{name}");
    if entry.path_is_symlink() || !entry.file_type().is_file() {
        let why = "it is a link to another place, or a folder";
        return Ok(Err(refused(&path, why, "Put the picture itself here.")));
    }
    let bytes = read(entry, LARGEST_PICTURE)?;
    if bytes.len() as u64 > LARGEST_PICTURE {
        let help = "Save it smaller: 3000 pixels wide is plenty.";
        return Ok(Err(refused(&path, "it is larger than 30 MiB", help)));
    }
    Ok(Medium::read(name, bytes))
}

/// A file's bytes, one more than `most` at the most.
pub(super) fn read(entry: &DirEntry, most: u64) -> Result<Vec<u8>, StoreError> {
    let file = doing(std::fs::File::open(entry.path()), "read", entry.path())?;
    let mut bytes = Vec::new();
    doing(file.take(most + 1).read_to_end(&mut bytes), "read", entry.path())?;
    Ok(bytes)
}

/// The theme in a folder, laid over the default one; the default one where there is none.
///
/// # Errors
/// Where a file of the theme cannot be read.
pub fn theme(folder: Option<&Path>) -> Result<Theme, StoreError> {
    let mut theme = Theme::built_in();
    let Some(folder) = folder else { return Ok(theme) };
    doing(std::fs::metadata(folder), "open the theme", folder)?;
    for entry in WalkDir::new(folder).sort_by_file_name().min_depth(1).max_depth(4) {
        let entry = entry.map_err(|error| StoreError {
            path: folder.to_owned(),
            doing: "read",
            source: error.into(),
        })?;
        if entry.file_type().is_file() {
            let bytes = doing(std::fs::read(entry.path()), "read", entry.path())?;
            theme.files.insert(relative(folder, &entry), Cow::Owned(bytes));
        }
    }
    Ok(theme)
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

/// Whether the format names such a file.
fn belongs(path: &str) -> bool {
    match path.split_once('/') {
        None => matches!(path, "course.yaml" | "pantry.yaml" | "glossary.yaml"),
        Some(("recipes" | "techniques", file)) => file.ends_with(".md"),
        Some(("classes", file)) => file.ends_with(".yaml"),
        Some(("media", file)) => file.ends_with(".svg"),
        Some(_) => false,
    }
}

/// A file's text, or the fault in it as a file.
fn text(entry: &DirEntry, path: &str) -> Result<Result<String, Fault>, StoreError> {
    let bytes = read(entry, LARGEST)?;
    if bytes.len() as u64 > LARGEST {
        return Ok(Err(refused(
            path,
            "it is larger than 1 MiB",
            "A recipe is a page or two of text.",
        )));
    }
    let Ok(text) = String::from_utf8(bytes) else {
        return Ok(Err(refused(
            path,
            "it is not UTF-8 text",
            "Save it as plain text in UTF-8.",
        )));
    };
    if text.contains('\0') {
        return Ok(Err(refused(
            path,
            "it holds a zero byte",
            "Save it as plain text in UTF-8.",
        )));
    }
    Ok(Ok(text))
}

pub(super) fn refused(path: &str, why: &str, help: &str) -> Fault {
    Fault::error(
        "unreadable-file",
        &Place::file(path),
        format!("this file is not read: {why}"),
    )
    .help(help)
}
