//! An oven with a fan is set cooler than one without.

use crate::fault::Fault;
use crate::said;

use super::Case;

/// Fan settings that are not below the oven's.
pub(super) fn fans(case: Case) -> Vec<Fault> {
    let steps = case.work.recipe.steps();
    let hot = steps.filter_map(|step| {
        let (bake, fan) = (step.bake.as_ref()?, step.fan.as_ref()?);
        (fan.value >= bake.value.oven).then_some(fan)
    });
    hot.map(|fan| {
        Fault::caution("fan-not-cooler", &fan.place, said!("fan-not-cooler"))
            .help(said!("fan-not-cooler-help"))
    })
    .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str =
        "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n";

    /// New South Wales Government conversion chart: about 20 °C below.
    #[test]
    fn a_fan_is_set_cooler() {
        let body = |fan| {
            format!(
                "## Bake\n~~~ticket\nuses: dough\nbake: 190 °C, 20 min\nfan: {fan}\n~~~\n"
            )
        };
        assert_fault(HEAD, &body("190 °C"), "fan-not-cooler", "190 °C");
        assert_no_fault(HEAD, &body("170 °C"), "fan-not-cooler");
        let fan = "## Bake\n~~~ticket\nuses: dough\nbake: fan 170 °C, 20 min\n~~~\n";
        assert_no_fault(HEAD, fan, "fan-not-cooler");
    }
}
