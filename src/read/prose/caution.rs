//! Quotations that caution: they begin with the word, as anyone would write it.

use crate::fault::{Fault, Place};
use crate::model::{Block, Brace, Inline};
use crate::said;

/// The words that a caution begins with, in the languages that courses are written in.
const WORDS: [&str; 3] = ["caution", "warning", "danger"];

/// A quotation as what it is: a caution, without the word that said so, or a quotation.
pub(super) fn quotation(
    mut content: Vec<Block<Brace>>,
    place: &Place,
    faults: &mut Vec<Fault>,
) -> Block<Brace> {
    if let Some(mark) = bracketed(&content) {
        let message = said!("caution-mark", mark);
        let help = said!("caution-mark-help");
        faults.push(Fault::error("caution-mark", place, message).help(help));
    }
    let Some(Block::Paragraph { content: line }) = content.first_mut() else {
        return Block::Quote { content };
    };
    if !announced(line) {
        return Block::Quote { content };
    }
    if line.is_empty() {
        content.remove(0);
    }
    Block::Caution { content }
}

/// Takes the word off a line that begins with it, plain or stressed; whether it did.
fn announced(line: &mut Vec<Inline<Brace>>) -> bool {
    let Some((head, taken)) = head(line) else { return false };
    let Some(rest) = behind_the_word(&head) else { return false };
    line.drain(..taken);
    match line.first() {
        Some(Inline::Break) if rest.is_empty() => drop(line.remove(0)),
        _ if rest.is_empty() => {}
        _ => line.insert(0, Inline::Text { text: rest.to_owned() }),
    }
    true
}

/// The plain text that a line begins with, with a stressed word before it, and how many
/// inlines that is: `**Caution**: The tray …`.
fn head(line: &[Inline<Brace>]) -> Option<(String, usize)> {
    match line {
        [Inline::Text { text }, ..] => Some((text.clone(), 1)),
        [Inline::Emphasis { content } | Inline::Strong { content }, rest @ ..] => {
            let [Inline::Text { text: word }] = &content[..] else { return None };
            // A whole stressed sentence keeps its stress: the word alone is taken off.
            let word_alone = behind_the_word(word).is_none_or(str::is_empty);
            match rest {
                [Inline::Text { text }, ..] => {
                    word_alone.then(|| (format!("{word}{text}"), 2))
                }
                _ => word_alone.then(|| (word.clone(), 1)),
            }
        }
        _ => None,
    }
}

/// What follows the word and the sign that ends it.
fn behind_the_word(text: &str) -> Option<&str> {
    let text = text.trim_start();
    let rest = WORDS.iter().find_map(|word| {
        let (head, rest) = text.split_at_checked(word.len())?;
        head.eq_ignore_ascii_case(word).then_some(rest)
    })?;
    Some(rest.trim_start().strip_prefix([':', '!', '：'])?.trim_start())
}

/// A mark in brackets such as other programs put before a quotation.
fn bracketed(content: &[Block<Brace>]) -> Option<&str> {
    let Block::Paragraph { content } = content.first()? else { return None };
    let Inline::Text { text } = content.first()? else { return None };
    let (mark, _) = text.strip_prefix("[!")?.split_once(']')?;
    mark.chars().all(char::is_alphabetic).then(|| &text[..mark.len() + 3])
}

#[cfg(test)]
mod tests {
    use crate::fault::{Fault, Place};
    use crate::model::{Block, Inline};

    fn read(text: &str) -> (Block<crate::model::Brace>, Vec<Fault>) {
        let place = Place::new(&"recipes/a.md".into(), 0, text.len());
        let mut faults = Vec::new();
        let mut prose = super::super::read(text, &place, &mut faults);
        (prose.blocks.remove(0), faults)
    }

    #[test]
    fn a_caution_begins_with_its_word() {
        for text in [
            "> Caution: The tray is hot.",
            "> caution:\n> The tray is hot.",
            "> **Caution:** The tray is hot.",
            "> *Caution*: The tray is hot.",
            "> Warning! The tray is hot.",
            "> **Danger:**\n> The tray is hot.",
        ] {
            let (block, faults) = read(text);
            let Block::Caution { content } = block else {
                panic!("{text} is no caution")
            };
            let words = vec![Inline::Text { text: "The tray is hot.".into() }];
            assert_eq!(content, [Block::Paragraph { content: words }], "{text}");
            assert!(faults.is_empty(), "{text}");
        }
    }

    #[test]
    fn a_word_of_its_own_and_lists_below_it() {
        let (block, _) = read("> Caution:\n>\n> - hot\n> - sharp");
        let Block::Caution { content } = block else { panic!("no caution") };
        assert!(matches!(&content[..], [Block::List { .. }]));
    }

    #[test]
    fn other_quotations_stay_quotations() {
        for text in [
            "> Caution is a virtue.",
            "> Cautions: none.",
            "> **Caution** helps.",
            "> Said the baker: caution!",
            "> Wait.",
        ] {
            assert!(matches!(read(text).0, Block::Quote { .. }), "{text}");
        }
    }

    #[test]
    fn a_mark_in_brackets_is_answered_with_the_word() {
        for text in ["> [!CAUTION]\n> Hot.", "> [!WARNING] Hot.", "> [!NOTE]\n> Hot."] {
            let (_, faults) = read(text);
            let [fault] = &faults[..] else { panic!("{text}: {faults:?}") };
            assert_eq!(fault.name, "caution-mark");
            let help = fault.help.as_ref().map(|help| help.key);
            assert_eq!(help, Some("caution-mark-help"));
        }
    }
}
