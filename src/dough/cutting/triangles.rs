//! Isosceles triangles, nested head to tail in strips.
//!
//! N triangles of base b side by side, every other one upside down, take (N + 1) · b / 2
//! of a strip, so a strip of length L gives ⌊2L/b⌋ − 1.

use crate::measure::{Exact, Length, Size, exact};

use super::blocks::{line, marks};
use super::count::{along, pieces, times};
use super::{Layout, Orientation, Point, Polygon, Refusal, scrap};
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
            shape: "triangle",
            lines: self.lines(),
            near: self.edge_marks(0),
            far: self.edge_marks(1),
            side: self.strip_marks(),
            scrap_share: scrap(&self.sheet, pieces.len(), &piece_area),
            pieces,
            halves: self.halves().collect(),
            piece_area,
            base: self.piece.length.clone(),
            height: self.piece.width.clone(),
            sheet: self.sheet,
        })
    }

    /// Every triangle: the even ones stand on the strip's near edge, the odd ones on its
    /// far edge.
    fn pieces(&self) -> impl Iterator<Item = Polygon> + '_ {
        (0..self.strips).flat_map(move |strip| {
            (0..self.each).map(move |step| {
                let [left, middle, right] =
                    [0, 1, 2].map(|next| self.corner(strip, step + next));
                let upright = step % 2 == 0;
                let second = if upright { [right, middle] } else { [middle, right] };
                Polygon::new([vec![left], second.into()].concat())
            })
        })
    }

    /// The right triangles that are left at the two ends of every strip.
    fn halves(&self) -> impl Iterator<Item = Polygon> + '_ {
        (0..self.strips).flat_map(move |strip| {
            let [near, apex] = [0, 1].map(|step| self.corner(strip, step));
            let corner = Point { x: near.x.clone(), y: apex.y.clone() };
            let [last, end] = [0, 1].map(|next| self.corner(strip, self.each + next));
            let far = Point { x: end.x.clone(), y: last.y.clone() };
            let right = if self.each.is_multiple_of(2) { [far, end] } else { [end, far] };
            [
                Polygon::new(vec![near, apex, corner]),
                Polygon::new([vec![last], right.into()].concat()),
            ]
        })
    }

    /// The zigzag's corner after so many half bases: near, far, near, far.
    fn corner(&self, strip: u64, step: u64) -> Point {
        let y = along(&self.piece.width, strip + step % 2);
        Point::new(along(&half(&self.piece.length), step), y)
    }

    /// The strips apart first, then the zigzag through each from left to right.
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
        let zigzags = (0..self.strips).flat_map(|strip| {
            (0..=self.each)
                .map(move |step| [self.corner(strip, step), self.corner(strip, step + 1)])
        });
        apart.chain(zigzags).collect()
    }

    fn strip_marks(&self) -> Vec<Length> {
        marks(&self.piece.width, self.strips, &self.sheet.width)
    }

    /// Where the zigzag meets a strip's near (`first` 0) or far (1) edge, without the
    /// sheet's corners.
    fn edge_marks(&self, first: u64) -> Vec<Length> {
        (0..=self.each + 1)
            .filter(|step| step % 2 == first)
            .map(|step| Length::centimetres(along(&half(&self.piece.length), step)))
            .filter(|mark| mark.is_positive() && *mark < self.sheet.length)
            .collect()
    }
}

fn half(side: &Length) -> Length {
    let half: Exact = exact(1, 2);
    side * &half
}
