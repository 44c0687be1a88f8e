//! The wide form of a drawing: its panels side by side, for paper.

use super::plate::{MARGIN, Plate};
use super::section::{Stage, stage};

/// The width of a wide drawing. On a text area 170 mm wide its labels are 7.5 pt.
pub(super) const WIDE: f64 = 1280.0;

/// The widths of its panels: the sheet with its sizes, the folding, what it comes to.
const WIDTHS: [f64; 3] = [376.0, 462.0, 442.0];

/// The space between two moments of a folding.
const GAP: f64 = 30.0;

/// Three empty panels.
pub(super) fn panels() -> [Plate; 3] {
    WIDTHS.map(Plate::new)
}

/// The moments of a folding side by side on a panel, their floors level; gives where they
/// end.
pub(super) fn in_a_row(plate: &mut Plate, moments: &[Stage], top: f64) -> f64 {
    let drawn = moments.iter().map(|moment| {
        let mut plate = Plate::new(0.0);
        plate.height = stage(&mut plate, moment, 0.0);
        (plate, moment.span())
    });
    let drawn: Vec<(Plate, [f64; 2])> = drawn.collect();
    let floor = drawn.iter().map(|(plate, _)| plate.height).fold(0.0, f64::max);
    let mut left = MARGIN;
    for (moment, [from, to]) in drawn {
        let corner = [left - from, top + floor - moment.height];
        plate.lay(moment, corner);
        left += to - from + GAP;
    }
    top + floor + 14.0
}

/// The panels on one plate, their upper edges level.
pub(super) fn side_by_side(panels: [Plate; 3]) -> Plate {
    let mut plate = Plate::new(WIDE);
    let mut left = 0.0;
    for panel in panels {
        let width = panel.width;
        plate.height = plate.height.max(panel.height);
        plate.lay(panel, [left, 0.0]);
        left += width;
    }
    plate
}
