//! Texts that grow line by line: the day file of a class, what happened on its evenings, and
//! the notes on a recipe. Lines are only ever added, whole and one at a time, by one program
//! at once.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::File;
use std::io::{ErrorKind, Read, Write};
use std::path::{Path, PathBuf};

use crate::read::BENCH;
use crate::said;

use super::halt::Busy;
use super::lock::is_at;
use super::{Doing, StoreError, doing};

/// How the name of a day file ends, after the class's own name.
const ENDING: &str = ".day.txt";
/// Such a text that is larger than this is none.
const LARGEST: u64 = 1 << 20;

/// Whether a path below the content folder is that of a day file.
pub(super) fn is_day(path: &str) -> bool {
    path.strip_prefix("classes/").is_some_and(|file| file.ends_with(ENDING))
}

/// The day file of a class.
pub fn day_path(content: &Path, class: &str) -> PathBuf {
    content.join("classes").join(format!("{class}{ENDING}"))
}

/// The notes on a recipe.
pub fn note_path(content: &Path, recipe: &str) -> PathBuf {
    content.join("recipes").join(format!("{recipe}{BENCH}"))
}

/// What such a text says; nothing where there is none yet.
///
/// # Errors
/// Where it cannot be read as text.
pub fn line_text(path: &Path) -> Result<String, StoreError> {
    match File::open(path) {
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(String::new()),
        file => text(&doing(file, Doing::Read, path)?, path),
    }
}

/// Such a text, to which nobody else adds meanwhile.
pub struct LineFile {
    path: PathBuf,
    held: File,
    /// What it says so far.
    pub text: String,
}

impl LineFile {
    /// Opens it, made where there is none; another who adds to it is waited for.
    ///
    /// # Errors
    /// Where the machine refuses, or where it is a link.
    pub fn open(path: &Path) -> Result<Self, StoreError> {
        if path.is_symlink() {
            let why = said!("unread-link");
            return Err(StoreError::refused(path, Doing::Use, why));
        }
        loop {
            let options = File::options().create(true).append(true).read(true).open(path);
            let held = doing(options, Doing::Write, path)?;
            match held.lock() {
                // Some network folders know no locks: there only care helps.
                Err(error) if error.kind() != ErrorKind::Unsupported => {
                    return doing(Err(error), Doing::Lock, path);
                }
                Ok(()) | Err(_) => {}
            }
            // An editor that saved meanwhile has put another file in its place.
            if is_at(&held, path) {
                let text = text(&held, path)?;
                return Ok(Self { path: path.to_owned(), held, text });
            }
        }
    }

    /// Adds a line, safe on the disk before this is over.
    ///
    /// # Errors
    /// Where the machine refuses.
    pub fn keep(&mut self, line: &str) -> Result<(), StoreError> {
        let _busy = Busy::begin();
        // What somebody wrote without an end to its last line stays a line of its own.
        let torn = !self.text.is_empty() && !self.text.ends_with('\n');
        let line = format!("{}{line}\n", if torn { "\n" } else { "" });
        let kept =
            self.held.write_all(line.as_bytes()).and_then(|()| self.held.sync_data());
        doing(kept, Doing::Write, &self.path)?;
        self.text += &line;
        Ok(())
    }
}

impl Drop for LineFile {
    fn drop(&mut self) {
        // One to which nothing was added was only made to be looked at.
        if self.text.is_empty() {
            let _ = std::fs::remove_file(&self.path);
        }
    }
}

fn text(file: &File, path: &Path) -> Result<String, StoreError> {
    let mut bytes = Vec::new();
    doing(file.take(LARGEST + 1).read_to_end(&mut bytes), Doing::Read, path)?;
    if bytes.len() as u64 > LARGEST {
        return Err(StoreError::refused(path, Doing::Read, said!("unread-large")));
    }
    String::from_utf8(bytes)
        .map_err(|_| StoreError::refused(path, Doing::Read, said!("unread-not-text")))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn place(name: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("tourier-day-{name}"));
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(folder.join("classes")).expect("a folder");
        day_path(&folder, "evening-3")
    }

    #[test]
    fn lines_are_added_and_never_lost() {
        let path = place("added");
        assert_eq!(line_text(&path).ok().as_deref(), Some(""));
        drop(LineFile::open(&path).expect("it opens"));
        assert!(!path.exists(), "a look leaves nothing");
        std::fs::write(&path, "# mine").expect("written");
        LineFile::open(&path).expect("it opens").keep("one").expect("kept");
        LineFile::open(&path).expect("it opens").keep("two").expect("kept");
        assert_eq!(line_text(&path).ok().as_deref(), Some("# mine\none\ntwo\n"));
    }

    #[test]
    fn many_at_once_lose_nothing() {
        let path = place("many");
        std::thread::scope(|scope| {
            for of in 0..8 {
                let path = &path;
                scope.spawn(move || {
                    for line in 0..20 {
                        let mut day = LineFile::open(path).expect("it opens");
                        day.keep(&format!("{of} {line}")).expect("kept");
                    }
                });
            }
        });
        let text = line_text(&path).expect("text");
        let mut lines: Vec<&str> = text.lines().collect();
        lines.sort_unstable();
        lines.dedup();
        assert_eq!(lines.len(), 160);
    }
}
