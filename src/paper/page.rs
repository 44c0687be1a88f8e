//! A look at finished pages: how far down each column is filled.

use typst::layout::{Abs, Frame, FrameItem, Point};
use typst_layout::PagedDocument;

/// Above this part of a page stands its upper margin, below the other one only its foot.
const TYPE_AREA: (f64, f64) = (0.05, 0.94);
/// A column filled less far than this shows a hole.
const LEAST: f64 = 0.85;
/// A last page filled less far than this is hardly worth its paper.
const LEAST_AT_LAST: f64 = 0.4;

/// More sides than this no sheet in columns should take.
const MOST: usize = 3;

/// How well a document uses its paper; less is better.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub(super) struct Waste {
    /// Sides of paper.
    sides: usize,
    /// Columns of a page; the same for all settings of a document.
    columns: usize,
    /// What columns before the last page leave white, of all they could hold, in columns.
    white: f64,
    /// How far down the last page is filled, 0 to 1.
    last: f64,
}

impl Waste {
    /// The waste of a document of `columns` columns a page.
    pub(super) fn of(document: &PagedDocument, columns: usize) -> Self {
        let pages = document.pages();
        let fills = pages.iter().map(|page| fill(&page.frame, columns));
        let mut fills: Vec<Vec<f64>> = fills.collect();
        let last = fills.pop().unwrap_or_default();
        let holes = fills.iter().flatten().map(|fill| (LEAST - fill).max(0.0));
        Self {
            sides: pages.len(),
            columns,
            white: holes.sum(),
            last: last.into_iter().fold(0.0, f64::max),
        }
    }

    /// Whether no other setting needs to be tried. A sheet in columns that takes more sides than
    /// one should may take fewer in another setting.
    pub(super) fn is_good(self) -> bool {
        let ends_well = self.sides == 1 || self.last >= LEAST_AT_LAST;
        ends_well && self.white == 0.0 && !self.is_long()
    }

    /// Whether it takes more sides than a sheet in columns should.
    pub(super) fn is_long(self) -> bool {
        self.columns > 1 && self.sides > MOST
    }
}

/// How far down each column of a page is filled, 0 to 1.
fn fill(page: &Frame, columns: usize) -> Vec<f64> {
    let (width, height) = (page.size().x, page.size().y);
    let (top, foot) = (height * TYPE_AREA.0, height * TYPE_AREA.1);
    let column = width / columns.max(1) as f64;
    let mut lowest = vec![top; columns.max(1)];
    let mut mark = |left: Abs, right: Abs, bottom: Abs| {
        if bottom >= foot {
            return;
        }
        for (at, lowest) in lowest.iter_mut().enumerate() {
            let (from, to) = (column * at as f64, column * (at + 1) as f64);
            if left < to && right > from {
                *lowest = bottom.max(*lowest);
            }
        }
    };
    ink(page, Point::zero(), &mut mark);
    lowest.into_iter().map(|bottom| (bottom - top) / (foot - top)).collect()
}

/// Shows `mark` the left, right and bottom of every text and picture.
fn ink(frame: &Frame, origin: Point, mark: &mut impl FnMut(Abs, Abs, Abs)) {
    for (at, item) in frame.items() {
        let at = origin + *at;
        match item {
            FrameItem::Group(group) => {
                let shift = Point::new(group.transform.tx, group.transform.ty);
                ink(&group.frame, at + shift, mark);
            }
            FrameItem::Text(text) => mark(at.x, at.x + text.width(), at.y),
            FrameItem::Image(_, size, _) => mark(at.x, at.x + size.x, at.y + size.y),
            FrameItem::Shape(..) | FrameItem::Link(..) | FrameItem::Tag(_) => {}
        }
    }
}
