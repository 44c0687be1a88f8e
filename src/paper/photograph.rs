//! Pictures that the instructor took, as handouts show them.

use std::collections::VecDeque;
use std::sync::{Mutex, PoisonError};

use typst::foundations::Bytes;

use crate::media::{Medium, resized};
use crate::sheet::HandoutKind;

use super::Unfound;

/// Pixels across where it is as wide as its column: about 250 dots an inch on the student
/// sheet, 230 in large print.
const fn width(kind: HandoutKind) -> u32 {
    match kind {
        HandoutKind::Student | HandoutKind::Bench => 840,
        HandoutKind::LargePrint => 1600,
    }
}

/// The sizes in which a picture of this [`name`] can be had, the largest first, with their
/// pixels across: from a whole column to less than half of one, each within 150 and 300 dots
/// an inch where the larger one has more.
pub(super) fn sizes(name: &str) -> Vec<(String, u32)> {
    let Some((stem, ending)) = name.rsplit_once('.') else { return Vec::new() };
    let Some((hash, width)) = stem.rsplit_once('-') else { return Vec::new() };
    let Ok(width) = width.parse::<u32>() else { return Vec::new() };
    let parts = [(1, 1), (7, 10), (1, 2), (7, 20)];
    let sizes = parts.map(|(part, of)| (width * part / of).max(1));
    sizes.into_iter().map(|width| (format!("{hash}-{width}.{ending}"), width)).collect()
}

/// The handouts of a recipe follow one another: so many pictures are kept at hand.
const KEPT: usize = 16;

/// The name of a picture's file before the typesetter; it stands for the picture's bytes.
/// Empty where there is no such picture.
pub(super) fn name(media: &[Medium], file: &str, kind: HandoutKind) -> String {
    let found = media.iter().find(|medium| medium.name == file);
    found.map_or_else(String::new, |medium| {
        let ending = medium.name.rsplit_once('.').map_or("", |(_, ending)| ending);
        format!("{}-{}.{ending}", medium.hash, width(kind).min(medium.width))
    })
}

/// The pictures of a course, made to the size of paper where they are asked for.
#[derive(Default)]
pub(super) struct Photographs {
    media: Vec<Medium>,
    kept: Mutex<VecDeque<(String, Bytes)>>,
}

impl Photographs {
    /// Of these pictures.
    pub(super) fn new(media: &[Medium]) -> Self {
        Self { media: media.to_vec(), kept: Mutex::default() }
    }

    /// The picture of this [`name`].
    ///
    /// # Errors
    /// The reason, where there is none, or it cannot be decoded to its end.
    pub(super) fn get(&self, name: &str) -> Result<Bytes, Unfound> {
        let known = |kept: &VecDeque<(String, Bytes)>| {
            kept.iter().find(|(known, _)| known == name).map(|(_, bytes)| bytes.clone())
        };
        // What another worker left behind is whole, even if that worker is gone.
        let kept = || self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(bytes) = known(&kept()) {
            return Ok(bytes);
        }
        let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
        let (hash, width) = stem.rsplit_once('-').ok_or(Unfound::NoSize)?;
        let width: u32 = width.parse().map_err(|_| Unfound::NoSize)?;
        let medium = self.media.iter().find(|medium| medium.hash == hash);
        let medium = medium.ok_or(Unfound::NotThere)?;
        let bytes = resized(medium, width).map_err(Unfound::Unshown)?;
        let bytes = Bytes::new(bytes);
        let mut kept = kept();
        kept.push_back((name.to_owned(), bytes.clone()));
        if kept.len() > KEPT {
            kept.pop_front();
        }
        Ok(bytes)
    }
}
