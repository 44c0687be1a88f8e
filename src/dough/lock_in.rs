//! The fat block on its sheet of dough, and the parcel closed over it.

use crate::measure::{Area, Length, Size, exact};
use crate::model::LockIn;

use super::{long_first, root};

/// What is left bare beside a block whose size the text does not give: 1 cm in all along
/// each side. Common practice, no source.
fn bare() -> Length {
    Length::centimetres(exact(1, 1))
}

/// The largest block that the dough can close over, first side along the sheet's first.
///
/// - Envelope: four flaps meet over a block set diagonally, so its side is the sheet's
///   short side over √2 (rounded down to 0.1 mm).
/// - Letter: two thirds of the side that is folded, the first, by the width.
/// - Book: the middle half of the side that is folded by the width.
pub(super) fn room(lock_in: LockIn, sheet: &Size) -> Size {
    let width = sheet.width.clone();
    match lock_in {
        LockIn::Envelope => {
            let side = root::side_down(&half_square(&long_first(sheet).width));
            Size::new(side.clone(), side)
        }
        LockIn::Letter => Size::new(&sheet.length * &exact(2, 3), width),
        LockIn::Book => Size::new(&sheet.length * &exact(1, 2), width),
    }
}

/// The square over the diagonal's half: the area that an envelope of this side covers.
pub(super) fn half_square(side: &Length) -> Area {
    Area::square_centimetres(side.amount() * side.amount() * exact(1, 2))
}

/// The block that is usual for a sheet: the largest that can be closed over, less a bare
/// centimetre to seal (half of the side where there is no centimetre to spare).
pub fn usual_block(lock_in: LockIn, sheet: &Size) -> Size {
    let room = room(lock_in, sheet);
    Size::new(less_bare(&room.length), less_bare(&room.width))
}

fn less_bare(side: &Length) -> Length {
    let half = side * &exact(1, 2);
    (side.clone() - bare()).max(half)
}

/// The closed parcel, folded side first: the block itself for an envelope, whose flaps
/// are folded along the block's edges; a third of the sheet's first side by the width for
/// a letter; half of it by the width for a book.
pub fn closed_size(lock_in: LockIn, sheet: &Size, block: &Size) -> Size {
    let width = sheet.width.clone();
    match lock_in {
        LockIn::Envelope => block.clone(),
        LockIn::Letter => Size::new(&sheet.length * &exact(1, 3), width),
        LockIn::Book => Size::new(&sheet.length * &exact(1, 2), width),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn size(length: i64, width: i64) -> Size {
        let side = |tenths| Length::centimetres(exact(tenths, 10));
        Size::new(side(length), side(width))
    }

    #[test]
    fn the_usual_block_leaves_a_seam() {
        // 28 / √2 = 19.798…, rounded down to 19.79.
        let envelope = usual_block(LockIn::Envelope, &size(280, 280));
        assert_eq!(envelope.length, Length::centimetres(exact(1879, 100)));
        assert_eq!(usual_block(LockIn::Letter, &size(600, 300)), size(390, 290));
        assert_eq!(usual_block(LockIn::Book, &size(400, 200)), size(190, 190));
        assert_eq!(usual_block(LockIn::Book, &size(20, 10)), size(5, 5));
    }

    #[test]
    fn closes_over_the_block() {
        let block = size(190, 190);
        assert_eq!(closed_size(LockIn::Envelope, &size(280, 280), &block), block);
        assert_eq!(closed_size(LockIn::Letter, &size(600, 300), &block), size(200, 300));
        assert_eq!(closed_size(LockIn::Book, &size(400, 200), &block), size(200, 200));
    }
}
