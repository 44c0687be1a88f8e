//! What the program answers to a fault: place, underlined words, reason and remedy, word
//! for word. Each case is the tiny course with one thing wrong; its answer stands in
//! `tests/messages/`.
#![allow(clippy::disallowed_methods, reason = "the cases are written to disk")]

mod common;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use common::{Answer, copy, course, folder, golden, tourier};

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

/// The tiny course in the folder `content` of a folder for one test.
fn desk(name: &str) -> PathBuf {
    let desk = folder(name);
    let copy = course(&format!("{name}-course"));
    fs::rename(copy, desk.join("content")).expect("it can be moved");
    desk
}

/// Runs the program in a folder, as it is typed there.
fn typed(folder: &Path, words: &[&str]) -> Answer {
    let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .current_dir(folder)
        .args(words)
        .output()
        .expect("the program starts");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    Answer {
        code: run.status.code().unwrap_or(-1),
        out: text(&run.stdout),
        err: text(&run.stderr),
    }
}

/// What was typed in a folder without a course, and in one with the tiny course.
const NOWHERE: [&[&str]; 9] = [
    &["proof"],
    &["publish"],
    &["preview"],
    &["handout", "crescents"],
    &["proof", "--content", "a-file"],
    &["changes", "past", "content"],
    &["start", "taken"],
    &["draft", "old-card.txt"],
    &["--theme", "nowhere", "proof"],
];
const TYPED: [&[&str]; 50] = [
    &["prof"],
    &["build"],
    &["bake-it-all"],
    &["proof", "content"],
    &["publish", "content"],
    &["publish", "--output", "site"],
    &["publish", "--out", "site"],
    &["publish", "--too", "site"],
    &["publish", "--to"],
    &["publish", "--bright"],
    &["preview", "--port", "none"],
    &["preview", "--port", "99999"],
    &["proof", "--as", "jsn"],
    &["proof", "--as", "paper"],
    &["proof", "--json"],
    &["--colour", "never", "proof"],
    &["handout"],
    &["handout", "small-crescent"],
    &["handout", "bread"],
    &["handout", "small-block", "--kind", "big"],
    &["handout", "small-block", "--labels", "large"],
    &["handout", "small-block", "--labels", "70 x 37 mm", "--booklet"],
    &["scale", "small-crescents", "--pieces", "-3"],
    &["scale", "small-crescents", "--pieces", "0"],
    &["scale", "small-crescents", "--pieces", "many"],
    &["scale", "small-crescents", "--pieces", "1.5"],
    &["scale", "small-crescents", "--batches", "-1"],
    &["scale", "small-crescents", "--batches", "none"],
    &["scale", "small-crescents", "--flour", "1"],
    &["scale", "small-crescents", "--flour", "-1kg"],
    &["scale", "small-crescents", "--tin", "23"],
    &["scale", "small-crescents", "--pieces", "3", "--batches", "2"],
    &["scale", "small-crescents", "--pieces", "3", "--pieces", "4"],
    &["scale", "recipes/small-crescents.md", "small-block"],
    &["facts"],
    &["facts", "--schema", "course"],
    &["facts", "--schema=cours"],
    &["order", "evening"],
    &["timetable", "evening"],
    &["timetable", "small-crescnts"],
    &["timetable", "small-crescents"],
    &["timetable", "small-crescents", "--ready", "tomorrow"],
    &["timetable", "small-crescents", "--done", "x"],
    &["today"],
    &["today", "evening", "all: mix"],
    &["convert"],
    &["convert", "2", "cups", "flour"],
    &["convert", "2 cups bread flour", "stones"],
    &["completions", "csh"],
    &["start"],
];

/// Each line that was typed, and what is answered: in the program's own words, with what to
/// type instead, and none of them a fault of the machine's.
#[test]
fn what_is_typed_wrong_is_answered_with_what_to_type() {
    let nowhere = folder("typed-nowhere");
    fs::write(nowhere.join("a-file"), "mine").expect("written");
    fs::create_dir(nowhere.join("taken")).expect("made");
    fs::write(nowhere.join("taken/mine.txt"), "mine").expect("written");
    let desk = desk("typed-desk");
    let mut text = String::new();
    for (folder, lines) in [(&nowhere, &NOWHERE[..]), (&desk, &TYPED[..])] {
        for words in lines {
            let answer = typed(folder, words);
            let quoted = words.iter().map(|word| match word.contains(' ') {
                true => format!("\"{word}\""),
                false => (*word).to_owned(),
            });
            let line = quoted.collect::<Vec<_>>().join(" ");
            assert_eq!(answer.code, 2, "{line}: {}{}", answer.out, answer.err);
            assert_eq!(answer.out, "", "{line}");
            assert!(answer.err.starts_with("tourier: "), "{line}: {}", answer.err);
            for bare in ["error:", "Usage:", "invalid digit", "there are: \n", "tip:"] {
                assert!(!answer.err.contains(bare), "{line}: {}", answer.err);
            }
            text.push_str(&format!("$ tourier {line}\n{}\n", answer.err));
        }
        text.push_str("----\n\n");
    }
    golden("messages/typed.txt", &text);
}

/// What is done in a class by now, said wrong in each way that it can be.
#[test]
fn what_is_done_is_answered_where_it_is_wrong() {
    let desk = desk("typed-done");
    fs::create_dir_all(desk.join("content/classes")).expect("made");
    let class = "title: C\nsessions:\n  - 2027-03-02 08:00 to 20:00\nbakers: 4\nwork in: pairs\n\
                 makes:\n  - recipe: small-crescents\n    each: pair\n    pieces: 12\n\
                 kit: { mixer: 2, oven: 2, tray per oven: 4, instructor: 1 }\n";
    fs::write(desk.join("content/classes/evening.yaml"), class).expect("written");
    let mut text = String::new();
    for (now, done) in [
        ("09:00", "pairs"),
        ("09:00", "pairs 1-2"),
        ("09:00", "pairs 1-9: mix"),
        ("09:00", "pair 1: mixx"),
        ("03:00", "pair 1: mix"),
        ("soon", "pair 1: mix"),
    ] {
        let words = ["today", "evening", done, "--now", now];
        let answer = typed(&desk, &words);
        assert_eq!(answer.code, 2, "{done}: {}{}", answer.out, answer.err);
        text.push_str(&format!("$ \"{done}\" --now {now}\n{}\n", answer.err));
    }
    golden("messages/done.txt", &text);
}

/// Every unit and every way to say an oven that the help of `convert` names is one.
#[test]
fn convert_knows_all_that_its_help_lists() {
    let desk = desk("typed-convert");
    let help = typed(&desk, &["convert", "--help"]).out;
    let help = help.split_whitespace().collect::<Vec<_>>().join(" ");
    let unit = help.split("[UNIT]").nth(2).expect("the unit is explained");
    let unit = unit.split("Options:").next().unwrap_or(unit);
    let quoted: Vec<&str> = unit.split('`').skip(1).step_by(2).collect();
    assert!(quoted.len() >= 9, "{help}");
    for word in quoted {
        let oven = word.contains(['°', ' ']) || word.contains("fan");
        let words = match (oven, word.split_once(' ')) {
            (true, Some((_, degrees))) if degrees.contains('°') => vec!["convert", word],
            (true, _) => vec!["convert", "190 °C", word],
            (false, _) => vec!["convert", "2 cups bread flour", word],
        };
        let answer = typed(&desk, &words);
        assert_eq!(answer.code, 0, "{words:?}: {}", answer.err);
        assert!(answer.out.contains(" = "), "{words:?}: {}", answer.out);
    }
}

/// The examples that the help of each command gives, run where a course like the
/// demonstration's is; those that take minutes, and the preview, stand in other tests.
#[test]
fn the_examples_of_the_help_work() {
    let desk = folder("typed-examples");
    copy(Path::new("content"), &desk.join("content"));
    copy(Path::new("content"), &desk.join("past/autumn"));
    let mut run = 0;
    for command in ["convert", "scale", "facts", "order", "changes", "manual"] {
        let help = typed(&desk, &[command, "--help"]).out;
        let lines = help.lines().filter_map(|line| line.split_once("tourier "));
        for (before, line) in lines {
            if !before.trim().is_empty() && !before.trim_start().starts_with("Example") {
                continue;
            }
            let line = line.split(" > ").next().unwrap_or(line);
            let answer = typed(
                &desk,
                &parted(line).iter().map(String::as_str).collect::<Vec<_>>(),
            );
            assert_eq!(answer.code, 0, "tourier {line}: {}", answer.err);
            assert!(!answer.out.is_empty(), "tourier {line}");
            run += 1;
        }
    }
    assert!(run >= 6, "{run} examples");
}

/// The words of a line as a shell parts them.
fn parted(line: &str) -> Vec<String> {
    let pieces = line.split('"').enumerate();
    pieces
        .flat_map(|(at, piece)| match at % 2 {
            0 => piece.split_whitespace().map(str::to_owned).collect(),
            _ => vec![piece.to_owned()],
        })
        .collect()
}
