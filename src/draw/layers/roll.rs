//! Rolling out: what is rolled, the sheet it becomes, how thick both are, which way the pin
//! goes, and where the bench ends if the sheet is longer.

use crate::dough::Direction;
use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, Text, corners};
use crate::draw::system::voice::Voice;
use crate::sheet::{RollFact, Slab};

use super::turn::{Setting, beneath_its_length};

/// How thick the thicker of the two is drawn.
const THICKEST: f64 = 44.0;
/// The room between a slab from the side and its thickness.
const GAP: f64 = 14.0;
/// The least distance that is worth an arrow.
const LEAST_WAY: f64 = 34.0;

/// The largest that a sheet is drawn.
fn room(form: Format) -> [f64; 2] {
    match form {
        Format::Page => [500.0, 230.0],
        Format::Column | Format::Large | Format::Card => [form.width() - 118.0, 150.0],
    }
}

/// The drawing of one rolling.
pub(in crate::draw) fn roll(fact: &RollFact, form: Format, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(form.width());
    plate.heading(&voice.word("from-above"), 6.0);
    let to = &fact.to;
    let long = voice.length(to.length_cm);
    let size_cm = [to.length_cm, to.width_cm];
    let setting = beneath_its_length(size_cm, &long, room(form), 44.0);
    let ([left, top], [length, width]) = (setting.corner, setting.size);
    let (right, bottom) = (left + length, top + width);
    plate.dimension_across([left, right], 50.0, &long);
    plate.rectangle([left, top], [right, bottom], ink::DOUGH);
    plate.dimension_up(right + 16.0, [top, bottom], &voice.length(to.width_cm));
    if let Some(from) = &fact.from {
        before(&mut plate, from, &setting);
    }
    let foot = bench(&mut plate, fact, &setting, voice);
    plate.heading(&voice.word("from-the-side"), foot + 14.0);
    let foot = sides(&mut plate, fact, &setting, foot + 56.0, voice);
    plate.height = captions(&mut plate, fact, foot + 12.0, voice);
    plate
}

/// Where the block lay, and the ways that the pin goes from it.
fn before(plate: &mut Plate, from: &Slab, setting: &Setting) {
    let (corner, size) = (setting.corner, setting.size);
    let middle = [corner[0] + size[0] / 2.0, corner[1] + size[1] / 2.0];
    let half = [from.length_cm, from.width_cm].map(|side| side * setting.scale / 2.0);
    let half = [half[0].min(size[0] / 2.0), half[1].min(size[1] / 2.0)];
    plate.rectangle(
        [middle[0] - half[0], middle[1] - half[1]],
        [middle[0] + half[0], middle[1] + half[1]],
        ink::GHOST,
    );
    for axis in [0, 1] {
        let way = size[axis] / 2.0 - half[axis];
        if way < LEAST_WAY {
            continue;
        }
        for side in [-1.0, 1.0] {
            let at = |distance: f64| -> Point {
                let mut point = middle;
                point[axis] += side * distance;
                point
            };
            plate.arrow(at(half[axis] + 5.0), at(size[axis] / 2.0 - 5.0));
        }
    }
}

/// The end of the bench, where the sheet hangs over it; gives where the panel ends.
fn bench(plate: &mut Plate, fact: &RollFact, setting: &Setting, voice: Voice<'_>) -> f64 {
    let ([left, top], [length, width]) = (setting.corner, setting.size);
    let bottom = top + width;
    let (Some(bench_cm), Some(bench)) = (fact.bench_cm, &fact.bench) else {
        return bottom + 12.0;
    };
    if bench_cm >= fact.to.length_cm {
        return bottom + 12.0;
    }
    let edge = left + bench_cm * setting.scale;
    let over = corners([edge, top], [left + length, bottom]);
    plate.dots(&over);
    plate.line(&[[edge, top - 8.0], [edge, bottom + 16.0]], ink::SPINE);
    let text = voice.fill("bench-ends", &[("bench", voice.of(bench))]);
    let half = lettering::width(&text, LABEL, false) / 2.0;
    let x = edge.min(plate.width - half - 4.0).max(half + 4.0);
    plate.text(Text::new(text, [x, bottom + 24.0 + LABEL * RISE]).middle());
    bottom + 24.0 + LABEL * 1.2
}

/// Both from the side: lengths to scale, thicknesses to a larger scale of their own.
fn sides(
    plate: &mut Plate,
    fact: &RollFact,
    setting: &Setting,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    let slabs = fact.from.iter().chain([&fact.to]);
    let thickest = slabs.clone().map(|slab| slab.thickness_mm).fold(0.01, f64::max);
    let middle = setting.corner[0] + setting.size[0] / 2.0;
    // Each thickness stands at the end of its slab: both slabs are drawn shorter together where
    // the widest would have no room there.
    let half = |slab: &Slab| (slab.length_cm * setting.scale).min(setting.size[0]) / 2.0;
    let longest = slabs.clone().map(half).fold(0.01, f64::max);
    let widest = slabs
        .clone()
        .map(|slab| lettering::width(voice.of(&slab.thickness), LABEL, false))
        .fold(0.0, f64::max);
    let shorter = ((plate.width - 4.0 - widest - GAP - middle) / longest).clamp(0.1, 1.0);
    let mut y = top;
    for slab in slabs {
        let half = half(slab) * shorter;
        let thick = (slab.thickness_mm / thickest * THICKEST).max(3.0);
        let high = thick.max(LABEL);
        let under = y + (high + thick) / 2.0;
        plate.rectangle(
            [middle - half, under - thick],
            [middle + half, under],
            ink::DOUGH,
        );
        let label = Text::new(
            voice.of(&slab.thickness),
            [middle + half + GAP, y + high / 2.0 + 0.36 * LABEL],
        );
        plate.text(label);
        y += high + 16.0;
    }
    y - 16.0
}

fn captions(plate: &mut Plate, fact: &RollFact, top: f64, voice: Voice<'_>) -> f64 {
    let slab = |key: &str, slab: &Slab| {
        let (size, thickness) = (voice.of(&slab.size), voice.of(&slab.thickness));
        voice.fill(key, &[("size", size), ("thickness", thickness)])
    };
    let from = fact.from.as_ref().map(|from| slab("roll-from", from));
    let turned = (fact.way == Direction::QuarterTurn).then(|| voice.word("roll-turned"));
    let to = slab("roll-to", &fact.to);
    let texts: Vec<String> = turned.into_iter().chain(from).chain([to]).collect();
    lines(plate, &texts, [MARGIN, top])
}

/// Lines of text beneath a drawing; gives where they end.
pub(in crate::draw) fn lines(
    plate: &mut Plate,
    texts: &[String],
    [x, top]: Point,
) -> f64 {
    let mut y = top + LABEL * RISE;
    for text in texts {
        for line in lettering::wrap(text, LABEL, false, plate.width - x - MARGIN) {
            plate.text(Text::new(line, [x, y]));
            y += LABEL * 1.25;
        }
    }
    y - LABEL * 0.5
}
