//! The layers as a whole: the usual share of fat, and blocks turned a quarter before they
//! are rolled again.

use crate::fault::Fault;
use crate::measure::{Exact, Mass, exact, show};
use crate::model::Purpose;
use crate::pantry::Kind;

use super::Case;
use super::lamination::is_puff;

/// Roll-in fat over yeast dough by weight, in percent: croissants 20 to 30, Danish 20 to 40.
/// From memory.
const YEAST_DOUGH: [i64; 2] = [20, 40];

/// Roll-in fat over the flour of puff paste, in percent. From memory.
const PUFF_PASTE: [i64; 2] = [50, 100];

/// Roll-in fat outside the usual range for its family of dough.
pub(super) fn fat_share(case: Case) -> Vec<Fault> {
    let mut steps = case.work.recipe.steps();
    let Some(lock_in) = steps.find_map(|step| step.lock_in.as_ref()) else {
        return Vec::new();
    };
    let (puff, fat) = (is_puff(case), &case.work.layering.batch.fat);
    let ([least, most], of, over) = if puff {
        (PUFF_PASTE, flour(case), "the flour of puff paste")
    } else {
        (YEAST_DOUGH, case.work.layering.batch.dough.clone(), "a yeast dough")
    };
    let Some(share) = fat.over(&of).filter(|_| fat.is_positive()) else {
        return Vec::new();
    };
    let percent: Exact = share * exact(100, 1);
    if percent >= exact(least, 1) && percent <= exact(most, 1) {
        return Vec::new();
    }
    let percent = show::decimal(&percent, 0);
    let message = format!("the roll-in fat is {percent} % of {over}");
    vec![
        Fault::caution("fat-share-unusual", &lock_in.place, message)
            .help(format!("Usual is {least} to {most} %.")),
    ]
}

/// The flour in the dough, without what is in the roll-in fat.
fn flour(case: Case) -> Mass {
    let lines = case.work.formula.lines.iter();
    let lines =
        lines.filter(|line| line.is(Kind::Flour) && line.purpose == Purpose::Mixed);
    &lines.map(|line| line.mass()).sum::<Mass>() * &case.work.each()
}

/// Sheets that are rolled the same way as the block before them was folded.
pub(super) fn seams(case: Case) -> Vec<Fault> {
    let work = case.work;
    let same = work.layering.laminated.sheets.iter().filter(|s| !s.quarter_turned);
    same.filter_map(|rolled| {
        let step = work.recipe.steps().find(|step| step.name == rolled.step)?;
        let place = &step.sheet.as_ref()?.place;
        let message = "to come to this size the block is rolled the same way as before";
        Some(Fault::caution("seams-not-turned", place, message).help(
            "Turn it a quarter, so that its open side becomes the long side, and give the sheet sides that this leads to.",
        ))
    })
    .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    fn head(yeast: &str, butter: u32) -> String {
        format!(
            "makes: 900 g\nformula:\n  dough:\n    - 500 g bread flour\n    - 280 g water\n{yeast}  roll-in:\n    - {butter} g butter\n"
        )
    }

    fn body(second: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\n~~~\n## Block\n~~~ticket\nuses: roll-in\nsheet: 18 x 18 cm\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 27 x 27 cm\n~~~\n## One\n~~~ticket\nsheet: 48 x 25 cm\nturn: letter\n~~~\n## Two\n~~~ticket\nsheet: {second}\nturn: letter\n~~~\n"
        )
    }

    const YEAST: &str = "    - 8 g instant yeast\n";

    /// Croissants and Danish 20 to 40 % of the dough, puff paste 50 to 100 % of the flour:
    /// from memory.
    #[test]
    fn fat_has_its_usual_share() {
        let body = body("48 x 25 cm");
        for (yeast, butter, usual) in [
            (YEAST, 240, true),
            (YEAST, 120, false),
            (YEAST, 400, false),
            ("", 400, true),
            ("", 240, false),
            ("", 520, false),
        ] {
            let head = head(yeast, butter);
            if usual {
                assert_no_fault(&head, &body, "fat-share-unusual");
            } else {
                assert_fault(&head, &body, "fat-share-unusual", "envelope");
            }
        }
    }

    /// A block of 16 × 25 cm cannot become 27 × 16 cm across its folds without being pushed
    /// together: by arithmetic.
    #[test]
    fn blocks_are_turned_a_quarter() {
        assert_no_fault(&head(YEAST, 240), &body("48 x 25 cm"), "seams-not-turned");
        // From 45 × 30 the block is 15 × 30; 30 × 20 would need it rolled along the folds.
        let body = body("48 x 25 cm").replace(
            "48 x 25 cm\nturn: letter\n~~~\n## Two",
            "66 x 20 cm\nturn: letter\n~~~\n## Two",
        );
        let body = body.replacen("sheet: 48 x 25 cm", "sheet: 44 x 21 cm", 1);
        assert_fault(&head(YEAST, 240), &body, "seams-not-turned", "44 x 21 cm");
    }
}
