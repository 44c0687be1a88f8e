//! The cuts of one dough.

use num_traits::ToPrimitive;

use crate::dough::cutting::{Layout, Orientation, Refusal, cut, reroll};
use crate::measure::{Exact, Mass, Size, exact};
use crate::model::{CutPlan, Recipe};

use super::layering::{Layering, lengthened};

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

/// Lays out every cut of `recipe`, `each` times as written.
pub(super) fn cuts(
    recipe: &Recipe,
    layering: &Layering,
    each: &Exact,
) -> Vec<(usize, Result<CutWork, Refusal>)> {
    let mut sheet: Option<&Size> = None;
    let mut cuts = Vec::new();
    for (at, step) in recipe.steps().enumerate() {
        if let Some(size) = &step.sheet
            && layering.block != Some(at)
        {
            sheet = Some(&size.value);
        }
        let Some(plan) = &step.cut else { continue };
        let laid =
            sheet.ok_or(Refusal::NoSize).and_then(|sheet| lay(&plan.value, sheet, each));
        let layered = layering.layers.is_some();
        cuts.push((
            at,
            laid.map(|layout| CutWork {
                reroll: (!layered).then(|| reroll(&plan.value, &layout)).flatten(),
                piece: weigh(&layout, layering),
                layout,
            }),
        ));
    }
    cuts
}

/// The author's sheet keeps its width; a grid gets more or fewer pieces across.
fn lay(plan: &CutPlan, sheet: &Size, each: &Exact) -> Result<Layout, Refusal> {
    let sheet = lengthened(sheet, each);
    let plan = match plan {
        CutPlan::Grid { strips, across, diagonal } => {
            let across = (Exact::from_integer((*across).into()) * each).round();
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

/// The dough on one piece: its share of the sheet.
fn weigh(layout: &Layout, layering: &Layering) -> Mass {
    let on_sheet = layering.batch.dough.clone() + layering.batch.fat.clone();
    let share =
        layout.piece_area.over(&layout.sheet.area()).unwrap_or_else(|| exact(0, 1));
    &on_sheet * &share
}
