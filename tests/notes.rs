//! Notes from the bench: kept beside the recipe, shown to the author, never to students.
#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{COURSE, course_of, tourier};

const SAID: &str = "baked 2 min longer, by the left wall";

/// A recipe of the tiny course.
fn recipe(content: &Path) -> String {
    let recipes = fs::read_dir(content.join("recipes")).expect("recipes");
    let mut names: Vec<String> = recipes
        .filter_map(|it| it.expect("a file").file_name().into_string().ok())
        .filter_map(|file| file.strip_suffix(".md").map(str::to_owned))
        .collect();
    names.sort();
    names.remove(0)
}

fn course(name: &str) -> (PathBuf, String) {
    let content = course_of(name, COURSE);
    let recipe = recipe(&content);
    (content, recipe)
}

fn note(content: &Path, recipe: &str, said: &str) -> common::Answer {
    tourier(content, &["note", recipe, said, "--on", "2027-03-03"])
}

#[test]
fn a_note_is_kept_shown_and_taken_up() {
    let (content, recipe) = course("notes-kept");
    assert_eq!(note(&content, &recipe, SAID).code, 0);
    assert_eq!(note(&content, &recipe, "10 g less\nsalt").code, 0);
    let file = content.join("recipes").join(format!("{recipe}.bench.txt"));
    let text = fs::read_to_string(&file).expect("notes");
    assert_eq!(text, format!("2027-03-03 {SAID}\n2027-03-03 10 g less salt\n"));
    let found = tourier(&content, &["proof"]);
    assert_eq!(found.code, 0, "a note stops nothing: {}", found.err);
    let all = format!("{}{}", found.out, found.err);
    assert_eq!(all.matches("note-open").count(), 2, "{all}");
    assert_eq!(note(&content, &recipe, "taken up 1").code, 0);
    let found = tourier(&content, &["proof"]);
    let all = format!("{}{}", found.out, found.err);
    assert_eq!(all.matches("note-open").count(), 1, "{all}");
    assert!(!all.contains(SAID), "{all}");
    assert_eq!(note(&content, &recipe, "taken up 1").code, 2);
    assert_eq!(note(&content, &recipe, "taken up 7").code, 2);
    assert_eq!(note(&content, &recipe, "taken up").code, 0);
    let shown = tourier(&content, &["note", &recipe]).out;
    assert_eq!(shown.matches("(taken up 2027-03-03)").count(), 2, "{shown}");
}

#[test]
fn what_cannot_be_noted_is_answered() {
    let (content, recipe) = course("notes-wrong");
    let near = format!("{recipe}x");
    let answer = note(&content, &near, SAID);
    assert!(answer.code == 2 && answer.err.contains(&recipe), "{}", answer.err);
    assert!(!content.join(format!("recipes/{near}.bench.txt")).exists());
    assert_eq!(tourier(&content, &["note", &recipe, SAID, "--on", "tomorrow"]).code, 2);
    assert_eq!(note(&content, &recipe, &"long ".repeat(200)).code, 2);
    let file = content.join(format!("recipes/{recipe}.bench.txt"));
    assert!(!file.exists(), "nothing was kept");
    fs::write(&file, b"2027-03-03 \xff\xfe").expect("written");
    assert_eq!(note(&content, &recipe, SAID).code, 3);
    let found = tourier(&content, &["proof"]);
    assert!(found.code == 1 && (found.out + &found.err).contains("unreadable-file"));
    assert_eq!(fs::read(&file).expect("notes"), b"2027-03-03 \xff\xfe", "left as it was");
}

#[test]
fn many_at_once_lose_none() {
    let (content, recipe) = course("notes-many");
    std::thread::scope(|scope| {
        for number in 0..8 {
            let (content, recipe) = (&content, &recipe);
            scope.spawn(move || {
                assert_eq!(note(content, recipe, &format!("note {number}")).code, 0);
            });
        }
    });
    let file = content.join(format!("recipes/{recipe}.bench.txt"));
    let text = fs::read_to_string(file).expect("notes");
    let mut lines: Vec<&str> = text.lines().collect();
    lines.sort_unstable();
    lines.dedup();
    assert_eq!(lines.len(), 8, "{text}");
    assert!(lines.iter().all(|line| line.starts_with("2027-03-03 note ")), "{text}");
}

/// Every file below a folder that holds these bytes.
fn holding(folder: &Path, said: &str) -> Vec<String> {
    let files = walkdir::WalkDir::new(folder).into_iter().filter_map(Result::ok);
    let holds = |path: &Path| {
        let bytes = fs::read(path).expect("a file");
        bytes.windows(said.len()).any(|part| part == said.as_bytes())
    };
    let plain = files.filter(|entry| entry.file_type().is_file() && holds(entry.path()));
    let name = |entry: walkdir::DirEntry| {
        let below = entry.path().strip_prefix(folder).expect("below");
        below.to_string_lossy().into_owned()
    };
    plain.map(name).collect()
}

#[test]
fn only_the_author_sees_a_note() {
    let (content, recipe) = course("notes-published");
    let before = course_of("notes-before", COURSE);
    let site = content.with_file_name("notes-site");
    let room = content.with_file_name("notes-site-instructor");
    for folder in [&site, &room] {
        let _ = fs::remove_dir_all(folder);
    }
    let to = site.to_str().expect("a path");
    let publish = || tourier(&content, &["publish", "--to", to, "--among-others"]);
    let first = publish();
    assert_eq!(first.code, 0, "{}", first.err);
    let pages = |folder: &Path| {
        let files = walkdir::WalkDir::new(folder).sort_by_file_name();
        let files = files.into_iter().filter_map(Result::ok);
        let plain = files.filter(|entry| entry.file_type().is_file());
        let own = plain.filter(|entry| !entry.path().ends_with("manifest.txt"));
        let read = |entry: walkdir::DirEntry| {
            (entry.path().to_owned(), fs::read(entry.path()).expect("a file"))
        };
        own.map(read).collect::<Vec<_>>()
    };
    let stood = pages(&site);
    assert_eq!(note(&content, &recipe, SAID).code, 0);
    assert_eq!(publish().code, 0);
    assert_eq!(holding(&site, SAID), [""; 0], "of students");
    assert_eq!(holding(&room, SAID), ["index.html"]);
    let now = pages(&site);
    let changed = stood.iter().zip(&now).filter(|(one, other)| one != other);
    let changed: Vec<_> = changed.map(|(one, _)| &one.0).collect();
    // The manifest alone tells of both folders.
    assert!(changed.len() <= 1 && stood.len() == now.len(), "{changed:?}");
    let (old, new) =
        (before.to_str().expect("a path"), content.to_str().expect("a path"));
    let says = tourier(&content, &["changes", old, new]).out;
    assert!(!says.contains(SAID) && !says.contains("bench.txt"), "{says}");
}
