//! What is said of a course's classes, letter by letter: plans, orders, calendars, pages. They
//! were looked at when they were kept; look again before keeping others.
#![allow(clippy::disallowed_methods, reason = "what was published is read")]

mod common;

use std::fs;
use std::path::Path;

use common::{folder, golden, tourier};

/// A course of three classes: one over two evenings, one in which everyone bakes alone, one
/// that does not fit.
const COURSE: &str = "tests/golden/taught";

/// What the program answers, kept under a name. A class that does not fit is no success.
fn answer(name: &str, arguments: &[&str], code: i32) {
    let answer = tourier(Path::new(COURSE), arguments);
    assert_eq!(answer.code, code, "{arguments:?}: {}", answer.err);
    golden(&format!("golden/classes/{name}"), &answer.out);
}

#[test]
fn plans() {
    for (class, code) in [("two-evenings", 0), ("alone", 0), ("short", 1)] {
        answer(&format!("{class}.txt"), &["timetable", class], code);
        answer(&format!("{class}.json"), &["timetable", class, "--as", "json"], code);
    }
    answer("two-evenings.ics", &["timetable", "two-evenings", "--as", "ics"], 0);
    answer("two-evenings.svg", &["timetable", "two-evenings", "--as", "svg"], 0);
}

#[test]
fn plans_at_home() {
    let bake = |time: &'static str| ["timetable", "plain-buns", "--ready", time];
    answer("home.txt", &bake("2027-03-07 09:00"), 0);
    answer("home-too-early.txt", &bake("2027-03-07 05:00"), 1);
    let json = [&bake("2027-03-07 09:00")[..], &["--as", "json"]].concat();
    answer("home.json", &json, 0);
    let calendar = [&bake("2027-03-07 09:00")[..], &["--as", "ics"]].concat();
    answer("home.ics", &calendar, 0);
}

#[test]
fn orders() {
    answer("order.txt", &["order", "two-evenings"], 0);
    answer("order.json", &["order", "two-evenings", "--as", "json"], 0);
    answer("order.csv", &["order", "two-evenings", "--as", "csv"], 0);
}

/// The pages, the course in metric and in US units.
#[test]
fn pages() {
    let site = folder("taught-site");
    let to = site.to_string_lossy();
    for units in ["metric", "us"] {
        let content = folder(&format!("taught-{units}"));
        for below in ["", "recipes", "classes"] {
            fs::create_dir_all(content.join(below)).expect("a folder");
            for file in fs::read_dir(Path::new(COURSE).join(below)).expect("the course") {
                let from = file.expect("a file").path();
                let Ok(text) = fs::read_to_string(&from) else { continue };
                let text = text.replace("units: metric", &format!("units: {units}"));
                let name = from.file_name().expect("a name");
                fs::write(content.join(below).join(name), text).expect("written");
            }
        }
        let answer = tourier(&content, &["publish", "--to", &to]);
        assert_eq!(answer.code, 0, "{}", answer.err);
        for class in ["two-evenings", "short"] {
            for (folder, whose) in
                [("taught-site-instructor", ""), ("taught-site", "-open")]
            {
                let page = site
                    .with_file_name(folder)
                    .join(format!("classes/{class}/index.html"));
                let page = fs::read_to_string(page).expect("a page");
                let lined = page.replace("><", ">\n<") + "\n";
                golden(&format!("golden/classes/{class}{whose}-{units}.html"), &lined);
            }
        }
    }
}
