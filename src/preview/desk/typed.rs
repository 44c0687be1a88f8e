//! Editions of what is typed and not yet saved, each below a name of its own.

use std::collections::VecDeque;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use hyper::StatusCode;
use serde_json::json;

use crate::product::INSTRUCTOR;

use super::super::answer::Answer;
use super::super::served::{First, Served};
use super::super::{Preview, finding, server};
use super::call::{Done, Sent};
use super::{Desk, page_typed, sides};

/// So many editions of what was typed can still be looked at: those of two desks, and of
/// the page that is just leaving.
const MOST: usize = 4;

/// The editions of what was typed last.
#[derive(Default)]
pub(super) struct Desktop {
    next: AtomicU64,
    made: Mutex<VecDeque<(String, Arc<Served>)>>,
}

impl Desktop {
    /// Takes in an edition and says its name.
    fn lay(&self, served: Served) -> String {
        let name = self.next.fetch_add(1, Ordering::Relaxed).to_string();
        let mut made = self.made();
        made.push_back((name.clone(), Arc::new(served)));
        if made.len() > MOST {
            made.pop_front();
        }
        name
    }

    /// The edition that was made last.
    pub(super) fn newest(&self) -> Option<Arc<Served>> {
        self.made().back().map(|(_, served)| served.clone())
    }

    fn find(&self, name: &str) -> Option<Arc<Served>> {
        let made = self.made();
        made.iter().find(|(known, _)| known == name).map(|(_, served)| served.clone())
    }

    fn made(&self) -> MutexGuard<'_, VecDeque<(String, Arc<Served>)>> {
        self.made.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// A file of such an edition.
    pub(super) fn read(&self, path: &str) -> Option<Answer> {
        let (name, path) = path.split_once('/')?;
        let served = self.find(name)?;
        let path = open_to(&served, path);
        let side = sides::read(&served, path);
        let page = |page: &str| page_typed(page, &served.look);
        Some(side.unwrap_or_else(|| server::file(&served, path, &page)))
    }

    /// A file that all pages share, by what stands for its state: so the browser need not
    /// fetch it anew with every letter that is typed.
    pub(super) fn shared(&self, path: &str) -> Option<Answer> {
        let (look, path) = path.split_once('/')?;
        let made = self.made();
        let found = made.iter().rev().find(|(_, served)| served.look == look);
        let served = found.map(|(_, served)| served.clone())?;
        drop(made);
        let shared = path.starts_with("assets/");
        shared.then(|| server::file(&served, path, &str::to_owned).lasting())
    }
}

/// What is the instructor's alone stands on the site itself where the course says so.
fn open_to<'a>(served: &Served, path: &'a str) -> &'a str {
    let page = if path.ends_with('/') { "index.html" } else { "" };
    match path.strip_prefix(INSTRUCTOR) {
        Some(open) if matches!(served.order(&format!("{path}{page}")), Ok(None)) => open,
        Some(_) | None => path,
    }
}

/// Makes an edition of what is typed; with an error in it there is none, and the last one
/// stays on show.
pub(super) fn take(preview: &Preview, desk: &Desk, sent: &Sent) -> Done {
    let answer = match preview.made(&sent.texts, First::Of(sent.path.clone())) {
        Ok(served) => {
            let (findings, path) = (served.findings.clone(), sent.path.clone());
            let outline = served.look(move |edition| finding::outline(edition, &path));
            let edition = desk.desktop.lay(served);
            json!({ "edition": edition, "findings": findings, "outline": outline })
        }
        Err(stopped) => json!({ "edition": null, "findings": stopped.findings }),
    };
    Ok((StatusCode::OK, answer))
}
