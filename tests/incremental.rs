//! After any sequence of edits, what was published bit by bit is what a clean publish
//! gives, byte for byte, with the list of what was made from what.
//!
//! A state of the course is a choice at each slot: a word of a file, or a whole file or
//! its absence. A theme with a plain handout template keeps each publish short; it prints
//! all the data that a handout is made from.
//!
//! The long campaign: `EDITS=40 PROPTEST_CASES=25 cargo test --release --test incremental
//! -- --ignored`.
#![allow(clippy::disallowed_methods, reason = "editions are written and compared")]

mod common;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use common::{course, folder, tourier};
use proptest::prelude::*;

const COURSE: &str = "course.yaml";
const BLOCK: &str = "recipes/small-block.md";
const CRESCENTS: &str = "recipes/small-crescents.md";
const TURN: &str = "techniques/book-turn.md";

/// A place in a file of the tiny course: its file, the words that stand there, and others
/// that may.
type Words = (&'static str, &'static str, &'static [&'static str]);

const WORDS: &[Words] = &[
    (BLOCK, "Small block", &["Small block of <layers>"]),
    (BLOCK, "A short schedule", &["A schedule"]),
    (BLOCK, "250 g butter, cold", &["250 g cultured butter", "240 g butter, cold"]),
    (BLOCK, "wait: 45 min (30 min to 2 h)", &["wait: 50 min (30 min to 2 h)"]),
    (BLOCK, "## Mix\n", &["## Mix well\n"]),
    (BLOCK, "after: mix\n", &["after: mix-well\n"]),
    (BLOCK, "turn: letter", &["turn: book"]),
    (CRESCENTS, "Ten crescents from one strip.", &["Ten crescents."]),
    (
        CRESCENTS,
        "205 °C, 17 min",
        &["195 °C, 17 min", "205 °C, 21 min", "400 °F, 17 min"],
    ),
    (CRESCENTS, "Bake at {205 °C}.", &["![a loaf](../media/loaf.png)"]),
    (CRESCENTS, "1 large egg", &["1 large eg", "2 large eggs"]),
    (CRESCENTS, "the sides are brown", &["they are dark"]),
    (COURSE, "units: metric", &["units: us"]),
    (COURSE, "paper: a4", &["paper: letter"]),
    (COURSE, "currency: EUR", &["currency: GBP"]),
    (COURSE, "edition: Trial", &["edition: Second", "instructor: Orla Venning"]),
    (COURSE, "2027-01-10", &["2027-02-10"]),
    (COURSE, "One Evening of Layers", &["An Evening"]),
    (COURSE, "Flour is a raw food.", &["Flour is raw."]),
    (COURSE, "    techniques: [book-turn]\n", &["", "    techniques: []\n"]),
    (COURSE, "[small-block, small-crescents]", &["[small-crescents, small-block]"]),
    (COURSE, "language: en", &["offline: yes", "time zone: Europe/Dublin"]),
    (COURSE, "address: https://trial.saltmarsh.example/\n", &["", "altitude: 1600 m\n"]),
    (COURSE, "school: Saltmarsh", &["theme: { accent: \"#2f6b62\" }\nschool: Marsh"]),
    (COURSE, "lessons:", &["news:\n  - 2027-01-09: It is new.\nlessons:"]),
    (TURN, "Fold both short ends", &["Bring both short ends"]),
    (TURN, "sheet: 64 x 18 cm", &["sheet: 40 x 20 cm"]),
];

/// A whole file below the folder of the test: its contents, or none.
type Whole = (&'static str, &'static [Option<&'static str>]);

const CLASS: &str = "title: Evening\nsessions:\n  - 2027-03-02 10:00 to 22:00\nbakers: 2\n\
                     work in: pairs\nmakes:\n  - recipe: small-crescents\n    each: pair\n    \
                     pieces: 10\nkit: { mixer: 1, oven: 1, tray per oven: 2, fridge tray: 4, \
                     instructor: 1 }\n";
const OTHER_CLASS: &str = "title: Other evening\nsessions:\n  - 2027-03-02 10:00 to 22:00\n\
                           bakers: 1\nwork in: alone\nmakes:\n  - recipe: small-block\n    each: \
                           baker\n    batches: 1\nkit: { mixer: 1, oven: 1 }\n";
const EXTRA: &str = "---\ntitle: Extra\nsummary: Another one.\nmakes: 1 loaf\nformula:\n  \
                     dough:\n    - 500 g bread flour\n    - 300 g water\n---\n\n## Mix\n\
                     ~~~ticket\nuses: dough\nhands: 10 min\n~~~\nMix {dough}.\n";

const FILES: &[Whole] = &[
    (
        "content/pantry.yaml",
        &[
            None,
            Some("bread flour:\n  pack: 1 kg\n  price: 1.10\n"),
            Some(
                "bread flour:\n  pack: 1 kg\n  price: 1.20\nbutter:\n  allergens: none\n",
            ),
            Some("whole milk:\n  density: 1.2 g/ml\n"),
        ],
    ),
    (
        "content/glossary.yaml",
        &[None, Some("bench:\n  means: Where you work.\n"), Some("turn: A fold.\n")],
    ),
    ("content/classes/evening.yaml", &[None, Some(CLASS), Some(OTHER_CLASS)]),
    ("content/classes/late.yaml", &[None, Some(CLASS)]),
    ("content/recipes/extra.md", &[None, Some(EXTRA)]),
    ("content/recipes/renamed.md", &[None, Some(EXTRA)]),
    ("content/media/loaf.png", &[None, Some("red"), Some("blue")]),
    ("content/media/spare.png", &[None, Some("red")]),
    ("content/media/other.png", &[None, Some("red")]),
    ("theme/site/style.css", &[None, Some("body { color: black }\n")]),
    ("theme/site/icon.svg", &[None, Some(ICON)]),
    ("theme/site/missing.html", &[None, Some("{{ page.title }}")]),
    ("theme/site/class.html", &[None, Some("{{ class.title }} {{ page.course.title }}")]),
    ("theme/paper/main.typ", &[Some(PLAIN), Some(OTHER_PLAIN)]),
    ("theme/fonts/note.txt", &[None, Some("none")]),
];

const ICON: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">\
                    <path d=\"M1 1h7v7z\"/></svg>";
/// A template that shows everything that a handout depends on.
macro_rules! plain {
    ($title:literal) => {
        concat!(
            "#set document(title: \"",
            $title,
            "\")\n#set text(font: \"Asap\", size: 4pt)\n#let data = read(\"data.json\")\n\
             #data\n#read(\"house.json\")\n#for it in data.matches(regex(\"[0-9]+[.]svg\")) \
             { read(it.text) }\n"
        )
    };
}
const PLAIN: &str = plain!("a");
const OTHER_PLAIN: &str = plain!("b");

/// How many choices a slot has.
fn choices(slot: usize) -> usize {
    match slot.checked_sub(WORDS.len()) {
        None => 1 + WORDS[slot].2.len(),
        Some(file) => FILES[file].1.len(),
    }
}

/// A picture of one colour.
fn picture(colour: &str) -> Vec<u8> {
    let colour = if colour == "red" { [200, 30, 30] } else { [30, 30, 200] };
    let mut bytes = std::io::Cursor::new(Vec::new());
    let picture = image::RgbImage::from_pixel(20, 10, image::Rgb(colour));
    picture.write_to(&mut bytes, image::ImageFormat::Png).expect("a PNG is written");
    bytes.into_inner()
}

/// A course and a theme in a folder, and a choice at each slot.
struct State {
    folder: PathBuf,
    chosen: Vec<usize>,
    originals: BTreeMap<&'static str, String>,
}

impl State {
    fn new(name: &str) -> Self {
        let root = folder(name);
        course(&format!("{name}/content"));
        let content = root.join("content");
        let files = [COURSE, BLOCK, CRESCENTS, TURN];
        let text = |file| fs::read_to_string(content.join(file)).expect("it is there");
        let originals = files.map(|file| (file, text(file))).into();
        let chosen = vec![0; WORDS.len() + FILES.len()];
        let state = Self { folder: root, chosen, originals };
        state.write();
        state
    }

    fn edit(&mut self, slot: usize, choice: usize) {
        self.chosen[slot] = choice;
        self.write();
    }

    fn write(&self) {
        let (words, files) = self.chosen.split_at(WORDS.len());
        for (file, original) in &self.originals {
            let mut text = original.clone();
            for ((own, from, to), chosen) in WORDS.iter().zip(words) {
                if own == file && *chosen > 0 {
                    assert!(text.contains(from), "{file} has no {from}");
                    text = text.replacen(from, to[chosen - 1], 1);
                }
            }
            fs::write(self.folder.join("content").join(file), text).expect("written");
        }
        for ((file, contents), chosen) in FILES.iter().zip(files) {
            self.whole(&self.folder.join(file), contents[*chosen]);
        }
    }

    fn whole(&self, file: &Path, content: Option<&str>) {
        fs::create_dir_all(file.parent().expect("a folder")).expect("it can be made");
        let is_picture = file.extension().is_some_and(|ending| ending == "png");
        match content {
            Some(colour) if is_picture => fs::write(file, picture(colour)),
            Some(text) => fs::write(file, text),
            None => fs::remove_file(file).or(Ok(())),
        }
        .expect("a file can be changed");
    }

    /// Publishes to a folder; false where a fault stops it.
    fn publish(&self, site: &str) -> bool {
        let at = |name: &str| self.folder.join(name).to_string_lossy().into_owned();
        let (theme, to) = (at("theme"), at(site));
        let answer = tourier(
            &self.folder.join("content"),
            &["--quiet", "--theme", &theme, "publish", "--to", &to],
        );
        assert!(matches!(answer.code, 0 | 1), "{} {}", answer.code, answer.err);
        answer.code == 0
    }

    /// The first file in which two editions differ.
    fn difference(&self) -> Option<String> {
        let both = |name: &str| {
            let mut files = edition(&self.folder.join(name));
            let beside = edition(&self.folder.join(format!("{name}-instructor")));
            files.extend(
                beside.into_iter().map(|(path, it)| (format!("beside/{path}"), it)),
            );
            files
        };
        let (one, other) = (both("site"), both("clean"));
        let names = one.keys().chain(other.keys());
        names.into_iter().find(|name| one.get(*name) != other.get(*name)).cloned()
    }

    /// Compares with a clean publish; false where a fault stops it.
    fn compare(&self) -> bool {
        for clean in ["clean", "clean-instructor"] {
            let _ = fs::remove_dir_all(self.folder.join(clean));
        }
        if !self.publish("site") {
            return false;
        }
        assert!(self.publish("clean"), "a clean publish is stopped");
        assert_eq!(self.difference(), None, "after {:?}", self.chosen);
        true
    }
}

/// Every file below a folder with its bytes.
fn edition(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut files = BTreeMap::new();
    for entry in walkdir::WalkDir::new(folder).into_iter().flatten() {
        if entry.file_type().is_file() {
            let path = entry.path().strip_prefix(folder).unwrap_or(entry.path());
            let bytes = fs::read(entry.path()).expect("a file is read");
            files.insert(path.to_string_lossy().into_owned(), bytes);
        }
    }
    files
}

/// Slots, the choices there, and whether the course is published after it.
fn edits(most: usize) -> impl Strategy<Value = Vec<(usize, usize, bool)>> {
    let edit = (0..WORDS.len() + FILES.len())
        .prop_flat_map(|slot| (Just(slot), 0..choices(slot), any::<bool>()));
    proptest::collection::vec(edit, 1..=most)
}

/// A picture under another name is another file, in the package too.
#[test]
fn a_picture_is_renamed() {
    let mut state = State::new("incremental-renamed");
    let slot = |name: &str| {
        let at = FILES.iter().position(|(file, _)| file.ends_with(name));
        WORDS.len() + at.expect("the file is there")
    };
    state.edit(slot("spare.png"), 1);
    assert!(state.compare());
    state.edit(slot("spare.png"), 0);
    state.edit(slot("other.png"), 1);
    assert!(state.compare());
}

/// What the lists of a class say of a step is in its key, though its plan stays the same.
#[test]
fn a_class_says_what_its_recipes_say() {
    let mut state = State::new("incremental-class");
    let class = FILES.iter().position(|(file, _)| file.ends_with("evening.yaml"));
    state.edit(WORDS.len() + class.expect("the class is there"), 1);
    assert!(state.publish("site"));
    for (from, choice) in [("the sides are brown", 1), ("205 °C, 17 min", 3)] {
        let slot = WORDS.iter().position(|(_, words, _)| *words == from);
        state.edit(slot.expect("the words are there"), choice);
        assert!(state.compare(), "{from}");
    }
}

/// A few edits of every kind, one after another, compared at the end.
#[test]
fn edits_of_every_kind() {
    let mut state = State::new("incremental-few");
    assert!(state.publish("site"));
    for slots in [WORDS.len()..WORDS.len() + FILES.len(), 0..WORDS.len() / 2] {
        for slot in slots {
            state.edit(slot, choices(slot) - 1);
        }
        assert!(state.compare(), "an edit is at fault: {:?}", state.chosen);
    }
}

/// Any edits in any order, compared after every other one or so.
#[test]
#[ignore = "a campaign of some minutes"]
fn any_edits() {
    let published = std::cell::Cell::new(0);
    let most = std::env::var("EDITS").ok().and_then(|most| most.parse().ok());
    proptest!(|(edits in edits(most.unwrap_or(20)))| {
        let mut state = State::new("incremental-any");
        for (slot, choice, publish) in edits {
            state.edit(slot, choice);
            published.set(published.get() + u32::from(publish && state.compare()));
        }
        println!("compared {} editions so far", published.get());
    });
}

/// Each edit alone, there and back.
#[test]
#[ignore = "a campaign of some minutes"]
fn each_edit() {
    let mut state = State::new("incremental-each");
    // A class and a picture are there meanwhile: they depend on much.
    for (at, (file, _)) in FILES.iter().enumerate() {
        if file.ends_with("evening.yaml") || file.ends_with("loaf.png") {
            state.edit(WORDS.len() + at, 1);
        }
    }
    for slot in 0..WORDS.len() + FILES.len() {
        for choice in (1..choices(slot)).chain([0]) {
            state.edit(slot, choice);
            if !state.compare() {
                println!("at fault: {slot}, {choice}");
            }
        }
    }
}
