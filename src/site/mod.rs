//! The course site: every page of it, from the computed sheets and a theme's templates.
//!
//! Nothing here works out a number or opens a file. What changes with the batch or the
//! unit system is in the page at every size and in both systems; style rules show one.

mod assets;
mod card;
mod cartridge;
mod class;
mod course;
mod engine;
mod feed;
mod figure;
mod find;
mod glossary;
mod html;
mod instructor;
mod lacking;
mod linked;
mod offline;
mod overlay;
mod picture;
mod print;
mod prose;
mod recipe;
mod shell;
mod technique;
mod vary;
mod words;

#[cfg(test)]
mod sample;

pub use card::Card;
pub use cartridge::{Cartridge, PACKAGE};
pub use class::calendar_file;
pub use engine::TemplateFault;
pub use figure::{Drawn, FigureMap};
pub use instructor::INSTRUCTOR;
pub use lacking::{Lacking, Unpacked};
pub use offline::{ICONS, WORKER};

use std::collections::BTreeMap;
use std::io::{Read, Seek, Write};

use rayon::prelude::*;

use crate::draw::Figure;
use crate::media::Medium;
use crate::sheet::{
    ClassSheet, CourseSheet, HandoutLink, NotesSheet, Outline, RecipeSheets,
    TechniqueSheet,
};
use crate::theme::Theme;
use crate::words::Words;

use engine::Engine;

/// Everything that the site is made from but the recipes.
#[derive(Clone, Copy)]
pub struct Input<'a> {
    /// The course.
    pub course: &'a CourseSheet,
    /// Every recipe's name and steps, by its file name.
    pub outlines: &'a BTreeMap<String, Outline>,
    /// Every technique.
    pub techniques: &'a [TechniqueSheet],
    /// The techniques' drawings.
    pub figures: &'a dyn Drawn,
    /// The pictures.
    pub media: &'a [Medium],
    /// Every handout that is made, by recipe.
    pub handouts: &'a [HandoutLink],
    /// What was noted at the bench: shown in the instructor's room alone.
    pub notes: &'a [NotesSheet],
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

/// What can be read from any place in it.
pub trait Legible: Read + Seek {}

impl<T: Read + Seek> Legible for T {}

/// What can be written to at any place in it.
pub trait Written: Write + Seek {}

impl<T: Write + Seek> Written for T {}

/// Files of an edition, for those that are made from other files.
pub trait EditionFiles: Sync {
    /// The bytes of a file of this edition.
    ///
    /// # Errors
    /// The reason, where there is none or it cannot be read.
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking>;

    /// A file of the edition before; `None` where there is none, or no such edition.
    fn before(&self, _path: &str) -> Option<Box<dyn Legible>> {
        None
    }

    /// Whether a file is the same as in the edition before.
    fn stands(&self, _path: &str) -> bool {
        false
    }
}

/// No edition at all: enough for what is made from no other file.
impl EditionFiles for () {
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking> {
        Err(Lacking::NoFile(path.to_owned()))
    }
}

/// The site of a course: what it is made from, and its templates. The same input gives the
/// same bytes. Each function fails with the first template that cannot be filled in.
pub struct Site<'a> {
    input: Input<'a>,
    engine: Engine,
}

impl<'a> Site<'a> {
    /// The site with the templates of the theme.
    ///
    /// # Errors
    /// The first template that cannot be read, with its line.
    pub fn new(input: Input<'a>) -> Result<Self, TemplateFault> {
        Ok(Self { input, engine: Engine::new(input.theme, input.words)? })
    }

    /// The page of one recipe, with its drawings by batch key.
    ///
    /// # Errors
    /// The template that cannot be filled in, with its line.
    pub fn recipe(
        &self,
        sheets: &RecipeSheets,
        figures: &[(String, Vec<Figure>)],
    ) -> Result<Page, TemplateFault> {
        recipe::page(&self.input, sheets, figures, &self.engine)
    }

    /// What everybody may see of one class.
    ///
    /// # Errors
    /// The template that cannot be filled in, with its line.
    pub fn class(&self, sheet: &ClassSheet) -> Result<Page, TemplateFault> {
        class::page(&self.input, sheet, &self.engine)
    }

    /// The page of one class with all that its instructor needs.
    ///
    /// # Errors
    /// The template that cannot be filled in, with its line.
    pub fn whole_class(&self, sheet: &ClassSheet) -> Result<Page, TemplateFault> {
        class::whole_page(&self.input, sheet, &self.engine)
    }

    /// The pages and assets that stand beside the site: the instructor's own print room; none
    /// where all stands on the site, or there is no class.
    ///
    /// # Errors
    /// The template that cannot be filled in, with its line.
    pub fn instructor_room(&self) -> Result<Vec<Page>, TemplateFault> {
        instructor::room(&self.input, &self.engine)
    }

    /// Every page and file that says nothing of the recipes.
    ///
    /// # Errors
    /// The first template that cannot be filled in, with its line.
    pub fn course_pages(&self) -> Result<Vec<Page>, TemplateFault> {
        let (input, engine) = (&self.input, &self.engine);
        let techniques = input.techniques.par_iter();
        let mut pages = techniques
            .map(|one| technique::page(input, one, engine))
            .collect::<Result<Vec<_>, _>>()?;
        pages.push(course::missing(input, engine)?);
        pages.extend(words::page(input, engine)?);
        pages.extend(feed::feed(input));
        pages.extend(assets::files(input));
        pages.extend(input.course.offline.then(|| offline::card(input)));
        Ok(pages)
    }

    /// Every page and file that tells of all recipes.
    ///
    /// # Errors
    /// The first template that cannot be filled in, with its line.
    pub fn listing_pages(&self, cards: &[Card]) -> Result<Vec<Page>, TemplateFault> {
        let (input, engine) = (&self.input, &self.engine);
        let mut pages = vec![
            course::page(input, cards, engine)?,
            print::page(input, cards, engine)?,
            find::page(input, cards, engine)?,
            find::index(input, cards),
            assets::style(input, cards),
        ];
        pages.extend(assets::sitemap(input, cards));
        Ok(pages)
    }

    /// Of these files of the site, those that a phone keeps before anybody asks for them;
    /// none where the course has not asked for that.
    pub fn kept(&self, paths: &[&str]) -> Vec<String> {
        let kept = paths.iter().filter(|path| offline::is_kept(path));
        let kept = kept.filter(|_| self.input.course.offline);
        kept.map(|path| (*path).to_owned()).collect()
    }

    /// The worker that keeps these files.
    ///
    /// # Errors
    /// The reason, where one of them is not there.
    pub fn worker(
        &self,
        paths: &[String],
        files: &dyn EditionFiles,
    ) -> Result<Vec<u8>, Lacking> {
        offline::worker(&self.input, paths, files)
    }

    /// The package for learning platforms of a site that has these files, in order.
    pub fn cartridge(&self, cards: &[Card], paths: &[&str]) -> Cartridge {
        Cartridge::new(&self.input, cards, paths)
    }
}

#[cfg(test)]
mod tests {
    use super::sample::Sample;
    use std::io::Cursor;

    use zip::ZipArchive;

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
            "assets/course.webmanifest",
            "assets/find.js",
            "assets/tourier.js",
            "find/index.html",
            "index.html",
            "news.xml",
            "offline.js",
            "print/index.html",
            "recipes/crescents/index.html",
            "sitemap.xml",
            "techniques/letter-turn/index.html",
            "words/index.html",
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
    fn a_page_says_when_to_begin_and_what_to_set_a_clock_for() {
        let page = Sample::new().page("recipes/crescents/index.html");
        assert!(page.contains("id=\"ready-18\""));
        assert!(page.contains("<span class=\"t t-18\">17:30</span>"));
        assert!(page.contains("data-minutes=\"60\""));
    }

    #[test]
    fn pictures_keep_their_room() {
        let page = Sample::new().page("recipes/crescents/index.html");
        let picture = "<img src=\"../../media/loaf-480.png\" srcset=\"../../media/loaf-480.png \
                       480w, ../../media/loaf-960.png 960w, ../../media/loaf-1200.png 1200w\"";
        assert!(page.contains(picture));
        assert!(page.contains("width=\"1200\" height=\"800\" alt=\"A brown loaf\""));
    }

    #[test]
    fn what_is_kept_on_a_phone_is_known_by_its_hash() {
        let sample = Sample::new();
        let worker = sample.page("offline.js");
        for page in sample.pages().unwrap_or_default() {
            let own = page.path == "offline.js" || page.path.ends_with(".webmanifest");
            let kept = worker.contains(&format!("\"{}\":", page.path));
            assert_eq!(kept, !own && !page.path.ends_with(".xml"), "{}", page.path);
        }
    }

    #[test]
    fn the_feed_names_each_thing_once() {
        let feed = Sample::new().page("news.xml");
        let id = "<id>https://layers.saltmarsh.example/#news-2027-02-15-1</id>";
        assert!(feed.contains(id), "{feed}");
        assert!(feed.contains("<title>The crescents are new.</title>"));
    }

    #[test]
    fn the_package_holds_the_pages_in_order_and_always_the_same() {
        let sample = Sample::new();
        let packed = || sample.package().unwrap_or_default();
        let mut zip = ZipArchive::new(Cursor::new(packed())).expect("a package");
        let mut text = String::new();
        for at in 0..zip.len() {
            let mut file = zip.by_index(at).expect("a file");
            let _ = file.read_to_string(&mut text);
        }
        for part in [
            "<schemaversion>1.3.0</schemaversion>",
            "<title>Butter between sheets</title>",
            "href=\"recipes/crescents/index.html\"",
            "type=\"imswl_xmlv1p3\"",
        ] {
            assert!(text.contains(part), "{part}");
        }
        assert!(!text.contains("data-offline=") && !text.contains(".pdf\""));
        assert_eq!(packed(), packed());
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
        let made = pages.iter().map(|page| page.path.clone());
        let handouts = sample.handouts.iter().map(|one| one.path("crescents"));
        let pictures = sample
            .media
            .iter()
            .flat_map(|one| one.widths().into_iter().map(|width| one.address(width)));
        let package = std::iter::once(cartridge::PACKAGE.to_owned());
        let files: Vec<String> =
            made.chain(handouts).chain(pictures).chain(package).collect();
        for page in pages.iter().filter(|page| page.path.ends_with(".html")) {
            let text = String::from_utf8_lossy(&page.bytes).into_owned();
            let marks = [" href=\"", " src=\""];
            let links = marks.iter().flat_map(|mark| text.split(mark).skip(1));
            let links = links.filter_map(|rest| rest.split(['"', '#']).next());
            for link in
                links.filter(|link| !link.is_empty() && !link.starts_with("https:"))
            {
                let file = resolved(&page.path, link);
                assert!(files.contains(&file), "{link} in {}", page.path);
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
