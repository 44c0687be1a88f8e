//! What a class has beside its recipes: arrival, late comers, talks, breaks, tasting, washing
//! up, how fast hands and ovens are.

use crate::fault::{Fault, Place, Placed};
use crate::measure::{Duration, Exact, exact};
use crate::model::{Besides, Break, Changeover, HandsPace, KitKind, Late, Talk, When};
use crate::said;

use super::class::clock;
use super::fields::{Entries, Fields, entries, unreadable};
use super::kit::kit_kind;
use super::lexicon::Lexicon;
use super::quantity;
use super::yaml::Node;

/// Nothing of the kind lasts longer, in minutes.
const LONGEST: u64 = 240;
/// Hands are no faster and no slower than so many times the recipe's own time.
const PACES: [(i64, i64); 2] = [(1, 4), (4, 1)];
/// More help than anybody has.
const MOST_HELPERS: u32 = 20;

/// Reads what a class has beside its recipes.
pub(super) fn besides(fields: &mut Fields) -> Besides {
    let mut lasting = |key: &'static str, example: &'static str| {
        fields.parsed(key, example, lasting).map(|found| found.value)
    };
    Besides {
        arrival: lasting("arrival", "10 min"),
        tasting: lasting("tasting", "15 min"),
        washing: lasting("washing up", "15 min"),
        preheat: lasting("preheat", "30 min"),
        reheat: lasting("change of heat", "15 min"),
        late: late(fields),
        talks: talks(fields),
        breaks: breaks(fields),
        pace: pace(fields),
        helpers: fields.parsed("helpers", "1", helpers).map_or(0, |found| found.value),
        slack: fields.parsed("slack", "10 min", lasting_or_none),
    }
}

/// How long things take to be handed on: `5 min`, or kit by kit.
pub(super) fn changeover(fields: &mut Fields, words: &Lexicon) -> Changeover {
    let example = said!("example-changeover");
    let (usual, rest) = one_or_each(fields, "changeover");
    let time = |text: &Placed<String>, faults: &mut Vec<Fault>| {
        let time = lasting_or_none(&text.value);
        if time.is_none() {
            faults.push(unreadable("changeover", text, example.clone()));
        }
        time
    };
    let usual = usual.and_then(|text| time(&text, fields.faults()));
    let mut kit: Vec<(Placed<KitKind>, Duration)> = Vec::new();
    for (name, value) in rest {
        let Some(time) = time(&value, fields.faults()) else { continue };
        kit.push((name.map(|name| kit_kind(&name, words)), time));
    }
    Changeover { usual: usual.unwrap_or_else(Duration::zero), kit }
}

/// A name and its value.
type Named = (Placed<String>, Placed<String>);

/// A value for everything, or one each by name.
fn one_or_each(
    fields: &mut Fields,
    key: &'static str,
) -> (Option<Placed<String>>, Vec<Named>) {
    let Some(node) = fields.take(key) else { return (None, Vec::new()) };
    match node.value {
        Node::Text(text) => {
            (Some(Placed::new(text.trim().to_owned(), node.place)), Vec::new())
        }
        Node::Empty | Node::List(_) | Node::Map(_) => {
            let entries = entries(node, fields.faults());
            (None, texts(entries))
        }
    }
}

/// Entries whose values are texts; what is none reads as nothing.
fn texts(entries: Entries) -> Vec<Named> {
    let text = |value: Placed<Node>| match value.value {
        Node::Text(text) => Placed::new(text.trim().to_owned(), value.place),
        Node::Empty | Node::List(_) | Node::Map(_) => {
            Placed::new(String::new(), value.place)
        }
    };
    entries.into_iter().map(|(name, value)| (name, text(value))).collect()
}

/// More than nothing, and over the same day.
fn lasting(text: &str) -> Option<Duration> {
    lasting_or_none(text).filter(Duration::is_positive)
}

fn lasting_or_none(text: &str) -> Option<Duration> {
    quantity::duration(text).filter(|time| time.whole_minutes() <= LONGEST)
}

fn helpers(text: &str) -> Option<u32> {
    text.parse().ok().filter(|count| *count <= MOST_HELPERS)
}

/// `{ pair 3: 20 min, pairs 5-6: 10 min }`.
fn late(fields: &mut Fields) -> Vec<Late> {
    let example = said!("example-late");
    let Some(node) = fields.take("late") else { return Vec::new() };
    let mut found = Vec::new();
    for (name, value) in texts(entries(node, fields.faults())) {
        match (groups(&name.value), lasting(&value.value)) {
            (Some(groups), Some(by)) => {
                found.push(Late { groups, by, place: name.place });
            }
            (None, _) => fields.faults().push(unreadable("late", &name, example.clone())),
            (_, None) => {
                fields.faults().push(unreadable("late", &value, example.clone()));
            }
        }
    }
    found
}

/// `pair 3`, `pairs 5-6`, counted from 0.
fn groups(text: &str) -> Option<(u32, u32)> {
    let (word, numbers) = text.trim().split_once(' ')?;
    let word = word.trim_end_matches('s');
    let known = ["pair", "baker", "three", "four", "five", "group"].contains(&word);
    let (from, to) = numbers.split_once(['-', '–']).unwrap_or((numbers, numbers));
    let (from, to): (u32, u32) = (from.trim().parse().ok()?, to.trim().parse().ok()?);
    (known && from > 0 && from <= to && to <= 1000).then(|| (from - 1, to - 1))
}

/// `10 min`, `15 min before first-turn`.
fn talks(fields: &mut Fields) -> Vec<Talk> {
    let example = said!("example-talk");
    let mut found = Vec::new();
    for text in fields.placed_texts("talk") {
        match talk(&text) {
            Some(talk) => found.push(talk),
            None => fields.faults().push(unreadable("talk", &text, example.clone())),
        }
    }
    found
}

fn talk(text: &Placed<String>) -> Option<Talk> {
    let (time, before) = match text.value.split_once(" before ") {
        Some((time, step)) => {
            let step = step.trim();
            let at = text.value.len() - step.len();
            let place = text.place.part(at, text.value.len());
            (time, Some(Placed::new(step.to_owned(), place)))
        }
        None => (text.value.as_str(), None),
    };
    Some(Talk { lasts: lasting(time)?, before, place: text.place.clone() })
}

/// `15 min at 19:30`, `15 min between 19:15 and 20:00`, `15 min`.
fn breaks(fields: &mut Fields) -> Vec<Break> {
    let example = said!("example-break");
    let mut found = Vec::new();
    for text in fields.placed_texts("break") {
        match a_break(&text.value, &text.place) {
            Some(one) => found.push(one),
            None => fields.faults().push(unreadable("break", &text, example.clone())),
        }
    }
    found
}

fn a_break(text: &str, place: &Place) -> Option<Break> {
    let (time, when) = if let Some((time, at)) = text.split_once(" at ") {
        let (hour, minute) = clock(at.trim())?;
        (time, When::At(hour, minute))
    } else if let Some((time, span)) = text.split_once(" between ") {
        let (from, to) = span.split_once(" and ")?;
        (time, When::Between(clock(from.trim())?, clock(to.trim())?))
    } else {
        (text, When::Middle)
    };
    Some(Break { lasts: lasting(time)?, when, place: place.clone() })
}

/// `1.5`, or step by step: `{ first-turn: 1.5, roll-up: 2 }`.
fn pace(fields: &mut Fields) -> HandsPace {
    let (usual, rest) = one_or_each(fields, "pace");
    let mut times = |text: &Placed<String>| {
        let times = a_pace(&text.value);
        if times.is_none() {
            fields.faults().push(unreadable("pace", text, said!("example-pace")));
        }
        times
    };
    let usual = usual.and_then(|text| times(&text)).unwrap_or_else(|| exact(1, 1));
    let each = rest.into_iter().filter_map(|(name, value)| Some((name, times(&value)?)));
    HandsPace { usual, steps: each.collect() }
}

fn a_pace(text: &str) -> Option<Exact> {
    let times = crate::measure::parse(text, true)?;
    let [least, most] = PACES.map(|(over, under)| exact(over, under));
    (times >= least && times <= most).then_some(times)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_who_and_when() {
        assert_eq!(groups("pair 3"), Some((2, 2)));
        assert_eq!(groups("pairs 5-6"), Some((4, 5)));
        for text in ["pair", "pair 0", "dogs 1", "pairs 6-5", "pair x", "3"] {
            assert_eq!(groups(text), None, "{text}");
        }
        let place = Place::file("classes/a.yaml");
        let when = |text: &str| a_break(text, &place).map(|one| one.when);
        assert_eq!(when("15 min at 19:30"), Some(When::At(19, 30)));
        assert_eq!(
            when("15 min between 19:15 and 20:00"),
            Some(When::Between((19, 15), (20, 0)))
        );
        assert_eq!(when("15 min"), Some(When::Middle));
        for text in ["soon", "at 19:30", "15 min at 25:00", "15 min between 19:00"] {
            assert_eq!(when(text), None, "{text}");
        }
        assert_eq!(a_pace("1.5"), Some(exact(3, 2)));
        assert_eq!([a_pace("0"), a_pace("9"), a_pace("slow")], [None, None, None]);
    }
}
