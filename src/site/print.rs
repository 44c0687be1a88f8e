//! The print room: every handout in one table.

use std::collections::BTreeSet;

use serde::Serialize;

use crate::sheet::{HandoutKind, HandoutLink, Paper, Units};

use super::cartridge::PACKAGE;
use super::engine::{Engine, TemplateFault};
use super::shell::{Head, context};
use super::{Input, Page};

/// One unit system on one paper: a column.
#[derive(Serialize)]
struct Column {
    units: &'static str,
    paper: &'static str,
}

/// One kind of handout of one recipe: a row.
#[derive(Serialize)]
pub(super) struct Row {
    /// The recipe's title.
    recipe: String,
    /// The recipe's page, from the site's root.
    page: String,
    /// The kind's word: `student`.
    kind: &'static str,
    /// Whether it is the recipe's first row.
    first: bool,
    /// The handouts, one a column.
    links: Vec<Link>,
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
pub(super) fn page(input: &Input, engine: &Engine) -> Result<Page, TemplateFault> {
    let head = Head {
        path: "print/index.html",
        title: input.words.get("page-print-room"),
        summary: input.words.get("page-print-room-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    let kinds = columns(input.handouts.iter());
    let columns: Vec<Column> = kinds
        .iter()
        .map(|(units, paper)| Column { units: units.word(), paper: paper.word() })
        .collect();
    let recipes = input.recipes.iter();
    let rows: Vec<Row> =
        recipes.flat_map(|one| rows(input, &one.base.recipe, &kinds)).collect();
    context.insert("columns", &columns);
    context.insert("rows", &rows);
    context.insert("cartridge", PACKAGE);
    Ok(Page::text("print/index.html", engine.fill("print.html", &context)?))
}

/// The rows of one recipe: one a kind of handout that it has.
pub(super) fn of_recipe(input: &Input, recipe: &str) -> Vec<Row> {
    let own = input.handouts.iter().filter(|one| one.recipe == recipe);
    rows(input, recipe, &columns(own))
}

fn columns<'a>(
    handouts: impl Iterator<Item = &'a HandoutLink>,
) -> BTreeSet<(Units, Paper)> {
    handouts.map(|one| (one.units, one.paper)).collect()
}

fn rows(input: &Input, recipe: &str, columns: &BTreeSet<(Units, Paper)>) -> Vec<Row> {
    let own: Vec<&HandoutLink> =
        input.handouts.iter().filter(|one| one.recipe == recipe).collect();
    let has = |kind: &&HandoutKind| own.iter().any(|one| one.kind == **kind);
    let kinds: Vec<&HandoutKind> = HandoutKind::ALL.iter().filter(has).collect();
    let title = input.recipes.iter().find(|one| one.base.recipe == recipe);
    let title = title.map_or(recipe, |one| one.base.title.as_str());
    let row = |(index, kind): (usize, &&HandoutKind)| Row {
        recipe: title.to_owned(),
        page: format!("recipes/{recipe}/index.html"),
        kind: kind.word(),
        first: index == 0,
        links: columns.iter().map(|column| link(&own, **kind, *column)).collect(),
    };
    kinds.iter().enumerate().map(row).collect()
}

fn link(own: &[&HandoutLink], kind: HandoutKind, column: (Units, Paper)) -> Link {
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
        file: found.map_or(String::new(), |one| one.path.clone()),
    }
}
