//! The instructor's own print room: what stands beside the site, in a folder that needs
//! nothing of it.

use serde::Serialize;

use super::class::{File, PAPERS};
use super::engine::{Engine, TemplateFault};
use super::shell::{Head, context};
use super::{Input, Page, assets};

/// Begins the path of what is the instructor's alone: it stands in a folder beside the site,
/// and these paths are counted from there.
pub const INSTRUCTOR: &str = "instructor/";

/// One class as the template sees it.
#[derive(Serialize)]
pub(super) struct Evening<'a> {
    class: &'a str,
    title: &'a str,
    when: &'a str,
    files: [File; 7],
}

/// Every class with its papers, in the order of their first sessions.
pub(super) fn evenings<'a>(input: &Input<'a>) -> Vec<Evening<'a>> {
    let classes = input.course.classes.iter();
    let evening = classes.map(|one| Evening {
        class: &one.class,
        title: &one.title,
        when: &one.when,
        files: PAPERS,
    });
    evening.collect()
}

/// The room's page, and what pages there look like.
pub(super) fn room(input: &Input, engine: &Engine) -> Result<Vec<Page>, TemplateFault> {
    let evenings = evenings(input);
    // Where the papers stand on the site, the notes still do not.
    let evenings = if input.course.papers_on_site { Vec::new() } else { evenings };
    if evenings.is_empty() && input.notes.is_empty() {
        return Ok(Vec::new());
    }
    let path = format!("{INSTRUCTOR}index.html");
    let head = Head {
        path: &path,
        title: input.words.get("page-instructor"),
        summary: input.words.get("page-instructor-help"),
        linked: None,
        picture: None,
        trail: Vec::new(),
    };
    let mut context = context(input, head);
    context.insert("evenings", &evenings);
    context.insert("notes", &input.notes);
    let page = Page::text(path.clone(), engine.fill("instructor.html", &context)?);
    let looks = assets::files(input).into_iter().chain([assets::style(input, &[])]);
    let looks = looks.filter(|file| !file.path.ends_with(".js"));
    let beside = |file: Page| Page { path: format!("{INSTRUCTOR}{}", file.path), ..file };
    Ok(std::iter::once(page).chain(looks.map(beside)).collect())
}
