//! What is published of a class. Its plan takes a while, so it is worked out only where a
//! file is out of date, and then once for all of them.

use std::sync::{Arc, OnceLock};

use crate::lists::{calendar, order_csv, sessions};
use crate::measure::{Label, show};
use crate::model::Class;
use crate::paper::ClassPaper;
use crate::plan::{self, Effort, Unclear, Who};
use crate::sheet::{ClassSheet, HandoutKind, Paper, Units, making};
use crate::site::{INSTRUCTOR, calendar_file};

use super::{
    Bundle, EditionFiles, Make, Product, Products, Supplies, Unmade, Whole, files_key,
    key,
};

/// A class's sheet, worked out when it is first asked for.
type Once = Arc<OnceLock<Result<ClassSheet, Unclear>>>;

/// Makes a file from a class's sheet.
type FromSheet = fn(&ClassSheet, &Products) -> Result<Vec<u8>, Unmade>;

/// Likewise, where it knows more than the sheet.
type Making =
    Box<dyn Fn(&ClassSheet, &Products) -> Result<Vec<u8>, Unmade> + Send + Sync>;

/// Every file of every class.
pub(super) fn class_products<'w>(products: &'w Products<'_>) -> Vec<Product<'w>> {
    let classes = &products.inputs.edition.content.classes;
    classes.iter().flat_map(|class| files(class, products)).collect()
}

/// What everybody may see of a class stands on the site. What is the instructor's alone stands
/// beside it, but where the course wants it on the site too.
fn files<'w>(class: &'w Class, products: &'w Products<'_>) -> Vec<Product<'w>> {
    let once: Once = Arc::default();
    let key_inputs = class_inputs(class, products);
    let file = |folder: &str, name: &str, make: Making| {
        let once = once.clone();
        let make: Whole<'w> = Box::new(move |_: &dyn EditionFiles| {
            let sheet = once.get_or_init(|| {
                let inputs = products.inputs;
                inputs.edition.class(class, Effort::USUAL, inputs.words)
            });
            make(sheet.as_ref().map_err(|why| Unmade::Class(*why))?, products)
        });
        let path = format!("{folder}classes/{}/{name}", class.name);
        Product::new(path, &[key_inputs.as_bytes()], make)
    };
    let open = products.inputs.course.papers_on_site;
    let own = if open { "" } else { INSTRUCTOR };
    let mut files: Vec<Product> =
        PAPERS.iter().map(|(name, make)| file(own, name, Box::new(*make))).collect();
    let groups = (0..class.groups()).map(Who::Group);
    for who in groups.chain([Who::Instructor]) {
        let plan = move |sheet: &ClassSheet, products: &Products| {
            let plan = calendar(&sheet.plan, who, products.inputs.words);
            Ok(plan.unwrap_or_default().into_bytes())
        };
        files.push(file(own, &calendar_file(who), Box::new(plan)));
    }
    let dates = |sheet: &ClassSheet, _: &Products| {
        Ok(sessions(&sheet.plan).unwrap_or_default().into_bytes())
    };
    files.push(file("", "sessions.ics", Box::new(dates)));
    files.push(file(own, "index.html", Box::new(whole_page)));
    if !open {
        files.push(file("", "index.html", Box::new(page)));
    }
    files.push(bundle(class, products, own));
    files
}

/// What is made of a class for its instructor, but its page and its bundle.
const PAPERS: [(&str, FromSheet); 5] = [
    ("order.csv", |sheet, products| {
        let bought = sheet.bought.as_ref();
        let table = bought.map(|order| order_csv(order, products.inputs.words));
        Ok(table.unwrap_or_default().into_bytes())
    }),
    ("run-a4.pdf", |sheet, products| {
        paper(sheet, products, (ClassPaper::Run, Paper::A4))
    }),
    ("run-letter.pdf", |sheet, products| {
        paper(sheet, products, (ClassPaper::Run, Paper::Letter))
    }),
    ("lists-a4.pdf", |sheet, products| {
        paper(sheet, products, (ClassPaper::Lists, Paper::A4))
    }),
    ("lists-letter.pdf", |sheet, products| {
        paper(sheet, products, (ClassPaper::Lists, Paper::Letter))
    }),
];

/// Everything that is handed out on the evening, in the course's own units and on its paper.
fn bundle<'w>(class: &'w Class, products: &'w Products<'_>, folder: &str) -> Product<'w> {
    let inputs = products.inputs;
    let levels = format!("{:?}", class.levels);
    let mut key_inputs: Vec<&[u8]> =
        vec![products.look.as_bytes(), class.name.as_bytes(), levels.as_bytes()];
    let recipes = class.makes.iter();
    let recipes = recipes.flat_map(|made| products.keys.named(&made.recipe.value));
    key_inputs.extend(recipes.map(|recipe| products.key(recipe).as_bytes()));
    let make = move |_: &dyn EditionFiles| {
        let (edition, course, words) = (inputs.edition, &inputs.course, inputs.words);
        let units = if course.metric_first { Units::Metric } else { Units::Us };
        let paper = if course.a4_first { Paper::A4 } else { Paper::Letter };
        let levels = &class.levels;
        let bundle = Bundle::new(class, Supplies { edition, course, words, levels });
        let bundle = bundle.map_err(Unmade::Class)?;
        let kinds = [HandoutKind::Student, HandoutKind::Bench];
        let (jobs, cover) = bundle.jobs(&kinds, units, paper);
        let press = products.press();
        press.print(&press.covered(&jobs, &cover, false)).map_err(Unmade::Handout)
    };
    let path = format!("{folder}classes/{}/bundle.pdf", class.name);
    Product { path, key: key(&key_inputs), make: Make::Whole(Box::new(make)) }
}

/// Stands for everything that a class's files are made from: the question and the order
/// say all that the plan and the lists depend on, and the steps what is said beside them.
fn class_inputs(class: &Class, products: &Products) -> String {
    let inputs = products.inputs;
    let book = inputs.edition.book();
    let question = plan::draft(class, book).map(|draft| format!("{draft:?}"));
    let order =
        making::order(class, book, inputs.words).map(|order| format!("{order:?}"));
    let (theme, course, words) = (inputs.theme, &inputs.course, inputs.words);
    let parts = ["site/", "paper/", "fonts/"];
    let look = files_key(theme, parts.iter().flat_map(|part| theme.below(part)));
    let said = said(class, products);
    format!("{question:?} {order:?} {said:?} {class:?} {course:?} {words:?} {look}")
}

/// What the files say of the steps of every recipe that the class needs, though no plan
/// depends on it: what to look for, and the oven in both unit systems.
fn said<'w>(
    class: &'w Class,
    products: &'w Products<'_>,
) -> Vec<(&'w str, Option<Label>, Option<Label>)> {
    let recipes =
        class.makes.iter().flat_map(|made| products.keys.named(&made.recipe.value));
    let words = products.inputs.words;
    let steps = recipes.flat_map(|recipe| recipe.steps());
    let said = steps.map(|step| {
        let oven = step.bake.as_ref().map(|bake| show::oven(&bake.value.oven, words));
        (
            step.title.value.as_str(),
            step.until.as_deref().map(|until| making::cue(until, words)),
            oven,
        )
    });
    said.collect()
}

fn page(sheet: &ClassSheet, products: &Products) -> Result<Vec<u8>, Unmade> {
    let page = products.site.class(sheet).map_err(Unmade::Page)?;
    Ok(page.bytes)
}

fn whole_page(sheet: &ClassSheet, products: &Products) -> Result<Vec<u8>, Unmade> {
    let page = products.site.whole_class(sheet).map_err(Unmade::Page)?;
    Ok(page.bytes)
}

fn paper(
    sheet: &ClassSheet,
    products: &Products,
    which: (ClassPaper, Paper),
) -> Result<Vec<u8>, Unmade> {
    let (course, words) = (&products.inputs.course, products.inputs.words);
    let printed = products.press().class(sheet, course, words, which);
    printed.map_err(Unmade::Handout)
}
