//! An answer as it goes to the browser.

use std::convert::Infallible;

use http_body_util::{Channel, Either, Full};
use hyper::body::Bytes;
use hyper::header::{self, HeaderName, HeaderValue};
use hyper::{Response, StatusCode};
use serde::Serialize;

use crate::words::Words;

use super::request::Refusal;

/// What is sent: an answer that is whole, or one that goes on.
pub(super) type Body = Either<Full<Bytes>, Channel<Bytes, Infallible>>;

/// An answer: its status, its kind, and its bytes.
#[derive(Debug)]
pub(super) struct Answer {
    /// The status.
    status: StatusCode,
    /// The media type of the bytes.
    kind: &'static str,
    /// Where to look instead.
    place: Option<String>,
    /// What the browser shall say with its next requests.
    cookie: Option<String>,
    /// Whether its address stands for these bytes alone, so that the browser may keep them.
    lasting: bool,
    /// The bytes.
    body: Vec<u8>,
}

impl Answer {
    /// A file by its path.
    pub(super) fn file(path: &str, body: Vec<u8>) -> Self {
        let (place, cookie, lasting) = (None, None, false);
        Self { status: StatusCode::OK, kind: kind(path), place, cookie, lasting, body }
    }

    /// The same, to be kept by the browser where it was found: its address names its state.
    pub(super) fn lasting(self) -> Self {
        Self { lasting: self.status == StatusCode::OK, ..self }
    }

    /// A page with a status of its own.
    pub(super) fn page(status: StatusCode, page: String) -> Self {
        Self { status, ..Self::file(".html", page.into_bytes()) }
    }

    /// A remark in plain text.
    pub(super) fn remark(status: StatusCode, text: &str) -> Self {
        let body = format!("{text}\n").into_bytes();
        Self { status, ..Self::file(".txt", body) }
    }

    /// Data for the desk's script.
    pub(super) fn data(status: StatusCode, value: &impl Serialize) -> Self {
        // What we write has names for keys, so that it always can be written.
        let body = serde_json::to_vec(value).unwrap_or_default();
        Self { status, ..Self::file(".json", body) }
    }

    /// The same file at its full address; `path` begins below the root.
    pub(super) fn moved(path: &str) -> Self {
        let place = Some(coded(&format!("/{path}")));
        Self { place, ..Self::remark(StatusCode::TEMPORARY_REDIRECT, "") }
    }

    /// Another page to look at, by reading it; `path` begins below the root.
    pub(super) fn other(path: &str, cookie: Option<String>) -> Self {
        Self { status: StatusCode::SEE_OTHER, cookie, ..Self::moved(path) }
    }

    /// The answer as it is sent.
    pub(super) fn response(self) -> Response<Body> {
        let body = Either::Left(Full::new(self.body.into()));
        let mut response = begun(self.status, self.kind, body);
        if self.lasting {
            let kept = HeaderValue::from_static("private, max-age=3600, immutable");
            response.headers_mut().insert(header::CACHE_CONTROL, kept);
        }
        let place = self.place.and_then(|place| place.parse().ok());
        if let Some(place) = place {
            response.headers_mut().insert(header::LOCATION, place);
        }
        let cookie = self.cookie.and_then(|cookie| cookie.parse().ok());
        if let Some(cookie) = cookie {
            response.headers_mut().insert(header::SET_COOKIE, cookie);
        }
        response
    }
}

/// What every answer says besides. Nothing is kept by the browser (but what its address names
/// exactly), nothing may be shown or used by a page from elsewhere, nothing is taken for
/// another kind of file, and nobody elsewhere is told from which address he was come to.
const ALWAYS: [(HeaderName, &str); 5] = [
    (header::REFERRER_POLICY, "same-origin"),
    (header::CACHE_CONTROL, "no-store"),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
    (header::CONTENT_SECURITY_POLICY, "frame-ancestors 'self'"),
];

/// The beginning of every answer.
pub(super) fn begun(
    status: StatusCode,
    kind: &'static str,
    body: Body,
) -> Response<Body> {
    let mut response = Response::new(body);
    *response.status_mut() = status;
    let heads = response.headers_mut();
    heads.insert(header::CONTENT_TYPE, HeaderValue::from_static(kind));
    for (name, value) in ALWAYS {
        heads.insert(name, HeaderValue::from_static(value));
    }
    response
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
            Refusal::Unclear => (StatusCode::BAD_REQUEST, "preview-unclear"),
            Refusal::Path => (StatusCode::BAD_REQUEST, "preview-path"),
            Refusal::Method => (StatusCode::METHOD_NOT_ALLOWED, "preview-method"),
            Refusal::Host => (StatusCode::MISDIRECTED_REQUEST, "preview-host"),
            Refusal::Origin => (StatusCode::FORBIDDEN, "preview-origin"),
            Refusal::Key => (StatusCode::FORBIDDEN, "preview-key"),
            Refusal::Large => (StatusCode::PAYLOAD_TOO_LARGE, "preview-long"),
            Refusal::Slow => (StatusCode::REQUEST_TIMEOUT, "preview-slow"),
            Refusal::Stranger => (StatusCode::MISDIRECTED_REQUEST, "room-host"),
            Refusal::Unscanned => (StatusCode::FORBIDDEN, "room-key"),
            Refusal::Often => (StatusCode::TOO_MANY_REQUESTS, "room-often"),
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
        let response = Answer::file("a.pdf", b"%PDF".to_vec()).response();
        assert_eq!(response.status(), StatusCode::OK);
        assert_eq!(response.headers()[header::CONTENT_TYPE], "application/pdf");
        assert_eq!(response.headers()[header::CACHE_CONTROL], "no-store");
    }

    #[test]
    fn a_place_stays_one_line() {
        let response = Answer::moved("a b/\r\nX: y").response();
        assert_eq!(response.headers()[header::LOCATION], "/a%20b/%0D%0AX%3A%20y");
    }
}
