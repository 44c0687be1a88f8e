//! The ways of a recipe, in words.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::Label;

/// A swap that a recipe is offered with.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WaySheet {
    /// Its name, as its author wrote it.
    pub name: String,
    /// What it changes, one a change: `140 g oat drink for whole milk`.
    pub changes: Vec<Label>,
    /// What it is made without.
    pub without: WithoutFact,
    /// The name of the recipe in this way, where it has a page of its own.
    pub page: Option<String>,
}

/// What a recipe is a way of.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WayOf {
    /// The file name of the recipe as written.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// The names of the ways, in the order asked for.
    pub names: Vec<String>,
    /// Whether it has a page of its own; else that of the recipe as written tells of it.
    pub has_page: bool,
    /// What it is made without.
    pub without: WithoutFact,
}

/// What is in the recipe as written and not in one of its ways. It says nothing of traces, and
/// stands empty where an allergen of the way is not known.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct WithoutFact {
    /// As each law calls them, by its key: `us`, `eu`, and those that the course asks for.
    #[serde(flatten)]
    pub lists: BTreeMap<String, Vec<String>>,
}
