//! Shapes to SVG. Deterministic, everything escaped, no identifiers, no styles and no
//! scripts: any number of drawings may stand in one page under a strict policy.

use std::fmt::Write;

use super::ink::Ink;
use super::plate::{Anchor, Plate, Point, Shape, Text};

/// The plate as a whole SVG document with its title and its written alternative.
pub(super) fn document(plate: &Plate, title: &str, alternative: &str) -> String {
    let size = format!("{} {}", number(plate.width), number(plate.height));
    let mut out = format!(
        concat!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {}" "#,
            r#"role="img" font-family="Asap, sans-serif"><title>{}</title><desc>{}</desc>"#
        ),
        size,
        escape(title),
        escape(alternative),
    );
    for shape in &plate.shapes {
        write_shape(&mut out, shape);
    }
    out.push_str("</svg>\n");
    out
}

fn write_shape(out: &mut String, shape: &Shape) {
    match shape {
        Shape::Polygon(points, ink) => {
            element(out, "polygon", *ink, &format!(r#"points="{}""#, list(points)));
        }
        Shape::Path(path, ink) => element(out, "path", *ink, &format!(r#"d="{path}""#)),
        Shape::Circle([x, y], radius, ink) => {
            let (x, y, r) = (number(*x), number(*y), number(*radius));
            element(out, "circle", *ink, &format!(r#"cx="{x}" cy="{y}" r="{r}""#));
        }
        Shape::Text(text) => write_text(out, text),
    }
}

fn element(out: &mut String, name: &str, ink: Ink, place: &str) {
    // Writing to a String cannot fail.
    let _ = write!(out, r#"<{name} class="{}" {} {place}/>"#, ink.class, ink.paint);
}

fn write_text(out: &mut String, text: &Text) {
    let (x, y, size) = (number(text.at[0]), number(text.at[1]), number(text.size));
    let anchor = match text.anchor {
        Anchor::Start => "",
        Anchor::Middle => r#" text-anchor="middle""#,
        Anchor::End => r#" text-anchor="end""#,
    };
    let weight = if text.bold { r#" font-weight="700""# } else { "" };
    let turned = if text.upright {
        format!(r#" transform="rotate(-90 {x} {y})""#)
    } else {
        String::new()
    };
    let _ = write!(
        out,
        r#"<text class="{}" {} x="{x}" y="{y}" font-size="{size}"{weight}{anchor}{turned}>{}</text>"#,
        text.ink.class,
        text.ink.paint,
        escape(&text.text),
    );
}

/// A number with at most two decimals and no empty ones.
pub(super) fn number(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" || !value.is_finite() { "0".to_owned() } else { text.to_owned() }
}

/// An open line in the path language.
pub(super) fn polyline(points: &[Point]) -> String {
    let mut path = String::new();
    for (index, [x, y]) in points.iter().enumerate() {
        let verb = if index == 0 { 'M' } else { 'L' };
        let _ = write!(path, "{verb}{} {}", number(*x), number(*y));
    }
    path
}

fn list(points: &[Point]) -> String {
    let pairs: Vec<String> =
        points.iter().map(|[x, y]| format!("{},{}", number(*x), number(*y))).collect();
    pairs.join(" ")
}

/// Text as it may stand in a document: markup escaped, characters that XML forbids left
/// out.
pub(super) fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\n' | '\t' | '\r' => out.push(' '),
            '\u{0}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => {}
            _ => out.push(letter),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short() {
        let cases =
            [(1.0, "1"), (1.005, "1"), (0.126, "0.13"), (-0.001, "0"), (f64::NAN, "0")];
        for (value, text) in cases {
            assert_eq!(number(value), text);
        }
    }

    #[test]
    fn hostile_text_stays_text() {
        let hostile = "</title><script>alert(1)</script> & \"x\" '\u{0}\u{7}";
        let svg = document(&Plate::new(10.0), hostile, hostile);
        assert!(!svg.contains("<script") && !svg.contains('\u{7}'));
        assert!(
            svg.contains(
                "&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;x&quot; &#39;"
            )
        );
    }
}
