//! The four sides of a folded block, its spine to the left as it is drawn and said.

use crate::measure::{Exact, exact};
use crate::model::{Folding, LockIn, Turn};

/// What a block shows on one side: folds, which are closed, and ends of the sheet. What lies
/// within a fold is not seen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Edge {
    /// Closed folds, one above the other.
    pub folds: u32,
    /// Ends of the sheet that lie there loose.
    pub ends: u32,
}

/// The sides of a folded block. On the two that are not named, near and far, the layers lie
/// open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Edges {
    /// The left side: the spine, closed round everything within.
    pub spine: Edge,
    /// The right side, opposite the spine.
    pub opposite: Edge,
}

const CLOSED: Edge = Edge { folds: 1, ends: 0 };

/// The sides of a block after `turn`. Both ends in and closed leaves a book two folds opposite
/// its spine. A half has both ends of the sheet there. Every other turn winds the sheet up
/// flat: there lie the sheet's last end and, on it, one fold round all that is within.
/// `tests/folding.rs` folds strips to hold against this.
pub fn turn_edges(turn: Turn) -> Edges {
    let opposite = match turn.folding() {
        Folding::Half => Edge { folds: 0, ends: 2 },
        Folding::Book => Edge { folds: 2, ends: 0 },
        Folding::Letter | Folding::Parts(_) => Edge { folds: 1, ends: 1 },
    };
    Edges { spine: CLOSED, opposite }
}

/// The sides of a parcel after a lock-in that is folded along the sheet; `None` for an
/// envelope, which is closed on all four sides. A letter has a fold and the sheet's left end
/// opposite its spine; a book a fold on the left and one on the right, and its ends meet on
/// top.
pub fn lock_in_edges(lock_in: LockIn) -> Option<Edges> {
    match lock_in {
        LockIn::Envelope => None,
        LockIn::Letter => {
            Some(Edges { spine: CLOSED, opposite: Edge { folds: 1, ends: 1 } })
        }
        LockIn::Book => Some(Edges { spine: CLOSED, opposite: CLOSED }),
    }
}

/// Where a turn is folded, as shares of the sheet's length from its left end.
///
/// A book whose ends meet at m is folded at m/2 and (1 + m)/2, and closed in the middle
/// between these, at (1 + 2m)/4; for m = ½ these are the quarters. Other turns are folded
/// between their parts.
pub fn fold_lines(turn: Turn) -> Vec<Exact> {
    match ends_meet(turn) {
        Some(meet) => {
            let one = exact(1, 1);
            let close = (&one + &meet * exact(2, 1)) / exact(4, 1);
            vec![&meet / exact(2, 1), close, (one + meet) / exact(2, 1)]
        }
        None => {
            let parts = i64::from(turn.parts.max(1));
            (1..parts).map(|fold| exact(fold, parts)).collect()
        }
    }
}

/// Where the ends of a book meet, as a share of the sheet's length from its left end; `None`
/// for other turns, whose ends do not meet.
pub fn ends_meet(turn: Turn) -> Option<Exact> {
    match turn.folding() {
        Folding::Book => Some(turn.meet.share()),
        Folding::Half | Folding::Letter | Folding::Parts(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Meet;

    #[test]
    fn a_book_is_folded_where_its_ends_meet() {
        let quarters = [exact(1, 4), exact(1, 2), exact(3, 4)];
        assert_eq!(fold_lines(Turn::in_parts(4)), quarters);
        let third = Turn { meet: Meet { over: 1, under: 3 }, ..Turn::in_parts(4) };
        // Flaps of a sixth and of a third; what is left, half the length, is halved.
        assert_eq!(fold_lines(third), [exact(1, 6), exact(5, 12), exact(2, 3)]);
        assert_eq!(ends_meet(third), Some(exact(1, 3)));
        assert_eq!(fold_lines(Turn::in_parts(3)), [exact(1, 3), exact(2, 3)]);
    }

    /// From strips of paper: half, letter, book, and five and six parts over and over.
    #[test]
    fn strips_of_paper_show_these_sides() {
        let cases = [(2, 0, 2), (3, 1, 1), (4, 2, 0), (5, 1, 1), (6, 1, 1)];
        for (parts, folds, ends) in cases {
            let edges = turn_edges(Turn::in_parts(parts));
            assert_eq!(edges.opposite, Edge { folds, ends }, "{parts}");
        }
        assert_eq!(lock_in_edges(LockIn::Envelope), None);
    }
}
