//! Another way to do a step, with other kit: a ticket of its own beneath the step's, with a name,
//! `~~~ticket by hand`, and its own words below it.

use crate::fault::{Fault, Placed};
use crate::model::{Alternative, Block, Brace, Step};
use crate::said;

use super::lexicon::Lexicon;
use super::ticket;

/// Reads one, beside the ones before it; whether all of it could be read. What its ticket does not
/// say is as in the step's own, but for its kit.
pub(super) fn read(
    name: Placed<String>,
    ticket: &Placed<String>,
    step: &mut Step,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) -> bool {
    let same = |other: &Alternative| other.name.says(&name.value);
    if step.others.iter().any(same) {
        let message = said!("way-of-step-twice", way = name.value);
        faults.push(
            Fault::error("bad-ticket", &name.place, message)
                .help(said!("way-of-step-twice-help")),
        );
        return false;
    }
    let mut own = bare(step, &ticket.value);
    let whole = ticket::read(ticket, &mut own, words, faults);
    step.others.push(Alternative { name, step: Box::new(own) });
    whole
}

/// Gives the last of them its words; without any it has those of the step.
pub(super) fn told(step: &mut Step, prose: Vec<Block<Brace>>) {
    if let Some(last) = step.others.last_mut() {
        last.step.prose = prose;
    }
}

/// The step without its kit, and without what the lines of a ticket stand in place of.
fn bare(step: &Step, ticket: &str) -> Step {
    let says = |key: &str| {
        let keys = ticket.lines().filter_map(|line| line.split_once(':'));
        keys.into_iter().any(|(own, _)| own.trim() == key)
    };
    let kept = |keys: &[&str]| !keys.iter().any(|key| says(key));
    Step {
        kit: Vec::new(),
        mixing: None,
        friction: None,
        sheeter: None,
        others: Vec::new(),
        until: None,
        prose: Vec::new(),
        hands: step.hands.clone().filter(|_| kept(&["mix"])),
        fan: step.fan.clone().filter(|_| kept(&["bake"])),
        proof: if kept(&["wait", "at"]) { step.proof.clone() } else { Vec::new() },
        wait: step.wait.clone().filter(|_| kept(&["proof", "wait"])),
        at: step.at.clone().filter(|_| kept(&["proof"])),
        at_place: step.at_place.clone().filter(|_| kept(&["proof", "where"])),
        ..step.clone()
    }
}
