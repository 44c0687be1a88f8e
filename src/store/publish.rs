//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use crate::formula::EDITION;
use crate::product::Workshop;
use crate::site::TemplateFault;

use super::floor::{Floor, NOT_OURS};
use super::lock::{Lock, While};
use super::manifest::{self, Manifest, seal_now};
use super::merge::Clearing;
use super::place::{Place, place};
use super::stage::{Stage, beside, recover, swap_back, writable};
use super::survey::{Look, Survey};
use super::tree::{Guests, any_below, plain};
use super::write::put;
use super::{StoreError, doing, halt};

/// What publishing did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// Files made.
    pub made: Vec<String>,
    /// Files that were up to date.
    pub kept: usize,
    /// Files taken away.
    pub removed: Vec<String>,
    /// Files that were gone or were no longer as they had been made: made again.
    pub mended: Vec<String>,
    /// Where files of others were put that could not stay where they were.
    pub moved: Vec<PathBuf>,
    /// Whether the program counts otherwise than the one that published last.
    pub recounted: bool,
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
    /// A stop was asked for.
    Stopped,
    /// The new edition stands, but the old one could not be cleared away.
    Uncleared(StoreError),
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

/// An output folder that may be published to, and the edition that stands in it.
pub struct Target {
    output: PathBuf,
    look: Look,
    survey: Survey,
}

impl Target {
    /// Looks at an output folder. Nothing is written.
    ///
    /// # Errors
    /// Where it is no place to publish to, or the machine does not say.
    pub fn open(place_of: &Place, look: Look) -> Result<Self, StoreError> {
        let output = place(place_of)?;
        let survey = Survey::new(&output, look);
        Ok(Self { output, look, survey })
    }

    /// How many files there are of the edition that stands, where it is whole and was made
    /// from what has this fingerprint.
    pub fn stands(&self, from: &str) -> Option<usize> {
        let survey = &self.survey;
        let old = &survey.old;
        let same = old.arithmetic == EDITION && old.from == from && !from.is_empty();
        let whole = same && survey.damaged.is_empty() && is_settled(&self.output);
        whole.then(|| {
            survey.confirm();
            old.made.len()
        })
    }

    /// Publishes what `workshop` makes, read from what has the fingerprint `from`. `step`
    /// is told after each file made. Files in the folder that the program did not make stay
    /// as they are.
    ///
    /// # Errors
    /// Where the machine refuses or a file cannot be made, another publish is under way, or
    /// a stop was asked for; the old edition stands then.
    pub fn publish(
        self,
        (workshop, from): (&Workshop, &str),
        step: &(dyn Fn(usize, usize) + Sync),
    ) -> Result<Outcome, PublishError> {
        let Self { output, look, survey } = self;
        let idle = survey.old.from == from && survey.damaged.is_empty();
        if idle && is_settled(&output) {
            let floor = Floor::new(workshop, &survey, None, step);
            if floor.make()? && floor.end(from).0 == survey.old {
                survey.confirm();
                let kept = survey.old.made.len();
                return Ok(Outcome { kept, ..Outcome::default() });
            }
        }
        let above = output.parent().unwrap_or(&output);
        doing(fs::create_dir_all(above), "make", above)?;
        let _lock = Lock::take(&output, While::Refuse)?;
        let recovered = recover(&output)?;
        // Another publish may have ended in between.
        let same = !recovered.any && Manifest::read(&output).0 == survey.old;
        let survey = if same { survey } else { Survey::new(&output, look) };
        let mut outcome = anew(&output, &survey, (workshop, from), step)?;
        outcome.moved.extend(recovered.kept);
        Ok(outcome)
    }
}

/// Makes what is out of date and swaps the new edition in.
fn anew(
    output: &Path,
    survey: &Survey,
    (workshop, from): (&Workshop, &str),
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, PublishError> {
    let stage = Stage::open(output)?;
    let floor = Floor::new(workshop, survey, Some(&stage), step);
    floor.make()?;
    let (new, mut made) = floor.end(from);
    made.sort_unstable();
    let before = survey.old.made.keys();
    let removed: Vec<String> =
        before.filter(|path| !new.made.contains_key(*path)).cloned().collect();
    let again = made.iter().filter(|path| survey.damaged.contains(*path));
    let mut outcome = Outcome {
        kept: new.made.len() - made.len(),
        mended: again.cloned().collect(),
        recounted: !survey.old.made.is_empty() && survey.old.arithmetic != new.arithmetic,
        made,
        removed,
        ..Outcome::default()
    };
    if !outcome.made.is_empty() || !outcome.removed.is_empty() {
        outcome.moved =
            Swap { output, survey, new: &new, made: &outcome.made }.run(stage)?;
        seal_now(output);
    } else if survey.old != new {
        drop(stage);
        put(&output.join(manifest::NAME), new.text().as_bytes())?;
        seal_now(output);
    }
    Ok(outcome)
}

/// Whether nothing of ours lies beside the output folder: no publish is under way, and none
/// was cut short.
fn is_settled(output: &Path) -> bool {
    ["next", "old", "lock"].iter().all(|what| !beside(output, what).exists())
}

/// A new edition that takes the place of the old one.
struct Swap<'a> {
    output: &'a Path,
    survey: &'a Survey,
    new: &'a Manifest,
    made: &'a [String],
}

impl Swap<'_> {
    /// Takes over what stays, and swaps the new edition in: what lies in the folder that is
    /// not ours is looked for at the last moment, and again when the old edition is cleared
    /// away. Where files of others were put that could not stay where they were.
    fn run(&self, stage: Stage) -> Result<Vec<PathBuf>, PublishError> {
        let (old, new) = (&self.survey.old, self.new);
        let guests = if self.output.exists() {
            Guests::of(self.output, &[&old.made, &new.made])?
        } else {
            Guests::default()
        };
        self.make_way(&guests, &stage)?;
        let made: BTreeSet<&String> = self.made.iter().collect();
        let kept = new.made.keys().filter(|path| !made.contains(path));
        stage.keep(&kept.map(String::as_str).collect::<Vec<_>>())?;
        stage.write(manifest::NAME, new.text().as_bytes())?;
        stage.entitle(&guests.shared)?;
        stage.settle()?;
        if halt::is_asked() {
            return Err(PublishError::Stopped);
        }
        // As late as can be: a file that is replaced from here on stands for a moment as it
        // was before.
        let linked = stage.share(&guests.files);
        let Some(aside) = stage.swap()? else { return Ok(Vec::new()) };
        let clearing = Clearing {
            old: aside.clone(),
            new: self.output.to_owned(),
            kept: beside(self.output, "kept"),
            made: old.made.clone(),
            standing: new.made.clone(),
            sealed: self.survey.sealed,
            damaged: self.survey.damaged.clone(),
            linked,
            found: Mutex::default(),
        };
        if let Err(error) = clearing.hurry(&guests.folders) {
            swap_back(self.output)?;
            return Err(error.into());
        }
        doing(clearing.run(), "clear", &aside).map_err(PublishError::Uncleared)
    }

    /// Makes sure that nothing of others stands where the new edition has something, and
    /// that folders may be written to.
    fn make_way(&self, guests: &Guests, stage: &Stage) -> Result<(), PublishError> {
        for (path, known) in &guests.shared {
            writable(&self.output.join(path), known)?;
        }
        let new = self.new.made.keys();
        let fresh = new.filter(|path| !self.survey.old.made.contains_key(*path));
        let taken = fresh.filter(|path| self.is_taken(path, stage));
        let files = guests.files.iter().map(|path| plain(path));
        let blocked = files.filter(|path| any_below(&self.new.made, path));
        match taken.cloned().chain(blocked).next() {
            Some(path) => Err(PublishError::Make(path, NOT_OURS.to_owned())),
            None => Ok(()),
        }
    }

    /// Whether something else than the file that was made stands in its place.
    fn is_taken(&self, path: &str, stage: &Stage) -> bool {
        let there = fs::symlink_metadata(self.output.join(path));
        there.is_ok_and(|there| {
            let ours = there.is_dir() && any_below(&self.survey.old.made, path);
            let same = there.is_file() && stage.old(path) == stage.staged(path);
            !ours && !same
        })
    }
}
