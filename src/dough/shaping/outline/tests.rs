//! Shapings: hand-worked sizes, and coordinates that follow the cut.

use super::*;
use crate::dough::cutting::{Orientation, cut};
use crate::dough::shaping::{Form, Shaped, roll_width, shape, wraps};
use crate::measure::{Exact, Size, Volume, exact, float};
use crate::model::{Bend, Crescent, CutPlan, Shape};

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
    assert_eq!(crate::dough::shaping::wraps(&cm(240), &cm(0)), None);
}

/// A piece that is cut, as a layout gives it, of `size` tenths of a centimetre.
fn cut_piece(shape: Shape, thickness: i64) -> Piece {
    let sheet = Size::new(cm(1200), cm(900));
    let layout = cut(&CutPlan::Shape(shape), &sheet, Orientation::AsWritten);
    Piece::cut(&layout.expect("it can be cut"), Some(&cm(thickness)))
}

/// A piece that can be shaped so: cut, or a lump for what is weighed.
fn piece_for(shaping: &Shaping, times: i64) -> Piece {
    let of = |tenths: i64| cm(tenths * times);
    match shaping {
        Shaping::Crescent(_) => {
            cut_piece(Shape::Triangles { base: of(90), height: of(240) }, 4 * times)
        }
        Shaping::Pinwheel
        | Shaping::Envelope
        | Shaping::FoldedSquare
        | Shaping::Turnover
        | Shaping::Round
        | Shaping::Oval
        | Shaping::FilledBall => cut_piece(Shape::Squares(of(100)), 4 * times),
        Shaping::Baton
        | Shaping::Pocket
        | Shaping::Spiral
        | Shaping::Twist
        | Shaping::Knot
        | Shaping::Ring
        | Shaping::Plait(_)
        | Shaping::Tin
        | Shaping::Own(_) => {
            cut_piece(Shape::Rectangles(Size::new(of(200), of(30))), 5 * times)
        }
    }
}

fn points(shaped: &Shaped) -> Vec<At> {
    shaped.frames.iter().flat_map(|frame| &frame.marks).flat_map(Mark::points).collect()
}

/// Every shaping with a geometry, crescents in all their ways.
fn all() -> Vec<Shaping> {
    let notched = |bend| Crescent { notch: Some(cm(10)), stretch: exact(1, 4), bend };
    let ways = [Bend::Straight, Bend::Curved, Bend::Joined].map(notched);
    let shapings = Shaping::all().into_iter().filter(|it| *it != Shaping::Tin);
    shapings.chain(ways.map(Shaping::Crescent)).collect()
}

/// No shape is a stock picture: from a cut twice as large in every way, every coordinate of
/// every stage is twice as large, and from a cut that differs in one side alone, it differs.
#[test]
fn coordinates_follow_the_cut() {
    for shaping in all() {
        let shaping = match shaping {
            // A notch is the author's own length: it stays while the piece grows.
            Shaping::Crescent(how) => Shaping::Crescent(Crescent { notch: None, ..how }),
            other => other,
        };
        let once = shape(&shaping, &piece_for(&shaping, 1)).expect("once");
        let twice = shape(&shaping, &piece_for(&shaping, 2)).expect("twice");
        assert_eq!(once.frames.len(), twice.frames.len(), "{shaping:?}");
        let (once_at, twice_at) = (points(&once), points(&twice));
        assert_eq!(once_at.len(), twice_at.len(), "{shaping:?}");
        for (one, two) in once_at.iter().zip(&twice_at) {
            for axis in [0, 1] {
                let off = (2.0 * one[axis] - two[axis]).abs();
                // Rolls are as thick as a whole tenth of a millimetre: half a millimetre.
                assert!(off < 0.05, "{shaping:?} {one:?} {two:?}");
            }
        }
        let mut other = piece_for(&shaping, 1);
        let longer = &other.base * &exact(13, 10);
        (other.base, other.height) = match other.form {
            Form::Square => (longer.clone(), longer),
            _ => (longer, other.height),
        };
        let other = shape(&shaping, &other).expect("another");
        assert_ne!(points(&other), once_at, "{shaping:?}");
    }
}

/// Every stage has something in it, all numbers are numbers, the last stage is drawn without
/// what is yet to be done, and a piece that is only folded never outgrows its cut.
#[test]
fn every_stage_is_sound() {
    for shaping in all() {
        let piece = piece_for(&shaping, 1);
        let shaped = shape(&shaping, &piece).expect("shaped");
        assert!((2..=5).contains(&shaped.frames.len()), "{shaping:?}");
        for at in points(&shaped) {
            assert!(at.iter().all(|way| way.is_finite()), "{shaping:?}");
        }
        for frame in &shaped.frames {
            assert!(frame.size().iter().all(|side| *side > 0.0), "{shaping:?}");
        }
    }
}

/// Stretched by a quarter, a triangle of 24 cm is 30 cm long and 3.2 mm thick: its edge still
/// has 9.6 cm², so the roll is as thick as before, 3.5 cm, and goes round 3.496 / 0.64 =
/// 5.46 times instead of 4.37. By arithmetic.
#[test]
fn turns_are_counted_after_the_stretch() {
    let piece = cut_piece(Shape::Triangles { base: cm(90), height: cm(240) }, 4);
    let how = |stretch| Shaping::Crescent(Crescent { stretch, ..Crescent::plain() });
    let plain = shape(&how(exact(0, 1)), &piece).expect("plain").sizes;
    let long = shape(&how(exact(1, 4)), &piece).expect("stretched").sizes;
    assert_eq!((plain.stretched, long.stretched), (None, Some(cm(300))));
    let times = |wraps: Option<Exact>| wraps.map_or(0.0, |wraps| float(&wraps));
    assert!((times(plain.wraps) - 4.37).abs() < 0.01);
    assert!((times(long.wraps) - 5.46).abs() < 0.01);
    let width = |roll: Option<Length>| roll.map_or(0.0, |roll| roll.float());
    assert!((width(plain.roll) - width(long.roll)).abs() < 0.001);
}

/// The first stage of a right triangle has its right angle and its tip above one end; it is
/// stroked until the tip points at the middle.
#[test]
fn a_right_triangle_is_drawn_as_one() {
    let plan = CutPlan::Grid { strips: 3, across: 2, diagonal: true };
    let sheet = Size::new(cm(480), cm(270));
    let layout = cut(&plan, &sheet, Orientation::Best).expect("cut");
    let piece = Piece::cut(&layout, Some(&cm(4)));
    let shaped = shape(&Shaping::Crescent(Crescent::plain()), &piece).expect("shaped");
    let Mark::Dough(corners) = &shaped.frames[0].marks[0] else { panic!("no piece") };
    assert_eq!(corners, &[[0.0, 0.0], [9.0, 0.0], [0.0, 24.0]]);
    assert!(shaped.frames[0].marks.contains(&Mark::Arrow([0.0, 24.0], [4.5, 24.0])));
}

/// 60 g of dough at 1.1 g/ml are 54.5 ml: a ball 4.7 cm wide; a strand twelve times as long
/// as thick is 1.8 cm thick and 21.5 cm long. By the volumes of ball and cylinder.
#[test]
fn lumps_have_sizes_from_their_weight() {
    let lump = Piece::of_volume(Volume::millilitres(exact(600, 11)));
    let ball = shape(&Shaping::Round, &lump).expect("a ball").sizes.roll;
    assert!(ball.is_some_and(|ball| (ball.float() - 4.706).abs() < 0.01));
    let knot = shape(&Shaping::Knot, &lump).expect("a knot").sizes;
    assert!(knot.roll.is_some_and(|thick| (thick.float() - 1.795).abs() < 0.01));
    assert!(knot.strand.is_some_and(|long| (long.float() - 21.54).abs() < 0.02));
}

#[test]
fn what_a_form_cannot_become_is_refused() {
    let square = cut_piece(Shape::Squares(cm(100)), 4);
    assert_eq!(shape(&Shaping::Crescent(Crescent::plain()), &square), None);
    let rounds = cut_piece(Shape::Rounds(cm(100)), 4);
    assert_eq!(shape(&Shaping::Pinwheel, &rounds), None);
    assert!(shape(&Shaping::Turnover, &rounds).is_some());
}
