//! Lettering: how wide a text comes out, measured on the typeface itself, so that no
//! label is clipped or laid over another.

use std::borrow::Cow;
use std::sync::OnceLock;

use ttf_parser::Face;

use crate::theme::Theme;

/// The usual size of a label, in units of the drawing: 10 px where a drawing 640 wide is
/// shown 320 px wide.
pub(in crate::draw) const LABEL: f64 = 20.0;
/// The size of a panel's heading.
pub(in crate::draw) const HEADING: f64 = 23.0;
/// How far letters rise above their line, as a share of their size.
pub(in crate::draw) const RISE: f64 = 0.74;
/// How far letters hang below their line, as a share of their size.
pub(in crate::draw) const DROP: f64 = 0.22;

/// The width of `text` at `size`, in the drawing's units. A character that the face lacks
/// counts as one em.
pub(in crate::draw) fn width(text: &str, size: f64, bold: bool) -> f64 {
    text.chars().map(|letter| advance(letter, bold)).sum::<f64>() * size
}

/// `text` in lines no wider than `room`; a word wider than that stands alone, and no line ends
/// at a no-break space. Scripts that put no spaces between words break between their letters.
pub(in crate::draw) fn wrap(text: &str, size: f64, bold: bool, room: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let is_break = |letter: char| letter.is_whitespace() && letter != '\u{a0}';
    for word in text.split(is_break).filter(|word| !word.is_empty()) {
        for (at, part) in parts(word).into_iter().enumerate() {
            let space = if at == 0 { " " } else { "" };
            let joined = lines.last().map(|line| format!("{line}{space}{part}"));
            match (joined, lines.last_mut()) {
                (Some(joined), Some(line)) if width(&joined, size, bold) <= room => {
                    *line = joined;
                }
                _ => lines.push(part.to_owned()),
            }
        }
    }
    lines
}

/// Signs that begin no line, and those that end none: JIS X 4051, as *Requirements for
/// Japanese Text Layout* (W3C) 3.1.7 and 3.1.8 list them; the commonest of them.
const NEVER_FIRST: &str =
    "、。，．・：；？！）］｝」』】〉》〕ーっゃゅょッャュョァィゥェォ々〜…";
const NEVER_LAST: &str = "（［｛「『【〈《〔";

/// A word at the places where a line may break in it.
fn parts(word: &str) -> Vec<&str> {
    let letters = word.char_indices().zip(word.char_indices().skip(1));
    let breaks = letters.filter(|((_, before), (_, after))| {
        is_spaceless(*before)
            && !NEVER_FIRST.contains(*after)
            && !NEVER_LAST.contains(*before)
    });
    let mut parts = Vec::new();
    let mut start = 0;
    for (_, (at, _)) in breaks {
        parts.push(&word[start..at]);
        start = at;
    }
    parts.push(&word[start..]);
    parts
}

/// Whether a letter is of a script that puts no spaces between words: kana, kanji and
/// their signs (Unicode blocks from CJK Radicals Supplement to fullwidth forms).
pub(in crate::draw) fn is_spaceless(letter: char) -> bool {
    matches!(letter, '\u{2e80}'..='\u{9fff}' | '\u{f900}'..='\u{faff}' | '\u{ff00}'..='\u{ffef}')
}

/// `text` cut to `room`, with an ellipsis where something is lost.
pub(in crate::draw) fn shorten(text: &str, size: f64, bold: bool, room: f64) -> String {
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
    fn words_without_spaces_break_between_letters() {
        let lines = wrap("点線：合わせ目。つまんで閉じます。", 20.0, false, 120.0);
        assert!(
            lines.len() > 1 && lines.iter().all(|it| width(it, 20.0, false) <= 140.0)
        );
        assert!(lines.iter().all(|line| !line.starts_with(['。', '：'])), "{lines:?}");
        assert_eq!(lines.concat(), "点線：合わせ目。つまんで閉じます。");
    }

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
