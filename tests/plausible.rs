//! Slips of the hand against recipes that nobody made for it: the demonstration course, the
//! course to begin from, the drafts, and the printed recipes. Every slip that is planted is
//! found, and next to no recipe that is as it should be is called a slip.
#![allow(clippy::wildcard_enum_match_arm, reason = "a test looks at what it is about")]
#![allow(clippy::disallowed_methods, reason = "the courses and the recipes are read")]

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use tourier::edition::Edition;
use tourier::formula::{MadeOf, weigh};
use tourier::measure::Exact;
use tourier::pantry::Kind;
use tourier::read::Source;
use tourier::store;

/// The faults that say that a value is a slip.
const SLIPS: [&str; 6] = [
    "impossible-value",
    "unlikely-share",
    "unlikely-heat",
    "unlikely-time",
    "unlikely-core",
    "too-warm-for-butter",
];

/// The slips found in one file of a course, by name and line.
fn slips(texts: &[Source], file: &str) -> Vec<(&'static str, usize)> {
    let edition = Edition::new(texts, Vec::new(), Vec::new());
    let own = edition
        .faults
        .iter()
        .filter(|fault| &*fault.place.file == file && SLIPS.contains(&fault.name));
    own.map(|fault| (fault.name, edition.texts.position(&fault.place).line)).collect()
}

/// Texts with another one in place of one of them.
fn with(texts: &[Source], file: &str, text: &str) -> Vec<Source> {
    let swap = |source: &Source| match source.path == file {
        true => Source { path: file.to_owned(), text: text.to_owned() },
        false => source.clone(),
    };
    texts.iter().map(swap).collect()
}

fn course(folder: &str) -> Vec<Source> {
    store::load(Path::new(folder)).expect("the course is there").0
}

/// The printed recipes, each as a course of its own: what is taken of its lines is mixed and
/// baked.
fn printed() -> Vec<(String, Vec<Source>)> {
    let entries = std::fs::read_dir("tests/printed").expect("the folder").flatten();
    let mut files: Vec<PathBuf> = entries.map(|entry| entry.path()).collect();
    files.retain(|path| path.extension().is_some_and(|ending| ending == "txt"));
    files.sort();
    let mut recipes = Vec::new();
    for file in files {
        let text = std::fs::read_to_string(&file).expect("a text");
        let measures = text.lines().find_map(|line| line.strip_prefix("measures: "));
        let course = match measures.expect("what it measures with") {
            "us" => "title: c\n".to_owned(),
            other => format!("title: c\ncup: {other}\n"),
        };
        for part in text.split("\n== ").skip(1) {
            let title = part.lines().next().unwrap_or_default();
            let rows = part.lines().filter_map(|row| row.split_once(" | "));
            let taken = rows.filter(|(_, grams)| !grams.starts_with("refused"));
            let lines: String = taken
                .map(|(line, _)| format!("    - '{}'\n", line.replace('\'', "''")))
                .collect();
            let text = recipe(&lines);
            let source = |path: &str, text: String| Source { path: path.into(), text };
            let texts = vec![source("course.yaml", course.clone()), source(FILE, text)];
            recipes.push((title.to_owned(), texts));
        }
    }
    recipes
}

const FILE: &str = "recipes/t.md";

fn recipe(lines: &str) -> String {
    format!(
        "---\ntitle: t\nsummary: s\nmakes: 1 loaf\nformula:\n  dough:\n{lines}---\n\n\
         ## Mix\n~~~ticket\nuses: dough\nhands: 10 min\n~~~\n\n\
         ## Bake\n~~~ticket\nbake: 190 °C, 30 min\n~~~\n"
    )
}

/// Recipes as they are: at most one in twenty is called a slip.
#[test]
fn sound_recipes_are_left_alone() {
    let mut all = printed();
    let printed = all.len();
    for folder in ["content", "src/cli/start", "tests/golden/course", "tests/faults"] {
        let texts = course(folder);
        let recipes: Vec<String> = texts
            .iter()
            .filter(|text| text.path.starts_with("recipes/"))
            .map(|text| text.path.clone())
            .collect();
        for file in recipes {
            let mut own = texts.clone();
            // The recipe looked at goes by one name here.
            own.sort_by_key(|text| text.path != file);
            all.push((file, own));
        }
    }
    let called: Vec<String> = all
        .par_iter()
        .enumerate()
        .filter_map(|(at, (name, texts))| {
            let file = if at < printed { FILE } else { name.as_str() };
            let found = slips(texts, file);
            (!found.is_empty()).then(|| format!("{name}: {found:?}"))
        })
        .collect();
    println!("{} of {} recipes are called a slip", called.len(), all.len());
    assert!(printed >= 60 && all.len() >= printed + 15, "{printed} of {}", all.len());
    assert!(called.len() * 20 <= all.len(), "{}", called.join("\n"));
    assert_eq!(
        called.iter().filter(|it| it.starts_with("recipes/")).count(),
        0,
        "{}",
        called.join("\n")
    );
}

/// Ten times the salt, the yeast or the baking powder of every printed recipe in which there
/// is a usual share of it.
#[test]
fn ten_times_too_much_is_found() {
    let (mut planted, mut missed) = (0, Vec::new());
    for (title, texts) in printed() {
        let edition = Edition::new(&texts, Vec::new(), Vec::new());
        let recipe = edition.content.recipe("t").expect("it reads");
        let formula = weigh(recipe, edition.book());
        let flour: f64 = formula
            .lines
            .iter()
            .filter(|line| line.is(Kind::Flour))
            .map(|line| grams(line.mass().amount()))
            .sum();
        for line in &formula.lines {
            let MadeOf::Item(item) = line.source else { continue };
            let own = grams(line.mass().amount());
            let usual = match item.kind {
                Kind::Salt => own >= 0.01 * flour,
                Kind::Leavener => own >= 0.02 * flour,
                _ => false,
            };
            if !usual || flour == 0.0 {
                continue;
            }
            planted += 1;
            let written = edition.texts.words(&line.line.place).to_owned();
            let slip = format!("{:.0} g {}", own * 10.0, item.name);
            let text = texts[1].text.replacen(&written, &slip, 1);
            let found = slips(&with(&texts, FILE, &text), FILE);
            if found.iter().all(|(name, _)| *name != "unlikely-share") {
                missed.push(format!("{title}: {written} → {slip}: {found:?}"));
            }
        }
    }
    println!("{} of {planted} planted shares are found", planted - missed.len());
    assert!(planted >= 15, "{planted} planted");
    assert!(missed.is_empty(), "of {planted}:\n{}", missed.join("\n"));
}

fn grams(weight: &Exact) -> f64 {
    let number = |text: String| text.parse::<f64>().expect("a number");
    number(weight.numer().to_string()) / number(weight.denom().to_string())
}

/// The number at the start of a text, and what follows it.
fn number(text: &str) -> Option<(u64, &str)> {
    let end = text.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(text.len());
    Some((text[..end].parse().ok()?, &text[end..]))
}

/// The slips that a line of a recipe can have: another line in its place, by kind.
///
/// An oven in the wrong unit is not told where the recipe has another, hotter bake: that could
/// dry what the other one baked.
fn planted(line: &str, several: bool) -> Vec<(&'static str, String)> {
    let mut found = Vec::new();
    if let Some(rest) = line.strip_prefix("bake: ")
        && let Some((degrees, after)) = number(rest)
        && let Some((unit, time)) = after.split_once(", ")
    {
        found.push(("oven ×10", format!("bake: {}{after}", degrees * 10)));
        if degrees < 230 && !several {
            found.push(("oven °F for °C", format!("bake: {degrees} °F, {time}")));
        }
        found.push(("oven below zero", format!("bake: -5{unit}, {time}")));
        found.push(("no time", format!("bake: {degrees}{unit}, 0 min")));
        found.push(("hours for minutes", format!("bake: {degrees}{unit}, 40 h")));
    }
    if line.starts_with("wait: ") {
        found.push(("a wait of days", "wait: 90 h".into()));
    }
    if line.starts_with("hands: ") {
        found.push(("endless hands", "hands: 999999999 h".into()));
    }
    if let Some((degrees, after)) = line.strip_prefix("at: ").and_then(number) {
        found.push(("proof ×10", format!("at: {}{after}", degrees.max(15) * 10)));
    }
    if line.strip_prefix("core: ").and_then(number).is_some() {
        found.push(("a cold core", "core: 20 °C".into()));
    }
    if let Some((degrees, after)) =
        line.strip_prefix("dough temperature: ").and_then(number)
    {
        // A step's is followed by its range, which would not read any more.
        let after = after.split(" (").next().unwrap_or(after);
        found.push(("dough ×10", format!("dough temperature: {}{after}", degrees * 10)));
    }
    found
}

/// Every slip planted in the demonstration course is found, at its line.
#[test]
fn slips_in_the_course_are_found() {
    let texts = course("content");
    let mut all = Vec::new();
    for source in texts.iter().filter(|text| text.path.starts_with("recipes/")) {
        let several = source.text.matches("\nbake: ").count() > 1;
        for (at, line) in source.text.lines().enumerate() {
            for (kind, slip) in planted(line, several) {
                // A freezer holds for longer than any oven bakes.
                let before: String = source.text.split_inclusive('\n').take(at).collect();
                let rest = source.text[before.len() + line.len()..].to_owned();
                let ticket = rest.split("~~~").next().unwrap_or_default();
                if kind == "a wait of days" && ticket.contains("freezer") {
                    continue;
                }
                all.push((
                    source.path.clone(),
                    at + 1,
                    kind,
                    format!("{before}{slip}{rest}"),
                ));
            }
        }
    }
    let missed: Vec<String> = all
        .par_iter()
        .filter(|(file, line, _, text)| {
            let found = slips(&with(&texts, file, text), file);
            found.iter().all(|(_, at)| at != line)
        })
        .map(|(file, line, kind, _)| format!("{file}:{line}: {kind}"))
        .collect();
    let mut kinds: BTreeMap<&str, usize> = BTreeMap::new();
    all.iter().for_each(|(_, _, kind, _)| *kinds.entry(*kind).or_default() += 1);
    println!(
        "{} of {} planted slips are found: {kinds:?}",
        all.len() - missed.len(),
        all.len()
    );
    assert!(all.len() >= 100, "{kinds:?}");
    assert!(missed.is_empty(), "of {}:\n{}", all.len(), missed.join("\n"));
}
