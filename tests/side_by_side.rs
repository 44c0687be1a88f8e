//! Several courses published by one command: each in a folder of its own, the same as if it
//! were published alone; what one lacks stops no other, and is told at the end.
#![allow(clippy::disallowed_methods, reason = "courses are written, and looked at")]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::common::{Answer, COURSE, copy, folder, tourier};

mod common;

/// A course without recipes at `school/PATH`.
fn course(school: &Path, path: &str, language: &str) -> PathBuf {
    let content = school.join(path);
    fs::create_dir_all(&content).expect("a folder is made");
    let text = format!("title: Course\nsummary: s\nlanguage: {language}\n");
    fs::write(content.join("course.yaml"), text).expect("a text is written");
    content
}

/// Runs the program in the school's folder.
fn run(school: &Path, arguments: &[&str]) -> Answer {
    let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .args(["--color", "never"])
        .args(arguments)
        .current_dir(school)
        .output()
        .expect("the program starts");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let code = run.status.code().unwrap_or(-1);
    Answer { code, out: text(&run.stdout), err: text(&run.stderr) }
}

/// Publishes these courses of the school to `site`.
fn publish(school: &Path, courses: &[&str]) -> Answer {
    let mut arguments = vec!["publish", "--to", "site"];
    arguments.extend(courses.iter().flat_map(|course| ["--content", course]));
    run(school, &arguments)
}

/// Every file below a folder.
fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let all = walkdir::WalkDir::new(folder).into_iter().flatten();
    let files = all.filter(|it| it.file_type().is_file());
    let read = |it: walkdir::DirEntry| {
        let path = it.path().strip_prefix(folder).expect("below").to_owned();
        (path, fs::read(it.path()).expect("it is read"))
    };
    files.map(read).collect()
}

#[test]
fn each_is_what_it_would_be_alone() {
    let school = folder("side-by-side");
    copy(Path::new(COURSE), &school.join("bread/content"));
    course(&school, "gebaeck", "de");
    let answer = publish(&school, &["bread/content", "gebaeck"]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(answer.out.contains("site/bread/index.html"), "{}", answer.out);
    // Each speaks its own language, and the last word has that of the first.
    assert!(answer.out.contains("der Kurs beginnt bei site/gebaeck/index.html"));
    assert!(answer.out.ends_with("2 courses are published\n"), "{}", answer.out);
    for (content, name) in [("bread/content", "bread"), ("gebaeck", "gebaeck")] {
        let alone = school.join(format!("alone-{name}"));
        let to = alone.to_string_lossy();
        let answer = tourier(&school.join(content), &["publish", "--to", &to]);
        assert_eq!(answer.code, 0, "{}", answer.err);
        for beside in ["", "-instructor"] {
            let one = files(&school.join(format!("site/{name}{beside}")));
            let other = files(&school.join(format!("alone-{name}{beside}")));
            assert_eq!(one.keys().collect::<Vec<_>>(), other.keys().collect::<Vec<_>>());
            assert!(one == other, "{name}{beside} is other bytes");
        }
    }
    assert!(files(&school.join("site/bread")).len() > 30, "it was compared");
    let again = publish(&school, &["bread/content", "gebaeck"]);
    assert_eq!(again.code, 0, "{}", again.err);
    assert!(again.out.contains("nothing made"), "{}", again.out);
}

#[test]
fn a_fault_in_one_stops_no_other() {
    let school = folder("side-by-side-fault");
    for name in ["a", "b", "c"] {
        course(&school, name, "en");
    }
    assert_eq!(publish(&school, &["a", "b", "c"]).code, 0);
    let before = files(&school.join("site/b"));
    for name in ["a", "c"] {
        let text = "title: Course\nsummary: anew\n";
        fs::write(school.join(name).join("course.yaml"), text).expect("written");
    }
    fs::write(school.join("b/course.yaml"), "titel: Course\n").expect("written");
    let answer = publish(&school, &["a", "b", "c"]);
    assert_eq!(answer.code, 1, "{}", answer.err);
    assert!(answer.err.contains("unknown-key"), "{}", answer.err);
    let last = answer.err.lines().last().expect("a last word");
    assert_eq!(last, "2 of 3 courses published; not published: b");
    assert!(files(&school.join("site/b")) == before, "the last edition stands");
    for name in ["a", "c"] {
        let page = fs::read_to_string(school.join(format!("site/{name}/index.html")));
        assert!(page.is_ok_and(|page| page.contains("anew")), "{name} is new");
    }
    assert!(!answer.out.contains("courses are published"), "{}", answer.out);
}

#[test]
fn the_gravest_reason_is_the_exit_code() {
    let school = folder("side-by-side-machine");
    for name in ["a", "b", "c", "d"] {
        course(&school, name, "en");
    }
    fs::write(school.join("a/course.yaml"), "titel: Course\n").expect("written");
    // A folder of someone else's files is not published to.
    fs::create_dir_all(school.join("site/b")).expect("made");
    fs::write(school.join("site/b/theirs.txt"), "theirs").expect("written");
    fs::remove_dir_all(school.join("c")).expect("taken away");
    let answer = publish(&school, &["a", "b", "c", "d"]);
    assert_eq!(answer.code, 3, "{}", answer.err);
    let last = answer.err.lines().last().expect("a last word");
    assert_eq!(last, "tourier: 1 of 4 courses published; not published: a, b, c");
    assert!(school.join("site/d/index.html").is_file());
    assert_eq!(files(&school.join("site/b")).len(), 1);
    // Without the machine's, wrong use is the gravest.
    let answer = publish(&school, &["a", "c", "d"]);
    assert_eq!(answer.code, 2, "{}", answer.err);
}

#[test]
fn courses_of_one_name_are_refused_before_any_work() {
    let school = folder("side-by-side-names");
    course(&school, "bread", "en");
    course(&school, "old/bread/content", "en");
    let answer = publish(&school, &["bread", "old/bread/content"]);
    assert_eq!(answer.code, 2, "{}", answer.err);
    assert!(answer.err.contains("are both called bread"), "{}", answer.err);
    assert!(!school.join("site").exists());
}

#[test]
fn one_course_stands_in_the_folder_itself_and_quiet_says_nothing() {
    let school = folder("side-by-side-one");
    course(&school, "a", "en");
    course(&school, "b", "en");
    assert_eq!(publish(&school, &["a"]).code, 0);
    assert!(school.join("site/index.html").is_file());
    let two = ["publish", "-q", "--to", "two", "--content", "a", "--content", "b"];
    let answer = run(&school, &two);
    assert_eq!((answer.code, &*answer.out, &*answer.err), (0, "", ""));
    assert!(school.join("two/a/index.html").is_file());
}

#[test]
fn other_commands_take_one_course() {
    let school = folder("side-by-side-other");
    course(&school, "a", "en");
    let answer = run(&school, &["proof", "--content", "a", "--content", "a"]);
    assert_eq!(answer.code, 2, "{}", answer.err);
    assert!(answer.err.contains("--content stands there twice"), "{}", answer.err);
}
