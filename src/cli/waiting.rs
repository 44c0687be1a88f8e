//! Waiting for a plan: after two seconds the terminal says so, and from the start Ctrl-C
//! ends the search with the best plan so far; where there is none, the search for reasons and
//! remedies with those found so far.

use std::cell::{Cell, OnceCell};
use std::io::IsTerminal;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use indicatif::{ProgressBar, ProgressStyle};

use crate::plan::{Caveat, Timetable, Watch};
use crate::said;
use crate::statement::machine;

use super::{Call, Stop};

/// How long a plan may take before anything is said of it.
const PATIENCE: Duration = Duration::from_secs(2);

/// Someone who waits at a terminal.
pub(super) struct Waiting {
    /// What is said after a while: of the plan, and of reasons and remedies.
    words: [String; 2],
    /// Whether it is reasons that are waited for.
    explained: Cell<bool>,
    since: Instant,
    stop: Arc<AtomicBool>,
    said: OnceCell<Option<ProgressBar>>,
}

impl Waiting {
    /// Begins to wait, and takes Ctrl-C for "that will do".
    pub(super) fn new(call: &Call) -> Result<Self, Stop> {
        let stop = Arc::new(AtomicBool::new(false));
        let pressed = stop.clone();
        ctrlc::set_handler(move || pressed.store(true, Ordering::Relaxed)).map_err(
            |error| Stop::Machine(said!("preview-no-stop", error = machine(&error))),
        )?;
        let words = [said!("plan-waiting"), said!("plan-waiting-reasons")];
        Ok(Self {
            words: words.map(|words| call.tell(&words)),
            explained: Cell::new(false),
            since: Instant::now(),
            stop,
            said: OnceCell::new(),
        })
    }

    /// Says in the plan that it was ended before its time.
    pub(super) fn over(&self, plan: &mut Timetable) {
        if let Some(Some(bar)) = self.said.get() {
            bar.finish_and_clear();
        }
        if self.stop() {
            plan.notes.push(Caveat::Stopped);
        }
    }
}

impl Watch for Waiting {
    fn stop(&self) -> bool {
        if self.since.elapsed() > PATIENCE {
            let words = &self.words[usize::from(self.explained.get())];
            self.said.get_or_init(|| say(words));
        }
        self.stop.load(Ordering::Relaxed)
    }

    fn explains(&self) {
        self.explained.set(true);
        // Who has been told that a plan is made is told that there is none.
        if let Some(bar) = self.said.get() {
            let words = &self.words[1];
            match bar {
                Some(bar) => bar.suspend(|| anstream::eprintln!("{words}")),
                None => anstream::eprintln!("{words}"),
            }
        }
    }
}

/// A line, and on a terminal the seconds that go by.
fn say(words: &str) -> Option<ProgressBar> {
    anstream::eprintln!("{words}");
    if !std::io::stderr().is_terminal() {
        return None;
    }
    let style = ProgressStyle::with_template("  {elapsed}").ok()?;
    let bar = ProgressBar::new_spinner().with_style(style).with_elapsed(PATIENCE);
    bar.enable_steady_tick(Duration::from_millis(250));
    Some(bar)
}
