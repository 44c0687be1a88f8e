//! Pictures that the instructor took, in every size that pages offer: made once for the site in
//! all its languages.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use crate::media::{Medium, Unshown, resized};

/// Bytes that wait for another language at most: what is more is made again.
const MOST: usize = 64 * 1024 * 1024;

/// Photographs that were made in one language and are still wanted in others.
#[derive(Clone, Debug, Default)]
pub(super) struct Photographs {
    /// How many languages want each.
    languages: usize,
    kept: Arc<Mutex<BTreeMap<String, Waiting>>>,
}

/// A photograph, and how many languages still want it.
#[derive(Debug)]
struct Waiting {
    bytes: Arc<Vec<u8>>,
    left: usize,
}

impl Photographs {
    /// For a site in so many languages.
    pub(super) fn new(languages: usize) -> Self {
        Self { languages, ..Self::default() }
    }

    /// A picture in one of its widths.
    ///
    /// # Errors
    /// As [`resized`].
    pub(super) fn get(&self, medium: &Medium, width: u32) -> Result<Vec<u8>, Unshown> {
        let address = medium.address(width);
        if let Some(bytes) = self.take(&address) {
            return Ok(bytes.to_vec());
        }
        let bytes = resized(medium, width)?;
        self.keep(address, &bytes);
        Ok(bytes)
    }

    /// One that waits; it goes with the last language that takes it.
    fn take(&self, address: &str) -> Option<Arc<Vec<u8>>> {
        let mut kept = self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        let waiting = kept.get_mut(address)?;
        waiting.left -= 1;
        let bytes = waiting.bytes.clone();
        if waiting.left == 0 {
            kept.remove(address);
        }
        Some(bytes)
    }

    fn keep(&self, address: String, bytes: &[u8]) {
        let left = self.languages.saturating_sub(1);
        let mut kept = self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        let held: usize = kept.values().map(|it| it.bytes.len()).sum();
        if left > 0 && held + bytes.len() <= MOST {
            kept.insert(address, Waiting { bytes: Arc::new(bytes.to_vec()), left });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_language_takes_one_and_the_last_leaves_none() {
        let photographs = Photographs::new(3);
        photographs.keep("media/a-480.jpg".to_owned(), &[1, 2]);
        for _ in 0..2 {
            assert_eq!(photographs.take("media/a-480.jpg").as_deref(), Some(&vec![1, 2]));
        }
        assert!(photographs.take("media/a-480.jpg").is_none());
        let alone = Photographs::new(1);
        alone.keep("media/a-480.jpg".to_owned(), &[1]);
        assert!(alone.take("media/a-480.jpg").is_none(), "nobody else wants it");
    }
}
