//! A technique's page.

use serde::Serialize;

use crate::sheet::{Demo, TechniqueSheet};

use super::engine::{Engine, TemplateFault};
use super::figure::{Drawing, of_technique};
use super::glossary::GlossaryLinks;
use super::html::Html;
use super::picture::stages;
use super::prose::Writer;
use super::shell::{Head, context, root};
use super::{Input, Page, course, linked};

/// A technique as the template sees it.
#[derive(Serialize)]
struct View<'a> {
    title: &'a str,
    /// The language of title and summary, where it is not the page's.
    title_in: Option<&'a str>,
    summary: &'a str,
    content: Html,
    drawings: Vec<Drawing>,
    /// The pictures of a shaping's stages; empty where there are none.
    stages: Html,
    used_in: Vec<Use<'a>>,
}

/// A recipe that uses the technique.
#[derive(Serialize)]
struct Use<'a> {
    /// Its page, from the site's root.
    page: String,
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
}

/// The page of one technique.
pub(super) fn page(
    input: &Input,
    technique: &TechniqueSheet,
    engine: &Engine,
) -> Result<Page, TemplateFault> {
    let path = format!("techniques/{}/index.html", technique.technique);
    let head = Head {
        path: &path,
        title: &technique.title,
        summary: &technique.summary,
        linked: linked::technique(input.course, technique),
        picture: None,
        trail: course::trail(input.course, &technique.technique),
    };
    let mut context = context(input, head);
    context.insert("technique", &view(input, technique, &root(&path)));
    let text = engine.fill("technique.html", &context)?;
    Ok(Page::text(path, text))
}

fn view<'a>(input: &Input, technique: &'a TechniqueSheet, root: &str) -> View<'a> {
    let glossary = GlossaryLinks::new(&input.course.glossary);
    let writer = Writer {
        root,
        keys: &[""],
        level: 2,
        words: input.words,
        media: input.media,
        glossary: Some(&glossary),
    };
    let used_in = technique.used_in.iter().map(|it| Use {
        page: format!("recipes/{}/index.html", it.recipe),
        title: &it.title,
        title_in: it.title_in.as_deref(),
    });
    let shapes = technique.demonstrations.iter().filter_map(|demo| match demo {
        Demo::Shape(fact) => Some(&fact.pictures),
        Demo::LockIn(_)
        | Demo::Fold(_)
        | Demo::Cut(_)
        | Demo::Roll(_)
        | Demo::Tray(_)
        | Demo::Growth(_) => None,
    });
    let pictures: Vec<_> = shapes.flatten().cloned().collect();
    View {
        title: &technique.title,
        title_in: technique.title_in.as_deref(),
        summary: &technique.summary,
        content: writer.write(&[&technique.content]),
        drawings: of_technique(input.figures, &technique.technique),
        stages: stages(input.media, &pictures, root),
        used_in: used_in.collect(),
    }
}
