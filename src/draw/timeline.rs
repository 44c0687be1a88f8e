//! The timeline: every step on an axis of hours, what needs hands and what only waits
//! told apart by pattern, what runs side by side, how long a thing may stay.

use crate::measure::show;
use crate::sheet::{StepTime, Time};

use super::hatch::Slant;
use super::ink;
use super::lettering::{self, HEADING, LABEL, RISE};
use super::plate::{Anchor, MARGIN, Plate, Text, WIDTH};
use super::voice::Voice;

/// The height of a bar.
const BAR: f64 = 18.0;
/// The height of a row: a bar, with its label beside it.
const ROW: f64 = 31.0;
/// The narrowest that a bar is drawn.
const NARROWEST: f64 = 4.0;
/// How much of the width a hold may take beyond the end of the work.
const TAIL: f64 = 70.0;
/// The space between a bar and its label.
const GAP: f64 = 9.0;

/// Ten years: nothing is planned beyond that, and the axis stays in range.
const LONGEST: u64 = 5_256_000;

/// The axis: minutes to places.
#[derive(Clone, Copy, Debug)]
struct Axis {
    minutes: f64,
    step: u64,
}

impl Axis {
    fn new(elapsed: u64) -> Self {
        // The fewest minutes between marks that leave at most nine of them.
        let elapsed = elapsed.min(LONGEST);
        const STEPS: [u64; 8] = [5, 15, 30, 60, 120, 180, 360, 720];
        let fits = STEPS.into_iter().find(|step| elapsed / step <= 8);
        let step = fits.unwrap_or_else(|| elapsed.div_ceil(8 * 1440).max(1) * 1440);
        Self { minutes: (elapsed.max(1)) as f64, step }
    }

    fn x(&self, minutes: u64) -> f64 {
        MARGIN + (minutes as f64 / self.minutes).min(1.0) * (WIDTH - 2.0 * MARGIN)
    }
}

/// A step in its row.
struct Row<'a> {
    step: &'a StepTime,
    top: f64,
    /// Where its bar begins, where its hands end, where it ends.
    places: [f64; 3],
    label: Label,
}

/// Where a row's label stands.
#[derive(Clone, Copy)]
enum Label {
    /// Beginning here, on the bar's line.
    Right(f64),
    /// Ending here, on the bar's line.
    Left(f64),
    /// Beginning here, above the bar.
    Above(f64),
}

/// The drawing of a recipe's timeline; `recipe` is the recipe's own file name.
pub(super) fn timeline(time: &Time, recipe: &str, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(WIDTH);
    let axis = Axis::new(time.elapsed_min);
    let top = key(&mut plate, voice) + 12.0;
    let (rows, groups, bottom) = place(time, recipe, (&axis, top + 30.0));
    hours(&mut plate, &axis, [top, bottom]);
    links(&mut plate, &rows);
    for (name, y) in groups {
        let name = lettering::shorten(&name, LABEL, true, WIDTH - 2.0 * MARGIN);
        let text = Text::new(name, [MARGIN, y + LABEL * RISE]).bold().ink(ink::LEAD);
        plate.text(text);
    }
    for row in &rows {
        bars(&mut plate, row, &axis);
    }
    rows.iter().for_each(|row| write(&mut plate, row));
    plate.height = sums(&mut plate, time, bottom + 14.0, voice);
    plate
}

/// What the patterns mean.
fn key(plate: &mut Plate, voice: Voice<'_>) -> f64 {
    let mut x = MARGIN;
    let signs =
        [("hands-on", Sign::Hand), ("waiting", Sign::Wait), ("may-hold", Sign::Hold)];
    for (word, sign) in signs {
        sign.draw(plate, [x, x + 36.0], 8.0);
        let text =
            Text::new(voice.word(word), [x + 44.0, 8.0 + BAR / 2.0 + 0.36 * LABEL]);
        x = text.frame().right + 22.0;
        plate.text(text);
    }
    8.0 + BAR + 6.0
}

/// The three kinds of time.
#[derive(Clone, Copy)]
enum Sign {
    Hand,
    Wait,
    Hold,
}

impl Sign {
    fn draw(self, plate: &mut Plate, [left, right]: [f64; 2], top: f64) {
        let (from, to) = ([left, top], [right, top + BAR]);
        match self {
            Self::Hand => plate.rectangle(from, to, ink::HAND),
            Self::Wait => {
                plate.rectangle(from, to, ink::WAIT);
                let outline = super::plate::corners(from, to);
                plate.hatch(&outline, Slant::degrees(60.0), 7.0, ink::WAIT_HATCH);
            }
            Self::Hold => {
                let y = top + BAR / 2.0;
                plate.line(&[[left, y], [right, y]], ink::HOLD);
                plate.line(&[[right, y - 5.0], [right, y + 5.0]], ink::DIM);
            }
        }
    }
}

type Placed<'a> = (Vec<Row<'a>>, Vec<(String, f64)>, f64);

/// Gives every step its row; steps of another recipe stand beneath that recipe's name.
fn place<'a>(time: &'a Time, recipe: &str, (axis, top): (&Axis, f64)) -> Placed<'a> {
    let many = time.steps.iter().any(|step| step.recipe != recipe);
    let mut rows: Vec<Row<'a>> = time.steps.iter().map(|step| row(step, axis)).collect();
    let labels: Vec<Label> =
        (0..rows.len()).map(|index| label(&rows, index, axis)).collect();
    let (mut groups, mut group, mut y) = (Vec::new(), "", top);
    for (row, label) in rows.iter_mut().zip(labels) {
        if many && row.step.recipe != group {
            group = &row.step.recipe;
            groups.push((readable(group), y + 4.0));
            y += ROW;
        }
        y += if matches!(label, Label::Above(_)) { LABEL + 4.0 } else { 0.0 };
        row.top = y;
        row.label = label;
        y += ROW;
    }
    (rows, groups, y)
}

fn row<'a>(step: &'a StepTime, axis: &Axis) -> Row<'a> {
    let start = axis.x(step.start_min);
    let least = if step.hands_min > 0 { start + NARROWEST } else { start };
    let by_hand = step.start_min.saturating_add(step.hands_min);
    let hands = axis.x(by_hand).max(least);
    let end = axis.x(by_hand.saturating_add(step.wait_min[0]));
    let end = end.max(hands).max(start + NARROWEST);
    Row { step, top: 0.0, places: [start, hands, end], label: Label::Above(start) }
}

/// Finds the place of a row's label: right of its bar, past what runs down through the
/// row; else left of it; else above.
fn label(rows: &[Row<'_>], index: usize, axis: &Axis) -> Label {
    let row = &rows[index];
    let [start, _, end] = row.places;
    let width = lettering::width(&words_of(row.step), LABEL, false);
    let crossings = crossings(rows, index);
    let near = tail(row, axis).unwrap_or(end) + GAP;
    let mut right = near;
    for x in &crossings {
        // In order, so that each moves the label past the ones before.
        if *x > right - 4.0 && *x < right + width + 4.0 {
            right = x + 6.0;
        }
    }
    let left = start - GAP;
    let clear = !crossings.iter().any(|x| *x > left - width - 4.0 && *x < left);
    if right + width <= WIDTH && right - near < 130.0 {
        Label::Right(right)
    } else if left - width >= 0.0 && clear {
        Label::Left(left)
    } else if near + width <= WIDTH {
        Label::Right(near)
    } else if left - width >= 0.0 {
        Label::Left(left)
    } else {
        Label::Above(start.min(WIDTH - MARGIN / 2.0 - width).max(4.0))
    }
}

/// Where links between other rows run down through a row, from left to right.
fn crossings(rows: &[Row<'_>], index: usize) -> Vec<f64> {
    let (before, after) = (&rows[..index], &rows[index + 1..]);
    let runs = before.iter().filter(|first| after.iter().any(|last| waits(last, first)));
    let mut places: Vec<f64> = runs.map(|first| first.places[2]).collect();
    places.sort_by(f64::total_cmp);
    places
}

/// A file's name as words: `Layered dough`.
fn readable(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().map(|letter| letter.to_uppercase().to_string());
    format!("{}{}", first.unwrap_or_default(), letters.as_str().replace('-', " "))
}

fn words_of(step: &StepTime) -> String {
    let lasts = show::minutes(step.hands_min.saturating_add(step.wait_min[0]));
    let room = WIDTH - 2.0 * MARGIN - lettering::width(&lasts, LABEL, false) - 14.0;
    format!("{}, {lasts}", lettering::shorten(&step.title, LABEL, false, room))
}

fn hours(plate: &mut Plate, axis: &Axis, [top, bottom]: [f64; 2]) {
    let mut minutes = 0;
    let mut free = 0.0;
    while minutes as f64 <= axis.minutes {
        let x = axis.x(minutes);
        plate.line(&[[x, top + 22.0], [x, bottom]], ink::GRID);
        let text = Text::new(clock(minutes), [x, top + LABEL * RISE]).middle();
        let text = if minutes == 0 {
            Text { anchor: Anchor::Start, at: [4.0, text.at[1]], ..text }
        } else {
            text
        };
        let frame = text.frame();
        if frame.left >= free && frame.right <= WIDTH {
            free = frame.right + 6.0;
            plate.text(text);
        }
        minutes += axis.step;
    }
}

/// Time since the start: `0:45`.
pub(super) fn clock(minutes: u64) -> String {
    format!("{}:{:02}", minutes / 60, minutes % 60)
}

/// What waits for what.
fn links(plate: &mut Plate, rows: &[Row<'_>]) {
    for (index, row) in rows.iter().enumerate() {
        for before in rows[..index].iter().filter(|before| waits(row, before)) {
            let (x, y) = (before.places[2], before.top + BAR);
            let to = [row.places[0], row.top + BAR / 2.0];
            plate.line(&[[x, y], [x, to[1]], to], ink::LINK);
        }
    }
}

/// Whether a step waits for another. A step of an included recipe may be named with that
/// recipe before it, and must be where both recipes have a step of the name.
fn waits(row: &Row<'_>, before: &Row<'_>) -> bool {
    let other = before.step;
    let same_recipe = row.step.recipe == other.recipe;
    row.step.after.iter().any(|name| match name.split_once('/') {
        Some((recipe, step)) => recipe == other.recipe && step == other.step,
        None => same_recipe && *name == other.step,
    })
}

fn bars(plate: &mut Plate, row: &Row<'_>, axis: &Axis) {
    let [start, hands, end] = row.places;
    if hands > start {
        Sign::Hand.draw(plate, [start, hands], row.top);
    }
    if end > hands {
        Sign::Wait.draw(plate, [hands, end], row.top);
    }
    if let Some(tail) = tail(row, axis) {
        Sign::Hold.draw(plate, [end, tail], row.top);
    }
}

/// Where a hold's tail ends: to scale, but no longer than `TAIL`, and on the plate.
fn tail(row: &Row<'_>, axis: &Axis) -> Option<f64> {
    let end = row.places[2];
    let long = (axis.x(row.step.hold_min) - MARGIN).min(TAIL);
    let tail = (end + long).min(WIDTH - 4.0);
    (row.step.hold_min > 0 && tail - end >= 6.0).then_some(tail)
}

/// Sets a row's label.
fn write(plate: &mut Plate, row: &Row<'_>) {
    let y = row.top + BAR / 2.0 + 0.36 * LABEL;
    let words = words_of(row.step);
    plate.text(match row.label {
        Label::Right(x) => Text::new(words, [x, y]),
        Label::Left(x) => Text::new(words, [x, y]).end(),
        Label::Above(x) => Text::new(words, [x, row.top - 6.0]),
    });
}

/// How long a step lasts, in words: hands and waiting.
pub(super) fn lasts(step: &StepTime, voice: Voice<'_>) -> String {
    let hands = show::minutes(step.hands_min);
    let wait = show::minutes(step.wait_min[0]);
    let values = [("hands", hands.as_str()), ("wait", wait.as_str())];
    let key = match (step.hands_min > 0, step.wait_min[0] > 0) {
        (true, true) => "lasts-both",
        (false, true) => "lasts-wait",
        _ => "lasts-hands",
    };
    voice.fill(key, &values)
}

/// The sums beneath the rows; gives where they end.
fn sums(plate: &mut Plate, time: &Time, top: f64, voice: Voice<'_>) -> f64 {
    let values = [
        ("elapsed", time.elapsed.as_str()),
        ("hands", time.hands.as_str()),
        ("wait", time.wait.as_str()),
    ];
    let mut y = top + HEADING * RISE;
    for line in
        lettering::wrap(&voice.fill("sums", &values), LABEL, true, WIDTH - 2.0 * MARGIN)
    {
        plate.text(Text::new(line, [MARGIN, y]).bold());
        y += LABEL * 1.25;
    }
    y - LABEL * 0.5
}
