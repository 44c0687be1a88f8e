//! Who is who in a plan: names of groups, and of the parts of a strand.

use crate::model::Class;

use super::class::{ClassDraft, PoolName, Who};
use super::problem::Problem;
use super::solve::Answer;
use super::strand::{Lag, Moves, StepPlan, Strand};
use super::timetable::{Naming, TaskName, Timetable, WaitName, timetable};

impl ClassDraft {
    /// The class's timetable for an answer.
    pub fn timetable(&self, class: &Class, answer: &Answer) -> Timetable {
        let mut answer = answer.clone();
        if let Answer::Fits(plan) = &mut answer {
            plan.layout = self.settle(&plan.layout);
        }
        let mut tasks = vec![TaskName::default(); self.problem.tasks.len()];
        let mut waits = Vec::new();
        for unit in &self.units {
            name_strand(&unit.strand, &who(class, unit.who), &mut tasks, &mut waits);
        }
        for show in &self.shows {
            tasks[show.task] = TaskName {
                group: who(class, Who::Instructor),
                kind: "demonstration",
                recipe: show.recipe.clone(),
                step: show.step.clone(),
                title: show.title.clone(),
                ..TaskName::default()
            };
        }
        self.watchers(class, &mut tasks);
        let naming = Naming {
            name: &class.name,
            title: &class.title.value,
            clock: &self.clock,
            tasks,
            waits,
            pools: self.pools.iter().map(|pool| pool_name(class, pool)).collect(),
            stores: self.stores.clone(),
            home: false,
        };
        timetable(&self.problem, &answer, naming)
    }

    /// Groups whose hands a task of the instructor takes watch it.
    fn watchers(&self, class: &Class, tasks: &mut [TaskName]) {
        let instructor = who(class, Who::Instructor);
        for (name, pool) in self.pools.iter().zip(&self.problem.pools) {
            let PoolName::Group(group) = name else { continue };
            for of in &pool.uses {
                if tasks[of.task].group == instructor {
                    tasks[of.task].watching.push(who(class, Who::Group(*group)));
                }
            }
        }
    }
}

/// Names the tasks and waits of one batch.
pub(super) fn name_strand(
    strand: &Strand,
    group: &str,
    tasks: &mut [TaskName],
    waits: &mut Vec<WaitName>,
) {
    for step in &strand.steps {
        let name = |kind| TaskName {
            group: group.to_owned(),
            kind,
            recipe: step.recipe.clone(),
            step: step.step.clone(),
            title: step.title.clone(),
            ..TaskName::default()
        };
        step.hands.iter().for_each(|task| tasks[*task] = name("hands"));
        let begins = if strand.home { "move" } else { "moment" };
        let to = |kind, place: &Option<String>| TaskName {
            place: place.clone(),
            ..name(kind)
        };
        step.moment.iter().for_each(|task| tasks[*task] = to(begins, &step.place));
        if let Some(moves) = step.moves {
            tasks[moves.into] = to("into", &step.hold_place);
            tasks[moves.out] = to("out", &step.hold_place);
        }
        for (bake, _) in &step.bakes {
            tasks[*bake] = TaskName { heat: step.oven.clone(), ..name("bake") };
        }
        if step.waits && !step.stays.is_empty() {
            waits.push(WaitName {
                group: group.to_owned(),
                recipe: step.recipe.clone(),
                step: step.step.clone(),
                title: step.title.clone(),
                place: step.place.clone(),
                trays: step.trays,
                lag: step.lag,
                stays: step.stays.clone(),
            });
        }
        waits.extend(step.moves.map(|moves| held(group, step, moves)));
    }
    tasks[strand.finish] = TaskName {
        group: group.to_owned(),
        kind: "finish",
        recipe: strand.recipe.clone(),
        ..TaskName::default()
    };
}

/// The hold of a step as a wait of its own.
fn held(group: &str, step: &StepPlan, moves: Moves) -> WaitName {
    WaitName {
        group: group.to_owned(),
        recipe: step.recipe.clone(),
        step: step.step.clone(),
        title: step.title.clone(),
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

/// What those who work together are called: `pair`.
pub fn group_word(class: &Class) -> &'static str {
    match class.together {
        1 => "baker",
        2 => "pair",
        3 => "three",
        4 => "four",
        _ => "group",
    }
}

/// `pair 3`, `pair 3, baker 2`, `instructor`.
pub fn who(class: &Class, who: Who) -> String {
    let word = group_word(class);
    match who {
        Who::Instructor => "instructor".into(),
        Who::Group(group) => format!("{word} {}", group + 1),
        Who::Baker(group, baker) => format!("{word} {}, baker {}", group + 1, baker + 1),
    }
}

fn pool_name(class: &Class, pool: &PoolName) -> String {
    match pool {
        PoolName::Instructor => "instructor".into(),
        PoolName::Group(group) => who(class, Who::Group(*group)),
        PoolName::Kit(name) => name.clone(),
    }
}

/// Names for a problem's stores where only tasks are named.
pub(super) fn unnamed(problem: &Problem) -> Vec<TaskName> {
    vec![TaskName::default(); problem.tasks.len()]
}
