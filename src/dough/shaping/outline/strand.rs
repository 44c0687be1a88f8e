//! Strands: spirals, twists, knots, rings and plaits. A strand rolled from a strip is as
//! long as the strip and holds as much dough.

use std::f64::consts::{PI, TAU};

use super::super::{Piece, Sizes};
use super::frame::{At, Does, Frame, Mark, block, disc, sides, spiral};
use crate::measure::Length;

/// A strand's length and thickness, cm.
#[derive(Clone, Copy)]
struct Strand {
    long: f64,
    thick: f64,
}

impl Strand {
    fn of(sizes: &Sizes) -> Self {
        let of = |length: &Option<Length>| length.as_ref().map_or(0.1, Length::float);
        Self { long: of(&sizes.strand), thick: of(&sizes.roll) }
    }

    /// The strand lying level.
    fn level(self, does: Does) -> Frame {
        let marks = vec![Mark::Dough(rod([0.0, 0.0], self.long, self.thick))];
        Frame::new(does, marks).across(0.0, self.long).up(0.0, self.thick)
    }
}

/// A level rod with round ends, from its near left corner.
fn rod([x, y]: At, long: f64, thick: f64) -> Vec<At> {
    let radius = thick / 2.0;
    let end = |middle: f64, from: f64| {
        (0..=8).map(move |n| {
            let (sin, cos) = (from + PI * f64::from(n) / 8.0).sin_cos();
            [middle + radius * cos, y + radius + radius * sin]
        })
    };
    let right = end(x + long - radius, -PI / 2.0);
    right.chain(end(x + radius, PI / 2.0)).collect()
}

fn measured(frame: Frame) -> Frame {
    let [low, high] = frame.bounds();
    frame.across(low[0], high[0]).up(low[1], high[1])
}

/// A strand along `line` as pieces of road, those beneath first: `height` says which.
fn woven(line: &[At], thick: f64, height: impl Fn(usize) -> f64) -> Vec<(f64, Mark)> {
    let [left, right] = sides(line, |_| thick / 2.0);
    let step = 6;
    (0..line.len().saturating_sub(1))
        .step_by(step)
        .map(|from| {
            // A little more than its own length, so that no gap shows between two.
            let to = (from + step + 1).min(line.len() - 1);
            let middle = (from + to) / 2;
            let mark = Mark::Strand(left[from..=to].to_vec(), right[from..=to].to_vec());
            (height(middle), mark)
        })
        .collect()
}

fn stacked(mut roads: Vec<(f64, Mark)>) -> Vec<Mark> {
    roads.sort_by(|one, other| one.0.total_cmp(&other.0));
    roads.into_iter().map(|(_, mark)| mark).collect()
}

/// A strand wound flat round its end: a disc of as much dough.
pub(super) fn coil(sizes: &Sizes) -> Vec<Frame> {
    let strand = Strand::of(sizes);
    // Seen from above, the strand covers the disc.
    let radius = (strand.long * strand.thick / PI).sqrt();
    let middle = [radius; 2];
    let rounds = radius / strand.thick;
    let end = spiral(middle, radius, rounds).pop().unwrap_or(middle);
    let marks = vec![
        Mark::Dough(disc(middle, radius)),
        Mark::Edge(spiral(middle, radius, rounds)),
        Mark::Arrow(end, [end[0] * 0.75 + 0.25 * radius, end[1] * 0.75 + 0.25 * radius]),
    ];
    vec![strand.level(Does::RollStrand), measured(Frame::new(Does::Wind, marks))]
}

/// A strip turned about itself: each half turn is twice as long as the strip is wide.
pub(super) fn twist(piece: &Piece, sizes: &Sizes) -> Vec<Frame> {
    let (long, short) = piece.long_and_short();
    let (length, width) = match &sizes.strand {
        Some(_) => {
            let strand = Strand::of(sizes);
            (strand.long, strand.thick)
        }
        None => (long.float(), short.float()),
    };
    let middle = width / 2.0;
    let flat = Frame::new(
        Does::TurnEnds,
        vec![
            Mark::Dough(block([0.0, 0.0], [length, width])),
            Mark::Arrow([0.04 * length, 0.05 * width], [0.04 * length, width * 1.5]),
            Mark::Arrow([0.96 * length, 0.95 * width], [0.96 * length, -0.5 * width]),
        ],
    );
    let thick = piece.thickness.as_ref().map_or(0.3 * width, |it| it.float());
    let turns = (length / (2.0 * width)).round().clamp(1.0, 24.0);
    let half = |x: f64| {
        let open = (PI * turns * x / length).cos().abs();
        (middle * open).max(thick.min(width) / 2.0)
    };
    let steps = 160;
    let xs = (0..=steps).map(|n| length * f64::from(n) / f64::from(steps));
    let far: Vec<At> = xs.clone().map(|x| [x, middle + half(x)]).collect();
    let near: Vec<At> = xs.rev().map(|x| [x, middle - half(x)]).collect();
    let mut marks = vec![Mark::Dough([far, near].concat())];
    for turn in 0..turns as u32 {
        let at = |share: f64| length * (f64::from(turn) + share) / turns;
        let edge = [0.2, 0.35, 0.5, 0.65, 0.8]
            .map(|share| [at(share), middle + middle * (PI * share).cos()]);
        marks.push(Mark::Edge(edge.to_vec()));
    }
    vec![
        flat.across(0.0, length).up(0.0, width),
        Frame::new(Does::SetTwist, marks).across(0.0, length),
    ]
}

/// A strand knotted once: the plain overhand knot, which seen from above is a trefoil.
pub(super) fn knot(sizes: &Sizes) -> Vec<Frame> {
    let strand = Strand::of(sizes);
    let line = |n: u32| {
        // The trefoil, opened at one place.
        let t = 0.30 + (TAU - 0.5) * f64::from(n) / 120.0;
        let at = [t.sin() + 2.0 * (2.0 * t).sin(), t.cos() - 2.0 * (2.0 * t).cos()];
        (at, -(3.0 * t).sin())
    };
    let points: Vec<(At, f64)> = (0..=120).map(line).collect();
    let long: f64 = points.windows(2).map(|pair| apart(pair[0].0, pair[1].0)).sum();
    let scale = strand.long / long;
    let path: Vec<At> = points.iter().map(|(at, _)| at.map(|way| way * scale)).collect();
    let roads = woven(&path, strand.thick, |at| points[at].1);
    let ends = [path[0], path[path.len() - 1]];
    let mut marks: Vec<Mark> =
        ends.iter().map(|end| Mark::Dough(disc(*end, strand.thick / 2.0))).collect();
    marks.extend(stacked(roads));
    let tuck = |end: At| Mark::Arrow(end, end.map(|way| 0.55 * way));
    let done = marks.clone();
    marks.extend(ends.map(tuck));
    vec![
        strand.level(Does::RollStrand),
        measured(Frame::new(Does::Knot, marks)),
        measured(Frame::new(Does::TuckEnds, done)),
    ]
}

fn apart([x, y]: At, [to_x, to_y]: At) -> f64 {
    (to_x - x).hypot(to_y - y)
}

/// A strand joined at its ends, which overlap by its thickness.
pub(super) fn ring(sizes: &Sizes) -> Vec<Frame> {
    let strand = Strand::of(sizes);
    let radius = (strand.long - strand.thick).max(strand.thick) / TAU;
    let outer = radius + strand.thick / 2.0;
    let middle = [outer; 2];
    let line: Vec<At> = (0..=64)
        .map(|n| {
            let (sin, cos) = (TAU * f64::from(n) / 64.0 - PI / 2.0).sin_cos();
            [middle[0] + radius * cos, middle[1] + radius * sin]
        })
        .collect();
    let [inside, outside] = sides(&line, |_| strand.thick / 2.0);
    let foot = [middle[0], middle[1] - radius];
    let seam = 0.45 * strand.thick;
    let marks = vec![
        Mark::Strand(inside, outside),
        Mark::Edge(vec![
            [foot[0] - seam, foot[1] - seam],
            [foot[0] + seam, foot[1] + seam],
        ]),
    ];
    vec![strand.level(Does::RollStrand), measured(Frame::new(Does::JoinRing, marks))]
}

/// Strands plaited flat. Each swings from side to side, and over and under the others: with
/// three it crosses at every side, with four over the one and under the next.
pub(super) fn plait(sizes: &Sizes, count: u32) -> Vec<Frame> {
    let strand = Strand::of(sizes);
    let Strand { long, thick } = strand;
    let swing = thick * (f64::from(count) - 1.0) * 0.5;
    let pitch = thick * f64::from(count) * 1.5;
    let wave = |turn: f64| [swing * turn.sin(), pitch * turn / TAU];
    let one: f64 = (0..60)
        .map(|n| {
            let turn = |n: i32| TAU * f64::from(n) / 60.0;
            apart(wave(turn(n)), wave(turn(n + 1)))
        })
        .sum();
    let periods = (long / one).max(0.5);
    let points = (periods * 36.0).ceil() as u32;
    let mut roads = Vec::new();
    for number in 0..count {
        let phase = TAU * f64::from(number) / f64::from(count);
        let turn = |n: usize| periods * TAU * n as f64 / f64::from(points.max(1));
        let path: Vec<At> = (0..=points as usize)
            .map(|n| {
                let turn = turn(n);
                [swing * (turn + phase).sin(), -pitch * turn / TAU]
            })
            .collect();
        let height = |n: usize| {
            let at = turn(n) + phase;
            if count == 3 { (2.0 * at).sin() } else { (3.0 * at).cos() }
        };
        roads.extend(woven(&path, thick, height));
    }
    let width = f64::from(count) * thick + f64::from(count - 1) * 0.3 * thick;
    let mut side_by_side = Vec::new();
    for number in 0..count {
        let x = f64::from(number) * 1.3 * thick;
        let upright: Vec<At> = rod([0.0, 0.0], long, thick)
            .into_iter()
            .map(|[along, across]| [x + across, along])
            .collect();
        side_by_side.push(Mark::Dough(upright));
    }
    side_by_side.push(Mark::Seam(vec![[0.0, 0.97 * long], [width, 0.97 * long]]));
    let does = if count == 3 { Does::CrossThree } else { Does::CrossFour };
    vec![
        Frame::new(Does::LayStrands, side_by_side).up(0.0, long),
        crossings(does, (count, thick)),
        measured(Frame::new(Does::TuckEnds, stacked(roads))),
    ]
}

/// The first crossings: the strands fanned out, the outer ones going over.
fn crossings(does: Does, (count, thick): (u32, f64)) -> Frame {
    let (gap, long) = (1.9 * thick, 6.0 * thick);
    let middle = gap * f64::from(count - 1) / 2.0;
    let foot = |number: f64| gap * number;
    let mut marks = Vec::new();
    for number in 0..count {
        let line = [
            [foot(f64::from(number)), 0.0],
            [middle + (foot(f64::from(number)) - middle) * 0.35, long],
        ];
        let [left, right] = sides(&line, |_| thick / 2.0);
        marks.push(Mark::Strand(left, right));
        marks.push(Mark::Number(
            [foot(f64::from(number)), -0.2 * thick],
            number as usize + 1,
        ));
    }
    let last = f64::from(count - 1);
    let y = 0.42 * long;
    let inward = |x: f64| middle + (x - middle) * (1.0 - 0.65 * 0.42);
    marks.push(Mark::Arrow([inward(foot(last)), y], [inward(foot(last - 1.5)), y]));
    marks.push(Mark::Arrow(
        [inward(foot(0.0)), y - thick],
        [inward(foot(1.5)), y - thick],
    ));
    Frame::new(does, marks)
}
