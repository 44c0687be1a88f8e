//! Sheets, lock-in and turns of one dough, with what an included dough brings along.

use crate::dough::{Action, Batch, Laminated, grow, laminate, laminate_on};
use crate::formula::{Book, Flow, Formula, Source, is_dough, is_roll_in, weigh};
use crate::measure::{Exact, Mass, Size, exact};
use crate::model::{LockIn, Recipe, Step, Turn};
use crate::pantry::Kind;

/// Levels of included doughs that are followed back.
const DEEPEST: usize = 16;

/// Density of butter where the pantry gives none, g/ml. From memory: 0.91 to 0.96.
const FAT_DENSITY: (i64, i64) = (911, 1000);

/// The layering of one dough.
#[derive(Clone, Debug)]
pub struct Layering {
    /// What the dough consists of.
    pub batch: Batch,
    /// The lock-in, own or of the included dough.
    pub lock_in: Option<LockIn>,
    /// All turns, those of the included dough first.
    pub turns: Vec<Turn>,
    /// The geometry of this recipe's own steps.
    pub laminated: Laminated,
    /// The step that shapes the fat block, by number.
    pub block: Option<usize>,
}

/// Follows the dough of `recipe` over the bench, `each` times as written.
pub(super) fn layering(
    recipe: &Recipe,
    formula: &Formula,
    flow: &Flow,
    each: &Exact,
    book: Book,
) -> Layering {
    let steps: Vec<&Step> = recipe.steps().collect();
    let own = steps.iter().any(|step| step.lock_in.is_some());
    let block = own.then(|| block_step(&steps, formula, flow, book)).flatten();
    let batch = batch(&steps, formula, flow, each, book);
    let actions: Vec<Action> = steps
        .iter()
        .enumerate()
        .filter(|(at, step)| Some(*at) != block && on_the_way(step))
        .map(|(_, step)| action(step, each))
        .collect();
    let before = if own { None } else { inherited(recipe, book) };
    let (lock_in, mut turns) = before.unwrap_or((None, Vec::new()));
    let brought = lock_in.map_or(0, |kind| layers(kind, &turns));
    let laminated = if brought > 0 {
        laminate_on(&batch, brought, &actions)
    } else {
        let block = block.and_then(|at| steps[at].sheet.as_ref());
        laminate(&batch, block.map(|sheet| scaled(&sheet.value, each)).as_ref(), &actions)
    };
    let own_kind =
        steps.iter().find_map(|step| step.lock_in.as_ref().map(|kind| kind.value));
    turns.extend(
        steps.iter().filter_map(|step| step.turn.as_ref().map(|turn| turn.value)),
    );
    Layering { batch, lock_in: own_kind.or(lock_in), turns, laminated, block }
}

fn layers(lock_in: LockIn, turns: &[Turn]) -> u64 {
    crate::dough::Layers { lock_in, turns: turns.to_vec() }.fat()
}

/// Whether a step has to do with the sheet.
fn on_the_way(step: &Step) -> bool {
    step.sheet.is_some() || step.laminates()
}

/// A sheet for `each` times the dough: a square stays one.
fn scaled(size: &Size, each: &Exact) -> Size {
    grow(size, each, size.length == size.width)
}

fn action(step: &Step, each: &Exact) -> Action {
    // A sheet that is cut keeps its width, so that the author's pieces keep their size.
    let size = |sheet: &Size| {
        if step.cut.is_some() { lengthened(sheet, each) } else { scaled(sheet, each) }
    };
    Action {
        step: step.name.clone(),
        sheet: step.sheet.as_ref().map(|sheet| size(&sheet.value)),
        lock_in: step.lock_in.as_ref().map(|kind| kind.value),
        turn: step.turn.as_ref().map(|turn| turn.value),
    }
}

/// The same width, the length `each` times.
pub(super) fn lengthened(size: &Size, each: &Exact) -> Size {
    Size::new(&size.length * each, size.width.clone())
}

/// The step that shapes the fat: its sheet has only roll-in fat on it.
fn block_step(
    steps: &[&Step],
    formula: &Formula,
    flow: &Flow,
    book: Book,
) -> Option<usize> {
    (0..steps.len()).find(|at| {
        let fat_alone = || {
            flow.uses[*at]
                .iter()
                .any(|(line, _)| is_roll_in(formula.lines[*line].section, formula))
                && !flow.uses[*at].iter().any(|(line, _)| {
                    is_dough(formula.lines[*line].section, formula, book)
                })
        };
        steps[*at].sheet.is_some() && steps[*at].lock_in.is_none() && fat_alone()
    })
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
    let (dough, fat) = last.map_or_else(
        || (Mass::zero(), Mass::zero()),
        |step| flow.on_bench(step, formula, book),
    );
    Batch {
        dough: &dough * each,
        fat: &fat * each,
        dough_density: dough_density(steps, formula, book),
        fat_density: fat_density(formula, book),
    }
}

fn dough_density(_: &[&Step], formula: &Formula, book: Book) -> Exact {
    let own = formula.lines.iter().find_map(|line| match line.source {
        Source::Recipe(recipe) => recipe.dough_density.clone(),
        Source::Item(_) => None,
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
            Source::Item(item) => item.grams_a_millilitre(),
            Source::Recipe(_) => None,
        });
    let butter = || book.pantry.find("butter").and_then(|item| item.grams_a_millilitre());
    fat.or_else(butter).unwrap_or_else(|| exact(FAT_DENSITY.0, FAT_DENSITY.1))
}

type Before = (Option<LockIn>, Vec<Turn>);

/// The lock-in and turns that the dough of `recipe` has when it arrives, from the first
/// included recipe that has any.
pub fn inherited(recipe: &Recipe, book: Book) -> Option<Before> {
    brought(recipe, book, 0)
}

fn brought(recipe: &Recipe, book: Book, depth: usize) -> Option<Before> {
    if depth > DEEPEST {
        return None;
    }
    let formula = weigh(recipe, book).0;
    formula.lines.iter().find_map(|line| {
        let Source::Recipe(inner) = line.source else { return None };
        let own =
            inner.steps().find_map(|step| step.lock_in.as_ref().map(|kind| kind.value));
        let (lock_in, mut turns) = match own {
            Some(kind) => (Some(kind), Vec::new()),
            None => brought(inner, book, depth + 1)?,
        };
        turns.extend(
            inner.steps().filter_map(|step| step.turn.as_ref().map(|turn| turn.value)),
        );
        Some((lock_in, turns))
    })
}
