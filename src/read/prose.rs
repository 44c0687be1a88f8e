//! Markdown to prose: the parser's events become our small tree; braces become live
//! values; raw HTML is kept as the text it is.
#![allow(clippy::wildcard_enum_match_arm, reason = "Markdown's events are not ours")]

mod caution;
mod live;
mod quotation;

use std::ops::Range;

use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd};

use crate::fault::{Fault, Place, Placed};
use crate::model::{Block, Brace, Inline, Live, Shown};
use crate::said;

use super::{picture, readable};

/// Nesting of lists and quotations beyond this is a fault.
const DEEPEST: usize = 12;
/// The name of that fault.
const TOO_DEEP: &str = "too-deep";

/// The extensions that are read: tables, lists of things to tick, typographic quotes and
/// dashes.
pub(super) fn options() -> Options {
    Options::ENABLE_TABLES | Options::ENABLE_TASKLISTS | Options::ENABLE_SMART_PUNCTUATION
}

/// Reads `text`, which is the Markdown at `place`.
pub(super) fn read(text: &str, place: &Place, faults: &mut Vec<Fault>) -> Prose {
    let mut builder = Builder {
        text,
        place,
        faults,
        stack: Vec::new(),
        beyond: 0,
        run: Vec::new(),
        pictures: Vec::new(),
        links: Vec::new(),
    };
    builder.push(Frame::Blocks(Vec::new()));
    for (event, range) in Parser::new_ext(text, options()).into_offset_iter() {
        builder.event(event, range);
    }
    builder.finish()
}

/// Reads the one line of a ticket that is said to the student: words as they are typed,
/// with live temperatures, lengths and sizes.
pub(super) fn cue(line: &Placed<String>, faults: &mut Vec<Fault>) -> Vec<Inline<Brace>> {
    let inlines = live::split(&line.value, &line.place, &pieces(&line.value), faults);
    for inline in &inlines {
        if let Inline::Live { value } = inline
            && matches!(value.value, Live::Named { .. } | Live::Pieces)
        {
            let message = said!("until-brace");
            faults.push(
                Fault::error("unknown-brace", &value.place, message)
                    .help(said!("until-brace-help")),
            );
        }
    }
    inlines
}

/// A line in pieces, a new one at each brace behind a backslash, which is left out.
fn pieces(line: &str) -> Vec<Piece> {
    let mut starts = vec![0];
    let plain = line.match_indices('\\').map(|(at, _)| at + 1);
    starts.extend(plain.filter(|at| line[*at..].starts_with(['{', '}'])));
    let ends = starts.iter().skip(1).map(|start| start - 1).chain([line.len()]);
    let ranges = starts.iter().zip(ends).map(|(start, end)| *start..end);
    ranges.map(|range| Piece { text: readable(&line[range.clone()]), range }).collect()
}

/// What was read.
#[derive(Default)]
pub(super) struct Prose {
    /// The text.
    pub(super) blocks: Vec<Block<Brace>>,
    /// The pictures in it, by their names below the media folder.
    pub(super) pictures: Vec<Placed<String>>,
    /// Where the links in it lead, as written.
    pub(super) links: Vec<Placed<String>>,
}

/// What is being built: blocks, a line of text, a list's items or a table's rows.
enum Frame {
    Blocks(Vec<Block<Brace>>),
    Line(Vec<Inline<Brace>>),
    Link(String, Vec<Inline<Brace>>),
    Picture(Placed<String>, Vec<Inline<Brace>>),
    /// A list: its first number, whether its items are ticked, and they.
    Items(Option<u64>, bool, Vec<Vec<Block<Brace>>>),
    Rows(Vec<Vec<Vec<Inline<Brace>>>>),
    Code(String),
}

/// A piece of plain text and where it stands in the source.
struct Piece {
    text: String,
    range: Range<usize>,
}

struct Builder<'a> {
    text: &'a str,
    place: &'a Place,
    faults: &'a mut Vec<Fault>,
    stack: Vec<Frame>,
    /// How many levels below the deepest one are open: what they hold is kept, they are
    /// not.
    beyond: usize,
    run: Vec<Piece>,
    pictures: Vec<Placed<String>>,
    links: Vec<Placed<String>>,
}

impl Builder<'_> {
    fn event(&mut self, event: Event, range: Range<usize>) {
        match event {
            Event::Text(text) => self.words(text.into_string(), range),
            Event::Html(text) | Event::InlineHtml(text) => {
                self.words(text.into_string(), range);
            }
            Event::SoftBreak => self.words(" ".into(), range),
            event => {
                self.flush();
                self.structure(event, range);
            }
        }
    }

    fn structure(&mut self, event: Event, range: Range<usize>) {
        match event {
            Event::Start(tag) => self.start(&tag, range),
            Event::End(end) => self.end(end, range),
            Event::Code(text) => self.inline(Inline::Code { text: text.into_string() }),
            Event::HardBreak => self.inline(Inline::Break),
            Event::Rule => self.block(Block::Rule),
            Event::TaskListMarker(_) => self.ticked(),
            _ => {}
        }
    }

    fn start(&mut self, tag: &Tag, range: Range<usize>) {
        if self.stack.len() >= DEEPEST * 2 {
            self.too_deep(range);
            return;
        }
        match tag {
            Tag::List(start) => self.push(Frame::Items(*start, false, Vec::new())),
            Tag::Table(_) => self.push(Frame::Rows(Vec::new())),
            Tag::TableHead | Tag::TableRow => {
                if let Some(Frame::Rows(rows)) = self.stack.last_mut() {
                    rows.push(Vec::new());
                }
            }
            Tag::CodeBlock(_) => self.push(Frame::Code(String::new())),
            Tag::Item | Tag::BlockQuote(_) | Tag::HtmlBlock => {
                self.push(Frame::Blocks(Vec::new()));
            }
            Tag::Image { dest_url, .. } => {
                let place = self.place.part(range.start, range.end);
                self.push(Frame::Picture(
                    Placed::new(dest_url.to_string(), place),
                    Vec::new(),
                ));
            }
            Tag::Link { dest_url, .. } => {
                self.links.push(self.link(dest_url, range));
                self.push(Frame::Link(dest_url.to_string(), Vec::new()));
            }
            _ => self.push(Frame::Line(Vec::new())),
        }
    }

    /// Where a link leads, at the words that say so; at the whole link where they stand
    /// elsewhere.
    fn link(&self, to: &str, range: Range<usize>) -> Placed<String> {
        let written = &self.text[range.clone()];
        let found = written.rfind(to).filter(|_| !to.is_empty());
        let place = found.map_or_else(
            || self.place.part(range.start, range.end),
            |at| self.place.part(range.start + at, range.start + at + to.len()),
        );
        Placed::new(to.to_owned(), place)
    }

    /// Leaves one more level out; of the first one it says so.
    fn too_deep(&mut self, range: Range<usize>) {
        self.beyond += 1;
        let said =
            |fault: &Fault| fault.name == TOO_DEEP && fault.place.file == self.place.file;
        if self.beyond > 1 || self.faults.iter().any(said) {
            return;
        }
        let place = self.place.part(range.start, range.end);
        self.faults.push(
            Fault::error(TOO_DEEP, &place, said!("too-deep"))
                .help(said!("too-deep-help")),
        );
    }

    fn end(&mut self, end: TagEnd, range: Range<usize>) {
        if self.beyond > 0 {
            self.beyond -= 1;
            return;
        }
        if matches!(end, TagEnd::TableHead | TagEnd::TableRow) {
            return;
        }
        match self.stack.pop() {
            Some(Frame::Line(content)) => self.end_line(end, content),
            Some(Frame::Link(to, content)) => self.inline(Inline::Link { to, content }),
            Some(Frame::Picture(to, content)) => self.end_picture(&to, &content),
            Some(Frame::Blocks(content)) => self.end_blocks(end, content, range),
            Some(Frame::Items(start, ticks, items)) => {
                self.block(Block::List { start, ticks, items });
            }
            Some(Frame::Rows(rows)) => self.block(Block::Table { rows }),
            Some(Frame::Code(text)) => {
                self.block(Block::Code { text: text.trim_end().to_owned() });
            }
            None => {}
        }
    }

    fn end_line(&mut self, end: TagEnd, content: Vec<Inline<Brace>>) {
        match end {
            TagEnd::Heading(_) => self.block(Block::Heading { content }),
            TagEnd::Emphasis => self.inline(Inline::Emphasis { content }),
            TagEnd::Strong => self.inline(Inline::Strong { content }),
            TagEnd::TableCell => {
                if let Some(Frame::Rows(rows)) = self.stack.last_mut()
                    && let Some(row) = rows.last_mut()
                {
                    row.push(content);
                }
            }
            TagEnd::Paragraph => self.block(Block::Paragraph { content }),
            _ => content.into_iter().for_each(|inline| self.inline(inline)),
        }
    }

    fn end_picture(&mut self, to: &Placed<String>, content: &[Inline<Brace>]) {
        match picture::in_prose(to, content) {
            Ok(Shown { file, alt }) => {
                self.inline(Inline::Picture { file: file.value.clone(), alt });
                self.pictures.push(file);
            }
            Err(fault) => self.faults.push(fault),
        }
    }

    fn end_blocks(
        &mut self,
        end: TagEnd,
        content: Vec<Block<Brace>>,
        range: Range<usize>,
    ) {
        match end {
            TagEnd::Item => {
                if let Some(Frame::Items(_, _, items)) = self.stack.last_mut() {
                    items.push(content);
                }
            }
            TagEnd::BlockQuote(_) => {
                let first = self.text[range.clone()].find('\n').unwrap_or(range.len());
                let place = self.place.part(range.start, range.start + first);
                let quotation = quotation::quotation(content, &place, self.faults);
                self.block(quotation);
            }
            _ => content.into_iter().for_each(|block| self.block(block)),
        }
    }

    /// The list that is open has items to tick.
    fn ticked(&mut self) {
        let open = self.stack.iter_mut().rev().find_map(|frame| match frame {
            Frame::Items(_, ticks, _) => Some(ticks),
            Frame::Blocks(_)
            | Frame::Line(_)
            | Frame::Link(..)
            | Frame::Picture(..)
            | Frame::Rows(_)
            | Frame::Code(_) => None,
        });
        if let Some(ticks) = open {
            *ticks = true;
        }
    }

    fn push(&mut self, frame: Frame) {
        self.stack.push(frame);
    }

    fn block(&mut self, block: Block<Brace>) {
        if let Some(Frame::Blocks(blocks)) = self.stack.last_mut() {
            blocks.push(block);
        }
    }

    fn inline(&mut self, inline: Inline<Brace>) {
        match self.stack.last_mut() {
            Some(Frame::Line(line) | Frame::Link(_, line) | Frame::Picture(_, line)) => {
                line.push(inline);
            }
            Some(Frame::Blocks(blocks)) => match blocks.last_mut() {
                // The text of a tight list item has no paragraph of its own.
                Some(Block::Paragraph { content }) => content.push(inline),
                _ => blocks.push(Block::Paragraph { content: vec![inline] }),
            },
            _ => {}
        }
    }

    fn words(&mut self, text: String, range: Range<usize>) {
        if let Some(Frame::Code(code)) = self.stack.last_mut() {
            code.push_str(&text);
        } else {
            self.run.push(Piece { text: readable(&text), range });
        }
    }

    /// Ends a run of plain text: finds the live values in it.
    fn flush(&mut self) {
        let run = std::mem::take(&mut self.run);
        if run.is_empty() {
            return;
        }
        for inline in live::split(self.text, self.place, &run, self.faults) {
            self.inline(inline);
        }
    }

    fn finish(mut self) -> Prose {
        self.flush();
        let blocks = match self.stack.pop() {
            Some(Frame::Blocks(blocks)) => blocks,
            _ => Vec::new(),
        };
        Prose { blocks, pictures: self.pictures, links: self.links }
    }
}
