//! A planning question as the constraint solver takes it. The only room that knows the
//! solver.
//!
//! Ovens: each bake has a copy of its start for every oven, with one parking minute behind
//! the horizon for the ovens it is not in; exactly one copy is the start. Shelves: for two
//! stays a literal says that one is there when the other begins.

mod aims;
mod ovens;
mod shelves;

use std::cell::Cell;
use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::rc::Rc;

use pumpkin_conflict_resolvers::resolvers::ResolutionResolver;
use pumpkin_constraints::{clause, cumulative, disjunctive_strict, less_than_or_equals};
use pumpkin_core::Solver;
use pumpkin_core::branching::Brancher;
use pumpkin_core::branching::branchers::dynamic_brancher::DynamicBrancher;
use pumpkin_core::branching::branchers::independent_variable_value_brancher::IndependentVariableValueBrancher as Choice;
use pumpkin_core::branching::branchers::warm_start::WarmStart;
use pumpkin_core::branching::value_selection::{InDomainMax, InDomainMin};
use pumpkin_core::branching::variable_selection::InputOrder;
use pumpkin_core::optimisation::OptimisationDirection;
use pumpkin_core::optimisation::linear_sat_unsat::LinearSatUnsat;
use pumpkin_core::predicate;
use pumpkin_core::predicates::Predicate;
use pumpkin_core::proof::ConstraintTag;
use pumpkin_core::results::{
    OptimisationResult, ProblemSolution, Solution, SolutionReference,
};
use pumpkin_core::termination::TerminationCondition;
use pumpkin_core::variables::{AffineView, DomainId, Literal, TransformableVariable};
use pumpkin_propagators::disjunctive::ArgDisjunctiveTask;

use super::solve::{Effort, Watch, stopped};
use crate::plan::question::problem::{Goal, Layout, Problem};

type View = AffineView<DomainId>;
type Branch = DynamicBrancher;
type Resolver = ResolutionResolver;

/// Fewest steps of a search, however large the question.
const FEWEST: u64 = 2_000;
/// A search is given up after this part of its steps without a better plan.
const PATIENCE: u64 = 2;
/// A step costs as much as one that touches so many rules, however few there are: measured.
const LIGHTEST: u64 = 800;
/// A rule whose truth is itself a variable costs as much as so many others: measured.
const HEAVY: u64 = 60;

/// What is made as small as can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::plan) enum Aim {
    /// At how many different minutes something begins.
    Moments,
    /// The waiting.
    Waiting,
    /// The minutes by which waits are shorter than usual.
    Short,
    /// The goal, with the waiting at most so much.
    Second(i32),
    /// Nothing: the first plan will do.
    Any,
    /// How far waits are from their recipes' own times, at home.
    Nearest,
}

/// What came of a search.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::plan) enum Found {
    /// A plan that is proven best.
    Best(Layout),
    /// A plan, better ones not ruled out; none has less than this.
    Some(Layout, i32),
    /// It is proven that there is none.
    Never,
    /// Neither a plan nor a proof within the effort.
    Unknown,
}

/// Stops after so many steps of the search, or so many without a better plan: the same
/// question always gets the same answer.
struct Steps<'a> {
    left: u64,
    patience: u64,
    idle: Rc<Cell<u64>>,
    watch: Option<&'a dyn Watch>,
}

impl TerminationCondition for Steps<'_> {
    fn should_stop(&mut self) -> bool {
        self.left = self.left.saturating_sub(1);
        self.idle.set(self.idle.get() + 1);
        self.left == 0 || self.idle.get() > self.patience || stopped(self.watch)
    }
}

/// What the search is asked for.
pub(in crate::plan) struct Search<'a> {
    /// What is made small.
    pub(in crate::plan) aim: Aim,
    /// Its value must be at least this: what no plan can beat.
    pub(in crate::plan) bound: i32,
    /// A plan to begin from.
    pub(in crate::plan) from: Option<&'a Layout>,
    /// Steps of the search times the rules that each may touch, and who watches.
    pub(in crate::plan) effort: Effort<'a>,
}

/// Searches for a plan.
pub(in crate::plan) fn search(problem: &Problem, search: &Search) -> Found {
    let mut model = Model::new(problem);
    let aim = model.aim(search);
    if model.solver.is_inconsistent() {
        return Found::Never;
    }
    let mut branchers: Vec<Box<dyn Brancher>> = Vec::new();
    if let Some(from) = search.from {
        let (variables, values) = model.begin(from);
        branchers.push(Box::new(WarmStart::new(&variables, &values)));
    }
    branchers.push(model.sessions_first());
    branchers.push(Box::new(model.solver.default_brancher()));
    let mut brancher = Branch::new(branchers);
    let idle = Rc::new(Cell::new(0));
    let better = idle.clone();
    let any = search.aim == Aim::Any;
    let found = move |_: &Solver, _: SolutionReference, _: &Branch, _: &Resolver| {
        better.set(0);
        if any { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
    };
    let way = LinearSatUnsat::new(OptimisationDirection::Minimise, aim, found);
    let left = (search.effort.work / model.rules.max(LIGHTEST)).max(FEWEST);
    let mut steps =
        Steps { left, patience: left / PATIENCE, idle, watch: search.effort.watch };
    let mut resolver = Resolver::default();
    let result = model.solver.optimise(&mut brancher, &mut steps, &mut resolver, way);
    let bound = model.solver.lower_bound(&aim);
    match result {
        OptimisationResult::Optimal(found) => Found::Best(model.layout(&found)),
        OptimisationResult::Satisfiable(found)
        | OptimisationResult::Stopped(found, ()) => {
            Found::Some(model.layout(&found), bound)
        }
        OptimisationResult::Unsatisfiable => Found::Never,
        OptimisationResult::Unknown => Found::Unknown,
    }
}

/// The variables.
struct Model<'a> {
    problem: &'a Problem,
    solver: Solver,
    /// A variable that is 0.
    zero: DomainId,
    starts: Vec<View>,
    /// For each bake and oven a copy of its start, and whether it is in there.
    copies: Vec<Vec<(DomainId, Literal)>>,
    /// Where the copies of each bake are parked.
    parked: Vec<i32>,
    /// Literals for "starts in this session or later".
    opened: BTreeMap<(usize, usize), Literal>,
    horizon: i32,
    /// How many rules the solver has been given.
    rules: u64,
}

impl<'a> Model<'a> {
    fn new(problem: &'a Problem) -> Self {
        let last = |(task, span): (usize, Option<(i32, i32)>)| {
            span.map_or(0, |span| span.1) + problem.tasks[task].minutes
        };
        let spans = problem.tasks.iter().map(|task| task.span()).enumerate();
        let mut solver = Solver::default();
        let zero = solver.new_bounded_integer(0, 0);
        let mut model = Self {
            problem,
            solver,
            zero,
            starts: Vec::new(),
            copies: Vec::new(),
            parked: Vec::new(),
            opened: BTreeMap::new(),
            rules: 0,
            horizon: spans.map(last).max().unwrap_or(0),
        };
        model.variables();
        model.links();
        model.pools();
        model.ovens();
        model.shelves();
        model.order();
        model
    }

    fn tag(&mut self) -> ConstraintTag {
        self.solver.new_constraint_tag()
    }

    fn post(
        &mut self,
        make: impl FnOnce(&mut Self, ConstraintTag) -> Box<dyn FnOnce(&mut Solver)>,
    ) {
        if self.solver.is_inconsistent() {
            return;
        }
        self.rules += 1;
        let tag = self.tag();
        let post = make(self, tag);
        post(&mut self.solver);
    }

    // Where rules contradict each other the solver takes no more variables, and none is
    // needed: there is no plan.

    fn integer(&mut self, least: i32, most: i32) -> DomainId {
        if self.solver.is_inconsistent() {
            return self.zero;
        }
        self.solver.new_bounded_integer(least, most)
    }

    fn one_of(&mut self, values: Vec<i32>) -> DomainId {
        if self.solver.is_inconsistent() {
            return self.zero;
        }
        self.solver.new_sparse_integer(values)
    }

    fn literal(&mut self) -> Literal {
        if self.solver.is_inconsistent() {
            return self.solver.get_true_literal();
        }
        self.solver.new_literal()
    }

    fn literal_for(&mut self, predicate: Predicate) -> Literal {
        if self.solver.is_inconsistent() {
            return self.solver.get_true_literal();
        }
        let tag = self.tag();
        self.solver.new_literal_for_predicate(predicate, tag)
    }

    /// `Σ terms ≤ most`.
    fn at_most(&mut self, terms: Vec<View>, most: i32) {
        // The solver takes no empty sum.
        if terms.is_empty() {
            let never = self.solver.get_false_literal();
            return if most < 0 {
                self.any_of(vec![never]);
            };
        }
        self.post(|_, tag| {
            Box::new(move |solver| {
                solver.add_constraint(less_than_or_equals(terms, most, tag)).post();
            })
        });
    }

    fn any_of(&mut self, literals: Vec<Literal>) {
        self.post(|_, tag| {
            Box::new(move |solver| solver.add_constraint(clause(literals, tag)).post())
        });
    }

    /// A literal that holds just where `Σ terms ≤ most`.
    fn whether(&mut self, terms: Vec<View>, most: i32) -> Literal {
        let literal = self.literal();
        self.rules += HEAVY;
        self.post(|_, tag| {
            Box::new(move |solver| {
                let constraint = less_than_or_equals(terms, most, tag);
                solver.add_constraint(constraint).reify(literal);
            })
        });
        literal
    }

    /// A start for each task. The gaps between its ranges are rules of their own: a domain
    /// with hundreds of holes makes each step of the search slow.
    fn variables(&mut self) {
        for task in &self.problem.tasks {
            let (first, last) = task.span().unwrap_or((0, 0));
            let grid = task.grid;
            let first = task.round_up(first) / grid;
            let start = self.integer(first, last.div_euclid(grid)).scaled(grid);
            for (before, after) in task.starts.iter().zip(task.starts.iter().skip(1)) {
                let (early, late) = (before.1, after.0);
                let sides = [predicate![start <= early], predicate![start >= late]];
                let sides = sides.map(|side| self.literal_for(side));
                self.any_of(sides.to_vec());
            }
            self.starts.push(start);
        }
    }

    fn start(&self, task: usize) -> View {
        self.starts[task]
    }

    fn links(&mut self) {
        for link in &self.problem.links {
            let minutes = self.problem.tasks[link.from].minutes;
            let (from, to) = (self.starts[link.from], self.starts[link.to]);
            self.at_most(vec![from.scaled(1), to.scaled(-1)], -minutes - link.least);
            if let Some(most) = link.most {
                self.at_most(vec![to.scaled(1), from.scaled(-1)], minutes + most);
            }
            if !link.crosses {
                self.together(link.from, link.to);
            }
        }
    }

    /// Both in the same session.
    fn together(&mut self, one: usize, other: usize) {
        for session in 1..self.problem.sessions.len() {
            let (one, other) = (self.opened(one, session), self.opened(other, session));
            self.any_of(vec![!one, other]);
            self.any_of(vec![one, !other]);
        }
    }

    /// Whether a task starts in this session or later.
    fn opened(&mut self, task: usize, session: usize) -> Literal {
        let open = self.problem.sessions[session].0;
        match self.problem.tasks[task].span() {
            Some((first, _)) if first >= open => return self.solver.get_true_literal(),
            Some((_, last)) if last < open => return self.solver.get_false_literal(),
            _ => {}
        }
        if let Some(literal) = self.opened.get(&(task, session)) {
            return *literal;
        }
        let start = self.starts[task];
        let literal = self.literal_for(predicate![start >= open]);
        self.opened.insert((task, session), literal);
        literal
    }

    fn pools(&mut self) {
        for pool in &self.problem.pools {
            let uses: Vec<_> = pool
                .uses
                .iter()
                .map(|of| {
                    let minutes = self.problem.tasks[of.task].minutes + of.after;
                    (self.starts[of.task], minutes, of.amount)
                })
                .filter(|(_, minutes, _)| *minutes > 0)
                .collect();
            self.share(&uses, pool.capacity);
        }
    }

    /// Uses of something by start, minutes and amount.
    fn share(&mut self, uses: &[(View, i32, i32)], capacity: i32) {
        let all: i32 = uses.iter().map(|(.., amount)| amount).sum();
        if all <= capacity {
            return;
        }
        let uses = uses.to_vec();
        // Two uses of more than half each can never be at once.
        let large: Vec<_> = uses
            .iter()
            .filter(|(.., amount)| 2 * amount > capacity)
            .map(|(start, minutes, _)| ArgDisjunctiveTask {
                start_time: start.scaled(1),
                processing_time: *minutes,
            })
            .collect();
        let rest = large.len() < uses.len();
        if large.len() > 1 {
            self.post(|_, tag| {
                Box::new(move |solver| {
                    solver.add_constraint(disjunctive_strict(large, tag)).post();
                })
            });
        }
        if rest || capacity > 1 {
            self.post(|_, tag| {
                Box::new(move |solver| {
                    let starts: Vec<View> =
                        uses.iter().map(|of| of.0.scaled(1)).collect();
                    let minutes: Vec<i32> = uses.iter().map(|of| of.1).collect();
                    let amounts: Vec<i32> = uses.iter().map(|of| of.2).collect();
                    solver
                        .add_constraint(cumulative(
                            starts, minutes, amounts, capacity, tag,
                        ))
                        .post();
                })
            });
        }
    }

    /// Chooses the session of each task before any minute: what comes before a night and
    /// what after it decides most of the waiting.
    fn sessions_first(&self) -> Box<dyn Brancher> {
        let opened: Vec<Literal> = self.opened.values().copied().collect();
        let order = InputOrder::new(&opened);
        match self.problem.goal {
            Goal::EarliestEnd => Box::new(Choice::new(order, InDomainMin)),
            Goal::LatestStart(_) => Box::new(Choice::new(order, InDomainMax)),
        }
    }

    /// Variables and the values that a plan gives them.
    fn begin(&self, from: &Layout) -> (Vec<DomainId>, Vec<i32>) {
        let grid = |task: usize| self.problem.tasks[task].grid;
        let starts = self.starts.iter().zip(&from.starts).enumerate();
        let starts =
            starts.map(|(task, (start, at))| (*start.inner(), at.div_euclid(grid(task))));
        let copies = self.copies.iter().enumerate().flat_map(|(at, own)| {
            let task = self.problem.ovens.bakes[at].task;
            own.iter().enumerate().map(move |(oven, (copy, _))| {
                let here = from.ovens[at] == oven;
                (*copy, if here { from.starts[task] } else { self.parked[at] })
            })
        });
        starts.chain(copies).unzip()
    }

    fn layout(&self, found: &Solution) -> Layout {
        let starts: Vec<i32> =
            self.starts.iter().map(|start| found.get_integer_value(*start)).collect();
        let ovens = if self.copies.is_empty() {
            super::ovens::again(self.problem, &starts)
                .unwrap_or_else(|| vec![0; self.problem.ovens.bakes.len()])
        } else {
            let inside = |own: &Vec<(DomainId, Literal)>| {
                own.iter().position(|(_, there)| found.get_literal_value(*there))
            };
            self.copies.iter().map(|own| inside(own).unwrap_or(0)).collect()
        };
        Layout { starts, ovens }
    }

    fn order(&mut self) {
        for alike in &self.problem.alike {
            for (one, next) in alike.iter().zip(alike.iter().skip(1)) {
                let terms =
                    vec![self.starts[*one].scaled(1), self.starts[*next].scaled(-1)];
                self.at_most(terms, 0);
            }
        }
    }
}
