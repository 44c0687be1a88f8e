//! The print room: every handout in one table, lesson by lesson; and the papers of classes,
//! where they stand on the site.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::sheet::{HandoutKind, HandoutLink, Paper, Sheet, Units};

use super::cartridge::PACKAGE;
use super::engine::{Engine, TemplateFault};
use super::instructor::evenings;
use super::shell::{Head, context};
use super::{Card, Input, Page};

/// One unit system on one paper: a column.
#[derive(Serialize)]
struct Column {
    units: &'static str,
    paper: &'static str,
}

/// One kind of handout of one recipe: a row.
#[derive(Serialize)]
pub(super) struct HandoutRow {
    /// The recipe's title.
    recipe: String,
    /// The title's language, where it is not the page's.
    title_in: Option<String>,
    /// The recipe's page, from the site's root.
    page: String,
    /// The kind's word: `student`.
    kind: &'static str,
    /// Whether it is the recipe's first row.
    first: bool,
    /// The handouts, one a column.
    links: Vec<Link>,
}

/// What is printed for one lesson.
#[derive(Serialize)]
struct LessonHandouts<'a> {
    /// Its title; empty for what stands in no lesson.
    title: &'a str,
    rows: Vec<HandoutRow>,
}

/// One handout, or the lack of it.
#[derive(Serialize)]
struct Link {
    /// The class that shows it only with its own unit system.
    class: &'static str,
    units: &'static str,
    paper: &'static str,
    /// The file, from the site's root; empty where there is none.
    file: String,
}

/// The print room.
pub(super) fn page(
    input: &Input,
    cards: &[Card],
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let head = Head {
        path: "print/index.html",
        title: input.words.get("page-print-room"),
        summary: input.words.get("page-print-room-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    let kinds = columns(input.handouts);
    let columns: Vec<Column> = kinds
        .iter()
        .map(|(units, paper)| Column { units: units.word(), paper: paper.word() })
        .collect();
    let rows = cards.iter().map(|card| {
        let printed = Printed {
            recipe: &card.recipe,
            title: &card.title,
            title_in: card.title_in.as_deref(),
        };
        let rows = rows(&printed, input.handouts, &kinds);
        (card.recipe.as_str(), rows)
    });
    context.insert("columns", &columns);
    context.insert("lessons", &by_lesson(input, rows.collect()));
    if input.course.papers_on_site {
        context.insert("evenings", &evenings(input));
    }
    context.insert("cartridge", PACKAGE);
    Ok(Page::text("print/index.html", engine.fill("print.html", &context)?))
}

/// The rows of each recipe, in the first lesson that teaches it.
fn by_lesson<'a>(
    input: &Input<'a>,
    mut rows: BTreeMap<&str, Vec<HandoutRow>>,
) -> Vec<LessonHandouts<'a>> {
    let lessons = input.course.lessons.iter().map(|lesson| {
        let own = lesson.recipes.iter();
        let own = own.filter_map(|recipe| rows.remove(recipe.as_str())).flatten();
        LessonHandouts { title: &lesson.title, rows: own.collect() }
    });
    lessons.filter(|lesson| !lesson.rows.is_empty()).collect()
}

/// The rows of one recipe: one a kind of handout that it has.
pub(super) fn of_recipe(input: &Input, sheet: &Sheet) -> Vec<HandoutRow> {
    let printed = Printed {
        recipe: &sheet.recipe,
        title: &sheet.title,
        title_in: sheet.title_in(),
    };
    rows(&printed, input.handouts, &columns(input.handouts))
}

fn columns(handouts: &[HandoutLink]) -> BTreeSet<(Units, Paper)> {
    handouts.iter().map(|one| (one.units, one.paper)).collect()
}

/// A recipe that has handouts.
struct Printed<'a> {
    recipe: &'a str,
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
}

fn rows(
    printed: &Printed,
    own: &[HandoutLink],
    columns: &BTreeSet<(Units, Paper)>,
) -> Vec<HandoutRow> {
    let has = |kind: &&HandoutKind| own.iter().any(|one| one.kind == **kind);
    let kinds = HandoutKind::ALL.iter().filter(has);
    let row = |(index, kind): (usize, &HandoutKind)| HandoutRow {
        recipe: printed.title.to_owned(),
        title_in: printed.title_in.map(str::to_owned),
        page: format!("recipes/{}/index.html", printed.recipe),
        kind: kind.word(),
        first: index == 0,
        links: columns
            .iter()
            .map(|column| link(printed.recipe, own, *kind, *column))
            .collect(),
    };
    kinds.enumerate().map(row).collect()
}

fn link(
    recipe: &str,
    own: &[HandoutLink],
    kind: HandoutKind,
    column: (Units, Paper),
) -> Link {
    let (units, paper) = column;
    let found =
        own.iter().find(|one| one.kind == kind && (one.units, one.paper) == column);
    Link {
        class: match units {
            Units::Metric => "m",
            Units::Us => "u",
        },
        units: units.word(),
        paper: paper.word(),
        file: found.map_or(String::new(), |one| one.path(recipe)),
    }
}
