//! The connections that are open to browsers: no more than so many, and whoever only holds one
//! makes room for whoever asks.
#![allow(clippy::disallowed_methods, reason = "patience needs a clock")]

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use tokio::sync::Notify;

/// More connections than this at once are not held open.
const MOST: usize = 100;
/// An answer that nobody takes in for so long makes room too.
const LONGEST: Duration = Duration::from_secs(120);

/// How far a call has come. The first ones are hung up on first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Stage {
    /// It has not asked to the end.
    Asking,
    /// It waits for the next edition, and will call again.
    Listening,
    /// It is being answered.
    Answered,
}

/// A connection as the others see it.
struct Seen {
    stage: Stage,
    since: Instant,
    hang_up: Arc<Notify>,
}

/// All connections, the oldest first.
#[derive(Default)]
struct Table {
    next: u64,
    open: BTreeMap<u64, Seen>,
}

/// The connections that are open.
#[derive(Default)]
pub(super) struct Connections(Arc<Mutex<Table>>);

impl Connections {
    /// Takes a call. Where there are too many, the oldest of those that still ask is
    /// hung up on, else the oldest that waits; `None` where all are being answered.
    pub(super) fn take(&self) -> Option<Connection> {
        let mut table = lock(&self.0);
        if table.open.len() >= MOST {
            let (number, seen) = table.open.iter().min_by_key(|(_, it)| it.stage)?;
            if seen.stage == Stage::Answered && seen.since.elapsed() < LONGEST {
                return None;
            }
            let number = *number;
            table.open.remove(&number)?.hang_up.notify_one();
        }
        let number = table.next;
        table.next += 1;
        let hang_up = Arc::new(Notify::new());
        let (stage, since) = (Stage::Asking, Instant::now());
        table.open.insert(number, Seen { stage, since, hang_up: hang_up.clone() });
        Some(Connection { number, table: self.0.clone(), hang_up })
    }
}

/// One connection, until it is dropped.
pub(super) struct Connection {
    number: u64,
    table: Arc<Mutex<Table>>,
    hang_up: Arc<Notify>,
}

impl Connection {
    /// Notes how far the call has come.
    pub(super) fn becomes(&self, stage: Stage) {
        if let Some(seen) = lock(&self.table).open.get_mut(&self.number) {
            (seen.stage, seen.since) = (stage, Instant::now());
        }
    }

    /// Waits until it has to make room.
    pub(super) async fn is_hung_up(&self) {
        self.hang_up.notified().await;
    }
}

impl Drop for Connection {
    fn drop(&mut self) {
        lock(&self.table).open.remove(&self.number);
    }
}

/// A thread that broke while it looked does no harm to the table.
fn lock(table: &Mutex<Table>) -> MutexGuard<'_, Table> {
    table.lock().unwrap_or_else(PoisonError::into_inner)
}
