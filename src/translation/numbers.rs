//! The numbers that a text says, in figures and in braces, in a form in which two languages
//! can be compared.

use std::collections::BTreeSet;

use crate::model::{Block, Brace, Inline, Live};

use super::Names;
use super::compare::Prose;

/// Parts of one that have a sign of their own.
const VULGAR: &str = "½⅓⅔¼¾⅛⅜⅝⅞";

/// Every number in a text, and every live value.
pub(super) fn numbers(text: &Prose, names: Names) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for title in text.titles {
        figures(title, &mut found);
    }
    for inline in text.until.into_iter().flatten() {
        of_inline(inline, names, &mut found);
    }
    for block in text.blocks {
        if let Block::Code { text } = block {
            figures(text, &mut found);
        }
        block.visit(&mut |inline| of_inline(inline, names, &mut found));
    }
    found
}

fn of_inline(inline: &Inline<Brace>, names: Names, found: &mut BTreeSet<String>) {
    match inline {
        Inline::Text { text } | Inline::Code { text } => figures(text, found),
        Inline::Live { value } => drop(found.insert(live(&value.value, names))),
        Inline::Picture { file, .. } => drop(found.insert(file.clone())),
        Inline::Emphasis { .. }
        | Inline::Strong { .. }
        | Inline::Link { .. }
        | Inline::Break => {}
    }
}

/// A live value, in braces as someone would write it.
fn live(live: &Live, names: Names) -> String {
    match live {
        Live::Temperature(degrees) => format!("{{{} °C}}", degrees.in_celsius()),
        Live::Size(size) => {
            format!("{{{} x {} cm}}", size.length.amount(), size.width.amount())
        }
        Live::Length(length) => format!("{{{} cm}}", length.amount()),
        Live::Pieces => "{pieces}".to_owned(),
        // What a way leaves out is spoken of otherwise than by a translation of the recipe.
        Live::LeftOut(name) => format!("{{no {name}}}"),
        Live::Named { share, name, .. } => {
            let name = names.meant(name);
            let whole = share.words.is_empty();
            if whole {
                format!("{{{name}}}")
            } else {
                format!("{{{} {name}}}", share.part)
            }
        }
    }
}

/// The numbers in figures: `1,5` is `1.5`, `2 000` is `2000`.
fn figures(text: &str, found: &mut BTreeSet<String>) {
    let mut number = String::new();
    let signs: Vec<char> = text.chars().collect();
    for (at, sign) in signs.iter().enumerate() {
        let digit = |at: usize| signs.get(at).is_some_and(char::is_ascii_digit);
        let wide = ('０'..='９').contains(sign);
        if sign.is_ascii_digit() {
            number.push(*sign);
        } else if wide {
            let narrow = char::from_u32(u32::from(*sign) - 0xfee0);
            number.extend(narrow);
        } else if !number.is_empty() && ".,".contains(*sign) && digit(at + 1) {
            number.push('.');
        } else if !number.is_empty()
            && "\u{a0}\u{202f}".contains(*sign)
            && (1..=3).all(|more| digit(at + more))
        {
            // Groups of thousands.
        } else {
            end(&mut number, found);
            if VULGAR.contains(*sign) {
                found.insert(sign.to_string());
            }
        }
    }
    end(&mut number, found);
}

fn end(number: &mut String, found: &mut BTreeSet<String>) {
    if !number.is_empty() {
        // `1.000` and `1,000` are a thousand in one language or the other; what matters is
        // that both say the same figures.
        found.insert(std::mem::take(number));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_found_in_any_language() {
        let said = |text: &str| {
            let mut found = BTreeSet::new();
            figures(text, &mut found);
            found.into_iter().collect::<Vec<_>>().join(" ")
        };
        assert_eq!(
            said("Rest 1.5 h, then 20–30 min."),
            said("Reposer 1,5 h, puis 20 à 30 min.")
        );
        assert_eq!(said("at 18:00"), "00 18");
        assert_eq!(said("two 2½ cups"), "2 ½");
        assert_eq!(said("2\u{202f}000 g"), "2000");
        assert_eq!(said("３個"), "3");
        assert_eq!(said("none at all"), "");
    }
}
