//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::path::Path;
use std::sync::OnceLock;
use std::sync::atomic::{AtomicUsize, Ordering};

use crate::paper::spread;
use crate::product::Product;

use super::StoreError;
use super::manifest::{self, Manifest};
use super::stage::{Stage, files};

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

/// Publishes `products` to `output`. `step` is told after each file made. Files in the
/// folder that the program did not make are taken over untouched.
///
/// # Errors
/// Where the machine refuses or a file cannot be made; the old edition stands then.
pub fn publish(
    output: &Path,
    products: &[Product],
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, PublishError> {
    let old = std::fs::read_to_string(output.join(manifest::NAME)).unwrap_or_default();
    let old = Manifest::parse(&old);
    let there: BTreeSet<String> = files(output).into_iter().collect();
    let current = |product: &&Product| {
        old.made.get(&product.path) == Some(&product.key) && there.contains(&product.path)
    };
    let (kept, out_of_date): (Vec<&Product>, Vec<&Product>) =
        products.iter().partition(current);
    let new = Manifest {
        made: products.iter().map(|p| (p.path.clone(), p.key.clone())).collect(),
    };
    let removed: Vec<String> =
        old.made.keys().filter(|path| !new.made.contains_key(*path)).cloned().collect();
    let outcome = Outcome {
        made: out_of_date.iter().map(|product| product.path.clone()).collect(),
        kept: kept.len(),
        removed,
    };
    if outcome.made.is_empty() && outcome.removed.is_empty() {
        return Ok(outcome);
    }
    let stage = Stage::open(output)?;
    let foreign = there.iter().filter(|path| {
        !old.made.contains_key(*path)
            && !new.made.contains_key(*path)
            && path.as_str() != manifest::NAME
    });
    for path in foreign.chain(kept.iter().map(|product| &product.path)) {
        stage.keep(path)?;
    }
    make_all(&out_of_date, &stage, step)?;
    stage.write(manifest::NAME, new.text().as_bytes())?;
    stage.swap()?;
    Ok(outcome)
}

/// Makes files on every core. After the first that cannot be made no other is begun.
fn make_all(
    products: &[&Product],
    stage: &Stage,
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<(), PublishError> {
    let cores = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
    let done = AtomicUsize::new(0);
    let failed = OnceLock::new();
    spread(products.len(), cores, &|at| {
        if failed.get().is_some() {
            return;
        }
        if let Err(error) = make(products[at], stage) {
            let _ = failed.set(error);
        }
        step(1 + done.fetch_add(1, Ordering::Relaxed), products.len());
    });
    failed.into_inner().map_or(Ok(()), Err)
}

fn make(product: &Product, stage: &Stage) -> Result<(), PublishError> {
    let bytes = (product.make)()
        .map_err(|reason| PublishError::Make(product.path.clone(), reason))?;
    Ok(stage.write(&product.path, &bytes)?)
}
