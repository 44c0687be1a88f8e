//! What the program works out, as scripts read it.
#![allow(clippy::disallowed_methods, reason = "a case is written to disk")]

mod common;

use std::fs;
use std::path::Path;

use common::{COURSE, course, facts, golden};
use serde_json::Value;

/// The numbers at the end of a lamination: fat layers, merged, every ply counted.
fn layers(facts: &Value) -> [u64; 3] {
    let lamination = &facts["lamination"];
    ["fat_layers", "layers_merged", "layers_unmerged"]
        .map(|name| lamination[name].as_u64().unwrap_or_default())
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or(f64::NAN)
}

/// Twelve right triangles from rectangles of 10 by 4 in, with no scrap.
fn assert_classic_cut(facts: &Value) {
    let cut = &facts["cuts"][0];
    assert_eq!(cut["shape"], "right triangle");
    assert_eq!(cut["pieces"], 12);
    let mut sides = [number(&cut["base_cm"]) / 2.54, number(&cut["height_cm"]) / 2.54];
    sides.sort_by(f64::total_cmp);
    assert!((sides[0] - 4.0).abs() < 1e-9 && (sides[1] - 10.0).abs() < 1e-9, "{sides:?}");
    assert_eq!(cut["polygons_cm"].as_array().map(Vec::len), Some(12));
    assert!(number(&cut["scrap_percent"]).abs() < 1e-9);
}

/// An envelope lock-in (one layer of fat), two book turns and a letter turn:
/// 4 × 4 × 3 = 48 layers of fat; 2 × 48 + 1 = 97 where dough merges with dough;
/// 3 × 48 = 144 with every ply counted. A sheet of 20 × 12 in in three strips, two across,
/// is six rectangles of 10 × 4 in, each cut on the diagonal. Common practice, no source.
#[test]
fn the_classic_schedule() {
    let content = course("facts-classic");
    let file = content.join("recipes/classic.md");
    fs::write(file, CLASSIC).expect("the recipe can be written");
    let facts = facts(&content, "classic");
    assert_eq!(layers(&facts), [48, 97, 144]);
    assert_eq!(facts["lamination"]["turns"].to_string(), r#"["book","book","letter"]"#);
    assert_classic_cut(&facts);
}

/// The schedule of the layers' check value.
const CLASSIC: &str = "---
title: Classic
summary: Two book turns and a letter turn.
makes: 12 pieces
loss: 2 %
formula:
  dough:
    - 340 g bread flour
    - 170 g whole milk
    - 7 g fine salt
    - 5 g instant yeast
  roll-in:
    - 170 g butter, cold
---

## Shape the block
~~~ticket
uses: roll-in
hands: 8 min
sheet: 16 x 16 cm
~~~

## Lock in
~~~ticket
uses: dough
hands: 6 min
lock-in: envelope
sheet: 24 x 24 cm
~~~

## First turn
~~~ticket
sheet: 52 x 18 cm
turn: book
~~~

## Second turn
~~~ticket
sheet: 52 x 13 cm
turn: book
~~~

## Third turn
~~~ticket
sheet: 42 x 13 cm
turn: letter
~~~

## Cut
~~~ticket
hands: 8 min
sheet: 20 x 12 in
cut: grid, 3 strips, 2 across, each on the diagonal
~~~
";

/// The demonstration course and the tiny course: an envelope (1), a letter turn and a book
/// turn are 3 × 4 = 12 layers of fat; 2 × 12 + 1 = 25 merged; 3 × 12 = 36 plies.
#[test]
fn a_letter_and_a_book() {
    for (content, recipes) in [
        ("content", ["layered-dough", "crescents"]),
        (COURSE, ["small-block", "small-crescents"]),
    ] {
        for recipe in recipes {
            let facts = facts(Path::new(content), recipe);
            assert_eq!(layers(&facts), [12, 25, 36], "{recipe}");
            let turns = facts["lamination"]["turns"].to_string();
            assert_eq!(turns, r#"["letter","book"]"#, "{recipe}");
        }
    }
}

/// The facts of the tiny course, but for the prose, which the golden page shows.
#[test]
fn golden_facts() {
    for recipe in ["small-block", "small-crescents"] {
        let mut facts = facts(Path::new(COURSE), recipe);
        if let Some(facts) = facts.as_object_mut() {
            facts.retain(|name, _| {
                !["opening", "parts", "caution_texts"].contains(&name.as_str())
            });
        }
        let text = serde_json::to_string_pretty(&facts).unwrap_or_default() + "\n";
        golden(&format!("golden/{recipe}.json"), &text);
    }
}

/// What tells that a step is done follows the units as prose does; what would follow the
/// formula is refused there.
#[test]
fn a_cue_is_live() {
    let content = course("facts-cue");
    let file = content.join("recipes/small-crescents.md");
    let text = fs::read_to_string(&file).expect("there");
    let cued = |cue: &str| {
        let text = text.replace("the sides are brown", cue);
        fs::write(&file, text).expect("written");
    };
    cued("its core reads {96 °C} and 2 cm of it are brown");
    let facts_of = |content: &Path| facts(content, "small-crescents");
    let until = &facts_of(&content)["parts"][2]["until"];
    assert_eq!(until["metric"], "its core reads 96 °C and 2 cm of it are brown");
    assert_eq!(until["us"], "its core reads 205 °F and 2 cm of it are brown");
    cued("it reads \\{96 °C\\} and {96 °C}");
    let until = &facts_of(&content)["parts"][2]["until"];
    assert_eq!(until["us"], "it reads {96 °C} and 205 °F");
    cued("the {egg} is gone");
    let answer = common::tourier(&content, &["proof"]);
    assert!(answer.err.contains("»{egg}«") && answer.err.contains("unknown-brace"));
}

/// Scaling by pieces and back by batches leaves every weight as it was.
#[test]
fn scaling_comes_home() {
    let at = |arguments: &[&str]| {
        let all: Vec<&str> =
            ["facts", "small-crescents"].iter().chain(arguments).copied().collect();
        let answer = common::tourier(Path::new(COURSE), &all);
        serde_json::from_str::<Value>(&answer.out).expect("facts are JSON")
    };
    let (plain, ten, one) = (at(&[]), at(&["--pieces", "10"]), at(&["--batches", "1"]));
    assert_eq!(plain["formula"], ten["formula"]);
    assert_eq!(plain["formula"], one["formula"]);
    let double = at(&["--batches", "2"]);
    for (single, twice) in lines(&plain).iter().zip(lines(&double)) {
        assert!((twice - 2.0 * single).abs() < 0.002, "{single} g, doubled {twice} g");
    }
    // So many pieces are reckoned from the shortest sheet that holds them: one strip of
    // twenty has no second pair of half triangles at its ends.
    let twenty = at(&["--pieces", "20"]);
    assert_eq!(twenty["cuts"][0]["pieces"], 20);
    for (single, twice) in lines(&plain).iter().zip(lines(&twenty)) {
        assert!(twice > 1.8 * single && twice <= 2.0 * single, "{single} g, {twice} g");
    }
}

fn lines(facts: &Value) -> Vec<f64> {
    let lines = facts["formula"].as_array().cloned().unwrap_or_default();
    lines.iter().filter_map(|line| line["grams"].as_f64()).collect()
}
