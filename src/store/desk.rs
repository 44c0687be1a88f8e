//! The texts of a course as they are written in the browser: read and saved one by one, never
//! through a link, never over what somebody else wrote meanwhile, and each save kept for a
//! while.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::encode::hex;
use crate::said;

use super::earlier::{Shelf, keep};
use super::halt::Busy;
use super::load::{LARGEST, belongs, misnamed};
use super::write::{Put, put_over, put_safely};
use super::{Doing, StoreError, doing};

/// A text as it stands on the disk.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// The text.
    pub text: String,
    /// Stands for exactly this text.
    pub mark: String,
}

/// What became of a save.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saved {
    /// It is on the disk, and this is its mark.
    Stands(String),
    /// Nothing was written: another text stands there than the one that was read, or none.
    Other(Option<Written>),
}

/// The mark of a text.
fn mark(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes)[..16])
}

/// The text at a path below the content folder; none where there is none.
///
/// # Errors
/// Where no text of a course has such a path, a link leads there, or the machine refuses.
pub fn written(content: &Path, path: &str) -> Result<Option<Written>, StoreError> {
    read(&place(content, path)?)
}

fn read(place: &Path) -> Result<Option<Written>, StoreError> {
    let bytes = match fs::read(place) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        bytes => doing(bytes, Doing::Read, place)?,
    };
    let mark = mark(&bytes);
    let text = String::from_utf8(bytes)
        .map_err(|_| StoreError::refused(place, Doing::Read, said!("unread-not-text")))?;
    Ok(Some(Written { text, mark }))
}

/// Saves a text over the one whose mark is `read`, or as a new one where that is none. It
/// is there whole and safe on the disk, or not at all.
///
/// # Errors
/// As [`written`]; where the text is too long.
pub fn write(
    content: &Path,
    path: &str,
    text: &str,
    read_mark: Option<&str>,
) -> Result<Saved, StoreError> {
    let place = place(content, path)?;
    if text.len() as u64 > LARGEST || text.contains('\0') {
        return Err(StoreError::refused(&place, Doing::Write, said!("unread-large")));
    }
    let _busy = Busy::begin();
    let shelf = Shelf::open(content)?;
    let stands = read(&place)?;
    if stands.as_ref().map(|it| it.mark.as_str()) != read_mark {
        return Ok(Saved::Other(stands));
    }
    if let Some(stands) = &stands {
        keep(&shelf, path, (stands.text.as_bytes(), &stands.mark))?;
    }
    // It is kept before it stands: what was said to be saved is never only in one place.
    let (bytes, new) = (text.as_bytes(), mark(text.as_bytes()));
    let kept = keep(&shelf, path, (bytes, &new))?;
    let over = stands.as_ref().map(|it| it.text.as_bytes());
    match folder_of(&place).and_then(|()| put_over(&place, bytes, over)) {
        Ok(Put::Stands) => Ok(Saved::Stands(new)),
        Ok(Put::Other(between)) => {
            kept.let_go();
            if let Some(between) = between {
                keep(&shelf, path, (&between, &mark(&between)))?;
            }
            Ok(Saved::Other(read(&place)?))
        }
        Err(why) => {
            kept.let_go();
            Err(why)
        }
    }
}

/// Whether a text of a course may have such a path.
pub(super) fn may_be(path: &str) -> bool {
    let plain = |part: &str| !part.is_empty() && !part.starts_with('.');
    let fit = path.split('/').all(plain) && !path.contains(['\\', ':', '\0']);
    fit && belongs(path) && misnamed(path).is_none()
}

/// Puts a picture into the media folder, under the first name beginning with `stem` that no
/// other file has, and says under which.
///
/// # Errors
/// Where a link stands in place of the folder, or the machine refuses.
pub fn hang(
    content: &Path,
    stem: &str,
    ending: &str,
    bytes: &[u8],
) -> Result<String, StoreError> {
    let _busy = Busy::begin();
    let _shelf = Shelf::open(content)?;
    let folder = content.join("media");
    if folder.is_symlink() {
        return Err(StoreError::refused(&folder, Doing::Use, said!("unread-link")));
    }
    doing(fs::create_dir_all(&folder), Doing::Make, &folder)?;
    let name = |number: usize| match number {
        1 => format!("{stem}.{ending}"),
        _ => format!("{stem}-{number}.{ending}"),
    };
    let free = |name: &String| fs::symlink_metadata(folder.join(name)).is_err();
    let name = (1..=9999).map(name).find(free).unwrap_or_else(|| name(10_000));
    put_safely(&folder.join(&name), bytes)?;
    Ok(name)
}

/// Makes the folder of a text that has none yet.
fn folder_of(place: &Path) -> Result<(), StoreError> {
    let folder = place.parent().unwrap_or(place);
    doing(fs::create_dir_all(folder), Doing::Make, folder)
}

/// Where a text lies, if a text of a course may lie there and no link is on the way.
pub(super) fn place(content: &Path, path: &str) -> Result<PathBuf, StoreError> {
    let refused = |why| Err(StoreError::refused(Path::new(path), Doing::Use, why));
    if !may_be(path) {
        return refused(said!("desk-no-text"));
    }
    let mut place = content.to_owned();
    let last = path.matches('/').count();
    for (at, part) in path.split('/').enumerate() {
        place.push(part);
        match fs::symlink_metadata(&place) {
            Err(error) if error.kind() == ErrorKind::NotFound => {}
            Ok(it) if it.is_symlink() => return refused(said!("unread-link")),
            Ok(it) if it.is_dir() == (at < last) && (it.is_dir() || it.is_file()) => {}
            Ok(_) => return refused(said!("unread-not-plain")),
            Err(error) => return doing(Err(error), Doing::Read, &place),
        }
    }
    Ok(place)
}

#[cfg(test)]
mod tests {
    use super::super::earlier::{earlier, earlier_text};
    use super::*;

    const PATH: &str = "recipes/rolls.md";

    fn course(name: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("tourier-desk-{name}"));
        let _ = fs::remove_dir_all(&folder);
        fs::create_dir_all(folder.join("content/recipes")).expect("a folder");
        folder.join("content")
    }

    fn saved(content: &Path, text: &str, read: Option<&str>) -> String {
        match write(content, PATH, text, read).expect("it saves") {
            Saved::Stands(mark) => mark,
            Saved::Other(other) => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_text_is_saved_over_the_one_that_was_read() {
        let content = course("over");
        let one = saved(&content, "one", None);
        let two = saved(&content, "two", Some(&one));
        let stands = written(&content, PATH).expect("it reads").expect("it is there");
        assert_eq!((stands.text.as_str(), &stands.mark), ("two", &two));
        assert_ne!(one, two);
    }

    #[test]
    fn what_somebody_else_wrote_stays() {
        let content = course("other");
        let one = saved(&content, "one", None);
        fs::write(content.join(PATH), "theirs").expect("written");
        for read in [Some(one.as_str()), None] {
            let answer = write(&content, PATH, "mine", read).expect("it answers");
            let Saved::Other(Some(stands)) = answer else { panic!("{answer:?}") };
            assert_eq!(stands.text, "theirs");
        }
        fs::remove_file(content.join(PATH)).expect("taken away");
        let answer = write(&content, PATH, "mine", Some(&one)).expect("it answers");
        assert_eq!(answer, Saved::Other(None));
    }

    #[test]
    fn each_save_can_be_brought_back() {
        let content = course("back");
        fs::write(content.join(PATH), "theirs").expect("written");
        let theirs = written(&content, PATH).expect("it reads").expect("it is there");
        let mut mark = theirs.mark;
        for text in ["one", "two", "two"] {
            mark = saved(&content, text, Some(&mark));
        }
        let kept = earlier(&content, PATH).expect("they are there");
        let texts = kept.iter().map(|one| earlier_text(&content, PATH, &one.name));
        let texts: Vec<String> = texts.map(|text| text.expect("it reads")).collect();
        assert_eq!(texts, ["two", "one", "theirs"], "the newest first, each once");
        assert!(earlier_text(&content, PATH, "../../course.yaml").is_err());
    }

    #[test]
    fn what_a_kill_left_behind_goes_with_the_next_save() {
        let content = course("cut-off");
        saved(&content, "one", None);
        let shelf = content.with_file_name(".content.tourier-saves");
        let cut_off = [
            content.join(".course.yaml.tourier-save-7"),
            content.join("recipes/.other.md.tourier-save-12345"),
            shelf.join(PATH).join(".00000002-0.tourier-save-3"),
        ];
        let others = [
            content.join("recipes/.other.md.tourier-save-x"),
            content.join("recipes/other.md"),
            content.join(".git/.a.tourier-save-3"),
        ];
        fs::create_dir_all(content.join(".git")).expect("a folder");
        cut_off.iter().chain(&others).for_each(|it| fs::write(it, "x").expect("written"));
        assert!(matches!(
            write(&content, "course.yaml", "x", None),
            Ok(Saved::Stands(_))
        ));
        assert!(cut_off.iter().all(|it| !it.exists()), "nothing half written is left");
        assert!(others.iter().all(|it| it.exists()), "what is not ours stays");
    }

    #[cfg(unix)]
    #[test]
    fn a_save_that_fails_leaves_nothing_of_itself() {
        let content = course("fails");
        let one = saved(&content, "one", None);
        let names = || earlier(&content, PATH).expect("there").len();
        let file = content.join(PATH);
        let mut rights = fs::metadata(&file).expect("it is there").permissions();
        rights.set_readonly(true);
        fs::set_permissions(&file, rights).expect("set");
        for _ in 0..3 {
            assert!(write(&content, PATH, "two", Some(&one)).is_err());
        }
        assert_eq!(names(), 1, "only what stands is kept");
        assert_eq!(fs::read_to_string(&file).ok().as_deref(), Some("one"));
    }

    #[test]
    fn so_many_saves_are_kept_and_no_more() {
        let content = course("bounded");
        let mut mark = saved(&content, "0", None);
        for count in 1..70 {
            mark = saved(&content, &count.to_string(), Some(&mark));
        }
        let kept = earlier(&content, PATH).expect("they are there");
        assert_eq!(kept.len(), 50);
        let newest = earlier_text(&content, PATH, &kept[0].name).expect("it reads");
        assert_eq!(newest, "69");
    }

    #[test]
    fn only_texts_of_a_course_are_written() {
        let content = course("paths");
        for path in [
            "notes.txt",
            "course.yml",
            "recipes/../course.yaml",
            "../course.yaml",
            "/etc/passwd",
            "recipes/a/b.md",
            "recipes/.hidden.md",
            ".git/config",
            "recipes/%2e%2e/a.md",
            "recipes\\a.md",
            "C:course.yaml",
            "recipes//a.md",
            "recipes/a b.md",
            "media/a.png",
            "recipes/",
            "",
        ] {
            assert!(write(&content, path, "x", None).is_err(), "{path}");
            assert!(written(&content, path).is_err(), "{path}");
        }
        let long = "x".repeat(1 << 21);
        assert!(write(&content, PATH, &long, None).is_err());
    }

    #[cfg(unix)]
    #[test]
    fn no_link_is_followed() {
        use std::os::unix::fs::symlink;
        let content = course("links");
        let outside = content.with_file_name("outside");
        fs::create_dir_all(&outside).expect("a folder");
        fs::write(outside.join("a.md"), "theirs").expect("written");
        symlink(outside.join("a.md"), content.join("recipes/a.md")).expect("a link");
        symlink(&outside, content.join("techniques")).expect("a link");
        for path in ["recipes/a.md", "techniques/a.md", "techniques/b.md"] {
            assert!(write(&content, path, "x", None).is_err(), "{path}");
            assert!(written(&content, path).is_err(), "{path}");
        }
        assert_eq!(
            fs::read_to_string(outside.join("a.md")).ok().as_deref(),
            Some("theirs")
        );
        assert!(!outside.join("b.md").exists());
    }
}
