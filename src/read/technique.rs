//! One technique file to a technique.

use crate::fault::{Fault, FileName, Place, Placed};
use crate::model::{Demonstration, Technique};
use crate::said;

use super::fields::Fields;
use super::mark::mark;
use super::yaml::Node;
use super::{body, cut, prose, quantity, shaping};

/// Reads the technique `name` from the text of `file`.
pub(super) fn read(
    file: &FileName,
    text: &str,
    name: &str,
    faults: &mut Vec<Fault>,
) -> Option<Technique> {
    let (head, node) = body::parsed_head(file, text, faults)?;
    let mut fields =
        Fields::new(node, &["title", "summary", "drawing", "shapes"], faults);
    let title = fields.needed("title", "The letter turn");
    let summary = fields.needed("summary", said!("example-technique-summary")).value;
    let drawings = drawings(&mut fields);
    let shapes = shaping::own(&mut fields);
    fields.finish();
    let place = Place::new(file, head.body, text.len());
    let prose = prose::read(&text[head.body..], &place, faults);
    let place = Place::new(file, 0, text.len());
    let stages = shapes.iter().flat_map(|shape| &shape.frames);
    let of_stages = stages.filter_map(|frame| Some(frame.picture.as_ref()?.file.clone()));
    let pictures = prose.pictures.into_iter().chain(of_stages).collect();
    let (content, links) = (prose.blocks, prose.links);
    let mark = mark(&[&title.value, &summary, &text[head.body..]]);
    Some(Technique {
        name: name.to_owned(),
        title,
        summary,
        drawings,
        shapes,
        content,
        title_in: None,
        pictures,
        links,
        mark,
        place,
    })
}

fn drawings(fields: &mut Fields) -> Vec<Demonstration> {
    let items = fields.items("drawing", "- sheet: 60 x 20 cm");
    items.into_iter().filter_map(|item| drawing(item, fields.faults())).collect()
}

/// What a drawing may be made of.
const KEYS: [&str; 11] = [
    "sheet", "block", "lock-in", "turn", "cut", "turns", "roll", "shape", "depth",
    "per tray", "tray",
];

fn drawing(item: Placed<Node>, faults: &mut Vec<Fault>) -> Option<Demonstration> {
    let place = item.place.clone();
    let mut fields = Fields::new(item, &KEYS, faults);
    let sheet = fields.parsed("sheet", "60 x 20 cm", quantity::size);
    let block = fields.parsed("block", "20 x 20 cm", quantity::size);
    let lock_in = fields.parsed("lock-in", "envelope", cut::inverted_lock_in);
    let turn = fields.parsed("turn", "letter", cut::turn).map(|turn| turn.value);
    let cut = fields.parsed("cut", "squares 10 cm", cut::cut).map(|cut| cut.value);
    let turns = fields.parsed("turns", "book, book, letter", cut::turns);
    let roll = fields.parsed("roll", "20 x 20 cm", quantity::size);
    let shape = fields.parsed("shape", "crescent", shaping::shaping);
    let depth = fields.parsed("depth", "7 cm", quantity::length);
    let per_tray = fields.parsed("per tray", "12", count);
    let on = fields.parsed("tray", "60 x 40 cm", quantity::size);
    let shows = lock_in.is_some()
        || turn.is_some()
        || cut.is_some()
        || turns.is_some()
        || roll.is_some()
        || shape.is_some()
        || per_tray.is_some();
    if sheet.is_none() || !shows {
        fields.faults().push(
            Fault::error("bad-drawing", &place, said!("bad-drawing"))
                .help(said!("bad-drawing-help")),
        );
    }
    fields.finish();
    let inverted = lock_in.as_ref().is_some_and(|kind| kind.value.1);
    let lock_in = lock_in.zip(block).map(|(kind, block)| (kind.value.0, block.value));
    Some(Demonstration {
        sheet: sheet?,
        lock_in,
        inverted,
        turn,
        cut,
        turns: turns.map(|turns| turns.value).unwrap_or_default(),
        roll: roll.map(|roll| roll.value),
        shape: shape.map(|shape| shape.value),
        depth: depth.map(|depth| depth.value),
        per_tray: per_tray.map(|count| count.value),
        on: on.map(|tray| tray.value),
        place,
    })
}

/// Pieces on a tray.
fn count(text: &str) -> Option<u64> {
    text.trim().parse().ok().filter(|count| (1..=200).contains(count))
}
