//! What can go wrong between the data and the PDF, at its place in the template.

use crate::media::Unshown;
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
    pub why: Unset,
}

/// Why a handout cannot be set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unset {
    /// In the typesetter's words.
    Machine(String),
    /// The typesetter says nothing of it.
    Nothing,
    /// None of the settings can be set.
    NoSetting,
    /// Its pages cannot be written as a PDF.
    Unwritten,
    /// A picture, by its name, cannot be shown.
    Picture(String, Unfound),
}

/// Why a picture that a handout shows by its name is not to be had.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unfound {
    /// The name says no size.
    NoSize,
    /// There is none.
    NotThere,
    /// It cannot be shown in that size.
    Unshown(Unshown),
}

impl Unset {
    /// What a library says.
    pub(super) fn machine(error: &impl std::fmt::Display) -> Self {
        Self::Machine(error.to_string())
    }

    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::Machine(reason) => machine(reason),
            Self::Nothing => said!("handout-unset"),
            Self::NoSetting => said!("handout-no-setting"),
            Self::Unwritten => said!("handout-unwritten"),
            Self::Picture(name, why) => {
                said!("picture-unshown", name, reason = why.said())
            }
        }
    }
}

impl Unfound {
    fn said(&self) -> Statement {
        match self {
            Self::NoSize => said!("picture-no-size"),
            Self::NotThere => said!("machine-not-there"),
            Self::Unshown(why) => why.said(),
        }
    }
}

impl PaperFault {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        let Self { template, line, why } = self;
        said!("template-fault", template, line, message = why.said())
    }

    /// A fault of the template as a whole.
    pub(super) fn whole(template: &str, why: Unset) -> Self {
        Self { template: template.to_owned(), line: 0, why }
    }

    /// The first of the faults that the typesetter found, at its line.
    pub(super) fn first(
        world: &dyn World,
        main: &str,
        found: &[SourceDiagnostic],
    ) -> Self {
        let Some(first) = found.first() else {
            return Self::whole(main, Unset::Nothing);
        };
        let (template, line) = place(world, first).unwrap_or((main.to_owned(), 0));
        Self { template, line, why: Unset::Machine(message(first)) }
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
