//! The stages in order, from texts to sheets: the whole program on one screen.

use std::collections::BTreeSet;
use std::sync::Arc;

use rayon::prelude::*;

use crate::check::{self, Case};
use crate::fault::{self, Fault, Severity, Texts};
use crate::formula::{self, Book, Scaling, Unscalable, cycles};
use crate::measure::exact;
use crate::media::Medium;
use crate::model::{Class, Content, Included, Recipe};
use crate::pantry::Pantry;
use crate::plan::{Effort, Unclear, planned};
use crate::read::{self, Source};
use crate::said;
use crate::sheet::build::{self, Context};
use crate::sheet::{
    Batch, ClassSheet, CourseSheet, RecipeSheets, Sheet, TechniqueSheet, Units,
};
use crate::words::Words;
use crate::work::{Work, included, work};

/// The batch sizes that a recipe's page offers: short name and factor.
const BATCHES: [(&str, (i64, i64)); 4] =
    [("half", (1, 2)), ("x1", (1, 1)), ("x2", (2, 1)), ("x3", (3, 1))];

/// A content folder, read and checked.
#[derive(Debug)]
pub struct Edition {
    /// What was written.
    pub content: Content,
    /// The texts that faults point into.
    pub texts: Texts,
    /// The pantry, with the course's own ingredients.
    pub pantry: Pantry,
    /// Every fault, most serious first.
    pub faults: Vec<Fault>,
    /// The edition before this one, where the course names it and it has no error.
    pub past: Option<Box<Edition>>,
}

impl Edition {
    /// Reads and checks `files` with the pictures they may show. `found` are faults met
    /// while the files were loaded.
    pub fn new(files: &[Source], media: Vec<Medium>, found: Vec<Fault>) -> Self {
        let (mut content, texts, mut faults) = read::content(files);
        content.media = media;
        heed(&found, &mut content, &mut faults);
        // What a line that cannot be read would have said is not known: a caution that it is
        // missing would only follow from that.
        let unread: BTreeSet<Arc<str>> = faults
            .iter()
            .filter(|fault| fault.severity == Severity::Error)
            .map(|fault| fault.place.file.clone())
            .collect();
        let sure = |fault: &Fault| {
            fault.severity == Severity::Error || !unread.contains(&fault.place.file)
        };
        let (pantry, pantry_faults) = Pantry::of(&content);
        faults.extend(found.into_iter().chain(pantry_faults));
        // Nor is what a class needs, where a recipe cannot be read.
        let recipe_unread = unread.iter().any(|file| file.starts_with("recipes/"));
        let known = |fault: &Fault| {
            fault.severity == Severity::Error
                || !(recipe_unread && fault.place.file.starts_with("classes/"))
        };
        faults.extend(check::content(&content).into_iter().filter(known));
        let rings = cycles(&content);
        let book = Book { content: &content, pantry: &pantry };
        // A slip in `course.yaml` may be in the line that says what such names mean.
        let of_course = |fault: &Fault| {
            fault.severity == Severity::Error && &*fault.place.file == "course.yaml"
        };
        if !faults.iter().any(of_course) {
            faults.extend(check::bare_names(book).into_iter().filter(sure));
        }
        faults.extend(check::shelves(book));
        // A recipe that needs itself cannot be worked out, nor can one that needs it.
        if rings.is_empty() {
            let recipes = content.recipes.par_iter();
            let found: Vec<Vec<Fault>> = recipes
                .filter_map(|recipe| as_written(recipe, book))
                .map(|work| check::recipe(Case { work: &work, book }))
                .collect();
            faults.extend(found.into_iter().flatten().filter(sure));
        }
        faults.extend(rings);
        without_pantry(&mut faults);
        fault::sort(&mut faults);
        fault::limit(&mut faults);
        Self { content, texts, pantry, faults, past: None }
    }

    /// The same edition, to be held against the one before it. `past` is `None` where the
    /// folder that the course names is not there.
    #[must_use]
    pub fn after(mut self, past: Option<Self>) -> Self {
        let since = self.content.course.as_ref().and_then(|course| course.since.as_ref());
        let Some(since) = since else { return self };
        let fault = match &past {
            Some(past) if past.stops() => Some(
                Fault::caution(
                    "faulty-edition",
                    &since.place,
                    said!("faulty-edition", folder = since.value),
                )
                .help(said!("faulty-edition-help")),
            ),
            Some(_) => None,
            None => Some(
                Fault::error(
                    "missing-edition",
                    &since.place,
                    said!("missing-edition", folder = since.value),
                )
                .help(said!("missing-edition-help")),
            ),
        };
        self.faults.extend(fault);
        fault::sort(&mut self.faults);
        self.past = past.filter(|past| !past.stops()).map(Box::new);
        self
    }

    /// Whether a fault stops publishing.
    pub fn stops(&self) -> bool {
        fault::stops(&self.faults)
    }

    /// What the arithmetic looks things up in.
    pub fn book(&self) -> Book<'_> {
        Book { content: &self.content, pantry: &self.pantry }
    }

    /// The sheet of a recipe, scaled.
    ///
    /// # Errors
    /// The reason, where it cannot be scaled so.
    pub fn sheet(
        &self,
        recipe: &Recipe,
        scaling: &Scaling,
        words: &Words,
    ) -> Result<Sheet, Unscalable> {
        let work = work(recipe, scaling, self.book())?;
        Ok(build::recipe(&work, &self.fault_names(recipe), self.context(words)))
    }

    /// The sheets of the recipes that stand on a recipe's own: what it includes, through any
    /// depth, each at the size that is taken of it, before what it goes into. None where
    /// its author wants them named only, or the recipe cannot be scaled so.
    pub fn included(
        &self,
        recipe: &Recipe,
        scaling: &Scaling,
        words: &Words,
    ) -> Vec<Sheet> {
        let alone = formula::included(recipe).next().is_none();
        if alone || recipe.included == Included::ByName {
            return Vec::new();
        }
        let Ok(work) = work(recipe, scaling, self.book()) else { return Vec::new() };
        let sheet = |work: &Work| {
            let names = self.fault_names(work.recipe);
            build::recipe(work, &names, self.context(words))
        };
        included(&work, self.book()).iter().map(sheet).collect()
    }

    /// The sheets of a recipe at every batch size that its page offers.
    ///
    /// # Errors
    /// As [`Edition::sheet`].
    pub fn sheets(
        &self,
        recipe: &Recipe,
        words: &Words,
    ) -> Result<RecipeSheets, Unscalable> {
        let mut batches = Vec::new();
        for (key, (over, under)) in BATCHES {
            let sheet =
                self.sheet(recipe, &Scaling::Batches(exact(over, under)), words)?;
            let title = sheet.scale.batch.clone();
            batches.push(Batch { key: key.to_owned(), title, sheet });
        }
        let base = batches[1].sheet.clone();
        for size in &recipe.also_for {
            let Ok(sheet) = self.sheet(recipe, &Scaling::Pieces(size.value), words)
            else {
                continue;
            };
            let same = |known: &Batch| known.sheet.scale.factor == sheet.scale.factor;
            if !batches.iter().any(same) {
                let (key, title) =
                    (format!("n{}", size.value), sheet.scale.makes.metric.clone());
                batches.push(Batch { key, title, sheet });
            }
        }
        batches.sort_by(|one, other| {
            one.sheet.scale.factor.total_cmp(&other.sheet.scale.factor)
        });
        Ok(RecipeSheets { base, batches })
    }

    /// The course's sheet; `None` where there is no course.
    pub fn course(&self, words: &Words) -> Option<CourseSheet> {
        let course = self.content.course.as_ref()?;
        Some(build::course(course, &self.content, words))
    }

    /// The techniques' sheets.
    pub fn techniques(&self, words: &Words) -> Vec<TechniqueSheet> {
        let context = self.context(words);
        self.content.techniques.iter().map(|t| build::technique(t, context)).collect()
    }

    /// The sheet of a class with its plan, in the course's first units.
    ///
    /// # Errors
    /// The reason, where sessions, recipes or steps are not clear.
    pub fn class(
        &self,
        class: &Class,
        effort: Effort,
        words: &Words,
    ) -> Result<ClassSheet, Unclear> {
        let plan = planned(class, self.book(), effort)?;
        Ok(build::class(class, &plan, self.context(words), self.first_units()))
    }

    /// The course's first units; metric where there is no course.
    pub fn first_units(&self) -> Units {
        let course = self.content.course.as_ref();
        let us = course.is_some_and(|course| !course.metric_first);
        if us { Units::Us } else { Units::Metric }
    }

    fn context<'a>(&'a self, words: &'a Words) -> Context<'a> {
        Context { book: self.book(), words }
    }

    /// The names of the faults in a recipe's text, each once, in order.
    pub fn fault_names(&self, recipe: &Recipe) -> Vec<&'static str> {
        let own =
            self.faults.iter().filter(|fault| fault.place.file == recipe.place.file);
        let mut names: Vec<&'static str> = own.map(|fault| fault.name).collect();
        names.sort_unstable();
        names.dedup();
        names
    }
}

/// What could not be loaded is there all the same: nothing else says that it is missing.
fn heed(found: &[Fault], content: &mut Content, faults: &mut Vec<Fault>) {
    for file in found.iter().filter(|fault| fault.severity == Severity::Error) {
        let path = &*file.place.file;
        let name = path.rsplit('/').next().unwrap_or(path);
        let stem = name.split_once('.').map_or(name, |(stem, _)| stem);
        content.unread.extend([name.to_owned(), stem.to_owned()]);
        faults.retain(|fault| fault.name != "missing-file" || *fault.place.file != *path);
    }
}

/// Where the course's pantry, or a line of it, could not be read, nobody is told what is not
/// in it.
fn without_pantry(faults: &mut Vec<Fault>) {
    let of_pantry = |fault: &&Fault| {
        fault.severity == Severity::Error && &*fault.place.file == "pantry.yaml"
    };
    let whole = ["bad-yaml", "unreadable-file"];
    let unread: Vec<&str> = faults.iter().filter(of_pantry).map(|it| it.name).collect();
    let rests_on_it: &[&str] = if unread.iter().any(|name| whole.contains(name)) {
        &["allergens-unknown", "no-density", "no-unit", "unknown-ingredient"]
    } else if unread.is_empty() {
        &[]
    } else {
        &["allergens-unknown", "no-density", "no-unit"]
    };
    faults.retain(|fault| {
        &*fault.place.file == "pantry.yaml" || !rests_on_it.contains(&fault.name)
    });
}

/// One batch of a recipe as written.
fn as_written<'a>(recipe: &'a Recipe, book: Book<'a>) -> Option<Work<'a>> {
    work(recipe, &Scaling::Batches(exact(1, 1)), book).ok()
}
