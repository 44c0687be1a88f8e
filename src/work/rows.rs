//! The last sheet in whole rows: it keeps the side that the cut needs and grows by whole
//! rows of pieces, so that piece, thickness and weight stay as written at every scale.

use num_traits::ToPrimitive;

use crate::dough::cutting::{Layout, MOST_PIECES, Orientation, cut};
use crate::dough::{room_in_proportion, room_lengthwise};
use crate::formula::Scaling;
use crate::measure::{Exact, Length, Size, exact};
use crate::model::{CutPlan, Recipe, Shape, Step};

/// The steps with a cut, and the sheets that they cut: their own, else the last one before.
/// `block` is the step that shapes the fat.
pub(super) fn cut_sheets<'a>(
    steps: &[&'a Step],
    block: Option<usize>,
) -> Vec<(&'a CutPlan, &'a Size)> {
    let mut last: Option<&Size> = None;
    let mut found = Vec::new();
    for (at, step) in steps.iter().enumerate() {
        if let Some(size) = step.sheet.as_ref().filter(|_| block != Some(at)) {
            last = Some(&size.value);
        }
        found.extend(step.cut.as_ref().map(|plan| &plan.value).zip(last));
    }
    found
}

/// A sheet of whole rows beside the sheet as written.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Rows {
    /// How many times the sheet.
    sheet: Exact,
    /// How many times its pieces.
    pieces: Exact,
}

/// The sheets of a recipe as they grow with it.
pub(super) struct Sheets<'a> {
    /// The recipe.
    pub(super) recipe: &'a Recipe,
    /// The step that shapes the fat, by number.
    pub(super) block: Option<usize>,
}

/// How a recipe is made at one scale.
pub(super) struct Split {
    /// How many times the recipe as written one dough is.
    pub(super) each: Exact,
    /// Equal doughs.
    pub(super) doughs: u64,
    /// How many times the pieces as written all doughs give, where the last sheet is of
    /// whole rows.
    pub(super) pieces: Option<Exact>,
}

impl Sheets<'_> {
    /// How many batches in one dough the bench has room for; `None` without a sheet.
    pub(super) fn room(&self, bench: &Size) -> Option<Exact> {
        let steps: Vec<&Step> = self.recipe.steps().collect();
        let cuts = cut_sheets(&steps, self.block);
        let room = |step: &&Step| {
            let sheet = &step.sheet.as_ref()?.value;
            let cut = cuts.iter().find(|(_, cut)| *cut == sheet);
            match cut.filter(|_| !step.laminates()) {
                Some((CutPlan::Strips(_), _)) => {
                    let crossed = Size::new(sheet.width.clone(), sheet.length.clone());
                    room_lengthwise(&crossed, bench)
                }
                Some(_) => room_lengthwise(sheet, bench),
                None => room_in_proportion(sheet, bench),
            }
        };
        steps.iter().filter_map(room).min()
    }

    /// One dough and how many of them for `asked` times the recipe. By pieces the last
    /// sheet is of whole rows, and the dough is reckoned from it; so is a grid by batches. Else
    /// the dough is as it was asked for. `split` says how many doughs so many batches are.
    pub(super) fn split(
        &self,
        scaling: &Scaling,
        asked: &Exact,
        split: impl Fn(&Exact) -> u64,
    ) -> Split {
        let by_rows = match scaling {
            Scaling::Pieces(_) => true,
            // Two batches are twice the formula; only a grid cannot be cut in part.
            Scaling::Batches(_) => self.cuts_a_grid(),
            Scaling::PieceWeight { .. }
            | Scaling::Flour(_)
            | Scaling::Total(_)
            | Scaling::Tin(_) => false,
        };
        let mut doughs = split(asked);
        loop {
            let count = Exact::from_integer(doughs.into());
            let share = asked / &count;
            let rows = by_rows.then(|| self.whole_rows(&share)).flatten();
            let each = rows.as_ref().map_or(share, |rows| rows.sheet.clone());
            // Whole rows may be a little more than was asked for.
            let needed = split(&(&each * &count));
            if needed <= doughs || *asked <= exact(1, 1) {
                return Split {
                    each,
                    doughs,
                    pieces: rows.map(|rows| rows.pieces * count),
                };
            }
            doughs = needed;
        }
    }

    fn cuts_a_grid(&self) -> bool {
        let plans = self.recipe.steps().filter_map(|step| step.cut.as_ref());
        plans.last().is_some_and(|plan| matches!(plan.value, CutPlan::Grid { .. }))
    }

    /// The sheet of whole rows that holds `each` times the pieces; `None` where the recipe has
    /// not one cut, or the sheet cannot be cut.
    fn whole_rows(&self, each: &Exact) -> Option<Rows> {
        let steps: Vec<&Step> = self.recipe.steps().collect();
        let [(plan, sheet)] = cut_sheets(&steps, self.block).try_into().ok()?;
        let one = exact(1, 1);
        if *each == one {
            return Some(Rows { sheet: one.clone(), pieces: one });
        }
        match plan {
            CutPlan::Grid { strips, across, .. } => {
                let rows =
                    Exact::from_integer(rows_along(sheet, [*strips, *across]).into());
                let times = (&rows * each).ceil() / rows;
                Some(Rows { sheet: times.clone(), pieces: times })
            }
            CutPlan::Strips(width) => {
                let step = width.over(&sheet.width)?;
                let strips = (&one / &step).floor();
                let wanted = (&strips * each).ceil();
                let sheet = &wanted * &step + (one - &strips * step);
                (!strips.is_zero()).then(|| Rows { sheet, pieces: wanted / strips })
            }
            CutPlan::Shape(shape) => of_shape((plan, shape), sheet, each),
        }
    }
}

/// The shortest sheet that holds so many pieces: as written, by whole rows more or fewer.
fn of_shape(
    (plan, shape): (&CutPlan, &Shape),
    sheet: &Size,
    each: &Exact,
) -> Option<Rows> {
    let written = cut(plan, sheet, Orientation::Best).ok()?;
    let pieces = Exact::from_integer(written.pieces.len().into());
    let wanted = (&pieces * each).ceil().to_integer().to_u64()?;
    let row = row_step(shape, sheet, &written);
    let rows = sheet.length.over(&row)?.floor();
    let trim = sheet.length.clone() - &row * &rows;
    let holds = |rows: u64| {
        let length = &row * &Exact::from_integer(rows.into()) + trim.clone();
        let longer = Size::new(length.clone(), sheet.width.clone());
        let made = cut(plan, &longer, Orientation::Best).ok()?.pieces.len() as u64;
        let times = length.over(&sheet.length).filter(|_| made >= wanted)?;
        Some(Rows { sheet: times, pieces: Exact::from_integer(made.into()) / &pieces })
    };
    (1..=MOST_PIECES).find_map(holds)
}

/// How much longer the first side must be for another row. Triangles lie head to tail, so
/// half a base makes room for one more in each strip.
fn row_step(shape: &Shape, sheet: &Size, written: &Layout) -> Length {
    match shape {
        Shape::Squares(side) | Shape::Rounds(side) => side.clone(),
        Shape::Rectangles(_) | Shape::Triangles { .. } => {
            let along = extent(written, usize::from(sheet.length < sheet.width));
            let half = matches!(shape, Shape::Triangles { .. }) && along == written.base;
            if half { &along * &exact(1, 2) } else { along }
        }
    }
}

/// How long the first piece is along an axis of the layout: 0 along its long side, 1 across.
fn extent(layout: &Layout, axis: usize) -> Length {
    let corners = layout.pieces.iter().take(1).flat_map(|piece| &piece.corners);
    let places: Vec<&Length> =
        corners.map(|corner| if axis == 0 { &corner.x } else { &corner.y }).collect();
    let (least, most) = (places.iter().min(), places.iter().max());
    least
        .zip(most)
        .map_or_else(Length::zero, |(least, most)| (*most).clone() - (*least).clone())
}

/// The rows of a grid along the sheet's first side: its strips run along the longer one.
fn rows_along(sheet: &Size, [strips, across]: [u32; 2]) -> u32 {
    if sheet.length < sheet.width { strips } else { across }
}

/// The sheet that is cut, `each` times as written: the first side grows, for strips the
/// second, since they are as long as the first.
pub(super) fn cut_sheet(plan: &CutPlan, sheet: &Size, each: &Exact) -> Size {
    match plan {
        CutPlan::Strips(_) => Size::new(sheet.length.clone(), &sheet.width * each),
        CutPlan::Grid { .. } | CutPlan::Shape(_) => {
            Size::new(&sheet.length * each, sheet.width.clone())
        }
    }
}

/// The plan for that sheet: a grid gets more or fewer rows. Where the side that grew has
/// become the longer or the shorter one, strips and pieces across change places.
pub(super) fn cut_plan(plan: &CutPlan, written: &Size, each: &Exact) -> CutPlan {
    let sheet = cut_sheet(plan, written, each);
    let crossed = |size: &Size| size.length < size.width;
    match plan {
        CutPlan::Grid { strips, across, diagonal } => {
            let along = rows_along(written, [*strips, *across]);
            let beside = if along == *across { *strips } else { *across };
            let beside = if strips == across { *strips } else { beside };
            let rows = (Exact::from_integer(along.into()) * each).round().to_integer();
            let rows = rows.to_u32().unwrap_or(1).max(1);
            let (strips, across) =
                if crossed(&sheet) { (rows, beside) } else { (beside, rows) };
            CutPlan::Grid { strips, across, diagonal: *diagonal }
        }
        CutPlan::Strips(width) if crossed(&sheet) != crossed(written) => {
            let strips =
                sheet.width.over(width).map(|strips| strips.floor().to_integer());
            let across = strips.and_then(|strips| strips.to_u32()).unwrap_or(1).max(1);
            CutPlan::Grid { strips: 1, across, diagonal: false }
        }
        CutPlan::Strips(_) | CutPlan::Shape(_) => plan.clone(),
    }
}
