//! Every remedy that a fault prints, followed to the letter by somebody who does not think:
//! what comes out is sound, or it asks the next question; it never loses an allergen, and it
//! never leaves the same words unanswered.
#![allow(clippy::disallowed_methods, reason = "the list of faults is read")]

use std::collections::BTreeSet;
use std::fs;

use tourier::edition::Edition;
use tourier::fault::{Fault, Severity};
use tourier::formula::{allergens, expand, weigh};
use tourier::measure::exact;
use tourier::read::Source;

const RECIPE: &str = "recipes/t.md";

/// A course of one recipe, its files by name.
#[derive(Clone)]
struct Course {
    files: Vec<Source>,
}

impl Course {
    fn new(line: &str, pantry: &str) -> Self {
        let file = |path: &str, text: String| Source { path: path.into(), text };
        let recipe = format!(
            "---\ntitle: t\nsummary: s\nmakes: 1 cake\nformula:\n  dough:\n    - {line}\n---\n\
             ## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n"
        );
        Self {
            files: vec![
                file("course.yaml", "title: c\nsummary: s\n".into()),
                file("pantry.yaml", pantry.into()),
                file(RECIPE, recipe),
            ],
        }
    }

    fn edition(&self) -> Edition {
        Edition::new(&self.files, Vec::new(), Vec::new())
    }

    fn text(&mut self, path: &str) -> &mut String {
        let found = self.files.iter_mut().find(|file| file.path == path);
        &mut found.unwrap_or_else(|| panic!("{path} is there")).text
    }
}

/// What the program prints of allergens; none where an error stops it.
fn printed(edition: &Edition) -> Option<Vec<String>> {
    let stops = |fault: &Fault| fault.severity == Severity::Error;
    if edition.faults.iter().any(stops) {
        return None;
    }
    let book = edition.book();
    let mut all = Vec::new();
    for recipe in &edition.content.recipes {
        let (formula, _) = weigh(recipe, book);
        let sum = allergens(&expand(&formula, &exact(1, 1), book));
        let names = |found: &tourier::formula::Found| {
            let kinds = found.kinds.iter().map(|kind| format!("{}:{kind}", found.name));
            kinds.chain([found.name.clone()]).collect::<Vec<_>>()
        };
        all.extend(sum.us.iter().chain(&sum.eu).flat_map(names));
        all.extend(sum.unknown.iter().map(|name| format!("unknown: {name}")));
    }
    Some(all)
}

/// The course with each remedy of a fault followed.
fn followed(course: &Course, fault: &Fault) -> Vec<Course> {
    let Some(help) = &fault.help else { return Vec::new() };
    let mut all = Vec::new();
    if let Some(list) =
        help.strip_prefix("Did you mean ").and_then(|it| it.split_once('?'))
    {
        for name in list.0.split('`').skip(1).step_by(2) {
            all.push(replaced(course, fault, name));
        }
    }
    if let Some(line) = help.split("write `").nth(1).and_then(|it| it.split_once('`')) {
        all.push(replaced(course, fault, line.0));
    }
    if let Some((said, block)) = help.split_once(":\n") {
        let file =
            ["pantry.yaml", "course.yaml"].into_iter().find(|name| said.contains(name));
        all.extend(pasted(course, file.unwrap_or(&fault.place.file), block));
    }
    all
}

fn replaced(course: &Course, fault: &Fault, words: &str) -> Course {
    let mut course = course.clone();
    let text = course.text(&fault.place.file);
    text.replace_range(fault.place.start..fault.place.end, words);
    course
}

/// The block pasted into a file, under the name where it stands there already. Prose behind
/// the block is no part of it.
fn pasted(course: &Course, file: &str, block: &str) -> Option<Course> {
    let mut course = course.clone();
    let text = course.text(file);
    let is_line = |line: &&str| {
        line.split_once(':').is_some_and(|(key, _)| key.split_whitespace().count() <= 6)
    };
    let lines: Vec<&str> = block.lines().take_while(is_line).collect();
    let (name, below) = lines.split_first()?;
    let mut kept: Vec<String> = text.lines().map(str::to_owned).collect();
    let at = kept.iter().position(|line| line == name).unwrap_or_else(|| {
        kept.push((*name).to_owned());
        kept.len() - 1
    });
    for line in below.iter().rev() {
        let key = line.split_once(':').map_or(*line, |(key, _)| key);
        let end = kept[at + 1..].iter().position(|line| !line.starts_with(' '));
        let end = end.map_or(kept.len(), |end| at + 1 + end);
        let mut place = 0;
        kept.retain(|old| {
            place += 1;
            !(place - 1 > at && place - 1 < end && old.starts_with(key))
        });
        kept.insert(at + 1, (*line).to_owned());
    }
    *text = kept.join("\n") + "\n";
    Some(course)
}

/// Follows remedies until nothing is asked any more, or what is asked has to be filled in.
fn follow(course: &Course, allergen: &str) {
    follow_on(course, allergen, 0, &mut BTreeSet::new());
}

/// The same, and what was followed already is not followed again.
fn follow_on(
    course: &Course,
    allergen: &str,
    depth: usize,
    seen: &mut BTreeSet<Vec<String>>,
) {
    if !seen.insert(course.files.iter().map(|file| file.text.clone()).collect()) {
        return;
    }
    let edition = course.edition();
    if let Some(printed) = printed(&edition) {
        let there = printed.iter().any(|name| {
            name.contains(allergen)
                || name.starts_with("unknown: ") && !allergen.is_empty()
        });
        let texts: Vec<&str> = course.files.iter().map(|file| &*file.text).collect();
        assert!(
            allergen.is_empty() || there,
            "{allergen} is lost: {printed:?} in {texts:?}"
        );
        return;
    }
    assert!(depth < 6, "no end of questions: {:?}", edition.faults);
    for fault in edition.faults.iter().filter(|fault| fault.severity == Severity::Error) {
        assert!(fault.help.is_some(), "no remedy: {fault:?}");
        for next in followed(course, fault) {
            let asked = next.edition().faults;
            let again = asked.iter().any(|other| {
                other.severity == Severity::Error
                    && (other.name, &other.message) == (fault.name, &fault.message)
            });
            let waits = asked.iter().any(|other| other.name == "not-filled-in");
            assert!(!again || waits, "asked again: {fault:?}");
            if waits {
                continue;
            }
            follow_on(&next, allergen, depth + 1, seen);
        }
    }
}

#[test]
fn no_remedy_loses_an_allergen() {
    for (line, pantry, allergen) in [
        ("100 g hazelnut praline", "", "hazelnut"),
        ("1 + lb 4 oz butter", "", "milk"),
        ("1 lb 4 oz buter", "", "milk"),
        ("100 g cookie butter", "", "milk"),
        ("100 g smoked butter", "", "milk"),
        ("100 g Haselnussmus", "", "hazelnut"),
        ("2 cups bread flower", "", "wheat"),
        ("butter", "", "milk"),
        ("almond paste nougat", "", "almond"),
        ("1 heaped tbsp butter", "", "milk"),
        ("100 g butter or peanut paste", "", "peanut"),
        ("100 g praline", "praline:\n  like: sugar\n", "nut"),
        ("100 g praline", "praline:\n  allergens: none\n", "nut"),
        ("100 g butter", "butter:\n  allergens: none\n", "milk"),
        ("100 g spread", "spread:\n  like: butter\n  allergens: none\n", "milk"),
        ("100 g nut spread", "nut spread:\n  allergens:\n", "nut"),
        ("100 g almond meal", "almond meal:\n  like: sugar\n", "almond"),
        ("100 g butter, with chopped walnuts", "", "walnut"),
        ("100 g lard or suet or peanut paste", "", "peanut"),
    ] {
        follow(&Course::new(line, pantry), allergen);
    }
}

#[test]
fn remedies_end_or_ask_the_next_question() {
    for (line, pantry) in [
        ("3 tbsp rose dust", "rose dust:\n  allergens: none\n"),
        ("2 rose dust", "rose dust:\n  allergens: none\n"),
        ("100 g rose dust", ""),
        ("?? sugar", ""),
        ("sugar", ""),
        ("100 g sugar + 50 g butter", ""),
        ("2 breakfast-cups sugar", ""),
        ("5 to 3 g salt", ""),
        ("100 g 7-seed mix: fine", ""),
    ] {
        follow(&Course::new(line, pantry), "");
    }
}

/// The printed lines that are to be refused (`tests/printed.rs`): what the program says of
/// each leads somewhere.
#[test]
fn what_is_refused_of_printed_recipes_has_a_remedy() {
    let mut refused = 0;
    for entry in fs::read_dir("tests/printed").expect("the folder").flatten() {
        let text = fs::read_to_string(entry.path()).expect("a text");
        let rows = text.lines().filter(|row| row.contains(" | refused | "));
        for line in rows.filter_map(|row| row.split(" | ").next()) {
            let course = Course::new(&format!("'{}'", line.replace('\'', "''")), "");
            assert!(printed(&course.edition()).is_none(), "{line} is taken");
            follow(&course, "");
            refused += 1;
        }
    }
    assert!(refused > 10, "{refused}");
}

/// What an author means passes, and stands on the sheet as the author's word.
#[test]
fn what_was_read_on_the_pack_passes_as_said() {
    let said = "praline flavour:\n  allergens: none, read on the pack\n";
    let edition = Course::new("10 g praline flavour", said).edition();
    assert_eq!(printed(&edition), Some(Vec::new()));
    let book = edition.book();
    let (formula, _) = weigh(&edition.content.recipes[0], book);
    let sum = allergens(&expand(&formula, &exact(1, 1), book));
    assert_eq!(sum.read_on_pack, ["praline flavour"]);
    for bare in ["read on the pack", "none, milk", "\"\""] {
        let said = format!("praline flavour:\n  allergens: {bare}\n");
        let edition = Course::new("10 g praline flavour", &said).edition();
        assert_eq!(printed(&edition), None, "{bare}");
    }
}

/// No remedy anywhere in the program says what nobody has read: the sources hold no line to
/// paste that gives an allergen's absence, a density or a weight.
#[test]
fn no_remedy_offers_a_value() {
    for entry in walkdir::WalkDir::new("src").into_iter().flatten() {
        if entry.path().extension().is_none_or(|ending| ending != "rs") {
            continue;
        }
        let text = fs::read_to_string(entry.path()).expect("a source");
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        for offer in ["\\n  allergens: none", "\\n  density: 0", "density: 1 tbsp = 1"] {
            assert!(!code.contains(offer), "{}: {offer}", entry.path().display());
        }
    }
}
