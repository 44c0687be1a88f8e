//! `tourier editor`: speaks with an editor while someone writes in it.

use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use crate::editor::{Edge, Laid, Open, Opened, serve};
use crate::said;
use crate::statement::machine;
use crate::theme::Theme;

use super::{COURSE, Call, Done, Loaded, Pictures, Stop, loaded, opened, words};

/// Answers until the editor ends.
pub(super) fn run(call: &Call) -> Done {
    let content = &call.content;
    // An editor names files by their full paths.
    let named = content.canonicalize().ok().filter(|folder| folder.is_dir());
    let theme = call.args.theme.clone();
    let edge = Edge {
        named,
        holds: Box::new(|folder| folder.join(COURSE).is_file()),
        open: Box::new(move |folder| open(folder, theme.clone())),
    };
    serve(&edge)
        .map_err(|error| Stop::Machine(said!("editor-broken", error = machine(&error))))
}

/// Opens a content folder with texts laid over it. What stands on disk is read when that is
/// asked for, and else as it was.
fn open(folder: PathBuf, theme: Option<PathBuf>) -> Open {
    let last: Mutex<Option<Loaded>> = Mutex::new(None);
    Box::new(move |laid, on_disk| {
        let mut last = last.lock().unwrap_or_else(PoisonError::into_inner);
        if on_disk || last.is_none() {
            *last = loaded(theme.as_deref(), &folder, &Pictures::default()).ok();
        }
        over(last.as_ref()?, laid, &folder)
    })
}

fn over(loaded: &Loaded, laid: &Laid, folder: &Path) -> Option<Opened> {
    let loaded = loaded.clone().with(laid);
    let (edition, theme): (_, Theme) = opened(loaded, folder).ok()?;
    let words = words(&theme, &edition).ok()?;
    Some(Opened { edition, words })
}
