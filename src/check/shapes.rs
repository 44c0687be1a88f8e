//! What a step shapes can be shaped so, and an author's own shaping is there.

use crate::dough::cutting::Form;
use crate::dough::shaping::fits;
use crate::fault::{Fault, nearest};
use crate::model::Shaping;
use crate::said;
use crate::statement::Statement;
use crate::work::piece_in_hand;

use super::Case;

/// Shapings that nobody knows.
pub(super) fn unknown(case: Case) -> Vec<Fault> {
    let techniques = case.book.content.techniques.iter();
    let own: Vec<&str> = techniques
        .flat_map(|technique| &technique.shapes)
        .map(|shape| shape.name.value.as_str())
        .collect();
    let known = Shaping::all();
    let words = || known.iter().map(Shaping::word).chain(own.iter().copied());
    let shapes = case.work.recipe.steps().filter_map(|step| step.shape.as_ref());
    shapes
        .filter_map(|shape| {
            let Shaping::Own(name) = &shape.value else { return None };
            if own.contains(&name.as_str()) {
                return None;
            }
            let message = said!("unknown-shape", name);
            let fault = Fault::error("unknown-shape", &shape.place, message);
            Some(
                fault.meant(name, nearest(name, words()), || said!("unknown-shape-help")),
            )
        })
        .collect()
}

/// Pieces that cannot be shaped as a step says.
pub(super) fn misfits(case: Case) -> Vec<Fault> {
    let steps = case.work.recipe.steps().enumerate();
    steps
        .filter_map(|(at, step)| {
            let shape = step.shape.as_ref()?;
            let piece = piece_in_hand(case.work, at)?;
            if fits(&shape.value, piece.form) {
                return None;
            }
            let (shaping, form) = (shape.value.word(), in_words(piece.form));
            let message = said!("shape-misfit", form, shaping);
            let help = said!("shape-misfit-help");
            Some(Fault::caution("shape-misfit", &shape.place, message).help(help))
        })
        .collect()
}

/// What a form is called.
fn in_words(form: Form) -> Statement {
    match form {
        Form::Triangle => said!("form-triangle"),
        Form::RightTriangle => said!("form-right-triangle"),
        Form::Rectangle => said!("form-rectangle"),
        Form::Square => said!("form-square"),
        Form::Round => said!("form-round"),
        Form::Strip => said!("form-strip"),
        Form::Lump => said!("form-lump"),
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 12 pieces\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n";

    fn body(cut: &str, shape: &str) -> String {
        format!(
            "## Cut\n~~~ticket\nuses: dough\nsheet: 40 x 30 cm\ncut: {cut}\n~~~\n## Shape\n~~~ticket\nhands: 5 min\nshape: {shape}\n~~~\n"
        )
    }

    #[test]
    fn shapes_are_known_and_fit_their_pieces() {
        for shape in ["pinwheel", "envelope", "turnover", "round"] {
            assert_no_fault(HEAD, &body("squares 10 cm", shape), "shape-misfit");
        }
        assert_fault(
            HEAD,
            &body("squares 10 cm", "crescent"),
            "shape-misfit",
            "crescent",
        );
        assert_fault(HEAD, &body("squares 10 cm", "pinwhel"), "unknown-shape", "pinwhel");
    }
}
