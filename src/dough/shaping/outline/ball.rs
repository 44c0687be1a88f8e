//! Balls: round, oval, filled. A ball holds the dough of its piece: its width follows from
//! the volume.

use std::f64::consts::PI;

use super::super::{Form, Piece, Sizes};
use super::frame::{At, Does, Frame, Mark, between, block, disc};
use crate::measure::Length;

/// How thick a lump is pressed before its edges are gathered, of a ball's width. Common
/// practice, no source.
const PRESSED: f64 = 0.35;

/// The width of the ball, cm.
fn width(sizes: &Sizes) -> f64 {
    sizes.roll.as_ref().map_or(0.0, Length::float).max(0.1)
}

/// The piece as it lies: cut, or a lump pressed to a disc that holds as much.
fn flat(piece: &Piece, ball: f64) -> (Vec<At>, At) {
    let (base, height) = (piece.base.float(), piece.height.float());
    match piece.form {
        Form::Lump => {
            let volume = PI / 6.0 * ball.powi(3);
            let radius = (volume / (PRESSED * ball) / PI).sqrt();
            (disc([radius; 2], radius), [radius; 2])
        }
        Form::Round => (disc([base / 2.0; 2], base / 2.0), [base / 2.0; 2]),
        Form::Triangle => (
            vec![[0.0, 0.0], [base, 0.0], [base / 2.0, height]],
            [base / 2.0, height / 3.0],
        ),
        Form::RightTriangle => {
            (vec![[0.0, 0.0], [base, 0.0], [0.0, height]], [base / 3.0, height / 3.0])
        }
        Form::Rectangle | Form::Square | Form::Strip => {
            (block([0.0, 0.0], [base, height]), [base / 2.0, height / 2.0])
        }
    }
}

fn measured(frame: Frame) -> Frame {
    let [low, high] = frame.bounds();
    frame.across(low[0], high[0]).up(low[1], high[1])
}

/// The piece with its edges going to the middle, over a filling or none.
fn gathered(piece: &Piece, ball: f64, filled: bool) -> Frame {
    let (outline, middle) = flat(piece, ball);
    let mut marks = vec![Mark::Dough(outline.clone())];
    // As far as the nearest edge: the middle of a side is nearer than its corners.
    let next = outline.iter().cycle().skip(1);
    let reach = outline
        .iter()
        .zip(next)
        .flat_map(|(one, other)| [*one, between(*one, *other, 0.5)])
        .map(|at| (at[0] - middle[0]).hypot(at[1] - middle[1]))
        .fold(f64::INFINITY, f64::min);
    if filled {
        marks.push(Mark::Filling(disc(middle, 0.3 * reach)));
    }
    let stop = if filled { 0.66 } else { 0.86 };
    for n in 0..6 {
        let (sin, cos) = (PI * (f64::from(n) / 3.0 + 1.0 / 6.0)).sin_cos();
        let edge = [middle[0] + 0.96 * reach * cos, middle[1] + 0.96 * reach * sin];
        marks.push(Mark::Arrow(edge, between(edge, middle, stop)));
    }
    let does = if filled { Does::GatherFilling } else { Does::Gather };
    measured(Frame::new(does, marks))
}

/// A ball from above, turned over and rounded.
fn turned_over(ball: f64) -> Frame {
    let radius = ball / 2.0;
    measured(Frame::new(Does::TurnOver, vec![Mark::Dough(disc([radius; 2], radius))]))
}

/// A ball.
pub(super) fn round(piece: &Piece, sizes: &Sizes) -> Vec<Frame> {
    let ball = width(sizes);
    vec![gathered(piece, ball, false), turned_over(ball)]
}

/// A ball closed round a filling: from above with its seam, and turned over.
pub(super) fn filled(piece: &Piece, sizes: &Sizes) -> Vec<Frame> {
    let ball = width(sizes);
    let radius = ball / 2.0;
    let pleats = (0..6).map(|n| {
        let (sin, cos) = (PI * f64::from(n) / 3.0).sin_cos();
        Mark::Edge(vec![
            [radius; 2],
            [radius + 0.5 * radius * cos, radius + 0.5 * radius * sin],
        ])
    });
    let mut marks = vec![Mark::Dough(disc([radius; 2], radius))];
    marks.extend(pleats);
    let closed = measured(Frame::new(Does::PressMiddle, marks));
    vec![gathered(piece, ball, true), closed, turned_over(ball)]
}

/// An oval twice as long as wide that holds the dough of the ball: V = π/6 · 2 w³.
pub(super) fn oval(sizes: &Sizes) -> Vec<Frame> {
    let wide = width(sizes);
    let ball = wide * 2.0_f64.cbrt();
    let long = 2.0 * wide;
    let radius = ball * 0.72;
    let third = radius / 3.0;
    let chord = (radius * radius - third * third).sqrt();
    let at = |y: f64| vec![[radius - chord, y], [radius + chord, y]];
    let folds = Frame::new(
        Does::FoldThirds,
        vec![
            Mark::Dough(disc([radius; 2], radius)),
            Mark::Fold(at(radius + third)),
            Mark::Fold(at(radius - third)),
            Mark::Arrow([0.8 * radius, 1.9 * radius], [0.8 * radius, 1.08 * radius]),
            Mark::Number([1.2 * radius, 1.6 * radius], 1),
            Mark::Arrow([0.8 * radius, 0.1 * radius], [0.8 * radius, 0.92 * radius]),
            Mark::Number([1.2 * radius, 0.4 * radius], 2),
        ],
    );
    let ellipse = |n: u32| {
        let (sin, cos) = (f64::from(n) * PI / 24.0).sin_cos();
        [long / 2.0 * (1.0 + cos), wide / 2.0 * (1.0 + sin)]
    };
    let middle = wide / 2.0;
    let done = Frame::new(
        Does::RollOval,
        vec![
            Mark::Dough((0..48).map(ellipse).collect()),
            Mark::Arrow([0.5 * long, middle], [0.92 * long, middle]),
            Mark::Arrow([0.5 * long, middle], [0.08 * long, middle]),
        ],
    );
    vec![measured(folds), done.across(0.0, long).up(0.0, wide)]
}
