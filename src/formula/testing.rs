//! Small recipes for the tests of this module.

use crate::measure::exact;
use crate::pantry::Pantry;
use crate::read::{Source, content};

use super::{Book, Contents, Formula, expand, weigh};

/// Weighs a recipe whose head holds `formula`.
pub(super) fn with_recipe(formula: &str, test: impl FnOnce(&Formula, Book)) {
    let text = format!("---\ntitle: t\nsummary: s\n{formula}---\n");
    let source = Source { path: "recipes/t.md".into(), text };
    let (content, _, _) = content(&[source]);
    let pantry = Pantry::built_in();
    let book = Book { content: &content, pantry: &pantry };
    let (weighed, faults) = weigh(&content.recipes[0], book);
    assert!(faults.is_empty(), "{faults:?}");
    test(&weighed, book);
}

/// Expands a recipe whose head holds `formula`.
pub(super) fn with_contents(formula: &str, test: impl FnOnce(&Contents)) {
    with_recipe(formula, |formula, book| test(&expand(formula, &exact(1, 1), book)));
}
