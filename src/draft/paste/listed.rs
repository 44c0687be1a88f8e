//! How an ingredient stands in a text: on a line of its own, or in one run with others.

use super::super::phrase;

/// Whether a line begins as an ingredient does: with a number, in figures or words, or a
/// pinch; or has its amount behind a comma.
pub(super) fn begins_as_ingredient(line: &str) -> bool {
    let last = line.split_once(", ").filter(|_| line.len() < 80);
    if last.is_some_and(|(_, amount)| is_amount(amount)) {
        return true;
    }
    let first = line.split_whitespace().next().unwrap_or("").to_lowercase();
    let measured = |word: &str| {
        ["pinch", "dash", "little", "few", "handful", "cup", "knob"].contains(&word)
    };
    let second = line.split_whitespace().nth(1).unwrap_or("").to_lowercase();
    phrase::is_figure(&first)
        || phrase::word(&first).is_some()
        || (matches!(first.as_str(), "a" | "an") && measured(&second))
        || measured(&first)
}

fn is_amount(text: &str) -> bool {
    let first = text.split_whitespace().next().unwrap_or("");
    phrase::is_figure(first) || phrase::word(first).is_some()
}

/// Whether a line tells what to do rather than name an ingredient.
pub(super) fn is_told(item: &str, line: &str) -> bool {
    let words = item.split_whitespace().count();
    let numbered =
        item.len() < line.len() && line.starts_with(|sign: char| sign.is_ascii_digit());
    words > 14 || (words > 4 && item.ends_with('.')) || (numbered && words > 3)
}

/// Ingredients in one run of text, parted by commas or semicolons outside brackets. What only
/// goes on (`cut into small pieces`) stays with its ingredient.
pub(super) fn run(text: &str) -> Vec<String> {
    let text = text.trim().trim_end_matches('.');
    let part = if text.contains(';') { ';' } else { ',' };
    let (mut found, mut depth): (Vec<String>, usize) = (Vec::new(), 0);
    let mut start = 0;
    for (at, sign) in text.char_indices().chain([(text.len(), part)]) {
        match sign {
            '(' => depth += 1,
            ')' => depth = depth.saturating_sub(1),
            sign if sign == part && (depth == 0 || at == text.len()) => {
                let piece = text[start..at].trim();
                start = at + 1;
                match found.last_mut() {
                    Some(last) if goes_on(piece) => {
                        last.push_str(", ");
                        last.push_str(piece);
                    }
                    _ if piece.is_empty() => {}
                    _ => {
                        found
                            .push(piece.strip_prefix("and ").unwrap_or(piece).to_owned());
                    }
                }
            }
            _ => {}
        }
    }
    found
}

fn goes_on(piece: &str) -> bool {
    let first = piece.split_whitespace().next().unwrap_or("");
    ["or", "cut", "well", "finely"].contains(&first)
        || (first.ends_with("ed") && first.len() > 4)
}
