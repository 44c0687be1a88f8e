//! Which way a dough is rolled next, from the order of the steps alone: sizes never decide.

use schemars::JsonSchema;
use serde::Serialize;

use crate::measure::{Length, Size};

use super::{long_first, turned};

/// Which way a sheet is rolled, seen from what was done with the dough before.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Direction {
    /// Nothing has given the dough a direction yet: this rolling does. So it is with a fresh
    /// dough and after an envelope, which is closed on all four sides.
    #[default]
    Any,
    /// After a fold: at right angles to the rolling before it, towards the open ends. What
    /// everybody does: common practice, no source.
    QuarterTurn,
    /// After a fold, on the ticket's word: along the same side as before.
    SameWay,
    /// No fold since the last rolling: rolled on the same way.
    Onward,
}

/// The dough as it lies between two steps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Lying {
    /// Its first side lies along the last rolling, where there was one.
    pub(super) size: Size,
    /// What left it so.
    pub(super) left_by: LeftBy,
}

/// What the dough was left by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum LeftBy {
    /// An envelope: it has no direction.
    Envelope,
    /// A turn, or a lock-in that is folded along the sheet.
    Fold,
    /// The rolling pin.
    Pin,
}

impl LeftBy {
    /// The way of the next rolling; `same_way` is the ticket's word.
    pub(super) fn next(self, same_way: bool) -> Direction {
        match (self, same_way) {
            (Self::Envelope, _) => Direction::Any,
            (Self::Fold, false) => Direction::QuarterTurn,
            (Self::Fold, true) => Direction::SameWay,
            (Self::Pin, _) => Direction::Onward,
        }
    }
}

impl Lying {
    /// The dough as it lies beneath the pin: the first side is the one that is stretched.
    /// A dough without a direction is laid as it comes nearest to `sheet`.
    pub(super) fn beneath(&self, way: Direction, sheet: &Size) -> Size {
        match way {
            Direction::QuarterTurn => turned(&self.size),
            Direction::SameWay | Direction::Onward => self.size.clone(),
            Direction::Any if sheet.length < sheet.width => {
                turned(&long_first(&self.size))
            }
            Direction::Any => long_first(&self.size),
        }
    }

    /// The dough as it lies before a fold for which no sheet is rolled.
    pub(super) fn as_sheet(&self) -> Size {
        match self.left_by {
            LeftBy::Envelope => long_first(&self.size),
            LeftBy::Fold => turned(&self.size),
            LeftBy::Pin => self.size.clone(),
        }
    }
}

/// By how much a side may become shorter beneath the pin: a fifth. Dough springs back and
/// is nudged square. Common practice, no source.
const NARROWER: (i64, i64) = (4, 5);

/// A side that would have to become much shorter, from what to what; the one that loses most
/// where both do. `None` where a pin and two hands can do it.
pub fn narrows(block: &Size, sheet: &Size) -> Option<[Length; 2]> {
    let kept = crate::measure::exact(NARROWER.0, NARROWER.1);
    let sides = [(&block.length, &sheet.length), (&block.width, &sheet.width)];
    let shorter = sides.into_iter().filter(|(from, to)| **to < *from * &kept);
    let most = shorter.min_by_key(|(from, to)| to.over(from));
    most.map(|(from, to)| [from.clone(), to.clone()])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::exact;

    fn size(length: i64, width: i64) -> Size {
        let side = |amount| Length::centimetres(exact(amount, 1));
        Size::new(side(length), side(width))
    }

    #[test]
    fn a_fold_is_followed_by_a_quarter_turn_whatever_the_sizes() {
        let block = Lying { size: size(9, 8), left_by: LeftBy::Fold };
        let way = block.left_by.next(false);
        assert_eq!(way, Direction::QuarterTurn);
        for sheet in [size(36, 8), size(8, 36)] {
            assert_eq!(block.beneath(way, &sheet), size(8, 9));
        }
        let way = block.left_by.next(true);
        assert_eq!(
            (way, block.beneath(way, &size(36, 8))),
            (Direction::SameWay, size(9, 8))
        );
        assert_eq!(LeftBy::Pin.next(true), Direction::Onward);
        assert_eq!(LeftBy::Envelope.next(false), Direction::Any);
    }

    #[test]
    fn a_side_may_lose_a_fifth() {
        assert_eq!(narrows(&size(8, 10), &size(36, 8)), None);
        let cm = |amount| Length::centimetres(exact(amount, 1));
        assert_eq!(narrows(&size(8, 11), &size(36, 8)), Some([cm(11), cm(8)]));
        assert_eq!(narrows(&size(50, 40), &size(20, 10)), Some([cm(40), cm(10)]));
    }
}
