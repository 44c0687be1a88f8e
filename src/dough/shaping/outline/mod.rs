//! The stages of a shaping as they are drawn. Bent rolls, knots and plaits are curves for
//! the eye: their outlines are floats, and nothing that is said comes from them. What a
//! ruler reads is exact, and stands in `sizes`.

mod ball;
mod folded;
mod frame;
mod own;
mod rolled;
mod strand;

#[cfg(test)]
mod tests;

pub use frame::{At, Does, Frame, Mark};

use frame::disc;
pub use own::{as_cut, own};

use crate::measure::Length;
use crate::model::Shaping;

use super::{Piece, Sizes};

/// The stages of a piece that is shaped so; none for a tin ([`in_tin`]) and for an author's
/// own shaping.
pub(super) fn frames(shaping: &Shaping, piece: &Piece, sizes: &Sizes) -> Vec<Frame> {
    match shaping {
        Shaping::Crescent(how) => rolled::crescent(piece, how, sizes),
        Shaping::Baton => rolled::baton(piece, sizes),
        Shaping::Spiral => strand::coil(sizes),
        Shaping::Twist => strand::twist(piece, sizes),
        Shaping::Knot => strand::knot(sizes),
        Shaping::Plait(strands) => strand::plait(sizes, strands.count()),
        Shaping::Pinwheel => folded::pinwheel(piece),
        Shaping::Envelope => folded::envelope(piece),
        Shaping::Pocket => folded::pocket(piece),
        Shaping::Turnover => folded::turnover(piece),
        Shaping::FoldedSquare => folded::folded_square(piece),
        Shaping::Ring => strand::ring(sizes),
        Shaping::Round => ball::round(piece, sizes),
        Shaping::Oval => ball::oval(sizes),
        Shaping::FilledBall => ball::filled(piece, sizes),
        Shaping::Tin | Shaping::Own(_) => Vec::new(),
    }
}

/// A loaf in a tin of this length, width and depth.
pub fn in_tin(length: &Length, width: &Length, depth: Option<&Length>) -> Vec<Frame> {
    rolled::in_tin(length.float(), width.float(), depth.map(Length::float))
}
