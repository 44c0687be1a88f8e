//! The moments of a folding, in as few rows as they need.

use crate::draw::system::plate::{MARGIN, Plate};

use super::section::{Stage, stage};

/// The space between two moments of a folding.
const GAP: f64 = 30.0;

/// The moments of a folding, as large as lets them stand in one row on a panel of `width`, at
/// least half as large as the sheet. `made` makes them so many times as large as the sheet.
pub(in crate::draw) fn fitted(
    width: f64,
    made: impl Fn(f64) -> Vec<Stage>,
) -> Vec<Stage> {
    let fits = |moments: &[Stage]| {
        let wide: f64 = moments.iter().map(|it| it.span()[1] - it.span()[0] + GAP).sum();
        wide - GAP <= width - 1.5 * MARGIN
    };
    let sizes = [1.0, 0.9, 0.8, 0.7, 0.6];
    let found = sizes.into_iter().map(&made).find(|moments| fits(moments));
    found.unwrap_or_else(|| made(0.5))
}

/// The moments of a folding side by side on a panel, their floors level, and in as many rows
/// as they need; gives where they end.
pub(in crate::draw) fn in_a_row(plate: &mut Plate, moments: &[Stage], top: f64) -> f64 {
    let drawn = moments.iter().map(|moment| {
        let mut plate = Plate::new(0.0);
        plate.height = stage(&mut plate, moment, 0.0);
        (plate, moment.span())
    });
    let mut rows: Vec<Vec<(Plate, [f64; 2])>> = Vec::new();
    let mut left = f64::INFINITY;
    for (moment, [from, to]) in drawn {
        let wide = to - from;
        if left + wide > plate.width - MARGIN / 2.0 {
            rows.push(Vec::new());
            left = MARGIN;
        }
        left += wide + GAP;
        if let Some(row) = rows.last_mut() {
            row.push((moment, [from, to]));
        }
    }
    rows.into_iter().fold(top, |top, row| lay_row(plate, row, top))
}

fn lay_row(plate: &mut Plate, row: Vec<(Plate, [f64; 2])>, top: f64) -> f64 {
    let floor = row.iter().map(|(plate, _)| plate.height).fold(0.0, f64::max);
    let mut left = MARGIN;
    for (moment, [from, to]) in row {
        let corner = [left - from, top + floor - moment.height];
        plate.lay(moment, corner);
        left += to - from + GAP;
    }
    top + floor + 14.0
}
