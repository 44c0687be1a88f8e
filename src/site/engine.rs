//! The template engine with a theme's page templates in it.

use std::sync::Arc;

use tera::{Context, ErrorKind, Kwargs, ReportError, State, Tera, Value};

use crate::theme::Theme;
use crate::words::Words;

use super::html::escape;

/// Where in the theme the page templates stand.
const FOLDER: &str = "site/";

/// A template that cannot be read or filled in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TemplateFault {
    /// The template's path in the theme.
    pub template: String,
    /// The line in it, from 1; 0 where the fault has no line.
    pub line: usize,
    /// What is wrong.
    pub message: String,
}

impl std::fmt::Display for TemplateFault {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "{}:{}: {}", self.template, self.line, self.message)
    }
}

/// The templates, ready to be filled in.
pub(super) struct Engine {
    tera: Tera,
}

impl Engine {
    /// Reads every page template of the theme.
    pub(super) fn new(theme: &Theme, words: &Words) -> Result<Self, TemplateFault> {
        let mut tera = Tera::default();
        tera.autoescape_on([".html"]);
        let words = Arc::new(words.clone());
        tera.register_filter("word", move |key: &str, values: Kwargs, _: &State| {
            word(&words, key, &values)
        });
        let names = theme.below(FOLDER).filter(|path| path.ends_with(".html"));
        let texts: Vec<_> =
            names.map(|path| (&path[FOLDER.len()..], theme.text(path))).collect();
        tera.add_raw_templates(texts).map_err(|error| fault(&error, FOLDER))?;
        Ok(Self { tera })
    }

    /// Fills in the template `name` (without its folder).
    pub(super) fn fill(
        &self,
        name: &str,
        context: &Context,
    ) -> Result<String, TemplateFault> {
        self.tera
            .render(name, context)
            .map_err(|error| fault(&error, &format!("{FOLDER}{name}")))
    }
}

/// The fixed word for `key`, with `{name}` in it replaced by the filter's `name`. Ready
/// HTML among the values stays what it is; everything else is escaped here.
fn word(words: &Words, key: &str, values: &Kwargs) -> Value {
    let mut text = escape(words.get(key));
    for name in ["name", "number", "count"] {
        if let Ok(Some(value)) = values.get::<Value>(name) {
            let plain = value.to_string();
            let shown = if value.is_safe() { plain } else { escape(&plain) };
            text = text.replace(&format!("{{{name}}}"), &shown);
        }
    }
    Value::safe_string(&text)
}

/// The engine's error as a fault of the theme; `template` where the error names none.
fn fault(error: &tera::Error, template: &str) -> TemplateFault {
    let at = |report: &ReportError| TemplateFault {
        template: format!("{FOLDER}{}", report.filename()),
        line: report.span().start_line,
        message: report.message().to_owned(),
    };
    match error.kind() {
        ErrorKind::SyntaxError(report) | ErrorKind::RenderingError(report) => at(report),
        ErrorKind::Msg(message) => said(message, template),
        other => TemplateFault {
            template: template.to_owned(),
            line: 0,
            message: other.to_string(),
        },
    }
}

/// A message that names its place itself: `error: … --> page.html:3:1`.
fn said(message: &str, template: &str) -> TemplateFault {
    let place = message.split_once("--> ").and_then(|(_, place)| place.split_once(':'));
    let line = place.and_then(|(_, rest)| rest.split(':').next()?.parse().ok());
    let first = message.lines().next().unwrap_or(message);
    TemplateFault {
        template: place
            .map_or_else(|| template.to_owned(), |(name, _)| format!("{FOLDER}{name}")),
        line: line.unwrap_or(0),
        message: first.trim_start_matches("error: ").to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::borrow::Cow;

    fn theme(text: &'static str) -> Theme {
        let page = ("site/page.html".to_owned(), Cow::Borrowed(text.as_bytes()));
        Theme { files: [page].into() }
    }

    fn words() -> Words {
        Words { entries: [("step-of".into(), "Step {number} of {count}".into())].into() }
    }

    #[test]
    fn words_are_filled_in() {
        let engine = Engine::new(
            &theme("{{ 'step-of' | word(number=2, count=9) }} {{ 'no' | word }}"),
            &words(),
        );
        let filled = engine.and_then(|engine| engine.fill("page.html", &Context::new()));
        assert_eq!(filled.as_deref(), Ok("Step 2 of 9 no"));
    }

    #[test]
    fn a_broken_template_is_reported_at_its_line() {
        let fault = Engine::new(&theme("one\ntwo {% if %}\n"), &words()).err();
        let fault = fault.map(|fault| (fault.template, fault.line));
        assert_eq!(fault, Some(("site/page.html".into(), 2)));
        let engine = Engine::new(&theme("one\n\n{{ nobody }}"), &words());
        let fault =
            engine.and_then(|engine| engine.fill("page.html", &Context::new())).err();
        let fault = fault.map(|fault| (fault.template, fault.line));
        assert_eq!(fault, Some(("site/page.html".into(), 3)));
        let fault = Engine::new(&theme("\n{% include \"../no.html\" %}"), &words()).err();
        let fault = fault.map(|fault| (fault.template, fault.line, fault.message));
        let message = "Unknown template `../no.html`".to_owned();
        assert_eq!(fault, Some(("site/page.html".into(), 2, message)));
    }
}
