//! Every remedy that a fault prints, followed to the letter by somebody who does not think:
//! what comes out is sound, or it asks the next question; it never loses an allergen, and it
//! never leaves the same words unanswered.
#![allow(clippy::disallowed_methods, reason = "the list of faults is read")]

mod common;
#[path = "common/course_text.rs"]
mod course_text;
#[path = "common/english.rs"]
mod english;
#[path = "common/fault_list.rs"]
mod fault_list;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use course_text::{Course, printed};
use english::told;
use fault_list::{GROUND, changed, rows};

use tourier::fault::{Fault, Severity};
use tourier::formula::{allergens, expand, weigh};
use tourier::measure::exact;

/// The course with each remedy of a fault followed.
fn followed(course: &Course, fault: &Fault) -> Vec<Course> {
    let Some(help) = told(fault).help else { return Vec::new() };
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
    text.replace_range(fault.place.start()..fault.place.end(), words);
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
    let formula = weigh(&edition.content.recipes[0], book);
    let sum = allergens(&expand(&formula, &exact(1, 1)));
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

/// What a help offers to write as it stands: in backticks behind a word that says to, or a live
/// value in its braces.
fn offers(help: &str) -> Vec<&str> {
    const SAYS: [&str; 14] = [
        "Write ",
        "write ",
        "Add ",
        "Use ",
        "Say ",
        "Did you mean ",
        "Write it like ",
        "Write it as ",
        "Close it: ",
        "Tell them apart: ",
        "Write for example ",
        "how much it takes, ",
        "that it is put on: ",
        "a weight: ",
    ];
    let mut found = Vec::new();
    for says in SAYS {
        for (at, _) in help.match_indices(says) {
            let rest = &help[at + says.len()..];
            if let Some(quoted) = rest.strip_prefix('`') {
                found.extend(quoted.split_once('`').map(|(words, _)| words));
            } else if rest.starts_with('{') {
                found.extend(rest.find('}').map(|end| &rest[..=end]));
            }
        }
    }
    found
}

/// The course with an offer written where its fault is: a line `key: value` in place of the line
/// with that key, else into the ticket or the head; other words in place of those at fault.
fn written(course: &Course, fault: &Fault, offer: &str) -> Option<Course> {
    let mut course = course.clone();
    let message = told(fault).message;
    let wrong: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    let file = course.files.iter().position(|file| file.path == *fault.place.file)?;
    let text = &mut course.files[file].text;
    let (start, end) = (fault.place.start(), fault.place.end());
    let from = text[..start].rfind('\n').map_or(0, |at| at + 1);
    let to = text[start..].find('\n').map_or(text.len(), |at| start + at);
    let is_key =
        |key: &str| key.chars().all(|sign| sign.is_ascii_lowercase() || sign == ' ');
    let key = offer.split_once(": ").map(|(key, _)| key).filter(|key| is_key(key));
    let at_fault = text[start..end].to_owned();
    let whole = !at_fault.is_empty() && text[from..to].trim() == at_fault.trim();
    let misnamed = wrong.iter().find(|word| fault.place.file.contains(**word));
    if let Some(word) = misnamed.filter(|word| !at_fault.contains(**word)) {
        let path = fault.place.file.replacen(*word, offer, 1);
        course.files[file].path = path;
    } else if let Some(key) = key.filter(|_| !whole) {
        let line = text[from..to].trim_start().to_owned();
        if line.starts_with(&format!("{key}:")) {
            let indent = to - from - line.len();
            text.replace_range(from + indent..to, offer);
        } else if text[..start].matches("---\n").count() < 2 && text.starts_with("---") {
            text.insert_str(to + 1, &format!("{offer}\n"));
        } else {
            let ticket = text[from..].find("~~~ticket\n").map(|at| from + at);
            let at = ticket.or_else(|| text[..from].rfind("~~~ticket\n"))?;
            text.insert_str(at + "~~~ticket\n".len(), &format!("{offer}\n"));
        }
    } else if let Some(word) =
        wrong.iter().find(|word| at_fault.contains(**word) && !offer.contains(**word))
    {
        text.replace_range(start..end, &at_fault.replacen(word, offer, 1));
    } else {
        text.replace_range(start..end, offer);
    }
    Some(course)
}

/// Every fault of `src/fault/README.md` says what to do. Where that is something to write, it is
/// written: the same is not asked again, and no allergen is lost.
#[test]
fn every_fault_of_the_list_leads_on() {
    let ground = printed(&Course::of(Path::new(GROUND)).edition());
    let (mut silent, mut stuck, mut followed) = (Vec::new(), Vec::new(), Vec::new());
    for row in rows().into_iter().filter(|row| row.file != "-") {
        let course = Course::of(&changed(&row));
        let edition = course.edition();
        let before = printed(&edition).or_else(|| ground.clone()).unwrap_or_default();
        let mut own = edition.faults.iter().filter(|fault| fault.name == row.name);
        let Some(fault) = own.next() else { continue };
        let Some(help) = told(fault).help else {
            silent.push(row.name);
            continue;
        };
        let block = help.split_once(":\n").and_then(|(said, block)| {
            let mut files = ["pantry.yaml", "course.yaml"].into_iter();
            let file = files.find(|name| said.contains(name));
            Some(("a block", pasted(&course, file.unwrap_or(&fault.place.file), block)?))
        });
        let all = offers(&help).into_iter();
        let all = all.filter_map(|offer| Some((offer, written(&course, fault, offer)?)));
        for (offer, next) in all.chain(block) {
            let after = next.edition();
            let again = after.faults.iter().any(|other| {
                (other.name, &other.message) == (fault.name, &fault.message)
            });
            let waits = after.faults.iter().any(|other| other.name == "not-filled-in");
            if again && !waits {
                stuck.push(format!("{}: `{offer}` is asked again", row.name));
            }
            if let Some(after) = printed(&after) {
                let lost: Vec<_> =
                    before.iter().filter(|name| !after.contains(name)).collect();
                if !lost.is_empty() {
                    stuck.push(format!("{}: `{offer}` loses {lost:?}", row.name));
                }
            }
            followed.push(row.name.clone());
        }
    }
    assert!(silent.is_empty(), "no remedy: {silent:?}");
    assert!(stuck.is_empty(), "{}", stuck.join("\n"));
    followed.dedup();
    assert!(followed.len() >= 28, "{}: {followed:?}", followed.len());
}

/// The first number behind some words.
fn number(text: &str, behind: &str) -> f64 {
    let rest = text.split(behind).nth(1).unwrap_or_default();
    let end = rest.find(|sign: char| !sign.is_ascii_digit() && sign != '.');
    rest[..end.unwrap_or(rest.len())].trim_end_matches('.').parse().unwrap_or(f64::NAN)
}

/// What a help says in figures and not in words to write, done to the words at fault.
fn reckoned(fault: &Fault, at_fault: &str, row_bad: &str) -> Option<(String, String)> {
    let told = told(fault);
    let help = told.help.as_deref()?;
    let sides = |size: &str| -> Vec<f64> {
        let numbers = size.trim_end_matches(" cm").split(" x ");
        numbers.filter_map(|side| side.trim().parse().ok()).collect()
    };
    let size = |sides: &[f64], times: f64| {
        format!("{:.1} x {:.1} cm", sides[0] * times, sides[1] * times)
    };
    match fault.name {
        // So many percent of the area: both sides with the root.
        "sheet-too-thin" | "sheet-too-thick" => {
            let percent = number(help, "would have ");
            let sides = sides(at_fault);
            Some((at_fault.to_owned(), size(&sides, (percent / 100.0).sqrt())))
        }
        // Usual is so much to so much: the middle of it.
        "fat-share-unusual" => {
            let is = number(&told.message, "roll-in fat is ");
            let usual = f64::midpoint(number(help, "Usual is "), number(help, " to "));
            let grams = number(row_bad, "- ");
            let right = format!("- {:.0} g butter", grams * usual / is);
            Some((row_bad.to_owned(), right))
        }
        // At least so hot.
        "core-too-low" => {
            let least = number(help, "at least ");
            Some((at_fault.to_owned(), format!("{least} °C")))
        }
        _ => None,
    }
}

/// Remedies that say a figure, followed: the same is not asked again, no allergen is lost.
#[test]
fn remedies_in_figures_lead_on() {
    let ground = printed(&Course::of(Path::new(GROUND)).edition());
    let mut followed = Vec::new();
    for row in rows().into_iter().filter(|row| row.file != "-") {
        let course = Course::of(&changed(&row));
        let edition = course.edition();
        let Some(fault) = edition.faults.iter().find(|fault| fault.name == row.name)
        else {
            continue;
        };
        let text = course.files.iter().find(|file| file.path == *fault.place.file);
        let words = text.map(|file| &file.text[fault.place.start()..fault.place.end()]);
        let bad = row.bad.lines().next().unwrap_or_default();
        let Some((wrong, right)) = reckoned(fault, words.unwrap_or_default(), bad) else {
            continue;
        };
        let mut next = course.clone();
        let text = next.text(&fault.place.file);
        assert!(text.contains(&wrong), "{}: {wrong}", row.name);
        *text = text.replacen(&wrong, &right, 1);
        let again = next.edition();
        let names: Vec<_> = again.faults.iter().map(|fault| fault.name).collect();
        let same = again.faults.iter().any(|other| {
            other.name == row.name && other.place.start() == fault.place.start()
        });
        assert!(!same, "{}: {wrong} to {right}: {names:?}", row.name);
        let before = printed(&edition).or_else(|| ground.clone());
        assert_eq!(printed(&again).or_else(|| ground.clone()), before, "{}", row.name);
        followed.push(row.name.clone());
    }
    followed.sort();
    let all = ["core-too-low", "fat-share-unusual", "sheet-too-thick", "sheet-too-thin"];
    assert_eq!(followed, all);
}
