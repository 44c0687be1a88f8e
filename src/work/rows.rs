//! The last sheet in whole rows: it keeps the side that the cut needs and grows by whole
//! rows of pieces, so that piece, thickness and weight stay as written at every scale.

use num_traits::ToPrimitive;

use crate::dough::cutting::{Layout, MOST_PIECES, Orientation, cut, reroll};
use crate::dough::{room_in_proportion, room_lengthwise, ruler_step};
use crate::formula::Scaling;
use crate::formula::parts::Parts;
use crate::measure::{Exact, Length, Size, exact};
use crate::model::{CutPlan, Shape, Step};

/// How many times as many pieces as written, and whether the dough was reckoned from whole
/// rows of them.
#[derive(Clone, Copy, Debug)]
pub(super) struct Times<'a> {
    /// The pieces, as a multiple of those written.
    pub(super) each: &'a Exact,
    /// Whether every sheet that is cut is of whole rows.
    pub(super) whole_rows: bool,
}

/// Whether the dough is reckoned from whole rows: where pieces are asked for.
pub(super) fn in_rows(scaling: &Scaling) -> bool {
    match scaling {
        Scaling::Pieces(_) | Scaling::PieceWeight { .. } => true,
        Scaling::Batches(_) | Scaling::Flour(_) | Scaling::Total(_) | Scaling::Tin(_) => {
            false
        }
    }
}

/// A cut, and the sheet that it cuts.
pub(super) struct CutSheet<'a> {
    /// The step that cuts, by number.
    pub(super) step: usize,
    /// How it is cut.
    pub(super) plan: &'a CutPlan,
    /// The step's own sheet, else the last one before of the dough, or the part, that the
    /// step works on; `None` where there is none.
    pub(super) sheet: Option<&'a Size>,
}

/// The cuts of a recipe in order. `block` is the step that shapes the fat.
pub(super) fn cut_sheets<'a>(
    steps: &[&'a Step],
    parts: &Parts,
    block: Option<usize>,
) -> Vec<CutSheet<'a>> {
    let sheet_of = |at: usize| {
        let own = |before: &usize| parts.is_within(parts.of(at), parts.of(*before));
        let sheets = (0..=at).rev().filter(|before| block != Some(*before));
        sheets.filter(own).find_map(|at| Some(&steps[at].sheet.as_ref()?.value))
    };
    let plans = steps
        .iter()
        .enumerate()
        .filter_map(|(at, step)| Some((at, &step.cut.as_ref()?.value)));
    plans.map(|(step, plan)| CutSheet { step, plan, sheet: sheet_of(step) }).collect()
}

/// The cut that the sheet of a step is rolled for: it cuts this sheet, or one of the same
/// size after it; `None` for a sheet that is folded, and where nothing is cut from it.
pub(super) fn cut_from<'a>(
    at: usize,
    steps: &[&Step],
    parts: &Parts,
    cuts: &[CutSheet<'a>],
) -> Option<&'a CutPlan> {
    let sheet = &steps[at].sheet.as_ref()?.value;
    let rolled_for = |cut: &&CutSheet| {
        cut.sheet == Some(sheet) && parts.is_within(parts.of(cut.step), parts.of(at))
    };
    let cut = cuts.iter().find(rolled_for);
    cut.filter(|_| !steps[at].laminates()).map(|cut| cut.plan)
}

/// How the pieces of a cut are counted, so that they are as many as the recipe says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Counted {
    /// Whole pieces alone.
    Whole,
    /// Two half triangles as one piece.
    WithHalves,
    /// What the scrap gives, rolled once more, too.
    WithScrap,
}

impl Counted {
    fn count(self, plan: &CutPlan, layout: &Layout) -> u64 {
        let whole = layout.pieces.len() as u64;
        let halves = || layout.halves.len() as u64 / 2;
        let again = || reroll(plan, layout).map_or(0, |again| again.pieces.len() as u64);
        match self {
            Self::Whole => whole,
            Self::WithHalves => whole + halves(),
            Self::WithScrap => whole + halves() + again(),
        }
    }
}

/// The sheets of a recipe as they grow with it.
pub(super) struct Sheets<'a> {
    /// The steps in the order written.
    pub(super) steps: Vec<&'a Step>,
    /// The parts of the dough.
    pub(super) parts: &'a Parts,
    /// The step that shapes the fat, by number.
    pub(super) block: Option<usize>,
    /// Whether the dough is layered, so that its scrap is not rolled once more.
    pub(super) layered: bool,
    /// How many pieces the recipe says it makes.
    pub(super) promised: Option<u64>,
}

/// How a recipe is made at one scale.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Split {
    /// How many times the recipe as written one dough is.
    pub(super) each: Exact,
    /// Equal doughs.
    pub(super) doughs: u64,
    /// How many times the pieces as written all doughs give, where one dough is cut.
    pub(super) pieces: Option<Exact>,
}

impl Sheets<'_> {
    /// How many batches in one dough the bench has room for; `None` without a sheet.
    pub(super) fn room(&self, bench: &Size) -> Option<Exact> {
        let cuts = self.cuts();
        let room = |(at, step): (usize, &&Step)| {
            let sheet = &step.sheet.as_ref()?.value;
            match cut_from(at, &self.steps, self.parts, &cuts) {
                Some(CutPlan::Strips(_)) => {
                    let crossed = Size::new(sheet.width.clone(), sheet.length.clone());
                    room_lengthwise(&crossed, bench)
                }
                Some(CutPlan::Shape(_) | CutPlan::Grid { .. }) => {
                    room_lengthwise(sheet, bench)
                }
                None => room_in_proportion(sheet, bench),
            }
        };
        self.steps.iter().enumerate().filter_map(room).min()
    }

    /// One dough and how many of them for `asked` times the recipe, each piece `heavier` times
    /// as heavy as written. By pieces every last sheet is of whole rows, and the dough is
    /// reckoned from it; so is a grid by batches. Else the dough is as it was asked for.
    /// `split` says how many doughs so many batches are.
    pub(super) fn split(
        &self,
        scaling: &Scaling,
        (asked, heavier): (&Exact, &Exact),
        split: impl Fn(&Exact) -> u64,
    ) -> Split {
        let whole: fn(&CutPlan) -> bool = match scaling {
            Scaling::Pieces(_) | Scaling::PieceWeight { .. } => |_| true,
            // Two batches are twice the formula; only a grid cannot be cut in part.
            Scaling::Batches(_) => |plan| matches!(plan, CutPlan::Grid { .. }),
            Scaling::Flour(_) | Scaling::Total(_) | Scaling::Tin(_) => |_| false,
        };
        let mut doughs = split(asked);
        loop {
            let count = Exact::from_integer(doughs.into());
            let share = asked / &count;
            let rows = self.whole_rows(&(&share / heavier), whole);
            let each = rows.map_or(share, |rows| rows * heavier);
            // Whole rows may be a little more than was asked for.
            let needed = split(&(&each * &count));
            if needed <= doughs || *asked <= exact(1, 1) {
                // A tin is one, however many rounds are cut for it.
                let cut = !matches!(scaling, Scaling::Tin(_));
                let light = &each / heavier;
                let times = Times { each: &light, whole_rows: in_rows(scaling) };
                let pieces = cut.then(|| self.pieces(times)).flatten();
                let pieces = pieces.map(|pieces| pieces * count);
                return Split { each, doughs, pieces };
            }
            doughs = needed;
        }
    }

    fn cuts(&self) -> Vec<CutSheet<'_>> {
        cut_sheets(&self.steps, self.parts, self.block)
    }

    /// The last cut of the dough, and of each part of it.
    fn last_cuts(&self) -> Vec<CutSheet<'_>> {
        let of = |step: usize| self.parts.of(step);
        let mut last: Vec<CutSheet> = Vec::new();
        for cut in self.cuts() {
            last.retain(|before| of(before.step) != of(cut.step));
            last.push(cut);
        }
        last
    }

    /// The smallest sheet, as a multiple of the one written, that holds `each` times the
    /// pieces of every cut that must be `whole`; `None` where there is no such cut.
    fn whole_rows(&self, each: &Exact, whole: fn(&CutPlan) -> bool) -> Option<Exact> {
        let cuts = self.last_cuts();
        let cuts = cuts.iter().filter(|cut| whole(cut.plan));
        cuts.filter_map(|cut| self.rows_of(cut.plan, cut.sheet?, each)).max()
    }

    fn rows_of(&self, plan: &CutPlan, sheet: &Size, each: &Exact) -> Option<Exact> {
        let one = exact(1, 1);
        if *each == one {
            return Some(one);
        }
        match plan {
            CutPlan::Grid { strips, across, .. } => {
                let rows =
                    Exact::from_integer(rows_along(sheet, [*strips, *across]).into());
                Some((&rows * each).ceil() / rows)
            }
            CutPlan::Strips(width) => {
                let step = width.over(&sheet.width)?;
                let strips = (&one / &step).floor();
                let wanted = (&strips * each).ceil();
                (!strips.is_zero()).then(|| &wanted * &step + (one - &strips * step))
            }
            CutPlan::Shape(shape) => {
                let crossed = Size::new(sheet.width.clone(), sheet.length.clone());
                let across = || self.rows_of_shape((plan, shape), &crossed, each);
                let along = self.rows_of_shape((plan, shape), sheet, each);
                let across = (*each < one).then(across).flatten();
                along.into_iter().chain(across).min()
            }
        }
    }

    /// The shortest sheet that holds so many pieces: as written, by whole rows more or fewer.
    fn rows_of_shape(
        &self,
        (plan, shape): (&CutPlan, &Shape),
        sheet: &Size,
        each: &Exact,
    ) -> Option<Exact> {
        let written = cut(plan, sheet, Orientation::Best).ok()?;
        let counted = self.counted(plan, &written);
        let pieces = Exact::from_integer(counted.count(plan, &written).into());
        let wanted = (pieces * each).ceil().to_integer().to_u64()?;
        let row = row_step(shape, sheet, &written);
        let rows = sheet.length.over(&row)?.floor();
        let trim = sheet.length.clone() - &row * &rows;
        let holds = |rows: u64| {
            let length = &row * &Exact::from_integer(rows.into()) + trim.clone();
            let longer = Size::new(length.clone(), sheet.width.clone());
            let made = cut(plan, &longer, Orientation::Best).ok()?;
            length.over(&sheet.length).filter(|_| counted.count(plan, &made) >= wanted)
        };
        (1..=MOST_PIECES).find_map(holds)
    }

    /// How the recipe counts the pieces of a sheet as written.
    fn counted(&self, plan: &CutPlan, written: &Layout) -> Counted {
        let enough = |counted: &Counted| {
            self.promised.is_some_and(|all| counted.count(plan, written) >= all)
        };
        // The parts of a divided dough promise nothing one by one.
        let whole_dough = !self.parts.are_several();
        let mut ways = vec![Counted::Whole];
        ways.extend(whole_dough.then_some(Counted::WithHalves));
        ways.extend((whole_dough && !self.layered).then_some(Counted::WithScrap));
        ways.into_iter().find(enough).unwrap_or(Counted::Whole)
    }

    /// How many times the pieces as written a dough gives that is cut as a whole.
    fn pieces(&self, Times { each, whole_rows }: Times) -> Option<Exact> {
        let cuts = self.last_cuts();
        let [CutSheet { plan, sheet: Some(sheet), .. }] = cuts.as_slice() else {
            return None;
        };
        if self.parts.are_several() {
            return None;
        }
        let laid = |each: &Exact| {
            let times = Times { each, whole_rows };
            let plan = cut_plan(plan, sheet, times);
            let laid = cut(&plan, &cut_sheet(&plan, sheet, times), Orientation::Best);
            laid.ok().map(|layout| (plan, layout))
        };
        let (plan, written) = laid(&exact(1, 1))?;
        let counted = self.counted(&plan, &written);
        let (other, made) = laid(each)?;
        let counts = [counted.count(&other, &made), counted.count(&plan, &written)];
        let [made, written] = counts.map(|count| Exact::from_integer(count.into()));
        Some(made / written)
    }
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
/// second, since they are as long as the first. Of a smaller sheet the side shrinks that leaves
/// more pieces.
pub(super) fn cut_sheet(plan: &CutPlan, sheet: &Size, times: Times) -> Size {
    let (each, one) = (times.each, exact(1, 1));
    if *each == one {
        return sheet.clone();
    }
    let grown = |side: &Length| on_ruler(&(side * each), sheet);
    match plan {
        CutPlan::Strips(_) => Size::new(sheet.length.clone(), grown(&sheet.width)),
        CutPlan::Grid { .. } => Size::new(&sheet.length * each, sheet.width.clone()),
        CutPlan::Shape(_) => {
            let first = Size::new(grown(&sheet.length), sheet.width.clone());
            let second = Size::new(sheet.length.clone(), grown(&sheet.width));
            let [whole, other] = [&first, &second].map(|sheet| gives(plan, sheet));
            // Whole rows keep their length to the hair.
            let exact =
                [&sheet.length, &sheet.width].map(|side| grown(side) == side * each);
            let across = match (times.whole_rows, exact) {
                (true, [true, false]) => false,
                (true, [false, true]) => other > 0,
                (true, [true, true] | [false, false]) | (false, _) => other > whole,
            };
            if *each < one && across { second } else { first }
        }
    }
}

/// How many whole pieces a sheet gives.
fn gives(plan: &CutPlan, sheet: &Size) -> usize {
    cut(plan, sheet, Orientation::Best).map_or(0, |laid| laid.pieces.len())
}

/// A side as long as a ruler gives, and no shorter, where the sheet as written is.
fn on_ruler(side: &Length, written: &Size) -> Length {
    let step = ruler_step(written);
    let is_on = |side: &Length| (side.amount() / &step).is_integer();
    if is_on(&written.length) && is_on(&written.width) {
        Length::centimetres((side.amount() / &step).ceil() * step)
    } else {
        side.clone()
    }
}

/// The plan for that sheet: a grid gets more or fewer rows. Where the side that grew has
/// become the longer or the shorter one, strips and pieces across change places.
pub(super) fn cut_plan(plan: &CutPlan, written: &Size, times: Times) -> CutPlan {
    let (sheet, each) = (cut_sheet(plan, written, times), times.each);
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
