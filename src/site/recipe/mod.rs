//! A recipe's page.

mod facts;
mod formula;
mod method;

use serde::Serialize;

use crate::sheet::{Allergen, RecipeSheets, Sheet, Watch};

use super::engine::{Engine, TemplateFault};
use super::figure::{Drawing, of_recipe};
use super::html::Html;
use super::print::{self, Row};
use super::prose::Writer;
use super::shell::{Head, Size, context, root};
use super::vary::Batches;
use super::{Input, Page, linked};

/// A recipe as the template sees it.
#[derive(Serialize)]
struct View<'a> {
    name: &'a str,
    title: &'a str,
    summary: &'a str,
    family: Option<&'a str>,
    makes: Html,
    piece: Html,
    hands: Html,
    wait: Html,
    elapsed: Html,
    allergens: Allergens<'a>,
    /// This recipe's own cautions; the house's stand at the foot of the page.
    cautions: Vec<&'a str>,
    opening: Html,
    sections: Vec<formula::Section<'a>>,
    totals: formula::Totals,
    /// Remarks on the numbers.
    remarks: Vec<Html>,
    preferment: Option<formula::Preferment<'a>>,
    water: Option<facts::Water>,
    parts: Vec<method::Part<'a>>,
    /// Prose after the last step.
    notes: Vec<method::Part<'a>>,
    lamination: Option<facts::Lamination<'a>>,
    timeline: facts::Timeline<'a>,
    /// Drawings that belong to no step, but for the timeline.
    drawings: Vec<Drawing>,
    nutrition: Vec<facts::Nutrient>,
    /// What the figures for 100 g are taken from: before baking, or as baked.
    nutrition_basis: String,
    videos: &'a [Watch],
    handouts: Vec<Row>,
}

/// The allergens by both laws, the one nearer to the course first.
#[derive(Serialize)]
struct Allergens<'a> {
    lists: [AllergenList<'a>; 2],
    /// Ingredients whose allergens are not known.
    unknown: &'a [String],
    /// Whether there are none at all, and none unknown.
    none: bool,
}

/// The allergens by one law.
#[derive(Serialize)]
struct AllergenList<'a> {
    /// `eu` or `us`.
    law: &'static str,
    found: &'a [Allergen],
}

/// The page of one recipe.
pub(super) fn page(
    input: &Input,
    recipe: &RecipeSheets,
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let sheet = &recipe.base;
    let path = format!("recipes/{}/index.html", sheet.recipe);
    let head = Head {
        path: &path,
        title: &sheet.title,
        summary: &sheet.summary,
        linked: Some(linked::recipe(input.course, sheet)),
        picture: Some(format!("recipes/{}/social.png", sheet.recipe)),
    };
    let mut context = context(input, head);
    context.insert("sizes", &sizes(recipe));
    context.insert("recipe", &view(input, recipe, &root(&path)));
    let text = engine.fill("recipe.html", &context)?;
    Ok(Page::text(path, text))
}

/// The batch sizes to choose from; the one as written is chosen at first.
fn sizes(recipe: &RecipeSheets) -> Vec<Size<'_>> {
    let written = recipe
        .batches
        .iter()
        .position(|batch| batch.sheet.scale.batch == recipe.base.scale.batch);
    let size = |(index, batch)| {
        let batch: &crate::sheet::Batch = batch;
        Size {
            key: &batch.key,
            title: &batch.title,
            first: index == written.unwrap_or(0),
        }
    };
    recipe.batches.iter().enumerate().map(size).collect()
}

fn view<'a>(input: &Input<'a>, recipe: &'a RecipeSheets, root: &str) -> View<'a> {
    let sheet = &recipe.base;
    let batches = Batches::new(recipe);
    let writer = |level| Writer { root, keys: &batches.keys, level, words: input.words };
    let drawings = of_recipe(input.figures, &sheet.recipe, &batches);
    let openings: Vec<_> =
        batches.sheets.iter().map(|at| at.opening.as_slice()).collect();
    let (parts, notes) = method::parts(&batches, &writer(4), &drawings);
    View {
        name: &sheet.recipe,
        title: &sheet.title,
        summary: &sheet.summary,
        family: sheet.family.as_deref(),
        makes: batches.label(|at| Some(&at.scale.makes)),
        piece: batches.label(|at| at.scale.piece.as_ref()),
        hands: batches.text(|at| Some(at.time.hands.clone())),
        wait: batches.text(|at| Some(at.time.wait.clone())),
        elapsed: batches.text(|at| Some(at.time.elapsed.clone())),
        allergens: allergens(input, sheet),
        cautions: cautions(input, sheet),
        opening: writer(2).write(&openings),
        sections: formula::sections(sheet, &batches, root),
        totals: formula::totals(&batches, input.words),
        remarks: formula::remarks(&batches),
        preferment: formula::preferment(sheet, &batches),
        water: facts::water(&batches),
        parts,
        notes,
        lamination: facts::lamination(input.words, sheet, &batches),
        timeline: facts::timeline(input, sheet, &batches, &drawings),
        drawings: loose(drawings),
        nutrition: facts::nutrition(&batches),
        nutrition_basis: facts::basis(sheet, input.words),
        videos: &sheet.videos,
        handouts: print::of_recipe(input, &sheet.recipe),
    }
}

/// The drawings that stand neither beside a step nor in the timeline.
fn loose(drawings: Vec<Drawing>) -> Vec<Drawing> {
    drawings
        .into_iter()
        .filter(|one| one.step.is_none() && one.kind != "timeline")
        .collect()
}

fn allergens<'a>(input: &Input, sheet: &'a Sheet) -> Allergens<'a> {
    let found = &sheet.allergens;
    let eu = AllergenList { law: "eu", found: &found.eu_detail };
    let us = AllergenList { law: "us", found: &found.us_detail };
    Allergens {
        none: found.eu.is_empty() && found.us.is_empty() && found.unknown.is_empty(),
        unknown: &found.unknown,
        lists: if input.course.metric_first { [eu, us] } else { [us, eu] },
    }
}

fn cautions<'a>(input: &Input, sheet: &'a Sheet) -> Vec<&'a str> {
    let own = |text: &&String| !input.course.cautions.contains(*text);
    sheet.caution_texts.iter().filter(own).map(String::as_str).collect()
}
