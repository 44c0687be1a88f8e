//! Pieces with four right corners, in rows and columns, and their halves.

use crate::measure::{Area, Exact, Length, Size, exact};

use super::count::{along, pieces, times};
use super::{Form, Layout, Point, Polygon, Refusal, scrap};

/// Rows and columns of one piece.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Grid {
    /// The piece: its side along the sheet's long side first.
    piece: Size,
    columns: u64,
    rows: u64,
}

impl Grid {
    /// As many pieces as fit on the sheet lying this way.
    pub(super) fn fitting(sheet: &Size, piece: &Size) -> Result<Self, Refusal> {
        if !piece.length.is_positive() || !piece.width.is_positive() {
            return Err(Refusal::NoSize);
        }
        let columns = times(&sheet.length, &piece.length);
        let rows = times(&sheet.width, &piece.width);
        Self { piece: piece.clone(), columns, rows }.checked(1)
    }

    /// The whole sheet divided into rows along the long side and columns across it.
    pub(super) fn dividing(
        sheet: &Size,
        rows: u32,
        columns: u32,
    ) -> Result<Self, Refusal> {
        if rows == 0 || columns == 0 {
            return Err(Refusal::NoSize);
        }
        let part = |side: &Length, parts: u32| side * &exact(1, i64::from(parts));
        let piece = Size::new(part(&sheet.length, columns), part(&sheet.width, rows));
        Self { piece, columns: columns.into(), rows: rows.into() }.checked(1)
    }

    /// Pieces in it.
    pub(super) fn count(&self) -> u64 {
        self.columns * self.rows
    }

    fn checked(self, halves: u64) -> Result<Self, Refusal> {
        pieces(self.columns.saturating_mul(self.rows).saturating_mul(halves))?;
        Ok(self)
    }

    /// Every piece whole.
    pub(super) fn whole(&self, sheet: &Size, form: Form) -> Layout {
        let pieces = self.corners().map(|[near, far]| block(&near, &far)).collect();
        Layout { form, ..self.layout(sheet, pieces, self.piece.area()) }
    }

    /// Every piece cut from its near left to its far right corner.
    pub(super) fn halved(self, sheet: &Size) -> Result<Layout, Refusal> {
        let grid = self.checked(2)?;
        let pieces = grid.corners().flat_map(|[near, far]| halves(&near, &far)).collect();
        let mut layout = grid.layout(sheet, pieces, &grid.piece.area() * &exact(1, 2));
        layout.lines.extend(grid.corners());
        let (length, width) = (layout.base, layout.height);
        (layout.base, layout.height) =
            if length < width { (length, width) } else { (width, length) };
        Ok(Layout { form: Form::RightTriangle, ..layout })
    }

    fn layout(&self, sheet: &Size, pieces: Vec<Polygon>, piece_area: Area) -> Layout {
        let (left, near) = (self.row_marks(sheet), self.column_marks(sheet));
        Layout {
            form: Form::Rectangle,
            lines: self.lines(sheet),
            scrap_share: scrap(sheet, pieces.len(), &piece_area),
            far: near.clone(),
            sheet: sheet.clone(),
            base: self.piece.length.clone(),
            height: self.piece.width.clone(),
            pieces,
            halves: Vec::new(),
            near,
            right: left.clone(),
            left,
            piece_area,
        }
    }

    /// Near left and far right corner of every piece, row by row.
    fn corners(&self) -> impl Iterator<Item = [Point; 2]> + '_ {
        let at = |column, row| {
            Point::new(along(&self.piece.length, column), along(&self.piece.width, row))
        };
        (0..self.rows).flat_map(move |row| {
            (0..self.columns)
                .map(move |column| [at(column, row), at(column + 1, row + 1)])
        })
    }

    fn row_marks(&self, sheet: &Size) -> Vec<Length> {
        marks(&self.piece.width, self.rows, &sheet.width)
    }

    fn column_marks(&self, sheet: &Size) -> Vec<Length> {
        marks(&self.piece.length, self.columns, &sheet.length)
    }

    /// Cuts along the whole sheet, then across all rows: the scrap beyond the last row is
    /// off by then.
    fn lines(&self, sheet: &Size) -> Vec<[Point; 2]> {
        let nought = || exact(0, 1);
        let end = along(&self.piece.width, self.rows);
        let rows = self.row_marks(sheet).into_iter().map(|mark| {
            let y = mark.amount();
            line(nought(), y.clone(), sheet.length.amount().clone(), y.clone())
        });
        let columns = self.column_marks(sheet).into_iter().map(|mark| {
            let x = mark.amount();
            line(x.clone(), nought(), x.clone(), end.clone())
        });
        rows.chain(columns).collect()
    }
}

/// Running marks for `count` pieces along an edge, without its end.
pub(super) fn marks(piece: &Length, count: u64, edge: &Length) -> Vec<Length> {
    (1..=count)
        .map(|times| Length::centimetres(along(piece, times)))
        .filter(|mark| mark < edge)
        .collect()
}

/// A line from one point to another.
pub(super) fn line(x: Exact, y: Exact, to_x: Exact, to_y: Exact) -> [Point; 2] {
    [Point::new(x, y), Point::new(to_x, to_y)]
}

fn block(near: &Point, far: &Point) -> Polygon {
    let (right, left) = others(near, far);
    Polygon::new(vec![near.clone(), right, far.clone(), left])
}

fn halves(near: &Point, far: &Point) -> [Polygon; 2] {
    let (right, left) = others(near, far);
    let lower = vec![near.clone(), right, far.clone()];
    [Polygon::new(lower), Polygon::new(vec![near.clone(), far.clone(), left])]
}

/// The near right and the far left corner.
fn others(near: &Point, far: &Point) -> (Point, Point) {
    let right = Point { x: far.x.clone(), y: near.y.clone() };
    (right, Point { x: near.x.clone(), y: far.y.clone() })
}
