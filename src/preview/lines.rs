//! The lines that are open to browsers: no more than so many, and whoever only holds one
//! makes room for whoever asks.

use std::collections::BTreeMap;
use std::net::{Shutdown, TcpStream};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// More lines than this at once are not held open.
const MOST: usize = 100;

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

/// All lines, the oldest first.
#[derive(Default)]
struct Table {
    next: u64,
    open: BTreeMap<u64, (Stage, TcpStream)>,
}

/// The lines that are open.
#[derive(Default)]
pub(super) struct Lines(Arc<Mutex<Table>>);

impl Lines {
    /// Takes a call. Where there are too many lines, the oldest of those that still ask is
    /// hung up on, else the oldest that waits; `None` where all are being answered.
    pub(super) fn take(&self, stream: &TcpStream) -> Option<Line> {
        let other_end = stream.try_clone().ok()?;
        let mut table = lock(&self.0);
        if table.open.len() >= MOST {
            let (number, _) = table.open.iter().min_by_key(|(_, (stage, _))| *stage)?;
            let number = *number;
            if table.open.get(&number)?.0 == Stage::Answered {
                return None;
            }
            let (_, oldest) = table.open.remove(&number)?;
            // It may have hung up by itself.
            let _ = oldest.shutdown(Shutdown::Both);
        }
        let number = table.next;
        table.next += 1;
        table.open.insert(number, (Stage::Asking, other_end));
        Some(Line { number, table: self.0.clone() })
    }
}

/// One line, until it is dropped.
pub(super) struct Line {
    number: u64,
    table: Arc<Mutex<Table>>,
}

impl Line {
    /// Notes how far the call has come.
    pub(super) fn becomes(&self, stage: Stage) {
        if let Some((now, _)) = lock(&self.table).open.get_mut(&self.number) {
            *now = stage;
        }
    }
}

impl Drop for Line {
    fn drop(&mut self) {
        lock(&self.table).open.remove(&self.number);
    }
}

/// A thread that broke while it looked does no harm to the table.
fn lock(table: &Mutex<Table>) -> MutexGuard<'_, Table> {
    table.lock().unwrap_or_else(PoisonError::into_inner)
}
