//! Files that look as if they were meant for the course and that nobody reads: another
//! ending, another folder, a name one letter off.

use crate::fault::{Fault, Place, nearest};
use crate::said;

/// The texts at the top, without their ending.
const TOP: [&str; 3] = ["course", "pantry", "glossary"];
/// The folders of texts, and the ending that theirs have.
const FOLDERS: [(&str, &str); 3] =
    [("recipes", "md"), ("techniques", "md"), ("classes", "yaml")];

/// The caution about a file that is not read and was perhaps meant to be.
pub(super) fn unread(path: &str) -> Option<Fault> {
    let better = better(path)?;
    let message = said!("unread-file");
    Some(
        Fault::caution("unread-file", &Place::file(path), message)
            .help(said!("unread-file-help", better)),
    )
}

/// The name under which such a file would be read; `None` where it is none of ours.
fn better(path: &str) -> Option<String> {
    let (folders, file) =
        path.rsplit_once('/').map_or((None, path), |(of, file)| (Some(of), file));
    let (stem, ending) = file.rsplit_once('.')?;
    let kind = kind(ending)?;
    let Some(folders) = folders else { return at_the_top(stem, kind) };
    let first = folders.split('/').next().unwrap_or(folders);
    let near = nearest(first, FOLDERS.map(|(folder, _)| folder))?;
    // A folder in a folder that is not ours is someone else's.
    if near != first && folders.contains('/') {
        return None;
    }
    let (folder, own) = FOLDERS.iter().find(|(folder, _)| *folder == near)?;
    (*own == kind).then(|| format!("{folder}/{stem}.{own}"))
}

fn at_the_top(stem: &str, kind: &str) -> Option<String> {
    if kind == "yaml" {
        let name = nearest(stem, TOP)?;
        return Some(format!("{name}.yaml"));
    }
    (!stem.eq_ignore_ascii_case("readme")).then(|| format!("recipes/{stem}.md"))
}

/// The kind of text that an ending stands for.
fn kind(ending: &str) -> Option<&'static str> {
    match ending.to_ascii_lowercase().as_str() {
        "md" | "markdown" | "mdown" => Some("md"),
        "yaml" | "yml" => Some("yaml"),
        _ => None,
    }
}

#[cfg(test)]
mod tests {

    #[test]
    fn each_slip_is_answered_with_the_name_that_is_read() {
        for (path, better) in [
            ("recipes/d.MD", Some("recipes/d.md")),
            ("recipes/e.markdown", Some("recipes/e.md")),
            ("recipes/buns/a.md", Some("recipes/a.md")),
            ("techniques/folds/t.md", Some("techniques/t.md")),
            ("c.md", Some("recipes/c.md")),
            ("receipes/b.md", Some("recipes/b.md")),
            ("recipe/b.md", Some("recipes/b.md")),
            ("pantry.yml", Some("pantry.yaml")),
            ("panty.yaml", Some("pantry.yaml")),
            ("Course.yaml", Some("course.yaml")),
            ("classes/x.yml", Some("classes/x.yaml")),
            ("README.md", None),
            ("notes.txt", None),
            ("past/autumn/course.yaml", None),
            ("past/notes.md", None),
            ("media/house.svg", None),
            ("recipes/notes.txt", None),
        ] {
            assert_eq!(super::better(path).as_deref(), better, "{path}");
        }
    }
}
