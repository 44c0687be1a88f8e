//! `tourier changes`: two content folders compared in a reader's words.
#![allow(clippy::disallowed_methods, reason = "files are written and read")]

mod common;

use std::fs;
use std::path::Path;

use common::{course, tourier};
use tourier::changes::since;
use tourier::edition::Edition;
use tourier::store;
use tourier::theme::Theme;

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
    let changes = [("recipes/small-crescents.md", "bake: 205 °C", "bake: 195 °C")];
    let new = changed("changes-new", &changes).to_string_lossy().into_owned();
    let here = Path::new(common::COURSE);
    let text = tourier(here, &["changes", common::COURSE, &new]);
    assert_eq!(text.code, 0, "{}", text.err);
    assert!(text.out.contains("  bake 195 °C, was 205 °C\n"), "{}", text.out);

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

/// The course with an older edition of itself below it, in which the oven was hotter.
fn with_past(name: &str, line: &str) -> std::path::PathBuf {
    let head = format!("title: One Evening of Layers\n{line}\n");
    let content =
        changed(name, &[("course.yaml", "title: One Evening of Layers\n", &head)]);
    let past = content.join("past/autumn");
    let changes = [("recipes/small-crescents.md", "bake: 205 °C", "bake: 215 °C")];
    let old = changed(&format!("{name}-old"), &changes);
    fs::create_dir_all(content.join("past")).expect("made");
    fs::rename(old, past).expect("moved");
    content
}

#[test]
fn the_handout_says_what_changed_since_the_edition_before() {
    let content = with_past("changes-since", "changes since: past/autumn");
    let (sources, faults) = store::load(&content).expect("the course");
    let (old, old_faults) = store::load(&content.join("past/autumn")).expect("the past");
    let past = Edition::new(&old, Vec::new(), old_faults);
    let edition = Edition::new(&sources, Vec::new(), faults).after(Some(past));
    let theme = Theme::built_in();
    let words = tourier::read::words_in(&theme, "en").expect("the words");
    let recipe = edition.content.recipe("small-crescents").expect("the recipe");
    let since = since(&edition, recipe, &words).expect("something differs");
    assert_eq!(since.edition, "Trial");
    assert_eq!(since.changes[0].metric, "bake 205 °C, was 215 °C");
    // It is marked where it stands: at the oven of the step that bakes.
    let mark = tourier::sheet::SinceMark::Step {
        step: "bake".to_owned(),
        row: Some("oven".to_owned()),
    };
    assert_eq!(since.marks, [mark]);

    let to = content.with_extension("site");
    let print = ["handout", "small-crescents", "--to", &to.to_string_lossy()];
    let answer = tourier(&content, &print);
    assert_eq!(answer.code, 0, "{}", answer.err);
}

#[test]
fn only_a_folder_of_the_content_can_be_the_edition_before() {
    for (name, line, fault) in [
        ("missing", "changes since: past/winter", "\n  missing-edition\n"),
        ("above", "changes since: ../changes-since", "\n  bad-value\n"),
        ("root", "changes since: /etc", "\n  bad-value\n"),
    ] {
        let content = with_past(&format!("changes-{name}"), line);
        let answer = tourier(&content, &["proof"]);
        assert_eq!(answer.code, 1, "{}", answer.err);
        assert!(answer.err.contains(fault), "{}", answer.err);
    }
}

/// A link may lead out of the content folder, so none is followed.
#[cfg(unix)]
#[test]
fn a_link_is_no_edition_before() {
    let content = with_past("changes-link", "changes since: past/linked");
    let to = content.join("past/autumn");
    let to = fs::canonicalize(to).expect("it is there");
    std::os::unix::fs::symlink(to, content.join("past/linked")).expect("linked");
    let answer = tourier(&content, &["proof"]);
    assert!(answer.err.contains("\n  missing-edition\n"), "{}", answer.err);
}

#[test]
fn an_edition_before_with_an_error_is_left_out_with_a_caution() {
    let content = with_past("changes-broken", "changes since: past/autumn");
    let file = content.join("past/autumn/recipes/small-block.md");
    let text = fs::read_to_string(&file).expect("there");
    fs::write(&file, text.replace("bread flour", "bread flower")).expect("written");
    let answer = tourier(&content, &["proof"]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(answer.err.contains("  Caution: "), "{}", answer.err);
    assert!(answer.err.contains("\n  faulty-edition\n"), "{}", answer.err);
}

#[test]
fn an_edition_with_an_error_is_not_compared() {
    let changes = [("recipes/small-block.md", "bread flour", "bread flower")];
    let new = changed("changes-faulty", &changes).to_string_lossy().into_owned();
    let answer = tourier(Path::new(common::COURSE), &["changes", common::COURSE, &new]);
    assert_eq!(answer.code, 1);
    assert!(answer.err.contains("bread flower"), "{}", answer.err);
}
