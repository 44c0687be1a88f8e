//! The plate that a drawing is made on: shapes in painting order, and the frame of every
//! label, so that a later label can keep clear of the earlier ones.

use super::ink::{self, Ink};
use super::lettering::{self, DROP, LABEL, RISE};
use super::trace::Trace;

/// A place on the plate: x to the right, y downwards.
pub(in crate::draw) type Point = [f64; 2];

/// The width of a figure on a page of the site, in its own units.
pub(in crate::draw) const WIDTH: f64 = 640.0;

/// The width of a wide drawing. On a text area 170 mm wide its labels are 8.2 pt.
pub(in crate::draw) const WIDE: f64 = 1180.0;

/// Where an upright drawing is shown. Each form is drawn for its width, so that its labels are
/// as large as they must be there: 20 units are so many points on so many millimetres.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::draw) enum Format {
    /// A page of the site: 10 px and more on a phone.
    Page,
    /// A column of a student sheet, 84 mm: 8 pt.
    Column,
    /// The whole line of large print, 174 mm: 18 pt.
    Large,
    /// A column of a bench card, 86 mm: 12 pt.
    Card,
}

impl Format {
    /// Every form.
    #[cfg(test)]
    pub(in crate::draw) const ALL: [Self; 4] =
        [Self::Page, Self::Column, Self::Large, Self::Card];

    /// How wide its plate is, in units of the drawing.
    pub(in crate::draw) const fn width(self) -> f64 {
        match self {
            Self::Page => WIDTH,
            Self::Column => 590.0,
            Self::Large => 545.0,
            Self::Card => 404.0,
        }
    }

    /// How much of its usual height a sheet may take: paper has less room than a page.
    pub(in crate::draw) const fn height(self) -> f64 {
        match self {
            Self::Page => 1.0,
            Self::Column => 0.38,
            Self::Large | Self::Card => 0.55,
        }
    }
}

/// A rectangle that a label fills.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::draw) struct LabelBox {
    pub(in crate::draw) left: f64,
    pub(in crate::draw) top: f64,
    pub(in crate::draw) right: f64,
    pub(in crate::draw) bottom: f64,
}

/// One shape.
#[derive(Clone, Debug)]
pub(in crate::draw) enum Shape {
    /// An outline.
    Trace(Trace, Ink),
    /// A line of text.
    Text(Text),
}

/// Which part of a text stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::draw) enum Anchor {
    Start,
    Middle,
    End,
}

/// One line of text.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Text {
    pub(in crate::draw) text: String,
    pub(in crate::draw) at: Point,
    pub(in crate::draw) size: f64,
    pub(in crate::draw) bold: bool,
    pub(in crate::draw) anchor: Anchor,
    /// Set along the vertical, reading upwards.
    pub(in crate::draw) upright: bool,
    pub(in crate::draw) ink: Ink,
}

/// A drawing in the making.
#[derive(Clone, Debug)]
pub(in crate::draw) struct Plate {
    /// Width in the drawing's units.
    pub(in crate::draw) width: f64,
    /// Height in the drawing's units.
    pub(in crate::draw) height: f64,
    /// In painting order.
    pub(in crate::draw) shapes: Vec<Shape>,
    /// The frames of the labels so far.
    pub(in crate::draw) labels: Vec<LabelBox>,
}

impl Text {
    /// A text whose line begins at `at`.
    pub(in crate::draw) fn new(text: impl Into<String>, at: Point) -> Self {
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

    pub(in crate::draw) fn size(self, size: f64) -> Self {
        Self { size, ..self }
    }

    pub(in crate::draw) fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub(in crate::draw) fn middle(self) -> Self {
        Self { anchor: Anchor::Middle, ..self }
    }

    pub(in crate::draw) fn end(self) -> Self {
        Self { anchor: Anchor::End, ..self }
    }

    pub(in crate::draw) fn upright(self) -> Self {
        Self { upright: true, ..self }
    }

    pub(in crate::draw) fn ink(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// The rectangle that the text fills.
    pub(in crate::draw) fn frame(&self) -> LabelBox {
        let width = lettering::width(&self.text, self.size, self.bold);
        let before = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => width / 2.0,
            Anchor::End => width,
        };
        let (rise, drop, [x, y]) = (RISE * self.size, DROP * self.size, self.at);
        if self.upright {
            let bottom = y + before;
            LabelBox { left: x - rise, top: bottom - width, right: x + drop, bottom }
        } else {
            let left = x - before;
            LabelBox { left, top: y - rise, right: left + width, bottom: y + drop }
        }
    }
}

impl LabelBox {
    /// What holds nothing yet.
    pub(in crate::draw) const NOTHING: Self = Self {
        left: f64::INFINITY,
        top: f64::INFINITY,
        right: f64::NEG_INFINITY,
        bottom: f64::NEG_INFINITY,
    };

    /// A single place.
    pub(in crate::draw) fn at([x, y]: Point) -> Self {
        Self { left: x, top: y, right: x, bottom: y }
    }

    /// The frame, large enough for `point` too.
    pub(in crate::draw) fn with(self, point: Point) -> Self {
        self.joined(&Self::at(point))
    }

    /// The frame round both.
    pub(in crate::draw) fn joined(self, other: &Self) -> Self {
        Self {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// Whether the two share more than an edge, and more than the last digits of a float.
    pub(in crate::draw) fn overlaps(&self, other: &Self) -> bool {
        const SLIGHT: f64 = 1e-6;
        self.left + SLIGHT < other.right
            && other.left + SLIGHT < self.right
            && self.top + SLIGHT < other.bottom
            && other.top + SLIGHT < self.bottom
    }

    /// The frame, moved.
    pub(in crate::draw) fn moved(self, [x, y]: Point) -> Self {
        Self {
            left: self.left + x,
            top: self.top + y,
            right: self.right + x,
            bottom: self.bottom + y,
        }
    }

    /// The frame, larger by `margin` on every side.
    pub(in crate::draw) fn grown(self, margin: f64) -> Self {
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
    pub(in crate::draw) fn new(width: f64) -> Self {
        Self { width, height: 0.0, shapes: Vec::new(), labels: Vec::new() }
    }

    /// A closed outline.
    pub(in crate::draw) fn polygon(&mut self, points: &[Point], ink: Ink) {
        self.trace(Trace::closed(points), ink);
    }

    /// Closed outlines that do not lie over one another, as one shape.
    pub(in crate::draw) fn polygons<P: AsRef<[Point]>>(
        &mut self,
        outlines: &[P],
        ink: Ink,
    ) {
        let mut all = Trace::default();
        outlines.iter().for_each(|points| all.join(Trace::closed(points.as_ref())));
        if !all.is_empty() {
            self.trace(all, ink);
        }
    }

    /// A rectangle between two opposite corners.
    pub(in crate::draw) fn rectangle(&mut self, from: Point, to: Point, ink: Ink) {
        self.polygon(&corners(from, to), ink);
    }

    /// An open line through `points`.
    pub(in crate::draw) fn line(&mut self, points: &[Point], ink: Ink) {
        self.trace(Trace::open(points), ink);
    }

    /// An outline.
    pub(in crate::draw) fn trace(&mut self, trace: Trace, ink: Ink) {
        self.shapes.push(Shape::Trace(trace, ink));
    }

    pub(in crate::draw) fn circle(&mut self, centre: Point, radius: f64, ink: Ink) {
        self.trace(Trace::circle(centre, radius), ink);
    }

    pub(in crate::draw) fn text(&mut self, text: Text) {
        self.labels.push(text.frame());
        self.shapes.push(Shape::Text(text));
    }

    /// Lays another plate on this one, its corner at `corner`.
    pub(in crate::draw) fn lay(&mut self, other: Self, corner: Point) {
        let moved = |shape| match shape {
            Shape::Trace(trace, ink) => Shape::Trace(trace.moved(corner), ink),
            Shape::Text(text) => {
                let at = [text.at[0] + corner[0], text.at[1] + corner[1]];
                Shape::Text(Text { at, ..text })
            }
        };
        self.shapes.extend(other.shapes.into_iter().map(moved));
        self.labels.extend(other.labels.into_iter().map(|frame| frame.moved(corner)));
    }

    /// Whether `frame` lies on the plate's width and clear of all labels.
    pub(in crate::draw) fn is_free(&self, frame: &LabelBox) -> bool {
        frame.left >= 0.0
            && frame.top >= 0.0
            && frame.right <= self.width
            && !self.labels.iter().any(|label| label.overlaps(frame))
    }

    /// A number in a ring.
    pub(in crate::draw) fn ring(&mut self, centre: Point, number: usize) {
        self.circle(centre, ring_radius(number), ink::RING);
        let at = [centre[0], centre[1] + 0.36 * LABEL];
        let text = Text::new(number.to_string(), at).bold().middle();
        self.shapes.push(Shape::Text(text.ink(ink::LEAD)));
        self.labels.push(ring_frame(centre, number));
    }

    /// A panel's heading, its letters beneath `top`.
    pub(in crate::draw) fn heading(&mut self, text: &str, top: f64) {
        self.heading_at(text, [MARGIN, top]);
    }

    /// A panel's heading, its first letter beneath and right of a place.
    pub(in crate::draw) fn heading_at(&mut self, text: &str, [x, top]: Point) {
        let at = [x, top + lettering::HEADING * RISE];
        let text = Text::new(text, at).size(lettering::HEADING).bold().ink(ink::LEAD);
        self.text(text);
    }
}

/// The radius of the ring round a number.
pub(in crate::draw) const RING: f64 = 15.0;
/// What is left free at the sides of a figure.
pub(in crate::draw) const MARGIN: f64 = 24.0;

/// The radius of the ring round this number: three figures need a larger one.
pub(in crate::draw) fn ring_radius(number: usize) -> f64 {
    if number < 100 { RING } else { RING + 5.0 }
}

/// The square round the ring of a number.
pub(in crate::draw) fn ring_frame(centre: Point, number: usize) -> LabelBox {
    LabelBox::at(centre).grown(ring_radius(number))
}

/// The four corners of a rectangle.
pub(in crate::draw) fn corners([left, top]: Point, [right, bottom]: Point) -> [Point; 4] {
    [[left, top], [right, top], [right, bottom], [left, bottom]]
}
