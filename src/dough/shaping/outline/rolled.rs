//! Pieces that are rolled up: crescents and batons.

use crate::measure::{Length, float};
use crate::model::{Bend, Crescent};

use super::super::{Form, Piece, Sizes};
use super::frame::{At, Does, Frame, Mark, between, block, sides, spiral};

/// How far round a curved and a joined crescent go, of a whole turn. Common practice, no
/// source.
const ROUND: [f64; 2] = [0.42, 0.94];

/// Points along a roll.
const POINTS: i32 = 32;

/// A triangle rolled from its base to its tip.
pub(super) fn crescent(piece: &Piece, how: &Crescent, sizes: &Sizes) -> Vec<Frame> {
    let (base, height) = (piece.base.float(), piece.height.float());
    let more = float(&how.stretch).clamp(0.0, 2.0);
    let long = height * (1.0 + more);
    let notch = how.notch.as_ref().map_or(0.0, |notch| notch.float().min(height / 3.0));
    // A right triangle is stroked until its tip points at the middle of the base.
    let tip_x = if piece.form == Form::RightTriangle { 0.0 } else { base / 2.0 };
    let tip = [tip_x, height];
    let (left, right, middle) = ([0.0, 0.0], [base, 0.0], [base / 2.0, 0.0]);
    let straight = [base / 2.0, long];
    let mut frames = Vec::new();
    let moves = more > 0.0 || piece.form == Form::RightTriangle;
    if moves || notch > 0.0 {
        let mut marks = vec![Mark::Dough(vec![left, right, tip])];
        if moves {
            marks.push(Mark::Ghost(vec![left, straight, right]));
            marks.push(Mark::Arrow(tip, straight));
        }
        if notch > 0.0 {
            marks.push(Mark::Cut(vec![middle, [base / 2.0, notch]]));
        }
        let does = match (notch > 0.0, moves) {
            (true, true) if more > 0.0 => Does::NotchAndStretch,
            (true, _) => Does::Notch,
            _ if more > 0.0 => Does::Stretch,
            _ => Does::StrokeTip,
        };
        frames.push(Frame::new(does, marks).across(0.0, base).up(0.0, height));
    }
    frames.push(rolling(base, long, notch));
    let thick = sizes.roll.as_ref().map_or(base / 3.0, Length::float);
    let times = sizes.wraps.as_ref().map_or(3.0, float);
    frames.push(horn(base, thick, times, Bend::Straight));
    if how.bend != Bend::Straight {
        frames.push(horn(base, thick, times, how.bend));
    }
    frames
}

/// The stretched piece, rolled from its base; a notched base is spread.
fn rolling(base: f64, long: f64, notch: f64) -> Frame {
    let (tip, middle) = ([base / 2.0, long], base / 2.0);
    let mut outline = vec![[0.0, 0.0]];
    if notch > 0.0 {
        let open = notch / 3.0;
        outline.extend([[middle - open, 0.0], [middle, notch], [middle + open, 0.0]]);
    }
    outline.extend([[base, 0.0], tip]);
    let mut marks = vec![Mark::Dough(outline)];
    if notch > 0.0 {
        let out = |x: f64| {
            Mark::Arrow(
                [middle + 0.35 * x, 0.06 * long],
                [middle + 0.85 * x, 0.02 * long],
            )
        };
        marks.extend([out(-middle), out(middle)]);
    }
    marks.push(Mark::Arrow([middle, 0.14 * long], [middle, 0.72 * long]));
    Frame::new(Does::RollTriangle, marks).across(0.0, base).up(0.0, long)
}

/// The roll from above. Where it is so far from the middle, only so much of the triangle's
/// height is rolled there: its outline is that of the triangle, rolled up.
fn horn(long: f64, thick: f64, wraps: f64, bend: Bend) -> Frame {
    let half_at = |share: f64| (1.0 - share.abs()).max(0.0).sqrt() * thick / 2.0;
    let shares: Vec<f64> =
        (-POINTS..=POINTS).map(|n| f64::from(n) / f64::from(POINTS)).collect();
    let line: Vec<At> = shares.iter().map(|share| along(*share, long, bend)).collect();
    let [far, near] = sides(&line, |at| half_at(shares[at]));
    let outline: Vec<At> =
        far.iter().copied().chain(near.iter().rev().copied()).collect();
    let mut marks = vec![Mark::Dough(outline)];
    // On the front, an edge of the triangle shows once every wrap, half a wrap on.
    let wraps = wraps.clamp(1.0, 12.0);
    for wrap in 0..wraps.round() as u32 {
        let share = 1.0 - ((f64::from(wrap) + 0.5) / wraps).powi(2);
        for side in [-1.0, 1.0] {
            let at = side * share;
            // The edge is a ring round the roll, seen a little from the outer end.
            let bulge = along(at - side * 0.35 * half_at(at) / long, long, bend);
            let beside = [-0.001, 0.0, 0.001].map(|way| along(at + way, long, bend));
            let [far, near] = sides(&beside, |_| half_at(at));
            marks.push(Mark::Edge(vec![far[1], bulge, near[1]]));
        }
    }
    let does = match bend {
        Bend::Straight => Does::TipBeneath,
        Bend::Curved => Does::BendEnds,
        Bend::Joined => Does::JoinEnds,
    };
    let frame = Frame::new(does, marks);
    let [low, high] = frame.bounds();
    frame.across(low[0], high[0]).up(low[1], high[1])
}

/// Where the middle line of a roll lies, at a share from −1 to 1 of its half length: bent,
/// it is an arc as long as the roll.
fn along(share: f64, long: f64, bend: Bend) -> At {
    let round = match bend {
        Bend::Straight => return [share * long / 2.0, 0.0],
        Bend::Curved => ROUND[0],
        Bend::Joined => ROUND[1],
    };
    let angle = round * std::f64::consts::TAU;
    let radius = long / angle;
    let (sin, cos) = (share * angle / 2.0).sin_cos();
    [radius * sin, radius * cos]
}

/// A rectangle rolled round two sticks of filling, along its long side.
pub(super) fn baton(piece: &Piece, sizes: &Sizes) -> Vec<Frame> {
    let (long, short) = piece.long_and_short();
    let (length, width) = (long.float(), short.float());
    let (stick, gap) = (0.045 * length, 0.03 * width);
    let lying = |at: f64| block([gap, at], [width - gap, at + stick]);
    let rounds = sizes.wraps.as_ref().map(float);
    let thick = sizes.roll.as_ref().map_or(0.35 * length, Length::float);
    // The second stick lies where the first turn comes down: one round of the roll on.
    let first = 0.06 * length;
    let second = (first + 0.42 * length).min(0.8 * length);
    let middle = width / 2.0;
    let flat = Frame::new(
        Does::RollIn,
        vec![
            Mark::Dough(block([0.0, 0.0], [width, length])),
            Mark::Filling(lying(first)),
            Mark::Filling(lying(second)),
            Mark::Arrow([middle, first + 2.0 * stick], [middle, second - stick]),
            Mark::Arrow([middle, second + 2.0 * stick], [middle, 0.96 * length]),
        ],
    );
    let radius = thick / 2.0;
    let end = [radius; 2];
    let bit = |dx: f64, dy: f64| {
        let (x, y) = (end[0] + dx * radius, end[1] + dy * radius);
        block([x - stick / 2.0, y - stick / 2.0], [x + stick / 2.0, y + stick / 2.0])
    };
    let from_end = Frame::new(
        Does::SeenFromEnd,
        vec![
            Mark::Dough(super::frame::disc(end, radius)),
            Mark::Edge(spiral(end, radius, rounds.unwrap_or(2.0))),
            Mark::Filling(bit(-0.2, 0.2)),
            Mark::Filling(bit(0.25, -0.3)),
        ],
    );
    let lying = Frame::new(
        Does::SeamBeneath,
        vec![
            Mark::Dough(block([0.0, 0.0], [width, thick])),
            Mark::Seam(vec![[0.02 * width, 0.05 * thick], [0.98 * width, 0.05 * thick]]),
        ],
    );
    vec![
        flat.across(0.0, width).up(0.0, length),
        from_end.up(0.0, thick),
        lying.across(0.0, width).up(0.0, thick),
    ]
}

/// A loaf rolled up in its tin: from above, and from the end.
pub(super) fn in_tin(length: f64, width: f64, depth: Option<f64>) -> Vec<Frame> {
    let deep = depth.unwrap_or(0.6 * width);
    let inset = 0.14 * width;
    let above = Frame::new(
        Does::RollForTin,
        vec![
            Mark::Tin(block([0.0, 0.0], [length, width])),
            Mark::Dough(block([0.02 * length, inset], [0.98 * length, width - inset])),
            Mark::Arrow([0.5 * length, 0.5 * width], [0.92 * length, 0.5 * width]),
            Mark::Arrow([0.5 * length, 0.5 * width], [0.08 * length, 0.5 * width]),
        ],
    );
    let lean = 0.06 * width;
    let radius = (0.36 * deep).min(0.5 * width - lean).max(0.05);
    let centre = [width / 2.0, radius + 0.03 * deep];
    let end = Frame::new(
        Does::SetInTin,
        vec![
            Mark::Spine(vec![
                [0.0, deep],
                [lean, 0.0],
                [width - lean, 0.0],
                [width, deep],
            ]),
            Mark::Dough(super::frame::disc(centre, radius)),
            Mark::Edge(spiral(centre, radius, 2.5)),
            Mark::Ghost(vec![[0.0, deep], [width, deep]]),
            Mark::Arrow(
                between(centre, [centre[0], deep], 0.5),
                [centre[0], 0.97 * deep],
            ),
        ],
    );
    let mut end = end.across(0.0, width);
    if depth.is_some() {
        end = end.up(0.0, deep);
    }
    vec![above.across(0.0, length).up(0.0, width), end]
}
