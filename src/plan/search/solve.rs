//! From a question to an answer: a first plan, then the least waiting, then the goal, each
//! within a fixed effort.

use crate::plan::at_home::latest;
use crate::plan::question::problem::{Goal, Layout, Problem};

use super::polish::Polish;
use super::solver::{Aim, Found, Search, search};
use super::waves::{self, Strictness};
use super::{bounds, first, lateness, ovens};

/// A question with more tasks is not planned batch by batch, nor polished task by task.
const LARGE: usize = 400;

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
    /// There is no plan: from now on it is waited for reasons and remedies.
    fn explains(&self);
}

/// Whether whoever waits wants no more.
pub(in crate::plan) fn stopped(watch: Option<&dyn Watch>) -> bool {
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

    /// Whether whoever waits wants no more.
    pub fn is_stopped(&self) -> bool {
        stopped(self.watch)
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
    /// Minutes by which waits are shorter than usual; it is proven that none need be where
    /// it is 0.
    pub short: i32,
    /// Whether starts had to leave the grid for it to fit.
    pub off_grid: bool,
    /// At how many different minutes somebody begins something.
    pub moments: i32,
    /// No plan has fewer.
    pub moments_bound: i32,
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
        self.short == 0
            && self.moments == self.moments_bound
            && self.waiting == self.waiting_bound
            && self.second == self.second_bound
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
/// A class is planned in waves; where that leaves nothing, minute by minute. What has no
/// batches that are made alike is planned for the least waiting and then its goal.
pub fn solve(problem: &Problem, effort: Effort) -> Answer {
    let Some(narrowed) = open(problem) else { return Answer::Never };
    if narrowed.families.is_empty() && narrowed.announced.is_empty() {
        return best(&narrowed, effort);
    }
    if let Some(layout) = repaired(&narrowed) {
        let off_grid = waves::leaves_grid(&narrowed, &layout);
        let plan = plan(&narrowed, layout);
        return Answer::Fits(Box::new(Plan { off_grid, ..plan }));
    }
    let found = waves::ORDER.iter().find_map(|strict| {
        waves::best(&narrowed, *strict, effort).map(|layout| (layout, *strict))
    });
    match found {
        Some((layout, strict)) => {
            let layout = match narrowed.short(&layout.starts) {
                0 => layout,
                _ if !is_small(&narrowed) => layout,
                _ => super::firm::firm(&narrowed, layout, effort),
            };
            let layout = shortened(&narrowed, layout, strict, effort);
            // Rests come before the grid: what lengthens them may leave it.
            let off_grid = !strict.grid || waves::leaves_grid(&narrowed, &layout);
            let plan = plan(&narrowed, ovens::tidy(&narrowed, layout));
            Answer::Fits(Box::new(Plan { off_grid, ..plan }))
        }
        None => singly(&narrowed, effort),
    }
}

/// Whether any plan exists: no time is spent on a good one.
pub fn fits(problem: &Problem, effort: Effort) -> Answer {
    let Some(narrowed) = open(problem) else { return Answer::Never };
    let found = soon(&narrowed).map_or_else(|| try_any(&narrowed, effort), Ok);
    match found {
        Ok(layout) => Answer::Fits(Box::new(plan(&narrowed, layout))),
        Err(answer) => answer,
    }
}

/// Likewise, where a first plan shows it; nothing is searched.
pub fn fits_soon(problem: &Problem) -> Answer {
    let Some(narrowed) = open(problem) else { return Answer::Never };
    match soon(&narrowed) {
        Some(layout) => Answer::Fits(Box::new(plan(&narrowed, layout))),
        None => Answer::Unknown,
    }
}

/// A first plan in waves, on the grid or by the minute, or batch by batch.
fn soon(problem: &Problem) -> Option<Layout> {
    let waves = waves::ORDER.iter().filter(|_| !problem.families.is_empty());
    waves
        .filter(|strict| !strict.usual)
        .find_map(|strict| waves::any(problem, *strict))
        .or_else(|| is_small(problem).then(|| first::first(problem))?)
}

/// The question with its ranges narrowed; `None` where it is plain that no plan exists.
fn open(problem: &Problem) -> Option<Problem> {
    let mut narrowed = problem.clone();
    (bounds::narrow(&mut narrowed) && bounds::overload(&narrowed).is_none())
        .then_some(narrowed)
}

/// What was announced, with as much later as must be; `None` where nothing was, or where that
/// does not do.
fn repaired(problem: &Problem) -> Option<Layout> {
    if problem.announced.is_empty() {
        return None;
    }
    // A rest that was announced shorter than usual is not made longer now.
    let problem = &as_promised(problem);
    let usual = latest::as_usual(problem);
    let asked = [on_announced_grid(&usual), usual, problem.clone()];
    let found = asked.into_iter().find_map(|mut asked| {
        bounds::narrow(&mut asked).then_some(())?;
        let order = first::ordered(&asked, |task| -problem.announced[task]);
        // What must be earlier than announced may be.
        let last = asked.tasks.iter().map(|task| task.span().map_or(0, |span| span.1));
        let floors = problem.announced.iter().zip(last);
        let floors: Vec<i32> = floors.map(|(start, last)| last.min(*start)).collect();
        let later = first::lay_from(&asked, std::slice::from_ref(&order), true, &floors);
        let layout = later.or_else(|| first::lay(&asked, &[order], true))?;
        waves::sound(problem, layout)
    })?;
    Some(polished(problem, found))
}

/// The question in which a rest is usual where it is as long as was announced.
fn as_promised(problem: &Problem) -> Problem {
    let mut asked = problem.clone();
    for (link, gap) in asked.links.iter_mut().zip(&problem.promised) {
        link.usual = link.usual.map(|usual| usual.min(link.least.max(*gap)));
    }
    asked
}

/// What was announced on the grid stays on it.
fn on_announced_grid(problem: &Problem) -> Problem {
    let mut asked = problem.clone();
    waves::on_grid(&mut asked);
    for (task, start) in asked.tasks.iter_mut().zip(&problem.announced) {
        if start.rem_euclid(task.grid) != 0 {
            task.grid = 1;
        }
    }
    asked
}

/// Whether a first plan in waves has every rest as usual.
pub(in crate::plan) fn fits_as_usual(problem: &Problem) -> bool {
    let any = |narrowed: Problem| {
        let usual = waves::ORDER.iter().filter(|strict| strict.usual);
        usual.into_iter().any(|strict| waves::any(&narrowed, *strict).is_some())
    };
    is_small(problem) && open(problem).is_some_and(any)
}

/// Whether what is left of a day fits: no time is spent on a good plan.
pub(in crate::plan) fn still_fits(problem: &Problem) -> Option<Layout> {
    let narrowed = open(problem)?;
    repaired(&narrowed).or_else(|| soon(&narrowed))
}

/// A class that is not planned in goes: each batch for itself.
fn singly(problem: &Problem, effort: Effort) -> Answer {
    let layout = match first::first(problem) {
        Some(layout) => layout,
        None => match try_any(problem, effort) {
            Ok(layout) => layout,
            Err(answer) => return answer,
        },
    };
    let layout = polished(problem, layout);
    let strict = Strictness { usual: false, grid: false };
    let layout = shortened(problem, layout, strict, effort);
    Answer::Fits(Box::new(Plan { off_grid: true, ..plan(problem, layout) }))
}

/// Where rests give way, the plan in which they do least, if it is found.
fn shortened(
    problem: &Problem,
    layout: Layout,
    strict: Strictness,
    effort: Effort,
) -> Layout {
    let short = problem.short(&layout.starts);
    if strict.usual || short == 0 || stopped(effort.watch) {
        return layout;
    }
    let effort = Effort { work: effort.work / 8, ..effort };
    let ask = Search { aim: Aim::Short, bound: 0, from: Some(&layout), effort };
    let (Found::Best(found) | Found::Some(found, _)) = search(problem, &ask) else {
        return layout;
    };
    if problem.short(&found.starts) >= short || !problem.broken(&found).is_empty() {
        return layout;
    }
    polished(problem, found)
}

/// A plan of the whole question after small moves, where it is not too large for them.
fn polished(problem: &Problem, layout: Layout) -> Layout {
    if !is_small(problem) {
        return layout;
    }
    let weights = vec![1; problem.tasks.len()];
    Polish::new(problem, &weights).polish(layout)
}

/// A plan with what is known of how good it can be.
fn plan(problem: &Problem, layout: Layout) -> Plan {
    let starts = &layout.starts;
    let end = match problem.goal {
        Goal::EarliestEnd => bounds::earliest_end(problem),
        Goal::LatestStart(_) => 0,
    };
    let second = problem.second(starts);
    Plan {
        short: problem.short(starts),
        off_grid: false,
        moments: problem.moments(starts),
        moments_bound: bounds::moments(problem),
        waiting: problem.waiting(starts),
        waiting_bound: lateness::least(problem),
        second,
        second_bound: end.min(second),
        layout,
    }
}

/// Whether small moves, and plans batch by batch, are worth their time.
fn is_small(problem: &Problem) -> bool {
    problem.tasks.len() <= LARGE
}

/// A plan of any kind.
fn try_any(problem: &Problem, effort: Effort) -> Result<Layout, Answer> {
    let ask = Search { aim: Aim::Any, bound: 0, from: None, effort };
    match search(problem, &ask) {
        Found::Best(layout) | Found::Some(layout, _) => {
            if problem.broken(&layout).is_empty() {
                Ok(layout)
            } else {
                Err(Answer::Unknown)
            }
        }
        Found::Never => Err(Answer::Never),
        Found::Unknown => Err(Answer::Unknown),
    }
}

/// The least waiting, then the goal.
fn best(problem: &Problem, effort: Effort) -> Answer {
    let begin = first::first(problem);
    match least_waiting(problem, begin, effort) {
        Ok(waiting) => Answer::Fits(Box::new(best_second(problem, waiting, effort))),
        Err(answer) => answer,
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
    let known = plan(problem, waiting.layout);
    let begun = Plan { waiting_bound: waiting.bound, ..known };
    if begun.second <= begun.second_bound {
        return begun;
    }
    let bound = begun.second_bound;
    let ask =
        Search { aim: Aim::Second(least), bound, from: Some(&begun.layout), effort };
    let of =
        |layout: Layout| Plan { waiting_bound: waiting.bound, ..plan(problem, layout) };
    match search(problem, &ask) {
        Found::Best(layout) => {
            let found = of(layout);
            Plan { second_bound: found.second, ..found }
        }
        Found::Some(layout, found) => {
            Plan { second_bound: found.max(bound), ..of(layout) }
        }
        Found::Never | Found::Unknown => begun,
    }
}
