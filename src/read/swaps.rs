//! `swaps:` in a recipe's head: each swap by its name, with what it changes.
//!
//! ```yaml
//! swaps:
//!   oat drink:
//!     - 120 g oat drink for whole milk
//!     - without egg
//!     - 40 g water in dough
//! ```

use crate::fault::{Fault, Placed};
use crate::model::{AmountLine, Change, Purpose, Swap, Target};
use crate::said;

use super::amount;
use super::fields::{Fields, entries, unreadable};
use super::lexicon::Locale;
use super::purpose;
use super::yaml::Node;

/// More swaps than this, or changes in one, are not read.
const MOST: usize = 40;

/// What is written of a line that cannot be read: the three kinds of change.
const EXAMPLE: &str = "140 g oat drink for whole milk";

/// The swaps, in order.
pub(super) fn swaps(fields: &mut Fields, locale: Locale) -> Vec<Swap> {
    let Some(node) = fields.take("swaps") else { return Vec::new() };
    let all = entries(node, fields.faults());
    let mut swaps: Vec<Swap> = Vec::new();
    for (name, node) in all.into_iter().take(MOST) {
        let items = match node.value {
            Node::List(items) => items,
            Node::Text(_) => vec![node],
            Node::Map(_) | Node::Empty => {
                let message = said!("swap-without-lines", name = name.value);
                let help = said!("swap-without-lines-help");
                fields
                    .faults()
                    .push(Fault::error("bad-value", &name.place, message).help(help));
                continue;
            }
        };
        let read =
            items.into_iter().take(MOST).filter_map(|item| one(item, locale, fields));
        swaps.push(Swap { name, changes: read.collect() });
    }
    swaps
}

/// One change; a fault where it does not read.
fn one(item: Placed<Node>, locale: Locale, fields: &mut Fields) -> Option<Change> {
    let text = match item.value {
        Node::Text(text) => Placed::new(text, item.place),
        Node::Map(_) | Node::List(_) | Node::Empty => {
            let message = said!("line-not-one");
            fields.faults().push(
                Fault::error("bad-value", &item.place, message)
                    .help(said!("line-not-one-help")),
            );
            return None;
        }
    };
    change(&text, locale).map_err(|fault| fields.faults().push(fault)).ok()
}

/// `140 g oat drink for whole milk`, `30 g water in dough`, `without walnuts`.
fn change(text: &Placed<String>, locale: Locale) -> Result<Change, Fault> {
    let words = text.value.as_str();
    if let Some(name) = words.strip_prefix("without ") {
        return Ok(Change::Without(target(text, name)));
    }
    if let Some((line, of)) =
        words.rsplit_once(" for ").filter(|(_, of)| !is_purpose(of, locale))
    {
        return Ok(Change::Instead {
            line: read(text, line, locale)?,
            of: target(text, of),
        });
    }
    let Some((line, section)) = words.rsplit_once(" in ") else {
        return Err(unreadable("swaps", text, EXAMPLE));
    };
    let place = target(text, section).place;
    let section = Placed::new(section.trim().to_owned(), place);
    Ok(Change::Beside { line: read(text, line, locale)?, section })
}

/// Whether words behind `for` say what a line is for, rather than in place of what: `dusting`.
fn is_purpose(words: &str, locale: Locale) -> bool {
    let first = words.split(" in ").next().unwrap_or(words);
    purpose::of_note(Some(&format!("for {first}")), locale.words) != Purpose::Mixed
}

fn read(
    text: &Placed<String>,
    line: &str,
    locale: Locale,
) -> Result<Box<AmountLine>, Fault> {
    let start = text.value.len() - text.value.trim_start().len();
    let place = text.place.part(start, start + line.len());
    amount::line(&Placed::new(line.to_owned(), place), locale).map(Box::new)
}

/// What a change is about; `name` is the end of `text`.
fn target(text: &Placed<String>, name: &str) -> Target {
    let end = text.value.trim_end().len();
    let place = text.place.part(end - name.trim_end().len(), end);
    Target { name: name.trim().to_owned(), place }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Place;

    fn changed(text: &str) -> Result<Change, Fault> {
        let place = Place::new(&"a.md".into(), 0, text.len());
        change(&Placed::new(text.to_owned(), place), Locale::english())
    }

    #[test]
    fn the_three_kinds_of_change() {
        let Ok(Change::Instead { line, of }) = changed("140 g oat drink for whole milk")
        else {
            panic!("a line in place of another")
        };
        assert_eq!(
            (line.ingredient.value.title(), &*of.name),
            ("oat drink", "whole milk")
        );
        assert_eq!((of.place.start(), of.place.end()), (20, 30));
        let Ok(Change::Beside { line, section }) = changed("30 g water in dough") else {
            panic!("a line more")
        };
        assert_eq!((line.ingredient.value.title(), &*section.value), ("water", "dough"));
        let Ok(Change::Without(of)) = changed("without walnuts") else {
            panic!("left out")
        };
        assert_eq!(of.name, "walnuts");
        let Ok(Change::Beside { line, section }) =
            changed("bread flour, for dusting in bench")
        else {
            panic!("what it is for is not in place of what")
        };
        assert_eq!(line.note.as_deref().or(Some("for dusting")), Some("for dusting"));
        assert_eq!(section.value, "bench");
        assert!(changed("140 g oat drink").is_err());
        assert!(changed("oat drink for whole milk").is_err(), "no amount");
    }
}
