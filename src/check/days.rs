//! The days of a recipe: what is left until another day can stand so long, and what was frozen
//! thaws in the cold.
//!
//! Thawing: FDA Food Code 3-501.13, under refrigeration that keeps it at 5 °C or colder. It points
//! out and never replaces local rules.

use crate::fault::Fault;
use crate::measure::{Duration, exact};
use crate::model::Step;
use crate::said;
use crate::statement::Amount;

use super::Case;
use super::perishable::is_cold;

/// A night from the last work of a day to the first of the next, in minutes (common practice, no
/// source).
const NIGHT: i64 = 8 * 60;
/// Minutes of a day.
const DAY: i64 = 24 * 60;

/// What stands until another day without a wait or a hold that lets it.
pub(super) fn nights(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let stands = steps.iter().filter_map(|step| {
        let day = step.day.as_ref()?.value;
        let follows = |next: &&&Step| {
            next.after.iter().flatten().any(|after| after.value == step.name)
        };
        let next = steps.iter().filter(follows);
        let next = next.filter_map(|next| Some(next.day.as_ref()?.value)).min()?;
        let days = i64::try_from(next.checked_sub(day)?).ok().filter(|days| *days > 0)?;
        let needed = Duration::minutes(exact((days - 1) * DAY + NIGHT, 1));
        (longest(step) < needed).then_some((step, next, needed))
    });
    let fault = |(step, day, needed): (&&Step, u64, Duration)| {
        let time = Amount::Minutes(needed.whole_minutes());
        let message = said!("night-without-hold", day, time);
        Fault::caution("night-without-hold", &step.title.place, message)
            .help(said!("night-without-hold-help"))
    };
    stands.map(fault).collect()
}

/// How long what a step makes can stand in all.
fn longest(step: &Step) -> Duration {
    let wait = step.wait.as_ref().map(|wait| wait.value.most.clone());
    let hold = step.hold.as_ref().map(|hold| hold.value.up_to.clone());
    [wait, hold].into_iter().flatten().fold(Duration::zero(), |sum, time| sum + time)
}

/// What was frozen and thaws where it is warm.
pub(super) fn thawed_warm(case: Case) -> Vec<Fault> {
    let holds = case.work.recipe.steps().filter_map(|step| step.hold.as_ref());
    let warm = holds.filter(|hold| {
        let thaw = hold.value.thaw.as_ref();
        thaw.is_some_and(|thaw| !is_cold(Some(&thaw.place)))
    });
    warm.map(|hold| {
        let message = said!("thawed-warm");
        Fault::caution("thawed-warm", &hold.place, message)
            .help(said!("thawed-warm-help"))
    })
    .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str =
        "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 340 g water\n";

    fn body(mix: &str, shape: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\nhands: 9 min\n{mix}~~~\n\n## Shape\n~~~ticket\nhands: 5 min\n{shape}~~~\n"
        )
    }

    /// Eight hours for one night, 32 for two.
    #[test]
    fn what_is_left_over_night_can_stand_so_long() {
        for (mix, shape, name) in [
            ("", "day: 2\n", "Mix"),
            ("wait: 1 h\nhold: up to 6 h 59 min\n", "day: 2\n", "Mix"),
            ("wait: 12 h\n", "day: 3\n", "Mix"),
        ] {
            assert_fault(HEAD, &body(mix, shape), "night-without-hold", name);
        }
        for (mix, shape) in [
            ("", ""),
            ("", "day: 1\n"),
            ("wait: 1 h\nhold: up to 7 h\n", "day: 2\n"),
            ("wait: 32 h\nwhere: fridge\n", "day: 3\n"),
            ("hold: up to 2 weeks in the freezer, thaw 9 h in the fridge\n", "day: 8\n"),
        ] {
            assert_no_fault(HEAD, &body(mix, shape), "night-without-hold");
        }
    }

    #[test]
    fn a_day_does_not_wait_for_a_later_one() {
        let early = body("day: 2\n", "day: 1\nafter: mix\n");
        assert_fault(HEAD, &early, "day-too-early", "1");
        assert_no_fault(HEAD, &body("day: 2\n", "day: 1\n"), "day-too-early");
    }

    /// FDA Food Code 3-501.13: under refrigeration.
    #[test]
    fn what_was_frozen_thaws_in_the_cold() {
        let hold = |thaw: &str| format!("hold: up to 2 weeks in the freezer, {thaw}\n");
        let warm = body(&hold("thaw 4 h on the bench"), "");
        let written = "up to 2 weeks in the freezer, thaw 4 h on the bench";
        assert_fault(HEAD, &warm, "thawed-warm", written);
        assert_no_fault(HEAD, &body(&hold("thaw 9 h in the fridge"), ""), "thawed-warm");
    }
}
