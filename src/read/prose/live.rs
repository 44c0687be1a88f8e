//! Live values in plain text: `{190 °C}`. A brace behind a backslash is a plain brace.

use crate::fault::{Fault, Place, Placed};
use crate::model::{Brace, Inline, Live};
use crate::read::{amount, quantity};
use crate::said;

use super::Piece;

/// Splits a run of text at its braces.
pub(super) fn split(
    source: &str,
    place: &Place,
    run: &[Piece],
    faults: &mut Vec<Fault>,
) -> Vec<Inline<Brace>> {
    let line = MappedText::new(source, place, run);
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(open) = line.find('{', from) {
        let next = line.find('{', open + 1).unwrap_or(line.text.len());
        let Some(close) = line.find_before('}', open, next) else {
            faults.push(
                Fault::error(
                    "open-brace",
                    &line.place(open, open + 1),
                    said!("open-brace"),
                )
                .help(said!("open-brace-help")),
            );
            // What looks live up to there is live: it is not called plain.
            let text = line.text[from..next].to_owned();
            found.push(Inline::Text { text });
            from = next;
            continue;
        };
        plain(&line, from, open, &mut found, faults);
        let value = meaning(line.text[open + 1..close].trim(), &line.text[..open]);
        let value = Box::new(Placed::new(value, line.place(open, close + 1)));
        found.push(Inline::Live { value });
        from = close + 1;
    }
    plain(&line, from, line.text.len(), &mut found, faults);
    found
}

/// What stands in braces: a temperature, a size, a length, the pieces, or a name.
fn meaning(text: &str, before: &str) -> Live {
    if let Some(degrees) = quantity::temperature(text) {
        Live::Temperature(degrees)
    } else if let Some(size) = quantity::size(text) {
        Live::Size(size)
    } else if let Some(length) = quantity::length(text) {
        Live::Length(length)
    } else if text == "pieces" {
        Live::Pieces
    } else {
        let (share, name) = amount::share(text);
        let article = ARTICLES.iter().any(|article| ends_with_word(before, article));
        Live::Named { share, name: name.to_owned(), article }
    }
}

/// Words after which no article is put before a section's name.
const ARTICLES: [&str; 5] = ["the", "your", "this", "that", "all"];

fn ends_with_word(text: &str, word: &str) -> bool {
    let text = text.trim_end();
    let at = text.len().saturating_sub(word.len());
    let (rest, last) = text.split_at_checked(at).unwrap_or((text, ""));
    last.eq_ignore_ascii_case(word) && !rest.ends_with(char::is_alphanumeric)
}

fn plain(
    line: &MappedText,
    from: usize,
    to: usize,
    found: &mut Vec<Inline<Brace>>,
    faults: &mut Vec<Fault>,
) {
    if from == to {
        return;
    }
    let text = &line.text[from..to];
    faults.extend(looks_live(text).map(|(start, end)| {
        let words = &text[start..end];
        Fault::caution(
            "plain-amount",
            &line.place(from + start, from + end),
            said!("plain-amount", words),
        )
        .help(said!("plain-amount-help", words))
        .mended(line.place(from + start, from + end), format!("{{{words}}}"))
    }));
    found.push(Inline::Text { text: text.to_owned() });
}

/// Text put together from pieces, with the way back to the source.
struct MappedText<'a> {
    text: String,
    /// Where each piece begins in the text and in the source.
    starts: Vec<(usize, usize)>,
    /// Bytes of the text that stand behind a backslash.
    escaped: Vec<usize>,
    place: &'a Place,
}

impl<'a> MappedText<'a> {
    fn new(source: &str, place: &'a Place, run: &[Piece]) -> Self {
        let mut line =
            Self { text: String::new(), starts: Vec::new(), escaped: Vec::new(), place };
        for piece in run {
            line.starts.push((line.text.len(), piece.range.start));
            let before = piece.range.start.checked_sub(1);
            if before.is_some_and(|at| source.as_bytes().get(at) == Some(&b'\\')) {
                line.escaped.push(line.text.len());
            }
            line.text.push_str(&piece.text);
        }
        line
    }

    fn find(&self, sign: char, from: usize) -> Option<usize> {
        self.find_before(sign, from, self.text.len())
    }

    fn find_before(&self, sign: char, from: usize, to: usize) -> Option<usize> {
        self.text[from..to]
            .match_indices(sign)
            .map(|(at, _)| from + at)
            .find(|at| self.escaped.binary_search(at).is_err())
    }

    fn place(&self, start: usize, end: usize) -> Place {
        self.place.part(self.source(start), self.source(end))
    }

    fn source(&self, at: usize) -> usize {
        let after = self.starts.partition_point(|(start, _)| *start <= at);
        let piece = after.checked_sub(1).and_then(|piece| self.starts.get(piece));
        piece.map_or(at, |(start, source)| source + at - start)
    }
}

/// The first temperature that stands as plain text.
fn looks_live(text: &str) -> Option<(usize, usize)> {
    let sign = text.find("°C").or_else(|| text.find("°F"))?;
    let before = text[..sign].trim_end();
    let digits = before.trim_end_matches(|c: char| c.is_ascii_digit());
    (digits.len() < before.len()).then_some((digits.len(), sign + "°C".len()))
}

#[cfg(test)]
mod tests {
    use super::super::read;
    use super::*;

    fn inlines(text: &str) -> (Vec<Inline<Brace>>, Vec<Fault>) {
        let mut faults = Vec::new();
        let place = Place::new(&"a.md".into(), 0, text.len());
        let blocks = read(text, &place, &mut faults).blocks;
        let mut found = Vec::new();
        for block in &blocks {
            block.visit(&mut |inline| found.push(inline.clone()));
        }
        (found, faults)
    }

    #[test]
    fn braces_are_live_and_know_their_place() {
        let text = "Bake the *{dough}* at {190 °C}, not in \\{braces}.";
        let (found, faults) = inlines(text);
        let live: Vec<_> = found
            .iter()
            .filter_map(|inline| match inline {
                Inline::Live { value } => {
                    Some(&text[value.place.start()..value.place.end()])
                }
                _ => None,
            })
            .collect();
        assert_eq!(live, ["{dough}", "{190 °C}"]);
        assert!(faults.is_empty(), "{faults:?}");
    }

    #[test]
    fn what_looks_live_is_pointed_out() {
        let (_, faults) = inlines("Bake at 190 °C.");
        assert_eq!(faults[0].name, "plain-amount");
        assert_eq!((faults[0].place.start(), faults[0].place.end()), (8, 15));
        let (_, faults) = inlines("Bake at {190 °C.");
        assert_eq!(faults[0].name, "open-brace");
    }

    #[test]
    fn html_and_code_stay_text() {
        let (found, _) = inlines("a <b>c</b> `{x}`");
        assert!(
            found.contains(&Inline::Text { text: "a <b>c</b> ".into() }),
            "{found:?}"
        );
        assert!(found.contains(&Inline::Code { text: "{x}".into() }));
    }
}
