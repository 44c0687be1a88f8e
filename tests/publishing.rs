//! Publishing on a machine that says no, and into a folder that is not only ours: the last
//! edition stands, nothing outside the folder is written, nothing of others is lost.
#![allow(clippy::disallowed_methods, reason = "folders are made and looked at")]
#![cfg(unix)]

mod common;

use std::collections::BTreeMap;
use std::fs::{self, File, Permissions};
use std::os::unix::fs::{PermissionsExt, symlink};
use std::path::{Path, PathBuf};
use std::process::Command;

use common::{Answer, course, folder, tourier};
use sha2::Digest;

fn publish(content: &Path, to: &Path) -> Answer {
    tourier(content, &["publish", "--to", &to.to_string_lossy()])
}

/// Likewise into a folder that holds files of others.
fn among(content: &Path, to: &Path) -> Answer {
    tourier(content, &["publish", "--among-others", "--to", &to.to_string_lossy()])
}

/// A folder for one test, with an edition of the tiny course in `site`.
fn published(name: &str) -> (PathBuf, PathBuf) {
    let content = course(&format!("publishing-{name}-content"));
    let site = folder(&format!("publishing-{name}")).join("site");
    let answer = publish(&content, &site);
    assert_eq!(answer.code, 0, "{}", answer.err);
    (content, site)
}

/// Makes the next publish have something to do.
fn edit(content: &Path) {
    let file = content.join("recipes/small-crescents.md");
    let text = fs::read_to_string(&file).expect("the file is there");
    let edited = text.replacen("\nsummary: ", "\nsummary: Quite new. ", 1);
    assert_ne!(text, edited);
    fs::write(file, edited).expect("the file can be written");
}

/// Every file below a folder, with its bytes.
fn bytes(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut all = BTreeMap::new();
    for entry in fs::read_dir(folder).expect("the folder opens").flatten() {
        let path = entry.path();
        if path.is_dir() {
            all.extend(bytes(&path));
        } else {
            all.insert(path.clone(), fs::read(&path).unwrap_or_default());
        }
    }
    all
}

/// What lies beside the site.
fn beside(site: &Path) -> Vec<String> {
    let entries = fs::read_dir(site.parent().expect("a folder")).expect("it opens");
    let names = entries.flatten().map(|entry| entry.file_name());
    names.map(|name| name.to_string_lossy().into_owned()).collect()
}

/// The publish is refused with this code and these words; the edition stands, and nothing
/// is left beside it.
fn refused((content, site): (&Path, &Path), publish: &dyn Fn() -> Answer, words: &str) {
    edit(content);
    let before = bytes(site);
    let answer = publish();
    assert!(matches!(answer.code, 1 | 3), "{} {}", answer.code, answer.err);
    assert!(answer.err.contains(words), "{}", answer.err);
    assert!(before == bytes(site), "the edition is another one");
    assert_eq!(beside(site), ["site"], "something is left beside the edition");
}

/// A limit on the size of files stands for a disk that is full in the middle of a file;
/// `outside/disk.py` fills a real one.
#[test]
fn a_full_disk() {
    let (content, site) = published("full");
    let publish = || {
        let run = Command::new("sh")
            .args(["-c", "trap '' XFSZ; ulimit -f 40; exec \"$@\"", "sh"])
            .arg(env!("CARGO_BIN_EXE_tourier"))
            .args(["--content", &content.to_string_lossy()])
            .args(["publish", "--to", &site.to_string_lossy()])
            .output()
            .expect("the program starts");
        let err = String::from_utf8_lossy(&run.stderr).into_owned();
        Answer { code: run.status.code().unwrap_or(-1), out: String::new(), err }
    };
    refused((&content, &site), &publish, "the last edition stands");
}

#[test]
fn a_read_only_folder() {
    let (content, site) = published("read-only");
    fs::set_permissions(&site, Permissions::from_mode(0o555)).expect("rights are set");
    refused((&content, &site), &|| publish(&content, &site), "it is read-only");
    fs::set_permissions(&site, Permissions::from_mode(0o755)).expect("rights are set");
    assert_eq!(publish(&content, &site).code, 0);
}

#[test]
fn two_at_once() {
    let (content, site) = published("twice");
    let lock = site.with_file_name(".site.tourier-lock");
    let held = File::create(&lock).expect("the lock can be made");
    held.lock().expect("the lock is free");
    edit(&content);
    let before = bytes(&site);
    let answer = publish(&content, &site);
    assert_eq!(answer.code, 3, "{}", answer.err);
    assert!(answer.err.contains("another publish"), "{}", answer.err);
    assert!(before == bytes(&site));
    // A lock file that nobody holds, as a power cut leaves one, locks nothing.
    drop(held);
    assert_eq!(publish(&content, &site).code, 0);
    assert_eq!(beside(&site), ["site"]);
}

#[test]
fn what_a_cut_publish_left_is_cleared() {
    let (content, site) = published("left");
    let next = site.with_file_name(".site.tourier-next");
    fs::create_dir(&next).expect("it can be made");
    fs::write(next.join("index.html"), "half").expect("written");
    let answer = publish(&content, &site);
    assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
    assert_eq!(beside(&site), ["site"]);
    // Cut between the swap and the end: only the lock is left, and nobody holds it.
    File::create(site.with_file_name(".site.tourier-lock")).expect("it can be made");
    let answer = publish(&content, &site);
    assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
    assert_eq!(beside(&site), ["site"]);
    // Where a system cannot exchange two folders, the old one stands aside for a moment.
    fs::rename(&site, site.with_file_name(".site.tourier-old")).expect("moved");
    fs::create_dir(&next).expect("it can be made");
    let answer = publish(&content, &site);
    assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
    assert_eq!(beside(&site), ["site"]);
}

#[test]
fn what_others_put_there_stays() {
    let (content, site) = published("others");
    fs::create_dir_all(site.join("empty/inner")).expect("made");
    fs::write(site.join("recipes/notes.txt"), "mine").expect("written");
    symlink("notes.txt", site.join("recipes/link")).expect("linked");
    fs::set_permissions(&site, Permissions::from_mode(0o750)).expect("rights are set");
    edit(&content);
    assert_eq!(publish(&content, &site).code, 0);
    assert!(site.join("empty/inner").is_dir());
    let notes = fs::read_to_string(site.join("recipes/notes.txt"));
    assert_eq!(notes.unwrap_or_default(), "mine");
    let link = fs::read_link(site.join("recipes/link")).expect("a link");
    assert_eq!(link, Path::new("notes.txt"));
    let rights = fs::metadata(&site).expect("it is there").permissions().mode();
    assert_eq!(rights & 0o777, 0o750);
}

#[test]
fn a_file_of_others_in_the_place_of_a_page_stays() {
    let content = course("publishing-place-content");
    let site = folder("publishing-place").join("site");
    fs::create_dir(&site).expect("made");
    fs::write(site.join("index.html"), "mine").expect("written");
    refused((&content, &site), &|| among(&content, &site), "index.html");
}

#[test]
fn nothing_is_written_through_a_link() {
    let content = course("publishing-through-content");
    let site = folder("publishing-through").join("site");
    let elsewhere = folder("publishing-elsewhere");
    fs::create_dir(&site).expect("made");
    symlink(&elsewhere, site.join("recipes")).expect("linked");
    refused((&content, &site), &|| among(&content, &site), "recipes cannot be made");
    assert!(bytes(&elsewhere).is_empty());
}

#[test]
fn an_output_folder_that_is_a_link_stays_one() {
    let content = course("publishing-link-content");
    let folder = folder("publishing-link");
    fs::create_dir(folder.join("real")).expect("made");
    symlink("real", folder.join("site")).expect("linked");
    assert_eq!(publish(&content, &folder.join("site")).code, 0);
    assert!(folder.join("site").is_symlink());
    assert!(folder.join("real/index.html").is_file());
}

#[test]
fn content_and_output_lie_apart() {
    let content = course("publishing-apart");
    for to in [content.clone(), content.join("site"), content.join("..")] {
        let answer = publish(&content, &to);
        assert_eq!(answer.code, 3, "{to:?}: {}", answer.err);
        assert!(answer.err.contains("the content and the theme"), "{}", answer.err);
    }
    assert!(!content.join("index.html").exists());
}

/// Nothing is worked out where nothing changed; what is gone from the site is made again,
/// and going back to an older state is a change like any other.
#[test]
fn an_edition_that_stands_is_known_by_its_files() {
    let (content, site) = published("known");
    let says = |words: &str| {
        let answer = publish(&content, &site);
        assert_eq!(answer.code, 0, "{}", answer.err);
        assert!(answer.out.contains(words), "{}", answer.out);
    };
    let whole = bytes(&site);
    says("nothing made");
    fs::remove_file(site.join("index.html")).expect("the page is there");
    says("made 1 page; ");
    assert!(bytes(&site) == whole);
    let file = content.join("recipes/small-crescents.md");
    let before = fs::read(&file).expect("the recipe is there");
    edit(&content);
    says("made ");
    assert!(bytes(&site) != whole);
    fs::write(&file, before).expect("the recipe can be written");
    says("made ");
    assert!(bytes(&site) == whole);
    // A file that is no part of the course makes the folder another one, not the edition.
    fs::write(content.join("notes.txt"), "mine").expect("it can be written");
    says("nothing made");
    says("nothing made");
}

/// A caution is shown at every publish, not only at the first.
#[test]
fn what_is_to_be_said_is_said_again() {
    let (content, site) = published("said");
    let raw = "---\ntitle: Raw\nsummary: Not baked.\nmakes: 1 bowl\nformula:\n  cream:\n    \
               - 2 large eggs\n    - 100 g sugar\n---\n\n## Mix\n~~~ticket\nuses: cream\nhands: \
               10 min\n~~~\nMix {cream}.\n";
    fs::write(content.join("recipes/raw.md"), raw).expect("it can be written");
    for _ in 0..3 {
        let answer = publish(&content, &site);
        assert_eq!(answer.code, 0, "{}", answer.err);
        assert!(answer.err.contains("raw-egg-eaten"), "{}", answer.err);
    }
}

/// Two machines, or two courses, with a folder of made files between them.
#[test]
fn what_one_has_made_no_other_makes_again() {
    let (content, alone) = published("shared");
    let room = folder("publishing-shared-room");
    let shared = room.join("made");
    let publish = |site: &str| {
        let site = room.join(site);
        let [to, made] = [&site, &shared].map(|it| it.to_string_lossy().into_owned());
        let answer = tourier(&content, &["publish", "--to", &to, "--shared", &made]);
        assert_eq!(answer.code, 0, "{}", answer.err);
        bytes(&site)
    };
    let rooted = |site: &Path| -> BTreeMap<PathBuf, Vec<u8>> {
        let own = |path: PathBuf| path.strip_prefix(site).expect("below").to_owned();
        bytes(site).into_iter().map(|(path, it)| (own(path), it)).collect()
    };
    publish("one");
    let made = bytes(&shared);
    assert!(made.len() > 10, "{}", made.len());
    publish("two");
    assert_eq!(made, bytes(&shared), "nothing is made twice");
    let whole = rooted(&alone);
    assert_eq!(whole, rooted(&room.join("one")));
    assert_eq!(whole, rooted(&room.join("two")));

    // It is read: what stands there whole is taken. What is not whole is not believed.
    let is_sheet = |bytes: &&Vec<u8>| bytes.starts_with(b"%PDF-");
    let (sheet, own) = made.iter().find(|(_, it)| is_sheet(it)).expect("a handout");
    let mut other = b"%PDF-1.7 somebody's".to_vec();
    other.extend(sha2::Sha256::digest(&other));
    fs::write(sheet, &other).expect("written");
    let forged = publish("three");
    assert_eq!(1, forged.values().filter(|it| **it == other[..other.len() - 32]).count());
    let mut torn = own.clone();
    torn[100] ^= 1;
    fs::write(sheet, torn).expect("written");
    publish("four");
    assert_eq!(whole, rooted(&room.join("four")));
    assert_eq!(made, bytes(&shared), "what was torn is whole again");
}
