//! The mixer holds the batch, the bench the sheet.

use crate::dough::bench_fits;
use crate::fault::Fault;
use crate::measure::Mass;
use crate::said;
use crate::statement::Amount;
use crate::work::{kit, mixing_step};

use super::Case;

/// More dough than the mixer holds goes in at a step that needs it.
pub(super) fn mixer(case: Case) -> Vec<Fault> {
    let Some(most) = kit(case.book).mixer else { return Vec::new() };
    let work = case.work;
    let steps = work.recipe.steps().enumerate();
    let mixing = steps.filter(|(_, step)| step.needs_mixer());
    mixing
        .filter_map(|(at, step)| {
            let used = work.flow.uses[at].iter();
            let mass: Mass =
                used.map(|(line, share)| &work.formula.lines[*line].mass() * share).sum();
            (mass > most).then(|| {
                let weight =
                    |mass: &Mass| Amount::Weight { mass: mass.clone(), fine: false };
                let message =
                    said!("mixer-too-small", dough = weight(&mass), most = weight(&most));
                Fault::caution("mixer-too-small", &step.title.place, message)
                    .help(said!("mixer-too-small-help"))
            })
        })
        .collect()
}

/// A sheet longer or wider than the bench.
pub(super) fn bench(case: Case) -> Vec<Fault> {
    let Some(bench) = kit(case.book).bench else { return Vec::new() };
    let sheets = case.work.recipe.steps().filter_map(|step| step.sheet.as_ref());
    sheets
        .filter(|sheet| !bench_fits(&sheet.value, &bench))
        .map(|sheet| {
            let message = said!("bench-too-short", bench = Amount::Size(bench.clone()));
            Fault::caution("bench-too-short", &sheet.place, message)
                .help(said!("bench-too-short-help"))
        })
        .collect()
}

/// A sheeter where no sheet is rolled.
pub(super) fn sheeters(case: Case) -> Vec<Fault> {
    let steps = case.work.recipe.steps().filter(|step| step.sheet.is_none());
    steps
        .filter_map(|step| {
            let place = step.sheeter.as_ref()?;
            let message = said!("sheeter-without-sheet");
            Some(
                Fault::caution("sheeter-without-sheet", place, message)
                    .help(said!("sheeter-without-sheet-help")),
            )
        })
        .collect()
}

/// Another way to mix the dough, without the mixer whose friction the room has, that does not say
/// its own: then the water would be wrong.
pub(super) fn friction(case: Case) -> Vec<Fault> {
    let work = case.work;
    let room = case.book.content.course.as_ref().map(|course| &course.room);
    let reckons = work.recipe.dough_temperature.is_some()
        && room.is_some_and(|room| room.friction.is_some());
    let step = mixing_step(work).and_then(|at| work.steps().get(at).copied());
    let Some(step) = step.filter(|step| reckons && step.needs_mixer()) else {
        return Vec::new();
    };
    let others = step.others.iter().filter(|other| !other.step.needs_mixer());
    others
        .filter(|other| other.step.friction.is_none())
        .map(|other| {
            let message = said!("friction-unsaid", way = other.name.value);
            Fault::caution("friction-unsaid", &other.name.place, message)
                .help(said!("friction-unsaid-help"))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    #[test]
    fn other_kit_says_its_friction() {
        let head = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\ndough temperature: 24 °C\n";
        let body = |lines: &str| {
            format!(
                "## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 9 min\n~~~\nMix it.\n\n~~~ticket by hand\nhands: 15 min\n{lines}~~~\nKnead it.\n"
            )
        };
        assert_fault(head, &body(""), "friction-unsaid", "by hand");
        assert_no_fault(head, &body("friction: 2 °C\n"), "friction-unsaid");
    }

    #[test]
    fn kit_is_held_against_the_recipe() {
        let head = "makes: 1 loaf\nformula:\n  dough:\n    - 2 kg bread flour\n    - 1 kg water\n";
        let body =
            "## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nsheet: 140 x 40 cm\n~~~\n";
        assert_fault(head, body, "mixer-too-small", "Mix");
        assert_fault(head, body, "bench-too-short", "140 x 40 cm");
    }
}
