//! An order in which every job stands after those it waits for.

use super::Cycle;
use super::job::{Job, Minutes};

/// Places in such an order, the earliest written first among those that could be next.
///
/// # Errors
/// Where jobs wait for one another in a ring.
pub(super) fn order(jobs: &[Job], minutes: &[Minutes]) -> Result<Vec<usize>, Cycle> {
    let mut done = vec![false; minutes.len()];
    let mut order = Vec::with_capacity(minutes.len());
    while order.len() < minutes.len() {
        let ready = |job: &usize| {
            !done[*job] && minutes[*job].after.iter().all(|&other| done[other])
        };
        let Some(next) = (0..minutes.len()).find(ready) else {
            return Err(ring(jobs, minutes, &done));
        };
        done[next] = true;
        order.push(next);
    }
    Ok(order)
}

/// The ring found by going back from the first job that cannot start. Every such job
/// waits for another, so the way back must come to a place it has been before.
fn ring(jobs: &[Job], minutes: &[Minutes], done: &[bool]) -> Cycle {
    let stuck = |job: &usize| !done[*job];
    let mut way: Vec<usize> = Vec::new();
    let mut next = (0..jobs.len()).find(stuck);
    while let Some(job) = next {
        if let Some(begin) = way.iter().position(|&been| been == job) {
            way.drain(..begin);
            break;
        }
        way.push(job);
        next = minutes[job].after.iter().copied().find(stuck);
    }
    Cycle { names: way.into_iter().map(|job| jobs[job].name.clone()).collect() }
}
