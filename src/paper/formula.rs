//! The formula as it is printed: ingredient tables, sums, preferment, water.

use serde::Serialize;

use crate::measure::{Label, show};
use crate::sheet::{Line, OverallLine, Sheet, SinceMark, Units};

use super::Job;
use super::setting::bind;

/// The ingredient table.
#[derive(Serialize)]
pub(super) struct Formula {
    /// Whether any line has a second weight, a household measure, a percentage.
    second: bool,
    measure: bool,
    percent: bool,
    /// How many equal doughs it is mixed in.
    doughs: u64,
    /// The head of the column for one of several doughs; none where there is one.
    each: Option<String>,
    sections: Vec<Section>,
    total: [String; 2],
    /// What the sums say about the dough: flour, hydration, one of several doughs.
    sums: Vec<String>,
    /// Remarks on the numbers.
    notes: Vec<String>,
}

#[derive(Serialize)]
struct Section {
    name: String,
    /// Its weight in the chosen units; empty where there is but one section.
    total: String,
    lines: Vec<Row>,
}

#[derive(Serialize)]
struct Row {
    ingredient: String,
    note: Option<String>,
    /// Whether it differs from the edition before.
    changed: bool,
    /// In the chosen units.
    first: String,
    /// In the other ones; empty where there is no weight.
    second: String,
    measure: String,
    percent: String,
    /// For one of several doughs, in the chosen units; empty where it is not divided.
    each: String,
}

/// The ingredient table of a job.
pub(super) fn formula(job: &Job) -> Formula {
    let (sheet, lines) = (job.sheet, &job.sheet.formula);
    let chosen = |label: &Label| bind(job.units.of(label));
    let total = &sheet.totals.weight;
    Formula {
        second: job.course.both_units && lines.iter().any(|line| line.grams.is_some()),
        measure: lines.iter().any(|line| measure(line).is_some()),
        percent: lines.iter().any(|line| line.percent_label.is_some()),
        doughs: sheet.scale.doughs,
        each: (sheet.scale.doughs > 1).then(|| each_dough(job)),
        notes: sheet.notes.iter().map(|note| chosen(&note.text)).collect(),
        sections: sections(job),
        total: [chosen(total), bind(other(job.units).of(total))],
        sums: sums(job),
    }
}

fn each_dough(job: &Job) -> String {
    let count = job.sheet.scale.doughs.to_string();
    job.words.fill("handout-each-dough", &[("count", &count)])
}

fn other(units: Units) -> Units {
    match units {
        Units::Metric => Units::Us,
        Units::Us => Units::Metric,
    }
}

fn sections(job: &Job) -> Vec<Section> {
    let (sheet, units) = (job.sheet, job.units);
    let mut sections: Vec<Section> = Vec::new();
    let marks = sheet.since.iter().flat_map(|since| &since.marks);
    let marked: Vec<usize> = marks
        .filter_map(|mark| match mark {
            SinceMark::Line { line } => Some(*line),
            SinceMark::Step { .. } => None,
        })
        .collect();
    for (at, line) in sheet.formula.iter().enumerate() {
        if sections.last().is_none_or(|last| last.name != line.section) {
            let (name, lines) = (line.section.clone(), Vec::new());
            let total = section_total(sheet, &name, units);
            sections.push(Section { name, total, lines });
        }
        if let Some(last) = sections.last_mut() {
            let changed = marked.contains(&at);
            last.lines.push(Row { changed, ..row(line, job) });
        }
    }
    sections
}

fn section_total(sheet: &Sheet, name: &str, units: Units) -> String {
    let totals = &sheet.totals.sections;
    let found = totals.iter().find(|total| total.section == name && total.grams > 0.0);
    found.map_or_else(String::new, |total| bind(units.of(&total.weight)))
}

fn row(line: &Line, job: &Job) -> Row {
    let units = job.units;
    let weights = [&line.metric, &line.us_column].map(|weight| bind(weight));
    let [metric, us] = weights;
    let (first, second) = match units {
        Units::Metric => (metric, us),
        Units::Us => (us, metric),
    };
    let each = line.each_dough.as_ref().map(|each| match units {
        Units::Metric => bind(&each.metric),
        Units::Us => bind(&each.us_weight),
    });
    Row {
        each: each.unwrap_or_default(),
        ingredient: line.ingredient.clone(),
        note: note(line, job),
        changed: false,
        first,
        second: if line.grams.is_some() { second } else { String::new() },
        measure: measure(line).map_or_else(String::new, bind),
        percent: line.percent_label.as_deref().map_or_else(String::new, bind),
    }
}

/// `at 43 °C, from the tap`: the line's own temperature, then its note.
fn note(line: &Line, job: &Job) -> Option<String> {
    let at = line.at.as_ref().map(|at| bind(job.units.of(at)));
    let said: Vec<String> = at.into_iter().chain(line.note.clone()).collect();
    (!said.is_empty()).then(|| job.words.list(&said))
}

/// The count where whole pieces come to it, else the household measure.
fn measure(line: &Line) -> Option<&str> {
    line.count.as_deref().or(line.us_measure.as_deref())
}

fn sums(job: &Job) -> Vec<String> {
    let totals = &job.sheet.totals;
    let flour = (totals.flour_g > 0.0).then(|| {
        let flour = bind(job.units.of(&totals.flour));
        job.words.fill("handout-flour", &[("flour", &flour)])
    });
    let hydration = totals.hydration_percent.map(|percent| {
        let percent = bind(&show::whole_percent(percent, job.words));
        let key = if totals.true_hydration {
            "handout-true-hydration"
        } else {
            "handout-hydration"
        };
        job.words.fill(key, &[("percent", &percent)])
    });
    let each = totals.each_dough.as_ref().map(|each| {
        let values = [("name", &*each_dough(job)), ("value", &*bind(job.units.of(each)))];
        job.words.fill("named-value", &values)
    });
    flour.into_iter().chain(hydration).chain(each).collect()
}

/// The preferment inside the overall formula.
#[derive(Serialize)]
pub(super) struct PrefermentData {
    section: String,
    sums: Vec<String>,
    lines: Vec<[String; 4]>,
}

/// Each preferment both ways.
pub(super) fn preferments(job: &Job) -> Vec<PrefermentData> {
    job.sheet.preferments.iter().map(|it| preferment(it, job)).collect()
}

fn preferment(it: &crate::sheet::Preferment, job: &Job) -> PrefermentData {
    let percent = |percent: f64| bind(&show::whole_percent(percent, job.words));
    let say = |key, value: &str| job.words.fill(key, &[("percent", value)]);
    let sums = vec![
        say("handout-preferment-flour", &percent(it.flour_percent)),
        say("handout-hydration", &percent(it.hydration_percent)),
    ];
    let row = |line: &OverallLine| {
        let amount = |label: &Label| bind(job.units.of(label));
        [
            line.ingredient.clone(),
            amount(&line.preferment),
            amount(&line.dough),
            bind(&line.percent_label),
        ]
    };
    let lines = it.overall.iter().map(row).collect();
    PrefermentData { section: it.section.clone(), sums, lines }
}

/// The sentence about the water's temperature.
pub(super) fn water(job: &Job) -> Option<String> {
    let water = job.sheet.water.as_ref()?;
    let chosen = |label: &Label| bind(job.units.of(label));
    let (dough, tap) = (chosen(&water.desired), chosen(&water.water));
    let ice = water.ice.as_ref().map(chosen).unwrap_or_default();
    let key = if ice.is_empty() { "handout-water" } else { "handout-water-ice" };
    Some(job.words.fill(key, &[("dough", &dough), ("water", &tap), ("ice", &ice)]))
}

/// The water's temperature and its ice alone, for a card at the station.
pub(super) fn water_alone(job: &Job) -> Option<String> {
    let water = job.sheet.water.as_ref()?;
    let tap = bind(job.units.of(&water.water));
    let Some(ice) = &water.ice else { return Some(tap) };
    let ice = bind(job.units.of(ice));
    Some(job.words.fill("handout-water-alone-ice", &[("water", &tap), ("ice", &ice)]))
}
