//! What the program answers to a fault: place, underlined words, reason and remedy, word
//! for word. Each case is the tiny course with one thing wrong; its answer stands in
//! `tests/messages/`.
#![allow(clippy::disallowed_methods, reason = "the cases are written to disk")]

mod common;

use std::fs;
use std::path::Path;

use common::{Answer, course, golden, tourier};

const BLOCK: &str = "recipes/small-block.md";
const CRESCENTS: &str = "recipes/small-crescents.md";

/// The tiny course with `from` replaced by `to` in one file, checked.
fn proof(name: &str, (file, from, to): (&str, &str, &str), arguments: &[&str]) -> Answer {
    let content = course(&format!("message-{name}"));
    let file = content.join(file);
    let text = fs::read_to_string(&file).expect("the file is there");
    assert!(text.contains(from), "{name}: the course has no `{from}`");
    fs::write(&file, text.replacen(from, to, 1)).expect("the file can be written");
    tourier(&content, arguments)
}

/// The whole answer as it is kept: the exit code, then both outputs.
fn keep(name: &str, answer: &Answer) {
    let text = format!(
        "exit {}\n--- standard output\n{}--- standard error\n{}",
        answer.code, answer.out, answer.err
    );
    golden(&format!("messages/{name}.txt"), &text);
}

/// A fault that stops publishing.
fn fault(name: &str, change: (&str, &str, &str)) {
    let answer = proof(name, change, &["proof"]);
    assert_eq!(answer.code, 1, "{name}: {}{}", answer.out, answer.err);
    keep(name, &answer);
}

#[test]
fn the_course_itself_has_no_fault() {
    let answer = tourier(Path::new(common::COURSE), &["proof"]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    keep("no-fault", &answer);
}

#[test]
fn misspelt_ingredient() {
    fault("misspelt-ingredient", (BLOCK, "bread flour", "bread flower"));
}

#[test]
fn unused_ingredient() {
    fault("unused-ingredient", (CRESCENTS, "uses: wash\n", ""));
}

#[test]
fn sheet_too_big_for_its_dough() {
    let change = (CRESCENTS, "sheet: 55 x 24 cm", "sheet: 150 x 100 cm");
    keep("sheet-too-big", &proof("sheet-too-big", change, &["proof"]));
}

#[test]
fn temperature_without_its_degree() {
    fault("brace-misspelt", (CRESCENTS, "{205 °C}", "{205 C}"));
}

#[test]
fn bad_yaml_line() {
    fault("bad-yaml", (BLOCK, "makes: 850 g", "makes: [850 g"));
}

#[test]
fn lesson_names_a_recipe_that_is_not_there() {
    fault("lesson-missing", ("course.yaml", "small-crescents]", "small-cresents]"));
}

#[test]
fn included_recipe_is_not_there() {
    fault("included-missing", (CRESCENTS, "small-block.md", "large-block.md"));
}

#[test]
fn no_course() {
    let content = course("message-no-course");
    fs::remove_file(content.join("course.yaml")).expect("the file can be removed");
    let answer = tourier(&content, &["proof"]);
    assert_eq!(answer.code, 1);
    keep("no-course", &answer);
}

#[test]
fn several_faults_come_in_one_run() {
    let change = (
        BLOCK,
        "bread flour\n    - 250 g whole milk",
        "bread flower\n    - 250 g whole mlik",
    );
    fault("several", change);
}

#[test]
fn faults_for_programs() {
    let change = (BLOCK, "bread flour", "bread flower");
    let answer = proof("as-json", change, &["proof", "--as", "json"]);
    let faults: serde_json::Value = serde_json::from_str(&answer.out).expect("JSON");
    let line = &faults[0];
    assert_eq!(line["file"], BLOCK);
    assert_eq!(line["severity"], "error");
    keep("as-json", &answer);
}

#[test]
fn a_fault_stops_publishing() {
    let content = course("message-publish");
    let file = content.join(BLOCK);
    let text = fs::read_to_string(&file).expect("the file is there");
    fs::write(&file, text.replace("bread flour", "bread flower")).expect("written");
    let to = content.with_extension("site");
    let answer = tourier(&content, &["publish", "--to", &to.to_string_lossy()]);
    assert_eq!(answer.code, 1);
    assert!(!to.exists(), "nothing is written");
    keep("publish", &answer);
}

/// The wash has egg in it; that it is never heated would only follow from the unread line.
#[test]
fn a_line_that_cannot_be_read_brings_no_other_fault() {
    fault("bake-unreadable", (CRESCENTS, "bake: ", "bake: quite "));
}
