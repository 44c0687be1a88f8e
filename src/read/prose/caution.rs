//! Quotations that caution: they begin with the word, as anyone would write it.

use crate::model::{Block, Brace, Inline};

/// The words that a caution begins with, in the languages that courses are written in.
const WORDS: [&str; 20] = [
    "caution",
    "warning",
    "danger",
    "attention",
    "avertissement",
    "prudence",
    "achtung",
    "vorsicht",
    "warnung",
    "gefahr",
    "atención",
    "advertencia",
    "precaución",
    "cuidado",
    "peligro",
    "注意",
    "警告",
    "危険",
    "ご注意",
    "要注意",
];

/// What follows the word and the sign that ends it.
pub(super) fn behind(text: &str) -> Option<&str> {
    let text = text.trim_start();
    let rest = WORDS.iter().find_map(|word| {
        let (head, rest) = text.split_at_checked(word.len())?;
        (head.to_lowercase() == *word).then_some(rest)
    })?;
    super::quotation::behind_sign(rest)
}

/// A mark in brackets such as other programs put before a quotation.
pub(super) fn bracketed(content: &[Block<Brace>]) -> Option<&str> {
    let Block::Paragraph { content } = content.first()? else { return None };
    let Inline::Text { text } = content.first()? else { return None };
    let (mark, _) = text.strip_prefix("[!")?.split_once(']')?;
    mark.chars().all(char::is_alphabetic).then(|| &text[..mark.len() + 3])
}
