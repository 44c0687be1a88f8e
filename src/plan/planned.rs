//! A class's plan from its file to its timetable.

use crate::formula::Book;
use crate::model::Class;

use super::class::{Unclear, draft};
use super::reason::explain;
use super::solve::{Answer, Effort, solve, stopped};
use super::timetable::Timetable;

/// The plan of a class; where there is none, why, and what would help.
///
/// # Errors
/// The reason, where sessions, recipes or steps are not clear.
pub fn planned(class: &Class, book: Book, effort: Effort) -> Result<Timetable, Unclear> {
    let draft = draft(class, book)?;
    let answer = solve(&draft.problem, effort);
    let mut plan = draft.timetable(class, &answer);
    if !matches!(answer, Answer::Fits(_)) && !stopped(effort.watch) {
        let why = explain(class, &answer, book);
        (plan.reasons, plan.remedies) = (why.reasons, why.remedies);
    }
    Ok(plan)
}
