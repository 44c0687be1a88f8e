//! `tourier preview`: what it answers, what it refuses, and what follows a save.
#![allow(clippy::disallowed_methods, reason = "files are written, time passes")]

#[path = "common/browser.rs"]
mod browser;
mod common;

use std::fs;
use std::io::Write;
use std::net::TcpStream;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use browser::{PATIENCE, Preview, event};
use common::course;

const CRESCENTS: &str = "recipes/small-crescents.md";
const PAGE: &str = "/recipes/small-crescents/";

#[test]
fn pages_and_handouts_are_answered() {
    let preview = Preview::start("preview-answers");
    let page = preview.get(PAGE);
    assert_eq!(page.status(), "200");
    assert!(page.head.contains("Content-Type: text/html"), "{}", page.head);
    let text = page.text();
    assert!(text.contains("Small crescents") && text.contains("/.preview/preview.js"));
    // The page's own rule lets the script in: it is a file from the same place.
    assert!(text.contains("Content-Security-Policy"));
    assert!(!text.contains("data-offline") && !text.contains("<details class=\"preview"));
    assert!(preview.get("/.preview/preview.js").text().contains("EventSource"));

    let pdf = preview.get(&format!("{PAGE}small-crescents-student-metric-a4.pdf"));
    assert_eq!(pdf.status(), "200");
    assert!(pdf.head.contains("application/pdf") && pdf.body.starts_with(b"%PDF"));

    let folder = preview.get(PAGE.trim_end_matches('/'));
    assert_eq!(folder.status(), "307");
    assert!(folder.head.contains(&format!("Location: {PAGE}\r\n")), "{}", folder.head);
    assert_eq!(preview.get("/no-such-page/").status(), "404");
    let own = preview.port;
    let head = preview.send(&format!("HEAD / HTTP/1.1\r\nHost: 127.0.0.1:{own}\r\n\r\n"));
    assert!(head.status() == "200" && head.body.is_empty());
}

#[test]
fn strangers_are_refused() {
    let preview = Preview::start("preview-refuses");
    let own = preview.port;
    for (status, request) in [
        ("421", "GET / HTTP/1.1\r\nHost: elsewhere.example\r\n\r\n".to_owned()),
        ("421", format!("GET / HTTP/1.1\r\nHost: elsewhere.example:{own}\r\n\r\n")),
        ("421", "GET / HTTP/1.1\r\n\r\n".to_owned()),
        ("405", format!("POST / HTTP/1.1\r\nHost: localhost:{own}\r\n\r\n")),
        ("400", format!("GET /../course.yaml HTTP/1.1\r\nHost: localhost:{own}\r\n\r\n")),
        (
            "400",
            format!(
                "GET /%2e%2e/%2e%2e/etc/passwd HTTP/1.1\r\nHost: localhost:{own}\r\n\r\n"
            ),
        ),
        ("400", format!("GET //etc/passwd HTTP/1.1\r\nHost: localhost:{own}\r\n\r\n")),
        ("404", format!("GET /course.yaml HTTP/1.1\r\nHost: localhost:{own}\r\n\r\n")),
        ("400", "nonsense\r\n\r\n".to_owned()),
        ("431", format!("GET /{} HTTP/1.1\r\n\r\n", "a".repeat(20_000))),
    ] {
        let answer = preview.send(&request);
        assert_eq!(answer.status(), status, "{request}");
        assert!(!answer.text().contains("title:"), "{request}");
    }
}

/// Callers who never ask to the end, and pages that only wait, make room for who asks.
#[test]
fn a_hundred_trickling_calls_keep_nobody_out() {
    let preview = Preview::start("preview-trickle");
    let waiting: Vec<_> = (0..60).map(|_| preview.listen()).collect();
    let mut trickling: Vec<TcpStream> = (0..150).map(|_| preview.call()).collect();
    for number in 0..3 {
        for line in &mut trickling {
            // Whoever was hung up on cannot send any more.
            let _ = line.write_all(b"G");
        }
        let begun = Instant::now();
        assert_eq!(preview.get(PAGE).status(), "200", "{number}");
        assert!(
            begun.elapsed() < Duration::from_secs(5),
            "it took {:?}",
            begun.elapsed()
        );
    }
    drop(waiting);
}

#[test]
fn a_save_is_told_and_a_fault_leaves_the_last_good_page() {
    let preview = Preview::start("preview-saves");
    let (mut line, first) = preview.listen();
    assert!(preview.get(PAGE).text().contains(&format!("data-mark=\"{first}\"")));

    preview.edit(CRESCENTS, "bake: 205 °C", "bake: 190 °C");
    let second = event(&mut line);
    assert_ne!(first, second);
    let page = preview.get(PAGE).text();
    assert!(page.contains("190 °C") && page.contains(&format!("data-mark=\"{second}\"")));

    preview.edit(CRESCENTS, "bake: 190 °C", "bake: 190 elephants");
    let third = event(&mut line);
    let page = preview.get(PAGE).text();
    assert!(page.contains("190 °C") && page.contains("data-mark"), "the last good page");
    assert!(page.contains(&format!("data-mark=\"{third}\"")));
    let panel = page.split("<details class=\"preview-faults\" open>").nth(1);
    assert!(panel.is_some_and(|panel| panel.contains("190 elephants")), "{page}");

    preview.edit(CRESCENTS, "190 elephants", "175 °C");
    event(&mut line);
    let page = preview.get(PAGE).text();
    assert!(page.contains("175 °C") && !page.contains("preview-faults\" open"));

    // A caution stops nothing, and is said all the same.
    preview.edit("recipes/small-block.md", "250 g butter, cold", "120 g butter, cold");
    event(&mut line);
    let page = preview.get(PAGE).text();
    let panel = page.split("<details class=\"preview-faults mild\">").nth(1);
    assert!(panel.is_some_and(|panel| panel.contains("fat-share-unusual")), "{page}");
}

#[test]
fn a_course_that_is_faulty_from_the_start_shows_its_faults() {
    let content = course("preview-faulty");
    let file = content.join(CRESCENTS);
    let text = fs::read_to_string(&file).expect("the file is there");
    fs::write(&file, text.replace("205 °C, 17", "205 elephants, 17")).expect("written");
    let preview = Preview::on(content);
    let page = preview.wait("/", |answer| answer.text().contains("205 elephants"));
    assert_eq!(page.status(), "503");
    let (mut line, _) = preview.listen();
    preview.edit(CRESCENTS, "205 elephants", "205 °C");
    event(&mut line);
    assert_eq!(preview.get("/").status(), "200");
}

#[test]
fn a_port_in_use_is_named() {
    let taken = std::net::TcpListener::bind("127.0.0.1:0").expect("a port");
    let port = taken.local_addr().expect("known").port().to_string();
    let answer =
        common::tourier(Path::new(common::COURSE), &["preview", "--port", &port]);
    assert_eq!(answer.code, 2, "{}", answer.err);
    assert!(answer.err.contains("is in use"), "{}", answer.err);
}

/// Ctrl-C ends it at once and well, even with a line open.
#[cfg(unix)]
#[test]
fn it_stops_when_told() {
    let mut preview = Preview::start("preview-stops");
    let (_line, _) = preview.listen();
    let number = preview.run.id().to_string();
    let told = Command::new("kill").args(["-INT", &number]).status();
    assert!(told.is_ok_and(|told| told.success()));
    let begun = Instant::now();
    let code = loop {
        if let Some(status) = preview.run.try_wait().expect("it can be asked") {
            break status.code();
        }
        assert!(begun.elapsed() < PATIENCE, "it goes on");
        std::thread::sleep(Duration::from_millis(20));
    };
    assert_eq!(code, Some(0));
    assert!(!Path::new("output.next").exists());
}
