//! One dough from its lock-in to its last sheet: every size, thickness and layer.

use crate::measure::{Exact, Length, Size};
use crate::model::{LockIn, Turn};

use super::bench::Bench;
use super::direction::LeftBy;
use super::{Batch, Direction, Layers};

/// What one step does with the dough, in the order of the steps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Action {
    /// The step's name.
    pub step: String,
    /// The sheet it rolls, first the side that is stretched and folded; without one, lock-in
    /// and turn take the dough as it lies.
    pub sheet: Option<Size>,
    /// Whether a folded block is rolled the same way as before, not a quarter turn from it.
    pub same_way: bool,
    /// How it encloses the fat.
    pub lock_in: Option<LockIn>,
    /// How it folds.
    pub turn: Option<Turn>,
    /// Whether the sheet it rolls before the lock-in is of fat alone.
    pub of_fat: bool,
    /// Whether it encloses the dough in the fat.
    pub inverted: bool,
    /// The part of a divided dough that it works on; `None` for the whole dough, as the
    /// action above left it.
    pub part: Option<PartInHand>,
}

/// A part of a divided dough.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartInHand {
    /// How much of the whole it is, above 0 and up to 1.
    pub share: Exact,
    /// The action that left the dough as it is taken, by its place among all; `None` where
    /// no action has had the dough in hand.
    pub follows: Option<usize>,
}

/// Everything that happened to one dough.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Laminated {
    /// The lock-in, where a sheet for it is known.
    pub lock_in: Option<LockedIn>,
    /// Every turn whose sheet is known, in order.
    pub folds: Vec<Folded>,
    /// Every rolled sheet, in order.
    pub sheets: Vec<Rolled>,
    /// Fat layers at the end, turns without a known sheet counted too; none where the fat is
    /// mixed in.
    pub fat_layers: u64,
}

/// The fat enclosed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LockedIn {
    /// The step.
    pub step: String,
    /// How.
    pub kind: LockIn,
    /// The sheet before it is closed; its first side is the one that is folded.
    pub sheet: Size,
    /// Whether the fat is outside: then the sheet is of fat and the block of dough.
    pub inverted: bool,
    /// The block within.
    pub block: Size,
    /// The closed parcel, folded side first.
    pub closed: Size,
    /// The sheet's thickness, from what it is made of alone.
    pub thickness: Length,
    /// The block's thickness.
    pub block_thickness: Length,
    /// Which way it is rolled next.
    pub next: Direction,
}

/// One turn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Folded {
    /// The step.
    pub step: String,
    /// The turn.
    pub turn: Turn,
    /// The sheet before folding; the side that is folded comes first.
    pub sheet: Size,
    /// The folded block, folded side first.
    pub folded: Size,
    /// The folded block's thickness.
    pub folded_thickness: Length,
    /// The sheet's thickness.
    pub thickness: Length,
    /// Fat layers before the turn.
    pub fat_before: u64,
    /// Fat layers after it.
    pub fat_after: u64,
    /// Plies, every one counted, before the turn.
    pub plies_before: u64,
    /// Plies after it.
    pub plies_after: u64,
    /// Which way the block is rolled next; a quarter turn where the steps end with it.
    pub next: Direction,
}

/// One rolled sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rolled {
    /// The step.
    pub step: String,
    /// First the side that is stretched.
    pub sheet: Size,
    /// How thick it lies.
    pub thickness: Length,
    /// Mean thickness of one fat layer; nought without fat layers.
    pub fat_layer: Length,
    /// Mean thickness of one dough layer, of which there is one more than of fat, or one
    /// fewer where the fat is outside.
    pub dough_layer: Length,
    /// Fat layers in it.
    pub fat_layers: u64,
    /// Which way it is rolled.
    pub way: Direction,
    /// What lay beneath the pin: its first side is the one that becomes the sheet's first;
    /// `None` where its sizes are not known.
    pub block: Option<Size>,
    /// How thick that was.
    pub block_thickness: Option<Length>,
}

/// Follows a fresh dough through its steps.
///
/// The fat counts from the lock-in on; where no step locks it in, it counts from the
/// start. Only the first lock-in is taken. `block` is the fat block's size; the usual one
/// is taken where the text gives none.
pub fn laminate(batch: &Batch, block: Option<&Size>, actions: &[Action]) -> Laminated {
    follow(Bench::new(batch, block, actions), actions)
}

/// Follows an already layered or turned dough, which comes with `brought`, through its steps.
pub fn laminate_on(batch: &Batch, brought: &Layers, actions: &[Action]) -> Laminated {
    let fat_layers = brought.fat().unwrap_or(0);
    let mut bench = Bench::new(batch, None, actions);
    bench.inverted = brought.inverted;
    bench.fat_in = true;
    bench.plies = brought.unmerged();
    bench.left_by = brought.turns.last().map(|_| LeftBy::Fold);
    bench.made.fat_layers = fat_layers;
    follow(bench, actions)
}

/// Each action takes the dough as the one that it follows left it: the parts of a divided
/// dough go their own ways.
fn follow(fresh: Bench, actions: &[Action]) -> Laminated {
    let mut all = fresh.made.clone();
    let mut left: Vec<Bench> = Vec::new();
    for (at, action) in actions.iter().enumerate() {
        let follows = match &action.part {
            Some(part) => part.follows,
            None => at.checked_sub(1),
        };
        let before = follows.and_then(|at| left.get(at));
        let mut bench = before.unwrap_or(&fresh).clone();
        let (sheets, folds) = (bench.made.sheets.len(), bench.made.folds.len());
        bench.take(action);
        all.sheets.extend(bench.made.sheets[sheets..].iter().cloned());
        all.folds.extend(bench.made.folds[folds..].iter().cloned());
        // Only this action says which way what it found was rolled next.
        let found = folds.checked_sub(1).and_then(|at| bench.made.folds.get(at));
        if let Some(found) = found
            && let Some(known) = all.folds.iter_mut().rfind(|it| it.step == found.step)
        {
            known.next = found.next;
        }
        all.lock_in = bench.made.lock_in.clone().or(all.lock_in);
        all.fat_layers = all.fat_layers.max(bench.made.fat_layers);
        left.push(bench);
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Mass, exact};

    fn size(length: i64, width: i64) -> Size {
        let side = |amount| Length::centimetres(exact(amount, 1));
        Size::new(side(length), side(width))
    }

    fn batch() -> Batch {
        Batch {
            dough: Mass::grams(exact(880, 1)),
            fat: Mass::grams(exact(228, 1)),
            dough_density: exact(11, 10),
            fat_density: exact(95, 100),
        }
    }

    fn rolled(step: &str, length: i64, width: i64) -> Action {
        let sheet = Some(size(length, width));
        let (of_fat, inverted) = (false, false);
        let same_way = false;
        Action {
            step: step.into(),
            sheet,
            same_way,
            lock_in: None,
            turn: None,
            of_fat,
            inverted,
            part: None,
        }
    }

    /// A dough that comes with so many fat layers.
    fn with_fat(layers: u32) -> Layers {
        let turns = if layers > 1 { vec![Turn::in_parts(layers)] } else { Vec::new() };
        Layers { lock_in: Some(LockIn::Envelope), inverted: false, turns }
    }

    fn turn(step: &str, length: i64, width: i64, parts: u32) -> Action {
        Action { turn: Some(Turn::in_parts(parts)), ..rolled(step, length, width) }
    }

    fn classic() -> Laminated {
        let lock_in = Some(LockIn::Envelope);
        let actions = [
            Action { lock_in, ..rolled("lock-in", 28, 28) },
            turn("first", 60, 20, 4),
            turn("second", 60, 20, 4),
            turn("third", 60, 20, 3),
            rolled("cut", 50, 30),
        ];
        laminate(&batch(), Some(&size(19, 19)), &actions)
    }

    fn millimetres(over: i64, under: i64) -> Length {
        Length::centimetres(exact(over, under * 10))
    }

    #[test]
    fn follows_the_classic_schedule() {
        let made = classic();
        assert_eq!(made.fat_layers, 48);
        let layers: Vec<_> = made.sheets.iter().map(|sheet| sheet.fat_layers).collect();
        assert_eq!(layers, [0, 1, 4, 16, 48]);
        let folds: Vec<_> =
            made.folds.iter().map(|fold| (fold.fat_before, fold.fat_after)).collect();
        assert_eq!(folds, [(1, 4), (4, 16), (16, 48)]);
        assert_eq!(made.folds[1].sheet, size(60, 20));
        assert_eq!(made.folds[1].folded, size(15, 20));
        assert_eq!(made.folds[2].folded, size(20, 20));
        assert!(made.folds.iter().all(|fold| fold.next == Direction::QuarterTurn));
        let ways: Vec<_> = made.sheets.iter().map(|sheet| sheet.way).collect();
        let quarter = Direction::QuarterTurn;
        assert_eq!(ways, [Direction::Any, Direction::Any, quarter, quarter, quarter]);
    }

    #[test]
    fn measures_thickness_by_volume() {
        let made = classic();
        let thickness = |step: usize| made.sheets[step].thickness.clone();
        // 800 ml of dough on 28 × 28 cm, then 1040 ml with the fat.
        assert_eq!(thickness(0), millimetres(8000, 784));
        assert_eq!(thickness(1), millimetres(10_400, 1200));
        assert_eq!(thickness(4), millimetres(10_400, 1500));
        let folded = &made.folds[0];
        assert_eq!(folded.folded_thickness, &folded.thickness * &exact(4, 1));
        let locked = made.lock_in.as_ref().map(|locked| &locked.block_thickness);
        assert_eq!(locked, Some(&millimetres(2400, 361)));
    }

    #[test]
    fn layers_add_up_to_the_sheet() {
        for sheet in classic().sheets {
            let count = |layers: u64| Exact::from_integer(layers.into());
            let fat = &sheet.fat_layer * &count(sheet.fat_layers);
            let dough = &sheet.dough_layer * &count(sheet.fat_layers + 1);
            assert_eq!(fat + dough, sheet.thickness, "{}", sheet.step);
        }
    }

    /// Derived: 3.5 mm, a third fat, 81 layers gives 14.4 µm.
    #[test]
    fn finds_the_mean_fat_layer() {
        let batch = Batch {
            dough: Mass::grams(exact(700, 1)),
            fat: Mass::grams(exact(350, 1)),
            dough_density: exact(1, 1),
            fat_density: exact(1, 1),
        };
        let made = laminate_on(&batch, &with_fat(81), &[rolled("cut", 100, 30)]);
        assert_eq!(made.sheets[0].thickness, millimetres(35, 10));
        assert_eq!(made.sheets[0].fat_layer, millimetres(35, 10 * 3 * 81));
    }

    /// 36 × 8 in, twice a book, 30 × 8 in a letter, 20 × 12 in to be cut: each block is
    /// stretched along its side of 8 in. Common practice, no source.
    #[test]
    fn the_eight_inch_side_is_stretched_each_time() {
        let inches = |length: i64, width: i64| {
            let side = |amount| Length::inches(&exact(amount, 1));
            Size::new(side(length), side(width))
        };
        let action = |step: &str, sheet: Size, parts: Option<u32>| Action {
            sheet: Some(sheet),
            turn: parts.map(Turn::in_parts),
            ..rolled(step, 1, 1)
        };
        let actions = [
            action("one", inches(36, 8), Some(4)),
            action("two", inches(36, 8), Some(4)),
            action("three", inches(30, 8), Some(3)),
            action("cut", inches(20, 12), None),
        ];
        let made = laminate_on(&batch(), &with_fat(1), &actions);
        let beneath: Vec<_> =
            made.sheets.iter().map(|sheet| sheet.block.clone()).collect();
        let expected = [(8, 9), (8, 9), (8, 10)].map(|(a, b)| Some(inches(a, b)));
        assert_eq!(beneath[1..], expected);
        assert!(made.sheets[1..].iter().all(|sheet| sheet.way == Direction::QuarterTurn));
    }

    #[test]
    fn the_same_way_only_where_it_is_said() {
        let again = Action { same_way: true, ..turn("two", 60, 20, 3) };
        let actions = [turn("one", 60, 20, 3), again, turn("three", 60, 20, 3)];
        let made = laminate_on(&batch(), &with_fat(1), &actions);
        let next: Vec<_> = made.folds.iter().map(|fold| fold.next).collect();
        assert_eq!(
            next,
            [Direction::SameWay, Direction::QuarterTurn, Direction::QuarterTurn]
        );
        assert_eq!(made.sheets[1].block, Some(size(20, 20)));
        assert_eq!(made.sheets[1].way, Direction::SameWay);
    }

    /// A letter lock-in is a fold; a dough that comes along folded is turned too.
    #[test]
    fn a_direction_lasts_through_lock_in_and_from_one_recipe_to_the_next() {
        let shell = Action { lock_in: Some(LockIn::Letter), ..rolled("lock", 42, 20) };
        let made = laminate(&batch(), None, &[shell, turn("one", 54, 22, 3)]);
        assert_eq!(made.lock_in.map(|locked| locked.next), Some(Direction::QuarterTurn));
        assert_eq!(made.sheets[1].block, Some(size(20, 14)));
        let out = [rolled("roll", 50, 30), rolled("cut", 50, 30)];
        let made = laminate_on(&batch(), &with_fat(3), &out);
        let ways: Vec<_> = made.sheets.iter().map(|sheet| sheet.way).collect();
        assert_eq!(ways, [Direction::QuarterTurn, Direction::Onward]);
        assert_eq!(
            (made.sheets[0].block.clone(), made.sheets[1].block.clone()),
            (None, Some(size(50, 30)))
        );
    }

    /// 240 ml of fat on 40 × 20 cm are 3 mm thick; 800 ml of dough as a block of 19 × 19 cm
    /// lie within; a letter turn makes 3 layers of dough and 4 of fat: by arithmetic.
    #[test]
    fn the_fat_may_be_outside() {
        let lock_in = Some(LockIn::Book);
        let shell =
            Action { lock_in, of_fat: true, inverted: true, ..rolled("lock-in", 40, 20) };
        let actions = [shell, turn("first", 60, 20, 3), rolled("cut", 50, 30)];
        let made = laminate(&batch(), Some(&size(19, 19)), &actions);
        let locked = made.lock_in.as_ref().map(|locked| {
            (locked.inverted, locked.thickness.clone(), locked.block_thickness.clone())
        });
        assert_eq!(locked, Some((true, millimetres(3, 1), millimetres(8000, 361))));
        assert_eq!(made.sheets[0].thickness, millimetres(3, 1));
        assert_eq!(made.fat_layers, 4);
        let cut = &made.sheets[2];
        let (fat, dough) =
            (&cut.fat_layer * &exact(4, 1), &cut.dough_layer * &exact(3, 1));
        assert_eq!(fat + dough, cut.thickness);
    }

    /// Fat mixed in, then turns: the same directions and sizes, and plies instead of layers
    /// of fat. One that comes along turned goes on with a quarter turn.
    #[test]
    fn a_dough_is_turned_without_a_lock_in() {
        let actions = [turn("one", 60, 20, 3), turn("two", 60, 20, 3)];
        let made = laminate(&batch(), None, &actions);
        let fat: Vec<_> =
            made.folds.iter().map(|it| (it.fat_before, it.fat_after)).collect();
        assert_eq!((made.fat_layers, fat), (0, vec![(0, 0), (0, 0)]));
        let plies: Vec<_> =
            made.folds.iter().map(|it| (it.plies_before, it.plies_after)).collect();
        assert_eq!(plies, [(1, 3), (3, 9)]);
        assert_eq!(made.sheets[1].way, Direction::QuarterTurn);
        assert_eq!(made.sheets[1].block, Some(size(20, 20)));
        // 1040 ml on 60 × 20 cm, all of it dough.
        assert_eq!(made.sheets[1].dough_layer, millimetres(10_400, 1200));
        let turned = Layers { lock_in: None, ..with_fat(9) };
        let made = laminate_on(&batch(), &turned, &[turn("three", 60, 20, 3)]);
        assert_eq!(made.sheets[0].way, Direction::QuarterTurn);
        let three = &made.folds[0];
        assert_eq!((three.fat_after, three.plies_before, three.plies_after), (0, 9, 27));
    }

    #[test]
    fn takes_the_dough_as_it_lies() {
        let mut fold = turn("fold", 1, 1, 4);
        fold.sheet = None;
        let made =
            laminate_on(&batch(), &with_fat(2), &[rolled("roll", 60, 20), fold.clone()]);
        assert_eq!(made.folds[0].sheet, size(60, 20));
        let made = laminate_on(&batch(), &with_fat(2), &[fold]);
        assert!(made.folds.is_empty());
        assert_eq!(made.fat_layers, 8);
    }
}
