//! Who is let into a room, and what may be asked for there.

use std::net::SocketAddr;

use hyper::header::{self, HeaderMap};
use hyper::http::request::Parts;
use hyper::{Method, header::HeaderName};

use super::super::request::{Refusal, is_same, one, path};
use super::{EVENINGS, OWN, Room};

/// What a browser says of who asks.
const SITE: HeaderName = HeaderName::from_static("sec-fetch-site");
/// The style of the evenings' pages, below the preview's own name.
const STYLE: &str = "room.css";

/// What is asked for in a room. There is nothing else.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in super::super) enum Asked {
    /// To be let in: the address has the key.
    In,
    /// To read a file of the site.
    Read(String),
    /// The list of evenings.
    Evenings,
    /// The evening of a class.
    Evening(String),
    /// To take in what happened on the evening of a class.
    Mark(String),
    /// The style of the evenings' pages.
    Style,
    /// What is the preview's own, and not for a room.
    Nothing,
}

impl Room {
    /// Reads a request's head.
    pub(in super::super) fn read(&self, parts: &Parts) -> Result<Asked, Refusal> {
        let heads = &parts.headers;
        let host = one(heads, &header::HOST).ok_or(Refusal::Stranger)?;
        if !is_own(host, self.at) {
            return Err(Refusal::Stranger);
        }
        let path = path(&parts.uri)?;
        let reads = parts.method == Method::GET || parts.method == Method::HEAD;
        if reads && is_same(path.as_bytes(), self.key.as_bytes()) {
            return Ok(Asked::In);
        }
        if !self.knows(heads) {
            return Err(Refusal::Unscanned);
        }
        let own = path.strip_prefix(OWN);
        let class = path.strip_prefix(EVENINGS);
        if reads {
            return Ok(match (own, class) {
                (_, Some("")) => Asked::Evenings,
                (_, Some(class)) => Asked::Evening(class.to_owned()),
                (Some(STYLE), None) => Asked::Style,
                (Some(_), None) => Asked::Nothing,
                (None, None) => Asked::Read(path),
            });
        }
        match class.filter(|class| !class.is_empty()) {
            Some(class) if parts.method == Method::POST => {
                from_here(heads, host)?;
                Ok(Asked::Mark(class.to_owned()))
            }
            _ => Err(Refusal::Method),
        }
    }

    /// Whether whoever asks has been let in before.
    fn knows(&self, heads: &HeaderMap) -> bool {
        let name = self.cookie_name();
        let all = heads.get_all(header::COOKIE).iter();
        let all = all.flat_map(|line| line.as_bytes().split(|sign| *sign == b';'));
        let own = all.filter_map(|part| {
            let value = part.trim_ascii().strip_prefix(name.as_bytes())?;
            value.strip_prefix(b"=")
        });
        own.fold(false, |known, key| known | is_same(key, self.key.as_bytes()))
    }
}

/// Whether a form comes from a page of this room.
fn from_here(heads: &HeaderMap, host: &[u8]) -> Result<(), Refusal> {
    let origin = one(heads, &header::ORIGIN).ok_or(Refusal::Origin)?;
    let is_ours = origin.strip_prefix(b"http://").is_some_and(|it| it == host);
    let site = heads.get(&SITE).is_none_or(|site| site == "same-origin");
    if is_ours && site { Ok(()) } else { Err(Refusal::Origin) }
}

/// Whether a host is this room by its own address.
fn is_own(host: &[u8], at: SocketAddr) -> bool {
    let full = at.to_string();
    let bare = full.strip_suffix(":80").filter(|_| at.port() == 80);
    host == full.as_bytes() || bare.is_some_and(|bare| host == bare.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn room() -> Room {
        let at = "192.168.1.7:8000".parse().expect("an address");
        Room { key: "open".to_owned(), ..Room::new("content".into(), at).expect("a key") }
    }

    fn ask(method: &str, target: &str, lines: &[(&str, &str)]) -> Result<Asked, Refusal> {
        let begun = hyper::Request::builder().method(method).uri(target);
        let whole =
            lines.iter().fold(begun, |made, (name, value)| made.header(*name, *value));
        room().read(&whole.body(()).expect("a request").into_parts().0)
    }

    const HOST: (&str, &str) = ("host", "192.168.1.7:8000");
    const COOKIE: (&str, &str) = ("cookie", "a=b; room-8000=open");
    const FROM: (&str, &str) = ("origin", "http://192.168.1.7:8000");

    #[test]
    fn only_whoever_was_let_in_reads() {
        assert_eq!(ask("GET", "/open", &[HOST]), Ok(Asked::In));
        assert_eq!(ask("GET", "/a/", &[HOST, COOKIE]), Ok(Asked::Read("a/".into())));
        for cookie in
            ["", "room-8000=", "room-8000=opem", "room-80=open", "xroom-8000=open"]
        {
            let answer = ask("GET", "/a/", &[HOST, ("cookie", cookie)]);
            assert_eq!(answer, Err(Refusal::Unscanned), "{cookie}");
        }
        assert_eq!(ask("GET", "/", &[HOST]), Err(Refusal::Unscanned));
        assert_eq!(ask("GET", "/opem", &[HOST]), Err(Refusal::Unscanned));
        assert_eq!(ask("POST", "/open", &[HOST]), Err(Refusal::Unscanned));
    }

    #[test]
    fn nothing_of_the_desk_is_there() {
        for path in [
            "/.preview/desk/",
            "/.preview/desk/do/save",
            "/.preview/typed/1/",
            "/.preview/events",
            "/.preview/preview.js",
        ] {
            assert_eq!(ask("GET", path, &[HOST, COOKIE]), Ok(Asked::Nothing), "{path}");
            let lines = [HOST, COOKIE, FROM, ("x-desk-key", "open")];
            assert_eq!(ask("POST", path, &lines), Err(Refusal::Method), "{path}");
        }
        for path in ["/../a", "/%2e%2e/a", "/.preview/evening/../desk/", "//a"] {
            assert_eq!(ask("GET", path, &[HOST, COOKIE]), Err(Refusal::Path), "{path}");
        }
    }

    #[test]
    fn only_its_own_pages_mark() {
        let path = "/.preview/evening/evening-3";
        let name = || "evening-3".to_owned();
        assert_eq!(ask("GET", path, &[HOST, COOKIE]), Ok(Asked::Evening(name())));
        assert_eq!(ask("POST", path, &[HOST, COOKIE, FROM]), Ok(Asked::Mark(name())));
        let same = ("sec-fetch-site", "same-origin");
        assert!(ask("POST", path, &[HOST, COOKIE, FROM, same]).is_ok());
        for (lines, why) in [
            (&[HOST, FROM][..], Refusal::Unscanned),
            (&[HOST, COOKIE], Refusal::Origin),
            (&[HOST, COOKIE, ("origin", "null")], Refusal::Origin),
            (&[HOST, COOKIE, ("origin", "http://192.168.1.7:8001")], Refusal::Origin),
            (&[HOST, COOKIE, FROM, ("sec-fetch-site", "cross-site")], Refusal::Origin),
            (&[HOST, COOKIE, FROM, FROM], Refusal::Origin),
            (&[("host", "elsewhere.example:8000"), COOKIE, FROM], Refusal::Stranger),
            (&[("host", "127.0.0.1:8000"), COOKIE, FROM], Refusal::Stranger),
            (&[COOKIE, FROM], Refusal::Stranger),
        ] {
            assert_eq!(ask("POST", path, lines), Err(why), "{lines:?}");
        }
        for method in ["PUT", "DELETE", "OPTIONS"] {
            let answer = ask(method, path, &[HOST, COOKIE, FROM]);
            assert_eq!(answer, Err(Refusal::Method), "{method}");
        }
        let list = ask("POST", "/.preview/evening/", &[HOST, COOKIE, FROM]);
        assert_eq!(list, Err(Refusal::Method));
    }
}
