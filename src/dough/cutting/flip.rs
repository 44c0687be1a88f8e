//! A layout found for the sheet lying the other way, put back on the sheet.

use super::Layout;
use crate::dough::turned;

impl Layout {
    /// The same layout with x and y exchanged: what was marked along the long sides is now
    /// marked along the short ones.
    pub(super) fn flipped(self) -> Self {
        let flip_line = |[from, to]: [super::Point; 2]| [from.flipped(), to.flipped()];
        let lines: Vec<_> = self.lines.into_iter().map(flip_line).collect();
        Self {
            sheet: turned(&self.sheet),
            pieces: self.pieces.into_iter().map(super::Polygon::flipped).collect(),
            halves: self.halves.into_iter().map(super::Polygon::flipped).collect(),
            lines,
            near: self.left,
            far: self.right,
            left: self.near,
            right: self.far,
            ..self
        }
    }
}
