//! The message files of a theme, in the syntax of Project Fluent: words, `{ $name }` where a
//! value goes, and choices between forms.
#![allow(clippy::wildcard_enum_match_arm, reason = "the syntax of messages is not ours")]

use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use fluent_syntax::parser;

use crate::fault::{Fault, Place};
use crate::said;
use crate::statement::Statement;
use crate::theme::Theme;
use crate::words::{Message, Piece, Words};

/// The words of a theme in a language, by its tag. What the language itself does not say is
/// said in English.
///
/// # Errors
/// The first fault in its files.
pub fn words_in(theme: &Theme, language: &str) -> Result<Words, Fault> {
    let mut words = Words::new(language);
    for path in theme.words_files(language) {
        add(&mut words, path, theme.text(path))?;
    }
    Ok(words)
}

/// Adds the messages of one file. What is said again is said anew.
///
/// # Errors
/// The first fault in it.
fn add(words: &mut Words, path: &str, text: &str) -> Result<(), Fault> {
    let file = path.into();
    let fault = |at: usize, message: Statement| {
        let end = text[at.min(text.len())..]
            .chars()
            .next()
            .map_or(at, |sign| at + sign.len_utf8());
        Fault::error("bad-value", &Place::new(&file, at.min(text.len()), end), message)
    };
    let resource = parser::parse_runtime(text).map_err(|(_, errors)| {
        let first = errors.into_iter().next();
        first.map_or_else(
            || fault(0, said!("words-unreadable")),
            |error| {
                let reason = error.kind.to_string();
                fault(error.pos.start, said!("words-unreadable-why", reason))
            },
        )
    })?;
    for entry in resource.body {
        // Comments say nothing to readers of pages.
        let Entry::Message(message) = entry else { continue };
        let key = message.id.name;
        let pieces = message.value.as_ref().map_or(Some(Vec::new()), pieces);
        let Some(pieces) = pieces else {
            // The key stands at the place that it was read from.
            let at = key.as_ptr() as usize - text.as_ptr() as usize;
            let known = said!("words-unknown-form");
            return Err(fault(at, known));
        };
        words.insert(key.to_owned(), Message::new(pieces));
    }
    Ok(())
}

/// A pattern taken apart; `None` where it holds what no message here may.
fn pieces(pattern: &Pattern<&str>) -> Option<Vec<Piece>> {
    let piece = |element: &PatternElement<&str>| match element {
        PatternElement::TextElement { value } => Some(Piece::Text((*value).to_owned())),
        PatternElement::Placeable { expression: Expression::Inline(inline) } => {
            match inline {
                InlineExpression::StringLiteral { value }
                | InlineExpression::NumberLiteral { value } => {
                    Some(Piece::Text((*value).to_owned()))
                }
                other => name(other).map(Piece::Gap),
            }
        }
        PatternElement::Placeable {
            expression: Expression::Select { selector, variants },
        } => {
            let mut forms = Vec::new();
            for variant in variants.iter().filter(|variant| !variant.default) {
                let (VariantKey::Identifier { name: key }
                | VariantKey::NumberLiteral { value: key }) = &variant.key;
                forms.push(((*key).to_owned(), pieces(&variant.value)?));
            }
            let other = variants.iter().find(|variant| variant.default)?;
            Some(Piece::Choice {
                of: name(selector)?,
                forms,
                other: pieces(&other.value)?,
            })
        }
    };
    pattern.elements.iter().map(piece).collect()
}

/// The name of a variable.
fn name(expression: &InlineExpression<&str>) -> Option<String> {
    match expression {
        InlineExpression::VariableReference { id } => Some(id.name.to_owned()),
        InlineExpression::StringLiteral { .. }
        | InlineExpression::NumberLiteral { .. }
        | InlineExpression::FunctionReference { .. }
        | InlineExpression::MessageReference { .. }
        | InlineExpression::TermReference { .. }
        | InlineExpression::Placeable { .. } => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<Words, Fault> {
        let mut words = Words::new("en");
        add(&mut words, "words/en/a.ftl", text).map(|()| words)
    }

    #[test]
    fn messages_are_taken_apart() {
        let text = "# Trays\ntrays = { $count ->\n    [one] { $count } tray\n   *[other] { $count } trays\n} here\nlist-comma = { \", \" }\n";
        let words = read(text).expect("it reads");
        assert_eq!(words.fill("trays", &[("count", "1")]), "1 tray here");
        assert_eq!(words.fill("trays", &[("count", "4")]), "4 trays here");
        assert_eq!(words.get("trays"), "{count} trays here");
        assert_eq!(words.get("list-comma"), ", ");
    }

    #[test]
    fn a_fault_has_its_place() {
        let fault = read("a = b\nc\nd = e\n").expect_err("it does not read");
        assert_eq!((fault.name, fault.place.start()), ("bad-value", 7));
        let fault = read("a = b\nc = { -brand }\n").expect_err("no terms here");
        assert_eq!(fault.place.start(), 6);
    }
}
