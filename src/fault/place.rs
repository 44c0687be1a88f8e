//! Where a value stands in the text.

use std::sync::Arc;

/// A stretch of one file's text, in bytes.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// The file's path below the content folder, with forward slashes.
    pub file: Arc<str>,
    /// First byte of the stretch.
    pub start: usize,
    /// First byte after it; never before `start`.
    pub end: usize,
}

impl Place {
    /// A stretch of `file`.
    pub fn new(file: &Arc<str>, start: usize, end: usize) -> Self {
        Self { file: file.clone(), start, end: end.max(start) }
    }

    /// A whole file, where no word of it can be named.
    pub fn file(file: &str) -> Self {
        Self { file: file.into(), start: 0, end: 0 }
    }

    /// A part of this stretch: `start..end` counted from its first byte, kept inside it.
    #[must_use]
    pub fn part(&self, start: usize, end: usize) -> Self {
        let inside = |at: usize| (self.start + at).min(self.end);
        Self::new(&self.file, inside(start), inside(end))
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
