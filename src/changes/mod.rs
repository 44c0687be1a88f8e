//! What differs between two editions of a course, in a reader's words: two worked-out
//! recipes are held side by side. Amounts are compared exactly; what a ticket says is
//! compared as a reader sees it, so a difference that rounding hides is none.

mod formula;
mod recipe;
mod steps;
mod technique;
mod words;

use serde::Serialize;

use crate::edition::Edition;
use crate::formula::Scaling;
use crate::measure::{Label, exact};
use crate::model::Recipe;
use crate::sheet::{Sheet, Since, SinceMark};
use crate::words::Words;
use crate::work::{Work, work};

/// Everything that differs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Changes {
    /// Version of this form.
    pub changes: u32,
    /// The old edition's name.
    pub old: Option<String>,
    /// The new edition's name.
    pub new: Option<String>,
    /// The recipes that differ, in the order of the new edition, then those left out.
    pub recipes: Vec<ChangedItem>,
    /// The techniques that differ, likewise.
    pub techniques: Vec<ChangedItem>,
}

impl Changes {
    /// Whether nothing differs.
    pub fn is_empty(&self) -> bool {
        self.recipes.is_empty() && self.techniques.is_empty()
    }
}

/// A recipe or technique that differs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ChangedItem {
    /// Its file's name.
    pub name: String,
    /// Its title, the new one where there is one.
    pub title: String,
    /// What became of it.
    pub became: Became,
    /// What differs in it; empty where it is new or left out.
    pub changes: Vec<Change>,
}

/// What became of a recipe or technique.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Became {
    /// It is new.
    Added,
    /// It differs.
    Changed,
    /// It is left out.
    Removed,
}

/// One difference.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Change {
    /// What it is about: `amount`, `oven`, `step-added`.
    pub about: &'static str,
    /// The step it is about, by its new name.
    pub step: Option<String>,
    /// The line of the new formula that it is about, counted from 0.
    #[serde(skip)]
    pub line: Option<usize>,
    /// The row of the step's ticket that it is about; `until` for its cue.
    #[serde(skip)]
    pub row: Option<String>,
    /// The difference in words.
    pub text: Label,
}

impl Change {
    /// A difference that is about no single step.
    fn new(about: &'static str, text: Label) -> Self {
        Self { about, step: None, line: None, row: None, text }
    }
}

/// One recipe in one edition.
struct Side<'a> {
    work: Work<'a>,
    sheet: Sheet,
    fine: bool,
}

impl<'a> Side<'a> {
    fn new(edition: &'a Edition, recipe: &'a Recipe, words: &Words) -> Option<Self> {
        let scaling = Scaling::Batches(exact(1, 1));
        let work = work(recipe, &scaling, edition.book()).ok()?;
        let sheet = edition.sheet_of(&work, words);
        let course = edition.content.course.as_ref();
        let fine = course.is_none_or(|course| course.fine_scale);
        Some(Self { work, sheet, fine })
    }
}

/// One recipe in both editions.
struct Pair<'a> {
    old: Side<'a>,
    new: Side<'a>,
    words: &'a Words,
}

/// What differs between `old` and `new`, of which neither may have an error. Both are put
/// into `words`.
pub fn between(old: &Edition, new: &Edition, words: &Words) -> Changes {
    let name = |edition: &Edition| {
        edition.content.course.as_ref().and_then(|course| course.edition.clone())
    };
    Changes {
        changes: 1,
        old: name(old),
        new: name(new),
        recipes: recipes(old, new, words),
        techniques: technique::entries(old, new, words),
    }
}

fn recipes(old: &Edition, new: &Edition, words: &Words) -> Vec<ChangedItem> {
    let now =
        new.content.recipes.iter().filter_map(|recipe| entry(old, new, recipe, words));
    let gone = old.content.recipes.iter();
    let gone = gone.filter(|recipe| new.content.recipe(&recipe.name).is_none());
    now.chain(gone.map(|recipe| whole(recipe, Became::Removed))).collect()
}

/// One recipe of the new edition; `None` where nothing differs.
fn entry(
    old: &Edition,
    new: &Edition,
    recipe: &Recipe,
    words: &Words,
) -> Option<ChangedItem> {
    let Some(before) = old.content.recipe(&recipe.name) else {
        return Some(whole(recipe, Became::Added));
    };
    let old = Side::new(old, before, words)?;
    let new = Side::new(new, recipe, words)?;
    let changes = recipe::changes(&Pair { old, new, words });
    (!changes.is_empty())
        .then(|| ChangedItem { changes, ..whole(recipe, Became::Changed) })
}

/// What a recipe's handout says of the edition before; `None` where there is none, or
/// where nothing differs but the wording.
pub fn since(edition: &Edition, recipe: &Recipe, words: &Words) -> Option<Since> {
    let past = edition.past.as_deref()?;
    let changes = entry(past, edition, recipe, words)?.changes.into_iter();
    let changes: Vec<Change> = changes.filter(|change| change.about != "words").collect();
    let marks = changes.iter().filter_map(mark).collect();
    let changes: Vec<Label> = changes.into_iter().map(|change| change.text).collect();
    let folder =
        edition.content.course.as_ref()?.since.as_ref()?.value.rsplit('/').next();
    let name = past.content.course.as_ref().and_then(|course| course.edition.clone());
    let edition = name.or_else(|| folder.map(str::to_owned))?;
    (!changes.is_empty()).then_some(Since { edition, changes, marks })
}

/// Where a difference shows on the sheet; `None` where it has no place of its own there.
fn mark(change: &Change) -> Option<SinceMark> {
    let Change { line, step, row, .. } = change.clone();
    match (line, step) {
        (Some(line), _) => Some(SinceMark::Line { line }),
        (None, Some(step)) => Some(SinceMark::Step { step, row }),
        (None, None) => None,
    }
}

fn whole(recipe: &Recipe, became: Became) -> ChangedItem {
    let (name, title) = (recipe.name.clone(), recipe.title.value.clone());
    ChangedItem { name, title, became, changes: Vec::new() }
}

#[cfg(test)]
mod tests;
