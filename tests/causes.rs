//! Cause before effect: a slip of the hand is answered with the one fault that it is, at its
//! own line; what would only follow from it is not said.
#![allow(clippy::disallowed_methods, reason = "the courses are read")]

#[path = "common/english.rs"]
mod english;

use std::path::Path;

use rayon::prelude::*;
use tourier::edition::Edition;
use tourier::fault::{Fault, Severity};
use tourier::media::Medium;
use tourier::read::Source;
use tourier::store;

/// A course: its texts and its pictures.
struct Course {
    texts: Vec<Source>,
    media: Vec<Medium>,
}

impl Course {
    fn of(folder: &str) -> Self {
        let (texts, faults) =
            store::load(Path::new(folder)).expect("the course is there");
        let (media, _) = store::media(Path::new(folder)).expect("its pictures too");
        assert!(faults.is_empty(), "{faults:?}");
        Self { texts, media }
    }

    fn text(&self, file: &str) -> &str {
        let found = self.texts.iter().find(|text| text.path == file);
        found.map_or_else(|| panic!("there is no {file}"), |found| found.text.as_str())
    }

    /// The faults with another text in one file: name, severity, file and line.
    fn faults(&self, file: &str, text: &str) -> Vec<Said> {
        let swap = |source: &Source| match source.path == file {
            true => Source { path: file.to_owned(), text: text.to_owned() },
            false => source.clone(),
        };
        let texts: Vec<Source> = self.texts.iter().map(swap).collect();
        let edition = Edition::new(&texts, self.media.clone(), Vec::new());
        let said = |fault: &Fault| Said {
            name: fault.name,
            error: fault.severity == Severity::Error,
            file: fault.place.file.to_string(),
            line: edition.texts.position(&fault.place).line,
        };
        edition.faults.iter().map(said).collect()
    }
}

#[derive(Debug)]
struct Said {
    name: &'static str,
    error: bool,
    file: String,
    line: usize,
}

const LOAF: &str = "recipes/loaf.md";
const BLOCK: &str = "recipes/block.md";

/// The faults wanted: names and lines.
type Wanted = &'static [(&'static str, usize)];

/// Broken texts, and exactly the faults wanted, in order: file, what is replaced by what,
/// names and lines. Each of these was several faults, or one at the wrong line.
const BROKEN: [(&str, &str, &str, Wanted); 34] = [
    // Fences.
    (LOAF, "~~~ticket\nuses: dough", "~~~tiket\nuses: dough", &[("ticket-fence", 23)]),
    (LOAF, "~~~ticket\nuses: dough", "~~~Ticket\nuses: dough", &[("ticket-fence", 23)]),
    (LOAF, "~~~ticket\nuses: dough", "~~~\nuses: dough", &[("ticket-fence", 23)]),
    (LOAF, "~~~ticket\nuses: dough", "~~~yaml\nuses: dough", &[("ticket-fence", 23)]),
    (LOAF, "~~~ticket\nuses: dough", "~~ticket\nuses: dough", &[("ticket-fence", 23)]),
    (LOAF, "~~~ticket\nuses: dough", "uses: dough", &[("ticket-fence", 23)]),
    (LOAF, "watch: kneading\n~~~", "watch: kneading", &[("ticket-fence", 23)]),
    (LOAF, "watch: kneading\n~~~", "watch: kneading\n~~", &[("ticket-fence", 23)]),
    (LOAF, "watch: kneading\n~~~", "watch: kneading\n```", &[("ticket-fence", 23)]),
    // Headings.
    (LOAF, "## Mix", "##Mix", &[("bad-heading", 22)]),
    (LOAF, "## Mix", "### Mix", &[("bad-heading", 22)]),
    (LOAF, "## Mix\n", "", &[("stray-ticket", 23)]),
    // Keys.
    (LOAF, "formula:", "formla:", &[("unknown-key", 6)]),
    (LOAF, "title:", "titel:", &[("unknown-key", 2)]),
    (LOAF, "makes:", "make:", &[("unknown-key", 4)]),
    (LOAF, "uses: dough", "usess: dough", &[("unknown-key", 24)]),
    (LOAF, "uses: dough", "ingredients: dough", &[("unknown-key", 24)]),
    ("course.yaml", "lessons:", "lesons:", &[("unknown-key", 8)]),
    ("classes/evening.yaml", "makes:", "makse:", &[("unknown-key", 7)]),
    // Lists and quotes.
    (LOAF, "summary: ", "summary: \"", &[("bad-yaml", 3)]),
    (LOAF, "summary: ", "summary: '", &[("bad-yaml", 3)]),
    (LOAF, "    - 500 g bread", "   - 500 g bread", &[("bad-yaml", 9)]),
    (LOAF, "    - 300 g water", "    -300 g water", &[("bad-yaml", 9)]),
    (LOAF, "    - 300 g water", "      300 g water", &[("bad-amount", 9)]),
    (LOAF, "    - 300 g water", "     - 300 g water", &[("bad-yaml", 9)]),
    (LOAF, "\n---\n\n", "\n\n", &[("missing-head", 21)]),
    // Names.
    (LOAF, "- 500 g bread flour", "- 500 g bred flower", &[("unknown-ingredient", 8)]),
    (LOAF, "- 500 g bread flour", "- ?? bread flour", &[("bad-amount", 8)]),
    (LOAF, "  dough:", "  dogh:", &[("unknown-use", 24)]),
    (LOAF, "uses: dough\n", "", &[("unused-ingredient", 7)]),
    (BLOCK, "uses: roll-in", "uses: rollin", &[("unknown-use", 23)]),
    (LOAF, "../techniques/turning.md", "../techniques/turing.md", &[("bad-link", 53)]),
    ("pantry.yaml", "density: 0.45 g/ml", "density: 0.45", &[("bad-value", 2)]),
    (LOAF, "{210 °C}", "{210 °C", &[("open-brace", 53)]),
];

#[test]
fn a_slip_is_one_fault_at_its_own_line() {
    let course = Course::of("tests/faults");
    let mut wrong = Vec::new();
    for (file, from, to, wanted) in BROKEN {
        let text = course.text(file);
        assert!(text.contains(from), "{file} has no {from:?}");
        let said = course.faults(file, &text.replacen(from, to, 1));
        let found: Vec<_> = said.iter().map(|it| (it.name, it.line)).collect();
        if found != wanted || said.iter().any(|it| it.file != file) {
            wrong.push(format!("{from:?} → {to:?}: {said:?}, wanted {wanted:?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What rests on an included recipe is not said while it is not there: its steps, its kit.
#[test]
fn a_misspelt_include_is_all_that_is_said() {
    let course = Course::of("content");
    for file in ["recipes/crescents.md", "recipes/chocolate-batons.md"] {
        let text =
            course.text(file).replacen("(layered-dough.md)", "(layerd-dough.md)", 1);
        let said = course.faults(file, &text);
        assert_eq!(said.len(), 1, "{file}: {said:?}");
        assert_eq!((said[0].name, said[0].file.as_str()), ("missing-file", file));
    }
}

/// A link points at where it leads to, wherever it stands.
#[test]
fn a_bad_link_points_at_the_link() {
    let course = Course::of("tests/faults");
    let to = "../techniques/turing.md";
    let text = course.text(LOAF).replacen("../techniques/turning.md", to, 1);
    let texts: Vec<Source> = course
        .texts
        .iter()
        .map(|source| match source.path == LOAF {
            true => Source { path: LOAF.into(), text: text.clone() },
            false => source.clone(),
        })
        .collect();
    let edition = Edition::new(&texts, course.media.clone(), Vec::new());
    let [fault] = &edition.faults[..] else { panic!("{:?}", edition.faults) };
    assert_eq!(edition.texts.words(&fault.place), to);
    let help = english::told(fault).help.unwrap_or_default();
    assert!(help.contains("`../techniques/turning.md`"), "{help}");
}

/// Every slip of one key in one file: a letter left out, a sign left out, a space too many or
/// too few, a line left out.
fn slips(text: &str) -> Vec<(usize, String)> {
    let lines: Vec<&str> = text.split('\n').collect();
    let mut found = Vec::new();
    for (at, line) in lines.iter().enumerate().filter(|(_, line)| !line.trim().is_empty())
    {
        let mut put = |new: Option<String>| {
            let others = lines.iter().enumerate();
            let all = others.filter_map(|(number, old)| match (number == at, &new) {
                (true, new) => new.clone(),
                (false, _) => Some((*old).to_owned()),
            });
            found.push((at + 1, all.collect::<Vec<_>>().join("\n")));
        };
        put(None);
        put(Some(format!(" {line}")));
        if let Some(less) = line.strip_prefix(' ') {
            put(Some(less.to_owned()));
        }
        let mut before = None;
        for (from, sign) in line.char_indices() {
            let second = before == Some(true) && sign.is_ascii_alphabetic();
            let mark = "-:\"'[]{}~#(),°%".contains(sign);
            let gap = sign == ' ' && line[..from].ends_with(['-', ':']);
            if second || mark || gap {
                let rest = &line[from + sign.len_utf8()..];
                put(Some(format!("{}{rest}", &line[..from])));
            }
            // Whether a word of some length has just begun.
            let word = line[from..].split(|it: char| !it.is_ascii_alphabetic()).next();
            let begins = !line[..from].ends_with(|it: char| it.is_ascii_alphabetic());
            before = Some(begins && word.is_some_and(|word| word.len() >= 4));
        }
    }
    found
}

/// Slips that are more than one fault, of each hundred: a line left out may be missed in two
/// ways (a list without its key, a kit without its line).
const SEVERAL: usize = 1;

/// A third of all slips of one key, in every text of the course.
#[test]
fn slips_of_one_key_are_one_fault() {
    let course = Course::of("tests/faults");
    let files = course.texts.iter().filter(|file| !file.path.ends_with(".svg"));
    let slips = files.flat_map(|file| {
        slips(&file.text).into_iter().map(|(line, text)| (file.path.clone(), line, text))
    });
    let slips: Vec<_> = slips.enumerate().filter(|(at, _)| at % 3 == 0).collect();
    let several: Vec<String> = slips
        .par_iter()
        .filter_map(|(_, (file, line, text))| {
            let said = course.faults(file, text);
            let several = said.iter().filter(|it| it.error).count() > 1 || said.len() > 2;
            several.then(|| format!("{file}:{line}: {said:?}"))
        })
        .collect();
    let most = slips.len() * SEVERAL / 100;
    assert!(slips.len() > 200, "{} slips", slips.len());
    assert!(several.len() <= most, "of {}:\n{}", slips.len(), several.join("\n"));
}
