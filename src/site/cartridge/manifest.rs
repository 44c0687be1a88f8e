//! The package's table of contents, and the links in it.

use std::collections::BTreeMap;

use crate::sheet::LessonSheet;
use crate::site::html::escape;
use crate::site::{Card, Input, Page, find, glossary};

/// The namespaces of version 1.3.
const SPACES: &str = "xmlns=\"http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1\" \
     xmlns:lomimscc=\"http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest\"";
/// The namespace of a link.
const LINK: &str = "http://www.imsglobal.org/xsd/imsccv1p3/imswl_v1p3";
/// The identifier of what all pages need.
const ASSETS: &str = "assets";

/// A link to a page of the site.
struct Link {
    /// The recipe.
    recipe: String,
    /// What it is called.
    title: String,
    address: String,
}

/// The table of contents of one package.
pub(super) struct Manifest<'a> {
    input: &'a Input<'a>,
    cards: BTreeMap<&'a str, &'a Card>,
    /// Each page's number.
    pages: BTreeMap<&'a str, usize>,
    assets: Vec<String>,
    links: Vec<Link>,
    /// Each link's number by its recipe.
    numbers: BTreeMap<String, usize>,
}

impl<'a> Manifest<'a> {
    /// The table of contents for files of the site.
    pub(super) fn new(
        input: &'a Input<'a>,
        cards: &'a [Card],
        paths: &'a [String],
    ) -> Self {
        let paths = || paths.iter().map(String::as_str);
        let pictures = input.media.iter().flat_map(|medium| {
            medium.widths().into_iter().map(|width| medium.address(width))
        });
        let pages = paths().filter(|path| path.ends_with(".html"));
        let pages = pages.enumerate().map(|(at, path)| (path, at)).collect();
        let others = paths().filter(|path| !path.ends_with(".html"));
        let assets = others.map(str::to_owned).chain(pictures).collect();
        let by_name = cards.iter().map(|card| (card.recipe.as_str(), card)).collect();
        let links = links(input, cards);
        let number = |(at, link): (usize, &Link)| (link.recipe.clone(), at);
        let numbers = links.iter().enumerate().map(number).collect();
        Self { input, cards: by_name, pages, assets, links, numbers }
    }

    /// The manifest, first, and the links.
    pub(super) fn files(&self) -> Vec<Page> {
        let links = self.links.iter().map(|link| {
            let (title, address) = (escape(&link.title), escape(&link.address));
            let text = format!(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<webLink xmlns=\"{LINK}\">\
                 <title>{title}</title><url href=\"{address}\"/></webLink>\n"
            );
            Page::text(link_file(&link.recipe), text)
        });
        let manifest = Page::text("imsmanifest.xml", self.manifest());
        std::iter::once(manifest).chain(links).collect()
    }

    fn manifest(&self) -> String {
        let course = self.input.course;
        let said = |tag: &str, text: &str| {
            let (text, language) = (escape(text), escape(&course.language));
            format!(
                "<lomimscc:{tag}><lomimscc:string language=\"{language}\">{text}</lomimscc:string></lomimscc:{tag}>"
            )
        };
        format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<manifest identifier=\"course\" {SPACES}>\n\
             <metadata><schema>IMS Common Cartridge</schema>\
             <schemaversion>1.3.0</schemaversion>\n<lomimscc:lom><lomimscc:general>{}{}\
             </lomimscc:general></lomimscc:lom></metadata>\n<organizations>\n\
             <organization identifier=\"lessons\" structure=\"rooted-hierarchy\">\n\
             <item identifier=\"root\">\n{}</item>\n</organization>\n</organizations>\n\
             <resources>\n{}</resources>\n</manifest>\n",
            said("title", &course.title),
            said("description", &course.summary),
            self.items(),
            self.resources(),
        )
    }

    /// The course's page, the lessons in order, then what serves them all.
    fn items(&self) -> String {
        let course = self.input.course;
        let lessons = course.lessons.iter().enumerate();
        let lessons: String =
            lessons.map(|(at, lesson)| self.lesson(at, lesson)).collect();
        let words = self.input.words;
        let also = [(glossary::PAGE, "page-words"), (find::PATH, "page-find")];
        let also = also.map(|(path, key)| self.item(path, words.get(key))).concat();
        self.item("index.html", &course.title) + &lessons + &also
    }

    fn lesson(&self, at: usize, lesson: &LessonSheet) -> String {
        let recipes = lesson.recipes.iter().map(|name| self.recipe(at, name));
        let techniques = lesson.techniques.iter().filter_map(|name| {
            let one = self.input.techniques.iter().find(|one| one.technique == *name)?;
            let path = format!("techniques/{name}/index.html");
            Some(self.taught(at, &path, &one.title))
        });
        let items: String = recipes.chain(techniques).collect();
        let title = match lesson.title.as_str() {
            "" => self.input.words.get("page-also"),
            title => title,
        };
        format!(
            "<item identifier=\"lesson-{at}\"><title>{}</title>\n{items}</item>\n",
            escape(title)
        )
    }

    /// A recipe's page and the link to its handouts.
    fn recipe(&self, at: usize, name: &str) -> String {
        let Some(card) = self.cards.get(name) else { return String::new() };
        let path = format!("recipes/{name}/index.html");
        let page = self.taught(at, &path, &card.title);
        let link = self.numbers.get(name).copied();
        let link = link.map(|number| {
            let title = escape(&self.links[number].title);
            format!(
                "<item identifier=\"lesson-{at}-link-{number}\" identifierref=\"link-{number}\">\
                 <title>{title}</title></item>\n"
            )
        });
        page + &link.unwrap_or_default()
    }

    /// An item that may stand in several lessons.
    fn taught(&self, at: usize, path: &str, title: &str) -> String {
        let Some(page) = self.page(path) else { return String::new() };
        item(&format!("lesson-{at}-page-{page}"), page, title)
    }

    fn item(&self, path: &str, title: &str) -> String {
        self.page(path)
            .map_or(String::new(), |page| item(&format!("page-{page}-item"), page, title))
    }

    fn page(&self, path: &str) -> Option<usize> {
        self.pages.get(path).copied()
    }

    fn resources(&self) -> String {
        let mut pages: Vec<(usize, &str)> =
            self.pages.iter().map(|(path, at)| (*at, *path)).collect();
        pages.sort_unstable();
        let pages = pages.into_iter().map(|(at, path)| {
            let path = escape(path);
            format!(
                "<resource identifier=\"page-{at}\" type=\"webcontent\" href=\"{path}\">\
                 <file href=\"{path}\"/><dependency identifierref=\"{ASSETS}\"/></resource>\n"
            )
        });
        let files =
            self.assets.iter().map(|path| format!("<file href=\"{}\"/>", escape(path)));
        let assets = format!(
            "<resource identifier=\"{ASSETS}\" type=\"webcontent\">{}</resource>\n",
            files.collect::<String>()
        );
        let links = self.links.iter().enumerate().map(|(at, link)| {
            let file = escape(&link_file(&link.recipe));
            format!(
                "<resource identifier=\"link-{at}\" type=\"imswl_xmlv1p3\"><file href=\"{file}\"/></resource>\n"
            )
        });
        pages.chain([assets]).chain(links).collect()
    }
}

fn item(identifier: &str, page: usize, title: &str) -> String {
    format!(
        "<item identifier=\"{identifier}\" identifierref=\"page-{page}\"><title>{}</title></item>\n",
        escape(title)
    )
}

fn link_file(recipe: &str) -> String {
    format!("links/{recipe}.xml")
}

/// A link to the handouts of each recipe, where the site has an address.
fn links(input: &Input, cards: &[Card]) -> Vec<Link> {
    let Some(site) = &input.course.address else { return Vec::new() };
    cards
        .iter()
        .map(|card| Link {
            recipe: card.recipe.clone(),
            title: format!("{}: {}", card.title, input.words.get("page-handouts")),
            address: format!("{site}recipes/{}/#handouts", card.recipe),
        })
        .collect()
}
