//! Where an edition is made: recipes are opened one by one as hands become free, and each
//! one's files are made before the next is opened, so that a large course takes no more
//! memory than its largest recipes.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};

use crate::model::Recipe;
use crate::paper::spread;
use crate::product::{Card, Product, Shelf, Workshop};
use crate::said;
use crate::statement::Statement;

use super::halt;
use super::manifest::{Known, Made, Manifest};
use super::publish::PublishError;
use super::stage::Stages;
use super::survey::Survey;

/// Why a file is not made in the place of another.
pub(super) const NOT_OURS: Statement = said!("place-not-ours");

/// What is still to be done.
#[derive(Default)]
struct Queue<'w> {
    /// Files to be made, the first ones last.
    files: Vec<Product<'w>>,
    /// Recipes to be opened, the first ones last.
    recipes: Vec<&'w Recipe>,
    /// How many recipes are being opened: more files may come from them.
    opening: usize,
}

/// What was done.
#[derive(Default)]
struct Done {
    /// Every file of the edition with its key.
    keys: BTreeMap<String, String>,
    /// What came of those that were made now.
    new: BTreeMap<String, Made>,
    /// The same paths as a system may see them that makes no difference between large and
    /// small letters.
    places: BTreeSet<String>,
    /// What is known of each recipe.
    recipes: BTreeMap<String, Known>,
    /// The files that were out of date.
    made: Vec<String>,
    /// How many files were found out of date so far.
    due: usize,
    /// How many may at least come from recipes that are not opened yet, so that whoever
    /// waits sees how far it is.
    ahead: usize,
    /// Why no more is made.
    failed: Option<PublishError>,
}

/// The making of one edition.
pub(super) struct Floor<'w> {
    workshop: &'w Workshop<'w>,
    survey: &'w Survey,
    /// Where files are put; without it nothing is made.
    stage: Option<&'w Stages>,
    step: &'w (dyn Fn(usize, usize) + Sync),
    queue: Mutex<Queue<'w>>,
    wake: Condvar,
    done: Mutex<Done>,
}

impl<'w> Floor<'w> {
    pub(super) fn new(
        workshop: &'w Workshop<'w>,
        survey: &'w Survey,
        stage: Option<&'w Stages>,
        step: &'w (dyn Fn(usize, usize) + Sync),
    ) -> Self {
        let (queue, done) = (Mutex::default(), Mutex::default());
        Self { workshop, survey, stage, step, queue, wake: Condvar::new(), done }
    }

    /// Makes every file that is out of date. False as soon as one is and there is no
    /// stage to put it on.
    pub(super) fn make(&self) -> Result<bool, PublishError> {
        let mut unknown = Vec::new();
        for recipe in self.workshop.stock().recipes() {
            match self.survey.known(&recipe.name, self.workshop.key(recipe)) {
                Some(known) => self.recall(&recipe.name, known)?,
                None => unknown.push(recipe),
            }
        }
        unknown.reverse();
        self.done().ahead =
            unknown.iter().map(|recipe| self.workshop.least(recipe)).sum();
        self.queue().recipes = unknown;
        if self.is_stuck() {
            return Ok(false);
        }
        let mut first = self.workshop.classes();
        first.extend(self.workshop.apart()?);
        self.take(first)?;
        self.work()?;
        let cards = self.cards();
        self.take(self.workshop.across(&cards)?)?;
        self.work()?;
        let keys = self.done().keys.clone();
        self.take(self.workshop.whole(&cards, &keys))?;
        self.work()?;
        Ok(!self.is_stuck())
    }

    /// What was made from what, read from what has the fingerprint `from`; and the files
    /// that were out of date.
    pub(super) fn end(self, from: &str) -> (Manifest, Vec<String>) {
        let mut done = self.done.into_inner().unwrap_or_else(PoisonError::into_inner);
        let old = &self.survey.old.made;
        let made = done.keys.into_keys().map(|path| {
            let made = done.new.remove(&path).or_else(|| old.get(&path).cloned());
            (path, made.unwrap_or_default())
        });
        let manifest = Manifest {
            arithmetic: crate::formula::EDITION,
            from: from.to_owned(),
            recipes: done.recipes,
            made: made.collect(),
        };
        (manifest, done.made)
    }

    /// The cards of all recipes, in order.
    fn cards(&self) -> Vec<Card> {
        let done = self.done();
        let recipes = self.workshop.stock().recipes().iter();
        let known = recipes.filter_map(|recipe| done.recipes.get(&recipe.name));
        known.map(|known| known.card.clone()).collect()
    }

    /// Takes a recipe's files as they stand.
    fn recall(&self, recipe: &str, known: &Known) -> Result<(), PublishError> {
        let mut done = self.done();
        for path in &known.files {
            let made = self.survey.old.made.get(path);
            done.place(path, made.map(|made| made.key.clone()).unwrap_or_default())?;
        }
        done.recipes.insert(recipe.to_owned(), known.clone());
        Ok(())
    }

    /// Takes files; those that are out of date will be made.
    fn take(&self, products: Vec<Product<'w>>) -> Result<(), PublishError> {
        let mut done = self.done();
        let mut due = Vec::new();
        for product in products {
            done.place(&product.path, product.key.clone())?;
            if !self.survey.has(&product.path, &product.key) {
                due.push(product);
            }
        }
        done.due += due.len();
        drop(done);
        due.reverse();
        self.queue().files.extend(due);
        Ok(())
    }

    /// Whether something is to be done that there is no stage for.
    fn is_stuck(&self) -> bool {
        let queue = self.queue();
        self.stage.is_none() && !(queue.files.is_empty() && queue.recipes.is_empty())
    }

    /// Does all that is to be done, on every core, where there is a stage for it. After the
    /// first thing that cannot be done no other is begun.
    fn work(&self) -> Result<(), PublishError> {
        if self.stage.is_none() {
            return Ok(());
        }
        let cores =
            std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
        spread(cores, cores, &|_| self.lend_a_hand());
        self.done().failed.take().map_or(Ok(()), Err)
    }

    /// One worker: files first, so that the recipes they belong to can be put away.
    fn lend_a_hand(&self) {
        let mut queue = self.queue();
        while self.done().failed.is_none() {
            if halt::is_asked() {
                self.fail(Err(PublishError::Stopped));
                return;
            }
            if let Some(product) = queue.files.pop() {
                drop(queue);
                self.fail(self.file(&product));
            } else if let Some(recipe) = queue.recipes.pop() {
                queue.opening += 1;
                drop(queue);
                let _opening = Opening(self);
                self.fail(self.open(recipe));
            } else if queue.opening > 0 {
                drop(self.wake.wait(queue));
            } else {
                return;
            }
            queue = self.queue();
        }
    }

    fn fail(&self, result: Result<(), PublishError>) {
        if let Err(error) = result {
            self.done().failed.get_or_insert(error);
        }
    }

    /// Works a recipe out and takes its files.
    fn open(&self, recipe: &'w Recipe) -> Result<(), PublishError> {
        let Some(worked) = self.workshop.stock().worked(recipe) else { return Ok(()) };
        let worked = std::sync::Arc::new(worked);
        let mut files = self.workshop.shown(&worked)?;
        files.extend(self.workshop.printed(&worked));
        let known = Known {
            key: self.workshop.key(recipe).to_owned(),
            card: worked.card.clone(),
            files: files.iter().map(|file| file.path.clone()).collect(),
        };
        let mut done = self.done();
        done.recipes.insert(recipe.name.clone(), known);
        done.ahead -= self.workshop.least(recipe);
        drop(done);
        self.take(files)
    }

    /// Makes one file. Where another one that the program did not make stands in its place,
    /// that one stays.
    fn file(&self, product: &Product) -> Result<(), PublishError> {
        let path = &product.path;
        let bytes = (product.make)(self)
            .map_err(|reason| PublishError::Make(path.clone(), reason))?;
        let ours = self.survey.old.made.contains_key(path);
        let Some(stage) = self.stage else { return Ok(()) };
        let other = if ours { None } else { stage.old(path) };
        if other.is_some_and(|other| other != bytes) {
            return Err(PublishError::Make(path.clone(), NOT_OURS));
        }
        stage.write(path, &bytes)?;
        let made = Made::new(product.key.clone(), &bytes);
        let mut done = self.done();
        done.new.insert(path.clone(), made);
        done.made.push(path.clone());
        (self.step)(done.made.len(), done.due + done.ahead);
        Ok(())
    }

    fn queue(&self) -> MutexGuard<'_, Queue<'w>> {
        self.queue.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn done(&self) -> MutexGuard<'_, Done> {
        self.done.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// A recipe being opened, until it is dropped: also where that breaks, so that no worker
/// waits for it.
struct Opening<'f, 'w>(&'f Floor<'w>);

impl Drop for Opening<'_, '_> {
    fn drop(&mut self) {
        self.0.queue().opening -= 1;
        self.0.wake.notify_all();
    }
}

impl Done {
    /// Gives a file its place, which is its own, also where names differ in case only, and
    /// does not lead out of the folder.
    fn place(&mut self, path: &str, key: String) -> Result<(), PublishError> {
        let inside = path.split('/').all(|part| !["", ".", ".."].contains(&part));
        let inside = inside && !path.contains('\\');
        if !inside || !self.places.insert(path.to_lowercase()) {
            let why = said!("place-twice");
            return Err(PublishError::Make(path.to_owned(), why));
        }
        self.keys.insert(path.to_owned(), key);
        Ok(())
    }
}

impl Shelf for Floor<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Statement> {
        let found = self.stage.and_then(|stage| {
            let stands = || self.stands(path).then(|| stage.old(path)).flatten();
            stage.staged(path).or_else(stands)
        });
        found.ok_or_else(|| said!("file-needed", path))
    }

    fn before(&self, path: &str) -> Option<Vec<u8>> {
        let whole = self.survey.is_whole(path);
        self.stage.filter(|_| whole)?.old(path)
    }

    fn stands(&self, path: &str) -> bool {
        let key = self.done().keys.get(path).cloned();
        key.is_some_and(|key| self.survey.has(path, &key))
    }
}
