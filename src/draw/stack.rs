//! The block from the side: its parts on one another, the folds that hold them together.

use super::ink::{self, Ink};
use super::plate::{Plate, Point};
use super::section::{Layer, slabs_at};
use super::trace::Trace;

/// How thick one part is drawn where few lie on one another.
const THICK: f64 = 17.0;
/// The tallest that a stack is drawn.
const TALLEST: f64 = 80.0;

/// What lies in a stack.
#[derive(Clone, Copy, Debug)]
pub(super) struct Layers {
    /// Parts lying on one another.
    pub(super) parts: u32,
    /// Fat layers in each.
    pub(super) before: u64,
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
pub(super) fn stack(
    plate: &mut Plate,
    layers: Layers,
    corner: Point,
    length: f64,
) -> f64 {
    let parts = layers.parts.clamp(2, 12);
    let thick = THICK.min(TALLEST / f64::from(parts));
    let right = corner[0] + length;
    let at = |x: f64, parts: f64| [x, corner[1] + parts * thick];
    let bend = |centre, parts: f64, side| Bend { centre, radius: parts * thick, side };
    // Counted from the top: which parts hang together at which end.
    let bends = match parts {
        2 => vec![bend(at(corner[0], 1.0), 1.0, 0)],
        3 => vec![bend(at(corner[0], 1.5), 1.5, 0), bend(at(right, 2.0), 1.0, 1)],
        4 => vec![
            bend(at(corner[0], 2.0), 2.0, 0),
            bend(at(right, 1.0), 1.0, 1),
            bend(at(right, 3.0), 1.0, 1),
        ],
        _ => Vec::new(),
    };
    for bend in bends {
        bend.draw(plate, thick);
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
