//! `tourier timetable`: the class plan, or the home plan of a recipe.

use crate::edition::Edition;
use crate::lists::{calendar, timetable_text};
use crate::model::Class;
use crate::plan::{self, Effort, Timetable, Unclear, Verdict};
use crate::read;
use crate::said;
use crate::sheet::{PlanSheet, build};
use crate::words::Words;
use crate::work::work;

use super::args::{PlanForm, TimetableArgs};
use super::waiting::Waiting;
use super::{Call, Done, Stop, json, nowhere, recipe, say, sound, stem};

/// Prints a plan. A class that does not fit is printed with its reasons and is a fault.
pub(super) fn run(call: &Call, options: &TimetableArgs) -> Done {
    let (edition, words) = sound(call)?;
    let waiting = Waiting::new(call)?;
    let name = stem(&options.name);
    if class(&edition, name).is_none() && edition.content.recipe(name).is_none() {
        let content = &edition.content;
        let classes = content.classes.iter().map(|class| class.name.as_str());
        let recipes = content.recipes.iter().map(|recipe| recipe.name.as_str());
        return Err(nowhere(
            said!("kind-class-or-recipe"),
            name,
            &classes.chain(recipes).collect::<Vec<_>>(),
        ));
    }
    let mut plan = match class(&edition, &options.name) {
        Some(class) => class_plan(&edition, class, &waiting)?,
        None => home_plan(call, &edition, (options, &waiting))?,
    };
    waiting.over(&mut plan);
    show(&edition, &plan, (options.form, &words))
}

/// Prints a plan; one that does not fit is a fault.
pub(super) fn show(
    edition: &Edition,
    plan: &Timetable,
    (as_form, words): (PlanForm, &Words),
) -> Done {
    let sheet = build::plan_sheet(plan, words, edition.first_units());
    say(form(&sheet, as_form, words)?.as_bytes())?;
    match plan.verdict {
        Verdict::Fits => Ok(()),
        Verdict::Never | Verdict::Unknown => Err(Stop::Faults),
    }
}

/// A class by its file name.
pub(super) fn class<'a>(edition: &'a Edition, name: &str) -> Option<&'a Class> {
    edition.content.class(stem(name))
}

fn form(plan: &PlanSheet, form: PlanForm, words: &Words) -> Result<String, Stop> {
    let none = || Stop::Use(said!("plan-none", standing = plan.standing));
    match form {
        PlanForm::Text => Ok(timetable_text(plan, words)),
        PlanForm::Json => json(plan),
        PlanForm::Ics => calendar(plan, words).ok_or_else(none),
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
    (options, waiting): (&TimetableArgs, &Waiting),
) -> Result<Timetable, Stop> {
    let recipe = recipe(call, edition, &options.name)?;
    let ready =
        options.ready.as_deref().ok_or_else(|| Stop::Use(said!("plan-ready-missing")))?;
    let ready = read::moment(ready)
        .ok_or_else(|| Stop::Use(said!("plan-ready-unreadable", ready)))?;
    let cannot = |why| cannot(&recipe.name, why);
    let work = work(recipe, &options.scaling.scaling()?, edition.book());
    let work = work.map_err(|why| cannot(why.into()))?;
    let effort = Effort::HOME.watched(waiting);
    plan::home(&work, ready, edition.book(), effort).map_err(cannot)
}

fn cannot(name: &str, why: Unclear) -> Stop {
    Stop::Use(said!("plan-cannot", name, reason = why.said()))
}
