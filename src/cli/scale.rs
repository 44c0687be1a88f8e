//! `tourier scale`: the scaled formula on the terminal.

use crate::sheet::{Line, Sheet};

use super::args::{Args, RecipeArgs};
use super::{Done, open, recipe, say, scaled, words};

/// Prints the formula in both unit systems with baker's percentages.
pub(super) fn run(args: &Args, options: &RecipeArgs) -> Done {
    let (edition, theme) = open(args)?;
    let words = words(&theme, &edition)?;
    let recipe = recipe(&edition, &options.recipe)?;
    let sheet = scaled(&edition, recipe, &options.scaling.scaling()?, &words)?;
    say(table(&sheet).as_bytes())
}

/// The formula as a table of text.
pub(crate) fn table(sheet: &Sheet) -> String {
    let mut text =
        format!("{}: {}, {}\n", sheet.title, sheet.scale.batch, sheet.scale.makes.metric);
    if sheet.scale.doughs > 1 {
        text.push_str(&format!("in {} equal doughs\n", sheet.scale.doughs));
    }
    let rows: Vec<[String; 6]> = sheet.formula.iter().map(row).collect();
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
    let kind = if sheet.totals.true_hydration { "true hydration" } else { "hydration" };
    let hydration = sheet.totals.hydration_percent.map(|h| format!(", {kind} {h} %"));
    let totals = &sheet.totals.weight;
    text.push_str(&format!(
        "\ntotal {} / {}{}\n",
        totals.metric,
        totals.us,
        hydration.unwrap_or_default()
    ));
    if let Some(each) = &sheet.totals.each_dough {
        text.push_str(&format!("each dough {} / {}\n", each.metric, each.us));
    }
    for note in &sheet.notes {
        let (metric, us) = (&note.text.metric, &note.text.us);
        let both = if metric == us { String::new() } else { format!("  (US) {us}\n") };
        text.push_str(&format!("\n{metric}\n{both}"));
    }
    text
}

/// Metric weight, ingredient, US weight, measure, percent, and what goes into each dough.
fn row(line: &Line) -> [String; 6] {
    let note = line.note.as_ref().map(|note| format!(", {note}")).unwrap_or_default();
    let at = line.at.as_ref().map(|at| format!(" {} / {}", at.metric, at.us));
    let at = at.unwrap_or_default();
    let count =
        line.count.as_ref().map(|count| format!(" ({count})")).unwrap_or_default();
    let weight = if line.us_weight == line.metric {
        String::new()
    } else {
        line.us_weight.clone()
    };
    [
        line.metric.clone(),
        format!("{}{at}{count}{note}", line.ingredient),
        weight,
        line.us_measure.clone().unwrap_or_default(),
        line.percent_label.clone().unwrap_or_default(),
        line.each_dough.as_ref().map_or_else(String::new, |each| {
            format!("each dough {} / {}", each.metric, each.us_weight)
        }),
    ]
}
