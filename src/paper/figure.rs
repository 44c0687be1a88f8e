//! A drawing as the handouts take it.

use crate::measure::Label;

/// One drawing in both unit systems.
#[derive(Clone, Debug)]
pub struct Figure {
    /// Its name: `first-turn`.
    pub name: String,
    /// The step it belongs to.
    pub step: Option<String>,
    /// `lock-in`, `turn`, `cut`, `timeline`.
    pub kind: String,
    /// Its title.
    pub title: String,
    /// What it shows, in words.
    pub alt: Label,
    /// The drawing itself, a whole SVG document.
    pub svg: Label,
}
