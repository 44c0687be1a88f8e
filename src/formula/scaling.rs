//! Scaling: how many times the recipe as written, and in how many equal doughs.

use num_traits::ToPrimitive;

use crate::measure::{Area, Exact, Length, Mass, Size, ceil, exact};
use crate::model::{Kit, Makes, Recipe, Tin};
use crate::said;
use crate::statement::Statement;

/// What the baker wants.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Scaling {
    /// So many batches.
    Batches(Exact),
    /// So many pieces.
    Pieces(u64),
    /// Pieces of exactly this weight: so many, else as many as written.
    PieceWeight {
        /// How many, at least 1.
        pieces: Option<u64>,
        /// The weight of each, less the loss.
        weight: Mass,
    },
    /// This much flour in all.
    Flour(Mass),
    /// This much dough and everything else in all.
    Total(Mass),
    /// For another tin of the same depth, or of its own.
    Tin(Tin),
}

/// Why a recipe cannot be scaled as wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unscalable {
    /// The weight of a piece is wanted, and what one weighs is not known.
    PieceUnknown,
    /// Flour is wanted, and there is none.
    NoFlour,
    /// A weight is wanted, and it has none.
    Weightless,
    /// Another tin is wanted, and it names none.
    NoTin,
    /// Nothing is wanted, or more than anyone makes.
    OutOfBounds,
    /// Pieces are wanted, and it is not made in pieces.
    NotInPieces,
}

impl Unscalable {
    /// It as a statement.
    pub fn said(self) -> Statement {
        match self {
            Self::PieceUnknown => said!("size-piece-unknown"),
            Self::NoFlour => said!("size-no-flour"),
            Self::Weightless => said!("size-weightless"),
            Self::NoTin => said!("size-no-tin"),
            Self::OutOfBounds => said!("size-out-of-bounds"),
            Self::NotInPieces => said!("size-not-in-pieces"),
        }
    }
}

/// What one batch as written comes to.
#[derive(Clone, Debug)]
pub struct Yield {
    /// The weight of one piece; `None` where that is not known.
    pub piece: Option<Mass>,
    /// The flour of its dough.
    pub flour: Mass,
    /// All of it, less the loss.
    pub all: Mass,
}

/// How many times the recipe as written `scaling` is.
///
/// # Errors
/// The reason, where the recipe has no pieces, no flour or no tin to scale by, or where
/// the factor is nought or above 10,000.
pub fn factor(
    scaling: &Scaling,
    recipe: &Recipe,
    batch: &Yield,
) -> Result<Exact, Unscalable> {
    let factor = match scaling {
        Scaling::Batches(batches) => batches.clone(),
        Scaling::Pieces(wanted) => times(*wanted, recipe)?,
        Scaling::PieceWeight { pieces, weight } => {
            let times = pieces.map_or(Ok(exact(1, 1)), |wanted| times(wanted, recipe))?;
            written_count(recipe)?;
            let piece = batch.piece.as_ref().and_then(|piece| weight.over(piece));
            piece.ok_or(Unscalable::PieceUnknown)? * times
        }
        Scaling::Flour(mass) => mass.over(&batch.flour).ok_or(Unscalable::NoFlour)?,
        Scaling::Total(mass) => mass.over(&batch.all).ok_or(Unscalable::Weightless)?,
        Scaling::Tin(tin) => {
            let from = recipe.tin.as_ref().ok_or(Unscalable::NoTin)?;
            tin_ratio(&from.value, tin)
        }
    };
    if factor > exact(0, 1) && factor <= exact(10_000, 1) {
        Ok(factor)
    } else {
        Err(Unscalable::OutOfBounds)
    }
}

/// So many pieces over those as written.
fn times(wanted: u64, recipe: &Recipe) -> Result<Exact, Unscalable> {
    Ok(Exact::new(wanted.into(), written_count(recipe)?.into()))
}

fn written_count(recipe: &Recipe) -> Result<u64, Unscalable> {
    let count = recipe.makes.as_ref().and_then(|makes| makes.value.count());
    count.ok_or(Unscalable::NotInPieces)
}

/// How many pieces `scaling` asks for, `factor` times the recipe as written: the number
/// asked for itself, else to the nearest whole one and at least one. `None` where it is
/// not made in pieces.
pub fn pieces(scaling: &Scaling, recipe: &Recipe, factor: &Exact) -> Option<u64> {
    let written = written_count(recipe).ok()?;
    let asked = match scaling {
        Scaling::Pieces(wanted) => Some(*wanted),
        Scaling::PieceWeight { pieces, .. } => Some(pieces.unwrap_or(written)),
        // Two cakes in other tins are two cakes.
        Scaling::Tin(_) => is_in_tins(recipe).then_some(written),
        Scaling::Batches(_) | Scaling::Flour(_) | Scaling::Total(_) => None,
    };
    let near = || (Exact::from_integer(written.into()) * factor).round().to_integer();
    asked.or_else(|| near().to_u64()).map(|pieces| pieces.max(1))
}

fn is_in_tins(recipe: &Recipe) -> bool {
    let makes = recipe.makes.as_ref().map(|makes| &makes.value);
    matches!(makes, Some(Makes::Tins { .. }))
}

/// Whether two tins are compared by their bases alone, because the depth of one is not
/// said: a baker must know that.
pub fn depth_assumed(scaling: &Scaling, recipe: &Recipe) -> bool {
    let Scaling::Tin(to) = scaling else { return false };
    let from = recipe.tin.as_ref().map(|tin| base(&tin.value).1);
    from.is_some_and(|from| from.is_none() || base(to).1.is_none())
}

/// Volume over volume; where one depth is not said, the depths count as equal.
fn tin_ratio(from: &Tin, to: &Tin) -> Exact {
    let (from_area, from_depth) = base(from);
    let (to_area, to_depth) = base(to);
    let depths = match (from_depth, to_depth) {
        (Some(from), Some(to)) => to.over(&from).unwrap_or_else(|| exact(1, 1)),
        _ => exact(1, 1),
    };
    to_area.over(&from_area).map_or_else(|| exact(1, 1), |areas| areas * depths)
}

/// A tin's inner base and depth.
fn base(tin: &Tin) -> (Area, Option<Length>) {
    match tin {
        Tin::Round(across, depth) => (round(across), depth.clone()),
        Tin::Ring(across, hole, depth) => (round(across) - round(hole), depth.clone()),
        Tin::Square(length, width, depth) => {
            (Size::new(length.clone(), width.clone()).area(), depth.clone())
        }
    }
}

/// The area of a round: π/4 of the square over it, π to nine places.
fn round(across: &Length) -> Area {
    let square = Size::new(across.clone(), across.clone()).area();
    &square * &exact(3_141_592_654, 4_000_000_000)
}

/// Into how many equal doughs a batch of `factor` is split: as few as the mixer holds and
/// the bench has room for. `dough` is the dough mixed for one batch, `room` how many batches
/// in one dough the bench has room for. A recipe that as written outgrows its kit is one
/// dough here; a check says so.
pub fn doughs(factor: &Exact, dough: &Mass, room: Option<&Exact>, kit: &Kit) -> u64 {
    let one = exact(1, 1);
    if *factor <= one {
        return 1;
    }
    let by_mixer = kit.mixer.as_ref().and_then(|mixer| (dough * factor).over(mixer));
    let by_bench = room.filter(|room| room.is_positive()).map(|room| factor / room);
    let needed =
        by_mixer.into_iter().chain(by_bench).max().unwrap_or_else(|| one.clone());
    // A recipe that fills the bench as written keeps its own size: never less than one
    // batch for each dough is asked of it.
    ceil(&needed.min(factor.ceil())).max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Areas of round tins go as the squares of their diameters: 9 in over 8 in is 81/64,
    /// derived by arithmetic.
    #[test]
    fn tins_scale_by_volume() {
        let round = |across: i64| Tin::Round(Length::inches(&exact(across, 1)), None);
        assert_eq!(tin_ratio(&round(8), &round(9)), exact(81, 64));
        let square = |a: i64, b: i64| {
            Tin::Square(Length::inches(&exact(a, 1)), Length::inches(&exact(b, 1)), None)
        };
        assert_eq!(tin_ratio(&square(8, 8), &square(13, 9)), exact(117, 64));
        // A ring of 10 in with a hole of 6 in has the base of a round of 8 in.
        let inches = |n| Length::inches(&exact(n, 1));
        let ring = Tin::Ring(inches(10), inches(6), None);
        assert_eq!(tin_ratio(&round(8), &ring), exact(1, 1));
        // 8-in square to 9-in round: 63.617/64 = 0.99402, derived by arithmetic.
        let off = tin_ratio(&square(8, 8), &round(9)) - exact(99_402, 100_000);
        assert!(off < exact(1, 100_000) && off > exact(-1, 100_000));
        // Depths count where both are said.
        let deep = |depth| Tin::Round(inches(8), Some(inches(depth)));
        assert_eq!(tin_ratio(&deep(2), &deep(3)), exact(3, 2));
        assert_eq!(tin_ratio(&deep(2), &round(8)), exact(1, 1));
    }

    /// 8 portions to 18 are 2.25 times: common practice, no source. 102 lb of an ingredient
    /// in place of 30 lb are 3.4 times: US Armed Forces Recipe Service, TM 10-412 A-1.
    #[test]
    fn factors_by_portions_and_by_flour() {
        let text = "makes: 8 rolls\nformula:\n  - 30 lb bread flour\n  - 20 lb water\n";
        super::super::testing::with_body(text, "", |formula, recipe, _| {
            let flour = formula.lines[0].mass();
            let batch = Yield { piece: None, flour, all: formula.total() };
            let factor = |scaling| super::factor(&scaling, recipe, &batch);
            assert_eq!(factor(Scaling::Pieces(18)), Ok(exact(9, 4)));
            let flour = Mass::ounces(&exact(102 * 16, 1));
            assert_eq!(factor(Scaling::Flour(flour)), Ok(exact(34, 10)));
            let total = Mass::ounces(&exact(25 * 16, 1));
            assert_eq!(factor(Scaling::Total(total)), Ok(exact(1, 2)));
        });
    }

    #[test]
    fn doughs_follow_mixer_and_bench() {
        let kit = Kit { mixer: Some(Mass::grams(exact(2000, 1))), ..Kit::default() };
        let dough = Mass::grams(exact(900, 1));
        assert_eq!(doughs(&exact(2, 1), &dough, None, &kit), 1);
        assert_eq!(doughs(&exact(3, 1), &dough, None, &kit), 2);
        assert_eq!(doughs(&exact(1, 2), &dough, None, &kit), 1);
        let room = exact(2, 1);
        assert_eq!(doughs(&exact(2, 1), &dough, Some(&room), &Kit::default()), 1);
        assert_eq!(doughs(&exact(3, 1), &dough, Some(&room), &Kit::default()), 2);
        let none = exact(0, 1);
        assert_eq!(doughs(&exact(3, 1), &dough, Some(&none), &Kit::default()), 1);
    }
}
