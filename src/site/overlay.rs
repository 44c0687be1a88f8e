//! Drawings laid over one another: what is the same in all of them is in the page once.
//!
//! The drawings of one fold at four batch sizes in two unit systems differ in a few
//! labels, seldom in a line. Where drawings have the same shapes in the same order, only
//! the shapes that differ are repeated, each with the classes of the batches and the unit
//! system that it serves.

use crate::draw::bare;

use super::html::escape;
use super::vary::{batch_classes, class_list};

/// One drawing, and when it is shown.
#[derive(Clone, Copy)]
pub(super) struct Sheet<'a> {
    /// `m` or `u`.
    pub(super) unit: &'a str,
    /// The batch.
    pub(super) key: &'a str,
    /// The SVG document.
    pub(super) svg: &'a str,
}

/// One drawing taken apart.
struct Taken<'a> {
    sheet: Sheet<'a>,
    /// Its first tag.
    open: &'a str,
    /// What is in it, in order.
    shapes: Vec<&'a str>,
}

/// Drawings that have the same kinds of shapes in the same order.
type Pile<'p, 'a> = Vec<&'p Taken<'a>>;

/// The drawings as HTML, named `title`. `keys` are all the batches of the page.
pub(super) fn overlaid(title: &str, sheets: &[Sheet], keys: &[&str]) -> String {
    let bare: Vec<String> = sheets.iter().map(|sheet| bare(sheet.svg)).collect();
    let sheets = sheets.iter().zip(&bare).map(|(sheet, svg)| Sheet { svg, ..*sheet });
    let all: Vec<Taken> = sheets.filter_map(taken).collect();
    let mut piles: Vec<Pile> = Vec::new();
    for drawing in &all {
        match piles.iter_mut().find(|pile| alike(pile[0], drawing)) {
            Some(pile) => pile.push(drawing),
            None => piles.push(vec![drawing]),
        }
    }
    piles.iter().map(|pile| written(title, pile, keys)).collect()
}

/// Takes a drawing apart; `None` where there is none.
fn taken(sheet: Sheet) -> Option<Taken> {
    let svg = &sheet.svg[sheet.svg.find("<svg")?..];
    let (open, rest) = svg.split_at(svg.find('>')? + 1);
    let mut rest = rest.trim_end().strip_suffix("</svg>")?;
    let mut shapes = Vec::new();
    while let Some(length) = shape(rest) {
        let (one, after) = rest.split_at(length);
        // Title and description are left out: they would pop up under every pointer, and
        // the page has both beside the drawing.
        if !one.starts_with("<title") && !one.starts_with("<desc") {
            shapes.push(one);
        }
        rest = after;
    }
    Some(Taken { sheet, open, shapes })
}

/// The length of the shape that `text` begins with; `None` where it begins with none.
fn shape(text: &str) -> Option<usize> {
    let name = text.strip_prefix('<')?.split([' ', '>', '/']).next()?;
    let tag = text.find('>')?;
    if text[..tag].ends_with('/') {
        return Some(tag + 1);
    }
    let end = format!("</{name}>");
    Some(text.find(&end)? + end.len())
}

/// Whether two drawings have the same kinds of shapes in the same order on equal sheets.
fn alike(one: &Taken, other: &Taken) -> bool {
    one.open == other.open
        && one.shapes.len() == other.shapes.len()
        && one
            .shapes
            .iter()
            .zip(&other.shapes)
            .all(|(one, other)| kind(one) == kind(other))
}

/// A shape's tag and class.
fn kind(shape: &str) -> (&str, &str) {
    let tag = shape.split([' ', '>']).next().unwrap_or_default();
    let class = shape.split_once("class=\"").and_then(|(_, rest)| rest.split('"').next());
    (tag, class.unwrap_or_default())
}

/// A pile as one drawing; as one for each unit system where they differ in their batches.
fn written(title: &str, pile: &[&Taken], keys: &[&str]) -> String {
    let sheets: Vec<Sheet> = pile.iter().map(|drawing| drawing.sheet).collect();
    let write = |(unit, at): &(&str, Vec<&str>)| {
        let own = |one: &&&Taken| unit.is_empty() || one.sheet.unit == *unit;
        let own: Pile = pile.iter().filter(own).copied().collect();
        let open = own.first().map_or(String::new(), |one| named(one.open, title));
        let count = own.first().map_or(0, |one| one.shapes.len());
        let shapes: String =
            (0..count).map(|index| layered(&own, index, at.len())).collect();
        let classes = class_list(&["picture", unit, &batch_classes(at, keys.len())]);
        format!("<div class=\"{classes}\">{open}{shapes}</svg></div>")
    };
    times(&sheets).iter().map(write).collect()
}

/// The shape at `index` of every drawing of a pile that serves `of` batches: once where
/// they are equal.
fn layered(pile: &[&Taken], index: usize, of: usize) -> String {
    let both = pile.iter().any(|one| one.sheet.unit != pile[0].sheet.unit);
    let mut forms: Vec<(&str, Vec<Sheet>)> = Vec::new();
    for drawing in pile {
        let shape = drawing.shapes[index];
        match forms.iter_mut().find(|(form, _)| *form == shape) {
            Some((_, sheets)) => sheets.push(drawing.sheet),
            None => forms.push((shape, vec![drawing.sheet])),
        }
    }
    let form = |(shape, sheets): &(&str, Vec<Sheet>)| -> String {
        let mark = |(unit, at): &(&str, Vec<&str>)| {
            let unit = if both { unit } else { "" };
            marked(shape, &class_list(&[unit, &batch_classes(at, of)]))
        };
        times(sheets).iter().map(mark).collect()
    };
    forms.iter().map(form).collect()
}

/// When some drawings are shown: unit system and batches; one entry with no unit system
/// where both have the same batches.
fn times<'a>(sheets: &[Sheet<'a>]) -> Vec<(&'a str, Vec<&'a str>)> {
    let at = |unit: &str| -> Vec<&'a str> {
        sheets.iter().filter(|sheet| sheet.unit == unit).map(|sheet| sheet.key).collect()
    };
    let (metric, us) = (at("m"), at("u"));
    if metric == us {
        return vec![("", us)];
    }
    let all = [("m", metric), ("u", us)];
    all.into_iter().filter(|(_, at)| !at.is_empty()).collect()
}

/// The drawing's first tag with its name.
fn named(open: &str, title: &str) -> String {
    let open = open.strip_suffix('>').unwrap_or(open);
    format!("{open} aria-label=\"{}\">", escape(title))
}

/// The shape with more classes.
fn marked(shape: &str, classes: &str) -> String {
    if classes.is_empty() {
        return shape.to_owned();
    }
    if shape.contains(" class=\"") {
        return shape.replacen(" class=\"", &format!(" class=\"{classes} "), 1);
    }
    let end = shape.find([' ', '>', '/']).unwrap_or(shape.len());
    let (tag, rest) = shape.split_at(end);
    format!("{tag} class=\"{classes}\"{rest}")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn svg(size: &str, label: &str) -> String {
        format!(
            "<svg viewBox=\"0 0 {size} 9\"><title>Cut</title><desc>{label}</desc>\
             <path class=\"d-line\" d=\"M0 0\"/><text class=\"d-text\">{label}</text></svg>\n"
        )
    }

    fn laid(drawings: &[(&str, &str, String)]) -> String {
        let sheets: Vec<Sheet> =
            drawings.iter().map(|(unit, key, svg)| Sheet { unit, key, svg }).collect();
        overlaid("Cut", &sheets, &["x1", "x2"])
    }

    #[test]
    fn equal_drawings_carry_no_marks() {
        let one = svg("9", "5");
        let all = [("m", "x1"), ("u", "x1"), ("m", "x2"), ("u", "x2")];
        let all = all.map(|(unit, key)| (unit, key, one.clone()));
        let plain = "<div class=\"picture\"><svg viewBox=\"0 0 9 9\" aria-label=\"Cut\">\
                     <path class=\"d-line\" d=\"M0 0\"/><text class=\"d-text\">5</text></svg></div>";
        assert_eq!(laid(&all), plain);
    }

    #[test]
    fn only_what_differs_is_repeated() {
        let all = [
            ("m", "x1", svg("9", "5 cm")),
            ("m", "x2", svg("9", "9 cm")),
            ("u", "x1", svg("9", "2 in")),
            ("u", "x2", svg("9", "2 in")),
        ];
        let labels = "<path class=\"d-line\" d=\"M0 0\"/>\
                      <text class=\"m b b-x1 d-text\">5 cm</text>\
                      <text class=\"m b b-x2 d-text\">9 cm</text>\
                      <text class=\"u d-text\">2 in</text></svg></div>";
        let html = laid(&all);
        assert!(html.ends_with(labels), "{html}");
        assert_eq!(html.matches("<svg").count(), 1);
    }

    #[test]
    fn sheets_of_other_sizes_stand_apart() {
        let all = [
            ("m", "x1", svg("9", "5")),
            ("m", "x2", svg("8", "5")),
            ("u", "x1", svg("9", "5")),
            ("u", "x2", svg("7", "5")),
        ];
        let html = laid(&all);
        for classes in ["picture b b-x1", "picture m b b-x2", "picture u b b-x2"] {
            assert!(html.contains(&format!("<div class=\"{classes}\">")), "{html}");
        }
    }
}
