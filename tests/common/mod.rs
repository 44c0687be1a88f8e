//! What the tests share: running the program on a course, and comparing its answer with
//! a golden file. `UPDATE_GOLDEN=1` writes the golden files anew.
#![allow(
    dead_code,
    clippy::disallowed_methods,
    reason = "tests read, write and look at the environment; each uses a part of this"
)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The tiny course: everything that the program draws, in two recipes.
pub(crate) const COURSE: &str = "tests/golden/course";

/// What the program answered.
pub(crate) struct Answer {
    /// Its exit code.
    pub(crate) code: i32,
    /// What it wrote to standard output.
    pub(crate) out: String,
    /// What it wrote to standard error.
    pub(crate) err: String,
}

/// Runs the program on a content folder, without colour.
pub(crate) fn tourier(content: &Path, arguments: &[&str]) -> Answer {
    let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .args(["--color", "never", "--content"])
        .arg(content)
        .args(arguments)
        .output()
        .expect("the program starts");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let code = run.status.code().unwrap_or(-1);
    Answer { code, out: text(&run.stdout), err: text(&run.stderr) }
}

/// The facts of a recipe.
pub(crate) fn facts(content: &Path, recipe: &str) -> serde_json::Value {
    let answer = tourier(content, &["facts", recipe]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    serde_json::from_str(&answer.out).expect("facts are JSON")
}

/// A folder of this name for one test, empty.
pub(crate) fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("the folder can be cleared");
    }
    fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

/// A copy of the tiny course in a folder of this name.
pub(crate) fn course(name: &str) -> PathBuf {
    course_of(name, COURSE)
}

/// A copy of a course in a folder of this name.
pub(crate) fn course_of(name: &str, from: &str) -> PathBuf {
    let to = folder(name);
    copy(Path::new(from), &to);
    to
}

/// A folder with all that lies in it.
pub(crate) fn copy(from: &Path, to: &Path) {
    for entry in walkdir::WalkDir::new(from).into_iter().flatten() {
        let target = to.join(entry.path().strip_prefix(from).expect("below"));
        if entry.file_type().is_dir() {
            fs::create_dir_all(target).expect("a folder can be made");
        } else {
            fs::copy(entry.path(), target).expect("a file can be copied");
        }
    }
}

/// Compares with `tests/PATH`, or writes it where the golden files are made anew.
pub(crate) fn golden(path: &str, actual: &str) {
    let file = Path::new("tests").join(path);
    if std::env::var("UPDATE_GOLDEN").is_ok_and(|value| value == "1") {
        fs::write(&file, actual).expect("a golden file can be written");
        return;
    }
    let expected = fs::read_to_string(&file).unwrap_or_default();
    if let Some((line, (was, is))) = difference(&expected, actual) {
        panic!(
            "{} differs in line {line}:\n  was: {was}\n  is:  {is}\n\
             Where the new answer is right, run the tests once with UPDATE_GOLDEN=1.",
            file.display()
        );
    }
}

/// The first line that differs, and how.
fn difference(expected: &str, actual: &str) -> Option<(usize, (String, String))> {
    if expected == actual {
        return None;
    }
    let (mut was, mut is) = (expected.lines(), actual.lines());
    for number in 1.. {
        match (was.next(), is.next()) {
            (None, None) => {
                return Some((number, ("(the end)".into(), "(the end)".into())));
            }
            (one, other) if one == other => {}
            (one, other) => {
                let say = |line: Option<&str>| line.unwrap_or("(nothing)").to_owned();
                return Some((number, (say(one), say(other))));
            }
        }
    }
    None
}

/// A files with nothing on it: pages and handouts are made from no other file.
pub(crate) struct Bare;

impl tourier::product::EditionFiles for Bare {
    fn file(&self, path: &str) -> Result<Vec<u8>, tourier::site::Lacking> {
        Err(tourier::site::Lacking::NoFile(path.to_owned()))
    }
}
