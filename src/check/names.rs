//! Names that stand for two things or for none.

use std::collections::BTreeMap;

use crate::fault::{Fault, Place, Placed};
use crate::formula::Book;
use crate::model::{Content, Ingredient};
use crate::said;
use crate::statement::{Lines, Statement};

/// Two files that would become one page, or whose drawings would lie in one folder: names
/// that are the same or differ only in case.
pub(super) fn clashes(content: &Content) -> Vec<Fault> {
    let recipes = content.recipes.iter().map(|one| (&one.name, &one.place));
    let techniques = content.techniques.iter().map(|one| (&one.name, &one.place));
    let classes = content.classes.iter().map(|one| (&one.name, &one.title.place));
    let mut faults = twins(recipes.chain(techniques));
    faults.extend(twins(classes));
    faults
}

/// Names that a command takes for something else, or that one system keeps for itself.
pub(super) fn taken(content: &Content) -> Vec<Fault> {
    let recipes = content.recipes.iter().map(|one| (&one.name, &one.place));
    let techniques = content.techniques.iter().map(|one| (&one.name, &one.place));
    let classes = content.classes.iter().map(|one| (&one.name, &one.place));
    let mut faults: Vec<Fault> = recipes
        .clone()
        .chain(techniques)
        .chain(classes.clone())
        .filter(|(name, _)| is_device(name))
        .map(|(name, place)| {
            let message = said!("taken-by-windows", name);
            renamed(place, message, &format!("{name}-1"))
        })
        .collect();
    for (name, place) in recipes.clone().filter(|(name, _)| *name == ALL) {
        let message = said!("taken-all");
        faults.push(renamed(place, message, &format!("{name}-of-it")));
    }
    for (name, place) in classes {
        if recipes.clone().any(|(recipe, _)| recipe == name) {
            let message = said!("taken-by-recipe", name);
            faults.push(renamed(place, message, &format!("{name}-class")));
        }
    }
    faults
}

/// The word that commands take for the whole course.
const ALL: &str = "all";

fn renamed(place: &Place, message: Statement, better: &str) -> Fault {
    Fault::caution("taken-name", &Place::file(&place.file), message)
        .help(said!("taken-name-help", better))
}

/// The names that no file on Windows may have, whatever its ending: Microsoft, Naming Files,
/// Paths, and Namespaces.
fn is_device(name: &str) -> bool {
    let name = name.to_ascii_lowercase();
    let numbered = |word: &str| {
        name.strip_prefix(word).is_some_and(|rest| {
            rest.len() == 1
                && rest.bytes().all(|digit| digit.is_ascii_digit() && digit != b'0')
        })
    };
    matches!(name.as_str(), "con" | "aux" | "nul" | "prn")
        || numbered("com")
        || numbered("lpt")
}

fn twins<'a>(files: impl Iterator<Item = (&'a String, &'a Place)>) -> Vec<Fault> {
    let mut seen: BTreeMap<String, &Place> = BTreeMap::new();
    let mut faults = Vec::new();
    for (name, place) in files {
        let Some(first) = seen.insert(name.to_lowercase(), place) else { continue };
        let message = said!("one-page-for-two", file = first.file);
        faults.push(
            Fault::error("one-page-for-two", &place.part(0, 0), message)
                .help(said!("one-page-for-two-help")),
        );
    }
    faults
}

/// Lessons name recipes and techniques that exist.
pub(super) fn lessons(content: &Content) -> Vec<Fault> {
    let Some(course) = &content.course else { return Vec::new() };
    let recipes: Vec<&str> =
        content.recipes.iter().map(|recipe| recipe.name.as_str()).collect();
    let techniques: Vec<&str> =
        content.techniques.iter().map(|technique| technique.name.as_str()).collect();
    let mut faults = Vec::new();
    for lesson in &course.lessons {
        faults.extend(missing(&lesson.recipes, &recipes, "recipes"));
        faults.extend(missing(&lesson.techniques, &techniques, "techniques"));
    }
    faults.retain(|(name, _)| !content.is_unread(name));
    faults.into_iter().map(|(_, fault)| fault).collect()
}

/// `flour`, `yeast`, `sugar` and `cream` leave open which: what they are taken to mean is
/// said once, at the first line that writes them.
pub(super) fn bare(book: Book) -> Vec<Fault> {
    if book.content.course.is_none() {
        return Vec::new();
    }
    let mut seen: Vec<&str> = Vec::new();
    let mut faults = Vec::new();
    let sections = book.content.recipes.iter().flat_map(|recipe| &recipe.formula);
    for line in sections.flat_map(|section| &section.lines) {
        let Ingredient::Pantry(name) = &line.ingredient.value else { continue };
        let turned =
            line.note.as_ref().and_then(|note| book.pantry.find_noted(name, note));
        let Some((word, item)) =
            book.pantry.by_default(name).filter(|_| turned.is_none())
        else {
            continue;
        };
        if !seen.contains(&word) {
            seen.push(word);
            faults.push(taken_as(word, &item.name, &line.ingredient.place));
        }
    }
    faults
}

fn taken_as(word: &str, meant: &str, place: &Place) -> Fault {
    let message = said!("bare-name", word, meant);
    let entry = ["means:\n  ", word, ": ", meant].concat();
    Fault::caution("bare-name", place, message)
        .help(said!("bare-name-help", entry = Lines(&entry)))
}

/// Each form of a word of the trade is explained once.
pub(super) fn words(content: &Content) -> Vec<Fault> {
    let mut seen: Vec<String> = Vec::new();
    let mut faults = Vec::new();
    for entry in &content.glossary {
        for form in std::iter::once(&entry.word).chain(&entry.also) {
            let plain = form.value.to_lowercase();
            if seen.contains(&plain) {
                let message = said!("same-word", word = form.value);
                faults.push(
                    Fault::error("same-word", &form.place, message)
                        .help(said!("same-word-help")),
                );
            }
            seen.push(plain);
        }
    }
    faults
}

/// Names without a file, each with its fault.
fn missing(
    named: &[Placed<String>],
    known: &[&str],
    folder: &str,
) -> Vec<(String, Fault)> {
    let unknown = named.iter().filter(|name| !known.contains(&name.value.as_str()));
    unknown
        .map(|name| {
            let file = format!("{folder}/{}.md", name.value);
            let message = said!("missing-file", file);
            let fault = Fault::error("missing-file", &name.place, message);
            let fault = fault.one_of(&name.value, known, said!("names-files"));
            (name.value.clone(), fault)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::read::{Source, content};

    #[test]
    fn lessons_name_files_that_exist() {
        let text = "title: c\nlessons:\n  - title: One\n    recipes: [crescent]\n";
        let recipe = "---\ntitle: t\nsummary: s\n---\n";
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let files = [
            source("course.yaml", text),
            source("recipes/crescents.md", recipe),
            source("recipes/Crescents.md", recipe),
        ];
        let (content, texts, _) = content(&files);
        let faults = super::super::content(&content);
        let names: Vec<_> =
            faults.iter().map(|f| (f.name, texts.words(&f.place))).collect();
        assert_eq!(names, [("one-page-for-two", ""), ("missing-file", "crescent")]);
    }
}
