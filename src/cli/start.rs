//! `tourier start`: a small course to begin from.

use std::path::Path;

use crate::said;
use crate::store;

use super::args::StartArgs;
use super::{Call, Done, Stop, content_option};

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
const IGNORE: &str =
    "# What tourier publish makes.\n/output/\n/output-instructor/\n.*.tourier-*\n";

/// Writes `.gitignore` where the site will be made, if there is none: here, where the course
/// lies below. Whether it was written.
fn ignore(folder: &Path) -> Result<bool, Stop> {
    let here = Path::new(".gitignore");
    let elsewhere = folder.is_absolute() || folder.starts_with("..");
    if elsewhere || folder == Path::new(".") || here.exists() {
        return Ok(false);
    }
    store::save(here, IGNORE.as_bytes(), &|| ())?;
    Ok(true)
}

/// Writes the course into a new or an empty folder.
pub(super) fn run(call: &Call, options: &StartArgs) -> Done {
    let folder = &options.dir;
    let shown = folder.display().to_string();
    if !store::is_vacant(folder)? {
        return Err(Stop::Use(said!("start-not-empty", folder = shown)));
    }
    for (path, text) in COURSE {
        store::save(&folder.join(path), text.as_bytes(), &|| ())?;
    }
    // The site never lies in the content: it goes beside it.
    let beside = if folder == Path::new(".") { " --to ../site" } else { "" };
    let content = content_option(folder);
    let ignored = ignore(folder)?;
    if call.args.quiet {
        return Ok(());
    }
    call.say(&said!("start-stands", folder = shown))?;
    if ignored {
        call.say(&said!("start-ignored"))?;
    }
    call.say(&said!("start-see", content))?;
    call.say(&said!("start-make", content, beside))
}
