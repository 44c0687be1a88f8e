//! A graph worked by hand, then random graphs against every chain through them.

use proptest::prelude::*;

use super::*;
use crate::measure::{Duration, exact};

fn minutes(amount: i64) -> Duration {
    Duration::minutes(exact(amount, 1))
}

fn job(name: &str, after: &[usize], hands: i64, wait: i64) -> Job {
    Job {
        name: name.into(),
        after: after.to_vec(),
        hands: minutes(hands),
        wait: [0, 0, 0].map(|_| minutes(wait)),
        hold: minutes(0),
    }
}

/// Mix 10, rest 60; meanwhile the block 8; lock in 6; turn 8 and chill 30.
fn dough() -> Vec<Job> {
    let mut rest = job("rest", &[0], 0, 60);
    rest.wait = [60, 45, 120].map(minutes);
    vec![
        job("mix", &[], 10, 0),
        rest,
        Job { hold: minutes(20), ..job("block", &[0], 8, 0) },
        job("lock-in", &[1, 2], 6, 0),
        job("turn", &[3], 8, 30),
    ]
}

#[test]
fn plans_by_hand() -> Result<(), Cycle> {
    let plan = schedule(&dough())?;
    assert_eq!((plan.elapsed, plan.hands, plan.wait), (114, 32, 90));
    assert_eq!((plan.least_elapsed, plan.most_elapsed), (99, 174));
    assert_eq!(plan.critical_path, [0, 1, 3, 4]);
    let block = plan.jobs[2];
    assert_eq!((block.start, block.begin, block.latest), (10, 42, 62));
    let critical: Vec<_> = plan.jobs.iter().map(|job| job.critical).collect();
    assert_eq!(critical, [true, true, false, true, true]);
    Ok(())
}

#[test]
fn rounds_minutes_up() -> Result<(), Cycle> {
    let mut pieces = job("roll", &[], 0, 0);
    pieces.hands = Duration::minutes(exact(25 * 22, 60));
    assert_eq!(schedule(&[pieces])?.elapsed, 10);
    assert_eq!(schedule(&[])?.elapsed, 0);
    Ok(())
}

#[test]
fn names_a_ring() {
    let jobs = [
        job("a", &[], 1, 0),
        job("b", &[0, 3], 1, 0),
        job("c", &[1], 1, 0),
        job("d", &[2], 1, 0),
        job("e", &[3], 1, 0),
    ];
    let names = ["b", "d", "c"].map(String::from).to_vec();
    assert_eq!(schedule(&jobs), Err(Cycle { names }));
    let alone = [job("a", &[0], 1, 0)];
    assert_eq!(schedule(&alone), Err(Cycle { names: vec!["a".into()] }));
}

#[test]
fn passes_over_a_job_that_is_not_there() {
    let plan = schedule(&[job("a", &[7], 5, 0)]);
    assert_eq!(plan.map(|plan| plan.elapsed), Ok(5));
}

fn graph() -> impl Strategy<Value = Vec<Job>> {
    let one = (0_i64..30, 0_i64..60, 0_i64..40, any::<u8>());
    proptest::collection::vec(one, 1..8).prop_map(|rows| {
        let build =
            |(place, (hands, wait, hold, after)): (usize, (i64, i64, i64, u8))| {
                let after: Vec<_> =
                    (0..place).filter(|bit| after & (1 << bit) != 0).collect();
                Job {
                    hold: minutes(hold),
                    ..job(&place.to_string(), &after, hands, wait)
                }
            };
        rows.into_iter().enumerate().map(build).collect()
    })
}

/// The longest chain that ends with `job`, found by trying every chain.
fn longest(jobs: &[Job], job: usize) -> u64 {
    let own = &jobs[job];
    let before = own.after.iter().map(|&before| longest(jobs, before)).max();
    let takes = own.hands.whole_minutes() + own.wait[0].whole_minutes();
    before.unwrap_or(0) + takes
}

fn longest_all(jobs: &[Job]) -> u64 {
    (0..jobs.len()).map(|job| longest(jobs, job)).max().unwrap_or(0)
}

proptest! {
    #[test]
    fn agrees_with_every_chain(jobs in graph(), delay in 1_i64..9) {
        let Ok(plan) = schedule(&jobs) else { return Err(TestCaseError::fail("a ring")) };
        prop_assert_eq!(plan.elapsed, longest_all(&jobs));
        for (place, timed) in plan.jobs.iter().enumerate() {
            prop_assert_eq!(timed.start + timed.hands + timed.wait, longest(&jobs, place));
            prop_assert!(timed.start <= timed.begin && timed.begin <= timed.latest);
            // A later start is the same as longer hands: it delays the end by what is
            // beyond the slack, and by nothing else.
            let mut late = jobs.clone();
            late[place].hands = late[place].hands.clone() + minutes(delay);
            let slack = timed.latest - timed.start;
            let beyond = u64::try_from(delay).unwrap_or(0).saturating_sub(slack);
            prop_assert_eq!(longest_all(&late), plan.elapsed + beyond);
        }
    }

    #[test]
    fn the_critical_path_has_no_gap(jobs in graph()) {
        let Ok(plan) = schedule(&jobs) else { return Err(TestCaseError::fail("a ring")) };
        let mut clock = 0;
        for &place in &plan.critical_path {
            let timed = plan.jobs[place];
            prop_assert!(timed.critical);
            prop_assert_eq!(timed.start, clock);
            clock += timed.hands + timed.wait;
        }
        prop_assert_eq!(clock, plan.elapsed);
    }

    #[test]
    fn nothing_stands_too_long(jobs in graph()) {
        let Ok(plan) = schedule(&jobs) else { return Err(TestCaseError::fail("a ring")) };
        for (place, timed) in plan.jobs.iter().enumerate() {
            let ready = timed.begin + timed.hands + timed.wait;
            let users = (0..jobs.len()).filter(|&job| jobs[job].after.contains(&place));
            let first = users.map(|job| plan.jobs[job].begin).min();
            let stand = jobs[place].hold.whole_minutes();
            prop_assert!(first.is_none_or(|first| first >= ready && first - ready <= stand));
        }
    }
}
