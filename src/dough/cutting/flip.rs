//! A layout found for the sheet lying the other way, put back on the sheet.

use super::Layout;
use crate::dough::turned;

impl Layout {
    /// The same layout with x and y exchanged. What was marked along the long sides is
    /// now marked along the short ones: there, marks of both sides stand in one row.
    pub(super) fn flipped(self) -> Self {
        let mut side = [self.near, self.far].concat();
        side.sort();
        side.dedup();
        let flip_line = |[from, to]: [super::Point; 2]| [from.flipped(), to.flipped()];
        Self {
            sheet: turned(&self.sheet),
            pieces: self.pieces.into_iter().map(super::Polygon::flipped).collect(),
            halves: self.halves.into_iter().map(super::Polygon::flipped).collect(),
            lines: self.lines.into_iter().map(flip_line).collect(),
            near: self.side.clone(),
            far: self.side,
            side,
            ..self
        }
    }
}
