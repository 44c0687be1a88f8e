//! The day itself: what has happened is fixed, the rest is planned anew.

use super::class::{ClassDraft, Unit, Who};
use super::problem::Layout;
use super::timetable::Note;

/// What some groups have done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Done {
    /// The groups from 0; `None` for the instructor.
    pub groups: Option<(u32, u32)>,
    /// The last step that they have finished.
    pub step: String,
}

/// What was said to be done and cannot be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unheard {
    /// The groups have no step of this name.
    Step(String),
    /// The class has no such groups.
    Groups,
}

/// Reads `pairs 1-3: second-turn; pair 4: first-turn; instructor: roll-up`.
pub fn read_done(text: &str) -> Option<Vec<Done>> {
    let parts = text.split(';').map(str::trim).filter(|part| !part.is_empty());
    parts.map(one).collect()
}

fn one(text: &str) -> Option<Done> {
    let (groups, step) = text.split_once(':')?;
    let step = step.trim().to_owned();
    let groups = groups.trim();
    if matches!(groups, "instructor" | "demonstration") {
        return Some(Done { groups: None, step });
    }
    let (_, numbers) = groups.split_once(' ')?;
    let (from, to) = numbers.split_once(['-', '–']).unwrap_or((numbers, numbers));
    let (from, to): (u32, u32) = (from.trim().parse().ok()?, to.trim().parse().ok()?);
    (from >= 1 && from <= to && !step.is_empty())
        .then(|| Done { groups: Some((from - 1, to - 1)), step })
}

/// Fixes what has happened by minute `now`. Groups of which nothing is said have kept to
/// `planned`. Notes say what has stood too long already.
///
/// # Errors
/// What was said that cannot be.
pub fn adjust(
    draft: &mut ClassDraft,
    planned: &Layout,
    now: i32,
    done: &[Done],
) -> Result<Vec<Note>, Unheard> {
    for said in done {
        let known =
            draft.units.iter().any(|unit| of(said, unit) && place(said, unit).is_some());
        if !known {
            let there = draft.units.iter().any(|unit| of(said, unit));
            return Err(if there {
                Unheard::Step(said.step.clone())
            } else {
                Unheard::Groups
            });
        }
    }
    let mut fixed = vec![false; draft.problem.tasks.len()];
    for unit in &draft.units {
        for task in &unit.strand.tasks {
            fixed[*task] = happened(unit, *task, planned, now, done, draft);
        }
    }
    for show in &draft.shows {
        fixed[show.task] = planned.starts[show.task] < now;
    }
    for (task, fixed) in fixed.iter().enumerate() {
        let minutes = draft.problem.tasks[task].minutes;
        let starts = &mut draft.problem.tasks[task].starts;
        if *fixed {
            // What runs as planned goes on; what is said to be done is over by now.
            let start = planned.starts[task];
            let start = if start < now
                && start + minutes > now
                && !said(draft_units(draft), task, done)
            {
                start
            } else {
                start.min(now - minutes)
            };
            draft.problem.tasks[task].starts = vec![(start, start)];
        } else {
            *starts = starts
                .iter()
                .filter(|(_, last)| *last >= now)
                .map(|(first, last)| ((*first).max(now), *last))
                .collect();
        }
    }
    let notes = loosen(draft, &fixed, now);
    draft.problem.alike = Vec::new();
    Ok(notes)
}

fn draft_units(draft: &ClassDraft) -> &[Unit] {
    &draft.units
}

fn of(said: &Done, unit: &Unit) -> bool {
    match (said.groups, unit.who) {
        (Some((from, to)), Who::Group(group) | Who::Baker(group, _)) => {
            (from..=to).contains(&group)
        }
        (said, Who::Instructor) => said.is_none(),
        (None, Who::Group(_) | Who::Baker(..)) | (_, Who::Home) => false,
    }
}

fn place(said: &Done, unit: &Unit) -> Option<usize> {
    unit.strand.steps.iter().position(|step| step.step == said.step)
}

/// The steps that were done when step `at` was: itself and all before it.
fn before(unit: &Unit, at: usize) -> Vec<usize> {
    let mut open = vec![at];
    let mut found = Vec::new();
    while let Some(at) = open.pop() {
        if !found.contains(&at) {
            found.push(at);
            open.extend(&unit.strand.steps[at].after);
        }
    }
    found
}

/// Whether a task is among those that were said to be done.
fn said(units: &[Unit], task: usize, done: &[Done]) -> bool {
    units.iter().any(|unit| {
        done.iter().filter(|said| of(said, unit)).any(|said| {
            place(said, unit).is_some_and(|at| {
                before(unit, at)
                    .iter()
                    .any(|step| unit.strand.steps[*step].tasks().contains(&task))
            })
        })
    })
}

fn happened(
    unit: &Unit,
    task: usize,
    planned: &Layout,
    now: i32,
    done: &[Done],
    draft: &ClassDraft,
) -> bool {
    let about: Vec<&Done> = done
        .iter()
        .filter(|said| of(said, unit) && place(said, unit).is_some())
        .collect();
    if about.is_empty() {
        let minutes = draft.problem.tasks[task].minutes;
        return planned.starts[task] < now || planned.starts[task] + minutes < now;
    }
    said(std::slice::from_ref(unit), task, done)
}

/// Takes out of the question what is over, and lets go on what has stood too long.
fn loosen(draft: &mut ClassDraft, fixed: &[bool], now: i32) -> Vec<Note> {
    let mut notes = Vec::new();
    let tasks = &draft.problem.tasks;
    let end = |task: usize| {
        tasks[task].starts.first().map_or(0, |start| start.0) + tasks[task].minutes
    };
    for (at, link) in draft.problem.links.iter_mut().enumerate() {
        if fixed[link.to] {
            (link.least, link.usual, link.most, link.crosses) =
                (-1_000_000, None, None, true);
        } else if fixed[link.from]
            && link.most.is_some_and(|most| now - end(link.from) > most)
        {
            link.most = None;
            let waited = draft.units.iter().find_map(|unit| {
                let steps = unit.strand.steps.iter();
                let step = steps.rev().find(|step| step.stays.contains(&at))?;
                Some(Note::TooLong { who: unit.who, title: step.title.clone() })
            });
            notes.extend(waited);
        }
    }
    let over = |task: usize| fixed[task] && end(task) <= now;
    for pool in &mut draft.problem.pools {
        pool.uses.retain(|of| !over(of.task));
    }
    draft.problem.ovens.bakes.retain(|bake| !over(bake.task));
    let links = &draft.problem.links;
    for store in &mut draft.problem.stores {
        store.stays.retain(|(link, _)| !fixed[links[*link].to]);
    }
    notes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_is_done() {
        let done =
            read_done("pairs 1-3: second-turn; pair 4: first-turn; instructor: cut");
        let done = done.expect("readable");
        assert_eq!(done[0], Done { groups: Some((0, 2)), step: "second-turn".into() });
        assert_eq!(done[1].groups, Some((3, 3)));
        assert_eq!(done[2].groups, None);
        assert_eq!(read_done("pairs: x"), None);
        assert_eq!(read_done("pairs 3-1: x"), None);
    }
}
