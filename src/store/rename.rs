//! Moving without overwriting, and exchanging in one step.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs;
use std::io;
use std::path::Path;

/// Which file it is, whatever its name: device and number.
pub(super) type Inode = (u64, u64);

/// Which file stands at a path; `None` where there is none, or where the system does not
/// say.
#[cfg(unix)]
pub(super) fn inode(path: &Path) -> Option<Inode> {
    use std::os::unix::fs::MetadataExt;
    fs::symlink_metadata(path).ok().map(|known| (known.dev(), known.ino()))
}

/// Which file stands at a path; `None` where there is none, or where the system does not
/// say.
#[cfg(not(unix))]
pub(super) fn inode(_: &Path) -> Option<Inode> {
    None
}

/// Moves a file or folder to where nothing stands.
///
/// # Errors
/// Where something stands there, or the machine refuses.
pub(super) fn rename_new(from: &Path, to: &Path) -> io::Result<()> {
    #[cfg(any(target_os = "linux", target_vendor = "apple"))]
    {
        use rustix::fs::{CWD, RenameFlags, renameat_with};
        use rustix::io::Errno;
        match renameat_with(CWD, from, CWD, to, RenameFlags::NOREPLACE) {
            Err(Errno::INVAL | Errno::NOSYS | Errno::NOTSUP) => {}
            done => return Ok(done?),
        }
    }
    match fs::symlink_metadata(to) {
        Ok(_) => Err(io::ErrorKind::AlreadyExists.into()),
        Err(_) => fs::rename(from, to),
    }
}

/// Exchanges what stands at two paths in one step.
///
/// # Errors
/// Where one of them is not there, or the system cannot.
#[cfg(any(target_os = "linux", target_vendor = "apple"))]
pub(super) fn exchange(a: &Path, b: &Path) -> io::Result<()> {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    Ok(renameat_with(CWD, a, CWD, b, RenameFlags::EXCHANGE)?)
}

/// Exchanges what stands at two paths in one step.
///
/// # Errors
/// Always: the system cannot.
#[cfg(not(any(target_os = "linux", target_vendor = "apple")))]
pub(super) fn exchange(_: &Path, _: &Path) -> io::Result<()> {
    Err(io::ErrorKind::Unsupported.into())
}
