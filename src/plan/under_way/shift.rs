//! What of an announced plan begins at another minute, and why.

use crate::plan::answer::timetable::{Activity, StepName, Timetable};
use crate::plan::question::class::{ClassDraft, PoolName, Who};
use crate::plan::question::kind::Kind;
use crate::plan::question::problem::{Layout, Link, Problem};

/// Something that begins at another minute than was announced.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shift {
    /// Who does it.
    pub who: Vec<Who>,
    /// What of it.
    pub kind: Kind,
    /// The recipe.
    pub recipe: String,
    /// The step; `None` for what everybody does together.
    pub step: Option<StepName>,
    /// The minute that was announced.
    pub from: i32,
    /// The minute at which it begins now.
    pub to: i32,
    /// Why.
    pub why: Why,
}

/// Why something begins at another minute.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// What it follows ends at another minute: its heading.
    After(String),
    /// This is in use until then.
    Busy(PoolName),
    /// Their own hands are.
    Hands,
    /// The ovens are full, or out of order, until then.
    Oven,
    /// It could not begin before now.
    Now,
    /// So that it begins together with others, or when there is room.
    Together,
}

/// What begins at another minute than was announced, in the order of its new times.
pub(in crate::plan) fn shifts(
    draft: &ClassDraft,
    plan: &Timetable,
    now: i32,
) -> Vec<Shift> {
    let starts: Vec<i32> =
        plan.activities.iter().map(|of| of.span.map_or(0, |span| span.0)).collect();
    let ovens = Vec::new();
    let moved = Moved { draft, layout: Layout { starts, ovens }, now };
    let mut found: Vec<Shift> = Vec::new();
    for (task, activity) in plan.activities.iter().enumerate() {
        let Some(shift) = moved.shift(task, activity) else { continue };
        let same = |known: &&mut Shift| {
            Shift { who: Vec::new(), ..(**known).clone() }
                == Shift { who: Vec::new(), ..shift.clone() }
        };
        match found.iter_mut().find(same) {
            Some(known) => {
                let new = shift.who.into_iter().filter(|who| !known.who.contains(who));
                let new: Vec<Who> = new.collect();
                known.who.extend(new);
            }
            None => found.push(shift),
        }
    }
    found.sort_by_key(|shift| (shift.to, shift.from));
    found
}

struct Moved<'a> {
    draft: &'a ClassDraft,
    layout: Layout,
    now: i32,
}

impl Moved<'_> {
    fn problem(&self) -> &Problem {
        &self.draft.problem
    }

    fn shift(&self, task: usize, activity: &Activity) -> Option<Shift> {
        let (from, to) = (*self.problem().announced.get(task)?, activity.span?.0);
        let kind = activity.kind;
        let step = activity.deed.step.clone();
        let all = kind.is_gathering();
        let watching = activity.watching.iter().filter(|_| all).copied();
        let named = all || (kind.is_work() && step.is_some());
        (named && from != to).then(|| Shift {
            who: watching.chain([activity.deed.who]).collect(),
            kind,
            recipe: activity.deed.recipe.clone(),
            step,
            from,
            to,
            why: self.why(task, to),
        })
    }

    /// What lets it begin then and no earlier.
    fn why(&self, task: usize, to: i32) -> Why {
        let problem = self.problem();
        let into = problem.links.iter().filter(|link| link.to == task);
        let mut tight = into.filter(|link| self.is_tight(link));
        if let Some(title) = tight.find_map(|link| self.title(link.from)) {
            return Why::After(title);
        }
        match self.busy(task, to) {
            Some(PoolName::Group(_) | PoolName::Home) => return Why::Hands,
            Some(pool @ (PoolName::Instructor | PoolName::Staff | PoolName::Kit(_))) => {
                return Why::Busy(pool);
            }
            None => {}
        }
        let bakes = |task: usize| problem.ovens.bakes.iter().find(|it| it.task == task);
        let ends = |bake: &crate::plan::question::problem::Baking| {
            problem.end_of(bake.task, &self.layout.starts) + problem.ovens.after == to
        };
        if bakes(task).is_some() && problem.ovens.bakes.iter().any(ends) {
            return Why::Oven;
        }
        if to == self.now { Why::Now } else { Why::Together }
    }

    /// Whether a task follows on another as soon as it usually does, and that one has moved.
    fn is_tight(&self, link: &Link) -> bool {
        let gap = self.problem().gap(link, &self.layout.starts);
        let at_once = gap <= link.usual.unwrap_or(link.least).max(link.least);
        let announced = self.problem().announced.get(link.from);
        at_once && announced != Some(&self.layout.starts[link.from])
    }

    fn title(&self, task: usize) -> Option<String> {
        let steps = self.draft.units.iter().flat_map(|unit| &unit.batch.steps);
        let mut own = steps.filter(|step| step.tasks().contains(&task));
        let shows = self.draft.shows.iter().find(|show| show.task == task);
        own.next().map(|step| &step.title).or(shows.map(|show| &show.title)).cloned()
    }

    /// The pool that somebody else holds until this minute.
    fn busy(&self, task: usize, to: i32) -> Option<PoolName> {
        let problem = self.problem();
        let pools = self.draft.pools.iter().zip(&problem.pools);
        let mut held = pools.filter(|(_, pool)| {
            let ends = |of: &crate::plan::question::problem::Claim| {
                of.task != task
                    && problem.end_of(of.task, &self.layout.starts) + of.after == to
            };
            pool.uses.iter().any(|of| of.task == task) && pool.uses.iter().any(ends)
        });
        held.next().map(|(name, _)| name.clone())
    }
}
