//! A cutting plan: the sheet with every cut in its order, the marks to make along each
//! edge, the pieces, and the scrap.

use crate::sheet::{Cut, Mark};

use crate::draw::system::dimension::{Side, Tick, ruler_depth, widest};
use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, RING, Text, ring_frame};
use crate::draw::system::voice::Voice;

/// The tallest that a sheet is drawn.
const TALLEST: f64 = 420.0;
/// Scrap below this share of the sheet, in percent, is not drawn: it is rounding.
const NO_SCRAP: f64 = 0.05;

/// The sheet of a cutting plan on the plate. The far edge is above, as it lies on the
/// bench.
#[derive(Clone, Copy, Debug)]
struct Bench {
    /// The near left corner.
    corner: Point,
    /// Units of the drawing in a centimetre.
    scale: f64,
}

impl Bench {
    fn at(&self, [x, y]: [f64; 2]) -> Point {
        [self.corner[0] + x * self.scale, self.corner[1] - y * self.scale]
    }
}

/// The drawing of one cutting plan.
pub(in crate::draw) fn cut(cut: &Cut, form: Format, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(form.width());
    let bench = lay_out(cut, form, voice);
    let [right, top] = bench.at([cut.sheet_length_cm, cut.sheet_width_cm]);
    let [left, bottom] = bench.corner;
    pieces(&mut plate, cut, &bench);
    let depth = rulers(&mut plate, cut, &bench, voice);
    let middle = f64::midpoint(left, right);
    let far = Text::new(voice.word("far-edge"), [middle, 4.0 + LABEL * RISE]).middle();
    plate.text(far);
    let across = bottom + depth.max(LABEL) + 24.0;
    let near = voice.fill("near-edge", &[("length", &voice.length(cut.sheet_length_cm))]);
    plate.dimension_across([left, right], across, &near);
    plate.dimension_up(
        right + 16.0 + right_depth(cut, voice),
        [top, bottom],
        &voice.length(cut.sheet_width_cm),
    );
    number_cuts(&mut plate, cut, &bench);
    plate.height = caption(&mut plate, cut, across + 34.0, voice) + 4.0;
    plate
}

/// The marks along every edge that has any; gives the depth of the nearest ruler.
fn rulers(plate: &mut Plate, cut: &Cut, bench: &Bench, voice: Voice<'_>) -> f64 {
    let [right, top] = bench.at([cut.sheet_length_cm, cut.sheet_width_cm]);
    let [left, bottom] = bench.corner;
    let far = ticks(&cut.marks_far, voice, |x| bench.at([x, 0.0])[0]);
    let mut near = ticks(&cut.marks_near, voice, |x| bench.at([x, 0.0])[0]);
    if near.first().is_some_and(|tick| tick.at > left) {
        near.insert(0, Tick { at: left, text: "0".to_owned() });
    }
    let side = |marks: &[Mark]| ticks(marks, voice, |y| bench.at([0.0, y])[1]);
    let _ = plate.ruler(&far, top, Side::Above);
    let depth = plate.ruler(&near, bottom, Side::Below);
    plate.side_ruler(&side(&cut.marks_left), left);
    plate.right_ruler(&side(&cut.marks_right), right, marked_alike(cut));
    let marks = [&cut.marks_far, &cut.marks_near, &cut.marks_left, &cut.marks_right];
    if marks.into_iter().any(|marks| !marks.is_empty()) {
        let at = [left - 14.0, bottom + 14.0 + LABEL * RISE];
        plate.text(Text::new(voice.unit_alone(), at).end());
    }
    depth
}

/// Whether both short sides have the same marks: then the left ones are labelled for both.
fn marked_alike(cut: &Cut) -> bool {
    crate::draw::speech::alike(&cut.marks_left, &cut.marks_right)
}

/// The room that the ruler on the right takes.
fn right_depth(cut: &Cut, voice: Voice<'_>) -> f64 {
    match (cut.marks_right.is_empty(), marked_alike(cut)) {
        (true, _) => 0.0,
        (false, true) => 12.0,
        (false, false) => 16.0 + widest(&ticks(&cut.marks_right, voice, |y| y)),
    }
}

/// Finds the sheet's place and scale from the room that its labels take.
fn lay_out(cut: &Cut, form: Format, voice: Voice<'_>) -> Bench {
    let side = ticks(&cut.marks_left, voice, |y| y);
    let left = (MARGIN + 10.0 + widest(&side)).max(46.0);
    let width = lettering::width(&voice.length(cut.sheet_width_cm), LABEL, false);
    let room = form.width() - left - width - 34.0 - right_depth(cut, voice);
    let scale = (room / cut.sheet_length_cm.max(0.1))
        .min(TALLEST * form.height() / cut.sheet_width_cm.max(0.1));
    let far = ruler_depth(&ticks(&cut.marks_far, voice, |x| left + x * scale));
    let top = 14.0 + LABEL * 1.2 + far;
    Bench { corner: [left, top + cut.sheet_width_cm * scale], scale }
}

fn ticks(marks: &[Mark], voice: Voice<'_>, place: impl Fn(f64) -> f64) -> Vec<Tick> {
    let tick =
        |mark: &Mark| Tick { at: place(mark.at_cm), text: voice.bare_length(mark.at_cm) };
    marks.iter().map(tick).collect()
}

/// The sheet as scrap, and the pieces on it: every other one darker.
fn pieces(plate: &mut Plate, cut: &Cut, bench: &Bench) {
    let far = bench.at([cut.sheet_length_cm, cut.sheet_width_cm]);
    let sheet = crate::draw::system::plate::corners(
        [bench.corner[0], far[1]],
        [far[0], bench.corner[1]],
    );
    plate.polygon(&sheet, ink::SCRAP);
    if cut.scrap_percent > NO_SCRAP {
        plate.dots(&sheet);
    }
    let outline = |polygon: &Vec<[f64; 2]>| -> Vec<Point> {
        polygon.iter().map(|corner| bench.at(*corner)).collect()
    };
    let outlines: Vec<Vec<Point>> = cut.polygons_cm.iter().map(outline).collect();
    for (first, tone) in [(0, ink::PIECE), (1, ink::OTHER)] {
        let every: Vec<&Vec<Point>> = outlines.iter().skip(first).step_by(2).collect();
        plate.polygons(&every, tone);
    }
    for line in &cut.lines_cm {
        plate.line(&line.map(|point| bench.at(point)), ink::CUT);
    }
}

/// A ring holds three figures.
const MOST_NUMBERS: usize = 999;

/// Sets a number on every cut, where there is room for it.
fn number_cuts(plate: &mut Plate, cut: &Cut, bench: &Bench) {
    let lines: Vec<[Point; 2]> =
        cut.lines_cm.iter().map(|line| line.map(|point| bench.at(point))).collect();
    for (index, line) in lines.iter().enumerate().take(MOST_NUMBERS) {
        if let Some(place) = clearest(plate, &lines, (index, line)) {
            plate.ring(place, index + 1);
        }
    }
}

/// The place on a cut that is clear of all labels and farthest from the other cuts.
fn clearest(
    plate: &Plate,
    lines: &[[Point; 2]],
    cut: (usize, &[Point; 2]),
) -> Option<Point> {
    const SHARES: [f64; 9] = [0.5, 0.42, 0.58, 0.33, 0.67, 0.25, 0.75, 0.15, 0.85];
    let (index, [from, to]) = cut;
    let clearance = |place: Point| {
        let others = lines.iter().enumerate().filter(|(other, _)| *other != index);
        // Beyond a ring's width more room is no better: then the middle is.
        others.map(|(_, line)| distance(place, line)).fold(RING + 4.0, f64::min)
    };
    let mut best: Option<(f64, Point)> = None;
    for share in SHARES {
        let place = [0, 1].map(|axis| from[axis] + share * (to[axis] - from[axis]));
        let room = clearance(place);
        let better = best.is_none_or(|(most, _)| room > most + 0.5);
        if better && plate.is_free(&ring_frame(place, index + 1).grown(1.0)) {
            best = Some((room, place));
        }
    }
    best.map(|(_, place)| place)
}

/// How far a point lies from a line between two points.
fn distance([x, y]: Point, [from, to]: &[Point; 2]) -> f64 {
    let (run, rise) = (to[0] - from[0], to[1] - from[1]);
    let square = (run * run + rise * rise).max(1e-9);
    let share = (((x - from[0]) * run + (y - from[1]) * rise) / square).clamp(0.0, 1.0);
    (x - from[0] - share * run).hypot(y - from[1] - share * rise)
}

/// What the plan gives, beneath it; gives where it ends.
fn caption(plate: &mut Plate, cut: &Cut, top: f64, voice: Voice<'_>) -> f64 {
    let mut y = top + LABEL * RISE;
    for text in crate::draw::speech::cut_captions(cut, voice) {
        for line in lettering::wrap(&text, LABEL, false, plate.width - 2.0 * MARGIN) {
            plate.text(Text::new(line, [MARGIN, y]));
            y += LABEL * 1.25;
        }
    }
    y - LABEL * 0.5
}
