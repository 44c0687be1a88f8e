//! A lock-in: the dough with the fat on it, the order of closing, the closed parcel.

use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, RING, Text, corners};
use crate::draw::system::voice::Voice;
use crate::measure::Label;
use crate::sheet::{EdgesFact, LockIn, LockInFact};

use super::block::{Outline, next_note};
use super::envelope;
use super::panels::{fitted, in_a_row};
use super::section::{Bed, Flap, Layer, Stage, THICK, draw_bed, hatch_fat, stage};
use super::turn::{LAYERS, LAYERS_AT, Marked, Setting, beside, room, sheet};

/// The least room for the layers beside a parcel: with less they stand beneath it.
const NOTES: f64 = 170.0;

/// The drawing of a lock-in.
pub(in crate::draw) fn lock_in(
    fact: &LockInFact,
    form: Format,
    voice: Voice<'_>,
) -> Plate {
    match fact.kind {
        LockIn::Envelope => envelope::tall(fact, form, voice),
        LockIn::Letter => folded(fact, LETTER, form, voice),
        LockIn::Book => folded(fact, BOOK, form, voice),
    }
}

/// A lock-in that is folded along the sheet.
#[derive(Clone, Copy)]
struct Closing {
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
    /// The moments of its closing, from the side, with the fat within.
    moments: fn(&Cells) -> Vec<Stage>,
}

/// Fat on two thirds: the bare third over it, then the other over both.
const LETTER: Closing = Closing {
    parts: 3,
    folds: [1, 2],
    meet: None,
    fat: [0, 2],
    flaps: [2, 0],
    layers: &[Layer::Dough, Layer::Fat, Layer::Dough, Layer::Fat, Layer::Dough],
    left: "spine",
    moments: Cells::letter,
};

/// Fat on the middle half: both ends over it until they meet.
const BOOK: Closing = Closing {
    parts: 4,
    folds: [1, 3],
    meet: Some(2),
    fat: [1, 3],
    flaps: [0, 3],
    layers: &[Layer::Dough, Layer::Fat, Layer::Dough],
    left: "edge-fold",
    moments: Cells::book,
};

fn folded(fact: &LockInFact, way: Closing, form: Format, voice: Voice<'_>) -> Plate {
    if form == Format::Column {
        return in_a_column(fact, way, voice);
    }
    let mut plate = Plate::new(form.width());
    let laid = lay_in(&mut plate, fact, way, room(form), voice);
    let inverted = fact.inverted;
    let bottom = match form {
        Format::Page => {
            let top = laid.bottom + 14.0;
            close(&mut plate, way, inverted, &laid.setting, top, voice) + 20.0
        }
        Format::Column | Format::Large | Format::Card => {
            plate.heading(&voice.word("close"), laid.bottom + 12.0);
            let made = |times| stages(&way, &laid.setting.times(times), inverted);
            let moments = fitted(plate.width, made);
            in_a_row(&mut plate, &moments, laid.bottom + 34.0) + 6.0
        }
    };
    plate.height = closed(&mut plate, fact, &laid, way, bottom, voice);
    plate
}

/// The same for a column of a sheet: the parcel beside the sheet, its layers beside the closing.
fn in_a_column(fact: &LockInFact, way: Closing, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(Format::Column.width());
    let size_cm = [fact.length_cm, fact.width_cm];
    let outline = |scale| parcel_outline(fact, way, scale);
    let (room, x) = beside(&plate, size_cm, &outline, voice);
    let laid = lay_in(&mut plate, fact, way, room, voice);
    plate.heading_at(&voice.word("closed"), [x, 6.0]);
    let drawn = outline(laid.setting.scale).draw_beside(&mut plate, [x, 36.0], voice);
    meet(&mut plate, way, drawn.block);
    let top = laid.bottom.max(drawn.foot) + 6.0;
    plate.heading(&voice.word("close"), top);
    let mut moments = Plate::new(plate.width - LAYERS);
    let made = |times| stages(&way, &laid.setting.times(times), fact.inverted);
    let fit = fitted(moments.width, made);
    let bottom = in_a_row(&mut moments, &fit, top + 22.0);
    plate.lay(moments, [0.0, 0.0]);
    let at = ([LAYERS_AT, top + 4.0], LAYERS - 12.0);
    let noted = layers(&mut plate, fact, laid.sized, way.layers, (at, voice));
    let top = bottom.max(noted);
    let side = voice.length(fact.closed_width_cm);
    let at = ([MARGIN, top], plate.width - 2.0 * MARGIN);
    plate.height = next_note(&mut plate, (fact.next, &side), at, voice) + 4.0;
    plate
}

/// The heading's key over what is laid in.
pub(in crate::draw) fn lay_in_word(fact: &LockInFact) -> &'static str {
    if fact.inverted { "lay-in-dough" } else { "lay-in" }
}

/// The dough with the fat on it, as it was drawn.
struct LaidIn {
    setting: Setting,
    /// Whether the block's size stands on it.
    sized: bool,
    /// Where it ends.
    bottom: f64,
}

/// The first panel: the dough with the fat on it.
fn lay_in(
    plate: &mut Plate,
    fact: &LockInFact,
    way: Closing,
    room: [f64; 2],
    voice: Voice<'_>,
) -> LaidIn {
    plate.heading(&voice.word(lay_in_word(fact)), 6.0);
    let at = |cell: &u32| fact.length_cm * f64::from(*cell) / f64::from(way.parts);
    let marked = Marked {
        size_cm: [fact.length_cm, fact.width_cm],
        folds_cm: way.folds.iter().map(at).collect(),
        meet_cm: way.meet.as_ref().map(at),
        fat: fact.inverted,
    };
    let (setting, bottom) = sheet(plate, &marked, room, 44.0, voice);
    let sized = fat_block(plate, fact, &way, &setting, voice);
    LaidIn { setting, sized, bottom }
}

/// The second panel: the closing from the side.
fn close(
    plate: &mut Plate,
    way: Closing,
    inverted: bool,
    setting: &Setting,
    top: f64,
    voice: Voice<'_>,
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
    laid: &LaidIn,
    way: Closing,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    plate.heading(&voice.word("closed"), top);
    parcel(plate, fact, laid, way, top + 38.0, voice) + 8.0
}

/// The fat on the dough, its size written on it where there is room, and the flaps' numbers.
/// Says whether there was.
fn fat_block(
    plate: &mut Plate,
    fact: &LockInFact,
    way: &Closing,
    setting: &Setting,
    voice: Voice<'_>,
) -> bool {
    let part = setting.size[0] / f64::from(way.parts);
    let middle = setting.corner[0] + f64::from(way.fat[0] + way.fat[1]) / 2.0 * part;
    let centre = [middle, setting.corner[1] + setting.size[1] / 2.0];
    let half = [fact.block_length_cm, fact.block_width_cm]
        .map(|side| side * setting.scale / 2.0);
    let block = corners(
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
    tag(plate, voice.of(&fact.block), &block, label_place(way, setting, centre))
}

/// Where the block's size is written: beneath the flaps' numbers, or between them on a
/// sheet too low for that.
fn label_place(way: &Closing, setting: &Setting, [middle, y]: Point) -> Point {
    let beneath = 0.25 * setting.size[1];
    if beneath >= RING + LABEL {
        return [middle, y + beneath];
    }
    let part = setting.size[0] / f64::from(way.parts);
    let flaps: f64 = way.flaps.iter().map(|flap| f64::from(*flap) + 0.5).sum();
    [setting.corner[0] + part * flaps / 2.0, y]
}

/// Fills an outline as fat or as dough.
pub(in crate::draw) fn surface(plate: &mut Plate, outline: &[Point], fat: bool) {
    plate.polygon(outline, if fat { ink::FAT } else { ink::DOUGH });
    if fat {
        hatch_fat(plate, outline);
    }
}

/// A label on a pale ground of its own, for standing on a hatching; nothing where it would
/// reach beyond the convex `outline` that it names, or lie on another. Says whether it stands.
pub(in crate::draw) fn tag(
    plate: &mut Plate,
    label: &str,
    outline: &[Point],
    centre: Point,
) -> bool {
    let text = Text::new(label, [centre[0], centre[1] + 0.36 * LABEL]).bold().middle();
    let frame = text.frame().grown(5.0);
    let ground = corners([frame.left, frame.top], [frame.right, frame.bottom]);
    let fits = ground.iter().all(|corner| is_within(*corner, outline));
    if !fits || !plate.is_free(&frame) {
        return false;
    }
    plate.polygon(&ground, ink::TAG);
    plate.text(text);
    true
}

/// Whether a place lies within a convex outline.
fn is_within([x, y]: Point, outline: &[Point]) -> bool {
    let next = outline.iter().cycle().skip(1);
    let sides = outline.iter().zip(next).map(|([ax, ay], [bx, by])| {
        // On which side of the line from one corner to the next.
        (bx - ax) * (y - ay) - (by - ay) * (x - ax)
    });
    let sides: Vec<f64> = sides.collect();
    sides.iter().all(|side| *side >= 0.0) || sides.iter().all(|side| *side <= 0.0)
}

fn stages(way: &Closing, setting: &Setting, inverted: bool) -> Vec<Stage> {
    let part = setting.size[0] / f64::from(way.parts);
    let mut stages = (way.moments)(&Cells { left: setting.corner[0], part });
    let beds = |stage: &mut Stage| {
        stage.beds.iter_mut().for_each(|bed| turn_out(&mut bed.layers, inverted));
        stage.flaps.iter_mut().for_each(|flap| turn_out(&mut flap.layers, inverted));
    };
    stages.iter_mut().for_each(beds);
    stages
}

/// Puts fat in the place of dough and dough in the place of fat where the fat is outside.
pub(in crate::draw) fn turn_out(layers: &mut [Layer], inverted: bool) {
    for layer in layers.iter_mut().filter(|_| inverted) {
        *layer = match layer {
            Layer::Dough => Layer::Fat,
            Layer::Fat => Layer::Dough,
            Layer::Layered(count) => Layer::Layered(*count),
        };
    }
}

/// The parts of the sheet seen from the side, of even length.
struct Cells {
    /// Where the first one begins.
    left: f64,
    /// How long each is.
    part: f64,
}

impl Cells {
    fn x(&self, cell: u32) -> f64 {
        self.left + f64::from(cell) * self.part
    }

    fn bed(&self, span: [u32; 2], layers: &[Layer]) -> Bed {
        let span = span.map(|cell| self.x(cell));
        Bed { span, layers: layers.to_vec(), closed: [false; 2] }
    }

    fn flap(
        &self,
        [hinge, end]: [u32; 2],
        layers: &[Layer],
        onto: usize,
        number: usize,
    ) -> Flap {
        let (hinge, end) = (self.x(hinge), self.x(end));
        Flap { hinge, end, layers: layers.to_vec(), onto, reach: 0.9, number }
    }

    /// Both ends over the fat until they meet.
    fn book(&self) -> Vec<Stage> {
        let dough = [Layer::Dough];
        let flaps =
            vec![self.flap([1, 0], &dough, 2, 1), self.flap([3, 4], &dough, 2, 2)];
        let beds = vec![self.bed([1, 3], &[Layer::Fat, Layer::Dough])];
        vec![Stage { beds, flaps, hops: Vec::new() }]
    }

    /// The bare third over the fat, then the other over both.
    fn letter(&self) -> Vec<Stage> {
        let fat = [Layer::Fat, Layer::Dough];
        let bare = Stage {
            beds: vec![self.bed([0, 2], &fat)],
            flaps: vec![self.flap([2, 3], &[Layer::Dough], 2, 1)],
            hops: Vec::new(),
        };
        let other = Stage {
            beds: vec![self.bed([1, 2], &[Layer::Dough, Layer::Fat, Layer::Dough])],
            flaps: vec![self.flap([1, 0], &fat, 3, 2)],
            hops: Vec::new(),
        };
        vec![bare, other]
    }
}

/// The closed parcel from above, and its layers from the side.
fn parcel(
    plate: &mut Plate,
    fact: &LockInFact,
    laid: &LaidIn,
    way: Closing,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    let outline = parcel_outline(fact, way, laid.setting.scale);
    let drawn = outline.draw(plate, top, voice);
    meet(plate, way, drawn.block);
    let fits = plate.width - drawn.beside >= NOTES;
    let corner = if fits { [drawn.beside, top] } else { [MARGIN, drawn.foot + 12.0] };
    let room = plate.width - corner[0] - 6.0;
    let y = layers(plate, fact, laid.sized, way.layers, ((corner, room), voice));
    let side = voice.length(fact.closed_width_cm);
    next_note(plate, (fact.next, &side), ([corner[0], y], room), voice).max(drawn.foot)
}

/// The closed parcel's outline.
fn parcel_outline(fact: &LockInFact, way: Closing, scale: f64) -> Outline {
    Outline {
        size_cm: [fact.closed_length_cm, fact.closed_width_cm],
        scale,
        left: way.left,
        edges: fact.edges.unwrap_or(EdgesFact { opposite_folds: 1, opposite_ends: 0 }),
        next: fact.next,
        fat: fact.inverted,
    }
}

/// Where the ends of the sheet meet on the closed parcel.
fn meet(plate: &mut Plate, way: Closing, [from, to]: [Point; 2]) {
    if way.meet.is_some() {
        let middle = f64::midpoint(from[0], to[0]);
        plate.line(&[[middle, from[1]], [middle, to[1]]], ink::SEAM);
    }
}

/// The layers of the closed parcel from the side, named, with their thickness, and what
/// the dotted line means. The size of the block stands there too where it does not stand on it
/// (`sized`).
pub(in crate::draw) fn layers(
    plate: &mut Plate,
    fact: &LockInFact,
    sized: bool,
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
    // A number and its unit stand in one line.
    let bound = |label: &Label| voice.of(label).replace(' ', "\u{a0}");
    let (sheet, block) = (bound(&fact.thickness), bound(&fact.block_thickness));
    let (dough, fat) = if fact.inverted { (&block, &sheet) } else { (&sheet, &block) };
    let size = &bound(&fact.block);
    let (dough_key, fat_key) = match (sized, fact.inverted) {
        (true, _) => ("dough-thick", "fat-thick"),
        (false, false) => ("dough-thick", "fat-block"),
        (false, true) => ("dough-block", "fat-thick"),
    };
    let thick = [
        voice.fill(dough_key, &[("thickness", dough), ("size", size)]),
        voice.fill(fat_key, &[("thickness", fat), ("size", size)]),
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
