//! Pieces that are folded: pinwheel, envelope, pocket, turnover, folded square.

use super::super::{Form, Piece};
use super::frame::{At, Does, Frame, Mark, between, block, disc};

/// How far the cuts of a pinwheel go in from the corner, of the way to the middle.
const CUT_IN: f64 = 0.66;

fn measured(frame: Frame) -> Frame {
    let [low, high] = frame.bounds();
    frame.across(low[0], high[0]).up(low[1], high[1])
}

/// A square cut in from its corners; every other tip goes to the middle.
pub(super) fn pinwheel(piece: &Piece) -> Vec<Frame> {
    let side = piece.base.float();
    let corners = block([0.0, 0.0], [side, side]);
    let middle = [side / 2.0; 2];
    let mut before = vec![Mark::Dough(corners.clone())];
    let mut after = Vec::new();
    for (index, corner) in corners.iter().copied().enumerate() {
        let next = corners[(index + 1) % 4];
        before.push(Mark::Cut(vec![corner, between(corner, middle, CUT_IN)]));
        let tip = between(corner, next, 0.12);
        let start = between(tip, middle, 0.3);
        before.push(Mark::Arrow(start, between(tip, middle, 0.9)));
        before.push(Mark::Number(between(tip, middle, 0.16), index + 1));
        // The half that stays, and the half that is folded over it.
        let half = between(corner, next, 0.5);
        after.push(Mark::Dough(vec![middle, half, next]));
        after.push(Mark::Flap(vec![middle, between(middle, corner, 1.0 - CUT_IN), half]));
    }
    after.push(Mark::Filling(disc(middle, 0.07 * side)));
    vec![
        measured(Frame::new(Does::CutCorners, before)),
        measured(Frame::new(Does::PressMiddle, after)),
    ]
}

/// A square with all four corners folded to the middle.
pub(super) fn envelope(piece: &Piece) -> Vec<Frame> {
    let side = piece.base.float();
    let corners = block([0.0, 0.0], [side, side]);
    let middle = [side / 2.0; 2];
    let mids: Vec<At> =
        (0..4).map(|at| between(corners[at], corners[(at + 1) % 4], 0.5)).collect();
    let mut before = vec![
        Mark::Dough(corners.clone()),
        Mark::Filling(disc(middle, 0.14 * side)),
        Mark::Fold([mids.as_slice(), &mids[..1]].concat()),
    ];
    for (index, corner) in corners.iter().copied().enumerate() {
        before.push(Mark::Arrow(
            between(corner, middle, 0.2),
            between(corner, middle, 0.7),
        ));
        before.push(Mark::Number(between(corner, middle, 0.12), index + 1));
    }
    let mut after = vec![Mark::Dough(mids.clone())];
    for at in 0..4 {
        after.push(Mark::Flap(vec![mids[at], mids[(at + 1) % 4], middle]));
    }
    after.extend(
        mids.iter().map(|mid| Mark::Seam(vec![between(*mid, middle, 0.08), middle])),
    );
    vec![
        measured(Frame::new(Does::CornersIn, before)),
        measured(Frame::new(Does::PressMiddle, after)),
    ]
}

/// A square with two opposite corners folded over the middle, one over the other.
pub(super) fn folded_square(piece: &Piece) -> Vec<Frame> {
    let side = piece.base.float();
    let corners = block([0.0, 0.0], [side, side]);
    let (near, far) = (corners[0], corners[2]);
    // Each fold lies two fifths of the way from the corner to the middle of the square, so
    // that the tips overlap.
    let fold = 0.6 * side;
    let first = [[fold, 0.0], [0.0, fold]];
    let second = [[side - fold, side], [side, side - fold]];
    let mirrored = |at: At| [fold - at[1], fold - at[0]];
    let before = vec![
        Mark::Dough(corners.clone()),
        Mark::Filling(disc([side / 2.0; 2], 0.12 * side)),
        Mark::Fold(first.to_vec()),
        Mark::Fold(second.to_vec()),
        Mark::Arrow(between(near, far, 0.08), between(near, far, 0.42)),
        Mark::Number(between(near, far, 0.05), 1),
        Mark::Arrow(between(far, near, 0.08), between(far, near, 0.42)),
        Mark::Number(between(far, near, 0.05), 2),
    ];
    let tip = mirrored(near);
    let back = [side - tip[0], side - tip[1]];
    let after = vec![
        Mark::Dough(vec![
            first[0], corners[1], second[1], second[0], corners[3], first[1],
        ]),
        Mark::Flap(vec![first[0], tip, first[1]]),
        Mark::Flap(vec![second[0], back, second[1]]),
        Mark::Spine(first.to_vec()),
        Mark::Spine(second.to_vec()),
    ];
    vec![
        measured(Frame::new(Does::TwoCornersIn, before)),
        measured(Frame::new(Does::PressMiddle, after)),
    ]
}

/// A square or rectangle folded in half over its filling.
pub(super) fn pocket(piece: &Piece) -> Vec<Frame> {
    let (long, short) = piece.long_and_short();
    let (length, width) = (long.float(), short.float());
    let half = length / 2.0;
    let before = vec![
        Mark::Dough(block([0.0, 0.0], [length, width])),
        Mark::Fold(vec![[half, 0.0], [half, width]]),
        Mark::Filling(block(
            [half + 0.1 * length, 0.22 * width],
            [0.9 * length, 0.78 * width],
        )),
        Mark::Arrow([0.08 * length, width / 2.0], [half + 0.06 * length, width / 2.0]),
    ];
    let edge = 0.03 * width;
    let after = vec![
        Mark::Dough(block([0.0, 0.0], [half, width])),
        Mark::Spine(vec![[0.0, 0.0], [0.0, width]]),
        Mark::Seam(vec![
            [0.06 * half, edge],
            [half - edge, edge],
            [half - edge, width - edge],
            [0.06 * half, width - edge],
        ]),
    ];
    vec![
        measured(Frame::new(Does::FoldOver, before)),
        measured(Frame::new(Does::PressEdges, after)),
    ]
}

/// A square folded from corner to corner, or a round in half, over its filling.
pub(super) fn turnover(piece: &Piece) -> Vec<Frame> {
    if piece.form == Form::Round {
        return half_moon(piece.base.float());
    }
    let side = piece.base.float();
    let [near_left, near_right, far_right, far_left] =
        [[0.0, 0.0], [side, 0.0], [side, side], [0.0, side]];
    let before = vec![
        Mark::Dough(block([0.0, 0.0], [side, side])),
        Mark::Fold(vec![far_right, near_left]),
        Mark::Filling(disc(between(near_right, far_left, 0.3), 0.11 * side)),
        Mark::Arrow(
            between(far_left, near_right, 0.12),
            between(far_left, near_right, 0.58),
        ),
    ];
    let edge = 0.02 * side;
    let after = vec![
        Mark::Dough(vec![near_left, near_right, far_right]),
        Mark::Seam(vec![
            [3.0 * edge, edge],
            [side - edge, edge],
            [side - edge, side - 3.0 * edge],
        ]),
        Mark::Spine(vec![far_right, near_left]),
    ];
    vec![
        measured(Frame::new(Does::FoldCorner, before)),
        measured(Frame::new(Does::PressEdges, after)),
    ]
}

fn half_moon(across: f64) -> Vec<Frame> {
    let radius = across / 2.0;
    let middle = [radius; 2];
    let arc = |inset: f64| -> Vec<At> {
        let at = |n: u32| {
            let (sin, cos) =
                (std::f64::consts::PI * (1.0 + f64::from(n) / 24.0)).sin_cos();
            [radius + (radius - inset) * cos, radius + (radius - inset) * sin]
        };
        (0..=24).map(at).collect()
    };
    let before = vec![
        Mark::Dough(disc(middle, radius)),
        Mark::Fold(vec![[0.0, radius], [across, radius]]),
        Mark::Filling(disc([radius, 0.55 * radius], 0.22 * radius)),
        Mark::Arrow([radius, 1.85 * radius], [radius, 0.95 * radius]),
    ];
    let after = vec![
        Mark::Dough(arc(0.0)),
        Mark::Seam(arc(0.05 * radius)),
        Mark::Spine(vec![[0.0, radius], [across, radius]]),
    ];
    vec![
        measured(Frame::new(Does::FoldRound, before)),
        measured(Frame::new(Does::PressEdges, after)),
    ]
}
