//! A picture dropped on the desk: turned upright, made smaller, without what the camera noted
//! of place, time and maker, and put into the media folder under a name of its own.

use hyper::StatusCode;
use serde_json::json;

use crate::media::{Medium, resized};
use crate::store;

use super::Desk;
use super::call::{Done, Undone};

/// A call with a picture: the name that it shall have follows.
pub(super) const CALL: &str = "picture/";
/// A picture may have so many bytes.
pub(super) const MOST: usize = 30 << 20;
/// A page shows a picture no wider than this.
const WIDEST: u32 = 2400;

/// Takes in a picture and says under which name it stands.
pub(super) fn take(desk: &Desk, name: &str, bytes: &[u8]) -> Done {
    let stem = plain(name);
    let ending = if bytes.starts_with(b"\x89PNG") { "png" } else { "jpg" };
    let medium = Medium::read(&format!("{stem}.{ending}"), bytes.to_vec());
    let medium = medium.map_err(|fault| Undone::Told(fault.message))?;
    let small = resized(&medium, medium.width.min(WIDEST));
    let small = small.map_err(|why| Undone::Told(why.said()))?;
    let name = store::hang(&desk.content, &stem, ending, &small)?;
    Ok((StatusCode::OK, json!({ "name": name })))
}

/// A name as files of a course have them: `IMG 0815.JPG` gives `img-0815`.
fn plain(name: &str) -> String {
    let ending = |end: &str| end.chars().all(|letter| letter.is_ascii_alphanumeric());
    let parts = name.rsplit_once('.').filter(|(_, end)| ending(end));
    let stem = parts.map_or(name, |(stem, _)| stem);
    let mut plain = String::new();
    for letter in stem.chars().take(60) {
        if letter.is_ascii_alphanumeric() {
            plain.push(letter.to_ascii_lowercase());
        } else if !plain.is_empty() && !plain.ends_with('-') {
            plain.push('-');
        }
    }
    let plain = plain.trim_end_matches('-');
    if plain.is_empty() { "picture".to_owned() } else { plain.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_become_plain() {
        for (name, stem) in [
            ("IMG 0815.JPG", "img-0815"),
            ("../../etc/passwd", "etc-passwd"),
            ("Crème brûlée.png", "cr-me-br-l-e"),
            ("写真.jpg", "picture"),
            ("", "picture"),
        ] {
            assert_eq!(plain(name), stem, "{name}");
        }
    }
}
