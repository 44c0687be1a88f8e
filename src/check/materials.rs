//! Every ingredient is used by a step, and every step uses what there is.

use crate::fault::{Fault, Place, instead, nearest};
use crate::formula::{Weighed, brings_allergens, lines_of};
use crate::measure::{Exact, exact};
use crate::said;
use crate::statement::Statement;

use super::Case;

/// Lines that no step uses.
pub(super) fn unused(case: Case) -> Vec<Fault> {
    let work = case.work;
    let used = |at: usize| -> Exact {
        let shares = work.flow.uses.iter().flatten().filter(|(line, _)| *line == at);
        shares.map(|(_, share)| share).sum()
    };
    let Some(meant) = meant(case) else { return Vec::new() };
    let lines = work.formula.lines.iter().enumerate();
    let idle = lines.filter(|(at, line)| {
        let meant = meant.contains(&line.section) || meant.contains(&line.title());
        used(*at) == exact(0, 1) && !meant
    });
    let idle: Vec<&Weighed> = idle.map(|(_, line)| line).collect();
    let mut faults = Vec::new();
    for section in &work.recipe.formula {
        let name = section.name.value.as_str();
        let own: Vec<&Weighed> =
            idle.iter().filter(|it| it.section == name).copied().collect();
        let none = own.len() > 1 && own.len() == section.lines.len();
        if none && section.name.place.start() < section.name.place.end() {
            let message = said!("unused-section", name);
            let place = &section.name.place;
            let help = use_it(name, &own);
            faults.push(Fault::error("unused-ingredient", place, message).help(help));
            continue;
        }
        faults.extend(own.iter().map(|line| {
            let message = said!("unused-ingredient", name = line.title());
            let name = use_name(line, &idle, case);
            let help = use_it(name, &[line]);
            Fault::error("unused-ingredient", &line.line.place, message).help(help)
        }));
    }
    faults
}

/// The name by which a step uses a line and as little as can be that is used elsewhere: its
/// own, or its section's.
fn use_name<'a>(line: &'a Weighed, idle: &[&Weighed], case: Case) -> &'a str {
    let lines = &case.work.formula.lines;
    let alone = |name: &str| {
        let meant = lines_of(name, &case.work.formula);
        meant
            .iter()
            .all(|at| idle.iter().any(|it| it.line.place == lines[*at].line.place))
    };
    let section = line.section;
    if alone(section) || !alone(line.title()) { section } else { line.title() }
}

/// Says how lines are used. What brings an allergen, or may, is never said to be taken out:
/// it may lie in the bowl although no step names it.
fn use_it(name: &str, lines: &[&Weighed]) -> Statement {
    if brings_allergens(lines) {
        return said!("unused-help-allergen", name);
    }
    said!("unused-help", name)
}

/// What misspelt names in `uses` were meant to name: that is used, whatever they say. `None`
/// where one could mean anything.
fn meant(case: Case<'_>) -> Option<Vec<&str>> {
    let uses = case.work.recipe.steps().flat_map(|step| &step.uses);
    uses.filter(|used| !is_known(&used.value.name, case))
        .map(|used| nearest(&used.value.name, names(case)))
        .collect()
}

/// The sections and ingredients here.
pub(super) fn names(case: Case<'_>) -> Vec<&str> {
    let mut known: Vec<&str> = Vec::new();
    for line in &case.work.formula.lines {
        for word in [line.section, line.title()] {
            if !known.contains(&word) {
                known.push(word);
            }
        }
    }
    known
}

/// Names in `uses` that are neither a section nor an ingredient here.
pub(super) fn unknown_uses(case: Case) -> Vec<Fault> {
    let work = case.work;
    let uses = work.recipe.steps().flat_map(|step| &step.uses);
    uses.filter(|used| !is_known(&used.value.name, case))
        .map(|used| {
            let name = &used.value.name;
            let message = said!("unknown-use", name);
            let fault = Fault::error("unknown-use", &used.place, message);
            fault.one_of(name, &names(case), said!("names-in-recipe"))
        })
        .collect()
}

/// Whether a name means a section or ingredient, be it one whose line is itself at fault.
pub(super) fn is_known(name: &str, case: Case) -> bool {
    let recipe = case.work.recipe;
    let weighed = |place: &Place| {
        case.work.formula.lines.iter().any(|line| line.line.place == *place)
    };
    let written = recipe.formula.iter().any(|section| {
        section.name.value == name
            || section.lines.iter().any(|line| {
                let title = line.ingredient.value.title();
                title.ends_with(name) || !weighed(&line.place) && is_part_of(name, title)
            })
    });
    let unread = recipe.unread.lines.iter().any(|line| is_part_of(name, line));
    written
        || unread
        || recipe.has_no_formula()
        || !lines_of(name, &case.work.formula).is_empty()
}

/// Whether a line that is itself at fault can have meant this name: an unread one without
/// words any, another one that ends with it, be it with a slip.
fn is_part_of(name: &str, line: &str) -> bool {
    let name = name.to_lowercase();
    let line = line.to_lowercase();
    if line.is_empty() || line.contains(&name) {
        return true;
    }
    let words: Vec<&str> = line.split([' ', ',', '(', ')', '[', ']']).collect();
    let count = name.split(' ').count();
    words.windows(count).any(|some| nearest(&some.join(" "), [name.as_str()]).is_some())
}

/// The nearest section or ingredient, or all of them.
pub(super) fn suggest(name: &str, case: Case) -> Statement {
    instead(name, &names(case), said!("names-in-recipe"))
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

    /// The help of each fault, where a step uses only the flour of the dough.
    fn helps(lines: &str) -> Vec<String> {
        let head = format!("{HEAD}{lines}");
        let body = "## Mix\n~~~ticket\nuses: bread flour, water\nhands: 5 min\n~~~\n";
        let found = super::super::testing::helps(&head, body);
        found.into_iter().filter(|help| help.starts_with("Add `uses")).collect()
    }

    #[test]
    fn what_may_be_in_the_bowl_is_not_taken_out() {
        let removes = |lines: &str| helps(lines)[0].contains("take the line out");
        assert!(removes("    - 10 g fine salt\n"));
        for lines in [
            "    - 100 g butter\n",
            "    - 10 g baking powder\n",
            "    - 100 g [base](base.md)\n",
            "    - 10 g fine salt, with chopped walnuts\n",
            "    - 10 g honey or butter\n",
            "  wash:\n    - 1 egg\n    - 5 g fine salt\n",
        ] {
            assert!(!removes(lines), "{lines}");
        }
    }

    #[test]
    fn it_is_used_by_the_name_that_means_it_alone() {
        let named = |lines: &str, name: &str| {
            assert!(
                helps(lines)[0].starts_with(&format!("Add `uses: {name}`")),
                "{name}"
            );
        };
        named("    - 10 g fine salt\n", "fine salt");
        named("  wash:\n    - 1 egg\n", "wash");
        named("  wash:\n    - 10 g water\n    - 1 egg\n", "egg");
    }

    #[test]
    fn what_is_not_there_is_named() {
        let body = "## Mix\n~~~ticket\nuses: dough, buter\nhands: 5 min\n~~~\n";
        assert_fault(HEAD, body, "unknown-use", "buter");
    }
}
