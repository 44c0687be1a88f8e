//! Pictures in a page: offered in several sizes, with room kept for them before they come.

use crate::media::Medium;
use crate::sheet::Picture;

use super::html::{Html, escape};

/// How wide a picture of the prose stands, as style sheets say it.
const IN_TEXT: &str = "(min-width: 60rem) 37rem, 92vw";
/// How wide the still of a video stands.
const STILL: &str = "12rem";

/// Where a picture stands.
#[derive(Clone, Copy)]
pub(super) enum Spot {
    /// At the head of a page: it is not waited for until it is scrolled to.
    Head,
    /// In the text, as wide as it.
    Text,
    /// Beside a video's name.
    Still,
}

/// The picture `file` on a page whose way to the site's root is `root`; its words where
/// there is no such picture.
pub(super) fn picture(
    media: &[Medium],
    [file, alt]: [&str; 2],
    root: &str,
    spot: Spot,
) -> Html {
    let Some(medium) = media.iter().find(|medium| medium.name == file) else {
        return Html::text(alt);
    };
    let widths = medium.widths();
    let all: Vec<String> = widths
        .iter()
        .map(|width| format!("{root}{} {width}w", medium.address(*width)))
        .collect();
    let (smallest, sizes) =
        (widths.first().copied().unwrap_or(medium.width), spot.sizes());
    Html(format!(
        "<img src=\"{root}{}\" srcset=\"{}\" sizes=\"{sizes}\" width=\"{}\" \
         height=\"{}\" alt=\"{}\"{} decoding=\"async\">",
        medium.address(smallest),
        all.join(", "),
        medium.width,
        medium.height,
        escape(alt),
        spot.loading(),
    ))
}

/// The stages of an author's own shaping, a picture of each, in order; nothing for none.
pub(super) fn stages(media: &[Medium], pictures: &[Picture], root: &str) -> Html {
    if pictures.is_empty() {
        return Html::default();
    }
    let one = |shown: &Picture| {
        let image = picture(media, [&shown.file, &shown.alt], root, Spot::Text);
        format!("<li class=\"photo\">{}</li>", image.0)
    };
    let all: String = pictures.iter().map(one).collect();
    Html(format!("<ol class=\"stages\">{all}</ol>"))
}

impl Spot {
    fn sizes(self) -> &'static str {
        match self {
            Self::Head | Self::Text => IN_TEXT,
            Self::Still => STILL,
        }
    }

    fn loading(self) -> &'static str {
        match self {
            Self::Head => "",
            Self::Text | Self::Still => " loading=\"lazy\"",
        }
    }
}
