//! `tourier start`: what it writes is sound, and it writes over nothing.
#![allow(clippy::disallowed_methods, reason = "files are written and read")]

mod common;

use std::fs;

use common::{folder, tourier};

#[test]
fn the_course_to_begin_from_publishes_without_a_fault() {
    let here = folder("start");
    let content = here.join("a-course");
    let started = tourier(&here, &["start", &content.to_string_lossy()]);
    assert_eq!(started.code, 0, "{}", started.err);
    assert!(started.out.contains("tourier publish --content"), "{}", started.out);

    let proof = tourier(&content, &["proof", "--as", "json"]);
    assert_eq!((proof.code, proof.out.trim()), (0, "[]"), "{}", proof.err);

    let site = here.join("site");
    let published = tourier(&content, &["publish", "--to", &site.to_string_lossy()]);
    assert_eq!(published.code, 0, "{}", published.err);
    assert_eq!(published.err, "");
    for file in [
        "index.html",
        "recipes/soft-rolls/index.html",
        "recipes/corner-pockets/corner-pockets-student-metric-a4.pdf",
        "techniques/letter-turn/index.html",
        "classes/first-evening/index.html",
        "classes/first-evening/sessions.ics",
    ] {
        assert!(site.join(file).is_file(), "{file}");
    }
    let plan =
        fs::read_to_string(here.join("site-instructor/classes/first-evening/plan.ics"));
    assert!(plan.is_ok_and(|plan| plan.contains("BEGIN:VEVENT")), "the class fits");
}

#[test]
fn a_folder_that_is_not_empty_is_left_alone() {
    let here = folder("start-taken");
    fs::write(here.join("course.yaml"), "mine").expect("written");
    let answer = tourier(&here, &["start", &here.to_string_lossy()]);
    assert_eq!(answer.code, 2, "{}", answer.err);
    assert!(answer.err.contains("is not empty"), "{}", answer.err);
    let files = fs::read_dir(&here).expect("the folder opens").count();
    let mine = fs::read_to_string(here.join("course.yaml")).expect("there");
    assert_eq!((files, mine.as_str()), (1, "mine"));
}

#[test]
fn a_file_in_the_folders_place_is_left_alone() {
    let here = folder("start-file");
    let file = here.join("content");
    fs::write(&file, "mine").expect("written");
    let answer = tourier(&here, &["start", &file.to_string_lossy()]);
    assert_eq!(answer.code, 3, "{}", answer.err);
    assert_eq!(fs::read_to_string(&file).expect("there"), "mine");
}

/// From an empty folder, as an instructor does it: what is advised works.
#[test]
fn the_advice_works_where_it_is_given() {
    for (name, dir) in [("plain", "content"), ("here", "."), ("spaced", "my course")] {
        let desk = folder(&format!("start-{name}")).join("desk");
        fs::create_dir(&desk).expect("it can be made");
        let typed = |words: &[&str]| {
            let run = std::process::Command::new(env!("CARGO_BIN_EXE_tourier"))
                .current_dir(&desk)
                .args(words)
                .output()
                .expect("the program starts");
            let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
            (run.status.code(), text(&run.stdout), text(&run.stderr))
        };
        let (code, out, err) = typed(&["start", dir]);
        assert_eq!(code, Some(0), "{err}");
        let ignored = fs::read_to_string(desk.join(".gitignore")).unwrap_or_default();
        let says = ignored.contains("/output/")
            && ignored.contains("/output-instructor/")
            && ignored.contains(".*.tourier-*");
        assert_eq!(says, dir != ".", "{ignored}");
        let advice = out.split("make it with:  tourier ").nth(1).expect("an advice");
        let pieces = advice.trim().split('"').enumerate();
        let words: Vec<&str> = pieces
            .flat_map(|(at, piece)| match at % 2 {
                0 => piece.split_whitespace().collect(),
                _ => vec![piece],
            })
            .collect();
        let (code, _, err) = typed(&words);
        assert_eq!((code, err.as_str()), (Some(0), ""), "{words:?}");
        let site = if dir == "." { "../site" } else { "output" };
        assert!(desk.join(site).join("index.html").is_file(), "{words:?}");
        let (code, out, err) = typed(&words);
        assert_eq!(code, Some(0), "{err}");
        assert!(out.contains("nothing made"), "{out}");
    }
    let mine = folder("start-mine");
    fs::write(mine.join(".gitignore"), "mine").expect("written");
    let run = std::process::Command::new(env!("CARGO_BIN_EXE_tourier"))
        .current_dir(&mine)
        .args(["start", "content"])
        .output()
        .expect("the program starts");
    assert!(run.status.success());
    assert_eq!(fs::read_to_string(mine.join(".gitignore")).expect("there"), "mine");
}

/// A draft that is asked for within a course's own folder does not begin a second course
/// below it.
#[test]
fn a_draft_within_a_course_asks_which_folder_is_meant() {
    let course = folder("start-within");
    fs::write(course.join("course.yaml"), "title: Mine\nsummary: Mine.\n")
        .expect("written");
    fs::write(course.join("rolls.txt"), "Rolls\n\n500 g flour\n\nMix.\n")
        .expect("written");
    let typed = |words: &[&str]| {
        let mut run = std::process::Command::new(env!("CARGO_BIN_EXE_tourier"));
        let run = run.current_dir(&course).args(words).output().expect("it starts");
        (run.status.code(), String::from_utf8_lossy(&run.stderr).into_owned())
    };
    let (code, said) = typed(&["draft", "rolls.txt"]);
    assert_eq!(code, Some(2), "{said}");
    assert!(said.contains("`--content .`"), "{said}");
    assert!(!course.join("content").exists());
    let (code, said) = typed(&["--content", ".", "draft", "rolls.txt"]);
    assert_eq!(code, Some(0), "{said}");
    assert!(course.join("recipes/rolls.md").is_file());
    fs::remove_file(course.join("recipes/rolls.md")).expect("it goes");
    let draft = ["--content", ".", "draft", "rolls.txt"];
    let mut run = std::process::Command::new(env!("CARGO_BIN_EXE_tourier"));
    let run = run.current_dir(&course).args(draft).output().expect("it starts");
    let said = String::from_utf8_lossy(&run.stdout).into_owned();
    assert!(
        said.contains("tourier proof --content ."),
        "what is advised is found: {said}"
    );
}
