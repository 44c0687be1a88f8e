//! One edition in memory. What it is made of refers to itself in many places, so it lives
//! on the stack of a thread of its own, which makes files as they are ordered and ends
//! when nobody can order any more.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, PoisonError};

use crate::product::{Plates, Product, class_products, products};

use super::{Open, Opened};

/// Files that can be made at once: a plan that takes its time must not hold up a page.
const HANDS: usize = 4;

/// A file's bytes; the reason where it cannot be made.
pub(super) type Made = Result<Arc<Vec<u8>>, String>;

/// Files made, by path, with the key of what each was made from.
pub(super) type Kept = Mutex<BTreeMap<String, (String, Arc<Vec<u8>>)>>;

/// An order: the path, and where the file goes.
type Order = (String, Sender<Made>);

/// An edition that files can be ordered from.
pub(super) struct Served {
    /// Every file that it has.
    paths: BTreeSet<String>,
    orders: Mutex<Sender<Order>>,
}

impl Served {
    /// Opens the content and gets an edition ready.
    ///
    /// # Errors
    /// The faults that stop it, as text.
    pub(super) fn start(open: Arc<Open>, kept: Arc<Kept>) -> Result<Self, Vec<String>> {
        let (orders, taken) = channel();
        let (ready, wait) = channel();
        std::thread::spawn(move || live(&open, &kept, &ready, taken));
        let lost = |_| vec!["the preview broke while it made this edition".to_owned()];
        let paths = wait.recv().map_err(lost)??;
        Ok(Self { paths, orders: Mutex::new(orders) })
    }

    /// Whether it has such a file.
    pub(super) fn has(&self, path: &str) -> bool {
        self.paths.contains(path)
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

/// The life of an edition: it says what it has, or why it is none, then makes files.
fn live(
    open: &Open,
    kept: &Kept,
    ready: &Sender<Result<BTreeSet<String>, Vec<String>>>,
    orders: Receiver<Order>,
) {
    let failed = |faults| {
        // Nobody waits any more where the preview was stopped.
        let _ = ready.send(Err(faults));
    };
    let Opened { edition, theme, words, faults } = match open() {
        Ok(opened) => opened,
        Err(reason) => return failed(vec![reason]),
    };
    let plates = Plates::new(&edition, &words).filter(|_| !edition.stops());
    let Some(mut plates) = plates else { return failed(faults) };
    // A page that a browser keeps for later would not show what was saved since.
    plates.course.offline = false;
    let mut all = match products(&plates, &words, &theme) {
        Ok(all) => all,
        Err(fault) => {
            let (file, line) = (&fault.template, fault.line);
            return failed(vec![format!("{file}:{line}: {}", fault.message)]);
        }
    };
    all.extend(class_products(&edition, &plates, &words, &theme));
    let by_path: BTreeMap<&str, &Product> =
        all.iter().map(|product| (product.path.as_str(), product)).collect();
    let paths = by_path.keys().map(|path| (*path).to_owned()).collect();
    if ready.send(Ok(paths)).is_ok() {
        work(&by_path, kept, &Mutex::new(orders));
    }
}

/// Makes what is ordered, several at once, until no order can come any more.
fn work(all: &BTreeMap<&str, &Product>, kept: &Kept, orders: &Mutex<Receiver<Order>>) {
    let next = || orders.lock().unwrap_or_else(PoisonError::into_inner).recv();
    let hand = || {
        while let Ok((path, give)) = next() {
            let made = all.get(path.as_str()).map(|product| make(product, kept));
            // A browser that went away needs no answer.
            let _ = give.send(made.unwrap_or_else(|| Err("there is no such file".into())));
        }
    };
    std::thread::scope(|scope| {
        (0..HANDS).for_each(|_| drop(scope.spawn(hand)));
    });
}

/// A file as it was kept, or made now and kept.
fn make(product: &Product, kept: &Kept) -> Made {
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
