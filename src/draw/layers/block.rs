//! A folded block from above: its size, its spine, the side opposite, its open ends, and the
//! way to roll it next, with a quarter turn before it or without.

use crate::dough::Direction;
use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{MARGIN, Plate, Point, Text, corners};
use crate::draw::system::voice::Voice;
use crate::sheet::{EdgesFact, GrowthOf};

use super::lock_in::surface;
use super::stack::{Layers, overhang, stack};

/// The least room for the notes beside a block: with less they stand beneath it.
const NOTES: f64 = 140.0;
/// The depth of a line of lettering with the space above it.
const LINE: f64 = LABEL * 1.2;
/// The room that the sign of a quarter turn takes.
const SIGN: f64 = 52.0;

/// A folded block.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Block {
    /// Along the folded side and along the spine, cm.
    pub(in crate::draw) size_cm: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(in crate::draw) scale: f64,
    /// What its right side shows.
    pub(in crate::draw) edges: EdgesFact,
    /// Which way it is rolled next.
    pub(in crate::draw) next: Direction,
    /// Parts lying on one another.
    pub(in crate::draw) parts: u32,
    /// Fat layers in each part.
    pub(in crate::draw) fat_layers: u64,
    /// What is counted, before and after.
    pub(in crate::draw) growth: (GrowthOf, [u64; 2]),
}

/// A block or a parcel from above, with the names of its sides.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Outline {
    /// Along the folded side and along the spine, cm.
    pub(in crate::draw) size_cm: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(in crate::draw) scale: f64,
    /// The word for its left side.
    pub(in crate::draw) left: &'static str,
    /// What its right side shows.
    pub(in crate::draw) edges: EdgesFact,
    /// Which way it is rolled next.
    pub(in crate::draw) next: Direction,
    /// Whether fat lies outside.
    pub(in crate::draw) fat: bool,
}

/// Where an outline was drawn.
pub(in crate::draw) struct Drawn {
    /// The block's corners, upper left and lower right.
    pub(in crate::draw) block: [Point; 2],
    /// Where there is room beside it.
    pub(in crate::draw) beside: f64,
    /// Where it ends.
    pub(in crate::draw) foot: f64,
}

/// Draws a block at `top`; gives where it ends.
pub(in crate::draw) fn block(
    plate: &mut Plate,
    block: &Block,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    let drawn = block.outline().draw(plate, top, voice);
    let fits = plate.width - drawn.beside >= NOTES;
    let corner = if fits { [drawn.beside, top] } else { [MARGIN, drawn.foot + 12.0] };
    notes(plate, block, corner, voice).max(drawn.foot)
}

impl Outline {
    /// Draws it beneath `top`: the open ends are named above and below it, the spine and the
    /// side opposite upright beside it.
    pub(in crate::draw) fn draw(
        &self,
        plate: &mut Plate,
        top: f64,
        voice: Voice<'_>,
    ) -> Drawn {
        let [length, width] = self.size_cm.map(|side| side * self.scale);
        let (spine, opposite) = (voice.word(self.left), edge_word(self.edges, voice));
        let names = [&spine, &opposite].map(|name| lettering::width(name, LABEL, false));
        let over = ((names[0].max(names[1]) - width) / 2.0).max(0.0);
        let open = voice.word("open-end");
        let shift = (lettering::width(&open, LABEL, false) - length).max(0.0) / 2.0;
        let corner = [MARGIN + 36.0_f64.max(shift), top + LINE + over];
        let block = self.laid(plate, corner, spine);
        let [[_, top], [right, bottom]] = block;
        let middle = f64::midpoint(top, bottom);
        plate.text(Text::new(opposite, [right + 28.0, middle]).upright().middle());
        self.next_roll(plate, block);
        let foot = self.ends(plate, (block, over), voice);
        let up = voice.length(self.size_cm[1]);
        plate.dimension_up(right + 50.0, [top, bottom], &up);
        let beside = right + 80.0 + lettering::width(&up, LABEL, false);
        Drawn { block, beside, foot }
    }

    /// The open ends named above and below it, so far from it as its sides' names reach beyond,
    /// and its length; gives where that ends.
    fn ends(
        &self,
        plate: &mut Plate,
        ([[left, top], [right, bottom]], over): ([Point; 2], f64),
        voice: Voice<'_>,
    ) -> f64 {
        let (x, open) = (f64::midpoint(left, right), voice.word("open-end"));
        for y in [top - over - 10.0, bottom + over + 6.0 + LABEL * RISE] {
            plate.text(Text::new(&open, [x, y]).middle());
        }
        let foot = bottom + over + LINE + 6.0;
        plate.dimension_across(
            [left, right],
            foot + 12.0,
            &voice.length(self.size_cm[0]),
        );
        foot + 24.0 + LABEL
    }

    /// How wide it is with the names of its sides beside its sheet.
    pub(in crate::draw) fn wide_beside(&self, voice: Voice<'_>) -> f64 {
        let opposite = opposite(self.edges, voice);
        let widths = opposite.iter().map(|line| lettering::width(line, LABEL, false));
        let length = self.size_cm[0] * self.scale;
        self.indent(voice) + length + OUT + widths.fold(0.0, f64::max)
    }

    /// What its left side's name, and the names of its ends, take to the left of it.
    fn indent(&self, voice: Voice<'_>) -> f64 {
        let open = lettering::width(&voice.word("open-end"), LABEL, false);
        let beyond = (open - self.size_cm[0] * self.scale) / 2.0;
        beyond.max(14.0 + LABEL)
    }

    /// Draws it with its upper left corner at `corner`, beside the sheet that it is folded from,
    /// which has the length of its other side; its right side is named level. Gives its corners
    /// and where it ends.
    pub(in crate::draw) fn draw_beside(
        &self,
        plate: &mut Plate,
        [x, top]: Point,
        voice: Voice<'_>,
    ) -> Drawn {
        let width = self.size_cm[1] * self.scale;
        let spine = voice.word(self.left);
        let over = ((lettering::width(&spine, LABEL, false) - width) / 2.0).max(0.0);
        let corner = [x + self.indent(voice), top + LINE + over];
        let block = self.laid(plate, corner, spine);
        let [[_, top], [right, bottom]] = block;
        let middle = f64::midpoint(top, bottom);
        let opposite = opposite(self.edges, voice);
        let first = middle + 0.36 * LABEL - (opposite.len() as f64 - 1.0) * LINE / 2.0;
        for (at, line) in opposite.into_iter().enumerate() {
            plate.text(Text::new(line, [right + OUT, first + at as f64 * LINE]));
        }
        self.next_roll(plate, block);
        let foot = self.ends(plate, (block, over), voice);
        Drawn { block, beside: x + self.wide_beside(voice), foot }
    }

    /// Its surface and its sides with the spine named, its upper left corner at `corner`; gives
    /// its corners.
    fn laid(&self, plate: &mut Plate, corner: Point, spine: String) -> [Point; 2] {
        let [length, width] = self.size_cm.map(|side| side * self.scale);
        let block = [corner, [corner[0] + length, corner[1] + width]];
        surface(plate, &corners(block[0], block[1]), self.fat);
        self.sides(plate, block);
        let middle = f64::midpoint(block[0][1], block[1][1]);
        plate.text(Text::new(spine, [corner[0] - 14.0, middle]).upright().middle());
        block
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

/// How far from a block the name of its right side stands.
const OUT: f64 = 16.0;

/// What its right side shows, in lines that stand level beside it.
fn opposite(edges: EdgesFact, voice: Voice<'_>) -> Vec<String> {
    lettering::wrap(&edge_word(edges, voice), LABEL, false, 96.0)
}

/// What a side shows: `two folds`, `fold, loose edge`.
pub(in crate::draw) fn edge_word(edges: EdgesFact, voice: Voice<'_>) -> String {
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
    let y = block.layers(plate, [x, top], voice) + 28.0;
    let room = plate.width - x - 6.0;
    block.go_on(plate, ([x, y], room), voice)
}

impl Block {
    /// Its outline from above.
    pub(in crate::draw) fn outline(&self) -> Outline {
        Outline {
            size_cm: self.size_cm,
            scale: self.scale,
            left: "spine",
            edges: self.edges,
            next: self.next,
            fat: false,
        }
    }

    /// How many layers it has, and its parts on one another; gives where they end.
    pub(in crate::draw) fn layers(
        &self,
        plate: &mut Plate,
        [x, top]: Point,
        voice: Voice<'_>,
    ) -> f64 {
        let room = plate.width - x - 6.0;
        let top = counts(plate, self.growth, ([x, top], room), voice);
        let bends = overhang(self.parts) + 2.0;
        let length = (room - 2.0 * bends).min(120.0);
        let layers = Layers { parts: self.parts, before: self.fat_layers };
        stack(plate, layers, [x + bends, top], length)
    }

    /// How to go on: which side is stretched, along the spine or across it.
    pub(in crate::draw) fn go_on(
        &self,
        plate: &mut Plate,
        at: (Point, f64),
        voice: Voice<'_>,
    ) -> f64 {
        let side = usize::from(self.next != Direction::SameWay);
        let side = voice.length(self.size_cm[side]);
        next_note(plate, (self.next, &side), at, voice)
    }
}

/// How to go on: the sign of a quarter turn where there is one, and which side is stretched.
/// Gives where it ends.
pub(in crate::draw) fn next_note(
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

/// The fat layers before and after, or the plies where there are none. Gives where the stack
/// may begin.
fn counts(
    plate: &mut Plate,
    (counted, growth): (GrowthOf, [u64; 2]),
    ([x, top], room): ([f64; 2], f64),
    voice: Voice<'_>,
) -> f64 {
    let [before, after] = growth.map(|count| count.to_string());
    let key = match counted {
        GrowthOf::Fat => "fat-layers",
        GrowthOf::Plies => "plies",
    };
    let mut line_y = top;
    for line in lettering::wrap(&voice.word(key), LABEL, false, room) {
        plate.text(Text::new(line, [x, line_y + LABEL * RISE]));
        line_y += LINE;
    }
    // One line is what the rest is set beneath.
    let top = top.max(line_y - LINE);
    let growth = voice.fill("growth", &[("before", &before), ("after", &after)]);
    let size = 34.0 * room / lettering::width(&growth, 34.0, true).max(1.0);
    let size = size.clamp(LABEL, 34.0);
    plate.text(Text::new(growth, [x, top + 50.0]).size(size).bold().ink(ink::LEAD));
    top + 66.0
}
