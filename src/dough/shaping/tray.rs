//! Pieces on a tray: where they stand, the gap that proofing needs, and how many fit.

use num_traits::ToPrimitive;

use crate::measure::{Exact, Length, Size, exact};

/// How much longer each side of a piece becomes while it doubles: ³√2. That pieces double in
/// the proof and the oven is common practice, no source.
const GROWN: (i64, i64) = (126, 100);

/// What is left between grown pieces for hot air, cm. Common practice, no source.
const AIR: i64 = 2;

/// The room that pieces need on a tray.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Room {
    /// The gap between pieces as they are set down, along the tray and across it.
    pub gap: [Length; 2],
    /// How many fit with that gap, all lying one way.
    pub fits: u64,
}

/// The room that pieces need: `piece` is one along and across the tray. Pieces that proof
/// double.
pub fn room(tray: &Size, piece: &Size, proofs: bool) -> Room {
    let grown = if proofs { exact(GROWN.0, GROWN.1) } else { exact(1, 1) };
    let gap = [&piece.length, &piece.width].map(|side| {
        side * &(grown.clone() - exact(1, 1)) + Length::centimetres(exact(AIR, 1))
    });
    // The last piece of a row needs no gap behind it, but half of one on either side of the
    // row: a whole one in all.
    let times = |tray: &Length, side: &Length, gap: &Length| {
        let cells = tray.over(&(side.clone() + gap.clone()));
        cells.and_then(|cells| cells.trunc().to_integer().to_u64()).unwrap_or(0)
    };
    let along = times(&tray.length, &piece.length, &gap[0]);
    let across = times(&tray.width, &piece.width, &gap[1]);
    Room { gap, fits: along.saturating_mul(across) }
}

/// The same for the way that more pieces lie in: as `piece` says, or a quarter turn from it;
/// whether it is turned.
pub fn best_room(tray: &Size, piece: &Size, proofs: bool) -> (Room, bool) {
    let as_said = room(tray, piece, proofs);
    let turned = room(tray, &super::super::turned(piece), proofs);
    if turned.fits > as_said.fits { (turned, true) } else { (as_said, false) }
}

/// How `count` pieces stand on a tray: pieces along it and across it, with as much room
/// round each as can be had. `piece` is one piece along and across the tray.
pub fn rows(tray: &Size, piece: &Size, count: u64) -> [u64; 2] {
    let room = |along: u64| -> Option<(Exact, [u64; 2])> {
        let across = count.div_ceil(along);
        let share = |side: &Length, of: u64, piece: &Length| {
            (side * &Exact::new(1.into(), of.into())).over(piece)
        };
        let least = share(&tray.length, along, &piece.length)?.min(share(
            &tray.width,
            across,
            &piece.width,
        )?);
        Some((least, [along, across]))
    };
    let best = (1..=count.clamp(1, 60)).filter_map(room).max_by(|one, other| {
        // Of equal room, the form with the fewest empty places.
        let spare = |form: &[u64; 2]| form[0] * form[1];
        one.0.cmp(&other.0).then(spare(&other.1).cmp(&spare(&one.1)))
    });
    best.map_or([count.max(1), 1], |(_, form)| form)
}

/// The middle of every piece, cm: rows along the tray, a last row that is not full spread
/// evenly.
pub fn places(tray: &Size, form: [u64; 2], count: u64) -> Vec<[Exact; 2]> {
    let [along, across] = form.map(|pieces| pieces.max(1));
    let middle = |side: &Length, at: u64, of: u64| {
        side.amount() * Exact::new((2 * at + 1).into(), (2 * of).into())
    };
    let place = |index: u64| {
        let (row, at) = (index / along, index % along);
        let in_row = along.min(count - row * along);
        [middle(&tray.length, at, in_row), middle(&tray.width, row, across)]
    };
    (0..count).map(place).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cm(tenths: i64) -> Length {
        Length::centimetres(exact(tenths, 10))
    }

    /// Squares of 10 cm grow to 12.6 cm and want 2 cm more: four and two cells of 14.6 cm on
    /// 60 × 40 cm. By arithmetic.
    #[test]
    fn proofing_needs_its_gap() {
        let (tray, square) = (Size::new(cm(600), cm(400)), Size::new(cm(100), cm(100)));
        let proofing = room(&tray, &square, true);
        assert_eq!(proofing.gap, [cm(46), cm(46)]);
        assert_eq!(proofing.fits, 8);
        // Without yeast they keep their size: five and three cells of 12 cm.
        assert_eq!(room(&tray, &square, false).fits, 15);
        // Pieces of 28 × 9 cm: 37.28 × 13.34 cm, one by two; turned, four by one.
        let (best, turned) = best_room(&tray, &Size::new(cm(280), cm(90)), true);
        assert_eq!((best.fits, turned), (4, true));
    }

    #[test]
    fn pieces_stand_with_the_most_room() {
        let tray = Size::new(cm(600), cm(400));
        let round = Size::new(cm(90), cm(90));
        assert_eq!(rows(&tray, &round, 6), [3, 2]);
        assert_eq!(rows(&tray, &round, 12), [4, 3]);
        let long = Size::new(cm(60), cm(140));
        assert_eq!(rows(&tray, &long, 10), [5, 2]);
    }

    #[test]
    fn every_piece_lies_on_the_tray() {
        let tray = Size::new(cm(600), cm(400));
        for count in 1..40 {
            let form = rows(&tray, &Size::new(cm(90), cm(50)), count);
            let places = places(&tray, form, count);
            assert_eq!(places.len() as u64, count);
            for [x, y] in places {
                assert!(x > exact(0, 1) && x < exact(60, 1), "{count}");
                assert!(y > exact(0, 1) && y < exact(40, 1), "{count}");
            }
        }
    }
}
