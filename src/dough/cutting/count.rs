//! Counting pieces before any is laid out.

use num_traits::ToPrimitive;

use crate::measure::{Exact, Length};

use super::{MOST_PIECES, Refusal};

/// How many times `piece` goes into `side`, at most one above [`MOST_PIECES`], which is
/// enough to refuse it. Nought where either has no length.
pub(super) fn times(side: &Length, piece: &Length) -> u64 {
    let most = MOST_PIECES + 1;
    if !piece.is_positive() || !side.is_positive() {
        return 0;
    }
    let whole = (side.amount() / piece.amount()).to_integer();
    whole.to_u64().map_or(most, |count| count.min(most))
}

/// `count` if it is a number of pieces that can be cut.
pub(super) fn pieces(count: u64) -> Result<u64, Refusal> {
    match count {
        0 => Err(Refusal::TooLarge),
        1..=MOST_PIECES => Ok(count),
        _ => Err(Refusal::TooMany),
    }
}

/// `side` laid end to end that many times, in centimetres.
pub(super) fn along(side: &Length, times: u64) -> Exact {
    side.amount() * Exact::from_integer(times.into())
}
