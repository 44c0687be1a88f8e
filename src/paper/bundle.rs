//! The print room: many handouts in one PDF, and booklets from sheets folded in half.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::Value;
use typst::foundations::Bytes;

use crate::sheet::{Look, Paper};

use super::press::{export, forget};
use super::{Job, PaperFault, Press, data};

/// Several handouts behind a cover.
#[derive(Serialize)]
struct Set<'a> {
    kind: &'static str,
    paper: Paper,
    /// Whether a page is half a sheet of the paper.
    half: bool,
    words: BTreeMap<&'a str, &'a str>,
    look: &'a Look,
    date: Option<[i16; 3]>,
    cover: &'a SetCover,
    handouts: Vec<Value>,
}

/// What the cover of several handouts says.
#[derive(Clone, Debug, Default, Serialize)]
pub struct SetCover {
    /// Its title.
    pub title: String,
    /// What is behind it, in a line.
    pub line: String,
    /// Heads with a few lines each: lessons and their recipes, days and hours.
    pub lists: Vec<(String, Vec<String>)>,
    /// What is to be printed how many times; empty where everything is printed once.
    pub parts: Vec<Printing>,
}

/// Handouts of a set that are printed the same number of times.
#[derive(Clone, Debug, Serialize)]
pub struct Printing {
    /// What they are.
    pub title: String,
    /// The first of them in the set, counted from 0.
    pub first: usize,
    /// The last of them.
    pub last: usize,
    /// How many times they are printed.
    pub copies: u32,
}

/// Pages to be put on sheets that are folded in half.
#[derive(Serialize)]
struct Booklet<'a> {
    kind: &'static str,
    paper: Paper,
    pages: usize,
    title: &'a str,
    language: &'a str,
}

impl Press {
    /// The data of several handouts as one document in their order, behind a cover where
    /// there is more than one. With `half`, pages are half a sheet of their paper.
    pub fn set_data(&self, jobs: &[Job], half: bool) -> Vec<u8> {
        let Some(first) = jobs.first() else { return Vec::new() };
        self.covered(jobs, &course_cover(jobs, first), half)
    }

    /// The same behind a cover of one's own.
    pub fn covered(&self, jobs: &[Job], cover: &SetCover, half: bool) -> Vec<u8> {
        let handouts = jobs.iter().map(|job| self.wordless(job)).collect();
        let Some(first) = jobs.first() else { return Vec::new() };
        let look = &first.course.look;
        let (kind, date) = ("set", data::day(first.course));
        let paper = first.paper;
        let words = data::own_words(first.words);
        let set = Set { kind, paper, half, words, look, date, cover, handouts };
        data::cleaned(&set, self.glyphs()).to_string().into_bytes()
    }

    /// The data of one handout of a set, without the words that all of them share.
    pub(super) fn wordless(&self, job: &Job) -> Value {
        let mut value = data::value(job, self.glyphs());
        if let Some(fields) = value.as_object_mut() {
            fields.remove("words");
        }
        value
    }

    /// The data's pages, half a sheet each, put on both sides of sheets in such an order
    /// that the pile folds into a booklet: turn the sheets on their short side.
    ///
    /// # Errors
    /// As [`Press::print`].
    pub fn booklet(&self, data: &[u8], job: &Job) -> Result<Vec<u8>, PaperFault> {
        let pdf = self.impose(data, job);
        forget();
        pdf
    }

    fn impose(&self, data: &[u8], job: &Job) -> Result<Vec<u8>, PaperFault> {
        let pages = self.pages(data)?;
        let booklet = Booklet {
            kind: "booklet",
            paper: job.paper,
            pages: pages.pages().len(),
            title: &job.course.title,
            language: &job.course.language,
        };
        let told = data::cleaned(&booklet, self.glyphs()).to_string();
        let mut files = self.files(told.as_bytes())?;
        // A sheet for the printer is not one to be read out: its pages stand in it as
        // pictures do, which neither standard allows.
        files.by_name.insert("pages.pdf".to_owned(), Bytes::new(export(&pages, &[])?));
        export(&self.set(&files)?, &[])
    }
}

/// The cover of a course's set: the lessons whose recipes are in it, in the order of its
/// pages.
fn course_cover(jobs: &[Job], first: &Job) -> SetCover {
    let mut lists = Vec::new();
    for lesson in &first.course.lessons {
        let printed = |job: &&Job| lesson.recipes.contains(&job.sheet.recipe);
        let titles: Vec<String> =
            jobs.iter().filter(printed).map(|job| job.sheet.title.clone()).collect();
        if !titles.is_empty() {
            lists.push((lesson.title.clone(), titles));
        }
    }
    let kind = first.words.get(&format!("handout-set-{}", first.kind.word())).to_owned();
    let line = std::iter::once(kind).chain(data::edition(first.course, first.words));
    SetCover {
        title: first.course.title.clone(),
        line: line.collect::<Vec<_>>().join(first.words.get("list-comma")),
        lists,
        parts: Vec::new(),
    }
}
