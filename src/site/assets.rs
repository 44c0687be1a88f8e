//! The files that are no pages: style sheet, script, typefaces, icon and sitemap.

use std::collections::BTreeSet;

use crate::draw::style_rules;

use super::find::PATH;
use super::glossary::PAGE;
use super::html::escape;
use super::shell::page_address;
use super::{Card, Input, Page};

/// The theme's files for the site.
pub(super) fn files(input: &Input) -> Vec<Page> {
    let theme = input.theme;
    let mut files = Vec::new();
    for name in ["tourier.js", "icon.svg"] {
        let text = theme.text(&format!("site/{name}")).to_owned();
        files.push(Page::text(format!("assets/{name}"), text));
    }
    // The typefaces and, as their licence asks, its text beside them.
    let fonts = theme
        .below("fonts/")
        .filter(|path| [".woff2", ".txt"].iter().any(|end| path.ends_with(end)));
    files.extend(fonts.map(|path| Page {
        path: format!("assets/{path}"),
        bytes: theme.bytes(path).unwrap_or_default().to_vec(),
    }));
    files
}

/// The style sheet: the drawings' inks, which the theme may change; the theme's own; and a
/// rule for each batch size that any recipe has: the chosen one hides what belongs to the
/// others.
pub(super) fn style(input: &Input, cards: &[Card]) -> Page {
    let keys: BTreeSet<&str> =
        cards.iter().flat_map(|card| &card.batches).map(String::as_str).collect();
    let rules = keys.iter().map(|key| {
        format!("body:has(#{key}:checked) .b:not(.b-{key}) {{ display: none; }}\n")
    });
    let mut style = style_rules();
    style.push_str(input.theme.text("site/style.css"));
    style.extend(rules);
    Page::text("assets/tourier.css", style)
}

/// The list of all pages for search engines, where the site's address is known.
pub(super) fn sitemap(input: &Input, cards: &[Card]) -> Option<Page> {
    let site = input.course.address.as_deref()?;
    let date = input.course.date.as_ref();
    let date =
        date.map_or(String::new(), |date| format!("<lastmod>{}</lastmod>", escape(date)));
    let recipes = cards.iter().map(|card| format!("recipes/{}/", card.recipe));
    let techniques =
        input.techniques.iter().map(|one| format!("techniques/{}/", one.technique));
    let words = (!input.course.glossary.is_empty()).then_some(PAGE);
    let fixed = ["index.html", PATH, "print/index.html"].into_iter().chain(words);
    let classes =
        input.course.classes.iter().map(|class| format!("classes/{}/", class.class));
    let urls: String = fixed
        .map(page_address)
        .chain(recipes)
        .chain(techniques)
        .chain(classes)
        .map(|path| {
            format!("<url><loc>{}</loc>{date}</url>\n", escape(&format!("{site}{path}")))
        })
        .collect();
    let space = "http://www.sitemaps.org/schemas/sitemap/0.9";
    let xml = format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<urlset xmlns=\"{space}\">\n{urls}</urlset>\n"
    );
    Some(Page::text("sitemap.xml", xml))
}
