//! Words and numbers in a sentence.

use crate::measure::{Exact, exact, parse};

/// A word of a sentence and where it stands.
#[derive(Clone, Copy, Debug)]
pub(super) struct Word<'a> {
    /// Its letters, without the stops around it.
    pub(super) text: &'a str,
    /// Where it begins in the sentence, in bytes.
    pub(super) start: usize,
    /// Where it ends.
    pub(super) end: usize,
}

/// The words of a text. Figures are parted from the letters that follow them, `10min`, and from
/// the dash of a range, `20–25`.
pub(super) fn words(text: &str) -> Vec<Word<'_>> {
    let mut found = Vec::new();
    let mut start: Option<(usize, Kind)> = None;
    for (at, sign) in text.char_indices().chain([(text.len(), ' ')]) {
        let kind = kind(sign, text[at..].chars().nth(1), start.map(|(_, kind)| kind));
        match (start, kind) {
            (Some((_, before)), Some(now)) if before == now => {}
            (begun, now) => {
                if let Some((begin, _)) = begun {
                    found.push(Word { text: &text[begin..at], start: begin, end: at });
                }
                start = now.map(|kind| (at, kind));
            }
        }
    }
    found
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Figures,
    Letters,
    Dash,
}

/// What a sign belongs to; a point, stroke or comma belongs to figures where figures follow.
fn kind(sign: char, next: Option<char>, before: Option<Kind>) -> Option<Kind> {
    let figures = before == Some(Kind::Figures) && next.is_some_and(is_digit);
    match sign {
        _ if is_digit(sign) => Some(Kind::Figures),
        '.' | '/' | '⁄' | ',' if figures => Some(Kind::Figures),
        '-' | '–' | '—'
            if before == Some(Kind::Letters) && next.is_some_and(char::is_alphabetic) =>
        {
            Some(Kind::Letters)
        }
        '-' | '–' | '—' => Some(Kind::Dash),
        '°' | 'º' | '\'' | '’' => Some(Kind::Letters),
        _ if sign.is_alphanumeric() => Some(Kind::Letters),
        _ => None,
    }
}

fn is_digit(sign: char) -> bool {
    sign.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞".contains(sign)
}

/// Whether a word begins with figures.
pub(super) fn is_figure(word: &str) -> bool {
    word.starts_with(is_digit)
}

/// The worth of a number in words.
pub(super) fn word(word: &str) -> Option<Exact> {
    let whole = |number: i64| exact(number, 1);
    Some(match word.to_lowercase().as_str() {
        "half" | "one-half" => exact(1, 2),
        "third" | "one-third" => exact(1, 3),
        "two-thirds" => exact(2, 3),
        "quarter" | "one-quarter" | "one-fourth" | "fourth" => exact(1, 4),
        "three-quarters" | "three-fourths" => exact(3, 4),
        "one" => whole(1),
        "two" => whole(2),
        "three" => whole(3),
        "four" => whole(4),
        "five" => whole(5),
        "six" => whole(6),
        "seven" => whole(7),
        "eight" => whole(8),
        "nine" => whole(9),
        "ten" => whole(10),
        "eleven" => whole(11),
        "twelve" => whole(12),
        "fifteen" => whole(15),
        "twenty" => whole(20),
        "twenty-five" => whole(25),
        "thirty" => whole(30),
        "thirty-five" => whole(35),
        "forty" => whole(40),
        "forty-five" => whole(45),
        "fifty" => whole(50),
        "sixty" => whole(60),
        "ninety" => whole(90),
        _ => return None,
    })
}

/// The number that begins at a word, and how many words it takes: `1 1/2`, `two and a half`,
/// `half an`, `a quarter of an`, `an`.
pub(super) fn number(words: &[Word]) -> Option<(Exact, usize)> {
    let lower = |at: usize| {
        words.get(at).map_or_else(String::new, |word| word.text.to_lowercase())
    };
    let first = lower(0);
    if is_figure(&first) {
        let value = parse(&first, false)?;
        let part = words.get(1).filter(|next| {
            next.text.contains(['/', '½', '¼', '¾', '⅓', '⅔']) && is_figure(next.text)
        });
        let part = part
            .filter(|_| value.is_integer())
            .and_then(|part| parse(part.text, false))
            .filter(|part| *part < exact(1, 1));
        return Some(match part {
            Some(part) => (value + part, 2),
            None => fraction(value, &lower, 1),
        });
    }
    let article = usize::from(
        matches!(first.as_str(), "a" | "an")
            && ["quarter", "half", "third"].contains(&lower(1).as_str()),
    );
    if let Some(value) = word(&lower(article)) {
        return Some(fraction(value, &lower, article + 1));
    }
    matches!(first.as_str(), "a" | "an").then(|| (exact(1, 1), 1))
}

/// What may follow a number in words: `and a half`, `of an`, `an`.
fn fraction(value: Exact, lower: &dyn Fn(usize) -> String, at: usize) -> (Exact, usize) {
    if lower(at) == "and" {
        let skip = usize::from(matches!(lower(at + 1).as_str(), "a" | "an"));
        let part = word(&lower(at + 1 + skip)).filter(|part| *part < exact(1, 1));
        if let Some(part) = part {
            return (value + part, at + 2 + skip);
        }
    }
    if value < exact(1, 1) {
        let of = usize::from(lower(at) == "of");
        let article = usize::from(matches!(lower(at + of).as_str(), "a" | "an"));
        return (value, at + of + article);
    }
    (value, at)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_and_figures_are_parted() {
        let found: Vec<&str> = words("Bake 20–25min. at 350°F, well-beaten 1 1/2 h.")
            .iter()
            .map(|word| word.text)
            .collect();
        assert_eq!(
            found,
            [
                "Bake",
                "20",
                "–",
                "25",
                "min",
                "at",
                "350",
                "°F",
                "well-beaten",
                "1",
                "1/2",
                "h"
            ]
        );
    }

    #[test]
    fn numbers_as_they_are_said() {
        let cases = [
            ("1 1/2 hours", exact(3, 2), 2),
            ("1½ hours", exact(3, 2), 1),
            ("two and a half hours", exact(5, 2), 4),
            ("half an hour", exact(1, 2), 2),
            ("a quarter of an hour", exact(1, 4), 4),
            ("an hour", exact(1, 1), 1),
            ("three-quarters of an hour", exact(3, 4), 3),
        ];
        for (text, value, used) in cases {
            assert_eq!(number(&words(text)), Some((value, used)), "{text}");
        }
        assert_eq!(number(&words("some flour")), None);
    }
}
