//! The rows of a timeline: where every bar and its label stand.

use crate::measure::show;
use crate::sheet::{StepTime, Time};

use super::lettering::{self, LABEL};
use super::plate::{MARGIN, WIDTH};
use super::voice::Voice;

/// The height of a row: a bar, with its label beside it.
const ROW: f64 = 31.0;
/// The same on a wide plate, where less is needed to tell one row from the next.
const FLAT_ROW: f64 = 25.0;
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
pub(super) struct Axis {
    /// From start to end.
    pub(super) minutes: f64,
    /// Minutes between two marks.
    pub(super) step: u64,
    /// The width of the plate.
    pub(super) width: f64,
}

impl Axis {
    /// The axis of a plan so many minutes long, on a plate of `width`.
    pub(super) fn new(elapsed: u64, width: f64) -> Self {
        // The fewest minutes between marks that leave at most nine of them, and twice as
        // many on a plate twice as wide.
        let elapsed = elapsed.min(LONGEST);
        let most = (8.0 * width / WIDTH) as u64;
        const STEPS: [u64; 8] = [5, 15, 30, 60, 120, 180, 360, 720];
        let fits = STEPS.into_iter().find(|step| elapsed / step <= most);
        let step = fits.unwrap_or_else(|| elapsed.div_ceil(8 * 1440).max(1) * 1440);
        Self { minutes: (elapsed.max(1)) as f64, step, width }
    }

    /// Where a minute stands.
    pub(super) fn x(&self, minutes: u64) -> f64 {
        MARGIN + (minutes as f64 / self.minutes).min(1.0) * (self.width - 2.0 * MARGIN)
    }
}

/// A step in its row.
pub(super) struct Row<'a> {
    /// The step.
    pub(super) step: &'a StepTime,
    /// The upper edge of its bar.
    pub(super) top: f64,
    /// Where its bar begins, where its hands end, where it ends.
    pub(super) places: [f64; 3],
    /// Where its label stands.
    pub(super) label: Label,
}

/// Where a row's label stands.
#[derive(Clone, Copy)]
pub(super) enum Label {
    /// Beginning here, on the bar's line.
    Right(f64),
    /// Ending here, on the bar's line.
    Left(f64),
    /// Beginning here, above the bar.
    Above(f64),
}

/// Two rows of which the second waits for the first, by their places in the list.
#[derive(Clone, Copy)]
pub(super) struct Link {
    pub(super) first: usize,
    pub(super) then: usize,
}

/// The rows of a timeline, placed.
pub(super) struct Placed<'a> {
    /// Every step, in order.
    pub(super) rows: Vec<Row<'a>>,
    /// What waits for what.
    pub(super) links: Vec<Link>,
    /// The recipes' names and where they stand.
    pub(super) groups: Vec<(String, f64)>,
    /// Where the rows end.
    pub(super) bottom: f64,
}

/// Gives every step its row; steps of another recipe stand beneath that recipe's name.
pub(super) fn place<'a>(
    time: &'a Time,
    recipe: &str,
    (axis, top): (&Axis, f64),
    voice: Voice<'_>,
) -> Placed<'a> {
    let many = time.steps.iter().any(|step| step.recipe != recipe);
    let mut rows: Vec<Row<'a>> = time.steps.iter().map(|step| row(step, axis)).collect();
    let links = links(&rows);
    let labels: Vec<Label> =
        (0..rows.len()).map(|index| label(&rows, (index, &links), axis, voice)).collect();
    let (mut groups, mut group, mut y) = (Vec::new(), "", top);
    let high = if axis.width > WIDTH { FLAT_ROW } else { ROW };
    for (row, label) in rows.iter_mut().zip(labels) {
        if many && row.step.recipe != group {
            group = &row.step.recipe;
            groups.push((readable(group), y + 4.0));
            y += high;
        }
        y += if matches!(label, Label::Above(_)) { LABEL + 4.0 } else { 0.0 };
        row.top = y;
        row.label = label;
        y += high;
    }
    Placed { rows, links, groups, bottom: y }
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
fn label(
    rows: &[Row<'_>],
    (index, links): (usize, &[Link]),
    axis: &Axis,
    voice: Voice<'_>,
) -> Label {
    let row = &rows[index];
    let [start, _, end] = row.places;
    let width = lettering::width(&words_of(row.step, axis.width, voice), LABEL, false);
    let crossings = crossings(rows, index, links);
    let near = tail(row, axis).unwrap_or(end) + GAP;
    let mut right = near;
    for x in &crossings {
        // In order, so that each moves the label past the ones before.
        if *x > right - 4.0 && *x < right + width + 4.0 {
            right = x + 6.0;
        }
    }
    let left = left_of(start - GAP, width, (rows, index, links), &crossings);
    let beside = |gone: f64| gone < 130.0;
    if right + width <= axis.width && beside(right - near) {
        Label::Right(right)
    } else if left - width >= 0.0 && beside(start - GAP - left) {
        Label::Left(left)
    } else {
        Label::Above(start.min(axis.width - MARGIN / 2.0 - width).max(4.0))
    }
}

/// Where a label ends that stands left of its bar: before what comes in, which runs along the
/// bar's line, and past what runs down through the row.
fn left_of(
    nearest: f64,
    width: f64,
    (rows, index, links): (&[Row<'_>], usize, &[Link]),
    crossings: &[f64],
) -> f64 {
    let incoming = links.iter().filter(|link| link.then == index);
    let incoming = incoming.map(|link| rows[link.first].places[2]);
    let mut left = incoming.map(|x| x - 6.0).fold(nearest, f64::min);
    for x in crossings.iter().rev() {
        if *x > left - width - 4.0 && *x < left + 4.0 {
            left = x - 6.0;
        }
    }
    left
}

/// Where links between other rows run down through a row, from left to right.
fn crossings(rows: &[Row<'_>], index: usize, links: &[Link]) -> Vec<f64> {
    let through = links.iter().filter(|link| link.first < index && index < link.then);
    let mut places: Vec<f64> = through.map(|link| rows[link.first].places[2]).collect();
    places.sort_by(f64::total_cmp);
    places
}

/// What waits for what among the rows.
fn links(rows: &[Row<'_>]) -> Vec<Link> {
    let named = |then: usize| rows[then].step.after.iter().map(move |name| (then, name));
    let waiting = (0..rows.len()).flat_map(named);
    waiting
        .filter_map(|(then, name)| Some(Link { first: awaited(rows, then, name)?, then }))
        .collect()
}

/// The row above that a row waits for: the step of that name in its own recipe, else the
/// last one of that name in an included recipe.
fn awaited(rows: &[Row<'_>], then: usize, name: &str) -> Option<usize> {
    let own = |row: &Row<'_>| row.step.recipe == rows[then].step.recipe;
    let above = || rows[..then].iter();
    above()
        .rposition(|row| row.step.step == name && own(row))
        .or_else(|| above().rposition(|row| row.step.step == name))
}

/// A file's name as words: `Layered dough`.
fn readable(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().map(|letter| letter.to_uppercase().to_string());
    format!("{}{}", first.unwrap_or_default(), letters.as_str().replace('-', " "))
}

/// A row's label: the step and how long it lasts.
pub(super) fn words_of(step: &StepTime, width: f64, voice: Voice<'_>) -> String {
    let lasts = step.hands_min.saturating_add(step.wait_min[0]);
    let lasts = show::minutes(lasts, voice.words);
    let room =
        width.min(WIDTH) - 2.0 * MARGIN - lettering::width(&lasts, LABEL, false) - 14.0;
    let title = lettering::shorten(&step.title, LABEL, false, room);
    voice.words.list(&[title, lasts])
}

/// Where a hold's tail ends: to scale, but no longer than `TAIL`, and on the plate.
pub(super) fn tail(row: &Row<'_>, axis: &Axis) -> Option<f64> {
    let end = row.places[2];
    let long = (axis.x(row.step.hold_min) - MARGIN).min(TAIL);
    let tail = (end + long).min(axis.width - 4.0);
    (row.step.hold_min > 0 && tail - end >= 6.0).then_some(tail)
}
