//! Several courses published by one command, each to a folder of its own, side by side. What
//! one of them lacks stops no other.

use std::path::{Component, Path, PathBuf};

use crate::said;
use crate::store;

use super::args::{CONTENT, PublishArgs};
use super::publish::one;
use super::{Call, Done, Stop, tell_stop};

/// Publishes each of these courses below the output folder, and says at the end how many
/// stand and which do not.
pub(super) fn several(call: &Call, courses: &[PathBuf], options: &PublishArgs) -> Done {
    let places = places(courses)?;
    let mut failed: Vec<(String, Stop)> = Vec::new();
    for (content, name) in courses.iter().zip(&places) {
        let call = call.of(content);
        let shown = content.display().to_string();
        // Who asked for a stop asked for it once.
        if store::is_halted() {
            failed.push((shown, Stop::Machine(said!("publish-not-begun"))));
            continue;
        }
        if !call.args.quiet {
            call.note(&said!("publish-of", content = shown));
        }
        let to = Some(options.folder().join(name));
        if let Err(stop) = one(&call, &PublishArgs { to, ..options.clone() }) {
            match &stop {
                Stop::Faults => {}
                Stop::Use(message) | Stop::Machine(message) => {
                    tell_stop(message, &call.words);
                }
            }
            failed.push((shown, stop));
        }
    }
    ended(call, courses.len(), failed)
}

/// The last word: all stand, or those that do not, with the gravest reason as the exit code.
fn ended(call: &Call, all: usize, failed: Vec<(String, Stop)>) -> Done {
    if failed.is_empty() {
        if call.args.quiet {
            return Ok(());
        }
        return call.say(&said!("publish-all", count = all));
    }
    let (names, stops): (Vec<String>, Vec<Stop>) = failed.into_iter().unzip();
    let summary = said!("publish-some", count = all - names.len(), all, names);
    let gravest = stops.into_iter().max_by_key(grave);
    match gravest {
        None | Some(Stop::Faults) => {
            call.note(&summary);
            Err(Stop::Faults)
        }
        Some(Stop::Use(_)) => Err(Stop::Use(summary)),
        Some(Stop::Machine(_)) => Err(Stop::Machine(summary)),
    }
}

/// What a machine refuses weighs more than what was typed, and that more than a text.
fn grave(stop: &Stop) -> u8 {
    match stop {
        Stop::Faults => 1,
        Stop::Use(_) => 2,
        Stop::Machine(_) => 3,
    }
}

/// The folder's name of each course; no two the same, also where capitals do not count.
fn places(courses: &[PathBuf]) -> Result<Vec<String>, Stop> {
    let mut names: Vec<String> = Vec::new();
    for (at, content) in courses.iter().enumerate() {
        let whole = std::path::absolute(content).unwrap_or_else(|_| content.clone());
        let name = name(&whole);
        let same = |other: &String| other.to_lowercase() == name.to_lowercase();
        if let Some(other) = names.iter().position(same) {
            let [one, other] = [other, at].map(|at| courses[at].display().to_string());
            return Err(Stop::Use(said!("publish-same-name", one, other, name)));
        }
        names.push(name);
    }
    Ok(names)
}

/// A course's name by its content folder: that of the folder, or of the one that holds it
/// where it is called `content`, as most are.
fn name(content: &Path) -> String {
    let mut names: Vec<String> = Vec::new();
    for part in content.components() {
        match part {
            Component::Normal(name) => names.push(name.to_string_lossy().into_owned()),
            Component::ParentDir => {
                names.pop();
            }
            Component::Prefix(_) | Component::RootDir | Component::CurDir => {}
        }
    }
    let last = names.pop();
    let usual = last.as_deref().is_none_or(|name| name == CONTENT);
    let name = if usual { names.pop().or(last) } else { last };
    name.unwrap_or_else(|| CONTENT.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_course_is_called_after_its_folder() {
        let cases = [
            ("/school/bread", "bread"),
            ("/school/bread/content", "bread"),
            ("/school/bread/content/.", "bread"),
            ("/school/bread/../pastry/content", "pastry"),
            ("/content", "content"),
            ("/", "content"),
        ];
        for (path, wanted) in cases {
            assert_eq!(name(Path::new(path)), wanted, "{path}");
        }
    }

    #[test]
    fn two_of_one_name_are_refused() {
        let all =
            |paths: &[&str]| places(&paths.iter().map(PathBuf::from).collect::<Vec<_>>());
        assert!(all(&["/a/bread", "/b/Bread/content"]).is_err());
        assert!(all(&["/a/bread", "/a/bread"]).is_err());
        let names = all(&["/a/bread", "/a/pastry"]).ok();
        assert_eq!(names, Some(vec!["bread".to_owned(), "pastry".to_owned()]));
    }
}
