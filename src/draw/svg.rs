//! Shapes to SVG. Deterministic, everything escaped, no identifiers, no styles and no
//! scripts: any number of drawings may stand in one page under a strict policy.

use std::fmt::Write;

use super::batch::batches;
use super::ink;
use super::lettering::LABEL;
use super::plate::{Anchor, Plate, Shape, Text};
use super::trace::{decimal, tenths, write_path};

/// The plate as a whole SVG document with its title and its written alternative.
pub(super) fn document(plate: &Plate, title: &str, alternative: &str) -> String {
    let size = format!("{} {}", number(plate.width), number(plate.height));
    let mut out = String::with_capacity(8192);
    // Writing to a String cannot fail, here and below.
    let _ = write!(
        out,
        concat!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {}" "#,
            r#"role="img" font-family="Asap, sans-serif" font-size="{}" fill="{}" "#,
            r#"stroke-linejoin="round"><title>{}</title><desc>{}</desc>"#
        ),
        size,
        number(LABEL),
        ink::LETTERING,
        escape(title),
        escape(alternative),
    );
    for batch in batches(&plate.shapes) {
        let _ =
            write!(out, r#"<path class="{}" {} d=""#, batch.ink.class, batch.ink.paint);
        write_path(&mut out, &batch.traces);
        out.push_str("\"/>");
    }
    // Lettering lies over everything.
    for shape in &plate.shapes {
        if let Shape::Text(text) = shape {
            write_text(&mut out, text);
        }
    }
    out.push_str("</svg>\n");
    out
}

/// A line of text; its size and colour only where they are not the drawing's own.
fn write_text(out: &mut String, text: &Text) {
    let _ = write!(out, r#"<text class="{}""#, text.ink.class);
    if !text.ink.paint.is_empty() {
        let _ = write!(out, " {}", text.ink.paint);
    }
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
    out.push_str(match text.anchor {
        Anchor::Start => "",
        Anchor::Middle => r#" text-anchor="middle""#,
        Anchor::End => r#" text-anchor="end""#,
    });
    let _ = write!(out, r#" x="{x}" y="{y}">{}</text>"#, escape(&text.text));
}

/// A number with at most one decimal, and no empty one.
fn number(value: f64) -> String {
    let mut text = String::new();
    decimal(&mut text, tenths(value));
    text
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
            [(1.0, "1"), (1.04, "1"), (0.126, ".1"), (-0.001, "0"), (f64::NAN, "0")];
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
