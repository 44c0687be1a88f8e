//! The typesetting engine: built once from a theme, used for every handout.
#![allow(clippy::wildcard_enum_match_arm, reason = "the typesetter's kinds are not ours")]

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

use typst::diag::Warned;
use typst::foundations::{Bytes, Smart};
use typst::model::Document;
use typst::text::Font;
use typst_as_lib::{TypstEngine, TypstTemplateCollection};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::media::Medium;
use crate::theme::Theme;

use super::glyphs::families;
use super::page::Waste;
use super::photograph::Photographs;
use super::workers::workers;
use super::world::{Files, HandoutWorld, Setting};
use super::{Glyphs, Job, PaperFault, Unset, data};

/// The template that every handout begins with.
const MAIN: &str = "main.typ";
/// Where a theme keeps its handout templates.
const FOLDER: &str = "paper/";

/// Forgets what no handout has used of late. The typesetter's memory is everybody's, and
/// every worker that ends a handout makes it older by one: what was used since the last
/// so many endings as there are workers was used for the handout before, and stays.
pub(super) fn forget() {
    comemo::evict(workers());
}

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
    families: Vec<String>,
    photographs: Photographs,
}

impl Press {
    /// The engine for a theme.
    pub fn new(theme: &Theme) -> Self {
        let templates = theme
            .below(FOLDER)
            .filter(|path| path.ends_with(".typ"))
            .map(|path| (&path[FOLDER.len()..], theme.text(path)));
        // Done after each export instead (see `forget`).
        let engine = TypstEngine::builder()
            .fonts(fonts(theme))
            .with_static_source_file_resolver(templates.collect::<Vec<_>>())
            .comemo_evict_max_age(None)
            .build();
        Self {
            engine,
            glyphs: Glyphs::new(theme),
            families: families(theme),
            photographs: Photographs::default(),
        }
    }

    /// With these pictures at hand.
    #[must_use]
    pub fn showing(mut self, media: &[Medium]) -> Self {
        self.photographs = Photographs::new(media);
        self
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
    /// A mistake in a template.
    pub fn print(&self, data: &[u8]) -> Result<Vec<u8>, PaperFault> {
        let pages = self.pages(data);
        let pdf = pages.and_then(|pages| export(&pages, standards(&pages)));
        // Some list that breaks just so cannot be tagged: then it is set in another way.
        let pdf = pdf.or_else(|fault| self.otherwise(data).ok_or(fault));
        forget();
        pdf
    }

    /// The PDF of the first setting that can be written; `None` where none can.
    fn otherwise(&self, data: &[u8]) -> Option<Vec<u8>> {
        let mut files = self.files(data).ok()?;
        Setting::ALL.into_iter().find_map(|setting| {
            files.set_as(setting);
            let pages = self.set(&files).ok()?;
            export(&pages, standards(&pages)).ok()
        })
    }

    /// The files that the templates read besides one another, by name: `data.json`, the
    /// handout; `house.json`, what all handouts of a course share; its drawings.
    ///
    /// # Errors
    /// Data that is no JSON; what [`Press::data`] gives always is.
    pub fn files(&self, data: &[u8]) -> Result<Files, PaperFault> {
        let data = serde_json::from_slice(data)
            .map_err(|error| PaperFault::whole(MAIN, Unset::machine(&error)))?;
        let find = |name: &str| self.photographs.get(name);
        Files::new(data, &self.families, &find)
            .map_err(|why| PaperFault::whole(MAIN, why))
    }

    /// The pages of the data, in the first of the settings that leaves no hole and no last
    /// page with next to nothing on it; where none does, in the one that wastes least. The
    /// tightest are for sheets that take a side too many otherwise.
    pub(super) fn pages(&self, data: &[u8]) -> Result<PagedDocument, PaperFault> {
        let mut files = self.files(data)?;
        let columns = files.columns();
        let mut best: Option<(Waste, PagedDocument)> = None;
        for setting in Setting::ALL {
            let is_long = |(least, _): &(Waste, _)| least.is_long();
            if setting.is_tight() && !best.as_ref().is_some_and(is_long) {
                break;
            }
            files.set_as(setting);
            let pages = self.set(&files)?;
            let waste = Waste::of(&pages, columns);
            let better = best.as_ref().is_none_or(|(least, _)| waste < *least);
            if better {
                best = Some((waste, pages));
            }
            if waste.is_good() {
                break;
            }
        }
        best.map(|(_, pages)| pages)
            .ok_or_else(|| PaperFault::whole(MAIN, Unset::NoSetting))
    }

    /// The pages of these files. What the typesetter only warns of (a typeface that is not
    /// there) is a fault too, for nothing else would show it.
    pub(super) fn set(&self, files: &Files) -> Result<PagedDocument, PaperFault> {
        let press = self.engine.world_builder(MAIN).build();
        let press =
            press.map_err(|error| PaperFault::whole(MAIN, Unset::machine(&error)))?;
        let world = HandoutWorld { press, files, photographs: &self.photographs };
        let Warned { output, warnings } = typst::compile::<PagedDocument>(&world);
        let document = output.map_err(|found| PaperFault::first(&world, MAIN, &found))?;
        if warnings.is_empty() {
            return Ok(document);
        }
        Err(PaperFault::first(&world, MAIN, &warnings))
    }

    /// How many sides the data takes.
    ///
    /// # Errors
    /// As [`Press::print`].
    pub fn sides(&self, data: &[u8]) -> Result<usize, PaperFault> {
        let sides = self.pages(data).map(|pages| pages.pages().len());
        forget();
        sides
    }

    /// What the theme can print.
    pub(super) fn glyphs(&self) -> &Glyphs {
        &self.glyphs
    }
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
        .flat_map(|(_, bytes)| match bytes {
            Cow::Borrowed(bytes) => built_in(bytes),
            Cow::Owned(bytes) => Font::iter(Bytes::new(bytes.clone())).collect(),
        })
        .collect()
}

/// The faces of one of the program's own typefaces, taken apart once: they are asked for with
/// every letter that is typed at the desk and in an editor, and it takes longer than all else.
fn built_in(bytes: &'static [u8]) -> Vec<Font> {
    static FACES: Mutex<BTreeMap<usize, Vec<Font>>> = Mutex::new(BTreeMap::new());
    let mut faces = FACES.lock().unwrap_or_else(PoisonError::into_inner);
    let place = bytes.as_ptr().addr();
    faces.entry(place).or_insert_with(|| Font::iter(Bytes::new(bytes)).collect()).clone()
}

/// Pages as a PDF of these standards.
pub(super) fn export(
    pages: &PagedDocument,
    standards: &[PdfStandard],
) -> Result<Vec<u8>, PaperFault> {
    let standards = PdfStandards::new(standards)
        .map_err(|error| PaperFault::whole(MAIN, Unset::machine(&error.message())))?;
    let creator = Smart::Custom(Some("tourier".to_owned()));
    let options = PdfOptions { standards, creator, ..PdfOptions::default() };
    typst_pdf::pdf(pages, &options).map_err(|found| match found.first() {
        Some(first) => PaperFault::whole(MAIN, Unset::machine(&first.message)),
        None => PaperFault::whole(MAIN, Unset::Unwritten),
    })
}
