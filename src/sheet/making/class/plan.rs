//! A plan put into words: rows by the clock, what stands where, and the form for programs.

use std::collections::BTreeMap;

use crate::measure::{Mass, Temperature, show};
use crate::model::Location;
use crate::plan::{
    Activity, Caveat, Kind, Left, Pause, PoolName, Row, SharedDough, StepName, Timetable,
    Together, Who,
};
use crate::words::Words;

use super::super::super::Units;
use super::super::super::class::{
    ActivityFact, LineSheet, LinkFact, ObjectiveFact, OvensFact, PlanSheet, PoolFact,
    SharedFact, Span, StoreFact, WaitFact,
};
use super::super::kit::place_words;
use super::super::round;
use super::chart::chart;
use super::evening::now_fact;
use super::names::Names;
use super::reasons::{note, reason, remedy, standing};

/// What an oven's trays are called among what an activity uses.
const OVEN_TRAY: &str = "oven tray";

/// What puts a plan into words.
#[derive(Clone, Copy)]
pub(super) struct Voice<'a> {
    pub(super) plan: &'a Timetable,
    pub(super) names: Names<'a>,
    pub(super) words: &'a Words,
    pub(super) units: Units,
}

impl<'a> Voice<'a> {
    pub(super) fn new(plan: &'a Timetable, words: &'a Words, units: Units) -> Self {
        Self { plan, names: Names::new(plan.together, words), words, units }
    }

    /// The time of day of a minute: `18:30`.
    pub(super) fn time(&self, minute: i32) -> String {
        let at = self.plan.clock.local(minute);
        self.words.clock(at.hour(), at.minute())
    }

    /// The day of a minute in full: `Tuesday 2 March 2027`.
    pub(super) fn day(&self, minute: i32) -> String {
        self.words.day(self.plan.clock.local(minute).date())
    }

    fn heat(&self, heat: &Temperature) -> String {
        self.units.of(&show::oven(heat, self.words)).to_owned()
    }

    /// Heat and ovens: `190 °C: oven 1 with 4 trays`.
    fn oven(&self, row: &Row) -> Option<String> {
        let heat = self.heat(row.heat.as_ref()?);
        if row.ovens.is_empty() {
            return Some(heat);
        }
        let with = |(oven, trays): &(usize, i32)| {
            let (number, count) = (oven.to_string(), trays.to_string());
            let values = [("oven", &*number), ("count", &*count)];
            self.words.fill("plan-oven", &values)
        };
        let ovens: Vec<String> = row.ovens.iter().map(with).collect();
        let values = [("heat", &*heat), ("ovens", &*self.words.list(&ovens))];
        Some(self.words.fill("plan-heat", &values))
    }

    /// What is done: the step's heading, and what else happens to it.
    fn what(&self, row: &Row) -> String {
        self.of(&row.recipe, self.deed(row))
    }

    /// The same with its recipe before it, where more than one is made.
    pub(super) fn of(&self, recipe: &str, what: String) -> String {
        match self.plan.titles.get(recipe) {
            Some(title) => {
                self.words.fill("plan-of", &[("recipe", title), ("what", &what)])
            }
            None => what,
        }
    }

    /// Where something stands.
    fn place(&self, place: Option<&Location>) -> Option<String> {
        place.map(|place| place_words(place, self.words))
    }

    fn deed(&self, row: &Row) -> String {
        let title = heading(row.step.as_ref());
        let moved = |key: &str| {
            let place = self.place(row.place.as_ref())?;
            Some(self.words.fill(key, &[("title", title), ("place", &place)]))
        };
        match row.kind {
            Kind::Finish => self.words.get("plan-done").to_owned(),
            Kind::Into | Kind::Move => moved("plan-into").unwrap_or(title.to_owned()),
            Kind::Out => moved("plan-out").unwrap_or(title.to_owned()),
            Kind::Hands
            | Kind::Bake
            | Kind::Moment
            | Kind::Demonstration
            | Kind::Rest => title.to_owned(),
            Kind::Arrival | Kind::Talk | Kind::Break | Kind::Tasting | Kind::Washing => {
                self.together(row.kind).unwrap_or(title).to_owned()
            }
            Kind::OvenOn => self.heated("plan-oven-on", row),
            Kind::OvenTo => self.heated("plan-oven-to", row),
        }
    }

    /// What everybody does together is called.
    pub(super) fn together(&self, kind: Kind) -> Option<&'a str> {
        Some(self.words.get(match kind.together()? {
            Together::Arrival => "plan-arrival",
            Together::Talk => "plan-talk",
            Together::Break => "plan-break",
            Together::Tasting => "plan-tasting",
            Together::Washing => "plan-washing",
        }))
    }

    /// Which ovens are set to which heat: `oven 1, 2 on: 190 °C`.
    fn heated(&self, key: &str, row: &Row) -> String {
        let ovens: Vec<String> =
            row.ovens.iter().map(|(oven, _)| oven.to_string()).collect();
        let count = ovens.len().to_string();
        let heat = row.heat.as_ref().map(|heat| self.heat(heat)).unwrap_or_default();
        let ovens = self.words.list(&ovens);
        let values = [("count", &*count), ("ovens", &*ovens), ("heat", &*heat)];
        self.words.fill(key, &values)
    }

    /// A row in words.
    pub(super) fn line(&self, row: &Row) -> LineSheet {
        let watching = &row.watching;
        LineSheet {
            day: self.day(row.from),
            date: self.plan.clock.local(row.from).date().to_string(),
            from_min: row.from,
            to_min: row.to,
            from: self.time(row.from),
            to: self.time(row.to),
            who: self.names.all(&row.who),
            what: self.what(row),
            oven: self.oven(row).filter(|_| row.kind == Kind::Bake),
            place: self.place(row.place.as_ref()).filter(|_| row.kind == Kind::Rest),
            kind: row.kind,
            people: row.who.iter().chain(watching).copied().collect(),
            watching: (!watching.is_empty()).then(|| self.names.all(watching)),
            check: None,
        }
    }

    /// What stands where when a session closes, what is the same at the same place together.
    fn left(&self, session: usize) -> Vec<[String; 4]> {
        let mut joined: Vec<(Left, Vec<Who>)> = Vec::new();
        for left in self.plan.overnight(session) {
            let same = |(it, _): &&mut (Left, Vec<Who>)| {
                (&it.place, &it.recipe, &it.step)
                    == (&left.place, &left.recipe, &left.step)
            };
            match joined.iter_mut().find(same) {
                Some((same, who)) => {
                    same.trays += left.trays;
                    // Two of the same dough are still one pair's.
                    if !who.contains(&left.who) {
                        who.push(left.who);
                    }
                }
                None => joined.push((left.clone(), vec![left.who])),
            }
        }
        let words = |(left, who): (Left, Vec<Who>)| {
            let what = self.of(&left.recipe, heading(left.step.as_ref()).to_owned());
            let place = self.place(left.place.as_ref()).unwrap_or_default();
            [place, self.names.all(&who), what, left.trays.to_string()]
        };
        joined.into_iter().map(words).collect()
    }

    fn activity(&self, id: usize, of: &Activity) -> ActivityFact {
        let task = &self.plan.problem.tasks[id];
        ActivityFact {
            id,
            group: self.names.one(of.deed.who),
            watching: of.watching.iter().map(|who| self.names.one(*who)).collect(),
            kind: of.kind,
            place: self.place(of.place.as_ref()),
            recipe: of.deed.recipe.clone(),
            step: name(of.deed.step.as_ref()).to_owned(),
            title: heading(of.deed.step.as_ref()).to_owned(),
            minutes: task.minutes,
            windows: task.starts.clone(),
            start_min: of.span.map(|span| span.0),
            end_min: of.span.map(|span| span.1),
            start: of.span.map(|span| self.plan.clock.stamp(span.0)),
            end: of.span.map(|span| self.plan.clock.stamp(span.1)),
            uses: self.uses(id, of),
            oven: of.oven,
            heat: of.heat.as_ref().map(|heat| show::oven(heat, self.words).metric),
        }
    }

    fn uses(&self, task: usize, of: &Activity) -> BTreeMap<String, i32> {
        let pools = self.plan.pools.iter().zip(&self.plan.problem.pools);
        let mut uses = BTreeMap::new();
        for (name, pool) in pools {
            for of in pool.uses.iter().filter(|of| of.task == task) {
                uses.insert(self.names.pool(name), of.amount);
            }
        }
        if of.trays > 0 {
            uses.insert(OVEN_TRAY.to_owned(), of.trays);
        }
        uses
    }

    fn wait(&self, wait: &Pause) -> WaitFact {
        WaitFact {
            group: self.names.one(wait.deed.who),
            recipe: wait.deed.recipe.clone(),
            step: name(wait.deed.step.as_ref()).to_owned(),
            title: heading(wait.deed.step.as_ref()).to_owned(),
            place: self.place(wait.place.as_ref()),
            trays: wait.trays,
            range_min: (wait.lag.least, wait.lag.usual, wait.lag.most),
            start_min: wait.span.map(|span| span.0),
            end_min: wait.span.map(|span| span.1),
            start: wait.span.map(|span| self.plan.clock.stamp(span.0)),
            end: wait.span.map(|span| self.plan.clock.stamp(span.1)),
            held: wait.is_held(),
        }
    }
}

/// The heading of a step; nothing for the finish.
fn heading(step: Option<&StepName>) -> &str {
    step.map_or("", |step| &step.title)
}

fn name(step: Option<&StepName>) -> &str {
    step.map_or("", |step| &step.name)
}

/// A plan in words, heats in `units`.
pub fn plan_sheet(plan: &Timetable, words: &Words, units: Units) -> PlanSheet {
    let voice = Voice::new(plan, words, units);
    let rows: Vec<LineSheet> = plan.rows().iter().map(|row| voice.line(row)).collect();
    let all = plan.activities.iter().enumerate();
    PlanSheet {
        timetable: 1,
        name: plan.name.clone(),
        title: plan.title.clone(),
        home: plan.home,
        zone: plan.clock.zone().map(str::to_owned),
        start: plan.clock.stamp(0),
        verdict: plan.verdict,
        best: plan.best,
        objective: objective(plan),
        standing: standing(plan, words),
        grid_min: plan.problem.grid,
        sessions: sessions(plan),
        activities: all.map(|(id, of)| voice.activity(id, of)).collect(),
        waits: plan.waits.iter().map(|wait| voice.wait(wait)).collect(),
        links: links(plan),
        pools: pools(plan, &voice.names),
        ovens: ovens(plan),
        stores: stores(plan, words),
        reasons: plan.reasons.iter().map(|it| reason(it, words)).collect(),
        remedies: plan
            .remedies
            .iter()
            .map(|it| remedy(it, &voice.names, words))
            .collect(),
        notes: plan.notes.iter().map(|it| note(it, &voice)).collect(),
        doughs: plan.notes.iter().filter_map(dough).collect(),
        clock: plan.clock.clone(),
        rests: plan.rests().iter().map(|row| voice.line(row)).collect(),
        left: (0..plan.problem.sessions.len()).map(|at| voice.left(at)).collect(),
        chart: chart(&voice, &rows),
        rows: voice.still_to_come(rows),
        now: plan.now.as_ref().map(|now| now_fact(&voice, now)),
    }
}

fn dough(note: &Caveat) -> Option<SharedFact> {
    let Caveat::Shared(dough) = note else { return None };
    Some(shared_fact(dough))
}

/// A dough that several take, in grams.
pub fn shared_fact(dough: &SharedDough) -> SharedFact {
    let grams = |mass: &Mass| round(mass.amount(), 2);
    let part = |(title, mass): &(String, Mass)| (title.clone(), grams(mass));
    SharedFact {
        recipe: dough.recipe.clone(),
        taken_g: grams(&dough.taken),
        mixed_g: grams(&dough.mixed),
        parts: dough.parts.iter().map(part).collect(),
    }
}

fn objective(plan: &Timetable) -> Vec<ObjectiveFact> {
    let fact = |of: &crate::plan::Objective| ObjectiveFact {
        name: of.counted,
        value: of.value,
        bound: of.bound,
    };
    plan.objective.iter().map(fact).collect()
}

fn sessions(plan: &Timetable) -> Vec<Span> {
    let span = |(from, to): &(i32, i32)| Span {
        from_min: *from,
        to_min: *to,
        from: plan.clock.stamp(*from),
        to: plan.clock.stamp(*to),
    };
    plan.problem.sessions.iter().map(span).collect()
}

fn links(plan: &Timetable) -> Vec<LinkFact> {
    let fact = |link: &crate::plan::Link| LinkFact {
        from: link.from,
        to: link.to,
        least_min: link.least,
        usual_min: link.usual,
        most_min: link.most,
        crosses: link.crosses,
    };
    plan.problem.links.iter().map(fact).collect()
}

fn pools(plan: &Timetable, names: &Names) -> Vec<PoolFact> {
    let fact = |(name, pool): (&PoolName, &crate::plan::Pool)| PoolFact {
        name: names.pool(name),
        capacity: pool.capacity,
        uses: pool.uses.iter().map(|of| (of.task, of.amount, of.after)).collect(),
    };
    plan.pools.iter().zip(&plan.problem.pools).map(fact).collect()
}

fn ovens(plan: &Timetable) -> OvensFact {
    let ovens = &plan.problem.ovens;
    OvensFact {
        count: ovens.count,
        trays: ovens.trays,
        after_min: ovens.after,
        turn_min: ovens.turn,
        bakes: ovens
            .bakes
            .iter()
            .map(|of| (of.task, of.trays, of.heat, of.phases))
            .collect(),
    }
}

fn stores(plan: &Timetable, words: &Words) -> Vec<StoreFact> {
    let fact = |(place, store): (&Location, &crate::plan::Store)| StoreFact {
        place: place_words(place, words),
        capacity: store.capacity,
        stays: store.stays.clone(),
    };
    plan.stores.iter().zip(&plan.problem.stores).map(fact).collect()
}
