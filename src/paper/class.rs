//! Papers of a class: the run sheet with a card for each group, and the lists for the day
//! before.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::draw::{PlanChart, plan_chart_wide};
use crate::sheet::{ClassSheet, CourseSheet, Look, Paper};
use crate::words::Words;

use super::code::{self, Code};
use super::data::{Course, cleaned, language, own_words};
use super::{PaperFault, Press};

/// Which paper of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ClassPaper {
    /// The class by the clock, for the instructor, and a card for each group.
    Run,
    /// Order and weigh-out.
    Lists,
}

#[derive(Serialize)]
struct Data<'a> {
    kind: ClassPaper,
    paper: Paper,
    words: BTreeMap<&'a str, &'a str>,
    language: &'a str,
    region: Option<&'a str>,
    title: &'a str,
    summary: String,
    course: Course<'a>,
    look: &'a Look,
    /// Whether amounts stand in both units side by side.
    both_units: bool,
    /// The code of the class's page.
    code: Option<Code>,
    class: Class<'a>,
}

/// A class with its plan drawn for paper turned on its side.
#[derive(Serialize)]
struct Class<'a> {
    #[serde(flatten)]
    sheet: &'a ClassSheet,
    wide: Option<PlanChart>,
}

impl Press {
    /// A paper of a class as PDF.
    ///
    /// # Errors
    /// As [`Press::print`].
    pub fn class(
        &self,
        sheet: &ClassSheet,
        course: &CourseSheet,
        words: &Words,
        (kind, paper): (ClassPaper, Paper),
    ) -> Result<Vec<u8>, PaperFault> {
        let (language, region) = language(&course.language);
        let days = sheet.sessions.iter().map(|session| session.day.as_str());
        let data = Data {
            kind,
            paper,
            words: own_words(words),
            language,
            region,
            title: &sheet.title,
            summary: words.names(&days.collect::<Vec<_>>()),
            course: Course::new(course, words),
            look: &course.look,
            both_units: course.both_units,
            code: code::class(&sheet.class, course, words),
            class: Class { sheet, wide: sheet.plan.chart.as_ref().map(plan_chart_wide) },
        };
        self.print(cleaned(&data, self.glyphs()).to_string().as_bytes())
    }
}
