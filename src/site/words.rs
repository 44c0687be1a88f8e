//! The words of the trade, explained.

use serde::Serialize;

use super::engine::{Engine, TemplateFault};
use super::glossary::PAGE;
use super::html::Html;
use super::prose::Writer;
use super::shell::{Head, context, root};
use super::{Input, Page};

/// One word as the template sees it.
#[derive(Serialize)]
struct Word<'a> {
    name: &'a str,
    word: &'a str,
    also: &'a [String],
    meaning: Html,
}

/// The page of the words; none where the course explains none.
pub(super) fn page(
    input: &Input,
    engine: &Engine,
) -> Result<Option<Page>, TemplateFault> {
    if input.course.glossary.is_empty() {
        return Ok(None);
    }
    let head = Head {
        path: PAGE,
        title: input.words.get("page-words"),
        summary: input.words.get("page-words-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let (words, media) = (input.words, input.media);
    let root = root(PAGE);
    let writer =
        Writer { root: &root, keys: &[""], level: 3, words, media, glossary: None };
    let word = |one: &'_ crate::sheet::TradeWord| writer.write(&[&one.meaning]);
    let glossary = input.course.glossary.iter();
    let entries: Vec<Word> = glossary
        .map(|one| Word {
            name: &one.name,
            word: &one.word,
            also: &one.also,
            meaning: word(one),
        })
        .collect();
    let mut context = context(input, head);
    context.insert("entries", &entries);
    Ok(Some(Page::text(PAGE, engine.fill("words.html", &context)?)))
}
