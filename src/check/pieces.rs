//! What a piece weighs can be worked out, and what the percentages stand on has a weight.

use crate::fault::Fault;
use crate::formula::Weighed;
use crate::said;

use super::Case;

/// Flour, liquids and the like without a weight, in what the pieces are made of.
pub(super) fn open_weights(case: Case) -> Vec<Fault> {
    let work = case.work;
    let fault = |line: &Weighed| {
        let title = line.title();
        let message = said!("weight-open", title);
        Fault::caution("weight-open", &line.line.place, message)
            .help(said!("weight-open-help", title))
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
    let message = said!("piece-weight-unknown");
    vec![
        Fault::caution("piece-weight-unknown", &makes.place, message)
            .help(said!("piece-weight-unknown-help")),
    ]
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
