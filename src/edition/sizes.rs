//! The sizes that a recipe's page offers: few enough to be told apart, and to be carried.

use crate::formula::Scaling;
use crate::measure::{Exact, exact, float};
use crate::model::{MOST_SIZES, Makes, Recipe};

/// The size as written.
const WRITTEN: (&str, (i64, i64)) = ("x1", (1, 1));
/// The usual batches beside it, those first that come first where there is little room.
const USUAL: [(&str, (i64, i64)); 3] = [("x2", (2, 1)), ("half", (1, 2)), ("x3", (3, 1))];

/// One size of a recipe.
pub(crate) struct Size {
    /// Its short name: `half`, `n18`.
    pub(crate) key: String,
    /// How it is reckoned.
    pub(crate) scaling: Scaling,
    /// Over the recipe as written.
    pub(super) factor: Exact,
    /// Whether it is told by its pieces and not by its batches.
    pub(super) by_pieces: bool,
}

/// The sizes of a recipe, smallest first: as written, those that its author asks for, and the
/// usual ones as far as there is room for them.
pub(super) fn sizes(recipe: &Recipe) -> Vec<Size> {
    let mut found = vec![usual(WRITTEN)];
    found
        .extend(recipe.offered().0.iter().filter_map(|pieces| own(recipe, pieces.value)));
    for one in USUAL.map(usual) {
        let known = found.iter().any(|size| size.factor == one.factor);
        if !known && found.len() < MOST_SIZES {
            found.push(one);
        }
    }
    found.sort_by(|one, other| one.factor.cmp(&other.factor));
    found
}

/// The short name of a size that a recipe's page offers.
pub(crate) fn batch_key(recipe: &Recipe, factor: f64) -> Option<String> {
    let near = |size: &Size| (float(&size.factor) - factor).abs() < 1e-9;
    sizes(recipe).into_iter().find(near).map(|size| size.key)
}

fn usual((key, (over, under)): (&str, (i64, i64))) -> Size {
    let factor = exact(over, under);
    let scaling = Scaling::Batches(factor.clone());
    Size { key: key.to_owned(), scaling, factor, by_pieces: false }
}

/// So many pieces, as a usual batch where they are one.
fn own(recipe: &Recipe, pieces: u64) -> Option<Size> {
    let written = match recipe.makes.as_ref()?.value {
        Makes::Pieces { count, .. } | Makes::Tins { count, .. } => count,
        Makes::Weight(_) => return None,
    };
    let factor = Exact::new(pieces.into(), written.into());
    if let Some(one) = USUAL.map(usual).into_iter().find(|one| one.factor == factor) {
        return Some(one);
    }
    let (key, scaling) = (format!("n{pieces}"), Scaling::Pieces(pieces));
    Some(Size { key, scaling, factor, by_pieces: true })
}
