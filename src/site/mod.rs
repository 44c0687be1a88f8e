//! The course site: every page of it, from the computed sheets and a theme's templates.
//!
//! Nothing here works out a number or opens a file. What changes with the batch or the
//! unit system is in the page at every size and in both systems; style rules show one.

mod assets;
mod class;
mod course;
mod engine;
mod figure;
mod html;
mod linked;
mod overlay;
mod print;
mod prose;
mod recipe;
mod shell;
mod technique;
mod vary;

#[cfg(test)]
mod sample;

pub use class::class_page;
pub use engine::TemplateFault;
pub use figure::FigureMap;

use rayon::prelude::*;

use crate::sheet::{CourseSheet, HandoutLink, RecipeSheets, TechniqueSheet};
use crate::theme::Theme;
use crate::words::Words;

use engine::Engine;

/// Everything that the site is made from.
#[derive(Clone, Copy)]
pub struct Input<'a> {
    /// The course.
    pub course: &'a CourseSheet,
    /// Every recipe at every batch size.
    pub recipes: &'a [RecipeSheets],
    /// Every technique.
    pub techniques: &'a [TechniqueSheet],
    /// The drawings by recipe and batch key, or by technique and an empty key.
    pub figures: &'a FigureMap,
    /// Every handout that is made.
    pub handouts: &'a [HandoutLink],
    /// The fixed words.
    pub words: &'a Words,
    /// The theme: its templates, style sheet, script and typefaces.
    pub theme: &'a Theme,
}

/// One file of the site.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Page {
    /// Where it stands, from the site's root, with forward slashes.
    pub path: String,
    /// Its content.
    pub bytes: Vec<u8>,
}

impl Page {
    fn text(path: impl Into<String>, text: String) -> Self {
        Self { path: path.into(), bytes: text.into_bytes() }
    }
}

/// Every file of the site, by path. The same input gives the same bytes.
///
/// # Errors
/// The first template that cannot be read or filled in, with its line.
pub fn pages(input: &Input) -> Result<Vec<Page>, TemplateFault> {
    let engine = Engine::new(input.theme, input.words)?;
    let recipes =
        input.recipes.par_iter().map(|sheets| recipe::page(input, sheets, &engine));
    let techniques =
        input.techniques.par_iter().map(|one| technique::page(input, one, &engine));
    let mut pages = recipes.chain(techniques).collect::<Result<Vec<_>, _>>()?;
    pages.push(course::page(input, &engine)?);
    pages.push(print::page(input, &engine)?);
    pages.push(course::missing(input, &engine)?);
    pages.extend(assets::sitemap(input));
    pages.extend(assets::files(input));
    pages.sort_by(|one, other| one.path.cmp(&other.path));
    Ok(pages)
}

#[cfg(test)]
mod tests {
    use super::sample::Sample;
    use super::*;

    #[test]
    fn every_page_is_there_and_always_the_same() -> Result<(), TemplateFault> {
        let pages = Sample::new().pages()?;
        let paths: Vec<&str> = pages.iter().map(|page| page.path.as_str()).collect();
        for path in [
            "404.html",
            "assets/fonts/Vollkorn-Regular.woff2",
            "assets/icon.svg",
            "assets/tourier.css",
            "assets/tourier.js",
            "index.html",
            "print/index.html",
            "recipes/crescents/index.html",
            "sitemap.xml",
            "techniques/letter-turn/index.html",
        ] {
            assert!(paths.contains(&path), "{path} in {paths:?}");
        }
        assert!(pages.iter().all(|page| !page.bytes.is_empty()));
        assert_eq!(pages, Sample::new().pages()?);
        Ok(())
    }

    #[test]
    fn every_size_and_both_systems_are_in_the_page() {
        let page = Sample::new().page("recipes/crescents/index.html");
        for value in ["500 g", "1000 g", "190 °C", "375 °F", "24 crescents", "1280 g"] {
            assert!(page.contains(value), "{value}");
        }
        assert!(page.contains("id=\"us\"") && page.contains("id=\"x2\""));
    }

    #[test]
    fn marks_typed_by_the_author_are_shown_as_typed() {
        let page = Sample::new().page("recipes/crescents/index.html");
        assert!(page.contains("&lt;b&gt;Ham&lt;/b&gt; &amp; {{ cheese }}."));
    }

    #[test]
    fn nothing_in_a_page_needs_a_script_or_a_style_of_its_own() {
        let pages = Sample::new().pages().unwrap_or_default();
        for page in pages.iter().filter(|page| page.path.ends_with(".html")) {
            let text = String::from_utf8_lossy(&page.bytes);
            assert!(
                !text.contains("<style") && !text.contains(" style=\""),
                "{}",
                page.path
            );
            assert!(
                !text.contains(" onclick=") && !text.contains("<script>"),
                "{}",
                page.path
            );
            assert!(
                text.contains("default-src &#39;self&#39;")
                    || text.contains("default-src 'self'")
            );
        }
    }

    /// From a disk as from a server: no link of a page begins at a root, and each leads
    /// to a file of the site.
    #[test]
    fn every_link_leads_somewhere() {
        let sample = Sample::new();
        let pages = sample.pages().unwrap_or_default();
        let made = pages.iter().map(|page| page.path.as_str());
        let files: Vec<&str> =
            made.chain(sample.handouts.iter().map(|one| one.path.as_str())).collect();
        for page in pages.iter().filter(|page| page.path.ends_with(".html")) {
            let text = String::from_utf8_lossy(&page.bytes).into_owned();
            let marks = [" href=\"", " src=\""];
            let links = marks.iter().flat_map(|mark| text.split(mark).skip(1));
            let links = links.filter_map(|rest| rest.split(['"', '#']).next());
            for link in
                links.filter(|link| !link.is_empty() && !link.starts_with("https:"))
            {
                let file = resolved(&page.path, link);
                assert!(files.contains(&file.as_str()), "{link} in {}", page.path);
            }
        }
    }

    /// The file that `link` means on the page at `path`.
    fn resolved(path: &str, link: &str) -> String {
        let mut parts: Vec<&str> = path.split('/').collect();
        parts.pop();
        for part in link.split('/') {
            match part {
                ".." => drop(parts.pop()),
                part => parts.push(part),
            }
        }
        parts.join("/")
    }

    #[test]
    fn no_word_of_the_templates_is_missing() {
        let pages = Sample::new().pages().unwrap_or_default();
        for page in pages.iter().filter(|page| page.path.ends_with(".html")) {
            let text = String::from_utf8_lossy(&page.bytes);
            assert!(!text.contains("page-"), "{}", page.path);
        }
    }

    /// No template may declare text safe: only this room makes HTML.
    #[test]
    fn templates_escape_everything() {
        let theme = Theme::built_in();
        for path in theme.below("site/").filter(|path| path.ends_with(".html")) {
            assert!(!theme.text(path).contains("safe"), "{path}");
        }
    }
}
