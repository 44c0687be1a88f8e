//! The two folders of an edition: the site, and beside it what is the instructor's alone.

use std::path::{Path, PathBuf};

use crate::product::INSTRUCTOR;

use super::shared::Shared;

/// Ends the name of the folder that stands beside the site.
pub(super) const SUFFIX: &str = "-instructor";

/// One of the two folders.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    /// What everybody may see.
    Site,
    /// What only the instructor needs.
    Instructor,
}

impl Side {
    /// Both, the site first: it is the one that is exchanged first.
    pub(super) const BOTH: [Self; 2] = [Self::Site, Self::Instructor];

    /// On which side a file of an edition stands, and its path in that folder.
    pub(super) fn of(path: &str) -> (Self, &str) {
        let apart = path.strip_prefix(INSTRUCTOR);
        apart.map_or((Self::Site, path), |path| (Self::Instructor, path))
    }
}

/// Where an edition stands.
#[derive(Clone, Debug)]
pub(super) struct Folders {
    site: PathBuf,
    instructor: PathBuf,
    /// Where made files are shared with other machines and courses, if they are.
    pub(super) shared: Option<Shared>,
}

impl Folders {
    /// The folders of an edition whose site stands at `site`.
    pub(super) fn new(site: PathBuf) -> Self {
        let name = site.file_name().unwrap_or_default().to_string_lossy();
        let instructor = site.with_file_name(format!("{name}{SUFFIX}"));
        Self { site, instructor, shared: None }
    }

    /// One of them.
    pub(super) fn get(&self, side: Side) -> &Path {
        match side {
            Side::Site => &self.site,
            Side::Instructor => &self.instructor,
        }
    }

    /// Where a file of an edition stands.
    pub(super) fn file(&self, path: &str) -> PathBuf {
        let (side, path) = Side::of(path);
        self.get(side).join(path)
    }
}

/// The site that a folder of an edition belongs to: itself, or the one beside it.
pub(super) fn site_of(folder: &Path) -> PathBuf {
    let name = folder.file_name().unwrap_or_default().to_string_lossy();
    let site = name.strip_suffix(SUFFIX).filter(|name| !name.is_empty());
    site.map_or_else(|| folder.to_owned(), |name| folder.with_file_name(name))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_the_instructors_stands_beside_the_site() {
        let folders = Folders::new(PathBuf::from("a/output"));
        let run = folders.file("instructor/classes/one/run-a4.pdf");
        assert_eq!(run, Path::new("a/output-instructor/classes/one/run-a4.pdf"));
        assert_eq!(folders.file("index.html"), Path::new("a/output/index.html"));
        assert_eq!(site_of(Path::new("a/output-instructor")), Path::new("a/output"));
        assert_eq!(site_of(Path::new("a/-instructor")), Path::new("a/-instructor"));
    }
}
