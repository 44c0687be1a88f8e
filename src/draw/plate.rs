//! The plate that a drawing is made on: shapes in painting order, and the frame of every
//! label, so that a later label can keep clear of the earlier ones.

use super::ink::{self, Ink};
use super::lettering::{self, DROP, LABEL, RISE};

/// A place on the plate: x to the right, y downwards.
pub(super) type Point = [f64; 2];

/// The width of every figure, in its own units.
pub(super) const WIDTH: f64 = 640.0;

/// A rectangle that a label fills.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Frame {
    pub(super) left: f64,
    pub(super) top: f64,
    pub(super) right: f64,
    pub(super) bottom: f64,
}

/// One shape.
#[derive(Clone, Debug)]
pub(super) enum Shape {
    /// A closed outline.
    Polygon(Vec<Point>, Ink),
    /// An outline in the path language of SVG.
    Path(String, Ink),
    /// A circle.
    Circle(Point, f64, Ink),
    /// A line of text.
    Text(Text),
}

/// Which part of a text stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// One line of text.
#[derive(Clone, Debug)]
pub(super) struct Text {
    pub(super) text: String,
    pub(super) at: Point,
    pub(super) size: f64,
    pub(super) bold: bool,
    pub(super) anchor: Anchor,
    /// Set along the vertical, reading upwards.
    pub(super) upright: bool,
    pub(super) ink: Ink,
}

/// A drawing in the making.
#[derive(Clone, Debug)]
pub(super) struct Plate {
    /// Width in the drawing's units.
    pub(super) width: f64,
    /// Height in the drawing's units.
    pub(super) height: f64,
    /// In painting order.
    pub(super) shapes: Vec<Shape>,
    /// The frames of the labels so far.
    pub(super) labels: Vec<Frame>,
}

impl Text {
    /// A text whose line begins at `at`.
    pub(super) fn new(text: impl Into<String>, at: Point) -> Self {
        Self {
            text: text.into(),
            at,
            size: LABEL,
            bold: false,
            anchor: Anchor::Start,
            upright: false,
            ink: ink::TEXT,
        }
    }

    pub(super) fn size(self, size: f64) -> Self {
        Self { size, ..self }
    }

    pub(super) fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub(super) fn middle(self) -> Self {
        Self { anchor: Anchor::Middle, ..self }
    }

    pub(super) fn end(self) -> Self {
        Self { anchor: Anchor::End, ..self }
    }

    pub(super) fn upright(self) -> Self {
        Self { upright: true, ..self }
    }

    pub(super) fn ink(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// The rectangle that the text fills.
    pub(super) fn frame(&self) -> Frame {
        let width = lettering::width(&self.text, self.size, self.bold);
        let before = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => width / 2.0,
            Anchor::End => width,
        };
        let (rise, drop, [x, y]) = (RISE * self.size, DROP * self.size, self.at);
        if self.upright {
            let bottom = y + before;
            Frame { left: x - rise, top: bottom - width, right: x + drop, bottom }
        } else {
            let left = x - before;
            Frame { left, top: y - rise, right: left + width, bottom: y + drop }
        }
    }
}

impl Frame {
    /// Whether the two share more than an edge.
    pub(super) fn overlaps(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }

    /// The frame, larger by `margin` on every side.
    pub(super) fn grown(self, margin: f64) -> Self {
        Self {
            left: self.left - margin,
            top: self.top - margin,
            right: self.right + margin,
            bottom: self.bottom + margin,
        }
    }
}

impl Plate {
    /// An empty plate.
    pub(super) fn new(width: f64) -> Self {
        Self { width, height: 0.0, shapes: Vec::new(), labels: Vec::new() }
    }

    pub(super) fn polygon(&mut self, points: impl Into<Vec<Point>>, ink: Ink) {
        self.shapes.push(Shape::Polygon(points.into(), ink));
    }

    /// A rectangle between two opposite corners.
    pub(super) fn rectangle(&mut self, from: Point, to: Point, ink: Ink) {
        self.polygon(corners(from, to), ink);
    }

    /// An open line through `points`.
    pub(super) fn line(&mut self, points: &[Point], ink: Ink) {
        self.shapes.push(Shape::Path(super::svg::polyline(points), ink));
    }

    pub(super) fn path(&mut self, path: String, ink: Ink) {
        self.shapes.push(Shape::Path(path, ink));
    }

    pub(super) fn circle(&mut self, centre: Point, radius: f64, ink: Ink) {
        self.shapes.push(Shape::Circle(centre, radius, ink));
    }

    pub(super) fn text(&mut self, text: Text) {
        self.labels.push(text.frame());
        self.shapes.push(Shape::Text(text));
    }

    /// Whether `frame` lies on the plate's width and clear of all labels.
    pub(super) fn is_free(&self, frame: &Frame) -> bool {
        frame.left >= 0.0
            && frame.top >= 0.0
            && frame.right <= self.width
            && !self.labels.iter().any(|label| label.overlaps(frame))
    }

    /// A number in a ring.
    pub(super) fn ring(&mut self, centre: Point, number: usize) {
        self.circle(centre, RING, ink::RING);
        // Three figures still go into the ring, in smaller letters.
        let size = if number < 100 { LABEL } else { 0.75 * LABEL };
        let at = [centre[0], centre[1] + 0.36 * size];
        let text = Text::new(number.to_string(), at).size(size).bold().middle();
        let text = text.ink(ink::LEAD);
        self.shapes.push(Shape::Text(text));
        self.labels.push(ring_frame(centre));
    }

    /// A panel's heading, its letters beneath `top`.
    pub(super) fn heading(&mut self, text: &str, top: f64) {
        let at = [MARGIN, top + lettering::HEADING * RISE];
        let text = Text::new(text, at).size(lettering::HEADING).bold().ink(ink::LEAD);
        self.text(text);
    }
}

/// The radius of the ring round a number.
pub(super) const RING: f64 = 15.0;
/// What is left free at the sides of a figure.
pub(super) const MARGIN: f64 = 24.0;

/// The square round a ring.
pub(super) fn ring_frame([x, y]: Point) -> Frame {
    Frame { left: x, top: y, right: x, bottom: y }.grown(RING)
}

/// The four corners of a rectangle.
pub(super) fn corners([left, top]: Point, [right, bottom]: Point) -> [Point; 4] {
    [[left, top], [right, top], [right, bottom], [left, bottom]]
}
