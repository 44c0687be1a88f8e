//! The block from the side: its parts on one another, the folds that hold them together.

use crate::draw::system::ink::{self, Ink};
use crate::draw::system::plate::{Plate, Point};
use crate::draw::system::trace::Trace;

use super::section::{Layer, slabs_at};

/// How thick one part is drawn where few lie on one another.
const THICK: f64 = 17.0;
/// The tallest that a stack is drawn.
const TALLEST: f64 = 80.0;

/// What lies in a stack.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Layers {
    /// Parts lying on one another.
    pub(in crate::draw) parts: u32,
    /// Fat layers in each.
    pub(in crate::draw) before: u64,
}

/// How far the bends of a stack reach beyond its left end.
pub(in crate::draw) fn overhang(parts: u32) -> f64 {
    let parts = f64::from(parts.clamp(2, 12));
    THICK.min(TALLEST / parts) * parts / 2.0
}

/// Which parts, counted from the top, hang together at which end: 0 on the left, 1 on the
/// right. Outer bends come before those within them.
///
/// A book is closed round two folded halves. What is folded over and over winds itself up
/// flat: each bend lies within the one before it, left and right in turn.
fn bends(parts: u32) -> Vec<(u8, [u32; 2])> {
    if parts == 4 {
        return vec![(0, [0, 3]), (1, [0, 1]), (1, [2, 3])];
    }
    let last = parts - 1;
    (0..parts)
        .flat_map(|turn| {
            [
                (0, [turn, last.saturating_sub(turn)]),
                (1, [turn, last.saturating_sub(turn + 1)]),
            ]
        })
        .filter(|(_, [first, last])| first < last)
        .collect()
}

/// A closed fold at the end of a stack.
struct Bend {
    /// Where it bends round.
    centre: Point,
    /// Outer radius.
    radius: f64,
    /// 0 on the left, 1 on the right.
    side: u8,
}

/// Draws a stack of `length` with its upper left corner at `corner`; gives where it ends.
pub(in crate::draw) fn stack(
    plate: &mut Plate,
    layers: Layers,
    corner: Point,
    length: f64,
) -> f64 {
    let parts = layers.parts.clamp(2, 12);
    let thick = THICK.min(TALLEST / f64::from(parts));
    for (side, [first, last]) in bends(parts) {
        let radius = f64::from(last - first + 1) * thick / 2.0;
        let x = corner[0] + f64::from(side) * length;
        let centre = [x, corner[1] + f64::from(first) * thick + radius];
        Bend { centre, radius, side }.draw(plate, thick);
    }
    let parts_drawn = vec![Layer::Layered(layers.before); parts as usize];
    slabs_at(plate, corner, length, (&parts_drawn, thick));
    corner[1] + f64::from(parts) * thick
}

impl Bend {
    /// Draws it, with the hollow inside it where more than one part lies within.
    fn draw(&self, plate: &mut Plate, thick: f64) {
        self.half_disc(plate, self.radius, ink::DOUGH);
        if self.radius > thick {
            self.half_disc(plate, self.radius - thick, ink::HOLLOW);
        }
    }

    fn half_disc(&self, plate: &mut Plate, radius: f64, ink: Ink) {
        let [x, y] = self.centre;
        let ends = [[x, y - radius], [x, y + radius]];
        plate.trace(Trace::half_disc(ends[0], radius, self.side == 1, ends[1]), ink);
    }
}
