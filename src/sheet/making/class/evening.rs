//! The rest of a day under way: what is new of it, in words.

use crate::plan::{Now, Shift, Why};

use super::super::super::class::{LineSheet, NowFact, ShiftFact};
use super::plan::Voice;

/// Minutes that are told apart from what comes later.
const NEXT: i32 = 30;

impl Voice<'_> {
    /// What is still to come; all of it where no day is under way.
    pub(super) fn still_to_come(&self, mut rows: Vec<LineSheet>) -> Vec<LineSheet> {
        if let Some(now) = &self.plan.now {
            let comes =
                |row: &LineSheet| row.to_min > now.minute || row.from_min >= now.minute;
            rows.retain(comes);
        }
        rows
    }
}

/// From when on, and what is new.
pub(super) fn now_fact(voice: &Voice, now: &Now) -> NowFact {
    NowFact {
        now_min: now.minute,
        now: voice.plan.clock.stamp(now.minute),
        next_min: now.minute + NEXT,
        day: voice.day(now.minute),
        time: voice.time(now.minute),
        changed: now.shifts.iter().map(|shift| fact(voice, shift)).collect(),
    }
}

fn fact(voice: &Voice, shift: &Shift) -> ShiftFact {
    let words = voice.words;
    let why = match &shift.why {
        Why::After(title) => words.fill("evening-why-after", &[("title", title)]),
        Why::Busy(pool) => {
            words.fill("evening-why-busy", &[("what", &voice.names.pool(pool))])
        }
        Why::Hands => words.get("evening-why-hands").to_owned(),
        Why::Oven => words.get("evening-why-oven").to_owned(),
        Why::Now => words.get("evening-why-now").to_owned(),
        Why::Together => words.get("evening-why-together").to_owned(),
    };
    ShiftFact {
        who: voice.names.all(&shift.who),
        recipe: shift.recipe.clone(),
        what: match &shift.step {
            Some(step) => step.title.clone(),
            None => voice.together(shift.kind).unwrap_or_default().to_owned(),
        },
        from_min: shift.from,
        to_min: shift.to,
        from: voice.time(shift.from),
        to: voice.time(shift.to),
        why,
    }
}
