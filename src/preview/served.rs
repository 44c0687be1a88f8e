//! One edition in memory. What it is made of refers to itself in many places, so it lives
//! on the stack of a thread of its own, which makes files as they are ordered and ends
//! when nobody can order any more. Its pages are there first; what is printed and what is
//! planned follows while they are looked at.

use std::collections::BTreeMap;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use rayon::prelude::*;

use crate::edition::Edition;
use crate::fault::Fault;
use crate::model::Recipe;
use crate::product::{Card, EditionFiles, Inputs, Memory, Product, Products, Unmade};
use crate::said;
use crate::site::{Lacking, TemplateFault};
use crate::statement::Statement;
use crate::words::Words;

use super::finding::{self, Finding};
use super::{Open, Opened, Typed};

/// Files that can be made at once: a plan that takes its time must not hold up a page.
const HANDS: usize = 4;

/// A file's bytes; none where there is no such file; the reason where it cannot be made.
pub(super) type Made = Result<Option<Arc<Vec<u8>>>, Unserved>;

/// Why a file is not served.
#[derive(Clone, Debug)]
pub(super) enum Unserved {
    /// Whoever makes it broke.
    Broke,
    /// It cannot be made.
    Unmade(Unmade),
    /// A template of a page cannot be filled in.
    Unfilled(Statement),
}

impl Unserved {
    /// It as a statement.
    pub(super) fn said(&self) -> Statement {
        match self {
            Self::Broke => said!("preview-broke-file"),
            Self::Unmade(why) => why.said(),
            Self::Unfilled(why) => why.clone(),
        }
    }
}

/// Files made, by path, with the key of what each was made from.
pub(super) type Kept = Mutex<BTreeMap<String, (String, Arc<Vec<u8>>)>>;

/// What of an edition is there before it is said to be ready; the rest follows where it is
/// asked for.
#[derive(Clone, Debug)]
pub(super) enum First {
    /// Every page.
    Pages,
    /// The page of the recipe that this text makes.
    Of(String),
}

/// What is ordered of an edition.
enum Order {
    /// A file: its path, and where it goes.
    File(String, Sender<Made>),
    /// To look at it.
    Look(Look),
    /// To work out what is printed and planned before it is asked for.
    Later,
}

/// A look at an edition.
type Look = Box<dyn FnOnce(&Edition) + Send>;

/// An edition that files can be ordered from.
pub(super) struct Served {
    orders: Mutex<Sender<Order>>,
    cautions: Vec<String>,
    /// What is worth saying of it, for the desk.
    pub(super) findings: Vec<Finding>,
    /// The words of its language.
    pub(super) words: Words,
    /// Stands for what all its pages share.
    pub(super) look: String,
}

/// Why there is no edition.
#[derive(Debug, Default)]
pub(super) struct Stopped {
    /// The faults that stop it, as text.
    pub(super) faults: Vec<String>,
    /// They and the cautions beside them, for the desk.
    pub(super) findings: Vec<Finding>,
}

impl Stopped {
    /// What is not about a place in a text.
    fn whole(fault: String) -> Self {
        Self { faults: vec![fault.clone()], findings: vec![Finding::whole(fault)] }
    }
}

impl Served {
    /// Opens the content and gets an edition ready.
    ///
    /// # Errors
    /// The faults that stop it, as text. `words` are those of the edition before.
    pub(super) fn start(
        open: &Arc<Open>,
        (typed, first): (&Typed, First),
        (kept, memory): (&Arc<Kept>, &Arc<Memory>),
        words: &Words,
    ) -> Result<Self, Stopped> {
        let (open, kept, memory) = (open.clone(), kept.clone(), memory.clone());
        let typed = typed.clone();
        let (orders, taken) = channel();
        let (ready, wait) = channel();
        let before = words.clone();
        std::thread::spawn(move || {
            let sent = ready.clone();
            let opened = open(&typed).map_err(|why| Stopped::whole(before.tell(&why.0)));
            let lived =
                opened.and_then(|it| live(it, first, (&kept, &memory), &ready, taken));
            if let Err(faults) = lived {
                // Nobody waits any more where the preview was stopped.
                let _ = sent.send(Err(faults));
            }
        });
        let lost = |_| Stopped::whole(words.tell(&said!("preview-broke-edition")));
        let (cautions, findings, words, look) = wait.recv().map_err(lost)??;
        Ok(Self { orders: Mutex::new(orders), cautions, findings, words, look })
    }

    /// What is worth saying of the edition, as text; nothing of it stops it.
    pub(super) fn cautions(&self) -> &[String] {
        &self.cautions
    }

    /// Orders a file and waits for it.
    pub(super) fn order(&self, path: &str) -> Made {
        let (give, get) = channel();
        let order = Order::File(path.to_owned(), give);
        self.orders().send(order).map_err(|_| Unserved::Broke)?;
        get.recv().map_err(|_| Unserved::Broke)?
    }

    /// Looks at the edition; `None` where it broke.
    pub(super) fn look<T: Send + 'static>(
        &self,
        look: impl FnOnce(&Edition) -> T + Send + 'static,
    ) -> Option<T> {
        let (give, get) = channel();
        let look = move |edition: &Edition| drop(give.send(look(edition)));
        self.orders().send(Order::Look(Box::new(look))).ok()?;
        get.recv().ok()
    }

    /// Has what is printed and planned worked out while pages are looked at.
    pub(super) fn go_on(&self) {
        // One that broke says so where a file is ordered.
        let _ = self.orders().send(Order::Later);
    }

    fn orders(&self) -> Sender<Order> {
        self.orders.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }
}

/// What is worth saying of an edition that is ready, as text and for the desk, its words, and
/// what stands for all that its pages share; or the faults that stop it.
type Ready = Result<(Vec<String>, Vec<Finding>, Words, String), Stopped>;

/// The life of an edition: it says that it is ready, or why it is none, then makes files.
fn live(
    opened: Opened,
    first: First,
    (kept, memory): (&Kept, &Memory),
    ready: &Sender<Ready>,
    orders: Receiver<Order>,
) -> Result<(), Stopped> {
    let Opened { edition, theme, words, faults } = opened;
    let findings = finding::all(&edition, &words);
    if edition.stops() {
        return Err(Stopped { faults, findings });
    }
    let unspoken = |it: Fault| Stopped::whole(words.tell(&it.message));
    let further = edition.further(&theme).map_err(unspoken)?;
    let mut all = Inputs::all(&edition, &words, &further, &theme);
    // A page that a browser keeps for later would not show what was saved since.
    all.iter_mut().for_each(|inputs| inputs.course.offline = false);
    if all.is_empty() {
        return Err(Stopped { faults, findings });
    }
    let broken = |fault: TemplateFault| Stopped::whole(words.tell(&fault.said()));
    let all: Result<Vec<Products>, _> = all.iter().map(Products::new).collect();
    let all = all.map_err(broken)?;
    let asked = Asked::new(&all, (kept, memory));
    asked.begin(&first).map_err(broken)?;
    let look = all.first().map_or("", |of| of.look()).to_owned();
    if ready.send(Ok((faults, findings, words.clone(), look))).is_ok() {
        work(&asked, &edition, &Mutex::new(orders));
    }
    Ok(())
}

type ByPath<'a> = BTreeMap<String, Product<'a>>;

fn by_path(products: Vec<Product>) -> ByPath {
    products.into_iter().map(|product| (product.path.clone(), product)).collect()
}

/// What is made of the edition in one language.
type Language<'a> = &'a Products<'a>;

/// Files that are worked out together.
#[derive(Clone, Copy)]
enum What<'a> {
    /// A recipe's page, and what it shows.
    Page(Language<'a>, &'a Recipe),
    /// What is printed of a recipe.
    Printed(Language<'a>, &'a Recipe),
    /// What says nothing of the recipes.
    Course(Language<'a>),
    /// What tells of all recipes.
    Listing(Language<'a>),
    /// What is planned, and what is made from other files; it takes longest.
    Planned,
}

impl What<'_> {
    /// Whether it is among the pages and what they show.
    fn is_shown(&self) -> bool {
        match self {
            Self::Page(..) | Self::Course(_) | Self::Listing(_) => true,
            Self::Printed(..) | Self::Planned => false,
        }
    }

    /// How far from here a file with this path is looked for.
    fn distance(&self, path: &str) -> usize {
        match self {
            Self::Page(of, recipe) | Self::Printed(of, recipe) => {
                // The folder of a recipe or of its drawings has its name.
                let is_its = path.split('/').rev().nth(1) == Some(&recipe.name)
                    && path.starts_with(of.folder());
                if is_its { 0 } else { 3 }
            }
            Self::Course(_) => 1,
            Self::Listing(_) => 2,
            Self::Planned => 4,
        }
    }
}

/// A part, and its files once they are worked out.
struct Part<'a> {
    what: What<'a>,
    files: OnceLock<Result<ByPath<'a>, TemplateFault>>,
}

/// What can be made. Its parts are worked out on threads of their own and never on those
/// that share the work of one part: these would wait for one another.
struct Asked<'a> {
    all: &'a [Products<'a>],
    /// Pages first.
    parts: Vec<Part<'a>>,
    memory: &'a Memory,
    kept: &'a Kept,
}

impl<'a> Asked<'a> {
    fn new(all: &'a [Products<'a>], (kept, memory): (&'a Kept, &'a Memory)) -> Self {
        let recipes = |of: Language<'a>| of.inputs().recipes().iter();
        let both = |of: Language<'a>, make: fn(Language<'a>, &'a Recipe) -> What<'a>| {
            recipes(of).map(move |recipe| make(of, recipe))
        };
        let pages = all.iter().flat_map(|of| both(of, What::Page));
        let course = all.iter().flat_map(|of| [What::Course(of), What::Listing(of)]);
        let printed = all.iter().flat_map(|of| both(of, What::Printed));
        let whats = pages.chain(course).chain(printed).chain([What::Planned]);
        let parts = whats.map(|what| Part { what, files: OnceLock::new() }).collect();
        Self { all, parts, memory, kept }
    }

    /// Works out what must be there before anything is asked for.
    fn begin(&self, first: &First) -> Result<(), TemplateFault> {
        let is_first = |part: &&Part| match (first, part.what) {
            (First::Pages, what) => what.is_shown(),
            (First::Of(file), What::Page(_, recipe)) => {
                *recipe.place.file == **file && recipe.way.is_none()
            }
            (First::Of(_), _) => false,
        };
        let parts: Vec<&Part> = match first {
            First::Pages => self.parts.iter().filter(is_first).collect(),
            // Of the page in its first language the others follow.
            First::Of(_) => self.parts.iter().find(is_first).into_iter().collect(),
        };
        self.work_out(&parts);
        let broken = |part: &&Part<'a>| self.files(part).err().cloned();
        parts.iter().find_map(broken).map_or(Ok(()), Err)
    }

    /// Works out parts, several at once.
    fn work_out(&self, parts: &[&Part<'a>]) {
        let next = AtomicUsize::new(0);
        let hand = || {
            while let Some(part) = parts.get(next.fetch_add(1, Ordering::Relaxed)) {
                let _ = self.files(part);
            }
        };
        std::thread::scope(|scope| {
            (0..HANDS.min(parts.len())).for_each(|_| drop(scope.spawn(hand)));
        });
    }

    /// The files of a part.
    fn files<'p>(&self, part: &'p Part<'a>) -> Result<&'p ByPath<'a>, &'p TemplateFault> {
        part.files.get_or_init(|| self.made(part.what)).as_ref()
    }

    fn made(&self, what: What<'a>) -> Result<ByPath<'a>, TemplateFault> {
        let worked = |of: Language<'a>, recipe| self.memory.worked(of, recipe);
        Ok(by_path(match what {
            What::Page(of, recipe) => {
                let worked = worked(of, recipe);
                worked.map_or_else(|| Ok(Vec::new()), |it| of.recipe_page(&it))?
            }
            What::Printed(of, recipe) => {
                worked(of, recipe).map_or_else(Vec::new, |it| of.handouts(&it))
            }
            What::Course(of) => of.course_pages()?,
            What::Listing(of) => of.listing_pages(&self.cards(of))?,
            What::Planned => {
                let shown = self.parts.iter().filter(|part| part.what.is_shown());
                let shown: Vec<&Part> = shown.collect();
                self.work_out(&shown);
                let mut keys = BTreeMap::new();
                for part in shown {
                    let files = self.files(part).map_err(Clone::clone)?;
                    keys.extend(files.iter().map(|(path, it)| (&**path, &*it.key)));
                }
                let each = |of: Language<'a>| {
                    let mut planned = of.classes();
                    planned.extend(of.derived_files(&self.cards(of), &keys));
                    planned
                };
                self.all.iter().flat_map(each).collect()
            }
        }))
    }

    /// What other pages say of the recipes.
    fn cards(&self, of: Language<'a>) -> Vec<Card> {
        let recipes = of.inputs().recipes().par_iter();
        let worked = recipes.filter_map(|recipe| self.memory.worked(of, recipe));
        worked.map(|worked| worked.card.clone()).collect()
    }

    /// A file as it was kept, or made now and kept; none where there is no such file. It is
    /// looked for where it most likely is, so that no more is worked out than must be.
    fn get(&self, path: &str) -> Made {
        let mut parts: Vec<&Part> = self.parts.iter().collect();
        parts.sort_by_cached_key(|part| part.what.distance(path));
        for part in parts {
            let files = self.files(part).map_err(|why| Unserved::Unfilled(why.said()))?;
            if let Some(product) = files.get(path) {
                return self.make(product).map(Some);
            }
        }
        Ok(None)
    }

    fn make(&self, product: &Product) -> Result<Arc<Vec<u8>>, Unserved> {
        let all = || self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        let there = all().get(&product.path).cloned();
        if let Some((key, bytes)) = there
            && key == product.key
        {
            return Ok(bytes);
        }
        let bytes = Arc::new(product.bytes(self).map_err(Unserved::Unmade)?);
        all().insert(product.path.clone(), (product.key.clone(), bytes.clone()));
        Ok(bytes)
    }
}

/// Nothing of the edition before is taken over but what was kept.
impl EditionFiles for Asked<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Lacking> {
        let made = self.get(path).map_err(|why| Lacking::Unmade(why.said()))?;
        let bytes = made.map(|bytes| bytes.to_vec());
        bytes.ok_or_else(|| Lacking::NoFile(path.to_owned()))
    }
}

/// Makes what is ordered, several at once, until no order can come any more.
fn work(asked: &Asked, edition: &Edition, orders: &Mutex<Receiver<Order>>) {
    let next = || orders.lock().unwrap_or_else(PoisonError::into_inner).recv();
    let hand = || {
        while let Ok(order) = next() {
            match order {
                // A browser that went away needs no answer.
                Order::File(path, give) => drop(give.send(asked.get(&path))),
                Order::Look(look) => look(edition),
                Order::Later => asked.parts.iter().for_each(|part| {
                    let _ = asked.files(part);
                }),
            }
        }
    };
    std::thread::scope(|scope| {
        (0..HANDS).for_each(|_| drop(scope.spawn(hand)));
    });
}
