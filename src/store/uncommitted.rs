//! What of a content folder is not yet committed, where it lies in a `git` repository. It is
//! only asked: nothing is ever committed, and nothing in the repository is touched.

use std::ffi::OsString;
use std::io::Read;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

/// More than this of an answer is not taken in.
const LARGEST: u64 = 1 << 20;
/// A repository that takes longer is not waited for.
const PATIENCE: Duration = Duration::from_secs(5);
/// So much of this program's environment `git` needs to be found and to run.
const NEEDED: [&str; 3] = ["PATH", "HOME", "SystemRoot"];
/// The user's own settings and those of the repository start no program of theirs, and no
/// file is locked or written for the answer.
const BOUNDED: [&str; 5] = [
    "--no-optional-locks",
    "-c",
    "core.fsmonitor=false",
    "-c",
    "core.hooksPath=/dev/null",
];

/// A file that is not committed as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Uncommitted {
    /// Its path below the content folder.
    pub path: String,
    /// What it is to the last commit.
    pub stands: Stands,
}

/// What a file is to the last commit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// It is not there.
    New,
    /// It is there, and says something else.
    Changed,
    /// It is there, and here no more.
    Gone,
}

/// The files of a content folder that are not committed; `None` where it lies in no
/// repository, or where there is no `git`.
pub fn uncommitted(content: &Path) -> Option<Vec<Uncommitted>> {
    let prefix = git(content, &["rev-parse", "--show-prefix"])?;
    let prefix = prefix.trim_end_matches('\n');
    let options = ["status", "--porcelain=v1", "-z", "--no-renames"];
    let more = ["--untracked-files=all", "--", "."];
    let said = git(content, &[&options[..], &more].concat())?;
    Some(said.split('\0').filter_map(|entry| read(entry, prefix)).collect())
}

/// `XY PATH`, with the path from the root of the repository.
fn read(entry: &str, prefix: &str) -> Option<Uncommitted> {
    let (state, path) = entry.split_at_checked(3)?;
    let path = path.strip_prefix(prefix)?.to_owned();
    let stands = if state.contains('?') || state.starts_with('A') {
        Stands::New
    } else if state.contains('D') {
        Stands::Gone
    } else {
        Stands::Changed
    };
    Some(Uncommitted { path, stands })
}

/// What `git` answers, where it does so in time.
fn git(content: &Path, arguments: &[&str]) -> Option<String> {
    let own = NEEDED.iter().filter_map(|name| Some((*name, std::env::var_os(name)?)));
    let own: Vec<(&str, OsString)> = own.collect();
    let mut run = Command::new("git")
        .args(BOUNDED)
        .args(arguments)
        .current_dir(content)
        .env_clear()
        .envs(own)
        .env("GIT_TERMINAL_PROMPT", "0")
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .ok()?;
    let out = run.stdout.take()?;
    let (give, get) = std::sync::mpsc::channel();
    std::thread::spawn(move || {
        let mut bytes = Vec::new();
        let read = out.take(LARGEST).read_to_end(&mut bytes);
        // Nobody waits any more where it took too long.
        let _ = give.send(read.map(|_| bytes));
    });
    let bytes = get.recv_timeout(PATIENCE).ok().and_then(Result::ok);
    if bytes.as_ref().is_none_or(|bytes| bytes.len() as u64 == LARGEST) {
        // It has ended by itself where this fails.
        let _ = run.kill();
    }
    let ended = run.wait().ok()?;
    String::from_utf8(bytes.filter(|_| ended.success())?).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn entries_are_read() {
        let read = |entry| read(entry, "content/");
        let is = |path: &str, stands| Some(Uncommitted { path: path.to_owned(), stands });
        assert_eq!(read("?? content/recipes/a b.md"), is("recipes/a b.md", Stands::New));
        assert_eq!(read(" M content/course.yaml"), is("course.yaml", Stands::Changed));
        assert_eq!(read("A  content/crème.md"), is("crème.md", Stands::New));
        assert_eq!(read(" D content/a.md"), is("a.md", Stands::Gone));
        assert_eq!(read("D  content/a.md"), is("a.md", Stands::Gone));
        assert_eq!(read(" M README.md"), None);
        assert_eq!(read(""), None);
    }
}
