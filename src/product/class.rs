//! What is published of a class. Its plan takes a while, so it is worked out only where a
//! file is out of date, and then once for all of them.

use std::sync::{Arc, OnceLock};

use crate::lists::{calendar, order_csv, sessions};
use crate::measure::{Label, show};
use crate::model::Class;
use crate::paper::ClassPaper;
use crate::plan::{self, Effort, Unclear};
use crate::sheet::{ClassSheet, HandoutKind, Paper, Units, build};
use crate::site::INSTRUCTOR;
use crate::statement::Statement;

use super::{Bundle, Make, Product, Shelf, Supplies, Workshop, files_key, key};

/// A class's sheet, worked out when it is first asked for.
type Once = Arc<OnceLock<Result<ClassSheet, Statement>>>;

/// Makes a file from a class's sheet.
type FromSheet = fn(&ClassSheet, &Workshop) -> Result<Vec<u8>, Statement>;

/// Every file of every class.
pub(super) fn class_products<'w>(workshop: &'w Workshop<'_>) -> Vec<Product<'w>> {
    let classes = &workshop.stock.edition.content.classes;
    classes.iter().flat_map(|class| files(class, workshop)).collect()
}

/// What everybody may see of a class stands on the site. What is the instructor's alone stands
/// beside it, but where the course wants it on the site too.
fn files<'w>(class: &'w Class, workshop: &'w Workshop<'_>) -> Vec<Product<'w>> {
    let once: Once = Arc::default();
    let inputs = inputs(class, workshop);
    let file = |folder: &str, name: &str, make: FromSheet| {
        let once = once.clone();
        let make: Make<'w> = Box::new(move |_: &dyn Shelf| {
            let sheet = once.get_or_init(|| {
                let stock = workshop.stock;
                let sheet = stock.edition.class(class, Effort::USUAL, stock.words);
                sheet.map_err(Unclear::said)
            });
            make(sheet.as_ref().map_err(Clone::clone)?, workshop)
        });
        let path = format!("{folder}classes/{}/{name}", class.name);
        Product::new(path, &[inputs.as_bytes()], make)
    };
    let open = workshop.stock.course.papers_on_site;
    let own = if open { "" } else { INSTRUCTOR };
    let mut files: Vec<Product> =
        PAPERS.iter().map(|(name, make)| file(own, name, *make)).collect();
    files.push(file("", "sessions.ics", |sheet, _| {
        Ok(sessions(&sheet.plan).unwrap_or_default().into_bytes())
    }));
    files.push(file(own, "index.html", whole_page));
    if !open {
        files.push(file("", "index.html", page));
    }
    files.push(bundle(class, workshop, own));
    files
}

/// What is made of a class for its instructor, but its page and its bundle.
const PAPERS: [(&str, FromSheet); 6] = [
    ("plan.ics", |sheet, workshop| {
        let plan = calendar(&sheet.plan, workshop.stock.words);
        Ok(plan.unwrap_or_default().into_bytes())
    }),
    ("order.csv", |sheet, workshop| {
        let bought = sheet.bought.as_ref();
        let table = bought.map(|order| order_csv(order, workshop.stock.words));
        Ok(table.unwrap_or_default().into_bytes())
    }),
    ("run-a4.pdf", |sheet, workshop| {
        paper(sheet, workshop, (ClassPaper::Run, Paper::A4))
    }),
    ("run-letter.pdf", |sheet, workshop| {
        paper(sheet, workshop, (ClassPaper::Run, Paper::Letter))
    }),
    ("lists-a4.pdf", |sheet, workshop| {
        paper(sheet, workshop, (ClassPaper::Lists, Paper::A4))
    }),
    ("lists-letter.pdf", |sheet, workshop| {
        paper(sheet, workshop, (ClassPaper::Lists, Paper::Letter))
    }),
];

/// Everything that is handed out on the evening, in the course's own units and on its paper.
fn bundle<'w>(class: &'w Class, workshop: &'w Workshop<'_>, folder: &str) -> Product<'w> {
    let stock = workshop.stock;
    let mut inputs: Vec<&[u8]> = vec![workshop.look.as_bytes(), class.name.as_bytes()];
    let recipes = class.makes.iter();
    let recipes = recipes.flat_map(|made| workshop.keys.named(&made.recipe.value));
    inputs.extend(recipes.map(|recipe| workshop.key(recipe).as_bytes()));
    let make = move |_: &dyn Shelf| {
        let (edition, course, words) = (stock.edition, &stock.course, stock.words);
        let units = if course.metric_first { Units::Metric } else { Units::Us };
        let paper = if course.a4_first { Paper::A4 } else { Paper::Letter };
        let bundle = Bundle::new(class, Supplies { edition, course, words });
        let bundle = bundle.map_err(Unclear::said)?;
        let kinds = [HandoutKind::Student, HandoutKind::Bench];
        let (jobs, cover) = bundle.jobs(&kinds, units, paper);
        let press = workshop.press();
        press.print(&press.covered(&jobs, &cover, false)).map_err(|fault| fault.said())
    };
    let path = format!("{folder}classes/{}/bundle.pdf", class.name);
    Product { path, key: key(&inputs), make: Box::new(make) }
}

/// Stands for everything that a class's files are made from: the question and the order
/// say all that the plan and the lists depend on, and the steps what is said beside them.
fn inputs(class: &Class, workshop: &Workshop) -> String {
    let stock = workshop.stock;
    let book = stock.edition.book();
    let question = plan::draft(class, book).map(|draft| format!("{draft:?}"));
    let order = build::order(class, book, stock.words).map(|order| format!("{order:?}"));
    let (theme, course, words) = (stock.theme, &stock.course, stock.words);
    let parts = ["site/", "paper/", "fonts/"];
    let look = files_key(theme, parts.iter().flat_map(|part| theme.below(part)));
    let said = said(class, workshop);
    format!("{question:?} {order:?} {said:?} {class:?} {course:?} {words:?} {look}")
}

/// What the files say of the steps of every recipe that the class needs, though no plan
/// depends on it: what to look for, and the oven in both unit systems.
fn said<'w>(
    class: &'w Class,
    workshop: &'w Workshop<'_>,
) -> Vec<(&'w str, Option<Label>, Option<Label>)> {
    let recipes =
        class.makes.iter().flat_map(|made| workshop.keys.named(&made.recipe.value));
    let words = workshop.stock.words;
    let steps = recipes.flat_map(|recipe| recipe.steps());
    let said = steps.map(|step| {
        let oven = step.bake.as_ref().map(|bake| show::oven(&bake.value.oven, words));
        (
            step.title.value.as_str(),
            step.until.as_deref().map(|until| build::cue(until, words)),
            oven,
        )
    });
    said.collect()
}

fn page(sheet: &ClassSheet, workshop: &Workshop) -> Result<Vec<u8>, Statement> {
    let page = workshop.site.class(sheet).map_err(|fault| fault.said())?;
    Ok(page.bytes)
}

fn whole_page(sheet: &ClassSheet, workshop: &Workshop) -> Result<Vec<u8>, Statement> {
    let page = workshop.site.whole_class(sheet).map_err(|fault| fault.said())?;
    Ok(page.bytes)
}

fn paper(
    sheet: &ClassSheet,
    workshop: &Workshop,
    which: (ClassPaper, Paper),
) -> Result<Vec<u8>, Statement> {
    let (course, words) = (&workshop.stock.course, workshop.stock.words);
    let printed = workshop.press().class(sheet, course, words, which);
    printed.map_err(|fault| fault.said())
}
