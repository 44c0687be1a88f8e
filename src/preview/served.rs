//! One edition in memory. What it is made of refers to itself in many places, so it lives
//! on the stack of a thread of its own, which makes files as they are ordered and ends
//! when nobody can order any more. Its pages are there first; what is printed and what is
//! planned follows while they are looked at.

use std::collections::BTreeMap;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use rayon::prelude::*;

use crate::edition::Edition;
use crate::fault::Fault;
use crate::product::{
    Card, EditionFiles, Inputs, Memory, Product, Products, Unmade, Worked,
};
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
}

impl Unserved {
    /// It as a statement.
    pub(super) fn said(&self) -> Statement {
        match self {
            Self::Broke => said!("preview-broke-file"),
            Self::Unmade(why) => why.said(),
        }
    }
}

/// Files made, by path, with the key of what each was made from.
pub(super) type Kept = Mutex<BTreeMap<String, (String, Arc<Vec<u8>>)>>;

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
        typed: &Typed,
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
            let lived = opened.and_then(|it| live(it, (&kept, &memory), &ready, taken));
            if let Err(faults) = lived {
                // Nobody waits any more where the preview was stopped.
                let _ = sent.send(Err(faults));
            }
        });
        let lost = |_| Stopped::whole(words.tell(&said!("preview-broke-edition")));
        let (cautions, findings, words) = wait.recv().map_err(lost)??;
        Ok(Self { orders: Mutex::new(orders), cautions, findings, words })
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

/// What is worth saying of an edition that is ready, as text and for the desk, and its
/// words; or the faults that stop it.
type Ready = Result<(Vec<String>, Vec<Finding>, Words), Stopped>;

/// The life of an edition: it says that it is ready, or why it is none, then makes files.
fn live(
    opened: Opened,
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
    let all: Vec<Language> = all
        .map_err(broken)?
        .into_iter()
        .map(|products| Language::new(products, memory))
        .collect();
    let mut first = ByPath::new();
    for language in &all {
        first.extend(shown(language).map_err(broken)?);
    }
    let printed = |_: &ByPath| by_path(all.iter().flat_map(Language::printed).collect());
    let planned = |first: &ByPath| {
        let keys = first.iter().map(|(path, file)| (&**path, &*file.key));
        let keys = keys.collect();
        by_path(all.iter().flat_map(|language| language.planned(&keys)).collect())
    };
    if ready.send(Ok((faults, findings, words.clone()))).is_ok() {
        let asked = Asked { first, later: Default::default(), kept };
        work(&asked, &edition, [&printed, &planned], &Mutex::new(orders));
    }
    Ok(())
}

/// What is made of the edition in one language.
struct Language<'a> {
    products: Products<'a>,
    worked: Vec<Arc<Worked>>,
    cards: Vec<Card>,
}

impl<'a> Language<'a> {
    fn new(products: Products<'a>, memory: &Memory) -> Self {
        let recipes = products.inputs().recipes().par_iter();
        let worked: Vec<Arc<Worked>> =
            recipes.filter_map(|recipe| memory.worked(&products, recipe)).collect();
        let cards = worked.iter().map(|worked| worked.card.clone()).collect();
        Self { products, worked, cards }
    }

    /// What is printed of recipes.
    fn printed(&self) -> Vec<Product<'_>> {
        self.worked.iter().flat_map(|it| self.products.handouts(it)).collect()
    }

    /// What is planned, and what is made from other files.
    fn planned(&self, keys: &BTreeMap<&str, &str>) -> Vec<Product<'_>> {
        let mut planned: Vec<Product> = self.products.classes();
        planned.extend(self.products.derived_files(&self.cards, keys));
        planned
    }
}

type ByPath<'a> = BTreeMap<String, Product<'a>>;

fn by_path(products: Vec<Product>) -> ByPath {
    products.into_iter().map(|product| (product.path.clone(), product)).collect()
}

/// Every page, and what pages show.
fn shown<'w>(language: &'w Language) -> Result<ByPath<'w>, TemplateFault> {
    let Language { products, worked, cards } = language;
    let shown = worked.par_iter().map(|worked| products.recipe_page(worked));
    let mut all = products.course_pages()?;
    all.extend(shown.collect::<Result<Vec<_>, _>>()?.into_iter().flatten());
    all.extend(products.listing_pages(cards)?);
    Ok(by_path(all))
}

/// What can be made: pages, and what is worked out after them: what is printed, then what is
/// planned, which takes longest.
struct Asked<'a> {
    first: ByPath<'a>,
    later: [OnceLock<ByPath<'a>>; 2],
    kept: &'a Kept,
}

impl Asked<'_> {
    /// A file as it was kept, or made now and kept; none where there is no such file.
    fn get(&self, path: &str) -> Made {
        let later = || self.later.iter().find_map(|part| part.get()?.get(path));
        self.first
            .get(path)
            .or_else(later)
            .map_or(Ok(None), |one| self.make(one).map(Some))
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

/// Works out a part of what follows the pages.
type Later<'l, 'a> = &'l (dyn Fn(&ByPath<'a>) -> ByPath<'a> + Sync);

/// Makes what is ordered, several at once, until no order can come any more.
fn work<'a>(
    asked: &Asked<'a>,
    edition: &Edition,
    later: [Later<'_, 'a>; 2],
    orders: &Mutex<Receiver<Order>>,
) {
    let next = || orders.lock().unwrap_or_else(PoisonError::into_inner).recv();
    let part = |at: usize| asked.later[at].get_or_init(|| later[at](&asked.first));
    let find = |path: &str| {
        let worked_out = asked.first.contains_key(path)
            || (0..later.len()).any(|at| part(at).contains_key(path));
        if worked_out { asked.get(path) } else { Ok(None) }
    };
    let hand = || {
        while let Ok(order) = next() {
            match order {
                // A browser that went away needs no answer.
                Order::File(path, give) => drop(give.send(find(&path))),
                Order::Look(look) => look(edition),
                Order::Later => (0..later.len()).for_each(|at| {
                    part(at);
                }),
            }
        }
    };
    std::thread::scope(|scope| {
        (0..HANDS).for_each(|_| drop(scope.spawn(hand)));
    });
}
