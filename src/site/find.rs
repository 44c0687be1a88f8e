//! Finding: the recipes by technique, family and time, and the small index that the script
//! searches, which is a file like any other and works with no connection.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::sheet::TechniqueSheet;

use super::engine::{Engine, TemplateFault};
use super::prose::plain;
use super::shell::{Head, context};
use super::{Card, Input, Page};

/// The page.
pub(super) const PATH: &str = "find/index.html";

/// Recipes that have something in common.
#[derive(Serialize)]
struct Group<'a> {
    /// What they have in common; for techniques the technique's title.
    title: &'a str,
    /// The language of a technique's title, where it is not the page's.
    title_in: Option<&'a str>,
    /// The technique's page, from the site's root; empty for others.
    page: String,
    recipes: Vec<RecipeLine<'a>>,
}

/// A recipe as a line of a list.
#[derive(Serialize)]
struct RecipeLine<'a> {
    page: String,
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
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
    text: Cow<'a, str>,
    /// The title's language, where it is not the course's.
    title_in: Option<&'a str>,
}

/// The page for finding.
pub(super) fn page(
    input: &Input,
    cards: &[Card],
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let head = Head {
        path: PATH,
        title: input.words.get("page-find"),
        summary: input.words.get("page-find-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let by_name = cards.iter().map(|card| (card.recipe.as_str(), card)).collect();
    let mut context = context(input, head);
    context.insert("techniques", &techniques(input, &by_name));
    context.insert("families", &families(input, &by_name));
    context.insert("times", &times(cards));
    Ok(Page::text(PATH, engine.fill("find.html", &context)?))
}

/// The cards by their recipes' names.
type ByName<'a> = BTreeMap<&'a str, &'a Card>;

fn techniques<'a>(input: &Input<'a>, cards: &ByName<'a>) -> Vec<Group<'a>> {
    let group = |one: &'a TechniqueSheet| {
        let used = one.used_in.iter().filter_map(|it| cards.get(it.recipe.as_str()));
        Group {
            title: &one.title,
            title_in: one.title_in.as_deref(),
            page: format!("techniques/{}/index.html", one.technique),
            recipes: used.map(|card| entry(card)).collect(),
        }
    };
    input.techniques.iter().map(group).filter(|group| !group.recipes.is_empty()).collect()
}

/// By family, in the order in which the course comes to them.
fn families<'a>(input: &Input<'a>, cards: &ByName<'a>) -> Vec<Group<'a>> {
    let mut groups: Vec<Group> = Vec::new();
    let mut seen = BTreeSet::new();
    let names = input.course.lessons.iter().flat_map(|lesson| &lesson.recipes);
    let firsts = names.filter(|name| seen.insert(name.as_str()));
    for card in firsts.filter_map(|name| cards.get(name.as_str())) {
        let Some(family) = card.family.as_deref() else { continue };
        match groups.iter_mut().find(|group| group.title == family) {
            Some(group) => group.recipes.push(entry(card)),
            None => groups.push(Group {
                title: family,
                title_in: None,
                page: String::new(),
                recipes: vec![entry(card)],
            }),
        }
    }
    groups
}

/// All, the quickest first.
fn times(cards: &[Card]) -> Vec<RecipeLine<'_>> {
    let mut cards: Vec<&Card> = cards.iter().collect();
    cards.sort_by_key(|card| (card.elapsed_min, &card.title));
    cards.into_iter().map(entry).collect()
}

fn entry(card: &Card) -> RecipeLine<'_> {
    RecipeLine {
        page: card.page(),
        title: &card.title,
        title_in: card.title_in.as_deref(),
        hands: &card.hands,
        elapsed: &card.elapsed,
    }
}

/// The index as a script that only sets a value, so that it can be read from a disk too.
pub(super) fn index(input: &Input, cards: &[Card]) -> Page {
    let recipes = cards.iter().map(|card| Indexed {
        page: card.page(),
        kind: "page-recipe",
        title: &card.title,
        text: Cow::Borrowed(&card.text),
        title_in: card.title_in.as_deref(),
    });
    let techniques = input.techniques.iter().map(|one| Indexed {
        page: format!("techniques/{}/index.html", one.technique),
        kind: "page-technique",
        title: &one.title,
        text: format!("{} {}", one.summary, plain(&one.content)).into(),
        title_in: one.title_in.as_deref(),
    });
    let words = input.course.glossary.iter().map(|word| Indexed {
        page: format!("{}#{}", super::glossary::PAGE, word.name),
        kind: "page-word",
        title: &word.word,
        text: plain(&word.meaning).into(),
        title_in: None,
    });
    let all: Vec<Vec<Cow<str>>> = recipes
        .chain(techniques)
        .chain(words)
        .map(|one| {
            let kind = input.words.get(one.kind);
            let row = vec![one.page.into(), kind.into(), one.title.into(), one.text];
            row.into_iter().chain(one.title_in.map(Cow::Borrowed)).collect::<Vec<_>>()
        })
        .collect();
    let json = serde_json::to_string(&all).unwrap_or_else(|_| "[]".into());
    Page::text("assets/find.js", format!("self.tourierPages = {json};\n"))
}
