//! A fault as the desk shows it: where it stands in the text, and in words.

use serde::Serialize;

use crate::edition::Edition;
use crate::encode::letters;
use crate::fault::{Fault, Mending, Texts};
use crate::model::{Recipe, Step};
use crate::said;
use crate::words::Words;

/// A fault for the desk.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub(super) struct Finding {
    /// The file it stands in, below the content folder; empty where it stands in none.
    pub(super) file: String,
    /// Where it begins, counted as browsers count letters.
    from: usize,
    /// Where it ends.
    to: usize,
    /// Its line, from 1.
    line: usize,
    /// `error` or `caution`.
    severity: &'static str,
    /// Its name.
    name: &'static str,
    /// What is wrong.
    message: String,
    /// What would be right.
    help: Option<String>,
    /// The changes of text that mend it.
    mendings: Vec<Change>,
}

/// A change of text, as it is offered.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
struct Change {
    /// What it does, in words.
    said: String,
    /// Where what is taken out begins, and where it ends.
    from: usize,
    to: usize,
    /// What is put in.
    text: String,
}

impl Change {
    fn new(mending: &Mending, text: &str, words: &Words) -> Self {
        let put = mending.text.clone();
        let said = match put.trim() {
            "" => words.tell(&said!("desk-mend-away")),
            text => words.tell(&said!("desk-mend", text)),
        };
        let (from, to) =
            (letters(text, mending.place.start()), letters(text, mending.place.end()));
        Self { said, from, to, text: put }
    }
}

/// All that is worth saying of an edition.
pub(super) fn all(edition: &Edition, words: &Words) -> Vec<Finding> {
    edition.faults.iter().map(|it| Finding::new(it, &edition.texts, words)).collect()
}

/// Where a step stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub(super) struct Stand {
    /// Its name, by which pages know it.
    name: String,
    /// The line of its heading, from 1.
    line: usize,
}

/// Where the steps of a recipe's text stand; none where it is no recipe's.
pub(super) fn outline(edition: &Edition, file: &str) -> Vec<Stand> {
    let of_file = |it: &&Recipe| it.way.is_none() && &*it.place.file == file;
    let steps = edition.content.recipes.iter().filter(of_file).flat_map(Recipe::steps);
    let stand = |step: &Step| {
        let line = edition.texts.position(&step.title.place).line;
        Stand { name: step.name.clone(), line }
    };
    let mut all: Vec<Stand> = steps.map(stand).collect();
    all.sort_by_key(|step| step.line);
    all
}

impl Finding {
    fn new(fault: &Fault, texts: &Texts, words: &Words) -> Self {
        let told = fault.told(words);
        let text = texts.text(&fault.place.file);
        Self {
            file: fault.place.file.to_string(),
            from: letters(text, fault.place.start()),
            to: letters(text, fault.place.end()),
            line: texts.position(&fault.place).line,
            severity: fault.severity.word(),
            name: fault.name,
            message: told.message,
            help: told.help,
            mendings: fault
                .mendings
                .iter()
                .map(|it| Change::new(it, text, words))
                .collect(),
        }
    }

    /// What is about no place.
    pub(super) fn whole(message: String) -> Self {
        let file = String::new();
        let (severity, name, help, mendings) = ("error", "", None, Vec::new());
        Self { file, from: 0, to: 0, line: 1, severity, name, message, help, mendings }
    }
}
