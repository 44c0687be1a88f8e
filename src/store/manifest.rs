//! What the program made last time: each file's path and what it was made from.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeMap;
use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::product::Card;

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
    /// What is known of each recipe, by name.
    #[serde(default)]
    pub(super) recipes: BTreeMap<String, Known>,
    /// Path to key.
    pub(super) made: BTreeMap<String, String>,
}

/// What is known of a recipe: while its key is the same, so is all the rest.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Known {
    /// Stands for all that its files can depend on.
    pub(super) key: String,
    /// What other pages say of it.
    pub(super) card: Card,
    /// Its files.
    pub(super) files: Vec<String>,
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
