//! Pieces on a tray: where they stand, the gap that proofing needs, and how many fit.

use num_traits::ToPrimitive;

use crate::measure::{Exact, Length, Size, exact};

/// How much longer each side of a piece becomes while it doubles: ³√2. That pieces double in
/// the proof and the oven is common practice, no source.
const GROWN: (i64, i64) = (126, 100);

/// What is left between grown pieces for hot air, cm. Common practice, no source.
const AIR: i64 = 2;

/// The room that a piece takes on a tray as it is set down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Footprint {
    /// The box that holds it, along the tray and across it.
    pub size: Size,
    /// Whether it is half of that box, cut from corner to corner: then two lie in pairs.
    pub is_half: bool,
}

/// How pieces lie on a tray.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lie {
    /// The gap between pieces as they are set down, along the tray and across it.
    pub gap: [Length; 2],
    /// How many fit with that gap.
    pub fits: u64,
    /// Whether they lie a quarter turn from how they are given.
    pub turned: bool,
    /// The room that two take that lie long side to long side, with the gap between them;
    /// `None` where each lies by itself.
    pub pair: Option<Size>,
}

/// The way that most pieces fit in: as given or a quarter turn from it, each by itself or, for
/// halves, in pairs. Pieces that proof double.
pub fn best_lie(tray: &Size, piece: &Footprint, proofs: bool) -> Lie {
    let turned = super::super::turned(&piece.size);
    let ways = [(&piece.size, false), (&turned, true)];
    let single =
        ways.map(|(size, turned)| Lie { turned, ..by_itself(tray, size, proofs) });
    let halves = ways.iter().filter(|_| piece.is_half);
    let pairs = halves
        .map(|(size, turned)| Lie { turned: *turned, ..in_pairs(tray, size, proofs) });
    let all = single.into_iter().chain(pairs);
    let best = all.reduce(|best, next| if next.fits > best.fits { next } else { best });
    best.unwrap_or_else(|| by_itself(tray, &piece.size, proofs))
}

fn gaps(piece: &Size, proofs: bool) -> [Length; 2] {
    let grown = if proofs { exact(GROWN.0, GROWN.1) } else { exact(1, 1) };
    let more = grown - exact(1, 1);
    let gap = |side: &Length| side * &more + Length::centimetres(exact(AIR, 1));
    [gap(&piece.length), gap(&piece.width)]
}

/// The cells of a size that lie on the tray. The last one of a row needs no gap behind it, but
/// half of one on either side of the row: a whole one in all.
fn cells(tray: &Size, piece: &Size, gap: &[Length; 2]) -> u64 {
    let times = |tray: &Length, side: &Length, gap: &Length| {
        let cells = tray.over(&(side.clone() + gap.clone()));
        cells.and_then(|cells| cells.trunc().to_integer().to_u64()).unwrap_or(0)
    };
    let along = times(&tray.length, &piece.length, &gap[0]);
    along.saturating_mul(times(&tray.width, &piece.width, &gap[1]))
}

fn by_itself(tray: &Size, piece: &Size, proofs: bool) -> Lie {
    let gap = gaps(piece, proofs);
    Lie { fits: cells(tray, piece, &gap), gap, turned: false, pair: None }
}

/// Two halves of a box a × b, one drawn off along a by s: their long sides lie s·b ÷ √(a² + b²)
/// apart. The root is never more than a + b, so that s = gap × (a + b) ÷ b is enough.
fn in_pairs(tray: &Size, piece: &Size, proofs: bool) -> Lie {
    let gap = gaps(piece, proofs);
    let most = gap[0].clone().max(gap[1].clone());
    let sides = piece.length.clone() + piece.width.clone();
    let off = sides.over(&piece.width).map_or(most.clone(), |times| &most * &times);
    let pair = Size::new(piece.length.clone() + off, piece.width.clone());
    let fits = 2 * cells(tray, &pair, &gap);
    Lie { gap, fits, turned: false, pair: Some(pair) }
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
        let whole = |size: &Size| Footprint { size: size.clone(), is_half: false };
        let proofing = best_lie(&tray, &whole(&square), true);
        assert_eq!(proofing.gap, [cm(46), cm(46)]);
        assert_eq!(proofing.fits, 8);
        // Without yeast they keep their size: five and three cells of 12 cm.
        assert_eq!(best_lie(&tray, &whole(&square), false).fits, 15);
        // Pieces of 28 × 9 cm: 37.28 × 13.34 cm, one by two; turned, four by one.
        let best = best_lie(&tray, &whole(&Size::new(cm(280), cm(90))), true);
        assert_eq!((best.fits, best.turned), (4, true));
    }

    /// Halves of squares of 12 cm, 2 cm apart: a pair is drawn off by at most 4 cm, so that
    /// cells of 18 × 14 cm hold two: three by two of them. By arithmetic.
    #[test]
    fn halves_lie_in_pairs() {
        let tray = Size::new(cm(600), cm(400));
        let half = Footprint { size: Size::new(cm(120), cm(120)), is_half: true };
        let best = best_lie(&tray, &half, false);
        assert_eq!((best.fits, best.pair), (12, Some(Size::new(cm(160), cm(120)))));
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
