//! `tourier draft`: a draft in our format from a recipe that exists.

use std::path::PathBuf;

use crate::draft::{Draft, draft};
use crate::store;

use super::args::{Args, DraftArgs};
use super::{Done, Stop, say};

/// Writes the draft, and says what its author has to settle.
pub(super) fn run(args: &Args, options: &DraftArgs) -> Done {
    let text = store::text_of(&options.file).map_err(use_of)?;
    let course =
        if args.content.is_dir() { store::load(&args.content)?.0 } else { Vec::new() };
    let shown = options.file.display();
    let draft =
        draft(&text, &course).map_err(|why| Stop::Use(format!("{shown}: {why}")))?;
    if options.to.as_ref().is_some_and(|to| to.as_os_str() == "-") {
        return say(draft.text.as_bytes());
    }
    let to = options.to.clone().unwrap_or_else(|| home(args, &draft));
    if to.exists() {
        let to = to.display();
        return Err(Stop::Use(format!(
            "{to} is there already, and nothing is written over; name another file with `--to`"
        )));
    }
    store::save(&to, draft.text.as_bytes(), &|| ())?;
    if args.quiet {
        Ok(())
    } else {
        say(report(&draft, &to.display().to_string()).as_bytes())
    }
}

/// A file that cannot be read as text is wrong use; anything else is the machine's.
fn use_of(error: store::StoreError) -> Stop {
    match error.source.kind() {
        std::io::ErrorKind::InvalidData | std::io::ErrorKind::NotFound => {
            Stop::Use(error.to_string())
        }
        _ => error.into(),
    }
}

fn home(args: &Args, draft: &Draft) -> PathBuf {
    args.content.join("recipes").join(format!("{}.md", draft.name))
}

/// What was written, and what is left to settle.
fn report(draft: &Draft, to: &str) -> String {
    let mut text = format!("a draft stands in {to}\n");
    match draft.doubts.len() {
        0 => text += "nothing in it is in doubt; read it through all the same\n",
        1 => text += "one thing is to be settled:\n",
        count => text += &format!("{count} things are to be settled:\n"),
    }
    for doubt in &draft.doubts {
        text += &format!("  - {doubt}\n");
    }
    text + "see what else there is to say:  tourier proof\n"
}
