//! `tourier start`: a small course to begin from.

use std::path::Path;

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

/// What keeps the site, and what a stopped publish leaves beside it, out of a repository.
const IGNORE: &str = "# What tourier publish makes.\n/output/\n.*.tourier-*\n";

/// Writes `.gitignore` where the site will be made, if there is none: here, where the course
/// lies below. What is to be said of it.
fn ignore(folder: &Path) -> Result<&'static str, Stop> {
    let here = Path::new(".gitignore");
    let elsewhere = folder.is_absolute() || folder.starts_with("..");
    if elsewhere || folder == Path::new(".") || here.exists() {
        return Ok("");
    }
    store::save(here, IGNORE.as_bytes(), &|| ())?;
    Ok("a .gitignore here leaves out what publish makes\n")
}

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
    // The site never lies in the content: it goes beside it.
    let beside = if folder == Path::new(".") { " --to ../site" } else { "" };
    let content = if folder.components().eq(Path::new("content").components()) {
        String::new()
    } else if shown.to_string().contains(char::is_whitespace) {
        format!(" --content \"{shown}\"")
    } else {
        format!(" --content {shown}")
    };
    let ignored = ignore(folder)?;
    let text = format!(
        "a small course stands in {shown}\n\
         {ignored}\
         see it with:   tourier preview{content}\n\
         make it with:  tourier publish{content}{beside}\n"
    );
    if args.quiet { Ok(()) } else { say(text.as_bytes()) }
}
