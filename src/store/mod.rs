//! The only room that opens files: loads the content folder, saves what is published.
#![allow(clippy::wildcard_enum_match_arm, reason = "the machine's errors are not ours")]

mod day;
mod desk;
mod earlier;
mod faces;
mod fingerprint;
mod folders;
mod halt;
mod load;
mod lock;
mod manifest;
mod merge;
mod place;
mod publish;
mod published;
mod rename;
mod run;
mod shared;
mod stage;
mod stamp;
mod stranger;
mod stream;
mod survey;
mod tree;
mod uncommitted;
mod unread;
mod vacant;
mod write;

pub use day::{LineFile, day_path, line_text, note_path};
pub use desk::{Saved, Written, hang, write, written};
pub use earlier::{Earlier, earlier, earlier_text};
pub use faces::faces;
pub use fingerprint::fingerprint;
pub use halt::{halt, is_asked as is_halted};
pub use load::{below, language, lay_over, load, media, theme};
pub use place::Place;
pub use publish::{Outcome, PublishError, Target, Unplaced};
pub use published::{keep_published, published};
pub use stamp::stamp;
pub use stranger::text_of;
pub use survey::Look;
pub use uncommitted::{Stands, Uncommitted, uncommitted};
pub use vacant::is_vacant;
pub use write::save;

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::said;
use crate::statement::{Statement, machine};

/// Something the machine would not do, or that must not be done: a full disk, a read-only
/// folder, a folder of someone else's files.
#[derive(Debug)]
pub struct StoreError {
    /// The file or folder.
    pub path: PathBuf,
    /// What was being done.
    pub doing: Doing,
    /// Why it was not done.
    pub why: Why,
}

/// What was being done to a file or folder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// Opening the content folder.
    OpenContent,
    /// Opening the theme.
    OpenTheme,
    /// Opening it.
    Open,
    /// Reading it.
    Read,
    /// Writing it.
    Write,
    /// Writing into the folder that holds it.
    WriteIn,
    /// Writing to it.
    WriteTo,
    /// Writing beside the output folder.
    WriteBeside,
    /// Locking it.
    Lock,
    /// Making it.
    Make,
    /// Moving it.
    Move,
    /// Copying it.
    Copy,
    /// Clearing it away.
    Clear,
    /// Giving it the rights it had.
    Entitle,
    /// Using it as a part of the theme.
    Use,
    /// Publishing to it.
    PublishTo,
    /// Serving on it.
    Serve,
}

/// Why something was not done.
#[derive(Debug)]
pub enum Why {
    /// What the machine said.
    Machine(std::io::Error),
    /// What we say.
    Refused(Statement),
}

impl StoreError {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        let (path, why) = (self.path.display().to_string(), self.why.said());
        match self.doing {
            Doing::OpenContent => said!("store-open-content", path, why),
            Doing::OpenTheme => said!("store-open-theme", path, why),
            Doing::Open => said!("store-open", path, why),
            Doing::Read => said!("store-read", path, why),
            Doing::Write => said!("store-write", path, why),
            Doing::WriteIn => said!("store-write-in", path, why),
            Doing::WriteTo => said!("store-write-to", path, why),
            Doing::WriteBeside => said!("store-write-beside", path, why),
            Doing::Lock => said!("store-lock", path, why),
            Doing::Make => said!("store-make", path, why),
            Doing::Move => said!("store-move", path, why),
            Doing::Copy => said!("store-copy", path, why),
            Doing::Clear => said!("store-clear", path, why),
            Doing::Entitle => said!("store-entitle", path, why),
            Doing::Use => said!("store-use", path, why),
            Doing::PublishTo => said!("store-publish", path, why),
            Doing::Serve => said!("store-serve", path, why),
        }
    }

    /// The kind of what the machine said.
    pub fn kind(&self) -> Option<ErrorKind> {
        match &self.why {
            Why::Machine(error) => Some(error.kind()),
            Why::Refused(_) => None,
        }
    }
}

impl Why {
    fn said(&self) -> Statement {
        let error = match self {
            Self::Refused(why) => return why.clone(),
            Self::Machine(error) => error,
        };
        plain(error.kind()).unwrap_or_else(|| machine(error))
    }
}

/// What the machine said, in plain words, where it says it often.
fn plain(kind: ErrorKind) -> Option<Statement> {
    Some(match kind {
        ErrorKind::NotFound => said!("machine-not-there"),
        ErrorKind::PermissionDenied => said!("machine-no-right"),
        ErrorKind::ReadOnlyFilesystem => said!("machine-read-only"),
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => said!("machine-disk-full"),
        ErrorKind::NotADirectory => said!("machine-file-for-folder"),
        ErrorKind::IsADirectory => said!("machine-folder-for-file"),
        _ => return None,
    })
}

impl StoreError {
    /// Something below `folder` that could not be looked at.
    fn walking(folder: &Path, error: walkdir::Error) -> Self {
        let path = error.path().unwrap_or(folder).to_owned();
        Self { path, doing: Doing::Read, why: Why::Machine(error.into()) }
    }

    /// Something that is not as it may be.
    fn refused(path: &Path, doing: Doing, why: Statement) -> Self {
        Self { path: path.to_owned(), doing, why: Why::Refused(why) }
    }
}

/// Names what was being done when the machine refused.
fn doing<T>(
    result: std::io::Result<T>,
    doing: Doing,
    path: &Path,
) -> Result<T, StoreError> {
    let why =
        |error| StoreError { path: path.to_owned(), doing, why: Why::Machine(error) };
    result.map_err(why)
}
