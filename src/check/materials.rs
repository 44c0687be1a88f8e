//! Every ingredient is used by a step, and every step uses what there is.

use crate::fault::{Fault, nearest};
use crate::formula::lines_of;
use crate::measure::{Exact, exact};

use super::Case;

/// Lines that no step uses.
pub(super) fn unused(case: Case) -> Vec<Fault> {
    let work = case.work;
    let used = |at: usize| -> Exact {
        let shares = work.flow.uses.iter().flatten().filter(|(line, _)| *line == at);
        shares.map(|(_, share)| share).sum()
    };
    let lines = work.formula.lines.iter().enumerate();
    lines
        .filter(|(at, _)| used(*at) == exact(0, 1))
        .map(|(_, line)| {
            let message = format!("no step uses this {}", line.title());
            Fault::error("unused-ingredient", &line.line.place, message).help(format!(
                "Add `uses: {}` to the ticket of the step where it goes in, or take the line out.",
                line.section
            ))
        })
        .collect()
}

/// Names in `uses` that are neither a section nor an ingredient here.
pub(super) fn unknown_uses(case: Case) -> Vec<Fault> {
    let work = case.work;
    let uses = work.recipe.steps().flat_map(|step| &step.uses);
    uses.filter(|used| !is_known(&used.value.name, case))
        .map(|used| {
            let name = &used.value.name;
            let message = format!("`{name}` is no section or ingredient of this recipe");
            Fault::error("unknown-use", &used.place, message).help(suggest(name, case))
        })
        .collect()
}

/// Whether a name means a section or ingredient, be it one whose line is itself at fault.
pub(super) fn is_known(name: &str, case: Case) -> bool {
    let written = case.work.recipe.formula.iter().any(|section| {
        let mut titles = section.lines.iter().map(|line| line.ingredient.value.title());
        section.name.value == name || titles.any(|title| title.ends_with(name))
    });
    written || !lines_of(name, &case.work.formula).is_empty()
}

/// The nearest section or ingredient, or all of them.
pub(super) fn suggest(name: &str, case: Case) -> String {
    let mut known: Vec<&str> = Vec::new();
    for line in &case.work.formula.lines {
        for word in [line.section, line.title()] {
            if !known.contains(&word) {
                known.push(word);
            }
        }
    }
    match nearest(name, known.iter().copied()) {
        Some(near) => format!("Did you mean `{near}`?"),
        None => format!("This recipe has: {}.", known.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, faults};

    const HEAD: &str =
        "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n";

    #[test]
    fn what_no_step_uses_is_named() {
        let body = "## Mix\n~~~ticket\nuses: bread flour\nhands: 5 min\n~~~\n";
        assert_fault(HEAD, body, "unused-ingredient", "300 g water");
        let body = "## Mix\n~~~ticket\nuses: bread flour, half of the water\nhands: 5 min\n~~~\n";
        assert!(faults(HEAD, body).is_empty());
    }

    #[test]
    fn what_is_not_there_is_named() {
        let body = "## Mix\n~~~ticket\nuses: dough, buter\nhands: 5 min\n~~~\n";
        assert_fault(HEAD, body, "unknown-use", "buter");
    }
}
