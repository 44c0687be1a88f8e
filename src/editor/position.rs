//! Places as the protocol counts them: lines from 0, and in them units of UTF-16.

use std::ops::Range;

use serde_json::{Value, json};

use crate::encode;

/// A place as the protocol has it.
pub(super) fn position(text: &str, at: usize) -> Value {
    let before = text.get(..at).unwrap_or(text);
    let start = before.rfind('\n').map_or(0, |found| found + 1);
    let line = before.matches('\n').count();
    json!({ "line": line, "character": encode::letters(&before[start..], before.len()) })
}

/// A stretch as the protocol has it.
pub(super) fn range(text: &str, range: &Range<usize>) -> Value {
    json!({ "start": position(text, range.start), "end": position(text, range.end) })
}

/// The byte of a place as the protocol has it; a place behind a line's end is that end, one
/// within a letter that letter's beginning.
pub(super) fn byte(text: &str, place: &Value) -> usize {
    let number = |key: &str| {
        let number = place.get(key).and_then(Value::as_u64).unwrap_or(0);
        usize::try_from(number).unwrap_or(usize::MAX)
    };
    let (line, character) = (number("line"), number("character"));
    let mut lines = text.split_inclusive('\n');
    let start: usize = lines.by_ref().take(line).map(str::len).sum();
    let line = lines.next().unwrap_or("").trim_end_matches(['\n', '\r']);
    start + encode::byte(line, character)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// As the protocol's own example has it, a sign of two units counts as two: `a𐐀b`.
    #[test]
    fn units_of_utf16_are_counted() {
        let text = "é\r\na𐐀b卵🥐x\n";
        for at in (0..=text.len()).filter(|at| text.is_char_boundary(*at)) {
            let place = position(text, at);
            let back = byte(text, &place);
            let in_line_end = text[..at].ends_with('\r');
            assert!(back == at || in_line_end, "{at}: {place}");
        }
        let at = |line: u32, character: u32| {
            byte(text, &json!({ "line": line, "character": character }))
        };
        assert_eq!(at(1, 3), text.find('b').expect("b"));
        assert_eq!(at(1, 2), at(1, 1));
        assert_eq!(at(0, 99), "é".len());
        assert_eq!(at(99, 0), text.len());
        assert_eq!(position(text, text.find('x').expect("x"))["character"], 7);
    }
}
