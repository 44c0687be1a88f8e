//! A course in a made-up language: every message of every file stands in brackets, put there
//! by this test. What faults and the terminal say has no word outside of them but the author's
//! own, the names of faults, and what is typed.
#![allow(clippy::disallowed_methods, reason = "the theme and the course are written")]

#[path = "common/mod.rs"]
mod common;
#[path = "common/fault_list.rs"]
mod fault_list;

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use common::{Answer, folder, tourier};
use fault_list::{changed, rows};
use fluent_syntax::ast::{Entry, Expression, Pattern, PatternElement, Resource};
use fluent_syntax::parser;
use fluent_syntax::serializer::serialize;
use tourier::theme::Theme;

/// A tag for private use (RFC 5646, 2.2.7): no language has it.
const LANGUAGE: &str = "qaa";

/// A theme that speaks the made-up language.
fn theme(name: &str) -> PathBuf {
    let to = folder(name);
    let below = to.join("words").join(LANGUAGE);
    fs::create_dir_all(&below).expect("a folder");
    let theme = Theme::built_in();
    for path in theme.below("words/en/") {
        let file = path.rsplit('/').next().expect("a name");
        fs::write(below.join(file), bracketed(theme.text(path))).expect("written");
    }
    to
}

/// A message file with each run of its words in brackets.
fn bracketed(text: &str) -> String {
    let mut resource: Resource<String> =
        parser::parse(text.to_owned()).map_err(|(_, errors)| errors).expect("it reads");
    for entry in &mut resource.body {
        if let Entry::Message(message) = entry {
            message.value.iter_mut().for_each(put_in_brackets);
        }
    }
    serialize(&resource)
}

fn put_in_brackets(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = enclosed(value),
            PatternElement::Placeable {
                expression: Expression::Select { variants, .. },
            } => {
                variants.iter_mut().for_each(|one| put_in_brackets(&mut one.value));
            }
            PatternElement::Placeable { expression: Expression::Inline(_) } => {}
        }
    }
}

/// Words in brackets, the space around them outside, line by line.
fn enclosed(text: &str) -> String {
    let line = |line: &str| {
        let words = line.trim();
        if !words.contains(char::is_alphabetic) {
            return line.to_owned();
        }
        let at = line.find(words).unwrap_or(0);
        format!("{}⟦{words}⟧{}", &line[..at], &line[at + words.len()..])
    };
    text.split('\n').map(line).collect::<Vec<_>>().join("\n")
}

fn spoken(theme: &Path, content: &Path, arguments: &[&str]) -> Answer {
    let theme = theme.to_str().expect("a plain path");
    tourier(content, &[&["--theme", theme], arguments].concat())
}

/// The words of a text outside brackets and outside backticks, which hold what is typed.
fn bare(text: &str) -> BTreeSet<String> {
    let (mut depth, mut typed, mut word) = (0, false, String::new());
    let mut found = BTreeSet::new();
    for sign in text.chars().chain([' ']) {
        match sign {
            '⟦' => depth += 1,
            '⟧' => depth -= 1,
            '`' => typed = !typed,
            _ => {}
        }
        if sign.is_alphabetic() && depth == 0 && !typed {
            word.push(sign);
        } else if !word.is_empty() {
            found.insert(std::mem::take(&mut word));
        }
    }
    found
}

/// Every word in the files of a folder, and in their names; the keys of the format, and the
/// names of faults.
fn written(content: &Path) -> BTreeSet<String> {
    let mut words = BTreeSet::new();
    rows().iter().for_each(|row| words.extend(bare(&row.name)));
    let folders = [content, Path::new("src/read/schema")];
    for entry in folders.iter().flat_map(walkdir::WalkDir::new).flatten() {
        words.extend(bare(&entry.path().display().to_string()));
        let text = fs::read(entry.path()).unwrap_or_default();
        words.extend(bare(&String::from_utf8_lossy(&text).replace(['`', '⟦', '⟧'], " ")));
    }
    words
}

/// A course's language in place of its own.
fn translate(content: &Path) {
    let file = content.join("course.yaml");
    let text = fs::read_to_string(&file).expect("a course");
    let rest = text.lines().filter(|line| !line.starts_with("language:"));
    let rest: Vec<&str> = rest.collect();
    fs::write(&file, format!("language: {LANGUAGE}\n{}\n", rest.join("\n")))
        .expect("written");
}

/// Signs of units, and what the machine and libraries say of themselves.
const SIGNS: [&str; 22] = [
    "g", "kg", "mg", "ml", "l", "cm", "mm", "m", "in", "ft", "lb", "oz", "C", "F", "min",
    "h", "s", "d", "x", "tsp", "tbsp", "cup",
];

/// The words of an answer that are nobody's: neither in brackets nor the author's own nor signs.
fn strangers(answer: &Answer, own: &BTreeSet<String>) -> BTreeSet<String> {
    let said = format!("{}\n{}", answer.out, answer.err);
    // A fault's name stands alone on its line.
    let is_name = |line: &&str| {
        let line = line.trim();
        !line.is_empty()
            && line.chars().all(|sign| sign.is_ascii_lowercase() || sign == '-')
    };
    let lines = said.lines().filter(|line| !is_name(line));
    let words = bare(&lines.collect::<Vec<_>>().join("\n"));
    let known = |word: &String| own.contains(word) || SIGNS.contains(&word.as_str());
    words.into_iter().filter(|word| !known(word)).collect()
}

#[test]
fn faults_are_told_in_the_language_of_the_course() {
    let theme = theme("made-up-faults");
    let (mut wrong, mut silent) = (Vec::new(), Vec::new());
    for row in rows().into_iter().filter(|row| row.file != "-") {
        let content = changed(&row);
        if row.file != "course.yaml" || row.name == "no-words" {
            translate(&content);
        }
        let answer = spoken(&theme, &content, &["proof"]);
        if !answer.err.contains('⟦') && row.file != "course.yaml" {
            silent.push(row.name.clone());
        }
        if row.file == "course.yaml" {
            continue;
        }
        let strange = strangers(&answer, &written(&content));
        if !strange.is_empty() {
            wrong.push(format!("{}: {strange:?}\n{}", row.name, answer.err));
        }
    }
    assert!(silent.is_empty(), "in English: {silent:?}");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn commands_answer_in_the_language_of_the_course() {
    let theme = theme("made-up-commands");
    let content = common::course("made-up-course");
    translate(&content);
    let site = folder("made-up-site").join("site").display().to_string();
    let commands: [&[&str]; 14] = [
        &["proof"],
        &["publish", "--to", &site],
        &["publish", "--to", &site],
        &["scale", "nope"],
        &["facts", "small-cresents"],
        &["order", "nope"],
        &["timetable", "nope"],
        &["timetable", "small-crescents"],
        &["timetable", "small-crescents", "--ready", "x"],
        &["handout", "nope"],
        &["handout", "small-crescents", "--labels", "x"],
        &["handout", "small-crescents", "--booklet", "--kind", "bench"],
        &["convert", "1 cup water"],
        &["scale", "small-crescents", "--pieces", "0"],
    ];
    let mut wrong = Vec::new();
    for arguments in commands {
        let answer = spoken(&theme, &content, arguments);
        let mut own = written(&content);
        own.extend(bare(&arguments.join(" ")));
        own.extend(["tourier", "index", "html", "all"].map(str::to_owned));
        let strange = strangers(&answer, &own);
        if !strange.is_empty() || !format!("{}{}", answer.out, answer.err).contains('⟦')
        {
            wrong.push(format!(
                "{arguments:?}: {strange:?}\n{}{}",
                answer.out, answer.err
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What is typed in a help: options, names of values, the words of a list before what they are
/// for, and examples.
fn typed_in(help: &str) -> BTreeSet<String> {
    let mut typed = BTreeSet::new();
    for line in help.lines() {
        let words = line.trim();
        let listed = words.strip_prefix("- ").and_then(|row| row.split_once(": "));
        typed.extend(bare(listed.map_or("", |(name, _)| name)));
        if words.starts_with("tourier ") {
            typed.extend(bare(words));
        } else if line.starts_with("  ") && !line.starts_with("   ") {
            typed.extend(bare(line.split_whitespace().next().unwrap_or_default()));
        }
    }
    let signs = |sign: char| sign.is_whitespace() || "[]=,".contains(sign);
    for word in help.split(signs) {
        let is_option = word.starts_with('-');
        let is_name = word.trim_matches(['<', '>']).chars().all(|it| it.is_uppercase());
        if is_option || is_name {
            typed.extend(bare(word));
        }
    }
    // The values of `[default: …]` and `[possible values: …]`, wherever the line breaks.
    let joined = help.split_whitespace().collect::<Vec<_>>().join(" ");
    for listed in joined.split("⟧: ").skip(1) {
        typed.extend(bare(listed.split(']').next().unwrap_or_default()));
    }
    typed.extend(["tourier"].map(str::to_owned));
    typed
}

#[test]
fn help_is_in_the_language_of_the_course() {
    let theme = theme("made-up-help");
    let content = common::course("made-up-help-course");
    translate(&content);
    let whole = spoken(&theme, &content, &["--help"]).out;
    let commands: Vec<&str> = whole
        .lines()
        .filter_map(|line| line.strip_prefix("  "))
        .filter(|line| line.starts_with(|sign: char| sign.is_ascii_lowercase()))
        .filter_map(|line| line.split_whitespace().next())
        .collect();
    assert!(commands.len() > 15, "{whole}");
    let mut asked: Vec<Vec<&str>> = vec![vec!["--help"], vec!["-h"], vec!["help"]];
    for command in &commands {
        asked.extend([
            vec![command, "--help"],
            vec![command, "-h"],
            vec!["help", command],
        ]);
    }
    let mut wrong = Vec::new();
    for arguments in asked {
        let answer = spoken(&theme, &content, &arguments);
        assert_eq!(answer.code, 0, "{arguments:?}: {}", answer.err);
        let mut own = typed_in(&answer.out);
        own.extend(commands.iter().flat_map(|command| bare(command)));
        let strange: Vec<_> =
            bare(&answer.out).into_iter().filter(|word| !own.contains(word)).collect();
        if !strange.is_empty() || answer.out.matches('⟦').count() < 8 {
            wrong.push(format!("{arguments:?}: {strange:?}\n{}", answer.out));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let manual = spoken(&theme, &content, &["manual"]).out;
    let headings: Vec<&str> =
        manual.lines().filter(|line| line.starts_with(".S")).collect();
    let plain = |line: &&&str| !line.contains('⟦') && !line.contains("TOURIER ");
    assert_eq!(headings.iter().filter(plain).count(), 0, "{headings:?}");
    assert!(!manual.contains("Possible values") || manual.contains("⟦Possible values⟧"));
    for shell in ["zsh", "fish", "elvish", "powershell"] {
        let completions = spoken(&theme, &content, &["completions", shell]).out;
        assert!(completions.contains("⟦Check everything and write nothing⟧"), "{shell}");
    }
}
