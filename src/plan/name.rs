//! Who is who in a plan: what each task and each wait is a part of.

use crate::model::Class;

use super::class::{ClassDraft, PoolName, Who};
use super::solve::Answer;
use super::strand::{Lag, Moves, StepPlan, Strand};
use super::timetable::{
    Deed, Kind, Naming, Note, StepName, TaskName, Timetable, WaitName, timetable,
};

/// Kit that a class has whether or not its steps name it.
const KNOWN: [&str; 4] = ["instructor", "oven", "tray per oven", "bench place"];

impl ClassDraft {
    /// The class's timetable for an answer.
    pub fn timetable(&self, class: &Class, answer: &Answer) -> Timetable {
        let mut answer = answer.clone();
        if let Answer::Fits(plan) = &mut answer {
            plan.layout = self.tidied(&plan.layout);
            plan.moments = self.problem.moments(&plan.layout.starts);
        }
        let mut tasks = TaskName::unnamed(Who::Instructor, self.problem.tasks.len());
        let mut waits = Vec::new();
        for unit in &self.units {
            name_strand(&unit.strand, unit.who, &mut tasks, &mut waits);
        }
        for show in &self.shows {
            let step = StepName { name: show.step.clone(), title: show.title.clone() };
            tasks[show.task].kind = Kind::Demonstration;
            tasks[show.task].deed = Deed {
                who: Who::Instructor,
                recipe: show.recipe.clone(),
                step: Some(step),
            };
        }
        // Who has gone home does nothing that anybody reads of.
        let unnamed = TaskName::unnamed(Who::Instructor, 1);
        for task in &self.left {
            tasks[*task].clone_from(&unnamed[0]);
        }
        self.watchers(&mut tasks);
        let naming = Naming {
            name: &class.name,
            title: &class.title.value,
            clock: &self.clock,
            tasks,
            waits,
            pools: self.pools.clone(),
            stores: self.stores.clone(),
            together: Some(class.together),
        };
        let mut plan = timetable(&self.problem, &answer, naming);
        let made = self.units.iter().flat_map(|unit| &unit.strand.recipes);
        if made.collect::<std::collections::BTreeSet<_>>().len() > 1 {
            plan.titles.clone_from(&self.titles);
        }
        plan.notes = self.uncounted.iter().cloned().map(Note::Uncounted).collect();
        plan.notes.extend(self.unused(class).map(|kit| Note::Unused(kit.to_owned())));
        plan
    }

    /// Kit that the class counts and no step needs; shelves may stand empty.
    fn unused<'a>(&'a self, class: &'a Class) -> impl Iterator<Item = &'a str> {
        let names = class.kit.iter().map(|(name, _)| name.value.as_str());
        names.filter(|kit| {
            let pool = PoolName::Kit((*kit).to_owned());
            !KNOWN.contains(kit) && !kit.ends_with(" tray") && !self.pools.contains(&pool)
        })
    }

    /// Groups whose hands a task of the instructor takes watch it.
    fn watchers(&self, tasks: &mut [TaskName]) {
        for (name, pool) in self.pools.iter().zip(&self.problem.pools) {
            let PoolName::Group(group) = name else { continue };
            for of in &pool.uses {
                if tasks[of.task].deed.who == Who::Instructor {
                    tasks[of.task].watching.push(Who::Group(*group));
                }
            }
        }
    }
}

/// Names the tasks and waits of one batch.
pub(super) fn name_strand(
    strand: &Strand,
    who: Who,
    tasks: &mut [TaskName],
    waits: &mut Vec<WaitName>,
) {
    for step in &strand.steps {
        let deed = deed(who, step);
        let name = |kind, place: &Option<String>| TaskName {
            kind,
            deed: deed.clone(),
            watching: Vec::new(),
            heat: None,
            place: place.clone(),
        };
        step.hands.iter().for_each(|task| tasks[*task] = name(Kind::Hands, &None));
        let begins = if strand.home { Kind::Move } else { Kind::Moment };
        step.moment.iter().for_each(|task| tasks[*task] = name(begins, &step.place));
        if let Some(moves) = step.moves {
            tasks[moves.into] = name(Kind::Into, &step.hold_place);
            tasks[moves.out] = name(Kind::Out, &step.hold_place);
        }
        for (bake, _) in &step.bakes {
            tasks[*bake] =
                TaskName { heat: step.oven.clone(), ..name(Kind::Bake, &None) };
        }
        if step.waits && !step.stays.is_empty() {
            waits.push(WaitName {
                deed,
                place: step.place.clone(),
                trays: step.trays,
                lag: step.lag,
                stays: step.stays.clone(),
            });
        }
        waits.extend(step.moves.map(|moves| held(who, step, moves)));
    }
    for (recipe, end) in strand.recipes.iter().zip(&strand.ends) {
        tasks[*end].kind = Kind::Finish;
        tasks[*end].deed = Deed { who, recipe: recipe.clone(), step: None };
    }
}

fn deed(who: Who, step: &StepPlan) -> Deed {
    let name = StepName { name: step.step.clone(), title: step.title.clone() };
    Deed { who, recipe: step.recipe.clone(), step: Some(name) }
}

/// The hold of a step as a wait of its own.
fn held(who: Who, step: &StepPlan, moves: Moves) -> WaitName {
    WaitName {
        deed: deed(who, step),
        place: step.hold_place.clone(),
        trays: step.trays,
        lag: Lag {
            most: Some(moves.up_to),
            own_most: Some(0),
            crosses: true,
            ..Lag::default()
        },
        stays: vec![moves.stay],
    }
}
