//! The rows of a timeline: where every bar and its label stand.

use crate::measure::show;
use crate::sheet::{StepTime, Time};

use crate::draw::system::lettering::{self, LABEL};
use crate::draw::system::plate::{MARGIN, WIDTH};
use crate::draw::system::voice::Voice;

/// The height of a row: a bar, with its label beside it.
const ROW: f64 = 31.0;
/// The same on paper, where less is needed to tell one row from the next.
const FLAT_ROW: f64 = 21.0;
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
pub(in crate::draw) struct Axis {
    /// From start to end.
    pub(in crate::draw) minutes: f64,
    /// Minutes between two marks.
    pub(in crate::draw) step: u64,
    /// The width of the plate.
    pub(in crate::draw) width: f64,
}

impl Axis {
    /// The axis of a plan so many minutes long, on a plate of `width`.
    pub(in crate::draw) fn new(elapsed: u64, width: f64) -> Self {
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
    pub(in crate::draw) fn x(&self, minutes: u64) -> f64 {
        MARGIN + (minutes as f64 / self.minutes).min(1.0) * (self.width - 2.0 * MARGIN)
    }
}

/// A step in its row.
pub(in crate::draw) struct StepRow<'a> {
    /// The step.
    pub(in crate::draw) step: &'a StepTime,
    /// The upper edge of its bar.
    pub(in crate::draw) top: f64,
    /// Where its bar begins, where its hands end, where it ends.
    pub(in crate::draw) places: [f64; 3],
    /// Where its label stands.
    pub(in crate::draw) label: RowLabel,
}

/// Where a row's label stands.
#[derive(Clone, Copy)]
pub(in crate::draw) enum RowLabel {
    /// Beginning here, on the bar's line.
    Right(f64),
    /// Ending here, on the bar's line.
    Left(f64),
    /// Beginning here, above the bar.
    Above(f64),
}

/// Two rows of which the second waits for the first, by their places in the list.
#[derive(Clone, Copy)]
pub(in crate::draw) struct StepLink {
    pub(in crate::draw) first: usize,
    pub(in crate::draw) then: usize,
}

/// The rows of a timeline, placed.
pub(in crate::draw) struct PlacedRows<'a> {
    /// Every step, in order.
    pub(in crate::draw) rows: Vec<StepRow<'a>>,
    /// What waits for what.
    pub(in crate::draw) links: Vec<StepLink>,
    /// The recipes' names and where they stand.
    pub(in crate::draw) groups: Vec<(String, f64)>,
    /// Where the rows end.
    pub(in crate::draw) bottom: f64,
}

/// Gives every step its row; steps of another recipe stand beneath that recipe's name.
pub(in crate::draw) fn place<'a>(
    time: &'a Time,
    recipe: &str,
    axis: &Axis,
    top: f64,
    voice: Voice<'_>,
) -> PlacedRows<'a> {
    let many = time.steps.iter().any(|step| step.recipe != recipe);
    let mut rows: Vec<StepRow<'a>> =
        time.steps.iter().map(|step| row(step, axis)).collect();
    let links = links(&rows);
    let labels: Vec<RowLabel> =
        (0..rows.len()).map(|index| label(&rows, index, &links, axis, voice)).collect();
    let (mut groups, mut group, mut day, mut y) = (Vec::new(), "", None, top);
    let is_page = (axis.width - WIDTH).abs() < 1.0;
    let high = if is_page { ROW } else { FLAT_ROW };
    for (row, label) in rows.iter_mut().zip(labels) {
        if many && row.step.recipe != group {
            group = &row.step.recipe;
            groups.push((readable(group), y + 2.0));
            y += high;
        }
        if let Some(own) = row.step.day.filter(|own| day != Some(*own)) {
            day = Some(own);
            groups.push((voice.fill("day", &[("day", &own.to_string())]), y + 2.0));
            y += high;
        }
        y += if matches!(label, RowLabel::Above(_)) { LABEL + 4.0 } else { 0.0 };
        row.top = y;
        row.label = label;
        y += high;
    }
    PlacedRows { rows, links, groups, bottom: y }
}

fn row<'a>(step: &'a StepTime, axis: &Axis) -> StepRow<'a> {
    let start = axis.x(step.start_min);
    let least = if step.hands_min > 0 { start + NARROWEST } else { start };
    let by_hand = step.start_min.saturating_add(step.hands_min);
    let hands = axis.x(by_hand).max(least);
    let end = axis.x(by_hand.saturating_add(step.wait_min[0]));
    let end = end.max(hands).max(start + NARROWEST);
    StepRow { step, top: 0.0, places: [start, hands, end], label: RowLabel::Above(start) }
}

/// Finds the place of a row's label: right of its bar, past what runs down through the
/// row; else left of it; else above.
fn label(
    rows: &[StepRow<'_>],
    index: usize,
    links: &[StepLink],
    axis: &Axis,
    voice: Voice<'_>,
) -> RowLabel {
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
    let left = left_of(start - GAP, width, rows, index, links, &crossings);
    let beside = |gone: f64| gone < 130.0;
    if right + width <= axis.width && beside(right - near) {
        RowLabel::Right(right)
    } else if left - width >= 0.0 && beside(start - GAP - left) {
        RowLabel::Left(left)
    } else {
        RowLabel::Above(start.min(axis.width - MARGIN / 2.0 - width).max(4.0))
    }
}

/// Where a label ends that stands left of its bar: before what comes in, which runs along the
/// bar's line, and past what runs down through the row.
fn left_of(
    nearest: f64,
    width: f64,
    rows: &[StepRow<'_>],
    index: usize,
    links: &[StepLink],
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
fn crossings(rows: &[StepRow<'_>], index: usize, links: &[StepLink]) -> Vec<f64> {
    let through = links.iter().filter(|link| link.first < index && index < link.then);
    let mut places: Vec<f64> = through.map(|link| rows[link.first].places[2]).collect();
    places.sort_by(f64::total_cmp);
    places
}

/// What waits for what among the rows.
fn links(rows: &[StepRow<'_>]) -> Vec<StepLink> {
    let named = |then: usize| rows[then].step.after.iter().map(move |name| (then, name));
    let waiting = (0..rows.len()).flat_map(named);
    waiting
        .filter_map(|(then, name)| {
            Some(StepLink { first: awaited(rows, then, name)?, then })
        })
        .collect()
}

/// The row above that a row waits for: the step of that name in its own recipe, else the
/// last one of that name in an included recipe.
fn awaited(rows: &[StepRow<'_>], then: usize, name: &str) -> Option<usize> {
    let own = |row: &StepRow<'_>| row.step.recipe == rows[then].step.recipe;
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
pub(in crate::draw) fn words_of(step: &StepTime, width: f64, voice: Voice<'_>) -> String {
    let lasts = step.hands_min.saturating_add(step.wait_min[0]);
    let lasts = show::minutes(lasts, voice.words);
    let room =
        width.min(WIDTH) - 2.0 * MARGIN - lettering::width(&lasts, LABEL, false) - 14.0;
    let title = lettering::shorten(&step.title, LABEL, false, room);
    voice.words.list(&[title, lasts])
}

/// Where a hold's tail ends: to scale, but no longer than `TAIL`, and on the plate.
pub(in crate::draw) fn tail(row: &StepRow<'_>, axis: &Axis) -> Option<f64> {
    let end = row.places[2];
    let long = (axis.x(row.step.hold_min) - MARGIN).min(TAIL);
    let tail = (end + long).min(axis.width - 4.0);
    (row.step.hold_min > 0 && tail - end >= 6.0).then_some(tail)
}
