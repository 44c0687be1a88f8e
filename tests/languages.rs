//! Courses written in French, German, Spanish and Japanese: no word of the format that has
//! one in the language reaches what is read. `tests/run` publishes the same courses for the
//! outside checks.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

use std::path::{Path, PathBuf};

use serde_json::Value;

mod common;
use common::tourier;

/// Each course, its recipe and its class.
const COURSES: [(&str, &str, &str); 4] = [
    ("de", "hoernchen", "erster-abend"),
    ("es", "medialunas", "primera-tarde"),
    ("fr", "croissants", "premier-soir"),
    ("ja", "crescents", "first-evening"),
];

/// Words that the recipes write as the format has them.
const FORMAT: [&str; 8] =
    ["fridge", "proofer", "rack", "mixer", "mixers", "oven", "tray", "instructor"];

fn content(language: &str) -> PathBuf {
    Path::new("tests/languages").join(language)
}

/// The format's words among those of a text.
fn ours(text: &str) -> Vec<&str> {
    let words = text.split(|sign: char| !sign.is_alphanumeric());
    words.filter(|word| FORMAT.contains(word)).collect()
}

/// Every text in a ticket's rows.
fn rows(facts: &Value) -> String {
    let steps = facts["parts"].as_array().expect("steps");
    let tickets = steps.iter().filter_map(|step| step.get("ticket"));
    let rows: Vec<String> = tickets
        .flat_map(|rows| rows.as_array().expect("rows"))
        .map(|row| format!("{} {}", row["label"], row["value"]))
        .collect();
    rows.join("\n")
}

#[test]
fn the_formats_words_are_said_in_the_language() {
    for (language, recipe, class) in COURSES {
        let proof = tourier(&content(language), &["proof"]);
        assert_eq!(proof.code, 0, "{language}: {}{}", proof.out, proof.err);
        let rows = rows(&common::facts(&content(language), recipe));
        assert!(rows.lines().count() > 20, "{language}: {rows}");
        assert!(ours(&rows).is_empty(), "{language}: {:?} in {rows}", ours(&rows));
        for told in [["timetable", class], ["scale", recipe], ["order", class]] {
            let answer = tourier(&content(language), &told);
            assert_eq!(answer.code, 0, "{language} {told:?}: {}", answer.err);
            assert!(ours(&answer.out).is_empty(), "{language} {told:?}: {}", answer.out);
        }
    }
}

/// The author's own word stays where it is one of the language's.
#[test]
fn the_authors_own_word_stays() {
    let folder = common::course_of("own-word", "tests/languages/de");
    let file = folder.join("recipes/hoernchen.md");
    let text = std::fs::read_to_string(&file).expect("the recipe");
    std::fs::write(&file, text.replace("where: fridge", "where: Kühlhaus"))
        .expect("written");
    let rows = rows(&common::facts(&folder, "hoernchen"));
    assert!(rows.contains("Kühlhaus") && !rows.contains("Kühlschrank"), "{rows}");
}
