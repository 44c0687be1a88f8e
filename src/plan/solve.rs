//! From a question to an answer: a first plan, then the least waiting, then the goal, each
//! within a fixed effort.

use super::model::{Aim, Found, Search, search};
use super::problem::{Goal, Layout, Problem};
use super::{bounds, first};

/// How much work may be spent on each of the two aims.
#[derive(Clone, Copy)]
pub struct Effort<'a> {
    /// Steps of the search times the number of rules that each step may touch.
    pub work: u64,
    /// Who may end it before.
    pub watch: Option<&'a dyn Watch>,
}

/// Someone who waits for a plan. It is asked at every step of a search, some ten thousand
/// times a second.
pub trait Watch {
    /// Whether the best plan so far will do.
    fn stop(&self) -> bool;
}

/// Whether whoever waits wants no more.
pub(super) fn stopped(watch: Option<&dyn Watch>) -> bool {
    watch.is_some_and(|watch| watch.stop())
}

impl Effort<'static> {
    /// A few seconds for a class.
    pub const USUAL: Self = Self { work: 250_000_000, watch: None };
    /// A second or two for a bake at home.
    pub const HOME: Self = Self { work: 40_000_000, watch: None };
    /// A look whether anything fits at all.
    pub const TRIAL: Self = Self { work: 3_000_000, watch: None };
}

impl<'a> Effort<'a> {
    /// The same with someone who may end it.
    #[must_use]
    pub fn watched(self, watch: &'a dyn Watch) -> Self {
        Self { watch: Some(watch), ..self }
    }
}

/// The answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// A plan.
    Fits(Box<Plan>),
    /// It is proven that none exists.
    Never,
    /// None was found, and it is not proven that none exists.
    Unknown,
}

/// A plan and how good it is known to be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Starts and ovens.
    pub layout: Layout,
    /// Minutes of waiting beyond the recipes' own times, all tasks together.
    pub waiting: i32,
    /// No plan has less.
    pub waiting_bound: i32,
    /// The goal's value: the minute at which the last task ends, or minutes from the
    /// first start until ready.
    pub second: i32,
    /// No plan with this waiting has a lesser value.
    pub second_bound: i32,
}

impl Plan {
    /// Whether it is proven that no plan is better.
    pub fn is_best(&self) -> bool {
        self.waiting == self.waiting_bound && self.second == self.second_bound
    }
}

impl Answer {
    /// The plan, where there is one.
    pub fn plan(&self) -> Option<&Plan> {
        match self {
            Self::Fits(plan) => Some(plan),
            Self::Never | Self::Unknown => None,
        }
    }
}

/// Plans `problem`. The same question and effort always give the same answer.
///
/// Shelves make a question hard and are seldom full: it is asked without them first, and
/// that answer stands where it keeps to them.
pub fn solve(problem: &Problem, effort: Effort) -> Answer {
    if problem.stores.is_empty() {
        return best(problem, effort);
    }
    let bare = Problem { stores: Vec::new(), ..problem.clone() };
    match best(&bare, effort) {
        Answer::Never => Answer::Never,
        Answer::Fits(plan) if problem.broken(&plan.layout).is_empty() => {
            Answer::Fits(plan)
        }
        Answer::Fits(_) | Answer::Unknown => best(problem, effort),
    }
}

fn best(problem: &Problem, effort: Effort) -> Answer {
    let mut narrowed = problem.clone();
    if !bounds::narrow(&mut narrowed) {
        return Answer::Never;
    }
    let begin = first::first(&narrowed);
    let waiting = match least_waiting(&narrowed, begin, effort) {
        Ok(waiting) => waiting,
        Err(answer) => return answer,
    };
    Answer::Fits(Box::new(best_second(&narrowed, waiting, effort)))
}

/// Whether any plan exists: no time is spent on a good one.
pub fn fits(problem: &Problem, effort: Effort) -> Answer {
    let mut narrowed = problem.clone();
    if !bounds::narrow(&mut narrowed) {
        return Answer::Never;
    }
    match first::first(&narrowed) {
        Some(layout) => plan_of(&narrowed, layout),
        None => match try_any(&narrowed, effort) {
            Ok(layout) => plan_of(&narrowed, layout),
            Err(answer) => answer,
        },
    }
}

fn plan_of(problem: &Problem, layout: Layout) -> Answer {
    let waiting = problem.waiting(&layout.starts);
    let second = problem.second(&layout.starts);
    Answer::Fits(Box::new(Plan {
        layout,
        waiting,
        waiting_bound: 0,
        second,
        second_bound: 0,
    }))
}

/// A plan of any kind.
fn try_any(problem: &Problem, effort: Effort) -> Result<Layout, Answer> {
    let ask = Search { aim: Aim::Second(i32::MAX / 4), bound: 0, from: None, effort };
    match search(problem, &ask) {
        Found::Best(layout) | Found::Some(layout, _) => Ok(layout),
        Found::Never => Err(Answer::Never),
        Found::Unknown => Err(Answer::Unknown),
    }
}

/// A plan with the waiting that no plan is known to beat.
struct Waiting {
    layout: Layout,
    bound: i32,
}

fn least_waiting(
    problem: &Problem,
    begin: Option<Layout>,
    effort: Effort,
) -> Result<Waiting, Answer> {
    if let Some(layout) = &begin
        && problem.waiting(&layout.starts) == 0
    {
        return Ok(Waiting { layout: layout.clone(), bound: 0 });
    }
    let ask = Search { aim: Aim::Waiting, bound: 0, from: begin.as_ref(), effort };
    let (layout, proven) = match (search(problem, &ask), begin) {
        (Found::Best(layout), _) => (layout, true),
        (Found::Some(layout, bound), _) => return Ok(Waiting { layout, bound }),
        // The first plan stands in the way of the search only if it is best.
        (Found::Never | Found::Unknown, Some(layout)) => (layout, false),
        (Found::Never, None) => return Err(Answer::Never),
        (Found::Unknown, None) => return Err(Answer::Unknown),
    };
    let bound = if proven { problem.waiting(&layout.starts) } else { 0 };
    Ok(Waiting { layout, bound })
}

fn best_second(problem: &Problem, waiting: Waiting, effort: Effort) -> Plan {
    let least = problem.waiting(&waiting.layout.starts);
    let bound = match problem.goal {
        Goal::EarliestEnd => bounds::earliest_end(problem),
        Goal::LatestStart(_) => 0,
    };
    let waiting_least = waiting.bound;
    let done = |layout: Layout, proven: bool| {
        let second = problem.second(&layout.starts);
        let second_bound = if proven { second } else { bound.min(second) };
        let waiting = problem.waiting(&layout.starts);
        Plan { layout, waiting, waiting_bound: waiting_least, second, second_bound }
    };
    if problem.second(&waiting.layout.starts) <= bound {
        done(waiting.layout, true)
    } else {
        let ask = Search {
            aim: Aim::Second(least),
            bound,
            from: Some(&waiting.layout),
            effort,
        };
        match search(problem, &ask) {
            Found::Best(layout) => done(layout, true),
            Found::Some(layout, found) => {
                Plan { second_bound: found.max(bound), ..done(layout, false) }
            }
            Found::Never | Found::Unknown => done(waiting.layout, false),
        }
    }
}
