//! One step as the graph sees it.

use crate::measure::Duration;

/// One step: attended time, then unattended time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Job {
    /// Its name.
    pub name: String,
    /// The jobs it waits for, by their place in the list; places that do not exist are
    /// passed over.
    pub after: Vec<usize>,
    /// Attended time.
    pub hands: Duration,
    /// Unattended time after it: usual, least, most.
    pub wait: [Duration; 3],
    /// How much longer than its longest wait it may stand.
    pub hold: Duration,
}

/// Jobs that wait for one another in a ring, so that none can ever start.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cycle {
    /// Their names: each waits for the next, the last for the first.
    pub names: Vec<String>,
}

/// A job in whole minutes, each time rounded up.
pub(super) struct Minutes {
    pub(super) after: Vec<usize>,
    pub(super) hands: u64,
    /// Usual, least, most.
    pub(super) wait: [u64; 3],
    /// How long its result may stand after the usual wait.
    pub(super) stand: u64,
}

impl Minutes {
    /// `jobs` is how many there are.
    pub(super) fn of(job: &Job, jobs: usize) -> Self {
        let wait = job.wait.each_ref().map(Duration::whole_minutes);
        let longer = wait[2].saturating_sub(wait[0]);
        Self {
            after: job.after.iter().copied().filter(|&other| other < jobs).collect(),
            hands: job.hands.whole_minutes(),
            wait,
            stand: longer.saturating_add(job.hold.whole_minutes()),
        }
    }

    /// From start to end with the usual (0), least (1) or most (2) wait.
    pub(super) fn takes(&self, wait: usize) -> u64 {
        self.hands.saturating_add(self.wait.get(wait).copied().unwrap_or(0))
    }
}
