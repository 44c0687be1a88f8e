//! The keys that lead to a place in YAML that may be half typed: by indentation, dashes and
//! brackets alone.

use std::ops::Range;

use super::outline::lines;

/// One step of the way from the whole text to a value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way<'a> {
    /// Beneath a key.
    Key(&'a str),
    /// An item of a list.
    Item,
}

/// Where a place stands.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Stands {
    /// On a key with its colon.
    Key(Range<usize>),
    /// On the value of the key at the way's end, or on an item.
    Value(Range<usize>),
    /// On what may become a key or a value.
    Either(Range<usize>),
    /// In a comment.
    Nowhere,
}

/// A place in YAML.
#[derive(Debug)]
pub(super) struct At<'a> {
    /// The way to the value, or to the map that the key is in.
    pub(super) way: Vec<Way<'a>>,
    /// On what it stands.
    pub(super) stands: Stands,
    /// The keys that stand in the same map already.
    pub(super) beside: Vec<&'a str>,
    /// How far in the line begins.
    pub(super) indent: usize,
}

/// What byte `at` of `text` stands on, in the stretch of it that is YAML.
pub(super) fn at(text: &str, range: Range<usize>, at: usize) -> At<'_> {
    let text = &text[..range.end];
    let start =
        text[range.start..at].rfind('\n').map_or(range.start, |n| range.start + n + 1);
    let own =
        YamlLine::of(text[start..].split('\n').next().unwrap_or(""), Some(at - start));
    let above =
        lines(&text[..start], range.start).map(|(_, line)| YamlLine::of(line, None));
    let above: Vec<YamlLine> = above.filter(YamlLine::is_written).collect();
    let mut way = parents(&own, &above);
    way.extend(own.dashes.iter().map(|_| Way::Item));
    let below = text[start..].split('\n').skip(1).map(|line| YamlLine::of(line, None));
    let below: Vec<YamlLine> = below.filter(YamlLine::is_written).collect();
    let beside = beside(&own, &above, &below);
    let stands = own.stands(at - start, &mut way).moved(start);
    At { way, stands, beside, indent: own.column }
}

/// The keys of a map beneath a key of the outermost one, and the words behind them.
pub(super) fn beneath<'a>(text: &'a str, key: &str) -> Vec<(&'a str, &'a str)> {
    let all = lines(text, 0).map(|(_, line)| YamlLine::of(line, None));
    let mut all = all.filter(YamlLine::is_written).skip_while(|line| {
        line.column > 0 || line.key.as_ref().is_none_or(|own| line.words(own) != key)
    });
    all.next();
    let inner = all.take_while(|line| line.column > 0 || !line.dashes.is_empty());
    inner
        .filter_map(|line| {
            let key = line.key.clone()?;
            Some((line.words(&key), line.text[key.end + 1..].trim()))
        })
        .collect()
}

/// The items of lists beneath a key of the outermost map.
pub(super) fn items_beneath<'a>(text: &'a str, key: &str) -> Vec<&'a str> {
    let all = lines(text, 0).map(|(_, line)| YamlLine::of(line, None));
    let mut all = all.filter(YamlLine::is_written).skip_while(|line| {
        line.column > 0 || line.key.as_ref().is_none_or(|own| line.words(own) != key)
    });
    all.next();
    let inner = all.take_while(|line| line.column > 0 || !line.dashes.is_empty());
    let items = inner.filter(|line| !line.dashes.is_empty());
    items.map(|line| line.text[line.column..line.end].trim()).collect()
}

/// One line taken apart. Columns are bytes from its beginning.
struct YamlLine<'a> {
    text: &'a str,
    /// Where each dash of a list stands.
    dashes: Vec<usize>,
    /// Where the words begin.
    column: usize,
    /// Where they end: before a comment.
    end: usize,
    /// The key, where one stands there.
    key: Option<Range<usize>>,
}

impl<'a> YamlLine<'a> {
    /// `cursor` is where someone writes: blanks up to there count, as a dash does whose blank
    /// is not there yet.
    fn of(text: &'a str, cursor: Option<usize>) -> Self {
        let text = text.trim_end_matches(['\n', '\r']);
        let end = text.find(" #").unwrap_or(text.len());
        let blanks =
            |at: usize| text[at..].len() - text[at..].trim_start_matches(' ').len();
        let (mut column, mut dashes) = (blanks(0), Vec::new());
        while text[column..].starts_with("- ") || &text[column..] == "-" {
            dashes.push(column);
            column = (column + 1 + blanks(column + 1)).min(text.len());
        }
        if column == text.len() {
            column = cursor.unwrap_or(column).min(column);
        }
        let end = end.max(column);
        let key = key(&text[column..end]).map(|key| column + key.start..column + key.end);
        Self { text, dashes, column, end, key }
    }

    fn is_written(&self) -> bool {
        let words = self.text.trim();
        !words.is_empty() && !words.starts_with('#')
    }

    fn words(&self, range: &Range<usize>) -> &'a str {
        self.text[range.clone()].trim_matches(['"', '\'', ' '])
    }

    fn stands(&self, at: usize, way: &mut Vec<Way<'a>>) -> Stands {
        if at > self.end && self.end < self.text.len()
            || self.text.trim_start().starts_with('#')
        {
            return Stands::Nowhere;
        }
        let end = self.end;
        match &self.key {
            Some(key) if at <= key.end => Stands::Key(key.clone()),
            Some(key) => {
                way.push(Way::Key(self.words(key)));
                flow(self.text, key.end + 1..end, at, way)
            }
            None => match flow(self.text, self.column..end, at, way) {
                Stands::Value(range) if range.start == self.column => {
                    Stands::Either(range)
                }
                stands @ (Stands::Nowhere
                | Stands::Key(_)
                | Stands::Value(_)
                | Stands::Either(_)) => stands,
            },
        }
    }
}

impl Stands {
    fn moved(self, by: usize) -> Self {
        let moved = |range: Range<usize>| range.start + by..range.end + by;
        match self {
            Self::Key(range) => Self::Key(moved(range)),
            Self::Value(range) => Self::Value(moved(range)),
            Self::Either(range) => Self::Either(moved(range)),
            Self::Nowhere => Self::Nowhere,
        }
    }
}

/// The key that words begin with: what stands before a colon that a blank or nothing follows.
fn key(words: &str) -> Option<Range<usize>> {
    if words.starts_with(['[', '{', '#']) {
        return None;
    }
    let quote = words.chars().next().filter(|sign| matches!(sign, '"' | '\''));
    let from = quote.and_then(|quote| Some(words[1..].find(quote)? + 1)).unwrap_or(0);
    let mut colons = words[from..].match_indices(':').map(|(at, _)| from + at);
    let ends =
        |at: &usize| words[at + 1..].is_empty() || words[at + 1..].starts_with(' ');
    colons.find(ends).map(|at| 0..words[..at].trim_end().len())
}

/// The way from the whole text to the map or list that a line is in.
fn parents<'a>(own: &YamlLine, above: &[YamlLine<'a>]) -> Vec<Way<'a>> {
    let mut limit = own.dashes.first().copied().unwrap_or(own.column);
    let mut dash = !own.dashes.is_empty();
    let mut way = Vec::new();
    for line in above.iter().rev() {
        let is_outer = line.column < limit || (line.column == limit && dash);
        if let Some(key) = line.key.as_ref().filter(|_| is_outer) {
            way.push(Way::Key(line.words(key)));
            (limit, dash) = (line.column, false);
        }
        let within = line.column >= limit;
        for column in line.dashes.iter().rev().filter(|_| within) {
            if *column < limit {
                way.push(Way::Item);
                (limit, dash) = (*column, true);
            }
        }
        if limit == 0 && !dash {
            break;
        }
    }
    way.reverse();
    way
}

/// The keys that stand in the same map as a line.
fn beside<'a>(
    own: &YamlLine<'a>,
    above: &[YamlLine<'a>],
    below: &[YamlLine<'a>],
) -> Vec<&'a str> {
    let same = |line: &&YamlLine| line.column == own.column;
    let mut found = Vec::new();
    let mut take =
        |line: &YamlLine<'a>| found.extend(line.key.as_ref().map(|key| line.words(key)));
    if own.dashes.is_empty() {
        for line in above.iter().rev().take_while(|line| line.column >= own.column) {
            Some(line).filter(same).into_iter().for_each(&mut take);
            if line.dashes.first().is_some_and(|dash| *dash < own.column) && same(&line) {
                break;
            }
        }
    }
    let goes_on = |line: &&YamlLine| {
        line.column > own.column || (line.column == own.column && line.dashes.is_empty())
    };
    below.iter().take_while(goes_on).filter(same).for_each(take);
    found
}

/// What byte `at` of a line stands on within a value, which may be a list or a map in brackets.
fn flow<'a>(
    text: &'a str,
    value: Range<usize>,
    at: usize,
    way: &mut Vec<Way<'a>>,
) -> Stands {
    let lead = text[value.clone()].len() - text[value.clone()].trim_start().len();
    let start = (value.start + lead).min(at.max(value.start));
    let mut open: Vec<(char, usize)> = Vec::new();
    let mut from = start;
    if !text[start..value.end].starts_with(['[', '{']) {
        return Stands::Value(start..value.end.max(start));
    }
    for (place, sign) in text[start..at.clamp(start, value.end)].char_indices() {
        let place = start + place;
        match sign {
            '[' | '{' => {
                way.extend(key(text[from..place].trim_start()).map(|key| {
                    let from =
                        from + (text[from..].len() - text[from..].trim_start().len());
                    Way::Key(text[from..from + key.end].trim_matches(['"', '\'']))
                }));
                if sign == '[' {
                    way.push(Way::Item);
                }
                open.push((sign, way.len()));
                from = place + 1;
            }
            ',' => {
                way.truncate(open.last().map_or(way.len(), |(_, depth)| *depth));
                from = place + 1;
            }
            ']' | '}' => {
                open.pop();
                way.truncate(open.last().map_or(way.len(), |(_, depth)| *depth));
            }
            _ => {}
        }
    }
    let Some((sign, _)) = open.last() else { return Stands::Nowhere };
    let end = text[at..value.end].find([',', ']', '}']).map_or(value.end, |end| at + end);
    let from =
        (from + (text[from..end].len() - text[from..end].trim_start().len())).min(at);
    let end = from + text[from..end].trim_end().len();
    let end = end.max(at);
    if *sign == '[' {
        return Stands::Value(from..end);
    }
    match key(&text[from..end]) {
        Some(key) if at > from + key.end => {
            way.push(Way::Key(text[from..from + key.end].trim_matches(['"', '\''])));
            let start =
                (from + key.end + 1..=at).find(|at| !text[*at..].starts_with(' '));
            Stands::Value(start.unwrap_or(at).min(at)..end)
        }
        Some(key) => Stands::Key(from..from + key.end),
        None => Stands::Either(from..end),
    }
}

#[cfg(test)]
mod tests {
    use super::Way::{Item, Key};
    use super::*;

    /// Where the sign `|` stands, and the words it stands on.
    fn spot(text: &str) -> (Vec<Way<'_>>, String, Vec<&str>) {
        let place = text.find('|').expect("a place is marked");
        let text: &'static str = Box::leak(text.replacen('|', "", 1).into_boxed_str());
        let found = at(text, 0..text.len(), place);
        let words = match &found.stands {
            Stands::Key(range) => format!("key {}", &text[range.clone()]),
            Stands::Value(range) => format!("value {}", &text[range.clone()]),
            Stands::Either(range) => format!("either {}", &text[range.clone()]),
            Stands::Nowhere => "nowhere".to_owned(),
        };
        (found.way, words, found.beside)
    }

    #[test]
    fn indentation_and_dashes_lead_there() {
        for (text, way, words) in [
            ("ti|", vec![], "either ti"),
            ("title: Cre|scents", vec![Key("title")], "value Crescents"),
            ("tit|le: a", vec![], "key title"),
            (
                "a:\n  b:\n    - 500 g fl|",
                vec![Key("a"), Key("b"), Item],
                "either 500 g fl",
            ),
            ("a:\n- |", vec![Key("a"), Item], "either "),
            ("a:\n  b: 1\n  |", vec![Key("a")], "either "),
            ("a:\n  b:\n    - x\n|", vec![], "either "),
            ("l:\n  - title: a\n    rec|", vec![Key("l"), Item], "either rec"),
            ("l:\n  - title: a|", vec![Key("l"), Item, Key("title")], "value a"),
            ("l:\n  - title: a\n  - |", vec![Key("l"), Item], "either "),
            (
                "l:\n  - title: a\n    x: [b, c|]",
                vec![Key("l"), Item, Key("x"), Item],
                "value c",
            ),
            ("k: { a: 1, b|: 2 }", vec![Key("k")], "key b"),
            ("k: { a: 1, b: |2 }", vec![Key("k"), Key("b")], "value 2"),
            ("k: { a: [x], fr: [y, |", vec![Key("k"), Key("fr"), Item], "value "),
            ("a: 1 # no|", vec![], "nowhere"),
            ("a: |", vec![Key("a")], "value "),
            ("é: ü|", vec![Key("é")], "value ü"),
        ] {
            let (found, on, _) = spot(text);
            assert_eq!((found, on.as_str()), (way, words), "{text}");
        }
    }

    #[test]
    fn keys_beside_are_known() {
        let (_, _, beside) =
            spot("l:\n  - a: 1\n    b:\n      x: 1\n    |\n    c: 2\n  - d: 3\n");
        assert_eq!(beside, ["b", "a", "c"]);
    }

    /// Whatever is typed, wherever: no byte makes it break.
    #[test]
    fn every_place_of_odd_texts_has_an_answer() {
        let text =
            "- - a: [é, { ü: [, ]}] # x\n\t- \"b: c\": d\n  ? x\n  - :\n{ a: }\n - {";
        for place in (0..=text.len()).filter(|at| text.is_char_boundary(*at)) {
            at(text, 0..text.len(), place);
        }
    }
}
