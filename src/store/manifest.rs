//! What the program made last time: each file's path, what it was made from and what came
//! of it.
//!
//! The bytes of the manifest are the same on every machine. What differs from one to the
//! next, the time, is the manifest's own: a file that was changed later than the manifest
//! was sealed is read through before it is taken for what was made.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeMap;
use std::fs::{File, Metadata};
use std::io::{self, BufRead, BufReader, Read, Write};
use std::path::Path;
use std::time::{Duration, SystemTime};

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::product::Card;

use super::folders::{Folders, Side};

/// The manifest's name in the output folder.
pub(super) const NAME: &str = ".tourier.json";

/// A system notes times in ticks of up to this length: what is changed in the tick of a
/// seal must not seem older than it.
const TICK: Duration = Duration::from_millis(12);

/// Every file made, by its path below the output folder.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Manifest {
    /// The edition of the program's arithmetic ([`crate::formula::EDITION`]): where it is
    /// another, numbers may differ though no text does. Where none is noted it was the first.
    #[serde(default = "first")]
    pub(super) arithmetic: u32,
    /// The fingerprint of what all of it was read from; empty where there is none, or
    /// where there is something to say of it.
    #[serde(default)]
    pub(super) from: String,
    /// What is known of each recipe, by name.
    #[serde(default)]
    pub(super) recipes: BTreeMap<String, Known>,
    /// What was made, by path.
    pub(super) made: BTreeMap<String, Made>,
}

/// A file that was made: `KEY HASH SIZE` in the manifest's text.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "String", into = "String")]
pub(super) struct Made {
    /// Stands for all that it was made from.
    pub(super) key: String,
    /// What came of it; `None` where an older program did not note it.
    pub(super) bytes: Option<Bytes>,
}

/// Stands for a file's bytes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Bytes {
    /// The first eight bytes of their SHA-256: enough to see damage.
    hash: u64,
    /// How many there are.
    size: u64,
}

/// What is known of a recipe: while its key is the same, so is all the rest.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Known {
    /// Stands for all that its files can depend on.
    pub(super) key: String,
    /// What other pages say of it.
    pub(super) card: Card,
    /// Its files.
    pub(super) files: Vec<String>,
}

fn first() -> u32 {
    1
}

impl Manifest {
    /// The manifest of an output folder, and until when files may have been changed
    /// without being looked at; an empty one where there is none.
    pub(super) fn read(output: &Path) -> (Self, SystemTime) {
        let read = || -> io::Result<_> {
            let mut file = File::open(output.join(NAME))?;
            let (mut text, sealed) = (String::new(), file.metadata()?.modified()?);
            file.read_to_string(&mut text)?;
            Ok((serde_json::from_str(&text)?, sealed))
        };
        read().unwrap_or((Self::default(), SystemTime::UNIX_EPOCH))
    }

    /// What stands of an edition in its two folders, and until when files may have been
    /// changed without being looked at. The site's manifest tells of both; where the site is
    /// gone, the one beside it tells of what is left.
    pub(super) fn standing(folders: &Folders) -> (Self, SystemTime) {
        let (mut whole, sealed) = Self::read(folders.get(Side::Site));
        let (apart, other) = Self::read(folders.get(Side::Instructor));
        if whole == Self::default() {
            whole.arithmetic = apart.arithmetic;
            let left = apart.made.into_iter();
            whole.made =
                left.filter(|(path, _)| Side::of(path).0 == Side::Instructor).collect();
        }
        let sealed = if whole.has(Side::Instructor) { sealed.min(other) } else { sealed };
        (whole, sealed)
    }

    /// What the program made on one side, by its path in that folder.
    pub(super) fn part(&self, side: Side) -> BTreeMap<String, Made> {
        let made = self.made.iter().map(|(path, made)| (Side::of(path), made));
        let own = made.filter(|((own, _), _)| *own == side);
        own.map(|((_, path), made)| (path.to_owned(), made.clone())).collect()
    }

    /// Whether anything was made on one side.
    pub(super) fn has(&self, side: Side) -> bool {
        self.made.keys().any(|path| Side::of(path).0 == side)
    }

    /// Writes the manifest as text.
    ///
    /// # Errors
    /// Where the machine refuses.
    pub(super) fn write(&self, to: &mut dyn Write) -> io::Result<()> {
        Ok(serde_json::to_writer_pretty(to, self)?)
    }
}

/// Notes that every file of an edition is as it was made. Where the time cannot be noted,
/// the files are only read through next time.
pub(super) fn seal(folders: &Folders, until: SystemTime) {
    for side in Side::BOTH {
        let manifest = File::open(folders.get(side).join(NAME));
        let _ = manifest.and_then(|manifest| manifest.set_modified(until));
    }
}

/// Seals what was made up to now; what is changed from here on is later than the seal.
pub(super) fn seal_now(folders: &Folders) {
    seal(folders, SystemTime::now());
    std::thread::sleep(TICK);
}

/// When a file was last changed, as far as the system says: in its bytes, its name, or its
/// rights.
pub(super) fn changed(known: &Metadata) -> SystemTime {
    let modified = known.modified().unwrap_or(SystemTime::now());
    #[cfg(unix)]
    {
        use std::os::unix::fs::MetadataExt;
        let whole = Duration::from_secs(known.ctime().try_into().unwrap_or_default());
        let part =
            Duration::from_nanos(known.ctime_nsec().try_into().unwrap_or_default());
        modified.max(SystemTime::UNIX_EPOCH + whole + part)
    }
    #[cfg(not(unix))]
    modified
}

impl Made {
    /// A file that is to be made from what has this key.
    pub(super) fn due(key: &str) -> Self {
        Self { key: key.to_owned(), bytes: None }
    }

    /// Whether a file has as many bytes as were made.
    pub(super) fn has_size(&self, known: &Metadata) -> bool {
        known.is_file() && self.bytes.is_none_or(|bytes| bytes.size == known.len())
    }

    /// Whether the file at `path`, read through, is the one that was made.
    pub(super) fn is_at(&self, path: &Path) -> bool {
        self.bytes.is_none_or(|bytes| Bytes::at(path).is_ok_and(|now| now == bytes))
    }
}

impl Bytes {
    /// Of what is there.
    pub(super) fn of(bytes: &[u8]) -> Self {
        Self::hashed(&Sha256::digest(bytes), bytes.len() as u64)
    }

    /// Of a file, read part by part.
    pub(super) fn at(path: &Path) -> io::Result<Self> {
        let (mut file, mut hash, mut size) =
            (BufReader::new(File::open(path)?), Sha256::new(), 0);
        loop {
            let part = file.fill_buf()?;
            if part.is_empty() {
                return Ok(Self::hashed(&hash.finalize(), size));
            }
            let read = part.len();
            hash.update(part);
            file.consume(read);
            size += read as u64;
        }
    }

    fn hashed(hash: &[u8], size: u64) -> Self {
        let start = hash.iter().take(8).fold(0, |all, byte| all << 8 | u64::from(*byte));
        Self { hash: start, size }
    }

    fn read(hash: &str, size: &str) -> Option<Self> {
        Some(Self { hash: u64::from_str_radix(hash, 16).ok()?, size: size.parse().ok()? })
    }
}

impl From<String> for Made {
    fn from(text: String) -> Self {
        let mut parts = text.split(' ');
        let key = parts.next().unwrap_or_default().to_owned();
        let bytes = parts.next().zip(parts.next());
        Self { key, bytes: bytes.and_then(|(hash, size)| Bytes::read(hash, size)) }
    }
}

impl From<Made> for String {
    fn from(made: Made) -> Self {
        let bytes = made.bytes;
        let noted = bytes.map(|bytes| format!(" {:016x} {}", bytes.hash, bytes.size));
        made.key + &noted.unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_made_comes_back_from_its_text() {
        let made = Made { key: "ab12".to_owned(), bytes: Some(Bytes::of(b"bread")) };
        let text = String::from(made.clone());
        // SHA-256 of `bread`, by coreutils' sha256sum.
        assert_eq!(text, "ab12 985604c2b6024312 5");
        assert_eq!(Made::from(text), made);
        let older = Made { key: "ab12".to_owned(), bytes: None };
        assert_eq!(Made::from("ab12".to_owned()), older);
        assert_eq!(Made::from("ab12 zz 5".to_owned()), older);
    }
}
