//! One dough for several bakes at home: it is made once, and weighs what its bakes need, with what
//! is lost, in the plan, the formulas, the facts, the order and the handouts. Values worked out by
//! hand, and bakes at random.
#![allow(clippy::disallowed_methods, reason = "the content is written")]

mod common;

use std::fs;
use std::path::PathBuf;

use jiff::civil::DateTime;
use proptest::prelude::*;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::plan::{Caveat, Effort, SharedDough, Timetable, Verdict, home};
use tourier::read::Source;
use tourier::work::work;

/// A dough of 1000 g of which so many percent are lost, and bakes that take so many grams of it.
fn texts(loss: i64, bakes: &[(i64, i64)]) -> Vec<Source> {
    let file = |path: String, text: String| Source { path, text };
    let base = format!(
        "---\ntitle: Base\nsummary: s\nmakes: {} g\nloss: {loss} %\nformula:\n  dough:\n    - 600 g bread flour\n    - 400 g water\n---\n\n## Mix\n~~~ticket\nuses: dough\nhands: 10 min\n~~~\n\n## Chill\n~~~ticket\nwait: 1 h (30 min to 8 h)\nwhere: fridge\n~~~\n",
        1000 - 10 * loss
    );
    let mut files = vec![
        file(
            "course.yaml".into(),
            "title: c\nsummary: s\nawake: 06:00 to 22:00\n".into(),
        ),
        file("recipes/base.md".into(), base),
    ];
    for (at, (grams, minutes)) in bakes.iter().enumerate() {
        let text = format!(
            "---\ntitle: Bake {at}\nsummary: s\nmakes: 8 rolls\nformula:\n  dough:\n    - {grams} g [base](base.md)\n---\n\n## Shape\n~~~ticket\nuses: dough\nhands: 15 min\n~~~\n\n## Proof\n~~~ticket\nwait: {minutes} min ({minutes} min to 3 h)\n~~~\n\n## Bake\n~~~ticket\nbake: 200 °C, 20 min\nper tray: 8\n~~~\n\n## Cool\n~~~ticket\nwait: 20 min\nwhere: rack\nhold: up to 4 h\n~~~\n"
        );
        files.push(file(format!("recipes/bake-{at}.md"), text));
    }
    files
}

fn edition(loss: i64, bakes: &[(i64, i64)]) -> Edition {
    Edition::new(&texts(loss, bakes), Vec::new(), Vec::new())
}

/// The same as a folder.
fn course(name: &str, loss: i64, bakes: &[(i64, i64)]) -> PathBuf {
    let content = common::folder(name);
    fs::create_dir(content.join("recipes")).expect("a folder");
    for source in texts(loss, bakes) {
        fs::write(content.join(&*source.path), &*source.text).expect("a text");
    }
    content
}

fn planned(edition: &Edition, bakes: usize) -> Timetable {
    let one = Scaling::Batches(exact(1, 1));
    let recipe =
        |at: usize| edition.content.recipe(&format!("bake-{at}")).expect("it is there");
    let works: Vec<_> = (0..bakes)
        .map(|at| work(recipe(at), &one, edition.book()).expect("it scales"))
        .collect();
    let works: Vec<_> = works.iter().collect();
    let ready: DateTime = "2027-03-07T17:00".parse().expect("a time");
    home(&works, ready, edition.book(), Effort::USUAL).expect("it is laid out")
}

fn mixings(plan: &Timetable) -> usize {
    let steps = plan.activities.iter().filter_map(|it| it.deed.step.as_ref());
    steps.filter(|step| step.name == "mix").count()
}

fn doughs(plan: &Timetable) -> Vec<&SharedDough> {
    fn dough(note: &Caveat) -> Option<&SharedDough> {
        let Caveat::Shared(dough) = note else { return None };
        Some(dough)
    }
    plan.notes.iter().filter_map(dough).collect()
}

/// 620 g and 500 g are 1120 g; with 2 % lost 1120 ÷ 0.98 = 1142.86 g are mixed.
#[test]
fn by_hand() {
    let edition = edition(2, &[(620, 60), (500, 45)]);
    let plan = planned(&edition, 2);
    assert_eq!(plan.verdict, Verdict::Fits, "{:?}", plan.reasons);
    assert_eq!(mixings(&plan), 1);
    let all = doughs(&plan);
    let [dough] = all.as_slice() else { panic!("{all:?}") };
    assert_eq!(dough.taken.amount(), &exact(1120, 1));
    assert_eq!(dough.mixed.amount(), &exact(112_000, 98));
    let parts: Vec<_> =
        dough.parts.iter().map(|(title, mass)| (title.as_str(), mass.amount())).collect();
    assert_eq!(parts, [("Bake 0", &exact(620, 1)), ("Bake 1", &exact(500, 1))]);
    // Alone each has its own.
    let alone = planned(&edition, 1);
    assert!(doughs(&alone).is_empty() && mixings(&alone) == 1);
}

/// The same 1142.86 g in whatever is asked of both: 600 and 400 parts of 1000 g are 685.71 g of
/// flour and 457.14 g of water.
#[test]
fn whatever_is_asked_of_both() {
    let content = course("shared-by-hand", 2, &[(620, 60), (500, 45)]);
    let ask = |arguments: &[&str]| {
        let answer = common::tourier(&content, arguments);
        assert_eq!(answer.code, 0, "{arguments:?}: {}", answer.err);
        answer.out
    };
    let json = |arguments: &[&str]| -> serde_json::Value {
        serde_json::from_str(&ask(arguments)).expect("JSON")
    };
    let facts = json(&["facts", "bake-0,bake-1"]);
    let [dough] = &facts["doughs"].as_array().expect("doughs")[..] else {
        panic!("{facts}")
    };
    assert_eq!(dough["taken_g"], 1120.0);
    assert_eq!(dough["mixed_g"], 1142.86);
    let names: Vec<_> = facts["recipes"]
        .as_array()
        .expect("recipes")
        .iter()
        .map(|it| it["recipe"].as_str().expect("a name"))
        .collect();
    assert_eq!(names, ["base", "bake-0", "bake-1"]);
    let grams = |sheet: &serde_json::Value| -> Vec<f64> {
        let lines = sheet["formula"].as_array().expect("lines");
        lines.iter().map(|it| it["grams"].as_f64().expect("grams")).collect()
    };
    let close = |found: Vec<f64>, wanted: &[f64]| {
        assert_eq!(found.len(), wanted.len(), "{found:?}");
        let near =
            found.iter().zip(wanted).all(|(one, other)| (one - other).abs() < 0.01);
        assert!(near, "{found:?} is not {wanted:?}");
    };
    close(grams(&facts["recipes"][0]), &[685.714, 457.143]);

    let order = json(&["order", "bake-0,bake-1", "--as", "json"]);
    let needs = order["lines"].as_array().expect("lines");
    let needs = needs.iter().map(|it| it["need_g"].as_f64().expect("grams"));
    close(needs.collect(), &[686.0, 458.0]);
    assert!(order["bakers"].is_null() && order["per_student_minor"].is_null());
    let tubs = order["tubs"].as_array().expect("tubs");
    let filled = tubs.iter().filter(|tub| tub["lines"][0].is_object());
    assert_eq!(filled.map(|tub| &tub["title"]).collect::<Vec<_>>(), ["Base"]);

    let scaled = ask(&["scale", "bake-0,bake-1"]);
    assert!(scaled.starts_with("Base is made once: "), "{scaled}");
    for part in ["620 g for Bake 0", "500 g for Bake 1", "Bake 0: ", "Bake 1: "] {
        assert!(scaled.contains(part), "{part} is not in {scaled}");
    }
    // Twice as many are twice as much.
    let twice = json(&["facts", "bake-0,bake-1", "--pieces", "16"]);
    assert_eq!(twice["doughs"][0]["taken_g"], 2240.0);
    // One alone is as ever.
    let alone = json(&["facts", "bake-0"]);
    assert_eq!(alone["facts"], 1);
    let order = ask(&["order", "bake-0"]);
    assert!(order.starts_with("Bake 0: 8 pieces\n"), "{order}");
    assert!(order.contains("weigh out: Bake 0"), "{order}");
}

/// A class says its sizes itself, whatever is asked of it.
#[test]
fn a_class_has_its_own_size() {
    let content = std::path::Path::new("tests/golden/taught");
    for command in ["timetable", "order", "handout"] {
        let answer =
            common::tourier(content, &[command, "two-evenings", "--pieces", "4"]);
        assert_eq!(answer.code, 2, "{command}: {}", answer.out);
        assert!(answer.err.contains("a class says itself"), "{}", answer.err);
    }
    let answer = common::tourier(content, &["order", "two-evenings,plain-buns"]);
    assert_eq!(answer.code, 2);
    assert!(answer.err.contains("two-evenings"), "{}", answer.err);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// The dough weighs what its bakes need, with what is lost, and is mixed once.
    #[test]
    fn at_random(
        loss in 0_i64..12,
        bakes in prop::collection::vec((50_i64..2000, 20_i64..90), 2..4),
    ) {
        let edition = edition(loss, &bakes);
        let plan = planned(&edition, bakes.len());
        prop_assert!(plan.verdict == Verdict::Fits, "{:?}", plan.reasons);
        prop_assert_eq!(mixings(&plan), 1);
        let all = doughs(&plan);
        prop_assert_eq!(all.len(), 1);
        let need: i64 = bakes.iter().map(|(grams, _)| grams).sum();
        prop_assert_eq!(all[0].taken.amount(), &exact(need, 1));
        prop_assert_eq!(all[0].mixed.amount(), &exact(need * 100, 100 - loss));
        prop_assert_eq!(all[0].parts.len(), bakes.len());
    }
}
