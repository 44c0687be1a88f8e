//! A running preview, asked as a browser would.
#![allow(clippy::disallowed_methods, reason = "files are written, time passes")]
#![allow(dead_code, reason = "each test uses its part")]

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use super::common::course;

/// Longer than anything here takes on a busy machine.
pub(crate) const PATIENCE: Duration = Duration::from_secs(120);

/// A running preview; it ends with the test.
pub(crate) struct Preview {
    pub(crate) run: Child,
    pub(crate) port: u16,
    pub(crate) content: PathBuf,
    /// The key of its desk, as the address has it; empty where there is no desk.
    pub(crate) key: String,
}

impl Drop for Preview {
    fn drop(&mut self) {
        let _ = self.run.kill();
        let _ = self.run.wait();
    }
}

/// An answer: its head, and its bytes.
pub(crate) struct Answer {
    pub(crate) head: String,
    pub(crate) body: Vec<u8>,
}

impl Answer {
    pub(crate) fn text(&self) -> String {
        String::from_utf8_lossy(&self.body).into_owned()
    }

    pub(crate) fn status(&self) -> &str {
        self.head.split(' ').nth(1).unwrap_or_default()
    }
}

impl Preview {
    pub(crate) fn start(name: &str) -> Self {
        let preview = Self::on(course(name));
        preview.wait("/", |answer| answer.status() == "200");
        preview
    }

    pub(crate) fn on(content: PathBuf) -> Self {
        Self::with(content, &[])
    }

    pub(crate) fn with(content: PathBuf, options: &[&str]) -> Self {
        Self::within(content, options, ".")
    }

    /// The same, started in a folder.
    pub(crate) fn within(
        content: PathBuf,
        options: &[&str],
        folder: impl AsRef<Path>,
    ) -> Self {
        let content = fs::canonicalize(content).expect("the course is there");
        let mut run = Command::new(env!("CARGO_BIN_EXE_tourier"))
            .current_dir(folder)
            .args(["--color", "never", "--content"])
            .arg(&content)
            .arg("preview")
            .args(options)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("the program starts");
        let mut line = String::new();
        let out = run.stdout.take().expect("its output is read");
        BufReader::new(out).read_line(&mut line).expect("it says where it is");
        let port =
            line.split("127.0.0.1:").nth(1).and_then(|rest| rest.split('/').next());
        let port = port.and_then(|port| port.parse().ok()).expect("a port");
        let key = line.split('#').nth(1).and_then(|rest| rest.split_whitespace().next());
        let key = key.unwrap_or_default().to_owned();
        Self { run, port, content, key }
    }

    pub(crate) fn call(&self) -> TcpStream {
        let stream = TcpStream::connect(("127.0.0.1", self.port)).expect("it listens");
        stream.set_read_timeout(Some(PATIENCE)).expect("set");
        stream
    }

    /// Sends a request as it is given and reads the whole answer.
    pub(crate) fn send(&self, request: &str) -> Answer {
        let mut stream = self.call();
        stream.write_all(request.as_bytes()).expect("sent");
        let mut bytes = Vec::new();
        stream.read_to_end(&mut bytes).expect("answered");
        let end = bytes.windows(4).position(|end| end == b"\r\n\r\n").expect("a head");
        let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
        Answer { head, body: bytes[end + 4..].to_vec() }
    }

    pub(crate) fn get(&self, path: &str) -> Answer {
        self.send(&format!(
            "GET {path} HTTP/1.1\r\nHost: localhost:{}\r\n\r\n",
            self.port
        ))
    }

    /// Asks until the answer is as wanted.
    pub(crate) fn wait(&self, path: &str, wanted: impl Fn(&Answer) -> bool) -> Answer {
        let begun = Instant::now();
        loop {
            let answer = self.get(path);
            if wanted(&answer) {
                return answer;
            }
            assert!(begun.elapsed() < PATIENCE, "{path}: {}", answer.text());
            std::thread::sleep(Duration::from_millis(50));
        }
    }

    /// An open line, behind its first event.
    pub(crate) fn listen(&self) -> (BufReader<TcpStream>, String) {
        let mut stream = self.call();
        let ask = "GET /.preview/events HTTP/1.1\r\nHost: 127.0.0.1:";
        write!(stream, "{ask}{}\r\n\r\n", self.port).expect("sent");
        let mut line = BufReader::new(stream);
        let first = event(&mut line);
        (line, first)
    }

    pub(crate) fn edit(&self, file: &str, from: &str, to: &str) {
        let file = self.content.join(file);
        let text = fs::read_to_string(&file).expect("the file is there");
        assert!(text.contains(from), "no `{from}`");
        fs::write(&file, text.replacen(from, to, 1)).expect("saved");
    }
}

/// The next event on an open line.
pub(crate) fn event(line: &mut BufReader<TcpStream>) -> String {
    loop {
        let mut text = String::new();
        assert!(line.read_line(&mut text).expect("the line is open") > 0, "it ended");
        if let Some(data) = text.strip_prefix("data: ") {
            return data.trim().to_owned();
        }
    }
}
