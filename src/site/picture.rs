//! Pictures in a page: offered in several sizes, with room kept for them before they come.

use crate::media::Medium;
use crate::sheet::{Picture, Sight};
use crate::words::Words;

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

/// Pictures beside one another, each with a sign and words that say whether it shows what is
/// right or wrong; the pictures alone where none says so.
pub(super) fn pictures(
    (media, words): (&[Medium], &Words),
    all: &[Picture],
    root: &str,
) -> Html {
    let image = |it: &Picture| picture(media, [&it.file, &it.alt], root, Spot::Text).0;
    let one = |it: &Picture| match it.sight {
        None => format!("<p class=\"photo\">{}</p>", image(it)),
        Some(sight) => {
            let word = sight.word();
            let head = escape(words.get(&format!("page-sight-{word}")));
            let alt = escape(&it.alt);
            format!(
                "<figure class=\"photo sight {word}\">{}<figcaption>{}<b>{}</b> \
                 <span aria-hidden=\"true\">{alt}</span></figcaption></figure>",
                image(it),
                sign(sight),
                head,
            )
        }
    };
    let shown: String = all.iter().map(one).collect();
    let compared = all.iter().any(|it| it.sight.is_some());
    Html(if compared { format!("<div class=\"sights\">{shown}</div>") } else { shown })
}

/// A tick or a cross.
fn sign(sight: Sight) -> String {
    let path = match sight {
        Sight::Right => "M3 9l4 4 7-9",
        Sight::Wrong => "M4 4l9 9M13 4l-9 9",
    };
    format!(
        "<svg width=\"17\" height=\"17\" viewBox=\"0 0 17 17\" aria-hidden=\"true\" focusable=\"false\"><path d=\"{path}\" \
         fill=\"none\" stroke=\"currentColor\" stroke-width=\"2.5\"/></svg>"
    )
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
