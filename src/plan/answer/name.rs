//! Who is who in a plan: what each task and each wait is a part of.

use crate::model::{Class, KitKind, Location};
use crate::plan::question::batch_tasks::{BatchTasks, Lag, Moves, StepPlan};
use crate::plan::question::class::{ClassDraft, PoolName, Who};
use crate::plan::question::drafting::whole;
use crate::plan::question::kind::Kind;
use crate::plan::search::solve::Answer;

use super::timetable::{
    Caveat, Deed, Heating, Naming, StepName, TaskName, Timetable, WaitName, timetable,
};

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
            name_strand(&unit.batch, unit.who, &mut tasks, &mut waits);
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
        for of in &self.gatherings {
            tasks[of.task].kind = of.kind;
            tasks[of.task].watching = self.there(&of.groups);
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
        let besides = &class.besides;
        plan.heating = Heating {
            on: besides.preheat.as_ref().map(whole),
            turn: besides.reheat.as_ref().map(whole),
            helped: besides.helpers > 0,
        };
        let made = self.units.iter().flat_map(|unit| &unit.batch.recipes);
        if made.collect::<std::collections::BTreeSet<_>>().len() > 1 {
            plan.titles.clone_from(&self.titles);
        }
        plan.notes = self.uncounted.iter().cloned().map(Caveat::Uncounted).collect();
        plan.notes.extend(plan.baked_in_breaks().into_iter().map(Caveat::OvenInBreak));
        plan.notes.extend(self.unused(class).cloned().map(Caveat::Unused));
        plan
    }

    /// Kit that the class counts and no step needs; shelves may stand empty.
    fn unused<'a>(&'a self, class: &'a Class) -> impl Iterator<Item = &'a KitKind> {
        let kinds = class.kit.iter().map(|(kind, _)| &kind.value);
        kinds.filter(|kind| match kind {
            KitKind::Instructor
            | KitKind::BenchPlace
            | KitKind::Oven
            | KitKind::TrayPerOven
            | KitKind::Trays(_) => false,
            KitKind::Mixer | KitKind::Own(..) => {
                !self.pools.contains(&PoolName::Kit((*kind).clone()))
            }
        })
    }

    /// Those of these groups that have not gone home.
    fn there(&self, groups: &[u32]) -> Vec<Who> {
        let stays = |group: &&u32| {
            let own = self.units.iter().filter(|unit| unit.who.is_in(**group));
            let mut tasks = own.flat_map(|unit| &unit.batch.tasks);
            tasks.any(|task| !self.left.contains(task))
        };
        groups.iter().filter(stays).copied().map(Who::Group).collect()
    }

    /// Groups whose hands a task of the instructor takes watch it.
    fn watchers(&self, tasks: &mut [TaskName]) {
        for (name, pool) in self.pools.iter().zip(&self.problem.pools) {
            let PoolName::Group(group) = name else { continue };
            for of in &pool.uses {
                let task = &tasks[of.task];
                if task.deed.who == Who::Instructor && !task.kind.is_gathering() {
                    tasks[of.task].watching.push(Who::Group(*group));
                }
            }
        }
    }
}

/// Names the tasks and waits of one batch.
pub(in crate::plan) fn name_strand(
    batch: &BatchTasks,
    who: Who,
    tasks: &mut [TaskName],
    waits: &mut Vec<WaitName>,
) {
    for step in &batch.steps {
        let deed = deed(who, step);
        let name = |kind, place: &Option<Location>| TaskName {
            kind,
            deed: deed.clone(),
            watching: Vec::new(),
            heat: None,
            place: place.clone(),
        };
        step.hands.iter().for_each(|task| tasks[*task] = name(Kind::Hands, &None));
        let begins = if batch.home { Kind::Move } else { Kind::Moment };
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
        let thaws = step.thaws.iter().filter(|thaws| !thaws.stays.is_empty());
        waits.extend(thaws.map(|thaws| WaitName {
            deed: self::deed(who, step),
            place: Some(thaws.place.clone()),
            trays: step.trays,
            lag: thaws.lag,
            stays: thaws.stays.clone(),
        }));
    }
    for (recipe, end) in batch.recipes.iter().zip(&batch.ends) {
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
