//! The data of one handout: what the templates read, as JSON.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::Value;

use crate::sheet::{
    Allergen, Block, CourseSheet, HandoutKind, Look, Paper, Picture, Ticked, Units,
};
use crate::words::Words;

use super::chapter::{Drawing, Method, general_drawings, method, prose, shown_on, steps};
use super::code::{self, Code};
use super::formula::{Formula, PrefermentData, formula, preferments, water, water_alone};
use super::glyphs::is_plain;
use super::layers::{Layers, layers};
use super::setting::{bind, date};
use super::{Glyphs, Inner, Job};

/// Words for handouts begin so in a words file.
const PREFIX: &str = "handout-";

/// What templates put lists and sentences together with, and its message.
const JOINTS: [(&str, &str); 6] = [
    ("range", "range"),
    ("comma", "list-comma"),
    ("semicolon", "list-semicolon"),
    ("colon", "list-colon"),
    ("stop", "sentence-stop"),
    ("space", "sentence-space"),
];

#[derive(Serialize)]
struct Handout<'a> {
    kind: HandoutKind,
    units: Units,
    paper: Paper,
    words: BTreeMap<&'a str, &'a str>,
    language: &'a str,
    region: Option<&'a str>,
    title: &'a str,
    /// The language of title and summary, where it is not the sheet's.
    title_in: Option<&'a str>,
    summary: &'a str,
    /// The finished piece.
    picture: Option<Picture>,
    course: Course<'a>,
    look: &'a Look,
    /// Whose station it stands at.
    whose: Option<String>,
    /// The batch in words, where it is not the recipe as written.
    batch: Option<&'a str>,
    /// Term and value: makes, piece, times, oven.
    glance: Vec<[String; 2]>,
    /// Term and value: attended, waiting, all.
    times: [[String; 2]; 3],
    /// Every oven temperature, for the head of a bench card.
    oven: Option<String>,
    contains: Contains,
    formula: Formula,
    water: Option<String>,
    preferments: Vec<PrefermentData>,
    layers: Option<Layers>,
    /// What differs from the edition before, in a sentence.
    since: Option<String>,
    opening: Vec<Block<String>>,
    /// The recipes that go into it, before it in the order of work.
    included: Vec<Included<'a>>,
    method: Method,
    drawings: Vec<Drawing>,
    cautions: Vec<&'a str>,
    page_code: Option<Code>,
    /// The videos that no step shows.
    videos: Vec<Code>,
}

/// The course as every paper names it.
#[derive(Serialize)]
pub(super) struct Course<'a> {
    title: &'a str,
    school: Option<&'a str>,
    instructor: Option<&'a str>,
    /// Edition and date in words.
    edition: String,
    date: Option<[i16; 3]>,
}

/// A recipe that goes into the one of the handout.
#[derive(Serialize)]
struct Included<'a> {
    title: &'a str,
    /// The title's language, where it is not the sheet's.
    title_in: Option<&'a str>,
    /// How much of it.
    makes: String,
    formula: Formula,
    water: Option<String>,
    preferments: Vec<PrefermentData>,
    method: Method,
}

/// The allergens: what all lists name alike once, then what one of them names so, the list
/// of the chosen units' home first.
#[derive(Serialize)]
struct Contains {
    /// Allergens with kinds and sources.
    both: Vec<Source>,
    /// The list's name and its own.
    apart: Vec<(String, Vec<Source>)>,
    unknown: Vec<String>,
    read_on_pack: Vec<String>,
}

#[derive(Clone, PartialEq, Serialize)]
struct Source {
    name: String,
    kinds: Vec<String>,
    from: Vec<String>,
}

/// The data of a job as JSON, with only characters that can be printed.
pub(super) fn bytes(job: &Job, glyphs: &Glyphs) -> Vec<u8> {
    value(job, glyphs).to_string().into_bytes()
}

/// The same before it is written down.
pub(super) fn value(job: &Job, glyphs: &Glyphs) -> Value {
    cleaned(&handout(job), glyphs)
}

/// Any data with only characters that can be printed.
pub(super) fn cleaned(data: &impl Serialize, glyphs: &Glyphs) -> Value {
    // Plain data with text for keys: serialising it cannot fail.
    let mut value = serde_json::to_value(data).unwrap_or_default();
    clean(&mut value, glyphs);
    value
}

/// Cleans every text of the data.
fn clean(value: &mut Value, glyphs: &Glyphs) {
    match value {
        Value::String(text) if is_plain(text) => {}
        Value::String(text) => *text = glyphs.clean(text),
        Value::Array(items) => items.iter_mut().for_each(|item| clean(item, glyphs)),
        Value::Object(fields) => {
            fields.iter_mut().for_each(|(_, field)| clean(field, glyphs));
        }
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

fn handout<'a>(job: &Job<'a>) -> Handout<'a> {
    let (language, region) = language(&job.course.language);
    let sheet = job.sheet;
    Handout {
        kind: job.kind,
        units: job.units,
        paper: job.paper,
        words: own_words(job.words),
        language,
        region,
        title: &sheet.title,
        title_in: sheet.title_in(),
        summary: &sheet.summary,
        picture: sheet.picture.as_deref().and_then(|shown| shown_on(job, shown)),
        course: Course::new(job.course, job.words),
        look: &job.course.look,
        whose: whose(job),
        batch: (job.batch_key != "x1").then_some(sheet.scale.batch.as_str()),
        glance: glance(job),
        times: times(job),
        oven: oven(job),
        contains: contains(job),
        formula: formula(job),
        water: water(job),
        preferments: preferments(job),
        layers: layers(job),
        since: since(job),
        opening: prose(job, &sheet.opening),
        included: job.included.iter().map(|inner| included(job, inner)).collect(),
        method: method(job),
        drawings: general_drawings(job),
        cautions: cautions(job),
        page_code: code::page(job),
        videos: code::other_videos(job),
    }
}

/// Language and region of a language tag: `en-GB` → `en`, `gb`.
pub(super) fn language(tag: &str) -> (&str, Option<&str>) {
    let mut parts = tag.split('-');
    let language = parts.next().filter(|part| (2..=3).contains(&part.len()));
    (language.unwrap_or("en"), parts.find(|part| part.len() == 2))
}

/// Whose card it is, and for how many bakers there.
fn whose(job: &Job) -> Option<String> {
    let who = job.whose?;
    if job.makers < 2 {
        return Some(who.to_owned());
    }
    let count = job.makers.to_string();
    Some(job.words.fill("handout-each-baker", &[("who", who), ("count", &count)]))
}

/// The words of handouts without their prefix, so that a change to a word of the site
/// leaves the handouts as they are.
pub(super) fn own_words(words: &Words) -> BTreeMap<&str, &str> {
    let own =
        words.all().filter_map(|(key, word)| Some((key.strip_prefix(PREFIX)?, word)));
    own.chain(JOINTS.map(|(name, key)| (name, words.get(key)))).collect()
}

impl<'a> Course<'a> {
    /// What is said of the course on every paper.
    pub(super) fn new(course: &'a CourseSheet, words: &Words) -> Self {
        Self {
            title: &course.title,
            school: course.school.as_deref(),
            instructor: course.instructor.as_deref(),
            edition: edition(course, words).unwrap_or_default(),
            date: day(course),
        }
    }
}

/// The course's edition and its date in words; `None` where it has neither.
pub(super) fn edition(course: &CourseSheet, words: &Words) -> Option<String> {
    let date = course.date.as_deref().and_then(|date| date.parse().ok());
    let date = date.map(|date| words.date(date));
    let parts: Vec<String> = course.edition.clone().into_iter().chain(date).collect();
    (!parts.is_empty()).then(|| parts.join(" · "))
}

/// Year, month and day of the course's edition.
pub(super) fn day(course: &CourseSheet) -> Option<[i16; 3]> {
    course.date.as_deref().and_then(date)
}

fn glance(job: &Job) -> Vec<[String; 2]> {
    let (scale, time) = (&job.sheet.scale, &job.sheet.time);
    let chosen = |label| bind(job.units.of(label));
    let fact = |key: &str, value: String| [job.words.get(key).to_owned(), value];
    let makes = Some(fact("handout-makes", chosen(&scale.makes)));
    let piece = scale.piece.as_ref().map(|piece| fact("handout-piece", chosen(piece)));
    let hands = Some(fact("handout-hands", bind(&time.hands)));
    let elapsed = Some(fact("handout-elapsed", bind(&time.elapsed)));
    let stands_in_head = job.kind == HandoutKind::Bench;
    let oven = oven(job).filter(|_| !stands_in_head);
    let oven = oven.map(|oven| fact("handout-oven", oven));
    let water = water_alone(job).filter(|_| stands_in_head);
    let water = water.map(|water| fact("handout-water-alone", water));
    [makes, piece, hands, elapsed, oven, water].into_iter().flatten().collect()
}

fn times(job: &Job) -> [[String; 2]; 3] {
    let time = &job.sheet.time;
    [
        ("handout-hands", &time.hands),
        ("handout-wait", &time.wait),
        ("handout-elapsed", &time.elapsed),
    ]
    .map(|(key, value)| [job.words.get(key).to_owned(), bind(value)])
}

/// Every oven temperature of the method, each once.
fn oven(job: &Job) -> Option<String> {
    let rows = steps(job.sheet).flat_map(|step| &step.ticket);
    let mut ovens: Vec<String> = rows
        .filter(|row| row.key == Ticked::Oven)
        .map(|row| bind(job.units.of(&row.value)))
        .collect();
    ovens.dedup();
    (!ovens.is_empty()).then(|| job.words.list(&ovens))
}

fn contains(job: &Job) -> Contains {
    let found = &job.sheet.allergens;
    let shown = found.shown(&job.course.laws, job.units);
    let lists: Vec<(String, Vec<Source>)> = shown
        .iter()
        .map(|list| {
            let name = job.words.get(&format!("handout-list-{}", list.law)).to_owned();
            (name, list.found.iter().map(source).collect())
        })
        .collect();
    let by_all = |it: &&Source| lists.iter().all(|(_, list)| list.contains(it));
    // In the order of the sheet's first list, whichever stands first here.
    let first = found.lists.iter().find(|it| shown.iter().any(|one| one.law == it.law));
    let first = first.iter().flat_map(|list| &list.found).map(source);
    let both: Vec<Source> = first.filter(|it| by_all(&it)).collect();
    let own = |(name, list): &(String, Vec<Source>)| {
        let own = list.iter().filter(|it| !both.contains(it)).cloned().collect();
        (name.clone(), own)
    };
    let apart = lists.iter().map(own).collect();
    let (unknown, read_on_pack) = (found.unknown.clone(), found.read_on_pack.clone());
    Contains { both, apart, unknown, read_on_pack }
}

fn included<'a>(job: &Job<'a>, inner: &'a Inner) -> Included<'a> {
    let sheet = &inner.sheet;
    let own = Job { sheet, figures: &inner.figures, included: &[], ..*job };
    Included {
        title: &sheet.title,
        title_in: sheet.title_in(),
        makes: bind(job.units.of(&sheet.scale.makes)),
        formula: formula(&own),
        water: water(&own),
        preferments: preferments(&own),
        method: method(&own),
    }
}

/// The cautions of the recipe and of what goes into it, each once.
fn cautions<'a>(job: &Job<'a>) -> Vec<&'a str> {
    let inner = job.included.iter().map(|inner| &inner.sheet);
    let mut all: Vec<&str> = Vec::new();
    for text in [job.sheet].into_iter().chain(inner).flat_map(|it| &it.caution_texts) {
        if !all.contains(&text.as_str()) {
            all.push(text);
        }
    }
    all
}

/// `Since Autumn 2026: 2 g less instant yeast; bake 190 °C, was 200 °C.`
fn since(job: &Job) -> Option<String> {
    let since = job.sheet.since.as_ref()?;
    let changes: Vec<String> =
        since.changes.iter().map(|label| bind(job.units.of(label))).collect();
    let values = [
        ("edition", &*since.edition),
        ("changes", &*changes.join(job.words.get("list-semicolon"))),
    ];
    Some(job.words.fill("handout-since", &values))
}

fn source(allergen: &Allergen) -> Source {
    let Allergen { name, kinds, from } = allergen.clone();
    Source { name, kinds, from }
}
