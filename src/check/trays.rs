//! No more pieces stand on a tray than fit with the gap that they need.

use crate::dough::long_first;
use crate::dough::shaping::{best_lie, lie_in_rows};
use crate::fault::{Fault, Placed};
use crate::model::Step;
use crate::said;
use crate::statement::Amount;
use crate::work::{is_leavened, kit, set_down};

use super::Case;

/// Trays that are too full: a step that bakes says how many pieces, and the tray is known.
pub(super) fn full(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let baking = steps.iter().enumerate().filter(|(_, step)| step.bake.is_some());
    baking
        .filter_map(|(at, step)| {
            let per_tray = step.per_tray.as_ref()?;
            crowded(case, at, step, per_tray)
        })
        .collect()
}

fn crowded(case: Case, at: usize, step: &Step, per_tray: &Placed<u64>) -> Option<Fault> {
    let tray = long_first(kit(case.book).tray.as_ref()?);
    let leavened = is_leavened(case.work);
    let trays = case.work.lots.get(at)?.iter().filter_map(|lot| {
        let piece = set_down(case.work, lot.part, at, case.book)?.footprint()?;
        let lie = match step.tray_rows.as_slice() {
            [] => best_lie(&tray, &piece, leavened),
            rows => lie_in_rows(&tray, &piece, (rows, leavened)),
        };
        let on_one = per_tray.value.min(lot.pieces);
        (lie.fits < on_one).then_some((lie.fits, on_one, piece.size))
    });
    let (fits, on_one, piece) = trays.min_by_key(|(fits, ..)| *fits)?;
    let (piece, tray) = (Amount::Size(piece), Amount::Size(tray));
    let message = said!("tray-too-full", on_one, piece, tray, fits);
    let most = fits.max(1);
    let help = said!("tray-too-full-help", most);
    let place = step.per_tray.as_ref().map_or(&step.place, |it| &it.place);
    Some(Fault::caution("tray-too-full", place, message).help(help))
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 12 pieces\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n    - 7 g instant yeast\n";

    fn body(per_tray: u64) -> String {
        format!(
            "## Cut\n~~~ticket\nuses: dough\nsheet: 40 x 30 cm\ncut: squares 10 cm\n~~~\n## Bake\n~~~ticket\nbake: 200 °C, 20 min\nper tray: {per_tray}\n~~~\n"
        )
    }

    /// Eight squares of 10 cm fit on 60 × 40 cm: as in `dough::shaping::tray`.
    #[test]
    fn a_tray_holds_so_many() {
        assert_no_fault(HEAD, &body(8), "tray-too-full");
        assert_fault(HEAD, &body(9), "tray-too-full", "9");
        // Three rows across 40 cm leave no gap of 4.6 cm between squares of 10 cm.
        let rows = body(8).replace("per tray: 8", "per tray: 8, rows of 3, 2, 3");
        assert_fault(HEAD, &rows, "tray-too-full", "8, rows of 3, 2, 3");
        let rows = rows.replace("rows of 3, 2, 3", "2 rows of 4");
        assert_no_fault(HEAD, &rows, "tray-too-full");
    }
}
