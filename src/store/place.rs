//! Where an edition may be published: said before anything is worked out.
#![allow(clippy::disallowed_methods, reason = "this room looks at files")]

use std::fs;
use std::path::{Component, Path, PathBuf};

use crate::said;

use super::folders::{Folders, Side, site_of};
use super::manifest::NAME;
use super::{Doing, StoreError, doing};

/// A place to publish to, as it was asked for.
pub struct Place<'a> {
    /// The output folder.
    pub output: &'a Path,
    /// What is read: the content and the theme.
    pub inputs: &'a [&'a Path],
    /// Whether files of others may lie in a folder that was never published to.
    pub among_others: bool,
}

/// The folders of an edition, links followed. Nothing is made.
pub(super) fn place(asked: &Place) -> Result<Folders, StoreError> {
    let site = resolved(asked.output)?;
    if site_of(&site) != site {
        let why = said!("place-of-instructor");
        return Err(StoreError::refused(asked.output, Doing::PublishTo, why));
    }
    may_be(&site, asked.output, asked)?;
    let folders = Folders::new(site);
    let beside = folders.get(Side::Instructor);
    may_be(beside, beside, asked)?;
    allowed(folders.get(Side::Site))?;
    Ok(folders)
}

/// Whether one folder of an edition may be where it is to be; `named` is how it is spoken of.
fn may_be(whole: &Path, named: &Path, asked: &Place) -> Result<(), StoreError> {
    let refuse = |why| Err(StoreError::refused(named, Doing::PublishTo, why));
    if whole.is_symlink() {
        return refuse(said!("place-beside-link"));
    }
    let there = whole.ancestors().find_map(|path| fs::metadata(path).ok());
    if there.is_some_and(|known| !known.is_dir()) {
        return refuse(said!("place-file"));
    }
    if whole.file_name().is_none() {
        return refuse(said!("place-root"));
    }
    for other in asked.inputs {
        let Ok(other) = other.canonicalize() else { continue };
        if whole.starts_with(&other) || other.starts_with(whole) {
            return refuse(said!("place-inputs"));
        }
    }
    if home().is_some_and(|home| home.starts_with(whole)) {
        return refuse(said!("place-home"));
    }
    if is_mount(whole) {
        return refuse(said!("place-mount"));
    }
    if !asked.among_others && !whole.join(NAME).exists() && holds_files(whole)? {
        return refuse(said!("place-strangers"));
    }
    Ok(())
}

/// The place with links followed, as far as it is there.
fn resolved(output: &Path) -> Result<PathBuf, StoreError> {
    let missing = |path: &Path| fs::symlink_metadata(path).is_err();
    let there =
        output.ancestors().find(|path| path.as_os_str().is_empty() || !missing(path));
    let there = there.unwrap_or(Path::new(""));
    let rest = output.strip_prefix(there).unwrap_or(Path::new(""));
    let base = if there.as_os_str().is_empty() { Path::new(".") } else { there };
    if base.is_symlink() && !base.exists() {
        let why = said!("place-link");
        return Err(StoreError::refused(base, Doing::PublishTo, why));
    }
    if rest.components().any(|part| part == Component::ParentDir) {
        let why = said!("place-leads-out");
        return Err(StoreError::refused(output, Doing::PublishTo, why));
    }
    let mut whole = doing(base.canonicalize(), Doing::Open, base)?;
    whole.extend(rest.components());
    Ok(whole)
}

/// The home folder of whoever publishes.
fn home() -> Option<PathBuf> {
    std::env::home_dir().filter(|home| !home.as_os_str().is_empty())?.canonicalize().ok()
}

/// Whether anything but folders lies below a folder.
fn holds_files(folder: &Path) -> Result<bool, StoreError> {
    if !folder.exists() {
        return Ok(false);
    }
    for entry in walkdir::WalkDir::new(folder) {
        let entry = entry.map_err(|error| StoreError::walking(folder, error))?;
        if !entry.file_type().is_dir() {
            return Ok(true);
        }
    }
    Ok(false)
}

/// The folder in which a place lies, as far as it is there, must be one to write in.
#[cfg(unix)]
fn allowed(whole: &Path) -> Result<(), StoreError> {
    use rustix::fs::{Access, AtFlags, CWD, accessat};
    let above = whole.ancestors().skip(1).find(|path| path.exists());
    let Some(above) = above else { return Ok(()) };
    let rights = Access::WRITE_OK | Access::EXEC_OK;
    let answer = accessat(CWD, above, rights, AtFlags::EACCESS);
    doing(answer.map_err(Into::into), Doing::WriteBeside, above)
}

/// The folder in which a place lies, as far as it is there, must be one to write in.
#[cfg(not(unix))]
fn allowed(_: &Path) -> Result<(), StoreError> {
    Ok(())
}

/// Whether something is mounted at a place: it cannot be moved then.
#[cfg(unix)]
fn is_mount(whole: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let device = |path: &Path| fs::metadata(path).ok().map(|known| known.dev());
    let above = whole.parent().and_then(device);
    let differs =
        device(whole).is_some_and(|own| above.is_some_and(|above| above != own));
    differs || is_bound(whole)
}

/// Whether something is mounted at a place: it cannot be moved then.
#[cfg(not(unix))]
fn is_mount(_: &Path) -> bool {
    false
}

/// Whether a folder of the same disk is mounted at a place.
#[cfg(target_os = "linux")]
fn is_bound(whole: &Path) -> bool {
    use rustix::fs::{AtFlags, CWD, StatxAttributes, StatxFlags, statx};
    let known = statx(CWD, whole, AtFlags::empty(), StatxFlags::empty());
    known.is_ok_and(|it| it.stx_attributes.contains(StatxAttributes::MOUNT_ROOT))
}

/// Whether a folder of the same disk is mounted at a place.
#[cfg(all(unix, not(target_os = "linux")))]
fn is_bound(_: &Path) -> bool {
    false
}
