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

/// The cells of a size that lie on the tray, along it and across it. The last one of a row needs
/// no gap behind it, but half of one on either side of the row: a whole one in all.
fn cells(tray: &Size, piece: &Size, gap: &[Length; 2]) -> [u64; 2] {
    let times = |tray: &Length, side: &Length, gap: &Length| {
        let cells = tray.over(&(side.clone() + gap.clone()));
        cells.and_then(|cells| cells.trunc().to_integer().to_u64()).unwrap_or(0)
    };
    let along = times(&tray.length, &piece.length, &gap[0]);
    [along, times(&tray.width, &piece.width, &gap[1])]
}

fn all([along, across]: [u64; 2]) -> u64 {
    along.saturating_mul(across)
}

/// How pieces lie in the author's rows along the tray: as given or a quarter turn from it. Where
/// those have no room, as many fit as lie in what there is of them.
pub fn lie_in_rows(
    tray: &Size,
    piece: &Footprint,
    (rows, proofs): (&[u64], bool),
) -> Lie {
    let lie = |size: &Size, turned: bool| {
        let gap = gaps(size, proofs);
        let [along, across] = cells(tray, size, &gap);
        let there = usize::try_from(across).unwrap_or(usize::MAX);
        let whole = rows.len() <= there && rows.iter().all(|row| *row <= along);
        let in_them = rows.iter().take(there).map(|row| row.min(&along)).sum();
        let fits = if whole { all([along, across]) } else { in_them };
        Lie { gap, fits, turned, pair: None }
    };
    let (given, turned) =
        (lie(&piece.size, false), lie(&super::super::turned(&piece.size), true));
    if turned.fits > given.fits { turned } else { given }
}

/// What lies in each of the author's rows where a tray has `count` pieces: they are filled one
/// after the other.
pub fn filled(rows: &[u64], count: u64) -> Vec<u64> {
    let mut left = count;
    let row = |row: &u64| {
        let own = left.min(*row);
        left -= own;
        own
    };
    rows.iter().map(row).filter(|row| *row > 0).collect()
}

/// The middle of every piece, cm: each row along the tray spread evenly.
pub fn places_in_rows(tray: &Size, rows: &[u64]) -> Vec<[Exact; 2]> {
    let middle = |side: &Length, at: u64, of: u64| {
        side.amount() * Exact::new((2 * at + 1).into(), (2 * of).into())
    };
    let of = rows.len() as u64;
    let row = |(row, in_row): (u64, &u64)| -> Vec<[Exact; 2]> {
        let place =
            |at| [middle(&tray.length, at, *in_row), middle(&tray.width, row, of)];
        (0..*in_row).map(place).collect()
    };
    (0..).zip(rows).flat_map(row).collect()
}

fn by_itself(tray: &Size, piece: &Size, proofs: bool) -> Lie {
    let gap = gaps(piece, proofs);
    Lie { fits: all(cells(tray, piece, &gap)), gap, turned: false, pair: None }
}

/// Two halves of a box a × b, one drawn off along a by s: their long sides lie s·b ÷ √(a² + b²)
/// apart. The root is never more than a + b, so that s = gap × (a + b) ÷ b is enough.
fn in_pairs(tray: &Size, piece: &Size, proofs: bool) -> Lie {
    let gap = gaps(piece, proofs);
    let most = gap[0].clone().max(gap[1].clone());
    let sides = piece.length.clone() + piece.width.clone();
    let off = sides.over(&piece.width).map_or(most.clone(), |times| &most * &times);
    let pair = Size::new(piece.length.clone() + off, piece.width.clone());
    let fits = 2 * all(cells(tray, &pair, &gap));
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

    /// Rounds of 10 cm that proof take cells of 14.6 cm: four and two on 60 × 40 cm, and two and
    /// four turned. Rows of 2 and 3 fit, three rows of two do not: two of them hold four. By
    /// arithmetic.
    #[test]
    fn rows_of_the_author() {
        let tray = Size::new(cm(600), cm(400));
        let piece = Footprint { size: Size::new(cm(100), cm(100)), is_half: false };
        let fits = |rows: &[u64]| lie_in_rows(&tray, &piece, (rows, true)).fits;
        assert_eq!((fits(&[2, 3]), fits(&[2, 2, 2]), fits(&[5])), (8, 4, 4));
        assert_eq!(filled(&[3, 4, 3], 10), [3, 4, 3]);
        assert_eq!(filled(&[3, 4, 3], 5), [3, 2]);
        let places = places_in_rows(&tray, &[1, 2]);
        let whole = [[30, 10], [15, 30], [45, 30]];
        assert_eq!(places, whole.map(|place| place.map(|at| exact(at, 1))));
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
