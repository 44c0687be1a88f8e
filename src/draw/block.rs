//! The block that a turn leaves: its size, its spine, its open side, and the way to roll
//! it next.

use super::ink;
use super::lettering::{self, LABEL, RISE};
use super::plate::{MARGIN, Plate, Text};
use super::stack::{Layers, stack};
use super::voice::Voice;

/// The least room for the notes beside a block: with less they stand beneath it.
const NOTES: f64 = 125.0;

/// A folded block.
#[derive(Clone, Copy, Debug)]
pub(super) struct Block {
    /// Along the folded side and along the spine, cm.
    pub(super) size_cm: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(super) scale: f64,
    /// Whether it is rolled along the folded side next: no quarter turn.
    pub(super) along: bool,
    /// Parts lying on one another.
    pub(super) parts: u32,
    /// Fat layers before and after.
    pub(super) growth: [u64; 2],
}

/// Draws a block at `top`; gives where it ends.
pub(super) fn block(plate: &mut Plate, block: &Block, top: f64, voice: Voice<'_>) -> f64 {
    let [length, width] = block.size_cm.map(|side| side * block.scale);
    let (spine, open) = (voice.word("spine"), voice.word("open-side"));
    let names = [&spine, &open].map(|name| lettering::width(name, LABEL, false));
    let over = ((names[0].max(names[1]) - width) / 2.0).max(0.0);
    let (left, top) = (MARGIN + 36.0, top + over);
    let (right, bottom) = (left + length, top + width);
    plate.rectangle([left, top], [right, bottom], ink::DOUGH);
    plate.line(&[[left, top], [left, bottom]], ink::SPINE);
    plate.line(&[[right - 1.0, top], [right - 1.0, bottom]], ink::SEAM);
    let middle = f64::midpoint(top, bottom);
    plate.text(Text::new(spine, [left - 14.0, middle]).upright().middle());
    plate.text(Text::new(open, [right + 24.0, middle]).upright().middle());
    next_roll(plate, [[left, top], [right, bottom]], block.along);
    plate.dimension_across([left, right], bottom + 22.0, &voice.length(block.size_cm[0]));
    plate.dimension_up(right + 46.0, [top, bottom], &voice.length(block.size_cm[1]));
    let column =
        right + 62.0 + lettering::width(&voice.length(block.size_cm[1]), LABEL, false);
    let foot = (bottom + over).max(bottom + 34.0 + LABEL);
    let beside = [column + 14.0, top - over];
    let fits = plate.width - beside[0] >= NOTES;
    let corner = if fits { beside } else { [MARGIN, foot + 12.0] };
    notes(plate, block, corner, voice).max(foot)
}

/// The arrow that shows which way to roll next.
fn next_roll(
    plate: &mut Plate,
    [[left, top], [right, bottom]]: [[f64; 2]; 2],
    along: bool,
) {
    let (x, y) = (f64::midpoint(left, right), f64::midpoint(top, bottom));
    if along {
        plate.double_arrow([left + 14.0, y], [right - 14.0, y]);
    } else {
        plate.double_arrow([x, top + 10.0], [x, bottom - 10.0]);
    }
}

/// What stands beside the block: the layers, and what the arrow means.
fn notes(plate: &mut Plate, block: &Block, [x, top]: [f64; 2], voice: Voice<'_>) -> f64 {
    let room = plate.width - x - 6.0;
    let top = counts(plate, block.growth, ([x, top], room), voice);
    let length = (room - 70.0).min(120.0);
    let layers = Layers { parts: block.parts, before: block.growth[0] };
    let mut y = stack(plate, layers, [x + 36.0, top], length) + 28.0;
    for line in lettering::wrap(&voice.word("next-roll"), LABEL, false, room) {
        plate.text(Text::new(line, [x, y]));
        y += LABEL * 1.2;
    }
    y
}

/// The fat layers before and after; nothing for a fold shown on plain dough, which has
/// none. Gives where the stack may begin.
fn counts(
    plate: &mut Plate,
    growth: [u64; 2],
    ([x, top], room): ([f64; 2], f64),
    voice: Voice<'_>,
) -> f64 {
    if growth == [0, 0] {
        return top + 8.0;
    }
    let [before, after] = growth.map(|count| count.to_string());
    plate.text(Text::new(voice.word("fat-layers"), [x, top + LABEL * RISE]));
    let growth = voice.fill("growth", &[("before", &before), ("after", &after)]);
    let size = (34.0 * room / lettering::width(&growth, 34.0, true).max(1.0)).min(34.0);
    plate.text(Text::new(growth, [x, top + 50.0]).size(size).bold().ink(ink::LEAD));
    top + 66.0
}
