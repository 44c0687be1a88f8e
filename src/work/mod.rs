//! A recipe worked out at one scale, in exact amounts: what the checks judge and the sheet
//! puts into words.

mod cuts;
mod included;
mod layering;
mod piece;
mod pieces;
mod rows;
mod times;
mod water;

use rows::Sheets;

pub use cuts::CutWork;
pub use included::{included, taken, visit};
pub use layering::{Growth, Layering};
pub use piece::{
    gives_pieces, is_leavened, own_shape, piece_in_hand, set_down, shaped_at,
};
pub use pieces::Lot;
pub(crate) use times::loads;
use times::trays;
pub use times::{Timing, WorkJob};
pub use water::{mixed_water, mixing_step, wanted_water};

use crate::dough::cutting::Refusal;
use crate::dough::root_near;
use crate::formula::{
    Body, Book, Counting, Flow, Formula, Percentages, Scaling, Unscalable, Yield, batch,
    depth_assumed, doughs, factor, hydration, percentages, pieces, weigh,
};
use crate::measure::{Exact, Mass, exact};
use crate::model::{Kit, Recipe, Step, Tin};

use pieces::Pieces;

/// A recipe worked out.
#[derive(Clone, Debug)]
pub struct Work<'a> {
    /// The recipe as written.
    pub recipe: &'a Recipe,
    /// Its formula as written, with the faults in it.
    pub formula: Formula<'a>,
    /// Which lines go where.
    pub flow: Flow,
    /// What the pieces are made of.
    pub body: Body,
    /// The percentages of the formula.
    pub percentages: Percentages,
    /// Liquid or water over the flour of the dough, in percent.
    pub hydration: Option<Exact>,
    /// What hydration counts.
    pub counting: Counting,
    /// The tin it is baked in, if it is said: the one asked for, else the recipe's own.
    pub tin: Option<Tin>,
    /// Whether tins were compared by their bases alone.
    pub depth_assumed: bool,
    /// How many times the recipe as written it is made: a little more than was asked for
    /// where the last sheet is of whole rows.
    pub factor: Exact,
    /// How many times the recipe as written was asked for.
    pub asked: Exact,
    /// How many pieces were asked for; `None` for a base dough.
    pub asked_pieces: Option<u64>,
    /// In how many equal doughs.
    pub doughs: u64,
    /// How many pieces; `None` for a base dough.
    pub pieces: Option<u64>,
    /// How many pieces each step has in hand: fewer than all where it works on a part of a
    /// divided dough.
    pub in_hand: Vec<Option<u64>>,
    /// The same by lots that are alike: the parts of a divided dough that come together.
    pub lots: Vec<Vec<Lot>>,
    /// How many pieces the parts of a divided dough give together.
    pub in_parts: Option<u64>,
    /// The dough in one piece, less the loss; `None` for a base dough, and where it cannot
    /// be known.
    pub piece: Option<Mass>,
    /// How the sheets of one dough have grown.
    pub growth: Growth,
    /// Sheets, lock-in and turns of one dough.
    pub layering: Layering,
    /// The cuts of one dough, by step number; or why one cannot be made.
    pub cuts: Vec<(usize, Result<CutWork, Refusal>)>,
    /// The times; or the names of steps that wait for each other in a ring.
    pub timing: Result<Timing, Vec<String>>,
}

/// Works out `recipe` as `scaling` wants it.
///
/// # Errors
/// The reason, where it cannot be scaled so.
pub fn work<'a>(
    recipe: &'a Recipe,
    scaling: &Scaling,
    book: Book<'a>,
) -> Result<Work<'a>, Unscalable> {
    let formula = weigh(recipe, book);
    let flow = Flow::new(recipe, &formula);
    let body = Body::new(recipe, &formula, &flow);
    let percentages = percentages(&formula, &body);
    let dough = body.mass(&formula);
    let written = Yield {
        piece: piece_as_written(recipe, &formula, &flow, &body, book),
        flour: percentages.flour.clone(),
        all: batch(&formula, recipe),
    };
    let asked = factor(scaling, recipe, &written)?;
    let asked_pieces = pieces(scaling, recipe, &asked);
    let heavier = heavier(scaling, &written);
    let split =
        split(recipe, (&formula, &flow), scaling, (&asked, &heavier), (&dough, book));
    let (each, doughs) = (split.each, split.doughs);
    let factor = &each * Exact::from_integer(doughs.into());
    let as_written = factor == exact(1, 1) && asked == factor;
    let in_rows = split.pieces.filter(|_| !as_written);
    let in_rows =
        in_rows.and_then(|it| pieces(&Scaling::Batches(it.clone()), recipe, &it));
    let growth = growth(each, heavier, scaling);
    let layering = layering::layering(recipe, &formula, &flow, &growth, book);
    let cuts = cuts::cuts(recipe, &flow, &layering, &growth);
    let (scale, promised) = ((&factor, doughs), in_rows.or(asked_pieces));
    let counted = Pieces { recipe, flow: &flow, cuts: &cuts, promised, scale };
    let counts = counted.counts(&dough, as_written);
    let known = || counts.piece.filter(|_| body.open(&formula).is_empty());
    let piece = asked_weight(scaling).or_else(known);
    let timing =
        times::timing((recipe, &formula), &factor, (&counts.in_hand, &counts.lots), book);
    let counting = counting(recipe, book);
    Ok(Work {
        hydration: hydration(&formula, &body, counting),
        counting,
        tin: tin(scaling, recipe),
        depth_assumed: depth_assumed(scaling, recipe),
        recipe,
        formula,
        flow,
        body,
        percentages,
        factor,
        doughs,
        asked,
        asked_pieces,
        pieces: counts.pieces,
        in_hand: counts.in_hand,
        lots: counts.lots,
        in_parts: counts.in_parts,
        piece,
        growth,
        layering,
        cuts,
        timing,
    })
}

impl Work<'_> {
    /// The steps in the order written.
    pub fn steps(&self) -> Vec<&Step> {
        self.recipe.steps().collect()
    }

    /// The pieces that a step has in hand; all of them where there is no such step.
    pub fn pieces_at(&self, step: &str) -> Option<u64> {
        let at = self.recipe.steps().position(|own| own.name == step);
        at.map_or(self.pieces, |at| self.in_hand[at])
    }

    /// The trays that a step's pieces take, each lot on trays of its own; 1 where that is not
    /// known.
    pub fn trays_at(&self, step: &Step) -> u64 {
        let at = self.recipe.steps().position(|own| own.name == step.name);
        trays(step, self.recipe, at.map_or(&[][..], |at| &self.lots[at]))
    }

    /// The scale of one dough: the factor over the number of doughs.
    pub fn each(&self) -> Exact {
        &self.factor / Exact::from_integer(self.doughs.into())
    }
}

/// The weight of a piece, where that is asked for.
fn asked_weight(scaling: &Scaling) -> Option<Mass> {
    match scaling {
        Scaling::PieceWeight { weight, .. } => Some(weight.clone()),
        Scaling::Batches(_)
        | Scaling::Pieces(_)
        | Scaling::Flour(_)
        | Scaling::Total(_)
        | Scaling::Tin(_) => None,
    }
}

/// The tin it is baked in.
fn tin(scaling: &Scaling, recipe: &Recipe) -> Option<Tin> {
    match scaling {
        Scaling::Tin(tin) => Some(tin.clone()),
        Scaling::Batches(_)
        | Scaling::Pieces(_)
        | Scaling::PieceWeight { .. }
        | Scaling::Flour(_)
        | Scaling::Total(_) => recipe.tin.as_ref().map(|tin| tin.value.clone()),
    }
}

/// What hydration counts: as the recipe says, else as the course says.
fn counting(recipe: &Recipe, book: Book) -> Counting {
    let course = || book.content.course.as_ref().is_some_and(|c| c.true_hydration);
    if recipe.true_hydration.unwrap_or_else(course) {
        Counting::Water
    } else {
        Counting::Liquids
    }
}

/// What the classroom has; nothing known where there is no course.
pub fn kit(book: Book) -> Kit {
    book.content.course.as_ref().map(|course| course.kit.clone()).unwrap_or_default()
}

/// The dough that a mixer must hold: nothing where no step needs one.
fn mixed(recipe: &Recipe, dough: &Mass) -> Mass {
    if recipe.steps().any(Step::needs_mixer) { dough.clone() } else { Mass::zero() }
}

/// The weight of one piece as written, before any scaling.
fn piece_as_written(
    recipe: &Recipe,
    formula: &Formula,
    flow: &Flow,
    body: &Body,
    book: Book,
) -> Option<Mass> {
    let one = exact(1, 1);
    let growth = Growth::of_number(one.clone(), false);
    let layering = layering::layering(recipe, formula, flow, &growth, book);
    let cuts = cuts::cuts(recipe, flow, &layering, &growth);
    let promised = pieces(&Scaling::Batches(one.clone()), recipe, &one);
    let pieces = Pieces { recipe, flow, cuts: &cuts, promised, scale: (&one, 1) };
    pieces.weight(&body.mass(formula)).filter(|_| body.open(formula).is_empty())
}

/// How many times as heavy as written a piece is.
fn heavier(scaling: &Scaling, written: &Yield) -> Exact {
    let heavier = match scaling {
        Scaling::PieceWeight { weight, .. } => {
            written.piece.as_ref().and_then(|piece| weight.over(piece))
        }
        Scaling::Batches(_)
        | Scaling::Pieces(_)
        | Scaling::Flour(_)
        | Scaling::Total(_)
        | Scaling::Tin(_) => None,
    };
    heavier.unwrap_or_else(|| exact(1, 1))
}

/// How the sheets grow for `each` times the dough: pieces of another weight keep their
/// thickness, so that their sides grow with the root.
fn growth(each: Exact, heavier: Exact, scaling: &Scaling) -> Growth {
    let whole_rows = rows::in_rows(scaling);
    if heavier == exact(1, 1) {
        return Growth::of_number(each, whole_rows);
    }
    Growth { pieces: &each / &heavier, side: root_near(&heavier), whole_rows, each }
}

/// Into how many doughs of which size mixer, bench and whole rows split it.
fn split(
    recipe: &Recipe,
    (formula, flow): (&Formula, &Flow),
    scaling: &Scaling,
    factors: (&Exact, &Exact),
    (dough, book): (&Mass, Book),
) -> rows::Split {
    let kit = kit(book);
    let sheets = Sheets {
        steps: recipe.steps().collect(),
        parts: &flow.parts,
        block: layering::block(recipe, formula, flow),
        layered: layering::is_layered(recipe, formula),
        promised: pieces(&Scaling::Batches(exact(1, 1)), recipe, &exact(1, 1)),
    };
    let room = kit.bench.as_ref().and_then(|bench| sheets.room(bench));
    let dough = mixed(recipe, dough);
    sheets.split(scaling, factors, |factor| doughs(factor, &dough, room.as_ref(), &kit))
}
