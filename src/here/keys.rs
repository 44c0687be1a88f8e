//! Keys and values, as the schema of the text has them.

use std::ops::Range;

use serde_json::Value;

use crate::read::{Shape, schema_tree};

use super::holds::{self, Holds};
use super::offer::{Offer, OfferKind, fits};
use super::yaml::{self, At, Stands, Way};
use super::{Here, TICKET};

/// What may be written in a stretch of keys and values. `pointer` leads to its schema.
pub(super) fn offers(
    here: Here,
    (shape, pointer): (Shape, &str),
    range: Range<usize>,
) -> Vec<Offer> {
    let at = yaml::at(here.spot.text, range, here.spot.at);
    let Some(root) = schema_tree(shape).pointer(pointer) else { return Vec::new() };
    let nodes = reached(root, &at.way);
    let kind = if pointer == TICKET { OfferKind::Row } else { OfferKind::Key };
    let keys = Keys { here, kind, at: &at };
    match &at.stands {
        Stands::Nowhere => Vec::new(),
        Stands::Key(range) => keys.of(&nodes, range, false),
        Stands::Value(range) => values(here, &nodes, range),
        Stands::Either(range) => {
            let mut found = keys.of(&nodes, range, true);
            found.extend(either(here, &nodes, (range, &at)));
            found
        }
    }
}

/// Values, or the items of a list whose dash is not written yet.
fn either(here: Here, nodes: &[&Value], (range, at): (&Range<usize>, &At)) -> Vec<Offer> {
    let is_list =
        |node: &&Value| node.get("items").is_some() && at.way.last() != Some(&Way::Item);
    let (lists, others): (Vec<&Value>, Vec<&Value>) =
        nodes.iter().partition(|node| is_list(node));
    let mut found = values(here, &others, range);
    let items: Vec<&Value> =
        lists.iter().flat_map(|list| follow(list, Way::Item)).collect();
    let mut listed = Keys { here, kind: OfferKind::Key, at }.of(&items, range, true);
    listed.extend(values(here, &items, range));
    for offer in listed.iter_mut().filter(|offer| offer.place.start == range.start) {
        offer.text = format!("- {}", offer.text);
    }
    found.extend(listed);
    found
}

/// A schema, or each of those that it lets choose.
fn choices(node: &Value) -> Vec<&Value> {
    match node.get("anyOf").and_then(Value::as_array) {
        Some(any) => any.iter().flat_map(choices).collect(),
        None => vec![node],
    }
}

/// The schemas that a way leads to.
pub(super) fn reached<'a>(root: &'a Value, way: &[Way]) -> Vec<&'a Value> {
    let mut nodes = choices(root);
    for step in way {
        nodes = nodes.into_iter().flat_map(|node| follow(node, *step)).collect();
    }
    nodes
}

/// The schemas one step further.
pub(super) fn follow<'a>(node: &'a Value, step: Way) -> Vec<&'a Value> {
    let next = match step {
        Way::Item => node.get("items").or(Some(node)),
        Way::Key(key) => {
            let named = node.get("properties").and_then(|all| all.get(key));
            named.or_else(|| node.get("additionalProperties").filter(|it| it.is_object()))
        }
    };
    next.map_or_else(Vec::new, choices)
}

/// The text of a word in a schema.
pub(super) fn word<'a>(node: &'a Value, key: &str) -> &'a str {
    node.get(key).and_then(Value::as_str).unwrap_or("")
}

struct Keys<'a> {
    here: Here<'a>,
    kind: OfferKind,
    at: &'a At<'a>,
}

impl Keys<'_> {
    /// The keys that are not there yet; each with its colon where there is none.
    fn of(&self, nodes: &[&Value], range: &Range<usize>, bare: bool) -> Vec<Offer> {
        let typed = self.here.typed(range);
        let mut found: Vec<Offer> = Vec::new();
        for node in nodes {
            let known =
                node.get("properties").and_then(Value::as_object).into_iter().flatten();
            let open = known.filter(|(key, _)| !self.at.beside.contains(&key.as_str()));
            for (key, inner) in open.filter(|(key, _)| fits(typed, key)) {
                let text = if bare { self.begun(key, inner) } else { key.clone() };
                let offer = Offer::whole(self.kind, key, range.clone()).written(text);
                found.push(offer.about(word(inner, "description")));
            }
            let named = Holds::of(word(node, "x-keys"));
            let names = named
                .map_or_else(Vec::new, |holds| holds::offers(self.here, holds, range));
            let inner = node.get("additionalProperties").unwrap_or(&Value::Null);
            for offer in
                names.into_iter().filter(|it| !self.at.beside.contains(&&*it.text))
            {
                let text = if bare {
                    self.begun(&offer.text, inner)
                } else {
                    offer.text.clone()
                };
                found.push(offer.written(text));
            }
        }
        found
    }

    /// A key with its colon, and the start of a line for what stands beneath it.
    fn begun(&self, key: &str, inner: &Value) -> String {
        let choices = choices(inner);
        let is = |node: &&Value, kind: &str| word(node, "type") == kind;
        let all = |kind: &str| choices.iter().all(|node| is(node, kind));
        let deeper = " ".repeat(self.at.indent + 2);
        let first = choices.first();
        if all("array") {
            format!("{key}:\n{deeper}- ")
        } else if first.is_some_and(|node| is(node, "object")) {
            format!("{key}:\n{deeper}")
        } else {
            format!("{key}: ")
        }
    }
}

/// The values that a key may have.
fn values(here: Here, nodes: &[&Value], range: &Range<usize>) -> Vec<Offer> {
    let mut found: Vec<Offer> = Vec::new();
    for node in nodes {
        let inner = node.get("items").into_iter().flat_map(choices);
        for node in std::iter::once(*node).chain(inner) {
            let new = fixed(here, node, range);
            let held = Holds::of(word(node, "x-holds"));
            let held =
                held.map_or_else(Vec::new, |holds| holds::offers(here, holds, range));
            let all = held.into_iter().chain(new);
            for offer in all {
                if !found.contains(&offer) {
                    found.push(offer);
                }
            }
        }
    }
    found
}

/// The values that a schema names, or has as examples.
fn fixed(here: Here, node: &Value, range: &Range<usize>) -> Vec<Offer> {
    let typed = here.typed(range);
    let lists =
        ["enum", "examples"].into_iter().filter_map(|key| node.get(key)?.as_array());
    let texts = lists.flatten().filter_map(|value| match value {
        Value::String(text) => Some(text.clone()),
        Value::Number(number) => Some(number.to_string()),
        Value::Null | Value::Bool(_) | Value::Array(_) | Value::Object(_) => None,
    });
    let offers = texts.filter(|text| fits(typed, text));
    offers.map(|text| Offer::whole(OfferKind::Value, &text, range.clone())).collect()
}
