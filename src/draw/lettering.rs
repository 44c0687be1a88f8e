//! Lettering: how wide a text comes out, measured on the typeface itself, so that no
//! label is clipped or laid over another.

use std::borrow::Cow;
use std::sync::OnceLock;

use ttf_parser::Face;

use crate::theme::Theme;

/// The usual size of a label, in units of the drawing: 10 px where a drawing 640 wide is
/// shown 320 px wide.
pub(super) const LABEL: f64 = 20.0;
/// The size of a panel's heading.
pub(super) const HEADING: f64 = 23.0;
/// How far letters rise above their line, as a share of their size.
pub(super) const RISE: f64 = 0.74;
/// How far letters hang below their line, as a share of their size.
pub(super) const DROP: f64 = 0.22;

/// The width of `text` at `size`, in the drawing's units. A character that the face lacks
/// counts as one em.
pub(super) fn width(text: &str, size: f64, bold: bool) -> f64 {
    text.chars().map(|letter| advance(letter, bold)).sum::<f64>() * size
}

/// `text` in lines no wider than `room`; a word wider than that stands alone.
pub(super) fn wrap(text: &str, size: f64, bold: bool, room: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let joined = lines.last().map(|line| format!("{line} {word}"));
        match (joined, lines.last_mut()) {
            (Some(joined), Some(line)) if width(&joined, size, bold) <= room => {
                *line = joined;
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// `text` cut to `room`, with an ellipsis where something is lost.
pub(super) fn shorten(text: &str, size: f64, bold: bool, room: f64) -> String {
    if width(text, size, bold) <= room {
        return text.to_owned();
    }
    let mut kept = String::new();
    let mut used = advance('…', bold) * size;
    for letter in text.chars() {
        used += advance(letter, bold) * size;
        if used > room {
            break;
        }
        kept.push(letter);
    }
    format!("{}…", kept.trim_end())
}

/// The letters whose widths are kept: Latin with its accents.
const KEPT: usize = 0x250;

/// How far one letter moves the pen, in ems.
fn advance(letter: char, bold: bool) -> f64 {
    static WIDTHS: OnceLock<[Vec<f64>; 2]> = OnceLock::new();
    let widths = WIDTHS.get_or_init(|| {
        let all =
            |bold| (0..KEPT as u32).filter_map(char::from_u32).map(move |it| (it, bold));
        [false, true].map(|bold| all(bold).map(|(it, bold)| look_up(it, bold)).collect())
    });
    let kept = widths[usize::from(bold)].get(letter as usize);
    kept.copied().unwrap_or_else(|| look_up(letter, bold))
}

/// The same from the face itself.
fn look_up(letter: char, bold: bool) -> f64 {
    static FACES: OnceLock<[Option<Face<'static>>; 2]> = OnceLock::new();
    let faces = FACES
        .get_or_init(|| [face("fonts/Asap-Regular.ttf"), face("fonts/Asap-Bold.ttf")]);
    let Some(face) = &faces[usize::from(bold)] else { return 1.0 };
    let glyph = face.glyph_index(letter).and_then(|id| face.glyph_hor_advance(id));
    glyph.map_or(1.0, |units| f64::from(units) / f64::from(face.units_per_em()))
}

fn face(path: &str) -> Option<Face<'static>> {
    match Theme::built_in().files.remove(path)? {
        Cow::Borrowed(bytes) => Face::parse(bytes, 0).ok(),
        Cow::Owned(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn widths_come_from_the_face() {
        let narrow = width("iii", 20.0, false);
        let wide = width("mmm", 20.0, false);
        assert!(narrow > 5.0 && wide > 2.0 * narrow, "{narrow} {wide}");
        assert!(width("60 cm", 20.0, true) < 70.0);
    }

    #[test]
    fn figures_are_all_of_one_width() {
        assert!((width("1111", 20.0, false) - width("8888", 20.0, false)).abs() < 1e-9);
    }

    #[test]
    fn long_texts_are_wrapped_or_shortened() {
        let lines = wrap("one two three four five six", 20.0, false, 100.0);
        assert!(lines.len() > 1);
        assert!(lines.iter().all(|line| width(line, 20.0, false) <= 100.0));
        let short = shorten("Chill after the second turn", 20.0, false, 120.0);
        assert!(short.ends_with('…') && width(&short, 20.0, false) <= 120.0);
    }
}
