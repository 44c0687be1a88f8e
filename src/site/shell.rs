//! What every page shares: its head, its way home, the switches, the course's name.

use serde::Serialize;
use tera::Context;

use crate::sheet::{CourseSheet, OtherEdition};

use super::html::Html;
use super::instructor::INSTRUCTOR;
use super::{Input, linked};

/// The page for an address that is none.
pub(super) const MISSING: &str = "404.html";

/// What a page says about itself.
pub(super) struct Head<'a> {
    /// Its file, from the site's root.
    pub(super) path: &'a str,
    /// Its title.
    pub(super) title: &'a str,
    /// What it is about, in a sentence.
    pub(super) summary: &'a str,
    /// Its linked data.
    pub(super) linked: Option<serde_json::Value>,
    /// A picture for link previews, from the site's root.
    pub(super) picture: Option<String>,
    /// The pages above it, the nearest last.
    pub(super) trail: Vec<Stop>,
}

/// A page above another one.
#[derive(Clone, Serialize)]
pub(super) struct Stop {
    /// Its title.
    pub(super) title: String,
    /// Its file, from the site's root, with an anchor.
    pub(super) page: String,
}

/// A page's head as the templates see it.
#[derive(Serialize)]
struct Shell<'a> {
    title: &'a str,
    summary: &'a str,
    /// The way to the site's root: empty, `../` or `../../`.
    root: String,
    /// The page's full address, where the course has one.
    canonical: Option<String>,
    /// Whether search engines should pass it by: it is no page anyone looks for.
    hidden: bool,
    /// The same page in the other languages of the course.
    others: Vec<Elsewhere>,
    /// The preview picture's full address, where the course has one.
    picture: Option<String>,
    linked: Option<Html>,
    trail: Vec<Stop>,
    /// Which of the site's own pages it is: `index.html`.
    path: &'a str,
    /// Whether it stands beside the site and is the instructor's alone.
    apart: bool,
    course: &'a CourseSheet,
}

/// A page in another language.
#[derive(Serialize)]
struct Elsewhere {
    language: String,
    name: String,
    /// The way there from this page.
    way: String,
    /// Its full address, where the course has one; else the way there.
    address: String,
}

/// The same page in every other language of the course; none of a page that is in one alone.
fn elsewhere(course: &CourseSheet, path: &str, apart: bool) -> Vec<Elsewhere> {
    let others = course.others.iter().filter(|_| !apart);
    let one = |other: &OtherEdition| {
        let way = format!("{}{}{path}", root(path), other.way);
        let address =
            other.address.as_ref().map(|site| format!("{site}{}", page_address(path)));
        Elsewhere {
            language: other.language.clone(),
            name: other.name.clone(),
            address: address.unwrap_or_else(|| way.clone()),
            way,
        }
    };
    others.map(one).collect()
}

/// One batch size as its switch sees it.
#[derive(Serialize)]
pub(super) struct Size<'a> {
    /// Its key: `x2`.
    pub(super) key: &'a str,
    /// In words: `2 batches`.
    pub(super) title: &'a str,
    /// Whether it is the one shown first.
    pub(super) first: bool,
}

/// A context with what every page shares.
pub(super) fn context(input: &Input, head: Head) -> Context {
    let place =
        |path: &str| input.course.address.as_ref().map(|site| format!("{site}{path}"));
    let (own, apart) = match head.path.strip_prefix(INSTRUCTOR) {
        Some(own) => (own, true),
        None => (head.path, false),
    };
    let hidden = head.path == MISSING || apart;
    let shell = Shell {
        title: head.title,
        summary: head.summary,
        root: root(own),
        canonical: place(&page_address(head.path)).filter(|_| !hidden),
        hidden,
        others: elsewhere(input.course, own, apart),
        picture: head.picture.as_deref().and_then(place),
        linked: head.linked.map(|data| linked::script(&data)),
        trail: head.trail,
        path: own,
        apart,
        course: input.course,
    };
    let mut context = Context::new();
    context.insert("page", &shell);
    context.insert("comma", input.words.get("list-comma"));
    context.insert("colon", input.words.get("list-colon"));
    context
}

/// The way from a page to the site's root.
pub(super) fn root(path: &str) -> String {
    "../".repeat(path.matches('/').count())
}

/// A page's address from the site's root, with its anchor: folders stand for the `index.html` in them.
pub(super) fn page_address(path: &str) -> String {
    let (file, anchor) = path.split_at(path.find('#').unwrap_or(path.len()));
    format!("{}{anchor}", file.strip_suffix("index.html").unwrap_or(file))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_way_home_has_a_step_for_each_folder() {
        assert_eq!(root("index.html"), "");
        assert_eq!(root("recipes/crescents/index.html"), "../../");
        assert_eq!(page_address("recipes/crescents/index.html"), "recipes/crescents/");
        assert_eq!(page_address("404.html"), "404.html");
    }
}
