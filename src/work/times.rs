//! The steps as jobs, those of included recipes first.

use crate::formula::{Book, Formula, batch};
use crate::measure::{Duration, Exact, exact};
use crate::model::{Location, Pace, Recipe, Step, Wait};
use crate::time::{Job, Schedule, schedule};

use super::Lot;

/// The steps in time.
#[derive(Clone, Debug)]
pub struct Timing {
    /// Every step, included recipes first.
    pub jobs: Vec<WorkJob>,
    /// When each happens.
    pub schedule: Schedule,
}

/// A step as a job.
#[derive(Clone, Debug)]
pub struct WorkJob {
    /// The recipe it belongs to.
    pub recipe: String,
    /// The step's name.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// Whether it is a bake.
    pub bake: bool,
    /// The trays that its pieces take; 1 where that is not known.
    pub trays: u64,
    /// Where it waits.
    pub place: Option<Location>,
    /// Which of the places it is where the step stands one after the other, from 0.
    pub stand: usize,
    /// The day on which its recipe has it, from 1, where that takes more than one.
    pub day: Option<u64>,
    /// How long it thaws after a hold in which it was frozen.
    pub thaw: Option<Wait>,
    /// The job.
    pub job: Job,
}

/// Plans the steps of `recipe` and of what it includes. A ring of steps is named.
pub(super) fn timing(
    recipe: (&Recipe, &Formula),
    factor: &Exact,
    in_hand: (&[Option<u64>], &[Vec<Lot>]),
    book: Book,
) -> Result<Timing, Vec<String>> {
    let mut jobs = Vec::new();
    add(recipe, factor, in_hand, book, &mut jobs);
    let plain: Vec<Job> = jobs.iter().map(|job| job.job.clone()).collect();
    let schedule = schedule(&plain).map_err(|cycle| cycle.names)?;
    Ok(Timing { jobs, schedule })
}

/// Adds the jobs of a recipe, behind those of the recipes it includes.
fn add(
    (recipe, formula): (&Recipe, &Formula),
    factor: &Exact,
    (in_hand, lots): (&[Option<u64>], &[Vec<Lot>]),
    book: Book,
    jobs: &mut Vec<WorkJob>,
) {
    let steps: Vec<&Step> = recipe.steps().collect();
    let mut needs: Vec<(&str, usize)> = Vec::new();
    for line in &formula.lines {
        let Some((inner, inner_formula)) = line.included() else { continue };
        let batches = (&line.mass() * factor).over(&batch(inner_formula, inner));
        let batches = batches.unwrap_or_else(|| exact(1, 1));
        add((inner, inner_formula), &batches, (&[], &[]), book, jobs);
        if let Some(last) = jobs.len().checked_sub(1) {
            needs.push((line.title(), last));
        }
    }
    let lasts = lasts(&steps, jobs.len());
    for (at, step) in steps.iter().enumerate() {
        let mut after = own_after(step, at, &steps, &lasts);
        let takes = |title: &str| {
            step.uses.iter().any(|used| takes(recipe, &used.value.name, title))
        };
        after.extend(
            needs.iter().filter(|(title, _)| takes(title)).map(|(_, last)| *last),
        );
        // Only the recipe itself knows its pieces; an included dough is one sheet.
        let pieces = in_hand.get(at).copied().flatten();
        let lots = lots.get(at).map_or(&[][..], Vec::as_slice);
        for stand in 0..step.stands().len().max(1) {
            let place = (stand, std::mem::take(&mut after));
            let scale = Scale { pieces, lots, book };
            jobs.push(job(recipe, &step.in_stand(stand), place, scale));
            after.push(jobs.len() - 1);
        }
    }
}

/// The place among the jobs of the last of each step, where the first has place `first`.
fn lasts(steps: &[&Step], first: usize) -> Vec<usize> {
    let mut next = first;
    let last = |step: &&Step| {
        next += step.stands().len().max(1);
        next - 1
    };
    steps.iter().map(last).collect()
}

/// Whether a ticket's word means the included recipe, or the section it stands in.
fn takes(recipe: &Recipe, word: &str, title: &str) -> bool {
    recipe.formula.iter().any(|section| {
        let named = section.name.value == word || title.ends_with(word);
        named && section.lines.iter().any(|line| line.ingredient.value.title() == title)
    })
}

fn own_after(step: &Step, at: usize, steps: &[&Step], lasts: &[usize]) -> Vec<usize> {
    match &step.after {
        Some(names) => names
            .iter()
            .filter_map(|name| steps.iter().position(|other| other.name == name.value))
            .map(|found| lasts[found])
            .collect(),
        None => at.checked_sub(1).map(|above| lasts[above]).into_iter().collect(),
    }
}

/// What a step's time may grow with.
#[derive(Clone, Copy)]
struct Scale<'a> {
    pieces: Option<u64>,
    lots: &'a [Lot],
    book: Book<'a>,
}

fn job(
    recipe: &Recipe,
    step: &Step,
    (stand, after): (usize, Vec<usize>),
    scale: Scale,
) -> WorkJob {
    let trays = trays(step, recipe, scale.lots);
    let name = format!("{}/{}", recipe.name, step.name);
    WorkJob {
        recipe: recipe.name.clone(),
        step: step.name.clone(),
        title: step.title.value.clone(),
        bake: step.bake.is_some(),
        trays,
        place: step.at_place.as_ref().map(|place| place.value.clone()),
        stand,
        day: step.day.as_ref().map(|day| day.value),
        thaw: step
            .hold
            .as_ref()
            .and_then(|hold| hold.value.thaw.as_ref())
            .map(|thaw| thaw.time.clone()),
        job: Job {
            name,
            after,
            hands: hands(step, scale.pieces.unwrap_or(1), trays),
            wait: waits(step, loads(trays, scale.book)),
            hold: step
                .hold
                .as_ref()
                .map_or_else(Duration::zero, |hold| hold.value.up_to.clone()),
        },
    }
}

/// Attended time: the longer end of a range, so that a plan is kept.
fn hands(step: &Step, pieces: u64, trays: u64) -> Duration {
    let Some(span) = &step.hands else { return Duration::zero() };
    let more = match &span.value.pace {
        Some(Pace::Piece(each)) => each * &Exact::from_integer(pieces.into()),
        Some(Pace::Tray(each)) => each * &Exact::from_integer(trays.into()),
        None => Duration::zero(),
    };
    span.value.most.clone() + more
}

/// Unattended time: the wait and the bake, the bake once for each oven load.
fn waits(step: &Step, loads: u64) -> [Duration; 3] {
    let loads = Exact::from_integer(loads.into());
    let wait = step.wait.as_ref().map(|wait| &wait.value);
    let bake = step.bake.as_ref().map(|bake| &bake.value.time);
    let parts = [
        (wait.map(|wait| &wait.usual), bake.map(|time| &time.usual)),
        (wait.map(|wait| &wait.least), bake.map(|time| &time.least)),
        (wait.map(|wait| &wait.most), bake.map(|time| &time.most)),
    ];
    parts.map(|(wait, bake)| {
        let bake = bake.map_or_else(Duration::zero, |time| time * &loads);
        wait.cloned().unwrap_or_else(Duration::zero) + bake
    })
}

/// Trays that lots of pieces take at this step, or at the bake: each lot has its own.
pub(super) fn trays(step: &Step, recipe: &Recipe, lots: &[Lot]) -> u64 {
    let Some(per_tray) = pieces_per_tray(step, recipe) else { return 1 };
    let trays = lots.iter().map(|lot| lot.pieces.div_ceil(per_tray)).sum::<u64>();
    trays.max(1)
}

/// Pieces on a tray at this step, or at the bake.
fn pieces_per_tray(step: &Step, recipe: &Recipe) -> Option<u64> {
    let bake = || recipe.steps().find_map(|step| step.per_tray.as_ref());
    let per_tray = step.per_tray.as_ref().or_else(bake)?;
    Some(per_tray.value).filter(|per_tray| *per_tray > 0)
}

/// Oven loads that the trays take.
pub(crate) fn loads(trays: u64, book: Book) -> u64 {
    let at_once =
        book.content.course.as_ref().and_then(|course| course.kit.trays_per_oven);
    at_once
        .filter(|at_once| *at_once > 0)
        .map_or(1, |at_once| trays.div_ceil(at_once.into()))
}
