//! The timeline: every step on an axis of hours, what needs hands and what only waits
//! told apart by pattern, what runs side by side, how long a thing may stay.

use crate::draw::system::ink;
use crate::draw::system::lettering::{self, HEADING, LABEL, RISE};
use crate::draw::system::plate::{Anchor, MARGIN, Plate, Text};
use crate::draw::system::voice::Voice;
use crate::measure::show;
use crate::sheet::{StepTime, Time};

use super::rows::{Axis, PlacedRows, RowLabel, StepLink, StepRow, place, tail, words_of};

/// The minutes of a day.
const DAY: u64 = 1440;
/// The height of a bar.
const BAR: f64 = 18.0;

/// The drawing of a recipe's timeline on a plate of `width`; `recipe` is the recipe's own
/// file name. `ready` is the minute of the day at which it ends, where that is known: the
/// axis then shows the clock.
pub(in crate::draw) fn timeline(
    time: &Time,
    (recipe, width, ready): (&str, f64, Option<u64>),
    voice: Voice<'_>,
) -> Plate {
    let mut plate = Plate::new(width);
    let axis = Axis::new(time.elapsed_min, width);
    let top = key(&mut plate, voice) + 12.0;
    let PlacedRows { rows, links, groups, bottom } =
        place(time, recipe, &axis, top + 30.0, voice);
    hours(&mut plate, &axis, ([top, bottom], begins(time, ready)));
    draw_links(&mut plate, &rows, &links);
    for (name, y) in groups {
        let name = lettering::shorten(&name, LABEL, true, plate.width - 2.0 * MARGIN);
        let text = Text::new(name, [MARGIN, y + LABEL * RISE]).bold().ink(ink::LEAD);
        plate.text(text);
    }
    for row in &rows {
        bars(&mut plate, row, &axis);
    }
    rows.iter().for_each(|row| write(&mut plate, row, voice));
    plate.height = sums(&mut plate, time, bottom + 14.0, voice);
    plate
}

/// What the patterns mean, in as many lines as they need.
fn key(plate: &mut Plate, voice: Voice<'_>) -> f64 {
    let (mut x, mut top) = (MARGIN, 8.0);
    let signs =
        [("hands-on", Sign::Hand), ("waiting", Sign::Wait), ("may-hold", Sign::Hold)];
    for (word, sign) in signs {
        let word = voice.word(word);
        let wide = 44.0 + lettering::width(&word, LABEL, false);
        if x > MARGIN && x + wide > plate.width {
            (x, top) = (MARGIN, top + BAR + 8.0);
        }
        sign.draw(plate, [x, x + 36.0], top);
        let at = [x + 44.0, top + BAR / 2.0 + 0.36 * LABEL];
        plate.text(Text::new(word, at));
        x += wide + 22.0;
    }
    top + BAR + 6.0
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
            Self::Wait => plate.rectangle(from, to, ink::WAIT),
            Self::Hold => {
                let y = top + BAR / 2.0;
                plate.line(&[[left, y], [right, y]], ink::HOLD);
                plate.line(&[[right, y - 5.0], [right, y + 5.0]], ink::DIM);
            }
        }
    }
}

/// The minute of the day at which a plan begins that ends at `ready`.
fn begins(time: &Time, ready: Option<u64>) -> Option<u64> {
    let elapsed = time.elapsed_min % DAY;
    ready.map(|ready| (ready % DAY + DAY - elapsed) % DAY)
}

/// The marks of the axis: time since the start, or the clock.
fn hours(
    plate: &mut Plate,
    axis: &Axis,
    ([top, bottom], begins): ([f64; 2], Option<u64>),
) {
    // The first mark by the clock stands on a whole step of it.
    let from = begins.unwrap_or(0);
    let mut minutes = from.next_multiple_of(axis.step) - from;
    let mut free = 0.0;
    while minutes as f64 <= axis.minutes {
        let x = axis.x(minutes);
        plate.line(&[[x, top + 22.0], [x, bottom]], ink::GRID);
        let shown = begins.map_or(minutes, |begins| (begins + minutes) % DAY);
        let text = Text::new(clock(shown), [x, top + LABEL * RISE]).middle();
        let text = if text.frame().left < 4.0 {
            Text { anchor: Anchor::Start, at: [4.0, text.at[1]], ..text }
        } else {
            text
        };
        let frame = text.frame();
        if frame.left >= free && frame.right <= plate.width {
            free = frame.right + 6.0;
            plate.text(text);
        }
        minutes += axis.step;
    }
}

/// Time since the start: `0:45`.
pub(in crate::draw) fn clock(minutes: u64) -> String {
    format!("{}:{:02}", minutes / 60, minutes % 60)
}

/// What waits for what.
fn draw_links(plate: &mut Plate, rows: &[StepRow<'_>], links: &[StepLink]) {
    for link in links {
        let (before, row) = (&rows[link.first], &rows[link.then]);
        let (x, y) = (before.places[2], before.top + BAR);
        let to = [row.places[0], row.top + BAR / 2.0];
        plate.line(&[[x, y], [x, to[1]], to], ink::LINK);
    }
}

fn bars(plate: &mut Plate, row: &StepRow<'_>, axis: &Axis) {
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

/// Sets a row's label.
fn write(plate: &mut Plate, row: &StepRow<'_>, voice: Voice<'_>) {
    let y = row.top + BAR / 2.0 + 0.36 * LABEL;
    let words = words_of(row.step, plate.width, voice);
    let text = match row.label {
        RowLabel::Right(x) => Text::new(words, [x, y]),
        RowLabel::Left(x) => Text::new(words, [x, y]).end(),
        RowLabel::Above(x) => {
            // Where there is no free place, what runs down passes behind the label.
            let text = Text::new(words, [x, row.top - 6.0]);
            let frame = text.frame().grown(2.0);
            let corner = [frame.right, frame.bottom.min(row.top - 1.0)];
            plate.rectangle([frame.left, frame.top], corner, ink::TAG);
            text
        }
    };
    plate.text(text);
}

/// How long a step lasts, in words: hands and waiting.
pub(in crate::draw) fn lasts(step: &StepTime, voice: Voice<'_>) -> String {
    let hands = show::minutes(step.hands_min, voice.words);
    let wait = show::minutes(step.wait_min[0], voice.words);
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
    for line in lettering::wrap(
        &voice.fill("sums", &values),
        LABEL,
        true,
        plate.width - 2.0 * MARGIN,
    ) {
        plate.text(Text::new(line, [MARGIN, y]).bold());
        y += LABEL * 1.25;
    }
    y - LABEL * 0.5
}
