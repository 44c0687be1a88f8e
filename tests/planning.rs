//! Plans as a baker asks for them: the README's loaf at home, one that cannot be, and a
//! search that is stopped.
//!
//! `tests/outside/home.py` holds random plans against their recipes.
#![allow(clippy::disallowed_methods, reason = "tests write files and wait for a program")]

mod common;

use std::cell::Cell;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use common::{course_of, folder, tourier};
use tourier::edition::Edition;
use tourier::plan::{Answer, Reason, Watch, explain};
use tourier::store;

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

/// Someone who will have had enough after so many looks.
struct Impatient {
    looks: Cell<u32>,
}

impl Watch for Impatient {
    fn stop(&self) -> bool {
        let left = self.looks.get();
        self.looks.set(left.saturating_sub(1));
        left == 0
    }

    fn explains(&self) {}
}

/// Whenever the search for reasons is ended, what it says until then is said of a longer
/// search too, and each remedy was tried.
#[test]
fn reasons_and_remedies_can_be_stopped() {
    let (sources, found) =
        store::load(Path::new("content")).expect("the demonstration course");
    let edition = Edition::new(&sources, Vec::new(), found);
    let mut class = edition.content.class("evening-3").expect("the class").clone();
    let trays = class.kit.iter_mut().find(|(kit, _)| kit.value.name() == "proofer tray");
    trays.expect("trays").1 = 5;
    let explain = |looks: u32| {
        let watch = Impatient { looks: Cell::new(looks) };
        let why = explain(&class, &Answer::Never, edition.book(), Some(&watch));
        (why, looks - watch.looks.get())
    };
    let (whole, looked) = explain(u32::MAX);
    let kit = |reason: &Reason| matches!(reason, Reason::Kit { have: 5, .. });
    assert!(whole.reasons.iter().any(kit), "{:?}", whole.reasons);
    assert!(whole.remedies.len() > 1, "{:?}", whole.remedies);
    let (nothing, _) = explain(0);
    assert!(nothing.reasons.is_empty() && nothing.remedies.is_empty(), "{nothing:?}");
    let mut shorter = 0;
    for before_the_end in [3, 12, 40] {
        let (part, _) = explain(looked - before_the_end);
        assert!(part.reasons.iter().all(|it| whole.reasons.contains(it)), "{part:?}");
        assert!(part.remedies.iter().all(|remedy| remedy.end.is_some()), "{part:?}");
        assert!(part.remedies.len() <= whole.remedies.len(), "{part:?}");
        let known = !part.reasons.is_empty() || !part.remedies.is_empty();
        shorter += u32::from(known && part.remedies != whole.remedies);
    }
    assert!(shorter > 0, "ended in the middle, and something was known");
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

/// The course of `tests/faults`, with another class file.
fn classroom(name: &str) -> PathBuf {
    course_of(name, "tests/faults")
}

const CLASS: &str = "title: Evening\nsessions:\n  - 2027-03-02 10:00 to 16:00\n  - 2027-03-03 10:00 to 16:00\n\
    bakers: 4\nwork in: pairs\nmakes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n\
    kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 1 }\ndemonstrate: [mix]\n";

/// What somebody may write into a class file: old, new. Each is answered in words by `proof`
/// and by `timetable`, soon, and with a plan or without one, never with a panic or silence.
const NONSENSE: &[(&str, &str)] = &[
    ("makes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n", "makes: []\n"),
    ("makes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n", "makes: loaf\n"),
    ("makes:\n  - recipe: loaf\n    each: pair\n    pieces: 12\n", ""),
    ("recipe: loaf", "recipe: loav"),
    ("recipe: loaf", "recipe:"),
    ("recipe: loaf", "recipe: [loaf]"),
    ("each: pair", "each: class"),
    ("each: pair", "each: three"),
    ("each: pair", "each: dog"),
    ("each: pair", "each: 2"),
    ("each: pair", "every: pair"),
    ("pieces: 12", "pieces: 0"),
    ("pieces: 12", "pieces: -3"),
    ("pieces: 12", "pieces: 1.5"),
    ("pieces: 12", "pieces: many"),
    ("pieces: 12", "pieces: 99999999999999999999"),
    ("pieces: 12", "pieces: 12\n    batches: 1"),
    ("pieces: 12", "batches: 0"),
    ("pieces: 12", "batches: some"),
    ("pieces: 12", "piece: 12"),
    ("bakers: 4", "bakers: 0"),
    ("bakers: 4", "bakers: -4"),
    ("bakers: 4", "bakers: 2.5"),
    ("bakers: 4", "bakers: four"),
    ("bakers: 4", "bakers: 201"),
    ("bakers: 4", "bakers: 4000000000"),
    ("bakers: 4", "bakers:"),
    ("bakers: 4\n", ""),
    ("bakers: 4", "bakers: [1, 2]"),
    ("work in: pairs", "work in: pair"),
    ("work in: pairs", "work in: sixes"),
    ("work in: pairs", "work in: 2"),
    ("mixer: 2", "mixers: 2, mixer: 1"),
    ("mixer: 2", "mixxer: 2"),
    ("mixer: 2", "mixer: 0"),
    ("mixer: 2", "mixer: -1"),
    ("mixer: 2", "mixer: 1.5"),
    ("mixer: 2", "mixer: two"),
    ("mixer: 2", "mixer:"),
    ("mixer: 2", "mixer: 99999999999"),
    ("mixer: 2, ", ""),
    ("oven: 1, ", ""),
    ("oven: 1", "oven: 0"),
    ("oven: 1", "ovven: 1"),
    ("tray per oven: 2", "tray per oven: 0"),
    ("tray per oven: 2", "trays in oven: 2"),
    ("tray per oven: 2", "oven tray: 2"),
    ("instructor: 1", "instructor: 0"),
    ("instructor: 1", "teacher: 2"),
    ("instructor: 1", "tutors: 2"),
    ("instructor: 1", "instructor: 1, sieve: 3"),
    ("kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 1 }", "kit: 4 mixers"),
    ("kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 1 }", "kit: [mixer, oven]"),
    ("kit: { mixer: 2, oven: 1, tray per oven: 2, instructor: 1 }\n", ""),
    ("02 10:00 to 16:00", "02 21:00 to 18:00"),
    ("02 10:00 to 16:00", "02 10:00 to 10:00"),
    ("02 10:00 to 16:00", "02 25:00 to 26:00"),
    ("02 10:00 to 16:00", "02 10:00"),
    ("02 10:00 to 16:00", "32 10:00 to 16:00"),
    ("02 10:00 to 16:00", "02 10:00 until 16:00"),
    ("2027-03-02", "2027-02-30"),
    ("2027-03-02", "02.03.2027"),
    ("2027-03-02", "tomorrow"),
    ("03-03 10:00", "03-02 15:00"),
    ("03-03 10:00 to 16:00", "03-02 10:00 to 16:00"),
    (
        "sessions:\n  - 2027-03-02 10:00 to 16:00\n  - 2027-03-03 10:00 to 16:00\n",
        "sessions: []\n",
    ),
    ("sessions:\n  - 2027-03-02 10:00 to 16:00\n  - 2027-03-03 10:00 to 16:00\n", ""),
    (
        "sessions:\n  - 2027-03-02 10:00 to 16:00\n  - 2027-03-03 10:00 to 16:00\n",
        "sessions: { a: b }\n",
    ),
    ("demonstrate: [mix]", "demonstrate: [mixx]"),
    ("demonstrate: [mix]", "demonstrate: [rest]"),
    ("demonstrate: [mix]", "demonstrate: { mix: yes }"),
    ("demonstrate: [mix]", "changeover: soon"),
    ("demonstrate: [mix]", "changeover: -5 min"),
    ("demonstrate: [mix]", "changeover: 400 h"),
    ("demonstrate: [mix]", "starts every: 7 min"),
    ("demonstrate: [mix]", "starts every: 0 min"),
    ("demonstrate: [mix]", "starts every: often"),
    ("demonstrate: [mix]", "spare: 500 %"),
    ("demonstrate: [mix]", "spare: 5"),
    ("demonstrate: [mix]", "on the shelf: { butr: 2 kg }"),
    ("demonstrate: [mix]", "on the shelf: { butter: lots }"),
    ("demonstrate: [mix]", "on the shelf: butter"),
    ("demonstrate: [mix]", "changeover: { mixxer: 5 min }"),
    ("demonstrate: [mix]", "changeover: { mixer: soon }"),
    ("demonstrate: [mix]", "changeover: [5 min]"),
    ("demonstrate: [mix]", "arrival: early"),
    ("demonstrate: [mix]", "arrival: 7 h"),
    ("demonstrate: [mix]", "arrival: 4 h\nwashing up: 3 h"),
    ("demonstrate: [mix]", "late: pair 3"),
    ("demonstrate: [mix]", "late: { pair 3: 10 min }"),
    ("demonstrate: [mix]", "late: { dog: 10 min }"),
    ("demonstrate: [mix]", "late: { pair 1: much }"),
    ("demonstrate: [mix]", "late: { pair 1: [10 min] }"),
    ("demonstrate: [mix]", "talk: long"),
    ("demonstrate: [mix]", "talk: 10 min before mixx"),
    ("demonstrate: [mix]", "talk: 10 min before rest"),
    ("demonstrate: [mix]", "talk: [10 min, { a: b }]"),
    ("demonstrate: [mix]", "break: 15 min at 22:00"),
    ("demonstrate: [mix]", "break: 15 min at 25:00"),
    ("demonstrate: [mix]", "break: at 12:00"),
    ("demonstrate: [mix]", "break: 15 min between 13:00 and 12:00"),
    ("demonstrate: [mix]", "break: 15 min between 12:00"),
    ("demonstrate: [mix]", "breaks: 15 min"),
    ("demonstrate: [mix]", "tasting: 0 min"),
    ("demonstrate: [mix]", "washing up: some"),
    ("demonstrate: [mix]", "washing: 15 min"),
    ("demonstrate: [mix]", "preheat: 190 °C"),
    ("demonstrate: [mix]", "change of heat: 5 h"),
    ("demonstrate: [mix]", "pace: slow"),
    ("demonstrate: [mix]", "pace: 0"),
    ("demonstrate: [mix]", "pace: 100"),
    ("demonstrate: [mix]", "pace: { mixx: 2 }"),
    ("demonstrate: [mix]", "pace: { mix: [2] }"),
    ("demonstrate: [mix]", "helpers: -1"),
    ("demonstrate: [mix]", "helpers: 1.5"),
    ("demonstrate: [mix]", "helpers: many"),
    ("demonstrate: [mix]", "slack: 10 %"),
    ("demonstrate: [mix]", "slack: 4 h\narrival: 3 h"),
    ("title: Evening", "title:"),
    ("title: Evening", "titel: Evening"),
    ("bakers: 4", "bakers: 200"),
];

#[test]
fn nonsense_in_a_class_file_is_answered_in_words() {
    assert!(NONSENSE.len() >= 80, "{}", NONSENSE.len());
    let content = classroom("nonsense");
    let file = content.join("classes/evening.yaml");
    for (from, to) in NONSENSE {
        assert!(CLASS.contains(from), "{from}");
        fs::write(&file, CLASS.replacen(from, to, 1)).expect("a class");
        let since = std::time::Instant::now();
        let proof = tourier(&content, &["proof"]);
        let plan = tourier(&content, &["timetable", "evening"]);
        let took = since.elapsed();
        let said = format!("{to}\n{}{}\n{}{}", proof.out, proof.err, plan.out, plan.err);
        assert!(!said.contains("panicked") && plan.code <= 2, "{said}");
        let answered = [&proof, &plan].map(|answer| {
            let all = format!("{}{}", answer.out, answer.err);
            let word = ["classes/evening", "note:", "why:", "not decided"];
            word.iter().any(|word| all.contains(word))
        });
        assert!(answered[1], "the plan says nothing of it: {said}");
        // 200 bakers are a matter of the plan alone.
        assert!(answered[0] || *to == "bakers: 200", "proof says nothing of it: {said}");
        // A second on a quiet machine; 200 bakers take 17 until it is proven that nothing helps.
        assert!(took.as_secs() < 120, "{to}: {took:?}");
    }
}

/// A pair has as many hands as bakers: both knead at once where there are two mixers.
#[test]
fn both_bakers_of_a_pair_work_at_once() {
    let content = classroom("both-bakers");
    let class =
        CLASS.replace("each: pair", "each: baker").replace("demonstrate: [mix]\n", "");
    fs::write(
        content.join("classes/evening.yaml"),
        class.replace("mixer: 2", "mixer: 4"),
    )
    .expect("a class");
    let plan = tourier(&content, &["timetable", "evening", "--as", "json"]);
    let plan: serde_json::Value = serde_json::from_str(&plan.out).expect("a plan");
    let mixed: Vec<i64> = plan["activities"]
        .as_array()
        .into_iter()
        .flatten()
        .filter(|act| act["step"] == "mix" && act["kind"] == "hands")
        .filter_map(|act| act["start_min"].as_i64())
        .collect();
    assert_eq!(mixed.len(), 4);
    assert!(mixed.iter().all(|start| *start == mixed[0]), "{mixed:?}");
}

/// A teacher named on a ticket is the class's own, and no second one.
#[test]
fn a_teacher_on_a_ticket_is_the_one_who_teaches() {
    let content = classroom("one-teacher");
    let loaf = content.join("recipes/loaf.md");
    let text = fs::read_to_string(&loaf).expect("a recipe");
    fs::write(&loaf, text.replace("kit: 1 mixer", "kit: 1 mixer, 1 instructor"))
        .expect("a recipe");
    fs::write(
        content.join("classes/evening.yaml"),
        CLASS.replace("mixer: 2", "mixer: 9"),
    )
    .expect("a class");
    let plan = tourier(&content, &["timetable", "evening", "--as", "json"]);
    let plan: serde_json::Value = serde_json::from_str(&plan.out)
        .unwrap_or_else(|_| panic!("{}{}", plan.out, plan.err));
    let mut busy: Vec<(i64, i64)> = plan["activities"]
        .as_array()
        .into_iter()
        .flatten()
        .filter(|act| act["uses"]["instructor"] == 1)
        .filter_map(|act| Some((act["start_min"].as_i64()?, act["end_min"].as_i64()?)))
        .collect();
    busy.sort_unstable();
    assert_eq!(busy.len(), 3, "shown once, and with each pair");
    assert!(busy.windows(2).all(|two| two[0].1 <= two[1].0), "{busy:?}");
}

/// A time that a night leaves out is said to be none.
#[test]
fn clocks_that_go_forward_are_said() {
    let content = plain_loaf("forward", &[]);
    let course =
        "title: Bread\nsummary: Loaves.\nlanguage: en\ntime zone: Europe/Dublin\n";
    fs::write(content.join("course.yaml"), course).expect("a course");
    let answer = plan(&content, "2027-03-28 01:30", "text");
    assert_ne!(answer.code, 0);
    assert!(answer.err.contains("clocks go forward"), "{}", answer.err);
}

/// What a class has beside its recipes has its time, and nobody works in it.
#[test]
fn what_is_beside_the_recipes_has_its_place() {
    let content = classroom("beside");
    let class = CLASS.replace("oven: 1", "oven: 2")
        + "arrival: 10 min\nlate: { pair 2: 25 min }\ntalk: 5 min\n\
           break: 15 min between 11:00 and 12:30\ntasting: 10 min\nwashing up: 15 min\n\
           preheat: 30 min\nhelpers: 1\nslack: 20 min\npace: { mix: 2 }\n";
    fs::write(content.join("classes/evening.yaml"), &class).expect("a class");
    let plan = tourier(&content, &["timetable", "evening", "--as", "json"]);
    let plan: serde_json::Value = serde_json::from_str(&plan.out)
        .unwrap_or_else(|_| panic!("{}{}", plan.out, plan.err));
    assert_eq!(plan["verdict"], "fits");
    let spans = |kind: &str| -> Vec<(i64, i64, String)> {
        let acts = plan["activities"].as_array().into_iter().flatten();
        let own = acts.filter(|act| act["kind"] == kind && act["minutes"] != 0);
        own.filter_map(|act| {
            let group = act["group"].as_str()?.to_owned();
            Some((act["start_min"].as_i64()?, act["end_min"].as_i64()?, group))
        })
        .collect()
    };
    let work = spans("hands");
    // Minute 0 is 10:00 of the first day; the second opens a day later.
    for (from, to, who) in &work {
        let minute = from % 1440;
        assert!(minute >= 10, "{who} works while people arrive");
        assert!(who != "pair 2" || minute >= 25, "{who} is not there yet");
        assert!(to % 1440 <= 360 - 20, "{who} works in the slack");
    }
    for kind in ["arrival", "talk", "break", "tasting", "washing"] {
        let all = spans(kind);
        assert!(!all.is_empty(), "no {kind}");
        for (from, to, _) in all {
            let late = |who: &str| who == "pair 2" && matches!(kind, "arrival" | "talk");
            let clash = work.iter().find(|at| at.0 < to && from < at.1 && !late(&at.2));
            assert_eq!(clash, None, "in the {kind} from {from} to {to}");
        }
    }
    let text = tourier(&content, &["timetable", "evening"]).out;
    assert!(text.contains("helper") && text.contains(" on: "), "{text}");
    // Twice the time for a pair; who shows it has the recipe's own.
    let mix = |who: &str| {
        let acts = plan["activities"].as_array().into_iter().flatten();
        let mut own = acts.filter(|act| act["step"] == "mix" && act["group"] == who);
        own.find_map(|act| act["minutes"].as_i64())
    };
    let (shown, done) = (mix("instructor"), mix("pair 1"));
    assert_eq!(shown.map(|minutes| 2 * minutes), done);
}
