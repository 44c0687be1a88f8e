//! The template engine with a theme's page templates in it.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "the template engine's errors are not ours"
)]

use std::sync::Arc;

use tera::{Context, ErrorKind, Kwargs, ReportError, State, Tera, Value};

use crate::said;
use crate::statement::Statement;
use crate::theme::Theme;
use crate::words::{Said, Words};

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

impl TemplateFault {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        let Self { template, line, message } = self;
        said!("template-fault", template, line, message)
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
    let given = ["name", "number", "count", "from", "to"].map(|name| {
        let value = values.get::<Value>(name).ok().flatten();
        value.map(|value| (name, value.is_safe(), value.to_string()))
    });
    let plain: Vec<(&str, &str)> =
        given.iter().flatten().map(|(name, _, value)| (*name, value.as_str())).collect();
    let is_html =
        |name: &str| given.iter().flatten().any(|(own, html, _)| *own == name && *html);
    let mut text = String::new();
    words.say(key, &plain, &mut |said| match said {
        Said::Words(words) => text.push_str(&escape(words)),
        Said::Value(name, value) if is_html(name) => text.push_str(value),
        Said::Value(_, value) => text.push_str(&escape(value)),
        Said::Gap(name) => text.push_str(&escape(&format!("{{{name}}}"))),
    });
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
    use crate::words::{Message, Piece};
    use std::borrow::Cow;

    fn theme(text: &'static str) -> Theme {
        let page = ("site/page.html".to_owned(), Cow::Borrowed(text.as_bytes()));
        Theme { files: [page].into() }
    }

    fn words() -> Words {
        let mut words = Words::default();
        let text = |text: &str| Piece::Text(text.into());
        let gap = |name: &str| Piece::Gap(name.into());
        let pieces = vec![text("Step "), gap("number"), text(" of "), gap("count")];
        words.insert("step-of".into(), Message::new(pieces));
        words
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
