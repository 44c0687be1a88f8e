//! `tourier changes`: two content folders compared in a reader's words.
#![allow(clippy::disallowed_methods, reason = "files are written and read")]

mod common;

use std::fs;
use std::path::Path;

use common::{course, tourier};

/// The tiny course with some of its lines changed.
fn changed(name: &str, changes: &[(&str, &str, &str)]) -> std::path::PathBuf {
    let content = course(name);
    for (file, from, to) in changes {
        let file = content.join(file);
        let text = fs::read_to_string(&file).expect("the file is there");
        assert!(text.contains(from), "no `{from}` in {}", file.display());
        fs::write(&file, text.replacen(from, to, 1)).expect("written");
    }
    content
}

#[test]
fn the_differences_are_said_as_text_and_as_json() {
    let changes = [("recipes/small-crescents.md", "bake: 190 °C", "bake: 180 °C")];
    let new = changed("changes-new", &changes).to_string_lossy().into_owned();
    let here = Path::new(common::COURSE);
    let text = tourier(here, &["changes", common::COURSE, &new]);
    assert_eq!(text.code, 0, "{}", text.err);
    assert!(text.out.contains("  bake 180 °C, was 190 °C\n"), "{}", text.out);

    let json = tourier(here, &["changes", common::COURSE, &new, "--as", "json"]);
    let json: serde_json::Value = serde_json::from_str(&json.out).expect("JSON");
    let recipe = &json["recipes"][0];
    assert_eq!(recipe["name"], "small-crescents");
    assert_eq!(recipe["became"], "changed");
    let oven = recipe["changes"].as_array().expect("a list");
    let oven = oven.iter().find(|one| one["about"] == "oven").expect("the oven");
    assert_eq!(oven["step"], "bake");

    let none = tourier(here, &["changes", common::COURSE, common::COURSE]);
    assert_eq!(none.out, "nothing differs that a reader would see\n");
}

#[test]
fn an_edition_with_an_error_is_not_compared() {
    let changes = [("recipes/small-block.md", "bread flour", "bread flower")];
    let new = changed("changes-faulty", &changes).to_string_lossy().into_owned();
    let answer = tourier(Path::new(common::COURSE), &["changes", common::COURSE, &new]);
    assert_eq!(answer.code, 1);
    assert!(answer.err.contains("bread flower"), "{}", answer.err);
}
