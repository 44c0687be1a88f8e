//! What steps are to reach, and how the mixer runs, in words.

use crate::measure::{Duration, Exact, Label, Mass, Temperature, exact, show};
use crate::model::{Goal, GoalKind, MixPhase, Speed, Step};
use crate::pantry::Kind;
use crate::words::Words;
use crate::work::Work;

use super::super::{GoalFact, Measured, MixFact, MixPhaseFact};
use super::bakes::then;
use super::content::plain;
use super::{Context, lines, round, steps};

/// Everything that the steps are to reach.
pub(super) fn goals(work: &Work) -> Vec<GoalFact> {
    let of = |step: &'_ Step| -> Vec<GoalFact> {
        step.goals.iter().map(|goal| fact(&goal.value, step, work)).collect()
    };
    work.recipe.steps().flat_map(of).collect()
}

fn fact(goal: &Goal, step: &Step, work: &Work) -> GoalFact {
    let (what, times) = match goal.kind {
        GoalKind::Ph => (Measured::Ph, 1),
        GoalKind::Dough => (Measured::DoughTemperature, 1),
        GoalKind::WeightLoss => (Measured::WeightLoss, 100),
        GoalKind::Growth => (Measured::Growth, 100),
    };
    let [usual, least, most] = [&goal.usual, &goal.least, &goal.most]
        .map(|value| round(&(value * exact(times, 1)), 2));
    let piece = baked_piece(goal, step, work);
    let piece_g = piece.map(|piece| round(piece.amount(), 2));
    GoalFact { step: step.name.clone(), what, usual, least, most, piece_g }
}

/// What a piece weighs that has lost as much as a bake is to take from it.
fn baked_piece(goal: &Goal, step: &Step, work: &Work) -> Option<Mass> {
    let loses = goal.kind == GoalKind::WeightLoss && step.bake.is_some();
    let piece = work.piece.as_ref().filter(|_| loses)?;
    Some(piece * &(exact(1, 1) - &goal.usual))
}

/// A goal with its range: `24 °C (23 °C–25 °C)`.
pub(super) fn row(goal: &Goal, step: &Step, work: &Work, context: Context) -> Label {
    let words = context.words;
    let usual = usual(goal, words);
    let value = if goal.least == goal.most {
        usual
    } else {
        let [least, most] =
            [&goal.least, &goal.most].map(|it| value(goal.kind, it, words));
        let ranged = |usual: &str, least: &str, most: &str| {
            let range = words.range(least, most);
            words.fill("with-range", &[("usual", usual), ("range", &range)])
        };
        Label::new(
            ranged(&usual.metric, &least.metric, &most.metric),
            ranged(&usual.us, &least.us, &most.us),
        )
    };
    let Some(piece) = baked_piece(goal, step, work) else { return value };
    let piece = lines::weight(&piece, Kind::Other, context);
    let to = |value: &str, weight: &str| {
        words.fill("weight-loss-to", &[("value", value), ("weight", weight)])
    };
    Label::new(to(&value.metric, &piece.metric), to(&value.us, &piece.us))
}

/// What is aimed at; a growth that has a word by that.
fn usual(goal: &Goal, words: &Words) -> Label {
    let own = value(goal.kind, &goal.usual, words);
    match goal.kind {
        GoalKind::Ph | GoalKind::Dough | GoalKind::WeightLoss => own,
        GoalKind::Growth => {
            let named = [
                (exact(1, 2), "growth-half"),
                (exact(1, 1), "growth-double"),
                (exact(2, 1), "growth-triple"),
            ];
            let named = named.into_iter().find(|(grown, _)| *grown == goal.usual);
            named.map_or_else(
                || own.map(|share| words.fill("growth-by", &[("share", share)])),
                |(_, key)| plain(words.get(key)),
            )
        }
    }
}

fn value(kind: GoalKind, value: &Exact, words: &Words) -> Label {
    match kind {
        GoalKind::Ph => plain(show::number(value, 1, words)),
        GoalKind::Dough => show::temperature(&Temperature::celsius(value.clone()), words),
        GoalKind::WeightLoss | GoalKind::Growth => {
            plain(show::percent(&(value * exact(100, 1)), 1, words))
        }
    }
}

/// How the mixer runs at every step that says so.
pub(super) fn mixing(work: &Work) -> Vec<MixFact> {
    let told = work.recipe.steps().filter_map(|step| {
        let phases = step.mixing.as_ref()?.value.iter().map(phase).collect();
        Some(MixFact { step: step.name.clone(), phases })
    });
    told.collect()
}

fn phase(phase: &MixPhase) -> MixPhaseFact {
    let minutes = [&phase.time.usual, &phase.time.least, &phase.time.most];
    MixPhaseFact { speed: phase.speed, minutes: minutes.map(Duration::whole_minutes) }
}

/// `first speed 4 min, then second speed 6 min`.
pub(super) fn speeds(step: &Step, words: &Words) -> Option<Label> {
    let phase = |phase: &MixPhase| {
        let key = match phase.speed {
            Speed::First => "speed-first",
            Speed::Second => "speed-second",
            Speed::Third => "speed-third",
            Speed::Low => "speed-low",
            Speed::Medium => "speed-medium",
            Speed::High => "speed-high",
        };
        let time = steps::wait_words(&phase.time, words);
        let values = [("speed", words.get(key)), ("time", &time)];
        plain(words.fill("mix-phase", &values))
    };
    then(step.mixing.as_ref()?.value.iter().map(phase).collect(), words)
}
