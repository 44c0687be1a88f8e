//! The desk: the texts of the course written in the browser, beside the page that they make.
//!
//! What the desk does is asked for by calls with a key, which only the address has that the
//! program names (`request.rs` lets nobody else through). It reads and saves texts of the
//! course through `store`, which knows what such a text is and where one lies, and makes
//! editions of what is typed and not yet saved.

mod call;
mod differing;
mod form;
mod here;
mod picture;
mod press;
mod sides;
mod typed;

use std::path::PathBuf;
use std::sync::Arc;

use hyper::StatusCode;

use super::answer::Answer;
use super::page::{self, OWN};
use super::{Preview, Publish, Since};

use press::Press;
use typed::Desktop;

/// What the desk does is asked for below this name.
pub(super) const CALLS: &str = ".preview/desk/do/";
/// Its own files stand below this name of the preview's.
const FILES: &str = "desk/";
/// What pages of an edition share stands below this name, and what stands for its state.
const LOOK: &str = "look/";
/// A call may bring so many bytes: every text of a large recipe folder, and no more.
const MOST: usize = 8 << 20;

const PAGE: &str = include_str!("page/desk.html");
/// What the page is made of besides.
const PARTS: [(&str, &str); 21] = [
    ("calls.js", include_str!("page/calls.js")),
    ("commits.js", include_str!("page/commits.js")),
    ("desk.css", include_str!("page/desk.css")),
    ("desk.js", include_str!("page/desk.js")),
    ("class.js", include_str!("page/class.js")),
    ("differs.js", include_str!("page/differs.js")),
    ("dialog.js", include_str!("page/dialog.js")),
    ("drafts.js", include_str!("page/drafts.js")),
    ("earlier.js", include_str!("page/earlier.js")),
    ("editor.js", include_str!("editor/editor.js")),
    ("faults.js", include_str!("page/faults.js")),
    ("offers.js", include_str!("page/offers.js")),
    ("phrases.js", include_str!("page/phrases.js")),
    ("seen.js", include_str!("page/seen.js")),
    ("begin.js", include_str!("page/begin.js")),
    ("fields.js", include_str!("page/fields.js")),
    ("picture.js", include_str!("page/picture.js")),
    ("publish.js", include_str!("page/publish.js")),
    ("swap.js", include_str!("page/swap.js")),
    ("step.js", include_str!("page/step.js")),
    ("view.js", include_str!("page/view.js")),
];

/// A desk: where it writes, who may call it, and what is typed at it.
pub struct Desk {
    content: PathBuf,
    /// What a call must say.
    pub(super) key: String,
    desktop: Desktop,
    press: Arc<Press>,
    since: Since,
}

/// That the machine gives nothing that cannot be guessed.
#[derive(Debug)]
pub struct NoKey(pub String);

impl Desk {
    /// A desk for the texts below `content`, which has the course published by `publish`, and
    /// opened as it was then by `since`.
    ///
    /// # Errors
    /// Where the machine gives nothing that cannot be guessed.
    pub fn new(content: PathBuf, publish: Publish, since: Since) -> Result<Self, NoKey> {
        let mut key = [0; 24];
        getrandom::fill(&mut key).map_err(|error| NoKey(error.to_string()))?;
        let key = crate::encode::hex(&key);
        let press = Arc::new(Press::new(publish));
        Ok(Self { content, key, desktop: Desktop::default(), press, since })
    }

    /// The address below the preview's own, of the desk itself or of the course, from which
    /// the desk is come by. What stands behind the sign is told to nobody.
    pub fn address(&self, itself: bool) -> String {
        let path = if itself { format!("{OWN}{FILES}") } else { String::new() };
        format!("{path}#{}", self.key)
    }
}

/// So many bytes a call of that name may bring.
pub(super) fn most(name: &str) -> usize {
    if name.starts_with(picture::CALL) { picture::MOST } else { MOST }
}

/// A file of the desk's own, or of what is typed at it; `None` where there is none.
pub(super) fn read(preview: &Preview, name: &str) -> Option<Answer> {
    let desk = preview.desk.as_ref()?;
    if let Some(path) = name.strip_prefix("typed/") {
        return desk.desktop.read(path);
    }
    if let Some(path) = name.strip_prefix(LOOK) {
        return desk.desktop.shared(path);
    }
    let name = name.strip_prefix(FILES)?;
    if name.is_empty() {
        return Some(Answer::page(StatusCode::OK, desk_page(preview)));
    }
    let (name, text) = PARTS.iter().find(|(part, _)| *part == name)?;
    Some(Answer::file(name, text.as_bytes().to_vec()))
}

/// A page of what is typed, with what lets it and the desk follow each other. What it shares
/// with other pages it has from where that is kept by its state.
fn page_typed(page: &str, look: &str) -> String {
    let roots = ["", "../", "../../", "../../../"];
    let page = roots.iter().fold(page.to_owned(), |page, root| {
        let kept = |attribute: &str| format!("{attribute}=\"/{OWN}{LOOK}{look}/assets/");
        let of = |attribute: &str| format!("{attribute}=\"{root}assets/");
        let page = page.replace(&of("href"), &kept("href"));
        page.replace(&of("src"), &kept("src"))
    });
    let script = format!("<script src=\"/.preview/{FILES}seen.js\" defer></script>\n");
    page::insert(&page, "</head>", &script)
}

/// The desk's page, in the words of the course. Its script gets them as data.
fn desk_page(preview: &Preview) -> String {
    let words = preview.show().words.clone();
    let said = words.all().filter(|(key, _)| key.starts_with("desk-"));
    let said: std::collections::BTreeMap<&str, &str> = said.collect();
    let said = serde_json::to_string(&said).unwrap_or_default();
    PAGE.replace("{language}", &crate::encode::escape(&words.language))
        .replace("{title}", &crate::encode::escape(words.get("desk-title")))
        .replace("{words}", &said.replace('<', "\\u003c"))
}

pub(super) use call::call;
