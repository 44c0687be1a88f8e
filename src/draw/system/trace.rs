//! Outlines as data, and their shortest writing in the path language of SVG: tenths of a
//! unit, each step from the last. The steps of a hatching then read alike, and what reads
//! alike takes next to no room in a packed page.

use super::plate::{LabelBox, Point};

/// One movement of the pen.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Step {
    Move(Point),
    Line(Point),
    /// Half a circle of this radius; clockwise or not.
    Arc(f64, bool, Point),
    /// Two handles and the end of a cubic curve.
    Curve([Point; 3]),
    Close,
}

/// An outline: any number of open and closed lines.
#[derive(Clone, Debug, Default, PartialEq)]
pub(in crate::draw) struct Trace {
    steps: Vec<Step>,
}

impl Trace {
    /// An open line through `points`.
    pub(in crate::draw) fn open(points: &[Point]) -> Self {
        let mut trace = Self::default();
        trace.run(points);
        trace
    }

    /// A closed line through `points`.
    pub(in crate::draw) fn closed(points: &[Point]) -> Self {
        let mut trace = Self::open(points);
        trace.steps.push(Step::Close);
        trace
    }

    /// A circle.
    pub(in crate::draw) fn circle([x, y]: Point, radius: f64) -> Self {
        let (left, right) = ([x - radius, y], [x + radius, y]);
        let half = |to| Step::Arc(radius, true, to);
        Self { steps: vec![Step::Move(left), half(right), half(left), Step::Close] }
    }

    /// A cubic curve.
    pub(in crate::draw) fn curve(from: Point, way: [Point; 3]) -> Self {
        Self { steps: vec![Step::Move(from), Step::Curve(way)] }
    }

    /// A closed outline from `from` along a line through `by` and an arc to `to`.
    pub(in crate::draw) fn sector(
        [from, by]: [Point; 2],
        radius: f64,
        clockwise: bool,
        to: Point,
    ) -> Self {
        let arc = Step::Arc(radius, clockwise, to);
        Self { steps: vec![Step::Move(from), Step::Line(by), arc, Step::Close] }
    }

    /// Half a disc from `from` round to `to`.
    pub(in crate::draw) fn half_disc(
        from: Point,
        radius: f64,
        clockwise: bool,
        to: Point,
    ) -> Self {
        let arc = Step::Arc(radius, clockwise, to);
        Self { steps: vec![Step::Move(from), arc, Step::Close] }
    }

    /// Adds an open line through `points`.
    pub(in crate::draw) fn run(&mut self, points: &[Point]) {
        let mut points = points.iter();
        self.steps.extend(points.next().map(|first| Step::Move(*first)));
        self.steps.extend(points.map(|point| Step::Line(*point)));
    }

    /// Adds another outline.
    pub(in crate::draw) fn join(&mut self, other: Self) {
        self.steps.extend(other.steps);
    }

    /// Whether there is nothing to draw.
    pub(in crate::draw) fn is_empty(&self) -> bool {
        self.steps.is_empty()
    }

    /// The outline, moved.
    pub(in crate::draw) fn moved(self, by: Point) -> Self {
        let shift = |[x, y]: Point| [x + by[0], y + by[1]];
        let step = |step| match step {
            Step::Move(to) => Step::Move(shift(to)),
            Step::Line(to) => Step::Line(shift(to)),
            Step::Arc(radius, clockwise, to) => Step::Arc(radius, clockwise, shift(to)),
            Step::Curve(way) => Step::Curve(way.map(shift)),
            Step::Close => Step::Close,
        };
        Self { steps: self.steps.into_iter().map(step).collect() }
    }

    /// A rectangle that holds it: arcs and curves with what they may reach.
    pub(in crate::draw) fn frame(&self) -> LabelBox {
        let mut frame = LabelBox::NOTHING;
        for step in &self.steps {
            match *step {
                Step::Move(to) | Step::Line(to) => frame = frame.with(to),
                Step::Arc(radius, _, to) => {
                    let whole = LabelBox::at(to).grown(radius);
                    frame = frame.joined(&whole);
                }
                Step::Curve(way) => frame = way.into_iter().fold(frame, LabelBox::with),
                Step::Close => {}
            }
        }
        frame
    }
}

/// Writes outlines in the path language, as one.
pub(in crate::draw) fn write_path(out: &mut String, traces: &[&Trace]) {
    // A step seldom takes more: the text then grows in place.
    out.reserve(10 * traces.iter().map(|trace| trace.steps.len()).sum::<usize>());
    let mut pen = Pen { path: out, begun: false, at: [0; 2], start: [0; 2] };
    traces.iter().flat_map(|trace| &trace.steps).for_each(|step| pen.draw(step));
}

/// Writes steps from where the last one ended, in tenths of a unit, so that no error adds
/// up along the way.
struct Pen<'a> {
    path: &'a mut String,
    begun: bool,
    at: [i64; 2],
    start: [i64; 2],
}

impl Pen<'_> {
    fn draw(&mut self, step: &Step) {
        match *step {
            Step::Move(to) => {
                self.path.push(if self.begun { 'm' } else { 'M' });
                self.begun = true;
                self.steps(&[to], false);
                self.start = self.at;
            }
            Step::Line(to) => self.line(to),
            Step::Arc(radius, clockwise, to) => {
                self.path.push('a');
                decimal(self.path, tenths(radius));
                self.path.push(' ');
                decimal(self.path, tenths(radius));
                self.path.push_str(if clockwise { " 0 0 1" } else { " 0 0 0" });
                self.steps(&[to], true);
            }
            Step::Curve(way) => {
                self.path.push('c');
                self.steps(&way, false);
            }
            Step::Close => {
                self.path.push('z');
                self.at = self.start;
            }
        }
    }

    fn line(&mut self, to: Point) {
        let [x, y] = to.map(tenths);
        let (run, rise) = (x - self.at[0], y - self.at[1]);
        let (verb, step) = match (run, rise) {
            (0, 0) => return,
            (run, 0) => ('h', run),
            (0, rise) => ('v', rise),
            _ => {
                self.path.push('l');
                return self.steps(&[to], false);
            }
        };
        self.path.push(verb);
        decimal(self.path, step);
        self.at = [x, y];
    }

    /// Writes the steps to `points`, all from where the pen is.
    fn steps(&mut self, points: &[Point], mut spaced: bool) {
        let mut end = self.at;
        for point in points {
            end = point.map(tenths);
            for axis in [0, 1] {
                let step = end[axis] - self.at[axis];
                if spaced && step >= 0 {
                    self.path.push(' ');
                }
                decimal(self.path, step);
                spaced = true;
            }
        }
        self.at = end;
    }
}

/// A place in tenths; what is no number, or out of all bounds, ends at one.
pub(in crate::draw) fn tenths(value: f64) -> i64 {
    // In range by the clamp; not-a-number becomes nought.
    (value.clamp(-1e9, 1e9) * 10.0).round() as i64
}

/// Writes tenths as a number, without an empty place.
pub(in crate::draw) fn decimal(out: &mut String, tenths: i64) {
    if tenths < 0 {
        out.push('-');
    }
    let (whole, rest) = (tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10);
    if whole > 0 || rest == 0 {
        // The greatest power of ten within the number: most have three digits at most.
        let mut power = 1;
        while whole / power >= 10 {
            power *= 10;
        }
        while power > 0 {
            digit(out, whole / power % 10);
            power /= 10;
        }
    }
    if rest > 0 {
        out.push('.');
        digit(out, rest);
    }
}

fn digit(out: &mut String, digit: u64) {
    out.push(char::from(b'0' + digit as u8));
}

/// Outlines in the path language, on their own.
#[cfg(test)]
pub(in crate::draw) fn path(traces: &[&Trace]) -> String {
    let mut path = String::new();
    write_path(&mut path, traces);
    path
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_are_written_from_the_last() {
        let mut trace = Trace::closed(&[[10.0, 20.0], [30.5, 20.0], [30.5, 8.0]]);
        trace.run(&[[9.0, 20.0], [9.5, 19.5]]);
        assert_eq!(path(&[&trace]), "M10 20h20.5v-12zm-1 0l.5-.5");
    }

    #[test]
    fn circles_and_curves_close_where_they_began() {
        let circle = Trace::circle([20.0, 10.0], 5.0);
        assert_eq!(path(&[&circle]), "M15 10a5 5 0 0 1 10 0a5 5 0 0 1-10 0z");
        let curve = Trace::curve([0.0, 0.0], [[0.0, -5.0], [9.0, -5.0], [9.0, 0.0]]);
        assert_eq!(path(&[&curve]), "M0 0c0-5 9-5 9 0");
        assert_eq!(curve.frame().top, -5.0);
    }

    #[test]
    fn no_error_adds_up() {
        let points: Vec<Point> = (0..100).map(|n| [f64::from(n) * 0.333, 0.0]).collect();
        let path = path(&[&Trace::open(&points)]);
        let sum: f64 =
            path.split('h').skip(1).filter_map(|s| s.parse::<f64>().ok()).sum();
        assert!((sum - 33.0).abs() < 1e-9, "{path}");
    }

    #[test]
    fn what_is_no_number_is_written_as_one() {
        let path = path(&[&Trace::open(&[[f64::NAN, f64::INFINITY], [1.0, -1e300]])]);
        assert!(!path.contains("NaN") && !path.contains("inf"), "{path}");
    }
}
