//! Times: bakes, waits, hands.

use crate::fault::{Fault, Place};
use crate::measure::{Duration, exact};
use crate::model::{Location, Stand, Step};
use crate::said;
use crate::statement::{Amount, Statement};

use super::Case;

/// Minutes of a day.
const DAY: i64 = 24 * 60;
/// A bake hotter than this, °C, is over within so many minutes: large fruit cakes and slow
/// breads bake cooler. Common practice, no source.
const HOT: (i64, i64) = (160, 3 * 60);
/// No bake lasts longer: pumpernickel takes a day. Common practice, no source.
const BAKED: i64 = 26 * 60;
/// A bake this short, in minutes, is one of flat breads at this heat, °C, or more.
const FLASH: (i64, i64) = (2, 250);
/// Doughs stand so long at most, in minutes: sponges and soakers a day and a half outside the
/// cold, retards 72 h in it. Common practice, no source.
const WARM: i64 = 36 * 60;
const COLD: i64 = 72 * 60;
/// What nobody waits for, and what nobody works on at one time.
const MOST_WAIT: i64 = 366 * DAY;
const MOST_HANDS: i64 = DAY;
/// A step keeps hands busy for so long at most: a working day.
const WORKED: i64 = 8 * 60;

/// Every time of every step.
pub(super) fn steps(case: Case) -> Vec<Fault> {
    let mut faults: Vec<Fault> = Vec::new();
    for step in case.work.steps() {
        faults.extend(bake(step));
        faults.extend(wait(step));
        faults.extend(hands(case, step));
    }
    faults
}

fn bake(step: &Step) -> Option<Fault> {
    let bake = step.bake.as_ref()?;
    let (time, oven) = (&bake.value.time.usual, bake.value.oven.in_celsius());
    if *time <= Duration::zero() {
        let message = said!("bake-without-time");
        return Some(
            Fault::error("impossible-value", &bake.place, message)
                .help(said!("bake-without-time-help")),
        );
    }
    let (hot, long) = (*oven >= exact(HOT.0, 1), *time > minutes(HOT.1));
    let flash = *time < minutes(FLASH.0) && *oven < exact(FLASH.1, 1);
    (hot && long || *time > minutes(BAKED) || flash).then(|| {
        let time = in_words(time);
        odd(&bake.place, said!("unlikely-bake-time", time))
    })
}

fn wait(step: &Step) -> Option<Fault> {
    let wait = step.wait.as_ref()?;
    let time = &wait.value.most;
    if *time > minutes(MOST_WAIT) {
        return Some(Fault::error(
            "impossible-value",
            &wait.place,
            said!("impossible-wait"),
        ));
    }
    step.stands().iter().find_map(|stand| stood(stand, &wait.place))
}

/// One place in which it stands for too long.
fn stood(stand: &Stand, place: &Place) -> Option<Fault> {
    let at = stand.place.as_ref();
    let cold = at.is_some_and(Location::is_cold);
    let frozen = at.is_some_and(Location::is_frozen);
    let most = if cold { COLD } else { WARM };
    (!frozen && stand.time.usual > minutes(most)).then(|| {
        let time = in_words(&stand.time.usual);
        let message = if cold {
            said!("unlikely-wait-cold", time)
        } else {
            said!("unlikely-wait-warm", time)
        };
        odd(place, message)
    })
}

fn hands(case: Case, step: &Step) -> Option<Fault> {
    let hands = step.hands.as_ref()?;
    let timing = case.work.timing.as_ref().ok()?;
    let own = |job: &&crate::work::WorkJob| {
        job.recipe == case.work.recipe.name && job.step == step.name
    };
    let time = &timing.jobs.iter().find(own)?.job.hands;
    if *time > minutes(MOST_HANDS) {
        let message = said!("impossible-hands");
        return Some(Fault::error("impossible-value", &hands.place, message));
    }
    (*time > minutes(WORKED)).then(|| {
        let time = in_words(time);
        odd(&hands.place, said!("unlikely-hands", time))
    })
}

fn odd(place: &Place, message: Statement) -> Fault {
    Fault::caution("unlikely-time", place, message).help(said!("unlikely-time-help"))
}

fn in_words(time: &Duration) -> Amount {
    Amount::Minutes(time.whole_minutes())
}

fn minutes(minutes: i64) -> Duration {
    Duration::minutes(exact(minutes, 1))
}

#[cfg(test)]
mod tests {
    use super::super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 4 rolls\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n";

    fn body(hands: &str, wait: &str, bake: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\nhands: {hands}\n~~~\n## Proof\n~~~ticket\n{wait}\n~~~\n## Bake\n~~~ticket\nbake: {bake}\n~~~\n"
        )
    }

    #[test]
    fn slips_are_found_and_long_doughs_are_not() {
        let good = ["5 min", "wait: 1 h", "190 °C, 22 min"];
        let with = |at: usize, text: &'static str| {
            let mut all = good;
            all[at] = text;
            body(all[0], all[1], all[2])
        };
        for (at, text, name, words) in [
            (2, "190 °C, 0 min", "impossible-value", "190 °C, 0 min"),
            (2, "190 °C, 220 min", "unlikely-time", "190 °C, 220 min"),
            (2, "190 °C, 25 s", "unlikely-time", "190 °C, 25 s"),
            (1, "wait: 90 h", "unlikely-time", "90 h"),
            (1, "wait: 9000 h", "impossible-value", "9000 h"),
            (
                0,
                "999999999999 h per piece",
                "impossible-value",
                "999999999999 h per piece",
            ),
            (0, "10 h", "unlikely-time", "10 h"),
        ] {
            assert_fault(HEAD, &with(at, text), name, words);
        }
        for (at, text) in [
            (1, "wait: 72 h\nwhere: fridge"),
            (1, "wait: 16 h\nwhere: bench"),
            (1, "wait: 60 days\nwhere: freezer"),
            (2, "110 °C, 20 h"),
            (2, "480 °C, 90 s"),
        ] {
            assert_no_fault(HEAD, &with(at, text), "unlikely-time");
        }
    }
}
