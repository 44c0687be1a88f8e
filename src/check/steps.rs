//! Steps follow one another, videos and preferments exist, and something is made.

use crate::fault::{Fault, Placed, nearest};
use crate::said;

use super::Case;

/// Steps that wait for each other in a ring.
pub(super) fn rings(case: Case) -> Vec<Fault> {
    let Err(names) = &case.work.timing else { return Vec::new() };
    let own = format!("{}/", case.work.recipe.name);
    let names: Vec<&str> =
        names.iter().map(|name| name.trim_start_matches(&own)).collect();
    let step = case.work.recipe.steps().find(|step| names.contains(&step.name.as_str()));
    let place = step
        .and_then(|step| step.after.as_ref()?.first())
        .map_or(&case.work.recipe.title.place, |after| &after.place);
    let steps = names.join(" → ");
    let message = said!("step-ring", steps);
    vec![Fault::error("step-ring", place, message).help(said!("step-ring-help"))]
}

/// Videos that tickets name and the head does not.
pub(super) fn videos(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    if recipe.unread.videos {
        return Vec::new();
    }
    let known = || recipe.videos.iter().map(|video| video.name.as_str());
    let named = recipe.steps().filter_map(|step| step.watch.as_ref());
    named
        .filter(|name| known().all(|known| known != name.value))
        .map(|name| {
            let near = nearest(&name.value, known());
            let message = said!("unknown-video", name = name.value);
            Fault::error("unknown-video", &name.place, message).meant(
                &name.value,
                near,
                || said!("unknown-video-help", name = name.value),
            )
        })
        .collect()
}

/// A recipe says what it makes and has a formula and steps.
pub(super) fn makes(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let place = &recipe.title.place;
    let rules = [
        (
            recipe.makes.is_none() && !recipe.unread.makes,
            "missing-key",
            said!("makes-missing"),
            said!("makes-missing-help"),
        ),
        (
            recipe.has_no_formula(),
            "no-formula",
            said!("no-formula"),
            said!("no-formula-help"),
        ),
        (
            recipe.steps().next().is_none() && !recipe.unread.method,
            "no-steps",
            said!("no-steps"),
            said!("no-steps-help"),
        ),
    ];
    rules
        .into_iter()
        .filter(|(broken, ..)| *broken)
        .map(|(_, name, message, help)| Fault::error(name, place, message).help(help))
        .collect()
}

/// A preferment is a section of the formula, and what it is made from a preferment above it.
pub(super) fn preferment(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let sections: Vec<&str> =
        recipe.formula.iter().map(|section| section.name.value.as_str()).collect();
    if recipe.has_no_formula() {
        return Vec::new();
    }
    let mut faults = Vec::new();
    for (at, preferment) in recipe.preferments.iter().enumerate() {
        faults.extend(unknown_section(&preferment.section, &sections));
        let Some(from) = &preferment.from else { continue };
        let above = recipe.preferments[..at].iter();
        if above.clone().all(|it| it.section.value != from.value) {
            faults.push(unknown_section(from, &sections).unwrap_or_else(|| {
                let message = said!("preferment-not-above", name = from.value);
                let (first, second) = (&from.value, &preferment.section.value);
                Fault::error("unknown-section", &from.place, message).help(said!(
                    "preferment-not-above-help",
                    first,
                    second
                ))
            }));
        }
    }
    faults
}

fn unknown_section(name: &Placed<String>, sections: &[&str]) -> Option<Fault> {
    if sections.contains(&name.value.as_str()) {
        return None;
    }
    let message = said!("unknown-section", name = name.value);
    let fault = Fault::error("unknown-section", &name.place, message);
    Some(fault.one_of(&name.value, sections, said!("names-sections")))
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, faults};

    const HEAD: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n";

    #[test]
    fn rings_and_unknown_names() {
        let body = "## A\n~~~ticket\nuses: dough\nafter: b\n~~~\n## B\n~~~ticket\nafter: a\n~~~\n";
        assert_fault(HEAD, body, "step-ring", "b");
        let body = "## A\n~~~ticket\nuses: dough\nafter: mixx\nwatch: roll\n~~~\n";
        assert_fault(HEAD, body, "unknown-step", "mixx");
        assert_fault(HEAD, body, "unknown-video", "roll");
    }

    #[test]
    fn something_is_made_somehow() {
        let names: Vec<_> =
            faults("", "Prose.\n").into_iter().map(|(name, _)| name).collect();
        assert_eq!(names, ["missing-key", "no-formula", "no-steps"]);
        let head = format!("{HEAD}preferment: spong\n");
        assert_fault(
            &head,
            "## A\n~~~ticket\nuses: dough\n~~~\n",
            "unknown-section",
            "spong",
        );
    }
}
