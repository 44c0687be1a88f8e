//! The cutting plan can be made and gives the promised pieces.

use crate::dough::cutting::{MOST_PIECES, Refusal};
use crate::fault::{Fault, Place, Severity};
use crate::model::Makes;
use crate::said;
use crate::statement::Statement;

use super::Case;

/// Cuts that cannot be made.
pub(super) fn layouts(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let refused = case.work.cuts.iter().filter_map(|(at, cut)| {
        let plan = steps[*at].cut.as_ref()?;
        let refusal = cut.as_ref().err()?;
        Some((plan, *refusal))
    });
    refused
        .map(|(plan, refusal)| {
            let (message, help) = match refusal {
                Refusal::NoSize => (said!("cut-no-sheet"), said!("cut-no-sheet-help")),
                Refusal::TooLarge => {
                    (said!("cut-too-large"), said!("cut-too-large-help"))
                }
                Refusal::TooMany => (
                    said!("cut-too-many", most = MOST_PIECES),
                    said!("cut-too-many-help"),
                ),
            };
            Fault::error("cut-does-not-fit", &plan.place, message).help(help)
        })
        .collect()
}

/// The last cut gives as many pieces as the recipe says it makes.
pub(super) fn counts(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let Some(makes) = &recipe.makes else { return Vec::new() };
    let Makes::Pieces { count, word, .. } = &makes.value else { return Vec::new() };
    if case.work.flow.parts.are_several() {
        return in_parts(case, *count, word).into_iter().collect();
    }
    let Some((at, Ok(cut))) = case.work.cuts.last() else { return Vec::new() };
    let made = cut.layout.pieces.len() as u64;
    // Two half triangles make one piece, and scrap may be rolled once more.
    let again = cut.reroll.as_ref().map_or(0, |again| again.pieces.len() as u64);
    let most = made + again + cut.layout.halves.len() as u64 / 2;
    let steps = case.work.steps();
    let place = steps[*at].cut.as_ref().map_or(&makes.place, |plan| &plan.place);
    if (made..=most).contains(count) {
        return Vec::new();
    }
    let message = said!("cut-count", made, count, word);
    vec![disagree(made, *count, place, message)]
}

/// More than promised is scrap; fewer is a promise that cannot be kept.
fn disagree(made: u64, promised: u64, place: &Place, message: Statement) -> Fault {
    let severity = if made > promised { Severity::Caution } else { Severity::Error };
    let fault = Fault::new("cut-count", severity, place, message);
    fault.help(said!("cut-count-help"))
}

/// The parts of a divided dough give together as many pieces as the recipe says it makes.
fn in_parts(case: Case, count: u64, word: &str) -> Option<Fault> {
    let made = case.work.in_parts.filter(|made| *made != count)?;
    let place = &case.work.recipe.makes.as_ref()?.place;
    let message = said!("cut-count-parts", made, count, word);
    Some(disagree(made, count, place, message))
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    fn head(makes: &str) -> String {
        format!(
            "makes: {makes}\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n"
        )
    }

    fn body(cut: &str) -> String {
        format!("## Cut\n~~~ticket\nuses: dough\nsheet: 40 x 30 cm\ncut: {cut}\n~~~\n")
    }

    #[test]
    fn pieces_fit_and_their_number_agrees() {
        assert_no_fault(&head("12 squares"), &body("squares 10 cm"), "cut-count");
        assert_fault(
            &head("14 squares"),
            &body("squares 10 cm"),
            "cut-count",
            "squares 10 cm",
        );
        assert_fault(
            &head("1 square"),
            &body("squares 50 cm"),
            "cut-does-not-fit",
            "squares 50 cm",
        );
    }
}
