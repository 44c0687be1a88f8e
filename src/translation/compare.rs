//! How far a translated text stands for its original: by the original's mark, by its
//! numbers and by its cautions.

use std::collections::BTreeSet;

use crate::fault::Placed;
use crate::model::{Block, Brace, Inline, Step, TranslatedPart, TranslatedText};

use super::Names;
use super::numbers::numbers;

/// How far a translated text stands for its original.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Standing {
    /// It was made from the original as it is now.
    Current,
    /// The original has changed since, or it is not known.
    Behind,
    /// Its numbers are not the original's: it is not shown.
    Apart,
}

/// A text that stands under one heading, or in one head.
pub(super) struct Prose<'a> {
    /// Its heading; title and summary of a head.
    pub(super) titles: [&'a str; 2],
    /// How to tell that the step is done.
    pub(super) until: Option<&'a [Inline<Brace>]>,
    /// What is said.
    pub(super) blocks: &'a [Block<Brace>],
}

/// A head and the prose beneath it.
pub(super) fn of_head<'a>(
    title: &'a Placed<String>,
    summary: &'a str,
    blocks: &'a [Block<Brace>],
) -> Prose<'a> {
    Prose { titles: [&title.value, summary], until: None, blocks }
}

pub(super) fn of_text(text: &TranslatedText) -> Prose<'_> {
    of_head(&text.title, &text.summary, &text.opening)
}

pub(super) fn of_step(step: &Step) -> Prose<'_> {
    Prose {
        titles: [&step.title.value, ""],
        until: step.until.as_deref(),
        blocks: &step.prose,
    }
}

pub(super) fn of_part(part: &TranslatedPart) -> Prose<'_> {
    Prose {
        titles: [&part.title.value, ""],
        until: part.until.as_deref(),
        blocks: &part.prose,
    }
}

/// Another way to do a step, in the original or translated, by its name.
pub(super) fn of_other<'a>(
    name: &'a str,
    until: Option<&'a [Inline<Brace>]>,
    blocks: &'a [Block<Brace>],
) -> Prose<'a> {
    Prose { titles: [name, ""], until, blocks }
}

pub(super) fn of_heading<'a>(title: &'a str, blocks: &'a [Block<Brace>]) -> Prose<'a> {
    Prose { titles: [title, ""], until: None, blocks }
}

/// How far a translated text stands for its original.
pub(super) fn standing(
    original: &Prose,
    mark: &str,
    translated: &Prose,
    written: Option<&Placed<String>>,
    names: Names,
) -> Standing {
    if !other_numbers(original, translated, names).is_empty() {
        return Standing::Apart;
    }
    match written {
        Some(written) if written.value == mark => Standing::Current,
        Some(_) | None => Standing::Behind,
    }
}

/// The numbers that stand in one of two texts alone.
pub(super) fn other_numbers(
    original: &Prose,
    translated: &Prose,
    names: Names,
) -> BTreeSet<String> {
    // How to tell that a step is done is shown as it is where it is not translated.
    let until = original.until.filter(|_| translated.until.is_some());
    let one = numbers(&Prose { until, ..*original }, names);
    let other = numbers(translated, names);
    one.symmetric_difference(&other).cloned().collect()
}

/// Every caution in a text.
pub(super) fn cautions(blocks: &[Block<Brace>]) -> Vec<&Block<Brace>> {
    blocks
        .iter()
        .flat_map(|block| match block {
            Block::Caution { .. } => vec![block],
            Block::List { items, .. } => {
                items.iter().flat_map(|item| cautions(item)).collect()
            }
            Block::Quote { content }
            | Block::Level { content, .. }
            | Block::Foreign { content, .. } => cautions(content),
            Block::Paragraph { .. }
            | Block::Heading { .. }
            | Block::Code { .. }
            | Block::Table { .. }
            | Block::Rule => Vec::new(),
        })
        .collect()
}

/// A text without its cautions.
pub(super) fn without_cautions(blocks: &[Block<Brace>]) -> Vec<Block<Brace>> {
    let kept = blocks.iter().filter_map(|block| match block {
        Block::Caution { .. } => None,
        Block::List { start, ticks, items } => {
            let items = items.iter().map(|item| without_cautions(item)).collect();
            Some(Block::List { start: *start, ticks: *ticks, items })
        }
        Block::Quote { content } => {
            Some(Block::Quote { content: without_cautions(content) })
        }
        Block::Level { level, content } => {
            Some(Block::Level { level: *level, content: without_cautions(content) })
        }
        Block::Paragraph { .. }
        | Block::Heading { .. }
        | Block::Foreign { .. }
        | Block::Code { .. }
        | Block::Table { .. }
        | Block::Rule => Some(block.clone()),
    });
    kept.collect()
}
