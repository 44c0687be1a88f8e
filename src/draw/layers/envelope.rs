//! The envelope lock-in: the fat set with its corners at the middles of the dough's
//! sides, four flaps over it.

use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, Text, corners};
use crate::draw::system::voice::Voice;
use crate::sheet::LockInFact;

use super::block::next_note;
use super::lock_in::{lay_in_word, layers, surface, tag};
use super::section::Layer;

/// How an envelope is set on its plate.
struct Layout {
    /// The plate's width.
    width: f64,
    /// The largest that the dough is drawn.
    dough: f64,
    /// Where the closed parcel's panel begins.
    closed: f64,
    /// Where the layers stand; beneath the closed parcel where that is nought.
    layers: f64,
    /// Where the order of closing is written beneath the dough, and in how much room.
    order: [f64; 2],
}

/// Upright: the closed parcel beside the dough, the words beneath both; in a column the layers
/// beside them.
fn upright(form: Format) -> Layout {
    match form {
        Format::Column => IN_A_COLUMN,
        Format::Page | Format::Large | Format::Card => beneath(form),
    }
}

fn beneath(form: Format) -> Layout {
    // Beside each other they leave room for the length of a side and both margins.
    let width = form.width();
    let dough = ((width - 2.0 * MARGIN - SIDE) / 2.0).min(250.0);
    let closed = MARGIN + dough + SIDE;
    let order = [MARGIN, closed - MARGIN - 40.0];
    Layout { width, dough, closed, layers: 0.0, order }
}

/// What the length of a side takes beside the dough.
const SIDE: f64 = 96.0;

/// For a column of a sheet.
const IN_A_COLUMN: Layout = Layout {
    width: Format::Column.width(),
    dough: 158.0,
    closed: MARGIN + 158.0 + SIDE,
    layers: MARGIN + 2.0 * 158.0 + SIDE + 12.0,
    order: [MARGIN, 158.0 + SIDE + 120.0],
};

/// The drawing of an envelope lock-in, upright.
pub(in crate::draw) fn tall(fact: &LockInFact, form: Format, voice: Voice<'_>) -> Plate {
    envelope(fact, &upright(form), voice)
}

fn envelope(fact: &LockInFact, layout: &Layout, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(layout.width);
    let scale = layout.dough / fact.length_cm.max(fact.width_cm).max(0.1);
    let size = [fact.length_cm * scale, fact.width_cm * scale];
    let top = 44.0;
    heading(&mut plate, &voice.word(lay_in_word(fact)), MARGIN);
    heading(&mut plate, &voice.word("closed"), layout.closed - 10.0);
    let sized = open(&mut plate, fact, [MARGIN, top], size, scale, voice);
    let bottom = top + size[1];
    let across = [MARGIN, MARGIN + size[0]];
    plate.dimension_across(across, bottom + 22.0, &voice.length(fact.length_cm));
    let up = MARGIN + size[0] + 14.0;
    plate.dimension_up(up, [top, bottom], &voice.length(fact.width_cm));
    closed(&mut plate, fact, [layout.closed, top], size, scale, voice);
    let beneath = layout.layers <= 0.0;
    let foot = bottom + 22.0 + 2.0 * LABEL;
    let words = if beneath { foot } else { top };
    let column = if beneath { layout.closed } else { layout.layers };
    let stack = [Layer::Dough, Layer::Fat, Layer::Dough];
    let room = layout.width - column - 6.0;
    let at = ([column, words], room);
    let noted = layers(&mut plate, fact, sized, &stack, (at, voice));
    let next = (fact.next, "");
    let noted = next_note(&mut plate, next, ([column, noted], room), voice);
    let ordered = order(&mut plate, layout.order, foot, voice);
    plate.height = noted.max(ordered).max(if beneath { 0.0 } else { foot }) + 4.0;
    plate
}

fn heading(plate: &mut Plate, text: &str, x: f64) {
    let at = [x, 6.0 + lettering::HEADING * RISE];
    plate.text(Text::new(text, at).size(lettering::HEADING).bold().ink(ink::LEAD));
}

/// How it is closed, in words.
fn order(plate: &mut Plate, [x, room]: [f64; 2], top: f64, voice: Voice<'_>) -> f64 {
    let mut y = top + LABEL * RISE;
    for line in lettering::wrap(&voice.word("envelope-order"), LABEL, false, room) {
        plate.text(Text::new(line, [x, y]));
        y += LABEL * 1.2;
    }
    y
}

/// The dough with the fat on it and the flaps in their order; says whether the fat's size
/// stands on it.
fn open(
    plate: &mut Plate,
    fact: &LockInFact,
    corner: Point,
    size: [f64; 2],
    scale: f64,
    voice: Voice<'_>,
) -> bool {
    let end = [corner[0] + size[0], corner[1] + size[1]];
    surface(plate, &corners(corner, end), fact.inverted);
    let centre = [f64::midpoint(corner[0], end[0]), f64::midpoint(corner[1], end[1])];
    let block = diamond(centre, [fact.block_length_cm, fact.block_width_cm], scale);
    surface(plate, &block, !fact.inverted);
    let all = [[corner[0], end[1]], [end[0], corner[1]], [end[0], end[1]], corner];
    for (index, place) in all.into_iter().enumerate() {
        let toward = |share: f64| {
            [0, 1].map(|axis| place[axis] + share * (centre[axis] - place[axis]))
        };
        plate.arrow(toward(0.3), toward(0.68));
        plate.ring(toward(0.17), index + 1);
    }
    tag(plate, voice.of(&fact.block), &block, centre)
}

/// The closed parcel where it lies, its size on it or beneath it, its seams, and where the
/// dough lay.
fn closed(
    plate: &mut Plate,
    fact: &LockInFact,
    corner: Point,
    size: [f64; 2],
    scale: f64,
    voice: Voice<'_>,
) {
    let end = [corner[0] + size[0], corner[1] + size[1]];
    plate.rectangle(corner, end, ink::GHOST);
    let centre = [f64::midpoint(corner[0], end[0]), f64::midpoint(corner[1], end[1])];
    let parcel = diamond(centre, [fact.closed_length_cm, fact.closed_width_cm], scale);
    surface(plate, &parcel, fact.inverted);
    plate.line(&[parcel[0], parcel[2]], ink::SEAM);
    plate.line(&[parcel[1], parcel[3]], ink::SEAM);
    let label = voice.of(&fact.closed);
    if !tag(plate, label, &parcel, centre) {
        // As high as the side of the dough beside it says its length.
        let at = [centre[0], end[1] + 22.0 + 8.0 + LABEL * RISE];
        plate.text(Text::new(label, at).middle());
    }
}

/// A rectangle turned by an eighth, its corners top, right, bottom, left.
fn diamond([x, y]: Point, [length, width]: [f64; 2], scale: f64) -> [Point; 4] {
    let turned = |u: f64, v: f64| {
        let (u, v) = (u * length * scale / 2.0, v * width * scale / 2.0);
        let root = std::f64::consts::FRAC_1_SQRT_2;
        [x + (u - v) * root, y + (u + v) * root]
    };
    [turned(-1.0, -1.0), turned(1.0, -1.0), turned(1.0, 1.0), turned(-1.0, 1.0)]
}
