//! The preview: the site on this machine only, made anew when a file is saved.
//!
//! A page is answered from memory; handouts and pictures are made when they are asked for
//! and kept until what they are made from changes. Nothing is read from disk by the path
//! that a browser asks for, so no path leads out of the site. With a fault in the content
//! the last good edition stays, with the fault over it.

mod answer;
mod lines;
mod page;
mod request;
mod served;
mod server;
mod watch;

use std::net::{Ipv4Addr, TcpListener};
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};

use crate::edition::Edition;
use crate::product::Memory;
use crate::theme::Theme;
use crate::words::Words;

use served::{Kept, Served};

/// An edition as it was opened, with everything that it is shown with.
pub struct Opened {
    /// The content, read and checked.
    pub edition: Edition,
    /// The theme.
    pub theme: Theme,
    /// The words of the course's language.
    pub words: Words,
    /// Its faults as text, one by one.
    pub faults: Vec<String>,
}

/// Opens the content as it is now; the reason where it cannot be opened.
pub type Open = Box<dyn Fn() -> Result<Opened, String> + Send + Sync>;

/// What is on show.
#[derive(Default)]
struct Show {
    /// Stands for the state of the content that is shown.
    mark: String,
    /// The last good edition; `None` where there was none yet.
    served: Option<Arc<Served>>,
    /// The faults that keep a newer one from being shown, as text.
    faults: Vec<String>,
    /// The words of its language, or of that of whoever began.
    words: Words,
}

/// A preview: what it opens, and what it has on show.
pub struct Preview {
    open: Arc<Open>,
    /// What is watched: the content folder and the theme.
    folders: Vec<PathBuf>,
    kept: Arc<Kept>,
    memory: Arc<Memory>,
    show: Mutex<Show>,
    changed: Condvar,
    stopped: AtomicBool,
}

impl Preview {
    /// A preview of what `open` opens, which changes when a file in `folders` does. It
    /// speaks in `words` until there is an edition with its own.
    pub fn new(open: Open, folders: Vec<PathBuf>, words: Words) -> Self {
        Self {
            open: Arc::new(open),
            folders,
            kept: Arc::default(),
            memory: Arc::default(),
            show: Mutex::new(Show { words, ..Show::default() }),
            changed: Condvar::new(),
            stopped: AtomicBool::new(false),
        }
    }

    /// Takes a port of this machine that nobody else reaches: `port`, or any free one.
    ///
    /// # Errors
    /// Where the port is taken or not allowed.
    pub fn listen(port: Option<u16>) -> std::io::Result<TcpListener> {
        TcpListener::bind((Ipv4Addr::LOCALHOST, port.unwrap_or(0)))
    }

    /// Answers browsers and watches the files until [`Preview::stop`].
    ///
    /// # Errors
    /// Where the machine does not say which port was taken.
    pub fn run(self: &Arc<Self>, listener: TcpListener) -> std::io::Result<()> {
        let port = listener.local_addr()?.port();
        let server = self.clone();
        std::thread::spawn(move || server::accept(&server, &listener, port));
        watch::watch(self);
        Ok(())
    }

    /// Ends [`Preview::run`] and every answer that is still being given.
    pub fn stop(&self) {
        self.stopped.store(true, Ordering::Relaxed);
        self.changed.notify_all();
    }

    fn is_stopped(&self) -> bool {
        self.stopped.load(Ordering::Relaxed)
    }

    /// Makes the edition anew and puts it on show, or its faults over the last good one.
    fn make(&self, mark: String) {
        let words = self.show().words.clone();
        let made = Served::start(&self.open, &self.kept, &self.memory, &words);
        let mut show = self.show();
        show.mark = mark;
        match made {
            Ok(served) => {
                show.words = served.words.clone();
                show.served = Some(Arc::new(served));
                show.faults = Vec::new();
            }
            Err(faults) => show.faults = faults,
        }
        drop(show);
        self.changed.notify_all();
    }

    /// What is on show. A thread that broke while it looked does no harm to it.
    fn show(&self) -> MutexGuard<'_, Show> {
        self.show.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
