//! An output folder that is not only ours: what others put there, before or while a
//! publish runs, is there afterwards, with its rights, owner and times.
#![allow(clippy::disallowed_methods, reason = "folders are made and looked at")]
#![cfg(unix)]

mod common;

use std::collections::BTreeMap;
use std::fs::{self, File, Permissions};
use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, SystemTime};

use common::{course, folder, tourier};

const RECIPE: &str = "recipes/small-crescents.md";

/// A folder for one test, with an edition of the tiny course in `site`.
fn published(name: &str) -> (PathBuf, PathBuf) {
    let content = course(&format!("guests-{name}-content"));
    let site = folder(&format!("guests-{name}")).join("site");
    let answer = tourier(&content, &["publish", "--to", &site.to_string_lossy()]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    (content, site)
}

/// Makes the next publish have something to do.
fn edit(content: &Path) {
    let file = content.join(RECIPE);
    let text = fs::read_to_string(&file).expect("the file is there");
    let edited = text.replacen("\nsummary: ", "\nsummary: Quite new. ", 1);
    assert_ne!(text, edited);
    fs::write(file, edited).expect("the file can be written");
}

/// A command under way.
fn start(content: &Path, arguments: &[&str]) -> Child {
    Command::new(env!("CARGO_BIN_EXE_tourier"))
        .args(["--content", &content.to_string_lossy()])
        .args(arguments)
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts")
}

/// Whether it is still under way.
fn runs(child: &mut Child) -> bool {
    matches!(child.try_wait(), Ok(None))
}

/// What lies beside the site.
fn beside(site: &Path) -> Vec<String> {
    let entries = fs::read_dir(site.parent().expect("a folder")).expect("it opens");
    let names = entries.flatten().map(|entry| entry.file_name());
    names.map(|name| name.to_string_lossy().into_owned()).collect()
}

/// Others write all the time: new files, files in the place of older ones, files in new
/// folders, files taken away.
#[test]
fn what_arrives_while_a_publish_runs_is_there_afterwards() {
    let (content, site) = published("arrive");
    edit(&content);
    fs::write(site.join("notes.txt"), "0").expect("written");
    fs::write(site.join("gone.txt"), "0").expect("written");
    let mut written: BTreeMap<PathBuf, String> = BTreeMap::new();
    let mut publish = start(&content, &["publish", "--to", &site.to_string_lossy()]);
    let mut missed = 0;
    let places = ["", "recipes", "recipes/small-crescents", "mine", "mine/deep", ".git"];
    for number in 0.. {
        if !runs(&mut publish) {
            break;
        }
        let text = number.to_string();
        let place = site.join(places[number % places.len()]);
        let new = place.join(format!("{number}.txt"));
        let beside = site.join("notes.part");
        // What the system refuses is not lost.
        let mut told = |path: PathBuf, done: std::io::Result<()>| match done {
            Ok(()) => drop(written.insert(path, text.clone())),
            Err(_) => missed += 1,
        };
        let made = fs::create_dir_all(&place).and_then(|()| fs::write(&new, &text));
        told(new, made);
        let replaced = fs::write(&beside, &text)
            .and_then(|()| fs::rename(&beside, site.join("notes.txt")));
        told(site.join("notes.txt"), replaced);
        if number == 20 {
            fs::remove_file(site.join("gone.txt")).expect("it can be taken away");
        }
        std::thread::sleep(Duration::from_millis(2));
    }
    assert!(publish.wait().expect("it ends").success());
    assert!(
        written.len() > 20 && missed < 20,
        "{} written, {missed} missed",
        written.len()
    );
    for (path, text) in &written {
        let found = fs::read_to_string(path).unwrap_or_else(|error| format!("{error}"));
        assert_eq!(&found, text, "{}", path.display());
    }
    assert!(!site.join("gone.txt").exists());
    let page = fs::read_to_string(site.join("recipes/small-crescents/index.html"));
    assert!(page.is_ok_and(|page| page.contains("Quite new.")));
    // What was written in the old edition and again in the new one is kept twice.
    let mut left = beside(&site);
    left.retain(|name| name != "site" && name != ".site.tourier-kept");
    assert!(left.is_empty(), "{left:?}");
    let kept = fs::read_dir(site.with_file_name(".site.tourier-kept"));
    for entry in kept.into_iter().flatten().flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        assert!(name.starts_with("notes."), "{name}");
    }
}

/// A handout that is printed while a publish runs says where it is, and there it is.
#[test]
fn a_handout_beside_a_publish_is_there() {
    let (content, site) = published("handout");
    edit(&content);
    let to = site.to_string_lossy().into_owned();
    let mut publish = start(&content, &["publish", "--to", &to]);
    let mut printed = Vec::new();
    for number in 1.. {
        if number > 1 && !runs(&mut publish) {
            break;
        }
        let pieces = (number * 12).to_string();
        let deep = site.join(format!("print/{number}"));
        let deep = deep.to_string_lossy().into_owned();
        let place = if number % 2 == 0 { &deep } else { &to };
        let arguments =
            ["handout", "small-crescents", "--pieces", &pieces, "--to", place];
        let answer = tourier(&content, &arguments);
        assert_eq!(answer.code, 0, "{}", answer.err);
        printed.push(PathBuf::from(answer.out.trim()));
    }
    assert!(publish.wait().expect("it ends").success());
    for path in &printed {
        assert!(path.is_file(), "{} is gone", path.display());
    }
    assert_eq!(beside(&site), ["site"]);
}

/// What is moved keeps everything; folders of ours keep their rights, owner and group.
#[test]
fn folders_keep_rights_owner_and_time() {
    let (content, site) = published("rights");
    let old = SystemTime::UNIX_EPOCH + Duration::from_secs(1_000_000_000);
    for (folder, mode) in [
        ("private", 0o700),
        (".git", 0o2770),
        ("recipes/notes", 0o1751),
        ("hollow", 0o711),
    ] {
        let path = site.join(folder);
        fs::create_dir(&path).expect("it can be made");
        if folder != "hollow" {
            fs::write(path.join("file"), "mine").expect("it can be written");
        }
        set_owner(&path);
        fs::set_permissions(&path, Permissions::from_mode(mode)).expect("rights are set");
        let opened = File::open(&path).expect("it opens");
        opened.set_modified(old).expect("the time can be set");
    }
    for (folder, mode) in [("", 0o2750), ("recipes", 0o2775), ("drawings", 0o750)] {
        set_owner(&site.join(folder));
        let rights = Permissions::from_mode(mode);
        fs::set_permissions(site.join(folder), rights).expect("rights are set");
    }
    let state = |folder: &str| {
        let known = fs::metadata(site.join(folder)).expect("it is there");
        (format!("{:o}", known.mode()), known.uid(), known.gid())
    };
    let moved = ["private", ".git", "recipes/notes", "hollow"];
    let all = moved.into_iter().chain(["", "recipes", "drawings"]);
    let before: Vec<_> = all.clone().map(state).collect();
    let inodes = moved.map(|it| fs::metadata(site.join(it)).expect("it is there").ino());
    edit(&content);
    let answer = tourier(&content, &["publish", "--to", &site.to_string_lossy()]);
    assert!(answer.code == 0 && answer.out.starts_with("made "), "{}", answer.err);
    assert_eq!(before, all.map(state).collect::<Vec<_>>());
    for (folder, inode) in moved.into_iter().zip(inodes) {
        let known = fs::metadata(site.join(folder)).expect("it is there");
        assert_eq!(known.modified().expect("a time"), old, "{folder}");
        assert_eq!(known.ino(), inode, "{folder} was made again");
    }
    assert_eq!(beside(&site), ["site"]);
}

/// Gives a folder to somebody else, where we may.
fn set_owner(folder: &Path) {
    let _ = std::os::unix::fs::chown(folder, Some(12345), Some(54321));
}

/// What was under way when the machine stopped, between the swap and the end: the old
/// edition lies aside, with what others had put into it.
#[test]
fn what_others_had_in_an_edition_that_lies_aside_comes_back() {
    let (content, site) = published("aside");
    let aside = site.with_file_name(".site.tourier-old");
    let copy = |from: &Path, to: &Path| {
        let done = Command::new("cp").arg("-a").args([from, to]).status();
        assert!(done.is_ok_and(|status| status.success()));
    };
    copy(&site, &aside);
    fs::create_dir(aside.join("private")).expect("made");
    for file in ["private/a.txt", "recipes/b.txt", "c.txt"] {
        fs::write(aside.join(file), file).expect("written");
    }
    fs::write(site.join("c.txt"), "another").expect("written");
    let soon = SystemTime::now() + Duration::from_secs(5);
    let other = File::options().append(true).open(site.join("c.txt")).expect("it opens");
    other.set_modified(soon).expect("the time can be set");
    let answer = tourier(&content, &["publish", "--to", &site.to_string_lossy()]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    let read = |path: PathBuf| fs::read_to_string(path).unwrap_or_default();
    for file in ["private/a.txt", "recipes/b.txt"] {
        assert_eq!(read(site.join(file)), file);
    }
    // Two of one name: the later one stands, the other is kept and named.
    assert_eq!(read(site.join("c.txt")), "another");
    let kept = site.with_file_name(".site.tourier-kept/c.txt");
    assert_eq!(read(kept), "c.txt");
    assert!(answer.err.contains(".site.tourier-kept/c.txt"), "{}", answer.err);
    assert!(!aside.exists());
}
