//! Taking known keys out of a map, and naming the ones that nobody knows.

use crate::fault::{Fault, FileName, Place, Placed, clip, nearest};
use crate::said;
use crate::statement::Say;

use super::yaml::{self, Node};

/// A map's entries in the order written.
pub(super) type Entries = Vec<(Placed<String>, Placed<Node>)>;

/// The entries of `node`, which must be a map (or nothing).
pub(super) fn entries(node: Placed<Node>, faults: &mut Vec<Fault>) -> Entries {
    match node.value {
        Node::Map(entries) => entries,
        Node::Empty => Vec::new(),
        Node::Text(_) | Node::List(_) => {
            let message = said!("no-map");
            faults.push(
                Fault::error("bad-yaml", &node.place, message).help(said!("no-map-help")),
            );
            Vec::new()
        }
    }
}

/// Every entry of a file whose keys are names; none where it is no YAML.
pub(super) fn entries_of(
    file: &FileName,
    text: &str,
    faults: &mut Vec<Fault>,
) -> Entries {
    match yaml::parse(file, text, 0) {
        Ok(node) => entries(node, faults),
        Err(fault) => {
            faults.push(fault);
            Vec::new()
        }
    }
}

/// The keys and values of one map, taken out one by one.
pub(super) struct Fields<'a> {
    entries: Entries,
    keys: &'a [&'static str],
    place: Place,
    faults: &'a mut Vec<Fault>,
}

impl<'a> Fields<'a> {
    /// The fields of `node`, which must be a map (or nothing) and may have these keys.
    pub(super) fn new(
        node: Placed<Node>,
        keys: &'a [&'static str],
        faults: &'a mut Vec<Fault>,
    ) -> Self {
        let place = node.place.clone();
        Self { entries: entries(node, faults), keys, place, faults }
    }

    /// Where faults of these fields go.
    pub(super) fn faults(&mut self) -> &mut Vec<Fault> {
        self.faults
    }

    /// Every entry that is left, for maps in which some keys are names.
    pub(super) fn rest(self) -> Entries {
        self.entries
    }

    /// Takes the value of `key`; nothing where the key is missing or has no value. Where it
    /// is missing and another is written that can only be meant as it, that one's value is
    /// taken: the slip is named, and nothing that rests on the key is missed.
    pub(super) fn take(&mut self, key: &'static str) -> Option<Placed<Node>> {
        let written = |name: &str| self.entries.iter().position(|it| it.0.value == name);
        let at = written(key).or_else(|| {
            let means = |name: &str| {
                !self.keys.contains(&name)
                    && nearest(name, self.keys.iter().copied()) == Some(key)
            };
            self.entries.iter().position(|(name, _)| means(&name.value))
        })?;
        let (name, value) = self.entries.remove(at);
        if name.value != key {
            self.faults.push(unknown(&name, self.keys));
        }
        (value.value != Node::Empty).then_some(value)
    }

    /// Takes the items of a list of `key: value` lines; what is no such list is a fault.
    pub(super) fn items(
        &mut self,
        key: &'static str,
        example: impl Say,
    ) -> Vec<Placed<Node>> {
        let Some(node) = self.take(key) else { return Vec::new() };
        match node.value {
            Node::List(items) => items,
            Node::Map(_) => vec![node],
            Node::Text(_) | Node::Empty => {
                let message = said!("no-list", key);
                self.faults.push(
                    Fault::error("bad-value", &node.place, message)
                        .help(said!("no-list-help", example)),
                );
                Vec::new()
            }
        }
    }

    /// A fault where `key` of the entry `name` stands there with nothing behind it.
    pub(super) fn filled_in(&mut self, key: &str, name: &str) {
        let mut entries = self.entries.iter();
        let is_blank = |node: &Node| match node {
            Node::Empty => true,
            // `1 tbsp =` waits for its weight.
            Node::Text(text) => text.trim().is_empty() || text.trim().ends_with('='),
            Node::List(items) => items.is_empty(),
            Node::Map(entries) => entries.is_empty(),
        };
        let left = entries.find(|(of, value)| of.value == key && is_blank(&value.value));
        if let Some((of, _)) = left {
            let message = said!("not-filled-in", key, name = clip(name));
            let help = said!("not-filled-in-help", key);
            self.faults
                .push(Fault::error("not-filled-in", &of.place, message).help(help));
        }
    }

    /// Takes the text of `key`.
    pub(super) fn text(&mut self, key: &'static str) -> Option<Placed<String>> {
        let node = self.take(key)?;
        match node.value {
            Node::Text(text) => Some(Placed::new(text.trim().to_owned(), node.place)),
            Node::Empty | Node::List(_) | Node::Map(_) => {
                self.faults.push(
                    Fault::error("bad-value", &node.place, said!("not-one-value", key))
                        .help(said!("not-one-value-help", key)),
                );
                None
            }
        }
    }

    /// Takes the text of `key`, which must be there.
    pub(super) fn needed(
        &mut self,
        key: &'static str,
        example: impl Say,
    ) -> Placed<String> {
        self.text(key).unwrap_or_else(|| {
            let place = self.place.part(0, 0);
            self.faults.push(
                Fault::error("missing-key", &place, said!("missing-key", key))
                    .help(said!("missing-key-help", key, example)),
            );
            Placed::new(String::new(), place)
        })
    }

    /// Takes the text of `key` and reads it; a value that does not read is a fault.
    pub(super) fn parsed<T>(
        &mut self,
        key: &'static str,
        example: impl Say,
        read: impl FnOnce(&str) -> Option<T>,
    ) -> Option<Placed<T>> {
        let text = self.text(key)?;
        match read(&text.value) {
            Some(value) => Some(Placed::new(value, text.place)),
            None => {
                self.faults.push(unreadable(key, &text, example));
                None
            }
        }
    }

    /// Takes a list of texts; one text with commas is a list too.
    pub(super) fn list(&mut self, key: &'static str) -> Option<Vec<Placed<String>>> {
        let node = self.take(key)?;
        Some(self.texts_of(node))
    }

    /// The texts of a list, or of one text with commas.
    pub(super) fn texts_of(&mut self, node: Placed<Node>) -> Vec<Placed<String>> {
        match node.value {
            Node::List(items) => self.texts(items),
            Node::Text(text) => split(&Placed::new(text, node.place)),
            Node::Map(_) => self.texts(vec![node]),
            Node::Empty => Vec::new(),
        }
    }

    /// Takes a list of texts in which a comma is part of the text.
    pub(super) fn list_of_texts(&mut self, key: &'static str) -> Vec<String> {
        self.placed_texts(key).into_iter().map(|text| text.value).collect()
    }

    /// Likewise, with the places.
    pub(super) fn placed_texts(&mut self, key: &'static str) -> Vec<Placed<String>> {
        let Some(node) = self.take(key) else { return Vec::new() };
        let items = node.items();
        self.texts(items)
    }

    /// The texts of a list; the first item that is none is a fault, for those after it are
    /// mostly none for the same reason.
    fn texts(&mut self, items: Vec<Placed<Node>>) -> Vec<Placed<String>> {
        let mut texts = Vec::new();
        for item in items {
            match item.value {
                Node::Text(text) => {
                    texts.push(Placed::new(text.trim().to_owned(), item.place));
                }
                Node::Empty | Node::List(_) | Node::Map(_) => {
                    let message = said!("no-words-list");
                    self.faults.push(
                        Fault::error("bad-value", &item.place, message)
                            .help(said!("no-words-list-help")),
                    );
                    break;
                }
            }
        }
        texts
    }

    /// Names every key that was not asked for.
    pub(super) fn finish(self) {
        let unknown = self.entries.iter().map(|(key, _)| unknown(key, self.keys));
        self.faults.extend(unknown);
    }
}

fn unknown(key: &Placed<String>, keys: &[&'static str]) -> Fault {
    let message = said!("unknown-key", key = key.value);
    let near = nearest(&key.value, keys.iter().copied());
    Fault::error("unknown-key", &key.place, message)
        .meant(&key.value, near, || said!("unknown-key-help", keys))
}

/// A value that does not read, with an example of one that does.
pub(super) fn unreadable(key: &str, text: &Placed<String>, example: impl Say) -> Fault {
    let message = said!("unreadable-value", value = clip(&text.value), key);
    Fault::error("bad-value", &text.place, message)
        .help(said!("unreadable-value-help", example))
}

/// Splits at commas, keeping places.
pub(super) fn split(text: &Placed<String>) -> Vec<Placed<String>> {
    let mut at = 0;
    let mut parts = Vec::new();
    for piece in text.value.split(',') {
        let word = piece.trim();
        let start = at + (piece.len() - piece.trim_start().len());
        if !word.is_empty() {
            let place = text.place.part(start, start + word.len());
            parts.push(Placed::new(word.to_owned(), place));
        }
        at += piece.len() + 1;
    }
    parts
}
