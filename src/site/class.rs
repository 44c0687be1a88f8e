//! A class's page: days, what is made and what to bring; for its instructor the plan as chart
//! and by the clock, a card for each group and the order too.

use serde::Serialize;

use crate::draw::plan_chart;
use crate::sheet::{ClassSheet, Who};

use super::engine::{Engine, TemplateFault};
use super::html::Html;
use super::instructor::INSTRUCTOR;
use super::overlay::{Sheet, overlaid};
use super::shell::{Head, context};
use super::{Input, Page};

/// A file beside a page: its name, what it is, and the paper of those to print.
pub(super) type File = [&'static str; 3];

/// A class as the template sees it.
#[derive(Serialize)]
struct View<'a> {
    #[serde(flatten)]
    sheet: &'a ClassSheet,
    drawing: Option<Html>,
    /// Its files beside the page.
    files: &'a [File],
    /// The groups' calendars: file, whose.
    calendars: Vec<(String, &'a str)>,
    /// Whether the plan, the order and the papers are on it.
    whole: bool,
}

/// The page of one class, with what everybody may see.
pub(super) fn page(
    input: &Input,
    sheet: &ClassSheet,
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let path = format!("classes/{}/index.html", sheet.class);
    let files = &[SESSIONS];
    let view = View { sheet, drawing: None, files, calendars: Vec::new(), whole: false };
    filled((input, engine), path, &view)
}

/// The page of one class with all that its instructor needs.
pub(super) fn whole_page(
    input: &Input,
    sheet: &ClassSheet,
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let folder = if input.course.papers_on_site { "" } else { INSTRUCTOR };
    let path = format!("{folder}classes/{}/index.html", sheet.class);
    let drawing = sheet.plan.chart.as_ref().map(|chart| {
        let drawing = &plan_chart(chart);
        let sheets = ["m", "u"].map(|unit| Sheet { unit, key: "", drawing });
        Html(overlaid(&sheet.title, &sheets, &[""]))
    });
    let open = [SESSIONS].into_iter().filter(|_| folder.is_empty());
    let files: Vec<File> = PAPERS.into_iter().chain(open).collect();
    let groups = sheet.crews.iter().zip(0..);
    let calendars =
        groups.map(|(name, group)| (calendar_file(Who::Group(group)), name.as_str()));
    let calendars = calendars.collect();
    let view = View { sheet, drawing, files: &files, calendars, whole: true };
    filled((input, engine), path, &view)
}

fn filled(
    (input, engine): (&Input, &Engine),
    path: String,
    view: &View,
) -> Result<Page, TemplateFault> {
    let sessions = view.sheet.sessions.iter();
    let days: Vec<&str> = sessions.map(|session| session.day.as_str()).collect();
    let head = Head {
        path: &path,
        title: &view.sheet.title,
        summary: &input.words.names(&days),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    context.insert("class", view);
    Ok(Page::text(path.clone(), engine.fill("class.html", &context)?))
}

/// When the class is held, for a calendar.
const SESSIONS: File = ["sessions.ics", "sessions", ""];

/// The name of the calendar file of one who takes part in a class.
pub fn calendar_file(who: Who) -> String {
    match who {
        Who::Group(group) | Who::Baker(group, _) => format!("plan-{}.ics", group + 1),
        Who::Instructor | Who::Helper | Who::Home => "plan.ics".to_owned(),
    }
}

/// The instructor's files.
pub(super) const PAPERS: [File; 7] = [
    ["bundle.pdf", "bundle", ""],
    ["run-a4.pdf", "run", "a4"],
    ["run-letter.pdf", "run", "letter"],
    ["lists-a4.pdf", "lists", "a4"],
    ["lists-letter.pdf", "lists", "letter"],
    ["plan.ics", "calendar", ""],
    ["order.csv", "table", ""],
];
