//! `tourier timetable`: the class plan, or the home plan of a recipe.

use crate::edition::Edition;
use crate::lists::{calendar, timetable_text};
use crate::model::Class;
use crate::plan::{self, Effort, Timetable, Unclear, Verdict, Who};
use crate::read;
use crate::said;
use crate::sheet::{PlanSheet, making};
use crate::words::Words;
use crate::work::Work;

use super::args::{PlanForm, TimetableArgs};
use super::together::{Recipes, class_of, names, own_size};
use super::waiting::Waiting;
use super::{Call, Done, Stop, json, say, sound};

/// Prints a plan. A class that does not fit is printed with its reasons and is a fault.
pub(super) fn run(call: &Call, options: &TimetableArgs) -> Done {
    let (mut edition, words) = sound(call)?;
    let waiting = Waiting::new(call)?;
    let names = names(call, &mut edition, &options.name, &options.scaling.with)?;
    let mut plan = match class_of(&edition, &names)? {
        Some(class) => {
            own_size(&options.scaling)?;
            class_plan(&edition, class, &waiting)?
        }
        None => home_plan(call, &edition, (&names, options, &waiting))?,
    };
    waiting.over(&mut plan);
    show(&edition, &plan, (options.form, options.group, &words))
}

/// Prints a plan; one that does not fit is a fault.
pub(super) fn show(
    edition: &Edition,
    plan: &Timetable,
    (as_form, group, words): (PlanForm, Option<u32>, &Words),
) -> Done {
    let sheet = making::plan_sheet(plan, words, edition.first_units());
    let who = if plan.home { Who::Home } else { Who::Instructor };
    let who = match group {
        Some(group) => Who::Group(some_group(plan, group)?),
        None => who,
    };
    say(form(&sheet, (as_form, who), words)?.as_bytes())?;
    match plan.verdict {
        Verdict::Fits => Ok(()),
        Verdict::Never | Verdict::Unknown => Err(Stop::Faults),
    }
}

/// A group of the plan by its number from 1, counted from 0.
fn some_group(plan: &Timetable, number: u32) -> Result<u32, Stop> {
    let groups = plan.groups();
    let known = number.checked_sub(1).filter(|group| *group < groups);
    let name = &plan.name;
    known.ok_or_else(|| Stop::Use(said!("today-group", number, name, groups)))
}

fn form(
    plan: &PlanSheet,
    (form, who): (PlanForm, Who),
    words: &Words,
) -> Result<String, Stop> {
    let none = || Stop::Use(said!("plan-none", standing = plan.standing));
    match form {
        PlanForm::Text => Ok(timetable_text(plan, words)),
        PlanForm::Json => json(plan),
        PlanForm::Ics => calendar(plan, who, words).ok_or_else(none),
        PlanForm::Svg => {
            let chart = plan.chart.as_ref().map(crate::draw::plan_chart);
            chart.map(|chart| chart.svg()).ok_or_else(none)
        }
    }
}

fn class_plan(
    edition: &Edition,
    class: &Class,
    waiting: &Waiting,
) -> Result<Timetable, Stop> {
    let unclear = |why| cannot(&class.name, why);
    let effort = Effort::USUAL.watched(waiting);
    plan::planned(class, edition.book(), effort).map_err(unclear)
}

fn home_plan(
    call: &Call,
    edition: &Edition,
    (names, options, waiting): (&[String], &TimetableArgs, &Waiting),
) -> Result<Timetable, Stop> {
    let ready =
        options.ready.as_deref().ok_or_else(|| Stop::Use(said!("plan-ready-missing")))?;
    let ready = read::moment(ready)
        .ok_or_else(|| Stop::Use(said!("plan-ready-unreadable", ready)))?;
    let works = Recipes::new(call, edition, names, &options.scaling)?.works()?;
    let works: Vec<&Work> = works.iter().collect();
    let effort = Effort::HOME.watched(waiting);
    plan::home(&works, ready, edition.book(), effort)
        .map_err(|why| cannot(&names.join(","), why))
}

fn cannot(name: &str, why: Unclear) -> Stop {
    Stop::Use(said!("plan-cannot", name, reason = why.said()))
}
