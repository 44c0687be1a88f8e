//! Sizes, temperatures and times as an instructor writes them.

use crate::measure::{
    Duration, Exact, Length, Size, Temperature, TemperatureStep, parse,
};
use crate::model::{Hold, Location, Pace, Span, Thaw, Tin, Wait};

use super::kit::location;
use super::lexicon::Lexicon;

/// A number at the start of `text`, and what follows it.
pub(super) fn number(text: &str, comma: bool) -> Option<(Exact, &str)> {
    let text = text.trim_start();
    if let Some(found) = thousands(text, comma) {
        return Some(found);
    }
    let signs = |c: char| {
        c.is_ascii_digit() || " .,/⁄½⅓⅔¼¾⅛⅜⅝⅞０１２３４５６７８９．／".contains(c)
    };
    let end = text.find(|c| !signs(c)).unwrap_or(text.len());
    let mut prefix = &text[..end];
    while !prefix.is_empty() {
        let trimmed = prefix.trim_end();
        if let Some(value) = parse(&narrow(trimmed), comma) {
            let rest = &text[trimmed.len()..];
            // A number broken off in its middle is none.
            return (!rest.starts_with(|c: char| c.is_ascii_digit()))
                .then_some((value, rest));
        }
        let last = trimmed.chars().last()?;
        prefix = &trimmed[..trimmed.len() - last.len_utf8()];
    }
    None
}

/// Figures of the width of a Japanese letter as everyone else writes them: `１／２`.
fn narrow(text: &str) -> String {
    let one = |sign: char| match sign {
        '０'..='９' | '．' | '／' => {
            char::from_u32(u32::from(sign) - 0xfee0).unwrap_or(sign)
        }
        _ => sign,
    };
    text.chars().map(one).collect()
}

/// A number in groups of three digits, as its language parts them: `1,000`, `1.000`, `1 000`.
fn thousands(text: &str, comma: bool) -> Option<(Exact, &str)> {
    let signs: &[char] = if comma { &['.', ' ', '\u{a0}', '\u{202f}'] } else { &[','] };
    signs.iter().find_map(|sign| in_groups(text, *sign))
}

/// The same, parted by one sign.
fn in_groups(text: &str, sign: char) -> Option<(Exact, &str)> {
    let end = text.find(|c: char| !c.is_ascii_digit() && c != sign).unwrap_or(text.len());
    // A space behind the figures parts no groups.
    let end = text[..end].trim_end().len();
    let mut groups = text[..end].split(sign);
    let first = groups.next().is_some_and(|group| (1..=3).contains(&group.len()));
    let rest = &text[end..];
    let more = rest.starts_with(['.', ','])
        && rest[1..].starts_with(|c: char| c.is_ascii_digit());
    let plain =
        first && text[..end].contains(sign) && groups.all(|group| group.len() == 3);
    if !plain || more || text.starts_with('0') {
        return None;
    }
    Some((parse(&text[..end].replace(sign, ""), false)?, rest))
}

/// A temperature: `190 °C`, `375°F`.
pub(crate) fn temperature(text: &str) -> Option<Temperature> {
    let (below, text) = match text.trim().strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let (value, unit) = number(text, false)?;
    let value = if below { -value } else { value };
    match unit.trim().trim_start_matches('°').trim() {
        "C" if unit.contains('°') => Some(Temperature::celsius(value)),
        "F" if unit.contains('°') => Some(Temperature::fahrenheit(&value)),
        _ => None,
    }
}

/// A temperature difference: `12 °C`.
pub(super) fn temperature_step(text: &str) -> Option<TemperatureStep> {
    let (value, unit) = number(text, false)?;
    match unit.trim().trim_start_matches('°').trim() {
        "C" => Some(TemperatureStep::celsius(value)),
        "F" => Some(TemperatureStep::fahrenheit(&value)),
        _ => None,
    }
}

/// One length: `4 mm`, `9 cm`, `10 in`.
pub(crate) fn length(text: &str) -> Option<Length> {
    let (value, unit) = number(text, false)?;
    in_unit(&value, unit)
}

fn in_unit(value: &Exact, unit: &str) -> Option<Length> {
    match unit.trim().trim_end_matches('.') {
        "cm" => Some(Length::centimetres(value.clone())),
        "mm" => Some(Length::centimetres(value / Exact::from_integer(10.into()))),
        "in" | "inch" | "inches" | "″" | "\"" => Some(Length::inches(value)),
        _ => None,
    }
}

/// Sides of a rectangle or box, in one unit said once at the end: `20 x 12 in`.
fn sides(text: &str) -> Option<Vec<Length>> {
    let unit_at = text.rfind(|c: char| c.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞".contains(c))?;
    let unit_at = unit_at + text[unit_at..].chars().next()?.len_utf8();
    let (numbers, unit) = text.split_at(unit_at);
    let numbers = numbers.replace(" by ", "×").replace(['x', 'X'], "×");
    let side = |part: &str| {
        let part = part.trim().trim_end_matches("cm").trim_end_matches("in");
        let (value, rest) = number(part, false)?;
        rest.trim().is_empty().then(|| in_unit(&value, unit))?
    };
    numbers.split('×').map(side).collect()
}

/// A rectangle: `60 x 25 cm`.
pub(crate) fn size(text: &str) -> Option<Size> {
    let mut sides = sides(text)?.into_iter();
    match (sides.next(), sides.next(), sides.next()) {
        (Some(length), Some(width), None)
            if length.is_positive() && width.is_positive() =>
        {
            Some(Size::new(length, width))
        }
        _ => None,
    }
}

/// The narrowest tin that anyone bakes in, in centimetres (common practice, no source).
const SMALLEST_TIN: i64 = 6;

/// A tin: `23 x 13 x 7 cm`, `24 cm round`, `20 x 5 cm round`, `24 x 9 cm ring, hole 8 cm`.
pub(crate) fn tin(text: &str) -> Option<Tin> {
    if let Some((tin, hole)) = text.split_once("ring") {
        return ring(tin, hole);
    }
    let (text, round) = match text.trim().strip_suffix("round") {
        Some(rest) => (rest.trim(), true),
        None => {
            let text = text.trim().trim_end_matches("square").trim_end_matches("loaf");
            (text.trim(), false)
        }
    };
    let mut sides = sides(text)?.into_iter().filter(Length::is_positive);
    let (first, second, third) = (sides.next()?, sides.next(), sides.next());
    // `2 x 9 in round` are two tins, not one of two inches.
    if first < Length::centimetres(Exact::from_integer(SMALLEST_TIN.into())) {
        return None;
    }
    match (round, second, third) {
        (true, depth, None) => Some(Tin::Round(first, depth)),
        (false, None, None) => Some(Tin::Square(first.clone(), first, None)),
        (false, Some(second), depth) => Some(Tin::Square(first, second, depth)),
        (true, _, Some(_)) | (false, None, Some(_)) => None,
    }
}

/// A ring tin, whose hole is narrower than itself.
fn ring(tin: &str, hole: &str) -> Option<Tin> {
    let hole = length(hole.trim().strip_prefix(',')?.trim().strip_prefix("hole")?)?;
    let mut sides = sides(tin.trim())?.into_iter().filter(Length::is_positive);
    let (across, depth) = (sides.next()?, sides.next());
    (sides.next().is_none() && hole < across).then_some(Tin::Ring(across, hole, depth))
}

/// One stretch of time: `25 s`, `10 min`, `2 h`, `1 h 30 min`, `2 days`.
pub(crate) fn duration(text: &str) -> Option<Duration> {
    let mut rest = text.trim();
    let mut sum = Duration::zero();
    if rest.is_empty() {
        return None;
    }
    while !rest.is_empty() {
        let (value, after) = number(rest, false)?;
        let after = after.trim_start();
        let end = after.find(|c: char| !c.is_alphabetic()).unwrap_or(after.len());
        sum = sum + in_time_unit(&value, &after[..end])?;
        rest = after[end..].trim_start();
    }
    Some(sum)
}

fn in_time_unit(value: &Exact, unit: &str) -> Option<Duration> {
    let whole = |n: i64| Exact::from_integer(n.into());
    Some(Duration::minutes(match unit {
        "s" | "sec" | "second" | "seconds" => value / whole(60),
        "min" | "mins" | "minute" | "minutes" => value.clone(),
        "h" | "hour" | "hours" => value * whole(60),
        "d" | "day" | "days" => value * whole(1440),
        "week" | "weeks" => value * whole(7 * 1440),
        _ => return None,
    }))
}

/// A stretch or a range of it: `30–60 min`, `30 min to 1 h`.
fn range(text: &str) -> Option<(Duration, Duration)> {
    let text = text.trim();
    let Some((low, high)) =
        text.split_once(" to ").or_else(|| text.split_once(['–', '-']))
    else {
        return duration(text).map(|time| (time.clone(), time));
    };
    let high_time = duration(high)?;
    let low_time = duration(low).or_else(|| {
        let unit = high.trim_start_matches(|c: char| !c.is_alphabetic());
        duration(&format!("{} {unit}", low.trim()))
    })?;
    (low_time <= high_time).then_some((low_time, high_time))
}

/// Attended time: `10 min`, `30–60 min`, `10 min + 20 s per piece`, `5 min per tray`.
pub(crate) fn span(text: &str) -> Option<Span> {
    let mut span = Span { least: Duration::zero(), most: Duration::zero(), pace: None };
    for part in text.split('+') {
        let part = part.trim();
        if let Some(each) = part.strip_suffix("per piece") {
            span.pace = Some(Pace::Piece(duration(each)?));
        } else if let Some(each) = part.strip_suffix("per tray") {
            span.pace = Some(Pace::Tray(duration(each)?));
        } else {
            (span.least, span.most) = range(part)?;
        }
    }
    Some(span)
}

/// Unattended time: `60 min (45 min to 2 h)`; a range alone is planned at its lower end.
pub(crate) fn wait(text: &str) -> Option<Wait> {
    let Some((usual, allowed)) = text.split_once('(') else {
        let (least, most) = range(text)?;
        return Some(Wait { usual: least.clone(), least, most });
    };
    let usual = duration(usual)?;
    let (least, most) = range(allowed.trim().strip_suffix(')')?)?;
    (least <= usual && usual <= most).then_some(Wait { usual, least, most })
}

/// A hold: `up to 16 h`, `up to 8 h on the rack`, `up to 2 days in the fridge`, `up to 4 weeks in
/// the freezer, thaw 9 h in the fridge`.
pub(super) fn hold(text: &str, words: &Lexicon) -> Option<Hold> {
    let text = text.trim().strip_prefix("up to")?;
    let (stays, thaw) = match text.split_once(", thaw ") {
        Some((stays, thawed)) => (stays, Some(thaw(thawed, words)?)),
        None => (text, None),
    };
    let (time, at_place) = placed(stays, words);
    Some(Hold { up_to: duration(time)?, at_place, thaw })
}

/// `9 h in the fridge`, `8 h to 12 h in the fridge`.
fn thaw(text: &str, words: &Lexicon) -> Option<Thaw> {
    let (time, place) = placed(text, words);
    Some(Thaw { time: wait(time)?, place: place? })
}

/// What is said, and where: `12 h in the fridge`.
pub(super) fn placed<'a>(text: &'a str, words: &Lexicon) -> (&'a str, Option<Location>) {
    let preposition = [" on the ", " in the ", " at the ", " in a ", " in "];
    let found = preposition.iter().find_map(|word| text.split_once(word));
    found.map_or((text, None), |(said, place)| (said, Some(location(place, words))))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::exact;

    fn minutes(over: i64, under: i64) -> Duration {
        Duration::minutes(exact(over, under))
    }

    #[test]
    fn times() {
        assert_eq!(duration("25 s"), Some(minutes(25, 60)));
        assert_eq!(duration("1 h 30 min"), Some(minutes(90, 1)));
        assert_eq!(duration("2 days"), Some(minutes(2880, 1)));
        assert_eq!(duration("10"), None);
        assert_eq!(range("30–60 min"), Some((minutes(30, 1), minutes(60, 1))));
        assert_eq!(range("30 min to 1 h"), Some((minutes(30, 1), minutes(60, 1))));
        assert_eq!(range("60-30 min"), None);
    }

    #[test]
    fn waits_holds_and_spans() {
        let wait = wait("60 min (45 min to 2 h)").expect("a wait");
        assert_eq!(
            (wait.usual, wait.least, wait.most),
            (minutes(60, 1), minutes(45, 1), minutes(120, 1))
        );
        assert_eq!(super::wait("60 min (2 h to 3 h)"), None);
        let hold = hold("up to 8 h on the rack", Lexicon::english()).expect("a hold");
        assert_eq!(
            (hold.up_to, hold.at_place.as_ref().map(|place| place.word())),
            (minutes(480, 1), Some("rack"))
        );
        let hold = |text: &str| super::hold(text, Lexicon::english());
        let frozen = hold("up to 4 weeks in the freezer, thaw 8 h to 12 h in the fridge");
        let frozen = frozen.expect("a hold");
        let thaw = frozen.thaw.expect("it thaws");
        assert_eq!(
            (frozen.up_to, thaw.time.usual),
            (minutes(40_320, 1), minutes(480, 1))
        );
        assert_eq!((thaw.time.most, thaw.place.word()), (minutes(720, 1), "fridge"));
        assert_eq!(hold("up to 4 weeks in the freezer, thaw 9 h"), None);
        let span = span("10 min + 20 s per piece").expect("a span");
        assert_eq!(span.pace, Some(Pace::Piece(minutes(1, 3))));
        assert_eq!(span.least, minutes(10, 1));
    }

    #[test]
    fn sizes_and_tins() {
        let cm = |n| Length::centimetres(exact(n, 1));
        assert_eq!(size("60 x 25 cm"), Some(Size::new(cm(60), cm(25))));
        assert_eq!(size("60 by 25 cm"), Some(Size::new(cm(60), cm(25))));
        let inches = size("20 x 12 in").expect("a size");
        assert_eq!(inches.length, Length::inches(&exact(20, 1)));
        assert_eq!(size("60 cm"), None);
        assert_eq!(size("0 x 5 cm"), None);
        assert_eq!(tin("24 cm round"), Some(Tin::Round(cm(24), None)));
        let ring = Tin::Ring(cm(24), cm(8), Some(cm(9)));
        assert_eq!(tin("24 x 9 cm ring, hole 8 cm"), Some(ring));
        assert_eq!(tin("24 cm ring, hole 25 cm"), None);
        assert_eq!(tin("24 cm ring"), None);
        assert_eq!(tin("2 x 9 in round"), None, "two tins");
        assert_eq!(tin("23 x 13 x 7 cm loaf"), tin("23 x 13 x 7 cm"));
        assert_eq!(tin("23 x 13 x 7 cm"), Some(Tin::Square(cm(23), cm(13), Some(cm(7)))));
    }

    #[test]
    fn temperatures_need_their_sign() {
        assert_eq!(temperature("190 °C"), Some(Temperature::celsius(exact(190, 1))));
        assert_eq!(temperature("32°F"), Some(Temperature::celsius(exact(0, 1))));
        assert_eq!(temperature("-18 °C"), Some(Temperature::celsius(exact(-18, 1))));
        assert_eq!(temperature("190 C"), None);
    }
}
