//! Why what is made from other files of the edition cannot be made.

use crate::said;
use crate::statement::{Statement, machine};

/// Why a file of the edition is not to be had.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Lacking {
    /// There is none at this path.
    NoFile(String),
    /// It is not there yet where it is needed.
    NotYet(String),
    /// It cannot be made, as is told where that was tried.
    Unmade(Statement),
}

/// Why the package cannot be packed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unpacked {
    /// A file is not to be had.
    File(Lacking),
    /// The archive cannot be written: in the library's words.
    Archive(String),
}

impl Lacking {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::NoFile(path) => said!("file-missing", path),
            Self::NotYet(path) => said!("file-needed", path),
            Self::Unmade(why) => why.clone(),
        }
    }
}

impl Unpacked {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::File(why) => why.said(),
            Self::Archive(reason) => machine(reason),
        }
    }

    /// What the library says that writes the archive.
    pub(super) fn archive(error: impl std::fmt::Display) -> Self {
        Self::Archive(error.to_string())
    }
}
