//! Whether a plan can be done on the bench: judgments as data, for the checks to word.

use crate::measure::{Length, Size, exact};
use crate::model::{LockIn, Turn};

use super::lock_in::{half_square, room};
use super::{long_first, turned};

/// Dough left bare around the fat that seals well: 0.5 cm. Common practice, no source.
const SEAL_MM: i64 = 5;

/// How far flaps can be pulled by hand, as a share of the sheet: a twentieth. Common
/// practice, no source.
const PULL: (i64, i64) = (1, 20);

/// Thinnest mean fat layer while turns are still to come, in thousandths of a millimetre.
/// Six letter turns, each rolled to 10 mm with a third of fat (EP 0 445 850 A1, [0002]),
/// leave 13.7 before the last; below 10 the layers begin to break up. The limit itself is
/// common practice, no source.
const FAT_LAYER_LEAST_UM: i64 = 10;

/// A block that the dough closes over.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Margin {
    /// The narrowest bare margin around the fat; for an envelope, how far each flap
    /// passes the middle (to 0.1 mm below).
    pub margin: Length,
    /// Whether it is wide enough to seal well: at least 0.5 cm.
    pub seals: bool,
}

/// Something that is too big for what it lies on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misfit {
    /// How much is missing along the side that misses most.
    pub short: Length,
    /// Whether dough pulled by hand still makes up for it.
    pub pulls: bool,
}

/// What a sheet is rolled for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RolledFor {
    /// To be closed over the fat.
    LockingIn,
    /// To be folded again.
    Turning,
    /// To be cut: dough with yeast.
    YeastCut,
    /// To be cut: puff paste and other dough without yeast.
    PuffCut,
}

/// A thickness outside what dough takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Strain {
    /// Too thin; the least that is advised.
    Thin(Length),
    /// Too thick; the most that is advised.
    Thick(Length),
}

impl RolledFor {
    /// The thinnest and thickest sheet advised, in tenths of a millimetre.
    ///
    /// - Closed over the fat 1.5–25 mm: common practice, no source (EP 0 445 850 A1, [0001]
    ///   has 8 mm; Mrs Beeton's Book of Household Management, 1907, no. 1665, comes to 15).
    /// - Turning 4–25 mm: common practice, no source (EP 0 445 850 A1, [0002] rolls to
    ///   8–10 mm between turns).
    /// - Yeast dough 1.5–12 mm: common practice, no source.
    /// - Puff paste from 1.0 mm: the thinnest studied in Silow et al., Foods 2017, 6(2),
    ///   15; up to 10 mm: common practice, no source.
    fn limits(self) -> (i64, i64) {
        match self {
            Self::LockingIn => (15, 250),
            Self::Turning => (40, 250),
            Self::YeastCut => (15, 120),
            Self::PuffCut => (10, 100),
        }
    }
}

/// The block as it is laid on the sheet: the way that leaves the wider margin, its first
/// side along the sheet's first.
pub(super) fn as_it_fits(lock_in: LockIn, sheet: &Size, block: &Size) -> Size {
    let room = room(lock_in, sheet);
    let other = turned(block);
    let is_better = spare(lock_in, &room, &other) > spare(lock_in, &room, block);
    if is_better { other } else { block.clone() }
}

/// Whether the dough of `sheet` closes over `block`, whichever way the block lies.
///
/// Exact: an envelope's block has at most the sheet's short side over √2, compared by
/// squares; a letter's lies within two thirds of the side that is folded, a book's within
/// half of it, both within the width.
///
/// # Errors
/// Where the block is too big, by how much.
pub fn block_fits(lock_in: LockIn, sheet: &Size, block: &Size) -> Result<Margin, Misfit> {
    let room = room(lock_in, sheet);
    let spare = spare(lock_in, &room, block).max(spare(lock_in, &room, &turned(block)));
    if spare >= Length::zero() || envelope_fits(lock_in, sheet, block) {
        let seals = spare >= millimetres(SEAL_MM);
        return Ok(Margin { margin: spare.max(Length::zero()), seals });
    }
    let short = missing(&room, block).min(missing(&room, &turned(block)));
    let pulls = short <= &long_first(sheet).width * &exact(PULL.0, PULL.1);
    Err(Misfit { short, pulls })
}

/// Compared by squares, since the room of an envelope was rounded down.
fn envelope_fits(lock_in: LockIn, sheet: &Size, block: &Size) -> bool {
    let side = &long_first(block).length;
    let square = side.amount() * side.amount();
    let covered = half_square(&long_first(sheet).width);
    lock_in == LockIn::Envelope && square <= *covered.amount()
}

/// The narrowest margin; below nought where the block is too big.
///
/// Each flap of an envelope passes the middle by all that its diagonal has to spare. A
/// letter's fat ends at a fold on one side, so all that is left along the sheet lies at
/// the other. Everywhere else the block lies in the middle and halves what is left.
fn spare(lock_in: LockIn, room: &Size, block: &Size) -> Length {
    let half = exact(1, 2);
    let along = room.length.clone() - block.length.clone();
    let across = room.width.clone() - block.width.clone();
    match lock_in {
        LockIn::Envelope => along.min(across),
        LockIn::Letter => along.min(&across * &half),
        LockIn::Book => &along.min(across) * &half,
    }
}

fn missing(room: &Size, block: &Size) -> Length {
    let along = block.length.clone() - room.length.clone();
    along.max(block.width.clone() - room.width.clone())
}

/// Whether `sheet`, lying this thick, can be folded: a part of it must be at least as long
/// as the folded block is thick. The length of one part.
///
/// # Errors
/// Where a part is too short, by how much.
pub fn turn_fits(turn: Turn, sheet: &Size, thickness: &Length) -> Result<Length, Misfit> {
    let parts = i64::from(turn.parts.max(1));
    let part = &sheet.length * &exact(1, parts);
    let least = thickness * &exact(parts, 1);
    if part >= least {
        return Ok(part);
    }
    Err(Misfit { short: least - part, pulls: false })
}

/// Whether a sheet is too thin or too thick for its work; `None` where it is neither.
pub fn thickness_fits(thickness: &Length, work: RolledFor) -> Option<Strain> {
    let tenths = |amount| Length::centimetres(exact(amount, 100));
    let (least, most) = work.limits();
    if *thickness < tenths(least) {
        return Some(Strain::Thin(tenths(least)));
    }
    (*thickness > tenths(most)).then(|| Strain::Thick(tenths(most)))
}

/// Whether the mean fat layer of a sheet that is still to be folded is too thin to stay
/// whole; `None` where it is not, or where there is no fat layer.
pub fn fat_layer_fits(fat_layer: &Length) -> Option<Strain> {
    let least = Length::centimetres(exact(FAT_LAYER_LEAST_UM, 10_000));
    (fat_layer.is_positive() && *fat_layer < least).then_some(Strain::Thin(least))
}

/// Whether a sheet fits on the bench, whichever way it lies.
pub fn bench_fits(sheet: &Size, bench: &Size) -> bool {
    let (sheet, bench) = (long_first(sheet), long_first(bench));
    sheet.length <= bench.length && sheet.width <= bench.width
}

fn millimetres(amount: i64) -> Length {
    Length::centimetres(exact(amount, 10))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn size(length: i64, width: i64) -> Size {
        Size::new(millimetres(length), millimetres(width))
    }

    fn margin(tenths: i64, seals: bool) -> Result<Margin, Misfit> {
        Ok(Margin { margin: Length::centimetres(exact(tenths, 1000)), seals })
    }

    fn misfit(hundredths: i64, pulls: bool) -> Result<Margin, Misfit> {
        Err(Misfit { short: Length::centimetres(exact(hundredths, 100)), pulls })
    }

    #[test]
    fn an_envelope_needs_its_diagonal() {
        let fits = |block| block_fits(LockIn::Envelope, &size(280, 280), &block);
        // 28 / √2 = 19.79 cm, rounded down.
        assert_eq!(fits(size(190, 190)), margin(790, true));
        assert_eq!(fits(size(195, 195)), margin(290, false));
        assert_eq!(fits(size(200, 200)), misfit(21, true));
        assert_eq!(fits(size(240, 180)), misfit(421, false));
    }

    #[test]
    fn compares_an_envelope_exactly() {
        let block = Length::centimetres(exact(197_989, 10_000));
        let block = Size::new(block.clone(), block);
        assert!(block_fits(LockIn::Envelope, &size(280, 280), &block).is_ok());
        let block = Length::centimetres(exact(197_990, 10_000));
        let block = Size::new(block.clone(), block);
        assert!(block_fits(LockIn::Envelope, &size(280, 280), &block).is_err());
    }

    #[test]
    fn letter_and_book_lie_along_the_sheet() {
        let letter = |block| block_fits(LockIn::Letter, &size(600, 300), &block);
        assert_eq!(letter(size(390, 290)), margin(500, true));
        assert_eq!(letter(size(290, 390)), margin(500, true));
        assert_eq!(letter(size(420, 290)), misfit(200, false));
        let book = |block| block_fits(LockIn::Book, &size(400, 200), &block);
        assert_eq!(book(size(200, 200)), margin(0, false));
        assert_eq!(book(size(205, 200)), misfit(50, true));
    }

    #[test]
    fn a_part_is_longer_than_the_block_is_thick() {
        let turn = Turn::in_parts(4);
        let fits = |length, width, thick| {
            turn_fits(turn, &size(length, width), &millimetres(thick))
        };
        assert_eq!(fits(600, 200, 9), Ok(millimetres(150)));
        // The first side is folded, even where it is the shorter.
        assert_eq!(fits(200, 600, 9), Ok(millimetres(50)));
        let misfit = Misfit { short: millimetres(10), pulls: false };
        assert_eq!(fits(120, 100, 10), Err(misfit));
    }

    #[test]
    fn dough_has_limits() {
        let tenths = |amount| Length::centimetres(exact(amount, 100));
        let cases = [
            (39, RolledFor::Turning, Some(Strain::Thin(tenths(40)))),
            (40, RolledFor::Turning, None),
            (251, RolledFor::Turning, Some(Strain::Thick(tenths(250)))),
            (14, RolledFor::YeastCut, Some(Strain::Thin(tenths(15)))),
            (35, RolledFor::YeastCut, None),
            (10, RolledFor::PuffCut, None),
            (101, RolledFor::PuffCut, Some(Strain::Thick(tenths(100)))),
        ];
        for (thickness, work, expected) in cases {
            assert_eq!(thickness_fits(&tenths(thickness), work), expected, "{work:?}");
        }
    }

    #[test]
    fn six_letter_turns_keep_their_fat() {
        // 10 mm, a third of fat, 243 layers before the sixth turn.
        assert_eq!(fat_layer_fits(&Length::centimetres(exact(1, 3 * 243))), None);
        assert!(fat_layer_fits(&Length::centimetres(exact(1, 3 * 729))).is_some());
        assert_eq!(fat_layer_fits(&Length::zero()), None);
    }

    #[test]
    fn a_sheet_may_lie_either_way_on_the_bench() {
        assert!(bench_fits(&size(500, 1100), &size(1200, 600)));
        assert!(!bench_fits(&size(700, 700), &size(1200, 600)));
    }
}
