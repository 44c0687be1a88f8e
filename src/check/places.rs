//! Where a dough stands: a slip of the fingers makes a place of its own, which no plan and no
//! rule about keeping cold knows.

use crate::fault::{Fault, nearest};
use crate::model::Standing;
use crate::said;

use super::Case;

/// The word has this many letters at least: `tin` is no misspelt `rack`.
const SHORTEST: usize = 4;

/// A place that is nearly a known one.
pub(super) fn misspelt(case: Case) -> Vec<Fault> {
    let steps = || case.work.recipe.steps();
    let stands = steps().filter_map(|step| {
        step.at_place.as_ref().map(|place| (&place.value, &place.place))
    });
    let held = steps().filter_map(|step| {
        let hold = step.hold.as_ref()?;
        Some((hold.value.at_place.as_ref()?, &hold.place))
    });
    let proofs = steps().filter(|step| !step.proof.is_empty()).flat_map(|step| {
        let places = step.proof.iter().filter_map(|phase| phase.place.as_ref());
        places.zip(step.wait.iter().map(|wait| &wait.place).cycle())
    });
    let thawed = steps().filter_map(|step| {
        let hold = step.hold.as_ref()?;
        Some((&hold.value.thaw.as_ref()?.place, &hold.place))
    });
    let known = Standing::KNOWN;
    let all = stands.chain(held).chain(proofs).chain(thawed);
    let misspelt = all.filter_map(|(location, place)| {
        let Standing::Own(word, _) = &location.standing else { return None };
        // One that is nearly a known one is meant to be it (common practice, no source).
        let near = nearest(word, known.iter().map(Standing::name));
        let near = near.filter(|near| !word.contains(near))?;
        let long = word.chars().count() >= SHORTEST;
        long.then_some((location.word(), near, place))
    });
    misspelt
        .map(|(name, near, place)| {
            Fault::caution("place-misspelt", place, said!("place-misspelt", name)).meant(
                name,
                Some(near),
                || said!("did-you-mean", near),
            )
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
