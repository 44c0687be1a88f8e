//! What the program says of itself: version, completions, manual page.

mod common;

use std::path::Path;
use std::process::{Command, Stdio};

use common::tourier;

fn said(arguments: &[&str]) -> String {
    let answer = tourier(Path::new("."), arguments);
    assert_eq!(answer.code, 0, "{}", answer.err);
    answer.out
}

#[test]
fn the_version_names_the_pantrys_source() {
    let version =
        concat!("tourier ", env!("CARGO_PKG_VERSION"), " (pantry: USDA SR28)\n");
    assert_eq!(said(&["--version"]), version);
}

#[test]
fn completions_and_the_manual_know_every_command() {
    let manual = said(&["manual"]);
    assert!(manual.contains(".TH tourier 1"), "{manual}");
    assert!(!manual.contains("preview(1)"), "no page of its own: {manual}");
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let completions = said(&["completions", shell]);
        for command in ["publish", "preview", "changes", "start", "timetable"] {
            assert!(completions.contains(command), "{shell}: {command}");
            let heading = format!("TOURIER {}", command.to_uppercase());
            assert!(manual.contains(&heading), "{command}");
        }
    }
}

/// `tourier facts … | head -1`: who has read enough closes the pipe.
#[test]
fn a_reader_that_has_seen_enough_is_no_fault() {
    let commands: [&[&str]; 6] = [
        &["facts", "small-crescents"],
        &["facts", "--schema"],
        &["scale", "small-crescents"],
        &["proof"],
        &["proof", "--as", "json"],
        &["convert", "1 cup bread flour", "g"],
    ];
    for arguments in commands {
        let mut run = Command::new(env!("CARGO_BIN_EXE_tourier"))
            .args(["--content", common::COURSE])
            .args(arguments)
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program starts");
        drop(run.stdout.take());
        let answer = run.wait_with_output().expect("the program ends");
        let said = String::from_utf8_lossy(&answer.stderr);
        assert_eq!(answer.status.code(), Some(0), "{arguments:?}: {said}");
    }
}
