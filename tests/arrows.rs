//! The order of the modules in `src/lib.rs` is the way of the data: a module may use what
//! stands above it, never what stands below.
#![allow(clippy::disallowed_methods, reason = "the sources are read")]

use std::fs;
use std::path::{Path, PathBuf};

/// The modules in order.
fn modules() -> Vec<String> {
    let map = fs::read_to_string("src/lib.rs").expect("the map is there");
    let names = map.lines().filter_map(|line| line.strip_prefix("pub mod "));
    names.map(|name| name.trim_end_matches(';').to_owned()).collect()
}

/// The source files of a module: one file, or a folder of them.
fn sources(module: &str) -> Vec<PathBuf> {
    let file = Path::new("src").join(format!("{module}.rs"));
    let mut sources = below(&Path::new("src").join(module));
    sources.extend(file.is_file().then_some(file));
    sources
}

fn below(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let paths = entries.map(|entry| entry.path());
    paths
        .flat_map(|path| if path.is_dir() { below(&path) } else { vec![path] })
        .filter(|path| path.extension().is_some_and(|end| end == "rs"))
        .collect()
}

/// The modules that a source names after `crate::`, outside comments.
fn used(source: &str) -> Vec<String> {
    let code: Vec<&str> =
        source.lines().map(|line| line.split("//").next().unwrap_or_default()).collect();
    let code = code.join("\n");
    code.split("crate::").skip(1).flat_map(roots).collect()
}

/// The first names of a path, or of each path of a group: `{fault::Fault, words::Words}`.
fn roots(path: &str) -> Vec<String> {
    let Some(group) = path.strip_prefix('{') else { return vec![name(path)] };
    let (mut roots, mut depth, mut start) = (Vec::new(), 1, 0);
    for (at, letter) in group.char_indices() {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => {}
        }
        if depth == 0 || (depth == 1 && letter == ',') {
            roots.push(name(group[start..at].trim()));
            start = at + 1;
        }
        if depth == 0 {
            break;
        }
    }
    roots
}

fn name(path: &str) -> String {
    path.chars().take_while(|letter| letter.is_alphanumeric() || *letter == '_').collect()
}

#[test]
fn groups_and_comments_are_read() {
    let source = "use crate::{fault::{Fault, Place}, words::Words};\n// crate::cli\nlet x = crate::time::plan();";
    assert_eq!(used(source), ["fault", "words", "time"]);
}

#[test]
fn every_arrow_points_upward() {
    let modules = modules();
    assert!(modules.len() > 10, "the map is read: {modules:?}");
    let mut against = Vec::new();
    for (at, module) in modules.iter().enumerate() {
        for file in sources(module) {
            let source = fs::read_to_string(&file).expect("a source is text");
            let below =
                used(&source).into_iter().filter(|name| modules[at + 1..].contains(name));
            against.extend(below.map(|name| format!("{} uses `{name}`", file.display())));
        }
    }
    assert!(
        against.is_empty(),
        "against the order of src/lib.rs:\n{}",
        against.join("\n")
    );
}

/// Who may not know whom, beyond the order: the list in DEVELOPERS.md. Tests may: they
/// make what they look at.
const STRANGERS: &[(&str, &[&str])] = &[
    ("measure", ALL),
    ("encode", ALL),
    ("statement", &["fault", "media", "theme", "words"]),
    ("words", &["fault", "media", "theme"]),
    ("theme", ALL),
    ("fault", &["measure", "media", "theme"]),
    ("media", &["words", "theme"]),
    ("dough", &["words", "theme", "read", "pantry", "formula"]),
    ("time", &["words", "theme", "read", "model", "pantry", "formula"]),
    ("formula", &["words", "theme"]),
    ("work", &["words", "theme", "read"]),
    ("plan", &["words", "theme", "read", "pantry"]),
    ("draw", COMPUTING),
    ("lists", COMPUTING),
    ("paper", COMPUTING),
    ("site", COMPUTING),
];
/// What painters know only as far as the sheet says it.
const COMPUTING: &[&str] =
    &["read", "model", "pantry", "formula", "time", "work", "plan", "check"];
/// Rooms that a tool at the foundation knows nothing of.
const ALL: &[&str] = &["fault", "measure", "media", "theme", "words"];

/// A source without its tests, which stand at its end.
fn untested(source: &str) -> &str {
    source.split("#[cfg(test)]\nmod tests {").next().unwrap_or(source)
}

/// Whether a file is compiled for tests alone, by the module that it belongs to.
fn is_test(file: &Path) -> bool {
    let stem = file.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let parent = file.with_file_name("mod.rs");
    let declared = format!("#[cfg(test)]\nmod {stem};");
    fs::read_to_string(parent).is_ok_and(|source| source.contains(&declared))
}

#[test]
fn no_room_knows_its_strangers() {
    let mut against = Vec::new();
    for (module, strangers) in STRANGERS {
        for file in sources(module).into_iter().filter(|file| !is_test(file)) {
            let source = fs::read_to_string(&file).expect("a source is text");
            let known = used(untested(&source)).into_iter();
            let known =
                known.filter(|name| name != module && strangers.contains(&&**name));
            against.extend(known.map(|name| format!("{} uses `{name}`", file.display())));
        }
    }
    assert!(against.is_empty(), "strangers met:\n{}", against.join("\n"));
}

#[test]
fn every_source_belongs_to_a_module() {
    let mut known: Vec<PathBuf> =
        modules().iter().flat_map(|module| sources(module)).collect();
    known.extend(
        ["lib.rs", "main.rs", "build.rs"].map(|name| Path::new("src").join(name)),
    );
    let stray: Vec<PathBuf> = below(Path::new("src"))
        .into_iter()
        .filter(|file| !known.contains(file))
        .collect();
    assert!(stray.is_empty(), "in no module of src/lib.rs: {stray:?}");
}

/// Rooms between the words at both ends: what they tell apart are kinds, ids and numbers.
const MIDDLE: [&str; 9] =
    ["formula", "dough", "time", "work", "plan", "check", "sheet", "draw", "lists"];

/// Where text is compared all the same, how often, and why.
const COMPARED: &[(&str, usize, &str)] =
    &[("sheet/making/lines.rs", 1, "the pantry's word for a piece without a name")];

/// A comparison with a text in quotes: `== "`, `"x" =>`.
fn compares(line: &str) -> bool {
    let code = line.split("//").next().unwrap_or_default().trim();
    let before = code.split("=> ").next().unwrap_or_default();
    let is_arm = code.contains("=>") && before.contains('"');
    let signs = ["== \"", "!= \"", "contains(\"", ", Some(\""];
    is_arm || signs.iter().any(|sign| code.contains(sign))
}

#[test]
fn no_text_is_compared_in_the_middle() {
    let mut against = Vec::new();
    for file in MIDDLE.iter().flat_map(|module| sources(module)) {
        if is_test(&file) {
            continue;
        }
        let source = fs::read_to_string(&file).expect("a source is text");
        let found: Vec<&str> =
            untested(&source).lines().filter(|line| compares(line)).collect();
        let path = file.strip_prefix("src").expect("below src").display().to_string();
        let allowed = COMPARED.iter().find(|(name, ..)| *name == path);
        if found.len() > allowed.map_or(0, |(_, most, _)| *most) {
            against.push(format!("{path}:\n  {}", found.join("\n  ")));
        }
    }
    assert!(against.is_empty(), "text is compared:\n{}", against.join("\n"));
}

/// Where `matches!` names several kinds of ours all the same, and why a new kind may fall to
/// the others there.
const SORTED: &[(&str, usize, &str)] = &[
    ("dough/shaping/mod.rs", 5, "a form that is not named is refused, in words"),
    ("draw/pieces/shape.rs", 1, "what is not named has nothing more to say"),
    ("sheet/making/written.rs", 1, "units other than grams may be written in fractions"),
];

/// The insides of each `matches!` of a source.
fn matched(source: &str) -> Vec<String> {
    let inside = source.split("matches!(").skip(1).map(|rest| {
        let mut depth = 1;
        let end = rest.find(|sign| {
            depth += match sign {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            depth == 0
        });
        rest[..end.unwrap_or(rest.len())].split_whitespace().collect::<Vec<_>>().join(" ")
    });
    inside.collect()
}

/// Whether a pattern sorts kinds: it names several.
fn sorts(inside: &str) -> bool {
    let pattern = inside.split_once(", ").map_or("", |(_, pattern)| pattern);
    let kinds = pattern.split(" | ").filter(|kind| kind.contains("::"));
    kinds.count() > 1
}

#[test]
fn matches_of_several_kinds_are_seen() {
    let source = "if matches!(a.b, Kind::A | Kind::B(_)) { x(matches!(c, Kind::A)) }";
    assert_eq!(
        matched(source).iter().map(|it| sorts(it)).collect::<Vec<_>>(),
        [true, false]
    );
}

/// A new kind must be told where kinds are sorted into two: `matches!` would let it fall
/// silently to the others, and clippy's lint on wildcards does not see it.
#[test]
fn kinds_are_sorted_by_name() {
    let mut against = Vec::new();
    for file in MIDDLE.iter().flat_map(|module| sources(module)) {
        if is_test(&file) {
            continue;
        }
        let source = fs::read_to_string(&file).expect("a source is text");
        let all = matched(untested(&source));
        let found: Vec<&String> = all.iter().filter(|inside| sorts(inside)).collect();
        let path = file.strip_prefix("src").expect("below src").display().to_string();
        let allowed = SORTED.iter().find(|(name, ..)| *name == path);
        if found.len() > allowed.map_or(0, |(_, most, _)| *most) {
            against.push(format!("{path}: {found:?}"));
        }
    }
    assert!(against.is_empty(), "`matches!` sorts kinds:\n{}", against.join("\n"));
}

/// Who reads a clock, and why.
const CLOCKED: &[(&str, &str)] = &[
    ("cli/note.rs", "what day it is at the bench"),
    ("evening.rs", "what time it is on the evening"),
    ("cli/waiting.rs", "when to say that a plan takes longer"),
    ("preview/connections.rs", "a line that nobody takes in from makes room"),
    ("preview/room/pace.rs", "how much is taken in from a room, and how long it waits"),
    ("preview/watch.rs", "looking at files takes a share of the time, whatever it takes"),
    ("store/manifest.rs", "the seal's own time tells later changes"),
];

/// Nothing that is worked out, drawn or printed depends on the clock.
#[test]
fn only_the_edge_reads_a_clock() {
    let all = below(Path::new("src"));
    let reads = all.iter().filter(|file| {
        let source = fs::read_to_string(file).expect("a source is text");
        let names = ["Instant::now", "SystemTime::now", "Timestamp::now", "Zoned::now"];
        names.iter().any(|name| untested(&source).contains(name))
    });
    let found: Vec<String> = reads
        .map(|file| file.strip_prefix("src").expect("below src").display().to_string())
        .collect();
    let mut known: Vec<&str> = CLOCKED.iter().map(|(file, _)| *file).collect();
    let mut found: Vec<&str> = found.iter().map(String::as_str).collect();
    known.sort_unstable();
    found.sort_unstable();
    assert_eq!(found, known, "who reads a clock");
}
