//! Pieces rolled up, and pieces on a tray.

use crate::measure::{Area, Exact, Length, Size, exact};

use super::root;

/// π as the fraction of Metius, right to seven figures.
const PI: (i64, i64) = (355, 113);

/// How thick a roll is that `length` of a sheet is rolled into: its end has the area of
/// the sheet's edge, so the diameter is √(4 × length × thickness ÷ π).
pub fn roll_width(length: &Length, thickness: &Length) -> Length {
    let edge = length.amount() * thickness.amount() * exact(4, 1);
    root::side_near(&Area::square_centimetres(edge / exact(PI.0, PI.1)))
}

/// How often it goes round: each wrap adds the thickness on both sides. `None` for no
/// thickness.
pub fn wraps(length: &Length, thickness: &Length) -> Option<Exact> {
    let across = thickness * &exact(2, 1);
    roll_width(length, thickness).over(&across)
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
    use crate::measure::float;

    fn cm(tenths: i64) -> Length {
        Length::centimetres(exact(tenths, 10))
    }

    /// A sheet of 24 cm by 4 mm has an edge of 9.6 cm²; a round of that area is 3.5 cm
    /// wide, and eight 4 mm sheets lie side by side on 3.5 cm. Circle area: Euclid XII.2.
    #[test]
    fn a_triangle_goes_round_four_times() {
        assert!((roll_width(&cm(240), &cm(4)).float() - 3.5).abs() < 0.01);
        let wraps = wraps(&cm(240), &cm(4)).map(|wraps| float(&wraps));
        assert!(wraps.is_some_and(|wraps| (wraps - 4.37).abs() < 0.01), "{wraps:?}");
        assert_eq!(super::wraps(&cm(240), &cm(0)), None);
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
