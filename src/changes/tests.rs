//! Two tiny editions held side by side.

use super::*;
use crate::read::Source;
use crate::theme::Theme;

const COURSE: &str = "title: T\nsummary: S.\nedition: Spring\n";

const ROLLS: &str = "---
title: Rolls
summary: Plain rolls.
makes: 10 rolls
formula:
  dough:
    - 500 g bread flour
    - 320 g water
    - 9 g instant yeast
    - 10 g fine salt
  wash:
    - 2 eggs
    - 1 tbsp water
---

## Mix
~~~ticket
uses: dough
hands: 10 min
~~~
Mix it.

## Rest
~~~ticket
wait: 1 h
where: bench
~~~
Cover it.

## Brush
~~~ticket
uses: wash
hands: 5 min
~~~
Thinly.

## Bake
~~~ticket
bake: 200 °C, 20 min
~~~
Until done.
";

fn edition(files: &[(&str, &str)]) -> Edition {
    let file = |(path, text): &(&str, &str)| Source {
        path: (*path).to_owned(),
        text: (*text).to_owned(),
    };
    let mut sources = vec![file(&("course.yaml", COURSE))];
    sources.extend(files.iter().map(file));
    let edition = Edition::new(&sources, Vec::new(), Vec::new());
    assert!(!edition.stops(), "{:?}", edition.faults);
    edition
}

fn words() -> Words {
    let theme = Theme::built_in();
    crate::read::words_in(&theme, "en").unwrap_or_default()
}

/// What differs in the rolls where their text is changed so.
fn differences(changes: &[(&str, &str)]) -> Vec<Label> {
    let new = changes.iter().fold(ROLLS.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "{from}");
        text.replace(from, to)
    });
    let old = edition(&[("recipes/rolls.md", ROLLS)]);
    let new = edition(&[("recipes/rolls.md", &new)]);
    let entries = between(&old, &new, &words()).recipes;
    entries.into_iter().flat_map(|one| one.changes).map(|change| change.text).collect()
}

fn metric(changes: &[(&str, &str)]) -> Vec<String> {
    differences(changes).into_iter().map(|label| label.metric).collect()
}

#[test]
fn the_same_edition_has_no_differences() {
    assert_eq!(metric(&[]), [""; 0]);
}

#[test]
fn amounts_differ_by_weight_and_pieces_by_number() {
    let changes = [("9 g instant yeast", "7 g instant yeast"), ("2 eggs", "3 eggs")];
    assert_eq!(metric(&changes), ["2 g less instant yeast", "egg: 3, was 2"]);
    // The same weight in another unit is no difference.
    assert_eq!(metric(&[("500 g bread", "0.5 kg bread")]), [""; 0]);
}

#[test]
fn an_ingredient_of_two_sections_is_named_with_its_section() {
    let found = metric(&[("320 g water", "330 g water")]);
    assert_eq!(found, ["10 g more water in the dough"]);
}

#[test]
fn lines_come_and_go() {
    let changes = [
        ("    - 10 g fine salt\n", "    - 20 g butter, soft\n"),
        ("500 g bread flour", "500 g bread flour, sifted"),
    ];
    assert_eq!(
        metric(&changes),
        [
            "now contains milk",
            "bread flour: now sifted",
            "new: 20 g butter",
            "left out: 10 g fine salt"
        ]
    );
}

#[test]
fn ovens_are_said_in_both_systems() {
    let found = differences(&[("200 °C", "190 °C")]);
    let oven = Label::new("bake 190 °C, was 200 °C", "bake 375 °F, was 390 °F");
    assert_eq!(found, [oven]);
}

#[test]
fn times_and_pieces_are_summed_up() {
    let changes = [("wait: 1 h", "wait: 90 min"), ("10 rolls", "12 rolls")];
    assert_eq!(
        metric(&changes),
        [
            "makes 12 rolls, was 10 rolls",
            "Rest: wait 1 h 30 min, was 1 h",
            "start to end 2 h 5 min, was 1 h 35 min"
        ]
    );
}

#[test]
fn a_step_with_another_name_is_not_a_new_step() {
    assert_eq!(
        metric(&[("## Rest", "## Let it rise")]),
        ["the step Rest is now called Let it rise"]
    );
    let two =
        [("## Bake", "## Cool the oven\n~~~ticket\nwait: 5 min\n~~~\nDo.\n\n## Bake")];
    let found = metric(&two);
    assert_eq!(found[0], "new step: Cool the oven");
}

#[test]
fn text_is_not_compared_word_by_word() {
    assert_eq!(metric(&[("Cover it.", "Cover it well.")]), ["reworded: Rest"]);
}

#[test]
fn recipes_come_and_go() {
    let old = edition(&[("recipes/rolls.md", ROLLS)]);
    let new = edition(&[("recipes/buns.md", ROLLS)]);
    let found = between(&old, &new, &words()).recipes;
    let found: Vec<(&str, Became)> =
        found.iter().map(|entry| (entry.name.as_str(), entry.became)).collect();
    assert_eq!(found, [("buns", Became::Added), ("rolls", Became::Removed)]);
}
