//! Earliest and latest starts by one pass forward and one back (the critical path
//! method).

use super::Cycle;
use super::job::{Job, Minutes};
use super::order::order;

/// The position of the usual, least and most wait.
const USUAL: usize = 0;
const LEAST: usize = 1;
const MOST: usize = 2;

/// When everything happens, in minutes from the first start.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Schedule {
    /// Every job, in the order given.
    pub jobs: Vec<Timed>,
    /// A chain of jobs that decides the end, by place in the list, in order.
    pub critical_path: Vec<usize>,
    /// From the first start to the last end, with the usual waits.
    pub elapsed: u64,
    /// The same with the least waits.
    pub least_elapsed: u64,
    /// The same with the longest waits.
    pub most_elapsed: u64,
    /// All attended time.
    pub hands: u64,
    /// Unattended time along the critical path.
    pub wait: u64,
}

/// When one job happens.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Timed {
    /// Earliest start.
    pub start: u64,
    /// Latest start that does not delay the end.
    pub latest: u64,
    /// The start to advise: the earliest at which its result need not stand longer than
    /// its longest wait and hold allow before the first step that uses it. Between
    /// `start` and `latest`.
    pub begin: u64,
    /// Attended time.
    pub hands: u64,
    /// Usual unattended time.
    pub wait: u64,
    /// Whether a delay here delays the end.
    pub critical: bool,
}

/// Plans the jobs, every time rounded up to whole minutes.
///
/// # Errors
/// Where jobs wait for one another in a ring: their names.
pub fn schedule(jobs: &[Job]) -> Result<Schedule, Cycle> {
    let minutes: Vec<_> = jobs.iter().map(|job| Minutes::of(job, jobs.len())).collect();
    let order = order(jobs, &minutes)?;
    let graph = Graph { jobs: &minutes, order: &order };
    let starts = graph.starts(USUAL);
    let elapsed = graph.end(&starts, USUAL);
    let critical_path = graph.critical_path(&starts, elapsed);
    Ok(Schedule {
        jobs: graph.timed(&starts, elapsed),
        elapsed,
        least_elapsed: graph.end(&graph.starts(LEAST), LEAST),
        most_elapsed: graph.end(&graph.starts(MOST), MOST),
        hands: sum(minutes.iter().map(|job| job.hands)),
        wait: sum(critical_path.iter().map(|&job| minutes[job].wait[USUAL])),
        critical_path,
    })
}

fn sum(minutes: impl Iterator<Item = u64>) -> u64 {
    minutes.fold(0, u64::saturating_add)
}

/// The jobs and an order in which to go through them.
struct Graph<'a> {
    jobs: &'a [Minutes],
    order: &'a [usize],
}

impl Graph<'_> {
    /// Earliest starts: a job starts when the last of those it waits for ends.
    fn starts(&self, wait: usize) -> Vec<u64> {
        let mut starts = vec![0; self.jobs.len()];
        for &job in self.order {
            let ends = self.jobs[job].after.iter();
            let ends = ends.map(|&before| self.finish(&starts, before, wait));
            starts[job] = ends.max().unwrap_or(0);
        }
        starts
    }

    fn finish(&self, starts: &[u64], job: usize, wait: usize) -> u64 {
        starts[job].saturating_add(self.jobs[job].takes(wait))
    }

    fn end(&self, starts: &[u64], wait: usize) -> u64 {
        (0..starts.len()).map(|job| self.finish(starts, job, wait)).max().unwrap_or(0)
    }

    fn timed(&self, starts: &[u64], elapsed: u64) -> Vec<Timed> {
        let latest = self.latest(elapsed);
        let begins = self.begins(starts);
        let timed = |(place, job): (usize, &Minutes)| Timed {
            start: starts[place],
            latest: latest[place],
            begin: begins[place],
            hands: job.hands,
            wait: job.wait[USUAL],
            critical: starts[place] == latest[place],
        };
        self.jobs.iter().enumerate().map(timed).collect()
    }

    /// Latest starts: a job ends before the first that waits for it must start.
    fn latest(&self, elapsed: u64) -> Vec<u64> {
        let mut ends = vec![elapsed; self.jobs.len()];
        for &job in self.order.iter().rev() {
            let start = ends[job].saturating_sub(self.jobs[job].takes(USUAL));
            for &before in &self.jobs[job].after {
                ends[before] = ends[before].min(start);
            }
        }
        let start =
            |(job, end): (usize, u64)| end.saturating_sub(self.jobs[job].takes(USUAL));
        ends.into_iter().enumerate().map(start).collect()
    }

    /// Advised starts, from the last job back: later than the earliest only where the
    /// result would otherwise stand too long.
    fn begins(&self, starts: &[u64]) -> Vec<u64> {
        let mut begins = starts.to_vec();
        let mut used = vec![None; self.jobs.len()];
        for &place in self.order.iter().rev() {
            let job = &self.jobs[place];
            if let Some(used) = used[place] {
                let most = job.takes(USUAL).saturating_add(job.stand);
                begins[place] = begins[place].max(u64::saturating_sub(used, most));
            }
            for &before in &job.after {
                let first = used[before].unwrap_or(u64::MAX).min(begins[place]);
                used[before] = Some(first);
            }
        }
        begins
    }

    /// One chain without a gap from the first start to the last end; the earliest written
    /// job wherever several would do.
    fn critical_path(&self, starts: &[u64], elapsed: u64) -> Vec<usize> {
        let ends_at = |job: &usize, time| self.finish(starts, *job, USUAL) == time;
        let mut path = Vec::new();
        let mut next = (0..self.jobs.len()).find(|job| ends_at(job, elapsed));
        while let Some(job) = next {
            path.push(job);
            let mut before: Vec<_> = self.jobs[job].after.clone();
            before.sort_unstable();
            next = before.into_iter().find(|job_before| ends_at(job_before, starts[job]));
        }
        path.reverse();
        path
    }
}
