//! The files below `in/LANGUAGE/`: prose that says what it translates.

use crate::fault::{Fault, FileName, Place, Placed};
use crate::model::{
    Inline, TranslatedEntry, TranslatedOther, TranslatedPart, TranslatedText,
};
use crate::said;

use super::fields::{Fields, entries_of};
use super::ticket::lines;
use super::yaml::Node;
use super::{body, prose};

/// What the head of a translated text may say.
const HEAD: [&str; 3] = ["title", "summary", "mark"];
/// What a ticket in it may say.
const TICKET: [&str; 3] = ["translates", "mark", "until"];
/// What the ticket of another way to do a step may say in it: it has its name.
const OTHER: [&str; 2] = ["mark", "until"];
/// What an entry of a translated glossary may say.
const ENTRY: [&str; 4] = ["word", "mark", "also", "means"];

/// A short text and what it is called.
type Pair = [Placed<String>; 2];

/// `words.yaml`: short texts and what they are in the language.
pub(super) fn words(file: &FileName, text: &str, faults: &mut Vec<Fault>) -> Vec<Pair> {
    let entries = entries_of(file, text, faults);
    entries.into_iter().filter_map(|(of, node)| pair(of, node, faults)).collect()
}

fn pair(of: Placed<String>, node: Placed<Node>, faults: &mut Vec<Fault>) -> Option<Pair> {
    match node.value {
        Node::Text(text) if !text.trim().is_empty() => {
            Some([of, Placed::new(text.trim().to_owned(), node.place)])
        }
        Node::Text(_) | Node::Empty => None,
        Node::List(_) | Node::Map(_) => {
            let message = said!("not-one-value", key = of.value);
            faults.push(
                Fault::error("bad-value", &node.place, message)
                    .help(said!("not-one-value-help", key = of.value)),
            );
            None
        }
    }
}

/// A recipe (`with_steps`) or a technique from the text of `file`.
pub(super) fn text(
    file: &FileName,
    text: &str,
    name: &str,
    with_steps: bool,
    faults: &mut Vec<Fault>,
) -> Option<TranslatedText> {
    let (head, node) = body::parsed_head(file, text, faults)?;
    let mut fields = Fields::new(node, &HEAD, faults);
    let title = fields.needed("title", said!("example-title"));
    let summary = fields.text("summary").map_or_else(String::new, |text| text.value);
    let mark = fields.text("mark");
    fields.finish();
    let mut read = TranslatedText {
        name: name.to_owned(),
        title,
        summary,
        mark,
        opening: Vec::new(),
        parts: Vec::new(),
        links: Vec::new(),
        place: Place::new(file, 0, text.len()),
    };
    let (body, place) = (&text[head.body..], Place::new(file, head.body, text.len()));
    if with_steps {
        parts(body, &place, &mut read, faults);
    } else {
        let prose = prose::read(body, &place, faults);
        (read.opening, read.links) = (prose.blocks, prose.links);
    }
    Some(read)
}

fn parts(body: &str, place: &Place, read: &mut TranslatedText, faults: &mut Vec<Fault>) {
    for part in body::parts(body, place, faults).parts {
        let at = place.part(part.prose.start, part.prose.end);
        let prose = prose::read(&body[part.prose.clone()], &at, faults);
        read.links.extend(prose.links);
        let Some(title) = part.title else {
            read.opening = prose.blocks;
            continue;
        };
        let mut ticket = Ticket::default();
        if let Some(text) = &part.ticket {
            ticket.read(text, &TICKET, faults);
        }
        let mut others = Vec::new();
        for other in part.others {
            let at = place.part(other.prose.start, other.prose.end);
            let prose = prose::read(&body[other.prose.clone()], &at, faults);
            read.links.extend(prose.links);
            let mut ticket = Ticket::default();
            ticket.read(&other.ticket, &OTHER, faults);
            let (mark, until, prose) = (ticket.mark, ticket.until, prose.blocks);
            others.push(TranslatedOther { of: other.name, mark, until, prose });
        }
        // What it translates is never told by its place.
        let Some(of) = ticket.translates else {
            let message = said!("translates-nothing", title = title.value);
            faults.push(
                Fault::error("translates-nothing", &title.place, message)
                    .help(said!("translates-nothing-help")),
            );
            continue;
        };
        let (mark, until, prose) = (ticket.mark, ticket.until, prose.blocks);
        read.parts.push(TranslatedPart { title, of, mark, until, prose, others });
    }
}

#[derive(Default)]
struct Ticket {
    translates: Option<Placed<String>>,
    mark: Option<Placed<String>>,
    until: Option<Vec<Inline<crate::model::Brace>>>,
}

impl Ticket {
    fn read(
        &mut self,
        ticket: &Placed<String>,
        keys: &[&'static str],
        faults: &mut Vec<Fault>,
    ) {
        for line in lines(ticket, keys, faults) {
            let (key, value) = (line.key, line.value);
            match key.value.as_str() {
                "translates" if keys.contains(&"translates") => {
                    self.translates = Some(value);
                }
                "mark" => self.mark = Some(value),
                "until" => self.until = Some(prose::cue(&value, faults)),
                _ => {
                    let message = said!("unknown-key", key = key.value);
                    let help = said!("translation-key-help");
                    faults.push(
                        Fault::error("unknown-key", &key.place, message).help(help),
                    );
                }
            }
        }
    }
}

/// `glossary.yaml`: words of the first language, each with the `word`, its other forms and
/// what it means.
pub(super) fn glossary(
    file: &FileName,
    text: &str,
    faults: &mut Vec<Fault>,
) -> Vec<TranslatedEntry> {
    let entries = entries_of(file, text, faults);
    entries.into_iter().filter_map(|(of, node)| entry(of, node, faults)).collect()
}

fn entry(
    of: Placed<String>,
    node: Placed<Node>,
    faults: &mut Vec<Fault>,
) -> Option<TranslatedEntry> {
    let mut fields = Fields::new(node, &ENTRY, faults);
    let word = fields.needed("word", said!("example-title"));
    let mark = fields.text("mark");
    let also = fields.list("also").unwrap_or_default();
    let means = fields.needed("means", said!("example-meaning"));
    fields.finish();
    let prose = prose::read(&means.value, &means.place, faults);
    let (meaning, links) = (prose.blocks, prose.links);
    let whole = !meaning.is_empty() && !word.value.is_empty();
    whole.then_some(TranslatedEntry { of, word, mark, also, meaning, links })
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "---\ntitle: Croissants\nmark: 1a2b3c\n---\nBonjour.\n\n## Pétrir\n~~~ticket\ntranslates: mix\nmark: 4d5e6f\nuntil: c’est lisse\n~~~\nPétrissez {dough}.\n";

    #[test]
    fn a_part_names_what_it_translates() {
        let mut faults = Vec::new();
        let file = "in/fr/recipes/crescents.md".into();
        let read = text(&file, TEXT, "crescents", true, &mut faults).expect("a text");
        assert!(faults.is_empty(), "{faults:?}");
        assert_eq!(read.parts[0].of.value, "mix");
        assert!(read.parts[0].until.is_some());
        let pairs = words(&"in/fr/words.yaml".into(), "cold: froid\n", &mut faults);
        assert_eq!(pairs[0].each_ref().map(|it| &*it.value), ["cold", "froid"]);
    }

    #[test]
    fn a_part_that_names_nothing_is_a_fault_and_so_is_a_number_of_its_own() {
        for (from, to, name) in [
            ("translates: mix\n", "", "translates-nothing"),
            ("until:", "wait: 5 min\nuntil:", "unknown-key"),
        ] {
            let mut faults = Vec::new();
            let file = "in/fr/recipes/crescents.md".into();
            text(&file, &TEXT.replace(from, to), "crescents", true, &mut faults);
            assert_eq!(faults.first().map(|fault| fault.name), Some(name), "{to}");
        }
    }
}
