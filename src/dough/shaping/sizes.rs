//! What can be measured of a shaping, exactly: rolls, strands and balls hold the dough of
//! their piece.

use crate::measure::{Area, Exact, Length, Volume, exact};
use crate::model::Shaping;

use super::super::root;
use super::{Form, Piece};

/// π as the fraction of Metius, right to seven figures.
const PI: (i64, i64) = (355, 113);

/// How many times as long as thick a strand from a lump is rolled. Common practice, no
/// source.
const SLENDER: i64 = 12;

/// The thickness of a piece where it is not known, cm. Common practice, no source.
const THICKNESS: (i64, i64) = (4, 10);

/// Lengths of a shaping that its words name.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sizes {
    /// How deep the base is cut in.
    pub notch: Option<Length>,
    /// How long the piece is after stretching.
    pub stretched: Option<Length>,
    /// How thick the roll or strand is, or how wide the ball.
    pub roll: Option<Length>,
    /// How often it goes round.
    pub wraps: Option<Exact>,
    /// How long the strand is.
    pub strand: Option<Length>,
}

/// What can be measured of a piece that is shaped so.
pub(super) fn sizes(shaping: &Shaping, piece: &Piece) -> Sizes {
    match shaping {
        Shaping::Crescent(how) => {
            // Stretched, it is thinner in the same measure: the roll stays as thick, and
            // goes round more often.
            let longer = exact(1, 1) + &how.stretch;
            let long = &piece.height * &longer;
            let thinner = |thick: &Length| thick * &(exact(1, 1) / &longer);
            let rolled = rolled(&long, piece.thickness.as_ref().map(thinner));
            let stretched = how.stretch.is_positive().then_some(long);
            Sizes { notch: how.notch.clone(), stretched, ..rolled }
        }
        Shaping::Baton => rolled(piece.long_and_short().0, piece.thickness.clone()),
        Shaping::Spiral | Shaping::Knot | Shaping::Ring | Shaping::Plait(_) => {
            strand(piece)
        }
        // A strip is twisted as it is cut, a lump as a strand.
        Shaping::Twist if piece.form == Form::Lump => strand(piece),
        Shaping::Round | Shaping::FilledBall => ball(piece, 6),
        // Twice as long as wide, it holds π/6 · 2 w³.
        Shaping::Oval => ball(piece, 3),
        Shaping::Twist
        | Shaping::Pinwheel
        | Shaping::Envelope
        | Shaping::Pocket
        | Shaping::Turnover
        | Shaping::FoldedSquare
        | Shaping::Tin
        | Shaping::Own(_) => Sizes::default(),
    }
}

fn rolled(long: &Length, thickness: Option<Length>) -> Sizes {
    let thickness = thickness.as_ref();
    Sizes {
        roll: thickness.map(|thick| roll_width(long, thick)),
        wraps: thickness.and_then(|thick| wraps(long, thick)),
        ..Sizes::default()
    }
}

/// A strand as long as its strip and with as much dough; from a lump, twelve times as long
/// as thick: a rod of thickness d and length 12 d holds 3 π d³.
fn strand(piece: &Piece) -> Sizes {
    let (long, thick) = match &piece.volume {
        Some(volume) => {
            let cube = volume.amount() * exact(4, SLENDER) / exact(PI.0, PI.1);
            let longer = &cube * exact(SLENDER * SLENDER * SLENDER, 1);
            let edge = |cube| root::edge_near(&Volume::millilitres(cube));
            (edge(longer), edge(cube))
        }
        None => {
            let (long, short) = piece.long_and_short();
            (long.clone(), roll_width(short, &thickness(piece)))
        }
    };
    Sizes { roll: Some(thick), strand: Some(long), ..Sizes::default() }
}

/// A ball, of which `parts` π-ths of a cube of its width are the dough: V = π/parts · w³.
fn ball(piece: &Piece, parts: i64) -> Sizes {
    let cube = volume(piece) * exact(parts, 1) / exact(PI.0, PI.1);
    let width = root::edge_near(&Volume::millilitres(cube));
    Sizes { roll: Some(width), ..Sizes::default() }
}

/// The volume of a piece, ml.
fn volume(piece: &Piece) -> Exact {
    let part = match piece.form {
        Form::Triangle | Form::RightTriangle => exact(1, 2),
        Form::Round => exact(PI.0, 4 * PI.1),
        Form::Rectangle | Form::Square | Form::Strip | Form::Lump => exact(1, 1),
    };
    let flat =
        || piece.base.amount() * piece.height.amount() * thickness(piece).amount() * part;
    piece.volume.as_ref().map_or_else(flat, |volume| volume.amount().clone())
}

fn thickness(piece: &Piece) -> Length {
    let usual = || Length::centimetres(exact(THICKNESS.0, THICKNESS.1));
    piece.thickness.clone().unwrap_or_else(usual)
}

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
