//! What the instructor shows: before each group's first such step, with the groups watching.

use super::batch_tasks::StepPlan;
use super::class::{Show, Who};
use super::drafting::Drafting;
use super::problem::Link;

impl Drafting<'_> {
    /// What is shown comes before each group's first such step, and the groups watch.
    pub(in crate::plan) fn demonstrations(&mut self) {
        let mut wanted: Vec<(String, String)> = Vec::new();
        for unit in self.draft.units.iter().filter(|unit| unit.who != Who::Instructor) {
            for step in &unit.batch.steps {
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
            units.flat_map(|unit| &unit.batch.steps).find(same)
        };
        if let Some(task) = find(true).and_then(|step| step.hands) {
            return Some(task);
        }
        let own = find(false)?;
        let (title, minutes) = (own.title.clone(), own.taught);
        own.hands?;
        let task = self.draft.problem.task(minutes);
        self.crew(Who::Instructor, task, 1);
        let (recipe, step) = (recipe.to_owned(), step.to_owned());
        self.draft.shows.push(Show { recipe, step, title, task });
        self.draft.problem.units.insert(0, vec![task]);
        Some(task)
    }

    /// A task that everybody who does a step sees before.
    pub(in crate::plan) fn watch(&mut self, shown: usize, recipe: &str, step: &str) {
        let mut watching: Vec<u32> = Vec::new();
        let mut links = Vec::new();
        for unit in &self.draft.units {
            let (Who::Group(group) | Who::Baker(group, _)) = unit.who else { continue };
            let steps = unit.batch.steps.iter();
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
        watching.sort_unstable();
        watching.dedup();
        self.draft.problem.links.extend(links);
        // Who comes late sees it too.
        let late = watching.iter().map(|group| self.class.late(*group)).max();
        self.not_before(&[shown], late.unwrap_or(0));
        for group in watching {
            self.crew(Who::Group(group), shown, self.class.members(group));
        }
    }
}
