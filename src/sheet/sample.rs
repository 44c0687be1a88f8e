//! A course for the tests of those who paint sheets.

use super::{CourseSheet, Look};

/// A course of the demonstration's name.
pub(crate) fn course() -> CourseSheet {
    CourseSheet {
        classes: Vec::new(),
        title: "Layers by Hand".into(),
        school: Some("Saltmarsh Community Kitchen".into()),
        instructor: Some("Orla Venning".into()),
        summary: "An evening course in doughs that rise by folding.".into(),
        language: "en".into(),
        edition: Some("Spring 2027".into()),
        date: Some("2027-02-15".into()),
        address: Some("https://layers.saltmarsh.example/".into()),
        metric_first: true,
        both_units: true,
        a4_first: true,
        currency: "EUR".into(),
        lessons: Vec::new(),
        laws: Vec::new(),
        cautions: Vec::new(),
        look: Look::default(),
        news: Vec::new(),
        glossary: Vec::new(),
        offline: false,
        papers_on_site: false,
        others: Vec::new(),
    }
}
