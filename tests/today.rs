//! An evening under way: what is said is kept and taken as it was meant, each plan of the rest
//! builds on the one before.
//!
//! `tests/outside/evenings.py` carries whole evenings out and holds every plan against what
//! really happened.
#![allow(clippy::disallowed_methods, reason = "tests write files")]

mod common;

use std::cell::Cell;
use std::fs;
use std::path::{Path, PathBuf};

use common::{course_of, tourier};
use serde_json::Value;
use tourier::edition::Edition;
use tourier::evening::{Carried, Spoken, UnderWay, take_in};
use tourier::plan::{Effort, Watch};
use tourier::read::Source;

/// The demonstration course in a folder of its own.
fn course(name: &str) -> PathBuf {
    course_of(name, "content")
}

/// What the program makes of words said on the first evening.
fn said(content: &Path, words: &str, now: &str) -> Value {
    let now =
        if now.contains(' ') { now.to_owned() } else { format!("2027-03-02 {now}") };
    let words = ["today", "evening-3", words, "--now", &now, "--as", "json"];
    let answer = tourier(content, &words);
    serde_json::from_str(&answer.out).unwrap_or_else(|error| {
        panic!("{words:?}: {error}: {}{}", answer.out, answer.err)
    })
}

/// Start and end of a step of someone, as `18:05`.
fn times(plan: &Value, who: &str, step: &str) -> (String, String) {
    let acts = plan["activities"].as_array().expect("activities");
    let own = |act: &&Value| act["group"] == who && act["step"] == step;
    let act = acts.iter().find(own).unwrap_or_else(|| panic!("{who} has no {step}"));
    let time = |key: &str| act[key].as_str().expect("a time")[11..].to_owned();
    (time("start"), time("end"))
}

fn minutes(time: &str) -> i32 {
    let (hour, minute) = time.split_once(':').expect("a time");
    hour.parse::<i32>().expect("an hour") * 60 + minute.parse::<i32>().expect("a minute")
}

#[test]
fn a_step_said_late_ended_late_and_no_rest_is_cut_short() {
    let content = course("today-late");
    let plan = said(&content, "pairs 1-3: mix", "18:40");
    assert_eq!(times(&plan, "pair 1", "mix-the-dough").1, "18:40");
    // The dough rests for at least 30 minutes before the butter is locked in.
    let lock = times(&plan, "pair 1", "lock-in-the-butter").0;
    assert!(minutes(&lock) >= minutes("18:40") + 30, "{lock}");
    // Who was not spoken of has kept to the plan.
    assert_eq!(times(&plan, "pair 5", "mix-the-dough").1, "18:25");
    let acts = plan["activities"].as_array().expect("activities");
    let work = |act: &&Value| act["minutes"].as_i64() > Some(0);
    for act in acts.iter().filter(work) {
        let start = act["start"].as_str().expect("a time");
        let end = act["end"].as_str().expect("a time");
        let over = end <= "2027-03-02T18:40";
        assert!(over || start >= "2027-03-02T18:40", "{act}");
    }
}

#[test]
fn what_runs_goes_on_and_is_not_begun_again() {
    let content = course("today-runs");
    let plan = said(&content, "", "2027-03-03 20:50");
    let before = times(&plan, "pair 1", "bake");
    assert_eq!(before.0, "20:45");
    let plan = said(&content, "pair 7: brush with egg at 20:50", "2027-03-03 20:51");
    assert_eq!(times(&plan, "pair 1", "bake"), before);
    assert!(minutes(&times(&plan, "pair 7", "bake").0) >= minutes("20:51"));
}

#[test]
fn a_mixer_is_free_again_after_its_changeover() {
    let content = course("today-changeover");
    let plan =
        said(&content, "instructor: mix at 18:20; pairs 1-3: mix at 18:20", "18:20");
    let next = times(&plan, "pair 4", "mix-the-dough").0;
    // It was to begin at 18:15, and nobody said that it did not: it keeps to the plan.
    assert_eq!(next, "18:15");
    let all = "pairs 4-7: nothing yet; instructor: mix at 18:20; pairs 1-3: mix at 18:20";
    let plan = said(&content, all, "18:21");
    let next = times(&plan, "pair 4", "mix-the-dough").0;
    assert!(minutes(&next) >= minutes("18:25"), "{next}");
}

#[test]
fn the_second_evening_is_the_second() {
    let content = course("today-second");
    let both = tourier(&content, &["today", "evening-3", "all: cut", "--now", "18:10"]);
    assert_eq!(both.code, 2);
    assert!(both.err.contains("say which"), "{}", both.err);
    let plan = said(&content, "all: cut at 18:44", "2027-03-03 18:45");
    assert_eq!(times(&plan, "pair 2", "cut").1, "18:44");
    let rolled = times(&plan, "pair 2", "second-turn").1;
    assert_eq!(rolled, "20:52", "the first evening stays as it was");
}

#[test]
fn each_plan_builds_on_the_one_before() {
    let content = course("today-builds");
    said(&content, "oven 2 out", "2027-03-03 19:00");
    let plan = said(&content, "pair 3 gone", "2027-03-03 19:10");
    let acts = plan["activities"].as_array().expect("activities");
    for act in acts.iter().filter(|act| act["kind"] == "bake") {
        assert_ne!(act["oven"], 2, "{act}");
        assert_ne!(act["group"], "pair 3", "{act}");
    }
    let plan = said(
        &content,
        "oven 2 back; pairs 1, 2: brush with egg skipped",
        "2027-03-03 19:20",
    );
    let acts = plan["activities"].as_array().expect("activities");
    let bakes = || acts.iter().filter(|act| act["kind"] == "bake");
    assert!(bakes().all(|act| act["group"] != "pair 3"));
    let brushed = acts
        .iter()
        .filter(|act| act["step"] == "brush-with-egg" && act["kind"] == "hands");
    let who: Vec<&str> = brushed.filter_map(|act| act["group"].as_str()).collect();
    assert!(!who.contains(&"pair 1") && who.contains(&"pair 4"), "{who:?}");
    let kept =
        fs::read_to_string(content.join("classes/evening-3.day.txt")).expect("kept");
    assert_eq!(
        kept,
        "2027-03-03 19:00 oven 2 out\n2027-03-03 19:10 pair 3 gone\n\
         2027-03-03 19:20 oven 2 back; pairs 1, 2: brush with egg skipped\n"
    );
    said(&content, "take back", "2027-03-03 19:21");
    let kept =
        fs::read_to_string(content.join("classes/evening-3.day.txt")).expect("kept");
    assert!(kept.ends_with("2027-03-03 19:21 taken back\n"), "{kept}");
    let words = ["today", "evening-3", "--now", "2027-03-03 19:25"];
    let text = tourier(&content, &words);
    assert_eq!(text.code, 0, "{}{}", text.out, text.err);
    assert!(!text.out.contains("Group(") && !text.out.contains("pair 3"), "{}", text.out);
}

#[test]
fn what_cannot_be_taken_in_is_not_kept() {
    let content = course("today-unheard");
    for (words, now) in [
        ("pair 1: knead", "2027-03-02 18:40"),
        ("pair 99: mix", "2027-03-02 18:40"),
        ("3 ovens out", "2027-03-02 18:40"),
        ("oven 3 out", "2027-03-02 18:40"),
        ("pairs", "2027-03-02 18:40"),
        ("all: mix", "2027-05-02 18:99"),
        ("all: mix", "noon"),
        ("all: c", "2027-03-02 18:40"),
    ] {
        let answer = tourier(&content, &["today", "evening-3", words, "--now", now]);
        assert_eq!(answer.code, 2, "{words}: {}{}", answer.out, answer.err);
        assert!(!content.join("classes/evening-3.day.txt").exists(), "{words}");
    }
    let tried = ["today", "evening-3", "all: mix", "--now", "2027-03-02 18:40", "--try"];
    assert_eq!(tourier(&content, &tried).code, 0);
    assert!(!content.join("classes/evening-3.day.txt").exists());
}

#[test]
fn one_name_in_two_recipes_is_asked_about() {
    let content = course("today-two");
    let class = "title: Two\nsessions:\n  - 2027-03-02 10:00 to 20:00\nbakers: 2\nwork in: pairs\nmakes:\n  \
                 - recipe: crescents\n    each: pair\n    pieces: 10\n  \
                 - recipe: chocolate-batons\n    each: pair\n    pieces: 12\n\
                 kit: { mixer: 1, oven: 2, tray per oven: 4, fridge tray: 16, proofer tray: 16, instructor: 1 }\n";
    fs::write(content.join("classes/two.yaml"), class).expect("written");
    let asked = tourier(&content, &["today", "two", "pair 1: bake", "--now", "12:00"]);
    assert_eq!(asked.code, 2);
    assert!(asked.err.contains("crescents/bake"), "{}", asked.err);
    let told = tourier(&content, &["today", "two", "pair 1: cres/cut", "--now", "17:00"]);
    assert_ne!(told.code, 2, "{}{}", told.out, told.err);
    // Both are made from one dough, which is made once; rows say what they are of.
    let plan = tourier(&content, &["timetable", "two"]).out;
    assert_eq!(plan.matches("Mix the dough").count(), 1, "{plan}");
    assert!(plan.contains("Crescents: Bake"), "{plan}");
    assert!(!plan.contains("1, 1"), "{plan}");
}

/// What happened is nobody's but the teacher's.
#[test]
fn what_happened_is_never_published() {
    let content = course_of("today-published", "tests/golden/taught");
    let site = content.with_file_name("today-published-site");
    let _ = fs::remove_dir_all(&site);
    let to = site.display().to_string();
    assert_eq!(tourier(&content, &["publish", "--to", &to]).code, 0);
    let manifest = || {
        let time = |path: &Path| fs::metadata(path).and_then(|it| it.modified()).ok();
        time(&site.join("index.html"))
    };
    let before = manifest();
    let words = ["today", "two-evenings", "pair 1 late 7", "--now", "2027-03-02 18:20"];
    assert_ne!(tourier(&content, &words).code, 2);
    assert!(content.join("classes/two-evenings.day.txt").exists());
    assert_eq!(tourier(&content, &["publish", "--to", &to]).code, 0);
    assert_eq!(manifest(), before);
    let named = walkdir::WalkDir::new(&site).into_iter().flatten();
    let named: Vec<_> =
        named.filter(|it| it.path().to_string_lossy().contains(".day")).collect();
    assert!(named.is_empty(), "{named:?}");
}

/// What everybody does together is spoken of by its name, and what is not begun stays.
#[test]
fn a_break_is_said_and_left_out() {
    let content = course("today-break");
    let file = content.join("classes/evening-3.yaml");
    let class = fs::read_to_string(&file).expect("a class");
    fs::write(&file, class + "break: 10 min between 18:55 and 20:45\n").expect("a class");
    let at = |plan: &Value, day: &str| -> Vec<String> {
        let acts = plan["activities"].as_array().expect("activities");
        let own = acts.iter().filter(|act| act["kind"] == "break");
        let starts = own.filter_map(|act| act["start"].as_str());
        starts.filter(|start| start.starts_with(day)).map(|it| it[11..].into()).collect()
    };
    let before = said(&content, "all: nothing yet", "18:00");
    let held = at(&before, "2027-03-02").pop().expect("a break");
    let second = at(&before, "2027-03-03");
    let from = said(&content, &format!("all: break from {held}"), &held);
    assert_eq!(at(&from, "2027-03-02"), [held]);
    assert_eq!(at(&from, "2027-03-03"), second, "the next day's stays");
    let other = course("today-no-break");
    fs::copy(&file, other.join("classes/evening-3.yaml")).expect("a class");
    let without = said(&other, "all: break skipped", "18:20");
    assert_eq!(at(&without, "2027-03-02"), [""; 0]);
    assert_eq!(at(&without, "2027-03-03").len(), 1);
}

/// A class of three pairs in a school of one tray to an oven, each with two oven loads.
fn small_ovens(name: &str) -> PathBuf {
    let content = common::folder(name);
    let write = |file: &str, text: &str| {
        let file = content.join(file);
        fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
        fs::write(file, text).expect("a file");
    };
    write("course.yaml", "title: Buns\nsummary: Buns.\ntime zone: Europe/Dublin\n");
    write(
        "recipes/buns.md",
        "---\ntitle: Buns\nsummary: Buns.\nmakes: 12 buns\nformula:\n  dough:\n    \
         - 600 g bread flour\n    - 300 g water\n---\n\n\
         ## Mix\n~~~ticket\nuses: dough\nhands: 15 min\n~~~\nMix.\n\n\
         ## Rest\n~~~ticket\nwait: 30 min (20 min to 3 h)\nwhere: bench\n~~~\n\n\
         ## Bake\n~~~ticket\nbake: 180 °C, 20 min\nper tray: 6\n~~~\nBake.\n",
    );
    write(
        "classes/evening-3.yaml",
        "title: Buns\nsessions:\n  - 2027-03-02 18:00 to 21:00\n  \
         - 2027-03-03 18:00 to 19:00\nbakers: 2\nwork in: pairs\n\
         makes:\n  - recipe: buns\n    each: pair\n    pieces: 12\n\
         kit: { oven: 2, tray per oven: 1, instructor: 1 }\nwashing up: 10 min\n",
    );
    content
}

/// Of a step with several oven loads, what goes in later is the next load: the one that was in
/// the oven when something was last said keeps its time.
#[test]
fn the_next_oven_load_is_not_the_one_that_is_in() {
    let content = small_ovens("today-loads");
    let loads = |plan: &Value| -> Vec<(String, String)> {
        let acts = plan["activities"].as_array().expect("activities");
        let own = acts.iter().filter(|act| act["step"] == "bake");
        let time =
            |act: &Value, key: &str| act[key].as_str().expect("a time")[11..].to_owned();
        let mut all: Vec<_> =
            own.map(|act| (time(act, "start"), time(act, "end"))).collect();
        all.sort();
        all
    };
    let pair = |from: &str, to: &str| (from.to_owned(), to.to_owned());
    // With one oven the second load was to wait for the first.
    said(&content, "all: mix at 18:20; oven 2 out", "18:20");
    let begun = said(&content, "pair 1: bake from 18:50", "18:50");
    assert_eq!(loads(&begun)[0], pair("18:50", "19:10"));
    let both = said(&content, "oven 2 back; pair 1: bake from 18:58", "18:59");
    assert_eq!(loads(&both), [pair("18:50", "19:10"), pair("18:58", "19:18")]);
    // Said once more of the one that is in: nothing new.
    let again = said(&content, "pair 1: bake from 18:58", "19:00");
    assert_eq!(loads(&again), loads(&both));
}

/// What every session has is that of the session whose time is said: washing up that ended
/// late is told on the next day.
#[test]
fn what_is_said_of_yesterday_is_yesterdays() {
    let content = small_ovens("today-yesterday");
    let washing = |plan: &Value| -> Vec<String> {
        let acts = plan["activities"].as_array().expect("activities");
        let own = acts.iter().filter(|act| act["kind"] == "washing");
        own.map(|act| act["end"].as_str().unwrap_or("never").to_owned()).collect()
    };
    let before = washing(&said(&content, "all: nothing yet", "18:00"));
    let plan = said(&content, "all: washing up at 21:03", "2027-03-03 18:00");
    assert_eq!(plan["verdict"], "fits");
    assert_eq!(washing(&plan), ["2027-03-02T21:03", &before[1]]);
}

/// An oven that is out on the first of two evenings leaves the others to bake in; where none
/// is left, what would help is said.
#[test]
fn an_oven_is_lost_for_the_sessions_alone() {
    let content = small_ovens("today-out");
    let with_one = said(&content, "oven 2 out", "18:05");
    assert_eq!(with_one["verdict"], "fits");
    let none = said(&content, "oven 1 out", "18:06");
    assert_eq!(none["verdict"], "never");
    let remedies = none["remedies"].as_array().expect("remedies");
    assert!(!remedies.is_empty(), "{none}");
    assert_eq!(said(&content, "oven 1 back", "18:07")["verdict"], "fits");
}

/// Nobody works in an oven that is out of order: the plan ends with the last bake, and so does
/// what is said of when no plan ends earlier. From 18:05 mixing takes 15 min, the rest at least
/// 20, and the two loads 20 each, one after the other in the oven that is left: until 19:20.
#[test]
fn no_plan_ends_with_an_oven_that_is_out() {
    let content = small_ovens("today-bound");
    let file = content.join("classes/evening-3.yaml");
    let text = fs::read_to_string(&file).expect("a class");
    let text = text.replace("washing up: 10 min\n", "");
    let text = text.replace("  - 2027-03-03 18:00 to 19:00\n", "");
    fs::write(&file, text).expect("written");
    let plan = said(&content, "oven 2 out", "18:05");
    assert_eq!(plan["verdict"], "fits");
    let standing = plan["standing"].as_str().expect("words");
    let (_, bound) = standing.rsplit_once("ends before ").expect("a bound");
    assert!(bound < "19:30", "{standing}");
    let last = plan["activities"].as_array().expect("activities").iter();
    let last = last.filter_map(|act| act["end"].as_str()).max().expect("an end");
    assert!(&last[11..] >= bound, "{last}: {standing}");
}

/// How often whoever waits was asked whether the best plan so far will do: at each step of a
/// search.
#[derive(Default)]
struct Steps(Cell<usize>);

impl Watch for Steps {
    fn stop(&self) -> bool {
        self.0.set(self.0.get() + 1);
        false
    }

    fn explains(&self) {}
}

/// Who looks again goes on from what the day had come to: the same plan as from the beginning,
/// and nothing is searched for it. A line taken back leaves nothing behind.
#[test]
fn a_look_again_goes_on_from_the_last_one() {
    let content = small_ovens("today-carried");
    let files = ["course.yaml", "recipes/buns.md", "classes/evening-3.yaml"];
    let source = |path: &str| {
        let text = fs::read_to_string(content.join(path)).expect("a file");
        Source { path: path.into(), text }
    };
    let edition = Edition::new(&files.map(source), Vec::new(), Vec::new());
    let class = &edition.content.classes[0];
    let say = |words: &str, clock: &str, carried: &mut Option<Carried>| {
        let at = format!("2027-03-02T{clock}").parse().expect("a time");
        let spoken = Spoken { words, at, keeps: true };
        let steps = Steps::default();
        let effort = Effort::USUAL.watched(&steps);
        let evening = take_in(&content, (&edition, class), spoken, effort, carried);
        let plan = evening.and_then(UnderWay::plan).expect("a plan");
        (format!("{plan:?}"), steps.0.get())
    };
    let mut carried = None;
    let mut searched = Vec::new();
    for (words, clock) in [
        ("all: mix at 18:20; oven 2 out", "18:20"),
        ("pair 1: bake from 18:50", "18:50"),
        ("", "18:52"),
        ("", "18:53"),
        ("oven 2 back", "18:55"),
        ("take back", "18:56"),
        ("", "18:57"),
    ] {
        let (plan, steps) = say(words, clock, &mut carried);
        // Nothing is said once more here: only looked at from the beginning.
        let (anew, all) = say("", clock, &mut None);
        searched.push((steps, all));
        assert!(!words.is_empty() || plan == anew, "{clock}");
    }
    // Asked once, whether it was planned in haste; from the beginning also by the search.
    assert!(searched[1..].iter().all(|(again, anew)| *again == 1 && *anew > 1));
}
