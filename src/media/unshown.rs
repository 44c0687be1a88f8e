//! Why a picture cannot be shown in another size.

use crate::said;
use crate::statement::{Statement, machine};

/// Why a picture cannot be shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unshown {
    /// It is none.
    NoPicture,
    /// It cannot be decoded to its end, or not be written: in the library's words.
    Broken(String),
}

impl Unshown {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::NoPicture => said!("picture-none"),
            Self::Broken(reason) => machine(reason),
        }
    }
}

impl From<image::ImageError> for Unshown {
    fn from(error: image::ImageError) -> Self {
        Self::Broken(error.to_string())
    }
}
