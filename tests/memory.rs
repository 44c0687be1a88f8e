//! What a preview takes over from the edition before is what it would have made anew: no
//! source but the promise.
#![allow(clippy::disallowed_methods, reason = "the course is read")]

use std::path::Path;

use tourier::edition::Edition;
use tourier::product::{Memory, Plates};
use tourier::read::Source;
use tourier::store;
use tourier::theme::Theme;
use tourier::words::Words;

fn words() -> Words {
    let theme = Theme::built_in();
    tourier::read::words("words/en.yaml", theme.text("words/en.yaml")).expect("words")
}

fn sheets(plates: &Plates) -> String {
    serde_json::to_string(&plates.recipes).expect("sheets are plain data")
}

/// Edits of a text: another amount, another word, another time, nothing at its end.
fn edits(text: &str) -> Vec<String> {
    let changes =
        [("500 g", "510 g"), ("10 g", "12 g"), ("10 min", "11 min"), ("the ", "that ")];
    let mut edited: Vec<String> = changes
        .into_iter()
        .filter(|(old, _)| text.contains(old))
        .map(|(old, new)| text.replacen(old, new, 1))
        .collect();
    edited.push(format!("{text}\n"));
    edited
}

#[test]
fn what_is_remembered_is_what_would_be_made() {
    let (files, _) = store::load(Path::new("content")).expect("the demonstration course");
    let (words, memory) = (words(), Memory::default());
    let (mut compared, mut differed) = (0, 0);
    let first = Edition::new(&files, Vec::new(), Vec::new());
    let before = Plates::remembered(&first, &words, &memory).expect("a course");
    let before = sheets(&before);
    for at in 0..files.len() {
        for text in edits(&files[at].text) {
            let mut changed: Vec<Source> = files.clone();
            changed[at].text = text;
            let edition = Edition::new(&changed, Vec::new(), Vec::new());
            let remembered = Plates::remembered(&edition, &words, &memory);
            let anew = Plates::new(&edition, &words);
            assert_eq!(remembered.is_some(), anew.is_some(), "{}", files[at].path);
            let Some((remembered, anew)) = remembered.zip(anew) else { continue };
            assert_eq!(sheets(&remembered), sheets(&anew), "{}", files[at].path);
            assert!(remembered.figures == anew.figures, "{}", files[at].path);
            compared += 1;
            differed += usize::from(sheets(&anew) != before);
        }
    }
    assert!(compared > 50 && differed > 25, "{compared} compared, {differed} differed");
}
