//! Shapings as an instructor writes them, and the author's own.

use crate::fault::{Fault, Placed};
use crate::measure::{Exact, Length, exact};
use crate::model::{Bend, Crescent, OwnFrame, OwnLine, OwnShape, Shaping};
use crate::said;

use super::fields::Fields;
use super::yaml::Node;
use super::{amount, picture, quantity};

/// A shaping: `crescent, notch 1 cm, stretch a quarter, curved` (or `straight`, `ends
/// joined`); `rolled` for a plain crescent; the other shapings by their words; any other plain
/// name is an author's own.
pub(crate) fn shaping(text: &str) -> Option<Shaping> {
    let text = text.trim();
    let (word, rest) = text.split_once(',').unwrap_or((text, ""));
    match (word, rest.trim()) {
        ("crescent" | "rolled", rest) => crescent(rest).map(Shaping::Crescent),
        (word, "") => Some(plain(word)).filter(|_| is_name(word)),
        _ => None,
    }
}

fn plain(word: &str) -> Shaping {
    let known = || Shaping::all().into_iter().find(|shaping| shaping.word() == word);
    match word {
        "folded" => Shaping::Turnover,
        _ => known().unwrap_or_else(|| Shaping::Own(word.to_owned())),
    }
}

/// Letters, digits, hyphens and single spaces.
fn is_name(word: &str) -> bool {
    let plain = |sign: char| sign.is_alphanumeric() || sign == '-' || sign == ' ';
    !word.is_empty() && word.len() <= 60 && word.chars().all(plain)
}

fn crescent(text: &str) -> Option<Crescent> {
    let mut how = Crescent::plain();
    for part in text.split(',').map(str::trim).filter(|part| !part.is_empty()) {
        match (part, part.split_once(' ')) {
            ("straight", _) => how.bend = Bend::Straight,
            ("curved", _) => how.bend = Bend::Curved,
            ("ends joined", _) => how.bend = Bend::Joined,
            (_, Some(("notch", deep))) => how.notch = Some(quantity::length(deep)?),
            (_, Some(("stretch", part))) => how.stretch = stretch(part)?,
            _ => return None,
        }
    }
    Some(how)
}

/// By which part a piece is stretched: `1/4`, `a third`, `30 %`, at most to double.
fn stretch(text: &str) -> Option<Exact> {
    let part = amount::part(text.trim())?;
    (part <= exact(1, 1)).then_some(part)
}

/// The author's own shapings of a technique.
pub(super) fn own(fields: &mut Fields) -> Vec<OwnShape> {
    let items = fields.items("shapes", "- name: lantern");
    items.into_iter().filter_map(|item| own_shape(item, fields.faults())).collect()
}

fn own_shape(item: Placed<Node>, faults: &mut Vec<Fault>) -> Option<OwnShape> {
    let place = item.place.clone();
    let mut fields = Fields::new(item, &["name", "piece", "frames"], faults);
    let name = fields.needed("name", "lantern");
    let piece = fields.parsed("piece", "12 x 8 cm", quantity::size);
    let frames = match fields.take("frames").map(|node| node.value) {
        Some(Node::List(items)) => items,
        _ => Vec::new(),
    };
    let count = frames.len();
    let frames: Vec<OwnFrame> = frames
        .into_iter()
        .filter_map(|frame| own_frame(frame, fields.faults()))
        .collect();
    if !(2..=6).contains(&count) || piece.is_none() {
        let message = said!("shape-without-frames");
        fields.faults().push(
            Fault::error("bad-shape", &place, message)
                .help(said!("shape-without-frames-help")),
        );
    }
    let pictures = frames.iter().filter(|frame| frame.picture.is_some()).count();
    if pictures > 0 && pictures < frames.len() {
        let message = said!("shape-drawn-and-pictures");
        let help = said!("shape-drawn-and-pictures-help");
        fields.faults().push(Fault::error("bad-shape", &place, message).help(help));
    }
    fields.finish();
    Some(OwnShape { name, piece: piece?.value, frames })
}

fn own_frame(item: Placed<Node>, faults: &mut Vec<Fault>) -> Option<OwnFrame> {
    let place = item.place.clone();
    let keys: Vec<&str> =
        ["does", "picture"].into_iter().chain(OwnLine::ALL.map(OwnLine::word)).collect();
    let mut fields = Fields::new(item, &keys, faults);
    let does = fields.needed("does", said!("example-stage")).value;
    let mut lines = Vec::new();
    for line in OwnLine::ALL {
        let points = fields.parsed(line.word(), "0 0, 12 0, 12 8", points);
        let points = points.into_iter().flat_map(|points| points.value);
        lines.extend(points.map(|points| (line, points)));
    }
    let picture = fields.text("picture").map(|text| picture::in_line(&text));
    let picture =
        picture.and_then(|read| read.map_err(|fault| fields.faults().push(fault)).ok());
    let arrows = lines.iter().filter(|(line, _)| *line == OwnLine::Arrow);
    let whole = arrows.into_iter().all(|(_, points)| points.len().is_multiple_of(2));
    let is_drawn = lines.iter().any(|(line, _)| *line == OwnLine::Dough);
    if is_drawn == picture.is_some() || !whole {
        let message = said!("bad-stage");
        fields.faults().push(
            Fault::error("bad-shape", &place, message).help(said!("bad-stage-help")),
        );
    }
    fields.finish();
    Some(OwnFrame { does, lines, picture })
}

/// Points in centimetres: `0 0, 12 0, 12 8`, two to a hundred; several lines stand one after
/// another: `2 2, 2 7; 4 2, 4 7`.
fn points(text: &str) -> Option<Vec<Vec<[Length; 2]>>> {
    let line = |text: &str| {
        let points: Option<Vec<[Length; 2]>> = text.split(',').map(point).collect();
        points.filter(|points| (2..=100).contains(&points.len()))
    };
    text.split(';').map(line).collect()
}

fn point(text: &str) -> Option<[Length; 2]> {
    let (x, y) = text.trim().split_once(' ')?;
    let way = |text: &str| {
        let (below, text) = match text.trim().strip_prefix(['-', '−']) {
            Some(text) => (true, text),
            None => (false, text.trim()),
        };
        let (number, rest) = quantity::number(text, false)?;
        let number = if below { -number } else { number };
        let far = number.clone() <= exact(500, 1) && number >= exact(-500, 1);
        (far && rest.trim().is_empty()).then(|| Length::centimetres(number))
    };
    Some([way(x)?, way(y)?])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shaping_reads() {
        for shaping in Shaping::all() {
            assert_eq!(super::shaping(shaping.word()), Some(shaping));
        }
        assert_eq!(shaping("rolled"), Some(Shaping::Crescent(Crescent::plain())));
        assert_eq!(shaping("my-lantern"), Some(Shaping::Own("my-lantern".into())));
        let notch = Some(Length::centimetres(exact(1, 1)));
        let how = Crescent { notch, stretch: exact(1, 4), bend: Bend::Joined };
        let read = shaping("crescent, notch 1 cm, stretch 1/4, ends joined");
        assert_eq!(read, Some(Shaping::Crescent(how)));
        for text in ["", "crescent, notch deep", "crescent, stretch 3", "knot, twice"] {
            assert_eq!(shaping(text), None, "{text}");
        }
    }
}
