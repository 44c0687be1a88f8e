//! What the program made last time: each file's path and what it was made from.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

/// The manifest's name in the output folder.
pub(super) const NAME: &str = ".tourier.json";

/// Every file made, by its path below the output folder, with the key of what it was made
/// from.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Manifest {
    /// Path to key.
    pub(super) made: BTreeMap<String, String>,
}

impl Manifest {
    /// Reads a manifest; an empty one where the text is none.
    pub(super) fn parse(text: &str) -> Self {
        serde_json::from_str(text).unwrap_or_default()
    }

    /// The manifest as text.
    pub(super) fn text(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}
