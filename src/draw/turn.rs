//! A turn in three panels: the sheet with its fold lines, the folding from the side, the
//! block with its spine and the way to roll it next.

use crate::sheet::Fold;

use super::block::{Block, block};
use super::dimension::{Side, Tick};
use super::ink;
use super::lettering::{LABEL, RISE};
use super::panels::{fitted, in_a_row, panels, side_by_side};
use super::plate::{Form, MARGIN, Plate, Point, corners};
use super::section::{Bed, Flap, Layer, Stage, stage};
use super::voice::Voice;

/// The largest that a sheet is drawn where three panels stand side by side.
pub(super) const WIDE_ROOM: [f64; 2] = [238.0, 200.0];

/// The largest that a sheet is drawn.
pub(super) fn room(form: Form) -> [f64; 2] {
    match form {
        Form::Page => [500.0, 230.0],
        Form::Column | Form::Large | Form::Card => [form.width() - 118.0, 150.0],
    }
}

/// A sheet set on the plate: its corner and the drawing's scale.
#[derive(Clone, Copy, Debug)]
pub(super) struct Setting {
    /// The upper left corner.
    pub(super) corner: Point,
    /// Length and width on the plate.
    pub(super) size: [f64; 2],
    /// Units of the drawing in a centimetre.
    pub(super) scale: f64,
}

impl Setting {
    /// The sheet so many times as large, in the corner of a plate.
    pub(super) fn times(&self, times: f64) -> Self {
        let size = self.size.map(|side| side * times);
        Self { corner: [MARGIN, 0.0], size, scale: self.scale * times }
    }
}

/// A sheet to be marked for folding.
#[derive(Clone, Debug)]
pub(super) struct Marked {
    /// Length, which is folded, and width, cm.
    pub(super) size_cm: [f64; 2],
    /// Where it is folded, from the left end, in order, cm.
    pub(super) folds_cm: Vec<f64>,
    /// Where two ends meet that is no fold, cm.
    pub(super) meet_cm: Option<f64>,
    /// Whether it is of fat, not of dough.
    pub(super) fat: bool,
}

/// The drawing of one turn, upright: on a page its moments stand beneath the folds, on paper
/// side by side.
pub(super) fn turn(fold: &Fold, form: Form, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(form.width());
    let [wide, high] = room(form);
    // On paper a sheet to be folded is no higher than its words need.
    let high = match form {
        Form::Page => high,
        Form::Column | Form::Card => 95.0,
        // Large print has one page for it.
        Form::Large => 72.0,
    };
    let (setting, bottom) = before(&mut plate, fold, [wide, high], voice);
    let bottom = match form {
        Form::Page => folding(&mut plate, fold, &setting, (bottom + 14.0, voice)) + 26.0,
        Form::Column | Form::Large | Form::Card => {
            plate.heading(&voice.word("folding"), bottom + 12.0);
            let made = |times| cells(fold, &setting.times(times)).stages(fold.parts);
            let moments = fitted(plate.width, made);
            in_a_row(&mut plate, &moments, bottom + 34.0) + 6.0
        }
    };
    plate.height = after(&mut plate, fold, &setting, (bottom, voice));
    plate
}

/// The same with its three panels side by side, for paper.
pub(super) fn wide(fold: &Fold, voice: Voice<'_>) -> Plate {
    let [mut first, mut second, mut third] = panels();
    let (setting, bottom) = before(&mut first, fold, WIDE_ROOM, voice);
    first.height = bottom;
    let made = |times| cells(fold, &setting.times(times)).stages(fold.parts);
    let moments = fitted(second.width, made);
    second.heading(&voice.word("folding"), 6.0);
    second.height = in_a_row(&mut second, &moments, 26.0);
    third.height = after(&mut third, fold, &setting, (6.0, voice));
    side_by_side([first, second, third])
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
    let (setting, bottom) = sheet(plate, &marked, (room, 44.0), voice);
    let cells = cells(fold, &setting);
    for (cell, number) in first_flaps(fold.parts) {
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
    (top, voice): (f64, Voice<'_>),
) -> f64 {
    plate.heading(&voice.word("after"), top);
    let done = Block {
        size_cm: [fold.folded_length_cm, fold.folded_width_cm],
        scale: setting.scale,
        parts: fold.parts,
        edges: fold.edges,
        next: fold.next,
        growth: [fold.fat_layers_before, fold.fat_layers_after],
    };
    block(plate, &done, top + 36.0, voice) + 8.0
}

/// Draws a sheet with its sizes and fold lines into `room`, its dimension line at `top`;
/// gives where it lies and where it ends.
pub(super) fn sheet(
    plate: &mut Plate,
    marked: &Marked,
    (room, top): ([f64; 2], f64),
    voice: Voice<'_>,
) -> (Setting, f64) {
    let setting = set(marked.size_cm, room, top + 22.0);
    let ([left, y], [length, width]) = (setting.corner, setting.size);
    plate.dimension_across(
        [left, left + length],
        top + 6.0,
        &voice.length(marked.size_cm[0]),
    );
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
    plate.text(super::plate::Text::new(voice.unit_alone(), unit));
    (setting, y + width + depth)
}

/// Sets a sheet of a size in centimetres into `room`, centred, its upper edge at `top`.
pub(super) fn set(size_cm: [f64; 2], room: [f64; 2], top: f64) -> Setting {
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
fn first_flaps(parts: u32) -> Vec<(u32, usize)> {
    match parts {
        4 => vec![(0, 1), (3, 2)],
        3 => vec![(2, 1), (0, 2)],
        _ => vec![(0, 1)],
    }
}

/// Draws the folding beneath the sheet, aligned with it; gives where it ends.
fn folding(
    plate: &mut Plate,
    fold: &Fold,
    setting: &Setting,
    (top, voice): (f64, Voice<'_>),
) -> f64 {
    plate.heading(&voice.word("folding"), top);
    let moments = cells(fold, setting).stages(fold.parts);
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

    fn stages(&self, parts: u32) -> Vec<Stage> {
        match parts {
            4 => self.book(),
            3 => self.letter(),
            _ => vec![self.over_and_over(parts.max(2))],
        }
    }

    /// Both ends to the middle, then the left half over the right.
    fn book(&self) -> Vec<Stage> {
        let ends = Stage {
            beds: vec![self.bed([1, 3], 1, [false; 2])],
            flaps: vec![self.flap([1, 0], [1, 1], 1), self.flap([3, 4], [1, 1], 2)],
            hops: Vec::new(),
        };
        let close = Stage {
            beds: vec![self.bed([2, 3], 2, [false, true])],
            flaps: vec![self.flap([2, 1], [2, 2], 3)],
            hops: Vec::new(),
        };
        vec![ends, close]
    }

    /// The right third over the middle, then the left third over both.
    fn letter(&self) -> Vec<Stage> {
        let first = Stage {
            beds: vec![self.bed([0, 2], 1, [false; 2])],
            flaps: vec![self.flap([2, 3], [1, 1], 1)],
            hops: Vec::new(),
        };
        let second = Stage {
            beds: vec![self.bed([1, 2], 2, [false, true])],
            flaps: vec![self.flap([1, 0], [1, 2], 2)],
            hops: Vec::new(),
        };
        vec![first, second]
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
        Stage {
            beds: vec![self.bed([1, parts], 1, [false; 2])],
            flaps: vec![first],
            hops: (2..parts).map(hop).collect(),
        }
    }
}
