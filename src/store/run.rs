//! Where an edition is made: recipes are opened one by one as hands become free, and each
//! one's files are made before the next is opened, so that a large course takes no more
//! memory than its largest recipes.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::BufReader;
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};

use crate::model::Recipe;
use crate::paper::spread;
use crate::product::{Card, EditionFiles, Legible, Make, Product, Products};
use crate::site::Lacking;

use super::manifest::{Bytes, Known, Made, Manifest};
use super::publish::{PublishError, Unplaced};
use super::stage::Stages;
use super::stream::Stream;
use super::survey::Survey;
use super::{Doing, doing, halt};

/// What is still to be done.
#[derive(Default)]
struct Queue<'w> {
    /// Files to be made, the first ones last.
    files: Vec<Product<'w>>,
    /// Recipes to be opened, the first ones last.
    recipes: Vec<(&'w Products<'w>, &'w Recipe)>,
    /// How many recipes are being opened: more files may come from them.
    opening: usize,
}

/// What was done.
#[derive(Default)]
struct Done {
    /// Every file of the edition; what came of it, once that is known.
    files: BTreeMap<String, Made>,
    /// Those of the paths that have large letters, as a system may see them that makes no
    /// difference between large and small ones.
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
pub(super) struct Run<'w> {
    /// What is made of each language's edition.
    products: &'w [Products<'w>],
    survey: &'w Survey,
    /// Where files are put; without it nothing is made.
    stage: Option<&'w Stages>,
    step: &'w (dyn Fn(usize, usize) + Sync),
    queue: Mutex<Queue<'w>>,
    wake: Condvar,
    done: Mutex<Done>,
}

impl<'w> Run<'w> {
    pub(super) fn new(
        products: &'w [Products<'w>],
        survey: &'w Survey,
        stage: Option<&'w Stages>,
        step: &'w (dyn Fn(usize, usize) + Sync),
    ) -> Self {
        let (queue, done) = (Mutex::default(), Mutex::default());
        Self { products, survey, stage, step, queue, wake: Condvar::new(), done }
    }

    /// Makes every file that is out of date. False as soon as one is and there is no
    /// stage to put it on.
    pub(super) fn make(&self) -> Result<bool, PublishError> {
        let mut unknown = Vec::new();
        for (products, recipe) in self.recipes() {
            let name = products.name(recipe);
            match self.survey.known(&name, products.key(recipe)) {
                Some(known) => self.recall(&name, known)?,
                None => unknown.push((products, recipe)),
            }
        }
        unknown.reverse();
        self.done().ahead = unknown.iter().map(|(products, _)| products.least()).sum();
        self.queue().recipes = unknown;
        if self.is_stuck() {
            return Ok(false);
        }
        for products in self.products {
            let mut first = products.classes();
            first.extend(products.course_pages()?);
            self.take(first)?;
        }
        self.work()?;
        let cards: Vec<Vec<Card>> =
            self.products.iter().map(|products| self.cards(products)).collect();
        for (products, cards) in self.products.iter().zip(&cards) {
            self.take(products.listing_pages(cards)?)?;
        }
        self.work()?;
        for products in self.derived(&cards) {
            self.take(products)?;
        }
        drop(cards);
        self.work()?;
        Ok(!self.is_stuck())
    }

    /// Every recipe of every language's edition.
    fn recipes(&self) -> impl Iterator<Item = (&'w Products<'w>, &'w Recipe)> {
        self.products.iter().flat_map(|products| {
            products.inputs().recipes().iter().map(move |recipe| (products, recipe))
        })
    }

    /// The files that are made from others, of each language's edition.
    fn derived(&self, cards: &[Vec<Card>]) -> Vec<Vec<Product<'w>>> {
        let files = std::mem::take(&mut self.done().files);
        let keys = files.iter().map(|(path, made)| (&**path, &*made.key)).collect();
        let all = self.products.iter().zip(cards);
        let derived = all.map(|(products, cards)| products.derived_files(cards, &keys));
        let derived = derived.collect();
        self.done().files = files;
        derived
    }

    /// What was made from what, read from what has the fingerprint `from`; and the files
    /// that were out of date.
    pub(super) fn end(self, from: &str) -> (Manifest, Vec<String>) {
        let done = self.done.into_inner().unwrap_or_else(PoisonError::into_inner);
        let manifest = Manifest {
            arithmetic: crate::formula::EDITION,
            from: from.to_owned(),
            recipes: done.recipes,
            made: done.files,
        };
        (manifest, done.made)
    }

    /// The cards of all recipes of an edition, in order.
    fn cards(&self, products: &Products) -> Vec<Card> {
        let done = self.done();
        let recipes = products.inputs().recipes().iter();
        let known = recipes.filter_map(|recipe| done.recipes.get(&products.name(recipe)));
        known.map(|known| known.card.clone()).collect()
    }

    /// Takes a recipe's files as they stand.
    fn recall(&self, recipe: &str, known: &Known) -> Result<(), PublishError> {
        let mut done = self.done();
        for path in &known.files {
            let made = self.survey.old.made.get(path);
            done.place(path, made.cloned().unwrap_or_default())?;
        }
        done.recipes.insert(recipe.to_owned(), known.clone());
        Ok(())
    }

    /// Takes files; those that are out of date will be made.
    fn take(&self, products: Vec<Product<'w>>) -> Result<(), PublishError> {
        let mut done = self.done();
        let mut due = Vec::new();
        for product in products {
            if let Some(made) = self.survey.standing(&product.path, &product.key) {
                done.place(&product.path, made.clone())?;
            } else {
                done.place(&product.path, Made::due(&product.key))?;
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
        spread(cores, cores, &|_| self.worker());
        self.done().failed.take().map_or(Ok(()), Err)
    }

    /// One worker: files first, so that the recipes they belong to can be put away.
    fn worker(&self) {
        let mut queue = self.queue();
        while self.done().failed.is_none() {
            if halt::is_asked() {
                self.fail(Err(PublishError::Stopped));
                return;
            }
            if let Some(product) = queue.files.pop() {
                drop(queue);
                self.fail(self.file(&product));
            } else if let Some((products, recipe)) = queue.recipes.pop() {
                queue.opening += 1;
                drop(queue);
                let _opening = Opening(self);
                self.fail(self.open(products, recipe));
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
    fn open(
        &self,
        products: &'w Products<'w>,
        recipe: &'w Recipe,
    ) -> Result<(), PublishError> {
        let Some(worked) = products.inputs().worked(recipe) else { return Ok(()) };
        let worked = std::sync::Arc::new(worked);
        let mut files = products.recipe_page(&worked)?;
        files.extend(products.handouts(&worked));
        let known = Known {
            key: products.key(recipe).to_owned(),
            card: worked.card.clone(),
            files: files.iter().map(|file| file.path.clone()).collect(),
        };
        let mut done = self.done();
        done.recipes.insert(products.name(recipe), known);
        done.ahead -= products.least();
        drop(done);
        self.take(files)
    }

    /// Makes one file. Where another one that the program did not make stands in its place,
    /// that one stays.
    fn file(&self, product: &Product) -> Result<(), PublishError> {
        let path = &product.path;
        let Some(stage) = self.stage else { return Ok(()) };
        let bytes = self.written(product, stage)?;
        if !self.survey.old.made.contains_key(path) && stage.differs(path) {
            return Err(PublishError::Make(path.clone(), Unplaced::NotOurs));
        }
        let mut done = self.done();
        if let Some(made) = done.files.get_mut(path) {
            made.bytes = Some(bytes);
        }
        done.made.push(path.clone());
        (self.step)(done.made.len(), done.due + done.ahead);
        Ok(())
    }

    /// Makes a file and writes it to the stage.
    fn written(&self, product: &Product, stage: &Stages) -> Result<Bytes, PublishError> {
        let path = &product.path;
        let unmade = |why| PublishError::Make(path.clone(), Unplaced::Unmade(why));
        match &product.make {
            Make::Ready(bytes) => {
                stage.write(path, bytes)?;
                Ok(Bytes::of(bytes))
            }
            Make::Whole(make) => {
                let bytes = match stage.made_by_others(product) {
                    Some(bytes) => bytes,
                    None => stage.given(product, make(self).map_err(unmade)?),
                };
                stage.write(path, &bytes)?;
                Ok(Bytes::of(&bytes))
            }
            Make::ByParts(make) => {
                let to = stage.room(path)?;
                let mut stream = doing(Stream::create(&to), Doing::Write, &to)?;
                let made = make(self, &mut stream);
                // Where the machine refused, that is why it was not made.
                doing(stream.end(), Doing::Write, &to)?;
                made.map_err(unmade)?;
                Ok(doing(Bytes::at(&to), Doing::Read, &to)?)
            }
        }
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
struct Opening<'f, 'w>(&'f Run<'w>);

impl Drop for Opening<'_, '_> {
    fn drop(&mut self) {
        self.0.queue().opening -= 1;
        self.0.wake.notify_all();
    }
}

impl Done {
    /// Gives a file its place, which is its own, also where names differ in case only, and
    /// does not lead out of the folder.
    fn place(&mut self, path: &str, made: Made) -> Result<(), PublishError> {
        let inside = path.split('/').all(|part| !["", ".", ".."].contains(&part));
        let inside = inside && !path.contains('\\');
        if !inside || self.is_taken(path) {
            return Err(PublishError::Make(path.to_owned(), Unplaced::NoPlace));
        }
        let small = path.to_lowercase();
        if small != path {
            self.places.insert(small);
        }
        self.files.insert(path.to_owned(), made);
        Ok(())
    }

    /// Whether another file has this place, be it in other letters.
    fn is_taken(&self, path: &str) -> bool {
        let small = path.to_lowercase();
        self.files.contains_key(&small) || self.places.contains(&small)
    }
}

impl EditionFiles for Run<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking> {
        let found = self.stage.and_then(|stage| {
            let stands = || fs::read(stage.old(path)).ok().filter(|_| self.stands(path));
            stage.staged(path).or_else(stands)
        });
        found.ok_or_else(|| Lacking::NotYet(path.to_owned()))
    }

    fn before(&self, path: &str) -> Option<Box<dyn Legible>> {
        let stage = self.stage.filter(|_| self.survey.is_whole(path))?;
        let file = fs::File::open(stage.old(path)).ok()?;
        Some(Box::new(BufReader::new(file)))
    }

    fn stands(&self, path: &str) -> bool {
        let done = self.done();
        let key = done.files.get(path).map(|made| &made.key);
        key.is_some_and(|key| self.survey.standing(path, key).is_some())
    }
}
