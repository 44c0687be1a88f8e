//! A technique in words, with what to draw.

use crate::dough::cutting::{Orientation, cut};
use crate::dough::{Action, Batch, laminate};
use crate::measure::{Exact, Mass, Size, exact};
use crate::model::{Content, Demonstration, Inline, Recipe, Technique};

use super::super::{Demo, TechniqueSheet};
use super::{Context, dough, prose};

/// Thickness of the dough that a demonstration is drawn with, cm: a technique has no
/// formula of its own. Common practice, no source.
const DEMONSTRATION_THICKNESS: (i64, i64) = (8, 10);

/// The sheet of a technique.
pub fn technique(technique: &Technique, context: Context) -> TechniqueSheet {
    TechniqueSheet {
        technique: technique.name.clone(),
        title: technique.title.value.clone(),
        summary: technique.summary.clone(),
        demonstrations: technique
            .drawings
            .iter()
            .flat_map(|d| demos(d, context))
            .collect(),
        content: prose::plain_blocks(&technique.content),
        used_in: used_in(&technique.name, context.book.content),
    }
}

/// The recipes whose prose links to the technique.
fn used_in(name: &str, content: &Content) -> Vec<[String; 2]> {
    let file = format!("techniques/{name}.md");
    let links = |recipe: &Recipe| {
        let mut found = false;
        for block in recipe.blocks() {
            block.visit(&mut |inline| {
                found |= matches!(inline, Inline::Link { to, .. } if to.ends_with(&file));
            });
        }
        found
    };
    let linking = content.recipes.iter().filter(|recipe| links(recipe));
    linking.map(|recipe| [recipe.name.clone(), recipe.title.value.clone()]).collect()
}

fn demos(drawing: &Demonstration, context: Context) -> Vec<Demo> {
    let sheet = &drawing.sheet.value;
    let action = Action {
        step: String::new(),
        sheet: Some(sheet.clone()),
        lock_in: drawing.lock_in.as_ref().map(|(kind, _)| *kind),
        turn: drawing.turn,
        of_fat: false,
        inverted: false,
    };
    let block = drawing.lock_in.as_ref().map(|(_, block)| block);
    let laminated = laminate(&sample(sheet, block), block, &[action]);
    let lock_in =
        laminated.lock_in.as_ref().map(|l| Demo::LockIn(Box::new(dough::lock_in(l))));
    let folds = laminated
        .folds
        .iter()
        .map(|fold| Demo::Fold(Box::new(dough::fold(fold, String::new()))));
    let cut = drawing
        .cut
        .as_ref()
        .and_then(|plan| cut(plan, sheet, Orientation::Best).ok())
        .map(|layout| {
            let area = layout.piece_area.amount() * exact(4, 10) * exact(11, 10);
            Demo::Cut(Box::new(dough::layout(&layout, &Mass::grams(area), context)))
        });
    lock_in.into_iter().chain(folds).chain(cut).collect()
}

/// As much dough and fat as lie on the demonstration's sheet and block.
fn sample(sheet: &Size, block: Option<&Size>) -> Batch {
    let thick: Exact = exact(DEMONSTRATION_THICKNESS.0, DEMONSTRATION_THICKNESS.1);
    let mass = |size: &Size| Mass::grams(size.area().amount() * &thick);
    Batch {
        dough: mass(sheet),
        fat: block.map_or_else(Mass::zero, mass),
        dough_density: exact(1, 1),
        fat_density: exact(1, 1),
    }
}
