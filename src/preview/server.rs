//! Takes browsers' calls and answers them, each on a thread of its own.
#![allow(clippy::disallowed_methods, reason = "patience needs a clock")]

use std::io::{self, Read, Write};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::sync::Arc;
use std::time::{Duration, Instant};

use crate::said;

use super::Preview;
use super::answer::{Answer, start};
use super::lines::{Line, Lines, Stage};
use super::page::{self, OWN, Said};
use super::request::{self, LARGEST, Refusal, Request};
use super::served::Served;

/// How long a browser may take to ask, in all, or to take in a stretch of the answer.
const PATIENCE: Duration = Duration::from_secs(10);
/// How often an open line says that it is still open.
const PULSE: Duration = Duration::from_secs(15);
/// The page for an address that does not exist.
const MISSING: &str = "404.html";

/// Takes calls until the preview is stopped.
pub(super) fn accept(preview: &Arc<Preview>, listener: &TcpListener, port: u16) {
    let lines = Arc::new(Lines::default());
    for stream in listener.incoming().flatten() {
        if preview.is_stopped() {
            return;
        }
        let Some(line) = lines.take(&stream) else { continue };
        let preview = preview.clone();
        std::thread::spawn(move || {
            // A browser that hangs up in the middle is nobody's fault.
            let _ = call(&preview, stream, (port, &line));
        });
    }
}

/// Answers one call.
fn call(
    preview: &Preview,
    mut stream: TcpStream,
    (port, line): (u16, &Line),
) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    stream.set_nodelay(true)?;
    let request = match head(&mut stream)? {
        Ok(head) => request::read(&head, port),
        Err(refusal) => Err(refusal),
    };
    match request {
        Ok(Request { head: false, path }) if path == format!("{OWN}events") => {
            line.becomes(Stage::Listening);
            events(preview, &mut stream)
        }
        Ok(Request { head, path }) => {
            line.becomes(Stage::Answered);
            answer(preview, &path).write(&mut stream, head)
        }
        Err(refusal) => {
            let words = preview.show().words.clone();
            Answer::refused(refusal, &words).write(&mut stream, false)?;
            hear_out(&mut stream)
        }
    }
}

/// Takes in the rest of a refused request, within bounds: a line that is cut while the
/// other side still talks would lose the answer too.
fn hear_out(stream: &mut TcpStream) -> io::Result<()> {
    stream.shutdown(Shutdown::Write)?;
    stream.set_read_timeout(Some(Duration::from_secs(1)))?;
    let mut part = [0; 4096];
    for _ in 0..16 {
        if stream.read(&mut part)? == 0 {
            break;
        }
    }
    Ok(())
}

/// The head of a request, up to the empty line.
fn head(stream: &mut TcpStream) -> io::Result<Result<Vec<u8>, Refusal>> {
    let (mut head, mut part) = (Vec::new(), [0; 2048]);
    let begun = Instant::now();
    while !head.windows(4).any(|end| end == b"\r\n\r\n") {
        let count = stream.read(&mut part)?;
        if count == 0 || begun.elapsed() > PATIENCE {
            return Ok(Err(Refusal::Unclear));
        }
        head.extend(&part[..count]);
        if head.len() > LARGEST {
            return Ok(Err(Refusal::Long));
        }
    }
    Ok(Ok(head))
}

/// The answer to a path: a file of the preview itself, of the edition, or a remark.
fn answer(preview: &Preview, path: &str) -> Answer {
    if let Some(name) = path.strip_prefix(OWN) {
        return page::own(name).map_or_else(
            || {
                Answer::remark(
                    "404 Not Found",
                    preview.show().words.get("preview-no-file"),
                )
            },
            |text| Answer::file(name, text.as_bytes().to_vec()),
        );
    }
    let show = preview.show();
    let (served, mark, faults) =
        (show.served.clone(), show.mark.clone(), show.faults.clone());
    let words = show.words.clone();
    drop(show);
    match served {
        Some(served) => {
            let said = match (faults.as_slice(), served.cautions()) {
                ([], []) => Said::Nothing,
                ([], cautions) => Said::Cautions(cautions),
                (faults, _) => Said::Faults(faults),
            };
            file(&served, path, (&mark, said))
        }
        None => {
            let page = page::alone(&mark, &faults, &words);
            Answer::page("503 Service Unavailable", page)
        }
    }
}

/// A file of the edition. A folder stands for the page in it.
fn file(served: &Served, path: &str, over: (&str, Said)) -> Answer {
    let name = if path.is_empty() || path.ends_with('/') {
        format!("{path}index.html")
    } else {
        path.to_owned()
    };
    match served.order(&name) {
        Ok(Some(bytes)) => found((&name, "200 OK"), &bytes, served, over),
        Ok(None) => missing(served, path, over),
        Err(reason) => {
            let remark = said!("preview-cannot-make", name, reason);
            Answer::remark("500 Internal Server Error", &served.words.tell(&remark))
        }
    }
}

fn found(
    (path, status): (&str, &'static str),
    bytes: &[u8],
    served: &Served,
    over: (&str, Said),
) -> Answer {
    if !path.ends_with(".html") {
        return Answer::file(path, bytes.to_vec());
    }
    let text = String::from_utf8_lossy(bytes);
    Answer::page(status, page::shown(&text, over.0, over.1, &served.words))
}

/// Where there is no such file: the folder of that name, or the page that says so.
fn missing(served: &Served, path: &str, over: (&str, Said)) -> Answer {
    let status = "404 Not Found";
    let folder = format!("{path}/");
    if !path.ends_with('/')
        && let Ok(Some(_)) = served.order(&format!("{folder}index.html"))
    {
        return Answer::moved(&folder);
    }
    match served.order(MISSING) {
        Ok(Some(bytes)) => found((MISSING, status), &bytes, served, over),
        _ => Answer::remark(status, served.words.get("preview-no-page")),
    }
}

/// Keeps the line open and says what is on show, now and after each change: server-sent
/// events, as the HTML standard has them.
fn events(preview: &Preview, stream: &mut TcpStream) -> io::Result<()> {
    stream.write_all(start("200 OK", "text/event-stream").as_bytes())?;
    stream.write_all(b"\r\nretry: 500\n\n")?;
    let mut told = String::new();
    while !preview.is_stopped() {
        let show = preview.show();
        let mark = show.mark.clone();
        if mark == told {
            let waited = preview.changed.wait_timeout(show, PULSE);
            let quiet = waited.is_ok_and(|(_, waited)| waited.timed_out());
            if quiet {
                stream.write_all(b": still here\n\n")?;
            }
            continue;
        }
        drop(show);
        stream.write_all(format!("data: {mark}\n\n").as_bytes())?;
        stream.flush()?;
        told = mark;
    }
    Ok(())
}
