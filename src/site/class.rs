//! A class's page: the plan as chart and by the clock, a card for each group, the order
//! and the weigh-out.

use serde::Serialize;

use crate::draw::plan_chart;
use crate::sheet::ClassSheet;

use super::engine::{Engine, TemplateFault};
use super::html::Html;
use super::overlay::{Sheet, overlaid};
use super::shell::{Head, context};
use super::{Input, Page};

/// A class as the template sees it.
#[derive(Serialize)]
struct View<'a> {
    #[serde(flatten)]
    sheet: &'a ClassSheet,
    drawing: Option<Html>,
    /// Its files beside the page: name and what they are.
    files: [[&'static str; 3]; 6],
}

/// The page of one class.
pub(super) fn page(
    input: &Input,
    sheet: &ClassSheet,
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let path = format!("classes/{}/index.html", sheet.class);
    let days: Vec<&str> =
        sheet.sessions.iter().map(|session| session.day.as_str()).collect();
    let head = Head {
        path: &path,
        title: &sheet.title,
        summary: &days.join(", "),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    let drawing = sheet.plan.chart.as_ref().map(|chart| {
        let drawing = &plan_chart(chart);
        let sheets = ["m", "u"].map(|unit| Sheet { unit, key: "", drawing });
        Html(overlaid(&sheet.title, &sheets, &[""]))
    });
    context.insert("class", &View { sheet, drawing, files: FILES });
    Ok(Page::text(path, engine.fill("class.html", &context)?))
}

/// The files that stand beside the page: what they are, and the paper of those to print.
const FILES: [[&str; 3]; 6] = [
    ["run-a4.pdf", "run", "a4"],
    ["run-letter.pdf", "run", "letter"],
    ["lists-a4.pdf", "lists", "a4"],
    ["lists-letter.pdf", "lists", "letter"],
    ["plan.ics", "calendar", ""],
    ["order.csv", "table", ""],
];
