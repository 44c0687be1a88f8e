//! The only room that opens files: loads the content folder, saves what is published.

mod faces;
mod load;
mod manifest;
mod publish;
mod stage;
mod stamp;
mod vacant;
mod write;

pub use faces::faces;
pub use load::{below, load, media, theme};
pub use publish::{Outcome, PublishError, publish};
pub use stamp::stamp;
pub use vacant::is_vacant;
pub use write::save;

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
        write!(to, "cannot {} {}: {}", self.doing, self.path.display(), self.source)
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
