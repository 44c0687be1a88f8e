//! A lock-in: the dough with the fat on it, the order of closing, the closed parcel.

use crate::sheet::{EdgesFact, LockInFact};

use super::block::{Outline, next_note};
use super::envelope;
use super::ink;
use super::lettering::{self, LABEL, RISE};
use super::panels::{fitted, in_a_row, panels, side_by_side};
use super::plate::{Form, MARGIN, Plate, Point, RING, Text};
use super::section::{Bed, Flap, Layer, Stage, THICK, draw_bed, hatch_fat, stage};
use super::turn::{Marked, Setting, WIDE_ROOM, room, sheet};
use super::voice::Voice;

/// The least room for the layers beside a parcel: with less they stand beneath it.
const NOTES: f64 = 170.0;

/// The drawing of a lock-in.
pub(super) fn lock_in(fact: &LockInFact, form: Form, voice: Voice<'_>) -> Plate {
    match fact.kind.as_str() {
        "envelope" => envelope::tall(fact, form, voice),
        "letter" => folded(fact, LETTER, form, voice),
        _ => folded(fact, BOOK, form, voice),
    }
}

/// The same with its panels side by side, for paper.
pub(super) fn wide(fact: &LockInFact, voice: Voice<'_>) -> Plate {
    match fact.kind.as_str() {
        "envelope" => envelope::wide(fact, voice),
        "letter" => folded_wide(fact, LETTER, voice),
        _ => folded_wide(fact, BOOK, voice),
    }
}

/// A lock-in that is folded along the sheet.
#[derive(Clone, Copy)]
struct Way {
    /// Parts that the sheet's length is divided into.
    parts: u32,
    /// Where it is folded, in parts from the left.
    folds: [u32; 2],
    /// Where its ends meet, in parts from the left.
    meet: Option<u32>,
    /// The parts that the fat lies on.
    fat: [u32; 2],
    /// The flaps in their order.
    flaps: [u32; 2],
    /// The closed parcel from the top down.
    layers: &'static [Layer],
    /// The word for its left side.
    left: &'static str,
}

/// Fat on two thirds: the bare third over it, then the other over both.
const LETTER: Way = Way {
    parts: 3,
    folds: [1, 2],
    meet: None,
    fat: [0, 2],
    flaps: [2, 0],
    layers: &[Layer::Dough, Layer::Fat, Layer::Dough, Layer::Fat, Layer::Dough],
    left: "spine",
};

/// Fat on the middle half: both ends over it until they meet.
const BOOK: Way = Way {
    parts: 4,
    folds: [1, 3],
    meet: Some(2),
    fat: [1, 3],
    flaps: [0, 3],
    layers: &[Layer::Dough, Layer::Fat, Layer::Dough],
    left: "edge-fold",
};

fn folded(fact: &LockInFact, way: Way, form: Form, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(form.width());
    let (setting, bottom) = lay_in(&mut plate, fact, (way, room(form)), voice);
    let inverted = fact.inverted;
    let bottom = match form {
        Form::Page => {
            close(&mut plate, (way, inverted), &setting, (bottom + 14.0, voice)) + 20.0
        }
        Form::Column | Form::Large | Form::Card => {
            plate.heading(&voice.word("close"), bottom + 12.0);
            let made = |times| stages(&way, &setting.times(times), inverted);
            let moments = fitted(plate.width, made);
            in_a_row(&mut plate, &moments, bottom + 34.0) + 6.0
        }
    };
    plate.height = closed(&mut plate, fact, (&setting, way), (bottom, voice));
    plate
}

fn folded_wide(fact: &LockInFact, way: Way, voice: Voice<'_>) -> Plate {
    let [mut first, mut second, mut third] = panels();
    let (setting, bottom) = lay_in(&mut first, fact, (way, WIDE_ROOM), voice);
    first.height = bottom;
    let made = |times| stages(&way, &setting.times(times), fact.inverted);
    let moments = fitted(second.width, made);
    second.heading(&voice.word("close"), 6.0);
    second.height = in_a_row(&mut second, &moments, 26.0);
    third.height = closed(&mut third, fact, (&setting, way), (6.0, voice));
    side_by_side([first, second, third])
}

/// The heading's key over what is laid in.
pub(super) fn lay_in_word(fact: &LockInFact) -> &'static str {
    if fact.inverted { "lay-in-dough" } else { "lay-in" }
}

/// The first panel: the dough with the fat on it.
fn lay_in(
    plate: &mut Plate,
    fact: &LockInFact,
    (way, room): (Way, [f64; 2]),
    voice: Voice<'_>,
) -> (Setting, f64) {
    plate.heading(&voice.word(lay_in_word(fact)), 6.0);
    let at = |cell: &u32| fact.length_cm * f64::from(*cell) / f64::from(way.parts);
    let marked = Marked {
        size_cm: [fact.length_cm, fact.width_cm],
        folds_cm: way.folds.iter().map(at).collect(),
        meet_cm: way.meet.as_ref().map(at),
        fat: fact.inverted,
    };
    let (setting, bottom) = sheet(plate, &marked, (room, 44.0), voice);
    fat_block(plate, fact, &way, (&setting, voice));
    (setting, bottom)
}

/// The second panel: the closing from the side.
fn close(
    plate: &mut Plate,
    (way, inverted): (Way, bool),
    setting: &Setting,
    (top, voice): (f64, Voice<'_>),
) -> f64 {
    plate.heading(&voice.word("close"), top);
    stages(&way, setting, inverted)
        .iter()
        .fold(top + 20.0, |bottom, moment| stage(plate, moment, bottom) + 14.0)
}

/// The last panel: the closed parcel.
fn closed(
    plate: &mut Plate,
    fact: &LockInFact,
    (setting, way): (&Setting, Way),
    (top, voice): (f64, Voice<'_>),
) -> f64 {
    plate.heading(&voice.word("closed"), top);
    parcel(plate, fact, (setting, way), (top + 38.0, voice)) + 8.0
}

/// The fat on the dough, its size written on it, and the flaps' numbers.
fn fat_block(
    plate: &mut Plate,
    fact: &LockInFact,
    way: &Way,
    (setting, voice): (&Setting, Voice<'_>),
) {
    let part = setting.size[0] / f64::from(way.parts);
    let middle = setting.corner[0] + f64::from(way.fat[0] + way.fat[1]) / 2.0 * part;
    let centre = [middle, setting.corner[1] + setting.size[1] / 2.0];
    let half = [fact.block_length_cm, fact.block_width_cm]
        .map(|side| side * setting.scale / 2.0);
    let block = super::plate::corners(
        [centre[0] - half[0], centre[1] - half[1]],
        [centre[0] + half[0], centre[1] + half[1]],
    );
    surface(plate, &block, !fact.inverted);
    for fold in way.fat[0]..=way.fat[1] {
        let x = setting.corner[0] + f64::from(fold) * part;
        let inside = x > block[0][0] && x < block[1][0];
        if inside && way.parts == 3 {
            plate.line(
                &[[x, setting.corner[1]], [x, setting.corner[1] + setting.size[1]]],
                ink::FOLD,
            );
        }
    }
    for (index, flap) in way.flaps.iter().enumerate() {
        let x = setting.corner[0] + (f64::from(*flap) + 0.5) * part;
        plate.ring([x, centre[1]], index + 1);
    }
    tag(plate, voice.of(&fact.block), label_place(way, setting, centre));
}

/// Where the block's size is written: beneath the flaps' numbers, or between them on a
/// sheet too low for that.
fn label_place(way: &Way, setting: &Setting, [middle, y]: Point) -> Point {
    let beneath = 0.25 * setting.size[1];
    if beneath >= RING + LABEL {
        return [middle, y + beneath];
    }
    let part = setting.size[0] / f64::from(way.parts);
    let flaps: f64 = way.flaps.iter().map(|flap| f64::from(*flap) + 0.5).sum();
    [setting.corner[0] + part * flaps / 2.0, y]
}

/// Fills an outline as fat or as dough.
pub(super) fn surface(plate: &mut Plate, outline: &[Point], fat: bool) {
    plate.polygon(outline, if fat { ink::FAT } else { ink::DOUGH });
    if fat {
        hatch_fat(plate, outline);
    }
}

/// A label on a pale ground of its own, for standing on a hatching.
pub(super) fn tag(plate: &mut Plate, label: &str, centre: Point) {
    let text = Text::new(label, [centre[0], centre[1] + 0.36 * LABEL]).bold().middle();
    let frame = text.frame().grown(5.0);
    plate.rectangle([frame.left, frame.top], [frame.right, frame.bottom], ink::TAG);
    plate.text(text);
}

fn stages(way: &Way, setting: &Setting, inverted: bool) -> Vec<Stage> {
    let mut stages = of_dough(way, setting);
    let beds = |stage: &mut Stage| {
        stage.beds.iter_mut().for_each(|bed| turn_out(&mut bed.layers, inverted));
        stage.flaps.iter_mut().for_each(|flap| turn_out(&mut flap.layers, inverted));
    };
    stages.iter_mut().for_each(beds);
    stages
}

/// Puts fat in the place of dough and dough in the place of fat where the fat is outside.
pub(super) fn turn_out(layers: &mut [Layer], inverted: bool) {
    for layer in layers.iter_mut().filter(|_| inverted) {
        *layer = match layer {
            Layer::Dough => Layer::Fat,
            Layer::Fat => Layer::Dough,
            Layer::Layered(count) => Layer::Layered(*count),
        };
    }
}

fn of_dough(way: &Way, setting: &Setting) -> Vec<Stage> {
    let part = setting.size[0] / f64::from(way.parts);
    let x = |cell: u32| setting.corner[0] + f64::from(cell) * part;
    let dough = || vec![Layer::Dough];
    let fat = || vec![Layer::Fat, Layer::Dough];
    let bed =
        |span: [u32; 2], layers| Bed { span: span.map(x), layers, closed: [false; 2] };
    let flap = |[hinge, end]: [u32; 2], layers, onto, number| Flap {
        hinge: x(hinge),
        end: x(end),
        layers,
        onto,
        reach: 0.9,
        number,
    };
    if way.parts == 4 {
        let ends = vec![flap([1, 0], dough(), 2, 1), flap([3, 4], dough(), 2, 2)];
        return vec![Stage {
            beds: vec![bed([1, 3], fat())],
            flaps: ends,
            hops: Vec::new(),
        }];
    }
    let three = vec![Layer::Dough, Layer::Fat, Layer::Dough];
    vec![
        Stage {
            beds: vec![bed([0, 2], fat())],
            flaps: vec![flap([2, 3], dough(), 2, 1)],
            hops: Vec::new(),
        },
        Stage {
            beds: vec![bed([1, 2], three)],
            flaps: vec![flap([1, 0], fat(), 3, 2)],
            hops: Vec::new(),
        },
    ]
}

/// The closed parcel from above, and its layers from the side.
fn parcel(
    plate: &mut Plate,
    fact: &LockInFact,
    (setting, way): (&Setting, Way),
    (top, voice): (f64, Voice<'_>),
) -> f64 {
    let outline = Outline {
        size_cm: [fact.closed_length_cm, fact.closed_width_cm],
        scale: setting.scale,
        left: way.left,
        edges: fact.edges.unwrap_or(EdgesFact { opposite_folds: 1, opposite_ends: 0 }),
        next: fact.next,
        fat: fact.inverted,
    };
    let drawn = outline.draw(plate, top, voice);
    if way.meet.is_some() {
        let [from, to] = drawn.block;
        let middle = f64::midpoint(from[0], to[0]);
        plate.line(&[[middle, from[1]], [middle, to[1]]], ink::SEAM);
    }
    let fits = plate.width - drawn.beside >= NOTES;
    let corner = if fits { [drawn.beside, top] } else { [MARGIN, drawn.foot + 12.0] };
    let room = plate.width - corner[0] - 6.0;
    let y = layers(plate, fact, way.layers, ((corner, room), voice));
    let side = voice.length(fact.closed_width_cm);
    next_note(plate, (fact.next, &side), ([corner[0], y], room), voice).max(drawn.foot)
}

/// The layers of the closed parcel from the side, named, with their thickness, and what
/// the dotted line means.
pub(super) fn layers(
    plate: &mut Plate,
    fact: &LockInFact,
    stack: &[Layer],
    (([x, top], room), voice): ((Point, f64), Voice<'_>),
) -> f64 {
    let height = stack.len() as f64 * THICK;
    let end = x + 64.0;
    let mut stack = stack.to_vec();
    turn_out(&mut stack, fact.inverted);
    let bed = Bed { span: [x, end], layers: stack.clone(), closed: [false; 2] };
    draw_bed(plate, &bed, top + height);
    for (index, layer) in stack.iter().enumerate() {
        let word = if *layer == Layer::Fat { "fat" } else { "dough" };
        let y = top + (index as f64 + 0.5) * THICK + 0.36 * LABEL;
        plate.text(Text::new(voice.word(word), [end + 8.0, y]).size(THICK.min(LABEL)));
    }
    let (sheet, block) = (voice.of(&fact.thickness), voice.of(&fact.block_thickness));
    let (dough, fat) = if fact.inverted { (block, sheet) } else { (sheet, block) };
    let thick = [
        voice.fill("dough-thick", &[("thickness", dough)]),
        voice.fill("fat-thick", &[("thickness", fat)]),
        voice.word("seam-note"),
    ];
    let mut y = top + height + 12.0 + LABEL * RISE;
    for text in thick {
        for line in lettering::wrap(&text, LABEL, false, room) {
            plate.text(Text::new(line, [x, y]));
            y += LABEL * 1.2;
        }
    }
    y
}
