//! Shaping by hand: what becomes of the piece that was really cut, stage by stage, and how
//! pieces stand on a tray.

mod ball;
mod folded;
mod frame;
mod rolled;
mod strand;
mod tray;

#[cfg(test)]
mod tests;

pub use frame::{At, Does, Frame, Mark, disc};
pub use tray::{Room, places, room, rows};

use crate::measure::{Area, Exact, Length, Volume, exact, float};
use crate::model::Shaping;

pub use super::cutting::Form;
use super::cutting::Layout;
use super::root;

/// π as the fraction of Metius, right to seven figures.
const PI: (i64, i64) = (355, 113);

/// A piece before it is shaped.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// Its form.
    pub form: Form,
    /// A triangle's base, a round's diameter, or the first side; nought for a lump.
    pub base: Length,
    /// A triangle's height, a round's diameter, or the other side; nought for a lump.
    pub height: Length,
    /// Its thickness, where it is known.
    pub thickness: Option<Length>,
    /// The volume of a lump that was weighed.
    pub volume: Option<Volume>,
}

/// A piece shaped: its stages in order, of which the last is the piece as it is set down.
#[derive(Clone, Debug, PartialEq)]
pub struct Shaped {
    /// The stages.
    pub frames: Vec<Frame>,
    /// What can be measured of them.
    pub sizes: Sizes,
}

/// Lengths of a shaping that its words name.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sizes {
    /// How deep the base is cut in.
    pub notch: Option<Length>,
    /// How long the piece is after stretching.
    pub stretched: Option<Length>,
    /// How thick the roll or strand is, or how wide the ball.
    pub roll: Option<Length>,
    /// How often it goes round.
    pub wraps: Option<f64>,
    /// How long the strand is.
    pub strand: Option<Length>,
}

impl Piece {
    /// The piece that a layout gives.
    pub fn cut(layout: &Layout, thickness: Option<&Length>) -> Self {
        Self {
            form: layout.form,
            base: layout.base.clone(),
            height: layout.height.clone(),
            thickness: thickness.cloned(),
            volume: None,
        }
    }

    /// A lump of this volume.
    pub fn of_volume(volume: Volume) -> Self {
        let (base, height) = (Length::zero(), Length::zero());
        Self { form: Form::Lump, base, height, thickness: None, volume: Some(volume) }
    }

    /// Its two sides, the longer first.
    fn long_and_short(&self) -> (&Length, &Length) {
        if self.base < self.height {
            (&self.height, &self.base)
        } else {
            (&self.base, &self.height)
        }
    }

    /// The volume of a lump, ml.
    fn lump(&self) -> Option<f64> {
        self.volume.as_ref().map(|volume| float(volume.amount()))
    }

    /// The volume of a flat piece, ml.
    fn flat_volume(&self) -> f64 {
        let part = match self.form {
            Form::Triangle | Form::RightTriangle => 0.5,
            Form::Round => std::f64::consts::PI / 4.0,
            Form::Rectangle | Form::Square | Form::Strip | Form::Lump => 1.0,
        };
        let thickness = self.thickness.as_ref().map_or(0.4, |it| it.float());
        part * self.base.float() * self.height.float() * thickness
    }
}

/// Whether a piece of this form can be shaped so. Author's own shapings fit all.
pub fn fits(shaping: &Shaping, form: Form) -> bool {
    match shaping {
        Shaping::Crescent(_) => matches!(form, Form::Triangle | Form::RightTriangle),
        Shaping::Baton => matches!(form, Form::Rectangle | Form::Square | Form::Strip),
        Shaping::Spiral
        | Shaping::Twist
        | Shaping::Knot
        | Shaping::Ring
        | Shaping::Plait(_) => matches!(form, Form::Rectangle | Form::Strip | Form::Lump),
        Shaping::Pinwheel | Shaping::Envelope | Shaping::FoldedSquare => {
            form == Form::Square
        }
        Shaping::Pocket => matches!(form, Form::Rectangle | Form::Square),
        Shaping::Turnover => matches!(form, Form::Square | Form::Round),
        Shaping::Round | Shaping::Oval | Shaping::FilledBall => form != Form::Strip,
        Shaping::Tin | Shaping::Own(_) => true,
    }
}

/// A piece shaped; `None` where it cannot be shaped so, for a tin, which has sizes of its
/// own ([`in_tin`]), and for an author's own shaping.
pub fn shape(shaping: &Shaping, piece: &Piece) -> Option<Shaped> {
    if !fits(shaping, piece.form) {
        return None;
    }
    Some(match shaping {
        Shaping::Crescent(how) => rolled::crescent(piece, how),
        Shaping::Baton => rolled::baton(piece),
        Shaping::Spiral => strand::coil(piece),
        Shaping::Twist => strand::twist(piece),
        Shaping::Knot => strand::knot(piece),
        Shaping::Plait(strands) => strand::plait(piece, strands.count()),
        Shaping::Pinwheel => folded::pinwheel(piece),
        Shaping::Envelope => folded::envelope(piece),
        Shaping::Pocket => folded::pocket(piece),
        Shaping::Turnover => folded::turnover(piece),
        Shaping::FoldedSquare => folded::folded_square(piece),
        Shaping::Ring => strand::ring(piece),
        Shaping::Round => ball::round(piece),
        Shaping::Oval => ball::oval(piece),
        Shaping::FilledBall => ball::filled(piece),
        Shaping::Tin | Shaping::Own(_) => return None,
    })
}

/// A loaf in a tin of this length, width and depth.
pub fn in_tin(length: &Length, width: &Length, depth: Option<&Length>) -> Shaped {
    rolled::in_tin(length.float(), width.float(), depth.map(Length::float))
}

/// A length from a float, to the micrometre.
fn centimetres(amount: f64) -> Length {
    // In range by the clamp; not-a-number becomes nought.
    Length::centimetres(exact((amount.clamp(0.0, 1e6) * 1e4).round() as i64, 10_000))
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
