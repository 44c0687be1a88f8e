//! `tourier preview --room`: what phones on the same network are answered, what they may mark,
//! and that nothing else is read or written by the code that lets them in.
#![allow(clippy::disallowed_methods, reason = "files are written, time passes")]

#[path = "common/browser.rs"]
mod browser;
mod common;

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use browser::{Answer, PATIENCE};
use common::course_of;

/// An address of this machine that is not the one where the desk is.
const HOST: &str = "127.0.0.2";
const EVENING: &str = "/.preview/evening/evening-3";

/// A preview with a room; it ends with the test.
struct Room {
    run: Child,
    content: PathBuf,
    /// The room's port and key.
    port: u16,
    key: String,
    /// The port and the key of the desk.
    desk: (u16, String),
}

impl Drop for Room {
    fn drop(&mut self) {
        let _ = self.run.kill();
        let _ = self.run.wait();
    }
}

/// The demonstration course, with a class that began forty minutes ago: its zone is one in
/// which it is the afternoon now, so that no session runs over midnight.
fn course(name: &str) -> PathBuf {
    let content = course_of(name, "content");
    let now = jiff::Timestamp::now();
    let hour = i32::from(now.to_zoned_datetime(jiff::tz::TimeZone::UTC).hour());
    // In this part of the database names have the sign of the way to Greenwich.
    let (zone, ahead) = match 14 - hour {
        ahead @ 0.. => (format!("Etc/GMT-{ahead}"), ahead),
        behind => (format!("Etc/GMT+{}", -behind), behind),
    };
    let zone = zone.replace("GMT-0", "GMT");
    let file = content.join("course.yaml");
    let text = fs::read_to_string(&file).expect("the course");
    let text = text.replace("Europe/Dublin", &zone);
    fs::write(&file, text.replace("06:15 to 22:30", "06:00 to 22:00")).expect("written");
    let here = now + jiff::Span::new().hours(ahead) - jiff::Span::new().minutes(40);
    let here = here.to_zoned_datetime(jiff::tz::TimeZone::UTC).datetime();
    let time = |hours: i64| {
        let at = here + jiff::Span::new().hours(hours);
        at.strftime("%H:%M").to_string()
    };
    let next = here.date().tomorrow().expect("a day");
    let (day, from, to) = (here.date(), time(0), time(3));
    let file = content.join("classes/evening-3.yaml");
    let text = fs::read_to_string(&file).expect("the class");
    let text = text
        .replace("2027-03-02 18:00 to 21:00", &format!("{day} {from} to {to}"))
        .replace("2027-03-03 18:00 to 21:30", &format!("{next} {from} to {}", time(4)));
    fs::write(&file, text).expect("written");
    content
}

fn room(name: &str) -> Room {
    let content = course(name);
    let mut run = Command::new(env!("CARGO_BIN_EXE_tourier"))
        .args(["--color", "never", "--content"])
        .arg(&content)
        .args(["preview", "--no-browser", "--room", HOST])
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("the program starts");
    let mut out = BufReader::new(run.stdout.take().expect("its output is read"));
    let mut line = || {
        let mut line = String::new();
        out.read_line(&mut line).expect("it says where it is");
        line.split_whitespace()
            .find_map(|word| word.strip_prefix("http://").map(str::to_owned))
            .expect("an address")
    };
    let (desk, own) = (line(), line());
    let port = |address: &str| {
        let rest = address.split(':').nth(1).and_then(|rest| rest.split('/').next());
        rest.and_then(|port| port.parse().ok()).expect("a port")
    };
    assert!(own.starts_with(&format!("{HOST}:")), "{own}");
    let key = own.rsplit('/').next().expect("a key").to_owned();
    let desk_key = desk.split('#').nth(1).expect("a key").to_owned();
    let room =
        Room { run, content, port: port(&own), key, desk: (port(&desk), desk_key) };
    let begun = Instant::now();
    while room.get("/").status() != "200" {
        assert!(begun.elapsed() < PATIENCE, "{}", room.get("/").text());
        std::thread::sleep(Duration::from_millis(50));
    }
    room
}

fn sent(address: (&str, u16), request: &str) -> Answer {
    let mut stream = TcpStream::connect(address).expect("it listens");
    stream.set_read_timeout(Some(PATIENCE)).expect("set");
    // One that is refused may be answered before it has said everything.
    let _ = stream.write_all(request.as_bytes());
    let mut bytes = Vec::new();
    let _ = stream.read_to_end(&mut bytes);
    let end = bytes.windows(4).position(|end| end == b"\r\n\r\n").expect("a head");
    let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
    Answer { head, body: bytes[end + 4..].to_vec() }
}

impl Room {
    fn send(&self, request: &str) -> Answer {
        sent((HOST, self.port), request)
    }

    /// The lines that a phone sends with each request once it was let in.
    fn own(&self) -> String {
        let (port, key) = (self.port, &self.key);
        format!("Host: {HOST}:{port}\r\nCookie: room-{port}={key}\r\n")
    }

    fn get(&self, path: &str) -> Answer {
        self.send(&format!("GET {path} HTTP/1.1\r\n{}\r\n", self.own()))
    }

    fn post(&self, path: &str, lines: &str, body: &str) -> Answer {
        let length = body.len();
        self.send(&format!(
            "POST {path} HTTP/1.1\r\n{lines}Content-Length: {length}\r\n\r\n{body}"
        ))
    }

    /// A form, as a page of the room sends it.
    fn mark(&self, body: &str) -> Answer {
        let from = format!("{}Origin: http://{HOST}:{}\r\n", self.own(), self.port);
        self.post(EVENING, &from, body)
    }

    fn day(&self) -> String {
        let file = self.content.join("classes/evening-3.day.txt");
        fs::read_to_string(file).unwrap_or_default()
    }

    /// Every file of the course, with its bytes.
    fn files(&self) -> Vec<(PathBuf, Vec<u8>)> {
        let walk = walkdir::WalkDir::new(&self.content).sort_by_file_name();
        let files = walk.into_iter().flatten().filter(|it| it.file_type().is_file());
        files.map(|it| (it.path().into(), fs::read(it.path()).expect("read"))).collect()
    }
}

#[test]
fn a_phone_is_let_in_reads_and_marks() {
    let room = room("room-marks");
    let host = format!("Host: {HOST}:{}\r\n", room.port);
    let entered = room.send(&format!("GET /{} HTTP/1.1\r\n{host}\r\n", room.key));
    assert_eq!(entered.status(), "303");
    let cookie = format!("Set-Cookie: room-{}={}; Path=/; HttpOnly", room.port, room.key);
    assert!(entered.head.contains(&cookie), "{}", entered.head);
    assert!(entered.head.contains("Location: /\r\n"), "{}", entered.head);

    let page = room.get("/recipes/crescents/").text();
    assert!(page.contains("Crescents") && page.contains("href=\"/.preview/evening/\""));
    assert!(!page.contains("preview.js"), "nothing of the desk is on it");
    let pdf = room.get("/recipes/crescents/crescents-student-metric-a4.pdf");
    assert!(pdf.status() == "200" && pdf.body.starts_with(b"%PDF"));
    let list = room.get("/.preview/evening/").text();
    assert!(list.contains(&format!("href=\"{EVENING}\"")), "{list}");

    let evening = room.get(EVENING);
    assert_eq!(evening.status(), "200");
    let text = evening.text();
    assert!(text.contains("The next 30 minutes") && text.contains("Lock in the butter"));
    assert!(text.contains("Nothing changes") && !text.contains("<script"), "{text}");
    assert_eq!(room.day(), "", "a look writes nothing");

    let step = "layered-dough%2Flock-in-the-butter";
    for (form, said) in [
        ("said=pair+3+late+30".to_owned(), "pair 3 late 30".to_owned()),
        (
            format!("who=instructor&step={step}&how=begun"),
            "instructor: layered-dough/lock-in-the-butter begun".to_owned(),
        ),
        ("who=groups+2&late=5".to_owned(), "groups 2 late 5".to_owned()),
    ] {
        let marked = room.mark(&form);
        assert_eq!(marked.status(), "303", "{form}: {}", marked.text());
        assert!(marked.head.contains(&format!("Location: {EVENING}\r\n")));
        let day = room.day();
        assert!(day.lines().last().is_some_and(|line| line.ends_with(&said)), "{day}");
    }
    let text = room.get(EVENING).text();
    assert!(
        text.contains("pair 3 late 30") && text.contains("What changed at"),
        "{text}"
    );
    assert_eq!(room.mark("said=take+back").status(), "303");
    assert!(room.day().ends_with("taken back\n"), "{}", room.day());
    // `today` itself goes on from there.
    let words = ["today", "evening-3", "--try"];
    let answer = common::tourier(&room.content, &words);
    assert!(answer.out.contains("next 30 minutes"), "{}{}", answer.out, answer.err);
}

#[test]
fn what_does_not_read_is_answered_and_not_kept() {
    let room = room("room-unread");
    for (status, form) in [
        ("422", "said=pair+3+hungry"),
        ("422", "said=pair+30+late+10"),
        ("422", "said=all%3A+whistle"),
        ("400", "who=all&step=cut&how=eaten"),
        ("400", ""),
        ("413", &format!("said={}", "a".repeat(500))),
        ("413", &format!("said=all+late+5&x={}", "a".repeat(10_000))),
    ] {
        let answer = room.mark(form);
        assert_eq!(answer.status(), status, "{form}: {}", answer.text());
    }
    let answer = room.mark("said=%3Cb%3E+hungry");
    assert!(answer.text().contains("&lt;b&gt; hungry"), "{}", answer.text());
    // What follows a line's end is another thing said, never another line of the file.
    assert_eq!(room.mark("said=pair+1+late+5%0D%0A%23+mine").status(), "422");
    assert_eq!(room.day(), "");
    assert_eq!(room.get("/.preview/evening/nobody").status(), "404");
    assert_eq!(room.get("/.preview/evening/%2e%2e%2fcourse").status(), "400");
    let far = room.get("/.preview/evening/saturday-puff").text();
    assert!(far.contains("Its next session begins on"), "{far}");
    let flood: Vec<String> =
        (0..40).map(|_| room.mark("said=pair+3+hungry").status().to_owned()).collect();
    assert!(flood.contains(&"429".to_owned()), "{flood:?}");
}

#[test]
fn nobody_else_is_let_in() {
    let room = room("room-refuses");
    let before = room.files();
    let (port, key) = (room.port, &room.key);
    let host = format!("Host: {HOST}:{port}\r\n");
    let from = format!("Origin: http://{HOST}:{port}\r\n");
    let cookie = format!("Cookie: room-{port}={key}\r\n");
    let wrong = format!("Cookie: room-{port}={}\r\n", "0".repeat(key.len()));
    let desk = format!("X-Desk-Key: {}\r\n", room.desk.1);
    for (status, path, lines) in [
        ("403", "/", host.clone()),
        ("403", "/recipes/crescents/", format!("{host}{wrong}")),
        ("403", EVENING, format!("{host}{desk}")),
        ("421", "/", format!("Host: localhost:{port}\r\n{cookie}")),
        ("421", "/", format!("Host: 127.0.0.1:{port}\r\n{cookie}")),
        ("421", "/", format!("Host: elsewhere.example:{port}\r\n{cookie}")),
        ("400", "/../course.yaml", format!("{host}{cookie}")),
        ("400", "/%2e%2e/course.yaml", format!("{host}{cookie}")),
        ("404", "/course.yaml", format!("{host}{cookie}")),
        ("404", "/classes/evening-3.day.txt", format!("{host}{cookie}")),
        ("404", "/recipes/crescents.md", format!("{host}{cookie}")),
        ("404", "/.preview/desk/", format!("{host}{cookie}{desk}")),
        ("404", "/.preview/desk/desk.js", format!("{host}{cookie}{desk}")),
        ("404", "/.preview/typed/1/", format!("{host}{cookie}{desk}")),
        ("404", "/.preview/events", format!("{host}{cookie}")),
    ] {
        let answer = room.send(&format!("GET {path} HTTP/1.1\r\n{lines}\r\n"));
        assert_eq!(answer.status(), status, "{path} {lines}: {}", answer.text());
        assert!(!answer.text().contains("work in: pairs"), "{path}");
    }
    let elsewhere = "Origin: http://elsewhere.example\r\n";
    let late = "said=pair+3+late+10";
    let save = r#"{"path":"recipes/crescents.md","text":"x","mark":null}"#;
    let to_save = "/.preview/desk/do/save";
    for (status, path, lines, body) in [
        ("403", EVENING, format!("{host}{from}"), late),
        ("403", EVENING, format!("{host}{from}{wrong}"), late),
        ("403", EVENING, format!("{host}{cookie}"), late),
        ("403", EVENING, format!("{host}{cookie}{elsewhere}"), late),
        ("403", EVENING, format!("{host}{cookie}Origin: null\r\n"), late),
        ("421", EVENING, format!("Host: elsewhere.example\r\n{from}{cookie}"), late),
        ("405", "/", format!("{host}{from}{cookie}"), late),
        ("405", "/.preview/evening/", format!("{host}{from}{cookie}"), late),
        ("405", to_save, format!("{host}{from}{cookie}{desk}"), save),
        ("403", to_save, format!("{host}{from}{desk}"), save),
    ] {
        let answer = room.post(path, &lines, body);
        assert_eq!(answer.status(), status, "{path} {lines}: {}", answer.text());
    }
    // The key of the room opens nothing where the desk is.
    let own = format!("127.0.0.1:{}", room.desk.0);
    let head = format!("Host: {own}\r\nOrigin: http://{own}\r\nX-Desk-Key: {key}\r\n");
    let length = save.len();
    let request = format!(
        "POST {to_save} HTTP/1.1\r\n{head}Content-Length: {length}\r\n\r\n{save}"
    );
    assert_eq!(sent(("127.0.0.1", room.desk.0), &request).status(), "403");
    assert_eq!(room.files(), before, "nothing was written");
}

/// The desk hears nobody at another address than its own.
#[test]
fn the_desk_is_not_on_the_network() {
    let room = room("room-desk-away");
    assert!(TcpStream::connect((HOST, room.desk.0)).is_err() || room.desk.0 == room.port);
    assert!(TcpStream::connect(("127.0.0.1", room.port)).is_err());
}

#[test]
fn an_address_that_others_reach_is_refused() {
    for address in ["0.0.0.0", "203.0.113.7", "::"] {
        let answer = common::tourier(
            Path::new(common::COURSE),
            &["preview", "--no-browser", "--room", address],
        );
        assert_eq!(answer.code, 2, "{}", answer.err);
        assert!(answer.err.contains("no address of a local network"), "{}", answer.err);
    }
    let both = ["preview", "--to-read", "--room", HOST];
    assert_eq!(common::tourier(Path::new(common::COURSE), &both).code, 2);
}
