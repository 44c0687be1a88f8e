//! Strangers' files and a machine that says no: each row of what may be put in is either
//! taken or refused in plain words, within bounds of time and memory, and what was
//! published before stays.
#![allow(clippy::disallowed_methods, reason = "the cases are written to disk")]
#![cfg(unix)]

mod common;

use std::fmt::Write;
use std::fs;
use std::os::unix::fs::symlink;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

use common::{Answer, course, facts, folder, tourier};

/// Longer than this no file of one course may keep the program busy, even on a slow and
/// busy machine.
const LONGEST: Duration = Duration::from_secs(60);
/// Memory that checking any one file may take, in kibibytes: the file, its tree, and what
/// the typefaces and threads reserve.
const MOST_MEMORY: u32 = 1536 * 1024;
/// Where each kind of text stands.
const KINDS: [&str; 6] = [
    "course.yaml",
    "pantry.yaml",
    "glossary.yaml",
    "recipes/strange.md",
    "techniques/strange.md",
    "classes/strange.yaml",
];

/// Checks a course within the bounds: it ends by itself, with or without faults.
fn proof(content: &Path) -> Answer {
    let begun = Instant::now();
    let limit = format!("ulimit -v {MOST_MEMORY}; exec \"$@\"");
    let run = Command::new("sh")
        .args(["-c", &limit, "sh", env!("CARGO_BIN_EXE_tourier")])
        .args(["--color", "never", "--content"])
        .arg(content)
        .arg("proof")
        .output()
        .expect("the program starts");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let code = run.status.code().unwrap_or(-1);
    let answer = Answer { code, out: text(&run.stdout), err: text(&run.stderr) };
    assert!(begun.elapsed() < LONGEST, "{content:?} took {:?}", begun.elapsed());
    let calm = matches!(code, 0 | 1) && !answer.err.contains("panicked");
    assert!(calm, "{content:?}: {code} {}", answer.err);
    answer
}

/// The tiny course with one file of these bytes.
fn with(name: &str, file: &str, bytes: &[u8]) -> PathBuf {
    let content = course(&format!("bad-{name}"));
    let file = content.join(file);
    fs::create_dir_all(file.parent().expect("a folder")).expect("it can be made");
    fs::write(file, bytes).expect("the file can be written");
    content
}

/// Every kind of text with these bytes is refused with this fault, and nothing else is
/// said about that file.
fn refused(name: &str, bytes: &[u8], fault: &str) {
    for file in KINDS {
        let answer = proof(&with(name, file, bytes));
        assert_eq!(answer.code, 1, "{file}: {}", answer.err);
        assert!(answer.err.contains(fault), "{name} in {file}: {}", answer.err);
        let own = answer.err.lines().filter(|line| line.starts_with(file)).count();
        assert_eq!(own, 1, "{name} in {file}: {}", answer.err);
    }
}

/// Every kind of text with these bytes is answered, whatever the answer.
fn answered(name: &str, yaml: &[u8], markdown: &[u8]) {
    for file in KINDS {
        let bytes = if file.ends_with(".md") { markdown } else { yaml };
        proof(&with(name, file, bytes));
    }
}

#[test]
fn what_is_no_text_is_refused() {
    refused("not-utf8", b"title: caf\xe9\n", "it is not UTF-8 text");
    refused("utf16", b"\xff\xfet\0i\0t\0l\0e\0", "it is not UTF-8 text");
    refused("zero", b"---\ntitle: a\0b\n---\n", "it holds a zero byte");
}

#[test]
fn fifty_megabytes_are_refused() {
    refused("huge", &vec![b'a'; 50 << 20], "it is larger than 1 MiB");
}

#[test]
fn an_empty_file_is_answered() {
    for text in ["", "\n", "---\n---\n", "---\n", "~\n", "[]\n"] {
        answered("empty", text.as_bytes(), text.as_bytes());
    }
    let answer = proof(&with("empty-recipe", "recipes/strange.md", b""));
    assert!(answer.err.contains("missing-head"), "{}", answer.err);
}

#[test]
fn deep_nesting_is_refused() {
    let deep = "[".repeat(100_000);
    let head = "---\ntitle: a\nsummary: b\n---\n";
    for sign in [">", "- ", "* _", "[", "![", "**a ", "<b>", "`` ` ", "1. ", "|a\n"] {
        let markdown = format!("{head}{}", sign.repeat(900_000 / sign.len()));
        answered("deep", deep.as_bytes(), markdown.as_bytes());
    }
    let lists: String = (0..200).fold(String::new(), |mut text, level| {
        let _ = writeln!(text, "{}- a", "  ".repeat(level));
        text
    });
    let file = format!("{head}{lists}");
    let answer = proof(&with("deep-list", "recipes/strange.md", file.as_bytes()));
    assert_eq!(answer.err.matches("too-deep").count(), 1, "{}", answer.err);
}

/// Far more than anybody bakes from is said at once, and costs no more than a moment.
#[test]
fn thousands_of_lines_pieces_and_turns_are_bounded_and_said() {
    let begin = "---\ntitle: Much\nsummary: Of all.\nmakes: 10000 squares\nformula:\n  dough:\n    \
                 - 500 kg bread flour\n    - 300 kg water\n";
    let steps =
        "---\n\n## Mix\n~~~ticket\nuses: dough\nhands: 9 min\n~~~\nMix {dough}.\n";
    let bake = "\n## Bake\n~~~ticket\nbake: 230 °C, 35 min\n~~~\nBake.\n";
    let lines = "    - 10 g fine salt\n".repeat(5000);
    let cut = "\n## Cut\n~~~ticket\nhands: 5 min\nsheet: 1000 x 1000 cm\ncut: squares 10 cm\n~~~\n";
    let butter = "  butter:\n    - 200 kg butter\n";
    let lock =
        "\n## Lock\n~~~ticket\nuses: butter\nsheet: 800 x 400 cm\nlock-in: letter\n~~~\n";
    let turns: String = (0..30).fold(String::new(), |mut text, number| {
        let ticket = "~~~ticket\nsheet: 800 x 400 cm\nturn: book\n~~~";
        let _ = write!(text, "\n## Turn {number}\n{ticket}\n");
        text
    });
    for (fault, text) in [
        ("too-many-lines", format!("{begin}{lines}{steps}{bake}")),
        ("more than 2000 pieces", format!("{begin}{steps}{cut}{bake}")),
        ("too-many-turns", format!("{begin}{butter}{steps}{lock}{turns}{bake}")),
    ] {
        let begun = Instant::now();
        let answer = proof(&with("much", "recipes/much.md", text.as_bytes()));
        assert!(answer.err.contains(fault), "{}", answer.err);
        // Two seconds, and as much again for what else runs here.
        assert!(
            begun.elapsed() < Duration::from_secs(4),
            "it took {:?}",
            begun.elapsed()
        );
    }
}

#[test]
fn an_alias_bomb_is_refused() {
    let mut bomb = String::from("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (one, next) in ('a'..'i').zip('b'..='i') {
        let many = vec![format!("*{one}"); 9].join(", ");
        let _ = writeln!(bomb, "{next}: &{next} [{many}]");
    }
    let markdown = format!("---\n{bomb}---\n");
    for file in KINDS {
        let text = if file.ends_with(".md") { &markdown } else { &bomb };
        let answer = proof(&with("bomb", file, text.as_bytes()));
        assert!(answer.err.contains("are not used in these files"), "{}", answer.err);
    }
}

/// A mebibyte of one thing over and over: no fault may cost as much as the whole file.
#[test]
fn much_of_the_same_is_answered_in_time() {
    let head = "---\ntitle: a\nsummary: b\nmakes: 1 loaf\nformula:\n";
    let fill = |lead: &str, unit: &str| {
        format!("{lead}{}", unit.repeat(((1 << 20) - lead.len() - 100) / unit.len()))
    };
    let body = format!("{head}  dough:\n    - 500 g bread flour\n---\n");
    for (name, text) in [
        ("lines", fill(&format!("{head}  dough:\n"), "    - 5 g no such thing\n")),
        ("sections", fill(head, "  a b: 1 g x\n")),
        ("one-line", fill(&format!("{head}  dough:\n    - 5 g "), "flour ")),
        ("digits", fill(&format!("{head}  dough:\n    - "), "9")),
        ("spaced-digits", fill(&format!("{head}  dough:\n    - "), "9 ")),
        ("fractions", fill(&format!("{head}  dough:\n    - "), "1/3 ")),
        ("braces", fill(&body, "the {butter} ")),
        ("brace-lines", fill(&body, "{190 °C}\n")),
        ("escaped", fill(&body, "\\{")),
        ("open-braces", fill(&body, "{a\n\n")),
        ("digits-in-brace", fill(&format!("{body}{{"), "9")),
        ("headings", fill(&body, "## Mix\n")),
        ("tickets", fill(&body, "## A\n~~~ticket\nhands: 1 min\n~~~\n")),
        ("many-in-one", fill(&format!("{body}## A\n~~~ticket\n"), "a: b\n")),
        ("links", fill(&body, "[a](b.md) ")),
        ("pictures", fill(&body, "![a](../media/b.jpg) ")),
        ("degrees", fill(&body, "190 °C\n\n")),
        ("signs", fill(&body, "粉")),
    ] {
        proof(&with(&format!("much-{name}"), "recipes/strange.md", text.as_bytes()));
    }
}

#[test]
fn other_line_ends_and_marks_change_nothing() {
    let plain = facts(Path::new(common::COURSE), "small-crescents");
    let returns = |text: &str| text.replace('\n', "\r\n");
    let mark = |text: &str| format!("\u{feff}{text}");
    for (name, change) in
        [("returns", &returns as &dyn Fn(&str) -> String), ("mark", &mark)]
    {
        let content = course(&format!("bad-{name}"));
        for file in
            ["course.yaml", "recipes/small-block.md", "recipes/small-crescents.md"]
        {
            let file = content.join(file);
            let text = fs::read_to_string(&file).expect("the file is there");
            fs::write(file, change(&text)).expect("the file can be written");
        }
        assert_eq!(facts(&content, "small-crescents"), plain, "{name}");
    }
}

#[test]
fn writing_from_right_to_left_is_taken() {
    let text = "---\ntitle: לחם לבן\nsummary: عجين \u{202e}evil\u{202c}\nmakes: 1 loaf\n\
                formula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n---\n\n\
                ## לישה\n~~~ticket\nuses: dough\nhands: 10 min\n~~~\nلا تستعجل.\n";
    let content = with("right-to-left", "recipes/strange.md", text.as_bytes());
    let answer = proof(&content);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert_eq!(facts(&content, "strange")["title"], "לחם לבן");
}

/// Replaces one text in one file of the tiny course.
fn changed(name: &str, (file, from, to): (&str, &str, &str)) -> PathBuf {
    let content = course(&format!("bad-{name}"));
    let file = content.join(file);
    let text = fs::read_to_string(&file).expect("the file is there");
    assert!(text.contains(from), "{from}");
    fs::write(file, text.replacen(from, to, 1)).expect("the file can be written");
    content
}

const CRESCENTS: &str = "recipes/small-crescents.md";

#[test]
fn paths_that_lead_out_are_refused_by_name() {
    for path in ["../../secret.jpg", "/etc/secret.jpg", "../media/../../secret.jpg"] {
        let picture = format!("![a loaf]({path})\n\nOne sheet");
        let content = changed("picture", (CRESCENTS, "One sheet", &picture));
        let answer = proof(&content);
        assert!(answer.err.contains("bad-picture"), "{path}: {}", answer.err);
        assert!(answer.err.contains("secret.jpg"), "{path}: {}", answer.err);
    }
    for path in ["../../secret.md", "/etc/passwd", "file:///etc/passwd", "javascript:x"] {
        let link = format!("[a]({path}) One sheet");
        let answer = proof(&changed("link", (CRESCENTS, "One sheet", &link)));
        assert!(answer.err.contains("bad-link"), "{path}: {}", answer.err);
        assert!(answer.err.contains(path), "{path}: {}", answer.err);
    }
    for path in ["../secret.md", "/etc/passwd", "a/../../secret.md"] {
        let change = (CRESCENTS, "(small-block.md)", &*format!("({path})"));
        let answer = proof(&changed("included", change));
        assert_eq!(answer.code, 1, "{path}: {}", answer.err);
    }
    for path in ["../secret.svg", "/etc/secret.svg"] {
        let logo = format!("theme: {{ logo: {path} }}\nunits:");
        let answer = proof(&changed("logo", ("course.yaml", "units:", &logo)));
        assert!(answer.err.contains("no-logo"), "{path}: {}", answer.err);
    }
}

#[test]
fn links_to_other_places_are_refused_by_name() {
    let secret = folder("bad-secret");
    let text = "---\ntitle: SECRET\nsummary: s\n---\n";
    fs::write(secret.join("a.md"), text).expect("written");
    fs::write(secret.join("a.jpg"), [0xff, 0xd8, 0xff]).expect("written");
    for (what, from) in [
        ("a.md", "recipes/linked.md"),
        ("a.md", "techniques/linked.md"),
        ("none.md", "recipes/linked.md"),
        ("a.jpg", "media/linked.jpg"),
        ("a.md", "media/linked.svg"),
        ("a.md", "pantry.yaml"),
        ("", "classes"),
        ("", "media"),
    ] {
        let content = course("bad-linked");
        let from = content.join(from);
        fs::create_dir_all(from.parent().expect("a folder")).expect("it can be made");
        symlink(secret.join(what), &from).expect("the link can be made");
        let answer = proof(&content);
        let name = from.strip_prefix(&content).expect("below").display().to_string();
        assert_eq!(answer.code, 1, "{name}: {}", answer.err);
        assert!(answer.err.contains(&name), "{name}: {}", answer.err);
        assert!(answer.err.contains("link to another place"), "{name}: {}", answer.err);
        assert!(!answer.err.contains("SECRET"), "{name}: {}", answer.err);
    }
}

#[test]
fn names_that_cannot_stand_in_an_address_are_refused() {
    for name in
        ["a b.md", "a#b.md", "a?b.md", "..md", "...md", "a%2e.md", "é.md", "\".md"]
    {
        let text = b"---\ntitle: a\nsummary: b\n---\n";
        let answer = proof(&with("name", &format!("recipes/{name}"), text));
        let hidden = name.starts_with('.');
        assert_eq!(answer.code, i32::from(!hidden), "{name}: {}", answer.err);
    }
}

#[test]
fn two_files_for_one_page_are_named_both() {
    let text = fs::read(Path::new(common::COURSE).join("recipes/small-block.md"));
    let text = text.expect("the file is there");
    for twin in ["recipes/Small-Block.md", "techniques/small-block.md"] {
        let answer = proof(&with("twin", twin, &text));
        assert_eq!(answer.code, 1, "{}", answer.err);
        assert!(answer.err.contains("one-page-for-two"), "{}", answer.err);
        assert!(answer.err.contains(twin), "{twin}: {}", answer.err);
        assert!(answer.err.contains("recipes/small-block.md"), "{twin}: {}", answer.err);
    }
}

/// A theme with one file, used for publishing.
fn themed(file: &str, text: &[u8]) -> Answer {
    let theme = folder("bad-theme");
    let path = theme.join(file);
    fs::create_dir_all(path.parent().expect("a folder")).expect("it can be made");
    fs::write(path, text).expect("written");
    let (theme, site) = (theme.to_string_lossy().into_owned(), folder("bad-theme-site"));
    let to = site.to_string_lossy().into_owned();
    let answer =
        tourier(Path::new(common::COURSE), &["--theme", &theme, "publish", "--to", &to]);
    assert!(fs::read_dir(site).expect("the folder opens").next().is_none(), "{file}");
    answer
}

#[test]
fn a_broken_theme_is_reported_at_its_own_line() {
    let answer = themed("site/recipe.html", b"one\ntwo\n{% if %}\n");
    assert!(answer.err.contains("site/recipe.html:3"), "{}", answer.err);
    let answer = themed("site/recipe.html", b"{% include \"../../../etc/passwd\" %}");
    assert!(answer.err.contains("site/recipe.html"), "{}", answer.err);
    let answer = themed("paper/main.typ", b"one\n#nobody\n");
    assert!(answer.err.contains("main.typ:2"), "{}", answer.err);
    for reading in ["#read(\"/etc/passwd\")", "#image(\"../../../a.png\")"] {
        let answer = themed("paper/main.typ", reading.as_bytes());
        assert!(answer.err.contains("main.typ:1"), "{reading}: {}", answer.err);
    }
    let answer = themed("words/en/page.ftl", b"a = b\nc [\n");
    assert!(answer.err.contains("words/en/page.ftl:2:"), "{}", answer.err);
    let answer = themed("site/style.css", b"a \xff b");
    assert_eq!(answer.code, 3, "{}", answer.err);
    assert!(answer.err.contains("style.css"), "{}", answer.err);
}

#[test]
fn a_link_in_a_theme_is_refused_by_name() {
    let theme = folder("bad-linked-theme");
    fs::create_dir_all(theme.join("site")).expect("it can be made");
    symlink("/etc/passwd", theme.join("site/style.css")).expect("the link can be made");
    let theme = theme.to_string_lossy().into_owned();
    let answer = tourier(Path::new(common::COURSE), &["--theme", &theme, "proof"]);
    assert_eq!(answer.code, 3, "{}", answer.err);
    assert!(answer.err.contains("style.css"), "{}", answer.err);
}
