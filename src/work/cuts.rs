//! The cuts of one dough.

use num_traits::ToPrimitive;

use crate::dough::cutting::{Layout, Orientation, Refusal, cut, reroll};
use crate::formula::Flow;
use crate::measure::{Exact, Length, Mass, Size, exact};
use crate::model::{CutPlan, Recipe, Shape, Step};

use super::layering::{Growth, Layering};

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
    let parts = &flow.parts;
    let sheet_of = |at: usize| -> Option<&Size> {
        let own = |before: &usize| parts.is_within(parts.of(at), parts.of(*before));
        let sheets = (0..=at).rev().filter(|before| layering.block != Some(*before));
        sheets.filter(own).find_map(|at| Some(&steps[at].sheet.as_ref()?.value))
    };
    let plans = steps
        .iter()
        .enumerate()
        .filter_map(|(at, step)| Some((at, &step.cut.as_ref()?.value)));
    let layered = layering.layers.is_some();
    plans
        .map(|(at, plan)| {
            let grown = grown(plan, growth);
            let sheet = sheet_of(at).ok_or(Refusal::NoSize);
            let laid = sheet.and_then(|sheet| lay(&grown, sheet, growth));
            let cut = laid.map(|layout| CutWork {
                reroll: (!layered).then(|| reroll(&grown, &layout)).flatten(),
                piece: &weigh(&layout, layering) * parts.share(at),
                layout,
            });
            (at, cut)
        })
        .collect()
}

/// The plan with pieces of their new size.
fn grown(plan: &CutPlan, growth: &Growth) -> CutPlan {
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
    let sheet = growth.cut_sheet(sheet);
    let plan = match plan {
        CutPlan::Grid { strips, across, diagonal } => {
            let across = (Exact::from_integer((*across).into()) * &growth.pieces).round();
            let across = across.to_integer().to_u32().unwrap_or(1).max(1);
            grid(&sheet, *strips, across, *diagonal)
        }
        other => other.clone(),
    };
    cut(&plan, &sheet, Orientation::Best)
}

/// Strips run along the long side: where the sheet has become wider than long, strips and
/// pieces across change places.
fn grid(sheet: &Size, strips: u32, across: u32, diagonal: bool) -> CutPlan {
    if sheet.length < sheet.width {
        CutPlan::Grid { strips: across, across: strips, diagonal }
    } else {
        CutPlan::Grid { strips, across, diagonal }
    }
}

/// The dough on one piece, were the whole dough on the sheet.
fn weigh(layout: &Layout, layering: &Layering) -> Mass {
    let on_sheet = layering.batch.dough.clone() + layering.batch.fat.clone();
    let share =
        layout.piece_area.over(&layout.sheet.area()).unwrap_or_else(|| exact(0, 1));
    &on_sheet * &share
}
