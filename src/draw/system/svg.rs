//! Shapes to SVG. Deterministic, everything escaped, no identifiers, no styles and no
//! scripts: any number of drawings may stand in one page under a strict policy.

use std::fmt::Write;

use crate::encode;

use super::batch::{JoinedPath, batches};
use super::ink::{self, Ink};
use super::lettering::{LABEL, is_spaceless, width};
use super::plate::{Anchor, Plate, Shape, Text};
use super::trace::{decimal, tenths, write_path};

/// A drawing, its shapes gathered and put into the path language, not painted yet: whole
/// it is an SVG document, and a page lays several over one another shape by shape.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawing {
    /// Its title.
    title: String,
    /// The same in words.
    said: String,
    /// Width and height, in tenths of its units.
    size: [i64; 2],
    /// Its shapes in painting order.
    marks: Vec<Element>,
}

/// One shape of a [`Drawing`] as an SVG element.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Element {
    /// What it is.
    kind: MarkKind,
    /// How it is painted.
    ink: Ink,
    /// Its attributes, each after a space.
    attributes: String,
    /// What stands in it, escaped.
    content: String,
}

/// What an SVG element is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum MarkKind {
    /// An outline.
    Path,
    /// A line of text.
    Text,
}

/// How far an element carries its own look.
#[derive(Clone, Copy)]
enum Look {
    /// With all that paper needs.
    Whole,
    /// A page's style sheet has the looks of the inks.
    Bare,
}

impl Drawing {
    /// The shapes of a plate, with its title and its written alternative.
    pub(in crate::draw) fn new(plate: &Plate, title: &str, said: &str) -> Self {
        let outline = |batch: JoinedPath| {
            let mut attributes = String::from(" d=\"");
            write_path(&mut attributes, &batch.traces);
            attributes.push('"');
            Element {
                kind: MarkKind::Path,
                ink: batch.ink,
                attributes,
                content: String::new(),
            }
        };
        let lettering = plate.shapes.iter().filter_map(|shape| match shape {
            Shape::Text(text) => Some(lettered(text)),
            Shape::Trace(..) => None,
        });
        // Lettering lies over everything.
        let marks = batches(&plate.shapes).into_iter().map(outline).chain(lettering);
        Self {
            title: title.to_owned(),
            said: said.to_owned(),
            size: [plate.width, plate.height].map(tenths),
            marks: marks.collect(),
        }
    }

    /// The whole SVG document.
    pub fn svg(&self) -> String {
        let mut out = self.head();
        let _ = write!(
            out,
            "><title>{}</title><desc>{}</desc>",
            escape(&self.title),
            escape(&self.said)
        );
        self.marks.iter().for_each(|mark| mark.write(&mut out, "", Look::Whole));
        out.push_str("</svg>\n");
        out
    }

    /// Height over width; `None` where it has no width.
    pub fn ratio(&self) -> Option<f64> {
        let [width, height] = self.size;
        (width > 0).then(|| height as f64 / width as f64)
    }

    /// How wide it is, in its own units.
    pub fn width(&self) -> f64 {
        self.size[0] as f64 / 10.0
    }

    /// Its shapes in painting order.
    pub fn marks(&self) -> &[Element] {
        &self.marks
    }

    /// Whether it has the same kinds of shapes as another, in the same order, and its size.
    pub fn is_like(&self, other: &Self) -> bool {
        let kinds = |drawing: &Self| {
            let kind = |mark: &Element| (mark.kind, mark.ink.class);
            drawing.marks.iter().map(kind).collect::<Vec<_>>()
        };
        self.size == other.size && kinds(self) == kinds(other)
    }

    /// The element that holds its shapes in a page, open: named, for the title and the
    /// description would pop up under every pointer, and the page has both beside it.
    pub fn open(&self, name: &str) -> String {
        format!("{} aria-label=\"{}\">", self.head(), escape(name))
    }

    /// The beginning of its first tag.
    fn head(&self) -> String {
        let mut out = String::with_capacity(8192);
        let [width, height] = self.size.map(of_tenths);
        // Writing to a String cannot fail, here and below.
        let _ = write!(
            out,
            concat!(
                r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {} {}" "#,
                r#"role="img" font-family="Asap, sans-serif" font-size="{}" fill="{}" "#,
                r#"stroke-linejoin="round""#
            ),
            width,
            height,
            number(LABEL),
            ink::LETTERING,
        );
        out
    }
}

impl Element {
    /// The element as a page has it: more `classes` before its own, without the look that
    /// [`crate::draw::style_rules`] gives it.
    pub fn on_page(&self, classes: &str) -> String {
        let mut out = String::new();
        self.write(&mut out, classes, Look::Bare);
        out
    }

    fn write(&self, out: &mut String, classes: &str, look: Look) {
        out.push_str(match self.kind {
            MarkKind::Path => "<path class=\"",
            MarkKind::Text => "<text class=\"",
        });
        if !classes.is_empty() {
            let _ = write!(out, "{classes} ");
        }
        let _ = write!(out, "{}\"", self.ink.class);
        match look {
            Look::Whole if !self.ink.paint.is_empty() => {
                let _ = write!(out, " {}", self.ink.paint);
            }
            Look::Whole | Look::Bare => {}
        }
        out.push_str(&self.attributes);
        match self.kind {
            MarkKind::Path => out.push_str("/>"),
            MarkKind::Text => {
                let _ = write!(out, ">{}</text>", self.content);
            }
        }
    }
}

/// A line of text; its size only where it is not the drawing's own.
fn lettered(text: &Text) -> Element {
    let mut out = String::new();
    if (text.size - LABEL).abs() > 0.001 {
        let _ = write!(out, r#" font-size="{}""#, number(text.size));
    }
    if text.bold {
        out.push_str(r#" font-weight="700""#);
    }
    let (x, y) = (number(text.at[0]), number(text.at[1]));
    if text.upright {
        let _ = write!(out, r#" transform="rotate(-90 {x} {y})""#);
    }
    let parted = parted(text);
    let anchor = match text.anchor {
        Anchor::Start => "",
        Anchor::Middle => r#" text-anchor="middle""#,
        Anchor::End => r#" text-anchor="end""#,
    };
    if parted.is_none() {
        out.push_str(anchor);
    }
    let _ = write!(out, r#" x="{x}" y="{y}""#);
    let content = parted.unwrap_or_else(|| escape(&text.text));
    Element { kind: MarkKind::Text, ink: text.ink, attributes: out, content }
}

/// A line of two scripts, each stretch of one at its own place. Who makes pictures of drawings
/// takes the letters that a face lacks from another one only where both set as many glyphs
/// for the whole line; a face that joins letters (`fi`) sets fewer. `None` where that cannot
/// be.
fn parted(text: &Text) -> Option<String> {
    let mut runs: Vec<String> = Vec::new();
    let mut was = None;
    for letter in text.text.chars() {
        let is = Some(is_spaceless(letter));
        match runs.last_mut() {
            Some(run) if was == is => run.push(letter),
            _ => runs.push(letter.to_string()),
        }
        was = is;
    }
    if runs.len() < 2 || !text.text.contains('f') {
        return None;
    }
    let widths: Vec<f64> =
        runs.iter().map(|run| width(run, text.size, text.bold)).collect();
    let whole: f64 = widths.iter().sum();
    let mut x = text.at[0]
        - match text.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => whole / 2.0,
            Anchor::End => whole,
        };
    let mut out = String::new();
    for (run, width) in runs.iter().zip(widths) {
        let _ = write!(out, r#"<tspan x="{}">{}</tspan>"#, number(x), escape(run));
        x += width;
    }
    Some(out)
}

/// A number with at most one decimal, and no empty one.
fn number(value: f64) -> String {
    of_tenths(tenths(value))
}

fn of_tenths(tenths: i64) -> String {
    let mut text = String::new();
    decimal(&mut text, tenths);
    text
}

/// Text as it may stand in a document: markup escaped, characters that XML forbids left
/// out.
pub(in crate::draw) fn escape(text: &str) -> String {
    let one_line = text.replace(['\n', '\t', '\r'], " ");
    encode::escape(&one_line.replace(char::is_control, ""))
}

/// An empty drawing of this width and height, for tests.
#[cfg(test)]
pub(crate) fn sized([width, height]: [f64; 2]) -> Drawing {
    Drawing::new(&Plate { height, ..Plate::new(width) }, "", "")
}

/// A drawing of one line and one label, for tests of those who lay drawings out.
#[cfg(test)]
pub(crate) fn labelled(width: f64, label: &str) -> Drawing {
    let mut plate = Plate::new(width);
    plate.height = 9.0;
    plate.line(&[[0.0, 0.0], [9.0, 0.0]], ink::CUT);
    plate.text(Text::new(label, [0.0, 0.0]));
    Drawing::new(&plate, "Cut", label)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short() {
        let cases =
            [(1.0, "1"), (1.04, "1"), (0.126, ".1"), (-0.001, "0"), (f64::NAN, "0")];
        for (value, text) in cases {
            assert_eq!(number(value), text);
        }
    }

    #[test]
    fn a_page_gives_the_looks_that_a_bare_shape_lost() {
        let mut plate = Plate::new(10.0);
        plate.line(&[[0.0, 0.0], [9.0, 0.0]], ink::CUT);
        let drawing = Drawing::new(&plate, "Cut", "");
        let bare = drawing.marks()[0].on_page("m");
        assert_eq!(bare, "<path class=\"m d-line d-cut\" d=\"M0 0h9\"/>");
        let whole = format!("<path class=\"d-line d-cut\" {} d=", ink::CUT.paint);
        assert!(drawing.svg().contains(&whole), "{}", drawing.svg());
    }

    /// A face that joins `fi` sets fewer letters than the one that has the comma: the line
    /// would keep a letter without a shape, which no handout may have.
    #[test]
    fn scripts_stand_each_at_its_own_place() {
        let mixed = labelled(200.0, "On first turn、50分").svg();
        assert!(
            mixed.contains("<tspan x=\"0\">On first turn</tspan><tspan x="),
            "{mixed}"
        );
        for plain in ["On first turn, 50 min", "まず50分"] {
            assert!(!labelled(200.0, plain).svg().contains("tspan"), "{plain}");
        }
    }

    #[test]
    fn hostile_text_stays_text() {
        let hostile = "</title><script>alert(1)</script> & \"x\" '\u{0}\u{7}";
        let svg = Drawing::new(&Plate::new(10.0), hostile, hostile).svg();
        assert!(!svg.contains("<script") && !svg.contains('\u{7}'));
        assert!(
            svg.contains(
                "&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;x&quot; &#39;"
            )
        );
    }
}
