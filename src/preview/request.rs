//! What a browser asks for, read with suspicion: only this machine's own names are
//! answered to, only the desk's own calls do more than read, and no path leads out of the
//! site.

use hyper::header::{self, HeaderMap, HeaderName};
use hyper::http::request::Parts;
use hyper::{Method, Uri};

/// More bytes than this of a request's head are refused.
pub(super) const LARGEST: usize = 16 << 10;

/// More lines than this in a request's head are refused.
pub(super) const MOST_LINES: usize = 64;

/// Who may call the desk says this key, which only the address has that the program names.
const KEY: HeaderName = HeaderName::from_static("x-desk-key");

/// What a browser says of who asks.
const SITE: HeaderName = HeaderName::from_static("sec-fetch-site");

/// What is asked for: the path below the site's root, decoded; a folder ends in a slash.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Request {
    /// To read a file.
    Read(String),
    /// To have the desk do something.
    Call(String),
}

/// Why a request is not answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Refusal {
    /// It does not read.
    Unclear,
    /// It wants more than to read.
    Method,
    /// It was sent to a name that is not this machine's: a page elsewhere tries to reach
    /// in here under its own name.
    Host,
    /// It comes from a page elsewhere.
    Origin,
    /// It does not have the key.
    Key,
    /// Its path leads out of the site.
    Path,
    /// It brings too much.
    Large,
    /// It does not come to an end.
    Slow,
    /// It was sent to a name that is not the room's own address.
    Stranger,
    /// Whoever asks was not let into the room.
    Unscanned,
    /// Too much was asked for within a short time.
    Often,
}

/// Where a preview is, and who may call its desk.
#[derive(Clone, Debug)]
pub(super) struct Gate {
    /// The port.
    pub(super) port: u16,
    /// The key of the desk; none where there is no desk.
    pub(super) key: Option<String>,
}

impl Gate {
    /// Reads a request's head.
    pub(super) fn read(&self, parts: &Parts) -> Result<Request, Refusal> {
        let host = one(&parts.headers, &header::HOST).ok_or(Refusal::Host)?;
        if !is_own(host, self.port) {
            return Err(Refusal::Host);
        }
        let path = path(&parts.uri)?;
        if parts.method == Method::GET || parts.method == Method::HEAD {
            return Ok(Request::Read(path));
        }
        let call = path.strip_prefix(super::desk::CALLS);
        match (call, &self.key) {
            (Some(call), Some(key)) if parts.method == Method::POST => {
                self.may_call(&parts.headers, (host, key))?;
                Ok(Request::Call(call.to_owned()))
            }
            _ => Err(Refusal::Method),
        }
    }

    /// Whether a call comes from the desk's own page.
    fn may_call(
        &self,
        heads: &HeaderMap,
        (host, key): (&[u8], &str),
    ) -> Result<(), Refusal> {
        let origin = one(heads, &header::ORIGIN).ok_or(Refusal::Origin)?;
        let is_ours = origin.strip_prefix(b"http://").is_some_and(|it| it == host);
        let site = heads.get(&SITE).is_none_or(|site| site == "same-origin");
        if !is_ours || !site {
            return Err(Refusal::Origin);
        }
        let said = one(heads, &KEY).ok_or(Refusal::Key)?;
        if is_same(said, key.as_bytes()) { Ok(()) } else { Err(Refusal::Key) }
    }
}

/// Whether two keys are the same, looked at to the end wherever they differ.
pub(super) fn is_same(one: &[u8], other: &[u8]) -> bool {
    let differ = |(one, other): (&u8, &u8)| one ^ other;
    one.len() == other.len()
        && one.iter().zip(other).map(differ).fold(0, |all, it| all | it) == 0
}

/// The line of a head that must stand there once.
pub(super) fn one<'a>(heads: &'a HeaderMap, name: &HeaderName) -> Option<&'a [u8]> {
    let mut all = heads.get_all(name).iter();
    let first = all.next()?;
    all.next().is_none().then(|| first.as_bytes())
}

/// Whether a host is this machine by one of its own names, with the preview's port.
fn is_own(host: &[u8], port: u16) -> bool {
    let names = ["127.0.0.1", "localhost"];
    names.iter().any(|name| {
        let full = format!("{name}:{port}");
        let bare = port == 80 && host.eq_ignore_ascii_case(name.as_bytes());
        bare || host.eq_ignore_ascii_case(full.as_bytes())
    })
}

/// The path below the root: without what follows `?`, decoded, with nothing in it that
/// means another folder somewhere.
pub(super) fn path(target: &Uri) -> Result<String, Refusal> {
    if target.authority().is_some() {
        return Err(Refusal::Unclear);
    }
    let path = target.path().strip_prefix('/').ok_or(Refusal::Unclear)?;
    let path = decoded(path).ok_or(Refusal::Unclear)?;
    let leads_out = |part: &str| matches!(part, "." | "..");
    let strange = |letter: char| letter.is_control() || letter == '\\';
    if path.starts_with('/') || path.split('/').any(leads_out) || path.contains(strange) {
        return Err(Refusal::Path);
    }
    Ok(path)
}

/// Text with its `%20` turned into letters; `None` where that gives no text.
pub(super) fn decoded(text: &str) -> Option<String> {
    let mut parts = text.split('%');
    let mut bytes = parts.next()?.as_bytes().to_vec();
    for part in parts {
        let (digits, rest) = part.split_at_checked(2)?;
        let plain = digits.bytes().all(|byte| byte.is_ascii_hexdigit());
        bytes.push(u8::from_str_radix(digits, 16).ok().filter(|_| plain)?);
        bytes.extend(rest.as_bytes());
    }
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn head(method: &str, target: &str, lines: &[(&str, &str)]) -> Option<Parts> {
        let begun = hyper::Request::builder().method(method).uri(target);
        let whole =
            lines.iter().fold(begun, |made, (name, value)| made.header(*name, *value));
        Some(whole.body(()).ok()?.into_parts().0)
    }

    fn gate() -> Gate {
        Gate { port: 8000, key: Some("open".to_owned()) }
    }

    fn get(target: &str) -> Result<String, Refusal> {
        let parts = head("GET", target, &[("host", "127.0.0.1:8000")]);
        match gate().read(&parts.ok_or(Refusal::Unclear)?)? {
            Request::Read(path) | Request::Call(path) => Ok(path),
        }
    }

    #[test]
    fn paths_are_decoded_and_lose_their_question() {
        assert_eq!(get("/"), Ok(String::new()));
        assert_eq!(get("/recipes/tin-loaf/?x=1"), Ok("recipes/tin-loaf/".into()));
        assert_eq!(get("/a%20b.pdf"), Ok("a b.pdf".into()));
        assert_eq!(get("/cr%C3%A8me/"), Ok("crème/".into()));
    }

    #[test]
    fn no_path_leads_out() {
        for target in [
            "/../secret",
            "/a/../../secret",
            "/%2e%2e/secret",
            "/a/%2E%2E/%2e./secret",
            "/..%2fsecret",
            "/a/./b",
            "/..%5csecret",
            "//elsewhere.example/",
            "/%2f%2felsewhere.example",
            "/a%00b",
        ] {
            assert_eq!(get(target), Err(Refusal::Path), "{target}");
        }
        for target in ["/%", "/%f", "/%zz", "/%+1", "/%ff", "http://127.0.0.1:8000/", "*"]
        {
            assert_eq!(get(target), Err(Refusal::Unclear), "{target}");
        }
    }

    #[test]
    fn only_its_own_names_are_answered_to() {
        let host = |lines: &[(&str, &str)]| {
            gate().read(&head("GET", "/", lines).expect("a head")).map(|_| ())
        };
        assert_eq!(host(&[("Host", "127.0.0.1:8000")]), Ok(()));
        assert_eq!(host(&[("host", "LocalHost:8000")]), Ok(()));
        let ours = ("host", "127.0.0.1:8000");
        for lines in [
            &[][..],
            &[("host", "127.0.0.1")],
            &[("host", "127.0.0.1:8001")],
            &[("host", "elsewhere.example")],
            &[("host", "127.0.0.1.elsewhere.example:8000")],
            &[ours, ("host", "elsewhere.example")],
        ] {
            assert_eq!(host(lines), Err(Refusal::Host), "{lines:?}");
        }
        let bare = head("GET", "/", &[("host", "localhost")]).expect("a head");
        assert!(Gate { port: 80, key: None }.read(&bare).is_ok());
    }

    #[test]
    fn only_the_desk_does_more_than_read() {
        let own = ("host", "127.0.0.1:8000");
        let path = "/.preview/desk/do/save";
        let from = ("origin", "http://127.0.0.1:8000");
        let key = ("x-desk-key", "open");
        let call = |method: &str, path: &str, lines: &[(&str, &str)]| {
            gate().read(&head(method, path, lines).expect("a head"))
        };
        assert_eq!(call("HEAD", "/", &[own]), Ok(Request::Read(String::new())));
        let whole = call("POST", path, &[own, from, key]);
        assert_eq!(whole, Ok(Request::Call("save".to_owned())));
        for other in ["PUT", "DELETE", "OPTIONS", "get"] {
            let answer = call(other, path, &[own, from, key]);
            assert_eq!(answer, Err(Refusal::Method), "{other}");
        }
        assert_eq!(call("POST", "/", &[own, from, key]), Err(Refusal::Method));
        let closed = Gate { port: 8000, key: None };
        let parts = head("POST", path, &[own, from, key]).expect("a head");
        assert_eq!(closed.read(&parts), Err(Refusal::Method));
    }

    #[test]
    fn the_desk_answers_its_own_page_alone() {
        let (own, key) = (("host", "127.0.0.1:8000"), ("x-desk-key", "open"));
        let from = ("origin", "http://127.0.0.1:8000");
        let call = |lines: &[(&str, &str)]| {
            let parts = head("POST", "/.preview/desk/do/save", lines);
            gate().read(&parts.expect("a head")).map(|_| ())
        };
        assert_eq!(call(&[own, from, key, ("sec-fetch-site", "same-origin")]), Ok(()));
        for (lines, why) in [
            (&[own, key][..], Refusal::Origin),
            (&[own, ("origin", "null"), key], Refusal::Origin),
            (&[own, ("origin", "https://127.0.0.1:8000"), key], Refusal::Origin),
            (&[own, ("origin", "http://127.0.0.1:8001"), key], Refusal::Origin),
            (&[own, ("origin", "http://localhost:8000"), key], Refusal::Origin),
            (&[own, from, ("origin", "http://elsewhere.example"), key], Refusal::Origin),
            (&[own, from, key, ("sec-fetch-site", "cross-site")], Refusal::Origin),
            (&[own, from], Refusal::Key),
            (&[own, from, ("x-desk-key", "")], Refusal::Key),
            (&[own, from, ("x-desk-key", "opem")], Refusal::Key),
            (&[own, from, key, key], Refusal::Key),
        ] {
            assert_eq!(call(lines), Err(why), "{lines:?}");
        }
    }
}
