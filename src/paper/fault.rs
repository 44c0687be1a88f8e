//! What can go wrong between the data and the PDF, at its place in the template.

use crate::said;
use crate::statement::{Statement, machine};
use typst::diag::SourceDiagnostic;
use typst::{World, WorldExt};

/// A handout that could not be made: a mistake in a theme's template, or content that
/// cannot be set legibly.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PaperFault {
    /// The template's name below the theme's `paper` folder.
    pub template: String,
    /// The line in it, from 1; 0 where no line can be named.
    pub line: usize,
    /// What is wrong.
    pub message: Statement,
}

impl PaperFault {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        let Self { template, line, message } = self;
        said!("template-fault", template, line, message)
    }

    /// A fault of the template as a whole.
    pub(super) fn whole(template: &str, message: Statement) -> Self {
        Self { template: template.to_owned(), line: 0, message }
    }

    /// The first of the faults that the typesetter found, at its line.
    pub(super) fn first(
        world: &dyn World,
        main: &str,
        found: &[SourceDiagnostic],
    ) -> Self {
        let Some(first) = found.first() else {
            return Self::whole(main, said!("handout-unset"));
        };
        let (template, line) = place(world, first).unwrap_or((main.to_owned(), 0));
        Self { template, line, message: machine(&message(first)) }
    }
}

/// The file and line that a diagnostic points at.
fn place(world: &dyn World, found: &SourceDiagnostic) -> Option<(String, usize)> {
    let id = found.span.id()?;
    let start = world.range(found.span)?.start;
    let line = world.source(id).ok()?.lines().byte_to_line(start)?;
    Some((id.vpath().get_without_slash().to_owned(), line + 1))
}

/// The message with its hints; a template's own `panic("…")` loses its wrapping.
fn message(found: &SourceDiagnostic) -> String {
    let text = found.message.as_str();
    let own = text.strip_prefix("panicked with: ").map(|own| own.trim_matches('"'));
    let hints = found.hints.iter().map(|hint| hint.v.as_str());
    std::iter::once(own.unwrap_or(text)).chain(hints).collect::<Vec<_>>().join("; ")
}
