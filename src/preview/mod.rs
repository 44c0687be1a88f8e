//! The preview: the site on this machine only, made anew when a file is saved; the desk, where
//! the texts are written (`desk/`); and the room, where phones read and mark (`room/`).
//!
//! A page is answered from memory; handouts and pictures are made when they are asked for
//! and kept until what they are made from changes. Nothing is read from disk by the path
//! that a browser asks for, so no path leads out of the site. With a fault in the content
//! the last good edition stays, with the fault over it.

mod answer;
mod connections;
mod desk;
mod finding;
mod page;
mod request;
mod room;
mod served;
mod server;
mod watch;

use std::collections::BTreeMap;
use std::net::{Ipv4Addr, TcpListener};
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use tokio::sync::watch::Sender;

use crate::edition::Edition;
use crate::product::Memory;
use crate::statement::Statement;
use crate::theme::Theme;
use crate::words::Words;

pub use desk::{Desk, NoKey};
pub use room::{Room, is_local};

use request::Gate;
use served::{First, Kept, Served};
use server::Door;

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

/// Why the content cannot be opened. It is told in the language of what was served before.
#[derive(Clone, Debug)]
pub struct Unopened(pub Statement);

/// Texts as they stand in a desk and not yet on the disk, by their path below the content
/// folder.
pub type Typed = BTreeMap<String, String>;

/// Opens the content as it is now, with what is typed in place of what is saved.
pub type Open = Box<dyn Fn(&Typed) -> Result<Opened, Unopened> + Send + Sync>;

/// Publishes the course, telling how many files of how many are made, and says what it did,
/// or why it did nothing.
pub type Publish = Box<dyn Fn(Step) -> Result<Vec<String>, String> + Send + Sync>;

/// Opens the course as the desk published it last and as it is saved now; nothing where it was
/// not published from there yet.
pub type Since = Box<dyn Fn() -> Result<Option<[Opened; 2]>, Unopened> + Send + Sync>;

/// Hears how many files of how many are made.
pub type Step<'a> = &'a (dyn Fn(usize, usize) + Sync);

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
    desk: Option<Desk>,
    kept: Arc<Kept>,
    memory: Arc<Memory>,
    show: Mutex<Show>,
    /// The mark of what is on show, told to all who listen.
    told: Sender<String>,
    stopped: AtomicBool,
}

impl Preview {
    /// A preview of what `open` opens, which changes when a file in `folders` does. It
    /// speaks in `words` until there is an edition with its own.
    pub fn new(open: Open, folders: Vec<PathBuf>, words: Words) -> Self {
        Self {
            open: Arc::new(open),
            folders,
            desk: None,
            kept: Arc::default(),
            memory: Arc::default(),
            show: Mutex::new(Show { words, ..Show::default() }),
            told: Sender::new(String::new()),
            stopped: AtomicBool::new(false),
        }
    }

    /// With a desk to write at.
    #[must_use]
    pub fn with(self, desk: Desk) -> Self {
        Self { desk: Some(desk), ..self }
    }

    /// Takes a port of this machine that nobody else reaches: `port`, or any free one.
    ///
    /// # Errors
    /// Where the port is taken or not allowed.
    pub fn listen(port: Option<u16>) -> std::io::Result<TcpListener> {
        TcpListener::bind((Ipv4Addr::LOCALHOST, port.unwrap_or(0)))
    }

    /// Answers browsers, and phones in the room where there is one, and watches the files
    /// until [`Preview::stop`].
    ///
    /// # Errors
    /// Where the machine does not say which port was taken.
    pub fn run(
        self: &Arc<Self>,
        listener: TcpListener,
        room: Option<(Room, TcpListener)>,
    ) -> std::io::Result<()> {
        let port = listener.local_addr()?.port();
        listener.set_nonblocking(true)?;
        let gate = Gate { port, key: self.desk.as_ref().map(|desk| desk.key.clone()) };
        let runtime =
            tokio::runtime::Builder::new_current_thread().enable_all().build()?;
        let mut doors = vec![(listener, Door::Here(gate))];
        if let Some((room, listener)) = room {
            listener.set_nonblocking(true)?;
            doors.push((listener, Door::Room(Arc::new(room))));
        }
        let server = self.clone();
        std::thread::spawn(move || {
            let open = doors.into_iter().map(|(listener, door)| {
                runtime.spawn(server::accept(server.clone(), listener, door))
            });
            let open: Vec<_> = open.collect();
            runtime.block_on(async {
                for door in open {
                    // It ends with the preview, or has broken and harms no other.
                    let _ = door.await;
                }
            });
        });
        watch::watch(self);
        Ok(())
    }

    /// Ends [`Preview::run`] and every answer that is still being given.
    pub fn stop(&self) {
        self.stopped.store(true, Ordering::Relaxed);
    }

    fn is_stopped(&self) -> bool {
        self.stopped.load(Ordering::Relaxed)
    }

    /// An edition with what is typed in place of what is saved.
    fn made(&self, typed: &Typed, first: First) -> Result<Served, served::Stopped> {
        let words = self.show().words.clone();
        Served::start(&self.open, (typed, first), (&self.kept, &self.memory), &words)
    }

    /// Makes the edition anew and puts it on show, or its faults over the last good one.
    fn make(&self, mark: String) {
        let made = self.made(&Typed::new(), First::Pages);
        let mut show = self.show();
        show.mark.clone_from(&mark);
        match made {
            Ok(served) => {
                served.go_on();
                show.words = served.words.clone();
                show.served = Some(Arc::new(served));
                show.faults = Vec::new();
            }
            Err(stopped) => show.faults = stopped.faults,
        }
        drop(show);
        self.told.send_replace(mark);
    }

    /// What is on show. A thread that broke while it looked does no harm to it.
    fn show(&self) -> MutexGuard<'_, Show> {
        self.show.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
