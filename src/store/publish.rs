//! Publishing: makes what is out of date, keeps the rest, and swaps the edition in whole.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use crate::formula::EDITION;
use crate::product::{Products, Unmade};
use crate::said;
use crate::site::TemplateFault;
use crate::statement::Statement;

use super::folders::{Folders, Side};
use super::lock::{Lock, While};
use super::manifest::{self, Made, Manifest, seal_now};
use super::merge::Clearing;
use super::place::{Place, place};
use super::run::Run;
use super::shared::Shared;
use super::stage::{Stage, Stages, beside, recover, swap_back, writable};
use super::survey::{Look, Survey};
use super::tree::{Guests, any_below, plain};
use super::write::put;
use super::{Doing, StoreError, doing, halt};

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
    /// The folder beside the site, where the edition has something that is the instructor's
    /// alone.
    pub apart: Option<PathBuf>,
}

/// Why a file does not come to stand in the new edition.
#[derive(Clone, Debug)]
pub enum Unplaced {
    /// It cannot be made.
    Unmade(Unmade),
    /// Two files would have the same place, or it leads out of the folder.
    NoPlace,
    /// What the program did not make stands there.
    NotOurs,
}

impl Unplaced {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::Unmade(why) => why.said(),
            Self::NoPlace => said!("place-twice"),
            Self::NotOurs => said!("place-not-ours"),
        }
    }
}

/// Why publishing stopped.
#[derive(Debug)]
pub enum PublishError {
    /// The machine refused.
    Store(StoreError),
    /// A file could not be made or put in its place: its path and why.
    Make(String, Unplaced),
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
    folders: Folders,
    look: Look,
    survey: Survey,
}

impl Target {
    /// Looks at an output folder. Nothing is written.
    ///
    /// # Errors
    /// Where it is no place to publish to, or the machine does not say.
    pub fn open(place_of: &Place, look: Look) -> Result<Self, StoreError> {
        let folders = place(place_of)?;
        let survey = Survey::new(&folders, look);
        Ok(Self { folders, look, survey })
    }

    /// Shares made files with other machines and courses: takes those that are in this
    /// folder as they are, and puts others into it where that may be.
    #[must_use]
    pub fn sharing(mut self, folder: Option<&Path>) -> Self {
        self.folders.shared = folder.map(Shared::new);
        self
    }

    /// How many files there are of the edition that stands, where it is whole and was made
    /// from what has this fingerprint.
    pub fn stands(&self, from: &str) -> Option<usize> {
        let survey = &self.survey;
        let old = &survey.old;
        let same = old.arithmetic == EDITION && old.from == from && !from.is_empty();
        let whole = same && survey.damaged.is_empty() && is_settled(&self.folders);
        whole.then(|| {
            survey.confirm();
            old.made.len()
        })
    }

    /// Publishes what `products` makes, read from what has the fingerprint `from`. `step`
    /// is told after each file made. Files in the folder that the program did not make stay
    /// as they are.
    ///
    /// # Errors
    /// Where the machine refuses or a file cannot be made, another publish is under way, or
    /// a stop was asked for; the old edition stands then.
    pub fn publish(
        self,
        (products, from): (&[Products], &str),
        step: &(dyn Fn(usize, usize) + Sync),
    ) -> Result<Outcome, PublishError> {
        let Self { folders, look, survey } = self;
        let idle = survey.old.from == from && survey.damaged.is_empty();
        if idle && is_settled(&folders) {
            let run = Run::new(products, &survey, None, step);
            if run.make()? && run.end(from).0 == survey.old {
                survey.confirm();
                let kept = survey.old.made.len();
                return Ok(Outcome { kept, ..Outcome::default() });
            }
        }
        let site = folders.get(Side::Site);
        let above = site.parent().unwrap_or(site);
        doing(fs::create_dir_all(above), Doing::Make, above)?;
        let _lock = Lock::take(site, While::Refuse)?;
        let recovered = recover(&folders)?;
        // Another publish may have ended in between.
        let same = !recovered.any && Manifest::standing(&folders).0 == survey.old;
        let survey = if same { survey } else { Survey::new(&folders, look) };
        let mut outcome = anew(&folders, &survey, (products, from), step)?;
        outcome.moved.extend(recovered.kept);
        Ok(outcome)
    }
}

/// Makes what is out of date and swaps the new edition in.
fn anew(
    folders: &Folders,
    survey: &Survey,
    (products, from): (&[Products], &str),
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, PublishError> {
    let stages = Stages::open(folders)?;
    let run = Run::new(products, survey, Some(&stages), step);
    run.make()?;
    let (new, mut made) = run.end(from);
    made.sort_unstable();
    let before = survey.old.made.keys();
    let removed: Vec<String> =
        before.filter(|path| !new.made.contains_key(*path)).cloned().collect();
    let again = made.iter().filter(|path| survey.damaged.contains(*path));
    let mut outcome = Outcome {
        kept: new.made.len() - made.len(),
        mended: again.cloned().collect(),
        recounted: !survey.old.made.is_empty() && survey.old.arithmetic != new.arithmetic,
        apart: new
            .has(Side::Instructor)
            .then(|| folders.get(Side::Instructor).to_owned()),
        made,
        removed,
        ..Outcome::default()
    };
    if !outcome.made.is_empty() || !outcome.removed.is_empty() {
        outcome.moved =
            Swap { folders, survey, new: &new, made: &outcome.made }.run(stages)?;
        seal_now(folders);
    } else if survey.old != new {
        drop(stages);
        for side in Side::BOTH.into_iter().filter(|side| new.has(*side)) {
            put(&folders.get(side).join(manifest::NAME), &|file| new.write(file))?;
        }
        seal_now(folders);
    }
    Ok(outcome)
}

/// Whether nothing of ours lies beside the folders: no publish is under way, and none was
/// cut short.
fn is_settled(folders: &Folders) -> bool {
    Side::BOTH.into_iter().all(|side| {
        let left = |what: &&str| beside(folders.get(side), what).exists();
        !["next", "old", "lock"].iter().any(left)
    })
}

/// A new edition that takes the place of the old one.
struct Swap<'a> {
    folders: &'a Folders,
    survey: &'a Survey,
    new: &'a Manifest,
    made: &'a [String],
}

impl Swap<'_> {
    /// Takes over what stays, and swaps the new edition in, the site first: what lies in its
    /// folders that is not ours is looked for at the last moment, and again when the old
    /// edition is cleared away. Where files of others were put that could not stay where
    /// they were.
    fn run(&self, stages: Stages) -> Result<Vec<PathBuf>, PublishError> {
        let mut shifts = vec![self.shift(Side::Site, stages.site)?];
        if [&self.survey.old, self.new].iter().any(|it| it.has(Side::Instructor)) {
            shifts.push(self.shift(Side::Instructor, stages.instructor)?);
        }
        for shift in &shifts {
            shift.stage.settle()?;
        }
        if halt::is_asked() {
            return Err(PublishError::Stopped);
        }
        let clearings = swapped(shifts).or_else(|error| {
            swap_back(self.folders)?;
            Err(error)
        })?;
        let mut kept = Vec::new();
        for clearing in clearings {
            let aside = clearing.old.clone();
            let cleared = doing(clearing.run(), Doing::Clear, &aside);
            kept.extend(cleared.map_err(PublishError::Uncleared)?);
        }
        Ok(kept)
    }

    /// One side made ready to be swapped in.
    fn shift(&self, side: Side, stage: Stage) -> Result<Shift, PublishError> {
        let output = self.folders.get(side);
        let (old, new) = (self.survey.old.part(side), self.new.part(side));
        let guests = if output.exists() {
            Guests::of(output, &[&old, &new])?
        } else {
            Guests::default()
        };
        let shift = Shift {
            output: output.to_owned(),
            stage,
            guests,
            clearing: Clearing {
                old: beside(output, "old"),
                new: output.to_owned(),
                kept: beside(output, "kept"),
                made: old,
                standing: new,
                sealed: self.survey.sealed,
                damaged: of_side(side, &self.survey.damaged),
                linked: BTreeMap::new(),
                found: Mutex::default(),
            },
        };
        shift.make_way()?;
        let made = of_side(side, self.made);
        let kept = shift.clearing.standing.keys().filter(|path| !made.contains(*path));
        shift.stage.keep(&kept.map(String::as_str).collect::<Vec<_>>())?;
        put(&shift.stage.place(manifest::NAME)?, &|file| self.new.write(file))?;
        shift.stage.entitle(&shift.guests.shared)?;
        Ok(shift)
    }
}

/// Of these files of an edition, those of one side, by their paths in its folder.
fn of_side<'p>(
    side: Side,
    paths: impl IntoIterator<Item = &'p String>,
) -> BTreeSet<String> {
    let paths = paths.into_iter().map(|path| Side::of(path));
    paths.filter(|(own, _)| *own == side).map(|(_, path)| path.to_owned()).collect()
}

/// Swaps the sides in, one after the other; what is to be cleared then.
fn swapped(shifts: Vec<Shift>) -> Result<Vec<Clearing>, PublishError> {
    let (mut clearings, mut folders) = (Vec::new(), Vec::new());
    for shift in shifts {
        // As late as can be: a file that is replaced from here on stands for a moment as it
        // was before.
        let linked = shift.stage.share(&shift.guests.files);
        if shift.stage.swap()?.is_some() {
            clearings.push(Clearing { linked, ..shift.clearing });
            folders.push(shift.guests.folders);
        }
    }
    for (clearing, folders) in clearings.iter().zip(&folders) {
        clearing.hurry(folders)?;
    }
    Ok(clearings)
}

/// One side of a new edition, ready to be swapped in.
struct Shift {
    output: PathBuf,
    stage: Stage,
    guests: Guests,
    clearing: Clearing,
}

impl Shift {
    /// Makes sure that nothing of others stands where the new edition has something, and
    /// that folders may be written to.
    fn make_way(&self) -> Result<(), PublishError> {
        for (path, known) in &self.guests.shared {
            writable(&self.output.join(path), known)?;
        }
        let (old, new) = (&self.clearing.made, &self.clearing.standing);
        let fresh = new.keys().filter(|path| !old.contains_key(*path));
        let taken = fresh.filter(|path| self.is_taken(path, old));
        let files = self.guests.files.iter().map(|path| plain(path));
        let blocked = files.filter(|path| any_below(new, path));
        match taken.cloned().chain(blocked).next() {
            Some(path) => Err(PublishError::Make(path, Unplaced::NotOurs)),
            None => Ok(()),
        }
    }

    /// Whether something else than the file that was made stands in its place.
    fn is_taken(&self, path: &str, old: &BTreeMap<String, Made>) -> bool {
        let there = fs::symlink_metadata(self.output.join(path));
        there.is_ok_and(|there| {
            let ours = there.is_dir() && any_below(old, path);
            !ours && !self.stage.is_same(path)
        })
    }
}
