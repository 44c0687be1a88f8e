//! The parts of a text as it is this moment: head, headings, tickets, prose, by their lines
//! alone, so that what is half written has a place too.

use std::ops::Range;

use crate::read::Shape;

/// A text in parts.
pub(super) struct Outline<'a> {
    /// The text.
    pub(super) text: &'a str,
    /// The head, or all of a YAML file.
    pub(super) head: Range<usize>,
    /// What stands below it.
    pub(super) parts: Vec<Part<'a>>,
    /// The lines that begin a ticket or end it.
    fences: Vec<Range<usize>>,
}

/// A heading and what stands beneath it; the first part has none.
pub(super) struct Part<'a> {
    /// The heading's words.
    pub(super) title: &'a str,
    /// The heading's line.
    pub(super) heading: Range<usize>,
    /// The lines of the ticket.
    pub(super) ticket: Option<Range<usize>>,
    /// All of it.
    pub(super) range: Range<usize>,
}

/// What kind of part holds a place.
pub(super) enum Region {
    /// Keys and values, in a head or a file of them.
    Keys(Range<usize>),
    /// The lines of a ticket.
    Ticket(Range<usize>),
    /// A line that begins with the signs of a ticket's first or last line.
    Fence(Range<usize>),
    /// A heading.
    Heading,
    /// Prose.
    Prose(Range<usize>),
}

impl<'a> Outline<'a> {
    pub(super) fn of(text: &'a str, shape: Shape) -> Self {
        if shape.is_yaml() {
            let (head, parts, fences) = (0..text.len(), Vec::new(), Vec::new());
            return Self { text, head, parts, fences };
        }
        let (head, body) = head(text);
        let range = body..text.len();
        let opening = Part { title: "", heading: body..body, ticket: None, range };
        let mut outline = Self { text, head, parts: vec![opening], fences: Vec::new() };
        let mut open = false;
        for (at, line) in lines(text, body) {
            open = outline.line(at, line, open);
        }
        outline
    }

    /// Takes a line of the body; whether a ticket is open behind it.
    fn line(&mut self, at: usize, line: &'a str, open: bool) -> bool {
        let (words, end) = (line.trim_end(), at + line.len());
        let is_heading = words.starts_with("## ") || words.starts_with("# ");
        if is_heading {
            self.heading(at, line);
            return false;
        }
        if let Some(info) = fence(words) {
            self.fences.push(at..at + words.len());
            let begins = !open && info.starts_with('t');
            if let Some(part) = self.parts.last_mut()
                && begins
                && part.ticket.is_none()
            {
                part.ticket = Some(end..end);
            }
            return begins;
        }
        if let Some(ticket) =
            self.parts.last_mut().and_then(|part| part.ticket.as_mut()).filter(|_| open)
        {
            ticket.end = end;
        }
        open
    }

    fn heading(&mut self, at: usize, line: &'a str) {
        if let Some(part) = self.parts.last_mut() {
            part.range.end = at;
        }
        let (heading, range) = (at..at + line.trim_end().len(), at..self.text.len());
        let title = line.trim().trim_start_matches('#').trim();
        self.parts.push(Part { title, heading, ticket: None, range });
    }

    /// The part of the text that holds byte `at`.
    pub(super) fn part(&self, at: usize) -> Option<&Part<'a>> {
        self.parts.iter().rev().find(|part| part.range.start <= at)
    }

    /// What holds byte `at`. What is typed at the end of a stretch belongs to it.
    pub(super) fn region(&self, at: usize) -> Region {
        let holds = |range: &Range<usize>| range.start <= at && at <= range.end;
        if holds(&self.head) {
            return Region::Keys(self.head.clone());
        }
        if let Some(fence) = self.fences.iter().find(|range| holds(range)) {
            return Region::Fence(fence.clone());
        }
        let Some(part) = self.part(at) else { return Region::Prose(at..at) };
        let ticket = part.ticket.as_ref().filter(|ticket| holds(ticket));
        match ticket {
            Some(ticket) => Region::Ticket(ticket.clone()),
            None if !part.title.is_empty() && holds(&part.heading) => Region::Heading,
            None => Region::Prose(part.range.clone()),
        }
    }
}

/// The head between its two lines of `---`, and where the body begins. A head without its
/// last line ends before what no head holds.
fn head(text: &str) -> (Range<usize>, usize) {
    let mark = text.len() - text.trim_start_matches('\u{feff}').len();
    let mut lines = lines(text, mark).peekable();
    let Some((at, first)) = lines.next_if(|(_, line)| line.trim_end() == "---") else {
        return (0..0, mark);
    };
    let start = at + first.len();
    let last = lines.find(|(_, line)| {
        line.trim_end() == "---" || line.starts_with("## ") || fence(line).is_some()
    });
    match last {
        Some((at, line)) if line.trim_end() == "---" => (start..at, at + line.len()),
        Some((at, _)) => (start..at.saturating_sub(1).max(start), at),
        None => (start..text.len(), text.len()),
    }
}

/// The lines of a text from byte `from` on, each with its place and its end.
pub(super) fn lines(text: &str, from: usize) -> impl Iterator<Item = (usize, &str)> {
    let mut next = from;
    text[from..].split_inclusive('\n').map(move |line| {
        let at = next;
        next += line.len();
        (at, line)
    })
}

/// What stands behind the three signs that a ticket's first and last line begin with.
fn fence(line: &str) -> Option<&str> {
    let line = line.trim();
    let info = line.trim_start_matches(['~', '`']);
    (line.len() - info.len() >= 3).then(|| info.trim())
}
