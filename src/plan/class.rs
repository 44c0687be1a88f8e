//! A class as a planning question: every group's batches, what they share, and what is
//! shown to whom.

use std::collections::{BTreeMap, BTreeSet};

use crate::formula::{Book, Unscalable};
use crate::measure::{Duration, Temperature};
use crate::model::{Class, Each, one_of};
use crate::said;
use crate::statement::Statement;
use crate::work::Work;

use super::clock::Clock;
use super::problem::{Bake, Layout, Link, Ovens, Pool, Problem, Store, Task, Use};
use super::stations::scaled;
use super::strand::{Room, StepPlan, Strand, strand};

/// Kit that the plan knows by its name.
const INSTRUCTOR: &str = "instructor";
const BENCH: &str = "bench place";
/// Trays in one oven where neither class nor course says.
const TRAYS: i32 = 1;

/// A class laid out as a question.
#[derive(Clone, Debug)]
pub struct ClassDraft {
    /// The question.
    pub problem: Problem,
    /// Whose batches they are.
    pub units: Vec<Unit>,
    /// Demonstrations that are no batch of their own.
    pub shows: Vec<Show>,
    /// What tells pools apart, in the order of the problem's.
    pub pools: Vec<PoolName>,
    /// The stores' places, in the order of the problem's.
    pub stores: Vec<String>,
    /// The heats at which ovens are set, in the order of their numbers.
    pub heats: Vec<Temperature>,
    /// The moment at which the class opens: each group's first work waits for it.
    pub opening: usize,
    /// Tasks of those who went home.
    pub left: Vec<usize>,
    /// The titles of recipes by their names.
    pub titles: BTreeMap<String, String>,
    /// Kit that steps need and the class does not count: the plan has it without end.
    pub uncounted: Vec<String>,
    /// Minutes and local times.
    pub clock: Clock,
}

/// One batch in class.
#[derive(Clone, Debug)]
pub struct Unit {
    /// Which entry of the class's list it is; of several that share a dough the first.
    pub making: usize,
    /// Who makes it.
    pub who: Who,
    /// Its steps.
    pub strand: Strand,
}

/// Who does something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Who {
    /// The instructor, for all to see.
    Instructor,
    /// A group by its number from 0.
    Group(u32),
    /// One baker of a group, both from 0.
    Baker(u32, u32),
    /// The one who bakes at home.
    Home,
}

impl Who {
    /// Whether it is this group, or one of its bakers.
    pub fn is_in(self, group: u32) -> bool {
        match self {
            Self::Instructor | Self::Home => false,
            Self::Group(own) | Self::Baker(own, _) => own == group,
        }
    }
}

/// A demonstration that is not part of a batch.
#[derive(Clone, Debug)]
pub struct Show {
    /// The recipe.
    pub recipe: String,
    /// The step.
    pub step: String,
    /// Its heading.
    pub title: String,
    /// The task.
    pub task: usize,
}

/// What a pool is.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PoolName {
    /// The instructor or instructors.
    Instructor,
    /// The hands of a group: it does one attended thing at a time, and watches.
    Group(u32),
    /// Kit by its name in the class file.
    Kit(String),
    /// The hands of the one who bakes at home.
    Home,
}

/// Why a class or a bake cannot even be laid out as a question; checks name the fault.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unclear {
    /// A class without sessions.
    NoSessions,
    /// Its first session is at a time that clocks leave out.
    FirstSession,
    /// A session is at a time that clocks leave out.
    Session,
    /// Two sessions overlap.
    Overlap,
    /// A recipe is missing.
    NoRecipe,
    /// Steps of what a class makes wait for each other in a ring.
    Ring,
    /// Steps of the one recipe do.
    OwnRing,
    /// The time at which it shall be ready is none.
    NoTime,
    /// It cannot be made in that size.
    Size(Unscalable),
}

impl From<Unscalable> for Unclear {
    fn from(why: Unscalable) -> Self {
        Self::Size(why)
    }
}

impl Unclear {
    /// It as a statement.
    pub fn said(self) -> Statement {
        match self {
            Self::NoSessions => said!("unclear-no-sessions"),
            Self::FirstSession => said!("unclear-first-session"),
            Self::Session => said!("unclear-session"),
            Self::Overlap => said!("unclear-overlap"),
            Self::NoRecipe => said!("unclear-no-recipe"),
            Self::Ring => said!("unclear-ring"),
            Self::OwnRing => said!("unclear-own-ring"),
            Self::NoTime => said!("unclear-no-time"),
            Self::Size(why) => why.said(),
        }
    }
}

/// Lays out a class.
///
/// # Errors
/// The reason, where sessions, recipes or steps are not clear.
pub fn draft(class: &Class, book: Book) -> Result<ClassDraft, Unclear> {
    let first = class.sessions.first().ok_or(Unclear::NoSessions)?;
    let zone =
        book.content.course.as_ref().and_then(|course| course.time_zone.as_deref());
    // Minutes count from a full hour, so that every moment of the grid is one of the clock.
    let hour = first.value.from.date().at(first.value.from.hour(), 0, 0, 0);
    let clock = Clock::new(hour, zone).ok_or(Unclear::FirstSession)?;
    let mut drafting = Drafting {
        class,
        book,
        draft: ClassDraft {
            problem: Problem {
                sessions: sessions(class, &clock)?,
                grid: i32::try_from(class.grid.value).unwrap_or(1),
                ..Problem::default()
            },
            units: Vec::new(),
            shows: Vec::new(),
            pools: Vec::new(),
            stores: Vec::new(),
            heats: Vec::new(),
            opening: 0,
            left: Vec::new(),
            titles: BTreeMap::new(),
            uncounted: Vec::new(),
            clock,
        },
        pools: BTreeMap::new(),
        stores: BTreeMap::new(),
    };
    drafting.batches()?;
    drafting.shared();
    drafting.demonstrations();
    drafting.opening();
    drafting.alike();
    Ok(drafting.finish())
}

impl ClassDraft {
    /// A plan as it is announced: demonstrations late, groups numbered by when they begin. What
    /// was announced before stays.
    pub(super) fn tidied(&self, layout: &Layout) -> Layout {
        if self.problem.announced.is_empty() {
            self.settle(&self.renumber(layout))
        } else {
            layout.clone()
        }
    }

    /// Moves demonstrations that are no part of a batch as late as nothing forbids: what
    /// is shown should be fresh when it is done. No value of the plan changes.
    fn settle(&self, layout: &Layout) -> Layout {
        let mut layout = layout.clone();
        for show in self.shows.iter().rev() {
            let problem = &self.problem;
            let minutes = problem.tasks[show.task].minutes;
            let after = problem.links.iter().filter(|link| link.from == show.task);
            let latest = after.map(|link| layout.starts[link.to] - minutes).min();
            let now = layout.starts[show.task];
            let moments = problem.moments(&layout.starts);
            let fits = |start: &i32| {
                let mut moved = layout.clone();
                moved.starts[show.task] = *start;
                problem.moments(&moved.starts) <= moments
                    && problem.broken(&moved).is_empty()
            };
            let grid = problem.grid.max(1);
            let on_grid = |start: &i32| (start % grid == 0) == (now % grid == 0);
            let mut later = latest.into_iter().flat_map(|latest| (now..=latest).rev());
            let found = later.find(|start| on_grid(start) && fits(start));
            layout.starts[show.task] = found.unwrap_or(now);
        }
        layout
    }
}

impl ClassDraft {
    /// Numbers groups that are alike by when they begin: the first to begin is the first.
    /// Only names change places.
    fn renumber(&self, layout: &Layout) -> Layout {
        let alike = self.problem.alike.first().map_or(0, Vec::len);
        let tasks: Vec<Vec<usize>> = (0..u32::try_from(alike).unwrap_or(0))
            .map(|group| {
                let own = self.units.iter().filter(|unit| unit.who.is_in(group));
                own.flat_map(|unit| unit.strand.tasks.clone()).collect()
            })
            .collect();
        if tasks.iter().any(|own| own.len() != tasks[0].len()) {
            return layout.clone();
        }
        let starts = |own: &Vec<usize>| -> Vec<i32> {
            own.iter().map(|task| layout.starts[*task]).collect()
        };
        let mut order: Vec<&Vec<usize>> = tasks.iter().collect();
        order.sort_by_key(|own| starts(own));
        let mut bakes = BTreeMap::new();
        for (at, bake) in self.problem.ovens.bakes.iter().enumerate() {
            bakes.insert(bake.task, at);
        }
        let mut renumbered = layout.clone();
        for (to, from) in tasks.iter().zip(order) {
            for (to, from) in to.iter().zip(from) {
                renumbered.starts[*to] = layout.starts[*from];
                if let (Some(to), Some(from)) = (bakes.get(to), bakes.get(from)) {
                    renumbered.ovens[*to] = layout.ovens[*from];
                }
            }
        }
        if self.problem.broken(&renumbered).is_empty() {
            renumbered
        } else {
            layout.clone()
        }
    }
}

/// The sessions in minutes; two that touch are one.
fn sessions(class: &Class, clock: &Clock) -> Result<Vec<(i32, i32)>, Unclear> {
    let mut sessions: Vec<(i32, i32)> = Vec::new();
    for session in &class.sessions {
        let minute = |at| clock.minute(at).ok_or(Unclear::Session);
        let (from, to) = (minute(session.value.from)?, minute(session.value.to)?);
        match sessions.last_mut() {
            Some(last) if from < last.1 => return Err(Unclear::Overlap),
            Some(last) if from == last.1 => last.1 = to,
            _ => sessions.push((from, to)),
        }
    }
    Ok(sessions)
}

struct Drafting<'a> {
    class: &'a Class,
    book: Book<'a>,
    draft: ClassDraft,
    pools: BTreeMap<PoolName, Pool>,
    stores: BTreeMap<String, Store>,
}

impl Drafting<'_> {
    fn room(&self) -> Room {
        let course = self.book.content.course.as_ref();
        let trays = self
            .class
            .count("tray per oven")
            .or(course.and_then(|course| course.kit.trays_per_oven));
        let trays = trays.map_or(TRAYS, |trays| i32::try_from(trays).unwrap_or(TRAYS));
        Room { trays_per_oven: trays.max(1), home: None }
    }

    fn batches(&mut self) -> Result<(), Unclear> {
        // Demonstrations first: the others watch.
        for each in [Each::Demonstration, Each::Group, Each::Baker] {
            let makes = self.class.makes.iter().enumerate();
            let own = makes.filter(|(_, making)| making.each == each);
            let works: Vec<(usize, Work)> = own
                .map(|(at, making)| Ok((at, scaled(making, self.book)?)))
                .collect::<Result<_, Unclear>>()?;
            for bundle in bundles(&works) {
                self.making(each, &bundle)?;
            }
        }
        // A group's batches stand together, group by group.
        self.draft.units.sort_by_key(|unit| match unit.who {
            Who::Instructor | Who::Home => (0, 0, unit.making, 0),
            Who::Group(group) => (1, group, unit.making, 0),
            Who::Baker(group, baker) => (1, group, unit.making, baker),
        });
        Ok(())
    }

    /// Adds what somebody makes together: one recipe, or several that share a dough.
    fn making(&mut self, each: Each, bundle: &[&(usize, Work)]) -> Result<(), Unclear> {
        let groups = 0..self.class.groups();
        let makers: Vec<Who> = match each {
            Each::Demonstration => vec![Who::Instructor],
            Each::Group => groups.map(Who::Group).collect(),
            Each::Baker => groups
                .flat_map(|group| {
                    (0..self.class.members(group))
                        .map(move |baker| Who::Baker(group, baker))
                })
                .collect(),
        };
        makers.into_iter().try_for_each(|who| self.batch(bundle, who))
    }

    fn batch(&mut self, bundle: &[&(usize, Work)], who: Who) -> Result<(), Unclear> {
        let room = self.room();
        let works: Vec<&Work> = bundle.iter().map(|(_, work)| work).collect();
        let strand = strand(&works, room, &mut self.draft.problem, self.book)
            .ok_or(Unclear::Ring)?;
        let steps = strand.steps.iter().map(|step| &step.recipe);
        for name in steps.chain(&strand.recipes) {
            let title = self.book.content.recipe(name).map(|it| it.title.value.clone());
            self.draft.titles.entry(name.clone()).or_insert(title.unwrap_or_default());
        }
        let making = bundle.first().map_or(0, |(at, _)| *at);
        self.draft.units.push(Unit { making, who, strand });
        Ok(())
    }

    /// Everything that batches share.
    fn shared(&mut self) {
        let units = std::mem::take(&mut self.draft.units);
        for unit in &units {
            for step in &unit.strand.steps {
                self.step(unit.who, step);
            }
            self.draft.problem.units.push(unit.strand.tasks.clone());
        }
        self.draft.units = units;
    }

    fn step(&mut self, who: Who, step: &StepPlan) {
        if let Some(hands) = step.hands {
            self.crew(who, hands, self.hands(who));
            for (count, name) in &step.kit {
                self.kit(who, name, *count, hands);
            }
            if step.rolls {
                self.use_kit(BENCH, 1, hands, 0);
            }
        }
        for (bake, trays) in &step.bakes {
            if let Some(oven) = &step.oven {
                self.bake(*bake, *trays, oven.dial());
            }
        }
        let places = [step.place.as_deref(), step.hold_place.as_deref()];
        let mut places: Vec<&str> = places.into_iter().flatten().collect();
        places.dedup();
        for place in places {
            self.stays(place, step);
        }
    }

    /// How many pairs of hands a batch's maker has: all of a group, or one baker's.
    fn hands(&self, who: Who) -> u32 {
        match who {
            Who::Instructor | Who::Baker(..) | Who::Home => 1,
            Who::Group(group) => self.class.members(group),
        }
    }

    fn crew(&mut self, who: Who, task: usize, hands: u32) {
        let (name, capacity) = match who {
            Who::Instructor => {
                (PoolName::Instructor, self.class.count(INSTRUCTOR).unwrap_or(1))
            }
            Who::Group(group) | Who::Baker(group, _) => {
                (PoolName::Group(group), self.class.members(group))
            }
            Who::Home => (PoolName::Home, 1),
        };
        let amount = i32::try_from(hands).unwrap_or(1);
        self.pool(name, capacity, Use { task, amount, after: 0 });
    }

    fn pool(&mut self, name: PoolName, capacity: u32, of: Use) {
        let capacity = i32::try_from(capacity).unwrap_or(i32::MAX);
        self.pools
            .entry(name)
            .or_insert_with(|| Pool { capacity, uses: Vec::new() })
            .uses
            .push(of);
    }

    /// Kit by the name on a ticket: `2 mixers` is `mixer` in the class's list. A teacher on
    /// a ticket is the class's own.
    fn kit(&mut self, who: Who, name: &str, count: u32, task: usize) {
        let name = one_of(name);
        if name == INSTRUCTOR {
            // In the instructor's own batch one is there already.
            let more =
                if who == Who::Instructor { count.saturating_sub(1) } else { count };
            if more > 0 {
                self.crew(Who::Instructor, task, more);
            }
            return;
        }
        let after = whole(&self.class.changeover);
        self.use_kit(&name, count, task, after);
    }

    fn use_kit(&mut self, name: &str, count: u32, task: usize, after: i32) {
        let Some(capacity) = self.class.count(name) else {
            return self.uncounted(name);
        };
        let amount = i32::try_from(count).unwrap_or(i32::MAX);
        self.pool(PoolName::Kit(name.to_owned()), capacity, Use { task, amount, after });
    }

    /// Benches are nobody's concern where the class does not count them.
    fn uncounted(&mut self, name: &str) {
        let known = self.draft.uncounted.iter().any(|known| known == name);
        if name != BENCH && !known {
            self.draft.uncounted.push(name.to_owned());
        }
    }

    fn bake(&mut self, task: usize, trays: i32, dial: Temperature) {
        let Some(count) = self.class.count("oven") else {
            return self.uncounted("oven");
        };
        let heats = &mut self.draft.heats;
        let heat = heats.iter().position(|known| *known == dial).unwrap_or_else(|| {
            heats.push(dial);
            heats.len() - 1
        });
        let trays_per_oven = self.room().trays_per_oven;
        let after = whole(&self.class.changeover);
        let ovens = &mut self.draft.problem.ovens;
        let bakes = std::mem::take(&mut ovens.bakes);
        *ovens = Ovens { count: count as usize, trays: trays_per_oven, after, bakes };
        let heat = i32::try_from(heat).unwrap_or(0);
        ovens.bakes.push(Bake { task, trays, heat, oven: None });
    }

    fn stays(&mut self, place: &str, step: &StepPlan) {
        let Some(capacity) = self.class.count(&format!("{place} tray")) else { return };
        let capacity = i32::try_from(capacity).unwrap_or(i32::MAX);
        let store = self
            .stores
            .entry(place.to_owned())
            .or_insert_with(|| Store { capacity, stays: Vec::new() });
        // What comes out of several oven loads stands there load by load.
        let each = step.trays / i32::try_from(step.stays.len().max(1)).unwrap_or(1);
        store.stays.extend(step.stays.iter().map(|link| (*link, each.max(1))));
    }

    /// What is shown comes before each group's first such step, and the groups watch.
    fn demonstrations(&mut self) {
        let mut wanted: Vec<(String, String)> = Vec::new();
        for unit in self.draft.units.iter().filter(|unit| unit.who != Who::Instructor) {
            for step in &unit.strand.steps {
                let named =
                    self.class.demonstrate.iter().any(|name| name.value == step.step);
                let name = (step.recipe.clone(), step.step.clone());
                if named && step.hands.is_some() && !wanted.contains(&name) {
                    wanted.push(name);
                }
            }
        }
        for (recipe, step) in wanted {
            let Some(task) = self.shown(&recipe, &step) else { continue };
            self.watch(task, &recipe, &step);
        }
    }

    /// The task in which a step is shown: the instructor's own batch, or one for itself.
    fn shown(&mut self, recipe: &str, step: &str) -> Option<usize> {
        let same = |of: &&StepPlan| of.recipe == recipe && of.step == step;
        let find = |instructor: bool| {
            let units = self.draft.units.iter();
            let units = units.filter(|unit| (unit.who == Who::Instructor) == instructor);
            units.flat_map(|unit| &unit.strand.steps).find(same)
        };
        if let Some(task) = find(true).and_then(|step| step.hands) {
            return Some(task);
        }
        let (title, like) = find(false).map(|step| (step.title.clone(), step.hands))?;
        let task = self.draft.problem.tasks[like?].clone();
        self.draft.problem.tasks.push(task);
        let task = self.draft.problem.tasks.len() - 1;
        self.crew(Who::Instructor, task, 1);
        let (recipe, step) = (recipe.to_owned(), step.to_owned());
        self.draft.shows.push(Show { recipe, step, title, task });
        self.draft.problem.units.insert(0, vec![task]);
        Some(task)
    }

    fn watch(&mut self, shown: usize, recipe: &str, step: &str) {
        let mut watching: Vec<u32> = Vec::new();
        let mut links = Vec::new();
        for unit in &self.draft.units {
            let (Who::Group(group) | Who::Baker(group, _)) = unit.who else { continue };
            let steps = unit.strand.steps.iter();
            for own in steps.filter(|own| own.recipe == recipe && own.step == step) {
                watching.push(group);
                links.extend(own.hands.map(|to| Link {
                    from: shown,
                    to,
                    least: 0,
                    usual: None,
                    most: None,
                    crosses: true,
                }));
            }
        }
        watching.dedup();
        self.draft.problem.links.extend(links);
        for group in watching {
            self.crew(Who::Group(group), shown, self.class.members(group));
        }
    }

    /// Each group begins when the class opens, or as soon after as can be: what comes later
    /// counts as waiting.
    fn opening(&mut self) {
        let problem = &mut self.draft.problem;
        let Some((from, _)) = problem.sessions.first().copied() else { return };
        problem.tasks.push(Task { minutes: 0, starts: vec![(from, from)], grid: 1 });
        let opening = problem.tasks.len() - 1;
        problem.units.insert(0, vec![opening]);
        self.draft.opening = opening;
        for group in 0..self.class.groups() {
            let own = self.draft.units.iter().find(|unit| unit.who.is_in(group));
            let Some(first) = own.and_then(|unit| unit.strand.tasks.first()) else {
                continue;
            };
            self.draft.problem.links.push(Link {
                from: opening,
                to: *first,
                least: 0,
                usual: Some(0),
                most: None,
                crosses: true,
            });
        }
    }

    /// Batches that are made alike; and of groups of the same number of bakers, who do the
    /// same, the first tasks in order.
    fn alike(&mut self) {
        let units = &self.draft.units;
        let tasks = |making: usize| -> Vec<Vec<usize>> {
            let own = units.iter().filter(|unit| unit.making == making);
            own.filter(|unit| unit.who != Who::Instructor)
                .map(|unit| unit.strand.tasks.clone())
                .collect()
        };
        let makings = 0..self.class.makes.len();
        self.draft.problem.families =
            makings.map(tasks).filter(|batches| !batches.is_empty()).collect();
        let full = (0..self.class.groups())
            .filter(|group| self.class.members(*group) == self.class.members(0));
        let first = |group: u32| {
            let own = self.draft.units.iter().find(|unit| unit.who.is_in(group));
            own?.strand.tasks.first().copied()
        };
        let alike: Vec<usize> = full.filter_map(first).collect();
        self.draft.problem.alike = vec![alike];
    }

    fn finish(mut self) -> ClassDraft {
        for (name, pool) in self.pools {
            self.draft.pools.push(name);
            self.draft.problem.pools.push(pool);
        }
        for (place, store) in self.stores {
            self.draft.stores.push(place);
            self.draft.problem.stores.push(store);
        }
        self.draft
    }
}

/// What somebody makes together: entries of the class's list, each with its work.
type Bundle<'w, 'b> = Vec<&'w (usize, Work<'b>)>;

/// What is made together: recipes that include the same dough.
fn bundles<'w, 'b>(works: &'w [(usize, Work<'b>)]) -> Vec<Bundle<'w, 'b>> {
    let mut bundles: Vec<(BTreeSet<&str>, Bundle)> = Vec::new();
    for one in works {
        let jobs = one.1.timing.iter().flat_map(|timing| &timing.jobs);
        let own = one.1.recipe.name.as_str();
        let mut doughs: BTreeSet<&str> =
            jobs.map(|job| job.recipe.as_str()).filter(|recipe| *recipe != own).collect();
        let mut bundle = vec![one];
        let twice =
            |with: &[&(usize, Work)]| with.iter().any(|it| it.1.recipe.name == own);
        while let Some(at) = bundles
            .iter()
            .position(|(known, with)| !known.is_disjoint(&doughs) && !twice(with))
        {
            let (more, mut with) = bundles.remove(at);
            doughs.extend(more);
            with.append(&mut bundle);
            bundle = with;
        }
        bundles.push((doughs, bundle));
    }
    bundles.into_iter().map(|(_, bundle)| bundle).collect()
}

/// Whole minutes, rounded up.
fn whole(duration: &Duration) -> i32 {
    i32::try_from(duration.whole_minutes()).unwrap_or(i32::MAX / 64)
}
