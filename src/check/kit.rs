//! The mixer holds the batch, the bench the sheet.

use crate::dough::bench_fits;
use crate::fault::Fault;
use crate::measure::{Mass, exact, show};
use crate::said;
use crate::work::kit;

use super::Case;

/// More dough than the mixer holds goes in at a step that needs it.
pub(super) fn mixer(case: Case) -> Vec<Fault> {
    let Some(most) = kit(case.book).mixer else { return Vec::new() };
    let work = case.work;
    let steps = work.recipe.steps().enumerate();
    let mixing =
        steps.filter(|(_, step)| step.kit.iter().any(|(_, name)| name.contains("mixer")));
    mixing
        .filter_map(|(at, step)| {
            let used = work.flow.uses[at].iter();
            let mass: Mass =
                used.map(|(line, share)| &work.formula.lines[*line].mass() * share).sum();
            (mass > most).then(|| {
                let weight = |mass: &Mass| {
                    show::metric(mass, &exact(1, 100), false).words(&show::International)
                };
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
            let message = said!(
                "bench-too-short",
                bench = show::size(&bench, &show::International).metric
            );
            Fault::caution("bench-too-short", &sheet.place, message)
                .help(said!("bench-too-short-help"))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::assert_fault;

    #[test]
    fn kit_is_held_against_the_recipe() {
        let head = "makes: 1 loaf\nformula:\n  dough:\n    - 2 kg bread flour\n    - 1 kg water\n";
        let body =
            "## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nsheet: 140 x 40 cm\n~~~\n";
        assert_fault(head, body, "mixer-too-small", "Mix");
        assert_fault(head, body, "bench-too-short", "140 x 40 cm");
    }
}
