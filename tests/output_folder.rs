//! Which folders are published to, what is found damaged there, and a stop in the middle.
#![allow(clippy::disallowed_methods, reason = "folders are made and looked at")]
#![cfg(unix)]

mod common;

use std::fs::{self, File};
use std::os::unix::fs::symlink;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, SystemTime};

use common::{Answer, course, folder, tourier};

fn publish(content: &Path, to: &Path, more: &[&str]) -> Answer {
    let to = to.to_string_lossy();
    tourier(content, &[&["publish", "--to", &to], more].concat())
}

/// A folder for one test, with an edition of the tiny course in `site`.
fn published(name: &str) -> (PathBuf, PathBuf) {
    let content = course(&format!("output-{name}-content"));
    let site = folder(&format!("output-{name}")).join("site");
    let answer = publish(&content, &site, &[]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    (content, site)
}

/// A course that cannot be published: whoever speaks of the folder did not read it first.
fn unreadable(name: &str) -> PathBuf {
    let content = course(&format!("output-{name}-content"));
    fs::write(content.join("recipes/small-block.md"), "---\ntitle: [\n")
        .expect("written");
    content
}

fn is_refused(answer: &Answer, words: &str) {
    assert_eq!(answer.code, 3, "{}{}", answer.out, answer.err);
    assert!(answer.err.contains(words), "{}", answer.err);
    assert!(
        !answer.err.contains("small-block"),
        "the content came first: {}",
        answer.err
    );
}

#[test]
fn a_named_folder_with_files_of_others_is_published_to_only_where_told() {
    let content = course("output-filled-content");
    let site = folder("output-filled");
    fs::create_dir(site.join("photos")).expect("made");
    fs::write(site.join("photos/loaf.jpg"), "mine").expect("written");
    let answer = publish(&content, &site, &[]);
    is_refused(&answer, "--among-others");
    assert_eq!(fs::read_dir(&site).map(Iterator::count).unwrap_or_default(), 1);
    let answer = publish(&content, &site, &["--among-others"]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(site.join("index.html").is_file());
    // From then on it is a folder that was published to.
    let answer = publish(&content, &site, &[]);
    assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
    assert_eq!(fs::read(site.join("photos/loaf.jpg")).unwrap_or_default(), b"mine");
}

/// A fresh clone has the pictures of the README in its output folder.
#[test]
fn the_default_folder_is_published_to_from_a_fresh_clone() {
    let clone = folder("output-clone");
    let content = course("output-clone/content");
    fs::create_dir_all(clone.join("output/readme")).expect("made");
    for name in ["page.png", "handout.png"] {
        let picture = Path::new("output/readme").join(name);
        fs::copy(picture, clone.join("output/readme").join(name)).expect("copied");
    }
    let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .arg("publish")
        .current_dir(&clone)
        .output()
        .expect("the program starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    assert!(content.is_dir() && clone.join("output/index.html").is_file());
    let pictures = fs::read_dir(clone.join("output/readme")).map(Iterator::count);
    assert_eq!(pictures.unwrap_or_default(), 2);
}

#[test]
fn a_home_folder_a_root_and_a_folder_that_holds_the_content_are_refused() {
    let content = unreadable("never");
    let home = folder("output-home").join("baker");
    fs::create_dir(&home).expect("made");
    let publish = |to: &Path| {
        let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
            .env("HOME", &home)
            .args(["--content", &content.to_string_lossy()])
            .args(["publish", "--among-others", "--to", &to.to_string_lossy()])
            .output()
            .expect("the program starts");
        let err = String::from_utf8_lossy(&run.stderr).into_owned();
        Answer { code: run.status.code().unwrap_or(-1), out: String::new(), err }
    };
    is_refused(&publish(&home), "home folder");
    is_refused(&publish(home.parent().expect("a folder")), "home folder");
    is_refused(&publish(Path::new("/")), "root");
    is_refused(&publish(content.parent().expect("a folder")), "the content");
    assert_eq!(fs::read_dir(&home).map(Iterator::count).unwrap_or(1), 0);
}

#[test]
fn a_link_to_nowhere_is_answered_before_the_work() {
    let content = unreadable("dangling");
    let place = folder("output-dangling");
    symlink("nowhere", place.join("site")).expect("linked");
    is_refused(
        &publish(&content, &place.join("site"), &[]),
        "a link to a place that is not there",
    );
    is_refused(&publish(&content, &place.join("site/deep"), &[]), "a link to a place");
    assert!(!place.join("nowhere").exists());
    fs::write(place.join("file"), "mine").expect("written");
    is_refused(
        &publish(&content, &place.join("file"), &[]),
        "a file stands in its place",
    );
    is_refused(&publish(&content, &place.join("file/deep"), &[]), "a file stands");
}

/// A disk of its own, where one may be mounted; always one that is mounted everywhere.
#[cfg(target_os = "linux")]
#[test]
fn a_mount_point_is_answered_before_the_work() {
    let content = unreadable("mount");
    is_refused(&publish(&content, Path::new("/dev/shm"), &["--among-others"]), "mounted");
    let place = folder("output-mount");
    fs::create_dir_all(place.join("site")).expect("made");
    fs::create_dir_all(place.join("real")).expect("made");
    let (site, real) = (place.join("site"), place.join("real"));
    let mount = Command::new("mount").arg("--bind").args([&real, &site]).output();
    if mount.is_ok_and(|run| run.status.success()) {
        let answer = publish(&content, &site, &[]);
        let unmounted = Command::new("umount").arg(&site).status();
        assert!(unmounted.is_ok_and(|status| status.success()));
        is_refused(&answer, "mounted");
    }
}

/// Overwritten with as many bytes, cut to nothing, taken away, with an old time.
#[test]
fn what_is_damaged_is_made_again_and_said() {
    let (content, site) = published("damaged");
    let there = ["index.html", "recipes/small-crescents/index.html", "404.html"];
    let pdfs = fs::read_dir(site.join("recipes/small-crescents")).expect("it opens");
    let pdf = pdfs
        .flatten()
        .map(|it| it.path())
        .find(|it| it.extension().is_some_and(|it| it == "pdf"));
    let pdf = pdf.expect("a handout");
    let whole: Vec<Vec<u8>> =
        there.iter().map(|it| fs::read(site.join(it)).expect("it is there")).collect();
    let whole_pdf = fs::read(&pdf).expect("it is there");
    let harm = |path: &Path, bytes: &[u8]| fs::write(path, bytes).expect("written");
    harm(&pdf, b"");
    harm(&site.join(there[0]), b"<p>hello");
    let same_size = vec![b'x'; whole[1].len()];
    harm(&site.join(there[1]), &same_size);
    fs::remove_file(site.join(there[2])).expect("it is there");
    let answer = publish(&content, &site, &[]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(answer.out.contains("made 3 pages, 1 handout;"), "{}", answer.out);
    assert!(answer.err.contains("made again"), "{}", answer.err);
    for (file, bytes) in there.iter().zip(&whole) {
        assert!(fs::read(site.join(file)).is_ok_and(|now| now == *bytes), "{file}");
    }
    assert!(fs::read(&pdf).is_ok_and(|now| now == whole_pdf));
    let again = publish(&content, &site, &[]);
    assert!(again.out.contains("nothing made") && again.err.is_empty(), "{}", again.err);
}

/// Somebody who wants not to be noticed gives a file the size and times that it had; what a
/// system notes by itself (the time of the change) is then the only sign. `--thorough`
/// reads all.
#[test]
fn a_thorough_look_reads_every_file() {
    let (content, site) = published("thorough");
    let page = site.join("index.html");
    let whole = fs::read(&page).expect("it is there");
    let long_ago = SystemTime::UNIX_EPOCH + Duration::from_secs(1_000_000_000);
    fs::write(&page, vec![b'x'; whole.len()]).expect("written");
    let opened = File::options().append(true).open(&page).expect("it opens");
    opened.set_modified(long_ago).expect("the time can be set");
    // A manifest from the future: whatever was changed seems older.
    let manifest = File::options().append(true).open(site.join(".tourier.json"));
    let soon = SystemTime::now() + Duration::from_secs(3600);
    manifest.and_then(|it| it.set_modified(soon)).expect("the time can be set");
    let answer = publish(&content, &site, &[]);
    assert!(answer.out.contains("nothing made"), "{}", answer.out);
    let answer = publish(&content, &site, &["--thorough"]);
    assert!(answer.err.contains("index.html had been changed"), "{}", answer.err);
    assert!(fs::read(&page).is_ok_and(|now| now == whole));
}

/// A copy of a site has other times: it is read through once, and known from then on.
#[test]
fn a_copy_is_read_through_once() {
    let (content, site) = published("copy");
    let copy = site.with_file_name("copy");
    let done = Command::new("cp").arg("-r").args([&site, &copy]).status();
    assert!(done.is_ok_and(|status| status.success()));
    let sealed = |folder: &Path| {
        let manifest = fs::metadata(folder.join(".tourier.json"));
        manifest.and_then(|it| it.modified()).expect("a time")
    };
    let says_nothing_made = || {
        let answer = publish(&content, &copy, &[]);
        assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
    };
    // As after a copy that took the manifest first.
    let manifest = File::options().append(true).open(copy.join(".tourier.json"));
    let long_ago = SystemTime::UNIX_EPOCH + Duration::from_secs(1_000_000_000);
    manifest.and_then(|it| it.set_modified(long_ago)).expect("the time can be set");
    let before = sealed(&copy);
    says_nothing_made();
    let known = sealed(&copy);
    says_nothing_made();
    assert!(known > before && sealed(&copy) == known);
}

/// A version that counts otherwise says so once.
#[test]
fn new_arithmetic_is_said_once() {
    let (content, site) = published("arithmetic");
    let manifest = site.join(".tourier.json");
    let text = fs::read_to_string(&manifest).expect("it is there");
    assert!(text.contains("\"arithmetic\": "), "{text}");
    let (before, after) = text.split_once("\"arithmetic\": ").expect("a number");
    let rest = after.trim_start_matches(|sign: char| sign.is_ascii_digit());
    fs::write(&manifest, format!("{before}\"arithmetic\": 0{rest}")).expect("written");
    let answer = publish(&content, &site, &[]);
    assert!(answer.err.contains("counts otherwise"), "{}", answer.err);
    let answer = publish(&content, &site, &[]);
    assert!(!answer.err.contains("counts otherwise"), "{}", answer.err);
}

/// At many moments; most of them while files are made.
#[test]
fn a_stop_by_signal_leaves_nothing_and_says_what_stands() {
    let (content, site) = published("stopped");
    let file = content.join("recipes/small-crescents.md");
    let text = fs::read_to_string(&file).expect("the file is there");
    let edited = text.replacen("\nsummary: ", "\nsummary: Quite new. ", 1);
    assert_ne!(text, edited);
    fs::write(&file, edited).expect("written");
    let before = fs::read(site.join("index.html")).expect("it is there");
    let mut stopped = 0;
    for (number, signal) in ["INT", "TERM", "HUP", "INT", "TERM"].into_iter().enumerate()
    {
        let run = Command::new(env!("CARGO_BIN_EXE_tourier"))
            .args(["--content", &content.to_string_lossy()])
            .args(["publish", "--to", &site.to_string_lossy()])
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program starts");
        std::thread::sleep(Duration::from_millis(150 + 150 * number as u64));
        let sent =
            Command::new("kill").args(["-s", signal, &run.id().to_string()]).status();
        assert!(sent.is_ok());
        let answer = run.wait_with_output().expect("it ends");
        let said = String::from_utf8_lossy(&answer.stderr).into_owned();
        if answer.status.success() {
            break;
        }
        assert_eq!(answer.status.code(), Some(3), "{signal}: {said}");
        assert!(said.contains("the last edition stands"), "{signal}: {said}");
        stopped += 1;
        assert_eq!(fs::read(site.join("index.html")).expect("it is there"), before);
        let beside = fs::read_dir(site.parent().expect("a folder")).expect("it opens");
        assert_eq!(beside.count(), 1, "{signal}: something is left");
    }
    assert!(stopped > 0);
}

/// The tiny course with a class, published.
fn taught(name: &str) -> (PathBuf, PathBuf) {
    let content = course(&format!("output-{name}-content"));
    let class = "title: One evening\nsessions: [2027-03-02 18:00 to 22:00]\nbakers: 4\n\
                 makes:\n  - recipe: small-crescents\n    each: pair\n    pieces: 10\n";
    fs::create_dir_all(content.join("classes")).expect("made");
    fs::write(content.join("classes/evening.yaml"), class).expect("written");
    let site = folder(&format!("output-{name}")).join("site");
    let answer = publish(&content, &site, &[]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(answer.out.contains("site-instructor/"), "{}", answer.out);
    (content, site)
}

fn edited(content: &Path) {
    let file = content.join("recipes/small-crescents.md");
    let text = fs::read_to_string(&file).expect("the file is there");
    let edited = text.replacen("\nsummary: ", "\nsummary: Quite new. ", 1);
    fs::write(&file, edited).expect("written");
}

/// Every file below a folder, with its bytes.
fn files(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let walk = walkdir::WalkDir::new(folder).sort_by_file_name();
    let files = walk.into_iter().flatten().filter(|entry| entry.file_type().is_file());
    files.map(|it| (it.path().to_owned(), fs::read(it.path()).expect("read"))).collect()
}

/// What is the instructor's alone is nowhere on the site, but where the course wants it there.
#[test]
fn what_is_the_instructors_stands_beside_the_site() {
    let (content, site) = taught("apart");
    let own = site.with_file_name("site-instructor");
    let papers =
        ["run-a4.pdf", "lists-letter.pdf", "order.csv", "plan.ics", "bundle.pdf"];
    for paper in papers {
        assert!(own.join("classes/evening").join(paper).is_file(), "{paper}");
        assert!(!site.join("classes/evening").join(paper).exists(), "{paper}");
    }
    for (file, bytes) in files(&site) {
        let text = String::from_utf8_lossy(&bytes);
        let manifest = file.ends_with(".tourier.json");
        assert!(manifest || !text.contains("run-a4.pdf"), "{}", file.display());
    }
    let course = content.join("course.yaml");
    let text = fs::read_to_string(&course).expect("read");
    fs::write(&course, format!("{text}\nclass papers: on the site\n")).expect("written");
    let answer = publish(&content, &site, &[]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    for paper in papers {
        assert!(site.join("classes/evening").join(paper).is_file(), "{paper}");
    }
    let left: Vec<PathBuf> = files(&own).into_iter().map(|(path, _)| path).collect();
    assert_eq!(left, [own.join(".tourier.json")]);
}

/// A cut between the two exchanges: the site is new, the folder beside it old, its new
/// edition still where it was put together.
#[test]
fn a_cut_between_the_two_is_finished_by_the_next_publish() {
    for aside in ["next", "old"] {
        let (content, site) = taught(&format!("cut-{aside}"));
        let (own, kept) =
            (site.with_file_name("site-instructor"), site.with_file_name("kept"));
        let copied = Command::new("cp").arg("-a").args([&own, &kept]).status();
        assert!(copied.is_ok_and(|status| status.success()));
        edited(&content);
        assert_eq!(publish(&content, &site, &[]).code, 0);
        let (new_site, new) = (files(&site), files(&own));
        let beside = site.with_file_name(format!(".site-instructor.tourier-{aside}"));
        fs::rename(&own, &beside).expect("moved");
        fs::rename(&kept, &own).expect("moved");
        assert_ne!(files(&own), new);
        fs::write(own.join("classes/evening/mine.txt"), "mine").expect("written");
        let answer = publish(&content, &site, &[]);
        assert_eq!(answer.code, 0, "{}", answer.err);
        assert!(answer.out.contains("nothing made"), "{}{}", answer.out, answer.err);
        let mine = own.join("classes/evening/mine.txt");
        assert!(fs::read(&mine).is_ok_and(|text| text == b"mine"));
        fs::remove_file(mine).expect("it is there");
        assert_eq!((files(&site), files(&own)), (new_site, new));
        let beside = fs::read_dir(site.parent().expect("a folder")).expect("it opens");
        assert_eq!(beside.count(), 2, "something is left");
    }
}

/// A folder of such a name holds what is not to be seen: no site is published to it, and
/// one that others filled is left alone.
#[test]
fn no_site_takes_the_instructors_place() {
    let (content, site) = taught("place");
    let own = site.with_file_name("site-instructor");
    is_refused(&publish(&content, &own, &["--among-others"]), "the instructor's alone");
    let other = site.with_file_name("other");
    let mine = site.with_file_name("other-instructor");
    fs::create_dir(&mine).expect("made");
    fs::write(mine.join("mine.txt"), "mine").expect("written");
    is_refused(&publish(&content, &other, &[]), "other-instructor");
    let answer = publish(&content, &other, &["--among-others"]);
    assert_eq!(answer.code, 0, "{}", answer.err);
    assert!(fs::read(mine.join("mine.txt")).is_ok_and(|text| text == b"mine"));
    assert!(mine.join("classes/evening/run-a4.pdf").is_file());
}

/// A paper that is gone is made again, and said, as a page is.
#[test]
fn a_paper_that_is_gone_is_made_again() {
    let (content, site) = taught("gone");
    let own = site.with_file_name("site-instructor");
    let before = files(&own);
    fs::remove_dir_all(&own).expect("it is there");
    let answer = publish(&content, &site, &[]);
    assert!(answer.err.contains("made again"), "{}{}", answer.out, answer.err);
    assert_eq!(files(&own), before);
}
