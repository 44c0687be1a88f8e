//! Arrows: what a hand does, drawn as it moves.

use super::ink;
use super::plate::{Plate, Point, Text};
use super::trace::Trace;

/// The length of an arrow's head.
const HEAD: f64 = 15.0;
/// Half the width of an arrow's head.
const HALF: f64 = 7.5;

impl Plate {
    /// A straight arrow.
    pub(in crate::draw) fn arrow(&mut self, from: Point, to: Point) {
        let neck = self.head(from, to);
        self.line(&[from, neck], ink::ARROW);
    }

    /// A straight arrow with a head at both ends.
    pub(in crate::draw) fn double_arrow(&mut self, from: Point, to: Point) {
        let (start, end) = (self.head(to, from), self.head(from, to));
        self.line(&[start, end], ink::ARROW);
    }

    /// An arrow that is lifted off at `from`, comes down on `to`, and rises `height` above
    /// each of them on the way.
    pub(in crate::draw) fn hop(&mut self, from: Point, to: Point, height: f64) {
        let [leave, land] = [[from[0], from[1] - height], [to[0], to[1] - height]];
        let neck = self.head(land, to);
        self.trace(Trace::curve(from, [leave, land, neck]), ink::ARROW);
    }

    /// The sign of a quarter turn: an arc of so large a radius round `centre`, from above it
    /// to its right.
    pub(in crate::draw) fn quarter_turn(&mut self, centre: Point, radius: f64) {
        let [x, y] = centre;
        let neck = self.head([x + radius, y - HEAD], [x + radius, y + 4.0]);
        // A cubic curve follows a quarter of a circle with handles of 0.5523 radii.
        let handle = 0.5523 * radius;
        let way = [[x + handle, y - radius], [x + radius, y - handle], neck];
        self.trace(Trace::curve([x, y - radius], way), ink::ARROW);
        self.text(Text::new("¼", [x - 2.0, y + 2.0]).bold().ink(ink::LEAD));
    }

    /// The head of an arrow that comes from `from` and points at `to`; gives the place
    /// where its shaft ends.
    fn head(&mut self, from: Point, to: Point) -> Point {
        let (run, rise) = (to[0] - from[0], to[1] - from[1]);
        let length = run.hypot(rise).max(0.01);
        let along = [run / length, rise / length];
        let neck = [to[0] - along[0] * HEAD, to[1] - along[1] * HEAD];
        let side = [along[1] * HALF, -along[0] * HALF];
        let left = [neck[0] + side[0], neck[1] + side[1]];
        let right = [neck[0] - side[0], neck[1] - side[1]];
        self.polygon(&[to, left, right], ink::HEAD);
        [neck[0] + along[0], neck[1] + along[1]]
    }
}

/// The highest point of a hop, above the higher of its ends.
pub(in crate::draw) fn apex(height: f64) -> f64 {
    // A cubic curve with both handles at `height` rises to three quarters of it.
    0.75 * height
}
