//! Pictures where a text asks for them, in prose or in a ticket.

use crate::fault::{Fault, Placed};
use crate::media::is_name;
use crate::model::{Brace, Inline, Shown};
use crate::said;

/// How the media folder is named in prose, as any Markdown reader follows it.
const FOLDER: &str = "../media/";

/// `![both hands roll it away](../media/roll-up.jpg)`.
pub(super) fn in_prose(
    to: &Placed<String>,
    content: &[Inline<Brace>],
) -> Result<Shown, Fault> {
    let file = to.value.strip_prefix(FOLDER).unwrap_or(&to.value);
    let mut alt = String::new();
    for inline in content {
        if let Inline::Text { text } = inline {
            alt.push_str(text);
        }
    }
    shown(Placed::new(file.to_owned(), to.place.clone()), &alt)
}

/// `roll-up.jpg, both hands roll it away`.
pub(super) fn in_line(text: &Placed<String>) -> Result<Shown, Fault> {
    let (file, alt) = text.value.split_once(',').unwrap_or((&text.value, ""));
    let file = file.trim();
    shown(Placed::new(file.to_owned(), text.place.part(0, file.len())), alt)
}

fn shown(file: Placed<String>, alt: &str) -> Result<Shown, Fault> {
    if !is_name(&file.value) {
        let message = said!("bad-picture", picture = file.value);
        return Err(Fault::error("bad-picture", &file.place, message)
            .help(said!("bad-picture-help")));
    }
    let alt = alt.trim().to_owned();
    if alt.is_empty() {
        let message = said!("picture-without-words", picture = file.value);
        return Err(Fault::error("picture-without-words", &file.place, message)
            .help(said!("picture-without-words-help")));
    }
    Ok(Shown { file, alt })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Place;

    fn line(text: &str) -> Result<(String, String), &'static str> {
        let place = Place::new(&"t.md".into(), 0, text.len());
        in_line(&Placed::new(text.to_owned(), place))
            .map(|shown| (shown.file.value, shown.alt))
            .map_err(|fault| fault.name)
    }

    #[test]
    fn a_picture_has_a_file_and_words() {
        let both = ("roll-up.jpg".to_owned(), "both hands, seen from above".to_owned());
        assert_eq!(line("roll-up.jpg, both hands, seen from above"), Ok(both));
        assert_eq!(line("roll-up.jpg"), Err("picture-without-words"));
        assert_eq!(line("../secret.jpg, x"), Err("bad-picture"));
        assert_eq!(line("https://example.org/a.jpg, x"), Err("bad-picture"));
    }
}
