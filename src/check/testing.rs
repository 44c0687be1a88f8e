//! A recipe on one screen, and the faults found in it.

use crate::fault::{Fault, Texts};
use crate::formula::{Book, Scaling};
use crate::measure::exact;
use crate::pantry::Pantry;
use crate::read::{Source, content};
use crate::work::work;

use super::Case;

/// The faults of the recipe with this head (without title and summary) and body: name
/// and underlined words.
pub(super) fn faults(head: &str, body: &str) -> Vec<(&'static str, String)> {
    let (faults, texts) = check(head, body);
    faults
        .iter()
        .map(|fault| (fault.name, texts.words(&fault.place).to_owned()))
        .collect()
}

/// What is said to be done about each fault.
pub(super) fn helps(head: &str, body: &str) -> Vec<String> {
    let theme = crate::theme::Theme::built_in();
    let words = crate::read::words_in(&theme, "en").expect("the words");
    let faults = check(head, body).0.into_iter();
    faults.filter_map(|fault| fault.told(&words).help).collect()
}

/// Whether exactly the fault `name` is found, at these words.
pub(super) fn assert_fault(head: &str, body: &str, name: &str, words: &str) {
    let found = faults(head, body);
    assert!(found.contains(&(name_of(name, &found), words.to_owned())), "{found:?}");
}

/// Whether no fault of this name is found.
pub(super) fn assert_no_fault(head: &str, body: &str, name: &str) {
    let found = faults(head, body);
    assert!(found.iter().all(|(found, _)| *found != name), "{found:?}");
}

fn name_of(name: &str, found: &[(&'static str, String)]) -> &'static str {
    found
        .iter()
        .map(|(found, _)| *found)
        .find(|found| *found == name)
        .unwrap_or("not found")
}

fn check(head: &str, body: &str) -> (Vec<Fault>, Texts) {
    let course = "title: c\nkit: {mixer: 2 kg, bench: 120 x 60 cm, tray: 60 x 40 cm}\n\
                  room: {temperature: 21 °C, flour: 20 °C, tap: 14 °C, friction: 12 °C}\n";
    let base = "---\ntitle: Base\nsummary: s\nmakes: 1000 g\nformula:\n  dough:\n    - 600 g bread flour\n    - 400 g water\n---\n## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";
    let source = |path: &str, text: String| Source { path: path.into(), text };
    let files = [
        source("course.yaml", course.into()),
        source("recipes/base.md", base.into()),
        source("recipes/t.md", format!("---\ntitle: T\nsummary: s\n{head}---\n{body}")),
    ];
    let (content, texts, mut faults) = content(&files);
    let (pantry, _) = Pantry::of(&content);
    let book = Book { content: &content, pantry: &pantry };
    let recipe = content.recipe("t").expect("the recipe under test");
    let work = work(recipe, &Scaling::Batches(exact(1, 1)), book).expect("one batch");
    faults.extend(super::recipe(Case { work: &work, book }));
    (faults, texts)
}
