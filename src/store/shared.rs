//! A folder of made files that machines and courses share: each stands by the key of what
//! it is made from, so that what one has made nobody makes again. Nothing rests on it: what
//! is not there, or not whole, is made, and what cannot be put there is made all the same.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::product::{Key, Product};

/// How many bytes at the end of a file tell whether it is whole.
const SEAL: usize = 32;

/// The folder.
#[derive(Clone, Debug)]
pub(super) struct Shared(PathBuf);

impl Shared {
    pub(super) fn new(folder: &Path) -> Self {
        Self(folder.to_owned())
    }

    /// The bytes of a file, where somebody has made it.
    pub(super) fn get(&self, product: &Product) -> Option<Vec<u8>> {
        let mut bytes = fs::read(self.place(product)).ok()?;
        let seal = bytes.split_off(bytes.len().checked_sub(SEAL)?);
        (Sha256::digest(&bytes)[..] == seal[..]).then_some(bytes)
    }

    /// Puts a file there for others, where that may be.
    pub(super) fn put(&self, product: &Product, bytes: &[u8]) {
        let place = self.place(product);
        let part = place.with_extension(std::process::id().to_string());
        if written(&part, bytes).and_then(|()| fs::rename(&part, place)).is_err() {
            let _ = fs::remove_file(part);
        }
    }

    /// Files of one key may differ by their paths: one picture in several sizes.
    fn place(&self, product: &Product) -> PathBuf {
        let mut key = Key::default();
        key.add(product.path.as_bytes());
        key.add(product.key.as_bytes());
        let key = key.end();
        let (folder, name) = key.split_at(2);
        self.0.join(folder).join(name)
    }
}

/// Writes a file with its seal to where none is.
fn written(path: &Path, bytes: &[u8]) -> io::Result<()> {
    path.parent().map_or(Ok(()), fs::create_dir_all)?;
    let mut file = File::create_new(path)?;
    file.write_all(bytes)?;
    file.write_all(&Sha256::digest(bytes))
}
