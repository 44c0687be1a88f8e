//! What the program made last time: each file's path and what it was made from.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeMap;
use std::path::Path;

use serde::{Deserialize, Serialize};

/// The manifest's name in the output folder.
pub(super) const NAME: &str = ".tourier.json";

/// Every file made, by its path below the output folder, with the key of what it was made
/// from.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Manifest {
    /// The fingerprint of what all of it was read from; empty where there is none, or
    /// where there is something to say of it.
    #[serde(default)]
    pub(super) from: String,
    /// Path to key.
    pub(super) made: BTreeMap<String, String>,
}

impl Manifest {
    /// The manifest of an output folder; an empty one where there is none.
    pub(super) fn read(output: &Path) -> Self {
        let text = std::fs::read_to_string(output.join(NAME));
        serde_json::from_str(&text.unwrap_or_default()).unwrap_or_default()
    }

    /// The manifest as text.
    pub(super) fn text(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}
