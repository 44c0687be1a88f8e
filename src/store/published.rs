//! The texts as the desk published them last, kept in a hidden file beside the content, so that
//! what has changed since can be told.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::{Path, PathBuf};

use crate::read::Source;
use crate::said;

use super::earlier::Shelf;
use super::stage::beside;
use super::write::{clear_beside, put_safely};
use super::{Doing, StoreError, doing};

/// Texts of more bytes than this are not taken in.
const LARGEST: u64 = 64 << 20;

/// Keeps the texts that are published.
///
/// # Errors
/// Where the machine refuses.
pub fn keep_published(content: &Path, sources: &[Source]) -> Result<(), StoreError> {
    let texts = sources.iter().map(|source| (&*source.path, &*source.text));
    let texts: BTreeMap<&str, &str> = texts.collect();
    // Nobody else keeps them meanwhile, so what a stop left behind is in nobody's way.
    let _shelf = Shelf::open(content)?;
    // Names and texts can always be written.
    let bytes = serde_json::to_vec(&texts).unwrap_or_default();
    let file = file(content)?;
    clear_beside(&file);
    put_safely(&file, &bytes)
}

/// The texts that were published last; `None` where none were, or where what was kept does not
/// read: it is kept anew with the next publish.
///
/// # Errors
/// Where the machine refuses.
pub fn published(content: &Path) -> Result<Option<Vec<Source>>, StoreError> {
    let file = file(content)?;
    let open = match File::open(&file) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        open => doing(open, Doing::Read, &file)?,
    };
    let mut bytes = Vec::new();
    doing(open.take(LARGEST).read_to_end(&mut bytes), Doing::Read, &file)?;
    let texts: Option<BTreeMap<String, String>> = serde_json::from_slice(&bytes).ok();
    let source = |(path, text)| Source { path, text };
    Ok(texts.map(|texts| texts.into_iter().map(source).collect()))
}

/// Where they are kept; a link in its place is refused.
fn file(content: &Path) -> Result<PathBuf, StoreError> {
    let whole = doing(content.canonicalize(), Doing::OpenContent, content)?;
    let file = beside(&whole, "published");
    if file.is_symlink() {
        return Err(StoreError::refused(&file, Doing::Use, said!("unread-link")));
    }
    Ok(file)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_come_back_as_they_were_kept() {
        let content = std::env::temp_dir().join("tourier-published/content");
        let _ = std::fs::remove_dir_all(content.with_file_name(""));
        std::fs::create_dir_all(&content).expect("a folder");
        assert!(matches!(published(&content), Ok(None)));
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let sources =
            [source("course.yaml", "title: x\n"), source("recipes/a.md", "é\n")];
        keep_published(&content, &sources).expect("kept");
        let back = published(&content).expect("read").expect("there");
        let pairs: Vec<_> = back.iter().map(|it| (&*it.path, &*it.text)).collect();
        assert_eq!(pairs, [("course.yaml", "title: x\n"), ("recipes/a.md", "é\n")]);
        std::fs::write(file(&content).expect("a place"), "{").expect("written");
        assert!(matches!(published(&content), Ok(None)));
    }
}
