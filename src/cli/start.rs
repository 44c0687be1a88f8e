//! `tourier start`: a small course to begin from.

use crate::store;

use super::args::{Args, StartArgs};
use super::{Done, Stop, say};

/// Names files of the course to begin from and puts their texts inside the program.
macro_rules! texts {
    ($($path:literal),* $(,)?) => {
        &[$(($path, include_str!(concat!("start/", $path)))),*]
    };
}

/// The course to begin from. Its notes teach the format, so a change of the format has to
/// be made here too; a test publishes it.
const COURSE: &[(&str, &str)] = texts![
    "course.yaml",
    "pantry.yaml",
    "recipes/soft-rolls.md",
    "recipes/corner-pockets.md",
    "techniques/letter-turn.md",
    "classes/first-evening.yaml",
];

/// Writes the course into a new or an empty folder.
pub(super) fn run(args: &Args, options: &StartArgs) -> Done {
    let folder = &options.dir;
    let shown = folder.display();
    if !store::is_vacant(folder)? {
        return Err(Stop::Use(format!(
            "{shown} is not empty, and nothing there is written over; name a new folder, \
             as in `tourier start content`"
        )));
    }
    for (path, text) in COURSE {
        store::save(&folder.join(path), text.as_bytes(), &|| ())?;
    }
    let content = match folder.to_str() {
        Some("content") => String::new(),
        _ => format!(" --content {shown}"),
    };
    let text = format!(
        "a small course stands in {shown}\n\
         see it with:   tourier preview{content}\n\
         make it with:  tourier publish{content}\n"
    );
    if args.quiet { Ok(()) } else { say(text.as_bytes()) }
}
