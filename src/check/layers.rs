//! The layers as a whole: the usual share of fat, and blocks turned a quarter before they
//! are rolled again.

use crate::dough::{Direction, Rolled, narrows};
use crate::fault::Fault;
use crate::measure::{Exact, Mass, exact};
use crate::model::{Purpose, Step};
use crate::pantry::Kind;
use crate::said;
use crate::statement::Amount;

use super::Case;
use super::lamination::is_puff;

/// Roll-in fat over yeast dough by weight, in percent: croissants 20 to 30, Danish 20 to 40.
/// The range itself is from memory. Within it lie the least of the Austrian food code for such
/// dough, 25 (as encyclopaedias quote it), and up to 50 % of the flour for Danish (Baking
/// Industry Research Trust, New Zealand, information sheet *Danish pastries*), some 28.
const YEAST_DOUGH: [i64; 2] = [20, 40];

/// Roll-in fat over the flour of puff paste, in percent: half, three-quarter and full paste
/// (Baking Industry Research Trust, New Zealand, *Puff pastry: ingredients*).
const PUFF_PASTE: [i64; 2] = [50, 100];

/// Roll-in fat outside the usual range for its family of dough.
pub(super) fn fat_share(case: Case) -> Vec<Fault> {
    let mut steps = case.work.recipe.steps();
    let Some(lock_in) = steps.find_map(|step| step.lock_in.as_ref()) else {
        return Vec::new();
    };
    let (puff, fat) = (is_puff(case), &case.work.layering.batch.fat);
    let ([least, most], of) = if puff {
        (PUFF_PASTE, flour(case))
    } else {
        (YEAST_DOUGH, case.work.layering.batch.dough.clone())
    };
    let Some(share) = fat.over(&of).filter(|_| fat.is_positive()) else {
        return Vec::new();
    };
    let percent: Exact = share * exact(100, 1);
    if percent >= exact(least, 1) && percent <= exact(most, 1) {
        return Vec::new();
    }
    let percent = Amount::Number(percent, 0);
    let message = if puff {
        said!("fat-share-puff", percent)
    } else {
        said!("fat-share-yeast", percent)
    };
    vec![Fault::caution("fat-share-unusual", &lock_in.place, message).help(said!(
        "fat-share-help",
        least,
        most
    ))]
}

/// The flour in the dough, without what is in the roll-in fat.
fn flour(case: Case) -> Mass {
    let lines = case.work.formula.lines.iter();
    let lines =
        lines.filter(|line| line.is(Kind::Flour) && line.purpose == Purpose::Mixed);
    &lines.map(|line| line.mass()).sum::<Mass>() * &case.work.each()
}

/// Blocks that are rolled the same way as before, because the ticket says so.
pub(super) fn seams(case: Case) -> Vec<Fault> {
    let sheets = &case.work.layering.laminated.sheets;
    let same = sheets.iter().filter(|rolled| rolled.way == Direction::SameWay);
    same.filter_map(|rolled| {
        let place = &step(rolled, case)?.roll.as_ref()?.place;
        let message = said!("seams-not-turned");
        Some(
            Fault::caution("seams-not-turned", place, message)
                .help(said!("seams-not-turned-help")),
        )
    })
    .collect()
}

/// Blocks with a side that would have to become much shorter to be rolled to their sheet.
pub(super) fn narrower(case: Case) -> Vec<Fault> {
    let sheets = &case.work.layering.laminated.sheets;
    // Rolled on without a fold, it may be another part of the dough, or trimmed.
    let folded = sheets.iter().filter(|rolled| rolled.way != Direction::Onward);
    folded
        .filter_map(|rolled| {
            let [from, to] = narrows(rolled.block.as_ref()?, &rolled.sheet)?;
            let place = &step(rolled, case)?.sheet.as_ref()?.place;
            let (from, to) = (Amount::Length(from), Amount::Length(to));
            let message = said!("sheet-gets-narrower", from, to);
            Some(
                Fault::caution("sheet-gets-narrower", place, message)
                    .help(said!("sheet-gets-narrower-help")),
            )
        })
        .collect()
}

/// The step that a sheet is rolled in.
fn step<'a>(rolled: &Rolled, case: Case<'a>) -> Option<&'a Step> {
    case.work.recipe.steps().find(|step| step.name == rolled.step)
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

    /// Croissants and Danish 20 to 40 % of the dough: from memory. Puff paste 50 to 100 % of
    /// the flour: Baking Industry Research Trust, *Puff pastry: ingredients*; the Austrian food
    /// code, B 18, 2.3.4.5, wants at least 62.
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

    /// Sizes never decide: from 48 × 25 cm the block is 16 × 25 cm, and its side of 25 cm is
    /// stretched, to whatever length.
    #[test]
    fn only_the_ticket_s_own_word_is_pointed_out() {
        for sheet in ["48 x 25 cm", "40 x 30 cm", "27 x 16 cm"] {
            assert_no_fault(&head(YEAST, 240), &body(sheet), "seams-not-turned");
        }
        let same = body("48 x 25 cm\nroll: same way");
        assert_fault(&head(YEAST, 240), &same, "seams-not-turned", "same way");
        let said = body("48 x 25 cm\nroll: quarter turn");
        assert_no_fault(&head(YEAST, 240), &said, "seams-not-turned");
    }

    /// A block of 16 × 25 cm is stretched along the 25; its 16 may become 13, not 12.
    #[test]
    fn a_sheet_that_gets_narrower_is_pointed_out() {
        assert_no_fault(&head(YEAST, 240), &body("60 x 13 cm"), "sheet-gets-narrower");
        let narrow = body("60 x 12 cm");
        assert_fault(&head(YEAST, 240), &narrow, "sheet-gets-narrower", "60 x 12 cm");
        // The wrong figure first: 25 would have to become 16.
        let crossed = body("16 x 48 cm");
        assert_fault(&head(YEAST, 240), &crossed, "sheet-gets-narrower", "16 x 48 cm");
    }
}
