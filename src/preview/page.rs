//! What the preview adds to a page, and only the preview: the script that reloads it, and
//! the faults that keep a newer edition from being shown.

use crate::encode::escape;
use crate::said;
use crate::words::Words;

/// The files that belong to the preview itself stand below this name, which no page of a
/// site can have.
pub(super) const OWN: &str = ".preview/";

const SCRIPT: &str = include_str!("preview.js");
const STYLE: &str = include_str!("preview.css");

/// A file of the preview itself: its bytes.
pub(super) fn own(name: &str) -> Option<&'static str> {
    match name {
        "preview.js" => Some(SCRIPT),
        "preview.css" => Some(STYLE),
        _ => None,
    }
}

/// What is said over a page.
#[derive(Clone, Copy)]
pub(super) enum Said<'a> {
    /// Nothing.
    Nothing,
    /// Faults that keep a newer edition from being shown.
    Faults(&'a [String]),
    /// Cautions of the edition that is shown.
    Cautions(&'a [String]),
}

/// A page with what the preview adds. Script and style come from the same place as the
/// page, as its Content-Security-Policy wants.
pub(super) fn shown(page: &str, mark: &str, said: Said, words: &Words) -> String {
    let write = escape(words.get("desk-write"));
    let head = format!(
        "<link rel=\"stylesheet\" href=\"/{OWN}preview.css\">\n\
         <script src=\"/{OWN}preview.js\" data-mark=\"{mark}\" data-write=\"{write}\" defer></script>\n"
    );
    let page = insert(page, "</head>", &head);
    let panel = match said {
        Said::Nothing => return page,
        Said::Faults(faults) => panel(faults, ["open", words.get("preview-last-good")]),
        Said::Cautions(cautions) => {
            let count = cautions.len();
            panel(cautions, ["", &words.tell(&said!("preview-cautions", count))])
        }
    };
    insert(&page, "</body>", &panel)
}

/// A page of faults alone, where there is no edition to show.
pub(super) fn alone(mark: &str, faults: &[String], words: &Words) -> String {
    let (title, body) = if faults.is_empty() {
        let line = format!("<p>{}</p>", escape(words.get("preview-being-made")));
        (words.get("preview-making"), line)
    } else {
        let panel = panel(faults, ["open", words.get("preview-nothing-yet")]);
        (words.get("preview-faults-title"), panel)
    };
    let language = escape(&words.language);
    let page = format!(
        "<!DOCTYPE html>\n<html lang=\"{language}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <link rel=\"icon\" href=\"data:,\">\n<title>{title}</title>\n</head>\n<body>\n{body}\n</body>\n</html>\n"
    );
    shown(&page, mark, Said::Nothing, words)
}

/// `page` with `more` before the last `mark`; behind everything where there is none.
pub(super) fn insert(page: &str, mark: &str, more: &str) -> String {
    let (before, after) = page.split_at(page.rfind(mark).unwrap_or(page.len()));
    format!("{before}{more}{after}")
}

/// The panel, open or closed at first, under its heading.
fn panel(faults: &[String], [open, heading]: [&str; 2]) -> String {
    let class = if open.is_empty() { "preview-faults mild" } else { "preview-faults" };
    let space = if open.is_empty() { "" } else { " " };
    let texts: String =
        faults.iter().map(|fault| format!("<pre>{}</pre>\n", escape(fault))).collect();
    format!(
        "<details class=\"{class}\"{space}{open}>\n\
         <summary>{heading}</summary>\n{texts}</details>\n"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words() -> Words {
        let theme = crate::theme::Theme::built_in();
        crate::read::words_in(&theme, "en").expect("the words")
    }

    const PAGE: &str = "<html><head></head><body><p>Rolls</p></body></html>";

    #[test]
    fn a_page_is_watched_and_otherwise_as_published() {
        let page = shown(PAGE, "a1", Said::Nothing, &words());
        assert!(page.contains("<script src=\"/.preview/preview.js\" data-mark=\"a1\""));
        assert!(page.ends_with("<body><p>Rolls</p></body></html>"), "{page}");
        assert!(!page.contains("<details"));
    }

    #[test]
    fn faults_lie_over_the_page_as_typed() {
        let page =
            shown(PAGE, "a1", Said::Faults(&["`<b>` & more".to_owned()]), &words());
        assert!(page.contains("<p>Rolls</p><details"), "{page}");
        assert!(page.contains("<pre>`&lt;b&gt;` &amp; more</pre>"), "{page}");
    }

    #[test]
    fn cautions_lie_folded_up() {
        let page = shown(PAGE, "a1", Said::Cautions(&["a < b".to_owned()]), &words());
        let panel = "<details class=\"preview-faults mild\">\n\
                     <summary>1 caution in this edition</summary>\n<pre>a &lt; b</pre>";
        assert!(page.contains(panel), "{page}");
    }

    #[test]
    fn faults_without_a_page_stand_alone() {
        let page = alone("a1", &["no course".to_owned()], &words());
        assert!(page.contains("<pre>no course</pre>") && page.contains("data-mark"));
        assert!(own("preview.js").is_some() && own("other").is_none());
    }
}
