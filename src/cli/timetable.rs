//! `tourier timetable`: the class plan, or the home plan of a recipe.

use crate::edition::Edition;
use crate::lists::{calendar, timetable_text};
use crate::model::Class;
use crate::plan::{self, ClassDraft, Effort, Timetable, Unheard, Verdict};
use crate::read;
use crate::sheet::{PlanSheet, build};
use crate::words::Words;
use crate::work::work;

use super::args::{Args, PlanForm, TimetableArgs};
use super::waiting::Waiting;
use super::{Done, Stop, json, nowhere, recipe, say, sound, stem};

/// Prints a plan. A class that does not fit is printed with its reasons and is a fault.
pub(super) fn run(args: &Args, options: &TimetableArgs) -> Done {
    let (edition, words) = sound(args)?;
    let waiting = Waiting::new()?;
    let name = stem(&options.name);
    if class(&edition, name).is_none() && edition.content.recipe(name).is_none() {
        let content = &edition.content;
        let classes = content.classes.iter().map(|class| class.name.as_str());
        let recipes = content.recipes.iter().map(|recipe| recipe.name.as_str());
        return Err(nowhere(
            "class or recipe",
            name,
            &classes.chain(recipes).collect::<Vec<_>>(),
        ));
    }
    let mut plan = match class(&edition, &options.name) {
        Some(class) => class_plan(&edition, class, (options, &waiting))?,
        None => home_plan(&edition, (options, &waiting))?,
    };
    waiting.over(&mut plan);
    let sheet = build::plan_sheet(&plan, &words, edition.first_units());
    say(form(&sheet, options.form, &words)?.as_bytes())?;
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
    let none = || Stop::Use(format!("there is no plan: {}", plan.standing));
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
    (options, waiting): (&TimetableArgs, &Waiting),
) -> Result<Timetable, Stop> {
    let unclear =
        |reason: &str| Stop::Use(format!("`{}` cannot be planned: {reason}", class.name));
    let effort = Effort::USUAL.watched(waiting);
    let Some(now) = &options.now else {
        return plan::planned(class, edition.book(), effort).map_err(unclear);
    };
    let mut draft = plan::draft(class, edition.book()).map_err(unclear)?;
    today((&mut draft, effort), class, (now, options.done.as_deref()))
}

/// Plans the rest of the day.
fn today(
    (draft, effort): (&mut ClassDraft, Effort),
    class: &Class,
    (now, done): (&str, Option<&str>),
) -> Result<Timetable, Stop> {
    let answer = plan::solve(&draft.problem, effort);
    let planned = answer
        .plan()
        .ok_or_else(|| Stop::Use("the class has no plan to begin with".into()))?;
    let minute = minute(draft, class, now)?;
    let said = plan::read_day(done.unwrap_or_default()).map_err(|part| {
        let example = "write --done \"pairs 1-3: second turn; pair 4 late 10\"";
        Stop::Use(format!("`{part}` in --done does not read; {example}"))
    })?;
    let groups = class.groups();
    let highest = said.iter().filter_map(plan::Said::highest).max();
    if let Some(beyond) = highest.filter(|group| *group >= groups) {
        let number = beyond + 1;
        let name = &class.name;
        let message =
            format!("--done names group {number}, and `{name}` has {groups} groups");
        return Err(Stop::Use(message));
    }
    let planned = draft.settle(&draft.renumber(&planned.layout));
    let notes = plan::adjust(draft, &planned, minute, &said)
        .map_err(|unheard| Stop::Use(said_so(&unheard)))?;
    let answer = plan::solve(&draft.problem, effort);
    let mut plan = draft.timetable(class, &answer);
    plan.notes.extend(notes);
    Ok(plan)
}

/// What is said with --done and cannot be taken in.
fn said_so(unheard: &Unheard) -> String {
    match unheard {
        Unheard::NoStep(step, known) => {
            format!("those have no step `{step}`; they have {}", known.join(", "))
        }
        Unheard::Several(step, which) => {
            format!("`{step}` may be several; say which: {}", which.join(", "))
        }
        Unheard::NoGroup => "there are no such groups in this class".into(),
        Unheard::NoKit(kit) => format!("the class does not count so much of `{kit}`"),
    }
}

/// The minute of a date and time, or of a time of day that only one session has.
fn minute(draft: &ClassDraft, class: &Class, now: &str) -> Result<i32, Stop> {
    let wrong = |why: &str| Stop::Use(format!("--now {now} {why}"));
    if let Some(moment) = read::moment(now) {
        return draft.clock.minute(moment).ok_or_else(|| wrong("is no real time"));
    }
    let (hour, minute) =
        read::clock(now).ok_or_else(|| wrong("does not read; write --now 18:55"))?;
    let sessions = class.sessions.iter().map(|session| session.value);
    let found: Vec<_> = sessions
        .flat_map(|session| {
            let at = |day: jiff::civil::Date| day.at(hour, minute, 0, 0);
            let mut days = vec![at(session.from.date()), at(session.to.date())];
            days.dedup();
            days.retain(|at| session.from <= *at && *at <= session.to);
            days
        })
        .collect();
    match found.as_slice() {
        [] => Err(wrong("is in no session; write a time such as --now 18:55")),
        [only] => draft.clock.minute(*only).ok_or_else(|| wrong("is no real time")),
        [first, ..] => Err(wrong(&format!(
            "is in several sessions; say which day: --now \"{}\"",
            first.strftime("%Y-%m-%d %H:%M")
        ))),
    }
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
