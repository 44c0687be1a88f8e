//! Isosceles triangles, nested head to tail in rows.
//!
//! N triangles of base b side by side, every other one upside down, take (N + 1) · b / 2
//! of a row, so a row of length L gives ⌊2L/b⌋ − 1. Every other row is set off by half a
//! base: then each slanting cut runs on straight through all rows, and its marks stand on
//! the sheet's own edges.

use crate::measure::{Exact, Length, Size, exact};

use super::blocks::{line, marks};
use super::count::{along, pieces, times};
use super::{Form, Layout, Orientation, Point, Polygon, Refusal, scrap};
use crate::dough::turned;

/// Strips of nested triangles on a sheet lying one way.
struct Nest<'a> {
    /// Base, then height.
    piece: &'a Size,
    sheet: Size,
    strips: u64,
    each: u64,
}

/// Triangles of this base and height from the sheet; strips run along its long side
/// unless more come from strips across.
pub(super) fn nest(
    piece: &Size,
    sheet: &Size,
    orientation: Orientation,
) -> Result<Layout, Refusal> {
    if !piece.length.is_positive() || !piece.width.is_positive() {
        return Err(Refusal::NoSize);
    }
    let along = Nest::new(piece, sheet.clone());
    let across = Nest::new(piece, turned(sheet));
    if orientation == Orientation::Best && across.count() > along.count() {
        return across.layout().map(Layout::flipped);
    }
    along.layout()
}

impl<'a> Nest<'a> {
    fn new(piece: &'a Size, sheet: Size) -> Self {
        let strips = times(&sheet.width, &piece.width);
        let each = times(&sheet.length, &half(&piece.length)).saturating_sub(1);
        Self { piece, sheet, strips, each }
    }

    fn count(&self) -> u64 {
        self.strips.saturating_mul(self.each)
    }

    fn layout(self) -> Result<Layout, Refusal> {
        pieces(self.count())?;
        let piece_area = &self.piece.area() * &exact(1, 2);
        let pieces: Vec<_> = self.pieces().collect();
        Ok(Layout {
            form: Form::Triangle,
            lines: self.lines(),
            near: self.edge_marks(0),
            far: self.edge_marks(self.strips),
            left: self.strip_marks(),
            right: self.strip_marks(),
            scrap_share: scrap(&self.sheet, pieces.len(), &piece_area),
            pieces,
            halves: self.halves().collect(),
            piece_area,
            base: self.piece.length.clone(),
            height: self.piece.width.clone(),
            sheet: self.sheet,
        })
    }

    /// Every triangle, row by row, from left to right.
    fn pieces(&self) -> impl Iterator<Item = Polygon> + '_ {
        (0..self.strips).flat_map(move |strip| {
            (0..self.each).map(move |step| {
                let [left, middle, right] =
                    [0, 1, 2].map(|next| self.corner(strip, step + next));
                anticlockwise([left, middle, right], self.upright(strip, step))
            })
        })
    }

    /// The right triangles that are left at the two ends of every row.
    fn halves(&self) -> impl Iterator<Item = Polygon> + '_ {
        (0..self.strips).flat_map(move |strip| {
            let [first, second] = [0, 1].map(|step| self.corner(strip, step));
            let corner = Point { x: first.x.clone(), y: second.y.clone() };
            let [last, end] = [0, 1].map(|next| self.corner(strip, self.each + next));
            let beside = Point { x: end.x.clone(), y: last.y.clone() };
            [
                anticlockwise([first, second, corner], !self.upright(strip, 0)),
                anticlockwise([last, end, beside], self.upright(strip, self.each)),
            ]
        })
    }

    /// Whether the triangle after so many half bases stands on its row's near edge.
    fn upright(&self, strip: u64, step: u64) -> bool {
        (strip + step).is_multiple_of(2)
    }

    /// The zigzag's corner after so many half bases.
    fn corner(&self, strip: u64, step: u64) -> Point {
        self.node(step, strip + (strip + step) % 2)
    }

    /// Where the cut after so many half bases meets the edge after so many rows.
    fn node(&self, step: u64, row: u64) -> Point {
        let x = along(&half(&self.piece.length), step);
        Point::new(x, along(&self.piece.width, row))
    }

    /// The rows apart first, then the end off, then all cuts that lean one way from left to
    /// right, then those that lean the other way.
    fn lines(&self) -> Vec<[Point; 2]> {
        let length = self.sheet.length.amount();
        let apart = self.strip_marks().into_iter().map(|mark| {
            line(
                exact(0, 1),
                mark.amount().clone(),
                length.clone(),
                mark.amount().clone(),
            )
        });
        let end =
            self.end().map(|_| [0, self.strips].map(|row| self.node(self.steps(), row)));
        apart.chain(end).chain(self.rising()).chain(self.falling()).collect()
    }

    /// Half bases in a row.
    fn steps(&self) -> u64 {
        self.each + 1
    }

    /// Where the last triangle ends, where that is before the sheet's end.
    fn end(&self) -> Option<Length> {
        let end = Length::centimetres(along(&half(&self.piece.length), self.steps()));
        (end < self.sheet.length).then_some(end)
    }

    /// Cuts from the near left to the far right: step − row is the same all along, and even.
    fn rising(&self) -> impl Iterator<Item = [Point; 2]> + '_ {
        let (steps, rows) = (self.steps(), self.strips);
        let from_side = (1..rows).filter(|row| row.is_multiple_of(2)).rev();
        let starts = from_side.map(|row| (0, row));
        let starts =
            starts.chain((0..steps).filter(|s| s.is_multiple_of(2)).map(|s| (s, 0)));
        starts.map(move |(step, row)| {
            let run = (steps - step).min(rows - row);
            [self.node(step, row), self.node(step + run, row + run)]
        })
    }

    /// Cuts from the far left to the near right: step + row is the same all along, and even.
    fn falling(&self) -> impl Iterator<Item = [Point; 2]> + '_ {
        let (steps, rows) = (self.steps(), self.strips);
        let sums = (2..steps + rows).filter(|sum| sum.is_multiple_of(2));
        sums.map(move |sum| {
            let (row, end) = (sum.min(rows), sum.min(steps));
            [self.node(sum - row, row), self.node(end, sum - end)]
        })
    }

    fn strip_marks(&self) -> Vec<Length> {
        marks(&self.piece.width, self.strips, &self.sheet.width)
    }

    /// Marks along the edge after so many rows, without the sheet's corners.
    fn edge_marks(&self, row: u64) -> Vec<Length> {
        let steps = (0..=self.steps()).filter(|step| (step + row).is_multiple_of(2));
        let cuts = steps.map(|step| along(&half(&self.piece.length), step));
        let mut marks: Vec<Length> = cuts
            .map(Length::centimetres)
            .chain(self.end())
            .filter(|mark| mark.is_positive() && *mark < self.sheet.length)
            .collect();
        marks.dedup();
        marks
    }
}

/// A triangle from its corners, of which the middle one lies above the others or below.
fn anticlockwise([left, middle, right]: [Point; 3], above: bool) -> Polygon {
    let second = if above { [right, middle] } else { [middle, right] };
    Polygon::new([vec![left], second.into()].concat())
}

fn half(side: &Length) -> Length {
    let half: Exact = exact(1, 2);
    side * &half
}
