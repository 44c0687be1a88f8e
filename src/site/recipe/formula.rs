//! The formula's tables.

use serde::Serialize;

use crate::measure::{Label, show};
use crate::sheet::{Line, Sheet};
use crate::words::Words;

use crate::site::html::Html;
use crate::site::vary::Batches;

/// One section of the formula.
#[derive(Serialize)]
pub(super) struct Section<'a> {
    /// Its name.
    title: &'a str,
    lines: Vec<Row<'a>>,
    /// Its weight; empty where it carries none.
    weight: Html,
    /// Whether any line has a household measure.
    measures: bool,
    /// Whether any line has a baker's percentage.
    percents: bool,
    /// Where a line is divided among several doughs: the classes that show the column only
    /// at the sizes that take several.
    each: String,
    /// Whether any line is divided.
    divided: bool,
}

/// One line of the formula.
#[derive(Serialize)]
struct Row<'a> {
    /// Its place in the whole formula, from 1: what its tick is known by.
    number: usize,
    ingredient: &'a str,
    note: Option<&'a str>,
    /// The temperature it has when it goes in.
    at: Option<Html>,
    /// The page of a recipe used as an ingredient.
    page: Option<String>,
    weight: Html,
    /// Whether words stand where other lines have a weight: `for dusting`.
    open: bool,
    measure: Html,
    percent: Html,
    /// For one of several doughs, at the sizes that take several.
    each: Html,
}

/// The sums.
#[derive(Serialize)]
pub(super) struct Totals {
    weight: Html,
    flour: Html,
    hydration: Html,
    /// Whether hydration counts the water in milk, eggs and butter.
    true_hydration: bool,
    /// One of several doughs, at the sizes that take several, and the classes that show it
    /// only there.
    each: Html,
    each_classes: String,
    /// Whether there is flour to speak of.
    has_flour: bool,
}

/// The preferment inside the overall formula.
#[derive(Serialize)]
pub(super) struct PrefermentView<'a> {
    section: &'a str,
    flour: Html,
    hydration: Html,
    lines: Vec<OverallRow<'a>>,
}

/// One ingredient of the overall formula.
#[derive(Serialize)]
struct OverallRow<'a> {
    ingredient: &'a str,
    preferment: Html,
    dough: Html,
    percent: &'a str,
}

/// The formula by its sections, in order.
pub(super) fn sections<'a>(
    sheet: &'a Sheet,
    batches: &Batches,
    root: &str,
) -> Vec<Section<'a>> {
    let mut sections: Vec<Section> = Vec::new();
    for (index, line) in sheet.formula.iter().enumerate() {
        if sections.last().is_none_or(|last| last.title != line.section) {
            sections.push(section(&line.section, batches));
        }
        if let Some(last) = sections.last_mut() {
            last.measures |= line.us_measure.is_some() || line.count.is_some();
            last.percents |= line.percent_label.is_some();
            if divided(index, batches) {
                last.divided = true;
                last.each = batches.classes(|sheet| sheet.scale.doughs > 1);
            }
            last.lines.push(row(line, index, batches, root));
        }
    }
    sections
}

/// Whether a line is divided among several doughs at any size.
fn divided(index: usize, batches: &Batches) -> bool {
    let line = |sheet: &&Sheet| {
        sheet.formula.get(index).is_some_and(|line| line.each_dough.is_some())
    };
    batches.sheets.iter().any(line)
}

fn section<'a>(title: &'a str, batches: &Batches) -> Section<'a> {
    let weight = batches.label(|sheet| {
        let sums = &sheet.totals.sections;
        sums.iter()
            .find(|sum| sum.section == title && sum.grams > 0.0)
            .map(|sum| &sum.weight)
    });
    Section {
        title,
        lines: Vec::new(),
        weight,
        measures: false,
        percents: false,
        each: String::new(),
        divided: false,
    }
}

fn row<'a>(line: &'a Line, index: usize, batches: &Batches, root: &str) -> Row<'a> {
    let at = |sheet: &Sheet| sheet.formula.get(index).cloned();
    let weights = batches.sheets.iter().map(|sheet| {
        at(sheet)
            .map_or_else(Label::default, |line| Label::new(line.metric, line.us_column))
    });
    let each = batches.sheets.iter().map(|sheet| {
        let each = at(sheet).and_then(|line| line.each_dough);
        each.map_or_else(Label::default, |each| Label::new(each.metric, each.us_weight))
    });
    Row {
        each: batches.labels(&each.collect::<Vec<_>>()),
        number: index + 1,
        ingredient: &line.ingredient,
        note: line.note.as_deref(),
        at: line.at.as_ref().map(|_| {
            batches.label(|sheet| sheet.formula.get(index).and_then(|it| it.at.as_ref()))
        }),
        page: line.is_recipe.then(|| format!("{root}recipes/{}/index.html", line.key)),
        weight: batches.labels(&weights.collect::<Vec<_>>()),
        open: line.grams.is_none(),
        measure: batches
            .text(|sheet| at(sheet).and_then(|line| line.count.or(line.us_measure))),
        percent: batches.text(|sheet| at(sheet).and_then(|line| line.percent_label)),
    }
}

/// The sums at every size.
pub(super) fn totals(batches: &Batches, words: &Words) -> Totals {
    let hydration =
        |sheet: &Sheet| sheet.totals.hydration_percent.map(|value| percent(value, words));
    Totals {
        weight: batches.label(|sheet| Some(&sheet.totals.weight)),
        flour: batches.label(|sheet| Some(&sheet.totals.flour)),
        hydration: batches.text(hydration),
        true_hydration: batches.sheets.iter().any(|sheet| sheet.totals.true_hydration),
        each: batches.labels(
            &batches.sheets.iter().map(|at| each_dough(at, words)).collect::<Vec<_>>(),
        ),
        each_classes: batches.classes(|sheet| sheet.scale.doughs > 1),
        has_flour: batches.sheets.iter().any(|sheet| sheet.totals.flour_g > 0.0),
    }
}

/// `3 × 900 g`; nothing where there is one dough.
fn each_dough(sheet: &Sheet, words: &Words) -> Label {
    let count = sheet.scale.doughs.to_string();
    sheet.totals.each_dough.as_ref().map_or_else(Label::default, |each| {
        let fill = |weight: &str| {
            words.fill("page-doughs-of", &[("count", &count), ("weight", weight)])
        };
        Label::new(fill(&each.metric), fill(&each.us))
    })
}

/// A remark on the numbers.
#[derive(Serialize)]
pub(super) struct Remark {
    /// The batches that it is said of, as classes; empty for all.
    classes: String,
    text: Html,
}

/// The remarks on the numbers, at the sizes where they apply.
pub(super) fn remarks(batches: &Batches) -> Vec<Remark> {
    let mut places: Vec<(&str, usize)> = Vec::new();
    for sheet in &batches.sheets {
        for (at, note) in sheet.notes.iter().enumerate() {
            let place = (note.name.as_str(), nth(sheet, at));
            if !places.contains(&place) {
                places.push(place);
            }
        }
    }
    let remark = |place: &(&str, usize)| Remark {
        classes: batches.classes(|sheet| noted(sheet, *place).is_some()),
        text: batches.label(|sheet| noted(sheet, *place)),
    };
    places.iter().map(remark).collect()
}

/// The note of a name, counted from nought.
fn noted<'s>(sheet: &'s Sheet, (name, wanted): (&str, usize)) -> Option<&'s Label> {
    let mut named = sheet.notes.iter().filter(|note| note.name == name);
    named.nth(wanted).map(|note| &note.text)
}

/// Which of the notes of its name a note is, from nought.
fn nth(sheet: &Sheet, at: usize) -> usize {
    let before = sheet.notes[..at].iter();
    before.filter(|note| note.name == sheet.notes[at].name).count()
}

/// Each preferment both ways: its own formula stands with the others, here is the whole.
pub(super) fn preferments<'a>(
    sheet: &'a Sheet,
    batches: &Batches,
    words: &Words,
) -> Vec<PrefermentView<'a>> {
    let all = sheet.preferments.iter().enumerate();
    all.map(|(at, own)| preferment(own, at, batches, words)).collect()
}

fn preferment<'a>(
    own: &'a crate::sheet::Preferment,
    number: usize,
    batches: &Batches,
    words: &Words,
) -> PrefermentView<'a> {
    let line = |sheet: &Sheet, index: usize| {
        sheet.preferments.get(number)?.overall.get(index).cloned()
    };
    let labels = |index: usize, of: fn(crate::sheet::OverallLine) -> Label| {
        let labels = batches.sheets.iter();
        let labels =
            labels.map(|sheet| line(sheet, index).map_or_else(Label::default, of));
        batches.labels(&labels.collect::<Vec<_>>())
    };
    let row = |(index, line): (usize, &'a crate::sheet::OverallLine)| OverallRow {
        ingredient: &line.ingredient,
        preferment: labels(index, |line| line.preferment),
        dough: labels(index, |line| line.dough),
        percent: &line.percent_label,
    };
    PrefermentView {
        section: &own.section,
        flour: Html::text(&percent(own.flour_percent, words)),
        hydration: Html::text(&percent(own.hydration_percent, words)),
        lines: own.overall.iter().enumerate().map(row).collect(),
    }
}

/// Percent to the whole, with a space that does not break.
pub(super) fn percent(value: f64, words: &Words) -> String {
    show::whole_percent(value, words).replace(' ', "\u{a0}")
}
