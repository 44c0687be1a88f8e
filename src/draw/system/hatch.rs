//! Hatching, which means fat and nothing else, and dots: as real lines, clipped to the outline that they fill. A pattern would need an
//! identifier, and identifiers clash where many drawings stand in one page.

use super::ink::{self, Ink};
use super::plate::{Plate, Point};
use super::trace::Trace;

/// The most lines in one hatching: a larger outline is hatched wider.
const MOST_LINES: f64 = 400.0;

/// The way that the lines of a hatching run.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Slant {
    sin: f64,
    cos: f64,
}

impl Slant {
    /// Lines rising to the right by so many degrees.
    pub(in crate::draw) fn degrees(degrees: f64) -> Self {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Self { sin, cos }
    }

    /// How far along and across the lines a point lies.
    fn measure(self, [x, y]: Point) -> [f64; 2] {
        [x * self.cos - y * self.sin, x * self.sin + y * self.cos]
    }

    /// The point that lies so far along and across.
    fn point(self, along: f64, across: f64) -> Point {
        [along * self.cos + across * self.sin, across * self.cos - along * self.sin]
    }
}

impl Plate {
    /// Fills `outline` with parallel lines, `gap` apart.
    pub(in crate::draw) fn hatch(
        &mut self,
        outline: &[Point],
        slant: Slant,
        gap: f64,
        ink: Ink,
    ) {
        let mut all = Trace::default();
        lines(&mut all, outline, slant, gap);
        if !all.is_empty() {
            self.trace(all, ink);
        }
    }

    /// Fills `outline` with dots.
    pub(in crate::draw) fn dots(&mut self, outline: &[Point]) {
        self.hatch(outline, Slant::degrees(0.0), 9.0, ink::DOTS);
    }
}

/// Adds the hatching of one outline.
fn lines(trace: &mut Trace, outline: &[Point], slant: Slant, gap: f64) {
    let turned: Vec<[f64; 2]> =
        outline.iter().map(|point| slant.measure(*point)).collect();
    let least = turned.iter().map(|at| at[1]).fold(f64::INFINITY, f64::min);
    let most = turned.iter().map(|at| at[1]).fold(f64::NEG_INFINITY, f64::max);
    let gap = gap.max((most - least) / MOST_LINES).max(0.5);
    // Counted from the plate's corner, so that the hatchings of neighbours run on.
    let mut across = ((least / gap).floor() + 0.5) * gap;
    while across < most {
        for pair in crossings(&turned, across).chunks_exact(2) {
            trace.run(&[slant.point(pair[0], across), slant.point(pair[1], across)]);
        }
        across += gap;
    }
}

/// Where the line `across` enters and leaves the outline, in order.
fn crossings(turned: &[[f64; 2]], across: f64) -> Vec<f64> {
    let next = turned.iter().cycle().skip(1);
    let mut found: Vec<f64> = turned
        .iter()
        .zip(next)
        .filter(|(from, to)| (from[1] <= across) != (to[1] <= across))
        .map(|(from, to)| {
            from[0] + (across - from[1]) / (to[1] - from[1]) * (to[0] - from[0])
        })
        .collect();
    found.sort_by(f64::total_cmp);
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn path(outline: &[Point], slant: f64, gap: f64) -> String {
        let mut trace = Trace::default();
        lines(&mut trace, outline, Slant::degrees(slant), gap);
        crate::draw::system::trace::path(&[&trace])
    }

    #[test]
    fn lines_stay_inside_the_outline() {
        let square = [[0.0, 0.0], [10.0, 0.0], [10.0, 10.0], [0.0, 10.0]];
        assert_eq!(path(&square, 0.0, 4.0), "M0 2h10m-10 4h10");
    }

    #[test]
    fn nothing_and_too_much_end() {
        assert_eq!(path(&[], 45.0, 4.0), "");
        let huge = [[0.0, 0.0], [1e6, 0.0], [1e6, 1e6], [0.0, 1e6]];
        assert!(path(&huge, 45.0, 1.0).matches('m').count() <= 401);
    }
}
