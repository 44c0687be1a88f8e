//! `tourier draft`: a draft in our format from a recipe that exists.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::draft::{Draft, draft};
use crate::said;
use crate::store;

use super::args::DraftArgs;
use super::{COURSE, Call, Done, Stop, content_option, here, say};

/// Writes the draft, and says what its author has to settle.
pub(super) fn run(call: &Call, options: &DraftArgs) -> Done {
    let text = store::text_of(&options.file).map_err(use_of)?;
    // Within a course a draft would make a second one where the folder is not named.
    if options.to.is_none() && Path::new(COURSE).exists() {
        here(&call.content)?;
    }
    let course =
        if call.content.is_dir() { store::load(&call.content)?.0 } else { Vec::new() };
    let shown = options.file.display().to_string();
    let draft = draft(&text, &course).map_err(|why| {
        Stop::Use(said!("draft-cannot", file = shown, why = why.said()))
    })?;
    if options.to.as_ref().is_some_and(|to| to.as_os_str() == "-") {
        return say(draft.text.as_bytes());
    }
    let to = options.to.clone().unwrap_or_else(|| home(call, &draft));
    if to.exists() {
        let to = to.display().to_string();
        return Err(Stop::Use(said!("draft-there", to)));
    }
    store::save(&to, draft.text.as_bytes(), &|| ())?;
    if call.args.quiet { Ok(()) } else { report(call, &draft, &to) }
}

/// A file that cannot be read as text is wrong use; anything else is the machine's.
fn use_of(error: store::StoreError) -> Stop {
    match error.kind() {
        None | Some(ErrorKind::NotFound) => Stop::Use(error.said()),
        Some(_) => error.into(),
    }
}

fn home(call: &Call, draft: &Draft) -> PathBuf {
    call.content.join("recipes").join(format!("{}.md", draft.name))
}

/// What was written, and what is left to settle.
fn report(call: &Call, draft: &Draft, to: &Path) -> Done {
    let (to, count) = (to.display().to_string(), draft.doubts.len());
    call.say(&said!("draft-stands", to))?;
    match count {
        0 => call.say(&said!("draft-sure"))?,
        _ => call.say(&said!("draft-to-settle", count))?,
    }
    for doubt in &draft.doubts {
        say(format!("  - {doubt}\n").as_bytes())?;
    }
    call.say(&said!("draft-next", content = content_option(&call.content)))
}
