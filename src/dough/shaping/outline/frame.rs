//! One stage of a shaping as it is drawn: outlines, folds, cuts and movements in
//! centimetres. Curves are for the eye, so these are floats; what a ruler reads comes from
//! exact lengths.

use schemars::JsonSchema;
use serde::Serialize;

use crate::dough::shaping::Footprint;
use crate::measure::{Length, Size, exact};

/// A place on the bench, cm: to the right, and away from the baker.
pub type At = [f64; 2];

/// One stage of a shaping.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Frame {
    /// What is done.
    pub does: Does,
    /// What is seen, in painting order.
    pub marks: Vec<Mark>,
    /// A level length to be shown, from left to right.
    pub across: Option<[f64; 2]>,
    /// An upright length to be shown, from near to far.
    pub up: Option<[f64; 2]>,
}

/// Something in a stage.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "mark", content = "at", rename_all = "kebab-case")]
pub enum Mark {
    /// Dough by its outline.
    Dough(Vec<At>),
    /// Dough that lies over other dough.
    Flap(Vec<At>),
    /// A strand by its two sides: its ends stay open.
    Strand(Vec<At>, Vec<At>),
    /// An edge of dough on dough.
    Edge(Vec<At>),
    /// A fold to be made.
    Fold(Vec<At>),
    /// A cut to be made.
    Cut(Vec<At>),
    /// Edges that are pressed shut.
    Seam(Vec<At>),
    /// The closed fold.
    Spine(Vec<At>),
    /// Where something lay, or will lie.
    Ghost(Vec<At>),
    /// Filling by its outline.
    Filling(Vec<At>),
    /// The walls of a tin.
    Tin(Vec<At>),
    /// A hand's movement.
    Arrow(At, At),
    /// The order of what is done.
    Number(At, usize),
}

/// What is done in a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Does {
    /// The base is cut in, and the piece stretched to its tip.
    NotchAndStretch,
    /// The base is cut in.
    Notch,
    /// The piece is stretched to its tip.
    Stretch,
    /// The tip is stroked over the middle of the base, the piece no longer than before.
    StrokeTip,
    /// A triangle is rolled from its base to its tip.
    RollTriangle,
    /// The roll lies on its tip.
    TipBeneath,
    /// Its ends are bent toward the baker.
    BendEnds,
    /// Its ends are bent together and pressed.
    JoinEnds,
    /// Two sticks are rolled in.
    RollIn,
    /// The roll, seen from its end.
    SeenFromEnd,
    /// The roll lies on its seam.
    SeamBeneath,
    /// A strand is rolled under the hands.
    RollStrand,
    /// It is wound round its end.
    Wind,
    /// Its ends are turned against each other.
    TurnEnds,
    /// What is twisted is set down.
    SetTwist,
    /// A loop is laid and one end drawn through.
    Knot,
    /// Its ends are joined.
    JoinRing,
    /// Strands are laid side by side and pressed together at the far end.
    LayStrands,
    /// Outer strands cross over in turn.
    CrossThree,
    /// Four strands cross over and under in turn.
    CrossFour,
    /// The ends are pressed and tucked beneath.
    TuckEnds,
    /// Cuts in from the corners, every other tip to the middle.
    CutCorners,
    /// The middle is pressed down.
    PressMiddle,
    /// Four corners to the middle.
    CornersIn,
    /// Two opposite corners over the middle, one over the other.
    TwoCornersIn,
    /// Folded in half from side to side over the filling.
    FoldOver,
    /// Folded from corner to corner over the filling.
    FoldCorner,
    /// A round folded in half over the filling.
    FoldRound,
    /// Open edges pressed shut.
    PressEdges,
    /// The edges gathered in the middle.
    Gather,
    /// The edges gathered over the filling.
    GatherFilling,
    /// Turned over and rounded under the hand.
    TurnOver,
    /// The far and the near third folded to the middle.
    FoldThirds,
    /// Rolled to an oval with its seam beneath.
    RollOval,
    /// Rolled up as long as the tin.
    RollForTin,
    /// Set in the tin with its seam beneath.
    SetInTin,
    /// What the author says.
    Own,
}

impl Frame {
    /// A stage without lengths.
    pub fn new(does: Does, marks: Vec<Mark>) -> Self {
        Self { does, marks, across: None, up: None }
    }

    /// With the level length shown.
    pub(super) fn across(self, from: f64, to: f64) -> Self {
        Self { across: Some([from, to]), ..self }
    }

    /// With the upright length shown.
    pub(super) fn up(self, from: f64, to: f64) -> Self {
        Self { up: Some([from, to]), ..self }
    }

    /// The corners of the box that holds all of it: near left, far right.
    pub fn bounds(&self) -> [At; 2] {
        let points = self.marks.iter().flat_map(Mark::points);
        let nothing = [[f64::INFINITY; 2], [f64::NEG_INFINITY; 2]];
        points.fold(nothing, |[low, high], at| {
            [
                [low[0].min(at[0]), low[1].min(at[1])],
                [high[0].max(at[0]), high[1].max(at[1])],
            ]
        })
    }

    /// The stage a quarter turn to the right.
    pub fn turned(&self) -> Self {
        let marks = self.marks.iter().map(|mark| mark.moved(&|[x, y]| [y, -x]));
        let (across, up) = (self.up, self.across);
        Self { does: self.does, marks: marks.collect(), across, up }
    }

    /// Width and height of the box that holds it.
    pub fn size(&self) -> At {
        let [low, high] = self.bounds();
        [0, 1].map(|axis| (high[axis] - low[axis]).max(0.0))
    }

    /// The piece as it lies there, without movements, numbers and what is no longer there.
    #[must_use]
    pub fn lying(&self) -> Self {
        let marks = self.marks.iter().filter(|mark| mark.lies()).cloned().collect();
        Self::new(self.does, marks)
    }

    /// The room that it takes, to the hundredth of a millimetre; `None` where nothing lies
    /// there.
    pub fn footprint(&self) -> Option<Footprint> {
        let [length, width] = self.lying().size().map(|side| {
            // In range by the clamp; not-a-number becomes nought.
            let hundredths = (side.clamp(0.0, 1e6) * 1000.0).round() as i64;
            Length::centimetres(exact(hundredths, 1000))
        });
        let size = Size::new(length, width);
        let is_half = matches!(self.marks.first(), Some(Mark::Dough(at)) if at.len() == 3)
            && self.right_angle().is_some();
        size.area().is_positive().then_some(Footprint { size, is_half })
    }

    /// The corner of its box at which a triangle has its right angle.
    pub fn right_angle(&self) -> Option<At> {
        let [low, high] = self.bounds();
        let Some(Mark::Dough(corners)) = self.marks.first() else { return None };
        let at = |corner: At| corners.iter().any(|it| near(*it, corner));
        let box_corners = [low, [high[0], low[1]], high, [low[0], high[1]]];
        let held = box_corners.map(at);
        // Three corners of the box: the right angle is the one between the other two.
        let missing = held.iter().position(|held| !held)?;
        let three = held.iter().filter(|held| **held).count() == 3;
        three.then(|| box_corners[(missing + 2) % 4])
    }
}

impl Mark {
    /// Whether it is part of the piece as it lies there.
    fn lies(&self) -> bool {
        match self {
            Self::Arrow(..) | Self::Number(..) | Self::Ghost(_) | Self::Cut(_) => false,
            Self::Dough(_)
            | Self::Flap(_)
            | Self::Strand(..)
            | Self::Edge(_)
            | Self::Fold(_)
            | Self::Seam(_)
            | Self::Spine(_)
            | Self::Filling(_)
            | Self::Tin(_) => true,
        }
    }

    /// Every point of it.
    pub fn points(&self) -> Vec<At> {
        match self {
            Self::Dough(at)
            | Self::Flap(at)
            | Self::Edge(at)
            | Self::Fold(at)
            | Self::Cut(at)
            | Self::Seam(at)
            | Self::Spine(at)
            | Self::Ghost(at)
            | Self::Filling(at)
            | Self::Tin(at) => at.clone(),
            Self::Strand(one, other) => [one.as_slice(), other].concat(),
            Self::Arrow(from, to) => vec![*from, *to],
            Self::Number(at, _) => vec![*at],
        }
    }

    /// The mark with every point moved.
    pub fn moved(&self, by: &dyn Fn(At) -> At) -> Self {
        let all = |points: &[At]| points.iter().copied().map(by).collect();
        match self {
            Self::Dough(at) => Self::Dough(all(at)),
            Self::Flap(at) => Self::Flap(all(at)),
            Self::Strand(one, other) => Self::Strand(all(one), all(other)),
            Self::Edge(at) => Self::Edge(all(at)),
            Self::Fold(at) => Self::Fold(all(at)),
            Self::Cut(at) => Self::Cut(all(at)),
            Self::Seam(at) => Self::Seam(all(at)),
            Self::Spine(at) => Self::Spine(all(at)),
            Self::Ghost(at) => Self::Ghost(all(at)),
            Self::Filling(at) => Self::Filling(all(at)),
            Self::Tin(at) => Self::Tin(all(at)),
            Self::Arrow(from, to) => Self::Arrow(by(*from), by(*to)),
            Self::Number(at, number) => Self::Number(by(*at), *number),
        }
    }
}

/// A rectangle between two opposite corners.
pub(super) fn block([left, near]: At, [right, far]: At) -> Vec<At> {
    vec![[left, near], [right, near], [right, far], [left, far]]
}

/// A round by 32 corners.
pub(super) fn disc([x, y]: At, radius: f64) -> Vec<At> {
    let at = |n: u32| {
        let (sin, cos) = (f64::from(n) * std::f64::consts::TAU / 32.0).sin_cos();
        [x + radius * cos, y + radius * sin]
    };
    (0..32).map(at).collect()
}

fn near(one: At, other: At) -> bool {
    (0..2).all(|axis| (one[axis] - other[axis]).abs() < 1e-6)
}

/// The point so far on the way from one point to another.
pub(super) fn between(from: At, to: At, share: f64) -> At {
    [0, 1].map(|axis| from[axis] + share * (to[axis] - from[axis]))
}

/// The two sides of a strand along `line`, by half its width at each point.
pub(super) fn sides(line: &[At], half: impl Fn(usize) -> f64) -> [Vec<At>; 2] {
    let last = line.len().saturating_sub(1);
    let side = |sign: f64| {
        (0..line.len())
            .map(|at| {
                let (from, to) = (line[at.saturating_sub(1)], line[(at + 1).min(last)]);
                let (run, rise) = (to[0] - from[0], to[1] - from[1]);
                let long = run.hypot(rise).max(1e-9);
                let out = sign * half(at);
                [line[at][0] - rise / long * out, line[at][1] + run / long * out]
            })
            .collect()
    };
    [side(1.0), side(-1.0)]
}

/// A spiral from the middle outwards, going round so often.
pub(super) fn spiral([x, y]: At, radius: f64, wraps: f64) -> Vec<At> {
    let wraps = wraps.clamp(0.5, 12.0);
    let steps = (wraps * 20.0).round() as u32;
    let at = |step: u32| {
        let share = f64::from(step) / f64::from(steps.max(1));
        let (sin, cos) = (share * wraps * std::f64::consts::TAU).sin_cos();
        [x + radius * share * sin, y - radius * share * cos]
    };
    (0..=steps).map(at).collect()
}
