//! Quotations as what they are: a caution, what is said to some of those who bake, or a
//! quotation. The first words say it, as anyone would write them.

use crate::fault::{Fault, Place};
use crate::model::{Block, Brace, Inline, Level};
use crate::said;

use super::super::lexicon::Lexicon;
use super::caution::{self, bracketed};

/// Takes the words off that say what a quotation is.
type Behind<'f> = &'f dyn for<'t> Fn(&'t str) -> Option<&'t str>;

/// A quotation as what it is, without the words that said so.
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
    if let Some(level) = level(&mut content) {
        if cautions(&content) {
            faults.push(for_all(place));
        }
        return Block::Level { level, content };
    }
    if !announced(&mut content, &caution::behind) {
        return Block::Quote { content };
    }
    if holds(&content, &|block| matches!(block, Block::Level { .. })) {
        faults.push(for_all(place));
    }
    Block::Caution { content }
}

/// That a caution is said to some alone.
fn for_all(place: &Place) -> Fault {
    let fault = Fault::error("caution-for-some", place, said!("caution-for-some"));
    fault.help(said!("caution-for-some-help"))
}

/// Who a quotation is for, where it begins with words that say so.
fn level(content: &mut Vec<Block<Brace>>) -> Option<Level> {
    let mut levels = Level::ALL.into_iter();
    levels.find(|level| announced(content, &|text| behind_level(text, *level)))
}

/// What follows the words that say a quotation is for this level, and their sign.
fn behind_level(text: &str, level: Level) -> Option<&str> {
    let rest = Lexicon::all().find_map(|words| words.behind_level(text, level))?;
    behind_sign(&text[text.len() - rest..])
}

/// Whether a text cautions: by a quotation in it, or by how it begins.
fn cautions(content: &[Block<Brace>]) -> bool {
    let begins = match content.first() {
        Some(Block::Paragraph { content }) => {
            head(content).is_some_and(|(head, _)| caution::behind(&head).is_some())
        }
        _ => false,
    };
    begins || holds(content, &|block| matches!(block, Block::Caution { .. }))
}

/// Whether a block of this kind stands anywhere in a text.
fn holds(content: &[Block<Brace>], is_so: &dyn Fn(&Block<Brace>) -> bool) -> bool {
    content.iter().any(|block| {
        is_so(block)
            || match block {
                Block::List { items, .. } => items.iter().any(|item| holds(item, is_so)),
                Block::Quote { content }
                | Block::Caution { content }
                | Block::Level { content, .. }
                | Block::Foreign { content, .. } => holds(content, is_so),
                Block::Paragraph { .. }
                | Block::Heading { .. }
                | Block::Code { .. }
                | Block::Table { .. }
                | Block::Rule => false,
            }
    })
}

/// What follows the sign that ends the words.
pub(super) fn behind_sign(rest: &str) -> Option<&str> {
    Some(rest.trim_start().strip_prefix([':', '!', '：'])?.trim_start())
}

/// Takes the words off a text whose first line begins with them, plain or stressed;
/// whether it did.
fn announced(content: &mut Vec<Block<Brace>>, behind: Behind) -> bool {
    let Some(Block::Paragraph { content: line }) = content.first_mut() else {
        return false;
    };
    let Some((text, taken)) = head(line) else { return false };
    if !alone(line, behind) {
        return false;
    }
    let Some(rest) = behind(&text) else { return false };
    line.drain(..taken);
    match line.first() {
        Some(Inline::Break) if rest.is_empty() => drop(line.remove(0)),
        _ if rest.is_empty() => {}
        _ => line.insert(0, Inline::Text { text: rest.to_owned() }),
    }
    if line.is_empty() {
        content.remove(0);
    }
    true
}

/// The plain text that a line begins with, with stressed words before it, and how many
/// inlines that is: `**Caution**: The tray …`.
fn head(line: &[Inline<Brace>]) -> Option<(String, usize)> {
    match line {
        [Inline::Text { text }, ..] => Some((text.clone(), 1)),
        [Inline::Emphasis { content } | Inline::Strong { content }, rest @ ..] => {
            let [Inline::Text { text: word }] = &content[..] else { return None };
            match rest {
                [Inline::Text { text }, ..] => Some((format!("{word}{text}"), 2)),
                _ => Some((word.clone(), 1)),
            }
        }
        _ => None,
    }
}

/// Whether a stressed beginning is the words alone: a whole stressed sentence keeps its
/// stress.
fn alone(line: &[Inline<Brace>], behind: Behind) -> bool {
    match line {
        [Inline::Emphasis { content } | Inline::Strong { content }, ..] => {
            let [Inline::Text { text: word }] = &content[..] else { return false };
            behind(word).is_none_or(str::is_empty)
        }
        _ => true,
    }
}

#[cfg(test)]
mod tests {
    use crate::fault::{Fault, Place};
    use crate::model::{Block, Inline, Level};

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
            "> Beginners need time.",
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

    #[test]
    fn a_line_for_some_begins_with_whom_it_is_for() {
        for (text, level) in [
            ("> Beginners: Wait.", Level::Beginners),
            ("> **For beginners:** Wait.", Level::Beginners),
            ("> If you have done this before: Wait.", Level::Practised),
            ("> Si vous l'avez déjà fait : Wait.", Level::Practised),
            ("> *Für Anfänger*: Wait.", Level::Beginners),
            ("> Si ya lo ha hecho: Wait.", Level::Practised),
            ("> はじめての方へ：Wait.", Level::Beginners),
        ] {
            let (block, faults) = read(text);
            let words = vec![Inline::Text { text: "Wait.".into() }];
            let content = vec![Block::Paragraph { content: words }];
            assert_eq!(block, Block::Level { level, content }, "{text}");
            assert!(faults.is_empty(), "{text}");
        }
    }

    #[test]
    fn a_caution_is_for_all() {
        for text in [
            "> Beginners: The tray:\n>\n> > Caution: It is hot.",
            "> Beginners: Caution: The tray is hot.",
            "> Caution: The tray is hot.\n>\n> > Beginners: Wear gloves.",
        ] {
            let (_, faults) = read(text);
            let names: Vec<_> = faults.iter().map(|fault| fault.name).collect();
            assert_eq!(names, ["caution-for-some"], "{text}");
        }
    }
}
