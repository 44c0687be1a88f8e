//! What is published: every page, drawing and handout as a file with the key of what it
//! is made from. Nothing is made here but the pages, which cost next to nothing.

mod class;
mod memory;

pub use class::class_products;
pub use memory::Memory;

use std::collections::BTreeMap;
use std::sync::Arc;

use memory::{Keys, Worked};
use rayon::prelude::*;
use sha2::{Digest, Sha256};

use crate::changes;
use crate::draw::{Figure, demo, figures, png, social};
use crate::edition::Edition;
use crate::media::{Medium, resized};
use crate::model::Recipe;
use crate::paper::{Job, Press};
use crate::sheet::{
    Batch, CourseSheet, HandoutKind, HandoutLink, Paper, RecipeSheets, TechniqueSheet,
    Units,
};
use crate::site::{self, Cartridge, FigureMap, TemplateFault};
use crate::theme::Theme;
use crate::words::Words;

/// Stands for the program itself: a hash of its sources, made when it was built.
const PROGRAM: &str = env!("TOURIER_BUILD");

/// Width of the picture for link previews, in pixels.
const SOCIAL_WIDTH: u32 = 1200;

/// Width of a drawing as PNG, in pixels.
const DRAWING_WIDTH: u32 = 1280;

/// How a file is made when it is out of date; the reason where it cannot be.
pub type Make<'a> = Box<dyn Fn() -> Result<Vec<u8>, String> + Send + Sync + 'a>;

/// One file to publish.
pub struct Product<'a> {
    /// Its path below the output folder, with forward slashes.
    pub path: String,
    /// Stands for everything it is made from: the same key means the same bytes.
    pub key: String,
    /// Makes its bytes.
    pub make: Make<'a>,
}

impl<'a> Product<'a> {
    /// A file that is made from `inputs`, by this program.
    pub fn new(path: impl Into<String>, inputs: &[&[u8]], make: Make<'a>) -> Self {
        Self { path: path.into(), key: key(inputs), make }
    }

    /// A file whose bytes are there already.
    fn ready(path: impl Into<String>, bytes: Vec<u8>) -> Self {
        Self {
            path: path.into(),
            key: key(&[&bytes]),
            make: Box::new(move || Ok(bytes.clone())),
        }
    }
}

fn key(inputs: &[&[u8]]) -> String {
    let mut key = Key::default();
    inputs.iter().for_each(|input| key.add(input));
    key.end()
}

/// A key in the making, for inputs that are not all there at once.
#[derive(Default)]
pub struct Key(Sha256);

impl Key {
    /// Adds one input.
    pub fn add(&mut self, input: &[u8]) {
        self.0.update((input.len() as u64).to_le_bytes());
        self.0.update(input);
    }

    /// The key of all inputs, made by this program.
    pub fn end(mut self) -> String {
        self.add(PROGRAM.as_bytes());
        self.0.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// The sheets and drawings of a whole edition.
pub struct Plates {
    /// The course.
    pub course: CourseSheet,
    /// Every recipe at every batch size.
    pub recipes: Vec<RecipeSheets>,
    /// Every technique.
    pub techniques: Vec<TechniqueSheet>,
    /// The drawings.
    pub figures: FigureMap,
    /// The pictures.
    pub media: Vec<Medium>,
}

impl Plates {
    /// Works out and draws everything; `None` where there is no course.
    pub fn new(edition: &Edition, words: &Words) -> Option<Self> {
        Self::made(edition, words, &|recipe| worked(edition, recipe, words))
    }

    /// The same, but what `memory` knows is taken from it, and what is worked out is kept
    /// in it.
    pub fn remembered(edition: &Edition, words: &Words, memory: &Memory) -> Option<Self> {
        // What changed since another edition depends on that one too.
        if edition.past.is_some() {
            return Self::new(edition, words);
        }
        let keys = Keys::new(edition, words);
        Self::made(edition, words, &|recipe| {
            memory
                .recall(&recipe.name, keys.of(recipe), || worked(edition, recipe, words))
        })
    }

    fn made(
        edition: &Edition,
        words: &Words,
        work: &(dyn Fn(&Recipe) -> Option<Worked> + Sync),
    ) -> Option<Self> {
        let course = edition.course()?;
        let recipes: Vec<Worked> =
            edition.content.recipes.par_iter().filter_map(work).collect();
        let techniques = edition.techniques(words);
        let mut figures = of_techniques(&techniques, words);
        let mut sheets = Vec::with_capacity(recipes.len());
        for worked in recipes {
            let name = &worked.sheets.base.recipe;
            let own = worked.figures.into_iter();
            figures.extend(own.map(|(batch, drawn)| ((name.clone(), batch), drawn)));
            sheets.push(worked.sheets);
        }
        let media = edition.content.media.clone();
        Some(Self { course, recipes: sheets, techniques, figures, media })
    }

    /// The drawings of a recipe at one batch size.
    fn of(&self, recipe: &str, batch: &str) -> &[Figure] {
        self.figures
            .get(&(recipe.to_owned(), batch.to_owned()))
            .map_or(&[], Vec::as_slice)
    }
}

/// A recipe worked out and drawn; `None` where it cannot be.
fn worked(edition: &Edition, recipe: &Recipe, words: &Words) -> Option<Worked> {
    let mut sheets = edition.sheets(recipe, words).ok()?;
    sheets.base.since = changes::since(edition, recipe, words);
    let draw = |batch: &Batch| (batch.key.clone(), figures(&batch.sheet, words));
    let figures = sheets.batches.iter().map(draw).collect();
    Some(Worked { sheets, figures })
}

fn of_techniques(techniques: &[TechniqueSheet], words: &Words) -> FigureMap {
    let all = techniques.par_iter().map(|technique| {
        let drawn = technique.demonstrations.iter().enumerate();
        let figures = drawn.map(|(at, one)| demo(one, at + 1, words)).collect();
        ((technique.technique.clone(), String::new()), figures)
    });
    all.collect()
}

/// Every file of the edition but the classes'.
///
/// # Errors
/// The first page template that cannot be filled in.
pub fn products<'a>(
    plates: &'a Plates,
    words: &'a Words,
    theme: &'a Theme,
) -> Result<Vec<Product<'a>>, TemplateFault> {
    let mut all = pages(plates, words, theme)?;
    all.extend(papers(plates, words, theme)?);
    all.sort_by(|one, other| one.path.cmp(&other.path));
    Ok(all)
}

/// Every page, and what pages show: what a change is first looked at in.
///
/// # Errors
/// The first page template that cannot be filled in.
pub fn pages<'a>(
    plates: &'a Plates,
    words: &'a Words,
    theme: &'a Theme,
) -> Result<Vec<Product<'a>>, TemplateFault> {
    let links = handouts(plates);
    let pages = site::pages(&input(plates, &links, words, theme))?;
    let mut all: Vec<Product> =
        pages.into_iter().map(|page| Product::ready(page.path, page.bytes)).collect();
    let brush = Brush { theme, fonts: files_key(theme, theme.below("fonts/")) };
    all.extend(
        plates.figures.iter().filter(|((_, batch), _)| is_published(batch)).flat_map(
            |((name, _), figures)| {
                figures.iter().flat_map(|figure| drawing_files(name, figure, &brush))
            },
        ),
    );
    all.extend(
        plates.recipes.iter().map(|sheets| picture(sheets, plates, words, &brush)),
    );
    all.extend(plates.media.iter().flat_map(photographs));
    if plates.course.offline {
        all.extend(site::ICONS.map(|size| icon(size, &brush)));
    }
    Ok(all)
}

/// Every handout, and the package for learning platforms.
///
/// # Errors
/// The first page template that cannot be filled in.
pub fn papers<'a>(
    plates: &'a Plates,
    words: &'a Words,
    theme: &'a Theme,
) -> Result<Vec<Product<'a>>, TemplateFault> {
    let links = handouts(plates);
    let package = package(Cartridge::new(&input(plates, &links, words, theme))?);
    let press = Arc::new(Press::new(theme));
    let look = theme_key(theme);
    let by_name: BTreeMap<&str, &RecipeSheets> = plates
        .recipes
        .iter()
        .map(|sheets| (sheets.base.recipe.as_str(), sheets))
        .collect();
    let handouts = links.par_iter().filter_map(|link| {
        let sheets = by_name.get(link.recipe.as_str())?;
        Some(handout(link, sheets, plates, Setting { words, press: &press, look: &look }))
    });
    let mut all: Vec<Product> = handouts.collect();
    all.push(package);
    Ok(all)
}

/// What the site is made from.
fn input<'a>(
    plates: &'a Plates,
    handouts: &'a [HandoutLink],
    words: &'a Words,
    theme: &'a Theme,
) -> site::Input<'a> {
    site::Input {
        course: &plates.course,
        recipes: &plates.recipes,
        techniques: &plates.techniques,
        figures: &plates.figures,
        media: &plates.media,
        handouts,
        words,
        theme,
    }
}

/// The drawings that stand as files of their own: techniques', and recipes' as written.
fn is_published(batch: &str) -> bool {
    matches!(batch, "" | "x1")
}

/// A drawing as SVG and as PNG, in both unit systems.
fn drawing_files<'a>(name: &str, figure: &Figure, brush: &Brush<'a>) -> Vec<Product<'a>> {
    let files = |units: Units| {
        let stem = format!("drawings/{name}/{}-{}", figure.name, units.word());
        let svg = units.of(&figure.svg).to_owned();
        let as_written = Product::ready(format!("{stem}.svg"), svg.clone().into_bytes());
        [as_written, painted(format!("{stem}.png"), svg, DRAWING_WIDTH, brush)]
    };
    [Units::Metric, Units::Us].into_iter().flat_map(files).collect()
}

/// What pictures are made with.
struct Brush<'a> {
    theme: &'a Theme,
    /// Stands for the theme's fonts.
    fonts: String,
}

/// A picture of an SVG document, with the fonts of the theme.
fn painted<'a>(path: String, svg: String, width: u32, brush: &Brush<'a>) -> Product<'a> {
    let inputs = svg.clone().into_bytes();
    let (theme, fonts) = (brush.theme, &brush.fonts);
    let make = move || png(&svg, theme, width).map_err(|error| error.to_string());
    Product::new(path, &[&inputs, fonts.as_bytes()], Box::new(make))
}

fn picture<'a>(
    sheets: &RecipeSheets,
    plates: &Plates,
    words: &Words,
    brush: &Brush<'a>,
) -> Product<'a> {
    let svg = social(&sheets.base, &plates.course, words);
    let path = format!("recipes/{}/social.png", sheets.base.recipe);
    painted(path, svg, SOCIAL_WIDTH, brush)
}

/// A picture in every size that pages offer.
fn photographs(medium: &Medium) -> Vec<Product<'_>> {
    let at = |width: u32| {
        let make = move || resized(medium, width);
        Product::new(medium.address(width), &[medium.hash.as_bytes()], Box::new(make))
    };
    medium.widths().into_iter().map(at).collect()
}

/// The theme's icon for a home screen.
fn icon<'a>(size: u32, brush: &Brush<'a>) -> Product<'a> {
    let svg = brush.theme.text("site/icon.svg").to_owned();
    painted(format!("assets/icon-{size}.png"), svg, size, brush)
}

/// The course for learning platforms.
fn package<'a>(cartridge: Cartridge) -> Product<'a> {
    let key = key(&cartridge.inputs());
    let path = cartridge.path();
    Product::new(path, &[key.as_bytes()], Box::new(move || cartridge.pack()))
}

/// What handouts are set with.
#[derive(Clone, Copy)]
struct Setting<'a, 's> {
    words: &'a Words,
    press: &'s Arc<Press>,
    look: &'s str,
}

fn handout<'a>(
    link: &HandoutLink,
    sheets: &'a RecipeSheets,
    plates: &'a Plates,
    setting: Setting<'a, '_>,
) -> Product<'a> {
    let job = Job {
        sheet: &sheets.base,
        course: &plates.course,
        figures: plates.of(&link.recipe, "x1"),
        words: setting.words,
        kind: link.kind,
        units: link.units,
        paper: link.paper,
        batch_key: "x1",
        whose: None,
        makers: 1,
    };
    let press = setting.press.clone();
    let inputs = press.data(&job);
    // Put together once more where it is made: kept, it would be most of what a large
    // course takes of memory.
    let make = move || press.print(&press.data(&job)).map_err(|fault| fault.to_string());
    Product::new(link.path.clone(), &[&inputs, setting.look.as_bytes()], Box::new(make))
}

/// Stands for what of the theme goes into handouts.
fn theme_key(theme: &Theme) -> String {
    files_key(theme, theme.below("paper/").chain(theme.below("fonts/")))
}

fn files_key<'p>(theme: &Theme, files: impl Iterator<Item = &'p str>) -> String {
    let parts: Vec<&[u8]> = files
        .flat_map(|path| [path.as_bytes(), theme.bytes(path).unwrap_or(&[])])
        .collect();
    key(&parts)
}

/// Every handout that is made: each kind in both unit systems on both papers, what the
/// course names first coming first.
fn handouts(plates: &Plates) -> Vec<HandoutLink> {
    let course = &plates.course;
    let units = ordered([Units::Metric, Units::Us], course.metric_first);
    let papers = ordered([Paper::A4, Paper::Letter], course.a4_first);
    let mut links = Vec::new();
    for sheets in &plates.recipes {
        for kind in HandoutKind::ALL {
            for (units, paper) in
                units.iter().flat_map(|u| papers.map(|paper| (*u, paper)))
            {
                links.push(link(&sheets.base.recipe, kind, units, paper));
            }
        }
    }
    links
}

fn ordered<T: Copy>(pair: [T; 2], first: bool) -> [T; 2] {
    if first { pair } else { [pair[1], pair[0]] }
}

/// The handout's place in the site.
fn link(recipe: &str, kind: HandoutKind, units: Units, paper: Paper) -> HandoutLink {
    let words = [kind.word(), units.word(), paper.word()].join("-");
    let path = format!("recipes/{recipe}/{recipe}-{words}.pdf");
    HandoutLink { recipe: recipe.to_owned(), kind, units, paper, path }
}
