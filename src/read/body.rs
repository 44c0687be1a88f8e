//! A file's shape: the head between `---` lines, then headings, each with its ticket and
//! its prose.

use std::ops::Range;

use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, Parser, Tag, TagEnd};

use crate::fault::{Fault, Place, Placed};

use super::{prose, readable};

/// The head of a file: its YAML, and where the body begins.
pub(super) struct Head<'a> {
    /// The YAML between the `---` lines.
    pub(super) yaml: &'a str,
    /// Where it begins.
    pub(super) start: usize,
    /// Where the body begins.
    pub(super) body: usize,
}

/// Finds the head. `None` where the file does not begin with one.
pub(super) fn head(text: &str) -> Option<Head<'_>> {
    let bom = text.len() - text.trim_start_matches('\u{feff}').len();
    let first = text[bom..].split_inclusive('\n').next()?;
    if first.trim_end() != "---" {
        return None;
    }
    let start = bom + first.len();
    let mut at = start;
    for line in text[start..].split_inclusive('\n') {
        if line.trim_end() == "---" {
            return Some(Head { yaml: &text[start..at], start, body: at + line.len() });
        }
        at += line.len();
    }
    None
}

/// One heading and what stands beneath it. The first part has no heading.
pub(super) struct Part {
    /// The heading's words.
    pub(super) title: Option<Placed<String>>,
    /// The ticket's text.
    pub(super) ticket: Option<Placed<String>>,
    /// The stretch of the body that holds the prose.
    pub(super) prose: Range<usize>,
}

/// Splits the body at its first two levels of heading. `place` is the body's.
pub(super) fn parts(body: &str, place: &Place, faults: &mut Vec<Fault>) -> Vec<Part> {
    let mut parts = vec![Part { title: None, ticket: None, prose: 0..body.len() }];
    let mut depth = 0_usize;
    let mut events = Parser::new_ext(body, prose::options()).into_offset_iter();
    while let Some((event, range)) = events.next() {
        match event {
            Event::Start(Tag::Heading { level, .. }) if depth == 0 && is_major(level) => {
                close(&mut parts, range.start);
                let title = words(&mut events);
                let place = place.part(range.start, range.end);
                let title = Placed::new(title, trim(body, &range, place));
                parts.push(Part {
                    title: Some(title),
                    ticket: None,
                    prose: range.end..body.len(),
                });
            }
            Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info)))
                if &*info == "ticket" =>
            {
                let ticket = ticket(&mut events, place, &range);
                accept(&mut parts, ticket, &range, body, faults);
            }
            Event::Start(_) => depth += 1,
            Event::End(_) => depth = depth.saturating_sub(1),
            _ => {}
        }
    }
    parts
}

fn is_major(level: HeadingLevel) -> bool {
    matches!(level, HeadingLevel::H1 | HeadingLevel::H2)
}

fn close(parts: &mut [Part], end: usize) {
    if let Some(part) = parts.last_mut() {
        part.prose.end = end;
    }
}

/// The heading's place without its signs and line end.
fn trim(body: &str, range: &Range<usize>, place: Place) -> Place {
    let written = &body[range.clone()];
    let lead = written.len() - written.trim_start_matches(['#', ' ']).len();
    let end = written.trim_end().len();
    place.part(lead, end)
}

type Events<'a> = pulldown_cmark::OffsetIter<'a>;

/// The plain words of a heading.
fn words(events: &mut Events) -> String {
    let mut words = String::new();
    for (event, _) in events.by_ref() {
        match event {
            Event::End(TagEnd::Heading(_)) => break,
            Event::Text(text) | Event::Code(text) | Event::InlineHtml(text) => {
                words.push_str(&text);
            }
            _ => {}
        }
    }
    readable(words.trim())
}

fn ticket(events: &mut Events, place: &Place, fence: &Range<usize>) -> Placed<String> {
    let mut text = String::new();
    let mut at: Option<Range<usize>> = None;
    for (event, range) in events.by_ref() {
        match event {
            Event::End(TagEnd::CodeBlock) => break,
            Event::Text(line) => {
                at = Some(at.map_or(range.clone(), |so_far| so_far.start..range.end));
                text.push_str(&line);
            }
            _ => {}
        }
    }
    let at = at.unwrap_or(fence.start..fence.start);
    Placed::new(text, place.part(at.start, at.end))
}

/// Gives the ticket to its heading, if it stands right beneath one.
fn accept(
    parts: &mut [Part],
    ticket: Placed<String>,
    fence: &Range<usize>,
    body: &str,
    faults: &mut Vec<Fault>,
) {
    let Some(part) = parts.last_mut() else { return };
    let beneath = body[part.prose.start..fence.start].trim().is_empty();
    if beneath && part.title.is_some() && part.ticket.is_none() {
        part.prose.start = fence.end;
        part.ticket = Some(ticket);
    } else {
        faults.push(
            Fault::error(
                "stray-ticket",
                &ticket.place,
                "this ticket stands under no heading",
            )
            .help("A ticket stands right beneath its step's heading, and only one does."),
        );
    }
}

/// A heading made into a name: `Lock in the butter` → `lock-in-the-butter`.
pub(super) fn name(title: &str) -> String {
    let mut name = String::new();
    for sign in title.to_lowercase().chars() {
        if sign.is_alphanumeric() {
            name.push(sign);
        } else if !name.is_empty() && !name.ends_with('-') && sign != '\'' && sign != '’'
        {
            name.push('-');
        }
    }
    name.trim_end_matches('-').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heads_and_bodies() {
        let text = "---\ntitle: a\n---\nBody\n";
        let head = head(text).expect("a head");
        assert_eq!(head.yaml, "title: a\n");
        assert_eq!(&text[head.body..], "Body\n");
        assert!(super::head("title: a\n").is_none());
        assert!(super::head("---\ntitle: a\n").is_none());
    }

    #[test]
    fn parts_have_titles_tickets_and_prose() {
        let body = "Opening.\n\n## Mix it\n~~~ticket\nhands: 5 min\n~~~\nDo it.\n\n## Notes\nText.\n";
        let mut faults = Vec::new();
        let place = Place::new(&"a.md".into(), 0, body.len());
        let parts = parts(body, &place, &mut faults);
        assert!(faults.is_empty());
        assert_eq!(body[parts[0].prose.clone()].trim(), "Opening.");
        assert_eq!(parts[1].title.as_ref().map(|t| t.value.as_str()), Some("Mix it"));
        assert_eq!(
            parts[1].ticket.as_ref().map(|t| t.value.as_str()),
            Some("hands: 5 min\n")
        );
        assert_eq!(body[parts[1].prose.clone()].trim(), "Do it.");
        assert!(parts[2].ticket.is_none());
    }

    #[test]
    fn names_come_from_headings() {
        assert_eq!(name("Lock in the butter"), "lock-in-the-butter");
        assert_eq!(name("Baker’s rest – 2"), "bakers-rest-2");
    }
}
