//! The content worked out with the texts as they are open, by a thread of its own: whoever
//! types never waits for it, and what is worked out next is always the newest.

use std::collections::BTreeMap;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};

use lsp_server::Request;

use crate::edition::Edition;
use crate::words::Words;

use super::Open;
use super::texts::Texts;

/// The content, worked out with the texts that were open.
pub(super) struct Worked {
    /// The content, read and checked.
    pub(super) edition: Edition,
    /// The words of its language.
    pub(super) words: Words,
    /// The numbers of the open texts that it was made with.
    pub(super) versions: BTreeMap<String, i64>,
}

/// What the two threads share.
#[derive(Default)]
pub(super) struct Shared {
    /// The texts that are open.
    pub(super) texts: Texts,
    /// Whether the texts have changed since the content was worked out.
    pub(super) changed: bool,
    /// Whether what stands on disk may have.
    pub(super) on_disk: bool,
    /// What was asked and is answered when the content is worked out with the newest texts.
    pub(super) asked: Vec<Request>,
    /// The content as it was worked out last.
    pub(super) worked: Option<Arc<Worked>>,
    /// Whether the editor is gone.
    pub(super) over: bool,
}

/// The desk between the two threads.
#[derive(Default)]
pub(super) struct Desk {
    shared: Mutex<Shared>,
    news: Condvar,
}

/// What the thread that works has to do.
pub(super) struct Task {
    /// The texts to work out, where they have changed, and whether the disk is to be read.
    pub(super) texts: Option<(Texts, bool)>,
    /// What is then to be answered.
    pub(super) asked: Vec<Request>,
}

impl Desk {
    /// Changes what is shared, and tells the other thread.
    pub(super) fn with<T>(&self, change: impl FnOnce(&mut Shared) -> T) -> T {
        let changed = change(&mut self.lock());
        self.news.notify_all();
        changed
    }

    /// Waits for something to do; `None` when the editor is gone.
    pub(super) fn next(&self) -> Option<Task> {
        let mut shared = self.lock();
        while !shared.changed && shared.asked.is_empty() && !shared.over {
            shared = self.news.wait(shared).unwrap_or_else(PoisonError::into_inner);
        }
        if shared.over {
            return None;
        }
        let on_disk = std::mem::take(&mut shared.on_disk);
        let changed = std::mem::take(&mut shared.changed);
        let texts = changed.then(|| (shared.texts.clone(), on_disk));
        Some(Task { texts, asked: std::mem::take(&mut shared.asked) })
    }

    /// A thread that broke while it looked does no harm to what is shared.
    fn lock(&self) -> MutexGuard<'_, Shared> {
        self.shared.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// The content worked out with these texts; nothing where it cannot be opened at all.
pub(super) fn work(open: &Open, texts: &Texts, on_disk: bool) -> Option<Worked> {
    let laid = texts.iter().map(|(file, text)| (file.clone(), text.words.clone()));
    let opened = open(&laid.collect(), on_disk)?;
    let versions =
        texts.iter().map(|(file, text)| (file.clone(), text.version)).collect();
    Some(Worked { edition: opened.edition, words: opened.words, versions })
}
