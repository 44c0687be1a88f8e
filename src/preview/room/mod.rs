//! The room: phones on the same local network read the pages, and mark what happens on a
//! class's evening.
//!
//! It has an address of its own, beside the preview's, and a key of its own. What can be asked
//! for there is listed in `door.rs`: files of the site, and evenings; the desk is not among
//! them. The only thing that is written is a line of a class's day file, as `today` writes it.

mod door;
mod evening;
mod form;
mod pace;
mod page;

use std::net::{IpAddr, SocketAddr};
use std::path::PathBuf;
use std::sync::Mutex;

use hyper::StatusCode;

use super::answer::Answer;
use super::desk::NoKey;
use super::page::OWN;
use super::request::Refusal;
use super::served::Served;
use super::{Preview, server};

use evening::Kept;
use pace::Pace;

pub(super) use door::Asked;
pub(super) use form::MOST;

/// The evenings stand below this name of the preview's.
const EVENINGS: &str = ".preview/evening/";
const STYLE: &str = include_str!("room.css");

/// A room: where it is, who is let in, and what it has on show.
pub struct Room {
    content: PathBuf,
    at: SocketAddr,
    /// What the address has that the program names.
    key: String,
    /// The evening that was looked at or spoken of last.
    kept: Mutex<Kept>,
    pace: Pace,
}

impl Room {
    /// A room at an address, for the evenings of the course below `content`.
    ///
    /// # Errors
    /// Where the machine gives nothing that cannot be guessed.
    pub fn new(content: PathBuf, at: SocketAddr) -> Result<Self, NoKey> {
        let mut key = [0; 12];
        getrandom::fill(&mut key).map_err(|error| NoKey(error.to_string()))?;
        let key = crate::encode::hex(&key);
        Ok(Self { content, at, key, kept: Mutex::default(), pace: Pace::default() })
    }

    /// The address that lets one in.
    pub fn address(&self) -> String {
        format!("http://{}/{}", self.at, self.key)
    }

    /// Answers what was asked for.
    pub(super) fn answer(&self, preview: &Preview, asked: &Asked) -> Answer {
        match asked {
            Asked::In => Answer::other("", Some(self.cookie())),
            Asked::Style => Answer::file("room.css", STYLE.into()),
            Asked::Nothing | Asked::Mark(_) => nothing(preview),
            Asked::Read(path) => on_show(preview, |served, _| {
                let over = |page: &str| page::linked(page, &served.words);
                server::file(served, path, &over)
            }),
            Asked::Evenings => on_show(preview, |served, _| evening::list(served)),
            Asked::Evening(class) => on_show(preview, |served, mark| {
                evening::look(self, (served, mark), class)
            }),
        }
    }

    /// Takes in what a form brings, of the evening of a class.
    pub(super) fn mark(
        &self,
        preview: &Preview,
        class: &str,
        bytes: &[u8],
    ) -> Result<Answer, Refusal> {
        let words = form::words(bytes)?;
        if !self.pace.takes() {
            return Err(Refusal::Often);
        }
        Ok(on_show(preview, |served, mark| {
            evening::mark(self, (served, mark), class, &words)
        }))
    }

    /// What the browser keeps and says with each request: no script reads it, and no page
    /// from elsewhere sends a form with it.
    fn cookie(&self) -> String {
        let (name, key) = (self.cookie_name(), &self.key);
        format!("{name}={key}; Path=/; HttpOnly; SameSite=Lax")
    }

    /// Ports share what browsers keep, so that each room has a name of its own there.
    fn cookie_name(&self) -> String {
        format!("room-{}", self.at.port())
    }
}

/// An answer from what is on show and its mark; that there is nothing yet where that is so.
fn on_show(preview: &Preview, answer: impl FnOnce(&Served, &str) -> Answer) -> Answer {
    let show = preview.show();
    let (served, mark) = (show.served.clone(), show.mark.clone());
    let words = show.words.clone();
    drop(show);
    match served {
        Some(served) => answer(&served, &mark),
        None => {
            let status = StatusCode::SERVICE_UNAVAILABLE;
            Answer::remark(status, words.get("preview-nothing-yet"))
        }
    }
}

fn nothing(preview: &Preview) -> Answer {
    let show = preview.show();
    Answer::remark(StatusCode::NOT_FOUND, show.words.get("preview-no-page"))
}

/// The address of an evening, below the root.
fn evening_path(class: &str) -> String {
    format!("{EVENINGS}{class}")
}

/// Whether an address belongs to a network that the outside does not reach (RFC 1918, RFC
/// 3927, RFC 4193) or to this machine itself.
pub fn is_local(address: IpAddr) -> bool {
    match address.to_canonical() {
        IpAddr::V4(it) => it.is_loopback() || it.is_private() || it.is_link_local(),
        IpAddr::V6(it) => {
            it.is_loopback() || it.is_unique_local() || it.is_unicast_link_local()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_addresses_of_a_local_network_are_local() {
        let is = |text: &str| is_local(text.parse().expect("an address"));
        for text in ["127.0.0.2", "192.168.1.7", "10.0.0.1", "172.31.0.1", "fd00::1"] {
            assert!(is(text), "{text}");
        }
        for text in ["0.0.0.0", "203.0.113.7", "172.32.0.1", "::", "2001:db8::1"] {
            assert!(!is(text), "{text}");
        }
        assert!(is("::ffff:192.168.1.7") && !is("::ffff:203.0.113.7"));
    }
}
