//! The stages in order, from texts to sheets: the whole program on one screen.

mod sizes;
mod ways;

pub(crate) use sizes::batch_key;

use std::collections::BTreeSet;

use rayon::prelude::*;

use crate::check::{self, Case};
use crate::fault::{self, Fault, FileName, Severity, Texts};
use crate::formula::{Book, Scaling, Unoffered, Unscalable, cycles, in_ways};
use crate::measure::exact;
use crate::media::Medium;
use crate::model::{self, Class, Content, Included, Recipe, Translation};
use crate::pantry::Pantry;
use crate::plan::{Effort, Unclear, planned};
use crate::read::{self, Source};
use crate::said;
use crate::sheet::making::{self, Context};
use crate::sheet::{
    BatchSheet, ClassSheet, CourseSheet, RecipeSheets, Sheet, TechniqueSheet, Units,
};
use crate::theme::Theme;
use crate::translation;
use crate::words::Words;
use crate::work::{Work, included, work};

/// An edition in a further language.
#[derive(Debug)]
pub struct Further {
    /// The edition: the same numbers, the prose of the language.
    pub edition: Edition,
    /// The words of the language, with the author's short texts.
    pub words: Words,
}

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
        mark_unread(&found, &mut content, &mut faults);
        // What a line that cannot be read would have said is not known: a caution that it is
        // missing would only follow from that.
        let unread: BTreeSet<FileName> = faults
            .iter()
            .filter(|fault| fault.severity == Severity::Error)
            .map(|fault| fault.place.file.clone())
            .collect();
        let broken_translation = faults.iter().chain(&found).any(|fault| {
            fault.severity == Severity::Error && fault.place.file.starts_with("in/")
        });
        let sure = |fault: &Fault| {
            fault.severity == Severity::Error || !unread.contains(&fault.place.file)
        };
        let (pantry, pantry_faults) = Pantry::of(&content);
        faults.extend(found.into_iter().chain(pantry_faults));
        let rings = cycles(&content);
        if rings.is_empty() {
            faults.extend(ways::take(&mut content, &pantry).into_iter().filter(sure));
        }
        // Nor is what a class needs, where a recipe cannot be read.
        let recipe_unread = unread.iter().any(|file| file.starts_with("recipes/"));
        let known = |fault: &Fault| {
            fault.severity == Severity::Error
                || !(recipe_unread && fault.place.file.starts_with("classes/"))
        };
        faults.extend(check::content(&content).into_iter().filter(known));
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
                .filter(|recipe| recipe.way.is_none())
                .filter_map(|recipe| as_written(recipe, book))
                .map(|work| {
                    let mut found = check::recipe(Case { work: &work, book });
                    found.extend(ways::judged(work.recipe, book, &found));
                    found
                })
                .collect();
            faults.extend(found.into_iter().flatten().filter(sure));
        }
        faults.extend(rings);
        // What a translation lacks is not known where a file of it cannot be read.
        let whole = !broken_translation;
        let gap = |fault: &Fault| whole || fault.severity == Severity::Error;
        faults.extend(translation::gaps(&content).into_iter().filter(sure).filter(gap));
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

    /// The same edition in the further languages that the course names, with their words.
    ///
    /// # Errors
    /// The first fault in the theme's words.
    pub fn further(&self, theme: &Theme) -> Result<Vec<Further>, Fault> {
        let course = self.content.course.iter();
        let named = course.flat_map(|course| &course.also_in);
        named.map(|it| self.in_language(&it.language.value, theme)).collect()
    }

    /// The same edition in a language that the course names.
    fn in_language(&self, language: &str, theme: &Theme) -> Result<Further, Fault> {
        let mut all = self.content.translations.iter();
        let none =
            || Translation { language: language.to_owned(), ..Translation::default() };
        let found = all.find(|it| it.language == language).cloned();
        let translation = found.unwrap_or_else(none);
        let mut words = read::words_in(theme, language)?;
        words.phrases = Some(translation::phrases(&translation));
        let content = translation::in_language(&self.content, &translation);
        let (pantry, _) = Pantry::of(&content);
        let (texts, faults) = (self.texts.clone(), self.faults.clone());
        let edition = Self { content, texts, pantry, faults, past: None };
        Ok(Further { edition, words })
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
        Ok(self.sheet_of(&work(recipe, scaling, self.book())?, words))
    }

    /// The sheet of a recipe that is worked out.
    pub fn sheet_of(&self, work: &Work, words: &Words) -> Sheet {
        making::recipe(work, &self.fault_names(work.recipe), self.context(words))
    }

    /// Takes up a recipe in some of its ways, and says under which name it is had from then on.
    ///
    /// # Errors
    /// The reason, where it is not offered so.
    pub fn in_ways(&mut self, recipe: &str, names: &[&str]) -> Result<String, Unoffered> {
        let Some(written) = self.content.recipe(recipe).filter(|_| !names.is_empty())
        else {
            return Ok(recipe.to_owned());
        };
        let made = in_ways(written, names, self.book())?;
        let name = made.name.clone();
        if self.content.recipe(&name).is_none_or(|known| known.way != made.way) {
            self.content.ways.push(made);
        }
        Ok(name)
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
        let alone = model::included(recipe).next().is_none();
        if alone || recipe.included == Included::ByName {
            return Vec::new();
        }
        let Ok(work) = work(recipe, scaling, self.book()) else { return Vec::new() };
        let included = included(&work, self.book());
        included.iter().map(|work| self.sheet_of(work, words)).collect()
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
        let written = Scaling::Batches(exact(1, 1));
        let base = self.sheet(recipe, &written, words)?;
        let mut batches = Vec::new();
        for size in sizes::sizes(recipe) {
            let sheet = if size.scaling == written {
                Ok(base.clone())
            } else {
                self.sheet(recipe, &size.scaling, words)
            };
            let sheet = match sheet {
                Ok(sheet) => sheet,
                Err(_) if size.by_pieces => continue,
                Err(why) => return Err(why),
            };
            let scale = &sheet.scale;
            let title = if size.by_pieces { &scale.makes.metric } else { &scale.batch };
            batches.push(BatchSheet { key: size.key, title: title.clone(), sheet });
        }
        Ok(RecipeSheets { base, batches })
    }

    /// The course's sheet; `None` where there is no course.
    pub fn course(&self, words: &Words) -> Option<CourseSheet> {
        let course = self.content.course.as_ref()?;
        Some(making::course(course, &self.content, words))
    }

    /// The techniques' sheets.
    pub fn techniques(&self, words: &Words) -> Vec<TechniqueSheet> {
        let context = self.context(words);
        self.content.techniques.iter().map(|t| making::technique(t, context)).collect()
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
        Ok(making::class(class, &plan, self.context(words), self.first_units()))
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
fn mark_unread(found: &[Fault], content: &mut Content, faults: &mut Vec<Fault>) {
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
