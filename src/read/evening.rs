//! What is said of an evening while it runs, and the day file that keeps it: dated lines such
//! as `2027-03-02 18:55 pairs 1-3: second turn; pair 4 late 10`.
//!
//! A step's name may be its heading, its name, or the beginning of either; where two recipes
//! have it, the recipe stands before it: `crescents/cut`.

use jiff::civil::DateTime;

use crate::model::{Heard, Of, Said, What, Which, one_of};

use super::class::clock;

/// The line that takes back the one before it.
pub(crate) const TAKEN_BACK: &str = "taken back";

/// What does not read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Unreadable {
    /// The line that it stands in, from 1.
    pub(crate) line: usize,
    /// What it says.
    pub(crate) part: String,
}

/// Reads what is said: parts with a semicolon or a line's end between them.
///
/// # Errors
/// The first part that says nothing.
pub(crate) fn spoken(text: &str) -> Result<Vec<Said>, Unreadable> {
    let lines = text.split('\n').zip(1..);
    let parts = lines.flat_map(|(text, line)| text.split(';').map(move |it| (line, it)));
    let parts = parts.map(|(line, part)| (line, part.trim()));
    parts
        .filter(|(_, part)| !part.is_empty())
        .map(|(line, part)| {
            one(part).ok_or_else(|| Unreadable { line, part: part.to_owned() })
        })
        .collect()
}

/// Reads a day file, in the order of its times. Lines that begin with `#`, and empty ones,
/// are the reader's own.
///
/// # Errors
/// The first line that does not read.
pub(crate) fn day_file(text: &str) -> Result<Vec<Heard>, Unreadable> {
    let mut heard: Vec<Heard> = Vec::new();
    for (line, text) in (1..).zip(text.lines()) {
        let text = text.trim_start_matches('\u{feff}').trim();
        if text.is_empty() || text.starts_with('#') {
            continue;
        }
        let unreadable = || Unreadable { line, part: text.to_owned() };
        let (time, words) = dated(text).ok_or_else(unreadable)?;
        if words == TAKEN_BACK {
            heard.pop();
            continue;
        }
        let said = spoken(words).map_err(|wrong| Unreadable { line, ..wrong })?;
        heard.push(Heard { at: time, said });
    }
    heard.sort_by_key(|one| one.at);
    Ok(heard)
}

/// `2027-03-02 18:55 pair 3 late 10`: its time and the rest.
fn dated(line: &str) -> Option<(DateTime, &str)> {
    let mut parts = line.splitn(3, char::is_whitespace);
    let (date, time) = (parts.next()?, parts.next()?);
    let date: jiff::civil::Date = date.parse().ok()?;
    let (hour, minute) = clock(time)?;
    let at = date.at(hour, minute, 0, 0);
    Some((at, parts.next().unwrap_or_default().trim()))
}

/// `18:55` in minutes since midnight.
fn minutes(time: &str) -> Option<i32> {
    let (hour, minute) = clock(time)?;
    Some(i32::from(hour) * 60 + i32::from(minute))
}

/// A line of the day file.
pub(crate) fn day_line(at: DateTime, said: &str) -> String {
    let parts = said.split([';', '\n']).map(|part| {
        let words: Vec<&str> = part.split_whitespace().collect();
        words.join(" ")
    });
    let parts: Vec<String> = parts.filter(|part| !part.is_empty()).collect();
    format!("{} {}", at.strftime("%Y-%m-%d %H:%M"), parts.join("; "))
}

fn one(text: &str) -> Option<Said> {
    if text == TAKEN_BACK {
        return None;
    }
    for (end, what) in [(" out", What::Out), (" back", What::Back)] {
        if let Some(kit) = text.strip_suffix(end) {
            return kit_of(kit.trim()).map(|of| Said { of, what });
        }
    }
    if let Some(who) = text.strip_suffix(" gone") {
        return Some(Said { of: of(who)?, what: What::Gone });
    }
    if let Some((who, minutes)) = text.rsplit_once(" late ") {
        let minutes = minutes.trim_end_matches("min").trim().parse().ok()?;
        let late = (0..24 * 60).contains(&minutes);
        return late.then_some(Said { of: of(who)?, what: What::Late(minutes) });
    }
    if text == "nothing yet" {
        return Some(Said { of: Of::All, what: What::Nothing });
    }
    let (who, step) = text.split_once(':')?;
    let (of, step) = (of(who)?, step.trim());
    if step == "nothing yet" {
        return Some(Said { of, what: What::Nothing });
    }
    (!step.is_empty()).then(|| Said { of, what: done(step) })
}

/// `oven`, `2 mixers`, `oven 2`.
fn kit_of(text: &str) -> Option<Of> {
    let number = |word: &str| word.parse::<u32>().ok().filter(|number| *number > 0);
    let (which, name) = match (text.split_once(' '), text.rsplit_once(' ')) {
        (Some((count, name)), _) if number(count).is_some() => {
            (Which::Some(number(count)?), name)
        }
        (_, Some((name, at))) if number(at).is_some() => {
            (Which::Number(number(at)? - 1), name)
        }
        _ => (Which::Some(1), text),
    };
    let named = !name.contains(|sign: char| sign.is_ascii_digit() || sign == ':');
    named.then(|| Of::Kit(one_of(name), which))
}

/// `cut`, `cut at 18:40`, `cut from 18:30`, `cut begun`, `cut skipped`.
fn done(step: &str) -> What {
    let timed = |word: &str| {
        let (step, at) = step.rsplit_once(word)?;
        Some((step.trim().to_owned(), minutes(at.trim())?))
    };
    if let Some((step, at)) = timed(" from ") {
        return What::Begun(step, Some(at));
    }
    if let Some((step, at)) = timed(" at ") {
        return What::Done(step, Some(at));
    }
    let end = |word: &str| step.strip_suffix(word).map(|step| step.trim().to_owned());
    if let Some(step) = end(" begun") {
        return What::Begun(step, None);
    }
    match end(" skipped") {
        Some(step) => What::Skipped(step),
        None => What::Done(step.to_owned(), None),
    }
}

/// `all`, `instructor`, `pairs 1-3, 5`, `pair 4`.
fn of(text: &str) -> Option<Of> {
    let text = text.trim();
    match text {
        "all" | "everybody" => return Some(Of::All),
        "instructor" | "demonstration" => return Some(Of::Instructor),
        _ => {}
    }
    let (text, baker) = match text.split_once(", baker ") {
        Some((text, baker)) => (text, Some(baker.trim().parse::<u32>().ok()?)),
        None => (text, None),
    };
    let (word, numbers) = text.split_once(' ')?;
    let word = word.trim_end_matches('s');
    if !["pair", "baker", "three", "four", "five", "group"].contains(&word) {
        return None;
    }
    let mut groups = Vec::new();
    for part in numbers.split(',') {
        let (from, to) = part.split_once(['-', '–']).unwrap_or((part, part));
        let (from, to): (u32, u32) = (from.trim().parse().ok()?, to.trim().parse().ok()?);
        if from == 0 || from > to || to > 1000 {
            return None;
        }
        groups.extend(from - 1..to);
    }
    match (baker, groups.as_slice()) {
        (None, _) => Some(Of::Groups(groups)),
        (Some(baker), [group]) => Some(Of::Baker(*group, baker.checked_sub(1)?)),
        (Some(_), _) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_is_said() {
        let said = spoken(
            "pairs 1-3, 5: second-turn; pair 4 late 10; instructor: cut at 18:40; \
             all: nothing yet; oven out; 2 mixers out; pair 2 gone; pair 1: bake from 19:05",
        );
        let said = said.expect("readable");
        assert_eq!(said[0].of, Of::Groups(vec![0, 1, 2, 4]));
        assert_eq!(said[1].what, What::Late(10));
        assert_eq!(said[2].what, What::Done("cut".into(), Some(18 * 60 + 40)));
        assert_eq!(said[3], Said { of: Of::All, what: What::Nothing });
        assert_eq!(said[4].of, Of::Kit("oven".into(), Which::Some(1)));
        assert_eq!(said[5].of, Of::Kit("mixer".into(), Which::Some(2)));
        assert_eq!(said[6].what, What::Gone);
        assert_eq!(said[7].what, What::Begun("bake".into(), Some(19 * 60 + 5)));
    }

    #[test]
    fn what_says_nothing_is_named() {
        for text in [
            "pairs: x",
            "pairs 3-1: x",
            "pair 0: x",
            "pair 1:",
            "dogs 1: x",
            "pair 1 late -5",
        ] {
            let wrong = spoken(text).expect_err("says nothing");
            assert_eq!((wrong.line, wrong.part.as_str()), (1, text));
        }
    }

    #[test]
    fn reads_kit_and_what_is_left_out() {
        let said = spoken("oven 2 out; oven 2 back; pair 3: brush with egg skipped");
        let said = said.expect("readable");
        assert_eq!(said[0].of, Of::Kit("oven".into(), Which::Number(1)));
        assert_eq!((&said[0].what, &said[1].what), (&What::Out, &What::Back));
        assert_eq!(said[2].what, What::Skipped("brush with egg".into()));
    }

    #[test]
    fn reads_a_day_file_in_the_order_of_its_times() {
        let text = "# our evening\r\n2027-03-02 19:05 pair 1 late 5\r\n\r\n\
                    2027-03-02 18:40  all: mix; oven out\n2027-03-02 19:10 pair 2 gone\n\
                    2027-03-02 19:11 taken back\n2027-03-02 19:20\n";
        let heard = day_file(text).expect("readable");
        let times: Vec<String> =
            heard.iter().map(|one| one.at.strftime("%H:%M").to_string()).collect();
        assert_eq!(times, ["18:40", "19:05", "19:20"]);
        assert_eq!(heard.iter().map(|one| one.said.len()).sum::<usize>(), 3);
        let line = day_line(heard[0].at, "all:  mix\n; oven out");
        assert_eq!(line, "2027-03-02 18:40 all: mix; oven out");
        let torn = day_file("2027-03-02 18:40 all: mix\n2027-03-0");
        assert_eq!(torn, Err(Unreadable { line: 2, part: "2027-03-0".into() }));
    }
}
