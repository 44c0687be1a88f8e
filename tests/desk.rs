//! The desk of `tourier preview --desk`: what it answers to its own page, and that nobody
//! else has anything read or written by it.
#![allow(clippy::disallowed_methods, reason = "files are written, time passes")]

#[path = "common/browser.rs"]
mod browser;
mod common;

use std::fs;
use std::io::{Read, Write};
use std::path::Path;
use std::time::{Duration, Instant};

use browser::{Answer, PATIENCE, Preview};
use common::course;
use serde_json::{Value, json};

const PATH: &str = "recipes/small-crescents.md";

fn desk(name: &str) -> Preview {
    let content = course(name);
    // Saves of a run before would still be kept.
    let folder = content.file_name().unwrap_or_default().to_string_lossy().into_owned();
    let saves = content.with_file_name(format!(".{folder}.tourier-saves"));
    let _ = fs::remove_dir_all(saves);
    let preview = Preview::with(content, &["--desk"]);
    preview.wait("/", |answer| answer.status() == "200");
    preview
}

/// A call as the desk's own page makes it; `lines` are added to its head.
fn head(desk: &Preview, name: &str, length: usize) -> String {
    let own = format!("127.0.0.1:{}", desk.port);
    format!(
        "POST /.preview/desk/do/{name} HTTP/1.1\r\nHost: {own}\r\nOrigin: http://{own}\r\n\
         X-Desk-Key: {}\r\nContent-Length: {length}\r\n\r\n",
        desk.key
    )
}

fn call(desk: &Preview, name: &str, data: &Value) -> (String, Value) {
    let body = data.to_string();
    let answer = desk.send(&(head(desk, name, body.len()) + &body));
    let data = serde_json::from_slice(&answer.body).unwrap_or(Value::Null);
    (answer.status().to_owned(), data)
}

/// Every file below a folder, with its bytes.
fn files(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let walk = walkdir::WalkDir::new(folder).sort_by_file_name().into_iter().flatten();
    let files = walk.filter(|entry| entry.file_type().is_file());
    let read = |entry: walkdir::DirEntry| {
        let bytes = fs::read(entry.path()).expect("it reads");
        (entry.path().display().to_string(), bytes)
    };
    files.map(read).collect()
}

#[test]
fn a_text_is_opened_changed_and_saved() {
    let desk = desk("desk-saves");
    let page = desk.get("/.preview/desk/");
    assert!(page.status() == "200" && page.text().contains("Content-Security-Policy"));
    assert!(!page.text().contains(&desk.key), "the key is told to nobody");

    let (_, all) = call(&desk, "texts", &json!({}));
    let all = all["texts"].as_array().expect("a list").clone();
    assert!(all.contains(&json!(PATH)) && all.contains(&json!("course.yaml")));

    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let text = stands["text"].as_str().expect("a text").to_owned();
    let typed = text.replace("bake: 205 °C", "bake: 190 °C");
    let sent = json!({ "path": PATH, "texts": { PATH: typed } });
    let (_, seen) = call(&desk, "type", &sent);
    let edition = seen["edition"].as_str().expect("an edition");
    let page = desk.get(&format!("/.preview/typed/{edition}/recipes/small-crescents/"));
    assert!(page.text().contains("190 °C") && page.text().contains("seen.js"));
    assert!(!desk.get("/recipes/small-crescents/").text().contains("190 °C"));
    let outline = seen["outline"].as_array().expect("its steps");
    let line = outline[0]["line"].as_u64().expect("a line") as usize;
    assert!(typed.lines().nth(line - 1).is_some_and(|line| line.starts_with("## ")));

    let save = json!({ "path": PATH, "text": typed, "mark": stands["mark"] });
    let (status, saved) = call(&desk, "save", &save);
    assert_eq!(status, "200", "{saved}");
    assert_eq!(fs::read_to_string(desk.content.join(PATH)).ok(), Some(typed.clone()));
    desk.wait("/recipes/small-crescents/", |answer| answer.text().contains("190 °C"));

    let (_, kept) = call(&desk, "earlier", &json!({ "path": PATH }));
    let kept = kept["earlier"].as_array().expect("a list").clone();
    assert_eq!(kept.len(), 2, "the save, and what stood before it: {kept:?}");
    let (_, back) =
        call(&desk, "back", &json!({ "path": PATH, "name": kept[1]["name"] }));
    assert_eq!(back["text"], json!(text));
    let two = json!({ "path": PATH, "old": typed, "new": text });
    let (_, differs) = call(&desk, "differs", &two);
    let lines = differs["changes"][0]["lines"].to_string();
    assert!(lines.contains("205 °C") && lines.contains("190 °C"), "{differs}");
}

#[test]
fn a_fault_is_told_at_its_letter() {
    let desk = desk("desk-faults");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let text = stands["text"].as_str().expect("a text");
    let typed = text.replace("bake: 205 °C", "bake: 190 elephants");
    let sent = json!({ "path": PATH, "texts": { PATH: typed } });
    let (_, seen) = call(&desk, "type", &sent);
    assert_eq!(seen["edition"], Value::Null);
    let fault = &seen["findings"][0];
    assert_eq!((&fault["file"], &fault["severity"]), (&json!(PATH), &json!("error")));
    let letters: Vec<u16> = typed.encode_utf16().collect();
    let at = |key: &str| fault[key].as_u64().expect("a place") as usize;
    let words = String::from_utf16_lossy(&letters[at("from")..at("to")]);
    assert!(words.contains("190 elephants"), "{words}");
}

#[test]
fn what_may_be_written_is_offered() {
    let desk = desk("desk-offers");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let text = stands["text"].as_str().expect("a text").to_owned();
    let typed = text.replacen("hands: ", "whe\nhands: ", 1);
    let at = typed.find("whe\nhands: ").expect("there") + "whe".len();
    let letters = typed[..at].encode_utf16().count();
    let spot = json!({ "path": PATH, "text": typed, "at": letters });
    let (_, found) = call(&desk, "offers", &spot);
    let found = found["offers"].as_array().expect("a list").clone();
    let is_where =
        |one: &&Value| one["label"].as_str().is_some_and(|it| it.starts_with("where"));
    let place = found.iter().find(is_where).expect("`where` is offered");
    assert_eq!(place["to"], json!(letters), "{place}");
}

#[test]
fn what_changed_on_the_disk_is_never_written_over() {
    let desk = desk("desk-other");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    desk.edit(PATH, "bake: 205 °C", "bake: 201 °C");
    let theirs = fs::read_to_string(desk.content.join(PATH)).expect("it is there");
    let save = json!({ "path": PATH, "text": "mine", "mark": stands["mark"] });
    let (status, other) = call(&desk, "save", &save);
    assert_eq!((status.as_str(), &other["text"]), ("409", &json!(theirs)));
    assert_eq!(fs::read_to_string(desk.content.join(PATH)).ok(), Some(theirs));
}

/// A class is shown in fields, and only the line that is said changes.
#[test]
fn a_class_is_filled_in() {
    let desk = desk("desk-form");
    let text = "title: A # one\nbakers: 4\nlate: { pair 1: 5 min }\n";
    let (_, form) = call(&desk, "form", &json!({ "text": text }));
    assert_eq!(
        (&form["fields"]["bakers"], &form["beyond"]),
        (&json!("4"), &json!(["late"]))
    );
    let said = json!({ "text": text, "fields": { "bakers": "6", "kit": ["oven: 2"] } });
    let (_, filled) = call(&desk, "fill", &said);
    let wanted = "title: A # one\nbakers: 6\nkit:\n  oven: 2\nlate: { pair 1: 5 min }\n";
    assert_eq!(filled["text"], json!(wanted));
    let said = json!({ "text": text, "fields": { "kit": ["oven"] } });
    let (status, why) = call(&desk, "fill", &said);
    assert_eq!(status, "422");
    assert!(why["said"].as_str().is_some_and(|why| why.contains("oven")), "{why}");
}

/// What pages share is kept by the browser as long as it is the same, and no longer.
#[test]
fn what_pages_share_is_kept_by_its_state() {
    let desk = desk("desk-look");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let text = stands["text"].as_str().expect("a text").to_owned();
    let style = |path: &str, text: &str| {
        let sent = json!({ "path": PATH, "texts": { path: text } });
        let (_, seen) = call(&desk, "type", &sent);
        let edition = seen["edition"].as_str().expect("an edition");
        let page =
            desk.get(&format!("/.preview/typed/{edition}/recipes/small-crescents/"));
        let page = page.text();
        let (_, rest) = page.split_once("rel=\"stylesheet\" href=\"").expect("a style");
        rest.split('"').next().unwrap_or_default().to_owned()
    };
    let one = style(PATH, &text);
    assert!(one.starts_with("/.preview/look/"), "{one}");
    let answer = desk.get(&one);
    assert!(
        answer.status() == "200" && answer.head.contains("immutable"),
        "{}",
        answer.head
    );
    let other = text.replace("bake: 205 °C", "bake: 190 °C");
    assert_eq!(style(PATH, &other), one);
    let (_, course) = call(&desk, "open", &json!({ "path": "course.yaml" }));
    let course =
        course["text"].as_str().expect("a text").replacen("title: ", "title: On ", 1);
    assert_ne!(style("course.yaml", &course), one);
    let outside = one.replace("assets/tourier.css", "recipes/small-crescents/");
    assert_eq!(desk.get(&outside).status(), "404");
}

/// Before publishing the desk says what would change since it published last.
#[test]
fn what_would_change_is_told_before_publishing() {
    let content = course("desk-publishes/content");
    let folder = content.with_file_name("");
    for old in [".content.tourier-published", "output"] {
        let old = folder.join(old);
        let _ = fs::remove_file(&old).or_else(|_| fs::remove_dir_all(&old));
    }
    let desk = Preview::within(content, &["--desk"], &folder);
    desk.wait("/", |answer| answer.status() == "200");
    let would = || call(&desk, "would-change", &json!({})).1;
    assert_eq!(would()["known"], json!(false));
    call(&desk, "publish", &json!({}));
    let begun = Instant::now();
    let end = loop {
        let (_, now) = call(&desk, "progress", &json!({}));
        if now["running"] == json!(false) {
            break now;
        }
        assert!(begun.elapsed() < PATIENCE * 3, "{now}");
        std::thread::sleep(Duration::from_millis(100));
    };
    assert_eq!(end["stands"], json!(true), "{end}");
    assert!(folder.join("output/index.html").is_file());
    assert_eq!(would()["changes"], json!([]));
    desk.edit(PATH, "bake: 205 °C", "bake: 190 °C");
    fs::write(desk.content.join("techniques/resting.md"), "---\ntitle: Resting\nsummary: A dough that rests rolls out more easily.\n---\n\nCover it.\n").expect("written");
    let told = would();
    let said = told["changes"].to_string();
    assert!(said.contains("205 °C") && said.contains("190 °C"), "{told}");
    assert!(said.contains("Resting") && said.contains("new"), "{told}");
    desk.edit(PATH, "bake: 190 °C", "bake: 190 elephants");
    assert_eq!(would()["sound"], json!(false));
}

/// With a git folder it is said what is not committed; nothing is where there is none.
#[test]
fn what_is_not_committed_is_told() {
    let desk = desk("desk-commits");
    // The project's own repository leaves out what tests make.
    let git = |words: &[&str]| {
        let run = std::process::Command::new("git")
            .args(["-c", "user.name=Orla", "-c", "user.email=orla@saltmarsh.example"])
            .args(words)
            .current_dir(&desk.content)
            .output();
        assert!(run.expect("git runs").status.success(), "{words:?}");
    };
    let told = || call(&desk, "uncommitted", &json!({})).1["files"].clone();
    git(&["init", "--quiet"]);
    git(&["add", "--all"]);
    git(&["commit", "--quiet", "--message", "begun"]);
    assert_eq!(told(), json!([]));
    desk.edit(PATH, "bake: 205 °C", "bake: 190 °C");
    fs::write(desk.content.join("recipes/plain rolls.txt"), "x").expect("written");
    fs::remove_file(desk.content.join("techniques/book-turn.md")).expect("removed");
    let all = json!([
        { "path": PATH, "stands": "changed" },
        { "path": "techniques/book-turn.md", "stands": "left out" },
        { "path": "recipes/plain rolls.txt", "stands": "new" },
    ]);
    assert_eq!(told(), all);
    fs::remove_dir_all(desk.content.join(".git")).expect("removed");
    let outside = told();
    assert!(outside.is_null() || outside == json!([]), "{outside}");
}

/// A picture as a phone takes it: lying on its side, with its maker and place beside it.
#[test]
fn a_picture_is_turned_and_loses_what_the_camera_noted() {
    let desk = desk("desk-pictures");
    let mut plain = std::io::Cursor::new(Vec::new());
    let picture = image::RgbImage::from_fn(3200, 2000, |x, _| {
        if x < 1600 { image::Rgb([200, 30, 30]) } else { image::Rgb([30, 30, 200]) }
    });
    picture.write_to(&mut plain, image::ImageFormat::Jpeg).expect("written");
    let plain = plain.into_inner();
    // Exif 2.32, 4.6: a TIFF head, and two entries: the maker (0x010f), and how the picture
    // is to be turned (0x0112), 6: a quarter to the right.
    let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x02".to_vec();
    exif.extend(b"\x01\x0f\0\x02\0\0\0\x08\0\0\0\x26");
    exif.extend(b"\x01\x12\0\x03\0\0\0\x01\0\x06\0\0");
    exif.extend(b"\0\0\0\0Nobody1\0");
    let length = u16::try_from(exif.len() + 2).expect("short").to_be_bytes();
    let mut taken = vec![0xff, 0xd8, 0xff, 0xe1];
    taken.extend(length);
    taken.extend(exif);
    taken.extend(&plain[2..]);
    let mut request = head(&desk, "picture/IMG%200815.JPG", taken.len()).into_bytes();
    request.extend(&taken);
    let mut stream = desk.call();
    stream.write_all(&request).expect("sent");
    let mut answer = String::new();
    stream.read_to_string(&mut answer).expect("answered");
    assert!(answer.contains("\"name\":\"img-0815.jpg\""), "{answer}");
    let bytes = fs::read(desk.content.join("media/img-0815.jpg")).expect("it stands");
    assert!(!bytes.windows(6).any(|it| it == b"Nobody") && bytes.len() < taken.len());
    let small = image::load_from_memory(&bytes).expect("a picture").into_rgb8();
    assert!(small.height() > small.width(), "{:?}", small.dimensions());
    assert!(small.width() <= 2000 && !bytes.windows(4).any(|it| it == b"Exif"));
    // What lay on the left stands above: a quarter to the right.
    let (above, below) =
        (small.get_pixel(50, 50), small.get_pixel(50, small.height() - 50));
    assert!(above[0] > 150 && below[2] > 150, "{above:?} {below:?}");
}

/// Two desks that save at the same moment: one of them is told, and nothing is lost.
#[test]
fn of_two_saves_at_once_one_is_told() {
    let desk = desk("desk-two");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let save = |text: String| {
        call(
            &desk,
            "save",
            &json!({ "path": PATH, "text": text, "mark": stands["mark"] }),
        )
        .0
    };
    let all: Vec<String> = std::thread::scope(|scope| {
        let each = |number: usize| scope.spawn(move || save(format!("text {number}")));
        let running: Vec<_> = (0..8).map(each).collect();
        running.into_iter().map(|it| it.join().expect("answered")).collect()
    });
    assert_eq!(all.iter().filter(|status| *status == "200").count(), 1, "{all:?}");
    assert_eq!(all.iter().filter(|status| *status == "409").count(), 7, "{all:?}");
}

/// Killed at any moment of a save, the text that stood or the new one is there, whole.
#[cfg(unix)]
#[test]
fn a_kill_while_saving_leaves_a_whole_text() {
    let desk = desk("desk-killed");
    let (_, stands) = call(&desk, "open", &json!({ "path": PATH }));
    let before = stands["text"].as_str().expect("a text").to_owned();
    let texts = ["a line of flour\n", "a line of salt\n"].map(|it| it.repeat(50_000));
    let save = || {
        let mut mark = stands["mark"].clone();
        for text in texts.iter().cycle() {
            let one = json!({ "path": PATH, "text": text, "mark": mark });
            mark = call(&desk, "save", &one).1["mark"].clone();
        }
    };
    let number = desk.run.id().to_string();
    std::thread::scope(|scope| {
        let saving = scope.spawn(save);
        std::thread::sleep(Duration::from_millis(900));
        let told = std::process::Command::new("kill").args(["-KILL", &number]).status();
        assert!(told.is_ok_and(|told| told.success()));
        // It goes on until nobody answers any more.
        let _ = saving.join();
    });
    let after = fs::read_to_string(desk.content.join(PATH)).expect("it is there");
    assert!(after == before || texts.contains(&after), "{} bytes", after.len());
    let again = Preview::with(desk.content.clone(), &["--desk"]);
    let (_, stands) = call(&again, "open", &json!({ "path": PATH }));
    assert_eq!(stands["text"], json!(after));
    let (_, kept) = call(&again, "earlier", &json!({ "path": PATH }));
    for one in kept["earlier"].as_array().expect("a list") {
        let (_, back) =
            call(&again, "back", &json!({ "path": PATH, "name": one["name"] }));
        let back = back["text"].as_str().expect("a text").to_owned();
        assert!(back == before || texts.contains(&back), "{} bytes", back.len());
    }
}

#[test]
#[expect(clippy::too_many_lines, reason = "a table of calls")]
fn nobody_else_has_anything_written() {
    let desk = desk("desk-forged");
    let before = files(&desk.content);
    let (own, key) = (format!("127.0.0.1:{}", desk.port), desk.key.clone());
    let body = json!({ "path": "course.yaml", "text": "title: theirs", "mark": null });
    let body = body.to_string();
    let good = [
        ("Host", own.clone()),
        ("Origin", format!("http://{own}")),
        ("X-Desk-Key", key.clone()),
    ];
    let send =
        |method: &str, path: &str, change: &[(&str, &str)], drop: &str| -> Answer {
            let mut head = format!("{method} {path} HTTP/1.1\r\n");
            for (name, value) in &good {
                let other = change.iter().find(|(of, _)| of == name);
                if *name != drop {
                    head += &format!(
                        "{name}: {}\r\n",
                        other.map_or(value.as_str(), |it| it.1)
                    );
                }
            }
            for (name, value) in
                change.iter().filter(|(of, _)| good.iter().all(|it| it.0 != *of))
            {
                head += &format!("{name}: {value}\r\n");
            }
            desk.send(&format!("{head}Content-Length: {}\r\n\r\n{body}", body.len()))
        };
    let save = "/.preview/desk/do/save";
    let local = format!("http://localhost:{}", desk.port);
    let next = format!("http://127.0.0.1:{}", desk.port.wrapping_add(1));
    let wrong = "0".repeat(key.len());
    for (status, change, drop) in [
        ("403", &[("Origin", "http://elsewhere.example")][..], ""),
        ("403", &[("Origin", "null")], ""),
        ("403", &[("Origin", local.as_str())], ""),
        ("403", &[("Origin", next.as_str())], ""),
        ("403", &[], "Origin"),
        ("403", &[("Sec-Fetch-Site", "cross-site")], ""),
        ("403", &[("Sec-Fetch-Site", "same-site")], ""),
        ("421", &[("Host", "elsewhere.example")], ""),
        ("421", &[("Host", "127.0.0.1")], ""),
        ("403", &[("X-Desk-Key", wrong.as_str())], ""),
        ("403", &[("X-Desk-Key", &key[1..])], ""),
        ("403", &[], "X-Desk-Key"),
    ] {
        let answer = send("POST", save, change, drop);
        assert_eq!(answer.status(), status, "{change:?} without {drop:?}");
    }
    for (status, method, path) in [
        ("405", "PUT", save),
        ("405", "DELETE", save),
        ("405", "OPTIONS", save),
        ("405", "POST", "/recipes/small-crescents/"),
        ("405", "POST", "/.preview/desk/"),
        ("400", "POST", "/.preview/desk/do/../../save"),
        ("400", "POST", "/.preview/desk/do/%2e%2e/save"),
        ("404", "POST", "/.preview/desk/do/other"),
        ("404", "GET", save),
    ] {
        assert_eq!(send(method, path, &[], "").status(), status, "{method} {path}");
    }
    assert!(files(&desk.content) == before, "nothing was written");
    // With the key on its own page it would have been: the mark alone keeps it out.
    assert_eq!(send("POST", save, &[], "").status(), "409");
}

#[test]
fn only_texts_below_the_content_are_written() {
    let desk = desk("desk-paths");
    let outside = desk.content.with_file_name("desk-paths-outside");
    let _ = fs::remove_dir_all(&outside);
    fs::create_dir_all(&outside).expect("a folder");
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(&outside, desk.content.join("techniques-2"))
            .expect("a link");
        let _ = fs::remove_dir_all(desk.content.join("in"));
        std::os::unix::fs::symlink(&outside, desk.content.join("in")).expect("a link");
        let link = desk.content.join("recipes/linked.md");
        std::os::unix::fs::symlink(outside.join("a.md"), link).expect("a link");
    }
    let before = (files(&desk.content), files(&outside));
    for path in [
        "../course.yaml",
        "recipes/../../a.md",
        "/tmp/a.md",
        "recipes/%2e%2e%2fa.md",
        "recipes/..%5ca.md",
        "recipes\\a.md",
        "recipes/a.md\u{0}",
        "recipes/a/b.md",
        "recipes/.a.md",
        "recipes/a.html",
        "media/a.jpg",
        ".git/hooks/post-commit",
        "techniques-2/a.md",
        "in/fr/words.yaml",
        "recipes/linked.md",
    ] {
        for (name, data) in [
            ("save", json!({ "path": path, "text": "x", "mark": null })),
            ("open", json!({ "path": path })),
            ("earlier", json!({ "path": path })),
            ("back", json!({ "path": path, "name": "00000001-00" })),
        ] {
            let (status, said) = call(&desk, name, &data);
            assert_eq!(status, "403", "{name} {path}: {said}");
            assert!(said["said"].as_str().is_some_and(|said| !said.is_empty()));
        }
    }
    assert!((files(&desk.content), files(&outside)) == before, "nothing was written");
}

#[test]
fn what_is_huge_or_slow_is_given_up() {
    let desk = desk("desk-bounds");
    let before = files(&desk.content);
    let huge = 64 << 20;
    let mut line = desk.call();
    line.write_all(head(&desk, "save", huge).as_bytes()).expect("sent");
    let part = vec![b' '; 1 << 20];
    // It may hang up before all is sent.
    let sent = (0..64).take_while(|_| line.write_all(&part).is_ok()).count();
    let mut answer = Vec::new();
    let _ = line.read_to_end(&mut answer);
    let answer = String::from_utf8_lossy(&answer).into_owned();
    assert!(sent < 64 || answer.contains(" 413 "), "{answer}");
    let (status, _) =
        call(&desk, "save", &json!({ "path": PATH, "text": "x".repeat(2 << 20) }));
    assert_eq!(status, "403", "longer than a text may be");

    let begun = Instant::now();
    let mut slow = desk.call();
    slow.write_all(head(&desk, "save", 1000).as_bytes()).expect("sent");
    let mut answer = String::new();
    let (one, whole) = (Duration::from_millis(500), Duration::from_secs(30));
    slow.set_read_timeout(Some(one)).expect("set");
    while !answer.contains("408") && begun.elapsed() < whole {
        let _ = slow.write_all(b" ");
        let mut part = [0; 1024];
        if let Ok(count) = slow.read(&mut part) {
            answer += &String::from_utf8_lossy(&part[..count]);
        }
    }
    assert!(answer.contains(" 408 "), "{answer}");
    assert!(begun.elapsed() < PATIENCE);
    assert!(files(&desk.content) == before, "nothing was written");
}

/// Where the preview is only to be read there is no desk: nothing is written for anybody.
#[test]
fn there_is_no_desk_where_it_is_only_to_read() {
    let preview = Preview::with(course("desk-none"), &["--to-read"]);
    preview.wait("/", |answer| answer.status() == "200");
    assert!(preview.key.is_empty());
    assert_eq!(preview.get("/.preview/desk/").status(), "404");
    let mut head = head(&preview, "save", 2);
    head = head.replace("X-Desk-Key: \r\n", "");
    assert_eq!(preview.send(&(head + "{}")).status(), "405");
}
