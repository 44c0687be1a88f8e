//! What stands in an output folder of the edition that was made last.
#![allow(clippy::disallowed_methods, reason = "this room looks at files")]

use std::collections::BTreeSet;
use std::fs;
use std::time::{Duration, SystemTime};

use rayon::prelude::*;

use super::folders::Folders;
use super::manifest::{Known, Made, Manifest, changed, seal};

/// How closely the files that stand are looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// By size and time; what was changed since it was made is read through.
    Quick,
    /// Every file is read through.
    Thorough,
}

/// What there is in the folders of an edition.
pub(super) struct Survey {
    folders: Folders,
    /// What the program made last time.
    pub(super) old: Manifest,
    /// Until when a file may have been changed without being looked at.
    pub(super) sealed: SystemTime,
    /// Files of the edition that are gone, or are not as they were made.
    pub(super) damaged: BTreeSet<String>,
    /// The latest change of a file that had to be read through and is as it was made.
    latest: Option<SystemTime>,
}

/// How one file was found.
enum State {
    /// As it was made, and known to be so without reading it.
    Same,
    /// As it was made, though it was changed since: when.
    Read(SystemTime),
    /// Gone, or another one.
    Damaged,
}

impl Survey {
    /// Looks at every file of the edition that was made last.
    pub(super) fn new(folders: &Folders, look: Look) -> Self {
        let (old, sealed) = Manifest::standing(folders);
        let mut survey = Self {
            folders: folders.clone(),
            old,
            sealed,
            damaged: BTreeSet::new(),
            latest: None,
        };
        let states: Vec<(&String, State)> = survey
            .old
            .made
            .par_iter()
            .map(|(path, made)| (path, survey.state(path, made, look)))
            .collect();
        let (mut damaged, mut latest) = (BTreeSet::new(), None);
        for (path, state) in states {
            match state {
                State::Same => {}
                State::Read(time) => latest = latest.max(Some(time)),
                State::Damaged => drop(damaged.insert(path.clone())),
            }
        }
        (survey.damaged, survey.latest) = (damaged, latest);
        survey
    }

    fn state(&self, path: &str, made: &Made, look: Look) -> State {
        let path = self.folders.file(path);
        let Ok(known) = fs::symlink_metadata(&path) else { return State::Damaged };
        let time = changed(&known);
        if !made.has_size(&known) {
            State::Damaged
        } else if look == Look::Quick && time < self.sealed {
            State::Same
        } else if made.is_at(&path) {
            State::Read(time)
        } else {
            State::Damaged
        }
    }

    /// Notes that all is as it was made, so that it need not be read through again.
    pub(super) fn confirm(&self) {
        let later = |time: &SystemTime| *time >= self.sealed && self.damaged.is_empty();
        if let Some(time) = self.latest.filter(later) {
            seal(&self.folders, time + Duration::from_nanos(1));
        }
    }

    /// A file that stands as it was made, from what has this key.
    pub(super) fn standing(&self, path: &str, key: &str) -> Option<&Made> {
        let made = self.old.made.get(path).filter(|old| old.key == key)?;
        self.is_whole(path).then_some(made)
    }

    /// Whether a file stands as it was made.
    pub(super) fn is_whole(&self, path: &str) -> bool {
        self.old.made.contains_key(path) && !self.damaged.contains(path)
    }

    /// What is known of a recipe that has this key, and whose files all stand.
    pub(super) fn known(&self, recipe: &str, key: &str) -> Option<&Known> {
        let known = self.old.recipes.get(recipe).filter(|known| known.key == key)?;
        known.files.iter().all(|path| self.is_whole(path)).then_some(known)
    }
}
