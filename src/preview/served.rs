//! One edition in memory. What it is made of refers to itself in many places, so it lives
//! on the stack of a thread of its own, which makes files as they are ordered and ends
//! when nobody can order any more. Its pages are there first; what is printed and what is
//! planned follows while they are looked at.

use std::collections::BTreeMap;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use crate::product::{Memory, Plates, Product, class_products, pages, papers};
use crate::site::TemplateFault;

use super::{Open, Opened};

/// Files that can be made at once: a plan that takes its time must not hold up a page.
const HANDS: usize = 4;

/// A file's bytes; none where there is no such file; the reason where it cannot be made.
pub(super) type Made = Result<Option<Arc<Vec<u8>>>, String>;

/// Files made, by path, with the key of what each was made from.
pub(super) type Kept = Mutex<BTreeMap<String, (String, Arc<Vec<u8>>)>>;

/// An order: the path, and where the file goes.
type Order = (String, Sender<Made>);

/// An edition that files can be ordered from.
pub(super) struct Served {
    orders: Mutex<Sender<Order>>,
}

impl Served {
    /// Opens the content and gets an edition ready.
    ///
    /// # Errors
    /// The faults that stop it, as text.
    pub(super) fn start(
        open: &Arc<Open>,
        kept: &Arc<Kept>,
        memory: &Arc<Memory>,
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
        let lost = |_| vec!["the preview broke while it made this edition".to_owned()];
        wait.recv().map_err(lost)??;
        Ok(Self { orders: Mutex::new(orders) })
    }

    /// Orders a file and waits for it.
    pub(super) fn order(&self, path: &str) -> Made {
        let (give, get) = channel();
        let orders = self.orders.lock().unwrap_or_else(PoisonError::into_inner).clone();
        let lost = "the preview broke while it made this file";
        orders.send((path.to_owned(), give)).map_err(|_| lost.to_owned())?;
        get.recv().map_err(|_| lost.to_owned())?
    }
}

/// The life of an edition: it says that it is ready, or why it is none, then makes files.
fn live(
    open: &Open,
    (kept, memory): (&Kept, &Memory),
    ready: &Sender<Result<(), Vec<String>>>,
    orders: Receiver<Order>,
) -> Result<(), Vec<String>> {
    let opened = open().map_err(|reason| vec![reason])?;
    let Opened { edition, theme, words, faults } = opened;
    let remembered = || Plates::remembered(&edition, &words, memory);
    let plates = if edition.stops() { None } else { remembered() };
    let mut plates = plates.ok_or(faults)?;
    // A page that a browser keeps for later would not show what was saved since.
    plates.course.offline = false;
    let first = pages(&plates, &words, &theme).map_err(|fault| vec![template(&fault)])?;
    let later = || {
        let mut later =
            papers(&plates, &words, &theme).map_err(|fault| template(&fault))?;
        later.extend(class_products(&edition, &plates, &words, &theme));
        Ok(by_path(later))
    };
    if ready.send(Ok(())).is_ok() {
        let shelf = Shelf { first: by_path(first), later: OnceLock::new() };
        work(&shelf, &later, kept, &Mutex::new(orders));
    }
    Ok(())
}

/// A fault in a page template, as text.
fn template(fault: &TemplateFault) -> String {
    format!("{}:{}: {}", fault.template, fault.line, fault.message)
}

type Products<'a> = BTreeMap<String, Product<'a>>;

fn by_path(products: Vec<Product>) -> Products {
    products.into_iter().map(|product| (product.path.clone(), product)).collect()
}

/// What can be made: pages, and what is worked out after them.
struct Shelf<'a> {
    first: Products<'a>,
    later: OnceLock<Result<Products<'a>, String>>,
}

/// Works out `later`, and makes what is ordered, several at once, until no order can come
/// any more.
fn work<'a>(
    shelf: &Shelf<'a>,
    later: &(dyn Fn() -> Result<Products<'a>, String> + Sync),
    kept: &Kept,
    orders: &Mutex<Receiver<Order>>,
) {
    let next = || orders.lock().unwrap_or_else(PoisonError::into_inner).recv();
    let find = |path: &str| -> Made {
        let made = |product: &Product| make(product, kept).map(Some);
        if let Some(product) = shelf.first.get(path) {
            return made(product);
        }
        let later = shelf.later.get_or_init(later).as_ref().map_err(Clone::clone)?;
        later.get(path).map_or(Ok(None), made)
    };
    let hand = || {
        while let Ok((path, give)) = next() {
            // A browser that went away needs no answer.
            let _ = give.send(find(&path));
        }
    };
    std::thread::scope(|scope| {
        (0..HANDS).for_each(|_| drop(scope.spawn(hand)));
        shelf.later.get_or_init(later);
    });
}

/// A file as it was kept, or made now and kept.
fn make(product: &Product, kept: &Kept) -> Result<Arc<Vec<u8>>, String> {
    let all = || kept.lock().unwrap_or_else(PoisonError::into_inner);
    let there = all().get(&product.path).cloned();
    if let Some((key, bytes)) = there
        && key == product.key
    {
        return Ok(bytes);
    }
    let bytes = Arc::new((product.make)()?);
    all().insert(product.path.clone(), (product.key.clone(), bytes.clone()));
    Ok(bytes)
}
