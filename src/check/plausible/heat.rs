//! Temperatures: ovens, cores, proofs, the dough itself.

use crate::fault::{Fault, Place, Placed};
use crate::formula::{MadeOf, Weighed, is_roll_in};
use crate::measure::{Temperature, exact};
use crate::model::Step;
use crate::pantry::Kind;
use crate::said;
use crate::statement::{Amount, Statement};

use super::super::Case;
use super::share::has_yeast;

/// No oven is colder or hotter, °C: above the first nothing bakes, above the second is a
/// potter's kiln. Common practice, no source.
const OVEN: [i64; 2] = [40, 600];
/// Doughs bake between these, °C: slow rye breads at 110 to 120, a deck oven up to 320.
/// Common practice, no source.
const BAKED: [i64; 2] = [110, 320];
/// Cores of what is baked, °C: the safe minimum for egg dishes is 71 (USDA FSIS, Safe Minimum
/// Internal Temperature Chart); breads are done at 88 to 99, and water boils at 100.
const CORE: [i64; 2] = [57, 105];
/// Waits are neither colder nor hotter, °C: a shock freezer; boiling water.
const WAIT: [i64; 2] = [-45, 105];
/// Yeast dies above this, °C: thermal death near 55 within minutes; proofers stay below 45.
/// Common practice, no source.
const YEAST: i64 = 45;
/// Butter between layers softens and runs above this, °C. Common practice, no source.
const LAMINATED: i64 = 28;
/// Butter mixed into a dough oils out above this, °C: its melting range ends at 35. Common
/// practice, no source.
const BUTTERY: i64 = 32;
/// From this share of the flour on butter makes the dough, in percent.
const RICH: i64 = 20;
/// Doughs leave the mixer between these, °C; none is frozen or boils.
const MIXED: [i64; 2] = [5, 40];
const DOUGH: [i64; 2] = [-5, 100];

/// The ovens, cores and proofs of all steps.
pub(super) fn steps(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let mut faults: Vec<Fault> = steps.iter().filter_map(|step| oven(step)).collect();
    if faults.is_empty() {
        faults.extend(cool_oven(case));
    }
    faults.extend(steps.iter().filter_map(|step| core(step)));
    faults
        .extend(steps.iter().enumerate().filter_map(|(at, step)| proof(case, at, step)));
    faults
}

fn oven(step: &Step) -> Option<Fault> {
    let bake = step.bake.as_ref()?;
    let hottest = bake.value.phases.iter().map(|phase| &phase.oven).max()?;
    let coolest = bake.value.phases.iter().map(|phase| &phase.oven).min()?;
    let oven = if outside(coolest, OVEN) { coolest } else { hottest };
    let heat = both(oven);
    if outside(oven, OVEN) {
        let message = said!("impossible-oven", heat);
        return Some(
            Fault::error("impossible-value", &bake.place, message).help(units()),
        );
    }
    if *oven > celsius(BAKED[1]) {
        let message = said!("unlikely-oven-hot", heat);
        return Some(Fault::caution("unlikely-heat", &bake.place, message).help(units()));
    }
    None
}

/// A temperature in both scales.
fn both(heat: &Temperature) -> Statement {
    let (metric, us) = (Amount::Celsius(heat.clone()), Amount::Fahrenheit(heat.clone()));
    said!("both-units", metric, us)
}

fn units() -> Statement {
    said!("look-at-degrees")
}

/// A dough that is never baked hotter than meringues dry: °F with the sign of °C, or the
/// other way round.
fn cool_oven(case: Case) -> Option<Fault> {
    let bakes = case.work.recipe.steps().filter_map(|step| step.bake.as_ref());
    let hottest = bakes.max_by(|a, b| a.value.oven.cmp(&b.value.oven))?;
    let lines = &case.work.formula.lines;
    let floury =
        |line: &Weighed| line.is(Kind::Flour) || matches!(line.source, MadeOf::Recipe(_));
    let has_flour = lines.iter().any(floury);
    if !has_flour || hottest.value.oven >= celsius(BAKED[0]) {
        return None;
    }
    let heat = both(&hottest.value.oven);
    let message = said!("unlikely-oven-cool", heat);
    Some(Fault::caution("unlikely-heat", &hottest.place, message).help(units()))
}

fn core(step: &Step) -> Option<Fault> {
    let core = step.core.as_ref().filter(|core| outside(&core.value, CORE))?;
    let heat = both(&core.value);
    let message = said!("unlikely-core", heat);
    Some(
        Fault::caution("unlikely-core", &core.place, message)
            .help(said!("unlikely-core-help")),
    )
}

fn proof(case: Case, at: usize, step: &Step) -> Option<Fault> {
    let wait = step.wait.as_ref().map(|wait| &wait.place);
    let place = step.at.as_ref().map(|at| &at.place).or(wait)?;
    let heats = step.heats().into_iter();
    heats
        .map(|heat| Placed::new(heat.clone(), place.clone()))
        .find_map(|warm| proof_at(case, at, &warm))
}

fn proof_at(case: Case, at: usize, warm: &Placed<Temperature>) -> Option<Fault> {
    let heat = both(&warm.value);
    if outside(&warm.value, WAIT) {
        let message = said!("impossible-wait-heat", heat);
        return Some(
            Fault::error("impossible-value", &warm.place, message).help(units()),
        );
    }
    if warm.value > celsius(YEAST) && before_the_oven(case, at) && has_yeast(case) {
        let message = said!("yeast-dies", heat);
        return Some(Fault::caution("unlikely-heat", &warm.place, message).help(units()));
    }
    butter(case, at, warm)
}

/// Butter in a dough that waits too warm for it.
fn butter(case: Case, at: usize, warm: &Placed<Temperature>) -> Option<Fault> {
    if !before_the_oven(case, at) {
        return None;
    }
    let heat = both(&warm.value);
    if case.work.layering.batch.fat.is_positive() && warm.value > celsius(LAMINATED) {
        let message = said!("butter-runs-out", heat);
        return Some(too_warm(&warm.place, message, said!("butter-runs-out-help")));
    }
    if warm.value > celsius(BUTTERY) && buttery(case) {
        let message = said!("butter-oils-out", heat);
        return Some(too_warm(&warm.place, message, said!("butter-oils-out-help")));
    }
    None
}

fn too_warm(place: &Place, message: Statement, help: Statement) -> Fault {
    Fault::caution("too-warm-for-butter", place, message).help(help)
}

/// Whether butter that is mixed in is a fifth of the flour or more.
fn buttery(case: Case) -> bool {
    let formula = &case.work.formula;
    let sum = |kind: Kind| -> crate::measure::Mass {
        let lines =
            formula.lines.iter().filter(|line| line.is(kind) && line.mass.is_some());
        lines
            .filter(|line| !is_roll_in(line.section, formula))
            .map(|line| line.mass())
            .sum()
    };
    let share = sum(Kind::Fat).over(&sum(Kind::Flour));
    share.is_some_and(|share| share >= exact(RICH, 100))
}

/// Whether a bake comes after a step.
fn before_the_oven(case: Case, at: usize) -> bool {
    let steps = case.work.steps();
    steps[at].bake.is_none()
        && case.work.flow.from(at).into_iter().any(|later| steps[later].bake.is_some())
}

/// The temperature at which the dough leaves the mixer.
pub(super) fn dough(case: Case) -> Option<Fault> {
    let wanted = case.work.recipe.dough_temperature.as_ref()?;
    let heat = both(&wanted.value);
    if outside(&wanted.value, DOUGH) {
        let message = said!("impossible-dough-heat", heat);
        return Some(
            Fault::error("impossible-value", &wanted.place, message).help(units()),
        );
    }
    outside(&wanted.value, MIXED).then(|| {
        let message = said!("unlikely-dough-heat", heat);
        Fault::caution("unlikely-heat", &wanted.place, message).help(units())
    })
}

fn celsius(degrees: i64) -> Temperature {
    Temperature::celsius(exact(degrees, 1))
}

fn outside(found: &Temperature, [least, most]: [i64; 2]) -> bool {
    *found < celsius(least) || *found > celsius(most)
}

#[cfg(test)]
mod tests {
    use super::super::super::testing::{assert_fault, assert_no_fault};

    const LEAN: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n    - 5 g instant yeast\n";
    const RICH: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n    - 5 g instant yeast\n    - 200 g butter\n";

    fn body(lines: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n## Proof\n~~~ticket\nwait: 1 h\n{lines}\n~~~\n"
        )
    }

    #[test]
    fn ovens() {
        let bake = |bake: &str| {
            format!("{}## Bake\n~~~ticket\nbake: {bake}, 30 min\n~~~\n", body(""))
        };
        for (oven, name) in [
            ("1900 °C", "impossible-value"),
            ("-5 °C", "impossible-value"),
            ("20 °C", "impossible-value"),
            ("190 °F", "unlikely-heat"),
            ("400 °C", "unlikely-heat"),
        ] {
            assert_fault(LEAN, &bake(oven), name, &format!("{oven}, 30 min"));
        }
        for oven in ["190 °C", "120 °C", "320 °C", "500 °F"] {
            assert_no_fault(LEAN, &bake(oven), "unlikely-heat");
        }
        // A meringue dries for an hour at 88 °C: no flour, no fault.
        let meringue = "makes: 12 shells\nformula:\n  paste:\n    - 100 g egg white\n    - 200 g sugar\n";
        let dry = "## Whisk\n~~~ticket\nuses: paste\nhands: 5 min\n~~~\n## Dry\n~~~ticket\nbake: 190 °F, 1 h\n~~~\n";
        assert_no_fault(meringue, dry, "unlikely-heat");
    }

    #[test]
    fn cores_and_proofs() {
        let baked = |at: &str, core: &str| {
            format!(
                "{}## Bake\n~~~ticket\nbake: 200 °C, 30 min\ncore: {core}\n~~~\n",
                body(&format!("at: {at}"))
            )
        };
        assert_fault(LEAN, &baked("26 °C", "20 °C"), "unlikely-core", "20 °C");
        assert_no_fault(LEAN, &baked("26 °C", "96 °C"), "unlikely-core");
        assert_fault(LEAN, &baked("260 °C", "96 °C"), "impossible-value", "260 °C");
        assert_fault(LEAN, &baked("60 °C", "96 °C"), "unlikely-heat", "60 °C");
        assert_fault(RICH, &baked("36 °C", "96 °C"), "too-warm-for-butter", "36 °C");
        assert_no_fault(RICH, &baked("30 °C", "96 °C"), "too-warm-for-butter");
        assert_no_fault(LEAN, &baked("36 °C", "96 °C"), "too-warm-for-butter");
    }

    #[test]
    fn doughs() {
        let wanted = |at: &str| format!("{LEAN}dough temperature: {at}\n");
        assert_fault(&wanted("250 °C"), &body(""), "impossible-value", "250 °C");
        assert_fault(&wanted("78 °C"), &body(""), "unlikely-heat", "78 °C");
        assert_no_fault(&wanted("78 °F"), &body(""), "unlikely-heat");
    }
}
