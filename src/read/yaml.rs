//! YAML with places: a small tree in which every key and value knows its bytes.
//!
//! The engine reads strictly and within limits; everything that is not a list or a map
//! is kept as text exactly as written, since `22 °C` and `1/2` mean nothing to YAML.

mod slip;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_yaml::{Location, Spanned};

use crate::fault::{Fault, FileName, Place, Placed};
use crate::said;
use crate::statement::Statement;

use super::readable;

/// Nesting beyond this is refused: no course needs it.
const DEEPEST: usize = 16;
/// More values than this in one file are refused.
const MOST_VALUES: usize = 50_000;

/// A value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Node {
    /// Nothing was written.
    Empty,
    /// Text as written, quotes removed.
    Text(String),
    /// A list.
    List(Vec<Placed<Node>>),
    /// Keys and values in order.
    Map(Vec<(Placed<String>, Placed<Node>)>),
}

impl Node {
    /// The text; `None` where something else was written.
    pub(crate) fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            Self::Empty | Self::List(_) | Self::Map(_) => None,
        }
    }
}

impl Placed<Node> {
    /// The items of a list; itself where it is none.
    pub(crate) fn items(self) -> Vec<Self> {
        match self.value {
            Node::List(items) => items,
            Node::Empty | Node::Text(_) | Node::Map(_) => vec![self],
        }
    }
}

/// Reads `text` as the YAML of `file`, in which it begins at byte `offset`.
pub(crate) fn parse(
    file: &FileName,
    text: &str,
    offset: usize,
) -> Result<Placed<Node>, Fault> {
    let placer = Placer { file, text, offset };
    if text.trim().is_empty() {
        return Ok(Placed::new(Node::Empty, Place::new(file, offset, offset)));
    }
    let read: Result<Spanned<Raw>, _> =
        serde_yaml::from_str_with_options(text, options());
    match read {
        Ok(raw) => {
            let node = placer.node(raw);
            placer.run_on(&node).map_or(Ok(node), Err)
        }
        Err(error) => Err(placer.fault(error.without_snippet())),
    }
}

/// Whether YAML reads, each line as what it looks like.
fn sound(text: &str) -> bool {
    let file = FileName::from("");
    let placer = Placer { file: &file, text, offset: 0 };
    let read: Result<Spanned<Raw>, _> =
        serde_yaml::from_str_with_options(text, options());
    read.is_ok_and(|raw| placer.run_on(&placer.node(raw)).is_none())
}

fn options() -> serde_yaml::Options {
    serde_yaml::options! {
        with_snippet: false,
        budget: serde_yaml::budget! {
            max_depth: DEEPEST,
            max_nodes: MOST_VALUES,
            max_aliases: 0,
            max_anchors: 0,
            max_documents: 1,
        },
    }
}

/// A value as the engine hands it over: scalars that it took for numbers or truth values
/// are left to be read again from the text.
enum Raw {
    Plain,
    Text(String),
    List(Vec<Spanned<Raw>>),
    Map(Vec<(Spanned<String>, Spanned<Raw>)>),
}

impl<'de> Deserialize<'de> for Raw {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_any(RawVisitor)
    }
}

struct RawVisitor;

/// Scalars that the engine gave a type: only their text matters here.
macro_rules! plain {
    ($($visit:ident: $kind:ty),*) => {
        $(fn $visit<E>(self, _: $kind) -> Result<Raw, E> { Ok(Raw::Plain) })*
    };
}

impl<'de> Visitor<'de> for RawVisitor {
    type Value = Raw;

    fn expecting(&self, to: &mut std::fmt::Formatter) -> std::fmt::Result {
        to.write_str("text, a list, or keys with values")
    }

    plain!(visit_bool: bool, visit_i64: i64, visit_u64: u64, visit_f64: f64, visit_i128: i128, visit_u128: u128);

    fn visit_unit<E>(self) -> Result<Raw, E> {
        Ok(Raw::Plain)
    }

    fn visit_none<E>(self) -> Result<Raw, E> {
        Ok(Raw::Plain)
    }

    fn visit_str<E>(self, text: &str) -> Result<Raw, E> {
        Ok(Raw::Text(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Raw, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = seq.next_element()? {
            items.push(item);
        }
        Ok(Raw::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Raw, A::Error> {
        let mut entries = Vec::new();
        while let Some(entry) = map.next_entry()? {
            entries.push(entry);
        }
        Ok(Raw::Map(entries))
    }
}

/// Turns the engine's locations into places in the file.
struct Placer<'a> {
    file: &'a FileName,
    text: &'a str,
    offset: usize,
}

impl Placer<'_> {
    fn node(&self, raw: Spanned<Raw>) -> Placed<Node> {
        let place = self.place(raw.defined);
        let node = match raw.value {
            Raw::Plain => self.scalar(&place),
            Raw::Text(text) => {
                return Placed::new(
                    Node::Text(readable(&text)),
                    self.within_quotes(place),
                );
            }
            Raw::List(items) => {
                Node::List(items.into_iter().map(|item| self.node(item)).collect())
            }
            Raw::Map(entries) => {
                Node::Map(entries.into_iter().map(|e| self.entry(e)).collect())
            }
        };
        Placed::new(node, place)
    }

    fn entry(
        &self,
        (key, value): (Spanned<String>, Spanned<Raw>),
    ) -> (Placed<String>, Placed<Node>) {
        let place = self.place(key.defined);
        let mut value = self.node(value);
        if value.place.start() == value.place.end() {
            value.place = place.clone();
        }
        (Placed::new(readable(&key.value), place), value)
    }

    fn scalar(&self, place: &Place) -> Node {
        let written =
            self.text.get(place.start() - self.offset..place.end() - self.offset);
        match written.map(str::trim) {
            None | Some("" | "~" | "null") => Node::Empty,
            Some(text) => Node::Text(text.to_owned()),
        }
    }

    /// The place of a text without the quotes around it, so that a part of the text is found.
    fn within_quotes(&self, place: Place) -> Place {
        let written =
            self.text.get(place.start() - self.offset..place.end() - self.offset);
        let quoted = written.is_some_and(|it| {
            it.len() > 1
                && ['"', '\'']
                    .iter()
                    .any(|sign| it.starts_with(*sign) && it.ends_with(*sign))
        });
        if quoted {
            Place::new(self.file, place.start() + 1, place.end() - 1)
        } else {
            place
        }
    }

    fn place(&self, at: Location) -> Place {
        let span = at.span();
        let number = |of: u64| usize::try_from(of).unwrap_or(usize::MAX);
        let start = span.byte_offset().map_or_else(|| self.line_start(at), number);
        let start = start.min(self.text.len());
        let end = start.saturating_add(number(span.byte_len().unwrap_or(0)));
        let words = self.text.get(start..end.min(self.text.len())).unwrap_or("");
        let len = words.trim_end().len();
        Place::new(self.file, self.offset + start, self.offset + start + len)
    }

    /// The first byte of a location's line, for locations that carry no bytes.
    fn line_start(&self, at: Location) -> usize {
        let lines_before = usize::try_from(at.line().saturating_sub(1)).unwrap_or(0);
        self.text.split_inclusive('\n').take(lines_before).map(str::len).sum()
    }

    /// A value that goes on in a line which begins with `-`: an item of a list that stands
    /// further right than the one above it, and would be read as a part of that one.
    fn run_on(&self, node: &Placed<Node>) -> Option<Fault> {
        match &node.value {
            Node::Empty => None,
            Node::List(items) => items.iter().find_map(|item| self.run_on(item)),
            Node::Map(entries) => entries.iter().find_map(|(key, value)| {
                let fault = || {
                    let place = self.line_of(key.place.start() - self.offset);
                    let message = said!("yaml-no-space");
                    let right = key.value.trim_start_matches('-');
                    let dash = Place::new(
                        self.file,
                        key.place.start() + 1,
                        key.place.start() + 1,
                    );
                    Fault::error("bad-yaml", &place, message)
                        .help(said!("yaml-no-space-help", line = right))
                        .mended(dash, " ")
                };
                let slip = key.value.starts_with('-').then(fault);
                slip.or_else(|| self.run_on(value))
            }),
            Node::Text(_) => {
                let from = node.place.start() - self.offset;
                let written = self.text.get(from..node.place.end() - self.offset)?;
                if written.starts_with(['"', '\'', '|', '>']) {
                    return None;
                }
                let (at, _) = written
                    .match_indices('\n')
                    .find(|(at, _)| written[*at..].trim_start().starts_with('-'))?;
                let place = self.line_of(from + at + 1);
                let message = said!("yaml-run-on");
                Some(
                    Fault::error("bad-yaml", &place, message)
                        .help(said!("yaml-run-on-help")),
                )
            }
        }
    }

    fn fault(&self, error: &serde_yaml::Error) -> Fault {
        let at = error.location().map_or(0, |at| self.place(at).start() - self.offset);
        let slip =
            if is_limit(error) { None } else { slip::find((self.text, at), sound) };
        if let Some(slip) = slip {
            let at = self.offset + slip.at.start..self.offset + slip.at.end;
            let place = Place::new(self.file, at.start, at.end);
            let (by, text) = slip.mending;
            let put = Place::new(self.file, self.offset + by.start, self.offset + by.end);
            return Fault::error("bad-yaml", &place, slip.message)
                .help(slip.help)
                .mended(put, text);
        }
        let place = error.location().map_or_else(
            || Place::new(self.file, self.offset, self.offset),
            |at| self.line_of(self.place(at).start() - self.offset),
        );
        let reason = error.to_string();
        Fault::error("bad-yaml", &place, plain_words(&reason)).help(said!("yaml-help"))
    }

    /// The words of the line that holds byte `at`, from there if any are left.
    fn line_of(&self, at: usize) -> Place {
        let start = self.text[..at].rfind('\n').map_or(0, |found| found + 1);
        let line = self.text[start..].split('\n').next().unwrap_or("");
        let from = start + (line.len() - line.trim_start().len());
        Place::new(
            self.file,
            self.offset + from,
            self.offset + start + line.trim_end().len(),
        )
    }
}

/// Whether the engine gave up for a reason that no mending of one line takes away.
fn is_limit(error: &serde_yaml::Error) -> bool {
    let reason = error.to_string().to_lowercase();
    LIMITS.iter().any(|(sign, _)| reason.contains(sign))
}

/// What the engine says of texts that break one of its rules, and what that is in an
/// instructor's words.
const LIMITS: [(&str, Statement); 6] = [
    ("duplicate", said!("yaml-key-twice")),
    ("alias", said!("yaml-alias")),
    ("anchor", said!("yaml-alias")),
    ("tab", said!("yaml-tab")),
    ("max_depth", said!("yaml-too-deep")),
    ("budget", said!("yaml-too-large")),
];

/// The engine's reason, in an instructor's words where a common one is recognised.
fn plain_words(reason: &str) -> Statement {
    let lower = reason.to_lowercase();
    LIMITS
        .into_iter()
        .find(|(sign, _)| lower.contains(sign))
        .map_or_else(|| said!("bad-yaml"), |(_, words)| words)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tree(text: &str) -> Placed<Node> {
        parse(&"a.yaml".into(), text, 0).expect("sound YAML")
    }

    #[test]
    fn values_stay_as_written_and_know_their_place() {
        let text = "loss: 2 %\nmakes: 22\nlist:\n  - 1.50 kg é flour\n  - \"a: b\"\n";
        let Node::Map(entries) = tree(text).value else { panic!("a map") };
        let place = &entries[1].1.place;
        assert_eq!(entries[1].1.value, Node::Text("22".into()));
        assert_eq!(&text[place.start()..place.end()], "22");
        let Node::List(items) = &entries[2].1.value else { panic!("a list") };
        assert_eq!(items[0].value, Node::Text("1.50 kg é flour".into()));
        let place = &items[0].place;
        assert_eq!(&text[place.start()..place.end()], "1.50 kg é flour");
        assert_eq!(items[1].value, Node::Text("a: b".into()));
        let place = &items[1].place;
        assert_eq!(&text[place.start()..place.end()], "a: b");
    }

    #[test]
    fn empty_and_dated_values_stay_text() {
        let Node::Map(entries) = tree("a:\nb: 2027-02-15\nc: yes\nd: 0x10\n").value
        else {
            panic!("a map")
        };
        assert_eq!(entries[0].1.value, Node::Empty);
        assert_eq!(entries[1].1.value, Node::Text("2027-02-15".into()));
        assert_eq!(entries[2].1.value, Node::Text("yes".into()));
        assert_eq!(entries[3].1.value, Node::Text("0x10".into()));
    }

    #[test]
    fn faults_stand_on_their_line() {
        let text = "title: a\n  summary: b: c\n";
        let fault = parse(&"a.yaml".into(), text, 0).expect_err("a fault");
        assert_eq!(fault.name, "bad-yaml");
        assert!(
            text[fault.place.start()..fault.place.end()].contains("summary"),
            "{fault:?}"
        );
    }

    #[test]
    fn hidden_signs_are_shown() {
        let Node::Map(entries) = tree("a: \"b\\x01c\"\n").value else { panic!("a map") };
        assert_eq!(entries[0].1.value, Node::Text("b\u{fffd}c".into()));
    }

    #[test]
    fn bombs_are_refused() {
        let bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n";
        assert!(parse(&"a.yaml".into(), bomb, 0).is_err());
        let deep = format!("{}x{}", "[".repeat(5000), "]".repeat(5000));
        assert!(parse(&"a.yaml".into(), &deep, 0).is_err());
    }
}
