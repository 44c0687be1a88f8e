//! A class's plan from its file to its timetable.

use crate::formula::Book;
use crate::model::Class;
use crate::plan::question::class::{Unclear, draft};
use crate::plan::search::solve::{Answer, Effort, Watch, fits_as_usual, solve, stopped};

use super::changed::longer;
use super::reason::{Short, explain};
use super::timetable::{Caveat, Timetable};

/// The plan of a class; where there is none, why, and what would help.
///
/// # Errors
/// The reason, where sessions, recipes or steps are not clear.
pub fn planned(class: &Class, book: Book, effort: Effort) -> Result<Timetable, Unclear> {
    let draft = draft(class, book)?;
    let answer = solve(&draft.problem, effort);
    let mut plan = draft.timetable(class, &answer);
    if answer.plan().is_some_and(|plan| plan.short > 0) {
        plan.notes.extend(usual(class, book, effort.watch).map(Caveat::Usual));
    }
    if !matches!(answer, Answer::Fits(_)) && !stopped(effort.watch) {
        effort.watch.iter().for_each(|watch| watch.explains());
        let why = explain(class, &answer, book, effort.watch);
        (plan.reasons, plan.remedies) = (why.reasons, why.remedies);
    }
    Ok(plan)
}

/// Minutes by which a session is tried longer.
const LONGER: [i32; 12] = [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60];

/// How much longer the last session would have to be for every rest to be as usual.
fn usual(class: &Class, book: Book, watch: Option<&dyn Watch>) -> Option<Short> {
    let session = class.sessions.len().checked_sub(1)?;
    let fits = |minutes: &i32| {
        let longer = draft(&longer(class, session, *minutes), book);
        !stopped(watch) && longer.is_ok_and(|draft| fits_as_usual(&draft.problem))
    };
    let at = LONGER.partition_point(|minutes| !fits(minutes));
    let minutes = *LONGER.get(at)?;
    // Who was stopped has not looked at every length.
    (!stopped(watch) && fits(&minutes)).then_some(Short { session, minutes })
}
