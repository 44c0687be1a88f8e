//! One edition in memory. What it is made of refers to itself in many places, so it lives
//! on the stack of a thread of its own, which makes files as they are ordered and ends
//! when nobody can order any more. Its pages are there first; what is printed and what is
//! planned follows while they are looked at.

use std::collections::BTreeMap;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use rayon::prelude::*;

use crate::product::{Card, Memory, Product, Shelf, Stock, Worked, Workshop};
use crate::said;
use crate::site::TemplateFault;
use crate::statement::Statement;
use crate::words::Words;

use super::{Open, Opened};

/// Files that can be made at once: a plan that takes its time must not hold up a page.
const HANDS: usize = 4;

/// A file's bytes; none where there is no such file; the reason where it cannot be made.
pub(super) type Made = Result<Option<Arc<Vec<u8>>>, Statement>;

/// Files made, by path, with the key of what each was made from.
pub(super) type Kept = Mutex<BTreeMap<String, (String, Arc<Vec<u8>>)>>;

/// An order: the path, and where the file goes.
type Order = (String, Sender<Made>);

/// An edition that files can be ordered from.
pub(super) struct Served {
    orders: Mutex<Sender<Order>>,
    cautions: Vec<String>,
    /// The words of its language.
    pub(super) words: Words,
}

impl Served {
    /// Opens the content and gets an edition ready.
    ///
    /// # Errors
    /// The faults that stop it, as text. `words` are those of the edition before.
    pub(super) fn start(
        open: &Arc<Open>,
        kept: &Arc<Kept>,
        memory: &Arc<Memory>,
        words: &Words,
    ) -> Result<Self, Vec<String>> {
        let (open, kept, memory) = (open.clone(), kept.clone(), memory.clone());
        let (orders, taken) = channel();
        let (ready, wait) = channel();
        std::thread::spawn(move || {
            let sent = ready.clone();
            if let Err(faults) = live(&open, (&kept, &memory), &ready, taken) {
                // Nobody waits any more where the preview was stopped.
                let _ = sent.send(Err(faults));
            }
        });
        let lost = |_| vec![words.tell(&said!("preview-broke-edition"))];
        let (cautions, words) = wait.recv().map_err(lost)??;
        Ok(Self { orders: Mutex::new(orders), cautions, words })
    }

    /// What is worth saying of the edition, as text; nothing of it stops it.
    pub(super) fn cautions(&self) -> &[String] {
        &self.cautions
    }

    /// Orders a file and waits for it.
    pub(super) fn order(&self, path: &str) -> Made {
        let (give, get) = channel();
        let orders = self.orders.lock().unwrap_or_else(PoisonError::into_inner).clone();
        let lost = || said!("preview-broke-file");
        orders.send((path.to_owned(), give)).map_err(|_| lost())?;
        get.recv().map_err(|_| lost())?
    }
}

/// What is worth saying of an edition that is ready, as text, and its words; or the faults
/// that stop it.
type Ready = Result<(Vec<String>, Words), Vec<String>>;

/// The life of an edition: it says that it is ready, or why it is none, then makes files.
fn live(
    open: &Open,
    (kept, memory): (&Kept, &Memory),
    ready: &Sender<Ready>,
    orders: Receiver<Order>,
) -> Result<(), Vec<String>> {
    let opened = open().map_err(|reason| vec![reason])?;
    let Opened { edition, theme, words, faults } = opened;
    let stock = Stock::new(&edition, &words, &theme).filter(|_| !edition.stops());
    let Some(mut stock) = stock else { return Err(faults) };
    // A page that a browser keeps for later would not show what was saved since.
    stock.course.offline = false;
    let broken = |fault: TemplateFault| vec![words.tell(&fault.said())];
    let workshop = Workshop::new(&stock).map_err(broken)?;
    let recipes = stock.recipes().par_iter();
    let worked: Vec<Arc<Worked>> =
        recipes.filter_map(|recipe| memory.worked(&workshop, recipe)).collect();
    let cards: Vec<Card> = worked.iter().map(|worked| worked.card.clone()).collect();
    let first = shown(&workshop, &worked, &cards).map_err(broken)?;
    let later = |first: &Products| {
        let printed = worked.iter().flat_map(|worked| workshop.printed(worked));
        let mut later: Vec<Product> = printed.chain(workshop.classes()).collect();
        let keys = first.iter().map(|(path, file)| (path.clone(), file.key.clone()));
        later.extend(workshop.whole(&cards, &keys.collect()));
        by_path(later)
    };
    if ready.send(Ok((faults, words.clone()))).is_ok() {
        let shop = Shop { first, later: OnceLock::new(), kept };
        work(&shop, &later, &Mutex::new(orders));
    }
    Ok(())
}

type Products<'a> = BTreeMap<String, Product<'a>>;

fn by_path(products: Vec<Product>) -> Products {
    products.into_iter().map(|product| (product.path.clone(), product)).collect()
}

/// Every page, and what pages show.
fn shown<'w>(
    workshop: &'w Workshop,
    worked: &[Arc<Worked>],
    cards: &[Card],
) -> Result<Products<'w>, TemplateFault> {
    let shown = worked.par_iter().map(|worked| workshop.shown(worked));
    let mut all = workshop.apart()?;
    all.extend(shown.collect::<Result<Vec<_>, _>>()?.into_iter().flatten());
    all.extend(workshop.across(cards)?);
    Ok(by_path(all))
}

/// What can be made: pages, and what is worked out after them.
struct Shop<'a> {
    first: Products<'a>,
    later: OnceLock<Products<'a>>,
    kept: &'a Kept,
}

impl Shop<'_> {
    /// A file as it was kept, or made now and kept; none where there is no such file.
    fn get(&self, path: &str) -> Made {
        let later = || self.later.get()?.get(path);
        self.first
            .get(path)
            .or_else(later)
            .map_or(Ok(None), |one| self.make(one).map(Some))
    }

    fn make(&self, product: &Product) -> Result<Arc<Vec<u8>>, Statement> {
        let all = || self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        let there = all().get(&product.path).cloned();
        if let Some((key, bytes)) = there
            && key == product.key
        {
            return Ok(bytes);
        }
        let bytes = Arc::new((product.make)(self)?);
        all().insert(product.path.clone(), (product.key.clone(), bytes.clone()));
        Ok(bytes)
    }
}

/// Nothing of the edition before is taken over but what was kept.
impl Shelf for Shop<'_> {
    fn file(&self, path: &str) -> Result<Vec<u8>, Statement> {
        let made = self.get(path)?;
        made.map(|bytes| bytes.to_vec()).ok_or_else(|| said!("file-missing", path))
    }
}

/// Works out `later`, and makes what is ordered, several at once, until no order can come
/// any more.
fn work<'a>(
    shop: &Shop<'a>,
    later: &(dyn Fn(&Products<'a>) -> Products<'a> + Sync),
    orders: &Mutex<Receiver<Order>>,
) {
    let next = || orders.lock().unwrap_or_else(PoisonError::into_inner).recv();
    let all = || shop.later.get_or_init(|| later(&shop.first));
    let find = |path: &str| {
        if !shop.first.contains_key(path) {
            all();
        }
        shop.get(path)
    };
    let hand = || {
        while let Ok((path, give)) = next() {
            // A browser that went away needs no answer.
            let _ = give.send(find(&path));
        }
    };
    std::thread::scope(|scope| {
        (0..HANDS).for_each(|_| drop(scope.spawn(hand)));
        all();
    });
}
