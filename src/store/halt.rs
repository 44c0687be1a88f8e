//! A stop that was asked for from outside while files are written: what is under way is
//! brought to where it can be left, and what lies beside the output folder is cleared.

use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// Whether a stop was asked for.
static ASKED: AtomicBool = AtomicBool::new(false);
/// How many pieces of work would leave something behind if they were cut.
static BUSY: Mutex<usize> = Mutex::new(0);

/// Asks for a stop. Where nothing is being written `end` is called, and nothing can be
/// begun while it runs; else whoever writes comes to an end.
pub fn halt(end: impl FnOnce()) {
    let busy = busy();
    ASKED.store(true, Ordering::SeqCst);
    if *busy == 0 {
        end();
    }
}

/// Whether a stop was asked for.
pub fn is_asked() -> bool {
    ASKED.load(Ordering::SeqCst)
}

/// A piece of work that must not be cut, until it is dropped.
pub(super) struct Busy(());

impl Busy {
    /// Begins it.
    pub(super) fn begin() -> Self {
        *busy() += 1;
        Self(())
    }
}

impl Drop for Busy {
    fn drop(&mut self) {
        *busy() -= 1;
    }
}

fn busy() -> MutexGuard<'static, usize> {
    BUSY.lock().unwrap_or_else(PoisonError::into_inner)
}
