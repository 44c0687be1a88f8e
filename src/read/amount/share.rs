//! Shares of what a formula has: `half of the butter`, `30 % of the flour`.

use crate::measure::{Exact, exact};
use crate::model::Share;

use super::super::lexicon::Lexicon;
use super::super::quantity::number;

/// A share in words at the start: `half of the butter`, `a third of the flour`, in any
/// language that there are words of; else all of it. The rest is what it is a share of.
pub(crate) fn share(text: &str) -> (Share, &str) {
    let text = text.trim();
    let all = Share { part: exact(1, 1), words: String::new() };
    if let Some((words, rest)) =
        text.split_once(" of the ").or_else(|| text.split_once(" of "))
    {
        return match part(words.trim()) {
            Some(part) => {
                let lead = text.len() - rest.len();
                (Share { part, words: text[..lead].trim().to_owned() }, rest.trim())
            }
            None => (all, text),
        };
    }
    if let Some((part, words, rest)) = Lexicon::all().find_map(|it| it.share(text)) {
        return (Share { part, words: words.to_owned() }, rest);
    }
    (all, text.strip_prefix("the ").unwrap_or(text))
}

/// A part of something in words or figures: `half`, `a quarter`, `1/3`, `30 %`.
pub(in crate::read) fn part(words: &str) -> Option<Exact> {
    Some(match words {
        "all" | "the rest" | "rest" => exact(1, 1),
        "half" => exact(1, 2),
        "a third" | "one third" => exact(1, 3),
        "two thirds" => exact(2, 3),
        "a quarter" | "one quarter" => exact(1, 4),
        "three quarters" => exact(3, 4),
        _ => {
            let (value, rest) = number(words, false)?;
            let value = if rest.trim() == "%" { value / exact(100, 1) } else { value };
            return (value > exact(0, 1) && value <= exact(1, 1)).then_some(value);
        }
    })
}
