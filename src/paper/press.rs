//! The typesetting engine: built once from a theme, used for every handout.

use std::borrow::Cow;

use typst::diag::Warned;
use typst::foundations::{Array, Bytes, Dict, IntoValue, Smart};
use typst::model::Document;
use typst::text::Font;
use typst_as_lib::{TypstEngine, TypstTemplateCollection, TypstWorld};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::theme::Theme;

use super::glyphs::families;
use super::{Glyphs, Job, PaperFault, data, page};

/// The template that every handout begins with.
const MAIN: &str = "main.typ";
/// Where a theme keeps its handout templates.
const FOLDER: &str = "paper/";

/// Handouts share next to nothing, so keeping the cache would only cost memory. But the
/// cache is everybody's: while one worker measures and sets its handout, another one ends
/// its own and empties it. What was used since the last so many endings stays.
pub(super) const KEPT: usize = 2;

/// What pages keep to: ISO 14289-1, for those who have them read out, and ISO 19005-2
/// level A, for the archive, which wants a date: where the course has none, only the
/// clock could give one.
pub(super) fn standards(pages: &PagedDocument) -> &'static [PdfStandard] {
    match pages.info().date {
        Smart::Custom(Some(_)) => &[PdfStandard::A_2a, PdfStandard::Ua_1],
        _ => &[PdfStandard::Ua_1],
    }
}

/// The typesetting engine with a theme's templates and typefaces.
pub struct Press {
    engine: TypstEngine<TypstTemplateCollection>,
    glyphs: Glyphs,
    /// Every family of type, to fall back on.
    families: Array,
}

impl Press {
    /// The engine for a theme.
    pub fn new(theme: &Theme) -> Self {
        let templates = theme
            .below(FOLDER)
            .filter(|path| path.ends_with(".typ"))
            .map(|path| (&path[FOLDER.len()..], theme.text(path)));
        // The cache is emptied after each export instead (see `print`).
        let engine = TypstEngine::builder()
            .fonts(fonts(theme))
            .with_static_source_file_resolver(templates.collect::<Vec<_>>())
            .comemo_evict_max_age(None)
            .build();
        let families = families(theme).into_iter().map(IntoValue::into_value).collect();
        Self { engine, glyphs: Glyphs::new(theme), families }
    }

    /// Everything one handout depends on besides theme and program, as JSON. The same
    /// job gives the same bytes. Characters that the theme cannot print are replaced
    /// (see [`Glyphs::clean`]).
    pub fn data(&self, job: &Job) -> Vec<u8> {
        data::bytes(job, &self.glyphs)
    }

    /// Sets the data in type and makes a PDF/UA-1 and PDF/A-2a of it. The same data gives
    /// the same bytes.
    ///
    /// # Errors
    /// A mistake in a template, or a bench card whose content does not fit one page
    /// legibly; the message then says what to shorten.
    pub fn print(&self, data: &[u8]) -> Result<Vec<u8>, PaperFault> {
        let pdf = self.pages(data).and_then(|pages| export(&pages, standards(&pages)));
        comemo::evict(KEPT);
        pdf
    }

    /// The pages of the data. Where the last one would hold next to nothing, everything
    /// is set a little closer once more, and that is taken if it saves the page.
    pub(super) fn pages(&self, data: &[u8]) -> Result<PagedDocument, PaperFault> {
        let pages = set(&self.world(inputs(data))?)?;
        if !page::straggles(&pages) {
            return Ok(pages);
        }
        let mut closer = inputs(data);
        closer.insert("snug".into(), true.into_value());
        let closer = set(&self.world(closer)?)?;
        let saves = closer.pages().len() < pages.pages().len();
        Ok(if saves { closer } else { pages })
    }

    /// The templates, the typefaces and what the templates read.
    pub(super) fn world(&self, mut inputs: Dict) -> Result<TypstWorld<'_>, PaperFault> {
        inputs.insert("families".into(), self.families.clone().into_value());
        let world = self.engine.world_builder(MAIN).with_inputs(inputs).build();
        world.map_err(|error| PaperFault::whole(MAIN, error.to_string()))
    }

    /// What the theme can print.
    pub(super) fn glyphs(&self) -> &Glyphs {
        &self.glyphs
    }
}

/// What the templates read: one handout's data.
pub(super) fn inputs(data: &[u8]) -> Dict {
    let mut inputs = Dict::new();
    inputs.insert("data".into(), Bytes::new(data.to_vec()).into_value());
    inputs
}

/// The pages. What the typesetter only warns of (a typeface that is not there) is a
/// fault too, for nothing else would show it.
pub(super) fn set(world: &TypstWorld) -> Result<PagedDocument, PaperFault> {
    let Warned { output, warnings } = typst::compile::<PagedDocument>(world);
    let document = output.map_err(|found| PaperFault::first(world, MAIN, &found))?;
    if warnings.is_empty() {
        return Ok(document);
    }
    Err(PaperFault::first(world, MAIN, &warnings))
}

/// The theme's typefaces that can go into a PDF, without copying those in the program.
pub(super) fn fonts(theme: &Theme) -> Vec<Font> {
    theme
        .files
        .iter()
        .filter(|(path, _)| {
            path.starts_with("fonts/")
                && (path.ends_with(".ttf") || path.ends_with(".otf"))
        })
        .flat_map(|(_, bytes)| Font::iter(shared(bytes.clone())))
        .collect()
}

fn shared(bytes: Cow<'static, [u8]>) -> Bytes {
    match bytes {
        Cow::Borrowed(bytes) => Bytes::new(bytes),
        Cow::Owned(bytes) => Bytes::new(bytes),
    }
}

/// Pages as a PDF of these standards.
pub(super) fn export(
    pages: &PagedDocument,
    standards: &[PdfStandard],
) -> Result<Vec<u8>, PaperFault> {
    let standards = PdfStandards::new(standards)
        .map_err(|error| PaperFault::whole(MAIN, error.message().to_string()))?;
    let creator = Smart::Custom(Some("tourier".to_owned()));
    let options = PdfOptions { standards, creator, ..PdfOptions::default() };
    typst_pdf::pdf(pages, &options).map_err(|found| match found.first() {
        Some(first) => PaperFault::whole(MAIN, first.message.to_string()),
        None => PaperFault::whole(MAIN, "the pages could not be written"),
    })
}
