//! What the word at a place is: the name of something, a key, a link, a live value.

use std::ops::Range;

use serde_json::Value;

use crate::read::{Shape, schema_tree};

use super::holds::{self, Holds};
use super::keys;
use super::outline::Region;
use super::yaml::{self, Stands, Way};
use super::{Here, TICKET};

/// What a word is.
pub(super) enum Target<'a> {
    /// A name of something.
    Named(Holds, Range<usize>),
    /// A key, by the schema of what it holds.
    Key(&'a Value, Range<usize>),
    /// A link or a picture, by where it leads.
    Link(Range<usize>),
    /// What stands in braces.
    Live(Range<usize>),
    /// A word of prose.
    Word(Range<usize>),
}

/// What the word at the spot is.
pub(super) fn target<'a>(here: Here<'a>, shape: Shape) -> Option<Target<'a>> {
    match here.outline.region(here.spot.at) {
        Region::Keys(range) => keyed(here, (shape, ""), range),
        Region::Ticket(range) => keyed(here, (shape, TICKET), range),
        Region::Prose(range) => prose(here, &range),
        Region::Fence(_) | Region::Heading => None,
    }
}

fn keyed<'a>(
    here: Here<'a>,
    (shape, pointer): (Shape, &str),
    range: Range<usize>,
) -> Option<Target<'a>> {
    let at = yaml::at(here.spot.text, range, here.spot.at);
    let root = schema_tree(shape).pointer(pointer)?;
    let nodes = keys::reached(root, &at.way);
    match at.stands {
        Stands::Nowhere => None,
        Stands::Key(range) => {
            let name = here.words(&range).trim_matches(['"', '\'']);
            let named =
                nodes.iter().find_map(|node| Holds::of(keys::word(node, "x-keys")));
            let node =
                nodes.iter().flat_map(|node| keys::follow(node, Way::Key(name))).next();
            match named {
                Some(holds) => Some(Target::Named(holds, range)),
                None => node.map(|node| Target::Key(node, range)),
            }
        }
        Stands::Value(range) | Stands::Either(range) => {
            let inner = nodes.iter().flat_map(|node| keys::follow(node, Way::Item));
            let all: Vec<&Value> = nodes.iter().copied().chain(inner).collect();
            let holds =
                all.iter().find_map(|node| Holds::of(keys::word(node, "x-holds")))?;
            Some(Target::Named(holds, holds::own_range(here, holds, &range)))
        }
    }
}

/// In prose a live value, a link, or a plain word.
fn prose<'a>(here: Here<'a>, range: &Range<usize>) -> Option<Target<'a>> {
    let (text, at) = (here.spot.text, here.spot.at);
    let start =
        text[range.start..at].rfind('\n').map_or(range.start, |n| range.start + n + 1);
    let end = text[at..range.end].find('\n').map_or(range.end, |n| at + n);
    if let Some(range) = between(text, start..end, at, ("{", "}")) {
        return Some(Target::Live(range));
    }
    if let Some(range) = between(text, start..end, at, ("](", ")")) {
        return Some(Target::Link(range));
    }
    let joins = |sign: char| sign.is_alphanumeric() || sign == '-';
    let from = start + text[start..at].trim_end_matches(joins).len();
    let rest = &text[at..end];
    let to = at + (rest.len() - rest.trim_start_matches(joins).len());
    (from < to).then_some(Target::Word(from..to))
}

/// What stands between two signs around byte `at` of a line.
fn between(
    text: &str,
    line: Range<usize>,
    at: usize,
    (open, close): (&str, &str),
) -> Option<Range<usize>> {
    let from = line.start + text[line.start..at].rfind(open)? + open.len();
    if text[from..at].contains(close) {
        return None;
    }
    let to = at + text[at..line.end].find(close)?;
    Some(from..to)
}
