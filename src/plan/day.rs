//! What is said of an evening while it runs, and the day file that keeps it: dated lines such
//! as `2027-03-02 18:55 pairs 1-3: second turn; pair 4 late 10`.
//!
//! A step's name may be its heading, its name, or the beginning of either; where two recipes
//! have it, the recipe stands before it: `crescents/cut`.

use jiff::civil::DateTime;

use super::class::{Unit, Who};

/// The line that takes back the one before it.
pub const TAKEN_BACK: &str = "taken back";

/// One line of the day file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Heard {
    /// When it was said: local time.
    pub at: DateTime,
    /// What was said; nothing where only the time was.
    pub said: Vec<Said>,
}

/// One thing that is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// Of whom.
    pub of: Of,
    /// What.
    pub what: What,
}

/// Of whom, or of what, something is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Of {
    /// Everybody who bakes.
    All,
    /// Groups by their numbers from 0.
    Groups(Vec<u32>),
    /// One baker of a group, both from 0.
    Baker(u32, u32),
    /// Who teaches.
    Instructor,
    /// A kind of kit.
    Kit(String, Which),
}

/// Which of a kind of kit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// So many of them.
    Some(u32),
    /// The one of this number, from 0.
    Number(u32),
}

/// What is said. Times are minutes since midnight; `None` for now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A step, as it is written, is done.
    Done(String, Option<i32>),
    /// A step is begun.
    Begun(String, Option<i32>),
    /// A step is left out.
    Skipped(String),
    /// Everything is so many minutes late.
    Late(i32),
    /// Nothing is done yet.
    Nothing,
    /// They went home.
    Gone,
    /// It is out of order.
    Out,
    /// It is in order again.
    Back,
}

/// Reads what is said; the part that does not read otherwise.
///
/// # Errors
/// The words that say nothing.
pub fn read_day(text: &str) -> Result<Vec<Said>, String> {
    let parts = text.split([';', '\n']).map(str::trim).filter(|part| !part.is_empty());
    parts.map(|part| one(part).ok_or_else(|| part.to_owned())).collect()
}

/// Reads a day file, in the order of its times. Lines that begin with `#`, and empty ones,
/// are the reader's own.
///
/// # Errors
/// The number of the first line that does not read, from 1, and what it says.
pub fn read_day_file(text: &str) -> Result<Vec<Heard>, (usize, String)> {
    let mut heard: Vec<Heard> = Vec::new();
    for (at, line) in text.lines().enumerate() {
        let line = line.trim_start_matches('\u{feff}').trim();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        let (time, said) = dated(line).ok_or_else(|| (at + 1, line.to_owned()))?;
        if said == TAKEN_BACK {
            heard.pop();
            continue;
        }
        let said = read_day(said).map_err(|part| (at + 1, part))?;
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
    let minutes = clock(time)?;
    let part = |part: i32| i8::try_from(part).unwrap_or(0);
    let at = date.at(part(minutes / 60), part(minutes % 60), 0, 0);
    Some((at, parts.next().unwrap_or_default().trim()))
}

/// `18:55` in minutes since midnight.
fn clock(text: &str) -> Option<i32> {
    let (hour, minute) = text.split_once(':')?;
    let digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    let plain = digits(hour) && digits(minute) && hour.len() <= 2 && minute.len() == 2;
    let (hour, minute): (i32, i32) = (hour.parse().ok()?, minute.parse().ok()?);
    (plain && hour < 24 && minute < 60).then_some(hour * 60 + minute)
}

/// A line of the day file.
pub fn day_line(at: DateTime, said: &str) -> String {
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
    named.then(|| Of::Kit(crate::model::one_of(name), which))
}

/// `cut`, `cut at 18:40`, `cut from 18:30`, `cut begun`, `cut skipped`.
fn done(step: &str) -> What {
    let timed = |word: &str| {
        let (step, at) = step.rsplit_once(word)?;
        Some((step.trim().to_owned(), clock(at.trim())?))
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

impl Said {
    /// The highest group that is named, from 0.
    pub fn highest(&self) -> Option<u32> {
        match &self.of {
            Of::Groups(groups) => groups.iter().copied().max(),
            Of::Baker(group, _) => Some(*group),
            Of::All | Of::Instructor | Of::Kit(..) => None,
        }
    }

    /// Whether it is said of the maker of this batch.
    pub(super) fn is_of(&self, unit: &Unit) -> bool {
        match (&self.of, unit.who) {
            (Of::All, Who::Group(_) | Who::Baker(..)) => true,
            (Of::Instructor, Who::Instructor) => true,
            (Of::Groups(groups), Who::Group(own) | Who::Baker(own, _)) => {
                groups.contains(&own)
            }
            (Of::Baker(group, one), Who::Baker(own, baker)) => {
                (*group, *one) == (own, baker)
            }
            (Of::All | Of::Groups(_) | Of::Baker(..), Who::Instructor | Who::Home)
            | (Of::Baker(..), Who::Group(_))
            | (Of::Instructor, Who::Group(_) | Who::Baker(..) | Who::Home)
            | (Of::Kit(..), _) => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_is_said() {
        let said = read_day(
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
            assert_eq!(read_day(text), Err(text.to_owned()), "{text}");
        }
    }

    #[test]
    fn reads_kit_and_what_is_left_out() {
        let said = read_day("oven 2 out; oven 2 back; pair 3: brush with egg skipped");
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
        let heard = read_day_file(text).expect("readable");
        let times: Vec<String> =
            heard.iter().map(|one| one.at.strftime("%H:%M").to_string()).collect();
        assert_eq!(times, ["18:40", "19:05", "19:20"]);
        assert_eq!(heard.iter().map(|one| one.said.len()).sum::<usize>(), 3);
        let line = day_line(heard[0].at, "all:  mix\n; oven out");
        assert_eq!(line, "2027-03-02 18:40 all: mix; oven out");
        let torn = read_day_file("2027-03-02 18:40 all: mix\n2027-03-0");
        assert_eq!(torn, Err((2, "2027-03-0".into())));
    }
}
