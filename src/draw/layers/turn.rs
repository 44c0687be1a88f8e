//! A turn in three panels: the sheet with its fold lines, the folding from the side, the
//! block with its spine and the way to roll it next.

use crate::draw::system::dimension::{Side, Tick, beneath_line};
use crate::draw::system::ink;
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, corners};
use crate::draw::system::voice::Voice;
use crate::sheet::{Fold, Folding};

use super::block::{Block, Outline, block};
use super::panels::{fitted, in_a_row};
use super::section::{Bed, Flap, Layer, Stage, stage};

/// The largest that a sheet to be folded is drawn: on paper no higher than its words need, in
/// large print so that all of it stands on one page.
pub(in crate::draw) fn room(form: Format) -> [f64; 2] {
    let wide = form.width() - 118.0;
    match form {
        Format::Page => [500.0, 230.0],
        Format::Column | Format::Card => [wide, 95.0],
        Format::Large => [wide, 72.0],
    }
}

/// A sheet set on the plate: its corner and the drawing's scale.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct Setting {
    /// The upper left corner.
    pub(in crate::draw) corner: Point,
    /// Length and width on the plate.
    pub(in crate::draw) size: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(in crate::draw) scale: f64,
}

impl Setting {
    /// The sheet so many times as large, in the corner of a plate.
    pub(in crate::draw) fn times(&self, times: f64) -> Self {
        let size = self.size.map(|side| side * times);
        Self { corner: [MARGIN, 0.0], size, scale: self.scale * times }
    }
}

/// A sheet to be marked for folding.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Marked {
    /// Length, which is folded, and width, cm.
    pub(in crate::draw) size_cm: [f64; 2],
    /// Where it is folded, from the left end, in order, cm.
    pub(in crate::draw) folds_cm: Vec<f64>,
    /// Where two ends meet that is no fold, cm.
    pub(in crate::draw) meet_cm: Option<f64>,
    /// Whether it is of fat, not of dough.
    pub(in crate::draw) fat: bool,
}

/// The drawing of one turn, upright: on a page its moments stand beneath the folds, on paper
/// side by side; in a column the block stands beside its sheet.
pub(in crate::draw) fn turn(fold: &Fold, form: Format, voice: Voice<'_>) -> Plate {
    if form == Format::Column {
        return in_a_column(fold, voice);
    }
    let mut plate = Plate::new(form.width());
    let (setting, bottom) = before(&mut plate, fold, room(form), voice);
    let bottom = match form {
        Format::Page => folding(&mut plate, fold, &setting, bottom + 14.0, voice) + 26.0,
        Format::Column | Format::Large | Format::Card => {
            plate.heading(&voice.word("folding"), bottom + 12.0);
            let made = |times| cells(fold, &setting.times(times)).stages(fold.turn);
            let moments = fitted(plate.width, made);
            in_a_row(&mut plate, &moments, bottom + 34.0) + 6.0
        }
    };
    plate.height = after(&mut plate, fold, &setting, bottom, voice);
    plate
}

/// The same for a column of a sheet: the block beside the sheet, the layers beside the folding.
fn in_a_column(fold: &Fold, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(Format::Column.width());
    let block = |scale| Block { scale, ..folded(fold) };
    let size_cm = [fold.length_cm, fold.width_cm];
    let outline = |scale| block(scale).outline();
    let (room, x) = beside(&plate, size_cm, &outline, voice);
    let (setting, bottom) = before(&mut plate, fold, room, voice);
    plate.heading_at(&voice.word("after"), [x, 6.0]);
    let block = block(setting.scale);
    let drawn = block.outline().draw_beside(&mut plate, [x, 36.0], voice);
    let top = bottom.max(drawn.foot);
    plate.heading(&voice.word("folding"), top);
    let mut moments = Plate::new(plate.width - LAYERS);
    let made = |times| cells(fold, &setting.times(times)).stages(fold.turn);
    let stages = fitted(moments.width, made);
    let bottom = in_a_row(&mut moments, &stages, top + 22.0);
    plate.lay(moments, [0.0, 0.0]);
    let counted = block.layers(&mut plate, [LAYERS_AT, top + 4.0], voice);
    let top = bottom.max(counted + 10.0);
    let room = plate.width - 2.0 * MARGIN;
    plate.height = block.go_on(&mut plate, ([MARGIN, top], room), voice) + 4.0;
    plate
}

/// What the layers take beside a folding in a column, and where they begin.
pub(in crate::draw) const LAYERS: f64 = 186.0;
pub(in crate::draw) const LAYERS_AT: f64 = Format::Column.width() - LAYERS + 6.0;

/// The largest room for a sheet beside which its block has room too, and where the block
/// begins. `outline` is the block at a scale.
pub(in crate::draw) fn beside(
    plate: &Plate,
    size_cm: [f64; 2],
    outline: &impl Fn(f64) -> Outline,
    voice: Voice<'_>,
) -> ([f64; 2], f64) {
    let high = room(Format::Column)[1];
    // The dimension line of its side, the length, and the space between the two.
    let side = 26.0 + lettering::width(&voice.length(size_cm[1]), LABEL, false) + 18.0;
    let tried = |long: f64| {
        let setting = set(size_cm, [long, high], 0.0);
        let x = MARGIN + setting.size[0] + side;
        let fits = x + outline(setting.scale).wide_beside(voice) + 4.0 <= plate.width;
        fits.then_some(([setting.size[0], high], x))
    };
    let all = (0..24).map(|step| 350.0 - 10.0 * f64::from(step));
    let least = ([110.0, high], MARGIN + 110.0 + side);
    all.into_iter().find_map(tried).unwrap_or(least)
}

/// The block that a fold makes, as large as it is.
fn folded(fold: &Fold) -> Block {
    Block {
        size_cm: [fold.folded_length_cm, fold.folded_width_cm],
        scale: 1.0,
        parts: fold.parts,
        edges: fold.edges,
        next: fold.next,
        fat_layers: fold.fat_layers_before,
        growth: fold.growth(),
    }
}

/// The first panel: the sheet with its folds and what moves first.
fn before(
    plate: &mut Plate,
    fold: &Fold,
    room: [f64; 2],
    voice: Voice<'_>,
) -> (Setting, f64) {
    plate.heading(&voice.word("before"), 6.0);
    let marked = Marked {
        size_cm: [fold.length_cm, fold.width_cm],
        folds_cm: fold.folds.iter().map(|mark| mark.at_cm).collect(),
        meet_cm: fold.meet.as_ref().map(|mark| mark.at_cm),
        fat: false,
    };
    let (setting, bottom) = sheet(plate, &marked, room, 44.0, voice);
    let cells = cells(fold, &setting);
    for (cell, number) in first_flaps(fold.turn) {
        let x = f64::midpoint(cells.x(cell), cells.x(cell + 1));
        plate.ring([x, setting.corner[1] + setting.size[1] / 2.0], number);
    }
    (setting, bottom)
}

/// The last panel: the block.
fn after(
    plate: &mut Plate,
    fold: &Fold,
    setting: &Setting,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    plate.heading(&voice.word("after"), top);
    let done = Block { scale: setting.scale, ..folded(fold) };
    block(plate, &done, top + 36.0, voice) + 8.0
}

/// Draws a sheet with its sizes and fold lines into `room`, its dimension line at `top`;
/// gives where it lies and where it ends.
pub(in crate::draw) fn sheet(
    plate: &mut Plate,
    marked: &Marked,
    room: [f64; 2],
    top: f64,
    voice: Voice<'_>,
) -> (Setting, f64) {
    let long = voice.length(marked.size_cm[0]);
    let setting = beneath_its_length(marked.size_cm, &long, room, top);
    let ([left, y], [length, width]) = (setting.corner, setting.size);
    plate.dimension_across([left, left + length], top + 6.0, &long);
    let outline = corners(setting.corner, [left + length, y + width]);
    super::lock_in::surface(plate, &outline, marked.fat);
    plate.dimension_up(
        left + length + 16.0,
        [y, y + width],
        &voice.length(marked.size_cm[1]),
    );
    let upright = |at_cm: f64| {
        let x = left + at_cm * setting.scale;
        [[x, y], [x, y + width]]
    };
    marked.folds_cm.iter().for_each(|at| plate.line(&upright(*at), ink::FOLD));
    let meet = marked.meet_cm.filter(|meet| !marked.has_fold_at(*meet));
    meet.into_iter().for_each(|at| plate.line(&upright(at), ink::GHOST));
    let depth = plate.ruler(&ticks(&setting, marked, voice), y + width, Side::Below);
    let unit = [left + length + 20.0, y + width + 12.0 + LABEL * RISE];
    plate.text(crate::draw::system::plate::Text::new(voice.unit_alone(), unit));
    (setting, y + width + depth)
}

/// Sets a sheet into `room` beneath the dimension line of its length, which stands a little below
/// `top`.
pub(in crate::draw) fn beneath_its_length(
    size_cm: [f64; 2],
    long: &str,
    room: [f64; 2],
    top: f64,
) -> Setting {
    let setting = set(size_cm, room, top + 22.0);
    let label = beneath_line(setting.size[0], long);
    Setting { corner: [setting.corner[0], setting.corner[1] + label], ..setting }
}

/// Sets a sheet of a size in centimetres into `room`, centred, its upper edge at `top`.
pub(in crate::draw) fn set(size_cm: [f64; 2], room: [f64; 2], top: f64) -> Setting {
    let scale = (room[0] / size_cm[0].max(0.1)).min(room[1] / size_cm[1].max(0.1));
    let size = [size_cm[0] * scale, size_cm[1] * scale];
    Setting { corner: [MARGIN + (room[0] - size[0]) / 2.0, top], size, scale }
}

impl Marked {
    fn has_fold_at(&self, at_cm: f64) -> bool {
        self.folds_cm.iter().any(|fold| (fold - at_cm).abs() < 0.01)
    }
}

/// The running distances of the folds and of where ends meet, from nought at the left
/// corner.
fn ticks(setting: &Setting, marked: &Marked, voice: Voice<'_>) -> Vec<Tick> {
    let meet = marked.meet_cm.filter(|meet| !marked.has_fold_at(*meet));
    let mut places: Vec<f64> =
        [0.0].into_iter().chain(marked.folds_cm.iter().copied()).chain(meet).collect();
    places.sort_by(f64::total_cmp);
    let tick = |at_cm: f64| Tick {
        at: setting.corner[0] + at_cm * setting.scale,
        text: voice.bare_length(at_cm),
    };
    places.into_iter().map(tick).collect()
}

/// Which parts of the flat sheet move first, and their number in the order.
fn first_flaps(turn: Folding) -> Vec<(u32, usize)> {
    match turn {
        Folding::Book => vec![(0, 1), (3, 2)],
        Folding::Letter => vec![(2, 1), (0, 2)],
        Folding::Half | Folding::Parts(_) => vec![(0, 1)],
    }
}

/// Draws the folding beneath the sheet, aligned with it; gives where it ends.
fn folding(
    plate: &mut Plate,
    fold: &Fold,
    setting: &Setting,
    top: f64,
    voice: Voice<'_>,
) -> f64 {
    plate.heading(&voice.word("folding"), top);
    let moments = cells(fold, setting).stages(fold.turn);
    moments.iter().fold(top + 20.0, |bottom, moment| stage(plate, moment, bottom) + 14.0)
}

fn cells(fold: &Fold, setting: &Setting) -> Cells {
    let folds = fold.folds.iter().map(|mark| mark.at_cm);
    let ends = [0.0].into_iter().chain(folds).chain([fold.length_cm]);
    Cells {
        ends: ends.map(|at| setting.corner[0] + at * setting.scale).collect(),
        part: Layer::Layered(fold.fat_layers_before),
    }
}

/// The parts of a sheet seen from the side.
struct Cells {
    /// Where they begin, from left to right, and where the last one ends.
    ends: Vec<f64>,
    part: Layer,
}

impl Cells {
    fn x(&self, end: u32) -> f64 {
        let last = self.ends.last().copied().unwrap_or_default();
        self.ends.get(end as usize).copied().unwrap_or(last)
    }

    fn bed(&self, span: [u32; 2], layers: usize, closed: [bool; 2]) -> Bed {
        let span = span.map(|cell| self.x(cell));
        Bed { span, layers: vec![self.part; layers], closed }
    }

    fn flap(
        &self,
        [hinge, end]: [u32; 2],
        [layers, onto]: [usize; 2],
        number: usize,
    ) -> Flap {
        let (hinge, end) = (self.x(hinge), self.x(end));
        let reach = if (end - hinge).abs() > 100.0 { 0.9 } else { 0.75 };
        Flap { hinge, end, layers: vec![self.part; layers], onto, reach, number }
    }

    fn stages(&self, turn: Folding) -> Vec<Stage> {
        match turn {
            Folding::Book => self.book(),
            Folding::Letter => self.letter(),
            Folding::Half => vec![self.over_and_over(2)],
            Folding::Parts(parts) => vec![self.over_and_over(parts.max(2))],
        }
    }

    /// Both ends to the middle, then the left half over the right.
    fn book(&self) -> Vec<Stage> {
        let ends = vec![self.flap([1, 0], [1, 1], 1), self.flap([3, 4], [1, 1], 2)];
        let close = vec![self.flap([2, 1], [2, 2], 3)];
        vec![
            Stage::onto(self.bed([1, 3], 1, [false; 2]), ends),
            Stage::onto(self.bed([2, 3], 2, [false, true]), close),
        ]
    }

    /// The right third over the middle, then the left third over both.
    fn letter(&self) -> Vec<Stage> {
        let (right, left) = (self.flap([2, 3], [1, 1], 1), self.flap([1, 0], [1, 2], 2));
        vec![
            Stage::onto(self.bed([0, 2], 1, [false; 2]), vec![right]),
            Stage::onto(self.bed([1, 2], 2, [false, true]), vec![left]),
        ]
    }

    /// The left part over the next, and on to the right end.
    fn over_and_over(&self, parts: u32) -> Stage {
        let mut first = self.flap([1, 0], [1, 1], 1);
        if parts > 2 {
            first.reach = 0.5;
        }
        let hop = |number: u32| {
            let width = self.x(number + 1) - self.x(number);
            let from = self.x(number) - 0.3 * width;
            (from, self.x(number) + 0.5 * width, number as usize)
        };
        let hops = (2..parts).map(hop).collect();
        Stage { hops, ..Stage::onto(self.bed([1, parts], 1, [false; 2]), vec![first]) }
    }
}
