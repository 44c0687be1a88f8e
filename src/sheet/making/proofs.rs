//! Waits and proofs in words: one temperature or one place after the other.

use crate::measure::{Duration, Label, show};
use crate::model::{Location, ProofPhase, Step};
use crate::words::Words;
use crate::work::Work;

use super::super::{ProofFact, ProofPhaseFact};
use super::bakes::then;
use super::content::plain;
use super::kit::place_words;
use super::{Context, round, steps};

/// Every proof by several temperatures.
pub(super) fn proofs(work: &Work, context: Context) -> Vec<ProofFact> {
    let several = work.recipe.steps().filter(|step| !step.proof.is_empty());
    several.map(|step| proof(step, context.words)).collect()
}

fn proof(step: &Step, words: &Words) -> ProofFact {
    let mut place = step.at_place.as_ref().map(|place| place.value.clone());
    let phase = |phase: &ProofPhase| {
        place = phase.place.clone().or(place.take());
        let minutes = [&phase.time.usual, &phase.time.least, &phase.time.most];
        ProofPhaseFact {
            at_c: round(phase.at.in_celsius(), 2),
            minutes: minutes.map(Duration::whole_minutes),
            place: place.as_ref().map(|place| place_words(place, words)),
        }
    };
    ProofFact { step: step.name.clone(), phases: step.proof.iter().map(phase).collect() }
}

/// `60 min (45 min to 2 h)`, `12 h, then 90 min`.
pub(super) fn times(step: &Step, words: &Words) -> Option<Label> {
    let wait = step.wait.iter().map(|wait| &wait.value);
    let phases = step.proof.iter().map(|phase| &phase.time);
    let times = wait.filter(|_| step.proof.is_empty()).chain(phases);
    then(times.map(|time| plain(steps::wait_words(time, words))).collect(), words)
}

/// `fridge, then proofer`: each where it changes.
pub(super) fn places(step: &Step, words: &Words) -> Option<Label> {
    let own = step.at_place.iter().map(|place| &place.value);
    let phases = step.proof.iter().filter_map(|phase| phase.place.as_ref());
    let mut places: Vec<&Location> =
        if step.proof.first().is_some_and(|it| it.place.is_some()) {
            phases.collect()
        } else {
            own.chain(phases).collect()
        };
    places.dedup();
    then(
        places.into_iter().map(|place| plain(place_words(place, words))).collect(),
        words,
    )
}

/// `5 °C, then 26 °C`.
pub(super) fn heats(step: &Step, words: &Words) -> Option<Label> {
    let mut heats = step.heats();
    heats.dedup();
    then(heats.into_iter().map(|heat| show::temperature(heat, words)).collect(), words)
}
