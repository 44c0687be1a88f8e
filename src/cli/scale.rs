//! `tourier scale`: the scaled formula on the terminal.

use crate::said;
use crate::sheet::{Line, Sheet, making};
use crate::statement::Statement;
use crate::words::Words;

use super::args::RecipeArgs;
use super::together::{Recipes, names};
use super::{Call, Done, open, say, words};

/// Prints the formula in both unit systems with baker's percentages.
pub(super) fn run(call: &Call, options: &RecipeArgs) -> Done {
    let (mut edition, theme) = open(call)?;
    let words = words(&theme, &edition)?;
    let names = names(call, &mut edition, &options.recipe, &options.scaling.with)?;
    let recipes = Recipes::new(call, &edition, &names, &options.scaling)?;
    let sheets = recipes.sheets(&words)?;
    let tables = sheets.iter().map(|sheet| table(sheet, &words));
    if let [_] = *names {
        return say(tables.collect::<String>().as_bytes());
    }
    let units = edition.first_units();
    let shared = recipes.shared()?;
    let shared =
        shared.iter().map(|dough| making::shared_dough(dough, units, &words) + "\n");
    say(shared.chain(tables).collect::<Vec<_>>().join("\n").as_bytes())
}

/// The formula as a table of text.
fn table(sheet: &Sheet, words: &Words) -> String {
    let (title, batch) = (&sheet.title, &sheet.scale.batch);
    let makes = &sheet.scale.makes.metric;
    let mut text = words.tell(&said!("scale-head", title, batch, makes)) + "\n";
    if sheet.scale.doughs > 1 {
        text += &words.tell(&said!("scale-doughs", count = sheet.scale.doughs));
        text += "\n";
    }
    let rows: Vec<[String; 6]> = sheet.formula.iter().map(|it| row(it, words)).collect();
    let width = |column: usize| {
        rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..6).map(width).collect();
    let mut section = "";
    for (line, row) in sheet.formula.iter().zip(&rows) {
        if line.section != section {
            section = &line.section;
            text.push_str(&format!("\n{section}\n"));
        }
        let cells =
            row.iter().zip(&widths).enumerate().map(|(at, (cell, width))| match at {
                1 | 4 | 5 => format!("{cell:<width$}"),
                _ => format!("{cell:>width$}"),
            });
        let line = format!("  {}", cells.collect::<Vec<_>>().join("  "));
        text.push_str(line.trim_end());
        text.push('\n');
    }
    text += &format!("\n{}\n", words.tell(&total(sheet)));
    if let Some(each) = &sheet.totals.each_dough {
        let (metric, us) = (&each.metric, &each.us);
        text += &words.tell(&said!("scale-each-dough", metric, us));
        text += "\n";
    }
    for note in &sheet.notes {
        let (metric, us) = (&note.text.metric, &note.text.us);
        text += &format!("\n{metric}\n");
        if metric != us {
            text += &format!("  {}\n", words.tell(&said!("scale-in-us", us)));
        }
    }
    text
}

/// What all of it weighs, and its hydration where that is known.
fn total(sheet: &Sheet) -> Statement {
    let (metric, us) = (&sheet.totals.weight.metric, &sheet.totals.weight.us);
    let percent = sheet.totals.hydration_percent.map(|percent| percent.to_string());
    match (percent, sheet.totals.true_hydration) {
        (None, _) => said!("scale-total", metric, us),
        (Some(percent), false) => said!("scale-total-hydration", metric, us, percent),
        (Some(percent), true) => said!("scale-total-true-hydration", metric, us, percent),
    }
}

/// Metric weight, ingredient, US weight, measure, percent, and what goes into each dough.
fn row(line: &Line, words: &Words) -> [String; 6] {
    let at = line.at.as_ref().map(|at| format!(" {} / {}", at.metric, at.us));
    let at = at.unwrap_or_default();
    let count =
        line.count.as_ref().map(|count| format!(" ({count})")).unwrap_or_default();
    let mut name = format!("{}{at}{count}", line.ingredient);
    if let Some(note) = &line.note {
        name = words.list(&[name, note.clone()]);
    }
    let weight = if line.us_weight == line.metric {
        String::new()
    } else {
        line.us_column.clone()
    };
    [
        line.metric.clone(),
        name,
        weight,
        line.us_measure.clone().unwrap_or_default(),
        line.percent_label.clone().unwrap_or_default(),
        line.each_dough.as_ref().map_or_else(String::new, |each| {
            let (metric, us) = (&each.metric, &each.us_weight);
            words.tell(&said!("scale-each-dough", metric, us))
        }),
    ]
}
