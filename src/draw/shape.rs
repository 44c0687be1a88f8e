//! Shaping from the piece's own geometry: the piece with what is done to it at the left,
//! what comes of it at the right.

use crate::sheet::ShapeFact;

use super::ink;
use super::lettering::{HEADING, LABEL, RISE};
use super::plate::{MARGIN, Plate, Point, Text, WIDTH, corners};
use super::trace::Trace;
use super::voice::Voice;

/// The largest that the piece is drawn.
const ROOM: [f64; 2] = [230.0, 300.0];
/// Where the right panel begins.
const SECOND: f64 = 352.0;
/// Where both begin.
const TOP: f64 = 50.0;

/// The drawing of one shaping.
pub(super) fn shape(fact: &ShapeFact, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(WIDTH);
    let tin = fact.shape == "tin";
    heading(&mut plate, &voice.word(if tin { "the-tin" } else { "the-piece" }), MARGIN);
    heading(&mut plate, &voice.word("shaped"), SECOND - 12.0);
    let size = [fact.base_cm.max(0.1), fact.height_cm.max(0.1)];
    let scale = (ROOM[0] / size[0]).min(ROOM[1] / size[1]);
    let piece = Piece {
        left: MARGIN,
        right: MARGIN + size[0] * scale,
        bottom: TOP + size[1] * scale,
        scale,
    };
    let foot = match fact.shape.as_str() {
        "rolled" => rolled(&mut plate, fact, piece),
        "folded" => folded(&mut plate, piece),
        "pinwheel" => pinwheel(&mut plate, piece),
        "baton" => baton(&mut plate, fact, piece),
        _ => loaf(&mut plate, fact, piece),
    };
    let across = [piece.left, piece.right];
    plate.dimension_across(across, piece.bottom + 20.0, voice.of(&fact.base));
    plate.dimension_up(piece.right + 16.0, [TOP, piece.bottom], voice.of(&fact.height));
    let foot = foot.max(piece.bottom + 32.0 + LABEL) + 10.0;
    let said = captions(fact, voice);
    plate.height = super::roll::lines(&mut plate, &said, [MARGIN, foot]) + 4.0;
    plate
}

/// Where the piece lies on the plate.
#[derive(Clone, Copy)]
struct Piece {
    left: f64,
    right: f64,
    bottom: f64,
    scale: f64,
}

impl Piece {
    fn middle(&self) -> Point {
        [f64::midpoint(self.left, self.right), f64::midpoint(TOP, self.bottom)]
    }

    /// The four corners, from the far left one to the right.
    fn corners(&self) -> [Point; 4] {
        corners([self.left, TOP], [self.right, self.bottom])
    }
}

fn heading(plate: &mut Plate, text: &str, x: f64) {
    let at = [x, 6.0 + HEADING * RISE];
    plate.text(Text::new(text, at).size(HEADING).bold().ink(ink::LEAD));
}

/// What is done, in the words that stand beneath the drawing.
pub(super) fn captions(fact: &ShapeFact, voice: Voice<'_>) -> Vec<String> {
    let wraps = fact.wraps.map_or(String::new(), quarters);
    let roll = fact.roll_cm.map_or(String::new(), |roll| voice.length(roll));
    let thick = fact.thickness.as_ref().map_or("", |thick| voice.of(thick));
    let depth = fact.depth.as_ref().map_or("", |depth| voice.of(depth));
    let values = [
        ("wraps", wraps.as_str()),
        ("roll", &roll),
        ("thickness", thick),
        ("depth", depth),
        ("piece", voice.of(&fact.piece)),
        ("base", voice.of(&fact.base)),
        ("height", voice.of(&fact.height)),
    ];
    let mut texts = vec![voice.fill(&format!("do-{}", fact.shape), &values)];
    if fact.wraps.is_some() {
        texts.push(voice.fill("goes-round", &values));
    }
    if fact.depth.is_some() {
        texts.push(voice.fill("tin-deep", &values));
    }
    texts
}

/// A count to the nearest quarter: `4¼`.
fn quarters(value: f64) -> String {
    let whole = (value * 4.0).round().clamp(0.0, 4000.0) as u64;
    let part = ["", "¼", "½", "¾"][(whole % 4) as usize];
    if whole < 4 && whole > 0 { part.to_owned() } else { format!("{}{part}", whole / 4) }
}

/// A triangle from its base to its tip; the roll from the front, and from its end.
fn rolled(plate: &mut Plate, fact: &ShapeFact, piece: Piece) -> f64 {
    let [x, _] = piece.middle();
    let tip = [x, TOP];
    plate.polygon(
        &[tip, [piece.right, piece.bottom], [piece.left, piece.bottom]],
        ink::DOUGH,
    );
    plate.arrow([x, piece.bottom - 8.0], [x, TOP + 0.35 * (piece.bottom - TOP)]);
    plate.ring([x, piece.bottom - 34.0], 1);
    let roll = fact.roll_cm.unwrap_or(fact.base_cm / 3.0);
    let room = WIDTH - MARGIN - SECOND;
    let scale =
        (room / fact.base_cm.max(0.1)).min(170.0 / roll.max(0.1)).min(3.0 * piece.scale);
    let middle = [SECOND + fact.base_cm * scale / 2.0, TOP + roll * scale / 2.0];
    let bottom = horn(plate, fact, roll * scale, (middle, fact.base_cm * scale));
    let radius = 46.0;
    let centre = [SECOND + radius, bottom + 26.0 + radius];
    spiral(plate, centre, radius, fact.wraps.unwrap_or(3.0));
    centre[1] + radius
}

/// The roll from the front. Where it is so far from the middle, only so much of the
/// triangle's height is rolled there: its outline is that of the triangle, rolled up.
fn horn(
    plate: &mut Plate,
    fact: &ShapeFact,
    thick: f64,
    (middle, long): (Point, f64),
) -> f64 {
    let half_at = |share: f64| (1.0 - share.abs()).max(0.0).sqrt() * thick / 2.0;
    let shares: Vec<f64> = (-16..=16).map(|n| f64::from(n) / 16.0).collect();
    let edge = |side: f64| {
        move |share: &f64| {
            [middle[0] + share * long / 2.0, middle[1] + side * half_at(*share)]
        }
    };
    let mut outline: Vec<Point> = shares.iter().map(edge(-1.0)).collect();
    outline.extend(shares.iter().rev().map(edge(1.0)));
    plate.polygon(&outline, ink::DOUGH);
    // On the front, an edge of the triangle shows once every wrap, half a wrap on.
    let wraps = fact.wraps.unwrap_or(3.0).clamp(1.0, 12.0);
    for wrap in 0..wraps.round() as u32 {
        let share = 1.0 - ((f64::from(wrap) + 0.5) / wraps).powi(2);
        let half = half_at(share);
        for side in [-1.0, 1.0] {
            let at = middle[0] + side * share * long / 2.0;
            let bulge = at - side * 0.35 * half;
            let ends = [[at, middle[1] - half], [at, middle[1] + half]];
            let way = [
                [bulge, middle[1] - half / 2.0],
                [bulge, middle[1] + half / 2.0],
                ends[1],
            ];
            plate.trace(Trace::curve(ends[0], way), ink::EDGE);
        }
    }
    middle[1] + thick / 2.0
}

/// The end of a roll: so many wraps.
fn spiral(plate: &mut Plate, centre: Point, radius: f64, wraps: f64) {
    plate.circle(centre, radius, ink::DOUGH);
    let wraps = wraps.clamp(0.5, 12.0);
    let steps = (wraps * 20.0).round() as u32;
    let at = |step: u32| {
        let share = f64::from(step) / f64::from(steps.max(1));
        let (sin, cos) = (share * wraps * std::f64::consts::TAU).sin_cos();
        let distance = radius * share;
        [centre[0] + distance * sin, centre[1] + distance * cos]
    };
    let points: Vec<Point> = (0..=steps).map(at).collect();
    plate.line(&points, ink::EDGE);
}

/// A square folded corner to corner over its filling.
fn folded(plate: &mut Plate, piece: Piece) -> f64 {
    let [far_left, far_right, near_right, near_left] = piece.corners();
    plate.polygon(&piece.corners(), ink::DOUGH);
    plate.line(&[far_right, near_left], ink::FOLD);
    let between = |from: Point, to: Point, share: f64| {
        [0, 1].map(|axis| from[axis] + share * (to[axis] - from[axis]))
    };
    plate.circle(between(near_right, far_left, 0.3), 26.0, ink::GHOST);
    plate.arrow(between(far_left, near_right, 0.16), between(far_left, near_right, 0.56));
    plate.ring(between(far_left, near_right, 0.1), 1);
    let side = (WIDTH - MARGIN - SECOND - 20.0).min(piece.bottom - TOP);
    let [left, bottom] = [SECOND, TOP + side];
    let triangle = [[left + side, TOP], [left + side, bottom], [left, bottom]];
    plate.polygon(&triangle, ink::DOUGH);
    plate.line(
        &[
            [left, bottom - 2.0],
            [left + side - 2.0, bottom - 2.0],
            [left + side - 2.0, TOP],
        ],
        ink::SEAM,
    );
    plate.line(&[triangle[0], triangle[2]], ink::SPINE);
    bottom
}

/// A square cut in from its corners; every other tip goes to the middle.
fn pinwheel(plate: &mut Plate, piece: Piece) -> f64 {
    let middle = piece.middle();
    plate.polygon(&piece.corners(), ink::DOUGH);
    let toward = |from: Point, to: Point, share: f64| {
        [0, 1].map(|axis| from[axis] + share * (to[axis] - from[axis]))
    };
    let all = piece.corners();
    for (index, corner) in all.into_iter().enumerate() {
        plate.line(&[corner, toward(corner, middle, CUT_IN)], ink::CUT);
        // The tip on the side that runs on clockwise from the corner.
        let side = toward(corner, all[(index + 1) % 4], 0.14);
        let from = toward(side, middle, 0.22);
        plate.arrow(from, toward(side, middle, 0.86));
        plate.ring(toward(side, middle, 0.14), index + 1);
    }
    let side = (WIDTH - MARGIN - SECOND - 20.0).min(piece.bottom - TOP);
    let small =
        Piece { left: SECOND, right: SECOND + side, bottom: TOP + side, scale: 1.0 };
    let (middle, all) = (small.middle(), small.corners());
    for (index, corner) in all.into_iter().enumerate() {
        // The half that stays, and the half that is folded over it.
        let next = all[(index + 1) % 4];
        let half = toward(corner, next, 0.5);
        plate.polygon(&[middle, half, next], ink::DOUGH);
        plate.polygon(&[middle, toward(middle, corner, 1.0 - CUT_IN), half], ink::PIECE);
    }
    plate.circle(middle, 16.0, ink::FAT);
    small.bottom
}

/// How far the cuts of a pinwheel go in from the corner, of the way to the middle.
const CUT_IN: f64 = 0.66;

/// A rectangle rolled round two sticks of filling.
fn baton(plate: &mut Plate, fact: &ShapeFact, piece: Piece) -> f64 {
    plate.polygon(&piece.corners(), ink::DOUGH);
    let level = piece.right - piece.left >= piece.bottom - TOP;
    let [x, y] = piece.middle();
    let stick = |plate: &mut Plate, share: f64| {
        let along = if level {
            let at = piece.left + share * (piece.right - piece.left);
            corners([at - 6.0, TOP + 4.0], [at + 6.0, piece.bottom - 4.0])
        } else {
            let at = piece.bottom - share * (piece.bottom - TOP);
            corners([piece.left + 4.0, at - 6.0], [piece.right - 4.0, at + 6.0])
        };
        plate.polygon(&along, ink::STICK);
    };
    stick(plate, 0.1);
    stick(plate, 0.46);
    if level {
        plate.arrow([piece.left + 0.16 * (piece.right - piece.left), y], [x - 20.0, y]);
        plate.arrow([x + 12.0, y], [piece.right - 20.0, y]);
    } else {
        plate.arrow([x, piece.bottom - 0.16 * (piece.bottom - TOP)], [x, y + 20.0]);
        plate.arrow([x, y - 12.0], [x, TOP + 20.0]);
    }
    let long = fact.base_cm.min(fact.height_cm) * piece.scale;
    let thick = fact.roll_cm.unwrap_or(3.0) * piece.scale;
    let (long, thick) = (long.min(WIDTH - MARGIN - SECOND), thick.clamp(24.0, 110.0));
    let (left, bottom) = (SECOND, TOP + thick);
    plate.rectangle([left, TOP], [left + long, bottom], ink::DOUGH);
    plate.line(&[[left, bottom - 2.0], [left + long, bottom - 2.0]], ink::SEAM);
    let radius = 50.0;
    let centre = [SECOND + radius, bottom + 24.0 + radius];
    spiral(plate, centre, radius, fact.wraps.unwrap_or(2.0));
    for [x, y] in [[-7.0, -10.0], [9.0, 12.0]] {
        let [x, y] = [centre[0] + x, centre[1] + y];
        plate.rectangle([x - 7.0, y - 6.0], [x + 7.0, y + 6.0], ink::STICK);
    }
    centre[1] + radius
}

/// A loaf in its tin: from above, and from the end.
fn loaf(plate: &mut Plate, fact: &ShapeFact, piece: Piece) -> f64 {
    let [_, y] = piece.middle();
    plate.polygon(&piece.corners(), ink::TRAY);
    let inset = 0.14 * (piece.bottom - TOP);
    let inner = corners(
        [piece.left + 3.0, TOP + inset],
        [piece.right - 3.0, piece.bottom - inset],
    );
    plate.polygon(&inner, ink::DOUGH);
    plate.double_arrow([piece.left + 16.0, y], [piece.right - 16.0, y]);
    let wide =
        (fact.height_cm * piece.scale).clamp(150.0, WIDTH - MARGIN - SECOND - 20.0);
    let scale = wide / fact.height_cm.max(0.1);
    let deep = fact.depth_cm.unwrap_or(0.6 * fact.height_cm) * scale;
    let top = TOP + 24.0;
    let (left, right, bottom) = (SECOND, SECOND + wide, top + deep);
    let lean = 0.06 * wide;
    plate.line(
        &[[left, top], [left + lean, bottom], [right - lean, bottom], [right, top]],
        ink::SPINE,
    );
    let radius = (0.36 * deep).min(0.5 * wide - lean - 4.0).max(4.0);
    let centre = [f64::midpoint(left, right), bottom - radius - 5.0];
    spiral(plate, centre, radius, 2.5);
    // The dough rises to the rim before it is baked.
    plate.line(&[[left, top], [right, top]], ink::GHOST);
    plate.arrow([centre[0], centre[1] - radius - 4.0], [centre[0], top + 3.0]);
    bottom
}
