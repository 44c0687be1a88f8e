//! The only room that opens files: loads the content folder, saves what is published.

mod day;
mod faces;
mod fingerprint;
mod floor;
mod folders;
mod halt;
mod load;
mod lock;
mod manifest;
mod merge;
mod place;
mod publish;
mod rename;
mod stage;
mod stamp;
mod stranger;
mod survey;
mod tree;
mod unread;
mod vacant;
mod write;

pub use day::{DayFile, day_path, day_text};
pub use faces::faces;
pub use fingerprint::fingerprint;
pub use halt::halt;
pub use load::{below, load, media, theme};
pub use place::Place;
pub use publish::{Outcome, PublishError, Target};
pub use stamp::stamp;
pub use stranger::text_of;
pub use survey::Look;
pub use vacant::is_vacant;
pub use write::save;

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

/// Something the machine would not do: a full disk, a read-only folder.
#[derive(Debug)]
pub struct StoreError {
    /// The file or folder.
    pub path: PathBuf,
    /// What was being done: `write`, `read`.
    pub doing: &'static str,
    /// What the machine said.
    pub source: std::io::Error,
}

impl std::fmt::Display for StoreError {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "cannot {} {}: ", self.doing, self.path.display())?;
        match plain(self.source.kind()) {
            Some(words) => to.write_str(words),
            None => write!(to, "{}", self.source),
        }
    }
}

/// What the machine said, in plain words, where it says it often.
fn plain(kind: ErrorKind) -> Option<&'static str> {
    Some(match kind {
        ErrorKind::NotFound => "it is not there",
        ErrorKind::PermissionDenied => "you have no right to",
        ErrorKind::ReadOnlyFilesystem => "it is read-only",
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => "the disk is full",
        ErrorKind::NotADirectory => "a file stands where a folder should",
        ErrorKind::IsADirectory => "a folder stands where a file should",
        _ => return None,
    })
}

impl StoreError {
    /// Something below `folder` that could not be looked at.
    fn walking(folder: &Path, error: walkdir::Error) -> Self {
        let path = error.path().unwrap_or(folder).to_owned();
        Self { path, doing: "read", source: error.into() }
    }

    /// Something that is not as it may be.
    fn refused(path: &Path, doing: &'static str, why: &'static str) -> Self {
        let source = std::io::Error::other(why);
        Self { path: path.to_owned(), doing, source }
    }
}

impl std::error::Error for StoreError {}

/// Names what was being done when the machine refused.
fn doing<T>(
    result: std::io::Result<T>,
    doing: &'static str,
    path: &Path,
) -> Result<T, StoreError> {
    result.map_err(|source| StoreError { path: path.to_owned(), doing, source })
}
