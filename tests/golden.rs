//! The drawings and a page of the tiny course, letter by letter. They were looked at when
//! they were kept; look again before keeping others.
#![allow(clippy::disallowed_methods, reason = "what was published is read")]

mod common;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use common::{COURSE, folder, golden, tourier};

/// The tiny course, published once for all tests.
static SITE: LazyLock<PathBuf> = LazyLock::new(|| {
    let site = folder("golden-site");
    let to = site.to_string_lossy();
    let answer = tourier(Path::new(COURSE), &["publish", "--to", &to]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    site
});

fn published(path: &str) -> String {
    let file = SITE.join(path);
    fs::read_to_string(&file).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// SVG and HTML with a line an element, so that a difference can be read.
fn lined(text: &str) -> String {
    text.replace("><", ">\n<") + "\n"
}

/// Lock-in, turn, cut and time, in both systems of units where they differ most.
#[test]
fn drawings() {
    for (recipe, drawing) in [
        ("small-block", "lock-in-metric"),
        ("small-block", "first-turn-us"),
        ("small-crescents", "cut-metric"),
        ("small-crescents", "cut-us"),
        ("small-crescents", "timeline-metric"),
    ] {
        let svg = published(&format!("drawings/{recipe}/{drawing}.svg"));
        golden(&format!("golden/{recipe}-{drawing}.svg"), &lined(&svg));
    }
}

#[test]
fn a_technique_page() {
    let page = published("techniques/book-turn/index.html");
    golden("golden/book-turn.html", &lined(&page));
}

#[test]
fn marks_typed_in_a_recipe_are_shown_as_typed() {
    let page = published("recipes/small-crescents/index.html");
    assert!(page.contains("ten pieces, &amp; two halves &lt;left&gt; over."));
}

/// What the program did not make is left alone; what is no longer made is taken away.
#[test]
fn publishing_again() {
    let content = common::course("again-content");
    let site = folder("again-site");
    let to = site.to_string_lossy().into_owned();
    let publish = || tourier(&content, &["publish", "--to", &to]);
    assert_eq!(publish().code, 0);
    fs::write(site.join("notes.txt"), "mine").expect("written");
    assert!(publish().out.contains("nothing made"));
    fs::remove_file(content.join("techniques/book-turn.md")).expect("removed");
    let course = content.join("course.yaml");
    let text = fs::read_to_string(&course).unwrap_or_default();
    fs::write(&course, text.replace("[book-turn]", "[]")).expect("written");
    let answer = publish();
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(!site.join("techniques/book-turn/index.html").exists());
    assert_eq!(fs::read_to_string(site.join("notes.txt")).unwrap_or_default(), "mine");
}
