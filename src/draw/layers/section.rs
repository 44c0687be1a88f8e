//! The side view: parts of a sheet lying on one another, and flaps on their way over.
//! Lengths are to scale; the thickness is drawn larger, as it must be to be seen.

use crate::draw::system::arrow::apex;
use crate::draw::system::ink;
use crate::draw::system::plate::{Plate, Point};
use crate::draw::system::trace::Trace;

/// How thick one layer is drawn.
pub(in crate::draw) const THICK: f64 = 20.0;
/// How high a hop rises above its ends.
const HOP: f64 = 46.0;
/// How high the tip of a long flap is lifted at most.
const LIFT: f64 = 88.0;
/// The most fat layers drawn in one part: more would run together.
const MOST_SEAMS: u64 = 4;

/// What one layer of a side view is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::draw) enum Layer {
    /// Plain dough.
    Dough,
    /// Fat.
    Fat,
    /// Layered dough with so many fat layers.
    Layered(u64),
}

/// Layers that lie still, from the top down.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Bed {
    /// Left and right end.
    pub(in crate::draw) span: [f64; 2],
    /// From the top down.
    pub(in crate::draw) layers: Vec<Layer>,
    /// Whether the left and the right end are closed folds.
    pub(in crate::draw) closed: [bool; 2],
}

/// Layers on their way over, from the top down.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Flap {
    /// Where it bends.
    pub(in crate::draw) hinge: f64,
    /// Where its end lay before.
    pub(in crate::draw) end: f64,
    /// From the top down.
    pub(in crate::draw) layers: Vec<Layer>,
    /// How many layers lie where it comes down.
    pub(in crate::draw) onto: usize,
    /// How far along itself the arrow comes down, as a share of its length.
    pub(in crate::draw) reach: f64,
    /// Its place in the order.
    pub(in crate::draw) number: usize,
}

/// One moment of the folding.
#[derive(Clone, Debug, Default)]
pub(in crate::draw) struct Stage {
    /// What lies still.
    pub(in crate::draw) beds: Vec<Bed>,
    /// What moves.
    pub(in crate::draw) flaps: Vec<Flap>,
    /// Further moves: from, to, their place in the order.
    pub(in crate::draw) hops: Vec<(f64, f64, usize)>,
}

impl Stage {
    /// Flaps that come onto one bed.
    pub(in crate::draw) fn onto(bed: Bed, flaps: Vec<Flap>) -> Self {
        Self { beds: vec![bed], flaps, hops: Vec::new() }
    }
}

/// Where a slab lies: its upper corner, the way it runs, the way down through it.
#[derive(Clone, Copy, Debug)]
struct Pose {
    corner: Point,
    along: Point,
    down: Point,
}

impl Pose {
    fn level(corner: Point) -> Self {
        Self { corner, along: [1.0, 0.0], down: [0.0, 1.0] }
    }

    fn at(&self, along: f64, down: f64) -> Point {
        let place = |axis: usize| {
            self.corner[axis] + along * self.along[axis] + down * self.down[axis]
        };
        [place(0), place(1)]
    }

    fn quad(&self, length: f64, [top, bottom]: [f64; 2]) -> [Point; 4] {
        [
            self.at(0.0, top),
            self.at(length, top),
            self.at(length, bottom),
            self.at(0.0, bottom),
        ]
    }
}

impl Flap {
    fn length(&self) -> f64 {
        (self.end - self.hinge).abs()
    }

    /// 1 where the flap lies to the right of its hinge, -1 where to the left.
    fn side(&self) -> f64 {
        (self.end - self.hinge).signum()
    }

    /// How far it is lifted, as sine and cosine.
    fn lift(&self) -> (f64, f64) {
        let sine = (LIFT / self.length().max(1.0)).min(0.8);
        (sine, (1.0 - sine * sine).sqrt())
    }

    fn depth(&self) -> f64 {
        self.layers.len() as f64 * THICK
    }

    /// How much room it takes above the floor.
    fn height(&self) -> f64 {
        let landing = (self.onto + self.layers.len()) as f64 * THICK;
        (self.depth() + self.lift().0 * self.length()).max(landing) + apex(HOP) + 24.0
    }
}

impl Stage {
    /// Its left and its right end.
    pub(in crate::draw) fn span(&self) -> [f64; 2] {
        let closed = |bed: &Bed, at: usize| if bed.closed[at] { THICK } else { 0.0 };
        let beds = self
            .beds
            .iter()
            .map(|bed| [bed.span[0] - closed(bed, 0), bed.span[1] + closed(bed, 1)]);
        let flaps = self.flaps.iter().map(|flap| {
            // Its end leans out by as much as it is thick.
            let (sine, cosine) = flap.lift();
            let out = cosine * flap.length() + sine * flap.depth();
            let end = flap.hinge + flap.side() * out;
            [end.min(flap.hinge), end.max(flap.hinge)]
        });
        let nothing = [f64::INFINITY, f64::NEG_INFINITY];
        beds.chain(flaps)
            .fold(nothing, |[from, to], [left, right]| [from.min(left), to.max(right)])
    }
}

/// Draws one moment with its highest point at `top`; gives the height of its floor.
pub(in crate::draw) fn stage(plate: &mut Plate, stage: &Stage, top: f64) -> f64 {
    let beds = stage.beds.iter().map(|bed| bed.layers.len() as f64 * THICK);
    // The narrowest sets the steps for all: neighbours that differ by the last digit of a float
    // would otherwise rise in steps of their own, and meet.
    let narrowest =
        stage.hops.iter().map(|(from, to, _)| to - from).fold(f64::INFINITY, f64::min);
    let hops = stage
        .hops
        .iter()
        .map(|&(_, _, number)| 2.0 * THICK + apex(hop(narrowest, number)) + 24.0);
    let flaps = stage.flaps.iter().map(Flap::height);
    let floor = top + beds.chain(flaps).chain(hops).fold(0.0, f64::max);
    stage.flaps.iter().for_each(|flap| ghost(plate, flap, floor));
    stage.beds.iter().for_each(|bed| draw_bed(plate, bed, floor));
    stage.flaps.iter().for_each(|flap| draw_flap(plate, flap, floor));
    for &(from, to, number) in &stage.hops {
        let y = floor - 2.0 * THICK - 4.0;
        numbered_hop(plate, [[from, y], [to, y]], hop(narrowest, number), number);
    }
    floor
}

/// Draws layers that lie still on `floor`.
pub(in crate::draw) fn draw_bed(plate: &mut Plate, bed: &Bed, floor: f64) {
    let [left, right] = bed.span;
    let top = floor - bed.layers.len() as f64 * THICK;
    if bed.layers.len() == 2 {
        let middle = floor - THICK;
        bed.closed[0].then(|| plate.trace(half_disc([left, middle], false), ink::DOUGH));
        bed.closed[1].then(|| plate.trace(half_disc([right, middle], true), ink::DOUGH));
    }
    slabs(plate, Pose::level([left, top]), right - left, (&bed.layers, THICK));
}

/// Draws layers, each so thick, from the top down, with their upper left corner at
/// `corner`.
pub(in crate::draw) fn slabs_at(
    plate: &mut Plate,
    corner: Point,
    length: f64,
    layers: (&[Layer], f64),
) {
    slabs(plate, Pose::level(corner), length, layers);
}

fn slabs(plate: &mut Plate, pose: Pose, length: f64, (layers, thick): (&[Layer], f64)) {
    for (index, layer) in layers.iter().enumerate() {
        let top = index as f64 * thick;
        let outline = pose.quad(length, [top, top + thick]);
        match layer {
            Layer::Dough => plate.polygon(&outline, ink::DOUGH),
            Layer::Fat => {
                plate.polygon(&outline, ink::FAT);
                hatch_fat(plate, &outline);
            }
            Layer::Layered(count) => {
                plate.polygon(&outline, ink::DOUGH);
                seams(plate, pose, length, ([top, top + thick], *count));
            }
        }
    }
}

/// Hatches an outline as fat.
pub(in crate::draw) fn hatch_fat(plate: &mut Plate, outline: &[Point]) {
    plate.hatch(
        outline,
        crate::draw::system::hatch::Slant::degrees(45.0),
        9.0,
        ink::FAT_HATCH,
    );
}

/// The fat layers in one part, evenly spread; none in plain dough.
fn seams(
    plate: &mut Plate,
    pose: Pose,
    length: f64,
    ([top, bottom], count): ([f64; 2], u64),
) {
    if count == 0 {
        return;
    }
    let count = count.min(MOST_SEAMS) as f64;
    let step = (bottom - top) / (2.0 * count + 1.0);
    let seam = |index: u32| {
        let from = top + step * (2.0 * f64::from(index) + 1.0);
        pose.quad(length, [from, from + step])
    };
    let all: Vec<[Point; 4]> = (0..count as u32).map(seam).collect();
    plate.polygons(&all, ink::FAT_SEAM);
}

fn draw_flap(plate: &mut Plate, flap: &Flap, floor: f64) {
    let (sine, cosine) = flap.lift();
    let side = flap.side();
    let pose = Pose {
        corner: [flap.hinge, floor - flap.depth()],
        along: [side * cosine, -sine],
        down: [side * sine, cosine],
    };
    for depth in (1..=flap.layers.len()).rev() {
        let fat = flap.layers.get(depth - 1) == Some(&Layer::Fat);
        let ink = if fat { ink::FAT } else { ink::DOUGH };
        plate.trace(bend(&pose, depth as f64 * THICK, side), ink);
    }
    slabs(plate, pose, flap.length(), (&flap.layers, THICK));
    let tip = pose.at(flap.length(), 0.0);
    let reach = flap.hinge - side * flap.length() * flap.reach;
    let landing = (flap.onto + flap.layers.len()) as f64 * THICK;
    let way = [[tip[0], tip[1] - 6.0], [reach, floor - landing - 4.0]];
    numbered_hop(plate, way, HOP, flap.number);
}

/// How high a hop in a row rises: where the numbers would touch, every other one higher, and in
/// a very close row in more steps.
fn hop(wide: f64, number: usize) -> f64 {
    // A hop is 0.8 of a part wide, a ring 30 units: so many parts hold one.
    let levels =
        if wide < 28.0 { (24.8 / wide.max(1.0)).ceil().max(2.0) as usize } else { 1 };
    HOP + 48.0 * (number.saturating_sub(1) % levels) as f64
}

fn numbered_hop(plate: &mut Plate, [from, to]: [Point; 2], height: f64, number: usize) {
    plate.hop(from, to, height);
    let top = f64::midpoint(from[1], to[1]) - apex(height);
    plate.ring([f64::midpoint(from[0], to[0]), top], number);
}

/// Where a flap will lie.
fn ghost(plate: &mut Plate, flap: &Flap, floor: f64) {
    let bottom = floor - flap.onto as f64 * THICK;
    let end = 2.0 * flap.hinge - flap.end;
    plate.rectangle([flap.hinge, bottom - flap.depth()], [end, bottom], ink::GHOST);
}

/// The outside of a bend round the hinge.
fn bend(pose: &Pose, radius: f64, side: f64) -> Trace {
    let [x, y] = pose.corner;
    let down = [[x, y], [x, y + radius]];
    Trace::sector(down, radius, side < 0.0, pose.at(0.0, radius))
}

/// The closed end of two layers, bulging to the right or to the left.
fn half_disc([x, y]: Point, right: bool) -> Trace {
    Trace::half_disc([x, y - THICK], THICK, right, [x, y + THICK])
}
