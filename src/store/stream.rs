//! Files that may be larger than what is held: written, read and compared part by part.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{self, File};
use std::io::{self, BufRead, BufReader, BufWriter, Seek, SeekFrom, Write};
use std::path::Path;

/// A file being written. Who writes may say no more than that it failed: why is kept here.
pub(super) struct Stream {
    file: BufWriter<File>,
    failed: Option<io::Error>,
}

impl Stream {
    /// A new file, or an old one written anew.
    pub(super) fn create(path: &Path) -> io::Result<Self> {
        Ok(Self { file: BufWriter::new(File::create(path)?), failed: None })
    }

    /// Ends it.
    ///
    /// # Errors
    /// What went wrong first, since it was begun.
    pub(super) fn end(mut self) -> io::Result<()> {
        let flushed = self.file.flush();
        self.failed.map_or(flushed, Err)
    }

    /// Keeps why something failed.
    fn noted<T>(&mut self, done: io::Result<T>) -> io::Result<T> {
        done.map_err(|error| {
            let said = io::Error::from(error.kind());
            self.failed.get_or_insert(error);
            said
        })
    }
}

impl Write for Stream {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let done = self.file.write(bytes);
        self.noted(done)
    }

    fn flush(&mut self) -> io::Result<()> {
        let done = self.file.flush();
        self.noted(done)
    }
}

impl Seek for Stream {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        let done = self.file.seek(to);
        self.noted(done)
    }
}

/// Whether two plain files have the same bytes.
pub(super) fn alike(one: &Path, other: &Path) -> bool {
    let size = |path: &Path| {
        fs::symlink_metadata(path).ok().filter(fs::Metadata::is_file).map(|it| it.len())
    };
    size(one).is_some()
        && size(one) == size(other)
        && same_bytes(one, other).unwrap_or(false)
}

fn same_bytes(one: &Path, other: &Path) -> io::Result<bool> {
    let mut one = BufReader::new(File::open(one)?);
    let mut other = BufReader::new(File::open(other)?);
    loop {
        let (here, there) = (one.fill_buf()?, other.fill_buf()?);
        let shared = here.len().min(there.len());
        if shared == 0 {
            return Ok(here.len() == there.len());
        }
        if here[..shared] != there[..shared] {
            return Ok(false);
        }
        one.consume(shared);
        other.consume(shared);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_compared_to_their_ends() {
        let folder = std::env::temp_dir().join("tourier-stream-test");
        fs::create_dir_all(&folder).expect("a folder");
        let file = |name: &str, end: &[u8]| {
            let path = folder.join(name);
            let mut stream = Stream::create(&path).expect("a file");
            for _ in 0..5000 {
                stream.write_all(b"layer").expect("written");
            }
            stream.write_all(end).expect("written");
            stream.seek(SeekFrom::Start(0)).expect("there is a start");
            stream.write_all(b"L").expect("written");
            stream.end().expect("written");
            path
        };
        let (one, same) = (file("one", b"a"), file("same", b"a"));
        assert!(fs::read(&one).expect("it is there").starts_with(b"Layer"));
        assert!(alike(&one, &same));
        assert!(!alike(&one, &file("other", b"b")) && !alike(&one, &file("more", b"ab")));
        assert!(!alike(&one, &folder));
        fs::remove_dir_all(&folder).expect("cleared");
    }
}
