//! Formulas for tests.

use crate::measure::exact;
use crate::model::Recipe;
use crate::pantry::Pantry;
use crate::read::{Source, content};

use super::{Body, Book, Contents, Flow, Formula, expand, weigh};

/// Reads and weighs a recipe whose head holds `formula`.
pub(super) fn with_recipe(formula: &str, test: impl FnOnce(&Formula, Book)) {
    with_body(formula, "", |weighed, _, book| test(weighed, book));
}

/// Reads and weighs a recipe whose head holds `formula`, with steps.
pub(super) fn with_body(
    formula: &str,
    body: &str,
    test: impl FnOnce(&Formula, &Recipe, Book),
) {
    let text = format!("---\ntitle: t\nsummary: s\n{formula}---\n{body}");
    let source = Source { path: "recipes/t.md".into(), text };
    let (content, _, _) = content(&[source]);
    let pantry = Pantry::built_in();
    let book = Book { content: &content, pantry: &pantry };
    let recipe = &content.recipes[0];
    let weighed = weigh(recipe, book);
    assert!(weighed.faults.is_empty(), "{:?}", weighed.faults);
    test(&weighed, recipe, book);
}

/// Expands a recipe whose head holds `formula`.
pub(super) fn with_contents(formula: &str, test: impl FnOnce(&Contents)) {
    with_recipe(formula, |formula, _| test(&expand(formula, &exact(1, 1))));
}

/// The body of the recipe under test.
pub(super) fn body(formula: &Formula, book: Book) -> Body {
    let recipe = &book.content.recipes[0];
    Body::new(recipe, formula, &Flow::new(recipe, formula))
}
