//! A picture where a text asks for it.

use crate::fault::Placed;

/// A picture of a step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepPicture {
    /// The picture.
    pub shown: Shown,
    /// Whether it shows what is wrong.
    pub is_wrong: bool,
}

/// A picture and what it shows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The file's name below the media folder.
    pub file: Placed<String>,
    /// What it shows, in words.
    pub alt: String,
}
