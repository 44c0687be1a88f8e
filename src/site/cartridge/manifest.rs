//! The package's table of contents, and the links in it.

use crate::sheet::LessonSheet;
use crate::site::html::escape;
use crate::site::{Input, Page, find, trade};

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
    pages: Vec<&'a str>,
    assets: Vec<String>,
    links: Vec<Link>,
}

impl<'a> Manifest<'a> {
    /// The table of contents for `files` of the site.
    pub(super) fn new(input: &'a Input<'a>, files: &'a [Page]) -> Self {
        let paths = || files.iter().map(|file| file.path.as_str());
        let pictures = input.media.iter().flat_map(|medium| {
            medium.widths().into_iter().map(|width| medium.address(width))
        });
        let pages = paths().filter(|path| path.ends_with(".html")).collect();
        let others = paths().filter(|path| !path.ends_with(".html"));
        let assets = others.map(str::to_owned).chain(pictures).collect();
        Self { input, pages, assets, links: links(input) }
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
        let also = [(trade::PAGE, "page-words"), (find::PATH, "page-find")];
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
        let found = self.input.recipes.iter().find(|one| one.base.recipe == name);
        let Some(found) = found else { return String::new() };
        let path = format!("recipes/{name}/index.html");
        let page = self.taught(at, &path, &found.base.title);
        let link = self.links.iter().position(|link| link.recipe == name);
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
        self.pages.iter().position(|page| *page == path)
    }

    fn resources(&self) -> String {
        let pages = self.pages.iter().enumerate().map(|(at, path)| {
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

/// A link to the handouts of each recipe that has some, where the site has an address.
fn links(input: &Input) -> Vec<Link> {
    let Some(site) = &input.course.address else { return Vec::new() };
    let has = |recipe: &str| input.handouts.iter().any(|one| one.recipe == recipe);
    let sheets = input.recipes.iter().map(|one| &one.base);
    sheets
        .filter(|sheet| has(&sheet.recipe))
        .map(|sheet| Link {
            recipe: sheet.recipe.clone(),
            title: format!("{}: {}", sheet.title, input.words.get("page-handouts")),
            address: format!("{site}recipes/{}/#handouts", sheet.recipe),
        })
        .collect()
}
