//! The speeds of a mixer: `first speed, 4 min; second speed, 6 min`.

use crate::model::{MixPhase, Span, Speed, Wait};

use super::quantity::wait;

/// More speeds one after the other than this are no mixing.
const MOST: usize = 8;

/// The speeds by their words.
const SPEEDS: [(&str, Speed); 12] = [
    ("first speed", Speed::First),
    ("speed 1", Speed::First),
    ("second speed", Speed::Second),
    ("speed 2", Speed::Second),
    ("third speed", Speed::Third),
    ("speed 3", Speed::Third),
    ("low", Speed::Low),
    ("on low", Speed::Low),
    ("medium", Speed::Medium),
    ("on medium", Speed::Medium),
    ("high", Speed::High),
    ("on high", Speed::High),
];

/// The phases in order, each with its speed and its time.
pub(super) fn mix(text: &str) -> Option<Vec<MixPhase>> {
    let phases: Option<Vec<MixPhase>> = text.split(';').map(phase).collect();
    phases.filter(|phases| phases.len() <= MOST)
}

fn phase(text: &str) -> Option<MixPhase> {
    let text = text.trim();
    let (speed, time) = text.strip_prefix("then ").unwrap_or(text).split_once(',')?;
    let (_, speed) = SPEEDS.iter().find(|(words, _)| *words == speed.trim())?;
    Some(MixPhase { speed: *speed, time: wait(time.trim())? })
}

/// All of it: what keeps the hands busy where a ticket does not say.
pub(super) fn hands(phases: &[MixPhase]) -> Span {
    let all = Wait::sum(phases.iter().map(|phase| &phase.time));
    Span { least: all.least, most: all.most, pace: None }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn speeds_have_their_minutes() {
        let phases = mix("first speed, 4 min; then second speed, 6 min (5 min to 8 min)");
        let phases = phases.expect("a mixing");
        let speeds: Vec<Speed> = phases.iter().map(|phase| phase.speed).collect();
        assert_eq!(speeds, [Speed::First, Speed::Second]);
        let all = hands(&phases);
        assert_eq!((all.least.whole_minutes(), all.most.whole_minutes()), (9, 12));
        for text in ["", "4 min", "first speed", "quickly, 4 min", "low, slowly"] {
            assert!(mix(text).is_none(), "{text}");
        }
    }
}
