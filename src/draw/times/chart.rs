//! The chart of a plan: a panel for each session, a row for each group, what needs hands,
//! the oven and what only waits told apart by pattern, the steps by their numbers. Where
//! several recipes are made each has a colour, and lines of its own for a grey copy.

use serde::Serialize;

use crate::sheet::{BarKind, ChartSession, ChartSheet};

use crate::draw::system::hatch::Slant;
use crate::draw::system::ink::{self, Ink};
use crate::draw::system::lettering::{self, LABEL, RISE};
use crate::draw::system::plate::{MARGIN, Plate, Text, WIDE, WIDTH};
use crate::draw::system::svg::Drawing;

/// The height of a bar.
const BAR: f64 = 22.0;
/// From row to row.
const ROW: f64 = 32.0;
/// Where the bars begin: to the left of it stand the names.
const LEFT: f64 = 150.0;
/// The width of the key.
const KEY: f64 = 470.0;

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

/// A plan's chart.
pub fn plan_chart(chart: &ChartSheet) -> Drawing {
    let mut plate = Plate::new(WIDTH);
    let mut top = key(&mut plate, chart, [MARGIN, 8.0]);
    for session in &chart.sessions {
        top = panel(&mut plate, session, top);
    }
    plate.height = legend(&mut plate, &chart.steps, top);
    Drawing::new(&plate, &chart.title, &chart.said)
}

/// The chart's wide form.
pub fn plan_chart_wide(chart: &ChartSheet) -> PlanChart {
    let session = |session: &ChartSession| {
        let mut plate = Plate::new(WIDE);
        // The key stands to the right of the day, in its line, if that holds it.
        let short = chart.recipes.is_empty() && chart.key.len() <= 3;
        let left = if short { WIDE - KEY } else { MARGIN };
        let below = key(&mut plate, chart, [left, 0.0]);
        plate.height = panel(&mut plate, session, if short { 0.0 } else { below });
        let drawing = Drawing::new(&plate, &session.day, &session.said);
        SessionChart { svg: drawing.svg(), alt: session.said.clone() }
    };
    PlanChart {
        sessions: chart.sessions.iter().map(session).collect(),
        steps: chart.steps.clone(),
    }
}

/// What the patterns mean, from a place; gives where it ends below.
fn key(plate: &mut Plate, chart: &ChartSheet, [left, mut top]: [f64; 2]) -> f64 {
    let kinds = chart.key.iter().map(|(kind, word)| (*kind, 0, word.clone()));
    let recipes = chart.recipes.iter().enumerate();
    let recipes = recipes.map(|(at, title)| (BarKind::Hands, at, title.clone()));
    let rows: [Vec<(BarKind, usize, String)>; 2] = [kinds.collect(), recipes.collect()];
    for row in rows.iter().filter(|row| !row.is_empty()) {
        let mut x = left;
        for (kind, recipe, word) in row {
            let room = plate.width - MARGIN - 44.0;
            let word = lettering::shorten(word, LABEL, false, room - left);
            let wide = lettering::width(&word, LABEL, false);
            if x > left && x + wide > room {
                (x, top) = (left, top + BAR + 6.0);
            }
            bar(plate, *kind, *recipe, [[x, top], [x + 36.0, top + BAR]]);
            let text = Text::new(word, [x + 44.0, top + BAR / 2.0 + 0.36 * LABEL]);
            x = text.frame().right + 22.0;
            plate.text(text);
        }
        top += BAR + 14.0;
    }
    top
}

/// A recipe's ground, and how its lines run: degrees and their distance.
const RECIPES: [(Ink, Option<(f64, f64)>); 4] = [
    (ink::HAND, None),
    (ink::HAND_2, Some((90.0, 7.0))),
    (ink::HAND_3, Some((0.0, 6.0))),
    (ink::HAND_4, Some((135.0, 8.0))),
];

fn bar(plate: &mut Plate, kind: BarKind, recipe: usize, [from, to]: [[f64; 2]; 2]) {
    let (ground, lines) = RECIPES[recipe % RECIPES.len()];
    match kind {
        BarKind::Hands => {
            plate.rectangle(from, to, ground);
            if let Some((degrees, gap)) = lines {
                let outline = [from, [to[0], from[1]], to, [from[0], to[1]]];
                plate.hatch(&outline, Slant::degrees(degrees), gap, ink::HAND_LINES);
            }
        }
        BarKind::Rest => plate.rectangle(from, to, ink::WAIT),
        BarKind::Together => plate.rectangle(from, to, ink::TOGETHER),
        BarKind::Bake => {
            let ground = if recipe == 0 { ink::WAIT } else { ground };
            plate.rectangle(from, to, ground);
            let y = f64::midpoint(from[1], to[1]);
            plate.line(&[[from[0], y], [to[0], y]], ink::CORE);
        }
    }
}

fn panel(plate: &mut Plate, session: &ChartSession, top: f64) -> f64 {
    let width = plate.width;
    let (from, to) = (session.from, session.to);
    let x = |minute: i32| {
        let minute = f64::from(minute.clamp(from, to) - from);
        LEFT + minute / f64::from((to - from).max(1)) * (width - MARGIN - LEFT)
    };
    plate.heading(&session.day, top);
    let top = top + 34.0;
    let bottom = top + 26.0 + ROW * session.lanes.len() as f64;
    grid(plate, session, &x, [top, bottom]);
    for (at, lane) in session.lanes.iter().enumerate() {
        let y = top + 26.0 + ROW * at as f64;
        let name = lettering::shorten(&lane.who, LABEL, false, LEFT - MARGIN - 8.0);
        plate.text(Text::new(name, [MARGIN, y + BAR / 2.0 + 0.36 * LABEL]));
        for one in &lane.bars {
            let (left, right) = (x(one.from), x(one.to));
            // What waits is lower: it may lie behind what is done.
            let [low, high] = match one.kind {
                BarKind::Rest => [y + 0.3 * BAR, y + 0.7 * BAR],
                BarKind::Hands | BarKind::Bake | BarKind::Together => [y, y + BAR],
            };
            bar(plate, one.kind, one.recipe, [[left, low], [right, high]]);
            if let Some(step) = one.step {
                number(plate, step, [f64::midpoint(left, right), y]);
            }
        }
    }
    bottom + 18.0
}

/// A step's number over its bar, where there is room.
fn number(plate: &mut Plate, step: usize, [x, y]: [f64; 2]) {
    let text =
        Text::new(step.to_string(), [x, y + BAR / 2.0 + 0.36 * LABEL]).bold().middle();
    let ground = text.frame();
    if plate.is_free(&ground) {
        let (left, right) = (ground.left - 1.0, ground.right + 1.0);
        plate.rectangle([left, y + 2.0], [right, y + BAR - 2.0], ink::HOLLOW);
        plate.text(text);
    }
}

fn grid(
    plate: &mut Plate,
    session: &ChartSession,
    x: &impl Fn(i32) -> f64,
    [top, bottom]: [f64; 2],
) {
    let mut free = LEFT - 40.0;
    for mark in &session.marks {
        let at = x(mark.minute);
        plate.line(&[[at, top + 20.0], [at, bottom]], ink::GRID);
        let text = Text::new(&mark.time, [at, top + LABEL * RISE]).middle();
        let frame = text.frame();
        if frame.left >= free && frame.right <= plate.width {
            free = frame.right + 8.0;
            plate.text(text);
        }
    }
}

/// The numbers and what they stand for.
fn legend(plate: &mut Plate, steps: &[String], top: f64) -> f64 {
    let mut y = top + 6.0;
    for (at, title) in steps.iter().enumerate() {
        let words = format!("{}  {title}", at + 1);
        let words = lettering::shorten(&words, LABEL, false, WIDTH - 2.0 * MARGIN);
        plate.text(Text::new(words, [MARGIN, y + LABEL * RISE]));
        y += 26.0;
    }
    y + 10.0
}
