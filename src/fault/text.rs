//! The texts that faults point into, and line and column of a byte in them.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::{FileName, Place};

/// Every text that was read, by its path below the content folder.
#[derive(Clone, Debug, Default)]
pub struct Texts {
    files: BTreeMap<FileName, Arc<str>>,
}

/// A place as people count: from line 1 and column 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Position {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// Length in characters on that line, at least 1.
    pub length: usize,
}

impl Texts {
    /// Remembers a file's text and gives the name that places in it carry.
    pub fn insert(&mut self, file: &str, text: &str) -> FileName {
        let name: FileName = file.into();
        self.files.insert(name.clone(), text.into());
        name
    }

    /// Every file and its text, by name.
    pub fn all(&self) -> impl Iterator<Item = (&str, &str)> {
        self.files.iter().map(|(file, text)| (&**file, &**text))
    }

    /// The text of a file, empty if the file could not be read.
    pub fn text(&self, file: &str) -> &str {
        self.files.get(file).map_or("", |text| text)
    }

    /// The words at a place.
    pub fn words(&self, place: &Place) -> &str {
        self.text(&place.file).get(place.start()..place.end()).unwrap_or("")
    }

    /// Line, column and length of a place.
    pub fn position(&self, place: &Place) -> Position {
        let text = self.text(&place.file);
        let before = text.get(..place.start()).unwrap_or(text);
        let line_start = before.rfind('\n').map_or(0, |at| at + 1);
        let words = self.words(place).split('\n').next().unwrap_or("");
        Position {
            line: 1 + before.matches('\n').count(),
            column: 1 + before[line_start..].chars().count(),
            length: words.trim_end().chars().count().max(1),
        }
    }
}
