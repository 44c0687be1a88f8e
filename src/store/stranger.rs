//! One text from outside the content folder.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::io::{Error, ErrorKind, Read};
use std::path::Path;

use super::{StoreError, doing};

/// A text from outside may have so many bytes.
const MOST: u64 = 8 * 1024 * 1024;

/// The text of a file, or what comes in by standard input where the file is called `-`.
///
/// # Errors
/// Where the machine refuses; of the kind `InvalidData` where it is no UTF-8 text or more than
/// 8 MiB.
pub fn text_of(path: &Path) -> Result<String, StoreError> {
    let mut bytes = Vec::new();
    let read = if path.as_os_str() == "-" {
        std::io::stdin().lock().take(MOST + 1).read_to_end(&mut bytes)
    } else {
        let file = doing(std::fs::File::open(path), "read", path)?;
        file.take(MOST + 1).read_to_end(&mut bytes)
    };
    doing(read, "read", path)?;
    let unfit = |why: &str| {
        doing(Err(Error::new(ErrorKind::InvalidData, why.to_owned())), "read", path)
    };
    if bytes.len() as u64 > MOST {
        return unfit("it has more than 8 MiB");
    }
    match String::from_utf8(bytes) {
        Ok(text) => Ok(text),
        Err(_) => {
            unfit("it is not UTF-8 text; open it in an editor and save it as UTF-8")
        }
    }
}
