//! The ticket under a step's heading: one `key: value` a line.

use std::collections::BTreeSet;

use crate::fault::{Fault, Placed, nearest};
use crate::model::{Goal, GoalKind, ProofPhase, Step, StepPicture, Use, Wait};
use crate::said;
use crate::statement::Say;

use super::kit::{kit, location};
use super::lexicon::Lexicon;
use super::{
    amount, bake, cut, divide, fields, goal, mix, picture, proof, prose, quantity,
    shaping,
};

/// The keys a ticket may hold.
pub(super) const KEYS: [&str; 36] = [
    "day",
    "hands",
    "mix",
    "wait",
    "proof",
    "where",
    "at",
    "hold",
    "after",
    "uses",
    "kit",
    "sheet",
    "roll",
    "lock-in",
    "turn",
    "cut",
    "divide",
    "part",
    "shape",
    "bake",
    "fan",
    "per tray",
    "core",
    "pH",
    "dough temperature",
    "weight loss",
    "growth",
    "friction",
    "sheeter",
    "cool",
    "until",
    "watch",
    "picture",
    "wrong",
    "print",
    "optional",
];

/// Of those, what may stand there more than once.
const SEVERAL: [&str; 2] = ["picture", "wrong"];

/// Reads a ticket into the step whose heading it stands under; whether all of it could be
/// read.
pub(super) fn read(
    ticket: &Placed<String>,
    step: &mut Step,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) -> bool {
    let so_far = faults.len();
    let lines = lines(ticket, &KEYS, faults);
    let mut whole = faults.len() == so_far;
    let written: BTreeSet<String> =
        lines.iter().map(|line| line.key.value.clone()).collect();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for mut line in lines {
        if !seen.insert(line.key.value.clone()) && !SEVERAL.contains(&&*line.key.value) {
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
        if let Err(fault) = set(step, line, words, faults) {
            faults.push(fault);
            whole = false;
        }
    }
    if step.hands.is_none() {
        step.hands = step
            .mixing
            .as_ref()
            .map(|mixing| Placed::new(mix::hands(&mixing.value), mixing.place.clone()));
    }
    if let (Some(other), Some(wait)) = (beside_proof(&seen), &step.wait) {
        let key = other.to_owned();
        faults.push(
            Fault::error("bad-ticket", &wait.place, said!("ticket-beside-proof", key))
                .help(said!("ticket-beside-proof-help")),
        );
        whole = false;
    }
    whole
}

/// What cannot stand in a ticket beside a proof by several temperatures.
fn beside_proof(seen: &BTreeSet<String>) -> Option<&'static str> {
    let others = ["wait", "at", "bake", "cool"];
    others.into_iter().find(|other| seen.contains("proof") && seen.contains(*other))
}

/// A proof: all of it is the step's wait, and where all of it is in one place, that is the
/// step's place.
fn proved(step: &mut Step, phases: Placed<Vec<ProofPhase>>) {
    let time = Wait::sum(phases.value.iter().map(|phase| &phase.time));
    let place = phases.place.clone();
    step.wait = Some(Placed::new(time, place.clone()));
    step.proof = phases.value;
    if step.at_place.is_none() {
        let first = step.proof.iter().find_map(|phase| phase.place.clone());
        step.at_place = first.map(|first| Box::new(Placed::new(first, place)));
    }
}

/// One row of a ticket.
pub(super) struct Row {
    pub(super) key: Placed<String>,
    pub(super) value: Placed<String>,
}

/// The ticket's lines, comments taken off; an indented line without a key goes on from
/// the line above. `keys` are those that it may have.
pub(super) fn lines(
    ticket: &Placed<String>,
    keys: &[&str],
    faults: &mut Vec<Fault>,
) -> Vec<Row> {
    let mut found: Vec<Row> = Vec::new();
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
                if !line.starts_with(' ') || found.is_empty() || keys.contains(&key) =>
            {
                let lead = key.len() + 1 + (value.len() - value.trim_start().len());
                found.push(Row {
                    key: Placed::new(key.trim().to_owned(), place.part(0, key.len())),
                    value: Placed::new(
                        value.trim().to_owned(),
                        place.part(lead, text.len()),
                    ),
                });
            }
            _ => match found.last_mut() {
                Some(Row { value, .. }) if line.starts_with(' ') => {
                    value.value.push(' ');
                    value.value.push_str(text);
                    value.place = value.place.up_to(&place);
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
fn set(
    step: &mut Step,
    line: Row,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) -> Result<(), Fault> {
    if line.value.value.is_empty() {
        let message = said!("ticket-no-value", key = line.key.value);
        return Err(Fault::error("bad-ticket", &line.key.place, message)
            .help(said!("ticket-no-value-help")));
    }
    match line.key.value.as_str() {
        "hands" => step.hands = line.read("10 min + 20 s per piece", quantity::span)?,
        "wait" => step.wait = line.read("60 min (45 min to 2 h)", quantity::wait)?,
        "proof" => {
            let example = "5 °C, 12 h in the fridge; then 26 °C, 90 min in the proofer";
            let phases = line.read(example, |text| proof::proof(text, words))?;
            phases.into_iter().for_each(|phases| proved(step, phases));
        }
        "day" => step.day = line.read("2", day)?,
        "where" => {
            step.at_place = Some(Box::new(line.value.map(|text| location(&text, words))));
        }
        "at" => step.at = line.read("26 °C", quantity::temperature)?,
        "hold" => {
            let hold = |text: &str| quantity::hold(text, words);
            step.hold = line.read("up to 16 h in the fridge", hold)?.map(Box::new);
        }
        "after" => step.after = Some(names(&line.value)),
        "uses" => {
            step.uses = names(&line.value).into_iter().map(|n| n.map(used)).collect();
        }
        "kit" => {
            step.kit = line
                .read("1 mixer", |text| kit(text, words))?
                .map_or_else(Vec::new, |kit| kit.value);
        }
        "until" => step.until = Some(prose::cue(&line.value, faults)),
        "watch" => step.watch = Some(Box::new(line.value)),
        "picture" | "wrong" => {
            let shown = picture::in_line(&line.value)?;
            let is_wrong = line.key.value == "wrong";
            step.pictures.push(StepPicture { shown, is_wrong });
        }
        "optional" => {
            let optional = line.read("yes", super::recipe::yes)?;
            step.optional = optional.is_some_and(|answer| answer.value);
        }
        "print" => {
            step.printed =
                line.read("no", super::recipe::yes)?.is_none_or(|said| said.value);
        }
        _ => return set_machine(step, line),
    }
    Ok(())
}

/// Puts the value of a line about the oven, its trays or the mixer into the step.
fn set_machine(step: &mut Step, line: Row) -> Result<(), Fault> {
    match line.key.value.as_str() {
        "bake" => {
            let read = line.read("190 °C, 22 min", bake::bake)?;
            if let Some((fan, place)) =
                read.as_ref().and_then(|read| Some((read.value.1.clone()?, &read.place)))
            {
                step.fan = Some(Placed::new(fan, place.clone()));
            }
            step.bake = read.map(|read| Box::new(read.map(|(bake, _)| bake)));
        }
        "fan" => step.fan = line.read("170 °C", quantity::temperature)?,
        "per tray" => {
            let read = line.read("10, rows of 3, 4, 3", on_tray)?;
            step.tray_rows =
                read.as_ref().map_or_else(Vec::new, |read| read.value.1.clone());
            step.per_tray = read.map(|read| read.map(|(count, _)| count));
        }
        "mix" => {
            let example = "first speed, 4 min; second speed, 6 min";
            step.mixing = line.read(example, mix::mix)?.map(Box::new);
        }
        "core" => step.core = line.read("94 °C", quantity::temperature)?,
        "cool" => step.cool = Some(Box::new(line.value)),
        _ => return set_dough(step, line),
    }
    Ok(())
}

/// What a step may be told to reach, each with an example.
const GOALS: [(GoalKind, &str); 4] = [
    (GoalKind::Ph, "4.0 (3.8 to 4.2)"),
    (GoalKind::Dough, "24 °C (23 to 25 °C)"),
    (GoalKind::WeightLoss, "12 % (10 to 14 %)"),
    (GoalKind::Growth, "by half (40 to 60 %)"),
];

/// The lines that have to do with the dough as it is measured or rolled.
fn set_dough(step: &mut Step, line: Row) -> Result<(), Fault> {
    let turns = said!("example-turn");
    if let Some((kind, example)) = GOALS.iter().find(|it| it.0.key() == line.key.value) {
        let goal: Option<Placed<Goal>> =
            line.read(*example, |text| goal::goal(*kind, text))?;
        step.goals.retain(|own| own.value.kind != *kind);
        step.goals.extend(goal);
        return Ok(());
    }
    match line.key.value.as_str() {
        "friction" => step.friction = line.read("8 °C", quantity::temperature_step)?,
        "sheeter" => {
            let said = line.read("yes", super::recipe::yes)?;
            step.sheeter = said.filter(|said| said.value).map(|said| said.place);
        }
        "sheet" => step.sheet = line.read("60 x 25 cm", quantity::size)?.map(Box::new),
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
        "cut" => {
            step.cut =
                line.read("triangles, base 9 cm, height 24 cm", cut::cut)?.map(Box::new);
        }
        "divide" => {
            let parts = said!("example-divide");
            let read = divide::divide(&line.value);
            step.divide = line.read(parts, |_| read)?.map(Box::new);
        }
        "part" => step.part = Some(Box::new(line.value)),
        "shape" => {
            step.shape =
                line.read(said!("example-shape"), shaping::shaping)?.map(Box::new);
        }
        _ => return Err(unknown(&line.key)),
    }
    Ok(())
}

impl Row {
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
    let near = nearest(&key.value, KEYS);
    Fault::error("unknown-key", &key.place, message)
        .meant(&key.value, near, || said!("unknown-line-help", keys = KEYS))
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

/// No recipe takes more days.
const MOST_DAYS: u64 = 30;

/// `2`: the second day.
fn day(text: &str) -> Option<u64> {
    text.parse().ok().filter(|day| (1..=MOST_DAYS).contains(day))
}

/// `8`, `10, rows of 3, 4, 3`, `12, 3 rows of 4`: how many lie on a tray, and in each row.
fn on_tray(text: &str) -> Option<(u64, Vec<u64>)> {
    let Some((all, rows)) = text.split_once(',') else {
        return Some((count(text)?, Vec::new()));
    };
    let rows: Vec<u64> = match rows.trim().strip_prefix("rows of ") {
        Some(rows) => {
            rows.split(',').map(|row| count(row.trim())).collect::<Option<_>>()?
        }
        None => {
            let (many, each) = rows.trim().split_once(" rows of ")?;
            let many = usize::try_from(count(many)?).ok()?;
            vec![count(each)?; many]
        }
    };
    let all = count(all)?;
    (rows.iter().sum::<u64>() == all).then_some((all, rows))
}

fn count(text: &str) -> Option<u64> {
    let count = text.split(' ').next()?.parse().ok()?;
    (1..=10_000).contains(&count).then_some(count)
}
