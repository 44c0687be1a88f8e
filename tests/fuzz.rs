//! Texts that nobody meant: those of the courses here, cut, doubled, spliced and mixed with
//! what readers stumble over, read, checked and worked out in this process. None may make
//! it panic or keep it busy.
//!
//! Six targets: whole recipes, the YAML files, amount lines, braces in prose, classes, and what
//! drafts are made from.
//! What once went wrong stands in `corpus/TARGET/` and is tried in every run, with a few
//! hundred new texts. For a campaign of ten minutes a target:
//!
//! ```text
//! FUZZ_SECONDS=600 cargo test --release --test fuzz -- --ignored --test-threads 1 recipe
//! ```
//!
//! `FUZZ_SEED` begins another sequence. What is found lies in `target/tmp/fuzz/`.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    reason = "files, clock and environment are used; a campaign says how far it came"
)]

mod common;

use std::collections::BTreeMap;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::{Arc, LazyLock, Mutex};
use std::time::{Duration, Instant};

use tourier::draft as drafting;
use tourier::draw::figures;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::media::Medium;
use tourier::plan::Effort;
use tourier::product::{Inputs, Products};
use tourier::read::{self, Source};
use tourier::theme::Theme;
use tourier::words::Words;

/// No text of this size may take longer by the clock, also where others keep the machine busy.
const LONGEST: Duration = Duration::from_secs(60);
/// Texts are cut to so many bytes.
const MOST_BYTES: usize = 20_000;

/// What readers stumble over.
const TOKENS: &[&str] = &[
    "0",
    "-1",
    "1/0",
    "0/0",
    "1/3",
    "½",
    "1 ½",
    "99999999999999999999",
    "1e309",
    "0.0001",
    "1,5",
    ".",
    "1.",
    "%",
    "100 %",
    "-0 %",
    "°C",
    "°F",
    "{190 °C}",
    "{20 x 20 cm}",
    "{",
    "}",
    "\\{",
    "{}",
    "{half of the }",
    " x ",
    " g ",
    " kg ",
    " lb ",
    " ml ",
    " cup ",
    " each ",
    " batch ",
    "[a](b.md)",
    "[",
    "]",
    "(",
    ")",
    "\n",
    "\r\n",
    "\t",
    "\u{feff}",
    "\u{0}",
    "\u{202e}",
    "é",
    "粉",
    "👩\u{200d}🍳",
    "---\n",
    "~~~ticket\n",
    "~~~\n",
    "## ",
    "# ",
    "> ",
    "> Caution: ",
    "> [!CAUTION]\n",
    "- ",
    "1. ",
    "|a|b|\n|-|-|\n",
    "![a](../media/b.jpg)",
    "<script>",
    "after: ",
    "uses: ",
    "hands: ",
    "wait: ",
    "bake: ",
    "sheet: ",
    "cut: ",
    "turn: ",
    "lock-in: ",
    "per tray: ",
    "shape: ",
    "hold: ",
    "cool: ",
    "formula:\n",
    "makes: ",
    "triangles, base 9 cm, height 24 cm",
    "grid, 3 strips, 2 across",
    "rounds 7 cm",
    ": ",
    "|\n",
    "&a ",
    "*a",
    "!!int ",
    "? ",
    "- - ",
    "{a: b}",
    "\"",
    "'",
    "#",
    "@",
    "$",
    "`",
    "2027-02-30",
    "2027-03-28 01:30 to 02:30",
    "24:00",
    "0 min",
    "5 days",
    "10 min + 20 s per piece",
    "65536 pieces",
    "1000000 km",
    "0 x 0 cm",
    "60 x 25 cm",
    "-40 °C",
    "1000000 °C",
];

/// What has gone wrong: where, and with which text.
type Found = BTreeMap<String, String>;

/// Where a panic last happened.
static PLACE: Mutex<String> = Mutex::new(String::new());

static WORDS: LazyLock<Words> =
    LazyLock::new(|| read::words_in(&Theme::built_in(), "en").unwrap_or_default());

/// A small generator of numbers (splitmix64, Steele, Lea and Flood 2014): the same seed
/// gives the same texts.
struct Chance(u64);

impl Chance {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        let most = u64::try_from(most.max(1)).unwrap_or(1);
        usize::try_from((mixed ^ (mixed >> 31)) % most).unwrap_or(0)
    }

    fn pick<'a, T: ?Sized>(&mut self, from: &[&'a T]) -> &'a T {
        from[self.below(from.len())]
    }

    /// A boundary between two characters.
    fn place(&mut self, text: &str) -> usize {
        let mut at = self.below(text.len() + 1);
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        at
    }

    /// A stretch, mostly a short one.
    fn stretch(&mut self, text: &str) -> (usize, usize) {
        let start = self.place(text);
        let far = [4, 20, 200, text.len()][self.below(4)];
        let mut end = (start + self.below(far + 1)).min(text.len());
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        (start, end.max(start))
    }
}

/// A text changed in one to six places; `others` are spliced in.
fn mutated(text: &str, others: &[String], chance: &mut Chance) -> String {
    let mut text = text.to_owned();
    for _ in 0..=chance.below(6) {
        let (start, end) = chance.stretch(&text);
        match chance.below(7) {
            0 => text.replace_range(start..end, ""),
            1 | 2 => {
                let times = [1, chance.below(30)][chance.below(2)];
                text.insert_str(start, &text[start..end].repeat(times));
            }
            3 => {
                let other = &others[chance.below(others.len())];
                let (from, to) = chance.stretch(other);
                text.replace_range(start..end, &other[from..to]);
            }
            4 => number(&mut text, start, chance),
            5 => text.insert_str(start, chance.pick(TOKENS)),
            _ => text.replace_range(start..end, chance.pick(TOKENS)),
        }
        while text.len() > MOST_BYTES {
            text.pop();
        }
    }
    text
}

/// Puts another number in the place of the next one.
fn number(text: &mut String, from: usize, chance: &mut Chance) {
    let is_digit = |sign: char| sign.is_ascii_digit();
    let Some(start) = text[from..].find(is_digit).map(|at| from + at) else { return };
    let length = text[start..].find(|sign| !is_digit(sign));
    let end = length.map_or(text.len(), |length| start + length);
    let numbers =
        ["0", "1", "2", "3", "7", "12", "1000", "123456789", "9999999999999999999"];
    text.replace_range(start..end, chance.pick(&numbers));
}

/// Every text of a content folder.
fn course(folder: &str) -> Vec<Source> {
    let mut files = Vec::new();
    for entry in walkdir::WalkDir::new(folder).sort_by_file_name().into_iter().flatten() {
        let path = entry.path();
        let named =
            path.strip_prefix(folder).unwrap_or(path).to_string_lossy().into_owned();
        if matches!(
            path.extension().and_then(|ending| ending.to_str()),
            Some("md" | "yaml")
        ) {
            let text = fs::read_to_string(path).expect("a text");
            files.push(Source { path: named, text });
        }
    }
    files
}

/// The pictures that the demonstration course shows.
fn pictures() -> Vec<Medium> {
    ["crust-colours.jpg", "roll-up.jpg", "rye-loaf.jpg", "tin-loaf.jpg"]
        .iter()
        .filter_map(|name| {
            Medium::read(name, fs::read(Path::new("content/media").join(name)).ok()?).ok()
        })
        .collect()
}

/// One target: a course, the texts to begin with, and where a text goes.
struct Target {
    name: &'static str,
    course: Vec<Source>,
    media: Vec<Medium>,
    seeds: Vec<(String, String)>,
    /// The file made of a text that is only a part of one.
    whole: fn(&str) -> String,
}

impl Target {
    fn new(name: &'static str) -> Self {
        let (course, media) = match name {
            "amount" | "brace" | "draft" => (course("tests/golden/course"), Vec::new()),
            _ => (course("content"), pictures()),
        };
        let whole = match name {
            "amount" => amount_recipe,
            "brace" => brace_recipe,
            "draft" => draft_recipe,
            _ => str::to_owned as fn(&str) -> String,
        };
        let mut target = Self { name, course, media, seeds: Vec::new(), whole };
        target.seeds = target.begin();
        target
    }

    /// The texts to begin with, each with the file that it becomes.
    fn begin(&self) -> Vec<(String, String)> {
        let is_ours = |source: &&Source| match self.name {
            "recipe" => source.path.starts_with("recipes/"),
            "class" => source.path.starts_with("classes/"),
            "yaml" => !source.path.contains('/'),
            _ => false,
        };
        let whole = self.course.iter().filter(is_ours);
        let mut seeds: Vec<_> =
            whole.map(|source| (source.path.clone(), source.text.clone())).collect();
        let demonstration = course("content");
        let recipes = demonstration.iter().filter(|one| one.path.ends_with(".md"));
        let path = || "recipes/fuzzed.md".to_owned();
        if self.name == "draft" {
            let files = fs::read_dir("tests/drafts").into_iter().flatten().flatten();
            let texts = files.filter_map(|file| fs::read_to_string(file.path()).ok());
            seeds.extend(texts.map(|text| (path(), text)));
            seeds.sort();
        }
        for text in recipes.map(|recipe| &recipe.text) {
            match self.name {
                "amount" => seeds.extend(
                    text.lines()
                        .filter_map(|line| line.strip_prefix("    - "))
                        .map(|line| (path(), line.to_owned())),
                ),
                "brace" => seeds.extend(
                    text.split('{')
                        .skip(1)
                        .filter_map(|rest| rest.split_once('}'))
                        .map(|(inner, _)| (path(), format!("a {{{inner}}} b"))),
                ),
                _ => {}
            }
        }
        seeds
    }

    /// Reads, checks and works out the course with this text in it; false where a fault
    /// stops it. With `whole` classes are planned, pages filled in and a handout set too.
    fn run(&self, path: &str, text: &str, whole: bool) -> bool {
        let mut files = self.course.clone();
        files.retain(|file| file.path != path);
        files.push(Source { path: path.to_owned(), text: (self.whole)(text) });
        let edition = Edition::new(&files, self.media.clone(), Vec::new());
        for fault in &edition.faults {
            assert!(!fault.message.key.is_empty());
            let _ = edition.texts.position(&fault.place);
        }
        if edition.stops() {
            return false;
        }
        let name = path.rsplit('/').next().unwrap_or(path).trim_end_matches(".md");
        let recipes = edition.content.recipes.iter();
        for recipe in recipes.filter(|one| self.name == "yaml" || one.name == name) {
            let _ = edition.sheet(recipe, &Scaling::Pieces(7), &WORDS);
            let Ok(sheets) = edition.sheets(recipe, &WORDS) else { continue };
            assert!(serde_json::to_string(&sheets.base).is_ok());
            let _ = figures(&sheets.base, &WORDS);
        }
        if whole {
            paint(&edition, path);
        }
        true
    }

    /// Whether it is slow once more: others may have kept the machine busy the first time.
    fn is_slow(&self, path: &str, text: &str) -> bool {
        let begun = Instant::now();
        self.run(path, text, false);
        begun.elapsed() > LONGEST
    }

    /// Runs one text; notes a panic or a long wait. True where no fault stopped it.
    fn watch(&self, (path, text): (&str, &str), whole: bool, found: &mut Found) -> bool {
        let begun = Instant::now();
        let last = folder().join(format!("{}-last.txt", self.name));
        fs::write(last, text).expect("a note can be written");
        let sound = catch_unwind(AssertUnwindSafe(|| self.run(path, text, whole)));
        let place = if sound.is_err() {
            PLACE.lock().map(|place| place.clone()).unwrap_or_default()
        } else if begun.elapsed() > LONGEST && !whole && self.is_slow(path, text) {
            format!("slow: {:?}", begun.elapsed())
        } else {
            return sound.unwrap_or(false);
        };
        let file = folder().join(format!("{}-{}.txt", self.name, found.len()));
        fs::write(file, text).expect("a note can be written");
        found.entry(place).or_insert_with(|| format!("{path}: {text}"));
        false
    }
}

/// Plans every class, fills in every page, and sets one handout of the recipe at `path`.
fn paint(edition: &Edition, path: &str) {
    for class in &edition.content.classes {
        let _ = edition.class(class, Effort::USUAL, &WORDS);
    }
    let theme = Theme::built_in();
    let Some(inputs) = Inputs::new(edition, &WORDS, &theme) else { return };
    let products = Products::new(&inputs).expect("the templates are sound");
    let (mut cards, mut files) = (Vec::new(), Vec::new());
    for recipe in inputs.recipes() {
        let Some(worked) = inputs.worked(recipe).map(Arc::new) else { continue };
        files.extend(products.recipe_page(&worked).expect("the templates are sound"));
        cards.push(worked.card.clone());
        let printed = products.handouts(&worked);
        let handout = printed.iter().filter(|_| recipe.place.file.as_ref() == path);
        let handout = handout.filter(|one| one.path.ends_with("student-us-letter.pdf"));
        handout.for_each(|handout| drop(handout.bytes(&common::Bare)));
    }
    files.extend(products.course_pages().expect("the templates are sound"));
    files.extend(products.listing_pages(&cards).expect("the templates are sound"));
    let keys = files.iter().map(|file| (&*file.path, &*file.key)).collect();
    assert!(!products.derived_files(&cards, &keys).is_empty());
}

fn amount_recipe(line: &str) -> String {
    let line = serde_json::to_string(line).unwrap_or_default();
    format!(
        "---\ntitle: a\nsummary: b\nmakes: 12 pieces\nformula:\n  dough:\n    - 500 g bread \
         flour\n    - {line}\n---\n\n## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n"
    )
}

/// The draft of a text; nothing where there is no recipe in it.
fn draft_recipe(text: &str) -> String {
    drafting::draft(text, &[]).map_or_else(|_| String::new(), |draft| draft.text)
}

fn brace_recipe(prose: &str) -> String {
    format!("{}\n{prose}\n", amount_recipe("300 g water"))
}

/// Where notes go.
fn folder() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("fuzz");
    fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

fn variable(name: &str) -> Option<u64> {
    std::env::var(name).ok()?.parse().ok()
}

/// Tries what once went wrong, then new texts for so long.
fn fuzz(name: &'static str, length: Duration) {
    std::panic::set_hook(Box::new(|panic| {
        if let Ok(mut place) = PLACE.lock() {
            *place = panic.to_string();
        }
    }));
    let target = Target::new(name);
    let others: Vec<String> = target.seeds.iter().map(|(_, text)| text.clone()).collect();
    let mut found = Found::new();
    let path = &target.seeds[0].0;
    for file in fs::read_dir(Path::new("tests/corpus").join(name)).into_iter().flatten() {
        let text = fs::read_to_string(file.expect("a file").path()).expect("a text");
        target.watch((path, &text), true, &mut found);
    }
    let mut chance = Chance(variable("FUZZ_SEED").unwrap_or(1));
    let (begun, mut count, mut sound) = (Instant::now(), 0_u32, 0_u32);
    while begun.elapsed() < length {
        let (path, seed) = &target.seeds[chance.below(target.seeds.len())];
        let text = mutated(seed, &others, &mut chance);
        // Plans and handouts take their time.
        let whole = chance.below(50) == 0;
        sound += u32::from(target.watch((path, &text), whole, &mut found));
        count += 1;
    }
    let _ = std::panic::take_hook();
    println!("{name}: {count} texts in {:?}, {sound} sound", begun.elapsed());
    let list: Vec<String> =
        found.iter().map(|(place, text)| format!("{place}\n{text}\n")).collect();
    assert!(list.is_empty(), "{name}:\n{}", list.join("\n"));
}

/// The corpus and a few new texts for every target, one after another: where a panic
/// happens is noted for the whole process.
#[test]
fn a_few_texts_for_every_target() {
    for target in ["recipe", "yaml", "amount", "brace", "class", "draft"] {
        fuzz(target, Duration::from_millis(300));
    }
}

/// A campaign as long as `FUZZ_SECONDS` says.
macro_rules! campaigns {
    ($($target:ident),*) => {
        $(#[test]
        #[ignore = "a campaign"]
        fn $target() {
            let seconds = variable("FUZZ_SECONDS").unwrap_or(600);
            fuzz(stringify!($target), Duration::from_secs(seconds));
        })*
    };
}

campaigns!(recipe, yaml, amount, brace, class, draft);
