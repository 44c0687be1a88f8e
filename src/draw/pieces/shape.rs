//! Shaping, stage by stage, from the piece that was really cut: every stage to scale, with
//! its number; the words beneath have the same numbers.

use crate::dough::shaping::{Does, Frame, Mark};
use crate::measure::Label;
use crate::sheet::ShapeFact;

use crate::draw::system::ink;
use crate::draw::system::plate::{MARGIN, Plate, Point, RING, WIDTH};
use crate::draw::system::trace::Trace;
use crate::draw::system::voice::Voice;

/// The tallest that a stage is drawn on a page, and what its lengths take beside it.
const TALLEST: f64 = 220.0;
const BESIDE: f64 = 92.0;
/// How much larger than to the common scale a small stage may be drawn.
const LARGER: f64 = 2.5;
/// What a stage takes beneath it for its length.
const BENEATH: f64 = 54.0;
/// Stages beside each other.
const COLUMNS: usize = 2;

/// What the number of a stage takes: on a page above it, on paper to the left of it.
struct Number {
    above: f64,
    left: f64,
}

impl Number {
    fn on(width: f64) -> Self {
        if width < WIDTH {
            Self { above: 6.0, left: 2.0 * RING + 10.0 }
        } else {
            Self { above: 40.0, left: 0.0 }
        }
    }
}

/// The drawing of one shaping, two stages side by side.
pub(in crate::draw) fn shape(fact: &ShapeFact, width: f64, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(width);
    let cell = (width - 2.0 * MARGIN) / COLUMNS as f64;
    let tallest = if width < WIDTH { 0.55 * TALLEST } else { TALLEST };
    let numbers = Number::on(width);
    let room = [(cell - BESIDE - numbers.left).min(190.0), tallest];
    let fit = |frame: &Frame| scale_to_fit(frame, room);
    let common = fact.frames.iter().map(fit).fold(f64::INFINITY, f64::min);
    let mut top = 4.0;
    let rows = fact.frames.chunks(COLUMNS);
    for (row, frames) in rows.enumerate() {
        let scales: Vec<f64> =
            frames.iter().map(|frame| fit(frame).min(LARGER * common)).collect();
        let high = frames
            .iter()
            .zip(&scales)
            .map(|(frame, scale)| frame.size()[1] * scale)
            .fold(0.0, f64::max);
        for (column, (frame, scale)) in frames.iter().zip(&scales).enumerate() {
            let left = MARGIN + cell * column as f64;
            let number = row * COLUMNS + column + 1;
            let middle = high - frame.size()[1] * scale;
            let corner = [left + numbers.left, top + numbers.above + middle / 2.0];
            let place = OnPlate::new(frame, corner, *scale);
            plate.ring([left + RING, top + RING + 2.0], number);
            stage(&mut plate, frame, &place, voice);
        }
        top += numbers.above + high.max(2.0 * RING) + BENEATH;
    }
    plate.height = crate::draw::layers::roll::lines(
        &mut plate,
        &numbered(fact, voice),
        [MARGIN, top],
    ) + 4.0;
    plate
}

fn scale_to_fit(frame: &Frame, room: [f64; 2]) -> f64 {
    let [width, height] = frame.size().map(|side| side.max(0.1));
    (room[0] / width).min(room[1] / height)
}

/// Where a stage lies on the plate.
#[derive(Clone, Copy, Debug)]
pub(in crate::draw) struct OnPlate {
    corner: Point,
    low: Point,
    high: Point,
    scale: f64,
}

impl OnPlate {
    /// The stage with its far left corner at `corner`.
    pub(in crate::draw) fn new(frame: &Frame, corner: Point, scale: f64) -> Self {
        let [low, high] = frame.bounds();
        Self { corner, low, high, scale }
    }

    /// The stage with its middle at `middle`.
    pub(in crate::draw) fn centred(frame: &Frame, middle: Point, scale: f64) -> Self {
        let [width, height] = frame.size();
        let corner = [middle[0] - width * scale / 2.0, middle[1] - height * scale / 2.0];
        Self::new(frame, corner, scale)
    }

    fn at(&self, [x, y]: [f64; 2]) -> Point {
        [
            self.corner[0] + (x - self.low[0]) * self.scale,
            self.corner[1] + (self.high[1] - y) * self.scale,
        ]
    }

    fn all(&self, points: &[[f64; 2]]) -> Vec<Point> {
        points.iter().map(|at| self.at(*at)).collect()
    }
}

/// One stage with its lengths.
fn stage(plate: &mut Plate, frame: &Frame, place: &OnPlate, voice: Voice<'_>) {
    frame.marks.iter().for_each(|mark| paint(plate, mark, place));
    let foot = place.at(place.low)[1];
    if let Some([from, to]) = frame.across {
        let ends = [from, to].map(|x| place.at([x, 0.0])[0]);
        plate.dimension_across(ends, foot + 20.0, &voice.length(to - from));
    }
    if let Some([near, far]) = frame.up {
        let ends = [far, near].map(|y| place.at([0.0, y])[1]);
        let right = place.at(place.high)[0];
        plate.dimension_up(right + 14.0, ends, &voice.length(far - near));
    }
}

/// One mark as it is painted.
fn paint(plate: &mut Plate, mark: &Mark, place: &OnPlate) {
    match mark {
        Mark::Dough(at) => plate.polygon(&place.all(at), ink::DOUGH),
        Mark::Flap(at) => plate.polygon(&place.all(at), ink::OTHER),
        Mark::Strand(one, other) => {
            let back: Vec<[f64; 2]> = other.iter().rev().copied().collect();
            plate.polygon(&place.all(&[one.as_slice(), &back].concat()), ink::STRAND);
            plate.line(&place.all(one), ink::EDGE);
            plate.line(&place.all(other), ink::EDGE);
        }
        Mark::Edge(at) => plate.line(&place.all(at), ink::EDGE),
        Mark::Fold(at) => plate.line(&place.all(at), ink::FOLD),
        Mark::Cut(at) => plate.line(&place.all(at), ink::CUT),
        Mark::Seam(at) => plate.line(&place.all(at), ink::SEAM),
        Mark::Spine(at) => plate.line(&place.all(at), ink::SPINE),
        Mark::Ghost(at) => plate.trace(Trace::closed(&place.all(at)), ink::GHOST),
        Mark::Filling(at) => plate.polygon(&place.all(at), ink::STICK),
        Mark::Tin(at) => plate.polygon(&place.all(at), ink::TRAY),
        Mark::Arrow(from, to) => plate.arrow(place.at(*from), place.at(*to)),
        Mark::Number(at, number) => plate.ring(place.at(*at), *number),
    }
}

/// A piece as it lies, without movements and numbers: for a tray.
pub(in crate::draw) fn lying(plate: &mut Plate, frame: &Frame, place: &OnPlate) {
    let thin = |mark: &Mark| match mark {
        // Heavy lines would cover a small piece.
        Mark::Seam(at) | Mark::Spine(at) => Mark::Edge(at.clone()),
        Mark::Dough(_)
        | Mark::Flap(_)
        | Mark::Strand(..)
        | Mark::Edge(_)
        | Mark::Fold(_)
        | Mark::Cut(_)
        | Mark::Ghost(_)
        | Mark::Filling(_)
        | Mark::Tin(_)
        | Mark::Arrow(..)
        | Mark::Number(..) => mark.clone(),
    };
    frame.lying().marks.iter().for_each(|mark| paint(plate, &thin(mark), place));
}

/// What is done in each stage, with its number.
fn numbered(fact: &ShapeFact, voice: Voice<'_>) -> Vec<String> {
    let said = captions(fact, voice);
    said.into_iter().enumerate().map(|(at, text)| format!("{}  {text}", at + 1)).collect()
}

/// What is done in each stage.
pub(in crate::draw) fn captions(fact: &ShapeFact, voice: Voice<'_>) -> Vec<String> {
    let wraps = fact.wraps.map_or(String::new(), quarters);
    let label = |label: &Option<Label>| {
        label.as_ref().map_or(String::new(), |label| voice.of(label).to_owned())
    };
    let (notch, stretched) = (label(&fact.notch), label(&fact.stretched));
    let (roll, strand) = (label(&fact.roll), label(&fact.strand));
    let values = [
        ("wraps", wraps.as_str()),
        ("roll", &roll),
        ("strand", &strand),
        ("notch", &notch),
        ("stretched", &stretched),
        ("base", voice.of(&fact.base)),
    ];
    // Stages that are pictures have words alone.
    if fact.frames.is_empty() {
        return fact.own_words.clone();
    }
    let mut said: Vec<String> = Vec::new();
    for (at, frame) in fact.frames.iter().enumerate() {
        let mut text = match fact.own_words.get(at) {
            Some(own) => own.clone(),
            None => voice.fill(key(frame.does), &values),
        };
        let rolls = matches!(frame.does, Does::TipBeneath | Does::SeenFromEnd);
        if rolls && fact.wraps.is_some() {
            text = format!("{text} {}", voice.fill("goes-round", &values));
        }
        said.push(text);
    }
    said
}

/// The words for what is done.
fn key(does: Does) -> &'static str {
    match does {
        Does::NotchAndStretch => "does-notch-and-stretch",
        Does::Notch => "does-notch",
        Does::Stretch => "does-stretch",
        Does::StrokeTip => "does-stroke-tip",
        Does::RollTriangle => "does-roll-triangle",
        Does::TipBeneath => "does-tip-beneath",
        Does::BendEnds => "does-bend-ends",
        Does::JoinEnds => "does-join-ends",
        Does::RollIn => "does-roll-in",
        Does::SeenFromEnd => "does-seen-from-end",
        Does::SeamBeneath => "does-seam-beneath",
        Does::RollStrand => "does-roll-strand",
        Does::Wind => "does-wind",
        Does::TurnEnds => "does-turn-ends",
        Does::SetTwist => "does-set-twist",
        Does::Knot => "does-knot",
        Does::JoinRing => "does-join-ring",
        Does::LayStrands => "does-lay-strands",
        Does::CrossThree => "does-cross-three",
        Does::CrossFour => "does-cross-four",
        Does::TuckEnds => "does-tuck-ends",
        Does::CutCorners => "does-cut-corners",
        Does::PressMiddle => "does-press-middle",
        Does::CornersIn => "does-corners-in",
        Does::TwoCornersIn => "does-two-corners-in",
        Does::FoldOver => "does-fold-over",
        Does::FoldCorner => "does-fold-corner",
        Does::FoldRound => "does-fold-round",
        Does::PressEdges => "does-press-edges",
        Does::Gather => "does-gather",
        Does::GatherFilling => "does-gather-filling",
        Does::TurnOver => "does-turn-over",
        Does::FoldThirds => "does-fold-thirds",
        Does::RollOval => "does-roll-oval",
        Does::RollForTin => "does-roll-for-tin",
        Does::SetInTin => "does-set-in-tin",
        Does::Own => "does-own",
    }
}

/// A count to the nearest quarter: `4¼`.
fn quarters(value: f64) -> String {
    let whole = (value * 4.0).round().clamp(0.0, 4000.0) as u64;
    let part = ["", "¼", "½", "¾"][(whole % 4) as usize];
    if whole < 4 && whole > 0 { part.to_owned() } else { format!("{}{part}", whole / 4) }
}
