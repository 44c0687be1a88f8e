//! Shaping by hand: what becomes of the piece that was really cut, stage by stage, and how
//! pieces stand on a tray.

mod outline;
mod sizes;
mod tray;

pub use super::cutting::Form;
pub use outline::{At, Does, Frame, Mark, as_cut, in_tin, own};
pub use sizes::{Sizes, roll_width, wraps};
pub use tray::{
    Footprint, Lie, best_lie, filled, lie_in_rows, places, places_in_rows, rows,
};

use crate::measure::{Length, Volume};
use crate::model::Shaping;

use super::cutting::Layout;

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
    let sizes = sizes::sizes(shaping, piece);
    let frames = outline::frames(shaping, piece, &sizes);
    (!frames.is_empty()).then_some(Shaped { frames, sizes })
}
