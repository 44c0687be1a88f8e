//! A plan as a chart: which bars stand in which row, and what is said of them.

use crate::plan::{Activity, Kind, Who};

use super::super::super::class::{
    BarKind, ChartBar, ChartLane, ChartMark, ChartSession, ChartSheet, LineSheet,
};
use super::plan::Voice;

/// Minutes between two marks of an axis.
const GRID: i32 = 30;

/// A step by its recipe and name.
type Step<'a> = (&'a str, &'a str);

/// The chart of a plan; nothing where there is no plan.
pub(super) fn chart(voice: &Voice, rows: &[LineSheet]) -> Option<ChartSheet> {
    let plan = voice.plan;
    if plan.activities.iter().all(|activity| activity.span.is_none()) {
        return None;
    }
    let steps = steps(voice);
    let together = plan.activities.iter().any(|of| of.kind.is_gathering());
    let kinds = [BarKind::Hands, BarKind::Bake, BarKind::Rest].into_iter();
    let kinds = kinds.chain(together.then_some(BarKind::Together));
    let key = kinds.map(|kind| (kind, voice.words.get(word(kind)).to_owned())).collect();
    let spans = plan.problem.sessions.iter().filter_map(|span| used(voice, *span));
    let of_steps: Vec<Step> = steps.iter().map(|(step, _)| *step).collect();
    Some(ChartSheet {
        title: plan.title.clone(),
        key,
        recipes: plan.titles.values().cloned().collect(),
        sessions: spans.map(|span| session(voice, span, &of_steps, rows)).collect(),
        steps: steps
            .iter()
            .map(|((recipe, _), title)| voice.of(recipe, (*title).to_owned()))
            .collect(),
        said: said(voice, rows.iter()),
    })
}

fn word(kind: BarKind) -> &'static str {
    match kind {
        BarKind::Hands => "drawing-hands-on",
        BarKind::Bake => "drawing-in-the-oven",
        BarKind::Rest => "drawing-waits",
        BarKind::Together => "drawing-together",
    }
}

/// How an activity is drawn.
fn bar_kind(kind: Kind) -> BarKind {
    match kind {
        Kind::Bake => BarKind::Bake,
        Kind::Rest => BarKind::Rest,
        Kind::Arrival | Kind::Talk | Kind::Break | Kind::Tasting | Kind::Washing => {
            BarKind::Together
        }
        // Ovens have no row, so neither has what they are set to.
        Kind::OvenOn
        | Kind::OvenTo
        | Kind::Hands
        | Kind::Moment
        | Kind::Demonstration
        | Kind::Finish
        | Kind::Into
        | Kind::Out
        | Kind::Move => BarKind::Hands,
    }
}

fn step(activity: &Activity) -> Option<Step<'_>> {
    let step = activity.deed.step.as_ref()?;
    Some((&activity.deed.recipe, &step.name))
}

/// The steps and their headings in the order of their numbers.
fn steps<'a>(voice: &Voice<'a>) -> Vec<(Step<'a>, &'a str)> {
    let mut activities: Vec<&Activity> = voice.plan.activities.iter().collect();
    activities.sort_by_key(|activity| activity.span.map(|span| span.0));
    let mut steps: Vec<(Step, &str)> = Vec::new();
    for activity in activities.into_iter().filter(|activity| activity.kind.is_work()) {
        let (Some(own), Some(name)) = (step(activity), &activity.deed.step) else {
            continue;
        };
        if steps.iter().all(|(known, _)| *known != own) {
            steps.push((own, &name.title));
        }
    }
    steps
}

/// The part of a session in which something happens, to the half-hour: a long one from its
/// first task to its last.
fn used(voice: &Voice, (from, to): (i32, i32)) -> Option<(i32, i32)> {
    let spans = voice.plan.activities.iter().filter_map(|of| of.span);
    let here = spans.filter(|(start, end)| *start >= from && *end <= to);
    let (first, last) =
        here.reduce(|one, other| (one.0.min(other.0), one.1.max(other.1)))?;
    let whole = |minute: i32| minute.div_euclid(GRID) * GRID;
    let end = whole(last - from - 1) + from + GRID;
    Some((whole(first - from) + from, end.min(to.max(last))))
}

fn session(
    voice: &Voice,
    (from, to): (i32, i32),
    steps: &[Step],
    rows: &[LineSheet],
) -> ChartSession {
    let mut marks = Vec::new();
    let mut minute = from;
    while minute <= to {
        marks.push(ChartMark { minute, time: voice.time(minute) });
        minute += GRID;
    }
    let inside = |row: &&LineSheet| row.from_min >= from && row.to_min <= to;
    ChartSession {
        day: voice.day(from),
        from,
        to,
        marks,
        lanes: people(voice)
            .into_iter()
            .map(|who| lane(voice, who, from, to, steps))
            .collect(),
        said: said(voice, rows.iter().filter(inside)),
    }
}

/// Everyone who does something, in order.
fn people(voice: &Voice) -> Vec<Who> {
    let mut people: Vec<Who> = Vec::new();
    for activity in &voice.plan.activities {
        if !people.contains(&activity.deed.who) {
            people.push(activity.deed.who);
        }
    }
    people
}

fn lane(voice: &Voice, who: Who, from: i32, to: i32, steps: &[Step]) -> ChartLane {
    // Titles stand in the order of names, and so do colours.
    let recipe = |name: &str| {
        voice.plan.titles.keys().position(|known| known == name).unwrap_or(0)
    };
    let rests = voice.plan.waits.iter().filter(|wait| wait.deed.who == who);
    let rests = rests.filter_map(|wait| Some((wait.span?, recipe(&wait.deed.recipe))));
    let rests = rests.filter(|(of, _)| of.0 < to && of.1 > from && of.1 > of.0);
    let rest = |(span, recipe): ((i32, i32), usize)| ChartBar {
        kind: BarKind::Rest,
        from: span.0,
        to: span.1,
        step: None,
        recipe,
    };
    let theirs = |of: &&Activity| {
        of.deed.who == who || (of.kind.is_gathering() && takes_part(of, who))
    };
    let own = voice.plan.activities.iter().filter(theirs);
    let bar = |of: &Activity| {
        let (start, end) = of.span?;
        let own = step(of);
        if own.is_none() && !of.kind.is_gathering() {
            return None;
        }
        let here = start >= from && end <= to && end > start;
        here.then(|| ChartBar {
            kind: bar_kind(of.kind),
            from: start,
            to: end,
            step: steps.iter().position(|known| Some(*known) == own).map(|at| at + 1),
            recipe: recipe(&of.deed.recipe),
        })
    };
    let bars = rests.map(rest).chain(own.filter_map(bar)).collect();
    ChartLane { who: voice.names.one(who), bars }
}

/// Whether somebody is one of those who do something together.
fn takes_part(of: &Activity, who: Who) -> bool {
    match who {
        Who::Group(group) | Who::Baker(group, _) => {
            of.watching.contains(&Who::Group(group))
        }
        Who::Instructor | Who::Helper | Who::Home => false,
    }
}

/// Rows in a sentence each.
fn said<'r>(voice: &Voice, rows: impl Iterator<Item = &'r LineSheet>) -> String {
    let sentence = |row: &LineSheet| {
        let values = [
            ("date", &*row.date),
            ("from", &*row.from),
            ("to", &*row.to),
            ("who", &*row.who),
            ("what", &*row.what),
        ];
        voice.words.fill("drawing-alt-plan", &values)
    };
    rows.map(sentence).collect::<Vec<_>>().join(voice.words.get("sentence-space"))
}
