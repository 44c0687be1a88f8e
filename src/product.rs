//! What is published: every page, drawing and handout as a file with the key of what it
//! is made from. Nothing is made here before it is asked for but the pages.

mod bundle;
mod class;
mod lengths;
mod memory;
mod photographs;
mod prints;
mod unmade;

pub use crate::site::{Card, EditionFiles, INSTRUCTOR, Legible, Written};
pub use bundle::{Bundle, Plate, Supplies};
pub use lengths::long_handouts;
pub use memory::Memory;
pub use prints::poor_prints;
pub use unmade::Unmade;

use std::collections::BTreeMap;
use std::io::Cursor;
use std::sync::{Arc, OnceLock};

use class::class_products;
use memory::Keys;
use photographs::Photographs;
use rayon::prelude::*;
use sha2::{Digest, Sha256};

use crate::changes;
use crate::draw::{Figure, demo, figures, page_figures, png, social};
use crate::edition::{Edition, Further};
use crate::encode::hex;
use crate::formula::Scaling;
use crate::measure::exact;
use crate::media::Medium;
use crate::model::Recipe;
use crate::paper::{Inner, Job, Press};
use crate::sheet::making::{self, outline};
use crate::sheet::{
    BatchSheet, CourseSheet, HandoutKind, HandoutLink, NotesSheet, OtherEdition, Outline,
    Paper, RecipeSheets, TechniqueSheet, Units,
};
use crate::site::{self, Drawn, FigureMap, Lacking, Page, Site, TemplateFault};
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

/// How a file is made when it is out of date, if need be from others of the edition; the
/// reason where it cannot be.
pub enum Make<'a> {
    /// It is there.
    Ready(Vec<u8>),
    /// All at once.
    Whole(Whole<'a>),
    /// Part by part, straight to where it shall stand: it may be larger than what is held.
    ByParts(ByParts<'a>),
}

/// Makes all of a file.
pub type Whole<'a> =
    Box<dyn Fn(&dyn EditionFiles) -> Result<Vec<u8>, Unmade> + Send + Sync + 'a>;

/// Makes a file part by part.
pub type ByParts<'a> = Box<
    dyn Fn(&dyn EditionFiles, &mut dyn Written) -> Result<(), Unmade> + Send + Sync + 'a,
>;

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
    pub fn new(path: impl Into<String>, inputs: &[&[u8]], make: Whole<'a>) -> Self {
        Self { path: path.into(), key: key(inputs), make: Make::Whole(make) }
    }

    /// A file whose bytes are there already.
    fn ready(path: impl Into<String>, bytes: Vec<u8>) -> Self {
        Self { path: path.into(), key: key(&[&bytes]), make: Make::Ready(bytes) }
    }

    /// Its bytes.
    ///
    /// # Errors
    /// The reason, where it cannot be made.
    pub fn bytes(&self, files: &dyn EditionFiles) -> Result<Vec<u8>, Unmade> {
        match &self.make {
            Make::Ready(bytes) => Ok(bytes.clone()),
            Make::Whole(make) => make(files),
            Make::ByParts(make) => {
                let mut written = Cursor::new(Vec::new());
                make(files, &mut written)?;
                Ok(written.into_inner())
            }
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
        hex(&self.0.finalize())
    }
}

/// A recipe worked out at every batch size, with its drawings.
pub struct Worked {
    /// The sheets.
    pub sheets: RecipeSheets,
    /// The drawings of its page by batch key.
    pub figures: Vec<(String, Vec<Figure>)>,
    /// What its handouts show besides, once one is made.
    printed: OnceLock<Printed>,
    /// What other pages say of it.
    pub card: Card,
}

/// What only handouts show of a recipe as written.
struct Printed {
    /// The drawings.
    figures: Vec<Figure>,
    /// The recipes that go into it.
    included: Vec<Inner>,
}

impl Worked {
    /// Works a recipe out and draws it; `None` where it cannot be.
    pub fn new(edition: &Edition, recipe: &Recipe, words: &Words) -> Option<Self> {
        let mut sheets = edition.sheets(recipe, words).ok()?;
        sheets.base.since = changes::since(edition, recipe, words);
        let draw =
            |batch: &BatchSheet| (batch.key.clone(), page_figures(&batch.sheet, words));
        let figures = sheets.batches.iter().map(draw).collect();
        let card = Card::new(&sheets);
        Some(Self { sheets, figures, printed: OnceLock::new(), card })
    }

    /// The drawings of the recipe as written.
    fn as_written(&self) -> &[Figure] {
        let found = self.figures.iter().find(|(batch, _)| batch == AS_WRITTEN);
        found.map_or(&[], |(_, figures)| figures)
    }
}

/// All that files are made with, but what is worked out of recipes.
pub struct Inputs<'a> {
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
    figures: OnceLock<FigureMap>,
    /// Those of every recipe: each has the same.
    handouts: Vec<HandoutLink>,
    notes: Vec<NotesSheet>,
    /// Where its site stands below the whole one: empty, or `fr/`.
    folder: String,
    photographs: Photographs,
}

impl<'a> Inputs<'a> {
    /// What there is of an edition and of the same in further languages, each in a folder
    /// named after its language, knowing of the others; none where there is no course.
    pub fn all(
        edition: &'a Edition,
        words: &'a Words,
        further: &'a [Further],
        theme: &'a Theme,
    ) -> Vec<Self> {
        let first = Self::new(edition, words, theme).into_iter();
        let further = further.iter().filter_map(|it| {
            let inputs = Self::new(&it.edition, &it.words, theme)?;
            let folder = format!("{}/", inputs.course.language);
            Some(Self { folder, ..inputs })
        });
        let mut all: Vec<Self> = first.chain(further).collect();
        let one = |inputs: &Self| OtherEdition {
            language: inputs.course.language.clone(),
            name: inputs.words.get("page-language").to_owned(),
            way: inputs.folder.clone(),
            address: inputs.course.address.clone(),
        };
        let known: Vec<OtherEdition> = all.iter().map(one).collect();
        let photographs = Photographs::new(all.len());
        for inputs in &mut all {
            inputs.photographs = photographs.clone();
            let up = if inputs.folder.is_empty() { "" } else { "../" };
            let others = known.iter().filter(|it| it.language != inputs.course.language);
            inputs.course.others = others
                .map(|it| OtherEdition { way: format!("{up}{}", it.way), ..it.clone() })
                .collect();
        }
        all
    }

    /// What there is of an edition; `None` where there is no course.
    pub fn new(edition: &'a Edition, words: &'a Words, theme: &'a Theme) -> Option<Self> {
        let course = edition.course(words)?;
        let techniques = edition.techniques(words);
        let handouts = handouts(&course);
        let recipes = edition.content.recipes.iter();
        let outlines =
            recipes.map(|recipe| (recipe.name.clone(), outline(recipe))).collect();
        Some(Self {
            edition,
            words,
            theme,
            course,
            outlines,
            techniques,
            figures: OnceLock::new(),
            handouts,
            notes: making::bench_notes(&edition.content, words),
            folder: String::new(),
            photographs: Photographs::default(),
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

    /// What only handouts show of a recipe as written, drawn when the first one asks.
    fn printed<'j>(&self, worked: &'j Worked) -> &'j Printed {
        let (edition, words) = (self.edition, self.words);
        worked.printed.get_or_init(|| {
            let recipe = edition.content.recipe(&worked.card.recipe);
            let included = recipe
                .map(|recipe| edition.included(recipe, &as_written(), words))
                .unwrap_or_default();
            Printed {
                figures: figures(&worked.sheets.base, words),
                included: Inner::all(included, words),
            }
        })
    }

    /// The handout of a recipe as written.
    fn job<'j>(
        &'j self,
        worked: &'j Worked,
        (kind, units, paper): (HandoutKind, Units, Paper),
    ) -> Job<'j> {
        let Printed { figures, included } = self.printed(worked);
        Job {
            sheet: &worked.sheets.base,
            course: &self.course,
            figures,
            included,
            media: &self.edition.content.media,
            words: self.words,
            kind,
            units,
            paper,
            batch_key: AS_WRITTEN,
            levels: &[],
            whose: None,
            makers: 1,
        }
    }

    /// The drawings of the techniques, made where a page shows them.
    fn figures(&self) -> &FigureMap {
        self.figures.get_or_init(|| of_techniques(&self.techniques, self.words))
    }

    fn site(&self) -> site::Input<'_> {
        site::Input {
            notes: &self.notes,
            course: &self.course,
            outlines: &self.outlines,
            techniques: &self.techniques,
            figures: self,
            media: &self.edition.content.media,
            handouts: &self.handouts,
            words: self.words,
            theme: self.theme,
        }
    }
}

impl Drawn for Inputs<'_> {
    fn of(&self, technique: &str) -> &[Figure] {
        self.figures().of(technique)
    }
}

/// One after the other: who asks may be at a part of shared work, and must not wait for others
/// who are at it too.
fn of_techniques(techniques: &[TechniqueSheet], words: &Words) -> FigureMap {
    let all = techniques.iter().map(|technique| {
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
pub struct Products<'s> {
    inputs: &'s Inputs<'s>,
    site: Site<'s>,
    keys: Keys<'s>,
    press: OnceLock<Press>,
    /// Stands for the theme's fonts.
    fonts: String,
    /// Stands for what of the theme goes into handouts.
    look: String,
}

impl<'s> Products<'s> {
    /// The products of these inputs.
    ///
    /// # Errors
    /// The first page template that cannot be read.
    pub fn new(inputs: &'s Inputs<'s>) -> Result<Self, TemplateFault> {
        let theme = inputs.theme;
        Ok(Self {
            inputs,
            site: Site::new(inputs.site())?,
            keys: Keys::new(inputs.edition, inputs.words, theme),
            press: OnceLock::new(),
            fonts: files_key(theme, theme.below("fonts/")),
            look: files_key(theme, theme.below("paper/").chain(theme.below("fonts/"))),
        })
    }

    /// What files are made with.
    pub fn inputs(&self) -> &'s Inputs<'s> {
        self.inputs
    }

    /// Where its site stands below the whole one: empty, or `fr/`.
    pub fn folder(&self) -> &str {
        &self.inputs.folder
    }

    /// A recipe's name among those of all languages.
    pub fn name(&self, recipe: &Recipe) -> String {
        format!("{}{}", self.inputs.folder, recipe.name)
    }

    /// Files in their place in the whole site. What is the instructor's alone is there in
    /// the first language.
    fn placed<'p>(&self, files: Vec<Product<'p>>) -> Vec<Product<'p>> {
        let folder = &self.inputs.folder;
        if folder.is_empty() {
            return files;
        }
        let open = files.into_iter().filter(|it| !it.path.starts_with(INSTRUCTOR));
        open.map(|it| Product { path: format!("{folder}{}", it.path), ..it }).collect()
    }

    /// The files of this language among those of all, by their paths in its own site.
    fn own_keys<'k>(
        &self,
        keys: &BTreeMap<&'k str, &'k str>,
    ) -> BTreeMap<&'k str, &'k str> {
        let folder = &self.inputs.folder;
        let others = &self.inputs.course.others;
        let is_other = |path: &str| {
            folder.is_empty() && others.iter().any(|other| path.starts_with(&other.way))
        };
        let own = keys.iter().filter(|(path, _)| !is_other(path));
        own.filter_map(|(path, key)| Some((path.strip_prefix(folder.as_str())?, *key)))
            .collect()
    }

    /// Stands for all that is no recipe: while it is the same, so are the files that all
    /// pages share.
    pub fn look(&self) -> &str {
        &self.keys.common
    }

    /// Stands for all that a recipe's files can depend on.
    pub fn key(&self, recipe: &Recipe) -> &str {
        self.keys.of(recipe)
    }

    /// A recipe's page and what it shows: what a change is first looked at in.
    ///
    /// # Errors
    /// The page template that cannot be filled in.
    pub fn recipe_page(
        &self,
        worked: &Worked,
    ) -> Result<Vec<Product<'_>>, TemplateFault> {
        let name = &worked.card.recipe;
        let mut all =
            vec![Product::page(self.site.recipe(&worked.sheets, &worked.figures)?)];
        all.extend(self.drawings(name, worked.as_written()));
        let svg = social(&worked.sheets.base, &self.inputs.course, self.inputs.words);
        let path = format!("recipes/{name}/social.png");
        all.push(self.painted(path, svg, SOCIAL_WIDTH));
        Ok(self.placed(all))
    }

    /// How many files a recipe has at least: its page, its picture and its handouts.
    pub fn least(&self) -> usize {
        2 + self.inputs.handouts.len()
    }

    /// A recipe's handouts.
    pub fn handouts(&self, worked: &Arc<Worked>) -> Vec<Product<'_>> {
        let own = self.inputs.handouts.par_iter();
        self.placed(own.map(|link| self.handout(*link, worked)).collect())
    }

    /// The files that say nothing of the recipes, but the classes'.
    ///
    /// # Errors
    /// The first page template that cannot be filled in.
    pub fn course_pages(&self) -> Result<Vec<Product<'_>>, TemplateFault> {
        let mut all: Vec<Product> =
            self.site.course_pages()?.into_iter().map(Product::page).collect();
        all.extend(self.site.instructor_room()?.into_iter().map(Product::page));
        let drawn = self.inputs.figures().iter();
        all.extend(drawn.flat_map(|(name, figures)| self.drawings(name, figures)));
        let media = self.inputs.edition.content.media.iter();
        all.extend(media.flat_map(|medium| self.photographs(medium)));
        if self.inputs.course.offline {
            all.extend(site::ICONS.map(|size| self.icon(size)));
        }
        Ok(self.placed(all))
    }

    /// Every file of every class.
    pub fn classes(&self) -> Vec<Product<'_>> {
        self.placed(class_products(self))
    }

    /// The files that tell of all recipes.
    ///
    /// # Errors
    /// The first page template that cannot be filled in.
    pub fn listing_pages(
        &self,
        cards: &[Card],
    ) -> Result<Vec<Product<'_>>, TemplateFault> {
        let pages = self.site.listing_pages(cards)?.into_iter().map(Product::page);
        Ok(self.placed(pages.collect()))
    }

    /// The files that are made from others, given the keys of those by their paths: the
    /// package for learning platforms, and the worker that keeps the site on a phone.
    pub fn derived_files(
        &self,
        cards: &[Card],
        keys: &BTreeMap<&str, &str>,
    ) -> Vec<Product<'_>> {
        let keys = self.own_keys(keys);
        let paths: Vec<&str> =
            keys.keys().copied().filter(|path| is_of_site(path)).collect();
        let of = |paths: &[String]| {
            let parts = paths.iter().flat_map(|path| {
                let key = keys.get(path.as_str()).copied().unwrap_or_default();
                [path.clone().into_bytes(), key.as_bytes().to_vec()]
            });
            parts.collect::<Vec<_>>()
        };
        let mut all = Vec::new();
        let kept = self.site.kept(&paths);
        if !kept.is_empty() {
            let mut inputs = of(&kept);
            let media = self.inputs.edition.content.media.iter();
            inputs.extend(media.flat_map(|medium| {
                let widths = format!("{} {:?}", medium.name, medium.widths());
                [medium.hash.clone().into_bytes(), widths.into_bytes()]
            }));
            inputs.push(self.inputs.theme.text("site/offline.js").as_bytes().to_vec());
            let inputs: Vec<&[u8]> = inputs.iter().map(Vec::as_slice).collect();
            let make = move |files: &dyn EditionFiles| {
                self.site.worker(&kept, &self.within(files)).map_err(Unmade::File)
            };
            all.push(Product::new(site::WORKER, &inputs, Box::new(make)));
        }
        let package = self.site.cartridge(cards, &paths);
        let pages = of(package.paths());
        let mut inputs = package.inputs();
        inputs.extend(pages.iter().map(Vec::as_slice));
        let key = key(&inputs);
        let make = move |files: &dyn EditionFiles, to: &mut dyn Written| {
            package.pack(&self.within(files), to).map_err(Unmade::Package)
        };
        let make = Make::ByParts(Box::new(make));
        all.push(Product { path: site::PACKAGE.to_owned(), key, make });
        self.placed(all)
    }

    /// The files of this language's own site.
    fn within<'f>(&'f self, files: &'f dyn EditionFiles) -> Within<'f> {
        Within { files, folder: &self.inputs.folder }
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
        let make = move |_: &dyn EditionFiles| {
            png(&svg, self.inputs.theme, width).map_err(Unmade::Drawing)
        };
        Product::new(path, &[&inputs, self.fonts.as_bytes()], Box::new(make))
    }

    /// A picture in every size that pages offer.
    fn photographs<'p>(&'p self, medium: &'p Medium) -> Vec<Product<'p>> {
        let at = |width: u32| {
            let photographs = &self.inputs.photographs;
            let make = move |_: &dyn EditionFiles| {
                photographs.get(medium, width).map_err(Unmade::Picture)
            };
            Product::new(medium.address(width), &[medium.hash.as_bytes()], Box::new(make))
        };
        medium.widths().into_iter().map(at).collect()
    }

    /// The theme's icon for a home screen.
    fn icon(&self, size: u32) -> Product<'_> {
        let svg = self.inputs.theme.text("site/icon.svg").to_owned();
        self.painted(format!("assets/icon-{size}.png"), svg, size)
    }

    fn handout(&self, link: HandoutLink, worked: &Arc<Worked>) -> Product<'_> {
        let (path, worked) = (link.path(&worked.card.recipe), worked.clone());
        let data = move || {
            let how = (link.kind, link.units, link.paper);
            self.press().data(&self.inputs.job(&worked, how))
        };
        let inputs = data();
        // Put together once more where it is made: kept, it would be most of what a large
        // course takes of memory.
        let make = move |_: &dyn EditionFiles| {
            self.press().print(&data()).map_err(Unmade::Handout)
        };
        Product::new(path, &[&inputs, self.look.as_bytes()], Box::new(make))
    }

    fn press(&self) -> &Press {
        self.press.get_or_init(|| {
            Press::new(self.inputs.theme).showing(&self.inputs.edition.content.media)
        })
    }
}

/// Files below a folder, by their paths in it.
struct Within<'f> {
    files: &'f dyn EditionFiles,
    folder: &'f str,
}

impl EditionFiles for Within<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking> {
        self.files.file(&format!("{}{path}", self.folder))
    }

    fn before(&self, path: &str) -> Option<Box<dyn Legible>> {
        self.files.before(&format!("{}{path}", self.folder))
    }

    fn stands(&self, path: &str) -> bool {
        self.files.stands(&format!("{}{path}", self.folder))
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

fn files_key<'p>(theme: &Theme, files: impl Iterator<Item = &'p str>) -> String {
    let parts: Vec<&[u8]> = files
        .flat_map(|path| [path.as_bytes(), theme.bytes(path).unwrap_or(&[])])
        .collect();
    key(&parts)
}

/// Every handout of a recipe: each kind in both unit systems on both papers, what the
/// course names first coming first.
fn handouts(course: &CourseSheet) -> Vec<HandoutLink> {
    let units = ordered([Units::Metric, Units::Us], course.metric_first);
    let papers = ordered([Paper::A4, Paper::Letter], course.a4_first);
    let mut links = Vec::new();
    for kind in HandoutKind::ALL {
        for (units, paper) in units.iter().flat_map(|u| papers.map(|paper| (*u, paper))) {
            links.push(HandoutLink { kind, units, paper });
        }
    }
    links
}

fn ordered<T: Copy>(pair: [T; 2], first: bool) -> [T; 2] {
    if first { pair } else { [pair[1], pair[0]] }
}
