//! Faults that the author accepts with a reason.

use crate::fault::Fault;
use crate::model::Recipe;
use crate::said;

/// Faults that concern safety or allergens, or without which nothing can be worked out:
/// these cannot be accepted away.
pub const ACCEPTABLE: [&str; 30] = [
    "amounts-disagree",
    "bench-too-short",
    "block-does-not-fit",
    "cut-count",
    "fan-not-cooler",
    "fat-layer-too-thin",
    "fat-share-unusual",
    "fat-unlike-dough",
    "friction-unsaid",
    "goals-at-odds",
    "mixer-too-small",
    "mixing-beyond-step",
    "night-without-hold",
    "part-too-short",
    "piece-weight-unknown",
    "place-misspelt",
    "seams-not-turned",
    "sheet-gets-narrower",
    "sheet-too-thick",
    "sheet-too-thin",
    "too-warm-for-butter",
    "tray-too-full",
    "unlikely-goal",
    "unlikely-heat",
    "unlikely-share",
    "unlikely-time",
    "unused-ingredient",
    "water-unknown",
    "weight-open",
    "yield-off",
];

/// `accept: { sheet-too-thin: "demonstration of tearing" }` takes that fault out.
pub(super) fn accept(recipe: &Recipe, faults: Vec<Fault>) -> Vec<Fault> {
    let accepted = |name: &str| {
        ACCEPTABLE.contains(&name)
            && recipe.accept.iter().any(|accept| accept.fault.value == name)
    };
    faults.into_iter().filter(|fault| !accepted(fault.name)).collect()
}

/// Names that cannot be accepted.
pub(super) fn unacceptable(recipe: &Recipe) -> Vec<Fault> {
    let names = recipe.accept.iter().map(|accept| &accept.fault);
    names
        .filter(|name| !ACCEPTABLE.contains(&name.value.as_str()))
        .map(|name| {
            let message = said!("not-acceptable", name = name.value);
            let they = said!("names-acceptable");
            Fault::error("not-acceptable", &name.place, message).one_of(
                &name.value,
                &ACCEPTABLE,
                they,
            )
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n  extra:\n    - 5 g sugar\n";
    const BODY: &str = "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";

    #[test]
    fn a_reason_takes_a_fault_out() {
        assert_fault(HEAD, BODY, "unused-ingredient", "5 g sugar");
        let accepted = format!("{HEAD}accept: {{unused-ingredient: \"for the jar\"}}\n");
        assert_no_fault(&accepted, BODY, "unused-ingredient");
    }

    #[test]
    fn safety_is_not_accepted_away() {
        let head = format!("{HEAD}accept: {{allergens-unknown: \"no matter\"}}\n");
        assert_fault(&head, BODY, "not-acceptable", "allergens-unknown");
    }
}
