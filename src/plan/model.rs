//! A planning question as the constraint solver takes it. The only file that knows the
//! solver.
//!
//! Ovens: each bake has a copy of its start for every oven, with one parking minute behind
//! the horizon for the ovens it is not in; exactly one copy is the start. Shelves: for two
//! stays a literal says that one is there when the other begins.

use std::cell::Cell;
use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::rc::Rc;

use pumpkin_conflict_resolvers::resolvers::ResolutionResolver;
use pumpkin_constraints::{
    clause, cumulative, disjunctive_strict, equals, less_than_or_equals, maximum,
};
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

use super::latest::SHORT;
use super::problem::{Goal, Layout, Problem, Store};
use super::solve::{Effort, Watch, stopped};

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
/// Stays on one shelf that are held against each other two by two. Where there are more, only
/// the shortest that each can be is.
const MOST_STAYS: usize = 90;
/// More minutes than any plan has.
const MOST_WAITING: i32 = 1_000_000;

/// What is made as small as can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Aim {
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
pub(super) enum Found {
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
pub(super) struct Search<'a> {
    /// What is made small.
    pub(super) aim: Aim,
    /// Its value must be at least this: what no plan can beat.
    pub(super) bound: i32,
    /// A plan to begin from.
    pub(super) from: Option<&'a Layout>,
    /// Steps of the search times the rules that each may touch, and who watches.
    pub(super) effort: Effort<'a>,
}

/// Searches for a plan.
pub(super) fn search(problem: &Problem, search: &Search) -> Found {
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

    fn ovens(&mut self) {
        let ovens = &self.problem.ovens;
        let Some(first) = ovens.bakes.first() else { return };
        let each: i32 = first.trays;
        let minutes = |task: usize| self.problem.tasks[task].minutes + ovens.after;
        let all: Vec<_> = ovens
            .bakes
            .iter()
            .map(|bake| (self.starts[bake.task], minutes(bake.task), bake.trays))
            .collect();
        let count = i32::try_from(ovens.count).unwrap_or(1);
        let like =
            ovens.bakes.iter().all(|bake| bake.trays == each && bake.heat == first.heat);
        if like {
            // Like bakes fill like places: which oven a place is in does not matter.
            let places = count * (ovens.trays / each.max(1));
            let uses: Vec<_> =
                all.into_iter().map(|(start, minutes, _)| (start, minutes, 1)).collect();
            self.share(&uses, places);
            return;
        }
        self.share(&all, count * ovens.trays);
        self.choose_ovens();
    }

    /// A copy of each bake's start for each oven. In the ovens it is not in, a copy stands
    /// on a parking place of its own behind the horizon.
    fn choose_ovens(&mut self) {
        let ovens = &self.problem.ovens;
        let free = ovens.bakes.iter().all(|bake| bake.oven.is_none());
        let mut parking = self.horizon + 1;
        for (at, bake) in ovens.bakes.iter().enumerate() {
            let minutes = self.problem.tasks[bake.task].minutes + ovens.after;
            // Ovens are alike, where nothing is in them: the first bake goes into the first.
            let own: Vec<(DomainId, Literal)> =
                (0..ovens.count).map(|_| self.copy(bake.task, parking)).collect();
            let inside: Vec<View> =
                own.iter().map(|(_, there)| there.get_integer_variable()).collect();
            self.at_most(inside.iter().map(|there| there.scaled(-1)).collect(), -1);
            self.at_most(inside, 1);
            let first = (at == 0 && free).then_some(0);
            if let Some(oven) = bake.oven.or(first) {
                self.any_of(own.get(oven).map(|(_, there)| *there).into_iter().collect());
            }
            self.copies.push(own);
            self.parked.push(parking);
            parking += minutes.max(1);
        }
        for oven in 0..ovens.count {
            let uses: Vec<_> = ovens
                .bakes
                .iter()
                .enumerate()
                .map(|(at, bake)| {
                    let minutes = self.problem.tasks[bake.task].minutes + ovens.after;
                    (self.copies[at][oven].0.scaled(1), minutes, bake.trays)
                })
                .collect();
            self.share(&uses, ovens.trays);
            self.heats(&uses);
        }
    }

    fn copy(&mut self, task: usize, parking: i32) -> (DomainId, Literal) {
        let ranges = self.problem.tasks[task].starts.iter();
        let mut values: Vec<i32> =
            ranges.flat_map(|(first, last)| *first..=*last).collect();
        let grid = self.problem.tasks[task].grid;
        values.retain(|value| value.rem_euclid(grid) == 0);
        values.push(parking);
        let copy = self.one_of(values);
        let there = self.literal_for(predicate![copy <= parking - 1]);
        let start = self.starts[task];
        self.post(|_, tag| {
            Box::new(move |solver| {
                let same = equals(vec![copy.scaled(1), start.scaled(-1)], 0, tag);
                solver.add_constraint(same).implied_by(there);
            })
        });
        (copy, there)
    }

    /// Bakes of two heats are never in one oven at once.
    fn heats(&mut self, uses: &[(View, i32, i32)]) {
        let heat = |at: usize| self.problem.ovens.bakes[at].heat;
        let pairs: Vec<(usize, usize)> = (0..uses.len())
            .flat_map(|one| (one + 1..uses.len()).map(move |other| (one, other)))
            .filter(|(one, other)| heat(*one) != heat(*other))
            .collect();
        for (one, other) in pairs {
            let first = self.literal();
            self.before(uses[one], uses[other].0, first);
            self.before(uses[other], uses[one].0, !first);
        }
    }

    /// One use is over when the other starts, where the literal holds.
    fn before(&mut self, one: (View, i32, i32), other: View, holds: Literal) {
        let (start, minutes, _) = one;
        self.post(|_, tag| {
            Box::new(move |solver| {
                let terms = vec![start.scaled(1), other.scaled(-1)];
                let constraint = less_than_or_equals(terms, -minutes, tag);
                solver.add_constraint(constraint).implied_by(holds);
            })
        });
    }

    /// At the beginning of each stay, what is there then and it fit on the shelf.
    fn shelves(&mut self) {
        for store in &self.problem.stores {
            if store.stays.iter().map(|(_, amount)| amount).sum::<i32>() <= store.capacity
            {
                continue;
            }
            self.shortest_stays(store);
            if store.stays.len() > MOST_STAYS {
                continue;
            }
            for (at, (link, amount)) in store.stays.iter().enumerate() {
                let others = store.stays.iter().enumerate();
                let others =
                    others.filter(|(other, _)| *other != at).map(|(_, stay)| *stay);
                let there: Vec<View> = others
                    .filter_map(|(other, amount)| {
                        let there = self.there(other, *link)?;
                        Some(there.get_integer_variable().scaled(amount))
                    })
                    .collect();
                self.at_most(there, store.capacity - amount);
            }
        }
    }

    /// What the shortest stays take, whatever the plan: a rule that is seen through at once.
    fn shortest_stays(&mut self, store: &Store) {
        let uses: Vec<(View, i32, i32)> = store
            .stays
            .iter()
            .map(|(link, amount)| (&self.problem.links[*link], *amount))
            .filter(|(link, _)| link.least > 0)
            .map(|(link, amount)| {
                let minutes = self.problem.tasks[link.from].minutes;
                (self.starts[link.from].offset(minutes), link.least, amount)
            })
            .collect();
        self.share(&uses, store.capacity);
    }

    /// Whether one stay lasts when another begins; `None` where it never can.
    fn there(&mut self, stay: usize, other: usize) -> Option<Literal> {
        let (stay, other) = (&self.problem.links[stay], &self.problem.links[other]);
        let minutes = |task: usize| self.problem.tasks[task].minutes;
        let span = |task: usize| self.problem.tasks[task].span();
        let (begin, end) = (span(stay.from)?, span(stay.to)?);
        let at = span(other.from)?;
        let (ends, at_ends) = (minutes(stay.from), minutes(other.from));
        if begin.0 + ends > at.1 + at_ends || end.1 <= at.0 + at_ends {
            return None;
        }
        let from =
            vec![self.starts[stay.from].scaled(1), self.starts[other.from].scaled(-1)];
        let begun = self.whether(from, at_ends - ends);
        let to = vec![self.starts[other.from].scaled(1), self.starts[stay.to].scaled(-1)];
        let lasts = self.whether(to, -at_ends - 1);
        let there = self.literal();
        self.any_of(vec![!begun, !lasts, there]);
        Some(there)
    }

    /// What is made small.
    fn aim(&mut self, search: &Search) -> View {
        match search.aim {
            Aim::Waiting => {
                let late = self.lateness();
                let most = search
                    .from
                    .map_or(MOST_WAITING, |from| self.problem.waiting(&from.starts));
                let all = self.integer(search.bound.min(most), most);
                let terms = late.into_iter().chain([all.scaled(-1)]).collect();
                self.at_most(terms, 0);
                all.scaled(1)
            }
            Aim::Nearest => self.nearest(search),
            Aim::Short => {
                let most = search
                    .from
                    .map_or(MOST_WAITING, |from| self.problem.short(&from.starts));
                let mut terms = self.shortness();
                let all = self.integer(search.bound.min(most), most);
                terms.push(all.scaled(-1));
                self.at_most(terms, 0);
                all.scaled(1)
            }
            Aim::Any => self.zero.scaled(1),
            Aim::Second(waiting) => {
                let late = self.lateness();
                if !late.is_empty() {
                    self.at_most(late, waiting);
                }
                self.second(search)
            }
        }
    }

    /// The time from the first start, and the minutes by which waits are shorter.
    fn nearest(&mut self, search: &Search) -> View {
        let worth = |from: &Layout| {
            self.problem.second(&from.starts) + SHORT * self.problem.short(&from.starts)
        };
        let most = search.from.map_or(MOST_WAITING, worth);
        let lead = self.second(&Search { bound: 0, from: None, ..*search });
        let mut terms = vec![lead];
        terms.extend(self.shortness().into_iter().map(|short| short.scaled(SHORT)));
        let all = self.integer(search.bound.min(most), most);
        terms.push(all.scaled(-1));
        self.at_most(terms, 0);
        all.scaled(1)
    }

    /// For each wait that can be shorter than usual: by how much.
    fn shortness(&mut self) -> Vec<View> {
        let mut terms = Vec::new();
        for link in &self.problem.links {
            let Some(usual) = link.usual.filter(|usual| *usual > link.least) else {
                continue;
            };
            let minutes = self.problem.tasks[link.from].minutes;
            let (from, to) = (self.starts[link.from], self.starts[link.to]);
            let short = self.integer(0, usual - link.least);
            let gap = vec![from.scaled(1), to.scaled(-1), short.scaled(-1)];
            self.at_most(gap, -minutes - usual);
            terms.push(short.scaled(1));
        }
        terms
    }

    fn second(&mut self, search: &Search) -> View {
        let most =
            search.from.map_or(MOST_WAITING, |from| self.problem.second(&from.starts));
        let aim = self.integer(search.bound.min(most), most);
        for task in 0..self.starts.len() {
            let start = self.starts[task];
            match self.problem.goal {
                Goal::EarliestEnd => {
                    let minutes = self.problem.tasks[task].minutes;
                    self.at_most(vec![start.scaled(1), aim.scaled(-1)], -minutes);
                }
                Goal::LatestStart(ready) => {
                    self.at_most(vec![start.scaled(-1), aim.scaled(-1)], -ready);
                }
            }
        }
        aim.scaled(1)
    }

    /// For each task that can be late: by how much.
    fn lateness(&mut self) -> Vec<View> {
        let counted = self.problem.counted();
        let late = counted.iter().enumerate().filter(|(_, links)| !links.is_empty());
        late.map(|(task, links)| {
            let late = self.integer(0, MOST_WAITING);
            let ready: Vec<(Vec<View>, i32)> =
                links.iter().map(|link| self.ready(*link)).collect();
            let (mut terms, plus) = match ready.as_slice() {
                [(terms, plus)] => {
                    (terms.iter().map(|term| term.scaled(-1)).collect(), *plus)
                }
                several => (vec![self.latest(several).scaled(-1)], 0),
            };
            terms.extend(self.clock(task));
            terms.push(late.scaled(-1));
            self.at_most(terms, plus);
            late.scaled(1)
        })
        .collect()
    }

    /// A task's start on the clock that stands still between sessions.
    fn clock(&mut self, task: usize) -> Vec<View> {
        let mut terms = vec![self.start(task)];
        for session in 1..self.problem.sessions.len() {
            let pause = self.problem.pause_before(session)
                - self.problem.pause_before(session - 1);
            let opened = self.opened(task, session);
            terms.push(opened.get_integer_variable().scaled(-pause));
        }
        terms
    }

    /// When a link's own time is over: terms, and a number to add.
    fn ready(&mut self, link: usize) -> (Vec<View>, i32) {
        let link = &self.problem.links[link];
        let minutes = self.problem.tasks[link.from].minutes;
        (self.clock(link.from), minutes + link.usual.unwrap_or(0))
    }

    fn latest(&mut self, ready: &[(Vec<View>, i32)]) -> DomainId {
        let span = MOST_WAITING;
        let each: Vec<DomainId> = ready
            .iter()
            .map(|(terms, plus)| {
                let one = self.integer(-span, span);
                let terms: Vec<View> =
                    terms.iter().copied().chain([one.scaled(-1)]).collect();
                let plus = *plus;
                self.post(|_, tag| {
                    Box::new(move |solver| {
                        solver.add_constraint(equals(terms, -plus, tag)).post();
                    })
                });
                one
            })
            .collect();
        let last = self.integer(-span, span);
        self.post(|_, tag| {
            Box::new(move |solver| solver.add_constraint(maximum(each, last, tag)).post())
        });
        last
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
