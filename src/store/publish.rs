//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use crate::product::Workshop;
use crate::site::TemplateFault;

use super::floor::{Floor, NOT_OURS};
use super::lock::Lock;
use super::manifest::{self, Known, Manifest};
use super::stage::{Stage, Tree, beside, recover};
use super::write::save;
use super::{StoreError, doing};

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
    /// A page template cannot be filled in.
    Template(TemplateFault),
}

impl From<TemplateFault> for PublishError {
    fn from(fault: TemplateFault) -> Self {
        Self::Template(fault)
    }
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
    let tree = Tree::below(output)?;
    Ok(old.made.keys().all(|path| tree.has(path)).then_some(old.made.len()))
}

/// Publishes what `workshop` makes, read from what has the fingerprint `from`, to `output`.
/// `step` is told after each file made. Files in the folder that the program did not make
/// are taken over untouched.
///
/// # Errors
/// Where the machine refuses or a file cannot be made, or another publish is under way;
/// the old edition stands then.
pub fn publish(
    output: &Path,
    (workshop, from): (&Workshop, &str),
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, PublishError> {
    let output = &resolved(output)?;
    let survey = Survey::new(output)?;
    if survey.old.from == from && is_settled(output) {
        let floor = Floor::new(workshop, &survey, None, step);
        if floor.make()? && floor.end(from).0 == survey.old {
            let kept = survey.old.made.len();
            return Ok(Outcome { kept, ..Outcome::default() });
        }
    }
    let _lock = Lock::take(output)?;
    let cleared = recover(output)?;
    // Another publish may have ended in between.
    let same = !cleared && Manifest::read(output) == survey.old;
    let survey = if same { survey } else { Survey::new(output)? };
    let stage = Stage::open(output)?;
    let floor = Floor::new(workshop, &survey, Some(&stage), step);
    floor.make()?;
    let (new, mut made) = floor.end(from);
    made.sort_unstable();
    let removed: Vec<String> = survey
        .old
        .made
        .keys()
        .filter(|path| !new.made.contains_key(*path))
        .cloned()
        .collect();
    let outcome = Outcome { kept: new.made.len() - made.len(), made, removed };
    if !outcome.made.is_empty() || !outcome.removed.is_empty() {
        survey.keep(&new, &outcome.made, &stage)?;
        stage.write(manifest::NAME, new.text().as_bytes())?;
        stage.swap()?;
    } else if survey.old != new {
        save(&output.join(manifest::NAME), new.text().as_bytes())?;
    }
    Ok(outcome)
}

/// Whether nothing of ours lies beside the output folder: no publish is under way, and none
/// was cut short.
fn is_settled(output: &Path) -> bool {
    ["next", "old", "lock"].iter().all(|what| !beside(output, what).exists())
}

/// What there is in the output folder.
pub(super) struct Survey {
    /// What the program made last time.
    pub(super) old: Manifest,
    tree: Tree,
}

impl Survey {
    fn new(output: &Path) -> Result<Self, StoreError> {
        Ok(Self { old: Manifest::read(output), tree: Tree::below(output)? })
    }

    /// Whether a file is there and was made from what has this key.
    pub(super) fn has(&self, path: &str, key: &str) -> bool {
        self.old.made.get(path).is_some_and(|old| old == key) && self.tree.has(path)
    }

    /// What is known of a recipe that has this key, and whose files are all there.
    pub(super) fn known(&self, recipe: &str, key: &str) -> Option<&Known> {
        let known = self.old.recipes.get(recipe).filter(|known| known.key == key)?;
        let there =
            |path: &String| self.old.made.contains_key(path) && self.tree.has(path);
        known.files.iter().all(there).then_some(known)
    }

    /// Takes over what stays: what is up to date, and files of others.
    fn keep(
        &self,
        new: &Manifest,
        made: &[String],
        stage: &Stage,
    ) -> Result<(), PublishError> {
        let ours = |path: &str| {
            self.old.made.contains_key(path)
                || new.made.contains_key(path)
                || path == manifest::NAME
        };
        let found = self.tree.files.iter().map(|one| one.path.as_str());
        let foreign: Vec<&str> = found.filter(|path| !ours(path)).collect();
        in_the_way(&foreign, new)?;
        let made: BTreeSet<&str> = made.iter().map(String::as_str).collect();
        let kept =
            new.made.keys().map(String::as_str).filter(|path| !made.contains(path));
        let files: Vec<&str> = foreign.iter().copied().chain(kept).collect();
        Ok(stage.keep(&files, &self.tree.hollows)?)
    }
}

/// A file of others, or a link, that stands where a folder must be.
fn in_the_way(foreign: &[&str], new: &Manifest) -> Result<(), PublishError> {
    let foreign: BTreeSet<&str> = foreign.iter().copied().collect();
    let above = new
        .made
        .keys()
        .flat_map(|path| path.match_indices('/').map(|(at, _)| &path[..at]));
    match above.into_iter().find(|folder| foreign.contains(folder)) {
        Some(folder) => Err(PublishError::Make(folder.to_owned(), NOT_OURS.to_owned())),
        None => Ok(()),
    }
}
