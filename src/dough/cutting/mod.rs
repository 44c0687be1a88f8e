//! How a sheet is cut: every piece as an exact polygon, every cut in its order, every
//! mark to make along an edge.
//!
//! The sheet lies with its near left corner at nought and its long side along x. No two
//! pieces overlap and none leaves the sheet.

mod blocks;
mod count;
mod flip;
mod form;
mod point;
mod rounds;
mod stroke;
mod triangles;

#[cfg(test)]
mod tests;

pub use form::Form;
pub use point::{Point, Polygon};
pub use stroke::{Stroke, Way};

use crate::measure::{Area, Exact, Length, Size, exact};
use crate::model::{CutPlan, Shape};

use super::{long_first, turned};
use blocks::Grid;

/// More pieces than this from one sheet are refused: no bench cuts them, and a slip of
/// the keyboard should not fill the memory.
pub const MOST_PIECES: u64 = 2000;

/// Which way pieces may lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Orientation {
    /// Whichever way gives more pieces; as written where both give as many.
    #[default]
    Best,
    /// As written: the first side, or the base, along the sheet's long side.
    AsWritten,
}

/// A sheet cut up.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layout {
    /// The form of a piece.
    pub form: Form,
    /// The sheet, long side first.
    pub sheet: Size,
    /// Every piece. A round is drawn by 48 corners that lie on it. Half triangles at the
    /// ends of a row stand apart.
    pub pieces: Vec<Polygon>,
    /// Half triangles at both ends of every row; two pressed together make one.
    pub halves: Vec<Polygon>,
    /// Every cut in the order of the knife: along the sheet first, then across, then the
    /// slanting ones, those that lean alike after one another. None for rounds, which are
    /// cut out.
    pub lines: Vec<[Point; 2]>,
    /// Marks along the near long side, running from the left corner.
    pub near: Vec<Length>,
    /// Marks along the far long side, running from the left corner.
    pub far: Vec<Length>,
    /// Marks along the left short side, running from the near corner.
    pub left: Vec<Length>,
    /// Marks along the right short side, running from the near corner.
    pub right: Vec<Length>,
    /// One piece's area.
    pub piece_area: Area,
    /// The part of the sheet that is no whole piece, 0 to 1.
    pub scrap_share: Exact,
    /// A triangle's base, the short side at the right angle of a right triangle, a
    /// round's diameter, or a piece's side along the sheet as written.
    pub base: Length,
    /// A triangle's height, the long side at the right angle of a right triangle, a
    /// round's diameter, or a piece's other side.
    pub height: Length,
}

/// Why a sheet cannot be cut as planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// The sheet, a side of the piece or a number in the grid is nought or less.
    NoSize,
    /// Not one piece fits on the sheet.
    TooLarge,
    /// More than [`MOST_PIECES`].
    TooMany,
}

/// Cuts `sheet` as planned.
///
/// - Rectangles and squares in rows; rounds in rows side by side or set in the gaps,
///   whichever gives more; triangles nested head to tail in strips, ⌊2L/b⌋ − 1 to a strip
///   of length L; strips along the long side.
/// - A grid divides the whole sheet: `strips` along the long side, `across` pieces in
///   each, cut from corner to corner where it says so. It stands as written whatever
///   `orientation` says.
///
/// # Errors
/// Where nothing fits, something has no size, or there would be too many pieces.
pub fn cut(
    plan: &CutPlan,
    sheet: &Size,
    orientation: Orientation,
) -> Result<Layout, Refusal> {
    let sheet = &long_first(sheet);
    if !sheet.width.is_positive() {
        return Err(Refusal::NoSize);
    }
    match plan {
        CutPlan::Shape(shape) => cut_shape(shape, sheet, orientation),
        CutPlan::Grid { strips, across, diagonal } => {
            let grid = Grid::dividing(sheet, *strips, *across)?;
            if *diagonal {
                grid.halved(sheet)
            } else {
                Ok(grid.whole(sheet, Form::Rectangle))
            }
        }
        CutPlan::Strips(width) => {
            let piece = Size::new(sheet.length.clone(), width.clone());
            Ok(Grid::fitting(sheet, &piece)?.whole(sheet, Form::Strip))
        }
    }
}

fn cut_shape(
    shape: &Shape,
    sheet: &Size,
    orientation: Orientation,
) -> Result<Layout, Refusal> {
    match shape {
        Shape::Triangles { base, height } => {
            triangles::nest(&Size::new(base.clone(), height.clone()), sheet, orientation)
        }
        Shape::Rectangles(piece) => rectangles(piece, sheet, orientation),
        Shape::Squares(side) => {
            let piece = Size::new(side.clone(), side.clone());
            Ok(Grid::fitting(sheet, &piece)?.whole(sheet, Form::Square))
        }
        Shape::Rounds(diameter) => rounds::pack(diameter, sheet),
    }
}

fn rectangles(
    piece: &Size,
    sheet: &Size,
    orientation: Orientation,
) -> Result<Layout, Refusal> {
    let written = Grid::fitting(sheet, piece);
    let grid = match (written, Grid::fitting(sheet, &turned(piece))) {
        (written, _) if orientation == Orientation::AsWritten => written?,
        (Ok(written), Ok(other)) if other.count() > written.count() => other,
        (Err(Refusal::TooLarge), Ok(other)) => other,
        (written, _) => written?,
    };
    let mut layout = grid.whole(sheet, Form::Rectangle);
    (layout.base, layout.height) = (piece.length.clone(), piece.width.clone());
    Ok(layout)
}

/// The pieces that the scrap gives when it is rolled out once more as thick as before: on
/// a sheet as wide as the first, or on a square one, whichever gives more. `None` where it
/// gives none, and for grids and strips, which leave none.
pub fn reroll(plan: &CutPlan, layout: &Layout) -> Option<Layout> {
    if !matches!(plan, CutPlan::Shape(_)) {
        return None;
    }
    let scrap = &layout.sheet.area() * &layout.scrap_share;
    let width = layout.sheet.width.clone();
    let length = Length::centimetres(scrap.amount() / width.amount());
    let side = super::root::side_down(&scrap);
    let sheets = [Size::new(length, width), Size::new(side.clone(), side)];
    let cuts = sheets.iter().filter_map(|sheet| cut(plan, sheet, Orientation::Best).ok());
    // The first of the best ones stands.
    cuts.reduce(
        |best, next| {
            if next.pieces.len() > best.pieces.len() { next } else { best }
        },
    )
}

/// The part of `sheet` that `pieces` of this area leave over.
fn scrap(sheet: &Size, pieces: usize, piece: &Area) -> Exact {
    let used = piece.over(&sheet.area()).unwrap_or_else(|| exact(0, 1));
    exact(1, 1) - used * Exact::from_integer(pieces.into())
}
