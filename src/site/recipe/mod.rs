//! A recipe's page.

mod facts;
mod formula;
mod method;

use serde::Serialize;

use crate::draw::{Figure, FigureKind};
use crate::media::Medium;
use crate::sheet::{Allergen, Part, RecipeSheets, Sheet, Units, Watch};

use super::engine::{Engine, TemplateFault};
use super::figure::{Drawing, of_recipe};
use super::glossary::GlossaryLinks;
use super::html::Html;
use super::picture::{Spot, picture};
use super::print::{self, HandoutRow};
use super::prose::Writer;
use super::shell::{Head, Size, context, root};
use super::vary::Batches;
use super::{Input, Page, course, linked};

/// A recipe as the template sees it.
#[derive(Serialize)]
struct View<'a> {
    name: &'a str,
    title: &'a str,
    /// The language of title and summary, where it is not the page's.
    title_in: Option<&'a str>,
    summary: &'a str,
    family: Option<&'a str>,
    /// The finished piece; empty where no picture shows it.
    picture: Html,
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
    remarks: Vec<formula::Remark>,
    /// Pages of the same recipe made in another way.
    ways: Vec<WayLink<'a>>,
    preferments: Vec<formula::PrefermentView<'a>>,
    water: Option<facts::Water>,
    parts: Vec<method::Chapter<'a>>,
    /// Prose after the last step.
    notes: Vec<method::Chapter<'a>>,
    lamination: Option<facts::LaminationView<'a>>,
    timeline: facts::Timeline<'a>,
    /// Drawings that belong to no step, but for the timeline.
    drawings: Vec<Drawing>,
    nutrition: Vec<facts::Nutrient>,
    /// What the figures for 100 g are taken from: before baking, or as baked.
    nutrition_basis: String,
    videos: Vec<Video<'a>>,
    /// How many steps there are.
    steps: usize,
    handouts: Vec<HandoutRow>,
}

/// The page of the same recipe made in another way.
#[derive(Serialize)]
struct WayLink<'a> {
    /// The way's name; nothing for the recipe as written.
    name: Option<&'a str>,
    address: String,
}

/// The allergens by both laws, the one nearer to the course first.
#[derive(Serialize)]
struct Allergens<'a> {
    lists: Vec<AllergenList<'a>>,
    /// Ingredients whose allergens are not known.
    unknown: &'a [String],
    /// Ingredients whose allergens stand on the instructor's word.
    read_on_pack: &'a [String],
    /// Whether there are none at all, and none unknown.
    none: bool,
}

/// The allergens by one law.
#[derive(Serialize)]
struct AllergenList<'a> {
    /// Its key: `eu`.
    law: &'a str,
    found: &'a [Allergen],
}

/// A video as the template sees it.
#[derive(Serialize)]
struct Video<'a> {
    name: &'a str,
    address: &'a str,
    /// How long it lasts; empty where that is not said.
    length: &'a str,
    /// A picture from it; empty where there is none.
    still: Html,
}

fn video<'a>(watch: &'a Watch, media: &[Medium], root: &str) -> Video<'a> {
    let still = watch.still.as_ref().map_or_else(Html::default, |still| {
        picture(media, [&still.file, &still.alt], root, Spot::Still)
    });
    Video {
        name: &watch.name,
        address: &watch.address,
        length: watch.length.as_deref().unwrap_or_default(),
        still,
    }
}

/// The page of one recipe.
pub(super) fn page(
    input: &Input,
    recipe: &RecipeSheets,
    figures: &[(String, Vec<Figure>)],
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let sheet = &recipe.base;
    let path = format!("recipes/{}/index.html", sheet.recipe);
    let head = Head {
        path: &path,
        title: &sheet.title,
        summary: &sheet.summary,
        linked: Some(linked::recipe(input, sheet)),
        picture: Some(format!("recipes/{}/social.png", sheet.recipe)),
        trail: course::trail(input.course, &sheet.recipe),
    };
    let mut context = context(input, head);
    context.insert("sizes", &sizes(recipe));
    context.insert("recipe", &view(input, recipe, figures, &root(&path)));
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
        let batch: &crate::sheet::BatchSheet = batch;
        Size {
            key: &batch.key,
            title: &batch.title,
            first: index == written.unwrap_or(0),
        }
    };
    recipe.batches.iter().enumerate().map(size).collect()
}

fn view<'a>(
    input: &Input<'a>,
    recipe: &'a RecipeSheets,
    figures: &[(String, Vec<Figure>)],
    root: &str,
) -> View<'a> {
    let sheet = &recipe.base;
    let batches = Batches::new(recipe);
    let glossary = GlossaryLinks::new(&input.course.glossary);
    let writer = |level| Writer {
        root,
        keys: &batches.keys,
        level,
        words: input.words,
        media: input.media,
        glossary: Some(&glossary),
    };
    let mut drawings = of_recipe(figures, &batches);
    for drawing in &mut drawings {
        let language = drawing.step.as_deref().and_then(|step| sheet.step_in(step));
        drawing.title_in = language.map(str::to_owned);
    }
    let openings: Vec<_> =
        batches.sheets.iter().map(|at| at.opening.as_slice()).collect();
    // The words of the trade are linked in reading order.
    let opening = writer(2).write(&openings);
    let (parts, notes) = method::parts(&batches, &writer(4), &drawings);
    View {
        name: &sheet.recipe,
        title: &sheet.title,
        title_in: sheet.title_in(),
        summary: &sheet.summary,
        family: sheet.family.as_deref(),
        picture: sheet.picture.as_ref().map_or_else(Html::default, |shown| {
            picture(input.media, [&shown.file, &shown.alt], root, Spot::Head)
        }),
        makes: batches.label(|at| Some(&at.scale.makes)),
        piece: batches.label(|at| at.scale.piece.as_ref()),
        hands: batches.text(|at| Some(at.time.hands.clone())),
        wait: batches.text(|at| Some(at.time.wait.clone())),
        elapsed: batches.text(|at| Some(at.time.elapsed.clone())),
        allergens: allergens(input, sheet),
        cautions: cautions(input, sheet),
        opening,
        sections: formula::sections(sheet, &batches, root),
        totals: formula::totals(&batches, input.words),
        remarks: formula::remarks(&batches),
        ways: ways(sheet, root),
        preferments: formula::preferments(sheet, &batches, input.words),
        water: facts::water(&batches),
        parts,
        notes,
        lamination: facts::lamination(input.words, sheet, &batches),
        timeline: facts::timeline(input, sheet, &batches, &drawings),
        drawings: loose(drawings),
        nutrition: facts::nutrition(&batches, input.words),
        nutrition_basis: facts::basis(sheet, input.words),
        videos: sheet.videos.iter().map(|one| video(one, input.media, root)).collect(),
        steps: sheet.parts.iter().filter(|part| matches!(part, Part::Step(_))).count(),
        handouts: print::of_recipe(input, sheet),
    }
}

/// Links to its ways with a page of their own; of a way to the recipe as written.
fn ways<'a>(sheet: &'a Sheet, root: &str) -> Vec<WayLink<'a>> {
    let address = |name: &str| format!("{root}recipes/{name}/index.html");
    let pages = sheet.ways.iter().filter_map(|way| {
        let page = way.page.as_ref()?;
        Some(WayLink { name: Some(&way.name), address: address(page) })
    });
    let own =
        sheet.way.iter().map(|way| WayLink { name: None, address: address(&way.recipe) });
    own.chain(pages).collect()
}

/// The drawings that stand neither beside a step nor in the timeline.
fn loose(drawings: Vec<Drawing>) -> Vec<Drawing> {
    drawings
        .into_iter()
        .filter(|one| one.step.is_none() && one.kind != FigureKind::Timeline)
        .collect()
}

fn allergens<'a>(input: &Input, sheet: &'a Sheet) -> Allergens<'a> {
    let found = &sheet.allergens;
    let first = if input.course.metric_first { Units::Metric } else { Units::Us };
    let lists = found.shown(&input.course.laws, first);
    Allergens {
        none: found.unknown.is_empty()
            && found.lists.iter().all(|it| it.found.is_empty()),
        unknown: &found.unknown,
        read_on_pack: &found.read_on_pack,
        lists: lists
            .into_iter()
            .map(|list| AllergenList { law: &list.law, found: &list.found })
            .collect(),
    }
}

fn cautions<'a>(input: &Input, sheet: &'a Sheet) -> Vec<&'a str> {
    let own = |text: &&String| !input.course.cautions.contains(*text);
    sheet.caution_texts.iter().filter(own).map(String::as_str).collect()
}
