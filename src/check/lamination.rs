//! The rolled sheets: the fat block fits, no sheet is thinner or thicker than dough can
//! be, every part of a turn is long enough.

use crate::dough::{
    self, Misfit, RolledFor, Strain, block_fits, fat_layer_fits, turn_fits,
};
use crate::fault::{Fault, Place, Severity};
use crate::measure::{Length, Size, exact};
use crate::model::{LockIn, Step};
use crate::pantry::Role;
use crate::said;
use crate::statement::{Amount, Statement};

use super::Case;

/// No dough survives being rolled thinner than this, mm. Common practice, no source.
const THINNEST: (i64, i64) = (8, 10);

/// The fat block inside the lock-in's sheet.
pub(super) fn fat_block(case: Case) -> Vec<Fault> {
    let Some(locked) = &case.work.layering.laminated.lock_in else { return Vec::new() };
    let Some(place) = sheet_place(&locked.step, case) else { return Vec::new() };
    let short = match block_fits(locked.kind, &locked.sheet, &locked.block) {
        Ok(margin) if margin.seals => return Vec::new(),
        Ok(_) => return vec![no_margin(&place)],
        Err(Misfit { short, pulls }) => (short, pulls),
    };
    let (short, pulls) = short;
    let (block, short) = (Amount::Size(locked.block.clone()), Amount::Gap(short));
    let message = match locked.kind {
        LockIn::Envelope => said!("block-too-big-envelope", block, short),
        LockIn::Letter => said!("block-too-big-letter", block, short),
        LockIn::Book => said!("block-too-big-book", block, short),
    };
    // Where the flaps can be pulled over the last millimetres it is only pointed out.
    let severity = if pulls { Severity::Caution } else { Severity::Error };
    let fault = Fault::new("block-does-not-fit", severity, &place, message);
    vec![fault.help(said!("block-too-big-help"))]
}

/// Fat and dough that cannot roll together, because one lies much thicker than the other when
/// the dough is closed over it.
pub(super) fn fat_beside_dough(case: Case) -> Vec<Fault> {
    let Some(locked) = &case.work.layering.laminated.lock_in else { return Vec::new() };
    let Some(place) = sheet_place(&locked.step, case) else { return Vec::new() };
    let (mut dough, mut fat) = (&locked.thickness, &locked.block_thickness);
    if locked.inverted {
        (dough, fat) = (fat, dough);
    }
    let Some(share) = fat.over(dough).filter(|_| fat.is_positive()) else {
        return Vec::new();
    };
    let usual =
        exact(FAT_SHARE[0].0, FAT_SHARE[0].1)..=exact(FAT_SHARE[1].0, FAT_SHARE[1].1);
    if usual.contains(&share) {
        return Vec::new();
    }
    let [fat, dough] = [fat, dough].map(|it| Amount::Thickness(it.clone()));
    let message = said!("fat-unlike-dough", fat, dough);
    let help = said!("fat-unlike-dough-help");
    vec![Fault::caution("fat-unlike-dough", &place, message).help(help)]
}

/// How thick the fat is at the lock-in beside the dough, least and most, where both still roll
/// as one. Common practice, no source.
const FAT_SHARE: [(i64, i64); 2] = [(1, 3), (2, 1)];

fn no_margin(place: &Place) -> Fault {
    Fault::caution("block-does-not-fit", place, said!("block-no-margin"))
        .help(said!("block-no-margin-help"))
}

/// Sheets thinner or thicker than dough can be.
pub(super) fn thickness(case: Case) -> Vec<Fault> {
    let work = case.work;
    let last_turn = work.recipe.steps().filter(|step| step.turn.is_some()).last();
    let last_turn = last_turn.map_or("", |step| step.name.as_str());
    let mut turning =
        work.layering.laminated.folds.iter().any(|fold| fold.step == last_turn);
    let locks_in = work.recipe.steps().any(|step| step.lock_in.is_some());
    let mut faults = Vec::new();
    for rolled in &work.layering.laminated.sheets {
        // Before its lock-in a dough is not turned yet; with its fat mixed in it is.
        let layered = rolled.fat_layers > 0 || !locks_in;
        let locked = work.layering.laminated.lock_in.as_ref();
        let task = match (turning && layered, is_puff(case)) {
            _ if locked.is_some_and(|it| it.step == rolled.step) => RolledFor::LockingIn,
            (true, _) => RolledFor::Turning,
            (false, true) => RolledFor::PuffCut,
            (false, false) => RolledFor::YeastCut,
        };
        faults.extend(one_sheet(&rolled.step, &rolled.thickness, task, case));
        turning = turning && rolled.step != last_turn;
    }
    faults
}

fn one_sheet(
    step: &str,
    thickness: &Length,
    task: RolledFor,
    case: Case,
) -> Option<Fault> {
    let place = sheet_place(step, case)?;
    if !thickness.is_positive() {
        return Some(
            Fault::caution("sheet-of-nothing", &place, said!("sheet-of-nothing"))
                .help(said!("sheet-of-nothing-help")),
        );
    }
    let lies = Amount::Thickness(thickness.clone());
    if *thickness < Length::centimetres(exact(THINNEST.0, THINNEST.1) / exact(10, 1)) {
        let message = said!("sheet-too-big", lies);
        return Some(
            Fault::error("sheet-too-thin", &place, message).help(resize(thickness, task)),
        );
    }
    match dough::thickness_fits(thickness, task)? {
        Strain::Thin(_) => {
            let message = said!("sheet-may-tear", lies);
            Some(
                Fault::caution("sheet-too-thin", &place, message)
                    .help(resize(thickness, task)),
            )
        }
        Strain::Thick(_) => {
            let message = said!("sheet-too-thick", lies);
            Some(
                Fault::caution("sheet-too-thick", &place, message)
                    .help(resize(thickness, task)),
            )
        }
    }
}

/// What would be right: the area for a usual thickness, as a share of the one written.
fn resize(thickness: &Length, task: RolledFor) -> Statement {
    let usual = match task {
        RolledFor::LockingIn | RolledFor::Turning => exact(8, 10),
        RolledFor::YeastCut => exact(4, 10),
        RolledFor::PuffCut => exact(3, 10),
    };
    let share = Amount::Number(thickness.amount() / &usual * exact(100, 1), 0);
    let usual = Amount::Thickness(Length::centimetres(usual));
    said!("sheet-thickness-help", usual, share)
}

pub(super) fn is_puff(case: Case) -> bool {
    let leavened = |line: &crate::formula::Weighed| line.plays(Role::Yeast);
    let yeasted = case.work.formula.lines.iter().any(|line| match line.included() {
        Some((_, inner)) => inner.lines.iter().any(leavened),
        None => leavened(line),
    });
    !yeasted
}

/// Fat layers too thin to stay whole while turns are still to come.
pub(super) fn fat_layers(case: Case) -> Vec<Fault> {
    let laminated = &case.work.layering.laminated;
    let folded = |step: &str| laminated.folds.iter().any(|fold| fold.step == step);
    let sheets = laminated.sheets.iter().filter(|rolled| folded(&rolled.step));
    sheets
        .filter(|rolled| fat_layer_fits(&rolled.fat_layer).is_some())
        .filter_map(|rolled| {
            let place = sheet_place(&rolled.step, case)?;
            let message = said!(
                "fat-layer-too-thin",
                layers = rolled.fat_layers,
                thickness = Amount::Number(rolled.fat_layer.in_millimetres(), 3)
            );
            Some(
                Fault::caution("fat-layer-too-thin", &place, message)
                    .help(said!("fat-layer-too-thin-help")),
            )
        })
        .collect()
}

/// Turns whose parts are shorter than the folded block is thick.
pub(super) fn parts(case: Case) -> Vec<Fault> {
    let folds = case.work.layering.laminated.folds.iter();
    folds
        .filter_map(|fold| {
            let misfit = turn_fits(fold.turn, &fold.sheet, &fold.thickness).err()?;
            let place = sheet_place(&fold.step, case)?;
            let other = Size::new(fold.sheet.width.clone(), fold.sheet.length.clone());
            let crossed = turn_fits(fold.turn, &other, &fold.thickness).is_ok();
            let message = said!(
                "part-too-short",
                parts = fold.turn.parts,
                short = Amount::Gap(misfit.short)
            );
            Some(Fault::error("part-too-short", &place, message).help(if crossed {
                said!("part-too-short-crossed")
            } else {
                said!("part-too-short-help")
            }))
        })
        .collect()
}

/// Where a step says its sheet, else its heading.
fn sheet_place(step: &str, case: Case) -> Option<Place> {
    let step: &Step = case.work.recipe.steps().find(|other| other.name == step)?;
    Some(step.sheet.as_ref().map_or(&step.title.place, |sheet| &sheet.place).clone())
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 1000 g\nloss: 2 %\nformula:\n  dough:\n    - 500 g bread flour\n    - 280 g water\n    - 8 g instant yeast\n  roll-in:\n    - 250 g butter\n";

    fn body(block: &str, lock: &str, sheet: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n## Block\n~~~ticket\nuses: roll-in\nsheet: {block}\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: {lock}\n~~~\n## Turn\n~~~ticket\nsheet: {sheet}\nturn: book\n~~~\n"
        )
    }

    #[test]
    fn a_sound_lamination_has_no_faults() {
        let body = body("18 x 18 cm", "27 x 27 cm", "48 x 25 cm");
        for name in
            ["sheet-too-thin", "sheet-too-thick", "block-does-not-fit", "part-too-short"]
        {
            assert_no_fault(HEAD, &body, name);
        }
    }

    #[test]
    fn a_sheet_too_big_for_its_dough() {
        let body = body("18 x 18 cm", "27 x 27 cm", "200 x 90 cm");
        assert_fault(HEAD, &body, "sheet-too-thin", "200 x 90 cm");
    }

    /// 250 g of butter are 274 ml: on 9 × 9 cm they lie 34 mm thick, on 18 × 18 cm 8.5 mm,
    /// beside 10 mm of dough. By arithmetic.
    #[test]
    fn fat_and_dough_roll_together() {
        let thick = body("9 x 9 cm", "27 x 27 cm", "48 x 25 cm");
        assert_fault(HEAD, &thick, "fat-unlike-dough", "27 x 27 cm");
        let alike = body("18 x 18 cm", "27 x 27 cm", "48 x 25 cm");
        assert_no_fault(HEAD, &alike, "fat-unlike-dough");
    }

    #[test]
    fn a_block_too_big_for_its_sheet() {
        let body = body("24 x 24 cm", "27 x 27 cm", "48 x 25 cm");
        assert_fault(HEAD, &body, "block-does-not-fit", "27 x 27 cm");
    }
}
