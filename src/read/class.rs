//! `classes/*.yaml` to a class.

use jiff::ToSpan;
use jiff::civil::DateTime;

use crate::fault::{Fault, FileName, Place, Placed};
use crate::measure::{Duration, Exact, Mass, exact};
use crate::model::{Class, Each, KitKind, Level, Making, Much, Session};
use crate::said;

use super::besides;
use super::course::mass;
use super::fields::{Fields, entries, unreadable};
use super::kit::kit_kind;
use super::lexicon::Lexicon;
use super::quantity;
use super::yaml::{self, Node};

/// What bakers who work together are called, by their number.
const TOGETHER: [(&str, u32); 5] =
    [("alone", 1), ("pairs", 2), ("threes", 3), ("fours", 4), ("fives", 5)];
/// Minutes from one possible start to the next where a class does not say.
const GRID: u32 = 5;
/// Larger classes are refused.
const MOST_BAKERS: u32 = 200;

/// What a class may say.
const KEYS: [&str; 24] = [
    "title",
    "sessions",
    "bakers",
    "work in",
    "makes",
    "kit",
    "demonstrate",
    "starts every",
    "changeover",
    "spare",
    "on the shelf",
    "bring",
    "levels",
    "arrival",
    "late",
    "talk",
    "break",
    "tasting",
    "washing up",
    "preheat",
    "change of heat",
    "pace",
    "helpers",
    "slack",
];

/// Reads a class from the text of `file`.
pub(super) fn read(
    file: &FileName,
    text: &str,
    name: &str,
    words: &Lexicon,
    faults: &mut Vec<Fault>,
) -> Option<Class> {
    let node = yaml::parse(file, text, 0).map_err(|fault| faults.push(fault)).ok()?;
    let so_far = faults.len();
    let mut fields = Fields::new(node, &KEYS, faults);
    let whole = Place::new(file, 0, text.len());
    let title = fields.needed("title", "Layers by Hand, evening 3");
    let together =
        fields.parsed("work in", "pairs", together).map_or(2, |found| found.value);
    let mut class = Class {
        name: name.to_owned(),
        title,
        sessions: sessions(&mut fields),
        bakers: bakers(&mut fields, &whole),
        together,
        makes: makes(&mut fields, together),
        kit: kit(&mut fields, words),
        demonstrate: fields.list("demonstrate").unwrap_or_default(),
        grid: fields
            .parsed("starts every", "5 min", grid)
            .unwrap_or_else(|| Placed::new(GRID, whole.part(0, 0))),
        changeover: besides::changeover(&mut fields, words),
        besides: besides::besides(&mut fields),
        spare: fields
            .parsed("spare", "5 %", percent)
            .map_or_else(|| exact(0, 1), |found| found.value),
        bring: fields.list_of_texts("bring"),
        levels: levels(&mut fields),
        shelf: shelf(&mut fields),
        unread: false,
        place: whole,
    };
    fields.finish();
    class.unread = faults.len() > so_far;
    Some(class)
}

fn together(text: &str) -> Option<u32> {
    TOGETHER.iter().find(|(word, _)| *word == text).map(|(_, number)| *number)
}

/// `levels: beginners`, or several.
fn levels(fields: &mut Fields) -> Vec<Level> {
    let mut found = Vec::new();
    for text in fields.list("levels").unwrap_or_default() {
        let level = Level::ALL.into_iter().find(|level| level.name() == text.value);
        match level {
            Some(level) => found.push(level),
            None => fields.faults().push(unreadable("levels", &text, "beginners")),
        }
    }
    found
}

/// `5 min`: minutes that divide an hour.
fn grid(text: &str) -> Option<u32> {
    let minutes = quantity::duration(text)?;
    (1..=30).find(|grid| {
        60 % grid == 0 && Duration::minutes(exact((*grid).into(), 1)) == minutes
    })
}

fn percent(text: &str) -> Option<Exact> {
    let (value, unit) = quantity::number(text, false)?;
    let share = value / exact(100, 1);
    (unit.trim() == "%" && share >= exact(0, 1) && share <= exact(1, 1)).then_some(share)
}

fn bakers(fields: &mut Fields, whole: &Place) -> Placed<u32> {
    let few =
        |text: &str| text.parse().ok().filter(|count| (1..=MOST_BAKERS).contains(count));
    let text = fields.needed("bakers", "14");
    if text.value.is_empty() {
        return Placed::new(1, whole.part(0, 0));
    }
    let count = few(&text.value).unwrap_or_else(|| {
        fields.faults().push(unreadable("bakers", &text, "14"));
        1
    });
    Placed::new(count, text.place)
}

fn sessions(fields: &mut Fields) -> Vec<Placed<Session>> {
    let example = "2027-03-02 18:00 to 21:00";
    let Some(written) = fields.list("sessions") else {
        fields.needed("sessions", example);
        return Vec::new();
    };
    let mut found: Vec<Placed<Session>> = Vec::new();
    for text in written {
        match session(&text.value) {
            Some(session) => found.push(Placed::new(session, text.place)),
            None => fields.faults().push(unreadable("sessions", &text, example)),
        }
    }
    found.sort_by_key(|session| session.value.from);
    found
}

/// `2027-03-02 18:00 to 21:00`; a session that closes after midnight closes the day after.
fn session(text: &str) -> Option<Session> {
    let (from, to) = text.split_once(" to ").or_else(|| text.split_once('–'))?;
    let from = moment(from.trim())?;
    let (hour, minute) = clock(to.trim())?;
    let to = from.date().at(hour, minute, 0, 0);
    let to = if to > from { to } else { to.checked_add(1.day()).ok()? };
    Some(Session { from, to })
}

/// `2027-03-02 18:00`.
pub(crate) fn moment(text: &str) -> Option<DateTime> {
    let (date, time) = text.split_once([' ', 'T'])?;
    let date: jiff::civil::Date = date.parse().ok()?;
    let (hour, minute) = clock(time.trim())?;
    Some(date.at(hour, minute, 0, 0))
}

/// `18:00`, `7:30`.
pub(crate) fn clock(text: &str) -> Option<(i8, i8)> {
    let (hour, minute) = text.split_once(':')?;
    let digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    let sound = digits(hour) && digits(minute) && minute.len() == 2 && hour.len() <= 2;
    let (hour, minute): (i8, i8) = (hour.parse().ok()?, minute.parse().ok()?);
    (sound && hour < 24 && minute < 60).then_some((hour, minute))
}

fn makes(fields: &mut Fields, together: u32) -> Vec<Making> {
    let Some(node) = fields.take("makes") else {
        fields.needed("makes", said!("example-makes"));
        return Vec::new();
    };
    let Node::List(items) = node.value else {
        let fault = Fault::error("bad-value", &node.place, said!("makes-no-list"));
        fields.faults().push(fault.help(said!("makes-no-list-help")));
        return Vec::new();
    };
    items.into_iter().map(|item| making(item, together, fields.faults())).collect()
}

fn making(item: Placed<Node>, together: u32, faults: &mut Vec<Fault>) -> Making {
    let place = item.place.clone();
    let keys = ["recipe", "with", "each", "pieces", "batches"];
    let mut fields = Fields::new(item, &keys, faults);
    let recipe = fields.needed("recipe", "crescents");
    let with = fields.list("with").unwrap_or_default();
    let each = fields.parsed("each", said!("example-each"), |text| each(text, together));
    let pieces = fields.parsed("pieces", "12", whole);
    let batches = fields.parsed("batches", "1", batches);
    if let (Some(_), Some(both)) = (&pieces, &batches) {
        let message = said!("makes-both");
        let fault = Fault::error("bad-value", &both.place, message);
        fields.faults().push(fault.help(said!("makes-both-help")));
    }
    let much = pieces
        .map(|pieces| Much::Pieces(pieces.value))
        .or(batches.map(|batches| Much::Batches(batches.value)))
        .unwrap_or_else(|| Much::Batches(exact(1, 1)));
    fields.finish();
    Making {
        recipe,
        with,
        each: each.map_or(Each::Group, |each| each.value),
        much,
        place,
    }
}

/// Who makes it. Those who work together are called by their own number: `each: three` says
/// nothing where they work in pairs.
fn each(text: &str, together: u32) -> Option<Each> {
    let of = ["baker", "pair", "three", "four", "five"];
    Some(match text {
        "baker" => Each::Baker,
        "demonstration" => Each::Demonstration,
        "group" => Each::Group,
        word if of.get(together as usize - 1) == Some(&word) => Each::Group,
        _ => return None,
    })
}

fn whole(text: &str) -> Option<u64> {
    text.parse().ok().filter(|count| (1..=10_000).contains(count))
}

fn batches(text: &str) -> Option<Exact> {
    let batches = crate::measure::parse(text, true)?;
    (batches > exact(0, 1) && batches <= exact(1000, 1)).then_some(batches)
}

fn kit(fields: &mut Fields, words: &Lexicon) -> Vec<(Placed<KitKind>, u32)> {
    let Some(node) = fields.take("kit") else { return Vec::new() };
    let entries = entries(node, fields.faults());
    let mut kit: Vec<(Placed<KitKind>, u32)> = Vec::new();
    for (name, value) in entries {
        let count = value.value.text().and_then(|text| text.trim().parse().ok());
        let count = count.filter(|count| *count <= 1000);
        match count {
            Some(count) => {
                let one = name.map(|name| kit_kind(&name, words));
                if kit.iter().any(|(known, _)| known.value == one.value) {
                    let message = said!("kit-twice", name = one.value.name());
                    let fault = Fault::error("class-kit", &one.place, message);
                    fields.faults().push(fault.help(said!("kit-twice-help")));
                } else {
                    kit.push((one, count));
                }
            }
            None => {
                let message = said!("kit-no-number", name = name.value);
                let fault = Fault::error("bad-value", &value.place, message);
                fields
                    .faults()
                    .push(fault.help(said!("kit-no-number-help", name = name.value)));
            }
        }
    }
    kit
}

fn shelf(fields: &mut Fields) -> Vec<(Placed<String>, Mass)> {
    let Some(node) = fields.take("on the shelf") else { return Vec::new() };
    let entries = entries(node, fields.faults());
    let mut shelf = Vec::new();
    for (name, value) in entries {
        let text = value.value.text().unwrap_or_default().to_owned();
        let text = Placed::new(text, value.place);
        match mass(&text.value) {
            Some(mass) => shelf.push((name, mass)),
            None => fields.faults().push(unreadable(&name.value, &text, "1.5 kg")),
        }
    }
    shelf
}

#[cfg(test)]
mod tests {
    use super::*;

    const CLASS: &str = "title: Evening\nsessions:\n  - 2027-03-02 18:00 to 21:00\n  \
        - 2027-03-03 22:00 to 00:30\nbakers: 14\nwork in: pairs\nmakes:\n  \
        - recipe: crescents\n    each: pair\n    pieces: 12\nkit: { mixer: 4, tray per oven: 4 }\n\
        demonstrate: [first-turn]\nchangeover: 5 min\nspare: 5 %\non the shelf:\n  butter: 500 g\n";

    fn class(text: &str) -> (Option<Class>, Vec<Fault>) {
        let mut faults = Vec::new();
        (
            read(&"classes/a.yaml".into(), text, "a", Lexicon::english(), &mut faults),
            faults,
        )
    }

    #[test]
    fn reads_a_class() {
        let (class, faults) = class(CLASS);
        let class = class.expect("a class");
        assert_eq!(faults, []);
        assert_eq!(class.groups(), 7);
        assert_eq!(class.count(&KitKind::TrayPerOven), Some(4));
        let night = class.sessions[1].value;
        assert_eq!(night.to.to_string(), "2027-03-04T00:30:00");
        assert_eq!(class.spare, exact(1, 20));
        assert_eq!(class.makes[0].much, Much::Pieces(12));
    }

    #[test]
    fn odd_groups_are_smaller() {
        let (class, _) = class(&CLASS.replace("bakers: 14", "bakers: 15"));
        let class = class.expect("a class");
        assert_eq!((class.groups(), class.members(6), class.members(7)), (8, 2, 1));
    }

    #[test]
    fn faults_are_named_where_they_stand() {
        for (from, to, name) in [
            ("18:00 to 21:00", "18:00", "bad-value"),
            ("bakers: 14", "bakers: many", "bad-value"),
            ("each: pair", "each: dog", "bad-value"),
            ("mixer: 4", "mixer: some", "bad-value"),
            ("work in: pairs", "work at: pairs", "unknown-key"),
        ] {
            let (_, faults) = class(&CLASS.replace(from, to));
            assert!(faults.iter().any(|fault| fault.name == name), "{to}: {faults:?}");
        }
    }
}
