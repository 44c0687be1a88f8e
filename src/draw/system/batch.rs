//! Shapes of one ink, gathered into one outline: a page then carries the look of its lines
//! once, not once a line. What lies over another shape stays over it.

use super::ink::Ink;
use super::plate::{LabelBox, Shape};
use super::trace::Trace;

/// Shapes of one ink that are written as one.
pub(in crate::draw) struct JoinedPath<'a> {
    /// Their ink.
    pub(in crate::draw) ink: Ink,
    /// Their outlines.
    pub(in crate::draw) traces: Vec<&'a Trace>,
    frames: Vec<LabelBox>,
    /// The frame round all of them.
    all: LabelBox,
}

impl JoinedPath<'_> {
    fn touches(&self, frame: &LabelBox) -> bool {
        self.all.overlaps(frame) && self.frames.iter().any(|own| own.overlaps(frame))
    }
}

/// Gathers shapes in painting order; texts are left out.
pub(in crate::draw) fn batches(shapes: &[Shape]) -> Vec<JoinedPath<'_>> {
    let mut all: Vec<JoinedPath> = Vec::new();
    for shape in shapes {
        let Shape::Trace(trace, ink) = shape else { continue };
        let frame = trace.frame();
        let at = home(&all, *ink, &frame).unwrap_or(all.len());
        if at == all.len() {
            let (traces, frames) = (Vec::new(), Vec::new());
            all.push(JoinedPath { ink: *ink, traces, frames, all: LabelBox::NOTHING });
        }
        let batch = &mut all[at];
        batch.traces.push(trace);
        batch.frames.push(frame);
        batch.all = batch.all.joined(&frame);
    }
    all
}

/// The batch that a shape may join: the last of its ink with nothing later beneath it.
fn home(all: &[JoinedPath], ink: Ink, frame: &LabelBox) -> Option<usize> {
    for (at, batch) in all.iter().enumerate().rev() {
        let own = batch.ink == ink;
        // Lines may cross within one outline; surfaces may not.
        if own && ink.is_line() {
            return Some(at);
        }
        let touches = batch.touches(frame);
        if own && !touches {
            return Some(at);
        }
        if touches {
            return None;
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draw::system::ink;
    use crate::draw::system::plate::Plate;

    #[test]
    fn shapes_join_unless_something_lies_between() {
        let mut plate = Plate::new(100.0);
        plate.rectangle([0.0, 0.0], [10.0, 10.0], ink::DOUGH);
        plate.line(&[[0.0, 5.0], [10.0, 5.0]], ink::DIM);
        plate.rectangle([20.0, 0.0], [30.0, 10.0], ink::DOUGH);
        plate.line(&[[20.0, 5.0], [30.0, 5.0]], ink::DIM);
        assert_eq!(batches(&plate.shapes).len(), 2);
        // This one lies over the first line, so it cannot go beneath it.
        plate.rectangle([5.0, 0.0], [15.0, 10.0], ink::DOUGH);
        assert_eq!(batches(&plate.shapes).len(), 3);
    }
}
