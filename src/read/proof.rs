//! Proofs by several temperatures: `5 °C, 12 h (8 h to 18 h) in the fridge; then 26 °C, 90 min in
//! the proofer`.

use crate::model::ProofPhase;

use super::lexicon::Lexicon;
use super::quantity::{placed, temperature, wait};

/// More temperatures than this are no proof.
const MOST: usize = 6;

/// The phases in order. One that says no temperature keeps that of the one before.
pub(super) fn proof(text: &str, words: &Lexicon) -> Option<Vec<ProofPhase>> {
    let mut phases: Vec<ProofPhase> = Vec::new();
    for part in text.split(';') {
        let part = part.trim();
        let part = part.strip_prefix("then ").unwrap_or(part);
        phases.push(phase(part, phases.last(), words)?);
    }
    (phases.len() <= MOST).then_some(phases)
}

/// `5 °C, 12 h (8 h to 18 h) in the fridge`.
fn phase(text: &str, before: Option<&ProofPhase>, words: &Lexicon) -> Option<ProofPhase> {
    let (text, place) = placed(text, words);
    let (mut at, mut time) = (None, None);
    for part in text.split(',').map(str::trim) {
        if let Some(heat) = temperature(part) {
            if at.replace(heat).is_some() {
                return None;
            }
        } else if time.replace(wait(part)?).is_some() {
            return None;
        }
    }
    let at = at.or_else(|| before.map(|before| before.at.clone()))?;
    Some(ProofPhase { at, time: time?, place })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Duration, exact};

    #[test]
    fn phases_have_a_temperature_a_time_and_a_place() {
        let text = "5 °C, 12 h (8 h to 18 h) in the fridge; then 26 °C, 90 min; 20–30 min on the bench";
        let english = Lexicon::english();
        let phases = proof(text, english).expect("a proof");
        let heats: Vec<_> = phases.iter().map(|phase| phase.at.float()).collect();
        assert_eq!(heats, [5.0, 26.0, 26.0]);
        let places: Vec<_> = phases
            .iter()
            .map(|phase| phase.place.as_ref().map(|place| place.word()))
            .collect();
        assert_eq!(places, [Some("fridge"), None, Some("bench")]);
        let minutes = |at: usize| {
            let time = &phases[at].time;
            [&time.usual, &time.least, &time.most].map(Duration::whole_minutes)
        };
        assert_eq!(
            [0, 1, 2].map(minutes),
            [[720, 480, 1080], [90, 90, 90], [20, 20, 30]]
        );
        assert_eq!(
            proof("41 °F, 12 h", english).expect("a proof")[0].at.in_celsius(),
            &exact(5, 1)
        );
        for text in [
            "12 h",
            "5 °C",
            "5 °C, 12 h, 2 h",
            "5 °C, 6 °C, 2 h",
            "5 °C, 12 h; then slowly",
            "",
        ] {
            assert!(proof(text, english).is_none(), "{text}");
        }
    }
}
