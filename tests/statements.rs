//! Statements and message files: each statement in the source has its message, with just the
//! values that the message wants, and no message is left that nobody says.
#![allow(clippy::wildcard_enum_match_arm, reason = "a test looks at what it is about")]
#![allow(clippy::disallowed_methods, reason = "the sources are read")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;

use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Pattern, PatternElement, Resource,
};
use fluent_syntax::parser;
use tourier::theme::Theme;

/// The files of messages that are said by statements alone.
const FILES: [&str; 5] = [
    "words/en/cli.ftl",
    "words/en/desk.ftl",
    "words/en/fault.ftl",
    "words/en/here.ftl",
    "words/en/room.ftl",
];

/// Names of values, by the key of the message.
type Messages = BTreeMap<String, BTreeSet<String>>;

#[test]
fn every_statement_has_its_message_and_every_message_is_said() {
    let theme = Theme::built_in();
    let mut messages = Messages::new();
    for file in FILES {
        for (key, values) in of_file(theme.text(file)) {
            assert!(messages.insert(key.clone(), values).is_none(), "{key} stands twice");
        }
    }
    let said = said();
    let mut wrong = Vec::new();
    for (key, values, file) in &said {
        match messages.get(key) {
            None => wrong.push(format!("{file}: there is no message `{key}`")),
            Some(wanted) if wanted != values => {
                wrong.push(format!(
                    "{file}: `{key}` wants {wanted:?}, is given {values:?}"
                ));
            }
            Some(_) => {}
        }
    }
    // Some are asked for by key alone.
    let sources = sources();
    let is_used = |key: &&String| {
        let family = key.rsplit_once('-').map_or(key.as_str(), |(family, _)| family);
        let of_family = [format!("`{family}-${{"), "`desk-row-${".to_owned()];
        let is_of = |one: &String, text: &str| {
            text.contains(one.as_str()) && key.starts_with(&one[1..one.len() - 2])
        };
        sources.iter().any(|(_, text)| {
            text.contains(&format!("\"{key}\""))
                || of_family.iter().any(|one| is_of(one, text))
        })
    };
    let unused = messages.keys().filter(|key| !is_used(key));
    wrong.extend(unused.map(|key| format!("nobody says `{key}`")));
    assert!(said.len() > 200, "the sources are read: {}", said.len());
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The desk's page says nothing that no message has.
#[test]
fn the_desk_says_what_there_is() {
    let theme = Theme::built_in();
    let messages = of_file(theme.text("words/en/desk.ftl"));
    let page = "src/preview/desk/page/";
    let mut asked = 0;
    for (file, text) in sources().iter().filter(|(file, _)| file.starts_with(page)) {
        for before in ["word(\"", "data-word=\"", "data-label=\""] {
            for (at, _) in text.match_indices(before) {
                let key = text[at + before.len()..].split('"').next().unwrap_or_default();
                assert!(messages.contains_key(key), "{file}: there is no `{key}`");
                asked += 1;
            }
        }
    }
    assert!(asked > 20, "the page is read: {asked}");
}

/// No key stands in two files of a language: the second would be said in place of the first.
#[test]
fn no_key_stands_in_two_files() {
    let theme = Theme::built_in();
    let mut seen: BTreeMap<String, &str> = BTreeMap::new();
    let files: Vec<&str> = theme.below("words/en/").collect();
    for file in files {
        for key in of_file(theme.text(file)).into_keys() {
            let before = seen.insert(key.clone(), file);
            assert_eq!(before, None, "{key} in {file}");
        }
    }
}

/// The messages of a file.
fn of_file(text: &str) -> Messages {
    let resource: Resource<&str> = parser::parse_runtime(text)
        .map_err(|(_, errors)| errors)
        .expect("a message file");
    let messages = resource.body.iter().filter_map(|entry| match entry {
        Entry::Message(message) => Some(message),
        _ => None,
    });
    let message = messages.map(|message| {
        let mut names = BTreeSet::new();
        message.value.iter().for_each(|pattern| variables(pattern, &mut names));
        (message.id.name.to_owned(), names)
    });
    let all: Vec<_> = message.collect();
    let count = all.len();
    let map: Messages = all.into_iter().collect();
    assert_eq!(map.len(), count, "a key stands twice in one file");
    map
}

fn variables(pattern: &Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else { continue };
        let inline = match expression {
            Expression::Inline(inline) => inline,
            Expression::Select { selector, variants } => {
                variants.iter().for_each(|one| variables(&one.value, names));
                selector
            }
        };
        if let InlineExpression::VariableReference { id } = inline {
            names.insert(id.name.to_owned());
        }
    }
}

/// The sources, those of the desk's page too, by their paths.
fn sources() -> Vec<(String, String)> {
    let files = walkdir::WalkDir::new("src").into_iter().flatten();
    let ours = |file: &walkdir::DirEntry| {
        let ending = file.path().extension().unwrap_or_default();
        ["rs", "js", "html"].iter().any(|known| ending == *known)
    };
    let files = files.filter(ours);
    let read = |file: walkdir::DirEntry| {
        let text = fs::read_to_string(file.path()).expect("a source");
        (file.path().display().to_string(), text)
    };
    files.map(read).collect()
}

/// Every statement in the sources: its key, the names of its values, its file.
fn said() -> Vec<(String, BTreeSet<String>, String)> {
    let mut found = Vec::new();
    for (file, text) in sources() {
        for (at, _) in text.match_indices("said!(\"") {
            let line = text[..at].rfind('\n').map_or(0, |start| start + 1);
            if text[line..at].contains("//") {
                continue;
            }
            let (key, values) = statement(&text[at + "said!(".len()..]);
            found.push((key, values, file.clone()));
        }
    }
    found
}

/// What stands between the brackets of `said!(`: the key, and the names before the values.
fn statement(text: &str) -> (String, BTreeSet<String>) {
    let (mut depth, mut quoted, mut parts, mut part) =
        (1, false, Vec::new(), String::new());
    let mut signs = text.chars();
    while let Some(sign) = signs.next() {
        match sign {
            '"' => quoted = !quoted,
            '\\' if quoted => {
                part.push(sign);
                part.extend(signs.next());
                continue;
            }
            '(' | '[' | '{' if !quoted => depth += 1,
            ')' | ']' | '}' if !quoted => depth -= 1,
            ',' if !quoted && depth == 1 => {
                parts.push(std::mem::take(&mut part));
                continue;
            }
            _ => {}
        }
        if depth == 0 {
            break;
        }
        part.push(sign);
    }
    parts.push(part);
    let key = parts.remove(0).trim().trim_matches('"').to_owned();
    let names = parts.iter().map(|part| {
        part.split(['=', ' ']).find(|word| !word.trim().is_empty()).unwrap_or("").trim()
    });
    (key, names.filter(|name| !name.is_empty()).map(str::to_owned).collect())
}

#[test]
fn statements_are_taken_apart() {
    let (key, names) = statement("\"a-key\", count, name = f(\"a, b\", [1, 2]),\n)");
    assert_eq!(key, "a-key");
    assert_eq!(names.into_iter().collect::<Vec<_>>(), ["count", "name"]);
}
