//! The ticket under a step's heading: one `key: value` a line.

use std::collections::BTreeSet;

use crate::fault::{Fault, Placed, nearest};
use crate::model::{Step, Use};
use crate::said;
use crate::statement::Say;

use super::{amount, cut, divide, fields, picture, prose, quantity, shaping};

/// The keys a ticket may hold.
pub(super) const KEYS: [&str; 25] = [
    "hands", "wait", "where", "at", "hold", "after", "uses", "kit", "sheet", "roll",
    "lock-in", "turn", "cut", "divide", "part", "shape", "bake", "fan", "per tray",
    "core", "cool", "until", "watch", "picture", "print",
];

/// Reads a ticket into the step whose heading it stands under; whether all of it could be
/// read.
pub(super) fn read(
    ticket: &Placed<String>,
    step: &mut Step,
    faults: &mut Vec<Fault>,
) -> bool {
    let so_far = faults.len();
    let lines = lines(ticket, faults);
    let mut whole = faults.len() == so_far;
    let written: BTreeSet<String> =
        lines.iter().map(|line| line.key.value.clone()).collect();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for mut line in lines {
        if !seen.insert(line.key.value.clone()) {
            let message = said!("ticket-line-twice", key = line.key.value);
            faults.push(
                Fault::error("bad-ticket", &line.key.place, message)
                    .help(said!("ticket-line-twice-help")),
            );
            continue;
        }
        if !KEYS.contains(&line.key.value.as_str()) {
            faults.push(unknown(&line.key));
            // A slip is read as it was meant, where the line is not there already.
            match nearest(&line.key.value, KEYS) {
                Some(near) if !written.contains(near) => {
                    near.clone_into(&mut line.key.value);
                }
                _ => {
                    whole = false;
                    continue;
                }
            }
        }
        if let Err(fault) = set(step, line, faults) {
            faults.push(fault);
            whole = false;
        }
    }
    whole
}

/// One line of a ticket.
struct Line {
    key: Placed<String>,
    value: Placed<String>,
}

/// The ticket's lines, comments taken off; an indented line without a key goes on from
/// the line above.
fn lines(ticket: &Placed<String>, faults: &mut Vec<Fault>) -> Vec<Line> {
    let mut found: Vec<Line> = Vec::new();
    let mut at = 0;
    for written in ticket.value.split_inclusive('\n') {
        let line = strip_comment(written).trim_end();
        let text = line.trim_start();
        let start = at + (line.len() - text.len());
        let place = ticket.place.part(start, start + text.len());
        at += written.len();
        if text.is_empty() {
            continue;
        }
        match text.split_once(':') {
            Some((key, value))
                if !line.starts_with(' ') || found.is_empty() || KEYS.contains(&key) =>
            {
                let lead = key.len() + 1 + (value.len() - value.trim_start().len());
                found.push(Line {
                    key: Placed::new(key.trim().to_owned(), place.part(0, key.len())),
                    value: Placed::new(
                        value.trim().to_owned(),
                        place.part(lead, text.len()),
                    ),
                });
            }
            _ => match found.last_mut() {
                Some(Line { value, .. }) if line.starts_with(' ') => {
                    value.value.push(' ');
                    value.value.push_str(text);
                    value.place.end = place.end;
                }
                _ => faults.push(
                    Fault::error("bad-ticket", &place, said!("ticket-no-key"))
                        .help(said!("ticket-no-key-help")),
                ),
            },
        }
    }
    found
}

fn strip_comment(line: &str) -> &str {
    line.find(" #").map_or(line, |at| &line[..at])
}

/// Puts one line's value into the step.
fn set(step: &mut Step, line: Line, faults: &mut Vec<Fault>) -> Result<(), Fault> {
    if line.value.value.is_empty() {
        let message = said!("ticket-no-value", key = line.key.value);
        return Err(Fault::error("bad-ticket", &line.key.place, message)
            .help(said!("ticket-no-value-help")));
    }
    match line.key.value.as_str() {
        "hands" => step.hands = line.read("10 min + 20 s per piece", quantity::span)?,
        "wait" => step.wait = line.read("60 min (45 min to 2 h)", quantity::wait)?,
        "where" => step.at_place = Some(line.value),
        "at" => step.at = line.read("26 °C", quantity::temperature)?,
        "hold" => step.hold = line.read("up to 16 h in the fridge", quantity::hold)?,
        "after" => step.after = Some(names(&line.value)),
        "uses" => {
            step.uses = names(&line.value).into_iter().map(|n| n.map(used)).collect();
        }
        "kit" => {
            step.kit = line.read("1 mixer", kit)?.map_or_else(Vec::new, |kit| kit.value);
        }
        "bake" => {
            let read = line.read("190 °C, 22 min", quantity::bake)?;
            if let Some((fan, place)) =
                read.as_ref().and_then(|read| Some((read.value.1.clone()?, &read.place)))
            {
                step.fan = Some(Placed::new(fan, place.clone()));
            }
            step.bake = read.map(|read| read.map(|(bake, _)| bake));
        }
        "fan" => step.fan = line.read("170 °C", quantity::temperature)?,
        "per tray" => step.per_tray = line.read("8", count)?,
        "core" => step.core = line.read("94 °C", quantity::temperature)?,
        "cool" => step.cool = Some(line.value),
        "until" => step.until = Some(prose::cue(&line.value, faults)),
        "watch" => step.watch = Some(line.value),
        "picture" => step.picture = Some(picture::in_line(&line.value)?),
        "print" => {
            step.printed =
                line.read("no", super::recipe::yes)?.is_none_or(|said| said.value);
        }
        _ => return set_dough(step, line),
    }
    Ok(())
}

/// The lines that have to do with the rolled dough.
fn set_dough(step: &mut Step, line: Line) -> Result<(), Fault> {
    let turns = said!("example-turn");
    match line.key.value.as_str() {
        "sheet" => step.sheet = line.read("60 x 25 cm", quantity::size)?,
        "roll" => {
            step.roll = line.read(said!("example-roll"), cut::rolling)?;
        }
        "lock-in" => {
            let kinds = said!("example-lock-in");
            let read = line.read(kinds, cut::inverted_lock_in)?;
            step.inverted = read.as_ref().is_some_and(|read| read.value.1);
            step.lock_in = read.map(|read| read.map(|(kind, _)| kind));
        }
        "turn" => step.turn = line.read(turns, cut::turn)?,
        "cut" => step.cut = line.read("triangles, base 9 cm, height 24 cm", cut::cut)?,
        "divide" => {
            let parts = said!("example-divide");
            let read = divide::divide(&line.value);
            step.divide = line.read(parts, |_| read)?;
        }
        "part" => step.part = Some(line.value),
        "shape" => step.shape = line.read(said!("example-shape"), shaping::shaping)?,
        _ => return Err(unknown(&line.key)),
    }
    Ok(())
}

impl Line {
    /// The value read as what the key wants.
    fn read<T>(
        self,
        example: impl Say,
        read: impl FnOnce(&str) -> Option<T>,
    ) -> Result<Option<Placed<T>>, Fault> {
        match read(&self.value.value) {
            Some(read) => Ok(Some(Placed::new(read, self.value.place))),
            None => Err(fields::unreadable(&self.key.value, &self.value, example)),
        }
    }
}

fn unknown(key: &Placed<String>) -> Fault {
    let message = said!("unknown-line", key = key.value);
    let help = nearest(&key.value, KEYS).map_or_else(
        || said!("unknown-line-help", keys = KEYS),
        |near| said!("did-you-mean", near),
    );
    Fault::error("unknown-key", &key.place, message).help(help)
}

/// `dough, roll-in` or `[dough, roll-in]`.
fn names(value: &Placed<String>) -> Vec<Placed<String>> {
    let inner = value.value.strip_prefix('[').and_then(|rest| rest.strip_suffix(']'));
    match inner {
        Some(inner) => {
            let place = value.place.part(1, 1 + inner.len());
            fields::split(&Placed::new(inner.to_owned(), place))
        }
        None => fields::split(value),
    }
}

fn used(text: String) -> Use {
    let (share, name) = amount::share(&text);
    Use { name: name.to_owned(), share }
}

/// `1 mixer, 2 trays`.
fn kit(text: &str) -> Option<Vec<(u32, String)>> {
    text.split(',')
        .map(|part| {
            let (count, name) = part.trim().split_once(' ')?;
            Some((count.parse().ok()?, name.trim().to_owned()))
        })
        .collect()
}

fn count(text: &str) -> Option<u64> {
    let count = text.split(' ').next()?.parse().ok()?;
    (1..=10_000).contains(&count).then_some(count)
}
