//! Dimension lines, and rulers with running distances from one corner: what a hand with
//! a ruler needs.

use super::ink;
use super::lettering::{self, DROP, LABEL, RISE};
use super::plate::{Plate, Text};

/// Half the length of the stroke that ends a dimension line.
const STROKE: f64 = 6.0;
/// The space between a label and what it stands beside.
const GAP: f64 = 8.0;
/// The length of a ruler's tick.
const TICK: f64 = 9.0;

/// One mark on a ruler.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Tick {
    /// Where it stands along the edge, in the drawing's units.
    pub(in crate::draw) at: f64,
    /// The distance, without its unit.
    pub(in crate::draw) text: String,
}

/// On which side of an edge a ruler stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::draw) enum Side {
    Above,
    Below,
}

/// What a label takes that stands beneath its dimension line, because a line so long has no gap
/// for it; nothing where it stands in the line.
pub(in crate::draw) fn beneath_line(long: f64, label: &str) -> f64 {
    if has_gap(long, label) { 0.0 } else { LABEL * 1.2 }
}

fn has_gap(long: f64, label: &str) -> bool {
    long > lettering::width(label, LABEL, false) + 4.0 * GAP
}

impl Plate {
    /// A level dimension line at height `y`; its label stands in a gap of the line, or
    /// beneath it where the gap would leave no line.
    pub(in crate::draw) fn dimension_across(
        &mut self,
        [from, to]: [f64; 2],
        y: f64,
        label: &str,
    ) {
        let middle = f64::midpoint(from, to);
        let half = lettering::width(label, LABEL, false) / 2.0 + GAP;
        if has_gap(to - from, label) {
            self.line(&[[from, y], [middle - half, y]], ink::DIM);
            self.line(&[[middle + half, y], [to, y]], ink::DIM);
            self.text(Text::new(label, [middle, y + 0.36 * LABEL]).middle());
        } else {
            self.line(&[[from, y], [to, y]], ink::DIM);
            self.text(Text::new(label, [middle, y + GAP + LABEL * RISE]).middle());
        }
        for x in [from, to] {
            self.line(&[[x - STROKE, y + STROKE], [x + STROKE, y - STROKE]], ink::DIM);
        }
    }

    /// An upright dimension line at `x`, its label to the right of it.
    pub(in crate::draw) fn dimension_up(
        &mut self,
        x: f64,
        [from, to]: [f64; 2],
        label: &str,
    ) {
        self.line(&[[x, from], [x, to]], ink::DIM);
        for y in [from, to] {
            self.line(&[[x - STROKE, y + STROKE], [x + STROKE, y - STROKE]], ink::DIM);
        }
        let at = [x + STROKE + 4.0, f64::midpoint(from, to) + 0.36 * LABEL];
        self.text(Text::new(label, at));
    }

    /// A ruler along a level edge at height `y`; gives the depth that it takes.
    pub(in crate::draw) fn ruler(&mut self, ticks: &[Tick], y: f64, side: Side) -> f64 {
        let out = if side == Side::Above { -1.0 } else { 1.0 };
        for tick in ticks {
            self.line(&[[tick.at, y], [tick.at, y + out * TICK]], ink::DIM);
        }
        if ticks.is_empty() {
            0.0
        } else if fits_level(ticks) {
            self.level_labels(ticks, y + out * (TICK + 3.0), side)
        } else {
            self.upright_labels(ticks, y + out * (TICK + 5.0), side)
        }
    }

    fn level_labels(&mut self, ticks: &[Tick], y: f64, side: Side) -> f64 {
        let base = if side == Side::Above { y - LABEL * DROP } else { y + LABEL * RISE };
        for tick in ticks {
            self.text(Text::new(&tick.text, [tick.at, base]).middle());
        }
        TICK + 3.0 + LABEL * (RISE + DROP)
    }

    fn upright_labels(&mut self, ticks: &[Tick], y: f64, side: Side) -> f64 {
        let shown = thin_out(ticks, LABEL + 3.0);
        for tick in &shown {
            let at = [tick.at + 0.36 * LABEL, y];
            let text = Text::new(&tick.text, at).upright();
            self.text(if side == Side::Above { text } else { text.end() });
        }
        TICK + 5.0 + widest(&shown)
    }

    /// A ruler along an upright edge at `x`, its labels to the left of it.
    pub(in crate::draw) fn side_ruler(&mut self, ticks: &[Tick], x: f64) {
        for tick in ticks {
            self.line(&[[x - TICK, tick.at], [x, tick.at]], ink::DIM);
        }
        for tick in thin_out(ticks, LABEL + 3.0) {
            let at = [x - TICK - 4.0, tick.at + 0.36 * LABEL];
            self.text(Text::new(&tick.text, at).end());
        }
    }
}

impl Plate {
    /// A ruler along an upright edge at `x`, its labels to the right of it, or none where
    /// the other edge's labels stand for it.
    pub(in crate::draw) fn right_ruler(&mut self, ticks: &[Tick], x: f64, bare: bool) {
        for tick in ticks {
            self.line(&[[x, tick.at], [x + TICK, tick.at]], ink::DIM);
        }
        for tick in thin_out(ticks, LABEL + 3.0).iter().filter(|_| !bare) {
            let at = [x + TICK + 4.0, tick.at + 0.36 * LABEL];
            self.text(Text::new(&tick.text, at));
        }
    }
}

/// The width of the widest label of a ruler.
pub(in crate::draw) fn widest(ticks: &[Tick]) -> f64 {
    ticks.iter().map(label_width).fold(0.0, f64::max)
}

/// How deep a level ruler will be.
pub(in crate::draw) fn ruler_depth(ticks: &[Tick]) -> f64 {
    match ticks {
        [] => 0.0,
        _ if fits_level(ticks) => TICK + 3.0 + LABEL * (RISE + DROP),
        _ => TICK + 5.0 + widest(&thin_out(ticks, LABEL + 3.0)),
    }
}

/// Whether the labels have room side by side.
fn fits_level(ticks: &[Tick]) -> bool {
    ticks.windows(2).all(|pair| {
        let need = f64::midpoint(label_width(&pair[0]), label_width(&pair[1])) + GAP;
        (pair[1].at - pair[0].at).abs() >= need
    })
}

/// The ticks that are labelled where not all can be: at least `apart` from one another,
/// the first and the last among them.
fn thin_out(ticks: &[Tick], apart: f64) -> Vec<Tick> {
    let Some(last) = ticks.last() else { return Vec::new() };
    let mut kept: Vec<Tick> = Vec::new();
    for tick in ticks {
        if kept.last().is_none_or(|before| (tick.at - before.at).abs() >= apart) {
            kept.push(tick.clone());
        }
    }
    while kept
        .last()
        .is_some_and(|before| before.at != last.at && (last.at - before.at).abs() < apart)
    {
        kept.pop();
    }
    if kept.last().is_none_or(|before| before.at != last.at) {
        kept.push(last.clone());
    }
    kept
}

fn label_width(tick: &Tick) -> f64 {
    lettering::width(&tick.text, LABEL, false)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ticks(places: &[f64]) -> Vec<Tick> {
        places.iter().map(|at| Tick { at: *at, text: "12.5".into() }).collect()
    }

    #[test]
    fn crowded_labels_are_thinned_out_to_first_and_last() {
        let kept = thin_out(&ticks(&[0.0, 5.0, 10.0, 30.0, 31.0]), 23.0);
        let places: Vec<f64> = kept.iter().map(|tick| tick.at).collect();
        assert_eq!(places, [0.0, 31.0]);
    }

    #[test]
    fn ruler_labels_never_touch() {
        for step in [3.0, 12.0, 25.0, 40.0, 90.0] {
            let places: Vec<f64> = (0..12).map(|n| 20.0 + step * f64::from(n)).collect();
            let mut plate = Plate::new(2000.0);
            let _ = plate.ruler(&ticks(&places), 100.0, Side::Below);
            for (index, label) in plate.labels.iter().enumerate() {
                assert!(!plate.labels[..index].iter().any(|other| other.overlaps(label)));
            }
        }
    }
}
