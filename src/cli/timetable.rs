//! `tourier timetable`: the class plan, or the home plan of a recipe.

use crate::edition::Edition;
use crate::lists::{calendar, timetable_text};
use crate::model::Class;
use crate::plan::{self, Answer, ClassDraft, Effort, Timetable, Watch};
use crate::read;
use crate::work::work;

use super::args::{Args, PlanForm, TimetableArgs};
use super::waiting::Waiting;
use super::{Done, Stop, json, recipe, say, sound};

/// Prints a plan. A class that does not fit is printed with its reasons and is a fault.
pub(super) fn run(args: &Args, options: &TimetableArgs) -> Done {
    let edition = sound(args)?;
    let waiting = Waiting::new()?;
    let mut plan = match class(&edition, &options.name) {
        Some(class) => class_plan(&edition, class, (options, &waiting))?,
        None => home_plan(&edition, (options, &waiting))?,
    };
    waiting.over(&mut plan);
    say(form(&plan, options.form)?.as_bytes())?;
    if plan.verdict == "fits" { Ok(()) } else { Err(Stop::Faults) }
}

/// A class by its file name.
pub(super) fn class<'a>(edition: &'a Edition, name: &str) -> Option<&'a Class> {
    let file = std::path::Path::new(name).file_name()?.to_string_lossy();
    edition.content.class(file.strip_suffix(".yaml").unwrap_or(&file))
}

fn form(plan: &Timetable, form: PlanForm) -> Result<String, Stop> {
    match form {
        PlanForm::Text => Ok(timetable_text(plan)),
        PlanForm::Json => json(plan),
        PlanForm::Ics => calendar(plan)
            .ok_or_else(|| Stop::Use(format!("there is no plan: {}", plan.standing))),
        PlanForm::Svg => crate::draw::plan_chart(plan)
            .ok_or_else(|| Stop::Use(format!("there is no plan: {}", plan.standing))),
    }
}

fn class_plan(
    edition: &Edition,
    class: &Class,
    (options, waiting): (&TimetableArgs, &Waiting),
) -> Result<Timetable, Stop> {
    let unclear =
        |reason: &str| Stop::Use(format!("`{}` cannot be planned: {reason}", class.name));
    let mut draft = plan::draft(class, edition.book()).map_err(unclear)?;
    let effort = Effort::USUAL.watched(waiting);
    let answer = plan::solve(&draft.problem, effort);
    if let Some(now) = &options.now {
        let said = (now.as_str(), options.done.as_deref());
        return today((&mut draft, effort), class, &answer, said);
    }
    let mut plan = draft.timetable(class, &answer);
    if !matches!(answer, Answer::Fits(_)) && !waiting.stop() {
        let why = plan::explain(class, edition.book());
        (plan.reasons, plan.remedies) = (why.reasons, why.remedies);
    }
    Ok(plan)
}

/// Plans the rest of the day.
fn today(
    (draft, effort): (&mut ClassDraft, Effort),
    class: &Class,
    answer: &Answer,
    (now, done): (&str, Option<&str>),
) -> Result<Timetable, Stop> {
    let planned = answer
        .plan()
        .ok_or_else(|| Stop::Use("the class has no plan to begin with".into()))?;
    let wrong = |what: &str| Stop::Use(format!("{what} does not read"));
    let minute = minute(draft, class, now).ok_or_else(|| {
        Stop::Use(format!("--now {now} is in no session; write --now 18:55"))
    })?;
    let done = plan::read_done(done.unwrap_or_default())
        .ok_or_else(|| wrong("--done; write --done \"pairs 1-3: second-turn\":"))?;
    let planned = draft.settle(&planned.layout);
    let notes = plan::adjust(draft, &planned, minute, &done).map_err(Stop::Use)?;
    let answer = plan::solve(&draft.problem, effort);
    let mut plan = draft.timetable(class, &answer);
    plan.notes = notes;
    Ok(plan)
}

/// The minute of a time of day in the first session that it lies in, or of a date and time.
fn minute(draft: &ClassDraft, class: &Class, now: &str) -> Option<i32> {
    if let Some(moment) = read::moment(now) {
        return draft.clock.minute(moment);
    }
    let (hour, minute) = read::clock(now)?;
    class.sessions.iter().find_map(|session| {
        let session = session.value;
        let at = session.from.date().at(hour, minute, 0, 0);
        (session.from <= at && at <= session.to).then(|| draft.clock.minute(at))?
    })
}

fn home_plan(
    edition: &Edition,
    (options, waiting): (&TimetableArgs, &Waiting),
) -> Result<Timetable, Stop> {
    let recipe = recipe(edition, &options.name)?;
    let example = "write --ready \"2027-03-07 09:00\"";
    let ready = options.ready.as_deref().ok_or_else(|| {
        Stop::Use(format!("for a recipe say when it shall be ready: {example}"))
    })?;
    let ready = read::moment(ready)
        .ok_or_else(|| Stop::Use(format!("--ready {ready} does not read; {example}")))?;
    let cannot = |reason: &str| {
        Stop::Use(format!("`{}` cannot be planned: {reason}", recipe.name))
    };
    let work =
        work(recipe, &options.scaling.scaling()?, edition.book()).map_err(cannot)?;
    let effort = Effort::HOME.watched(waiting);
    plan::home(&work, ready, edition.book(), effort).map_err(cannot)
}
