//! Where a dough stands: a slip of the fingers makes a place of its own, which no plan and no
//! rule about keeping cold knows.

use crate::fault::{Fault, nearest};
use crate::said;

use super::Case;

/// Places that are meant where a word is nearly one of them (common practice, no source).
const KNOWN: [&str; 9] = [
    "basket",
    "bench",
    "cold room",
    "counter",
    "freezer",
    "fridge",
    "oven",
    "proofer",
    "rack",
];

/// The word has this many letters at least: `tin` is no misspelt `rack`.
const SHORTEST: usize = 4;

/// A place that is nearly a known one.
pub(super) fn misspelt(case: Case) -> Vec<Fault> {
    let steps = || case.work.recipe.steps();
    let stands = steps().filter_map(|step| {
        step.at_place.as_ref().map(|place| (place.value.as_str(), &place.place))
    });
    let held = steps().filter_map(|step| {
        let hold = step.hold.as_ref()?;
        Some((hold.value.at_place.as_deref()?, &hold.place))
    });
    let misspelt = stands.chain(held).filter_map(|(word, place)| {
        let near =
            nearest(word, KNOWN).filter(|near| !word.to_lowercase().contains(near))?;
        (word.chars().count() >= SHORTEST).then_some((word, near, place))
    });
    misspelt
        .map(|(name, near, place)| {
            Fault::caution("place-misspelt", place, said!("place-misspelt", name))
                .help(said!("did-you-mean", near))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str =
        "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 340 g water\n";

    #[test]
    fn a_place_that_is_nearly_one_is_pointed_out() {
        let rise = |rows: &str| {
            format!(
                "## Mix\n~~~ticket\nuses: dough\nhands: 9 min\n~~~\n\n## Rise\n~~~ticket\nwait: 60 min\n{rows}\n~~~\n"
            )
        };
        assert_fault(HEAD, &rise("where: fidge"), "place-misspelt", "fidge");
        assert_fault(
            HEAD,
            &rise("hold: up to 12 h in the frige"),
            "place-misspelt",
            "up to 12 h in the frige",
        );
        for place in ["fridge", "Fridge", "larder", "tin", "window sill", "fridge 2"] {
            assert_no_fault(HEAD, &rise(&format!("where: {place}")), "place-misspelt");
        }
    }
}
