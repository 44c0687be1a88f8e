//! An answer as it goes to the browser.

use std::io::{self, Write};

use crate::words::Words;

use super::request::Refusal;

/// An answer: its status, its kind, and its bytes.
pub(super) struct Answer {
    /// Status and reason: `200 OK`.
    status: &'static str,
    /// The media type of the bytes.
    kind: &'static str,
    /// Where to look instead.
    place: Option<String>,
    /// The bytes.
    body: Vec<u8>,
}

impl Answer {
    /// A file by its path.
    pub(super) fn file(path: &str, body: Vec<u8>) -> Self {
        Self { status: "200 OK", kind: kind(path), place: None, body }
    }

    /// A page with a status of its own.
    pub(super) fn page(status: &'static str, page: String) -> Self {
        Self { status, ..Self::file(".html", page.into_bytes()) }
    }

    /// A remark in plain text.
    pub(super) fn remark(status: &'static str, text: &str) -> Self {
        let body = format!("{text}\n").into_bytes();
        Self { status, ..Self::file(".txt", body) }
    }

    /// The same file at its full address; `path` begins below the root.
    pub(super) fn moved(path: &str) -> Self {
        let place = Some(format!("/{path}"));
        Self { place, ..Self::remark("307 Temporary Redirect", "") }
    }

    /// Writes the answer; only its head where `head` says so.
    pub(super) fn write(&self, to: &mut impl Write, head: bool) -> io::Result<()> {
        let place =
            self.place.as_ref().map(|place| format!("Location: {}\r\n", coded(place)));
        let length = self.body.len();
        write!(
            to,
            "{}Content-Length: {length}\r\n{}\r\n",
            start(self.status, self.kind),
            place.unwrap_or_default()
        )?;
        if !head {
            to.write_all(&self.body)?;
        }
        to.flush()
    }
}

/// The beginning of every answer. Nothing is kept by the browser, nothing may be shown or
/// used by a page from elsewhere, and nothing is taken for another kind of file.
pub(super) fn start(status: &str, kind: &str) -> String {
    format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nCache-Control: no-store\r\n\
         X-Content-Type-Options: nosniff\r\nCross-Origin-Resource-Policy: same-origin\r\n\
         Content-Security-Policy: frame-ancestors 'none'\r\nConnection: close\r\n"
    )
}

/// A path as it stands in a head: everything but plain letters and signs as `%20`.
fn coded(path: &str) -> String {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"/-._~".contains(&byte);
    let letters = path.bytes().map(|byte| {
        if plain(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") }
    });
    letters.collect()
}

impl Answer {
    /// The answer to a request that is refused.
    pub(super) fn refused(refusal: Refusal, words: &Words) -> Self {
        let (status, key) = match refusal {
            Refusal::Unclear => ("400 Bad Request", "preview-unclear"),
            Refusal::Path => ("400 Bad Request", "preview-path"),
            Refusal::Method => ("405 Method Not Allowed", "preview-method"),
            Refusal::Host => ("421 Misdirected Request", "preview-host"),
            Refusal::Long => ("431 Request Header Fields Too Large", "preview-long"),
        };
        Self::remark(status, words.get(key))
    }
}

/// The media type of a file by its ending.
fn kind(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, ending)| ending) {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "txt" => "text/plain; charset=utf-8",
        "csv" => "text/csv; charset=utf-8",
        "ics" => "text/calendar; charset=utf-8",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "xml" => "application/xml",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" | "jpeg" => "image/jpeg",
        "pdf" => "application/pdf",
        "woff2" => "font/woff2",
        "zip" | "imscc" => "application/zip",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_says_what_it_is() {
        let mut bytes = Vec::new();
        let written = Answer::file("a.pdf", b"%PDF".to_vec()).write(&mut bytes, false);
        let text = String::from_utf8_lossy(&bytes).into_owned();
        assert!(written.is_ok() && text.starts_with("HTTP/1.1 200 OK\r\n"));
        assert!(text.contains("Content-Type: application/pdf\r\n"));
        assert!(text.ends_with("Content-Length: 4\r\n\r\n%PDF"), "{text}");
    }

    #[test]
    fn a_head_is_an_answer_without_its_bytes() {
        let mut bytes = Vec::new();
        let written = Answer::moved("a b/\r\nX: y").write(&mut bytes, true);
        let text = String::from_utf8_lossy(&bytes).into_owned();
        assert!(written.is_ok() && text.ends_with("\r\n\r\n"), "{text}");
        assert!(text.contains("Location: /a%20b/%0D%0AX%3A%20y\r\n"), "{text}");
    }
}
