//! Plans as a baker asks for them: the README's loaf at home, one that cannot be, and a
//! search that is stopped.
//!
//! `tests/outside/home.py` holds random plans against their recipes.
#![allow(clippy::disallowed_methods, reason = "tests write files and wait for a program")]

mod common;

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use common::{folder, tourier};

/// The recipe that the README prints.
fn plain_loaf(name: &str, changed: &[(&str, &str)]) -> PathBuf {
    let readme = fs::read_to_string("README.md").expect("the README");
    let from = readme.find("````markdown\n").expect("the recipe") + 13;
    let length = readme[from..].find("````").expect("its end");
    let text = readme[from..from + length].to_owned();
    let text = changed.iter().fold(text, |text, (old, new)| text.replace(old, new));
    let content = folder(name);
    fs::create_dir_all(content.join("recipes")).expect("a folder");
    let course = "title: Bread\nsummary: Loaves.\nlanguage: en\nawake: 07:00 to 22:30\n";
    fs::write(content.join("course.yaml"), course).expect("a course");
    fs::write(content.join("recipes/plain-loaf.md"), text).expect("a recipe");
    content
}

fn plan(content: &Path, ready: &str, form: &str) -> common::Answer {
    tourier(content, &["timetable", "plain-loaf", "--ready", ready, "--as", form])
}

/// The dough used to stand on the bench for nine hours, two allowed; it goes into the fridge
/// and comes out of it by hands that are awake.
#[test]
fn a_night_is_spent_in_the_hold() {
    let content = plain_loaf("home-night", &[]);
    let text = plan(&content, "2027-03-07 09:30", "text");
    assert_eq!(text.code, 0, "{}{}", text.out, text.err);
    for line in [
        "20:46–20:58  you                 Mix",
        "20:58–22:28  you                 Let it rise, bench",
        "22:28–22:30  you                 Let it rise: move to the fridge",
        "22:30–07:58  you                 Let it rise, fridge",
        "07:58–08:00  you                 Let it rise: take from the fridge",
        "08:00–08:05  you                 Shape and proof",
    ] {
        assert!(text.out.contains(line), "{line}\n{}", text.out);
    }
    let calendar = plan(&content, "2027-03-07 09:30", "ics").out;
    for summary in
        ["Let it rise: move to the fridge", "Let it rise: take from the fridge"]
    {
        let event = calendar.split("BEGIN:VEVENT").find(|event| event.contains(summary));
        assert!(event.is_some_and(|event| event.contains("BEGIN:VALARM")), "{calendar}");
    }
}

/// Without the hold there is no plan for the morning, and none is shown.
#[test]
fn no_plan_breaks_a_range() {
    let hold = "hold: up to 14 h in the fridge\n";
    let hollow = "until: the crust is dark and the base sounds hollow\n";
    let cool = "wait: 20 min (15 min to 1 h)\nwhere: rack\n";
    let content = plain_loaf("home-never", &[(hold, ""), (hollow, cool)]);
    let answer = plan(&content, "2027-03-07 09:30", "text");
    assert_eq!(answer.code, 1);
    assert!(!answer.out.contains("Let it rise"), "{}", answer.out);
    assert!(answer.out.contains("what would help: ready at"), "{}", answer.out);
    let later = answer.out.split("ready at ").nth(1).expect("a time");
    let again = plan(&content, &format!("2027-03-07 {}", &later[..5]), "text");
    assert_eq!(again.code, 0, "{}", again.out);
}

/// A class so large that its plan takes a while: Ctrl-C gives the best plan so far.
#[cfg(unix)]
#[test]
fn a_search_can_be_stopped() {
    use std::io::{BufRead, BufReader, Read};
    use std::process::{Command, Stdio};

    let content = folder("stopped");
    fs::create_dir_all(content.join("recipes")).expect("a folder");
    fs::create_dir_all(content.join("classes")).expect("a folder");
    fs::write(content.join("course.yaml"), "title: T\nsummary: s\nlanguage: en\n")
        .expect("a course");
    for (name, heat) in [("plain", 200), ("dark", 230)] {
        let mut text = format!(
            "---\ntitle: {name}\nsummary: s\nmakes: 12 buns\nformula:\n  dough:\n    - 600 g bread flour\n    - 300 g water\n---\n\n\
             ## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 11 min\n~~~\nDo it.\n\n"
        );
        for turn in 0..4 {
            let _ = write!(
                text,
                "## Rest {turn}\n~~~ticket\nwait: 20 min (13 min to 3 h)\nwhere: fridge\n~~~\nDo it.\n\n\
                 ## Turn {turn}\n~~~ticket\nhands: {} min\n~~~\nDo it.\n\n",
                5 + turn
            );
        }
        let _ = write!(
            text,
            "## Bake\n~~~ticket\nbake: {heat} °C, 23 min\nper tray: 6\n~~~\nDo it.\n"
        );
        fs::write(content.join(format!("recipes/{name}.md")), text).expect("a recipe");
    }
    let class = "title: C\nsessions:\n  - 2027-03-02 08:00 to 23:00\nbakers: 190\nwork in: pairs\n\
                 makes:\n  - recipe: plain\n    each: pair\n    pieces: 12\n  - recipe: dark\n    each: pair\n    pieces: 12\n\
                 kit: { mixer: 23, oven: 19, tray per oven: 3, fridge tray: 300, instructor: 1 }\ndemonstrate: [turn-0, turn-2]\n";
    fs::write(content.join("classes/c.yaml"), class).expect("a class");
    let mut running = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .args(["--color", "never", "--content"])
        .arg(&content)
        .args(["timetable", "c"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut said = BufReader::new(running.stderr.take().expect("its messages")).lines();
    let planning = |line: &String| line.starts_with("planning; Ctrl-C");
    let waits = said.by_ref().map_while(Result::ok).any(|line| planning(&line));
    let stopped = std::time::Instant::now();
    let ended = Command::new("kill").args(["-INT", &running.id().to_string()]).status();
    assert!(waits && ended.is_ok_and(|ended| ended.success()), "it was done too soon");
    let mut plan = String::new();
    let mut out = running.stdout.take().expect("its answer");
    out.read_to_string(&mut plan).expect("its answer");
    let code = running.wait().expect("its end").code();
    assert_eq!(code, Some(0), "{plan}");
    assert!(plan.contains("the search was stopped"), "{plan}");
    assert!(stopped.elapsed().as_secs() < 10, "it went on for {:?}", stopped.elapsed());
}
