//! The list of faults in `src/fault/README.md` with its examples, and the sound course that they
//! change.
#![allow(
    dead_code,
    clippy::disallowed_methods,
    reason = "the list and the course are read; each test uses a part of this"
)]

use std::fs;
use std::path::Path;

pub(crate) const LIST: &str = "src/fault/README.md";
/// The sound course that the examples change.
pub(crate) const GROUND: &str = "tests/faults";

/// One row of the list.
pub(crate) struct Row {
    pub(crate) name: String,
    pub(crate) severity: String,
    pub(crate) file: String,
    pub(crate) good: String,
    pub(crate) bad: String,
}

pub(crate) fn rows() -> Vec<Row> {
    let text = fs::read_to_string(LIST).expect("the list is there");
    let rows = text.lines().filter(|line| line.starts_with("| `"));
    rows.map(row).collect()
}

fn row(line: &str) -> Row {
    let cells: Vec<&str> = line.split('|').map(str::trim).collect();
    let [_, name, severity, _, file, good, bad, _] = cells[..] else {
        panic!("a row has six cells: {line}")
    };
    let plain = |cell: &str| {
        let inner = cell.strip_prefix("`` ").and_then(|cell| cell.strip_suffix(" ``"));
        inner.unwrap_or_else(|| cell.trim_matches('`')).replace('⏎', "\n")
    };
    Row {
        name: plain(name),
        severity: severity.to_owned(),
        file: plain(file),
        good: plain(good),
        bad: repeated(&plain(bad)),
    }
}

/// `×7 Turn §` seven times, numbered.
fn repeated(text: &str) -> String {
    let Some((count, rest)) = text.strip_prefix('×').and_then(|it| it.split_once(' '))
    else {
        return text.to_owned();
    };
    let count: usize = count.parse().expect("a number");
    (0..count).map(|at| rest.replace('§', &at.to_string())).collect()
}

/// A copy of the ground course with the row's bad example in it.
pub(crate) fn changed(row: &Row) -> std::path::PathBuf {
    // Several tests of a program do so at the same time: each has its own folder.
    let thread = std::thread::current();
    let test = thread.name().unwrap_or_default().replace(':', "-");
    let content = Path::new(env!("CARGO_TARGET_TMPDIR")).join("faults").join(test);
    let content = content.join(&row.name);
    let _ = fs::remove_dir_all(&content);
    crate::common::copy(Path::new(GROUND), &content);
    if let Some(new) = row.file.strip_prefix('+') {
        let file = content.join(new);
        let folder = file.parent().expect("it lies in a folder");
        fs::create_dir_all(folder).expect("a folder is made");
        fs::write(file, &row.bad).expect("a file is written");
        return content;
    }
    let file = content.join(&row.file);
    let bytes = fs::read(&file).expect("the file is there");
    let good = row.good.as_bytes();
    if good.is_empty() {
        return content;
    }
    let at = bytes.windows(good.len()).position(|window| window == good);
    let at = at.unwrap_or_else(|| panic!("{}: {} is not there", row.name, row.good));
    let parts = [&bytes[..at], row.bad.as_bytes(), &bytes[at + good.len()..]];
    fs::write(file, parts.concat()).expect("the file is written");
    content
}
