//! The typesetting engine: built once from a theme, used for every handout.

use std::borrow::Cow;

use typst::diag::Warned;
use typst::foundations::{Bytes, Dict, IntoValue, Smart};
use typst::text::Font;
use typst_as_lib::{TypstEngine, TypstTemplateCollection, TypstWorld};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::theme::Theme;

use super::{Glyphs, Job, PaperFault, data};

/// The template that every handout begins with.
const MAIN: &str = "main.typ";
/// Where a theme keeps its handout templates.
const FOLDER: &str = "paper/";

/// The typesetting engine with a theme's templates and typefaces.
pub struct Press {
    engine: TypstEngine<TypstTemplateCollection>,
    glyphs: Glyphs,
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
        Self { engine, glyphs: Glyphs::new(theme) }
    }

    /// Everything one handout depends on besides theme and program, as JSON. The same
    /// job gives the same bytes. Characters that the theme cannot print are replaced
    /// (see [`Glyphs::clean`]).
    pub fn data(&self, job: &Job) -> Vec<u8> {
        data::bytes(job, &self.glyphs)
    }

    /// Sets the data in type and makes a PDF/UA-1 of it. The same data gives the same
    /// bytes.
    ///
    /// # Errors
    /// A mistake in a template, or a bench card whose content does not fit one page
    /// legibly; the message then says what to shorten.
    pub fn print(&self, data: &[u8]) -> Result<Vec<u8>, PaperFault> {
        let pdf = self.compile(data);
        // Handouts share next to nothing, so keeping the cache would only cost memory.
        comemo::evict(0);
        pdf
    }

    fn compile(&self, data: &[u8]) -> Result<Vec<u8>, PaperFault> {
        let world = self.world(data)?;
        let document = set(&world)?;
        typst_pdf::pdf(&document, &options()?)
            .map_err(|found| PaperFault::first(&world, MAIN, &found))
    }

    /// The templates, the typefaces and one handout's data.
    pub(super) fn world(&self, data: &[u8]) -> Result<TypstWorld<'_>, PaperFault> {
        let mut inputs = Dict::new();
        inputs.insert("data".into(), Bytes::new(data.to_vec()).into_value());
        let world = self.engine.world_builder(MAIN).with_inputs(inputs).build();
        world.map_err(|error| PaperFault::whole(MAIN, error.to_string()))
    }
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

fn options() -> Result<PdfOptions, PaperFault> {
    let standards = PdfStandards::new(&[PdfStandard::Ua_1])
        .map_err(|error| PaperFault::whole(MAIN, error.message().to_string()))?;
    let creator = Smart::Custom(Some("tourier".to_owned()));
    Ok(PdfOptions { standards, creator, ..PdfOptions::default() })
}
