//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use sha2::{Digest, Sha256};

use super::StoreError;
use super::manifest::{self, Manifest};
use super::stage::{Stage, files};

/// How a file is made when it is out of date; the reason where it cannot be.
pub type Make<'a> = Box<dyn Fn() -> Result<Vec<u8>, String> + Send + Sync + 'a>;

/// One file to publish.
pub struct Product<'a> {
    /// Its path below the output folder, with forward slashes.
    pub path: String,
    /// Everything it is made from; the same key means the same bytes.
    pub key: String,
    /// Makes its bytes.
    pub make: Make<'a>,
}

impl<'a> Product<'a> {
    /// A file that is made from `inputs`.
    pub fn new(path: impl Into<String>, inputs: &[&[u8]], make: Make<'a>) -> Self {
        let mut hash = Sha256::new();
        for input in inputs {
            hash.update((input.len() as u64).to_le_bytes());
            hash.update(input);
        }
        let key = hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect();
        Self { path: path.into(), key, make }
    }

    /// A file whose bytes are there already.
    pub fn ready(path: impl Into<String>, bytes: Vec<u8>) -> Self {
        let hashed = bytes.clone();
        Self::new(path, &[&hashed], Box::new(move || Ok(bytes.clone())))
    }
}

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

/// Makes files on every core. Each worker has a small pool of its own: typesetting waits
/// in the pool it was started from, and in a shared one would begin other documents while
/// it waits.
fn make_all(
    products: &[&Product],
    stage: &Stage,
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<(), PublishError> {
    let cores = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
    let next = AtomicUsize::new(0);
    let done = AtomicUsize::new(0);
    let failed = Mutex::new(None);
    let work = || {
        while let Some(product) = products.get(next.fetch_add(1, Ordering::Relaxed)) {
            let made = (product.make)()
                .map_err(|reason| PublishError::Make(product.path.clone(), reason))
                .and_then(|bytes| Ok(stage.write(&product.path, &bytes)?));
            if let Err(error) = made {
                next.store(products.len(), Ordering::Relaxed);
                failed
                    .lock()
                    .unwrap_or_else(std::sync::PoisonError::into_inner)
                    .get_or_insert(error);
            }
            step(1 + done.fetch_add(1, Ordering::Relaxed), products.len());
        }
    };
    std::thread::scope(|scope| {
        for _ in 0..cores.min(products.len().max(1)) {
            scope.spawn(|| {
                match rayon::ThreadPoolBuilder::new().num_threads(1).build() {
                    Ok(pool) => pool.install(work),
                    Err(_) => work(),
                }
            });
        }
    });
    let failed = failed.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
    failed.map_or(Ok(()), Err)
}
