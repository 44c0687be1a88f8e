//! HTML that is ready to stand in a page, and the two ways of making it from text.

use serde::{Serialize, Serializer};
use tera::Value;

pub(super) use crate::encode::escape;

/// HTML that needs no more escaping. Templates print it as it is; every other text they
/// escape, so no template has to say what is safe.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Html(pub(super) String);

impl Html {
    /// Plain text as HTML.
    pub(super) fn text(text: &str) -> Self {
        Self(escape(text))
    }
}

impl Serialize for Html {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Value::safe_string(&self.0).serialize(serializer)
    }
}

/// The address a link written as `to` has on a page whose way to the site's root is
/// `root`; `None` where it may not be followed: only `http`, `https`, `mailto` and pages
/// of this site are.
pub(super) fn address(to: &str, root: &str) -> Option<String> {
    let to = to.trim();
    let (path, anchor) = to.split_at(to.find('#').unwrap_or(to.len()));
    if let Some((scheme, _)) = path.split_once(':') {
        return is_web(scheme).then(|| to.to_owned());
    }
    if path.is_empty() {
        return (anchor.len() > 1).then(|| anchor.to_owned());
    }
    if path.starts_with('/')
        || path.contains('\\')
        || path.split('/').any(|part| part == "..")
    {
        return None;
    }
    let file =
        if is_folder(path) { format!("{path}/index.html") } else { path.to_owned() };
    Some(format!("{root}{file}{anchor}"))
}

fn is_web(scheme: &str) -> bool {
    ["http", "https", "mailto"].iter().any(|known| scheme.eq_ignore_ascii_case(known))
}

/// Whether a page name stands for a folder with an `index.html` in it.
fn is_folder(path: &str) -> bool {
    let last = path.rsplit('/').next().unwrap_or(path);
    !last.contains('.')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_become_references() {
        assert_eq!(
            escape("<b a=\"1\">'&'\0\u{1}\n"),
            "&lt;b a=&quot;1&quot;&gt;&#39;&amp;&#39;\u{fffd}\u{fffd}\n"
        );
    }

    #[test]
    fn only_harmless_addresses_are_followed() {
        let from = |to: &str| address(to, "../../");
        assert_eq!(
            from("techniques/letter-turn").as_deref(),
            Some("../../techniques/letter-turn/index.html")
        );
        assert_eq!(
            from("recipes/a#step-cut").as_deref(),
            Some("../../recipes/a/index.html#step-cut")
        );
        assert_eq!(
            from("HTTPS://example.org/a b").as_deref(),
            Some("HTTPS://example.org/a b")
        );
        assert_eq!(from("#part-variations").as_deref(), Some("#part-variations"));
        let refused = [
            "javascript:alert(1)",
            " java\nscript:x",
            "data:text/html,x",
            "//e.org",
            "/etc",
            "../x",
            "a\\b",
            "",
        ];
        for to in refused {
            assert_eq!(from(to), None, "{to}");
        }
    }
}
