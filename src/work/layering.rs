//! Sheets, lock-in and turns of one dough, with what an included dough brings along.

use crate::dough::{
    Action, Batch, Laminated, Layers, PartInHand, block_in_proportion, in_proportion,
    laminate, laminate_on,
};
use crate::formula::{Book, Flow, Formula, MadeOf, is_roll_in};
use crate::measure::{Exact, Mass, Size, exact};
use crate::model::{CutPlan, Purpose, Recipe, Rolling, Step, Turn};
use crate::pantry::Kind;

use super::cuts::grown;
use super::rows::{Times, cut_from, cut_sheet, cut_sheets};

/// Density of butter where the pantry gives none, g/ml, as encyclopaedias have it; a cup of
/// SR28 (227 g) comes to 0.96.
const FAT_DENSITY: (i64, i64) = (911, 1000);

/// The layering of one dough.
#[derive(Clone, Debug)]
pub struct Layering {
    /// What the dough consists of.
    pub batch: Batch,
    /// The lock-in, own or of the included dough, and all turns, those of the included
    /// dough first; `None` for a dough that is neither locked in nor turned.
    pub layers: Option<Layers>,
    /// The geometry of this recipe's own steps.
    pub laminated: Laminated,
    /// The step that shapes the fat block, by number.
    pub block: Option<usize>,
}

/// How the sheets of one dough grow.
#[derive(Clone, Debug)]
pub struct Growth {
    /// The dough, as a multiple of what is written.
    pub each: Exact,
    /// The pieces of a cut, as a multiple of those written.
    pub pieces: Exact,
    /// Whether the dough was reckoned from whole rows of pieces.
    pub whole_rows: bool,
    /// The sides of a piece that is cut, as a multiple of those written: the root of its
    /// weight over the weight as written, so that its thickness stays.
    pub side: Exact,
}

impl Growth {
    /// Pieces as they are written, and as many as the dough is for.
    pub(super) fn of_number(each: Exact, whole_rows: bool) -> Self {
        Self { pieces: each.clone(), each, whole_rows, side: exact(1, 1) }
    }

    /// How the pieces of a cut grow.
    pub(super) fn times(&self) -> Times<'_> {
        Times { each: &self.pieces, whole_rows: self.whole_rows }
    }

    /// A piece.
    pub fn sides(&self, size: &Size) -> Size {
        Size::new(&size.length * &self.side, &size.width * &self.side)
    }

    /// Whether pieces grow.
    pub fn changes_pieces(&self) -> bool {
        self.side != exact(1, 1)
    }
}

/// The step that shapes the block within, by number; `None` without a lock-in.
pub(super) fn block(recipe: &Recipe, formula: &Formula, flow: &Flow) -> Option<usize> {
    let steps: Vec<&Step> = recipe.steps().collect();
    let own = steps.iter().any(|step| step.lock_in.is_some());
    let bench = Bench { steps: &steps, formula, flow };
    own.then(|| bench.block_step()).flatten()
}

/// Follows the dough of `recipe` over the bench.
pub(super) fn layering(
    recipe: &Recipe,
    formula: &Formula,
    flow: &Flow,
    growth: &Growth,
    book: Book,
) -> Layering {
    let each = &growth.each;
    let steps: Vec<&Step> = recipe.steps().collect();
    let own = steps.iter().any(|step| step.lock_in.is_some());
    let bench = Bench { steps: &steps, formula, flow };
    let block = own.then(|| bench.block_step()).flatten();
    let batch = batch(&steps, formula, flow, each, book);
    let cuts = cut_sheets(&steps, &flow.parts, block);
    let on_bench: Vec<usize> = (0..steps.len())
        .filter(|at| Some(*at) != block && on_the_way(steps[*at]))
        .collect();
    let actions: Vec<Action> = on_bench
        .iter()
        .map(|at| Action {
            of_fat: bench.of_fat(*at),
            part: part_in_hand(*at, flow, &on_bench),
            ..action(steps[*at], growth, cut_from(*at, &steps, &flow.parts, &cuts))
        })
        .collect();
    let brought = if own { None } else { inherited(formula) };
    let laminated = match &brought {
        Some(brought) => laminate_on(&batch, brought, &actions),
        None => {
            let block = block.and_then(|at| steps[at].sheet.as_ref());
            let block = block.map(|sheet| block_in_proportion(&sheet.value, each));
            laminate(&batch, block.as_ref(), &actions)
        }
    };
    let own = || own_lock_in(recipe).or_else(|| own_turns(recipe));
    let layers = brought.or_else(own).map(|mut layers| {
        // What one part alone is folded counts in its own sheets.
        let whole = steps.iter().enumerate().filter(|(at, _)| flow.parts.of(*at) == 0);
        layers
            .turns
            .extend(whole.filter_map(|(_, step)| step.turn.as_ref().map(|it| it.value)));
        layers
    });
    Layering { batch, layers, laminated, block }
}

/// The part of a divided dough that a step works on, as the last step before it left the
/// dough that the part is of. `steps` are those that have the dough on the bench.
fn part_in_hand(at: usize, flow: &Flow, steps: &[usize]) -> Option<PartInHand> {
    let parts = &flow.parts;
    let left_by =
        |before: &usize| *before < at && parts.is_within(parts.of(at), parts.of(*before));
    parts.are_several().then(|| PartInHand {
        share: parts.share(at).clone(),
        follows: steps.iter().rposition(left_by),
    })
}

/// Whether the dough has layers of fat, its own or those of an included one.
pub(super) fn is_layered(recipe: &Recipe, formula: &Formula) -> bool {
    own_lock_in(recipe).or_else(|| brought(formula, own_lock_in)).is_some()
}

/// The first lock-in of a recipe, before any turn.
fn own_lock_in(recipe: &Recipe) -> Option<Layers> {
    recipe.steps().find_map(|step| {
        let lock_in = step.lock_in.as_ref()?.value;
        let lock_in = Some(lock_in);
        Some(Layers { lock_in, inverted: step.inverted, turns: Vec::new() })
    })
}

/// A dough that is turned with its fat mixed in, before any turn.
fn own_turns(recipe: &Recipe) -> Option<Layers> {
    let before = || Layers { lock_in: None, inverted: false, turns: Vec::new() };
    turns(recipe).next().map(|_| before())
}

/// The turns of a recipe's own steps.
fn turns(recipe: &Recipe) -> impl Iterator<Item = Turn> {
    recipe.steps().filter_map(|step| step.turn.as_ref().map(|turn| turn.value))
}

/// Whether a step has to do with the sheet.
fn on_the_way(step: &Step) -> bool {
    step.sheet.is_some() || step.laminates()
}

/// A step at this growth. A sheet that is cut, and one rolled to the same size before, grows by
/// rows of pieces; what is folded or locked in keeps its proportions.
fn action(step: &Step, growth: &Growth, cut: Option<&CutPlan>) -> Action {
    let size = |sheet: &Size| match cut {
        Some(plan) => {
            cut_sheet(&grown(plan, growth), &growth.sides(sheet), growth.times())
        }
        None => in_proportion(sheet, &growth.each),
    };
    Action {
        step: step.name.clone(),
        sheet: step.sheet.as_ref().map(|sheet| size(&sheet.value)),
        lock_in: step.lock_in.as_ref().map(|kind| kind.value),
        turn: step.turn.as_ref().map(|turn| turn.value),
        same_way: step.roll.as_ref().is_some_and(|roll| roll.value == Rolling::SameWay),
        of_fat: false,
        inverted: step.inverted,
        part: None,
    }
}

/// What the steps put on the bench.
struct Bench<'a> {
    steps: &'a [&'a Step],
    formula: &'a Formula<'a>,
    flow: &'a Flow,
}

impl Bench<'_> {
    /// The step that shapes the block within: its sheet has only roll-in fat on it, or, where
    /// the fat is outside, it is the last sheet of dough before the lock-in.
    fn block_step(&self) -> Option<usize> {
        let lock_in = self.steps.iter().position(|step| step.lock_in.is_some())?;
        let sheet = |at: &usize| {
            self.steps[*at].sheet.is_some() && self.steps[*at].lock_in.is_none()
        };
        if self.steps[lock_in].inverted {
            return (0..lock_in).rev().find(|at| sheet(at) && !self.is_fat_alone(*at));
        }
        (0..self.steps.len()).find(|at| sheet(at) && self.is_fat_alone(*at))
    }

    /// Whether the sheet of a step is of fat alone: it shapes the fat, or encloses the dough
    /// in it.
    fn of_fat(&self, at: usize) -> bool {
        self.steps[at].inverted || self.is_fat_alone(at)
    }

    fn is_fat_alone(&self, at: usize) -> bool {
        let used = self.flow.uses[at].iter();
        let purposes = used.map(|(line, _)| self.formula.lines[*line].purpose);
        let is = |wanted: Purpose| purposes.clone().any(|purpose| purpose == wanted);
        is(Purpose::RollIn) && !is(Purpose::Mixed)
    }
}

/// What lies on the bench at the last step that has to do with the sheet.
fn batch(
    steps: &[&Step],
    formula: &Formula,
    flow: &Flow,
    each: &Exact,
    book: Book,
) -> Batch {
    let last = steps.iter().rposition(|step| on_the_way(step));
    let (dough, fat) = last
        .map_or_else(|| (Mass::zero(), Mass::zero()), |step| flow.whole(step, formula));
    Batch {
        dough: &dough * each,
        fat: &fat * each,
        dough_density: dough_density(steps, formula, book),
        fat_density: fat_density(formula, book),
    }
}

fn dough_density(_: &[&Step], formula: &Formula, book: Book) -> Exact {
    let own = formula.lines.iter().find_map(|line| match line.source {
        MadeOf::Recipe(recipe) => recipe.dough_density.clone(),
        MadeOf::Item(_) => None,
    });
    let course =
        || book.content.course.as_ref().map(|course| course.dough_density.clone());
    own.or_else(course).unwrap_or_else(|| exact(11, 10))
}

fn fat_density(formula: &Formula, book: Book) -> Exact {
    let fat = formula
        .lines
        .iter()
        .filter(|line| line.is(Kind::Fat) && is_roll_in(line.section, formula))
        .find_map(|line| match line.source {
            MadeOf::Item(item) => item.grams_a_millilitre(),
            MadeOf::Recipe(_) => None,
        });
    let butter = || book.pantry.find("butter").and_then(|item| item.grams_a_millilitre());
    fat.or_else(butter).unwrap_or_else(|| exact(FAT_DENSITY.0, FAT_DENSITY.1))
}

/// The layers that a dough has when it arrives, from the first included recipe that has any;
/// else the turns of the first that is turned.
fn inherited(formula: &Formula) -> Option<Layers> {
    brought(formula, own_lock_in).or_else(|| brought(formula, own_turns))
}

fn brought(formula: &Formula, own: fn(&Recipe) -> Option<Layers>) -> Option<Layers> {
    formula.included().find_map(|(inner, formula)| {
        let mut layers = own(inner).or_else(|| brought(formula, own))?;
        layers.turns.extend(turns(inner));
        Some(layers)
    })
}
