//! Many handouts on all cores.

use std::sync::atomic::{AtomicUsize, Ordering};

/// How many workers there are beside the threads that work for themselves.
static WORKERS: AtomicUsize = AtomicUsize::new(0);

/// How many handouts are being made side by side, at least one.
pub(super) fn workers() -> usize {
    WORKERS.load(Ordering::Relaxed).max(1)
}

/// Does `work` for each of `0..count`, spread over so many workers; each takes the next
/// number as it becomes free. The order of the work is not the order of the numbers.
///
/// The PDF writer hands work to the current thread pool and, while it waits, takes up
/// whatever else that pool has to do. In a pool of handouts it would begin another whole
/// handout, and another inside that one. So each worker has a pool of its own with one
/// thread, and the numbers are handed out beside it.
pub fn spread(count: usize, workers: usize, work: &(dyn Fn(usize) + Sync)) {
    let next = AtomicUsize::new(0);
    let run = || {
        let mut at = next.fetch_add(1, Ordering::Relaxed);
        while at < count {
            work(at);
            at = next.fetch_add(1, Ordering::Relaxed);
        }
    };
    let workers = workers.clamp(1, count.max(1));
    WORKERS.fetch_add(workers, Ordering::Relaxed);
    std::thread::scope(|scope| {
        for _ in 0..workers {
            scope.spawn(|| {
                match rayon::ThreadPoolBuilder::new().num_threads(1).build() {
                    Ok(pool) => pool.install(run),
                    // Without a pool of its own the worker is slower, not wrong.
                    Err(_) => run(),
                }
            });
        }
    });
    WORKERS.fetch_sub(workers, Ordering::Relaxed);
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::sync::Mutex;

    #[test]
    fn every_number_is_worked_once() {
        let seen = Mutex::new(Vec::new());
        spread(100, 3, &|at| seen.lock().expect("no worker panicked").push(at));
        let mut seen = seen.into_inner().expect("no worker panicked");
        seen.sort_unstable();
        assert_eq!(seen, (0..100).collect::<Vec<_>>());
        spread(0, 2, &|_| unreachable!("there is nothing to do"));
    }
}
