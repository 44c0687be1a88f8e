//! **tourier**: a folder of recipe texts in, a checked course site and handouts out.
//!
//! The modules are the pipeline, in order: text → model → check → compute → sheet →
//! draw → paint → write. A module may use what stands above it, never what stands below.

#![cfg_attr(
    test,
    allow(clippy::wildcard_enum_match_arm, reason = "a test looks at what it is about")
)]

// Words every room may use; they import nothing of ours.
pub mod encode;
pub mod measure;
pub mod statement;
pub mod theme;
pub mod words;

pub mod fault;
pub mod media;

// Text to model.
pub mod model;
pub mod read;

pub mod pantry;

// A course in a second language.
pub mod translation;

// Computing: pure, exact.
pub mod dough;
pub mod formula;
pub mod time;

// One recipe worked out, judged, and the one computed result.
pub mod work;

// When what happens: the class plan and the home plan.
pub mod plan;

pub mod check;
pub mod sheet;

// Painting: these decide nothing.
pub mod draw;
pub mod lists;
pub mod paper;
pub mod site;

// The stages in order, and what is published.
pub mod edition;

// What stands at a place in a text, for whoever writes it.
pub mod here;

// A recipe that exists, made into a draft in our format.
pub mod draft;

pub mod changes;

pub mod product;

// The edge: files and the terminal.
pub mod store;

// A class while it is held.
pub mod evening;

pub mod preview;

pub mod editor;

pub mod cli;

/// Typesetting spends a quarter of its time asking for memory and giving it back; this
/// allocator takes half as long as the system's.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;
