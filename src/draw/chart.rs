//! The chart of a plan: a panel for each session, a row for each group, what needs hands,
//! the oven and what only waits told apart by pattern, the steps by their numbers.

use serde::Serialize;

use crate::plan::{Activity, Row, Timetable, together};

use super::ink;
use super::lettering::{self, LABEL, RISE};
use super::panels::WIDE;
use super::plate::{MARGIN, Plate, Text, WIDTH};
use super::svg;

/// The height of a bar.
const BAR: f64 = 22.0;
/// From row to row.
const ROW: f64 = 32.0;
/// Where the bars begin: to the left of it stand the names.
const LEFT: f64 = 150.0;
/// The width of the key.
const KEY: f64 = 470.0;
/// Minutes between two lines of the grid.
const GRID: i32 = 30;

/// A plan's chart in the wide form, for paper turned on its side: a drawing for each
/// session, which may stand on pages of their own, and what the numbers stand for.
#[derive(Clone, Debug, Serialize)]
pub struct PlanChart {
    /// Session by session.
    pub sessions: Vec<SessionChart>,
    /// The steps in the order of their numbers, from 1.
    pub steps: Vec<String>,
}

/// One session's part of a wide chart.
#[derive(Clone, Debug, Serialize)]
pub struct SessionChart {
    /// The SVG document, 1280 units wide.
    pub svg: String,
    /// The same in words.
    pub alt: String,
}

/// A plan's chart as an SVG document; `None` where there is no plan.
pub fn plan_chart(plan: &Timetable) -> Option<String> {
    if !is_planned(plan) {
        return None;
    }
    let steps = steps(plan);
    let mut plate = Plate::new(WIDTH);
    let mut top = key(&mut plate, MARGIN, 8.0);
    for (from, to) in used(plan) {
        top = panel(&mut plate, plan, &steps, ([from, to], top));
    }
    plate.height = legend(&mut plate, &steps, top);
    Some(svg::document(&plate, &plan.title, &alternative(&plan.rows())))
}

/// The chart's wide form; `None` where there is no plan.
pub fn plan_chart_wide(plan: &Timetable) -> Option<PlanChart> {
    if !is_planned(plan) {
        return None;
    }
    let steps = steps(plan);
    let session = |span: (i32, i32)| session(plan, &steps, span);
    Some(PlanChart {
        sessions: used(plan).into_iter().map(session).collect(),
        steps: steps.iter().map(|(_, title)| title.clone()).collect(),
    })
}

fn session(
    plan: &Timetable,
    steps: &[(String, String)],
    (from, to): (i32, i32),
) -> SessionChart {
    let mut plate = Plate::new(WIDE);
    // The key stands to the right of the day, in its line.
    key(&mut plate, WIDE - KEY, 0.0);
    plate.height = panel(&mut plate, plan, steps, ([from, to], 0.0));
    let mut rows = plan.rows();
    rows.retain(|row| row.start_min >= from && row.end_min <= to);
    let alt = alternative(&rows);
    SessionChart { svg: svg::document(&plate, &day(plan, from), &alt), alt }
}

fn is_planned(plan: &Timetable) -> bool {
    plan.activities.iter().any(|activity| activity.start_min.is_some())
}

/// The steps by their numbers: recipe and heading.
fn steps(plan: &Timetable) -> Vec<(String, String)> {
    let mut steps = Vec::new();
    let mut activities: Vec<&Activity> = plan.activities.iter().collect();
    activities.sort_by_key(|activity| (activity.start_min, activity.id));
    for activity in activities {
        let step = (activity.recipe.clone(), activity.title.clone());
        let counts = matches!(activity.kind, "hands" | "bake" | "demonstration");
        if counts && !steps.contains(&step) {
            steps.push(step);
        }
    }
    steps
}

/// The sessions in which something happens; a long one from its first task to its last.
fn used(plan: &Timetable) -> Vec<(i32, i32)> {
    let inside = |from: i32, to: i32| {
        let starts = plan.activities.iter().filter_map(|of| of.start_min.zip(of.end_min));
        let here = starts.filter(|(start, end)| *start >= from && *end <= to);
        let spans: Vec<(i32, i32)> = here.collect();
        let first = spans.iter().map(|span| span.0).min()?;
        let last = spans.iter().map(|span| span.1).max()?;
        let whole = |minute: i32| minute.div_euclid(GRID) * GRID;
        Some((
            whole(first - from) + from,
            (whole(last - from - 1) + from + GRID).min(to.max(last)),
        ))
    };
    plan.sessions.iter().filter_map(|span| inside(span.from_min, span.to_min)).collect()
}

/// What the patterns mean, from `left`; gives where it ends below.
fn key(plate: &mut Plate, left: f64, top: f64) -> f64 {
    let mut x = left;
    for (word, kind) in
        [("hands on", "hands"), ("in the oven", "bake"), ("waits", "rest")]
    {
        bar(plate, kind, [[x, top], [x + 36.0, top + BAR]]);
        let text = Text::new(word, [x + 44.0, top + BAR / 2.0 + 0.36 * LABEL]);
        x = text.frame().right + 22.0;
        plate.text(text);
    }
    top + BAR + 14.0
}

fn bar(plate: &mut Plate, kind: &str, [from, to]: [[f64; 2]; 2]) {
    let fill = if matches!(kind, "bake" | "rest") { ink::WAIT } else { ink::HAND };
    plate.rectangle(from, to, fill);
    if kind == "bake" {
        let y = f64::midpoint(from[1], to[1]);
        plate.line(&[[from[0], y], [to[0], y]], ink::CORE);
    }
}

fn panel(
    plate: &mut Plate,
    plan: &Timetable,
    steps: &[(String, String)],
    ([from, to], top): ([i32; 2], f64),
) -> f64 {
    let width = plate.width;
    let x = |minute: i32| {
        let minute = f64::from(minute.clamp(from, to) - from);
        LEFT + minute / f64::from((to - from).max(1)) * (width - MARGIN - LEFT)
    };
    plate.heading(&day(plan, from), top);
    let top = top + 34.0;
    let groups = groups(plan);
    let bottom = top + 26.0 + ROW * groups.len() as f64;
    grid(plate, plan, &x, ([from, to], [top, bottom]));
    for (at, group) in groups.iter().enumerate() {
        let y = top + 26.0 + ROW * at as f64;
        let name = lettering::shorten(group, LABEL, false, LEFT - MARGIN - 8.0);
        plate.text(Text::new(name, [MARGIN, y + BAR / 2.0 + 0.36 * LABEL]));
        let rests = plan.waits.iter().filter(|wait| wait.group == *group);
        for span in rests.filter_map(|wait| wait.start_min.zip(wait.end_min)) {
            if span.0 < to && span.1 > from && span.1 > span.0 {
                let (low, high) = (y + 0.3 * BAR, y + 0.7 * BAR);
                bar(plate, "rest", [[x(span.0), low], [x(span.1), high]]);
            }
        }
        let own =
            plan.activities.iter().filter(|of| of.group == *group && of.minutes > 0);
        for activity in own {
            let Some((start, end)) = activity.start_min.zip(activity.end_min) else {
                continue;
            };
            if start >= from && end <= to {
                bar(plate, activity.kind, [[x(start), y], [x(end), y + BAR]]);
                number(plate, activity, steps, ((x(start) + x(end)) / 2.0, y));
            }
        }
    }
    bottom + 18.0
}

/// The step's number over its bar, where there is room.
fn number(
    plate: &mut Plate,
    activity: &Activity,
    steps: &[(String, String)],
    (x, y): (f64, f64),
) {
    let own = |(recipe, title): &(String, String)| {
        *recipe == activity.recipe && *title == activity.title
    };
    let Some(at) = steps.iter().position(own) else { return };
    let text = Text::new((at + 1).to_string(), [x, y + BAR / 2.0 + 0.36 * LABEL])
        .bold()
        .middle();
    let ground = text.frame();
    if plate.is_free(&ground) {
        let (left, right) = (ground.left - 1.0, ground.right + 1.0);
        plate.rectangle([left, y + 2.0], [right, y + BAR - 2.0], ink::HOLLOW);
        plate.text(text);
    }
}

fn grid(
    plate: &mut Plate,
    plan: &Timetable,
    x: &impl Fn(i32) -> f64,
    ([from, to], [top, bottom]): ([i32; 2], [f64; 2]),
) {
    let mut free = LEFT - 40.0;
    let mut minute = from;
    while minute <= to {
        let at = x(minute);
        plate.line(&[[at, top + 20.0], [at, bottom]], ink::GRID);
        let text = Text::new(time(plan, minute), [at, top + LABEL * RISE]).middle();
        let frame = text.frame();
        if frame.left >= free && frame.right <= plate.width {
            free = frame.right + 8.0;
            plate.text(text);
        }
        minute += GRID;
    }
}

fn groups(plan: &Timetable) -> Vec<String> {
    let mut groups: Vec<String> = Vec::new();
    for activity in &plan.activities {
        if !groups.contains(&activity.group) {
            groups.push(activity.group.clone());
        }
    }
    groups
}

/// The numbers and what they stand for.
fn legend(plate: &mut Plate, steps: &[(String, String)], top: f64) -> f64 {
    let mut y = top + 6.0;
    for (at, (_, title)) in steps.iter().enumerate() {
        let words = format!("{}  {title}", at + 1);
        let words = lettering::shorten(&words, LABEL, false, WIDTH - 2.0 * MARGIN);
        plate.text(Text::new(words, [MARGIN, y + LABEL * RISE]));
        y += 26.0;
    }
    y + 10.0
}

fn stamp(plan: &Timetable, minute: i32) -> jiff::civil::DateTime {
    let start = plan.start.parse::<jiff::civil::DateTime>().unwrap_or_default();
    crate::plan::Clock::new(start, plan.zone.as_deref())
        .map_or(start, |clock| clock.local(minute))
}

fn day(plan: &Timetable, minute: i32) -> String {
    stamp(plan, minute).strftime("%A %-d %B %Y").to_string()
}

fn time(plan: &Timetable, minute: i32) -> String {
    stamp(plan, minute).strftime("%H:%M").to_string()
}

/// The same in words.
fn alternative(rows: &[Row]) -> String {
    let said = rows.iter().map(|row| {
        let from = row.start.replace('T', " ");
        let to = row.end.split_once('T').map_or("", |(_, to)| to);
        format!("{from} to {to}, {}: {}.", together(&row.who), row.title)
    });
    said.collect::<Vec<_>>().join(" ")
}
