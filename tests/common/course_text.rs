//! A course as texts that a test changes, and the allergens that are printed of it.
#![allow(dead_code, reason = "each test uses a part of this")]

use std::path::{Path, PathBuf};

use tourier::edition::Edition;
use tourier::fault::{Fault, Severity};
use tourier::formula::{allergens, expand, weigh};
use tourier::measure::exact;
use tourier::read::Source;
use tourier::store;

const RECIPE: &str = "recipes/t.md";

/// A course, its files by name.
#[derive(Clone)]
pub(crate) struct Course {
    pub(crate) files: Vec<Source>,
    /// The folder that its pictures lie in.
    folder: Option<PathBuf>,
}

impl Course {
    pub(crate) fn new(line: &str, pantry: &str) -> Self {
        let file = |path: &str, text: String| Source { path: path.into(), text };
        let recipe = format!(
            "---\ntitle: t\nsummary: s\nmakes: 1 cake\nformula:\n  dough:\n    - {line}\n---\n\
             ## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n"
        );
        Self {
            files: vec![
                file("course.yaml", "title: c\nsummary: s\n".into()),
                file("pantry.yaml", pantry.into()),
                file(RECIPE, recipe),
            ],
            folder: None,
        }
    }

    /// The course in a folder.
    pub(crate) fn of(folder: &Path) -> Self {
        let (files, _) = store::load(folder).expect("the course can be read");
        Self { files, folder: Some(folder.to_owned()) }
    }

    pub(crate) fn edition(&self) -> Edition {
        let media = self.folder.as_ref().map(|folder| store::media(folder));
        let (media, faults) = media.map_or_else(Default::default, |it| it.expect("read"));
        Edition::new(&self.files, media, faults)
    }

    pub(crate) fn text(&mut self, path: &str) -> &mut String {
        let found = self.files.iter_mut().find(|file| file.path == path);
        &mut found.unwrap_or_else(|| panic!("{path} is there")).text
    }
}

/// What the program prints of allergens; none where an error stops it.
pub(crate) fn printed(edition: &Edition) -> Option<Vec<String>> {
    let stops = |fault: &Fault| fault.severity == Severity::Error;
    if edition.faults.iter().any(stops) {
        return None;
    }
    let book = edition.book();
    let mut all = Vec::new();
    for recipe in &edition.content.recipes {
        let formula = weigh(recipe, book);
        let sum = allergens(&expand(&formula, &exact(1, 1)));
        let names = |found: &tourier::formula::Declared| {
            let kinds = found.kinds.iter().map(|kind| format!("{}:{kind}", found.name));
            kinds.chain([found.name.clone()]).collect::<Vec<_>>()
        };
        all.extend(sum.all().flat_map(names));
        all.extend(sum.unknown.iter().map(|name| format!("unknown: {name}")));
    }
    Some(all)
}
