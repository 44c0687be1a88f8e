//! Times and temperatures in what is told.

use crate::measure::{Exact, exact};

use super::phrase::{self, Word};

/// A stretch of time in a sentence, in minutes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Time {
    /// At least so long.
    pub(super) least: Exact,
    /// At most; `least` where no range is said.
    pub(super) most: Exact,
}

impl Time {
    /// As a ticket has it: `25 min`, `60 min to 90 min`.
    pub(super) fn ticket(&self) -> String {
        if self.least == self.most {
            return minutes(&self.least);
        }
        format!("{} to {}", minutes(&self.least), minutes(&self.most))
    }
}

/// `25 min`, `2 h`, `2 h 30 min`; seconds below a minute.
fn minutes(time: &Exact) -> String {
    let seconds = crate::measure::ceil(&(time * exact(60, 1))).max(1);
    if !seconds.is_multiple_of(60) {
        return format!("{seconds} s");
    }
    let minutes = seconds / 60;
    match (minutes / 60, minutes % 60) {
        (hours, 0) if hours > 0 => format!("{hours} h"),
        (hours, rest) if hours > 1 => format!("{hours} h {rest} min"),
        _ => format!("{minutes} min"),
    }
}

/// Longer times than two weeks are none of baking.
const LONGEST: i64 = 14 * 1440;

/// Every time in a sentence.
pub(super) fn times(sentence: &str) -> Vec<Time> {
    let words = phrase::words(sentence);
    let (mut found, mut at) = (Vec::new(), 0);
    while at < words.len() {
        match time(&words[at..]) {
            Some((time, used)) => {
                found.push(time);
                at += used;
            }
            None => at += 1,
        }
    }
    found.retain(|time: &Time| {
        time.least > exact(0, 1)
            && time.most <= exact(LONGEST, 1)
            && time.least <= time.most
    });
    found
}

fn time(words: &[Word]) -> Option<(Time, usize)> {
    let (first, used) = phrase::number(words)?;
    let rest = &words[used..];
    if let Some((worth, unit)) = unit(rest) {
        let (more, extra) = and_more(&rest[unit..], &worth);
        let least = first * &worth + more;
        let used = used + unit + extra;
        return Some(upper(&words[used..], least.clone()).map_or(
            (Time { least: least.clone(), most: least.clone() }, used),
            |(most, extra)| (Time { least, most }, used + extra),
        ));
    }
    let joined = rest.first().is_some_and(|word| is_join(word.text));
    let (second, more) = joined.then(|| phrase::number(&rest[1..]))??;
    let (worth, unit) = unit(&rest[1 + more..])?;
    let time = Time { least: first * &worth, most: second * &worth };
    Some((time, used + 1 + more + unit))
}

/// The upper end after a lower one that has its own unit: `45 minutes to 1 hour`.
fn upper(words: &[Word], least: Exact) -> Option<(Exact, usize)> {
    words.first().filter(|word| is_join(word.text))?;
    let (most, used) = phrase::number(&words[1..])?;
    let (worth, unit) = unit(&words[1 + used..])?;
    let most = most * worth;
    (most > least).then_some((most, 1 + used + unit))
}

fn is_join(word: &str) -> bool {
    matches!(word, "to" | "or" | "–" | "-" | "—")
}

/// `and a half`, `and 30 minutes`, `30 minutes` after hours.
fn and_more(words: &[Word], worth: &Exact) -> (Exact, usize) {
    let none = (exact(0, 1), 0);
    let skip = usize::from(words.first().is_some_and(|word| word.text == "and"));
    let Some((value, used)) = words.get(skip..).and_then(phrase::number) else {
        return none;
    };
    if *worth != exact(60, 1) {
        return none;
    }
    match unit(&words[skip + used..]) {
        Some((minute, taken)) if minute == exact(1, 1) => (value, skip + used + taken),
        None if skip == 1 && value < exact(1, 1) => (value * worth, skip + used),
        _ => none,
    }
}

/// Minutes in the unit at the start, and how many words it takes.
fn unit(words: &[Word]) -> Option<(Exact, usize)> {
    let word = words.first()?.text.to_lowercase();
    Some(match word.as_str() {
        "s" | "sec" | "secs" | "second" | "seconds" => (exact(1, 60), 1),
        "m" | "min" | "mins" | "minute" | "minutes" => (exact(1, 1), 1),
        "h" | "hr" | "hrs" | "hour" | "hours" => (exact(60, 1), 1),
        "day" | "days" => (exact(1440, 1), 1),
        _ => return None,
    })
}

/// A temperature where it stands in a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Degrees {
    /// As our format has it: `190 °C`.
    pub(super) text: String,
    /// Whether it is a fan oven's alone.
    pub(super) fan: bool,
    /// What a fan oven is set to, where both are told.
    pub(super) with_fan: Option<String>,
    /// Where its words begin and end, in bytes; what only repeats it is taken along.
    pub(super) range: (usize, usize),
}

/// The temperatures in a sentence, one for each place: of `200 °C/400 °F` the first. What is
/// no sure temperature, `350 degrees`, comes second.
pub(super) fn temperatures(sentence: &str) -> (Vec<Degrees>, Vec<String>) {
    let words = phrase::words(sentence);
    let (mut found, mut unsure): (Vec<Degrees>, Vec<String>) = (Vec::new(), Vec::new());
    for at in 0..words.len() {
        let Some(scale) = scale(&words[at + 1..]) else { continue };
        let number = words[at].text;
        if !number.chars().all(|sign| sign.is_ascii_digit()) || number.len() > 3 {
            continue;
        }
        let ranged = at > 1
            && is_join(words[at - 1].text)
            && phrase::is_figure(words[at - 2].text);
        match scale {
            (Some(scale), used) if !ranged => {
                let range = (words[at].start, words[at + used].end);
                let fan = near_fan(&words, at, used);
                let text = format!("{number} °{scale}");
                found.push(Degrees { text, fan, with_fan: None, range });
            }
            (_, used) => {
                unsure.push(sentence[words[at].start..words[at + used].end].to_owned());
            }
        }
    }
    (merged(sentence, found), unsure)
}

/// The scale behind a number and how many words it takes; no letter where only degrees are said.
fn scale(words: &[Word]) -> Option<(Option<char>, usize)> {
    let first = words.first()?.text;
    let bare = first.trim_start_matches(['°', 'º', '\'']);
    let letter = |word: &str| match word.to_lowercase().trim_end_matches('.') {
        "c" | "celsius" | "centigrade" => Some('C'),
        "f" | "fahrenheit" | "fahr" => Some('F'),
        _ => None,
    };
    if let Some(scale) = letter(bare).filter(|_| {
        bare.len() < first.len() || bare == bare.to_uppercase() || bare.len() > 3
    }) {
        return Some((Some(scale), 1));
    }
    let degrees = bare.is_empty()
        || matches!(bare.to_lowercase().as_str(), "degrees" | "deg" | "degree");
    let second =
        words.get(1).and_then(|word| letter(word.text.trim_start_matches(['°', 'º'])));
    degrees.then_some(match second {
        Some(scale) => (Some(scale), 2),
        None => (None, 1),
    })
}

fn near_fan(words: &[Word], at: usize, used: usize) -> bool {
    let is_fan = |word: Option<&Word>| {
        word.is_some_and(|word| word.text.eq_ignore_ascii_case("fan"))
    };
    // `180C fan (200C)`: the word belongs to the temperature before it.
    let taken = at > 1 && scale(&words[at - 2..]).is_some();
    is_fan(words.get(at + used + 1)) || (at > 0 && !taken && is_fan(words.get(at - 1)))
}

/// Of temperatures that only repeat one another, the first that is no fan's stands for all; the
/// fan's is kept with it.
fn merged(sentence: &str, found: Vec<Degrees>) -> Vec<Degrees> {
    let mut kept: Vec<Degrees> = Vec::new();
    for next in found {
        let repeats = kept.last().is_some_and(|last| {
            let between = sentence.get(last.range.1..next.range.0).unwrap_or("x");
            is_repeat(between)
        });
        match kept.last_mut() {
            Some(last) if repeats => {
                let end = next.range.1 + fan_word(&sentence[next.range.1..]);
                last.range.1 = closing(sentence, last.range.0, end);
                if next.fan && !last.fan {
                    last.with_fan = Some(next.text);
                } else if last.fan && !next.fan {
                    last.with_fan = Some(std::mem::replace(&mut last.text, next.text));
                    last.fan = false;
                }
            }
            _ => kept.push(next),
        }
    }
    kept
}

/// How long a ` fan` right behind a temperature is.
fn fan_word(rest: &str) -> usize {
    let rest = rest.strip_prefix(" fan");
    rest.map_or(0, |rest| if rest.starts_with(char::is_alphabetic) { 0 } else { 4 })
}

/// Whether nothing but marks and `fan` stand between two temperatures.
fn is_repeat(between: &str) -> bool {
    let rest: String = between.to_lowercase().replace("fan", "").replace("or", "");
    between.len() < 20
        && rest.chars().all(|sign| " /(),;".contains(sign))
        && !rest.trim().is_empty()
}

/// The end with the bracket that closes one opened within.
fn closing(sentence: &str, start: usize, end: usize) -> usize {
    let inside = &sentence[start..end];
    let open = inside.matches('(').count() > inside.matches(')').count();
    if open && sentence[end..].starts_with(')') { end + 1 } else { end }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_as_they_are_told() {
        let cases = [
            ("Bake 25 minutes.", "25 min"),
            ("Bake for 20–25 min until brown", "20 min to 25 min"),
            ("Leave it an hour and a half.", "90 min"),
            ("for three-quarters of an hour", "45 min"),
            ("1½ to 2 hours", "90 min to 2 h"),
            ("45 minutes to 1 hour", "45 min to 1 h"),
            ("1 hour 30 minutes", "90 min"),
            ("2 hours and 30 minutes", "2 h 30 min"),
            ("from ¾ to 1 hour", "45 min to 1 h"),
            ("30 seconds", "30 s"),
        ];
        for (text, ticket) in cases {
            let found: Vec<String> = times(text).iter().map(Time::ticket).collect();
            assert_eq!(found, [ticket], "{text}");
        }
        assert!(times("cut into 12 pieces, 2 inches long").is_empty());
    }

    #[test]
    fn temperatures_as_they_are_told() {
        let cases = [
            ("Bake at 350°F for", "350 °F"),
            ("350 degrees F.", "350 °F"),
            ("180C oven", "180 °C"),
            ("heat it to 200 °C (400 °F) first", "200 °C"),
            ("400 'F. Oven", "400 °F"),
        ];
        for (text, degrees) in cases {
            let found = temperatures(text).0;
            assert_eq!(
                found.iter().map(|found| found.text.as_str()).collect::<Vec<_>>(),
                [degrees],
                "{text}"
            );
        }
        let text = "heat it to 200 °C (400 °F) first";
        let (start, end) = temperatures(text).0[0].range;
        assert_eq!(&text[start..end], "200 °C (400 °F)");
        assert_eq!(temperatures("Bake at 350 degrees.").1, ["350 degrees"]);
        for text in ["200C/180C fan/gas 6", "180C fan (200C)", "200°C (180°C fan)"] {
            let found = temperatures(text).0;
            assert_eq!(found.len(), 1, "{text}");
            assert_eq!(found[0].text, "200 °C");
            assert_eq!(found[0].with_fan.as_deref(), Some("180 °C"));
        }
    }
}
