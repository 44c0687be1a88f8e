//! The sheet for another weight of the same dough, at the same thickness.

use crate::measure::{Area, Exact, Length, Size, exact, round_to};

use super::root;

/// The sheet for `factor` times the dough, as thick as `size` was and of the same proportions:
/// at one thickness the area grows with the mass, so both sides grow with its square root.
/// Each side is what a ruler reads: to ½ cm, or ¼ in where the sheet was written in inches.
/// As written where `factor` is 1, nought or less.
#[must_use]
pub fn in_proportion(size: &Size, factor: &Exact) -> Size {
    let step = ruler_step(size);
    sides(size, factor, |side| round_to(side, &step).max(step.clone()))
}

/// The same for a block of fat, each side rounded down, so that the dough still closes
/// over it.
#[must_use]
pub fn block_in_proportion(size: &Size, factor: &Exact) -> Size {
    let step = ruler_step(size);
    sides(size, factor, |side| ((side / &step).floor() * &step).max(step.clone()))
}

fn sides(size: &Size, factor: &Exact, shown: impl Fn(&Exact) -> Exact) -> Size {
    if *factor <= exact(0, 1) || *factor == exact(1, 1) {
        return size.clone();
    }
    let side = |side: &Length| {
        let square = Area::square_centimetres(side.amount() * side.amount() * factor);
        Length::centimetres(shown(root::side_near(&square).amount()))
    };
    Size::new(side(&size.length), side(&size.width))
}

/// What a ruler is read to for this sheet, cm: ½ cm; ¼ in where both sides are whole eighths
/// of an inch and not both whole half centimetres, which is how a sheet in inches is known.
pub fn ruler_step(size: &Size) -> Exact {
    let whole = |step: &Exact| {
        [&size.length, &size.width].iter().all(|side| (side.amount() / step).is_integer())
    };
    let (half, eighth) = (exact(1, 2), exact(254, 800));
    if !whole(&half) && whole(&eighth) { exact(254, 400) } else { half }
}

/// How many times as much dough goes on the largest sheet of these proportions that lies on
/// the bench, long side along it; `None` where the sheet has no size.
pub fn room_in_proportion(size: &Size, bench: &Size) -> Option<Exact> {
    let (size, bench) = (super::long_first(size), super::long_first(bench));
    let along = bench.length.over(&size.length)?;
    let across = bench.width.over(&size.width)?;
    let side = along.min(across);
    Some(&side * &side)
}

/// The same where only the first side grows; `None` where the sheet has no size, or where
/// its other side is wider than the bench already.
pub fn room_lengthwise(size: &Size, bench: &Size) -> Option<Exact> {
    let bench = super::long_first(bench);
    // Across the bench, where the sheet's other side takes the long one.
    let room = if size.width > bench.width { &bench.width } else { &bench.length };
    room.over(&size.length).filter(|_| size.width <= bench.length)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn size(length: i64, width: i64) -> Size {
        let side = |tenths| Length::centimetres(exact(tenths, 10));
        Size::new(side(length), side(width))
    }

    fn inches(length: i64, width: i64) -> Size {
        let side = |quarters| Length::inches(&exact(quarters, 4));
        Size::new(side(length), side(width))
    }

    /// 60 × √2 = 84.85, 20 × √2 = 28.28: by arithmetic.
    #[test]
    fn both_sides_grow_with_the_root() {
        assert_eq!(in_proportion(&size(600, 200), &exact(2, 1)), size(850, 285));
        assert_eq!(in_proportion(&size(600, 200), &exact(1, 2)), size(425, 140));
        assert_eq!(in_proportion(&size(600, 200), &exact(4, 1)), size(1200, 400));
        assert_eq!(in_proportion(&size(613, 200), &exact(1, 1)), size(613, 200));
        // 36 × √½ = 25.46 in, 8 × √½ = 5.66 in.
        assert_eq!(in_proportion(&inches(144, 32), &exact(1, 2)), inches(102, 23));
        // A block is never larger: 19 × √2 = 26.87.
        assert_eq!(block_in_proportion(&size(190, 190), &exact(2, 1)), size(265, 265));
    }

    #[test]
    fn a_bench_has_room_for_so_much() {
        let bench = size(1200, 600);
        assert_eq!(room_in_proportion(&size(600, 200), &bench), Some(exact(4, 1)));
        assert_eq!(room_in_proportion(&size(200, 600), &bench), Some(exact(4, 1)));
        assert_eq!(room_lengthwise(&size(600, 300), &bench), Some(exact(2, 1)));
        assert_eq!(room_lengthwise(&size(300, 900), &bench), Some(exact(2, 1)));
        assert_eq!(room_lengthwise(&size(300, 1300), &bench), None);
    }
}
