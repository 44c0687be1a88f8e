//! What the crate holds for those who build it from a registry or a folder of packages: its
//! sources and all that they take in, the licences and the README; nothing that tests it.
#![allow(clippy::disallowed_methods, reason = "the sources are read, cargo is asked")]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Component, Path, PathBuf};
use std::process::Command;

/// Files of the crate, by their paths below its root.
fn listed() -> BTreeSet<String> {
    let asked = Command::new(env!("CARGO"))
        .args(["package", "--list", "--offline", "--allow-dirty"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo starts");
    let said = String::from_utf8_lossy(&asked.stderr);
    assert!(asked.status.success(), "{said}");
    let list = String::from_utf8(asked.stdout).expect("names are text");
    list.lines().map(|path| path.replace('\\', "/")).collect()
}

/// Every file below a folder, by its path from here.
fn below(folder: &str) -> Vec<PathBuf> {
    let files = walkdir::WalkDir::new(folder).into_iter().flatten();
    files
        .filter(|it| it.file_type().is_file())
        .map(walkdir::DirEntry::into_path)
        .collect()
}

#[test]
fn only_what_belongs_to_it_is_in_the_crate() {
    // What cargo adds of its own, and what is no source.
    let single = [
        ".cargo_vcs_info.json",
        "Cargo.lock",
        "Cargo.toml",
        "Cargo.toml.orig",
        "README.md",
        ".licences/MIT.txt",
        ".licences/Apache-2.0.txt",
    ];
    let belongs = |path: &str| {
        path.starts_with("src/") || path.starts_with("themes/") || single.contains(&path)
    };
    let listed = listed();
    let strange: Vec<_> = listed.iter().filter(|path| !belongs(path)).collect();
    assert!(strange.is_empty(), "in the crate, but not of it: {strange:?}");
    // What a machine leaves lying about is no source either.
    let left = |path: &&String| path.contains("__pycache__") || path.ends_with('~');
    assert_eq!(listed.iter().find(left), None);
    let bytes: u64 =
        listed.iter().filter_map(|it| fs::metadata(it).ok()).map(|it| it.len()).sum();
    assert!(
        bytes < 8_000_000,
        "{bytes} bytes, a quarter of it typefaces; once 6.7 million"
    );
}

#[test]
fn all_that_it_is_built_from_is_in_the_crate() {
    let listed = listed();
    let wanted = [
        "README.md",
        "Cargo.toml",
        "Cargo.lock",
        ".licences/MIT.txt",
        ".licences/Apache-2.0.txt",
    ];
    let folders = ["src", "themes"].into_iter().flat_map(below);
    let wanted = wanted.map(PathBuf::from).into_iter().chain(folders);
    let missing: Vec<_> = wanted
        .map(|path| path.to_string_lossy().replace('\\', "/"))
        .filter(|path| !listed.contains(path))
        .collect();
    assert!(missing.is_empty(), "not in the crate: {missing:?}");
}

/// The files that a source takes in by a plain path, from the crate's root.
fn taken_in(source: &Path) -> Vec<PathBuf> {
    let text = fs::read_to_string(source).expect("a source is text");
    let calls = ["include_str!(\"", "include_bytes!(\"", "include!(\""];
    let paths = calls.iter().flat_map(|call| text.split(call).skip(1));
    let paths = paths.filter_map(|rest| rest.split_once('"').map(|(path, _)| path));
    let at = source.parent().unwrap_or(Path::new(""));
    paths.map(|path| plain(&at.join(path))).collect()
}

/// A path without the steps that lead upward.
fn plain(path: &Path) -> PathBuf {
    let mut plain = PathBuf::new();
    for part in path.components() {
        if part == Component::ParentDir {
            plain.pop();
        } else {
            plain.push(part);
        }
    }
    plain
}

#[test]
fn what_sources_take_in_is_in_the_crate() {
    assert_eq!(plain(Path::new("src/a/../../b.csv")), Path::new("b.csv"));
    let listed = listed();
    let sources = below("src")
        .into_iter()
        .filter(|it| it.extension().is_some_and(|end| end == "rs"));
    let taken: Vec<PathBuf> = sources.flat_map(|source| taken_in(&source)).collect();
    assert!(taken.len() > 30, "they were read: {taken:?}");
    let missing: Vec<_> =
        taken.iter().filter(|path| !listed.contains(&*path.to_string_lossy())).collect();
    assert!(missing.is_empty(), "taken in, but not in the crate: {missing:?}");
}
