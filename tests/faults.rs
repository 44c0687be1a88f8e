//! The list of faults in `src/fault/README.md`: every name that the program uses is there,
//! and each row's bad example is answered with the fault, its good one with none.
#![allow(clippy::disallowed_methods, reason = "the list and the source are read")]

mod common;
#[path = "common/fault_list.rs"]
mod fault_list;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use fault_list::{GROUND, Row, changed, rows};

use tourier::check;
use tourier::edition::Edition;
use tourier::paper::{missing_faces, missing_glyphs};
use tourier::product::{Inputs, long_handouts, poor_prints};
use tourier::read::words_in;
use tourier::store;
use tourier::theme::Theme;

/// The names and severities of the faults of a course.
fn faults(content: &Path) -> BTreeSet<(String, String)> {
    let (sources, mut found) = store::load(content).expect("the course can be read");
    let (media, more) = store::media(content).expect("the pictures can be read");
    found.extend(more);
    let texts = sources.iter().map(|source| (&*source.path, &*source.text));
    found.extend(missing_glyphs(texts, &Theme::built_in()));
    let edition = Edition::new(&sources, media, found);
    let mut faults = missing_faces(edition.content.families(), &Theme::built_in());
    faults.extend(check::unspoken(&edition.content, &Theme::built_in()));
    faults.extend(check::open_notes(&edition.content));
    faults.extend(long_handouts_of(&edition));
    faults.extend(edition.faults);
    let named = |fault: &tourier::fault::Fault| {
        (fault.name.to_owned(), fault.severity.word().to_owned())
    };
    faults.iter().map(named).collect()
}

/// What only shows when a sheet is set in type.
fn long_handouts_of(edition: &Edition) -> Vec<tourier::fault::Fault> {
    let theme = Theme::built_in();
    let words = words_in(&theme, "en").expect("they read");
    let inputs = Inputs::new(edition, &words, &theme).filter(|_| !edition.stops());
    let found =
        inputs.map(|inputs| [long_handouts(&inputs), poor_prints(&inputs)].concat());
    found.unwrap_or_default()
}

#[test]
fn each_example_is_answered_with_its_fault() {
    assert_eq!(faults(Path::new(GROUND)), BTreeSet::new(), "the ground has faults");
    for row in rows().into_iter().filter(|row| row.file != "-") {
        let found = faults(&changed(&row));
        let expected = (row.name, row.severity);
        assert!(found.contains(&expected), "{expected:?} is not in {found:?}");
    }
}

/// One file that cannot be read is one fault: nothing else is said to be missing.
#[test]
fn no_fault_brings_others_along() {
    let files = walkdir::WalkDir::new(GROUND).into_iter().flatten();
    for entry in files.filter(|entry| entry.file_type().is_file()) {
        let file = entry.path().strip_prefix(GROUND).expect("below").to_string_lossy();
        for bytes in [&b"---\na: [\n---\n"[..], b"caf\xe9"] {
            let row = Row {
                name: "cascade".to_owned(),
                severity: String::new(),
                file: file.clone().into_owned(),
                good: String::new(),
                bad: String::new(),
            };
            let content = changed(&row);
            fs::write(content.join(&*file), bytes).expect("written");
            let found = faults(&content);
            assert_eq!(found.len(), 1, "{file}: {found:?}");
        }
    }
}

/// The names in the source: the first text behind `Fault::error(`, `Fault::new(` and the like,
/// and those that are put there by another name.
fn used() -> BTreeSet<String> {
    let mut names: BTreeSet<String> =
        ["too-deep", "no-formula", "no-steps"].map(str::to_owned).into();
    for entry in walkdir::WalkDir::new("src").into_iter().flatten() {
        if entry.path().extension().is_none_or(|ending| ending != "rs") {
            continue;
        }
        let text = fs::read_to_string(entry.path()).expect("a source");
        for call in ["Fault::error(", "Fault::caution(", "Fault::new(", "fault("] {
            let after = text.split(call).skip(1).map(str::trim_start);
            let quoted =
                after.filter_map(|rest| rest.strip_prefix('"')?.split('"').next());
            let is_name = |name: &&str| {
                name.contains('-')
                    && name.chars().all(|sign| sign.is_ascii_lowercase() || sign == '-')
            };
            names.extend(quoted.filter(is_name).map(str::to_owned));
        }
    }
    names
}

#[test]
fn the_list_has_every_name_once_and_in_order() {
    let listed: Vec<String> = rows().into_iter().map(|row| row.name).collect();
    assert!(listed.is_sorted(), "the list is in order");
    let set: BTreeSet<String> = listed.iter().cloned().collect();
    assert_eq!(set.len(), listed.len(), "a name stands twice");
    let used = used();
    let missing: Vec<_> = used.difference(&set).collect();
    assert!(missing.is_empty(), "not in the list: {missing:?}");
    let left: Vec<_> = set.difference(&used).collect();
    assert!(left.is_empty(), "used nowhere: {left:?}");
}
