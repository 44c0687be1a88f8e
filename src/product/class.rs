//! What is published of a class. Its plan takes a while, so it is worked out only where a
//! file is out of date, and then once for all of them.

use std::sync::{Arc, OnceLock};

use crate::edition::Edition;
use crate::formula::Book;
use crate::lists::{ClassSheet, class_sheet, order};
use crate::model::Class;
use crate::paper::{ClassPaper, Press};
use crate::plan;
use crate::sheet::Paper;
use crate::site;
use crate::theme::Theme;
use crate::words::Words;

use super::{Make, Plates, Product, files_key};

/// What the classes' files are made with.
#[derive(Clone, Copy)]
struct Setting<'a> {
    book: Book<'a>,
    plates: &'a Plates,
    words: &'a Words,
    theme: &'a Theme,
}

/// A class's sheet, worked out when it is first asked for.
type Once = Arc<OnceLock<Result<ClassSheet, String>>>;

/// Every file of every class.
pub fn class_products<'a>(
    edition: &'a Edition,
    plates: &'a Plates,
    words: &'a Words,
    theme: &'a Theme,
) -> Vec<Product<'a>> {
    let setting = Setting { book: edition.book(), plates, words, theme };
    edition.content.classes.iter().flat_map(|class| files(class, setting)).collect()
}

fn files<'a>(class: &'a Class, setting: Setting<'a>) -> Vec<Product<'a>> {
    let once: Once = Arc::default();
    let inputs = inputs(class, setting);
    let file = |name: &str, make: fn(&ClassSheet, Setting) -> Result<Vec<u8>, String>| {
        let once = once.clone();
        let make: Make<'a> = Box::new(move || {
            let sheet = once
                .get_or_init(|| class_sheet(class, setting.book).map_err(str::to_owned));
            make(sheet.as_ref().map_err(Clone::clone)?, setting)
        });
        let path = format!("classes/{}/{name}", class.name);
        Product::new(path, &[inputs.as_bytes()], make)
    };
    vec![
        file("index.html", page),
        file("plan.ics", |sheet, _| text(sheet.calendar.as_deref())),
        file("order.csv", |sheet, _| text(sheet.table.as_deref())),
        file("run-a4.pdf", |sheet, setting| {
            paper(sheet, setting, (ClassPaper::Run, Paper::A4))
        }),
        file("run-letter.pdf", |sheet, setting| {
            paper(sheet, setting, (ClassPaper::Run, Paper::Letter))
        }),
        file("lists-a4.pdf", |sheet, setting| {
            paper(sheet, setting, (ClassPaper::Lists, Paper::A4))
        }),
        file("lists-letter.pdf", |sheet, setting| {
            paper(sheet, setting, (ClassPaper::Lists, Paper::Letter))
        }),
    ]
}

/// Stands for everything that a class's files are made from: the question and the order
/// say all that the plan and the lists depend on.
fn inputs(class: &Class, setting: Setting) -> String {
    let question = plan::draft(class, setting.book).map(|draft| format!("{draft:?}"));
    let order = order(class, setting.book).map(|order| format!("{order:?}"));
    let theme = setting.theme;
    let parts = ["site/", "paper/", "fonts/"];
    let look = files_key(theme, parts.iter().flat_map(|part| theme.below(part)));
    let (course, words) = (&setting.plates.course, setting.words);
    format!("{question:?} {order:?} {class:?} {course:?} {words:?} {look}")
}

fn page(sheet: &ClassSheet, setting: Setting) -> Result<Vec<u8>, String> {
    let input = site::Input {
        course: &setting.plates.course,
        recipes: &setting.plates.recipes,
        techniques: &setting.plates.techniques,
        figures: &setting.plates.figures,
        media: &setting.plates.media,
        handouts: &[],
        words: setting.words,
        theme: setting.theme,
    };
    let page = site::class_page(&input, sheet).map_err(|fault| {
        format!("{}:{}: {}", fault.template, fault.line, fault.message)
    })?;
    Ok(page.bytes)
}

fn text(text: Option<&str>) -> Result<Vec<u8>, String> {
    Ok(text.unwrap_or_default().as_bytes().to_vec())
}

fn paper(
    sheet: &ClassSheet,
    setting: Setting,
    which: (ClassPaper, Paper),
) -> Result<Vec<u8>, String> {
    let press = Press::new(setting.theme);
    let printed = press.class(sheet, &setting.plates.course, setting.words, which);
    printed.map_err(|fault| fault.to_string())
}
