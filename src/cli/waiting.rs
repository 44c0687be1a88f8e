//! Waiting for a plan: after two seconds the terminal says so, and from the start Ctrl-C
//! ends the search with the best plan so far.

use std::cell::OnceCell;
use std::io::IsTerminal;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use indicatif::{ProgressBar, ProgressStyle};

use crate::plan::{Note, Timetable, Watch};
use crate::said;
use crate::statement::machine;

use super::{Call, Stop};

/// How long a plan may take before anything is said of it.
const PATIENCE: Duration = Duration::from_secs(2);

/// Someone who waits at a terminal.
pub(super) struct Waiting {
    /// What is said after a while.
    words: String,
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
        let words = call.tell(&said!("plan-waiting"));
        Ok(Self { words, since: Instant::now(), stop, said: OnceCell::new() })
    }

    /// Says in the plan that it was ended before its time.
    pub(super) fn over(&self, plan: &mut Timetable) {
        if let Some(Some(bar)) = self.said.get() {
            bar.finish_and_clear();
        }
        if self.stop() {
            plan.notes.push(Note::Stopped);
        }
    }
}

impl Watch for Waiting {
    fn stop(&self) -> bool {
        if self.since.elapsed() > PATIENCE {
            self.said.get_or_init(|| say(&self.words));
        }
        self.stop.load(Ordering::Relaxed)
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
