//! The course as a book: every lesson's sheets behind one another with contents, techniques,
//! glossary and index, on paper and as an EPUB.

use serde::Serialize;
use serde_json::Value;

use crate::draw::demo;
use crate::sheet::{Block, Look, Paper, TechniqueSheet, TradeWord};

use super::bundle::SetCover;
use super::chapter::{Drawing, drawing, prose};
use super::{Job, Press, data};

/// Begins an address that leads to another page of the book.
const WITHIN: &str = "page:";

/// What a book is made of.
#[derive(Clone, Copy)]
pub struct Book<'a> {
    /// The student sheets, in the order of the lessons.
    pub jobs: &'a [Job<'a>],
    /// The techniques, in the order in which they are taught.
    pub techniques: &'a [&'a TechniqueSheet],
}

#[derive(Serialize)]
pub(super) struct BookData<'a> {
    kind: &'static str,
    paper: Paper,
    half: bool,
    /// That pages are counted through and links lead within.
    book: bool,
    words: std::collections::BTreeMap<&'a str, &'a str>,
    look: &'a Look,
    date: Option<[i16; 3]>,
    cover: SetCover,
    lessons: Vec<Lesson<'a>>,
    handouts: Vec<Value>,
    techniques: Vec<Technique<'a>>,
    glossary: Vec<Word<'a>>,
}

/// A lesson's place in the contents.
#[derive(Serialize)]
struct Lesson<'a> {
    title: &'a str,
    summary: &'a str,
    /// What it teaches, recipes first.
    parts: Vec<Listed<'a>>,
}

/// A line of the contents.
#[derive(Serialize)]
struct Listed<'a> {
    /// Its name in links: `recipes/crescents`.
    name: String,
    title: &'a str,
    /// The title's language, where it is not the book's.
    title_in: Option<&'a str>,
}

#[derive(Serialize)]
struct Technique<'a> {
    /// Its name in links: `techniques/letter-turn`.
    name: String,
    title: &'a str,
    /// The language of title and summary, where it is not the book's.
    title_in: Option<&'a str>,
    summary: &'a str,
    content: Vec<Block<String>>,
    drawings: Vec<Drawing>,
    /// The recipes that use it, by their names in links.
    used_in: Vec<String>,
}

#[derive(Serialize)]
struct Word<'a> {
    word: &'a str,
    meaning: Vec<Block<String>>,
}

impl Press {
    /// The data of a course's book.
    pub fn book_data(&self, book: &Book) -> Vec<u8> {
        let Some(first) = book.jobs.first() else { return Vec::new() };
        let course = first.course;
        let techniques = book.techniques.iter();
        let data = BookData {
            kind: "book",
            paper: first.paper,
            half: false,
            book: true,
            words: data::own_words(first.words),
            look: &course.look,
            date: data::day(course),
            cover: SetCover {
                title: course.title.clone(),
                line: data::edition(course, first.words).unwrap_or_default(),
                ..SetCover::default()
            },
            lessons: lessons(book, first),
            handouts: book.jobs.iter().map(|job| self.chapter(job)).collect(),
            techniques: techniques.map(|it| technique(it, first)).collect(),
            glossary: course.glossary.iter().map(|it| word(it, first)).collect(),
        };
        let mut value = data::cleaned(&data, self.glyphs());
        if let Some(site) = &course.address {
            lead_within(&mut value, site);
        }
        value.to_string().into_bytes()
    }

    /// A recipe's sheet as a chapter, known by its name in links.
    fn chapter(&self, job: &Job) -> Value {
        let mut value = self.wordless(job);
        value["name"] = format!("recipes/{}", job.sheet.recipe).into();
        value
    }
}

fn lessons<'a>(book: &Book<'a>, first: &Job<'a>) -> Vec<Lesson<'a>> {
    let lessons = first.course.lessons.iter().map(|lesson| {
        let recipes =
            book.jobs.iter().filter(|job| lesson.recipes.contains(&job.sheet.recipe));
        let recipes = recipes.map(|job| Listed {
            name: format!("recipes/{}", job.sheet.recipe),
            title: &job.sheet.title,
            title_in: job.sheet.title_in(),
        });
        let techniques = book.techniques.iter();
        let techniques =
            techniques.filter(|it| lesson.techniques.contains(&it.technique));
        let techniques = techniques.map(|it| Listed {
            name: format!("techniques/{}", it.technique),
            title: &it.title,
            title_in: it.title_in.as_deref(),
        });
        Lesson {
            title: &lesson.title,
            summary: &lesson.summary,
            parts: recipes.chain(techniques).collect(),
        }
    });
    lessons.filter(|lesson| !lesson.parts.is_empty()).collect()
}

fn technique<'a>(it: &'a TechniqueSheet, job: &Job) -> Technique<'a> {
    let drawn = it.demonstrations.iter().enumerate();
    Technique {
        name: format!("techniques/{}", it.technique),
        title: &it.title,
        title_in: it.title_in.as_deref(),
        summary: &it.summary,
        content: prose(job, &it.content),
        drawings: drawn
            .map(|(at, one)| drawing(job, &demo(one, at + 1, job.words)))
            .collect(),
        used_in: it.used_in.iter().map(|it| format!("recipes/{}", it.recipe)).collect(),
    }
}

fn word<'a>(it: &'a TradeWord, job: &Job) -> Word<'a> {
    Word { word: &it.word, meaning: prose(job, &it.meaning) }
}

/// Lets links to pages of the site lead to pages of the book.
fn lead_within(value: &mut Value, site: &str) {
    match value {
        Value::Object(fields) => {
            if fields.get("kind").is_some_and(|kind| kind == "link")
                && let Some(Value::String(to)) = fields.get_mut("to")
                && let Some(page) = to.strip_prefix(site)
            {
                *to = format!("{WITHIN}{}", page.trim_end_matches('/'));
            }
            fields.values_mut().for_each(|field| lead_within(field, site));
        }
        Value::Array(items) => items.iter_mut().for_each(|item| lead_within(item, site)),
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
    }
}
