//! A folded block from above: its size, its spine, the side opposite, its open ends, and the
//! way to roll it next, with a quarter turn before it or without.

use crate::dough::Direction;
use crate::sheet::EdgesFact;

use super::ink;
use super::lettering::{self, LABEL, RISE};
use super::lock_in::surface;
use super::plate::{MARGIN, Plate, Point, Text, corners};
use super::stack::{Layers, overhang, stack};
use super::voice::Voice;

/// The least room for the notes beside a block: with less they stand beneath it.
const NOTES: f64 = 140.0;
/// The depth of a line of lettering with the space above it.
const LINE: f64 = LABEL * 1.2;
/// The room that the sign of a quarter turn takes.
const SIGN: f64 = 52.0;

/// A folded block.
#[derive(Clone, Copy, Debug)]
pub(super) struct Block {
    /// Along the folded side and along the spine, cm.
    pub(super) size_cm: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(super) scale: f64,
    /// What its right side shows.
    pub(super) edges: EdgesFact,
    /// Which way it is rolled next.
    pub(super) next: Direction,
    /// Parts lying on one another.
    pub(super) parts: u32,
    /// Fat layers before and after.
    pub(super) growth: [u64; 2],
}

/// A block or a parcel from above, with the names of its sides.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outline {
    /// Along the folded side and along the spine, cm.
    pub(super) size_cm: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(super) scale: f64,
    /// The word for its left side.
    pub(super) left: &'static str,
    /// What its right side shows.
    pub(super) edges: EdgesFact,
    /// Which way it is rolled next.
    pub(super) next: Direction,
    /// Whether fat lies outside.
    pub(super) fat: bool,
}

/// Where an outline was drawn.
pub(super) struct Drawn {
    /// The block's corners, upper left and lower right.
    pub(super) block: [Point; 2],
    /// Where there is room beside it.
    pub(super) beside: f64,
    /// Where it ends.
    pub(super) foot: f64,
}

/// Draws a block at `top`; gives where it ends.
pub(super) fn block(plate: &mut Plate, block: &Block, top: f64, voice: Voice<'_>) -> f64 {
    let outline = Outline {
        size_cm: block.size_cm,
        scale: block.scale,
        left: "spine",
        edges: block.edges,
        next: block.next,
        fat: false,
    };
    let drawn = outline.draw(plate, top, voice);
    let fits = plate.width - drawn.beside >= NOTES;
    let corner = if fits { [drawn.beside, top] } else { [MARGIN, drawn.foot + 12.0] };
    notes(plate, block, corner, voice).max(drawn.foot)
}

impl Outline {
    /// Draws it beneath `top`: the open ends are named above and below it, the spine and the
    /// side opposite upright beside it.
    pub(super) fn draw(&self, plate: &mut Plate, top: f64, voice: Voice<'_>) -> Drawn {
        let [length, width] = self.size_cm.map(|side| side * self.scale);
        let (spine, opposite) = (voice.word(self.left), edge_word(self.edges, voice));
        let names = [&spine, &opposite].map(|name| lettering::width(name, LABEL, false));
        let over = ((names[0].max(names[1]) - width) / 2.0).max(0.0);
        let open = voice.word("open-end");
        let shift = (lettering::width(&open, LABEL, false) - length).max(0.0) / 2.0;
        let (left, top) = (MARGIN + 36.0_f64.max(shift), top + LINE + over);
        let (right, bottom) = (left + length, top + width);
        surface(plate, &corners([left, top], [right, bottom]), self.fat);
        let block = [[left, top], [right, bottom]];
        self.sides(plate, block);
        let (x, middle) = (f64::midpoint(left, right), f64::midpoint(top, bottom));
        plate.text(Text::new(spine, [left - 14.0, middle]).upright().middle());
        plate.text(Text::new(opposite, [right + 28.0, middle]).upright().middle());
        for y in [top - over - 10.0, bottom + over + 6.0 + LABEL * RISE] {
            plate.text(Text::new(&open, [x, y]).middle());
        }
        self.next_roll(plate, block);
        let foot = bottom + over + LINE + 6.0;
        let [across, up] = self.size_cm.map(|side| voice.length(side));
        plate.dimension_across([left, right], foot + 12.0, &across);
        plate.dimension_up(right + 50.0, [top, bottom], &up);
        let beside = right + 80.0 + lettering::width(&up, LABEL, false);
        Drawn { block, beside, foot: foot + 24.0 + LABEL }
    }

    /// The spine heavy on the left; on the right a line for each fold, a dotted one for loose
    /// edges; dotted near and far, where the layers lie open.
    fn sides(&self, plate: &mut Plate, [[left, top], [right, bottom]]: [Point; 2]) {
        for y in [top + 1.0, bottom - 1.0] {
            plate.line(&[[left, y], [right, y]], ink::SEAM);
        }
        plate.line(&[[left, top], [left, bottom]], ink::SPINE);
        if self.edges.opposite_folds > 0 {
            plate.line(&[[right, top], [right, bottom]], ink::FOLDED);
        }
        if self.edges.opposite_ends > 0 {
            let x = if self.edges.opposite_folds > 0 { right + 7.0 } else { right - 1.0 };
            plate.line(&[[x, top], [x, bottom]], ink::SEAM);
        }
    }

    /// The arrow that shows which way to roll next: along the spine after a quarter turn,
    /// across it the same way as before.
    fn next_roll(&self, plate: &mut Plate, [[left, top], [right, bottom]]: [Point; 2]) {
        let (x, y) = (f64::midpoint(left, right), f64::midpoint(top, bottom));
        match self.next {
            Direction::SameWay => plate.double_arrow([left + 14.0, y], [right - 14.0, y]),
            Direction::QuarterTurn | Direction::Any | Direction::Onward => {
                plate.double_arrow([x, top + 10.0], [x, bottom - 10.0]);
            }
        }
    }
}

/// What a side shows: `two folds`, `fold, loose edge`.
pub(super) fn edge_word(edges: EdgesFact, voice: Voice<'_>) -> String {
    let of = |count: u32, key: &str| {
        let (digits, number) = (count.to_string(), voice.count(u64::from(count)));
        let values = [("count", &*digits), ("number", &*number)];
        (count > 0).then(|| voice.fill(key, &values))
    };
    let folds = of(edges.opposite_folds, "edge-folds");
    let ends = of(edges.opposite_ends, "edge-ends");
    voice.words.list(&folds.into_iter().chain(ends).collect::<Vec<_>>())
}

/// What stands beside the block: the layers, and how to go on.
fn notes(plate: &mut Plate, block: &Block, [x, top]: [f64; 2], voice: Voice<'_>) -> f64 {
    let room = plate.width - x - 6.0;
    let top = counts(plate, block.growth, ([x, top], room), voice);
    let bends = overhang(block.parts) + 2.0;
    let length = (room - 2.0 * bends).min(120.0);
    let layers = Layers { parts: block.parts, before: block.growth[0] };
    let y = stack(plate, layers, [x + bends, top], length) + 28.0;
    // The side that is stretched: along the spine, or across it.
    let side = usize::from(block.next != Direction::SameWay);
    let side = voice.length(block.size_cm[side]);
    next_note(plate, (block.next, &side), ([x, y], room), voice)
}

/// How to go on: the sign of a quarter turn where there is one, and which side is stretched.
/// Gives where it ends.
pub(super) fn next_note(
    plate: &mut Plate,
    (next, side): (Direction, &str),
    ([x, y], room): (Point, f64),
    voice: Voice<'_>,
) -> f64 {
    let key = match next {
        Direction::QuarterTurn => "next-quarter-turn",
        Direction::SameWay => "next-same-way",
        Direction::Any | Direction::Onward => "next-any-way",
    };
    let signed = next == Direction::QuarterTurn;
    if signed {
        plate.quarter_turn([x + 4.0, y + 26.0], 30.0);
    }
    let beside = if signed && room - SIGN >= 110.0 { SIGN } else { 0.0 };
    let mut line_y = y + if signed && beside == 0.0 { SIGN } else { LABEL * 0.5 };
    let text = voice.fill(key, &[("side", side)]);
    for line in lettering::wrap(&text, LABEL, false, room - beside) {
        plate.text(Text::new(line, [x + beside, line_y]));
        line_y += LINE;
    }
    line_y.max(y + if signed { SIGN - 10.0 } else { 0.0 })
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
    let size = 34.0 * room / lettering::width(&growth, 34.0, true).max(1.0);
    let size = size.clamp(LABEL, 34.0);
    plate.text(Text::new(growth, [x, top + 50.0]).size(size).bold().ink(ink::LEAD));
    top + 66.0
}
