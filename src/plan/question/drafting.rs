//! A class laid out: every group's batches, and what they share.

use std::collections::{BTreeMap, BTreeSet};

use jiff::ToSpan;
use jiff::civil::Date;

use crate::formula::Book;
use crate::measure::Duration;
use crate::model::{Class, Each, KitKind, KitUse, Location};
use crate::work::Work;

use super::batch_tasks::{BatchTasks, StepPlan, Venue, batch_tasks};
use super::class::{ClassBatch, ClassDraft, PoolName, Unclear, Who};
use super::days;
use super::problem::{Baking, Claim, Ovens, Pool, Store};
use super::stations::scaled;

/// Trays in one oven where neither class nor course says.
const TRAYS: i32 = 1;

/// A class that is being laid out.
pub(in crate::plan) struct Drafting<'a> {
    pub(in crate::plan) class: &'a Class,
    book: Book<'a>,
    pub(in crate::plan) draft: ClassDraft,
    pools: BTreeMap<PoolName, Pool>,
    stores: BTreeMap<Location, Store>,
}

impl<'a> Drafting<'a> {
    /// Begins with the sessions.
    pub(in crate::plan) fn new(
        class: &'a Class,
        book: Book<'a>,
        draft: ClassDraft,
    ) -> Self {
        Self { class, book, draft, pools: BTreeMap::new(), stores: BTreeMap::new() }
    }

    /// Lays out everything. What stays free at the end of a session is no time for any task.
    ///
    /// # Errors
    /// The reason, where recipes or steps are not clear.
    pub(in crate::plan) fn finished(mut self) -> Result<ClassDraft, Unclear> {
        let sessions = self.draft.problem.sessions.clone();
        let slack = self.class.besides.slack.as_ref();
        let slack = slack.map_or(0, |slack| whole(&slack.value));
        for (from, to) in &mut self.draft.problem.sessions {
            *to = (*to - slack).max(*from);
        }
        self.batches()?;
        self.shared();
        self.late();
        self.demonstrations();
        self.gatherings();
        self.alike();
        self.draft.problem.sessions = sessions;
        Ok(self.finish())
    }

    fn room(&self) -> Venue<'a> {
        let course = self.book.content.course.as_ref();
        let trays = self
            .class
            .count(&KitKind::TrayPerOven)
            .or(course.and_then(|course| course.kit.trays_per_oven));
        let trays = trays.map_or(TRAYS, |trays| i32::try_from(trays).unwrap_or(TRAYS));
        Venue { trays_per_oven: trays.max(1), home: None, pace: None }
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
            Who::Instructor | Who::Helper | Who::Home => (0, 0, unit.making, 0),
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
        // Who shows a recipe works at its own pace.
        let pace = (who != Who::Instructor).then_some(&self.class.besides.pace);
        let room = Venue { pace, ..self.room() };
        let works: Vec<&Work> = bundle.iter().map(|(_, work)| work).collect();
        let batch = batch_tasks(&works, room, &mut self.draft.problem, self.book)
            .ok_or(Unclear::Ring)?;
        self.keep_days(&batch);
        let steps = batch.steps.iter().map(|step| &step.recipe);
        for name in steps.chain(&batch.recipes) {
            let title = self.book.content.recipe(name).map(|it| it.title.value.clone());
            self.draft.titles.entry(name.clone()).or_insert(title.unwrap_or_default());
        }
        let making = bundle.first().map_or(0, |(at, _)| *at);
        self.draft.units.push(ClassBatch { making, who, batch });
        Ok(())
    }

    /// What a recipe has on its days is done on the class's, in order, where the class has as
    /// many days of sessions; with fewer everything is done when it can be.
    fn keep_days(&mut self, batch: &BatchTasks) {
        let named = days::named(batch);
        let mut dates: Vec<Date> =
            self.class.sessions.iter().map(|it| it.value.from.date()).collect();
        dates.dedup();
        let Some(spare) = dates.len().checked_sub(named.len()) else { return };
        let clock = self.draft.clock.clone();
        let day = |day: u64| {
            let at = named.iter().position(|named| *named == day)?;
            let (first, last) = (dates[at], dates[at + spare]);
            let midnight = |date: Date| clock.minute_after(date.at(0, 0, 0, 0));
            // A session that ends after midnight is of the day on which it began.
            let next = dates.get(at + spare + 1).copied();
            let end = next.or_else(|| last.checked_add(2.days()).ok())?;
            Some((midnight(first)?, midnight(end)?))
        };
        days::keep(batch, &mut self.draft.problem, day);
    }

    /// Everything that batches share.
    fn shared(&mut self) {
        let units = std::mem::take(&mut self.draft.units);
        for unit in &units {
            for step in &unit.batch.steps {
                self.step(unit.who, step);
            }
            self.draft.problem.units.push(unit.batch.tasks.clone());
        }
        self.draft.units = units;
    }

    fn step(&mut self, who: Who, step: &StepPlan) {
        if let Some(hands) = step.hands {
            self.crew(who, hands, self.hands(who));
            for kit in &step.kit {
                self.kit(who, kit, hands);
            }
            if step.rolls {
                // A bench is wiped while one works: it is handed on at once, unless the class
                // says otherwise.
                let after = self.class.changeover.named(&KitKind::BenchPlace);
                let after = after.map_or(0, whole);
                self.use_kit(&KitKind::BenchPlace, 1, hands, after);
            }
        }
        let bakes = self.draft.heats.bakes(step);
        if !bakes.is_empty() {
            self.bake(bakes);
        }
        let places = [step.place.as_ref(), step.hold_place.as_ref()];
        let mut places: Vec<&Location> = places.into_iter().flatten().collect();
        places.dedup();
        for place in places {
            self.stays(place, step);
        }
    }

    /// How many pairs of hands a batch's maker has: all of a group, or one baker's.
    fn hands(&self, who: Who) -> u32 {
        match who {
            Who::Instructor | Who::Helper | Who::Baker(..) | Who::Home => 1,
            Who::Group(group) => self.class.members(group),
        }
    }

    /// How many teach.
    pub(in crate::plan) fn instructors(&self) -> u32 {
        self.class.count(&KitKind::Instructor).unwrap_or(1)
    }

    pub(in crate::plan) fn crew(&mut self, who: Who, task: usize, hands: u32) {
        let (name, capacity) = match who {
            Who::Instructor => {
                self.staff(task, hands);
                (PoolName::Instructor, self.instructors())
            }
            Who::Helper => return self.staff(task, hands),
            Who::Group(group) | Who::Baker(group, _) => {
                (PoolName::Group(group), self.class.members(group))
            }
            Who::Home => (PoolName::Home, 1),
        };
        let amount = i32::try_from(hands).unwrap_or(1);
        self.pool(name, capacity, Claim { task, amount, after: 0 });
    }

    /// Someone who teaches or helps; without helpers the instructors are all that there is.
    fn staff(&mut self, task: usize, hands: u32) {
        let helpers = self.class.besides.helpers;
        if helpers > 0 {
            let amount = i32::try_from(hands).unwrap_or(1);
            let all = self.instructors() + helpers;
            self.pool(PoolName::Staff, all, Claim { task, amount, after: 0 });
        }
    }

    fn pool(&mut self, name: PoolName, capacity: u32, of: Claim) {
        let capacity = i32::try_from(capacity).unwrap_or(i32::MAX);
        self.pools
            .entry(name)
            .or_insert_with(|| Pool { capacity, uses: Vec::new() })
            .uses
            .push(of);
    }

    /// Kit on a ticket. A teacher on a ticket is the class's own.
    fn kit(&mut self, who: Who, kit: &KitUse, task: usize) {
        let KitUse { count, kind, .. } = kit;
        let count = *count;
        if *kind == KitKind::Instructor {
            // In the instructor's own batch one is there already.
            let more =
                if who == Who::Instructor { count.saturating_sub(1) } else { count };
            // One who helps will do for a group's step.
            let helped = self.class.besides.helpers > 0;
            let whose = if helped { Who::Helper } else { Who::Instructor };
            if more > 0 {
                self.crew(whose, task, more);
            }
            return;
        }
        let after = whole(self.class.changeover.of(kind));
        self.use_kit(kind, count, task, after);
    }

    fn use_kit(&mut self, kind: &KitKind, count: u32, task: usize, after: i32) {
        let Some(capacity) = self.class.count(kind) else {
            return self.uncounted(kind);
        };
        let amount = i32::try_from(count).unwrap_or(i32::MAX);
        self.pool(PoolName::Kit(kind.clone()), capacity, Claim { task, amount, after });
    }

    /// Benches are nobody's concern where the class does not count them.
    fn uncounted(&mut self, kind: &KitKind) {
        let known = self.draft.uncounted.contains(kind);
        if *kind != KitKind::BenchPlace && !known {
            self.draft.uncounted.push(kind.clone());
        }
    }

    fn bake(&mut self, more: Vec<Baking>) {
        let Some(count) = self.class.count(&KitKind::Oven) else {
            return self.uncounted(&KitKind::Oven);
        };
        let trays_per_oven = self.room().trays_per_oven;
        let after = whole(self.class.changeover.of(&KitKind::Oven));
        let turn = self.class.besides.reheat.as_ref().map_or(0, whole);
        let ovens = &mut self.draft.problem.ovens;
        let mut bakes = std::mem::take(&mut ovens.bakes);
        bakes.extend(more);
        let count = count as usize;
        *ovens = Ovens { count, trays: trays_per_oven, after, turn, bakes };
    }

    fn stays(&mut self, place: &Location, step: &StepPlan) {
        let trays = KitKind::Trays(place.clone());
        let Some(capacity) = self.class.count(&trays) else { return };
        let capacity = i32::try_from(capacity).unwrap_or(i32::MAX);
        let store = self
            .stores
            .entry(place.clone())
            .or_insert_with(|| Store { capacity, stays: Vec::new() });
        // What comes out of several oven loads stands there load by load.
        let each = step.trays / i32::try_from(step.stays.len().max(1)).unwrap_or(1);
        store.stays.extend(step.stays.iter().map(|link| (*link, each.max(1))));
    }

    /// Batches that are made alike, from the same time on; and of groups of the same number of
    /// bakers, who do the same, the first tasks in order.
    fn alike(&mut self) {
        let class = self.class;
        let late = |who: Who| match who {
            Who::Group(group) | Who::Baker(group, _) => class.late(group),
            Who::Instructor | Who::Helper | Who::Home => 0,
        };
        let mut families: BTreeMap<(usize, u64), Vec<Vec<usize>>> = BTreeMap::new();
        let units = self.draft.units.iter();
        for unit in units.filter(|unit| unit.who != Who::Instructor) {
            let own = families.entry((unit.making, late(unit.who))).or_default();
            own.push(unit.batch.tasks.clone());
        }
        self.draft.problem.families = families.into_values().collect();
        let kind = |group: u32| (class.members(group), class.late(group));
        let alike = (0..class.groups()).filter(|group| kind(*group) == kind(0));
        self.draft.alike = alike.collect();
        let first = |group: &u32| {
            let own = self.draft.units.iter().find(|unit| unit.who.is_in(*group));
            own?.batch.tasks.first().copied()
        };
        self.draft.problem.alike =
            vec![self.draft.alike.iter().filter_map(first).collect()];
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

/// Whole minutes, rounded up.
pub(in crate::plan) fn whole(duration: &Duration) -> i32 {
    i32::try_from(duration.whole_minutes()).unwrap_or(i32::MAX / 64)
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
