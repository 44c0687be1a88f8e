//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicUsize, Ordering};

use crate::paper::spread;
use crate::product::Product;

use super::lock::Lock;
use super::manifest::{self, Manifest};
use super::stage::{Stage, beside, files, recover};
use super::write::save;
use super::{StoreError, doing};

/// Why a file is not made in the place of another.
const NOT_OURS: &str = "the output folder has something there that was not published \
                        before: move it away, or publish to another folder";

/// What publishing did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// Files made.
    pub made: Vec<String>,
    /// Files that were up to date.
    pub kept: usize,
    /// Files taken away.
    pub removed: Vec<String>,
}

/// Why publishing stopped.
#[derive(Debug)]
pub enum PublishError {
    /// The machine refused.
    Store(StoreError),
    /// A file could not be made: its path and the reason.
    Make(String, String),
}

impl From<StoreError> for PublishError {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
}

/// Whether the content or the theme lies in the output folder, or the output folder in one
/// of them: then each publish would take its own pages for content.
///
/// # Errors
/// Where they are not apart.
pub fn apart(output: &Path, others: &[&Path]) -> Result<(), StoreError> {
    let output = resolved(output)?;
    for other in others {
        let Ok(other) = other.canonicalize() else { continue };
        if output.starts_with(&other) || other.starts_with(&output) {
            let why = "the content and the theme lie in it, or it in them; take another";
            return Err(StoreError::refused(&output, "publish to", why));
        }
    }
    Ok(())
}

/// The output folder's own place, links followed, with the folders above it made.
fn resolved(output: &Path) -> Result<PathBuf, StoreError> {
    let whole = match (output.exists(), output.file_name()) {
        (false, Some(name)) => {
            let folder = output.parent().filter(|folder| folder.as_os_str() != "");
            let folder = folder.unwrap_or(Path::new("."));
            doing(std::fs::create_dir_all(folder), "make", folder)?;
            doing(folder.canonicalize(), "open", folder)?.join(name)
        }
        _ => doing(output.canonicalize(), "open", output)?,
    };
    if whole.file_name().is_none() || whole.is_file() {
        return Err(StoreError::refused(output, "publish to", "it is no folder for it"));
    }
    Ok(whole)
}

/// How many files there are of the edition in `output`, where it is whole and was made
/// from what has this fingerprint.
///
/// # Errors
/// Where the machine does not say.
pub fn stands(output: &Path, from: &str) -> Result<Option<usize>, StoreError> {
    let old = Manifest::read(output);
    if from.is_empty() || old.from != from || !is_settled(output) {
        return Ok(None);
    }
    let found = files(output)?;
    let there = |path: &String| {
        let at = found.binary_search_by(|one| one.path.as_str().cmp(path));
        at.is_ok_and(|at| found[at].plain)
    };
    Ok(old.made.keys().all(there).then_some(old.made.len()))
}

/// Publishes `products`, read from what has the fingerprint `from`, to `output`. `step` is told after each file made. Files in the
/// folder that the program did not make are taken over untouched.
///
/// # Errors
/// Where the machine refuses or a file cannot be made, or another publish is under way;
/// the old edition stands then.
pub fn publish(
    output: &Path,
    (products, from): (&[Product], &str),
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, PublishError> {
    let output = &resolved(output)?;
    let task = Task::new(output, (products, from))?;
    if task.is_idle() && task.old.from == from && is_settled(output) {
        return Ok(task.outcome());
    }
    let _lock = Lock::take(output)?;
    recover(output)?;
    // Another publish may have ended in between.
    let task = Task::new(output, (products, from))?;
    if !task.is_idle() {
        let stage = Stage::open(output)?;
        task.carry_out(&stage, step)?;
        stage.swap()?;
    } else if task.old.from != from {
        save(&output.join(manifest::NAME), task.new.text().as_bytes())?;
    }
    Ok(task.outcome())
}

/// Whether nothing of ours lies beside the output folder: no publish is under way, and none
/// was cut short.
fn is_settled(output: &Path) -> bool {
    ["next", "old", "lock"].iter().all(|what| !beside(output, what).exists())
}

/// What is to be done.
struct Task<'p> {
    /// What the program made last time.
    old: Manifest,
    /// What it will have made.
    new: Manifest,
    /// Products that are up to date.
    kept: Vec<&'p Product<'p>>,
    /// Products to be made.
    out_of_date: Vec<&'p Product<'p>>,
    /// Files of others, taken over.
    foreign: Vec<String>,
}

impl<'p> Task<'p> {
    fn new(
        output: &Path,
        (products, from): (&'p [Product<'p>], &str),
    ) -> Result<Self, PublishError> {
        apart_from_each_other(products)?;
        let old = Manifest::read(output);
        let found = files(output)?;
        let there: BTreeSet<&str> =
            found.iter().filter(|one| one.plain).map(|one| one.path.as_str()).collect();
        let (kept, out_of_date) = products.iter().partition(|product| {
            old.made.get(&product.path) == Some(&product.key)
                && there.contains(product.path.as_str())
        });
        let made = products.iter().map(|p| (p.path.clone(), p.key.clone())).collect();
        let new = Manifest { from: from.to_owned(), made };
        let ours = |path: &String| {
            old.made.contains_key(path)
                || new.made.contains_key(path)
                || path == manifest::NAME
        };
        let foreign: Vec<String> =
            found.into_iter().map(|one| one.path).filter(|path| !ours(path)).collect();
        in_the_way(&foreign, products)?;
        Ok(Self { old, new, kept, out_of_date, foreign })
    }

    fn removed(&self) -> Vec<String> {
        let gone = self.old.made.keys().filter(|path| !self.new.made.contains_key(*path));
        gone.cloned().collect()
    }

    fn is_idle(&self) -> bool {
        self.out_of_date.is_empty() && self.removed().is_empty()
    }

    fn outcome(&self) -> Outcome {
        Outcome {
            made: self.out_of_date.iter().map(|product| product.path.clone()).collect(),
            kept: self.kept.len(),
            removed: self.removed(),
        }
    }

    /// Puts the new edition together.
    fn carry_out(
        &self,
        stage: &Stage,
        step: &(dyn Fn(usize, usize) + Sync),
    ) -> Result<(), PublishError> {
        for path in &self.foreign {
            stage.keep(path)?;
        }
        for product in &self.kept {
            stage.keep(&product.path)?;
        }
        make_all(&self.out_of_date, &step, &|product| {
            let ours = self.old.made.contains_key(&product.path);
            make(product, stage, ours)
        })?;
        Ok(stage.write(manifest::NAME, self.new.text().as_bytes())?)
    }
}

/// Each product has a path of its own, also where names differ in case only, and none
/// leads out of the folder.
fn apart_from_each_other(products: &[Product]) -> Result<(), PublishError> {
    let mut seen = BTreeSet::new();
    for Product { path, .. } in products {
        let inside = path.split('/').all(|part| !["", ".", ".."].contains(&part));
        if !inside || path.contains('\\') || !seen.insert(path.to_lowercase()) {
            let why = "two files would be put in this place, or it is none";
            return Err(PublishError::Make(path.clone(), why.to_owned()));
        }
    }
    Ok(())
}

/// A file of others, or a link, that stands where a folder must be.
fn in_the_way(foreign: &[String], products: &[Product]) -> Result<(), PublishError> {
    let foreign: BTreeSet<&str> = foreign.iter().map(String::as_str).collect();
    let above = products.iter().flat_map(|product| {
        product.path.match_indices('/').map(|(at, _)| &product.path[..at])
    });
    match above.into_iter().find(|folder| foreign.contains(folder)) {
        Some(folder) => Err(PublishError::Make(folder.to_owned(), NOT_OURS.to_owned())),
        None => Ok(()),
    }
}

/// Makes files on every core. After the first that cannot be made no other is begun.
fn make_all(
    products: &[&Product],
    step: &(dyn Fn(usize, usize) + Sync),
    make: &(dyn Fn(&Product) -> Result<(), PublishError> + Sync),
) -> Result<(), PublishError> {
    let cores = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
    let done = AtomicUsize::new(0);
    let failed = OnceLock::new();
    spread(products.len(), cores, &|at| {
        if failed.get().is_some() {
            return;
        }
        if let Err(error) = make(products[at]) {
            let _ = failed.set(error);
        }
        step(1 + done.fetch_add(1, Ordering::Relaxed), products.len());
    });
    failed.into_inner().map_or(Ok(()), Err)
}

/// Makes one file. Where another one that the program did not make stands in its place,
/// that one stays.
fn make(product: &Product, stage: &Stage, ours: bool) -> Result<(), PublishError> {
    let bytes = (product.make)()
        .map_err(|reason| PublishError::Make(product.path.clone(), reason))?;
    let other = if ours { None } else { stage.old(&product.path) };
    if other.is_some_and(|other| other != bytes) {
        return Err(PublishError::Make(product.path.clone(), NOT_OURS.to_owned()));
    }
    Ok(stage.write(&product.path, &bytes)?)
}
