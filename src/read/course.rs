//! `course.yaml` to a course.

use crate::fault::{Fault, FileName, Place, Placed, clip};
use crate::measure::{CupSet, Length, Mass, Unit, exact};
use crate::model::{AlsoIn, Course, EggClasses, Kit, Lesson, Look, News, Room};
use crate::said;

use super::class::clock;
use super::fields::{Fields, entries};
use super::lexicon::BARE;
use super::yaml::Node;
use super::{prose, quantity, recipe, yaml};

/// When bakers are up where the course does not say.
const AWAKE: (i32, i32) = (7 * 60, 22 * 60 + 30);

/// What `course.yaml` may say.
const KEYS: [&str; 32] = [
    "language",
    "also in",
    "title",
    "school",
    "instructor",
    "summary",
    "edition",
    "date",
    "address",
    "changes since",
    "units",
    "both units",
    "paper",
    "currency",
    "fine scale",
    "cup",
    "eggs",
    "means",
    "altitude",
    "true hydration",
    "kit",
    "room",
    "time zone",
    "awake",
    "dough density",
    "lessons",
    "cautions",
    "allergen lists",
    "theme",
    "news",
    "offline",
    "class papers",
];

/// Reads the course from the text of `file`.
pub(super) fn read(
    file: &FileName,
    text: &str,
    faults: &mut Vec<Fault>,
) -> Option<Course> {
    let node = yaml::parse(file, text, 0).map_err(|fault| faults.push(fault)).ok()?;
    let mut fields = Fields::new(node, &KEYS, faults);
    let (language, language_place) = match fields.parsed("language", "en", language) {
        Some(tag) => (tag.value, Some(tag.place)),
        None => ("en".into(), None),
    };
    let course = Course {
        title: fields.needed("title", "Layers by Hand").value,
        school: fields.text("school").map(|school| school.value),
        instructor: fields.text("instructor").map(|name| name.value),
        summary: fields.text("summary").map_or_else(String::new, |text| text.value),
        edition: fields.text("edition").map(|edition| edition.value),
        date: fields.parsed("date", "2027-02-15", date).map(|date| date.value),
        address: fields
            .parsed("address", "https://example.org/course/", address)
            .map(|a| a.value),
        since: fields.parsed("changes since", "past/autumn", below),
        metric_first: choice(&mut fields, "units", &["metric", "us"]) == 0,
        both_units: choice(&mut fields, "both units", &["yes", "no"]) == 0,
        a4_first: choice(&mut fields, "paper", &["a4", "letter"]) == 0,
        currency: fields
            .parsed("currency", "EUR", currency)
            .map_or_else(|| "EUR".into(), |c| c.value),
        fine_scale: choice(&mut fields, "fine scale", &["no", "yes"]) == 1,
        cups: fields
            .parsed("cup", "metric", cups)
            .map_or_else(|| cups_of(&language), |cups| cups.value),
        eggs: [EggClasses::Us, EggClasses::Eu]
            [choice(&mut fields, "eggs", &["us", "eu"])],
        means: means(&mut fields),
        altitude: fields
            .parsed("altitude", "1600 m", altitude)
            .map(|metres| metres.value),
        true_hydration: choice(&mut fields, "true hydration", &["no", "yes"]) == 1,
        also_in: also_in(&mut fields, &language),
        first_language: None,
        kit: kit(&mut fields),
        room: room(&mut fields),
        time_zone: fields
            .parsed("time zone", "Europe/Dublin", time_zone)
            .map(|zone| zone.value),
        awake: fields
            .parsed("awake", "07:00 to 22:30", awake)
            .map_or(AWAKE, |awake| awake.value),
        // Common practice, no source: a plain wheat dough weighs a little more than water.
        dough_density: fields
            .parsed("dough density", "1.1 g/ml", recipe::density)
            .map_or_else(|| exact(11, 10), |density| density.value),
        lessons: lessons(&mut fields),
        cautions: fields.list_of_texts("cautions"),
        laws: fields.placed_texts("allergen lists"),
        look: look(&mut fields),
        news: news(&mut fields),
        offline: choice(&mut fields, "offline", &["no", "yes"]) == 1,
        papers_on_site: papers_on_site(&mut fields),
        language,
        language_place,
        place: Place::new(file, 0, text.len()),
    };
    fields.finish();
    Some(course)
}

/// Which of the words stands at `key`; the first where nothing does.
fn choice(fields: &mut Fields, key: &'static str, words: &[&str]) -> usize {
    let find = |text: &str| words.iter().position(|word| word.eq_ignore_ascii_case(text));
    fields.parsed(key, words[0], find).map_or(0, |at| at.value)
}

/// `metric`.
fn cups(text: &str) -> Option<CupSet> {
    Some(match text.to_lowercase().as_str() {
        "us" => CupSet::Us,
        "metric" => CupSet::Metric,
        "australian" => CupSet::Australian,
        "imperial" => CupSet::Imperial,
        "japanese" => CupSet::Japanese,
        _ => return None,
    })
}

/// `also in: fr`, several, or `{ fr: [crescents, letter-turn] }` where not everything is to
/// be had in a language.
fn also_in(fields: &mut Fields, first: &str) -> Vec<AlsoIn> {
    let Some(node) = fields.take("also in") else { return Vec::new() };
    let place = node.place.clone();
    let named: Vec<(Placed<String>, Vec<Placed<String>>)> = match node.value {
        Node::Map(entries) => {
            let one = |(tag, node): (Placed<String>, Placed<Node>)| {
                (tag, fields.texts_of(node))
            };
            entries.into_iter().map(one).collect()
        }
        Node::Text(_) | Node::List(_) | Node::Empty => {
            let tags = fields.texts_of(node);
            tags.into_iter().map(|tag| (tag, Vec::new())).collect()
        }
    };
    let mut found: Vec<AlsoIn> = Vec::new();
    for (tag, only) in named {
        let known = found.iter().any(|it| it.language.value == tag.value);
        match language(&tag.value) {
            Some(own) if own != first && !known && is_folder(&own) => {
                found.push(AlsoIn { language: Placed::new(own, tag.place), only });
            }
            _ => {
                let message =
                    said!("unreadable-value", value = clip(&tag.value), key = "also in");
                fields.faults().push(
                    Fault::error("bad-value", &place, message)
                        .help(said!("unreadable-value-help", example = "fr")),
                );
            }
        }
    }
    found
}

/// Whether a tag can be the name of a folder.
fn is_folder(tag: &str) -> bool {
    tag.chars().all(|sign| sign.is_ascii_alphanumeric() || sign == '-')
}

/// The cup and spoons of those who cook in a language, where the course does not say.
fn cups_of(language: &str) -> CupSet {
    match language.split('-').next().unwrap_or_default() {
        "en" => CupSet::Us,
        "ja" => CupSet::Japanese,
        _ => CupSet::Metric,
    }
}

/// Whether what is the instructor's own of a class stands on the site.
fn papers_on_site(fields: &mut Fields) -> bool {
    choice(fields, "class papers", &["apart", "on the site"]) == 1
}

/// `means: { flour: bread flour, yeast: fresh yeast }`.
fn means(fields: &mut Fields) -> Vec<(Placed<String>, Placed<String>)> {
    let Some(node) = fields.take("means") else { return Vec::new() };
    let keys = BARE.map(|(word, _)| word);
    let mut said = Fields::new(node, &keys, fields.faults());
    let meant = |(word, _): &(&'static str, &str)| {
        said.text(word)
            .map(|name| (Placed::new((*word).to_owned(), name.place.clone()), name))
    };
    let all = BARE.iter().filter_map(meant).collect();
    said.finish();
    all
}

/// A height above the sea, up to 5000 m: `1600 m`, `5280 ft`.
fn altitude(text: &str) -> Option<Length> {
    let (value, unit) = quantity::number(text, false)?;
    let height = match unit.trim() {
        "m" => Length::centimetres(value * exact(100, 1)),
        "ft" | "feet" => Length::inches(&(value * exact(12, 1))),
        _ => return None,
    };
    (height <= Length::centimetres(exact(500_000, 1))).then_some(height)
}

/// A language tag as BCP 47 (RFC 5646, 2.1) has it: a language of two or three letters, then
/// script, region, variants, extensions. No language is registered by a longer subtag.
fn language(text: &str) -> Option<String> {
    let mut parts = text.split('-');
    let first = parts.next()?;
    let letters = |part: &str| part.bytes().all(|byte| byte.is_ascii_alphabetic());
    let known = matches!(first.len(), 2 | 3) && letters(first);
    let plain = |part: &str| {
        matches!(part.len(), 1..=8)
            && part.bytes().all(|byte| byte.is_ascii_alphanumeric())
    };
    let ends = text.rsplit('-').next().is_some_and(|last| last.len() > 1);
    (known && ends && parts.all(plain)).then(|| text.to_owned())
}

/// The language in the text of a `course.yaml`, be the rest of it readable or not.
pub(crate) fn language_of(text: &str) -> Option<String> {
    let value = text.lines().find_map(|line| line.strip_prefix("language:"))?;
    let value = value.split(" #").next().unwrap_or_default();
    language(value.trim().trim_matches(['"', '\'']))
}

fn date(text: &str) -> Option<String> {
    text.parse::<jiff::civil::Date>().ok().map(|date| date.to_string())
}

fn address(text: &str) -> Option<String> {
    let sound = (text.starts_with("https://") || text.starts_with("http://"))
        && !text.contains(char::is_whitespace);
    sound.then(|| format!("{}/", text.trim_end_matches('/')))
}

/// A folder below the content folder: names with slashes between them, none of which means
/// another place or is hidden.
fn below(text: &str) -> Option<String> {
    let text = text.trim_end_matches('/');
    let plain = |name: &str| {
        !name.is_empty() && !name.starts_with('.') && !name.contains(['\\', ':', '\0'])
    };
    text.split('/').all(plain).then(|| text.to_owned())
}

fn currency(text: &str) -> Option<String> {
    (text.len() == 3 && text.bytes().all(|b| b.is_ascii_uppercase()))
        .then(|| text.to_owned())
}

/// A weight: `2.5 kg`.
pub(super) fn mass(text: &str) -> Option<Mass> {
    let (value, unit) = quantity::number(text, false)?;
    Unit::parse(unit).and_then(Unit::grams).map(|grams| Mass::grams(value * grams))
}

/// The name of a time zone in the bundled IANA database.
fn time_zone(text: &str) -> Option<String> {
    let zone = jiff::tz::TimeZoneDatabase::bundled().get(text).ok()?;
    zone.iana_name().map(str::to_owned)
}

/// `07:00 to 22:30`, as minutes of the day.
fn awake(text: &str) -> Option<(i32, i32)> {
    let (from, to) = text.split_once(" to ")?;
    let minutes = |text: &str| {
        clock(text.trim()).map(|(hour, minute)| 60 * i32::from(hour) + i32::from(minute))
    };
    let (from, to) = (minutes(from)?, minutes(to)?);
    (from < to).then_some((from, to))
}

fn look(fields: &mut Fields) -> Look {
    let Some(node) = fields.take("theme") else { return Look::default() };
    let keys = ["accent", "logo", "text", "labels"];
    let mut look = Fields::new(node, &keys, fields.faults());
    let read = Look {
        accent: look.parsed("accent", "\"#2f6b62\"", colour),
        logo: look.text("logo"),
        text: look.text("text"),
        labels: look.text("labels"),
    };
    look.finish();
    read
}

/// A colour as `#2f6b62`: two hexadecimal digits each for red, green and blue.
fn colour(text: &str) -> Option<[u8; 3]> {
    let digits = text.strip_prefix('#').filter(|digits| digits.len() == 6)?;
    let part = |at| u8::from_str_radix(digits.get(at..at + 2)?, 16).ok();
    Some([part(0)?, part(2)?, part(4)?])
}

fn kit(fields: &mut Fields) -> Kit {
    let Some(node) = fields.take("kit") else { return Kit::default() };
    let keys = ["mixer", "bench", "tray", "trays per oven"];
    let mut kit = Fields::new(node, &keys, fields.faults());
    let read = Kit {
        mixer: kit.parsed("mixer", "2.5 kg", mass).map(|mixer| mixer.value),
        bench: kit
            .parsed("bench", "120 x 60 cm", quantity::size)
            .map(|bench| bench.value),
        tray: kit.parsed("tray", "60 x 40 cm", quantity::size).map(|tray| tray.value),
        trays_per_oven: kit
            .parsed("trays per oven", "3", |text| text.parse().ok())
            .map(|trays| trays.value),
    };
    kit.finish();
    read
}

fn room(fields: &mut Fields) -> Room {
    let Some(node) = fields.take("room") else { return Room::default() };
    let keys = ["temperature", "flour", "tap", "friction"];
    let mut room = Fields::new(node, &keys, fields.faults());
    let mut degrees = |key| {
        room.parsed(key, "21 °C", quantity::temperature).map(|degrees| degrees.value)
    };
    let (air, flour, tap) = (degrees("temperature"), degrees("flour"), degrees("tap"));
    let friction = room
        .parsed("friction", "12 °C", quantity::temperature_step)
        .map(|friction| friction.value);
    room.finish();
    Room { air, flour, tap, friction }
}

/// `news:` a list of `2027-02-15: what is new`, newest first however they are written.
fn news(fields: &mut Fields) -> Vec<News> {
    let Some(node) = fields.take("news") else { return Vec::new() };
    let items = node.items();
    let mut news: Vec<News> = Vec::new();
    for item in items {
        for (key, value) in entries(item, fields.faults()) {
            news.extend(one(&key, value, fields.faults()));
        }
    }
    // What was written first stays first within a day.
    news.sort_by(|one, other| other.date.cmp(&one.date));
    news
}

fn one(
    key: &Placed<String>,
    value: Placed<Node>,
    faults: &mut Vec<Fault>,
) -> Option<News> {
    match (date(&key.value), value.value) {
        (Some(date), Node::Text(text)) => {
            let prose = prose::read(&text, &value.place, faults);
            Some(News { date, text, content: prose.blocks, links: prose.links })
        }
        _ => {
            let message = said!("news-no-day");
            faults.push(
                Fault::error("bad-value", &key.place, message)
                    .help(said!("news-no-day-help")),
            );
            None
        }
    }
}

fn lessons(fields: &mut Fields) -> Vec<Lesson> {
    let items = fields.items("lessons", "- title: The feel of a dough");
    items.into_iter().map(|item| lesson(item, fields.faults())).collect()
}

fn lesson(item: Placed<Node>, faults: &mut Vec<Fault>) -> Lesson {
    let keys = ["title", "summary", "recipes", "techniques"];
    let mut fields = Fields::new(item, &keys, faults);
    let lesson = Lesson {
        title: fields.needed("title", "The feel of a dough").value,
        summary: fields.text("summary").map_or_else(String::new, |text| text.value),
        recipes: fields.list("recipes").unwrap_or_default(),
        techniques: fields.list("techniques").unwrap_or_default(),
    };
    fields.finish();
    lesson
}

#[cfg(test)]
mod tests {
    use super::*;

    /// RFC 5646, 2.1; the examples are from its appendix A.
    #[test]
    fn a_language_is_a_tag() {
        for tag in ["en", "de-AT", "zh-Hant", "sr-Latn-RS", "sl-rozaj-biske", "es-419"] {
            assert_eq!(language(tag).as_deref(), Some(tag));
        }
        for wrong in
            ["english", "e", "en_GB", "en-", "en--GB", "1en", "", "en GB", "en-x"]
        {
            assert_eq!(language(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_colour_is_six_digits() {
        assert_eq!(colour("#2f6B62"), Some([0x2f, 0x6b, 0x62]));
        for wrong in ["2f6b62", "#2f6b6", "#2f6b6z", "#é6b62", "green"] {
            assert_eq!(colour(wrong), None, "{wrong}");
        }
    }
}
