//! What everybody does together beside the recipes: arrival, talks, breaks, washing up,
//! tasting; and when each group's work begins.

use std::collections::BTreeMap;

use crate::model::{Break, When};

use super::class::{ClassBatch, Who};
use super::drafting::{Drafting, whole};
use super::kind::{Kind, Together};
use super::problem::{Link, Task};

/// Something that everybody does together.
#[derive(Clone, Debug)]
pub struct Gathering {
    /// What.
    pub kind: Kind,
    /// The task.
    pub task: usize,
    /// The groups that take part.
    pub groups: Vec<u32>,
}

impl Gathering {
    /// Whether it is called so in what is said of an evening, or begins so.
    pub(in crate::plan) fn is_named(&self, said: &str) -> bool {
        let Some(together) = self.kind.together() else { return false };
        let name = match together {
            Together::Arrival => "arrival",
            Together::Talk => "talk",
            Together::Break => "break",
            Together::Tasting => "tasting",
            Together::Washing => "washing up",
        };
        let said = said.trim().to_lowercase().replace('-', " ");
        !said.is_empty() && name.starts_with(&said)
    }
}

/// Whether one of those who teach takes part, or all of them and their helpers.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Staff {
    One,
    All,
}

impl Drafting<'_> {
    /// Everything that is done together, and the openings.
    pub(in crate::plan) fn gatherings(&mut self) {
        let work_from = self.arrivals();
        self.openings(work_from);
        self.talks();
        self.breaks();
        self.tasting();
        self.washing();
    }

    /// Sessions with which a day begins.
    fn mornings(&self) -> Vec<(i32, i32)> {
        let clock = &self.draft.clock;
        let day = |span: &(i32, i32)| clock.local(span.0).date();
        let sessions = &self.draft.problem.sessions;
        let first =
            |at: &usize| *at == 0 || day(&sessions[at - 1]) != day(&sessions[*at]);
        (0..sessions.len()).filter(first).map(|at| sessions[at]).collect()
    }

    /// Who comes late begins nothing on any day before they are there.
    pub(in crate::plan) fn late(&mut self) {
        for group in 0..self.class.groups() {
            let late = self.class.late(group);
            let own = self.draft.units.iter().filter(|unit| unit.who.is_in(group));
            let tasks: Vec<usize> =
                own.flat_map(|unit| unit.batch.tasks.clone()).collect();
            self.not_before(&tasks, late);
        }
    }

    /// These tasks begin no sooner than so many minutes after a day opens.
    pub(in crate::plan) fn not_before(&mut self, tasks: &[usize], late: u64) {
        let late = i32::try_from(late).unwrap_or(i32::MAX / 64);
        let mornings = self.mornings();
        for task in tasks.iter().filter(|_| late > 0) {
            let starts = &mut self.draft.problem.tasks[*task].starts;
            for (from, to) in starts.iter_mut() {
                let own = mornings
                    .iter()
                    .find(|morning| *from >= morning.0 && *to <= morning.1);
                if let Some((opens, _)) = own {
                    *from = (*from).max(opens + late);
                }
            }
            starts.retain(|(from, to)| from <= to);
        }
    }

    /// Adds what everybody who is there does together.
    fn gather(
        &mut self,
        kind: Kind,
        minutes: i32,
        starts: Vec<(i32, i32)>,
        staff: Staff,
    ) -> usize {
        let opens = self.draft.problem.sessions.first().map_or(0, |first| first.0);
        let first = starts.first().map_or(0, |first| first.0);
        self.draft.problem.tasks.push(Task { minutes, starts, grid: 1 });
        let task = self.draft.problem.tasks.len() - 1;
        let mut groups = Vec::new();
        for group in 0..self.class.groups() {
            // Who is not there yet misses what is not held up for them.
            let fixed = kind.together().is_some_and(Together::is_fixed);
            let late = i32::try_from(self.class.late(group)).unwrap_or(i32::MAX / 64);
            let missed = fixed && self.misses(first, minutes, late, opens);
            if !missed {
                groups.push(group);
                self.crew(Who::Group(group), task, self.class.members(group));
            }
        }
        let all = self.instructors();
        let count = if staff == Staff::All { all } else { all.min(1) };
        if count > 0 {
            self.crew(Who::Instructor, task, count);
        }
        if staff == Staff::All && self.class.besides.helpers > 0 {
            self.crew(Who::Helper, task, self.class.besides.helpers);
        }
        self.draft.gatherings.push(Gathering { kind, task, groups });
        let problem = &mut self.draft.problem;
        problem.units.insert(problem.gathered.len(), vec![task]);
        problem.gathered.push(task);
        task
    }

    /// Whether who comes so late misses something that begins at a fixed minute of a morning.
    fn misses(&self, first: i32, minutes: i32, late: i32, opens: i32) -> bool {
        let morning = self.mornings().into_iter().rev().find(|own| own.0 <= first);
        let comes = morning.map_or(opens, |own| own.0) + late;
        comes >= first + minutes
    }

    /// The first minutes of each day; gives the minute from which there is work on the first.
    fn arrivals(&mut self) -> i32 {
        let mornings = self.mornings();
        let opens = mornings.first().map_or(0, |first| first.0);
        let Some(minutes) = self.class.besides.arrival.as_ref().map(whole) else {
            return opens;
        };
        for (from, _) in mornings {
            self.gather(Kind::Arrival, minutes, vec![(from, from)], Staff::One);
        }
        opens + minutes
    }

    /// Each group begins when the class opens, or as soon after as can be: what comes later
    /// counts as waiting.
    fn openings(&mut self, mut work_from: i32) {
        let first = self.draft.gatherings.first();
        let mut opened = first.map(|arrival| arrival.task);
        let opens = self.draft.problem.sessions.first().map_or(0, |first| first.0);
        for talk in self.class.besides.talks.iter().filter(|talk| talk.before.is_none()) {
            let minutes = whole(&talk.lasts);
            let starts = vec![(work_from, work_from)];
            let task = self.gather(Kind::Talk, minutes, starts, Staff::One);
            if let Some(before) = opened {
                self.link(before, task);
            }
            opened = Some(task);
            work_from += minutes;
        }
        let told = self.draft.gatherings.iter().find(|of| Some(of.task) == opened);
        let told = told.map(|of| (of.task, of.groups.clone()));
        let mut moments = BTreeMap::new();
        for group in 0..self.class.groups() {
            let own = self.draft.units.iter().find(|unit| unit.who.is_in(group));
            let Some(first) = own.and_then(|unit| unit.batch.tasks.first().copied())
            else {
                continue;
            };
            if let Some((told, _)) = told.as_ref().filter(|of| of.1.contains(&group)) {
                self.link(*told, first);
            }
            let late = i32::try_from(self.class.late(group)).unwrap_or(i32::MAX / 64);
            let at = work_from.max(opens.saturating_add(late));
            let problem = &mut self.draft.problem;
            let from = *moments.entry(at).or_insert_with(|| {
                problem.tasks.push(Task { minutes: 0, starts: vec![(at, at)], grid: 1 });
                problem.units.insert(0, vec![problem.tasks.len() - 1]);
                problem.tasks.len() - 1
            });
            self.draft.problem.links.push(Link {
                from,
                to: first,
                least: 0,
                usual: Some(0),
                most: None,
                crosses: true,
            });
        }
    }

    /// What is told before a step.
    fn talks(&mut self) {
        let class = self.class;
        for talk in &class.besides.talks {
            let Some(step) = &talk.before else { continue };
            let units =
                self.draft.units.iter().filter(|unit| unit.who != Who::Instructor);
            let mut recipes: Vec<String> = units
                .flat_map(|unit| &unit.batch.steps)
                .filter(|own| own.step == step.value && own.hands.is_some())
                .map(|own| own.recipe.clone())
                .collect();
            recipes.sort_unstable();
            recipes.dedup();
            if recipes.is_empty() {
                continue;
            }
            let task = self.draft.problem.task(whole(&talk.lasts));
            let groups = (0..self.class.groups()).collect();
            self.draft.gatherings.push(Gathering { kind: Kind::Talk, task, groups });
            self.draft.problem.units.insert(0, vec![task]);
            if self.instructors() > 0 {
                self.crew(Who::Instructor, task, 1);
            }
            for recipe in recipes {
                self.watch(task, &recipe, &step.value);
            }
        }
    }

    fn breaks(&mut self) {
        let class = self.class;
        for one in &class.besides.breaks {
            let minutes = whole(&one.lasts);
            for session in self.draft.problem.sessions.clone() {
                let Some(start) = self.window(one, minutes, session) else { continue };
                self.gather(Kind::Break, minutes, vec![start], Staff::All);
            }
        }
    }

    /// When a break may begin in a session.
    fn window(
        &self,
        one: &Break,
        minutes: i32,
        session: (i32, i32),
    ) -> Option<(i32, i32)> {
        let (from, to) = session;
        if one.when == When::Middle {
            let quarter = (to - from) / 4;
            let (first, last) = (from + quarter, to - quarter - minutes);
            return (first <= last).then_some((first, last));
        }
        // A session over midnight has the times of two days.
        let days = [from, to].map(|minute| self.draft.clock.local(minute).date());
        days.into_iter().find_map(|day| {
            let at = |(hour, minute)| self.draft.clock.minute(day.at(hour, minute, 0, 0));
            let (first, last) = match one.when {
                When::At(hour, minute) => {
                    let at = at((hour, minute))?;
                    (at, at)
                }
                When::Between(first, last) => {
                    (at(first)?.max(from), at(last)?.min(to) - minutes)
                }
                When::Middle => return None,
            };
            let inside = first >= from && last + minutes <= to && first <= last;
            inside.then_some((first, last))
        })
    }

    /// All of it is tasted when all of it is done.
    fn tasting(&mut self) {
        let Some(minutes) = self.class.besides.tasting.as_ref().map(whole) else {
            return;
        };
        let ends = self.draft.units.iter().flat_map(|unit| unit.batch.ends.clone());
        let ends: Vec<usize> = ends.collect();
        let starts = self.anywhere(minutes);
        let task = self.gather(Kind::Tasting, minutes, starts, Staff::All);
        self.after(&ends, task);
    }

    /// The last minutes of each session but the last, and there when the last work is done.
    fn washing(&mut self) {
        let Some(minutes) = self.class.besides.washing.as_ref().map(whole) else {
            return;
        };
        let mut sessions = self.draft.problem.sessions.clone();
        let Some((from, to)) = sessions.pop() else { return };
        for (_, to) in sessions {
            let start = to - minutes;
            self.gather(Kind::Washing, minutes, vec![(start, start)], Staff::All);
        }
        let starts =
            if from <= to - minutes { vec![(from, to - minutes)] } else { Vec::new() };
        let task = self.gather(Kind::Washing, minutes, starts, Staff::All);
        let last: Vec<usize> = self.draft.units.iter().flat_map(last_work).collect();
        self.after(&last, task);
    }

    fn anywhere(&self, minutes: i32) -> Vec<(i32, i32)> {
        let sessions = self.draft.problem.sessions.iter();
        let open = sessions.map(|(from, to)| (*from, to - minutes));
        open.filter(|(from, to)| from <= to).collect()
    }

    /// One task comes after another.
    fn link(&mut self, from: usize, to: usize) {
        let link = Link { from, to, least: 0, usual: None, most: None, crosses: true };
        self.draft.problem.links.push(link);
    }

    /// A task comes after all of these.
    fn after(&mut self, tasks: &[usize], to: usize) {
        tasks.iter().for_each(|from| self.link(*from, to));
        // What comes last finds its place last.
        self.draft.problem.gathered.retain(|task| *task != to);
        self.draft.problem.units.retain(|unit| *unit != [to]);
        self.draft.problem.units.push(vec![to]);
    }
}

/// The work of a batch that no other work of it follows on.
fn last_work(unit: &ClassBatch) -> Vec<usize> {
    let steps = &unit.batch.steps;
    let mut followed = vec![false; steps.len()];
    // A step is followed where one behind it has work, or is followed itself.
    for _ in 0..steps.len() {
        for step in 0..steps.len() {
            let busy = steps[step].hands.is_some() || followed[step];
            for before in steps[step].after.iter().filter(|_| busy) {
                followed[*before] = true;
            }
        }
    }
    let open = steps.iter().zip(&followed).filter(|(_, followed)| !**followed);
    open.filter_map(|(step, _)| step.hands).collect()
}
