//! A file's shape: the head between `---` lines, then headings, each with its ticket and
//! its prose.
#![allow(clippy::wildcard_enum_match_arm, reason = "Markdown's events are not ours")]

use std::ops::Range;

use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, Parser, Tag, TagEnd};

use crate::fault::{Fault, FileName, Place, Placed, nearest};
use crate::said;

use super::yaml::{self, Node};
use super::{prose, readable, ticket};

/// The head of a file: its YAML, and where the body begins.
pub(super) struct Head<'a> {
    /// The YAML between the `---` lines.
    pub(super) yaml: &'a str,
    /// Where it begins.
    pub(super) start: usize,
    /// Where the body begins.
    pub(super) body: usize,
}

/// Finds the head. `None` where the file does not begin with one, or it has no end.
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

/// The head of the text of `file`, and what stands in it; says what it is that cannot be read.
pub(super) fn parsed_head<'t>(
    file: &FileName,
    text: &'t str,
    faults: &mut Vec<Fault>,
) -> Option<(Head<'t>, Placed<Node>)> {
    let Some(head) = head(text) else {
        faults.push(missing_head(file, text));
        return None;
    };
    let node = yaml::parse(file, head.yaml, head.start);
    Some((head, node.map_err(|fault| faults.push(fault)).ok()?))
}

/// The fault of a file without a head, or with one that lacks its first or last line.
pub(super) fn missing_head(file: &FileName, text: &str) -> Fault {
    let begin = said!("head-begin-help");
    let Some((first, at)) = lines(text).find(|(line, _)| !line.trim().is_empty()) else {
        let place = Place::new(file, 0, 0);
        return Fault::error("missing-head", &place, said!("head-file-empty"))
            .help(begin);
    };
    let first = first.trim_end();
    let place = Place::new(file, at, at + first.len());
    if first != "---" {
        let message = said!("head-does-not-begin");
        return Fault::error("missing-head", &place, message).help(begin);
    }
    // The head's last line is a slip of `---`, or missing before what no head holds.
    let ends = |line: &str| {
        let line = line.trim_end();
        (line.len() >= 2 && line.bytes().all(|byte| byte == b'-'))
            || line.starts_with("## ")
            || fence(line).is_some()
    };
    let end = lines(text).filter(|line| line.1 > at).find(|(line, _)| ends(line));
    let place =
        end.map_or(place, |(line, at)| Place::new(file, at, at + line.trim_end().len()));
    let fault = Fault::error("missing-head", &place, said!("head-has-no-end"))
        .help(said!("head-has-no-end-help"));
    match end {
        Some((line, _)) if line.starts_with("--") => fault.mended(place, "---"),
        Some(_) => fault.mended(place.part(0, 0), "---\n"),
        None => fault,
    }
}

/// The lines of a text, and where each begins.
fn lines(text: &str) -> impl Iterator<Item = (&str, usize)> {
    let mut next = text.len() - text.trim_start_matches('\u{feff}').len();
    text[next..].split_inclusive('\n').map(move |line| {
        let at = next;
        next += line.len();
        (line, at)
    })
}

/// One heading and what stands beneath it. The first part has no heading.
pub(super) struct Part {
    /// The heading's words.
    pub(super) title: Option<Placed<String>>,
    /// The ticket's text.
    pub(super) ticket: Option<Placed<String>>,
    /// The stretch of the body that holds the prose.
    pub(super) prose: Range<usize>,
    /// The tickets further down, each with a name of its own.
    pub(super) others: Vec<Other>,
}

/// A further ticket beneath a heading: another way to do the step.
pub(super) struct Other {
    /// What it is called.
    pub(super) name: Placed<String>,
    /// Its text.
    pub(super) ticket: Placed<String>,
    /// The stretch of the body that holds its prose.
    pub(super) prose: Range<usize>,
}

impl Part {
    /// Nothing more of it stands from this byte on.
    fn ends(&mut self, at: usize) {
        let last = self.others.last_mut().map(|other| &mut other.prose);
        last.unwrap_or(&mut self.prose).end = at;
    }
}

/// The parts of a body.
pub(super) struct Body {
    /// In the order written.
    pub(super) parts: Vec<Part>,
    /// Whether a ticket stands under no heading, so that a step is missing.
    pub(super) stray: bool,
}

/// Splits the body at its first two levels of heading. `place` is the body's.
///
/// A slip in what holds a step together, the `##` of its heading or the `~~~` of its ticket,
/// is named and read as it was meant: else everything beneath would be called wrong.
pub(super) fn parts(body: &str, place: &Place, faults: &mut Vec<Fault>) -> Body {
    let parts = vec![Part {
        title: None,
        ticket: None,
        prose: 0..body.len(),
        others: Vec::new(),
    }];
    let read = Body { parts, stray: false };
    let mut splitter = Splitter { body, place, faults, read };
    let mut from = Some(0);
    while let Some(at) = from {
        from = splitter.split(at);
    }
    splitter.read
}

/// The first line of a ticket.
const FENCE: &str = "~~~ticket";

struct Splitter<'a> {
    body: &'a str,
    place: &'a Place,
    faults: &'a mut Vec<Fault>,
    read: Body,
}

impl Splitter<'_> {
    /// Reads on from byte `at`; where a ticket without an end has hidden what follows it, the
    /// byte from which that is to be read.
    fn split(&mut self, at: usize) -> Option<usize> {
        let mut depth = 0_usize;
        let text = &self.body[at..];
        let mut events = Parser::new_ext(text, prose::options()).into_offset_iter();
        while let Some((event, range)) = events.next() {
            let range = at + range.start..at + range.end;
            match event {
                Event::Start(Tag::Heading { level, .. })
                    if depth == 0 && (is_major(level) || self.has_ticket(range.end)) =>
                {
                    if !is_major(level) {
                        self.heading_slip(&range);
                    }
                    self.heading(words(&mut events), range);
                }
                Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) => {
                    let cut = self.fenced(&info, &range, depth);
                    let ends =
                        |event: &Event| matches!(event, Event::End(TagEnd::CodeBlock));
                    events.by_ref().find(|(event, _)| ends(event));
                    if cut.is_some() {
                        return cut;
                    }
                }
                Event::Start(Tag::Paragraph) if depth == 0 => {
                    let cut = self.paragraph(&range);
                    if cut.is_some() {
                        return cut;
                    }
                    depth += 1;
                }
                Event::Start(_) => depth += 1,
                Event::End(_) => depth = depth.saturating_sub(1),
                _ => {}
            }
        }
        None
    }

    fn heading(&mut self, title: String, range: Range<usize>) {
        if let Some(part) = self.read.parts.last_mut() {
            part.ends(range.start);
        }
        let place = self.place.part(range.start, range.end);
        let title = Placed::new(title, trim(self.body, &range, place));
        self.read.parts.push(Part {
            title: Some(title),
            ticket: None,
            prose: range.end..self.body.len(),
            others: Vec::new(),
        });
    }

    /// Whether the next line that is not blank begins a ticket.
    fn has_ticket(&self, from: usize) -> bool {
        let next = self.body[from..].trim_start().lines().next().unwrap_or("");
        fence(next).is_some_and(is_meant)
    }

    fn heading_slip(&mut self, range: &Range<usize>) {
        // The signs too: they are what is wrong.
        let line = self.body[range.clone()].trim_end().len();
        let place = self.place.part(range.start, range.start + line);
        let message = said!("bad-heading");
        let words = self.body[range.clone()].trim_matches(['#', ' ', '\n', '\r']);
        let right = format!("## {}", words.trim());
        self.faults.push(
            Fault::error("bad-heading", &place, message)
                .help(said!("bad-heading-help", words))
                .mended(place, right),
        );
    }

    /// A paragraph that is a heading without its space, or a ticket whose first line has too
    /// few signs; then the byte to read on from.
    fn paragraph(&mut self, range: &Range<usize>) -> Option<usize> {
        let text = &self.body[range.clone()];
        let first = text.lines().next().unwrap_or("");
        if first.starts_with('#') && self.has_ticket(range.start + first.len()) {
            let range = range.start..range.start + first.len();
            self.heading_slip(&range);
            let title = first.trim_start_matches('#').trim();
            self.heading(readable(title), range.clone());
            return Some(range.end);
        }
        if !self.is_beneath(range.start) {
            return None;
        }
        if fence(first).is_some_and(|info| !info.is_empty() && is_meant(info)) {
            self.opening_slip(first, range.start);
            return Some(self.cut(range.start, line_after(self.body, range.start)));
        }
        // The lines of a ticket and its end, without its beginning.
        let mut lines = self.body[range.start..].lines();
        let known = |line: &&str| {
            line.split_once(':').is_some_and(|(key, _)| ticket::KEYS.contains(&key))
        };
        let count = lines.clone().take_while(known).count();
        if count > 0 && lines.nth(count).is_some_and(is_bare_fence) {
            self.opening_slip(first, range.start);
            return Some(self.cut(range.start, range.start));
        }
        None
    }

    /// Whether a block that begins at this byte stands right beneath a heading, which has no
    /// ticket yet.
    fn is_beneath(&self, at: usize) -> bool {
        let part = self.read.parts.last();
        part.is_some_and(|part| {
            part.title.is_some()
                && part.ticket.is_none()
                && self.body[part.prose.start..at].trim().is_empty()
        })
    }

    /// A block between fences: a ticket, what was meant as one, or no business of ours. Where
    /// it hides what follows it, the byte to read on from.
    fn fenced(
        &mut self,
        info: &str,
        range: &Range<usize>,
        depth: usize,
    ) -> Option<usize> {
        let start = line_after(self.body, range.start);
        let block = &self.body[start.min(range.end)..range.end];
        let beneath = depth == 0 && self.is_beneath(range.start);
        let looks = beneath && holds_ticket_lines(block);
        if info != "ticket" && !is_meant(info) && !looks {
            return None;
        }
        let first = self.body[range.start..].lines().next().unwrap_or("");
        if depth == 0 && self.other(info, range, start) {
            return None;
        }
        let slip = info != "ticket";
        if slip {
            self.opening_slip(first, range.start);
        }
        let closed = block.lines().next_back().is_some_and(is_bare_fence);
        let hides = block.lines().any(|line| {
            line.starts_with("# ") || line.starts_with("## ") || opens_ticket(line)
        });
        if beneath && (!closed || hides) {
            if !slip {
                self.closing_slip(range.start, self.end_of_lines(start));
            }
            return Some(self.cut(range.start, start));
        }
        let end = if closed {
            start + block.trim_end().rfind('\n').map_or(0, |at| at + 1)
        } else {
            range.end
        };
        self.accept(start..end.max(start), range);
        None
    }

    /// Where the lines of a ticket from byte `start` on end.
    fn end_of_lines(&self, start: usize) -> usize {
        let lines = self.body[start..].split_inclusive('\n');
        let own = lines.take_while(|line| is_ticket_line(line) || line.starts_with(' '));
        start + own.map(str::len).sum::<usize>()
    }

    /// A whole ticket with a name, beneath a step's own one: another way to do the step.
    fn other(&mut self, info: &str, range: &Range<usize>, start: usize) -> bool {
        let name =
            info.strip_prefix("ticket ").map(str::trim).filter(|it| !it.is_empty());
        let (Some(name), Some(part)) = (name, self.read.parts.last_mut()) else {
            return false;
        };
        let block = &self.body[start.min(range.end)..range.end];
        let closed = block.lines().next_back().is_some_and(is_bare_fence);
        let hides =
            block.lines().any(|line| line.starts_with("## ") || opens_ticket(line));
        if part.ticket.is_none() || !closed || hides {
            return false;
        }
        let end = start + block.trim_end().rfind('\n').map_or(0, |at| at + 1);
        let first = &self.body[range.start..start];
        let at = range.start + first.find(name).unwrap_or(0);
        part.ends(range.start);
        part.others.push(Other {
            name: Placed::new(name.to_owned(), self.place.part(at, at + name.len())),
            ticket: Placed::new(
                self.body[start..end].to_owned(),
                self.place.part(start, end),
            ),
            prose: range.end..self.body.len(),
        });
        true
    }

    /// Takes the lines of a ticket from byte `start` for as long as they are some, and what
    /// closes them; the byte behind.
    fn cut(&mut self, fence: usize, start: usize) -> usize {
        let end = self.end_of_lines(start);
        let closing = self.body[end..].split_inclusive('\n').next();
        let behind = closing.filter(|line| is_bare_fence(line) || short_fence(line));
        let cut = end + behind.map_or(0, str::len);
        self.accept(start..end, &(fence..cut));
        cut
    }

    fn opening_slip(&mut self, first: &str, at: usize) {
        let place = self.place.part(at, at + first.trim_end().len());
        // Where there are only the ticket's lines, its first one goes in front of them.
        let (put, text) = match fence(first) {
            Some(_) => (place.clone(), FENCE.to_owned()),
            None => (self.place.part(at, at), format!("{FENCE}\n")),
        };
        let message = said!("ticket-fence");
        self.faults.push(
            Fault::error("ticket-fence", &place, message)
                .help(said!("ticket-fence-help"))
                .mended(put, text),
        );
    }

    /// A ticket that nothing closes; `end` is where its lines do.
    fn closing_slip(&mut self, at: usize, end: usize) {
        let first = self.body[at..].lines().next().unwrap_or("");
        let place = self.place.part(at, at + first.trim_end().len());
        let cut = if self.body[..end].ends_with('\n') { "" } else { "\n" };
        let short = self.body[end..].lines().next().filter(|line| short_fence(line));
        let put = self.place.part(end, end + short.map_or(0, str::len));
        let text = if short.is_some() { "~~~".to_owned() } else { format!("{cut}~~~\n") };
        self.faults.push(
            Fault::error("ticket-fence", &place, said!("ticket-no-end"))
                .help(said!("ticket-no-end-help"))
                .mended(put, text),
        );
    }

    /// Gives the ticket to its heading, if it stands right beneath one.
    fn accept(&mut self, text: Range<usize>, fence: &Range<usize>) {
        let place = self.place.part(text.start, text.end);
        let ticket = Placed::new(self.body[text].to_owned(), place);
        if self.is_beneath(fence.start) {
            if let Some(part) = self.read.parts.last_mut() {
                part.prose.start = fence.end;
                part.ticket = Some(ticket);
            }
            return;
        }
        self.read.stray = true;
        let message = said!("stray-ticket");
        let help = said!("stray-ticket-help");
        self.faults.push(Fault::error("stray-ticket", &ticket.place, message).help(help));
    }
}

/// The byte at which the line after the one that holds byte `at` begins.
fn line_after(body: &str, at: usize) -> usize {
    body[at..].find('\n').map_or(body.len(), |found| at + found + 1)
}

/// What stands behind the signs of a line that begins with at least two `~` or backticks.
fn fence(line: &str) -> Option<&str> {
    let line = line.trim();
    let info = line.trim_start_matches(['~', '`']);
    (line.len() - info.len() >= 2).then(|| info.trim())
}

/// Whether what stands behind a fence can only be meant as `ticket`.
fn is_meant(info: &str) -> bool {
    let word = info.split([' ', ':']).next().unwrap_or("");
    nearest(word, ["ticket"]).is_some()
}

/// Whether a line begins a ticket, as none does within another.
fn opens_ticket(line: &str) -> bool {
    fence(line).is_some_and(|info| info == "ticket" || info.starts_with("ticket "))
}

/// Whether a line closes a block.
fn is_bare_fence(line: &str) -> bool {
    fence(line).is_some_and(str::is_empty) && line.trim().len() >= 3
}

/// Whether a line was meant to close one.
fn short_fence(line: &str) -> bool {
    fence(line).is_some()
}

/// Whether every line of a block, but for the fence that ends it, is one of a ticket.
fn holds_ticket_lines(block: &str) -> bool {
    let mut lines = block.lines().filter(|line| fence(line).is_none()).peekable();
    lines.peek().is_some() && lines.all(is_ticket_line)
}

/// Whether a line begins with a key that tickets have, or what can only be meant as one.
fn is_ticket_line(line: &str) -> bool {
    let key = line.split_once(':').map(|(key, _)| key.trim_end());
    key.is_some_and(|key| {
        ticket::KEYS.contains(&key) || nearest(key, ticket::KEYS).is_some()
    })
}

fn is_major(level: HeadingLevel) -> bool {
    matches!(level, HeadingLevel::H1 | HeadingLevel::H2)
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

/// A heading made into a name: `Lock in the butter` → `lock-in-the-butter`.
pub(crate) fn name(title: &str) -> String {
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
        let parts = parts(body, &place, &mut faults).parts;
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
