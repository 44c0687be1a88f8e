//! What is published: every page, drawing and handout as a file with the key of what it
//! is made from. Nothing is made here before it is asked for but the pages.

mod bundle;
mod class;
mod lengths;
mod memory;
mod prints;

pub use crate::site::{Card, INSTRUCTOR, Shelf};
pub use bundle::{Bundle, Plate, Supplies};
pub use lengths::long_handouts;
pub use memory::Memory;
pub use prints::poor_prints;

use std::collections::BTreeMap;
use std::sync::{Arc, OnceLock};

use class::class_products;
use memory::Keys;
use rayon::prelude::*;
use sha2::{Digest, Sha256};

use crate::changes;
use crate::draw::{Figure, demo, figures, png, social};
use crate::edition::Edition;
use crate::formula::Scaling;
use crate::measure::exact;
use crate::media::{Medium, resized};
use crate::model::Recipe;
use crate::paper::{Inner, Job, Press};
use crate::sheet::build::outline;
use crate::sheet::{
    Batch, CourseSheet, HandoutKind, HandoutLink, Outline, Paper, RecipeSheets,
    TechniqueSheet, Units,
};
use crate::site::{self, FigureMap, Page, Site, TemplateFault};
use crate::statement::Statement;
use crate::theme::Theme;
use crate::words::Words;

/// Stands for the program itself: a hash of its sources, made when it was built.
const PROGRAM: &str = env!("TOURIER_BUILD");

/// Width of the picture for link previews, in pixels.
const SOCIAL_WIDTH: u32 = 1200;

/// Width of a drawing as PNG, in pixels.
const DRAWING_WIDTH: u32 = 1280;

/// The key of the batch that drawings and handouts show: the recipe as written.
const AS_WRITTEN: &str = "x1";

/// How a file is made when it is out of date, if need be from others on the shelf; the
/// reason where it cannot be.
pub type Make<'a> =
    Box<dyn Fn(&dyn Shelf) -> Result<Vec<u8>, Statement> + Send + Sync + 'a>;

/// One batch: what drawings and handouts show.
fn as_written() -> Scaling {
    Scaling::Batches(exact(1, 1))
}

/// One file to publish.
pub struct Product<'a> {
    /// Its path below the output folder, with forward slashes; below [`INSTRUCTOR`] where it
    /// is the instructor's alone and stands in a folder beside the site.
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
            make: Box::new(move |_| Ok(bytes.clone())),
        }
    }

    fn page(page: Page) -> Self {
        Self::ready(page.path, page.bytes)
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

/// A recipe worked out at every batch size, with its drawings.
pub struct Worked {
    /// The sheets.
    pub sheets: RecipeSheets,
    /// The drawings by batch key.
    pub figures: Vec<(String, Vec<Figure>)>,
    /// The recipes that go into it, as its handouts show them.
    pub included: Vec<Inner>,
    /// What other pages say of it.
    pub card: Card,
}

impl Worked {
    /// Works a recipe out and draws it; `None` where it cannot be.
    pub fn new(edition: &Edition, recipe: &Recipe, words: &Words) -> Option<Self> {
        let mut sheets = edition.sheets(recipe, words).ok()?;
        sheets.base.since = changes::since(edition, recipe, words);
        let draw = |batch: &Batch| (batch.key.clone(), figures(&batch.sheet, words));
        let figures = sheets.batches.iter().map(draw).collect();
        let card = Card::new(&sheets);
        let included = Inner::all(edition.included(recipe, &as_written(), words), words);
        Some(Self { sheets, figures, included, card })
    }

    /// The drawings of the recipe as written.
    fn as_written(&self) -> &[Figure] {
        let found = self.figures.iter().find(|(batch, _)| batch == AS_WRITTEN);
        found.map_or(&[], |(_, figures)| figures)
    }
}

/// All that files are made with, but what is worked out of recipes.
pub struct Stock<'a> {
    /// The content.
    pub edition: &'a Edition,
    /// The fixed words.
    pub words: &'a Words,
    /// The theme.
    pub theme: &'a Theme,
    /// The course.
    pub course: CourseSheet,
    outlines: BTreeMap<String, Outline>,
    techniques: Vec<TechniqueSheet>,
    figures: FigureMap,
    handouts: BTreeMap<String, Vec<HandoutLink>>,
}

impl<'a> Stock<'a> {
    /// What there is of an edition; `None` where there is no course.
    pub fn new(edition: &'a Edition, words: &'a Words, theme: &'a Theme) -> Option<Self> {
        let course = edition.course(words)?;
        let techniques = edition.techniques(words);
        let figures = of_techniques(&techniques, words);
        let recipes = edition.content.recipes.iter();
        let handouts = recipes
            .clone()
            .map(|recipe| (recipe.name.clone(), handouts(&recipe.name, &course)))
            .collect();
        let outlines =
            recipes.map(|recipe| (recipe.name.clone(), outline(recipe))).collect();
        Some(Self {
            edition,
            words,
            theme,
            course,
            outlines,
            techniques,
            figures,
            handouts,
        })
    }

    /// The recipes.
    pub fn recipes(&self) -> &'a [Recipe] {
        &self.edition.content.recipes
    }

    /// Works a recipe out and draws it; `None` where it cannot be.
    pub fn worked(&self, recipe: &Recipe) -> Option<Worked> {
        Worked::new(self.edition, recipe, self.words)
    }

    /// The handout of a recipe as written.
    fn job<'j>(
        &'j self,
        worked: &'j Worked,
        (kind, units, paper): (HandoutKind, Units, Paper),
    ) -> Job<'j> {
        Job {
            sheet: &worked.sheets.base,
            course: &self.course,
            figures: worked.as_written(),
            included: &worked.included,
            media: &self.edition.content.media,
            words: self.words,
            kind,
            units,
            paper,
            batch_key: AS_WRITTEN,
            whose: None,
            makers: 1,
        }
    }

    fn site(&self) -> site::Input<'_> {
        site::Input {
            course: &self.course,
            outlines: &self.outlines,
            techniques: &self.techniques,
            figures: &self.figures,
            media: &self.edition.content.media,
            handouts: &self.handouts,
            words: self.words,
            theme: self.theme,
        }
    }
}

fn of_techniques(techniques: &[TechniqueSheet], words: &Words) -> FigureMap {
    let all = techniques.par_iter().map(|technique| {
        let drawn = technique.demonstrations.iter().enumerate();
        let figures = drawn.map(|(at, one)| demo(one, at + 1, words)).collect();
        (technique.technique.clone(), figures)
    });
    all.collect()
}

/// Says of an edition which files there are, and makes them.
///
/// What a file is made from is its own key. A recipe has a key too, of all that its files
/// can depend on: while it is the same, its files are, and its card tells the other pages
/// what they say of it, so it is not even worked out.
pub struct Workshop<'s> {
    stock: &'s Stock<'s>,
    site: Site<'s>,
    keys: Keys<'s>,
    press: OnceLock<Press>,
    /// Stands for the theme's fonts.
    fonts: String,
    /// Stands for what of the theme goes into handouts.
    look: String,
}

impl<'s> Workshop<'s> {
    /// A workshop for what is in stock.
    ///
    /// # Errors
    /// The first page template that cannot be read.
    pub fn new(stock: &'s Stock<'s>) -> Result<Self, TemplateFault> {
        let theme = stock.theme;
        Ok(Self {
            stock,
            site: Site::new(stock.site())?,
            keys: Keys::new(stock.edition, stock.words, theme),
            press: OnceLock::new(),
            fonts: files_key(theme, theme.below("fonts/")),
            look: files_key(theme, theme.below("paper/").chain(theme.below("fonts/"))),
        })
    }

    /// What files are made with.
    pub fn stock(&self) -> &'s Stock<'s> {
        self.stock
    }

    /// Stands for all that a recipe's files can depend on.
    pub fn key(&self, recipe: &Recipe) -> &str {
        self.keys.of(recipe)
    }

    /// A recipe's page and what it shows: what a change is first looked at in.
    ///
    /// # Errors
    /// The page template that cannot be filled in.
    pub fn shown(&self, worked: &Worked) -> Result<Vec<Product<'_>>, TemplateFault> {
        let name = &worked.card.recipe;
        let mut all =
            vec![Product::page(self.site.recipe(&worked.sheets, &worked.figures)?)];
        all.extend(self.drawings(name, worked.as_written()));
        let svg = social(&worked.sheets.base, &self.stock.course, self.stock.words);
        let path = format!("recipes/{name}/social.png");
        all.push(self.painted(path, svg, SOCIAL_WIDTH));
        Ok(all)
    }

    /// How many files a recipe has at least: its page, its picture and its handouts.
    pub fn least(&self, recipe: &Recipe) -> usize {
        2 + self.stock.handouts.get(&recipe.name).map_or(0, Vec::len)
    }

    /// A recipe's handouts.
    pub fn printed(&self, worked: &Arc<Worked>) -> Vec<Product<'_>> {
        let own = self.stock.handouts.get(&worked.card.recipe);
        let own = own.map_or(&[][..], Vec::as_slice).par_iter();
        own.map(|link| self.handout(link, worked)).collect()
    }

    /// The files that say nothing of the recipes, but the classes'.
    ///
    /// # Errors
    /// The first page template that cannot be filled in.
    pub fn apart(&self) -> Result<Vec<Product<'_>>, TemplateFault> {
        let mut all: Vec<Product> =
            self.site.apart()?.into_iter().map(Product::page).collect();
        all.extend(self.site.instructor_room()?.into_iter().map(Product::page));
        let drawn = self.stock.figures.iter();
        all.extend(drawn.flat_map(|(name, figures)| self.drawings(name, figures)));
        all.extend(self.stock.edition.content.media.iter().flat_map(photographs));
        if self.stock.course.offline {
            all.extend(site::ICONS.map(|size| self.icon(size)));
        }
        Ok(all)
    }

    /// Every file of every class.
    pub fn classes(&self) -> Vec<Product<'_>> {
        class_products(self)
    }

    /// The files that tell of all recipes.
    ///
    /// # Errors
    /// The first page template that cannot be filled in.
    pub fn across(&self, cards: &[Card]) -> Result<Vec<Product<'_>>, TemplateFault> {
        Ok(self.site.across(cards)?.into_iter().map(Product::page).collect())
    }

    /// The files that are made from others, given the keys of those by their paths: the
    /// package for learning platforms, and the worker that keeps the site on a phone.
    pub fn whole(
        &self,
        cards: &[Card],
        keys: &BTreeMap<String, String>,
    ) -> Vec<Product<'_>> {
        let paths: Vec<&str> =
            keys.keys().map(String::as_str).filter(|path| is_of_site(path)).collect();
        let of = |paths: &[String]| {
            let parts = paths.iter().flat_map(|path| {
                let key = keys.get(path).cloned().unwrap_or_default();
                [path.clone().into_bytes(), key.into_bytes()]
            });
            parts.collect::<Vec<_>>()
        };
        let mut all = Vec::new();
        let kept = self.site.kept(&paths);
        if !kept.is_empty() {
            let mut inputs = of(&kept);
            let media = self.stock.edition.content.media.iter();
            inputs.extend(media.flat_map(|medium| {
                let widths = format!("{} {:?}", medium.name, medium.widths());
                [medium.hash.clone().into_bytes(), widths.into_bytes()]
            }));
            inputs.push(self.stock.theme.text("site/offline.js").as_bytes().to_vec());
            let inputs: Vec<&[u8]> = inputs.iter().map(Vec::as_slice).collect();
            let make = move |shelf: &dyn Shelf| self.site.worker(&kept, shelf);
            all.push(Product::new(site::WORKER, &inputs, Box::new(make)));
        }
        let package = self.site.cartridge(cards, &paths);
        let pages = of(package.paths());
        let mut inputs = package.inputs();
        inputs.extend(pages.iter().map(Vec::as_slice));
        let key = key(&inputs);
        let make = move |shelf: &dyn Shelf| package.pack(shelf);
        all.push(Product { path: site::PACKAGE.to_owned(), key, make: Box::new(make) });
        all
    }

    /// Drawings as SVG and as PNG, in both unit systems.
    fn drawings(&self, name: &str, figures: &[Figure]) -> Vec<Product<'_>> {
        let of = |figure: &Figure, units: Units| {
            let stem = format!("drawings/{name}/{}-{}", figure.name, units.word());
            let svg = figure.upright.of(units).svg();
            let as_written =
                Product::ready(format!("{stem}.svg"), svg.clone().into_bytes());
            [as_written, self.painted(format!("{stem}.png"), svg, DRAWING_WIDTH)]
        };
        let both = |figure| [Units::Metric, Units::Us].map(|units| of(figure, units));
        figures.iter().flat_map(both).flatten().collect()
    }

    /// A picture of an SVG document, with the fonts of the theme.
    fn painted(&self, path: String, svg: String, width: u32) -> Product<'_> {
        let inputs = svg.clone().into_bytes();
        let make = move |_: &dyn Shelf| {
            png(&svg, self.stock.theme, width).map_err(|error| error.said())
        };
        Product::new(path, &[&inputs, self.fonts.as_bytes()], Box::new(make))
    }

    /// The theme's icon for a home screen.
    fn icon(&self, size: u32) -> Product<'_> {
        let svg = self.stock.theme.text("site/icon.svg").to_owned();
        self.painted(format!("assets/icon-{size}.png"), svg, size)
    }

    fn handout(&self, link: &HandoutLink, worked: &Arc<Worked>) -> Product<'_> {
        let (link, worked) = (link.clone(), worked.clone());
        let path = link.path.clone();
        let data = move || {
            let how = (link.kind, link.units, link.paper);
            self.press().data(&self.stock.job(&worked, how))
        };
        let inputs = data();
        // Put together once more where it is made: kept, it would be most of what a large
        // course takes of memory.
        let make = move |_: &dyn Shelf| {
            self.press().print(&data()).map_err(|fault| fault.said())
        };
        Product::new(path, &[&inputs, self.look.as_bytes()], Box::new(make))
    }

    fn press(&self) -> &Press {
        self.press.get_or_init(|| {
            Press::new(self.stock.theme).showing(&self.stock.edition.content.media)
        })
    }
}

/// Whether a file is one of the site's pages or of what all pages need.
fn is_of_site(path: &str) -> bool {
    if path.starts_with(INSTRUCTOR) {
        return false;
    }
    let pages = path.ends_with(".html") && !path.starts_with("classes/");
    let assets = path.starts_with("assets/") && !path.ends_with(".png");
    pages || assets || path.ends_with(".xml")
}

/// A picture in every size that pages offer.
fn photographs(medium: &Medium) -> Vec<Product<'_>> {
    let at = |width: u32| {
        let make = move |_: &dyn Shelf| resized(medium, width);
        Product::new(medium.address(width), &[medium.hash.as_bytes()], Box::new(make))
    };
    medium.widths().into_iter().map(at).collect()
}

fn files_key<'p>(theme: &Theme, files: impl Iterator<Item = &'p str>) -> String {
    let parts: Vec<&[u8]> = files
        .flat_map(|path| [path.as_bytes(), theme.bytes(path).unwrap_or(&[])])
        .collect();
    key(&parts)
}

/// Every handout of a recipe: each kind in both unit systems on both papers, what the
/// course names first coming first.
fn handouts(recipe: &str, course: &CourseSheet) -> Vec<HandoutLink> {
    let units = ordered([Units::Metric, Units::Us], course.metric_first);
    let papers = ordered([Paper::A4, Paper::Letter], course.a4_first);
    let mut links = Vec::new();
    for kind in HandoutKind::ALL {
        for (units, paper) in units.iter().flat_map(|u| papers.map(|paper| (*u, paper))) {
            links.push(link(recipe, kind, units, paper));
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
