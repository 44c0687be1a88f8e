//! What a piece weighs can be worked out, and what the percentages stand on has a weight.

use crate::fault::Fault;
use crate::formula::Weighed;
use crate::model::MOST_SIZES;
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

/// Sizes that the page has no room for.
pub(super) fn sizes(case: Case) -> Vec<Fault> {
    let (_, beyond) = case.work.recipe.offered();
    let Some(first) = beyond.first() else { return Vec::new() };
    let left_out: Vec<String> =
        beyond.iter().map(|size| size.value.to_string()).collect();
    let most = MOST_SIZES;
    let message = said!("too-many-sizes", most, sizes = left_out);
    vec![
        Fault::caution("too-many-sizes", &first.place, message)
            .help(said!("too-many-sizes-help", size = left_out[0])),
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
    fn a_page_offers_six_sizes() {
        let head = |sizes: &str| {
            format!(
                "makes: 12 rolls\nalso for: {sizes}\nformula:\n  dough:\n    - 500 g rye flour\n"
            )
        };
        // The written size and what stands there twice are no sizes more.
        assert_no_fault(&head("6, 8, 12, 18, 18, 24, 30"), MIX, "too-many-sizes");
        let sizes = "6, 8, 18, 24, 30, 36, 48";
        assert_fault(&head(sizes), MIX, "too-many-sizes", sizes);
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
