//! The text of a class as fields of a form, and back: only those lines change whose fields
//! did. What a form cannot show it leaves as it is, and says which.

use std::collections::BTreeMap;
use std::ops::Range;

use serde::{Deserialize, Serialize};

use crate::fault::Placed;
use crate::read::{Node, yaml};

/// What stands in one field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Field {
    /// One value; none is an empty one.
    One(String),
    /// Values line by line; of keys with values each line is `key: value`.
    Lines(Vec<String>),
    /// Rows of values by their keys.
    Rows(Vec<Row>),
}

/// The values of a row by their keys.
pub type Row = BTreeMap<String, String>;

/// Fields by their keys.
pub type Fields = BTreeMap<String, Field>;

/// A class as a form shows it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Form {
    /// What can be changed in it.
    pub fields: Fields,
    /// Keys that stand in the text and not in the form.
    pub beyond: Vec<String>,
}

/// How a field is written.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    One,
    List,
    Pairs,
    Rows,
}

/// The fields of a class, in the order in which they are written.
const FIELDS: [(&str, Kind); 8] = [
    ("title", Kind::One),
    ("sessions", Kind::List),
    ("bakers", Kind::One),
    ("work in", Kind::One),
    ("makes", Kind::Rows),
    ("kit", Kind::Pairs),
    ("spare", Kind::One),
    ("on the shelf", Kind::Pairs),
];
/// The keys of a row, in the order in which they are written; the first says that it is one.
const ROW: [&str; 5] = ["recipe", "with", "each", "pieces", "batches"];

/// Why a form is not written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unwritten {
    /// The text does not read, or not as keys with values line by line.
    Unread,
    /// A line that should be `key: value`.
    NoPair(String),
    /// The text is laid out so that it cannot be changed by a form.
    Layout,
}

/// A class's text as a form; none where it does not read as keys with values line by line.
pub fn read(text: &str) -> Option<Form> {
    Laid::new(text).map(|laid| laid.form())
}

/// The text with what is said in the form. Fields that it does not have stay as they are.
///
/// # Errors
/// Where it does not read, or the form cannot be written into it.
pub fn write(text: &str, said: &Fields) -> Result<String, Unwritten> {
    let laid = Laid::new(text).ok_or(Unwritten::Unread)?;
    let mut wanted = laid.form().fields;
    let mut changes = Vec::new();
    for (at, (key, kind)) in FIELDS.into_iter().enumerate() {
        let (Some(stands), Some(new)) = (wanted.get_mut(key), said.get(key)) else {
            continue;
        };
        let new = tidy(new, kind)?;
        if stands != &new {
            changes.extend(laid.change((at, key, kind), stands, &new));
            *stands = new;
        }
    }
    let written = applied(text, changes);
    let after = Laid::new(&written).ok_or(Unwritten::Layout)?;
    let stands = after.form().fields;
    let as_said = wanted
        .into_iter()
        .all(|(key, field)| stands.get(&key) == Some(&without_empty(field)));
    if as_said && laid.others() == after.others() {
        Ok(written)
    } else {
        Err(Unwritten::Layout)
    }
}

/// What is said without blanks around it. Rows keep their places.
fn tidy(field: &Field, kind: Kind) -> Result<Field, Unwritten> {
    let trimmed = |text: &String| text.split_whitespace().collect::<Vec<_>>().join(" ");
    Ok(match field {
        Field::One(text) => Field::One(trimmed(text)),
        Field::Lines(lines) => {
            let lines = lines.iter().map(trimmed).filter(|line| !line.is_empty());
            let lines = lines.map(|line| match (kind, pair(&line)) {
                (Kind::Pairs, None) => Err(Unwritten::NoPair(line)),
                (Kind::Pairs, Some((key, value))) => Ok(format!("{key}: {value}")),
                (Kind::One | Kind::List | Kind::Rows, _) => Ok(line),
            });
            Field::Lines(lines.collect::<Result<_, _>>()?)
        }
        Field::Rows(rows) => {
            let row = |row: &Row| {
                let all = row.iter().map(|(key, text)| (key.clone(), trimmed(text)));
                all.filter(|(_, text)| !text.is_empty()).collect::<Row>()
            };
            Field::Rows(rows.iter().map(row).collect())
        }
    })
}

/// A field without the rows that were emptied.
fn without_empty(field: Field) -> Field {
    match field {
        Field::Rows(rows) => Field::Rows(rows.into_iter().filter(is_row).collect()),
        Field::One(_) | Field::Lines(_) => field,
    }
}

fn is_row(row: &Row) -> bool {
    row.contains_key(ROW[0])
}

fn pair(line: &str) -> Option<(&str, &str)> {
    let (key, value) = line.rsplit_once(':')?;
    let (key, value) = (key.trim(), value.trim());
    (!key.is_empty() && !value.is_empty()).then_some((key, value))
}

/// A stretch of the text, and what comes in its place.
type Change = (Range<usize>, String);

fn applied(text: &str, mut changes: Vec<Change>) -> String {
    changes.sort_by_key(|(place, _)| (place.start, place.end));
    let mut text = text.to_owned();
    for (place, new) in changes.into_iter().rev() {
        text.replace_range(place, &new);
    }
    text
}

/// How the entries of a list or map are laid out.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Style {
    /// One a line.
    Block,
    /// Between brackets, with commas.
    Flow,
}

type Entries = Vec<(Placed<String>, Placed<Node>)>;

/// A text and where its keys and values stand.
struct Laid<'a> {
    text: &'a str,
    entries: Entries,
}

impl<'a> Laid<'a> {
    fn new(text: &'a str) -> Option<Self> {
        let node = yaml(&"".into(), text, 0).ok()?;
        let Node::Map(entries) = node.value else { return None };
        let laid = Self { text, entries };
        let first = laid.entries.first()?.0.place.start();
        (first == laid.line(first).start).then_some(laid)
    }

    fn entry(&self, key: &str) -> Option<&(Placed<String>, Placed<Node>)> {
        self.entries.iter().find(|(name, _)| name.value == key)
    }

    fn form(&self) -> Form {
        let mut form = Form { fields: Fields::new(), beyond: Vec::new() };
        for (key, kind) in FIELDS {
            let node = self.entry(key).map(|(_, value)| &value.value);
            let field = shown(node.unwrap_or(&Node::Empty), kind);
            field.map(|field| form.fields.insert(key.to_owned(), field));
        }
        for (key, value) in &self.entries {
            match (form.fields.get(&key.value), &value.value) {
                (None, _) => form.beyond.push(key.value.clone()),
                (Some(Field::Rows(_)), Node::List(rows)) => {
                    let keys = rows.iter().flat_map(|row| beyond_row(&row.value));
                    form.beyond.extend(keys.map(|of| format!("{}: {of}", key.value)));
                }
                (Some(Field::One(_) | Field::Lines(_) | Field::Rows(_)), _) => {}
            }
        }
        form
    }

    /// Everything that the form does not show, without its places.
    fn others(&self) -> Vec<String> {
        let shown = self.form().fields;
        let others =
            self.entries.iter().filter(|(key, _)| !shown.contains_key(&key.value));
        others
            .map(|(key, value)| format!("{}: {}", key.value, bare(&value.value)))
            .collect()
    }

    /// The changes that make a field say something else.
    fn change(
        &self,
        of: (usize, &str, Kind),
        stands: &Field,
        new: &Field,
    ) -> Vec<Change> {
        let (at, key, kind) = of;
        let is_empty = match new {
            Field::One(text) => text.is_empty(),
            Field::Lines(lines) => lines.is_empty(),
            Field::Rows(rows) => !rows.iter().any(is_row),
        };
        let Some((name, node)) = self.entry(key) else {
            return vec![(self.free(at), format!("{key}:{}", self.fresh(new, kind)))];
        };
        if is_empty {
            let whole = name.place.start()..self.end(node);
            return vec![(self.lines(&whole), String::new())];
        }
        if node.value == Node::Empty {
            let colon = self.text[name.place.end()..].find(':').unwrap_or(0);
            let behind = name.place.end() + colon + 1;
            return vec![(behind..behind, self.fresh(new, kind).trim_end().to_owned())];
        }
        match (new, stands, &node.value) {
            (Field::One(text), _, _) => {
                vec![(self.span(node), quoted(text, Style::Block))]
            }
            (Field::Lines(new), Field::Lines(old), Node::List(items)) => {
                let spans: Vec<_> = items.iter().map(|it| self.span(it)).collect();
                let style = self.style(node);
                let write = |_: Option<usize>, line: &String| quoted(line, style);
                self.aligned(&spans, style, (old, new), &write, "- ")
            }
            (Field::Lines(new), Field::Lines(old), Node::Map(entries)) => {
                let style = self.style(node);
                let span = |(key, value): &(Placed<String>, Placed<Node>)| {
                    key.place.start()..self.span(value).end
                };
                let spans: Vec<_> = entries.iter().map(span).collect();
                let write = |at: Option<usize>, line: &String| {
                    self.pair(at.map(|at| &entries[at]), line, style)
                };
                self.aligned(&spans, style, (old, new), &write, "")
            }
            (Field::Lines(new), _, _) => {
                let all: Vec<String> =
                    new.iter().map(|it| quoted(it, Style::Flow)).collect();
                let text = match new.as_slice() {
                    [one] => quoted(one, Style::Block),
                    _ => format!("[{}]", all.join(", ")),
                };
                vec![(self.span(node), text)]
            }
            (Field::Rows(new), Field::Rows(old), Node::List(items)) => {
                self.rows(items, self.style(node), old, new)
            }
            (Field::Rows(_), _, _) => Vec::new(),
        }
    }

    /// A pair in place of one that stands: with the same key only its value is another.
    fn pair(
        &self,
        stands: Option<&(Placed<String>, Placed<Node>)>,
        line: &str,
        style: Style,
    ) -> String {
        let (key, value) = pair(line).unwrap_or((line, ""));
        let value = quoted(value, style);
        match stands {
            Some((name, node)) if name.value == key => {
                let before = &self.text[name.place.start()..self.span(node).start];
                format!("{before}{value}")
            }
            Some(_) | None => format!("{}: {value}", quoted(key, style)),
        }
    }

    /// The changes that make entries another series of them: what is the same before and
    /// behind stays, what is between is put in place of one another.
    fn aligned(
        &self,
        spans: &[Range<usize>],
        style: Style,
        (old, new): (&[String], &[String]),
        write: &dyn Fn(Option<usize>, &String) -> String,
        dash: &str,
    ) -> Vec<Change> {
        let same = |(one, other): &(&String, &String)| one == other;
        let before = old.iter().zip(new).take_while(same).count();
        let rest = (&old[before..], &new[before..]);
        let behind =
            rest.0.iter().rev().zip(rest.1.iter().rev()).take_while(same).count();
        let (of, to) = (old.len() - behind, new.len() - behind);
        let both = before + (of - before).min(to - before);
        let mut changes: Vec<Change> = (before..both)
            .map(|at| (spans[at].clone(), write(Some(at), &new[at])))
            .collect();
        if both < of {
            changes.push((self.gone(spans, both..of, style), String::new()));
        }
        if both < to {
            let all: Vec<String> =
                new[both..to].iter().map(|it| write(None, it)).collect();
            let lead = self.lead(spans, dash);
            changes.extend(self.more(spans, both, style, &all, &lead));
        }
        changes
    }

    /// The stretch that some of the entries take up, with what parts them from the others.
    fn gone(
        &self,
        spans: &[Range<usize>],
        of: Range<usize>,
        style: Style,
    ) -> Range<usize> {
        let whole = spans[of.start].start..spans[of.end - 1].end;
        match style {
            Style::Block => self.lines(&whole),
            Style::Flow if of.end < spans.len() => whole.start..spans[of.end].start,
            Style::Flow if of.start > 0 => spans[of.start - 1].end..whole.end,
            Style::Flow => whole,
        }
    }

    /// What a line of one more entry begins with, as those of the others do.
    fn lead(&self, spans: &[Range<usize>], dash: &str) -> String {
        let first = spans.first().map_or(0, |it| it.start);
        let indent = &self.text[self.line(first).start..first];
        format!("{}{dash}", indent.split('-').next().unwrap_or(indent))
    }

    /// How far from the beginning of its line a place stands.
    fn column(&self, at: usize) -> usize {
        at - self.line(at).start
    }

    /// More entries behind so many others; a line of its own begins with `lead`.
    fn more(
        &self,
        spans: &[Range<usize>],
        behind: usize,
        style: Style,
        all: &[String],
        lead: &str,
    ) -> Option<Change> {
        let first = spans.first()?;
        let last = behind.checked_sub(1).map(|at| &spans[at]);
        Some(match (style, last) {
            (Style::Flow, Some(last)) => {
                (last.end..last.end, format!(", {}", all.join(", ")))
            }
            (Style::Flow, None) => {
                (first.start..first.start, format!("{}, ", all.join(", ")))
            }
            (Style::Block, last) => {
                let start = self.line(first.start).start;
                let lines: Vec<String> =
                    all.iter().map(|it| format!("{lead}{it}")).collect();
                let place = last.map_or(start, |last| self.line(last.end).end);
                (place..place, self.whole_lines(place, &lines))
            }
        })
    }

    /// The changes of rows: each stays where it is, is emptied, or comes behind the others.
    fn rows(
        &self,
        items: &[Placed<Node>],
        style: Style,
        old: &[Row],
        new: &[Row],
    ) -> Vec<Change> {
        let spans: Vec<Range<usize>> =
            items.iter().map(|it| it.place.start()..self.end(it)).collect();
        let mut changes = Vec::new();
        for (at, (stands, said)) in old.iter().zip(new).enumerate() {
            if !is_row(said) {
                changes.push((self.gone(&spans, at..at + 1, style), String::new()));
            } else if let Node::Map(entries) = &items[at].value {
                let of = self.style(&items[at]);
                changes.extend(self.row(entries, of, stands, said));
            }
        }
        let fresh = new.iter().skip(old.len()).filter(|row| is_row(row));
        let last = items.last();
        let of = last.map_or(Style::Block, |last| self.style(last));
        let all: Vec<String> = fresh
            .map(|row| match (style, of) {
                (Style::Block, Style::Block) => {
                    let start = spans.last().map_or(0, |it| it.start);
                    let column = " ".repeat(self.column(start));
                    let parting = format!("{}{column}", self.end_of_line());
                    pairs(row, Style::Block).join(&parting)
                }
                (Style::Flow, _) | (_, Style::Flow) => {
                    format!("{{ {} }}", pairs(row, Style::Flow).join(", "))
                }
            })
            .collect();
        if !all.is_empty() {
            let lead = self.lead(&spans, "- ");
            changes.extend(self.more(&spans, spans.len(), style, &all, &lead));
        }
        changes
    }

    /// The changes of one row, key by key.
    fn row(&self, entries: &Entries, style: Style, old: &Row, new: &Row) -> Vec<Change> {
        let span = |(key, value): &(Placed<String>, Placed<Node>)| {
            key.place.start()..self.end(value)
        };
        let spans: Vec<Range<usize>> = entries.iter().map(span).collect();
        let mut changes = Vec::new();
        for key in ROW.into_iter().filter(|key| old.get(*key) != new.get(*key)) {
            let at = entries.iter().position(|(name, _)| name.value == key);
            match (at, new.get(key)) {
                (Some(at), Some(text)) => {
                    changes.push((self.span(&entries[at].1), quoted(text, style)));
                }
                (Some(at), None) => {
                    changes.push((self.gone(&spans, at..at + 1, style), String::new()));
                }
                (None, Some(text)) => {
                    let one = [format!("{key}: {}", quoted(text, style))];
                    // It may stand behind a dash.
                    let column = self.column(spans.first().map_or(0, |it| it.start));
                    let lead = " ".repeat(column);
                    changes.extend(self.more(&spans, spans.len(), style, &one, &lead));
                }
                (None, None) => {}
            }
        }
        changes
    }

    /// Where a key that is not there yet goes: behind the one that usually stands before it.
    fn free(&self, at: usize) -> Range<usize> {
        let before = FIELDS[..at].iter().rev().find_map(|(key, _)| self.entry(key));
        let place = before.map_or(0, |(_, value)| self.line(self.end(value)).end);
        place..place
    }

    /// What stands behind the colon of a key that is new.
    fn fresh(&self, field: &Field, kind: Kind) -> String {
        let end = self.end_of_line();
        let line = |text: String| format!("{end}{text}");
        let lines: String = match field {
            Field::One(text) => format!(" {}", quoted(text, Style::Block)),
            Field::Lines(lines) => {
                let one = |it: &String| match kind {
                    Kind::Pairs => {
                        line(format!("  {}", self.pair(None, it, Style::Block)))
                    }
                    Kind::One | Kind::List | Kind::Rows => {
                        line(format!("  - {}", quoted(it, Style::Block)))
                    }
                };
                lines.iter().map(one).collect()
            }
            Field::Rows(rows) => {
                let parting = format!("{end}    ");
                let rows = rows.iter().filter(|row| is_row(row));
                rows.map(|row| {
                    line(format!("  - {}", pairs(row, Style::Block).join(&parting)))
                })
                .collect()
            }
        };
        format!("{lines}{end}")
    }

    fn end_of_line(&self) -> &'static str {
        if self.text.contains("\r\n") { "\r\n" } else { "\n" }
    }

    /// Lines to be put in at a place; one that does not end yet is ended.
    fn whole_lines(&self, place: usize, lines: &[String]) -> String {
        let end = self.end_of_line();
        let begun = place > 0 && !self.text[..place].ends_with('\n');
        let all: String = lines.iter().map(|line| format!("{line}{end}")).collect();
        if begun { format!("{end}{all}") } else { all }
    }

    /// The line at a place, with its end.
    fn line(&self, at: usize) -> Range<usize> {
        let start = self.text[..at].rfind('\n').map_or(0, |found| found + 1);
        let end =
            self.text[at..].find('\n').map_or(self.text.len(), |found| at + found + 1);
        start..end
    }

    /// The lines that hold a stretch.
    fn lines(&self, of: &Range<usize>) -> Range<usize> {
        self.line(of.start).start..self.line(of.end).end
    }

    /// A value's own stretch, with its quotes.
    fn span(&self, node: &Placed<Node>) -> Range<usize> {
        let (start, end) = (node.place.start(), node.place.end());
        let (before, behind) = (&self.text[..start], &self.text[end..]);
        let is_in = |sign: char| before.ends_with(sign) && behind.starts_with(sign);
        if is_in('"') || is_in('\'') { start - 1..end + 1 } else { start..end }
    }

    /// Where a value with all that is in it ends.
    fn end(&self, node: &Placed<Node>) -> usize {
        let within = match &node.value {
            Node::List(items) => items.last().map(|it| self.end(it)),
            Node::Map(entries) => entries.last().map(|(_, value)| self.end(value)),
            Node::Empty | Node::Text(_) => None,
        };
        match within {
            Some(end) if self.style(node) == Style::Block => end,
            Some(_) | None => self.span(node).end,
        }
    }

    fn style(&self, node: &Placed<Node>) -> Style {
        let is_flow = self.text[node.place.start()..].starts_with(['[', '{']);
        if is_flow { Style::Flow } else { Style::Block }
    }
}

/// The pairs of a row, in their order.
fn pairs(row: &Row, style: Style) -> Vec<String> {
    let one =
        |key: &&str| row.get(*key).map(|text| format!("{key}: {}", quoted(text, style)));
    ROW.iter().filter_map(one).collect()
}

/// A value as a field shows it; none where it cannot.
fn shown(node: &Node, kind: Kind) -> Option<Field> {
    let line = |text: &str| (!text.contains('\n')).then(|| text.trim().to_owned());
    let text = |it: &Placed<Node>| it.value.text().and_then(line);
    Some(match (kind, node) {
        (Kind::One, Node::Empty) => Field::One(String::new()),
        (Kind::One, Node::Text(text)) => Field::One(line(text)?),
        (Kind::List | Kind::Pairs, Node::Empty) => Field::Lines(Vec::new()),
        (Kind::List, Node::Text(text)) => Field::Lines(vec![line(text)?]),
        (Kind::List, Node::List(items)) => {
            Field::Lines(items.iter().map(text).collect::<Option<_>>()?)
        }
        (Kind::Pairs, Node::Map(entries)) => {
            let pair = |(key, value): &(Placed<String>, Placed<Node>)| {
                Some(format!("{}: {}", key.value, text(value)?))
            };
            Field::Lines(entries.iter().map(pair).collect::<Option<_>>()?)
        }
        (Kind::Rows, Node::Empty) => Field::Rows(Vec::new()),
        (Kind::Rows, Node::List(items)) => {
            Field::Rows(items.iter().map(|it| row(&it.value)).collect::<Option<_>>()?)
        }
        (Kind::One, Node::List(_) | Node::Map(_))
        | (Kind::List, Node::Map(_))
        | (Kind::Pairs, Node::Text(_) | Node::List(_))
        | (Kind::Rows, Node::Text(_) | Node::Map(_)) => return None,
    })
}

/// A row as a form shows it; none where it says of no recipe.
fn row(node: &Node) -> Option<Row> {
    let Node::Map(entries) = node else { return None };
    let all = entries.iter().filter(|(key, _)| ROW.contains(&&*key.value));
    let row: Row = all
        .filter_map(|(key, value)| {
            Some((key.value.clone(), value.value.text()?.to_owned()))
        })
        .filter(|(_, text)| !text.contains('\n'))
        .collect();
    is_row(&row).then_some(row)
}

/// The keys of a row that a form does not show.
fn beyond_row(node: &Node) -> Vec<String> {
    let (Node::Map(entries), Some(shown)) = (node, row(node)) else { return Vec::new() };
    let beyond = entries.iter().filter(|(key, _)| !shown.contains_key(&key.value));
    beyond.map(|(key, _)| key.value.clone()).collect()
}

/// A value without its places.
fn bare(node: &Node) -> String {
    match node {
        Node::Empty => String::new(),
        Node::Text(text) => format!("{text:?}"),
        Node::List(items) => {
            format!("{:?}", items.iter().map(|it| bare(&it.value)).collect::<Vec<_>>())
        }
        Node::Map(entries) => {
            let all = entries.iter().map(|(key, value)| (&key.value, bare(&value.value)));
            format!("{:?}", all.collect::<Vec<_>>())
        }
    }
}

/// A value as YAML, in quotes where it would be something else without.
fn quoted(text: &str, style: Style) -> String {
    let begins = text.chars().next().is_some_and(char::is_alphanumeric);
    let signs = [": ", " #", "\n", "\""];
    let is_flow = style == Style::Flow && text.contains([',', '[', ']', '{', '}']);
    let is_other = text.ends_with(':') || text == "null" || is_flow;
    let is_plain = begins && !signs.iter().any(|sign| text.contains(sign));
    if is_plain && !is_other {
        text.to_owned()
    } else {
        serde_json::Value::from(text).to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const CLASS: &str = "\
# Third time.
title: Evening # so it is called
sessions:
  # the cold night
  - 2027-03-02 18:00 to 21:00   # first
  - 2027-03-03 18:00 to 21:30
bakers: 14
work in: pairs
makes:
  - recipe: crescents   # the whole lot
    each: pair
    pieces: 10
    # so that they see it
  - { recipe: crescents, each: demonstration, pieces: 10 } # shown
kit: { mixer: 4, oven: 2, tray per oven: 4 } # borrowed: 1 mixer
demonstrate: [first-turn]  # by hand
changeover:
  oven: 10 min
on the shelf:
  bread flour:   2 kg   # in the drawer
  butter: 500 g
bring: [an apron]
";

    fn one(text: &str) -> Field {
        Field::One(text.to_owned())
    }

    fn many(lines: &[&str]) -> Field {
        Field::Lines(lines.iter().map(|&line| line.to_owned()).collect())
    }

    fn row(pairs: &[(&str, &str)]) -> Row {
        pairs.iter().map(|(key, text)| ((*key).to_owned(), (*text).to_owned())).collect()
    }

    fn said(key: &str, field: Field) -> Fields {
        Fields::from([(key.to_owned(), field)])
    }

    /// The lines that are only in the one, and those that are only in the other.
    fn differing<'t>(old: &'t str, new: &'t str) -> [Vec<&'t str>; 2] {
        let only = |one: &'t str, other: &str| {
            let other: Vec<&str> = other.lines().collect();
            one.lines().filter(|line| !other.contains(line)).collect::<Vec<_>>()
        };
        [only(old, new), only(new, old)]
    }

    fn changed(new: &str) -> [Vec<&str>; 2] {
        differing(CLASS, new)
    }

    #[test]
    fn what_stands_is_shown_and_the_rest_is_named() {
        let form = read(CLASS).expect("it reads");
        assert_eq!(form.beyond, ["demonstrate", "changeover", "bring"]);
        assert_eq!(form.fields["title"], one("Evening"));
        assert_eq!(form.fields["spare"], one(""));
        assert_eq!(
            form.fields["kit"],
            many(&["mixer: 4", "oven: 2", "tray per oven: 4"])
        );
        let Field::Rows(rows) = &form.fields["makes"] else { panic!("rows") };
        assert_eq!(
            rows[1],
            row(&[("recipe", "crescents"), ("each", "demonstration"), ("pieces", "10")])
        );
        assert_eq!(read("- a\n"), None);
        assert_eq!(read("title: [\n"), None);
    }

    #[test]
    fn what_is_not_changed_stays_byte_for_byte() {
        let form = read(CLASS).expect("it reads");
        assert_eq!(write(CLASS, &form.fields).as_deref(), Ok(CLASS));
        assert_eq!(write(CLASS, &Fields::new()).as_deref(), Ok(CLASS));
    }

    /// Holds that writing these fields changes only these lines.
    #[track_caller]
    fn changes(key: &str, field: &Field, gone: &[&str], come: &[&str]) {
        let new = write(CLASS, &said(key, field.clone()));
        let new = new.unwrap_or_else(|why| panic!("{key} {field:?}: {why:?}"));
        assert_eq!(changed(&new), [gone, come], "{key} {field:?}\n{new}");
    }

    #[test]
    fn only_the_lines_concerned_change() {
        for (key, field, gone, come) in [
            (
                "title",
                one("Night: two"),
                vec!["title: Evening # so it is called"],
                vec!["title: \"Night: two\" # so it is called"],
            ),
            ("bakers", one(" 16 "), vec!["bakers: 14"], vec!["bakers: 16"]),
            ("spare", one("5 %"), vec![], vec!["spare: 5 %"]),
            (
                "sessions",
                many(&["2027-03-02 18:00 to 21:00", "2027-03-03 18:00 to 22:00"]),
                vec!["  - 2027-03-03 18:00 to 21:30"],
                vec!["  - 2027-03-03 18:00 to 22:00"],
            ),
            (
                "sessions",
                many(&["2027-03-02 18:30 to 21:00", "2027-03-03 18:00 to 21:30"]),
                vec!["  - 2027-03-02 18:00 to 21:00   # first"],
                vec!["  - 2027-03-02 18:30 to 21:00   # first"],
            ),
            (
                "sessions",
                many(&["2027-03-02 18:00 to 21:00"]),
                vec!["  - 2027-03-03 18:00 to 21:30"],
                vec![],
            ),
            (
                "sessions",
                many(&[
                    "2027-03-02 18:00 to 21:00",
                    "2027-03-03 18:00 to 21:30",
                    "2027-03-04 18:00 to 21:00",
                ]),
                vec![],
                vec!["  - 2027-03-04 18:00 to 21:00"],
            ),
        ] {
            changes(key, &field, &gone, &come);
        }
    }

    #[test]
    fn lists_in_one_line_and_on_several_change_where_they_differ() {
        for (key, field, gone, come) in [
            (
                "kit",
                many(&["mixer: 4", "oven: 3", "tray per oven: 4", "proofer tray: 8"]),
                vec!["kit: { mixer: 4, oven: 2, tray per oven: 4 } # borrowed: 1 mixer"],
                vec![
                    "kit: { mixer: 4, oven: 3, tray per oven: 4, proofer tray: 8 } # borrowed: 1 mixer",
                ],
            ),
            (
                "kit",
                many(&["oven: 2"]),
                vec!["kit: { mixer: 4, oven: 2, tray per oven: 4 } # borrowed: 1 mixer"],
                vec!["kit: { oven: 2 } # borrowed: 1 mixer"],
            ),
            (
                "kit",
                many(&[]),
                vec!["kit: { mixer: 4, oven: 2, tray per oven: 4 } # borrowed: 1 mixer"],
                vec![],
            ),
            (
                "on the shelf",
                many(&["bread flour: 3 kg", "butter: 500 g", "salt: 1 kg"]),
                vec!["  bread flour:   2 kg   # in the drawer"],
                vec!["  bread flour:   3 kg   # in the drawer", "  salt: 1 kg"],
            ),
            (
                "on the shelf",
                many(&["butter: 500 g"]),
                vec!["  bread flour:   2 kg   # in the drawer"],
                vec![],
            ),
        ] {
            changes(key, &field, &gone, &come);
        }
    }

    #[test]
    fn rows_are_changed_emptied_and_added() {
        let first = row(&[("recipe", "crescents"), ("each", "pair"), ("pieces", "10")]);
        let second =
            row(&[("recipe", "crescents"), ("each", "demonstration"), ("pieces", "10")]);
        let with = |key: &str, text: &str| {
            let mut row = first.clone();
            row.insert(key.to_owned(), text.to_owned());
            row
        };
        let shown = "  - { recipe: crescents, each: demonstration, pieces: 10 } # shown";
        for (rows, gone, come) in [
            (
                vec![with("pieces", "12"), second.clone()],
                vec!["    pieces: 10"],
                vec!["    pieces: 12"],
            ),
            (vec![with("pieces", ""), second.clone()], vec!["    pieces: 10"], vec![]),
            (
                vec![with("with", "oat drink, no spice"), second.clone()],
                vec![],
                vec!["    with: oat drink, no spice"],
            ),
            (vec![first.clone(), row(&[])], vec![shown], vec![]),
            (
                vec![row(&[]), second.clone()],
                vec![
                    "  - recipe: crescents   # the whole lot",
                    "    each: pair",
                    "    pieces: 10",
                ],
                vec![],
            ),
            (
                vec![first.clone(), with("recipe", "rye-loaf")],
                vec![shown],
                vec!["  - { recipe: rye-loaf, each: pair, pieces: 10 } # shown"],
            ),
            (
                vec![
                    first.clone(),
                    second.clone(),
                    row(&[("recipe", "rye-loaf"), ("batches", "1/2")]),
                ],
                vec![],
                vec!["  - { recipe: rye-loaf, batches: 1/2 }"],
            ),
        ] {
            let new = write(CLASS, &said("makes", Field::Rows(rows.clone())));
            let new = new.unwrap_or_else(|why| panic!("{rows:?}: {why:?}"));
            assert_eq!(changed(&new), [gone, come], "{rows:?}\n{new}");
        }
        let block = "title: A\nmakes:\n- recipe: a\n  each: pair";
        let rows = Field::Rows(vec![
            row(&[("recipe", "a"), ("each", "pair")]),
            row(&[("recipe", "b"), ("pieces", "3")]),
        ]);
        let new = write(block, &said("makes", rows)).expect("written");
        assert_eq!(new, format!("{block}\n- recipe: b\n  pieces: 3\n"));
    }

    #[test]
    fn a_text_with_little_in_it_is_filled() {
        let mut fields = said("sessions", many(&["2027-03-02 18:00 to 21:00"]));
        fields.insert("kit".into(), many(&["oven: 2"]));
        fields.insert(
            "makes".into(),
            Field::Rows(vec![row(&[("recipe", "a"), ("pieces", "3")])]),
        );
        let new = write("title: A\nkit:\nbring: [b]", &fields).expect("written");
        assert_eq!(
            new,
            "title: A\nsessions:\n  - 2027-03-02 18:00 to 21:00\nmakes:\n  - recipe: a\n    pieces: 3\nkit:\n  oven: 2\nbring: [b]"
        );
        let new = write("title: A\r\nbakers: 3\r\n", &said("spare", one("5 %")));
        assert_eq!(new.as_deref(), Ok("title: A\r\nbakers: 3\r\nspare: 5 %\r\n"));
    }

    #[test]
    fn what_cannot_be_shown_or_written_is_said() {
        let text = "title: A\nkit: [oven]\nmakes:\n  - recipe: a\n    of: b\n";
        let form = read(text).expect("it reads");
        assert_eq!(form.beyond, ["kit", "makes: of"]);
        let new = write(text, &said("kit", many(&["oven: 2"])));
        assert_eq!(new.as_deref(), Ok(text), "what is not shown is not touched");
        assert_eq!(
            write(CLASS, &said("kit", many(&["oven"]))),
            Err(Unwritten::NoPair("oven".into()))
        );
        assert_eq!(write("title: [", &Fields::new()), Err(Unwritten::Unread));
        let odd = "title: A\nmakes:\n  - each: pair\n    recipe: a\n";
        let rows = Field::Rows(vec![row(&[("recipe", "a")])]);
        assert_eq!(write(odd, &said("makes", rows)), Err(Unwritten::Layout));
    }
}
