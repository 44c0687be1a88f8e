//! The cuts of one dough.

use crate::dough::cutting::{Layout, Orientation, Refusal, cut, reroll};
use crate::formula::Flow;
use crate::measure::{Length, Mass, Size, exact};
use crate::model::{CutPlan, Recipe, Shape, Step};

use super::layering::{Growth, Layering};
use super::rows::{CutSheet, cut_plan, cut_sheet, cut_sheets};

/// One cut, laid out.
#[derive(Clone, Debug)]
pub struct CutWork {
    /// Pieces, lines and marks.
    pub layout: Layout,
    /// The weight of one piece, before any loss.
    pub piece: Mass,
    /// What the scrap gives when it is rolled once more; nothing for layered dough, whose
    /// layers would be lost.
    pub reroll: Option<Layout>,
}

/// Lays out every cut of one dough of `recipe`: on the last sheet of the dough, or of the
/// part, that the step works on.
pub(super) fn cuts(
    recipe: &Recipe,
    flow: &Flow,
    layering: &Layering,
    growth: &Growth,
) -> Vec<(usize, Result<CutWork, Refusal>)> {
    let steps: Vec<&Step> = recipe.steps().collect();
    let layered = layering.layers.as_ref().is_some_and(|it| it.lock_in.is_some());
    let laid = |it: CutSheet| {
        let grown = grown(it.plan, growth);
        let sheet = it.sheet.ok_or(Refusal::NoSize);
        let laid = sheet.and_then(|sheet| lay(&grown, sheet, growth));
        let cut = laid.map(|layout| CutWork {
            reroll: (!layered).then(|| reroll(&grown, &layout)).flatten(),
            piece: &weigh(&layout, layering) * flow.parts.share(it.step),
            layout,
        });
        (it.step, cut)
    };
    cut_sheets(&steps, &flow.parts, layering.block).into_iter().map(laid).collect()
}

/// The plan with pieces of their new size.
pub(super) fn grown(plan: &CutPlan, growth: &Growth) -> CutPlan {
    let side = |length: &Length| length * &growth.side;
    match plan {
        CutPlan::Shape(shape) => CutPlan::Shape(match shape {
            Shape::Triangles { base, height } => {
                Shape::Triangles { base: side(base), height: side(height) }
            }
            Shape::Rectangles(size) => Shape::Rectangles(growth.sides(size)),
            Shape::Squares(length) => Shape::Squares(side(length)),
            Shape::Rounds(length) => Shape::Rounds(side(length)),
        }),
        CutPlan::Strips(width) => CutPlan::Strips(side(width)),
        CutPlan::Grid { .. } => plan.clone(),
    }
}

/// The author's sheet keeps its width; a grid gets more or fewer pieces across.
fn lay(plan: &CutPlan, sheet: &Size, growth: &Growth) -> Result<Layout, Refusal> {
    let (sheet, times) = (growth.sides(sheet), growth.times());
    cut(
        &cut_plan(plan, &sheet, times),
        &cut_sheet(plan, &sheet, times),
        Orientation::Best,
    )
}

/// The dough on one piece, were the whole dough on the sheet.
fn weigh(layout: &Layout, layering: &Layering) -> Mass {
    let on_sheet = layering.batch.dough.clone() + layering.batch.fat.clone();
    let share =
        layout.piece_area.over(&layout.sheet.area()).unwrap_or_else(|| exact(0, 1));
    &on_sheet * &share
}
