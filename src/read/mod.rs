//! Text to model: every file read to its end, every fault kept, nothing judged.

mod alternative;
mod amount;
mod bake;
mod behind;
mod besides;
mod body;
mod class;
mod course;
mod cut;
mod days;
mod divide;
mod evening;
mod fields;
mod glossary;
mod goal;
mod kit;
mod lexicon;
mod mark;
mod measured;
mod mix;
mod note;
mod pantry;
mod picture;
mod proof;
mod prose;
mod purpose;
mod quantity;
mod recipe;
mod schema;
mod shaping;
mod swaps;
mod technique;
mod ticket;
mod translation;
mod words;
mod yaml;

use rayon::prelude::*;

use crate::fault::{Fault, Place, Texts};
use crate::model::{Content, Translation};
use crate::said;

pub(crate) use amount::{
    bad_amount, behind_amount, is_amount, is_part, is_unit, line_of as amount_line,
    parted, quantity as amount_of,
};
pub(crate) use body::name as part_name;
pub(crate) use class::{clock, moment};
pub(crate) use course::language_of;
pub(crate) use evening::{TAKEN_BACK, Unreadable, day_file, day_line, spoken};
pub(crate) use lexicon::{BARE, Lexicon, Locale};
pub(crate) use note::{BENCH, bench, is_bench};
pub use note::{note_line, taken_up_line};
pub(crate) use purpose::within;
pub(crate) use quantity::{size as size_of, temperature, tin};
pub(crate) use recipe::density;
pub(crate) use schema::tree as schema_tree;
pub use schema::{Shape, schema};
pub use words::words_in;
pub(crate) use yaml::{Node, parse as yaml};

/// One file of the content folder.
#[derive(Clone, Debug)]
pub struct Source {
    /// Its path below the content folder, with forward slashes.
    pub path: String,
    /// Its text.
    pub text: String,
}

/// Reads the whole content folder.
pub fn content(files: &[Source]) -> (Content, Texts, Vec<Fault>) {
    let mut reader = Reader::default();
    let course = files.iter().find(|file| file.path == "course.yaml");
    match course {
        Some(file) => reader.course(file),
        None => reader.faults.push(
            Fault::error(
                "missing-file",
                &Place::file("course.yaml"),
                said!("missing-course"),
            )
            .help(said!("missing-course-help")),
        ),
    }
    let (recipes, others): (Vec<&Source>, _) = files
        .iter()
        .partition(|file| matches!(parts_of(&file.path), ("recipes", _, "md")));
    others.into_iter().for_each(|file| reader.file(file));
    reader.recipes(&recipes);
    reader.content.find_endless();
    (reader.content, reader.texts, reader.faults)
}

#[derive(Default)]
struct Reader {
    content: Content,
    texts: Texts,
    faults: Vec<Fault>,
}

impl Reader {
    fn course(&mut self, file: &Source) {
        let name = self.texts.insert(&file.path, &file.text);
        self.content.course = course::read(&name, &file.text, &mut self.faults);
    }

    /// Recipes are many and know nothing of each other: they are read side by side.
    fn recipes(&mut self, files: &[&Source]) {
        let course = self.content.course.as_ref();
        let locale = course.map_or_else(Locale::english, |it| Locale::of(&it.language));
        let insert = |file: &&Source| self.texts.insert(&file.path, &file.text);
        let names: Vec<_> = files.iter().map(insert).collect();
        let all = names.par_iter().zip(files).map(|(name, file)| {
            let (_, stem, _) = parts_of(&file.path);
            let mut faults = Vec::new();
            let read = recipe::read(name, &file.text, stem, locale, &mut faults);
            // A copy takes no more room than it needs; what is read grew bit by bit.
            (read.clone(), stem, faults)
        });
        let all: Vec<_> = all.collect();
        for (recipe, stem, faults) in all {
            self.faults.extend(faults);
            match recipe {
                Some(recipe) => self.content.recipes.push(recipe),
                None => self.content.unread.push(stem.to_owned()),
            }
        }
    }

    /// A file below `in/LANGUAGE/`, by its path there.
    fn translated(&mut self, (language, path): (&str, &str), file: &Source) {
        let name = self.texts.insert(&file.path, &file.text);
        let faults = &mut self.faults;
        let all = &mut self.content.translations;
        let at = all.iter().position(|it| it.language == language);
        let at = at.unwrap_or_else(|| {
            let language = language.to_owned();
            all.push(Translation { language, ..Translation::default() });
            all.len() - 1
        });
        let own = &mut all[at];
        match parts_of(path) {
            ("", "words", "yaml") => {
                own.words = translation::words(&name, &file.text, faults);
            }
            ("", "glossary", "yaml") => {
                own.glossary = translation::glossary(&name, &file.text, faults);
            }
            ("recipes", stem, "md") => {
                let read = translation::text(&name, &file.text, stem, true, faults);
                own.recipes.extend(read);
            }
            ("techniques", stem, "md") => {
                let read = translation::text(&name, &file.text, stem, false, faults);
                own.techniques.extend(read);
            }
            _ => {}
        }
    }

    fn file(&mut self, file: &Source) {
        let below = file.path.strip_prefix("in/").and_then(|path| path.split_once('/'));
        if let Some(below) = below {
            return self.translated(below, file);
        }
        let name = self.texts.insert(&file.path, &file.text);
        let faults = &mut self.faults;
        match parts_of(&file.path) {
            ("", "pantry", "yaml") => {
                self.content.pantry = pantry::read(&name, &file.text, faults);
            }
            ("", "glossary", "yaml") => {
                self.content.glossary = glossary::read(&name, &file.text, faults);
            }
            ("recipes", _, "txt") => {
                let recipe = file.path["recipes/".len()..].trim_end_matches(BENCH);
                let notes = bench(&name, &file.text, recipe, faults);
                self.content.notes.push(notes);
            }
            ("media", _, "svg") => {
                self.content.drawings.insert(file.path.clone(), file.text.clone());
            }
            ("techniques", stem, "md") => {
                match technique::read(&name, &file.text, stem, faults) {
                    Some(technique) => self.content.techniques.push(technique),
                    None => self.content.unread.push(stem.to_owned()),
                }
            }
            ("classes", stem, "yaml") => {
                let course = self.content.course.as_ref();
                let words =
                    course.map_or_else(Lexicon::english, |it| Lexicon::of(&it.language));
                let class = class::read(&name, &file.text, stem, words, faults);
                self.content.classes.extend(class);
            }
            _ => {}
        }
    }
}

/// Text without signs that stand in no page, feed or calendar, and that only a code such as
/// `&#1;` or `"\x01"` can have brought in: the sign for an unreadable one stands instead.
fn readable(text: &str) -> String {
    let is_hidden = |sign: char| sign.is_control() && !matches!(sign, '\n' | '\r' | '\t');
    text.replace(is_hidden, "\u{fffd}")
}

/// Folder, name without ending, and ending of a path.
fn parts_of(path: &str) -> (&str, &str, &str) {
    let (folder, file) = path.rsplit_once('/').unwrap_or(("", path));
    let (stem, ending) = file.rsplit_once('.').unwrap_or((file, ""));
    (folder, stem, ending)
}
