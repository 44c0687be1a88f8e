//! Where a value stands in the text.

use std::borrow::Borrow;
use std::fmt;
use std::ops::Deref;
use std::sync::Arc;

use crate::statement::{Say, Value};

/// A file's path below the content folder, with forward slashes. A recipe has hundreds of
/// places: this is one word in each, and so are both ends of the stretch.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct FileName(Arc<String>);

/// A stretch of one file's text, in bytes.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// The file.
    pub file: FileName,
    start: u32,
    end: u32,
}

impl Place {
    /// A stretch of `file`.
    pub fn new(file: &FileName, start: usize, end: usize) -> Self {
        Self { file: file.clone(), start: short(start), end: short(end.max(start)) }
    }

    /// A whole file, where no word of it can be named.
    pub fn file(file: &str) -> Self {
        Self::new(&file.into(), 0, 0)
    }

    /// First byte of the stretch.
    pub fn start(&self) -> usize {
        self.start as usize
    }

    /// First byte after it; never before its start.
    pub fn end(&self) -> usize {
        self.end as usize
    }

    /// A part of this stretch: `start..end` counted from its first byte, kept inside it.
    #[must_use]
    pub fn part(&self, start: usize, end: usize) -> Self {
        let inside = |at: usize| (self.start() + at).min(self.end());
        Self::new(&self.file, inside(start), inside(end))
    }

    /// This stretch as far as the end of another one.
    #[must_use]
    pub fn up_to(&self, other: &Self) -> Self {
        Self::new(&self.file, self.start(), other.end())
    }
}

/// A byte of a text. No text that is read comes near to what this holds.
fn short(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}

impl From<&str> for FileName {
    fn from(path: &str) -> Self {
        Self(Arc::new(path.to_owned()))
    }
}

impl Deref for FileName {
    type Target = str;

    fn deref(&self) -> &str {
        &self.0
    }
}

impl Borrow<str> for FileName {
    fn borrow(&self) -> &str {
        &self.0
    }
}

impl AsRef<str> for FileName {
    fn as_ref(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for FileName {
    fn fmt(&self, formatter: &mut fmt::Formatter) -> fmt::Result {
        self.0.fmt(formatter)
    }
}

impl fmt::Debug for FileName {
    fn fmt(&self, formatter: &mut fmt::Formatter) -> fmt::Result {
        self.0.fmt(formatter)
    }
}

impl Say for FileName {
    fn value(&self) -> Value {
        (**self).value()
    }
}

/// A value together with where it was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placed<T> {
    /// What was written.
    pub value: T,
    /// Where.
    pub place: Place,
}

impl<T> Placed<T> {
    /// Joins a value and its place.
    pub fn new(value: T, place: Place) -> Self {
        Self { value, place }
    }

    /// Turns the value into another at the same place.
    pub fn map<U>(self, change: impl FnOnce(T) -> U) -> Placed<U> {
        Placed { value: change(self.value), place: self.place }
    }
}

impl Placed<String> {
    /// Whether it says this, in capitals or not.
    pub fn says(&self, words: &str) -> bool {
        self.value.to_lowercase() == words.to_lowercase()
    }
}
