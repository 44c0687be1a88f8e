//! Where what a word names is defined.

use std::ops::Range;

use crate::fault::{FileName, Place};
use crate::model::{Content, Ingredient, Recipe};
use crate::read::{Shape, amount_line, part_name};

use super::holds::Holds;
use super::target::{Target, target};
use super::{Here, amount, names};

/// Where what a word names is defined.
pub(super) fn place(here: Here, shape: Shape) -> Option<Place> {
    match target(here, shape)? {
        Target::Named(holds, range) => named(here, holds, range),
        Target::Link(range) => linked(here, here.words(&range)),
        Target::Live(range) => own_name(here, here.words(&range)),
        Target::Word(range) => entry(&here.edition.content, here.words(&range)),
        Target::Key(..) => None,
    }
}

fn named(here: Here, holds: Holds, range: Range<usize>) -> Option<Place> {
    let name = here.words(&range).trim().trim_matches(['"', '\'']);
    let content = &here.edition.content;
    match holds {
        Holds::AmountLine => of_line(here, &range),
        Holds::Ingredient => ingredient(here, name),
        Holds::Recipe => recipe(content, name),
        Holds::Technique => technique(content, name),
        Holds::RecipeOrTechnique => {
            recipe(content, name).or_else(|| technique(content, name))
        }
        Holds::Section | Holds::SectionOrIngredient => own_name(here, name),
        Holds::Step => step(here, name),
        Holds::ClassStep => {
            let steps = content.recipes.iter().flat_map(Recipe::steps);
            steps
                .into_iter()
                .find(|step| step.name == name)
                .map(|step| step.title.place.clone())
        }
        Holds::Swap | Holds::Way => swap(content, here, name),
        Holds::Part => divided(here, name),
        Holds::Shape => {
            let word = name.split(',').next().unwrap_or("").trim();
            let own = content.techniques.iter().flat_map(|it| &it.shapes);
            own.into_iter()
                .find(|it| it.name.value == word)
                .map(|it| it.name.place.clone())
        }
        Holds::Video => {
            let videos = names::known(here)?.videos.iter();
            videos
                .into_iter()
                .find(|it| it.name == name)
                .map(|it| it.address.place.clone())
        }
        Holds::Picture => picture(content, name),
        Holds::Original => {
            let file = here.spot.file.rsplit('/').next()?.trim_end_matches(".md");
            part(content.recipe(file)?, name)
        }
        Holds::Place
        | Holds::Kit
        | Holds::Fault
        | Holds::Family
        | Holds::Language
        | Holds::Allergen
        | Holds::Mark => None,
    }
}

/// What an amount line names.
fn of_line(here: Here, range: &Range<usize>) -> Option<Place> {
    let line = amount_line(here.words(range), amount::locale(here))?;
    match &line.ingredient.value {
        Ingredient::Pantry(name) => ingredient(here, name),
        Ingredient::Recipe { recipe: name, .. } => recipe(&here.edition.content, name),
    }
}

/// The course's own entry for an ingredient.
fn ingredient(here: Here, name: &str) -> Option<Place> {
    let (item, _) = here.edition.pantry.find_pieces(name)?;
    let mut own = here.edition.content.pantry.iter();
    let entry = own.find(|entry| entry.name.says(&item.name))?;
    Some(entry.name.place.clone())
}

fn recipe(content: &Content, name: &str) -> Option<Place> {
    let recipe = content.recipe(name)?;
    Some(recipe.title.place.clone())
}

fn technique(content: &Content, name: &str) -> Option<Place> {
    let technique = content.techniques.iter().find(|it| it.name == name)?;
    Some(technique.title.place.clone())
}

/// A section of the formula, or a line of it, by what the text says now.
fn own_name(here: Here, name: &str) -> Option<Place> {
    let name = name.rsplit(" of ").next()?.trim_start_matches("the ").trim();
    let recipe = names::known(here)?;
    let section = recipe.formula.iter().find(|section| section.name.value == name);
    let lines = recipe.formula.iter().flat_map(|section| &section.lines);
    let line = || {
        let mut lines = lines.clone();
        lines.find(|line| line.ingredient.value.title().ends_with(name))
    };
    let named = section.map(|section| section.name.place.clone());
    named.or_else(|| Some(line()?.place.clone()))
}

/// A step of this text.
fn step(here: Here, name: &str) -> Option<Place> {
    let part = here.outline.parts.iter().find(|part| part_name(part.title) == name)?;
    Some(of(here, part.heading.clone()))
}

fn of(here: Here, range: Range<usize>) -> Place {
    let file: FileName = here.spot.file.into();
    Place::new(&file, range.start, range.end)
}

fn part(recipe: &Recipe, name: &str) -> Option<Place> {
    let parts = recipe.parts.iter().map(|part| match part {
        crate::model::Part::Step(step) => (&step.name, &step.title.place),
        crate::model::Part::Prose { name, title, .. } => (name, &title.place),
    });
    parts.into_iter().find(|(own, _)| *own == name).map(|(_, place)| place.clone())
}

fn swap(content: &Content, here: Here, name: &str) -> Option<Place> {
    let own = names::known(here).into_iter().chain(&content.recipes);
    let mut swaps = own.flat_map(|recipe| &recipe.swaps);
    swaps.find(|swap| swap.name.value == name).map(|swap| swap.name.place.clone())
}

/// Where a ticket of this text divides off a part.
fn divided(here: Here, name: &str) -> Option<Place> {
    let tickets = here.outline.parts.iter().filter_map(|part| part.ticket.clone());
    let found = tickets.filter_map(|ticket| {
        let lines = here.words(&ticket);
        let line = lines.find("divide:")?;
        let at = line
            + lines[line..].lines().next()?.find(&format!(" for {name}"))?
            + " for ".len();
        Some(ticket.start + at..ticket.start + at + name.len())
    });
    found.map(|range| of(here, range)).next()
}

fn picture(content: &Content, name: &str) -> Option<Place> {
    let name = name.split(',').next()?.trim();
    let known = content.media.iter().any(|medium| medium.name == name);
    known.then(|| Place::file(&format!("media/{name}")))
}

/// Where a link leads: a recipe, a technique, a picture.
fn linked(here: Here, to: &str) -> Option<Place> {
    let content = &here.edition.content;
    let folder = here.spot.file.split('/').rev().nth(1).unwrap_or("");
    let path = to.trim_start_matches("../").trim_start_matches("./");
    let (folder, file) = path.split_once('/').unwrap_or((folder, path));
    match folder {
        "media" => picture(content, file),
        "techniques" => technique(content, file.strip_suffix(".md")?),
        _ => recipe(content, file.strip_suffix(".md")?),
    }
}

/// The entry of a word of the trade.
pub(super) fn entry(content: &Content, word: &str) -> Option<Place> {
    let entry = content.glossary.iter().find(|entry| {
        let mut forms = std::iter::once(&entry.word).chain(&entry.also);
        forms.any(|form| form.says(word))
    })?;
    Some(entry.word.place.clone())
}
