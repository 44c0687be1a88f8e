//! Finding: the recipes by technique, family and time, and the small index that the script
//! searches, which is a file like any other and works with no connection.

use serde::Serialize;

use crate::sheet::{Part, Sheet, StepSheet, TechniqueSheet};

use super::engine::{Engine, TemplateFault};
use super::prose::plain;
use super::shell::{Head, context};
use super::{Input, Page};

/// The page.
pub(super) const PATH: &str = "find/index.html";

/// Recipes that have something in common.
#[derive(Serialize)]
struct Group<'a> {
    /// What they have in common; for techniques the technique's title.
    title: &'a str,
    /// The technique's page, from the site's root; empty for others.
    page: String,
    recipes: Vec<Entry<'a>>,
}

/// A recipe as a line of a list.
#[derive(Serialize)]
struct Entry<'a> {
    page: String,
    title: &'a str,
    hands: &'a str,
    elapsed: &'a str,
}

/// One page as the script finds it.
#[derive(Serialize)]
struct Indexed<'a> {
    page: String,
    /// The key of the word for what it is.
    kind: &'static str,
    title: &'a str,
    text: String,
}

/// The page for finding.
pub(super) fn page(input: &Input, engine: &Engine) -> Result<Page, TemplateFault> {
    let head = Head {
        path: PATH,
        title: input.words.get("page-find"),
        summary: input.words.get("page-find-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    context.insert("techniques", &techniques(input));
    context.insert("families", &families(input));
    context.insert("times", &times(input));
    Ok(Page::text(PATH, engine.fill("find.html", &context)?))
}

fn techniques<'a>(input: &Input<'a>) -> Vec<Group<'a>> {
    let group = |one: &'a TechniqueSheet| {
        let used = one.used_in.iter().filter_map(|[name, _]| sheet(input, name));
        Group {
            title: &one.title,
            page: format!("techniques/{}/index.html", one.technique),
            recipes: used.map(entry).collect(),
        }
    };
    input.techniques.iter().map(group).filter(|group| !group.recipes.is_empty()).collect()
}

/// By family, in the order in which the course comes to them.
fn families<'a>(input: &Input<'a>) -> Vec<Group<'a>> {
    let mut groups: Vec<Group> = Vec::new();
    let names = input.course.lessons.iter().flat_map(|lesson| &lesson.recipes);
    for sheet in names.filter_map(|name| sheet(input, name)) {
        let Some(family) = sheet.family.as_deref() else { continue };
        let entry = entry(sheet);
        match groups.iter_mut().find(|group| group.title == family) {
            Some(group) if group.recipes.iter().any(|one| one.page == entry.page) => {}
            Some(group) => group.recipes.push(entry),
            None => groups.push(Group {
                title: family,
                page: String::new(),
                recipes: vec![entry],
            }),
        }
    }
    groups
}

/// All, the quickest first.
fn times<'a>(input: &Input<'a>) -> Vec<Entry<'a>> {
    let mut sheets: Vec<&Sheet> = input.recipes.iter().map(|one| &one.base).collect();
    sheets.sort_by_key(|sheet| (sheet.time.elapsed_min, &sheet.title));
    sheets.into_iter().map(entry).collect()
}

fn sheet<'a>(input: &Input<'a>, name: &str) -> Option<&'a Sheet> {
    input.recipes.iter().map(|one| &one.base).find(|sheet| sheet.recipe == name)
}

fn entry(sheet: &Sheet) -> Entry<'_> {
    Entry {
        page: format!("recipes/{}/index.html", sheet.recipe),
        title: &sheet.title,
        hands: &sheet.time.hands,
        elapsed: &sheet.time.elapsed,
    }
}

/// The index as a script that only sets a value, so that it can be read from a disk too.
pub(super) fn index(input: &Input) -> Page {
    let recipes = input.recipes.iter().map(|one| recipe(&one.base));
    let techniques = input.techniques.iter().map(|one| Indexed {
        page: format!("techniques/{}/index.html", one.technique),
        kind: "page-technique",
        title: &one.title,
        text: format!("{} {}", one.summary, plain(&one.content)),
    });
    let words = input.course.glossary.iter().map(|word| Indexed {
        page: format!("{}#{}", super::trade::PAGE, word.name),
        kind: "page-word",
        title: &word.word,
        text: plain(&word.meaning),
    });
    let all: Vec<_> = recipes
        .chain(techniques)
        .chain(words)
        .map(|one| (one.page, input.words.get(one.kind), one.title, one.text))
        .collect();
    let json = serde_json::to_string(&all).unwrap_or_else(|_| "[]".into());
    Page::text("assets/find.js", format!("self.tourierPages = {json};\n"))
}

fn recipe(sheet: &Sheet) -> Indexed<'_> {
    let mut text = sheet.summary.clone();
    let mut say = |words: &str| {
        text.push(' ');
        text.push_str(words);
    };
    sheet.family.iter().for_each(|family| say(family));
    sheet.formula.iter().for_each(|line| say(&line.ingredient));
    say(&plain(&sheet.opening));
    for part in &sheet.parts {
        match part {
            Part::Step(step) => self::step(step, &mut say),
            Part::Prose { title, content } => {
                say(title);
                say(&plain(content));
            }
        }
    }
    Indexed {
        page: format!("recipes/{}/index.html", sheet.recipe),
        kind: "page-recipe",
        title: &sheet.title,
        text,
    }
}

fn step(step: &StepSheet, say: &mut impl FnMut(&str)) {
    say(&step.title);
    step.until.iter().for_each(|until| say(until));
    say(&plain(&step.prose));
}
