//! What a piece weighs can be worked out, and what the percentages stand on has a weight.

use crate::fault::Fault;
use crate::formula::Weighed;

use super::Case;

/// Flour, liquids and the like without a weight, in what the pieces are made of.
pub(super) fn open_weights(case: Case) -> Vec<Fault> {
    let work = case.work;
    let fault = |line: &Weighed| {
        let title = line.title();
        let message = format!("this {title} is mixed in and has no weight");
        Fault::caution("weight-open", &line.line.place, message).help(format!(
            "Write about how much it takes, `300 g {title}`, or say that it is put on: `{title}, for dusting`. Till then percentages, hydration and the weight of a piece that depend on it are left out."
        ))
    };
    work.body.open(&work.formula).into_iter().map(fault).collect()
}

/// Pieces whose weight nothing tells.
pub(super) fn piece_weights(case: Case) -> Vec<Fault> {
    let work = case.work;
    let Some(makes) = &work.recipe.makes else { return Vec::new() };
    let in_pieces = makes.value.count().is_some();
    // The parts of a divided dough have pieces of their own weights, and say them.
    let known = work.piece.is_some() || work.flow.parts.are_several();
    if !in_pieces || known || !work.body.open(&work.formula).is_empty() {
        return Vec::new();
    }
    let message = "what one of these weighs cannot be worked out, so no sheet says it";
    vec![Fault::caution("piece-weight-unknown", &makes.place, message).help(
        "The steps up to where the pieces are made must say what goes in: `uses: dough`.",
    )]
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const MIX: &str = "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";

    #[test]
    fn what_is_mixed_has_a_weight() {
        let head = |line: &str| {
            format!(
                "makes: 2 loaves\nformula:\n  dough:\n    - 500 g rye flour\n    - {line}\n"
            )
        };
        for line in ["bread flour, as needed", "water, as needed"] {
            assert_fault(&head(line), MIX, "weight-open", line);
        }
        for line in ["bread flour, for dusting", "fine salt, to taste"] {
            assert_no_fault(&head(line), MIX, "weight-open");
        }
    }

    #[test]
    fn pieces_have_a_weight() {
        let head = |section: &str| {
            format!("makes: 2 loaves\nformula:\n  {section}:\n    - 500 g bread flour\n")
        };
        let named = |section: &str| MIX.replace("dough", section);
        assert_no_fault(&head("dough"), &named("dough"), "piece-weight-unknown");
        assert_fault(&head("bench"), &named("bench"), "piece-weight-unknown", "2 loaves");
    }
}
