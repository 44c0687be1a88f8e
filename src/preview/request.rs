//! What a browser asks for, read with suspicion: only this machine's own names are
//! answered to, only reading is allowed, and no path leads out of the site.

/// More bytes than this of a request's head are refused.
pub(super) const LARGEST: usize = 16 << 10;

/// More lines than this in a request's head are refused.
const MOST_LINES: usize = 64;

/// What is asked for.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Request {
    /// Whether only the answer's head is wanted.
    pub(super) head: bool,
    /// The path below the site's root, decoded; a folder ends in a slash.
    pub(super) path: String,
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
    /// Its path leads out of the site.
    Path,
    /// It is too long.
    Long,
}

/// Reads a request's head, sent to a preview on `port`.
pub(super) fn read(head: &[u8], port: u16) -> Result<Request, Refusal> {
    let mut lines = [httparse::EMPTY_HEADER; MOST_LINES];
    let mut request = httparse::Request::new(&mut lines);
    match request.parse(head) {
        Ok(httparse::Status::Complete(_)) => {}
        Err(httparse::Error::TooManyHeaders) => return Err(Refusal::Long),
        Ok(httparse::Status::Partial) | Err(_) => return Err(Refusal::Unclear),
    }
    let hosts: Vec<&[u8]> = request
        .headers
        .iter()
        .filter(|line| line.name.eq_ignore_ascii_case("host"))
        .map(|line| line.value)
        .collect();
    if !matches!(hosts.as_slice(), [host] if is_own(host, port)) {
        return Err(Refusal::Host);
    }
    let head = match request.method {
        Some("GET") => false,
        Some("HEAD") => true,
        _ => return Err(Refusal::Method),
    };
    let path = path(request.path.unwrap_or_default())?;
    Ok(Request { head, path })
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
fn path(target: &str) -> Result<String, Refusal> {
    let target = target.split(['?', '#']).next().unwrap_or_default();
    let path = target.strip_prefix('/').ok_or(Refusal::Unclear)?;
    let path = decoded(path).ok_or(Refusal::Unclear)?;
    let leads_out = |part: &str| matches!(part, "." | "..");
    let strange = |letter: char| letter.is_control() || letter == '\\';
    if path.starts_with('/') || path.split('/').any(leads_out) || path.contains(strange) {
        return Err(Refusal::Path);
    }
    Ok(path)
}

/// Text with its `%20` turned into letters; `None` where that gives no text.
fn decoded(text: &str) -> Option<String> {
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

    fn get(target: &str) -> Result<String, Refusal> {
        let head = format!("GET {target} HTTP/1.1\r\nHost: 127.0.0.1:8000\r\n\r\n");
        read(head.as_bytes(), 8000).map(|request| request.path)
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
        let host = |lines: &str| {
            read(format!("GET / HTTP/1.1\r\n{lines}\r\n").as_bytes(), 8000).map(|_| ())
        };
        assert_eq!(host("Host: 127.0.0.1:8000\r\n"), Ok(()));
        assert_eq!(host("host: LocalHost:8000\r\n"), Ok(()));
        for lines in [
            "",
            "Host: 127.0.0.1\r\n",
            "Host: 127.0.0.1:8001\r\n",
            "Host: elsewhere.example\r\n",
            "Host: 127.0.0.1.elsewhere.example:8000\r\n",
            "Host: 127.0.0.1:8000\r\nHost: elsewhere.example\r\n",
        ] {
            assert_eq!(host(lines), Err(Refusal::Host), "{lines}");
        }
        let bare = b"GET / HTTP/1.1\r\nHost: localhost\r\n\r\n";
        assert!(read(bare, 80).is_ok());
    }

    #[test]
    fn only_reading_is_allowed() {
        let method = |method: &str| {
            let head = format!("{method} / HTTP/1.1\r\nHost: 127.0.0.1:8000\r\n\r\n");
            read(head.as_bytes(), 8000)
        };
        assert_eq!(method("HEAD"), Ok(Request { head: true, path: String::new() }));
        for other in ["POST", "PUT", "DELETE", "OPTIONS", "get"] {
            assert_eq!(method(other), Err(Refusal::Method), "{other}");
        }
        assert_eq!(read(b"\x16\x03\x01", 8000), Err(Refusal::Unclear));
    }
}
