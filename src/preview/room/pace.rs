//! How much is taken in from a room, and how long a plan for it may take.
#![allow(clippy::disallowed_methods, reason = "patience needs a clock")]

use std::collections::VecDeque;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use crate::plan::Watch;

/// So many marks are taken in within [`WHILE`]: a class of ten groups all done at once, twice.
const MOST: usize = 20;
const WHILE: Duration = Duration::from_secs(60);
/// A phone that waits longer than this has the best plan so far.
const PATIENCE: Duration = Duration::from_secs(20);

/// When the last marks were taken in.
#[derive(Default)]
pub(super) struct Pace(Mutex<VecDeque<Instant>>);

impl Pace {
    /// Whether one more is taken in now.
    pub(super) fn takes(&self) -> bool {
        let mut last = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        while last.front().is_some_and(|first| first.elapsed() > WHILE) {
            last.pop_front();
        }
        let takes = last.len() < MOST;
        if takes {
            last.push_back(Instant::now());
        }
        takes
    }
}

/// Someone with a phone who waits for a plan.
pub(super) struct Waiting(Instant);

impl Waiting {
    /// From now on.
    pub(super) fn new() -> Self {
        Self(Instant::now())
    }
}

impl Watch for Waiting {
    fn stop(&self) -> bool {
        self.0.elapsed() > PATIENCE
    }

    // The page comes when it comes: there is nobody to say more to.
    fn explains(&self) {}
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_flood_is_not_taken_in() {
        let pace = Pace::default();
        let taken = (0..100).filter(|_| pace.takes()).count();
        assert_eq!(taken, MOST);
    }
}
