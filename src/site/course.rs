//! The course's own page, and the page for an address that is none.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::sheet::{CourseSheet, LessonSheet};

use super::engine::{Engine, TemplateFault};
use super::html::Html;
use super::prose::Writer;
use super::shell::{Head, MISSING, Stop, context};
use super::vary::varied;
use super::{Card, Input, Page, linked};

/// One lesson as the template sees it.
#[derive(Serialize)]
struct Lesson<'a> {
    number: usize,
    title: &'a str,
    summary: &'a str,
    recipes: Vec<LessonItem<'a>>,
    techniques: Vec<LessonItem<'a>>,
}

/// A recipe or a technique in a lesson.
#[derive(Serialize)]
struct LessonItem<'a> {
    /// Its page, from the site's root.
    page: String,
    title: &'a str,
    /// The language of both, where it is not the page's.
    title_in: Option<&'a str>,
    summary: &'a str,
    family: Option<&'a str>,
    /// What it gives; empty for a technique.
    makes: Html,
    /// Attended time and all of it, in words; empty for a technique.
    hands: &'a str,
    elapsed: &'a str,
    /// Layers of fat, for layered doughs.
    layers: Option<u64>,
}

/// The course's page.
pub(super) fn page(
    input: &Input,
    cards: &[Card],
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let head = Head {
        path: "index.html",
        title: &input.course.title,
        summary: &input.course.summary,
        linked: Some(linked::course(input.course, cards)),
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    let lessons = input.course.lessons.iter().enumerate();
    let by_name: BTreeMap<&str, &Card> =
        cards.iter().map(|card| (card.recipe.as_str(), card)).collect();
    let lesson = |(at, one)| self::lesson(input, &by_name, (at + 1, one));
    let lessons: Vec<Lesson> = lessons.map(lesson).collect();
    let varies = |card: &Card| card.makes.metric != card.makes.us;
    context.insert("units", &cards.iter().any(varies));
    context.insert("lessons", &lessons);
    context.insert("news", &news(input));
    Ok(Page::text("index.html", engine.fill("course.html", &context)?))
}

/// The page that a host shows for an address that is none.
pub(super) fn missing(input: &Input, engine: &Engine) -> Result<Page, TemplateFault> {
    let head = Head {
        path: MISSING,
        title: input.words.get("page-missing"),
        summary: input.words.get("page-missing-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let context = context(input, head);
    Ok(Page::text(MISSING, engine.fill("missing.html", &context)?))
}

/// The way from the course's page to a recipe or technique: through the first lesson that
/// teaches it.
pub(super) fn trail(course: &CourseSheet, name: &str) -> Vec<Stop> {
    let taught = |lesson: &LessonSheet| {
        let mut all = lesson.recipes.iter().chain(&lesson.techniques);
        !lesson.title.is_empty() && all.any(|one| one == name)
    };
    let top = Stop { title: course.title.clone(), page: "index.html".into() };
    let lesson = course.lessons.iter().position(taught).map(|at| Stop {
        title: course.lessons[at].title.clone(),
        page: format!("index.html#lesson-{}", at + 1),
    });
    std::iter::once(top).chain(lesson).collect()
}

/// What is new, as the template sees it.
#[derive(Serialize)]
struct New<'a> {
    date: &'a str,
    content: Html,
}

fn news<'a>(input: &Input<'a>) -> Vec<New<'a>> {
    let writer = Writer {
        root: "",
        keys: &[""],
        level: 3,
        words: input.words,
        media: input.media,
        glossary: None,
    };
    let news = input.course.news.iter();
    news.map(|one| New { date: &one.date, content: writer.write(&[&one.content]) })
        .collect()
}

fn lesson<'a>(
    input: &Input<'a>,
    cards: &BTreeMap<&str, &'a Card>,
    (number, lesson): (usize, &'a LessonSheet),
) -> Lesson<'a> {
    let known = lesson.recipes.iter().filter_map(|name| cards.get(name.as_str()));
    let recipes = known.map(|card| recipe(card));
    let techniques = lesson.techniques.iter().filter_map(|name| technique(input, name));
    Lesson {
        number,
        title: &lesson.title,
        summary: &lesson.summary,
        recipes: recipes.collect(),
        techniques: techniques.collect(),
    }
}

fn recipe(card: &Card) -> LessonItem<'_> {
    LessonItem {
        page: card.page(),
        title: &card.title,
        title_in: card.title_in.as_deref(),
        summary: &card.summary,
        family: card.family.as_deref(),
        makes: varied(&["x1"], std::slice::from_ref(&card.makes)),
        hands: &card.hands,
        elapsed: &card.elapsed,
        layers: card.fat_layers,
    }
}

fn technique<'a>(input: &Input<'a>, name: &str) -> Option<LessonItem<'a>> {
    let technique = input.techniques.iter().find(|one| one.technique == name)?;
    Some(LessonItem {
        page: format!("techniques/{name}/index.html"),
        title: &technique.title,
        title_in: technique.title_in.as_deref(),
        summary: &technique.summary,
        family: None,
        makes: Html::default(),
        hands: "",
        elapsed: "",
        layers: None,
    })
}
